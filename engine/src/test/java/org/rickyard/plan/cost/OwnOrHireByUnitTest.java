package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.plan.Headlines;
import org.rickyard.testing.SeasonBook;

/** An own baler beside what a contractor would take by the hour, hectare, acre, tonne or bale. Derived arithmetic. */
@Tag("derived")
class OwnOrHireByUnitTest {
    private static SeasonBook.Worked baler(String unit, double charge) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("A", "grass", 12, 20, "as carted fresh", 33))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Fuel (L/h)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Charge includes",
                                "List price",
                                "Purchase price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Power (kW)"),
                        row(
                                "Baler",
                                "baler",
                                8,
                                8,
                                75,
                                12,
                                "own",
                                charge,
                                unit,
                                "everything",
                                32000,
                                30000,
                                6000,
                                8,
                                120,
                                60))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Bale", "A", "baling", "Baler"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Wage", 18, "GBP/h"),
                        row("Fuel price", 0.9, "GBP/L"),
                        row("Interest", 5, "%"),
                        row("Insurance and housing", 1, "%"))
                .run();
    }

    /** 4.8 ha/h, so 12 ha in 2.5 h; 240 t; 79.2 t of dry matter in 360 bales of 220 kg. */
    @ParameterizedTest
    @CsvSource({"h, 300, 62.5", "ha, 90, 90", "ac, 40, 98.842152", "t, 6, 120", "bale, 8, 240"})
    void theChargeIsBroughtToAHectareOfTheJobs(String unit, double charge, double aHectare) {
        SeasonBook.Worked worked = baler(unit, charge);
        assertThat(worked.number("hire-charge-per-hectare", "Baler")).isCloseTo(aHectare, within(1e-5));
        double ownership = 3000 + 900 + 300;
        double running = worked.number("running-cost", "Baler") / 12;
        assertThat(worked.number("break-even-area", "Baler")).isCloseTo(ownership / (aHectare - running), within(1e-3));
        assertThat(worked.differences()).isEmpty();
    }

    /** Without a yield no charge by the tonne means anything; one by the hectare or hour does. */
    @ParameterizedTest
    @CsvSource({"ha, 30, 30", "h, 72, 30", "t, 6, NaN"})
    void aChargeNeedsNoYieldUnlessItIsByTheTonne(String unit, double charge, double aHectare) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("A", "grass", 20), row("B", "grass", 16))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Purchase price"),
                        row("Mower", "mower", 3, 10, 80, "own", charge, unit, 9000))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("all", "mowing", "Mower"))
                .run();
        if (Double.isNaN(aHectare)) {
            assertThat(worked.result("hire-charge-per-hectare", "Mower").reason())
                    .contains("missing: no list has a column");
        } else {
            assertThat(worked.number("hire-charge-per-hectare", "Mower")).isCloseTo(aHectare, within(1e-9));
        }
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whetherAMachinePaysStandsAmongTheAnswers() {
        assertThat(answers(baler("bale", 8))).containsExactly("Baler: own-or-hire", "Baler: break-even-area");
        // Nothing to break even at: the sentence alone says so.
        assertThat(answers(baler("bale", 0.1))).containsExactly("Baler: own-or-hire");
    }

    private static List<String> answers(SeasonBook.Worked worked) {
        return Headlines.of(worked.plan()).stream()
                .filter(headline -> headline.table().spec().id().equals("own-or-hire"))
                .map(headline -> headline.about() + ": " + headline.formula().id())
                .toList();
    }
}
