package org.rickyard.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.testing.SeasonBook;

/** Who weighs in pounds, or buys by the quart, hundredweight or pound, is answered so, whatever list says it. */
@Tag("derived")
class UnitsToldByWeightsTest {
    private static final Object[] ITEMS = row("Item", "Value");
    private static final Object[] US = row("Customary units", "US");

    private static void answers(Result result, double number, String unit) {
        Result.Own own = result.own().orElseThrow(() -> new AssertionError(result.id() + " in our unit only"));
        assertThat(own.unit()).isEqualTo(unit);
        assertThat(own.number()).isCloseTo(number, within(1e-9 * number));
    }

    /** 100 ft × 30 ft × 10 ft of 44 lb/ft3 are 1,320,000 lb, 660 short tons. */
    @Test
    void aDensityInPoundsAsksForTons() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Bunkers",
                        row(
                                "Bunker",
                                "Kind",
                                "Length (ft)",
                                "Width (ft)",
                                "Wall height (ft)",
                                "Ramps",
                                "Density (lb/ft3 as fed)"),
                        row("B", "walled", 100, 30, 10, 0, 44))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("clamp-capacity", "B"), 660, "short ton");
    }

    /** 1,200 bales of 55 lb are 66,000 lb, 33 short tons. */
    @Test
    void balesWeighedInPoundsAskForTons() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Stocks",
                        row("Store", "Kind", "Count", "Weight each (lb)", "Moisture (%)"),
                        row("Mow", "bales", 1200, 55, 12))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("stock-in-hand", "Mow"), 33, "short ton");
    }

    /** 60 acres at 1.5 quarts are 90, in packs of a gallon of four quarts 22.5 gallons; 35 acres at 3 cwt are 105. */
    @Test
    void quartsAndHundredweightsAreAnsweredAndOrdersGoByThePack() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ac)"), row("F", 60), row("G", 35))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (ft)", "Speed (mph)", "Tank (gal)"),
                        row("Sprayer", "sprayer", 40, 5, 300),
                        row("Spinner", "fertilizer spreader", 40, 5, null))
                .sheet("Products", row("Product", "Unit", "Pack size (gal)"), row("Herbicide", "L", 2.5))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "GPA", "Product", "Dose", "Dose unit"),
                        row("F", "spraying", "Sprayer", 20, "Herbicide", 1.5, "qt/ac"),
                        row("G", "spreading", "Spinner", null, "Potash", 3, "cwt/ac"))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("product-total", "Herbicide"), 90, "qt(US)");
        answers(worked.result("product-need", "Herbicide"), 22.5, "gal(US)");
        answers(worked.result("product-spread", "Potash"), 105, "cwt(US)");
        assertThat(worked.differences()).isEmpty();
    }

    /** 60 cows at 24 lb DM of 14 lb DM/ft3 take 102.86 ft3 a day; of a face of 24 × 8 ft that is 3.75 ft a week. */
    @Test
    void aFaceMeasuredInFeetIsFedInFeet() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Bunkers",
                        row(
                                "Bunker",
                                "Kind",
                                "Length (ft)",
                                "Width (ft)",
                                "Wall height (ft)",
                                "Settled height (ft)",
                                "Ramps",
                                "Density (lb DM/ft3)",
                                "DM %"),
                        row("B", "walled", 100, 24, 8, 8, 0, 14, 33))
                .sheet(
                        "Herds",
                        row("Group", "Head", "Intake (lb DM/day)", "Days", "Bunker"),
                        row("Cows", 60, 24, 180, "B"))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("silage-per-day", "B"), 60 * 24 / 14.0, "ft3/d");
        answers(worked.result("feed-out-rate", "B"), 60 * 24 / 14.0 / (24 * 8) * 7, "ft/week");
    }

    /** University of Nebraska-Lincoln CropWatch 2016: 75 lb of nitrogen in 28 % at 10.65 lb/gal are 25.151 gal. */
    @Test
    @Tag("published")
    void whatIsAskedByItsContentIsAnsweredInGallons() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Jobs",
                        row("Field", "Acres", "Operation", "Sprayer", "Product", "Rate (lb N/ac)"),
                        row("Plot", 1, "spraying", "Toolbar", "UAN", 75))
                .sheet("Products", row("Product", "Unit", "N (%)", "Density (lb/gal)"), row("UAN", "gal", 28, 10.65))
                .sheet("Machines", row("Sprayer", "Type", "Tank (gal)"), row("Toolbar", "sprayer", 500))
                .sheet("Assumptions", ITEMS, US)
                .run();
        Result.Own own = worked.result("product-total", "UAN").own().orElseThrow();
        assertThat(own.unit()).isEqualTo("gal(US)");
        assertThat(own.number()).isCloseTo(25.151, within(0.0005));
        assertThat(worked.differences()).isEmpty();
    }

    /** US Army MD0173: 10 lb an acre of what is in a dust of 5 % are 200 lb of dust. */
    @Test
    @Tag("published")
    void aDustAskedByItsContentIsAnsweredInPounds() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Jobs",
                        row("Field", "Acres", "Operation", "Machine", "Product", "Rate (lb ai/ac)"),
                        row("Plot", 1, "spreading", "Duster", "Dust", 10))
                .sheet("Products", row("Product", "Unit", "Active ingredient (%)"), row("Dust", "lb", 5))
                .sheet("Machines", row("Machine", "Type", "Width (ft)"), row("Duster", "fertilizer spreader", 20))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("product-spread", "Dust"), 200, "lb");
    }

    /** 32 oz in 30 s are 0.5 gal a minute (flash card of an applicators' course): ounces ask for gallons. */
    @Test
    void ouncesCaughtAskForGallons() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Nozzle test", row("Sprayer", "Nozzle", "Catch in 30 s (oz)"), row("S", 1, 32), row("S", 2, 32))
                .sheet(
                        "Machines",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Speed (mph)"),
                        row("S", "sprayer", 20, 5))
                .sheet("Assumptions", ITEMS, US)
                .run();
        answers(worked.result("nozzle-mean", "S", "1"), 0.5, "gal(US)/min");
    }

    /** Oklahoma State University: 200 ft in 45 s are 3 mph (3.03); who paces out feet drives in miles. */
    @Test
    @Tag("published")
    void feetByTheWatchAskForMiles() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Machines", row("Machine", "Type", "Distance (ft)", "Seconds"), row("T", "tractor", 200, 45))
                .run();
        Result.Own own = worked.result("timed-speed", "T").own().orElseThrow();
        assertThat(own.unit()).isEqualTo("mph");
        assertThat(own.number()).isCloseTo(3.03, within(0.005));
    }

    /** Penn State: trees 20 ft high and 23 ft wide in rows 35 ft apart are 572,503 cubic feet an acre. */
    @Test
    @Tag("published")
    void treesMeasuredInFeetAskForCubicFeetAnAcre() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Orchard",
                        row(
                                "Block",
                                "Acres",
                                "Tree height (ft)",
                                "Tree width (ft)",
                                "Row spacing (ft)",
                                "Operation",
                                "Sprayer",
                                "Spray volume (gal/ac)"),
                        row("Standard", 5, 20, 23, 35, "spraying", "Air", 200))
                .sheet(
                        "Machines",
                        row("Sprayer", "Type", "Tank (gal)", "Speed (mph)"),
                        row("Air", "airblast sprayer", 500, 2.5))
                .sheet("Assumptions", ITEMS, US)
                .run();
        Result.Own own = worked.result("tree-row-volume", "Standard").own().orElseThrow();
        assertThat(own.unit()).isEqualTo("ft3/ac");
        assertThat(own.number()).isCloseTo(572_503, within(0.5));
    }
}
