package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.workbook.open.BookPackage;

/** The unit that a number format shows behind the number, which is what people read. */
class ShownUnitTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "nothing",
            value = {
                "General | nothing",
                "0.00 | nothing",
                "#,##0.0\" m\" | m",
                "0.0\" days\" | days",
                "0.0 \\d\\a\\y | day",
                "General\" ha\" | ha",
                "0.0##\" US gal\" | US gal",
                "0\" km/h\";-0\" km/h\" | km/h",
                "[Red]0.00;[Blue]-0.00 | nothing",
                "[$€-407]#,##0.00 | nothing",
                "#,##0.00 [$€-407] | nothing",
                "0.00E+00 | nothing",
                "# ?/? | nothing",
                "_-* #,##0.00_-;-* #,##0.00_- | nothing",
                "#,##0_);(#,##0) | nothing",
                "0.0,\" t\" | nothing",
                "#,##0,\" t\" | nothing",
                "@ | nothing",
                "\"ca. \"0 | nothing",
                "0% | nothing",
                "0\"%\" | nothing",
                "dd/mm/yyyy | nothing",
            })
    void isTheTextBehindTheLastDigit(String code, String unit) {
        assertThat(ShownUnit.ofCode(code)).isEqualTo(unit == null ? "" : unit);
    }

    @Test
    void isReadCellByCell() throws Exception {
        SheetCells cells = written();
        assertThat(cells.showsUnits(0)).isTrue();
        assertThat(cells.showsUnits(1)).isFalse();
        assertThat(List.of(cells.shownUnit(0, 0), cells.shownUnit(1, 0), cells.shownUnit(2, 0), cells.shownUnit(3, 0)))
                .containsExactly("ft", "ft", "", "m");
        assertThat(cells.shownUnit(0, 1)).isEmpty();
        assertThat(cells.number(3, 0)).isEqualTo(4);
    }

    @Test
    void isKeptInWhateverOrderTheCellsCome() {
        ShownUnits units = new ShownUnits();
        units.put(5, 0, "m");
        units.put(2, 0, "ft");
        units.put(3, 0, "");
        assertThat(List.of(units.at(1, 0), units.at(2, 0), units.at(3, 0), units.at(4, 0), units.at(5, 0)))
                .containsExactly("", "ft", "", "", "m");
    }

    private static SheetCells written() throws IOException, org.rickyard.workbook.open.RefusedException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            Sheet sheet = book.createSheet("Machines");
            String[] formats = {"0.0\" ft\"", "0.0\" ft\"", "0.0", "0.0\" m\""};
            for (int i = 0; i < formats.length; i++) {
                CellStyle style = book.createCellStyle();
                style.setDataFormat(book.createDataFormat().getFormat(formats[i]));
                Cell cell = sheet.createRow(i).createCell(0);
                cell.setCellValue(i + 1);
                cell.setCellStyle(style);
                sheet.getRow(i).createCell(1).setCellValue(7);
            }
            book.write(out);
        }
        try (BookPackage book =
                BookPackage.open(new java.io.ByteArrayInputStream(out.toByteArray()), "machines.xlsx")) {
            return BookReader.read(
                            book, book.sheets(), book.stylesPart(), Optional.empty(), book.date1904(), sheet -> true)
                    .get(0);
        }
    }
}
