package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.SmallPackage;

class VerificationTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    @TempDir
    Path folder;

    private Path client;
    private Path written;
    private GraftReport report;

    @BeforeEach
    void graft() throws Exception {
        client = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        written = folder.resolve("written.xlsx");
        report = Grafting.of("Work rates").run(client, written);
        Linted.after(client, written);
    }

    private void assertFails(Path file, GraftReport told, String... words) throws Exception {
        try (BookPackage source = BookPackage.open(client)) {
            assertThatThrownBy(() -> Verification.check(source, file, told))
                    .isInstanceOf(OutputException.class)
                    .hasMessageContainingAll("client.xlsx", "did not pass its check")
                    .hasMessageContainingAll(words);
        }
    }

    @Test
    void aForeignPartOfOtherContentIsFound() throws Exception {
        String other = SmallPackage.sheet("<row r=\"1\"/>");
        assertFails(Repacked.with(written, SHEET, other, folder), report, SHEET, "not the same");
    }

    @Test
    void aForeignPartThatIsMissingIsFound() throws Exception {
        Path more = SmallPackage.plain().part("docProps/extra.xml", "<a/>").writeTo(folder.resolve("client.xlsx"));
        client = more;
        assertFails(written, report, "docProps/extra.xml", "is missing");
    }

    @Test
    void aPartThatNobodyPlannedIsFound() throws Exception {
        Set<String> fewer = Set.of("xl/worksheets/sheet2.xml");
        GraftReport told = new GraftReport(report.sheets(), report.edited(), fewer, Set.of(), report.bytes());
        assertFails(written, told, "was not planned");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "<worksheet>",
                "<worksheet/><worksheet/>",
                "<worksheet><c></worksheet></c>",
                "<worksheet>&nbsp;</worksheet>",
                "<worksheet>\u00e9</worksheet>",
                "<!DOCTYPE a><worksheet/>"
            })
    void aSheetOfOursThatIsNotWellFormedIsFound(String text) throws Exception {
        try (BookPackage source = BookPackage.open(client)) {
            // One byte a letter: an accented one is no UTF-8 then.
            byte[] half = text.getBytes(StandardCharsets.ISO_8859_1);
            NewSheet broken = new NewSheet("Broken", out -> out.write(half), List.of(), List.of());
            report = Graft.write(source, new GraftPlan().addSheet(broken), written, 6, 1);
        }
        assertFails(written, report, "xl/worksheets/sheet2.xml", text.isEmpty() ? "empty" : "cannot be read");
    }

    @Test
    void aBrokenByteInAPackedPartIsFound() throws Exception {
        byte[] bytes = Files.readAllBytes(written);
        try (BookPackage target = BookPackage.open(written)) {
            var entry = target.entries().stream()
                    .filter(each -> each.getName().equals(SHEET))
                    .findFirst()
                    .orElseThrow();
            bytes[(int) entry.getDataOffset() + 20] ^= 1;
        }
        Files.write(written, bytes);
        assertFails(written, report, SHEET, "not the same");
    }

    @Test
    void aBrokenByteInALongTableOfOursIsFound() throws Exception {
        try (BookPackage source = BookPackage.open(client)) {
            NewSheet table = new NewSheet("Table", VerificationTest::longTable, List.of(), List.of());
            report = Graft.write(source, new GraftPlan().addSheet(table), written, 6, 1);
            Verification.check(source, written, report);
        }
        try (BookPackage target = BookPackage.open(written)) {
            var entry = target.entries().stream()
                    .filter(each -> each.getName().equals("xl/worksheets/sheet2.xml"))
                    .findFirst()
                    .orElseThrow();
            assertThat(entry.getSize()).isGreaterThan(2L << 20);
            byte[] bytes = Files.readAllBytes(written);
            bytes[(int) (entry.getDataOffset() + entry.getCompressedSize() / 2)] ^= 1;
            Files.write(written, bytes);
        }
        assertFails(written, report, "xl/worksheets/sheet2.xml", "cannot be read");
    }

    private static void longTable(OutputStream out) throws IOException {
        out.write("<worksheet><sheetData>".getBytes(StandardCharsets.US_ASCII));
        for (int row = 1; row <= 100_000; row++) {
            out.write(
                    ("<row r=\"" + row + "\"><c><v>" + row % 7 + "</v></c></row>").getBytes(StandardCharsets.US_ASCII));
        }
        out.write("</sheetData></worksheet>".getBytes(StandardCharsets.US_ASCII));
    }
}
