package org.rickyard.workbook.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.SheetCells;
import org.rickyard.workbook.read.TableParts;

/** Formulas that a script wrote, and no spreadsheet program has calculated yet. */
class UnstoredFormulasTest {
    private static final String OTHER = "'Pat''s sizes'!";

    @TempDir
    Path folder;

    private int workedOut;

    /** A sheet of formulas, beside one of sizes: a table with 10 and 20 acres, and 30 below it. */
    private List<SheetCells> read(String... formulas) throws IOException {
        Path file = folder.resolve("book.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Sums");
            for (int i = 0; i < formulas.length; i++) {
                // Told to POI, a name or table that it does not know yet would be refused.
                sheet.createRow(i)
                        .createCell(0)
                        .getCTCell()
                        .addNewF()
                        .setStringValue(formulas[i].replace("Sizes!", OTHER));
            }
            XSSFSheet sizes = book.createSheet("Pat's sizes");
            Object[][] cells = {{"Name", "Acres"}, {"a", 10}, {"b", 20}, {"all", null}};
            for (int i = 0; i < cells.length; i++) {
                sizes.createRow(i).createCell(0).setCellValue((String) cells[i][0]);
                if (cells[i][1] instanceof Integer acres) {
                    sizes.getRow(i).createCell(1).setCellValue(acres);
                }
            }
            sizes.getRow(0).createCell(1).setCellValue("Acres");
            sizes.getRow(3).createCell(1).setCellFormula("B2+B3");
            sizes.getRow(1).createCell(4).setCellValue(true);
            sizes.createTable(new AreaReference("A1:B3", null)).setDisplayName("SizeTable");
            sizes.setArrayFormula("MAX(B2:B3*2)", CellRangeAddress.valueOf("D1"));
            book.write(out);
        }
        try (BookPackage book = BookPackage.open(file)) {
            BookReader reader = new BookReader(book, book.stylesPart(), book.sharedStringsPart(), book.date1904());
            List<TableParts.Table> tables =
                    new ArrayList<>(reader.tables(book.sheets().get(1)));
            Map<String, String> names = Map.of("Rate", OTHER + "$B$2", "Next", OTHER + "B2");
            BookScope scope = new BookScope(book.sheets(), names, tables);
            List<SheetCells> cells = reader.cells(book.sheets(), sheet -> true, sheet -> null);
            UnstoredFormulas.workOut(scope, reader, book.sheets(), cells);
            return cells;
        } catch (RefusedException e) {
            throw new AssertionError(e);
        }
    }

    private double number(String formula) throws IOException {
        SheetCells cells = read(formula).get(0);
        assertThat(cells.kind(0, 0)).as(formula).isEqualTo(Kind.NUMBER);
        assertThat(cells.isFormula(0, 0)).isTrue();
        return cells.number(0, 0);
    }

    @Test
    void arithmeticNamesTablesAndOtherSheetsAreWorkedOut() throws IOException {
        assertThat(number("1+2*3")).isEqualTo(7);
        assertThat(number("Sizes!B2*4")).isEqualTo(40);
        assertThat(number("Sizes!$B$4/2")).as("leans on another of them").isEqualTo(15);
        assertThat(number("SUM(Sizes!B2:B3)")).isEqualTo(30);
        assertThat(number("SUM(SizeTable[Acres])")).isEqualTo(30);
        assertThat(number("Rate*1.5")).isEqualTo(15);
        assertThat(number("VLOOKUP(\"b\",Sizes!A2:B3,2,FALSE)")).isEqualTo(20);
        assertThat(number("IFERROR(1/0,ROUND(10/3,1))")).isCloseTo(3.3, within(1e-12));
        SheetCells word = read("\"Long \"&Sizes!A2").get(0);
        assertThat(word.text(0, 0)).isEqualTo("Long a");
    }

    @Test
    void whatIsNotCertainStaysWithoutValue() throws IOException {
        for (String formula : List.of(
                "NOW()",
                "RAND()*5",
                "INDIRECT(\"A2\")",
                "-2^2",
                "1/0",
                "Next+1",
                "A1+1",
                "Sizes!D1*2",
                "SUM(Sizes!B2:E2)",
                "TODAY()-A1",
                "TEXT(2.5,\"0.0\")")) {
            assertThat(read(formula).get(0).kind(0, 0)).as(formula).isEqualTo(Kind.UNCOMPUTED);
        }
        assertThat(read("1").get(1).kind(0, 3)).as("over an array").isEqualTo(Kind.UNCOMPUTED);
    }

    /** A sheet of formulas with the values that the file gives them. */
    private List<SheetCells> readStored(Map<String, Double> formulas) throws IOException, RefusedException {
        Path file = folder.resolve("stored.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Sums");
            int row = 0;
            for (Map.Entry<String, Double> each : formulas.entrySet()) {
                XSSFCell cell = sheet.createRow(row++).createCell(0);
                cell.setCellFormula(each.getKey());
                cell.setCellValue(each.getValue());
            }
            book.write(out);
        }
        try (BookPackage book = BookPackage.open(file)) {
            BookReader reader = new BookReader(book, book.stylesPart(), book.sharedStringsPart(), book.date1904());
            List<SheetCells> cells = reader.cells(book.sheets(), sheet -> true, sheet -> null);
            BookScope scope = new BookScope(book.sheets(), Map.of(), List.of());
            UnstoredFormulas.Done done = UnstoredFormulas.workOut(scope, reader, book.sheets(), cells);
            workedOut = done.count();
            return cells;
        }
    }

    private static Map<String, Double> inOrder(Object... formulasAndValues) {
        Map<String, Double> all = new LinkedHashMap<>();
        for (int i = 0; i < formulasAndValues.length; i += 2) {
            all.put((String) formulasAndValues[i], ((Number) formulasAndValues[i + 1]).doubleValue());
        }
        return all;
    }

    /** Some libraries write a 0 for every formula; taken at its word, a distance of 0 km would go into the carting. */
    @Test
    void aFileThatSaysNoughtOfEveryFormulaIsNotBelieved() throws Exception {
        SheetCells sums = readStored(inOrder("4.9*2", 0, "A1-3", 0, "5-5", 0, "TODAY()-40000", 0))
                .get(0);
        assertThat(sums.number(0, 0)).isCloseTo(9.8, within(1e-12));
        assertThat(sums.number(1, 0)).as("leans on another of them").isCloseTo(6.8, within(1e-12));
        assertThat(sums.kind(2, 0)).isEqualTo(Kind.NUMBER);
        assertThat(sums.number(2, 0)).isZero();
        assertThat(sums.kind(3, 0)).as("not certain").isEqualTo(Kind.UNCOMPUTED);
        assertThat(sums.isFormula(0, 0)).isTrue();
        assertThat(workedOut).isEqualTo(3);
    }

    @Test
    void noughtsThatMayBeSoAreTakenAsStored() throws Exception {
        SheetCells sums = readStored(inOrder("5-5", 0, "TODAY()-TODAY()", 0, "0.3-0.1-0.2", 0))
                .get(0);
        for (int row = 0; row < 3; row++) {
            assertThat(sums.kind(row, 0)).isEqualTo(Kind.NUMBER);
            assertThat(sums.number(row, 0)).isZero();
        }
        assertThat(workedOut).isZero();
        SheetCells others = readStored(inOrder("4.9*2", 0, "1+1", 2)).get(0);
        assertThat(others.number(0, 0)).as("worked out by another program").isZero();
        assertThat(workedOut).isZero();
    }

    @Test
    void aRunUsesThemAndSaysSo() throws Exception {
        Path file = folder.resolve("farm.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet fields = book.createSheet("Fields");
            Object[][] rows = {{"Field", "Area (ha)", "Crop"}, {"Long", "2*4.5", "grass"}, {"Short", "B2/3", "grass"}};
            for (int i = 0; i < rows.length; i++) {
                fields.createRow(i).createCell(0).setCellValue((String) rows[i][0]);
                if (i == 0) {
                    fields.getRow(i).createCell(1).setCellValue((String) rows[i][1]);
                } else {
                    fields.getRow(i).createCell(1).setCellFormula((String) rows[i][1]);
                }
                fields.getRow(i).createCell(2).setCellValue((String) rows[i][2]);
            }
            XSSFSheet machines = book.createSheet("Machines");
            Object[][] kit = {
                {"Machine", "Type", "Working width (m)", "Speed (km/h)", "Efficiency (%)"},
                {"Mower", "mower", 3, 10, 80}
            };
            for (int i = 0; i < kit.length; i++) {
                machines.createRow(i);
                for (int j = 0; j < kit[i].length; j++) {
                    if (kit[i][j] instanceof Integer number) {
                        machines.getRow(i).createCell(j).setCellValue(number);
                    } else {
                        machines.getRow(i).createCell(j).setCellValue((String) kit[i][j]);
                    }
                }
            }
            book.write(out);
        }
        try (BookPackage book = BookPackage.open(file)) {
            Recalculation run = Recalculation.of(book, RunOptions.usual());
            List<Double> hours = new ArrayList<>();
            run.sheets().results().forEach(result -> {
                if (result.id().equals("hours")) {
                    hours.add(result.number().orElseThrow());
                }
            });
            assertThat(hours).hasSize(2);
            assertThat(hours.get(0)).isCloseTo(9 / 2.4, within(1e-12));
            assertThat(hours.get(1)).isCloseTo(3 / 2.4, within(1e-12));
            assertThat(run.sheets().findings())
                    .anyMatch(finding -> finding.message().startsWith("2 formulas of yours have no stored value")
                            && finding.cell().orElseThrow().toString().equals("Fields!B2"));
        }
    }
}
