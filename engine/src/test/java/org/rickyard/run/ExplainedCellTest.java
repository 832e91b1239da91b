package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.audit.ExplanationText;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.run.ExplainedCell.NotExplainedException;
import org.rickyard.testing.FarmBook;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;
import org.rickyard.workbook.open.BookPackage;

class ExplainedCellTest {
    @TempDir
    Path folder;

    private Recalculation run(FarmBook farm) throws Exception {
        try (BookPackage book = BookPackage.open(farm.write(folder.resolve("farm.xlsx")))) {
            return Recalculation.of(book, RunOptions.usual());
        }
    }

    private static List<String> explain(Recalculation run, String cell) throws Exception {
        return ExplanationText.lines(ExplainedCell.of(run, cell));
    }

    /** A cell of a result table, as one would type it. */
    private static String cell(Recalculation run, String table, Symbol symbol, int row) {
        ResultTable found = run.plan().table(table);
        CellAddress cell = run.sheets().places().cell(found.spec(), symbol, row);
        return cell.sheet() + "!" + CellAddress.letters(cell.column()) + (cell.row() + 1);
    }

    private static int rowOf(Recalculation run, String table, Symbol name, String wanted) {
        ResultTable found = run.plan().table(table);
        for (int row = 0; row < found.rows(); row++) {
            if (found.of(name).word(row).equals(wanted)) {
                return row;
            }
        }
        throw new IllegalArgumentException("no row for " + wanted);
    }

    @Test
    void resultIsFollowedDownToTypedCells() throws Exception {
        Recalculation run = run(FarmBook.usual());
        int mower = rowOf(run, "work-rates", Quantities.MACHINE, "Mower 3 m");

        List<String> lines = explain(run, cell(run, "work-rates", FieldRates.WORK_RATE.result(), mower));

        assertThat(lines.get(0)).startsWith("work rate = 2.4384 ha/h @ 'Work rates'!");
        assertThat(lines)
                .contains(
                        "  of: Moor End, Cut, Long Acre, mowing, Mower 3 m",
                        "  = speed × working width × field efficiency ÷ 10",
                        "  = 10 × 3.048 × 80 % ÷ 10",
                        "  - speed = 10 km/h @ Machines!D2 (typed)",
                        "  - working width = 3.048 m @ Machines!C2 (typed)",
                        "      typed as 10 ft",
                        "      - field efficiency = 80 % @ Machines!E2 (typed)");
    }

    @Test
    void defaultIsNamedWithItsTableAndTheCellThatWouldReplaceIt() throws Exception {
        Recalculation run = run(FarmBook.usual());
        int sprayer = rowOf(run, "work-rates", Quantities.MACHINE, "Sprayer");

        List<String> lines = explain(run, cell(run, "work-rates", FieldRates.WORK_RATE.result(), sprayer));

        assertThat(lines).anyMatch(line -> line.matches(" *- field efficiency = 65 % @ 'Work rates'!.* \\(default\\)"));
        assertThat(lines)
                .anyMatch(line -> line.strip().startsWith("reads the table 'Typical field efficiency' on Basis!"));
        assertThat(lines).anyMatch(line -> line.strip().equals("- field efficiency: not given @ Machines!E4"));
    }

    @Test
    void withheldResultSaysWhyAndWhere() throws Exception {
        Recalculation run = run(FarmBook.usual());
        int rake = rowOf(run, "work-rates", Quantities.MACHINE, "Rake");

        List<String> lines = explain(run, cell(run, "work-rates", FieldRates.WORK_RATE.result(), rake));

        assertThat(lines.get(0)).startsWith("work rate: withheld @ ");
        assertThat(lines).contains("  because: speed missing (Machines!D3)", "  - speed: not given @ Machines!D3");
    }

    @Test
    void totalOverAnotherTableNamesEachAddendWithItsRow() throws Exception {
        Recalculation run = run(FarmBook.usual());

        List<String> lines = explain(run, cell(run, "clamps", ClampContents.CROP_IN, 0));

        assertThat(lines.get(0)).startsWith("crop in clamp (fresh) = 239.2 t @ ");
        assertThat(lines)
                .anyMatch(line -> line.strip().equals("= total of crop ensiled (fresh)"))
                .anyMatch(line -> line.matches(" +- crop ensiled \\(fresh\\) = 105 t @ Crop!.*"))
                .anyMatch(line -> line.matches(" +- crop ensiled \\(fresh\\) = 134\\.2 t @ Crop!.*"))
                .contains(
                        "          of: Moor End, Home Field, grass, Big clamp",
                        "          - area = 6.1 ha @ Fields!D3 (typed)");
    }

