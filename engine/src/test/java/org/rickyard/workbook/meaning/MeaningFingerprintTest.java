package org.rickyard.workbook.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.testing.LibreOffice;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.Parts;

class MeaningFingerprintTest {
    private static String ofFormula(String formula) {
        MeaningFingerprint print = new MeaningFingerprint();
        print.cell(3, 2, Kind.NUMBER, 5, "", Format.GENERAL, formula);
        return print.hex();
    }

    private static String ofConstant(Kind kind, double number, String text) {
        MeaningFingerprint print = new MeaningFingerprint();
        print.cell(3, 2, kind, number, text, Format.GENERAL, null);
        return print.hex();
    }

    private static String of(Parts parts) throws IOException {
        MeaningFingerprint print = new MeaningFingerprint();
        new BookReader(parts, Parts.STYLES, Parts.STRINGS, false).stream(Parts.SHEET, print);
        return print.hex();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1+B2 | a1 + b2",
                "SUM('Fields'!A1) | SUM(Fields!A1)",
                "'Work rates'!A1 | 'WORK RATES'!a1",
                "'O''Brien'!A1 | 'o''brien'!A1",
                "IF(TRUE,1,2) | IF(true(),1,2)",
                "A1*0.000000001 | A1*1E-9",
                "A1/1E+019 | A1/10000000000000000000",
                "1.0+A1 | 1+A1",
                "_xlfn.MAXIFS(A1:A2,B1:B2,1) | MAXIFS(A1:A2,B1:B2,1)",
                "12345678.123456789*A1 | 12345678.1234568*A1",
                "=A1 | A1",
                "TRUE() | true"
            })
    void waysOfWritingTheSameFormulaDoNotDiffer(String one, String other) {
        assertThat(ofFormula(one)).isEqualTo(ofFormula(other));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "A1+B2 | A1+B3",
                "A1+B2 | A1-B2",
                "A1 | $A1",
                "IF(A1=\"x\",1,2) | IF(A1=\"X\",1,2)",
                "A1&\"a b\" | A1&\"ab\"",
                "A1&\"'x'\" | A1&\"x\"",
                "A1*2 | A1*2.1",
                "A1*2 | A1*20",
                "A12 | A1*2",
                "A1&\"TRUE()\" | A1&\"TRUE\"",
                "TRUEST() | TRUEST",
                "Fields!A1 | Field!A1",
                "A1 | A1+0",
                "1*A1 | 2*A1"
            })
    void formulasOfDifferentMeaningDiffer(String one, String other) {
        assertThat(ofFormula(one)).isNotEqualTo(ofFormula(other));
    }

    @Test
    void constantsCountByKindAndValue() {
        String five = ofConstant(Kind.NUMBER, 5, "");
        assertThat(five).matches("[0-9a-f]{64}");
        assertThat(List.of(
                        five,
                        ofConstant(Kind.NUMBER, 5.5, ""),
                        ofConstant(Kind.TEXT, 0, "5"),
                        ofConstant(Kind.LOGICAL, 1, "TRUE"),
                        ofConstant(Kind.LOGICAL, 0, "FALSE"),
                        ofConstant(Kind.TEXT, 0, "TRUE"),
                        ofConstant(Kind.ERROR, 0, "#N/A"),
                        ofConstant(Kind.TEXT, 0, "#N/A"),
                        ofConstant(Kind.TEXT, 0, "a b"),
                        ofConstant(Kind.TEXT, 0, "ab"),
                        ofFormula("5"),
                        ofConstant(Kind.BLANK, 0, "")))
                .doesNotHaveDuplicates();
        assertThat(ofConstant(Kind.TEXT, 0, "")).isEqualTo(ofConstant(Kind.BLANK, 0, ""));
        assertThat(ofConstant(Kind.TEXT, 0, "a\r\nb")).isEqualTo(ofConstant(Kind.TEXT, 0, "a\nb"));
        assertThat(ofConstant(Kind.NUMBER, -0.0, "")).isEqualTo(ofConstant(Kind.NUMBER, 0.0, ""));
        assertThat(ofConstant(Kind.NUMBER, 1.0 / 3, "")).isEqualTo(ofConstant(Kind.NUMBER, 0.333333333333333, ""));
        assertThat(ofFormula("TRUE()")).isEqualTo(ofConstant(Kind.LOGICAL, 1, "TRUE"));
        assertThat(ofFormula("#DIV/0!")).isEqualTo(ofConstant(Kind.ERROR, 0, "#DIV/0!"));
    }

    @Test
    void storedValuesOfFormulasAndFormatsDoNotCount() {
        MeaningFingerprint print = new MeaningFingerprint();
        print.cell(3, 2, Kind.UNCOMPUTED, 0, "", Format.PERCENT, "A1+1");
        assertThat(print.hex()).isEqualTo(ofFormula("A1+1"));
    }

    @Test
    void theOrderOfCellsDoesNotCountButTheirPlacesDo() {
        List<int[]> places = new ArrayList<>();
        for (int i = 0; i < 2_000; i++) {
            places.add(new int[] {i / 20, i % 20});
        }
        String inOrder = ofPlaces(places, 0);
        Collections.shuffle(places, new Random(5));
        assertThat(ofPlaces(places, 0)).isEqualTo(inOrder);
        assertThat(ofPlaces(places, 1)).as("moved one row down").isNotEqualTo(inOrder);
        assertThat(ofPlaces(places.subList(1, places.size()), 0))
                .as("one cell less")
                .isNotEqualTo(inOrder);
    }

    private static String ofPlaces(List<int[]> places, int down) {
        MeaningFingerprint print = new MeaningFingerprint();
        for (int[] place : places) {
            print.cell(place[0] + down, place[1], Kind.NUMBER, place[0] % 3, "", Format.GENERAL, null);
        }
        return print.hex();
    }

    @Test
    void aSheetMeansTheSameAfterLibreOfficeHasSavedIt(@TempDir Path folder) throws IOException {
        LibreOffice.required();
        Path written = folder.resolve("yard.xlsx");
        try (XSSFWorkbook book = book();
                OutputStream out = Files.newOutputStream(written)) {
            book.write(out);
        }
        Path saved = LibreOffice.resave(written);

        Parts before = Parts.unzip(Files.readAllBytes(written));
        Parts after = Parts.unzip(Files.readAllBytes(saved));

        assertThat(cellsOf(after)).containsExactlyElementsOf(cellsOf(before));
        assertThat(of(after)).isEqualTo(of(before));
    }

    /** A fingerprint for each cell, so that a difference is shown with its place. */
    private static List<String> cellsOf(Parts parts) throws IOException {
        List<String> cells = new ArrayList<>();
        new BookReader(parts, Parts.STYLES, Parts.STRINGS, false)
                .stream(Parts.SHEET, (row, column, kind, number, text, format, formula) -> {
                    MeaningFingerprint print = new MeaningFingerprint();
                    print.cell(0, 0, kind, number, text, format, formula);
                    if (formula != null || kind != Kind.TEXT || !text.isEmpty()) {
                        cells.add(row + " " + column + " " + print.hex());
                    }
                });
        return cells;
    }

    private static XSSFWorkbook book() {
        XSSFWorkbook book = new XSSFWorkbook();
        XSSFSheet sheet = book.createSheet("Work rates");
        book.createSheet("Fields");
        book.createSheet("O'Brien");
        book.createName().setNameName("Rickyard_rate");
        book.getName("Rickyard_rate").setRefersToFormula("Fields!$B$2");
        String[] formulas = {
            "IF(ISNUMBER(Fields!$B$2),Fields!$B$2*0.000000001,\"\")",
            "'O''Brien'!A1+1E-9",
            "TRUE",
            "IF(TRUE(),1,2)",
            "ROUNDUP(ROUND(A2,9),0)",
            "SUMIFS(Fields!A1:A10,Fields!B1:B10,\"x  y\")",
            "-(A2^2)",
            "(-A2)^2",
            "A2/10000000000000000000",
            "HYPERLINK(\"#'Fields'!C5\",\"Fields!C5\")",
            "INDEX(Fields!$A$1:$A$9,MATCH(A2,Fields!$B$1:$B$9,0))",
            "\"a\"\"b\"&\"c 'd'!\"",
            "123456789012345678",
            "MIN( A2 , B2 )",
            "+A2*80%",
            "IF(A2,,3)",
            "12345678.123456789",
            "IF(COUNT($B2,C2)=2,Rickyard_rate/600,\"\")",
            "LN(ABS(A2))+EXP(1)+ATAN(2)+POWER(2,0.5)",
            "AND(A2>=3,NOT(B2<>4),OR(A2=1,FALSE))"
        };
        Row first = sheet.createRow(0);
        for (int i = 0; i < formulas.length; i++) {
            first.createCell(i).setCellFormula(formulas[i]);
        }
        Random random = new Random(3);
        for (int i = 1; i < 400; i++) {
            Row row = sheet.createRow(i);
            row.createCell(0).setCellValue(random.nextGaussian() * Math.pow(10, random.nextInt(20) - 10));
            row.createCell(1).setCellValue(random.nextInt(1_000_000) / 1e3);
        }
        Row second = sheet.getRow(1);
        second.createCell(3).setCellValue(true);
        second.createCell(4).setCellValue("a  b\n c ");
        second.createCell(5).setCellValue("");
        second.createCell(6).setCellErrorValue(FormulaError.NA.getCode());
        second.createCell(7).setCellValue("=1+1");
        second.createCell(8).setCellValue("c\r\nd");
        second.createCell(9).setCellValue("007");
        second.createCell(10).setCellValue("\u00a0x\u00a0");
        second.createCell(11).setCellValue("t/ha → m³ & <b>");
        return book;
    }
}
