package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.season.SeasonTables;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.season.SeasonFit;

/** The days of a plan are of the run: whoever changes what they rest on is told so. */
class PlanOfTheRunTest {
    private static final CellAddress MASTER = new CellAddress("Checks", 1, 0);
    private static final String AGAIN = "Checks: RUN AGAIN - ";

    @TempDir
    static Path folder;

    private static Runs.Run run;
    private static LiveGrid grid;

    @BeforeAll
    static void write() {
        Path client = folder.resolve("in.xlsx");
        ClientBook.create()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Top", "wheat", 12),
                        row("Barn", "wheat", 9),
                        row("Lea", "grass", 7))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Number"),
                        row("Drill", "drill", 3, 9, 70, 2),
                        row("Roll", "field rolls", 6, 8, 80, 1))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day (h)",
                                "After",
                                "Lag (h)"),
                        row("Sow", "Top", "drilling", "Drill", 46290, 46300, 60, 8, null, null),
                        row("Sow on", "Barn", "drilling", "Drill", 46290, 46300, 60, 8, "Sow", 24),
                        row("Roll", "Lea", "rolling", "Roll", 46290, 46300, 60, 8, null, null))
                .save(client);
        run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 1));
        grid = new LiveGrid(run.file(), run.plan(), run.places());
    }

    @AfterAll
    static void close() throws Exception {
        grid.close();
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** Of a number with seventeen digits a library for scripts writes sixteen, and the sheet was doubled at the next run. */
    @Test
    void whatItWasPlannedWithSurvivesProgramsThatWriteSixteenDigits() {
        ResultTable table = run.plan().table("day-plan");
        for (Symbol days : List.of(SeasonFit.PLANNED_WITH, SeasonFit.PLANNED_TOGETHER)) {
            for (int task = 0; task < table.rows(); task++) {
                double written = table.of(days).number(task);
                assertThat(new BigDecimal(written).round(new MathContext(16)).doubleValue())
                        .isEqualTo(written);
            }
        }
    }

    @ParameterizedTest(name = "Jobs {0},{1} -> {2}")
    @CsvSource({"Jobs,1,4,46292", "Jobs,2,5,46296", "Jobs,2,9,240", "Machines,1,5,1"})
    void aNumberThatOnlyThePlanRestsOnAsksForANewRun(String sheet, int row, int column, double number) {
        Object stood = grid.value(MASTER);
        grid.spoil(new CellAddress(sheet, row, column), number);
        Object said = grid.value(MASTER);
        grid.mend();
        assertThat((String) stood).doesNotStartWith(AGAIN);
        assertThat((String) said).startsWith(AGAIN);
    }

    @Test
    void daysThatArePlannedOtherwiseNowAreSaidBesideTheJob() {
        ResultTable plan = run.plan().table(SeasonTables.PLAN_ID);
        CellAddress cautions = run.places().cell(plan.spec(), TableSpec.CAUTIONS, 0);
        Object stood = grid.value(cautions);
        grid.spoil(new CellAddress("Fields", 1, 2), 20.0);
        Object said = grid.value(cautions);
        grid.mend();
        assertThat(stood).isEqualTo("");
        assertThat((String) said).contains("takes other days now than it was planned with: run again");
    }

    /** "Sow on" has the same drills and waits for it; Roll is by itself. */
    @Test
    void jobsPlannedWithOneThatTakesOtherDaysNowSayThatTheirsMayBeOthers() {
        ResultTable plan = run.plan().table(SeasonTables.PLAN_ID);
        CellAddress follower = run.places().cell(plan.spec(), TableSpec.CAUTIONS, 1);
        CellAddress alone = run.places().cell(plan.spec(), TableSpec.CAUTIONS, 2);
        Object stood = grid.value(follower);
        grid.spoil(new CellAddress("Machines", 1, 3), 5.0);
        grid.spoil(new CellAddress("Fields", 2, 2), 15.0);
        Object both = grid.value(follower);
        grid.mend();
        grid.spoil(new CellAddress("Fields", 1, 2), 20.0);
        Object said = grid.value(follower);
        Object unaffected = grid.value(alone);
        grid.spoil(new CellAddress("Fields", 1, 2), null);
        Object withheld = grid.value(follower);
        grid.mend();
        assertThat(stood).isEqualTo("");
        assertThat((String) both).contains("the job takes other days now").doesNotContain("may be others too");
        assertThat((String) said).contains("these days may be others too: run again");
        assertThat((String) withheld).contains("these days may be others too: run again");
        assertThat(unaffected).isEqualTo("");
    }
}
