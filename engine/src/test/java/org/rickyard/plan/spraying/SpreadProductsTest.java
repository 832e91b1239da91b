package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.rickyard.testing.SeasonBook.row;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** What spreaders, tankers and drills put out: fertiliser, muck, slurry and seed, and what of it must be bought. */
class SpreadProductsTest {
    private static final Object[] JOBS = row("Job", "Field", "Operation", "Machine", "Product", "Mix", "Dose");

    private static SeasonBook book(Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] = JOBS;
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ac)"),
                        row("Hill", "wheat", 20),
                        row("Dale", "wheat", 15),
                        row("Ley", "grass", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Spinner", "fertilizer spreader", 18, 12, null),
                        row("Other spinner", "fertilizer spreader", 18, 12, null),
                        row("Drill", "drill", 4, 8, null),
                        row("Tanker", "slurry tanker", 9, 6, null),
                        row("Muck cart", "muck spreader", 6, 8, null),
                        row("Sprayer", "sprayer", 24, 12, 2000))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Highest dose", "Pack size", "Stock"),
                        row("Urea", "kg", null, 600, 500),
                        row("Trace", "L", 3, 10, null))
                .sheet(
                        "Mixes",
                        row("Mix", "Product", "Dose"),
                        row("Pasture", "Ryegrass", "15 lb/ac"),
                        row("Pasture", "Clover", "3 lb/ac"))
                .sheet("Jobs", rows);
    }

    /** The results of an id, by the name of this column. */
    private static Map<String, Double> given(SeasonBook.Worked worked, String id, String by) {
        Map<String, Double> given = new LinkedHashMap<>();
        for (Result result : worked.results()) {
            if (result.id().equals(id) && result.number().isPresent()) {
                given.merge(result.about().get(by), result.number().get(), Double::sum);
            }
        }
        return given;
    }

    private static final double LB = 0.45359237;

    @Test
    void aDoseOfNothingNamedIsTold() {
        SeasonBook.Worked worked = book(
                        row("Slurry", "Ley", "slurry", "Tanker", null, null, "30 m3/ha"),
                        row("N1", "wheat", "spread", "Spinner", "Urea", null, "120 lb/ac"))
                .run();
        assertThat(worked.findings().stream()
                        .filter(finding -> finding.message().startsWith("this job has a dose but names no product"))
                        .map(finding -> finding.cell().orElseThrow().toString()))
                .containsExactly("Jobs!G2");
    }

    @Test
    void dosesOfNothingNamedAreToldInOneSentence() {
        SeasonBook.Worked worked = book(
                        row("N1", "wheat", "spread", "Spinner", "Urea", null, "120 lb/ac"),
                        row("Slurry", "Ley", "slurry", "Tanker", null, null, "30 m3/ha"),
                        row("Slurry 2", "Ley", "slurry", "Tanker", null, null, "25 m3/ha"))
                .run();
        assertThat(worked.findings().stream()
                        .filter(finding -> finding.message().contains("no product, so no loads"))
                        .map(finding -> finding.cell().orElseThrow() + " " + finding.message()))
                .singleElement()
                .asString()
                .startsWith("Jobs!G3 this job and 1 more have a dose but name no product");
    }

    @Test
    void anAmountOfEachFieldIsItsAreaTimesTheDose() {
        SeasonBook.Worked worked = book(
                        row("N1", "wheat", "spread", "Spinner", "Urea", null, "120 lb/ac"),
                        row("Sow", "Ley", "drill", "Drill", null, "Pasture", null),
                        row("Slurry", "Ley", "slurry", "Tanker", "Slurry", null, "3000 gal(US)/ac"),
                        row("Muck", "Dale", "muck", "Muck cart", "Muck", null, "10 t/ac"))
                .run();

        // By hand: 120 lb an acre on 20 and 15 acres, 15 and 3 lb on 12, 3,000 gallons of 3.785411784 L on 12, 10 t on
        // 15.
        assertThat(given(worked, "product-spread", "Product"))
                .hasSize(5)
                .hasEntrySatisfying("Urea", kg -> assertClose(kg, 120 * 35 * LB))
                .hasEntrySatisfying("Ryegrass", kg -> assertClose(kg, 15 * 12 * LB))
                .hasEntrySatisfying("Clover", kg -> assertClose(kg, 3 * 12 * LB))
                .hasEntrySatisfying("Slurry", litres -> assertClose(litres, 3000 * 12 * 3.785411784))
                .hasEntrySatisfying("Muck", kg -> assertClose(kg, 150_000));
        // 1,905 kg less 500 in store are three packs of 600.
        assertThat(given(worked, "packs-to-buy", "Product")).containsExactly(entry("Urea", 3.0));
        assertThat(worked.plan().table("tank-mix").rows()).isZero();
        assertThat(worked.plan().table("product-order").spec().reads()).containsExactly("spread-products");
        assertThat(worked.differences()).isEmpty();
    }

    private static void assertClose(double value, double expected) {
        assertThat(value).isCloseTo(expected, org.assertj.core.data.Offset.offset(1e-9 * expected));
    }

    @Test
    void whatIsSprayedAndSpreadIsBoughtTogether() {
        SeasonBook.Worked worked = book(
                        row("T1", "Hill", "spray", "Sprayer", "Trace", null, "2 L/ac"),
                        row("T2", "Dale", "spread", "Spinner", "Trace", null, "1 L/ac"),
                        row("N1", "Dale", "spread", "Spinner", "Urea", null, "100 kg/ac"))
                .run();

        assertThat(given(worked, "product-need", "Product"))
                .hasSize(2)
                .hasEntrySatisfying("Trace", litres -> assertClose(litres, 2 * 20 + 15))
                .hasEntrySatisfying("Urea", kg -> assertClose(kg, 1500));
        assertThat(worked.differences()).isEmpty();
    }

    /** A second dressing typed as the first would be ordered once without a word. */
    @Test
    void aRowThatSaysTheSameAgainIsReckonedOnceAndTold() {
        SeasonBook.Worked worked = book(
                        row("N1", "wheat", "spread", "Spinner", "Urea", null, "100 kg/ac"),
                        row("N1", "wheat", "spread", "Spinner", "Urea", null, "100 kg/ac"))
                .run();
        assertClose(given(worked, "product-need", "Product").get("Urea"), 3500);
        assertThat(worked.messages())
                .filteredOn(m -> m.contains("says the same as one above it (Jobs!B2)"))
                .hasSize(1);
        assertThat(book(
                                row("N1", "wheat", "spread", "Spinner", "Urea", null, "100 kg/ac"),
                                row("N1", "wheat", "spread", "Other spinner", "Urea", null, "100 kg/ac"),
                                row("N2", "wheat", "spread", "Spinner", "Urea", null, "100 kg/ac"))
                        .run()
                        .messages())
                .noneMatch(m -> m.contains("says the same"));
    }

    /** Pints may be of two sizes, but 1 and 2 of them are not the same: no tank is filled for both, no row is one too many. */
    @Test
    void dosesThatCannotBeReadAreAsDifferentAsTheyAreTyped() {
        SeasonBook.Worked worked = book(
                        row("N1", "Ley", "spread", "Spinner", "Trace", null, "1 pt/ac"),
                        row("N1", "Ley", "spread", "Spinner", "Trace", null, "2 pt/ac"),
                        row("T1", "Hill", "spray", "Sprayer", "Trace", null, "1 pt/ac"),
                        row("T1", "Dale", "spray", "Sprayer", "Trace", null, "2 pt/ac"),
                        row("T2", "Hill", "spray", "Sprayer", "Trace", null, "1 pt/ac"),
                        row("T2", "Dale", "spray", "Sprayer", "Trace", null, "1 pt/ac"))
                .run();
        assertThat(worked.messages()).anyMatch(m -> m.contains("could be")).noneMatch(m -> m.contains("says the same"));
        assertThat(worked.plan().table("spray-blocks").rows()).isEqualTo(3);
    }

    /** Of each product one row is left out: the same figure, and another cause. */
    @Test
    void productsThatLackAmountsAreEachNamed() {
        List<String> messages = book(
                        row("N1", "Hill", "spread", "Spinner", "Urea", null, "100 kg/ac"),
                        row("N2", "Dale", "spread", "Spinner", "Urea", null, null),
                        row("T1", "Hill", "spread", "Spinner", "Trace", null, "1 L/ac"),
                        row("T2", "Dale", "spread", "Spinner", "Trace", null, null))
                .run()
                .messages();
        assertThat(messages)
                .anyMatch(m -> m.contains("Urea: some jobs of this product have no amount"))
                .anyMatch(m -> m.contains("Trace: some jobs of this product have no amount"));
    }

    @Test
    void machinesThatShareTheWorkSpreadItOnce() {
        SeasonBook.Worked worked = book(
                        row("N1", "Hill", "spread", "Spinner; Other spinner", "Urea", null, "100 kg/ac"),
                        row("N2", "Dale", "spread", "Spinner", "Urea", null, "100 kg/ac"),
                        row("N2", "Dale", "spread", "Other spinner", "Urea", null, "100 kg/ac"))
                .run();

        assertThat(given(worked, "product-need", "Product")).hasEntrySatisfying("Urea", kg -> assertClose(kg, 3500));
    }

    @Test
    void aHighestDoseIsHeldAgainstIt() {
        List<Finding> findings = book(row("T2", "Dale", "spread", "Spinner", "Trace", null, "5 L/ha"))
                .run()
                .findings();

        assertThat(findings)
                .filteredOn(finding -> finding.severity() == Finding.Severity.STOP)
                .singleElement()
                .satisfies(stop -> assertThat(stop.message())
                        .contains("the dose is above the highest dose typed for this product"));
    }

    @Test
    void aSlipOfTheDecimalPointIsAskedAboutAndMuckIsNot() {
        List<Finding> findings = book(
                        row("N1", "Hill", "spread", "Spinner", "Urea", null, "2000 kg/ha"),
                        row("Muck", "Dale", "muck", "Muck cart", "Muck", null, "25 t/ha"))
                .run()
                .findings();

        assertThat(findings)
                .filteredOn(finding -> finding.message().contains("the dose is high for fertiliser or seed"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.message()).contains("Urea").contains("2000 kg/ha"));
    }

    @Test
    void aShareOfASprayIsNoDoseOfASpreader() {
        SeasonBook.Worked worked = book(row("T2", "Dale", "spread", "Spinner", "Trace", null, "2 %"))
                .run();

        assertThat(worked.findings())
                .filteredOn(finding -> finding.severity() == Finding.Severity.STOP)
                .singleElement()
                .satisfies(stop -> {
                    assertThat(stop.cell().orElseThrow()).hasToString("Jobs!G2");
                    assertThat(stop.message())
                            .isEqualTo(
                                    "'Trace' is spread or drilled, and its dose in % is a share of a spray. Expected an"
                                            + " amount on an area (kg/ha, t/ac, m3/ha): correct the dose or the machine."
                                            + " Nothing is worked out for it.");
                });
        assertThat(given(worked, "product-spread", "Product")).isEmpty();
    }

    @Test
    void aDoseThatIsMissingIsAskedFor() {
        SeasonBook.Worked worked =
                book(row("N1", "Dale", "spread", "Spinner", "Urea", null, null)).run();

        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("product-spread"))
                .singleElement()
                .satisfies(result -> assertThat(result.reason()).contains("spreading dose missing (Jobs!G2)"));
    }

    /** 8 ha × 250 kg are 2,000 kg, two hoppers of 1 t; 8 ha × 30 m3 are 240 m3, 13.3 tanks of 18 m3, 25.3 of 9.5, 12.97 of 18.5. */
    @Test
    void loadsAreCountedWhereTheMachineSaysWhatItHolds() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 8))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Payload (t)",
                                "Tank (m3)",
                                "Usable tank (L)"),
                        row("Spinner", "fertilizer spreader", 18, 12, 1, null, null),
                        row("Tanker", "slurry tanker", 9, 6, 11, 18, null),
                        row("Other tanker", "slurry tanker", 9, 6, null, 10, 9500),
                        row("Large tanker", "slurry tanker", 12, 6, null, 20, 18500),
                        row("Drill", "drill", 4, 8, null, null, null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit"),
                        row("Hill", "spreading", "Large tanker", "Dirty water", 30, "m3/ha"),
                        row("Hill", "spreading", "Spinner", "Urea", 250, "kg/ha"),
                        row("Hill", "spreading", "Spinner", "Lime", 2.5, "t/ha"),
                        row("Hill", "spreading", "Tanker", "Slurry", 30, "m3/ha"),
                        row("Hill", "spreading", "Other tanker", "Digestate", 30, "m3/ha"),
                        row("Hill", "drilling", "Drill", "Seed", 180, "kg/ha"))
                .run();
        assertThat(given(worked, "loads-spread", "Product"))
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("Urea", 2.0, "Lime", 20.0, "Slurry", 14.0, "Digestate", 26.0, "Dirty water", 13.0));
        assertThat(worked.differences()).isEmpty();
    }

    /** 8 ha × 250 kg are 2,000 kg: of 0.8 kg in a litre a hopper of 1,000 L holds 800 kg, so three; a payload of 0.5 t four. */
    @Test
    void aHopperInLitresIsCountedByTheDensityOfWhatIsInItOrAskedFor() {
        Object[] products = row("Product", "Unit", "Density (kg/L)", "Pack size");
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 8))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Payload (t)", "Tank (L)"),
                        row("Spinner", "fertilizer spreader", 18, 12, null, 1000),
                        row("Light spinner", "fertilizer spreader", 18, 12, 0.5, 1000))
                .sheet("Products", products, row("Prills", "kg", 0.8, 25), row("Lime", "kg", null, 25))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose", "Dose unit"),
                        row("1", "Hill", "spreading", "Spinner", "Prills", 250, "kg/ha"),
                        row("2", "Hill", "spreading", "Light spinner", "Prills", 250, "kg/ha"),
                        row("3", "Hill", "spreading", "Spinner", "Lime", 250, "kg/ha"),
                        row("4", "Hill", "spreading", "Spinner", "Prills", 200, "L/ha"),
                        row("6", "Hill", "spreading", "Spinner", "Prills", 5, "bags/ha"),
                        row("5", "Hill", "spreading", "Spinner", "Ash", 200, "kg/ha"))
                .run();
        assertThat(given(worked, "loads-spread", "Job"))
                .containsExactlyInAnyOrderEntriesOf(Map.of("1", 3.0, "2", 4.0, "4", 2.0));
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("Lime") && m.contains("no loads are counted") && m.contains("Type Density"))
                .anyMatch(m -> m.contains("'Prills' is dosed in L here but the product list measures it in kg")
                        && m.contains("By its density (Products!C2) 1 L is 0.8 kg"))
                .anyMatch(m -> m.contains("'Prills' is dosed in tablet here")
                        && m.endsWith(
                                "What is counted, bags as well, is told as tablets: write what is in them, in kg."))
                .anyMatch(m -> m.contains("pack size missing: the product is not in the product list, or is listed in"
                        + " another unit (Prills; Ash). As it is"));
        assertThat(worked.differences()).isEmpty();
    }

    /** 28 ha × 35 m3 are 980 m3, 86 loads of 11.4 m3; of 24 min each they take 34.4 h. Nothing is asked of the spinner. */
    @Test
    @Tag("derived")
    void loadsTakeARoundEach() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Ley", "grass", 28))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Tank (m3)", "Payload (t)", "Round time (min)"),
                        row("Tanker", "slurry tanker", 11.4, null, 24),
                        row("Spinner", "fertilizer spreader", null, 1, null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit"),
                        row("Ley", "slurry", "Tanker", "Slurry", 35, "m3/ha"),
                        row("Ley", "spreading", "Spinner", "Urea", 100, "kg/ha"))
                .run();
        assertThat(given(worked, "hours-of-loads", "Product")).containsOnlyKeys("Slurry");
        assertClose(given(worked, "hours-of-loads", "Product").get("Slurry"), 86 * 24 / 60.0);
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("the round time of 'Tanker' gives the hours of its loads on Spread products"))
                .noneMatch(m -> m.contains("Round time 24 min is unusual"))
                .noneMatch(m -> m.contains("round time missing"));
        assertThat(worked.differences()).isEmpty();
    }

    /** University of Florida, UF00067504, table 1: 20 lb on 10 × 435 ft are 200 lb an acre (200.28 before rounding). */
    @Test
    @Tag("published")
    void aTestByWeightGivesTheRate() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Test area (ft2)", "Test weight (lb)", "Test volume (L)"),
                        row("Spinner", "fertilizer spreader", 4350, 20, null),
                        row("Back pack", "knapsack", 1000, null, 2))
                .sheet("Fields", row("Field", "Area (ac)"), row("Hill", 20))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"))
                .run();
        Result.Own own = worked.result("spreader-test-rate", "Spinner").own().orElseThrow();
        assertThat(Math.round(own.number())).isEqualTo(200);
        assertThat(own.unit()).isEqualTo("lb/ac");
        assertThat(worked.results().stream().filter(result -> result.id().equals("area-test-rate")))
                .singleElement()
                .satisfies(result -> assertThat(result.about()).containsEntry("Machine", "Back pack"));
        assertThat(worked.messages()).noneMatch(m -> m.contains("test volume missing"));
        assertThat(worked.differences()).isEmpty();
    }

    /** 3.2 ha × 25 m3 are 80 m3: 6 loads of 14 m3. */
    @Test
    void whatATankerHoldsMayBeToldAsItsVolume() {
        for (String header : List.of("Volume (m3)", "Body volume (m3)", "Tank (m3)")) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet("Fields", row("Field", "Area (ha)"), row("A", 3.2))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", header, "Working width (m)", "Speed (km/h)"),
                            row("Tanker", "slurry tanker", 14, 12, 6))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Product", "Dose (m3/ha)"),
                            row("A", "slurry", "Tanker", "Slurry", 25))
                    .run();
            assertThat(given(worked, "loads-spread", "Field")).as(header).containsExactly(entry("A", 6.0));
            assertThat(worked.differences()).isEmpty();
        }
    }

    /** "Rate" over "spreading slurry" is what is spread, as it is over "slurry spreading": 25 ac of 2,500 gal, 25 loads. */
    @Test
    @Tag("derived")
    void spreadingIsSpreadingWhicheverWordComesFirst() {
        for (String operation : List.of("spreading slurry", "slurry spreading", "applying slurry")) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet("Fields", row("Field", "Acres"), row("A", 25))
                    .sheet("Machines", row("Machine", "Type", "Tank (gal)"), row("Tanker", "slurry tanker", 2500))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Product", "Rate (gal/ac)"),
                            row("A", operation, "Tanker", "Slurry", 2500))
                    .sheet("Assumptions", row("Item", "Value"), row("Customary units", "UK"))
                    .run();
            assertThat(given(worked, "loads-spread", "Field")).as(operation).containsExactly(entry("A", 25.0));
            assertThat(worked.messages()).noneMatch(m -> m.contains("Water volume"));
        }
    }
}
