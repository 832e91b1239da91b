package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.plan.cost.CostFarm.PRICES;
import static org.rickyard.plan.cost.CostFarm.farm;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Fuel, labour and money from typed prices to the grid. Figures: derived arithmetic. */
@Tag("derived")
class CostSheetsTest {
    @Test
    void everyLineOfACostIsThere() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES).run();
        // 3 m disc mower: 15 of 75 kW is 20 %: (0.22 × 0.2 + 0.096) × 75 = 10.5 L/h for 5 h.
        assertThat(worked.number("machine-hours-on-field", "Mower")).isCloseTo(5, within(1e-9));
        assertThat(worked.number("fuel", "Mower")).isCloseTo(10.5, within(1e-9));
        assertThat(worked.number("fuel-cost", "Mower")).isCloseTo(47.25, within(1e-9));
        assertThat(worked.number("lubricant-cost", "Mower")).isCloseTo(0.15 * 47.25, within(1e-9));
        assertThat(worked.number("labour-cost", "Mower")).isCloseTo(5 * 1.1 * 15, within(1e-9));
        assertThat(worked.number("depreciation", "Mower")).isCloseTo(900, within(1e-9));
        assertThat(worked.number("interest", "Mower")).isCloseTo(330, within(1e-9));
        assertThat(worked.number("ownership-cost", "Mower")).isCloseTo(1330, within(1e-9));
        // From 500 to 1,500 h: .44 × 12,000 × (1.5² − 0.5²) over 1,000 h.
        assertThat(worked.number("repairs", "Mower")).isCloseTo(10.56, within(1e-9));
        assertThat(worked.number("machine-cost", "Mower")).isCloseTo(5 * (13.3 + 10.56), within(1e-9));
        assertThat(worked.number("hire-bill", "Rake")).isCloseTo(240, within(1e-9));
        assertThat(worked.number("labour-cost", "Rake")).isZero();
        assertThat(worked.number("cost-of-work", "Rake")).isCloseTo(240, within(1e-9));
        assertThat(worked.number("holding-cost", "Hill Top"))
                .isCloseTo(240 + worked.number("cost-of-work", "Mower"), within(1e-9));
        assertThat(worked.word("own-or-hire", "Mower")).isEqualTo("at this area hiring costs less than owning");
        assertThat(worked.number("break-even-area", "Mower")).isGreaterThan(12);
        assertThat(worked.differences()).isEmpty();
    }

    /** Its price was typed to be told what it costs; nothing said that a job had to name it for that. */
    @Test
    void aMachineWithAPriceHasItsCostThoughNoJobNamesIt() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ac)"), row("Far", "wheat", 100))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Width (ft)",
                                "Speed (mph)",
                                "Purchase price",
                                "Trade-in value",
                                "Life (yr)"),
                        row("Discs", "disc harrow", 20, 5, 20000, 5000, 10),
                        row("Drill", "drill", 20, 5, 30000, 5000, 10))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Far", "cultivating", "Discs"))
                .run();
        assertThat(worked.number("depreciation", "Discs")).isCloseTo(1500, within(1e-9));
        assertThat(worked.number("depreciation", "Drill")).isCloseTo(2500, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aJobsAreaCountsEachFieldOnceAndEachDriverHisHours() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES).run();
        assertThat(worked.number("job-area", "Cut")).isCloseTo(12, within(1e-9));
        assertThat(worked.number("labour-per-driver", "Mower")).isCloseTo(5.5, within(1e-9));
    }

    /** Two mowers share the hours of the job, each with a driver: labour is the same, hours of each and days are halved. */
    @Test
    void machinesAlikeThatWorkByThemselvesEachHaveADriver() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES)
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Cut", "grass", "mow", "Mower x 2", "Old red x 2"))
                .run();
        double hours = worked.number("machine-hours-on-field", "Mower");
        assertThat(worked.number("labour", "Mower")).isCloseTo(1.1 * hours, within(1e-9));
        assertThat(worked.number("labour-per-driver", "Mower")).isCloseTo(1.1 * hours / 2, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** The curve held is the tractors' (ASAE D497): what else has an engine loses its value in another way. */
    @Test
    void onlyATractorIsReckonedByTheCurveOfTractors() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)"),
                        row("Chopper", "forager", 6, 8, 330, "engine", 200000, 40000, 10, 400),
                        row("Mower", "mower", 3, 10),
                        row("Red", "tractor", null, null, 78, "PTO", 75000, 20000, 10, 400))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Tractor"),
                        row("A", "chopping", "Chopper", null),
                        row("A", "mowing", "Mower", "Red"))
                .run();
        assertThat(worked.number("remaining-value", "Red")).isCloseTo(37, within(0.5));
        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("remaining-value"))
                .hasSize(1);
    }

    /** By the curve (ASAE D497, from memory): 10 years and 400 h/yr 37 % (Iowa State University), 20 years 23 %. */
    @Test
    void aUsedTractorIsAsOldWhenItGoesAsItsAgeAndTheYearsItIsKept() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price",
                                "Trade-in value",
                                "Age (yr)",
                                "Hours now (h)",
                                "Life (yr)",
                                "Hours per year (h)"),
                        row("Mower", "mower", 3, 10),
                        row("New", "tractor", null, null, 78, "PTO", 75000, 20000, null, null, 10, 400),
                        row("Used", "tractor", null, null, 78, "PTO", 50000, 9000, 10, 4000, 10, 400),
                        row("Older", "tractor", null, null, 78, "PTO", 30000, 9000, 11, 4400, 10, 400),
                        row("Ageless", "tractor", null, null, 78, "PTO", 50000, 9000, null, 4000, 10, 400))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("1", "A", "mowing", "Mower", "New"),
                        row("2", "A", "mowing", "Mower", "Used"),
                        row("3", "A", "mowing", "Mower", "Older"),
                        row("4", "A", "mowing", "Mower", "Ageless"))
                .run();
        assertThat(worked.number("remaining-value", "New")).isCloseTo(37, within(0.5));
        assertThat(worked.number("remaining-value", "Used"))
                .isCloseTo(100 * Math.pow(0.942 - 0.1 * Math.sqrt(20) - 0.0008 * 20, 2), within(1e-9));
        // Past twenty years the curve is not held, and of a machine that has run, no age is guessed.
        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("remaining-value"))
                .hasSize(2);
    }

    /** 12 ha of 20 t/ha are 240 t: the job's cost over them. */
    @Test
    void aJobHasItsCostPerTonne() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES).run();
        assertThat(worked.number("job-crop", "Cut")).isCloseTo(240, within(1e-9));
        assertThat(worked.number("job-cost-per-tonne", "Cut"))
                .isCloseTo(worked.number("job-cost", "Cut") / 240, within(1e-9));
        assertThat(worked.number("job-cost-per-tonne", "Row up")).isCloseTo(1, within(1e-9));
    }

    /** What the charge leaves out is paid either way, so it weighs on neither side. */
    @Test
    void whatAChargeIncludesDecidesWhatItIsComparedWith() {
        double everything = breakEven("everything");
        assertThat(breakEven(null)).isEqualTo(everything);
        assertThat(breakEven("all but fuel")).isLessThan(everything);
        assertThat(breakEven("machine only")).isLessThan(breakEven("all but fuel"));
    }

    private static double breakEven(String includes) {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Power (kW)",
                                "Power basis",
                                "Purchase price",
                                "List price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Charge includes",
                                "Fuel (L/h)"),
                        row(
                                "Mower", "mower", 3, 10, 80, null, null, 10000, 12000, 1000, 10, 100, "own", 60, "ha",
                                includes),
                        row(
                                "Rake", "rake", 6, 10, 80, null, null, 9000, 9000, 900, 10, 100, "own", null, null,
                                null, 5),
                        row("Old red", "tractor", null, null, null, 75, "PTO", 40000, 60000, 10000, 15, 400))
                .run();
        assertThat(worked.differences()).isEmpty();
        return worked.number("break-even-area", "Mower");
    }

    /** A price goes by what it is per; its currency may be left out. */
    @Test
    void pricesMayBeWrittenWithoutTheirCurrency() {
        Object[][][] ways = {
            {row("Wage", 15, "per h"), row("Fuel price", 0.9, "per litre")},
            {row("Wage", 15, "/h"), row("Fuel price", 90, "p/L")},
            {row("Wage", 1500, "pence per hour"), row("Fuel price", 90, "ppl")},
            {row("Wage", 15, "€ per hour"), row("Fuel price", 0.9, "/L")},
            {row("Wage", 15, null), row("Fuel price", 0.9, null)},
        };
        for (Object[][] prices : ways) {
            SeasonBook.Worked worked = farm("PTO", 60, prices).run();
            assertThat(worked.number("labour-cost", "Mower"))
                    .as(String.valueOf(prices[0][2]))
                    .isCloseTo(82.5, within(1e-9));
            assertThat(worked.number("fuel-cost", "Mower"))
                    .as(String.valueOf(prices[1][2]))
                    .isCloseTo(47.25, within(1e-9));
        }
    }

    @Test
    void aMachineWhoseOwnNameHoldsASemicolonIsOneMachine() {
        SeasonBook.Worked worked = farm("PTO", 60, PRICES)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Fuel (L/h)",
                                "Power (kW)",
                                "Power basis"),
                        row("Mower; front and rear", "mower", 6, 10, 20),
                        row("Rake x 2", "rake", 6, 10, 5),
                        row("Red; the old one", "tractor", null, null, null, 90, "PTO"))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Cut", "grass", "mow", "Mower; front and rear", "Red; the old one"),
                        row("Row up", "grass", "rake", "Rake x 2", "Red; the old one"))
                .run();
        assertThat(worked.number("labour", "Mower; front and rear", "Red; the old one"))
                .isPositive();
        assertThat(worked.number("labour-per-driver", "Rake x 2"))
                .isCloseTo(1.1 * worked.number("machine-hours-on-field", "Rake x 2"), within(1e-9));
        assertThat(worked.messages()).noneMatch(m -> m.contains("there is no"));
    }
}
