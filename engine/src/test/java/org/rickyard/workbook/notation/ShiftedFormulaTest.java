package org.rickyard.workbook.notation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;

class ShiftedFormulaTest {
    /** Without sheet names and whole rows: POI 5.5 drops the ones and rewrites the others. */
    private static final String[] PIECES = {
        "B7",
        "$B7",
        "B$7",
        "$B$7",
        "AA100:$AZ120",
        "XFD9",
        "$C5:$D$40",
        "SUM(B2:C3)",
        "LOG10(E5)",
        "\"A1 & B2\"",
        "1.5",
        "C:C",
        "(G7*2)",
        "TRUE",
        "12"
    };

    @Test
    void sharedFormulasReadAsPoiReadsThem() throws IOException {
        Random random = new Random(11);
        List<String> told = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Work");
            for (int i = 0; i < 300; i++) {
                StringBuilder formula = new StringBuilder(PIECES[random.nextInt(PIECES.length)]);
                for (int more = random.nextInt(4); more > 0; more--) {
                    formula.append("+*-/&=<".charAt(random.nextInt(7))).append(PIECES[random.nextInt(PIECES.length)]);
                }
                told.add(formula.toString());
                CTCellFormula first = share(sheet, i, 10 * i, 20);
                first.setRef("U" + (10 * i + 1) + ":AD" + (10 * i + 10));
                first.setStringValue(formula.toString());
                share(sheet, i, 10 * i + 1 + i % 9, 20 + i % 10);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            book.write(bytes);
            compare(bytes.toByteArray(), told);
        }
    }

    private static CTCellFormula share(XSSFSheet sheet, int index, int row, int column) {
        CTCellFormula formula =
                sheet.createRow(row).createCell(column).getCTCell().addNewF();
        formula.setT(STCellFormulaType.SHARED);
        formula.setSi(index);
        return formula;
    }

    private static void compare(byte[] book, List<String> told) throws IOException {
        try (XSSFWorkbook read = new XSSFWorkbook(new ByteArrayInputStream(book))) {
            XSSFSheet sheet = read.getSheetAt(0);
            for (int i = 0; i < told.size(); i++) {
                assertThat(ShiftedFormula.of(told.get(i), 1 + i % 9, i % 10))
                        .as(told.get(i))
                        .isEqualTo(sheet.getRow(10 * i + 1 + i % 9)
                                .getCell(20 + i % 10)
                                .getCellFormula());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1048576 | 1 | 0 | A1",
                "XFD1 | 0 | 1 | A1",
                "SUM($4:6)+SUM(7:$8) | 1 | 5 | SUM($4:7)+SUM(8:$8)",
                "A1 | -1 | -1 | XFD1048576",
                "Loads[[#This Row],[A1]]+A1 | 1 | 0 | Loads[[#This Row],[A1]]+A2",
                "[1]Fields!A1+Q1_total+A1B | 1 | 0 | [1]Fields!A2+Q1_total+A1B",
                "#REF!+#DIV/0!+A1 | 1 | 1 | #REF!+#DIV/0!+B2",
                "Fields!A1:Fields!B2 | 1 | 1 | Fields!B2:Fields!C3",
                "'O''Brien'!A1:'O''Brien'!$B2 | 1 | 1 | 'O''Brien'!B2:'O''Brien'!$B3",
                "'A1 & B2'!A1 | 1 | 1 | 'A1 & B2'!B2",
                "A1:INDEX(B:B,3) | 1 | 1 | B2:INDEX(C:C,3)",
                "Q1.A1+A1.B+A1() | 1 | 1 | Q1.A1+A1.B+A1()",
                "XFE1+A1048577+ABCD1 | 1 | 1 | XFE1+A1048577+ABCD1"
            })
    void whatIsNoRelativeReferenceStays(String formula, int rows, int columns, String expected) {
        assertThat(ShiftedFormula.of(formula, rows, columns)).isEqualTo(expected);
    }
}
