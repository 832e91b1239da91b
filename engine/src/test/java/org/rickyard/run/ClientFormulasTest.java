package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.workbook.open.BookPackage;

/** Formulas and names of the client's that lead to results, before and after a first run. */
class ClientFormulasTest extends AfterAFirstRun {
    /** In a template a total of ours is named before any run has brought it. */
    @Test
    void aTotalNamedBeforeTheFirstRunIsKnownInTheFirst() throws IOException {
        Path template = changed(given, workbook -> {
            Row row = workbook.createSheet("Dashboard").createRow(0);
            XSSFCell total = (XSSFCell) row.createCell(0);
            total.setCellErrorValue(FormulaError.NAME);
            total.getCTCell().addNewF().setStringValue("Rickyard_hours");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.messages()).anyMatch(message -> message.startsWith("1 cell of yours depends on these results"));
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
    }

    /** So are sheets of ours: by cells, by names, and through a name; one of them we never bring. */
    @Test
    void sheetsNamedBeforeTheFirstRunAreKnownInTheFirst() throws IOException {
        Path template = changed(given, workbook -> {
            Row row = workbook.createSheet("Dashboard").createRow(0);
            List<String> formulas = List.of(
                    "'Work rates'!Q10*2", "Summary!C9", "SUM('work RATES'!Q10:Q12)", "MyHours+1", "'No such sheet'!A1");
            for (int i = 0; i < formulas.size(); i++) {
                XSSFCell cell = (XSSFCell) row.createCell(i);
                cell.setCellValue(0);
                cell.getCTCell().addNewF().setStringValue(formulas.get(i));
            }
            ((XSSFCell) row.createCell(5)).getCTCell().addNewF().setStringValue("'Work rates'!$Q$11");
            Name name = workbook.createName();
            name.setNameName("MyHours");
            name.setRefersToFormula("'Work rates'!$Q$10");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.messages()).anyMatch(message -> message.startsWith("5 cells of yours depend on these results"));
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(again.messages()).isEqualTo(once.messages());
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);

        Runs.Run moved = run(changed(once.file(), workbook -> swapRows(workbook.getSheet("Fields"), 1, 4)));
        assertThat(moved.messages()).anyMatch(message -> message.contains("'Work rates'!Q10"));
    }

    /** An area that our own result feeds is as much of a loop in the first run as it is in the second. */
    @Test
    void anInputThatDependsOnASheetNotYetBroughtIsStopped() throws IOException {
        Path template = changed(given, workbook -> {
            XSSFCell area = workbook.getSheet("Fields").getRow(1).getCell(3);
            area.getCTCell().addNewF().setStringValue("'Work rates'!Q10+1");
        });
        Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
        assertThat(once.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP);
            assertThat(finding.cell()).contains(new CellAddress("Fields", 1, 3));
        });
        Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
        assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
    }

    @Test
    void aDashboardOfTheClientsGoesOnWorking() throws IOException {
        Path out = out();
        Path dashboard = changed(out, workbook -> {
            Sheet sheet = workbook.createSheet("Dashboard");
            Row row = sheet.createRow(0);
            row.createCell(0).setCellFormula("Rickyard_hours");
            row.createCell(1).setCellFormula("'Work rates'!Q10*2");
            row.createCell(2).setCellFormula("SUM('Work rates'!Q10:Q12)");
        });
        Runs.Run again = run(dashboard);
        assertThat(again.messages())
                .anyMatch(message -> message.startsWith("3 cells of yours depend on these results"));
        Map<CellAddress, Object> values = PoiRecalculation.of(again.file(), "Dashboard");
        double hours = again.results("hours").stream()
                .mapToDouble(result -> result.number().orElse(0.0))
                .sum();
        assertThat((Double) values.get(new CellAddress("Dashboard", 0, 0)))
                .isCloseTo(hours, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(parity(again)).isEmpty();
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(book.poi().getSheet("Dashboard").getRow(0).getCell(1).getCellFormula())
                    .isEqualTo("'Work rates'!Q10*2");
        }
    }

    @Test
    void anInputThatDependsOnOurResultsIsStopped() {
        Path looped = changed(out(), workbook -> {
            Sheet sheet = workbook.createSheet("Own sums");
            sheet.createRow(0).createCell(0).setCellFormula("Rickyard_hours/10");
            workbook.getSheet("Fields").getRow(1).getCell(3).setCellFormula("'Own sums'!A1+1");
            workbook.getSheet("Fields").getRow(1).getCell(3).setCellValue(4.2);
        });
        Runs.Run again = run(looped);
        assertThat(again.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP);
            assertThat(finding.cell()).contains(new CellAddress("Fields", 1, 3));
        });
        assertThat(again.results("hours")).anyMatch(result -> !result.given());
        assertThat(values(again).values()).noneMatch(value -> value instanceof org.rickyard.testing.CellError);
        assertThat(parity(again)).isEmpty();
        assertThat(again.result("hours", "Long Acre", "Second cut").reason()).contains("area");
    }

    /** The name was led to our total and the client's formulas with it, and a number by a name was gone: not a word. */
    @Test
    void aNameOfTheClientsThatIsThatOfATotalIsLeftAlone() throws Exception {
        for (String formula : List.of("Fields!$B$1", "250", "\"ten\"")) {
            Runs.Run once = Runs.run(named("Rickyard_hours", formula), folder.resolve("once.xlsx"));
            assertThat(once.messages())
                    .anyMatch(
                            message -> message.contains("the name 'Rickyard_hours' of this workbook leads to no sheet")
                                    && message.contains("called 'Rickyard_hours_2' here"));
            assertThat(names(once.file()))
                    .containsEntry("Rickyard_hours", formula)
                    .hasEntrySatisfying(
                            "Rickyard_hours_2", total -> assertThat(total).startsWith("'Work rates'!"));
            Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
            assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
        }
        Path out = folder.resolve("once.xlsx");
        Runs.run(named("Rickyard_factor", "0.25"), out);
        assertThat(names(out)).containsEntry("Rickyard_factor", "0.25").containsKey("Rickyard_hours");
    }

    /** A number once given stays, though the name without it is free again: formulas may read it. */
    @Test
    void aTotalKeepsTheNumberOfItsName() throws Exception {
        Runs.Run once = Runs.run(named("rickyard_HOURS", "Fields!$B$1"), folder.resolve("once.xlsx"));
        Path freed = changed(once.file(), workbook -> workbook.removeName(workbook.getName("rickyard_HOURS")));
        Runs.Run again = Runs.run(freed, folder.resolve("twice.xlsx"));
        assertThat(names(again.file())).containsKey("Rickyard_hours_2").doesNotContainKey("Rickyard_hours");
        assertThat(again.messages()).anyMatch(message -> message.contains("is still called 'Rickyard_hours_2' here"));
    }

    /** Without the marks that make them ours, and one of them renamed, the sheets are the client's: a refusal till now. */
    @Test
    void aTotalsSheetThatLostItsMarkAndItsNameKeepsTheNameOfTheTotal() throws Exception {
        Path lost = changed(out(), workbook -> {
            for (Name name : List.copyOf(workbook.getAllNames())) {
                if (name.getNameName().equals(OurSheets.MARKER)) {
                    workbook.removeName(name);
                }
            }
            workbook.setSheetName(workbook.getSheetIndex("Work rates"), "My rates");
        });
        Runs.Run again = Runs.run(lost, folder.resolve("again.xlsx"));
        assertThat(names(again.file()))
                .hasEntrySatisfying("Rickyard_hours", his -> assertThat(his).contains("My rates"))
                .hasEntrySatisfying(
                        "Rickyard_hours_2", total -> assertThat(total).startsWith("'Work rates'!"));
        Runs.Run thrice = Runs.run(again.file(), folder.resolve("thrice.xlsx"));
        assertThat(Files.mismatch(again.file(), thrice.file())).isEqualTo(-1);
    }

    /** His name begins as ours do and leads to his own cell: an area that reads it goes round in no circle. */
    @Test
    void aNameThatBeginsAsOursDoButIsTheClientsIsNoResult() throws Exception {
        for (String name : List.of("Rickyard_factor", "Rickyard_hours")) {
            Path template = changed(given, workbook -> {
                workbook.createSheet("Own").createRow(0).createCell(0).setCellValue(4.2);
                Name own = workbook.createName();
                own.setNameName(name);
                own.setRefersToFormula("Own!$A$1");
                XSSFCell area = workbook.getSheet("Fields").getRow(1).getCell(3);
                area.setCellFormula(name);
                area.setCellValue(4.2);
            });
            Runs.Run once = Runs.run(template, folder.resolve("once.xlsx"));
            assertThat(once.findings()).noneMatch(finding -> finding.cell()
                    .filter(new CellAddress("Fields", 1, 3)::equals)
                    .isPresent());
            assertThat(once.messages()).noneMatch(message -> message.contains("depends on these results"));
            Runs.Run again = Runs.run(once.file(), folder.resolve("twice.xlsx"));
            assertThat(Files.mismatch(once.file(), again.file())).isEqualTo(-1);
        }
    }

    /** A sheet that lost its mark alone is brought anew, and the name goes with it: what reads it is a loop as before. */
    @Test
    void anInputThatReadsATotalWhoseSheetLostItsMarkIsStopped() {
        Path looped = changed(out(), workbook -> {
            for (Name name : List.copyOf(workbook.getAllNames())) {
                if (name.getNameName().equals(OurSheets.MARKER)) {
                    workbook.removeName(name);
                }
            }
            XSSFCell area = workbook.getSheet("Fields").getRow(1).getCell(3);
            area.setCellFormula("Rickyard_hours");
            area.setCellValue(4.2);
        });
        assertThat(run(looped).findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP);
            assertThat(finding.cell()).contains(new CellAddress("Fields", 1, 3));
        });
    }

    private static Map<String, String> names(Path file) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            Map<String, String> names = new HashMap<>();
            book.definedNames().stream()
                    .filter(name -> name.localSheetId() == null)
                    .forEach(name -> names.put(name.name(), name.formula()));
            return names;
        }
    }

    private Path named(String name, String formula) {
        return changed(given, workbook -> {
            Name added = workbook.createName();
            added.setNameName(name);
            added.setRefersToFormula(formula);
        });
    }
}
