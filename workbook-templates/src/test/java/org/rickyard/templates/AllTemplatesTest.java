package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rickyard.testing.OoxmlValidator;

class AllTemplatesTest {
    @ParameterizedTest
    @EnumSource
    void twoWritingsAreTheSameBytesWhateverTheZoneAndLanguage(TemplateKind kind) {
        byte[] here = WrittenBook.bytes(kind);
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            assertThat(WrittenBook.bytes(kind)).isEqualTo(here);
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsHiddenAndNothingIsMerged(TemplateKind kind) throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(kind)) {
            for (Sheet sheet : book) {
                assertThat(book.getSheetVisibility(book.getSheetIndex(sheet))).isEqualTo(SheetVisibility.VISIBLE);
                assertThat(sheet.getMergedRegions()).isEmpty();
                for (Row row : sheet) {
                    assertThat(row.getZeroHeight()).isFalse();
                    for (Cell cell : row) {
                        assertThat(sheet.isColumnHidden(cell.getColumnIndex())).isFalse();
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void everySheetPrintsOnA4LandscapeFittedToItsWidth(TemplateKind kind) throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(kind)) {
            for (Sheet sheet : book) {
                assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
                assertThat(sheet.getPrintSetup().getPaperSize()).isEqualTo((short) 9);
                assertThat(sheet.getFitToPage()).isTrue();
                assertThat(sheet.getPrintSetup().getFitHeight()).isZero();
                assertThat(sheet.getRepeatingRows()).isNotNull();
                assertThat(sheet.getFooter().getRight()).isEqualTo("Page &P of &N");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theStylesHaveNamesOfTheirOwn(TemplateKind kind) {
        String styles =
                new String(WrittenBook.parts(WrittenBook.bytes(kind)).get("xl/styles.xml"), StandardCharsets.UTF_8);
        assertThat(styles)
                .contains("<cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/>")
                .contains("<cellStyle name=\"List input\"")
                .contains("<cellStyle name=\"List heading needed\"");
    }

    @ParameterizedTest
    @EnumSource
    void noDayOfMakingIsInTheFile(TemplateKind kind) {
        Map<String, byte[]> parts = WrittenBook.parts(WrittenBook.bytes(kind));
        assertThat(parts.keySet().iterator().next()).isEqualTo("[Content_Types].xml");
        assertThat(new String(parts.get("docProps/core.xml"), StandardCharsets.UTF_8))
                .contains("2026-01-01T00:00:00Z")
                .doesNotContainPattern("20[0-9]{2}-(?!01-01T00:00:00Z)");
    }

    @ParameterizedTest
    @EnumSource
    void theOpenXmlValidatorHasNothingAgainstIt(TemplateKind kind, @TempDir Path folder) throws IOException {
        OoxmlValidator.required();
        Path file = folder.resolve(kind.title() + ".xlsx");
        Files.write(file, WrittenBook.bytes(kind));
        assertThat(OoxmlValidator.errors(file)).isEqualTo(List.of());
    }

    @ParameterizedTest
    @EnumSource
    void theDescriptionIsOneLine(TemplateKind kind) {
        assertThat(kind.description()).isNotBlank().doesNotContain("\n").doesNotEndWith(".");
        assertThat(TemplateKind.valueOf(kind.title().toUpperCase(Locale.ROOT))).isEqualTo(kind);
    }
}