    @Test
    void joinIsFollowedToTheRowItTakesItsValueFrom() throws Exception {
        Recalculation run = run(FarmBook.usual());

        List<String> lines = explain(run, cell(run, "tank-mix", TankPlan.PRODUCT_TOTAL.result(), 0));

        assertThat(lines.get(0)).startsWith("product total = 21.625 L @ ");
        assertThat(lines)
                .anyMatch(line -> line.matches(" +- treated area of the block = 17\\.3 ha @ 'Spray blocks'!.*"))
                .anyMatch(line -> line.strip().equals("- area = 17.3 ha @ Fields!D4 (typed)"))
                .anyMatch(line -> line.strip().equals("- dose = 1.25 L/ha @ Jobs!F3 (typed)"));
    }

    @Test
    void totalAboveTheDataSaysWhatItLeavesOut() throws Exception {
        Recalculation run = run(FarmBook.usual());
        ResultTable table = run.plan().table("work-rates");
        String letters = CellAddress.letters(table.spec().position(FieldRates.HOURS.result()));

        List<String> total = explain(run, "Work rates!" + letters + (SheetPlaces.TOTAL_ROW + 1));
        List<String> byName = explain(run, "Rickyard_hours");
        List<String> leftOut = explain(run, "Work rates!" + letters + (SheetPlaces.LEFT_OUT_ROW + 1));

        assertThat(total.get(0)).startsWith("total of hours = ");
        assertThat(total).contains("  2 rows are left out because the value is withheld: speed missing (Machines!D3)");
        assertThat(byName).isEqualTo(total);
        assertThat(leftOut.get(0)).startsWith("rows left out of the total of hours = 2 @ ");
    }

    @Test
    void aTotalOfNothingIsWithheldAndNotNought() throws Exception {
        List<String> total = explain(run(FarmBook.usual()), "Rickyard_product_cost");

        assertThat(total.get(0)).startsWith("total of cost: withheld @ ");
        assertThat(total).anyMatch(line -> line.contains(" left out because the value is withheld: "));
    }

    @Test
    void aTotalOfTotalsSaysWhatThoseLeaveOut() throws Exception {
        Recalculation run = run(FarmBook.usual());
        String letters = CellAddress.letters(
                run.plan().table("holding-totals").spec().position(WorkTotals.HOLDING_HOURS.result()));

        List<String> total = explain(run, "Rickyard_HOLDING_hours");
        List<String> leftOut = explain(run, "Holding hours!" + letters + (SheetPlaces.LEFT_OUT_ROW + 1));

        assertThat(total).contains("  what is left out of the rows is left out here: see the cell below this one");
        assertThat(leftOut.get(0)).startsWith("rows left out of the total of holding hours = 2 @ ");
        assertThat(leftOut).contains("      of: Moor End");
    }

    @Test
    void whereThereIsNothingToSayNothingIsWithheld() throws Exception {
        Recalculation run = run(FarmBook.usual()
                .sheet(
                        "Jobs",
                        FarmBook.row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day (h)"),
                        FarmBook.row("Cut", "grass", "mow", "Mower 3 m", 46160, 46170, 100, 8),
                        FarmBook.row("Weeds", "Top", "spray", "Sprayer", 46166, 46170, 100, 8)));
        int mower = rowOf(run, "work-rates", Quantities.MACHINE, "Mower 3 m");

        assertThat(explain(run, cell(run, "work-rates", TableSpec.CAUTIONS, mower))
                        .get(0))
                .startsWith("cautions = none @ ");
        ResultTable chart = run.plan().table("time-chart");
        Symbol day = chart.spec().columns().stream()
                .filter(column -> column instanceof TableColumn.Method)
                .map(TableColumn::symbol)
                .filter(symbol -> !chart.of(symbol).has(0))
                .findFirst()
                .orElseThrow();
        assertThat(explain(run, cell(run, "time-chart", day, 0)))
                .noneMatch(line -> line.contains("withheld") || line.contains("because"))
                .first()
                .asString()
                .contains(" = no job @ ");
    }

    @Test
    void linesOfSummaryAndTrailAreFollowed() throws Exception {
        Recalculation run = run(FarmBook.usual());

        List<String> trail = explain(run, "Trail!J5");

        assertThat(trail.get(0)).contains(" @ 'Work rates'!");
        assertThat(trail).contains("  Trail!J5 leads there");
    }

