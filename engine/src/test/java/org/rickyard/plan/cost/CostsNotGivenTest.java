package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.plan.cost.CostFarm.PRICES;
import static org.rickyard.plan.cost.CostFarm.farm;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;

/** What the sheets of costs leave out, withhold, ask and caution, and in which words. */
@Tag("derived")
class CostsNotGivenTest {
    @Test
    void aChargeBelowRunningCostHasNoBreakEvenAndSaysSo() {
        SeasonBook.Worked worked = farm("PTO", 2, PRICES).run();
        assertThat(worked.result("break-even-area", "Mower").given()).isFalse();
        assertThat(worked.result("break-even-area", "Mower").reason()).contains("hiring is cheaper at any area");
        assertThat(worked.word("own-or-hire", "Mower")).isEqualTo("no break-even: hiring costs less at any area");
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatNeedsAPriceThatIsMissingIsWithheldAndNothingElse() {
        SeasonBook.Worked worked = farm("PTO", 60, row("Wage", 15, "£/h")).run();
        assertThat(worked.result("fuel-cost", "Mower").given()).isFalse();
        assertThat(worked.result("fuel-cost", "Mower").reason()).contains("fuel price");
        assertThat(worked.result("interest", "Mower").given()).isFalse();
        assertThat(worked.number("labour-cost", "Mower")).isCloseTo(82.5, within(1e-9));
        assertThat(worked.number("depreciation", "Mower")).isCloseTo(900, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void thatNoMachineHasAPriceIsSaidWithoutAWordAboutWagesThatAreTyped() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Fuel (L/h)"),
                        row("Mower", "mower", 3, 10, 80, 9))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Cut", "grass", "mow", "Mower"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Wage", 15, "£/h"),
                        row("Fuel price", 0.9, "£/L"))
                .run();
        assertThat(worked.result("machine-cost", "Mower").reason())
                .contains("no machine has a price")
                .doesNotContain("wage")
                .doesNotContain("fuel price");
    }

    /** Sheets of an earlier run stay and say why they are empty; wages and prices are typed here, and there is power. */
    @Test
    void withoutWorkTheSheetsOfCostsSayThatAndNotThatNoPriceIsTyped() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet("Machines", row("Machine", "Type", "Power (kW)", "List price"), row("Tug", "tractor", 90, 60000))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Long Acre", "mow", "Mower"))
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Wage", 15, "£/h"))
                .run();
        for (TableSpec table : List.of(CostTables.JOB_COSTS, FuelAndLabourTable.INPUTS)) {
            assertThat(worked.plan().table(table.id()).emptyBecause())
                    .isEqualTo(
                            "no machine of the machine list has work on a field; what jobs name and lists lack is on Checks");
        }
    }

    /** The kind says the type too, so what was to be seen of the type stands in the same place and nothing moves. */
    @Test
    void workThatMakesNoBalesIsToldOfNone() {
        assertThat(farm("PTO", 60, PRICES).run().results())
                .noneMatch(result -> result.id().equals("bales-made"));
    }

    @Test
    void whatAMachineIsIsToldOnce() {
        assertThat(labels(CostTables.MACHINE_COSTS))
                .startsWith("Holding", "Machine", "Kind of machine", "Purchase price")
                .doesNotContain("Machine type");
        assertThat(labels(FuelAndLabourTable.INPUTS))
                .startsWith("Holding", "Job", "Field", "Machine", "Tractor", "Kind of machine", "Power basis")
                .doesNotContain("Machine type");
    }

    private static List<String> labels(TableSpec table) {
        return table.columns().stream()
                .filter(column -> !column.joinsRows())
                .map(TableColumn::label)
                .toList();
    }

    @Test
    void anOwnMachineWithoutAPriceNamesTheBlankCell() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Purchase price",
                                "List price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Fuel (L/h)"),
                        row("Mower", "mower", 3, 10, 80, null, 12000, 1000, 10, 100, 10),
                        row("Rake", "rake", 6, 10, 80, 9000, 10000, 1000, 10, 100, 5),
                        row("Old red", "tractor", null, null, null, 40000, 60000, 10000, 15, 400))
                .run();
        assertThat(worked.result("machine-cost", "Mower").given()).isFalse();
        assertThat(worked.result("machine-cost", "Mower").reason()).contains("purchase price missing (Machines!F2)");
        assertThat(worked.number("machine-cost", "Rake")).isPositive();
        assertThat(worked.differences()).isEmpty();
    }

    /** Each machine alike has a driver, so that more of them than there are would share the work out too thinly. */
    @Test
    void moreMachinesAlikeThanThereAreAreSaidOnceForTheJob() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"), row("B", 8, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Number", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 2, 3, 10),
                        row("Rake", "rake", null, 6, 10))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("Cut", "grass", "mowing", "Mower x 3"),
                        row("Again", "A", "mowing", "Mower x 2"),
                        row("Rows", "A", "raking", "Rake x 2"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("this job uses"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!D2");
                    assertThat(finding.message())
                            .isEqualTo("this job uses 3 of 'Mower' and the machine list has 2; it cannot use more than"
                                    + " there are.");
                });
    }

    @Test
    void powerWithoutBasisIsAskedFor() {
        SeasonBook.Worked worked = farm(null, 60, PRICES).run();
        assertThat(worked.result("fuel", "Mower").given()).isFalse();
        assertThat(worked.result("fuel", "Mower").reason()).contains("Power basis");
    }

    @Test
    void aRateWithoutUnitIsAskedFor() {
        SeasonBook.Worked worked =
                farm("PTO", 60, row("Interest rate", 0.06, null)).run();
        assertThat(worked.messages()).anyMatch(m -> m.contains("in per cent or a fraction"));
        assertThat(worked.result("interest", "Mower").given()).isFalse();
    }

    /** As if nobody had typed it, it was told missing, with the words how to type it. */
    @Test
    void aPriceThatIsNoNumberIsNamedWhereItIsMissed() {
        for (Object[] interest : List.of(row("Interest rate", "6%", null), row("Interest rate", "6 %", "%"))) {
            SeasonBook.Worked worked = farm("PTO", 60, interest).run();
            assertThat(worked.result("interest", "Mower").given()).isFalse();
            assertThat(worked.result("interest", "Mower").reason())
                    .contains("interest rate is not readable: '" + interest[1] + "'", "Assumptions!B2");
        }
        assertThat(farm("PTO", 60, row("Interest rate", "6 kg", "kg"))
                        .run()
                        .result("interest", "Mower")
                        .reason())
                .contains("interest rate missing");
    }

    @Test
    void aMachineThatNeedsATractorAndHasNoneIsCautioned() {
        Object[] ownWithout = {"own", null, null};
        assertThat(withoutTractor(ownWithout).messages())
                .anyMatch(m -> m.contains("no tractor is named for it, so none is in its cost")
                        && m.contains("Name one in Tractor on the job")
                        && m.contains("Rake"));
        assertThat(withoutTractor("hired", "machine only", null).messages())
                .anyMatch(m -> m.contains("no tractor is named for it"));
        assertThat(withoutTractor("hired", "everything", null).messages())
                .noneMatch(m -> m.contains("no tractor is named for it"));
        assertThat(withoutTractor("own", null, 60).messages()).noneMatch(m -> m.contains("no tractor is named for it"));
    }

    private static SeasonBook.Worked withoutTractor(Object... hire) {
        return farm("PTO", 60, PRICES)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Fuel (L/h)",
                                "Charge",
                                "Charge unit",
                                "Own or hired",
                                "Charge includes",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price"),
                        row("Rake", "rake", 6, 10, 5, 20, "ha", hire[0], hire[1], hire[2], "engine", 9000))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Row up", "grass", "rake", "Rake"))
                .run();
    }
}
