package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Machines;

class DemoWorkbookTest {
    private static final int HEADING_ROW = 3;

    private final XSSFWorkbook book = WrittenBook.open(TemplateKind.DEMO);

    @AfterEach
    void close() throws IOException {
        book.close();
    }

    @Test
    void theCommittedFileIsTheOneThatTheCodeMakes() throws IOException {
        Path committed = Path.of(System.getProperty("basedir", "."), "demo", "demo.xlsx");
        Map<String, byte[]> expected = WrittenBook.parts(WrittenBook.bytes(TemplateKind.DEMO));
        Map<String, byte[]> found = WrittenBook.parts(Files.readAllBytes(committed));
        assertThat(found.keySet()).containsExactlyElementsOf(expected.keySet());
        expected.forEach((name, part) -> assertThat(found.get(name))
                .as(name + ": run Generator to bring demo.xlsx up to date")
                .isEqualTo(part));
    }

    @Test
    void thirtyFieldsLieOnThreeHoldings() {
        List<List<String>> fields = rows("Fields");
        fields.addAll(rows("Oxlow End fields"));
        assertThat(fields).hasSize(30);
        assertThat(column(fields, 0)).containsOnly("Thrushmere", "Pellbrook", "Oxlow End");
        assertThat(new HashSet<>(column(fields, 0))).hasSize(3);
        assertThat(column(fields, 2)).containsOnly("Grass", "Wheat", "Barley");
        assertThat(column(fields, 1).stream().filter("Home Field"::equals)).hasSize(2);
        assertThat(fields.stream().map(row -> row.get(0) + row.get(1)).distinct())
                .hasSize(30);
    }

    @Test
    void oneHoldingReckonsInAcres() {
        assertThat(WrittenBook.texts(book.getSheet("Oxlow End fields"), HEADING_ROW))
                .contains("Area (ac)", "Yield (t/ac)")
                .doesNotContain("Area (ha)");
    }

    @Test
    void theSumUnderTheFieldsIsNoField() {
        XSSFSheet sheet = book.getSheet("Fields");
        Cell total = sheet.getRow(sheet.getLastRowNum()).getCell(3);
        assertThat(WrittenBook.texts(sheet, sheet.getLastRowNum()).get(0)).isEqualTo("Total");
        assertThat(total.getCellFormula()).isEqualTo("SUM(D5:D26)");
        double sum = rows("Fields").stream()
                .mapToDouble(row -> Double.parseDouble(row.get(3)))
                .sum();
        assertThat(total.getNumericCellValue()).isCloseTo(sum, within(1e-9));
    }

    @Test
    void theClientsOwnFormulasCoverTheWholeListsAndHaveStoredValues() {
        XSSFSheet notes = book.getSheet("Notes");
        assertThat(rows("Fields")).hasSize(22);
        assertThat(rows("Oxlow End fields")).hasSize(8);
        double acres = rows("Oxlow End fields").stream()
                .mapToDouble(row -> Double.parseDouble(row.get(3)))
                .sum();
        assertThat(notes.getRow(4).getCell(1).getNumericCellValue()).isEqualTo(acres * 0.40468564224);
        assertThat(notes.getRow(5).getCell(1).getCellFormula()).isEqualTo("B4+B5");
        assertThat(notes.getRow(5).getCell(1).getNumericCellValue()).isGreaterThan(140);
    }

    @Test
    void theMachinesAreAnExcelTableOfEveryTypeTheJobsNeed() {
        List<XSSFTable> tables = book.getSheet("Machines").getTables();
        assertThat(tables).hasSize(1);
        assertThat(tables.get(0).getName()).isEqualTo("Machines");
        List<List<String>> machines = rows("Machines");
        assertThat(machines).hasSize(15);
        assertThat(column(machines, 1))
                .contains("mower", "tedder", "rake", "forager", "trailer", "buckrake", "loader", "clamp roller")
                .contains("excavator", "fertiliser spreader", "tractor")
                .allMatch(Machines.TYPE.choices()::containsKey);
        assertThat(column(machines, 1).stream().filter("sprayer"::equals)).hasSize(2);
        List<String> ownAndQuoted = machines.stream()
                .filter(machine ->
                        cell(machine, 35).equals("own") && !cell(machine, 36).isEmpty())
                .map(machine -> machine.get(0))
                .toList();
        assertThat(ownAndQuoted)
                .as("own machines to be held against a contractor")
                .containsExactly("Mower 3.2 m");
    }

