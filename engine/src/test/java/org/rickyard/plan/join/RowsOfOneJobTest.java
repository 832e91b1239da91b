package org.rickyard.plan.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.SeasonFit;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.ProductOrder;
import org.rickyard.trade.spraying.SeasonDose;
import org.rickyard.trade.spraying.SprayWeather;
import org.rickyard.trade.spraying.TankPlan;

/** Rows of the job list that are one job: what each of them alone tells is not lost, nor is any of them counted apart. */
class RowsOfOneJobTest {
    private static final Object[] SPRAYED =
            row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)");

    private static WorkPlan sprayed(Object[]... jobs) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "wheat"), row("B", 6, "wheat"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Tank (L)",
                                "Nozzle spacing (m)",
                                "Nozzle size",
                                "Highest pressure (bar)"),
                        row("Sprayer", "sprayer", 24, 10, 3000, 0.5, "03", 5))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Harvest interval (d)"),
                        row("X", "L", null),
                        row("Y", "L", 28))
                .sheet("Jobs", jobs)
                .run()
                .plan();
    }

    /** The columns of a spraying, and further ones. */
    private static Object[] sprayedWith(String... further) {
        return Stream.concat(Stream.of(SPRAYED), Stream.of(further)).toArray();
    }

    private static double number(ResultTable table, org.rickyard.formula.Symbol symbol, int row) {
        return table.of(symbol).number(row);
    }

    /** 10 ha at 1 and 2 L/ha; a product whose row leaves the water volume to the row above was lost. */
    @Test
    void aProductWhoseRowRepeatsNoWaterVolumeIsInTheSameTank() {
        for (boolean first : List.of(true, false)) {
            WorkPlan plan = sprayed(
                    SPRAYED,
                    row("T1", "A", "spraying", "Sprayer", "X", 1, first ? 200 : null),
                    row("T1", "A", "spraying", "Sprayer", "Y", 2, first ? null : 200));
            ResultTable order = plan.table("product-order");
            assertThat(plan.table("spray-blocks").rows()).isEqualTo(1);
            assertThat(number(plan.table("spray-blocks"), Quantities.WATER_VOLUME, 0))
                    .isEqualTo(200);
            assertThat(number(order, ProductOrder.NEED, 0)).isEqualTo(10);
            assertThat(number(order, ProductOrder.NEED, 1)).isEqualTo(20);
        }
    }

    @Test
    void aProductInAnotherWaterVolumeIsAnotherTank() {
        WorkPlan plan = sprayed(
                SPRAYED,
                row("T1", "A", "spraying", "Sprayer", "X", 1, 200),
                row("T1", "A", "spraying", "Sprayer", "Y", 2, 100));
        assertThat(plan.table("spray-blocks").rows()).isEqualTo(2);
        assertThat(plan.table("tank-mix").rows()).isEqualTo(2);
        assertThat(number(plan.table("product-order"), ProductOrder.NEED, 1)).isEqualTo(20);
    }

    /** 1 June to 10 June is 9 days of 28; the day stands only in the row of the product that has an interval. */
    @Test
    void theDaysOfAProductsOwnRowAreHeldAgainstItsInterval() {
        WorkPlan plan = sprayed(
                sprayedWith("Earliest", "Last harvest date"),
                row("T3", "A", "spraying", "Sprayer", "X", 1, 200, LocalDate.of(2026, 6, 1), null),
                row("T3", "A", "spraying", "Sprayer", "Y", 2, 200, null, LocalDate.of(2026, 6, 10)));
        ResultTable applied = plan.table(SeasonDose.APPLICATION_TABLE);
        assertThat(number(applied, SeasonDose.TO_HARVEST, 1)).isEqualTo(9);
        assertThat(applied.of(TableSpec.CAUTIONS).word(1)).contains("too near to harvest");
    }

    /** 200 L/ha × 14 km/h × 0.5 m ÷ 600 = 2.333 L/min of a nozzle that gives 1.2 at 3 bar: 3 × (2.333 ÷ 1.2)² = 11.3 bar. */
    @Test
    void everySpeedOfABlockHasItsPressure() {
        WorkPlan plan = sprayed(
                sprayedWith("Speed (km/h)"),
                row("T1", "A", "spraying", "Sprayer", "X", 1, 200, 7),
                row("T1", "B", "spraying", "Sprayer", "X", 1, 200, 14));
        ResultTable nozzles = plan.table("nozzles");
        assertThat(plan.table("spray-blocks").rows()).isEqualTo(1);
        assertThat(nozzles.rows()).isEqualTo(2);
        assertThat(number(nozzles, NozzlePressure.WANTED_PRESSURE, 1)).isCloseTo(11.34, within(0.01));
        assertThat(nozzles.of(TableSpec.CAUTIONS).word(1)).contains("above the nozzle's highest");
    }

    @Test
    void theWeatherOfALaterRowIsReckoned() {
        WorkPlan plan = sprayed(
                sprayedWith("Air temperature (C)", "Humidity (%)"),
                row("T1", "A", "spraying", "Sprayer", "X", 1, 200, null, null),
                row("T1", "B", "spraying", "Sprayer", "X", 1, 200, 30, 20));
        ResultTable weather = plan.table("spray-weather");
        assertThat(weather.rows()).isEqualTo(1);
        assertThat(number(weather, SprayWeather.DELTA_T, 0)).isGreaterThan(10);
    }

    @Test
    void twoMixesOfOneJobAreAskedAbout() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "wheat"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Mixes", row("Mix", "Product", "Dose (L/ha)"), row("Early", "X", 1), row("Late", "Y", 2))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Mix", "Water volume (L/ha)"),
                        row("A", "spraying", "Sprayer", "Early", 200),
                        row("A", "spraying", "Sprayer", "Late", 200))
                .run()
                .plan();
        assertThat(plan.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
            assertThat(finding.cell().orElseThrow()).hasToString("Jobs!D3");
            assertThat(finding.message()).startsWith("the mixes 'Early' and 'Late' are reckoned as one tank");
        });
    }

    private static WorkPlan forage(String machines, LocalDate second, String... fields) {
        Object[][] jobs = new Object[fields.length + 1][];
        jobs[0] = row("Job", "Field", "Operation", "Machine", "Earliest", "Latest", "Workable days (%)");
        for (int i = 0; i < fields.length; i++) {
            LocalDate day = i == 0 ? LocalDate.of(2026, 5, 20) : second;
            jobs[i + 1] = row("1st cut", fields[i], "chopping", machines, day, day, 50);
        }
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)"),
                        row("A", 10, "grass", 20, "as carted fresh", 2),
                        row("B", 14, "grass", 20, "as carted fresh", 2))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)",
                                "Hours per day (h)",
                                "Crew"),
                        row("Forager", "forager", 6, 8, null, null, null, 10, 1),
                        row("Trailer", "trailer", null, null, 10, 20, 30, 10, 1),
                        row("Mower", "mower", 3, 12, null, null, null, 10, 1))
                .sheet("Jobs", jobs)
                .run()
                .plan();
    }

    /** A row for each field is the same work as one row for all: 24 ha do not fit where 10 and 14 ha each would. */
    @Test
    void aGangsJobInARowForEachFieldIsOneTask() {
        LocalDate day = LocalDate.of(2026, 5, 20);
        ResultTable apart = forage("Forager; Trailer x 8", day, "A", "B").table("season");
        ResultTable together = forage("Forager; Trailer x 8", day, "all").table("season");
        assertThat(apart.rows()).isEqualTo(1);
        assertThat(apart.of(SeasonFit.FITS).word(0)).isEqualTo("does not fit");
        assertThat(number(apart, SeasonFit.HOURS, 0)).isCloseTo(number(together, SeasonFit.HOURS, 0), within(1e-9));
    }

    /** Each is held against its own days. */
    @Test
    void rowsOfOneJobInOtherDaysAreTasksApart() {
        for (String machines : List.of("Forager; Trailer x 8", "Mower")) {
            ResultTable season =
                    forage(machines, LocalDate.of(2026, 7, 1), "A", "B").table("season");
            assertThat(season.rows()).isEqualTo(2);
            assertThat(number(season, SeasonFit.AREA, 0)).isEqualTo(10);
            assertThat(number(season, SeasonFit.AREA, 1)).isEqualTo(14);
            assertThat(number(season, Quantities.LATEST, 1) - number(season, Quantities.LATEST, 0))
                    .isEqualTo(42);
        }
    }

    private static WorkPlan mown(String column, Object first, Object second) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"), row("B", 14, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, 12))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", column, "Workable days (%)"),
                        row("Mow", "A", "mowing", "Mower", first, 50),
                        row("Mow", "B", "mowing", "Mower", first, 50),
                        row("Mow", "A", "mowing", "Mower", second, 50),
                        row("Mow", "B", "mowing", "Mower", second, 50))
                .run()
                .plan();
    }

    /** The second cut was lost without a word where the job has a name. */
    @Test
    void aNamedJobThatComesToAFieldAgainIsDoneAgain() {
        LocalDate may = LocalDate.of(2026, 5, 20);
        WorkPlan twice = mown("Earliest", may, may.plusDays(42));
        assertThat(twice.table("work-rates").rows()).isEqualTo(4);
        assertThat(twice.table("season").rows()).isEqualTo(2);
        assertThat(number(twice.table("season"), SeasonFit.AREA, 1)).isEqualTo(24);
        assertThat(mown("Cut", 1, 2).table("work-rates").rows()).isEqualTo(4);
        assertThat(twice.findings()).noneMatch(finding -> finding.message().contains("reckoned once"));
    }

    private static WorkPlan mownBy(String last, Object[]... rows) {
        Object[][] jobs = new Object[rows.length + 1][];
        jobs[0] = row("Job", "Field", "Operation", "Machine", last);
        System.arraycopy(rows, 0, jobs, 1, rows.length);
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop"),
                        row("A", 10, "grass"),
                        row("B", 14, "grass"),
                        row("C", 5, "wheat"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, 12))
                .sheet("Jobs", jobs)
                .run()
                .plan();
    }

    /** The field was named in May, and its crop in July: its second cut was counted with the first. */
    @Test
    void aFieldThatComesAgainByItsCropIsDoneAgain() {
        for (boolean byCut : List.of(true, false)) {
            LocalDate may = LocalDate.of(2026, 5, 20);
            Object first = byCut ? 1 : may;
            Object second = byCut ? 2 : may.plusDays(42);
            WorkPlan plan = mownBy(
                    byCut ? "Cut" : "Earliest",
                    row("Mow", "A", "mowing", "Mower", first),
                    row("Mow", "grass", "mowing", "Mower", second));
            assertThat(plan.table("work-rates").rows()).isEqualTo(3);
        }
    }

    /** A job that is spread over days, a field on each, is one job; what comes round again goes with its own round. */
    @Test
    void fieldsOfTwoRoundsGoWithTheRoundOfTheirDay() {
        LocalDate may = LocalDate.of(2026, 5, 20);
        WorkPlan spread = sprayed(
                sprayedWith("Earliest"),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may),
                row("Docks", "B", "spraying", "Sprayer", "X", 1, 200, may.plusDays(1)));
        assertThat(spread.table("spray-blocks").rows()).isEqualTo(1);
        WorkPlan rounds = sprayed(
                sprayedWith("Earliest"),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may),
                row("Docks", "wheat", "spraying", "Sprayer", "Y", 2, 200, may.plusDays(42)),
                row("Docks", "B", "spraying", "Sprayer", "X", 1, 200, may));
        assertThat(rounds.table("spray-blocks").rows()).isEqualTo(2);
        assertThat(number(rounds.table("product-order"), ProductOrder.NEED, 0)).isEqualTo(16);
        assertThat(number(rounds.table("product-order"), ProductOrder.NEED, 1)).isEqualTo(32);
        WorkPlan first = sprayed(
                sprayedWith("Earliest"),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may),
                row("Docks", "B", "spraying", "Sprayer", "X", 1, 200, may.plusDays(30)),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may.plusDays(30)));
        assertThat(number(first.table("spray-blocks"), TankPlan.SPRAY_TOTAL, 0)).isEqualTo(2000);
        assertThat(number(first.table("spray-blocks"), TankPlan.SPRAY_TOTAL, 1)).isEqualTo(3200);
    }

    @Test
    void rowsThatSayTheSameAgainAreTold() {
        LocalDate may = LocalDate.of(2026, 5, 20);
        WorkPlan plan = mown("Earliest", may, may);
        assertThat(plan.table("work-rates").rows()).isEqualTo(2);
        assertThat(plan.findings()).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
            assertThat(finding.cell().orElseThrow()).hasToString("Jobs!B4");
            assertThat(finding.message()).startsWith("this row and 1 more say of job, field and machine the same");
        });
    }

    /** What is sprayed in May and what is sprayed in July were mixed in one tank, since both are called so. */
    @Test
    void aNamedSprayingOfAnotherDayIsAnotherTank() {
        LocalDate may = LocalDate.of(2026, 5, 20);
        WorkPlan plan = sprayed(
                sprayedWith("Earliest"),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may),
                row("Docks", "A", "spraying", "Sprayer", "Y", 2, null, null),
                row("Docks", "A", "spraying", "Sprayer", "X", 1, 200, may.plusDays(42)),
                row("Docks", "A", "spraying", "Sprayer", "Y", 2, null, null));
        assertThat(plan.table("spray-blocks").rows()).isEqualTo(2);
        assertThat(plan.table("tank-mix").rows()).isEqualTo(4);
        assertThat(number(plan.table("product-order"), ProductOrder.NEED, 1)).isEqualTo(40);
        assertThat(plan.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    @Test
    void aMachineNamedTwiceIsTwo() {
        LocalDate day = LocalDate.of(2026, 5, 20);
        for (List<String> same : List.of(
                List.of("Forager; Trailer x 3", "Forager; Trailer; Trailer; Trailer"),
                List.of("Mower x 2", "Mower; Mower"))) {
            ResultTable counted = forage(same.get(0), day, "all").table("holding-costs");
            ResultTable listed = forage(same.get(1), day, "all").table("holding-costs");
            var labour = org.rickyard.trade.cost.CostTotals.LABOUR;
            assertThat(number(listed, labour, 0)).isCloseTo(number(counted, labour, 0), within(1e-9));
            ResultTable season = forage(same.get(1), day, "all").table("season");
            assertThat(number(season, SeasonFit.HOURS, 0))
                    .isCloseTo(
                            number(forage(same.get(0), day, "all").table("season"), SeasonFit.HOURS, 0), within(1e-9));
        }
    }
}
