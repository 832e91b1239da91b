package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** What is typed under Own or hired, or Charge includes, and is none of their words is no blank. */
class UnreadHireTest {
    private static SeasonBook.Worked mower(String ownOrHired, Object charge, String includes) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "grass", 12))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Fuel (L/h)",
                                "Power (kW)",
                                "Purchase price",
                                "List price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Charge includes"),
                        row(
                                "Mower",
                                "mower",
                                3,
                                10,
                                null,
                                null,
                                9000,
                                9000,
                                3000,
                                10,
                                100,
                                ownOrHired,
                                charge,
                                "ha",
                                includes),
                        row(
                                "Red", "tractor", null, null, 12, 90, 60000, 60000, 20000, 10, 600, "own", null, null,
                                null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Mow", "Top", "mow", "Mower", "Red"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Wage", 15, "£/h"),
                        row("Fuel price", 0.9, "£/L"),
                        row("Interest rate", 5, "%"),
                        row("Insurance and housing", 1, "%"))
                .run();
    }

    /** Each line of the cost hangs on what decides it: what a charge might include, on both words; the machine, on one. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                // own or hired, charge includes, lines that are withheld
                "ours, everything, machine-cost tractor-cost fuel-cost lubricant-cost labour-cost hire-bill",
                "ours, all but fuel, machine-cost tractor-cost lubricant-cost labour-cost hire-bill",
                "ours, machine only, machine-cost hire-bill",
                "ours, -, machine-cost hire-bill",
                "ours, some, machine-cost tractor-cost fuel-cost lubricant-cost labour-cost hire-bill",
                "hired, some, tractor-cost fuel-cost lubricant-cost labour-cost hire-bill running-cost",
                "own, some, running-cost",
                "-, some, running-cost",
                "own, everything, -",
                "hired, machine only, -",
                "-, -, -",
            })
    void whatHangsOnAWordThatCannotBeReadIsWithheldAndNothingElse(String hired, String includes, String withheld) {
        SeasonBook.Worked worked = mower(hired, 40, includes);
        List<String> without = withheld == null ? List.of() : List.of(withheld.split(" "));
        for (String line :
                List.of("machine-cost", "tractor-cost", "fuel-cost", "lubricant-cost", "labour-cost", "hire-bill")) {
            assertThat(worked.result(line, "Mower").given()).as(line).isEqualTo(!without.contains(line));
        }
        List<String> others =
                without.stream().filter(line -> !line.equals("running-cost")).toList();
        assertThat(worked.result("cost-of-work", "Mower").given()).isEqualTo(others.isEmpty());
        // The running cost is made of the lines, and of what the charge beside it includes, whosever machine it is.
        boolean lacksALine = without.contains("fuel-cost") || without.contains("labour-cost");
        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("running-cost") && result.given())
                .extracting(result -> result.about().get("Machine"))
                .hasSize(lacksALine || without.contains("running-cost") ? 0 : 1);
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void theReasonNamesTheCellThatCannotBeRead() {
        SeasonBook.Worked worked = mower("ours", 40, "machine only");
        assertThat(worked.result("machine-cost", "Mower").reason())
                .isEqualTo("Own or hired is neither own nor hired: write one of them (Machines!L2)");
        worked = mower("hired", 40, "some");
        assertThat(worked.result("labour-cost", "Mower").reason()).contains("(Machines!O2)");
    }

    /** An own machine without a price is asked for one; whether this is one is not known. */
    @Test
    void onePerhapsHiredIsNotAskedForItsPrice() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "grass", 12))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "List price",
                                "Own or hired",
                                "Charge"),
                        row("Mower", "mower", 3, 10, null, "ours", 40),
                        row("Rake", "rake", 3, 10, 9000, "own", null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("Top", "mow", "Mower"),
                        row("Top", "rake", "Rake"))
                .run();
        assertThat(worked.results())
                .filteredOn(result -> result.cell().sheet().equals("Machine costs"))
                .extracting(result -> result.about().get("Machine"))
                .containsOnly("Rake");
        assertThat(worked.result("cost-of-work", "Mower").given()).isFalse();
    }
}