    @Test
    void jobsNameFieldsMachinesAndMixesThatExist() {
        Set<String> machines = new HashSet<>(column(rows("Machines"), 0));
        Set<String> mixes = new HashSet<>(column(rows("Mixes"), 0));
        Set<String> products = new HashSet<>(column(rows("Products"), 0));
        Set<String> places = new HashSet<>();
        for (List<String> field : rows("Fields")) {
            places.addAll(List.of(field.get(0) + field.get(2), field.get(0) + field.get(4)));
        }
        rows("Oxlow End fields").forEach(field -> places.add(field.get(0) + field.get(2)));
        List<List<String>> jobs = rows("Jobs");
        assertThat(jobs).hasSize(16);
        for (List<String> job : jobs) {
            assertThat(places).contains(job.get(0) + job.get(2));
            for (String machine : job.get(4).split("; ")) {
                assertThat(machines).contains(machine.replaceAll(" x \\d+$", ""));
            }
            for (String tractor : job.get(5).split("; ")) {
                assertThat(tractor.replaceAll(" x \\d+$", ""))
                        .satisfiesAnyOf(one -> assertThat(one).isIn("", "-"), one -> assertThat(machines)
                                .contains(one));
            }
            assertThat(job.get(6)).satisfiesAnyOf(mix -> assertThat(mix).isEmpty(), mix -> assertThat(mixes)
                    .contains(mix));
            assertThat(job.get(7)).satisfiesAnyOf(one -> assertThat(one).isEmpty(), one -> assertThat(products)
                    .contains(one));
        }
        assertThat(products).containsAll(column(rows("Mixes"), 1));
    }

    @Test
    void everyYieldHasItsBasisAndGoesToAClampOfItsHolding() {
        Set<String> clamps = new HashSet<>();
        rows("Clamps").forEach(clamp -> clamps.add(clamp.get(0) + clamp.get(1)));
        assertThat(clamps).hasSize(3);
        for (List<String> field : rows("Fields")) {
            checkYield(field, 12, 16, clamps);
        }
        for (List<String> field : rows("Oxlow End fields")) {
            checkYield(field, 8, 12, clamps);
        }
    }

    private static void checkYield(List<String> field, int yield, int clamp, Set<String> clamps) {
        boolean grass = field.get(2).equals("Grass");
        assertThat(cell(field, yield).isEmpty()).as(field.get(1)).isEqualTo(!grass);
        if (grass) {
            assertThat(Fields.YIELD_BASIS.choices()).containsKey(field.get(yield + 1));
            assertThat(clamps).contains(field.get(0) + field.get(clamp));
        }
    }

    @Test
    void itsImperfectionsAreThere() {
        List<String> speedless = rows("Machines").stream()
                .filter(machine ->
                        !cell(machine, 3).isEmpty() && cell(machine, 4).isEmpty())
                .map(machine -> machine.get(0))
                .toList();
        assertThat(speedless).containsExactly("Spreader 24 m");
        List<String> watercourseBlank = rows("Fields").stream()
                .filter(field -> cell(field, 8).isEmpty())
                .map(field -> field.get(1))
                .toList();
        assertThat(watercourseBlank).containsExactly("Alder Carr");
        double highest = rows("Products").stream()
                .filter(product -> product.get(0).equals("Herbicide B"))
                .mapToDouble(product -> Double.parseDouble(product.get(3)))
                .sum();
        double dose = rows("Jobs").stream()
                .filter(job -> job.get(7).equals("Herbicide B"))
                .mapToDouble(job -> Double.parseDouble(job.get(8)))
                .sum();
        assertThat(dose).isGreaterThan(highest);
    }

    /** The rows under the headings, to the end of the list. */
    private List<List<String>> rows(String sheetName) {
        XSSFSheet sheet = book.getSheet(sheetName);
        List<List<String>> rows = new ArrayList<>();
        for (int row = HEADING_ROW + 1; row <= sheet.getLastRowNum(); row++) {
            List<String> texts = WrittenBook.texts(sheet, row);
            if (!texts.get(0).equals("Total")) {
                rows.add(texts);
            }
        }
        return rows;
    }

    private static List<String> column(List<List<String>> rows, int column) {
        return rows.stream().map(row -> cell(row, column)).toList();
    }

    private static String cell(List<String> row, int column) {
        return column < row.size() ? row.get(column) : "";
    }
}