    @Test
    void cellOfTheClientsNamesTheResultsThatDependOnIt() throws Exception {
        Recalculation run = run(FarmBook.usual());

        List<String> lines = explain(run, "Fields!D4");

        assertThat(lines.get(0)).isEqualTo("area = 17.3 ha @ Fields!D4 (typed)");
        assertThat(lines)
                .contains("  your own cell: Area of the list Fields", "  used by:")
                .anyMatch(line -> line.startsWith("  - total spray mix = 3460 L @ 'Spray blocks'!"))
                .noneMatch(line -> line.contains("Long Acre"));
    }

    /** What is told aside, here what a tractor may be worth, is a result like others to whoever asks for its uses. */
    @Test
    void whatIsToldAsideDependsOnItsCellsToo() throws Exception {
        FarmBook farm = FarmBook.empty()
                .sheet("Fields", FarmBook.row("Field", "Area (ha)", "Crop"), FarmBook.row("Top", 10, "grass"))
                .sheet(
                        "Machines",
                        FarmBook.row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price",
                                "Trade-in value",
                                "Age (yr)",
                                "Life (yr)",
                                "Hours per year (h)"),
                        FarmBook.row("Mower", "mower", 3, 10),
                        FarmBook.row("Red", "tractor", null, null, 78, "PTO", 50000, 9000, 5, 10, 400))
                .sheet(
                        "Jobs",
                        FarmBook.row("Job", "Field", "Operation", "Machine", "Tractor"),
                        FarmBook.row("1", "Top", "mowing", "Mower", "Red"));

        assertThat(explain(run(farm), "Machines!I3"))
                .contains("  1 result depends on it")
                .anyMatch(line -> line.startsWith("  - remaining value (US market, from memory) = "));
    }

    @Test
    void constantThatWasOverruledLeadsToAssumptions() throws Exception {
        Recalculation plain = run(FarmBook.usual());
        Constant constant = WorkPlan.constants().get(0);
        FarmBook overruling = FarmBook.usual()
                .sheet(
                        "Assumptions",
                        FarmBook.row("Item", "Value", "Unit"),
                        FarmBook.row(
                                constant.name(),
                                constant.value() + 1,
                                constant.unit().symbol()));
        String basis =
                plain.sheetNames().stream().filter("Basis"::equals).findFirst().orElseThrow();

        List<String> lines = explain(run(overruling), basis + "!B5");

        assertThat(lines.get(0)).startsWith(constant.name() + " = ").endsWith("(constant)");
        assertThat(lines).anyMatch(line -> line.startsWith("  overruled by your cell Assumptions!B2; without it: "));
    }

    @Test
    void cellMayBeWrittenAsInAFormulaAndInAnyCase() throws Exception {
        Recalculation run = run(FarmBook.usual());

        assertThat(explain(run, "'work rates'!$a$10")).isEqualTo(explain(run, "Work rates!A10"));
    }

    @Test
    void unknownCellsGetASentenceThatSaysWhatCanBeAsked() throws Exception {
        Recalculation run = run(FarmBook.usual());

        assertThatThrownBy(() -> explain(run, "K12"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("Name the sheet");
        assertThatThrownBy(() -> explain(run, "Nowhere!A1"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("There is no sheet 'Nowhere'")
                .hasMessageContaining("Work rates");
        assertThatThrownBy(() -> explain(run, "Work rates!R10C3"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("column letters and row number");
        assertThatThrownBy(() -> explain(run, "rickyard_nothing"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("Rickyard_hours");
        Recalculation withNotes =
                run(FarmBook.usual().sheet("Notes", FarmBook.row("Ask about the hedge"), FarmBook.row("and the gate")));
        assertThatThrownBy(() -> explain(withNotes, "notes!A1"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageStartingWith("No list was read from the sheet 'Notes'")
                .hasMessageContaining("Fields, Machines");
        assertThatThrownBy(() -> explain(run, "Work rates!A1:B2"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("not one cell");
        assertThatThrownBy(() -> explain(run, "Work rates!A900"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("rows 10 to");
        assertThatThrownBy(() -> explain(run, "Fields!Z99"))
                .isInstanceOf(NotExplainedException.class)
                .hasMessageContaining("no list that was read");
    }

    @Test
    void everyCellOfEveryResultTableCanBeExplained() throws Exception {
        Recalculation run = run(FarmBook.usual());

        for (ResultTable table : run.plan().tables()) {
            for (TableColumn column : table.spec().columns()) {
                for (int row = 0; row < table.rows(); row++) {
                    assertThat(explain(run, cell(run, table.spec().id(), column.symbol(), row)))
                            .isNotEmpty();
                }
            }
        }
    }
}
