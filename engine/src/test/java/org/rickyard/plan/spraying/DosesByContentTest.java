package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.quantity.Units;
import org.rickyard.testing.SeasonBook;

/** Doses that count the active ingredient or the nutrient in a product, through a whole workbook. */
class DosesByContentTest {
    private static SeasonBook book() {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ac)"), row("Hill", "wheat", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (US gal)"),
                        row("Sprayer", "sprayer", 24, 12, 300),
                        row("Spinner", "fertilizer spreader", 18, 12, null));
    }

    private static SeasonBook.Worked sprayed(Object[] products, Object[] product, String dose, double amount) {
        return book().sheet("Products", products, product)
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", dose, "Water volume (US gal/ac)"),
                        row("Hill", "spray", "Sprayer", "Stuff", amount, 40))
                .run();
    }

    private static SeasonBook.Worked spread(Object[] products, Object[] product, String dose, Object amount) {
        return book().sheet("Products", products, product)
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", dose),
                        row("Hill", "spread", "Spinner", "Stuff", amount))
                .run();
    }

    private static double given(SeasonBook.Worked worked, String id) {
        return worked.results().stream()
                .filter(one -> one.id().equals(id) && one.number().isPresent())
                .map(Result::number)
                .findFirst()
                .orElseThrow()
                .get();
    }

    private static double gallons(SeasonBook.Worked worked, String id) {
        return Units.L.convert(given(worked, id), Units.GAL_US);
    }

    /** Extension exercise 7a: 3 lb an acre from 8 lb/gal are 0.375 gal an acre. */
    @Tag("published")
    @Test
    void poundsOfActiveIngredientFromPoundsInAGallon() {
        SeasonBook.Worked worked = sprayed(
                row("Product", "Unit", "Active ingredient (lb/gal (US))"), row("Stuff", "L", 8), "Rate (lb ai/ac)", 3);
        assertThat(gallons(worked, "product-total")).isCloseTo(10 * 0.375, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Extension exercise 7b: a tank of 300 gal at 40 GPA; 0.5 lb/ac from 2 lb/gal: 7.5 quarts a tank. */
    @Tag("published")
    @Test
    void aFullTankTakesWhatItsAcresDo() {
        SeasonBook.Worked worked = sprayed(
                row("Product", "Unit", "Active content (lb/gal (US))"), row("Stuff", "L", 2), "Dose (lb a.i./ac)", 0.5);
        assertThat(Units.L.convert(given(worked, "product-per-full-tankful"), Units.QT_US))
                .isCloseTo(7.5, within(1e-9));
    }

    /** US Army MD0173: 10 lb an acre of what is in a dust of 5 % are 200 lb of dust. */
    @Tag("published")
    @Test
    void aShareOfWhatIsSpread() {
        SeasonBook.Worked worked =
                spread(row("Product", "Unit", "Active content"), row("Stuff", "kg", "5 %"), "Dose", "10 lb ai/ac");
        assertThat(Units.KG.convert(given(worked, "product-spread"), Units.LB)).isCloseTo(2000, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** US Army MD0173: 0.3 lb an acre of what is in an emulsion of 6 % at 8.34 lb/gal are 0.6 gal (0.5995). */
    @Tag("published")
    @Test
    void aShareByWeightOfALiquidGoesByItsDensity() {
        double density = 8.34 * 0.45359237 / 3.785411784;
        SeasonBook.Worked worked = sprayed(
                row("Product", "Unit", "Active content (%)", "Density (kg/L)"),
                row("Stuff", "L", 6, density),
                "Dose (lb ai/ac)",
                0.3);
        assertThat(gallons(worked, "product-total")).isCloseTo(10 * 0.6, within(10 * 0.05));
        assertThat(worked.differences()).isEmpty();
    }

    /** CropWatch 2016: 75 lb of N an acre from 28 % at 10.65 lb/gal are 25.151 gal. */
    @Tag("published")
    @Test
    void nitrogenFromALiquid() {
        double density = 10.65 * 0.45359237 / 3.785411784;
        SeasonBook.Worked worked = sprayed(
                row("Product", "Unit", "N %", "Density (kg/L)"), row("Stuff", "L", 28, density), "N (lb/ac)", 75);
        assertThat(gallons(worked, "product-total")).isCloseTo(10 * 25.151, within(10 * 0.0005));
        assertThat(given(worked, "nitrogen-sprayed") / 1.1208511561944561).isCloseTo(75, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Common practice: 20-10-10 to 60 kg/ha of P2O5 is 600 kg/ha, to 100 of K2O 1,000. */
    @Tag("common-practice")
    @Test
    void aCompoundGoesByTheNutrientThatItsDoseCounts() {
        Object[] headers = row("Product", "Unit", "N %", "P2O5 (%)", "K2O (%)");
        Object[] compound = row("Stuff", "kg", 20, 10, 10);
        double hectares = Units.AC.convert(10, Units.HA);
        assertThat(given(spread(headers, compound, "Dose (kg P2O5/ha)", 60), "product-spread"))
                .isCloseTo(600 * hectares, within(1e-9));
        assertThat(given(spread(headers, compound, "K2O (kg/ha)", 100), "product-spread"))
                .isCloseTo(1000 * hectares, within(1e-9));
        assertThat(given(spread(headers, compound, "Dose", "100 kg N/ha"), "product-spread"))
                .isCloseTo(500 * hectares, within(1e-9));
    }

    @Test
    void aHighestDoseHoldsForTheProductThatTheDoseComesTo() {
        SeasonBook.Worked worked = spread(
                row("Product", "Unit", "N %", "Highest dose (kg/ha)"),
                row("Stuff", "kg", 20, 400),
                "Dose (kg N/ha)",
                100);
        assertThat(worked.messages()).anyMatch(message -> message.contains("above the highest dose typed"));
    }

    @Test
    void aContentThatIsNotToldIsAskedForByItsColumn() {
        SeasonBook.Worked worked =
                spread(row("Product", "Unit", "Pack size"), row("Stuff", "kg", 25), "Dose (kg N/ha)", 100);
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("'Stuff' counts the nitrogen (N) in it")
                        && message.contains("write it in a column Nitrogen of the product list"));
        assertThat(worked.results())
                .noneMatch(
                        one -> one.id().equals("product-spread") && one.number().isPresent());
    }

    @Test
    void withoutTheUnitOfTheProductNothingIsTakenForGranted() {
        SeasonBook.Worked worked =
                spread(row("Product", "N %", "Pack size"), row("Stuff", 34.5, 600), "Dose (kg N/ha)", 100);
        assertThat(worked.results())
                .filteredOn(one -> one.id().equals("product-spread"))
                .isNotEmpty()
                .allSatisfy(
                        one -> assertThat(one.reason()).contains("whether the product goes by L or kg is not told"));
    }

    @Test
    void aContentWithoutUnitIsAsked() {
        SeasonBook.Worked worked =
                spread(row("Product", "Unit", "Active content"), row("Stuff", "kg", 41), "Dose (kg ai/ha)", 1);
        assertThat(worked.messages()).anyMatch(message -> message.contains("is told in g/L, g/kg, % or lb/gal"));
        assertThat(worked.results())
                .noneMatch(
                        one -> one.id().equals("product-spread") && one.number().isPresent());
    }

    /** Jobs stand before mixes and these before the product list, whatever each of them counts. */
    @Test
    void whicheverIsTypedFirstHolds() {
        SeasonBook.Worked worked = book().sheet(
                        "Products", row("Product", "Unit", "N %", "Dose (kg N/ha)"), row("Stuff", "kg", 25, 100))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose"),
                        row("1", "Hill", "spread", "Spinner", "Stuff", "200 kg/ha"),
                        row("2", "Hill", "spread", "Spinner", "Stuff", null),
                        row("3", "Hill", "spread", "Spinner", "Stuff", "50 kg N/ha"))
                .run();
        double hectares = Units.AC.convert(10, Units.HA);
        assertThat(worked.results())
                .filteredOn(one -> one.id().equals("product-spread"))
                .extracting(one -> Math.round(one.number().get() / hectares))
                .containsExactly(200L, 400L, 200L);
        assertThat(worked.differences()).isEmpty();
    }

    /** A column of names, as product lists have it, is none of contents. */
    @Test
    void theNameOfTheActiveIngredientIsNoContent() {
        SeasonBook.Worked worked =
                spread(row("Product", "Unit", "Active ingredient"), row("Stuff", "kg", "some acid"), "Dose (kg/ha)", 3);
        assertThat(worked.messages()).noneMatch(message -> message.contains("some acid"));
    }

    /** Under "Dose (kg/ha)" the 100 of a row whose unit is kg N/ha was taken for kilograms of product. */
    @Test
    void aHeaderAndARowThatCountDifferentThingsAreAsked() {
        SeasonBook.Worked worked = book().sheet("Products", row("Product", "Unit", "N %"), row("Stuff", "kg", 20))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (kg/ha)", "Dose unit"),
                        row("Hill", "spread", "Spinner", "Stuff", 100, "kg N/ha"))
                .run();
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("The header says kg/ha and the row says kg N/ha"));
        assertNoProduct(worked);
    }

    /** A bare dose of what is dosed by its content elsewhere may count the one or the other. */
    @Test
    void aBareDoseBesideOneByContentIsAsked() {
        SeasonBook.Worked byDose =
                spread(row("Product", "Unit", "N %", "Dose (kg N/ha)"), row("Stuff", "kg", 20, 100), "Dose", 120);
        assertThat(byDose.messages()).anyMatch(message -> message.contains("is this in kg N/ha too?"));
        assertNoProduct(byDose);
        SeasonBook.Worked byUnit =
                spread(row("Product", "Unit", "Active content (%)"), row("Stuff", "g ai/ha", 20), "Dose", 120);
        assertThat(byUnit.messages()).anyMatch(message -> message.contains("is this in g a.i./ha too?"));
        assertNoProduct(byUnit);
    }

    private static void assertNoProduct(SeasonBook.Worked worked) {
        assertThat(worked.results())
                .filteredOn(one -> one.id().equals("product-spread"))
                .isNotEmpty()
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.number()).isEmpty());
    }

    /** What a header alone is taken for is told, and what crops need is not taken for what a product brings. */
    @Test
    void aHeaderThatNamesTheNutrientIsToldAndOneOfNeedIsNoDose() {
        Object[] headers = row("Product", "Unit", "N %", "Dose (kg/ha)");
        Object[] product = row("Stuff", "kg", 20, 150);
        assertThat(spread(headers, product, "N (kg/ha)", 100).messages())
                .anyMatch(message -> message.contains("\"N (kg/ha)\" is read as the Dose of Jobs"));
        SeasonBook.Worked needed = spread(headers, product, "N required (kg/ha)", 180);
        assertThat(given(needed, "product-spread")).isCloseTo(150 * Units.AC.convert(10, Units.HA), within(1e-9));
        assertThat(needed.messages()).anyMatch(message -> message.contains("N required (kg/ha)"));
    }

    /** Beside P2O5 and K2O a lone N is nitrogen. */
    @Test
    void nBesideTheOtherNutrientsIsNitrogen() {
        SeasonBook.Worked worked = spread(
                row("Product", "Unit", "N", "P2O5", "K2O"), row("Stuff", "kg", 20, 10, 10), "Dose (kg N/ha)", 100);
        assertThat(given(worked, "product-spread")).isCloseTo(500 * Units.AC.convert(10, Units.HA), within(1e-9));
    }

    /** A content that its cell shows as per cent says its unit, though its header does not. */
    @Test
    void aContentShownAsPerCentIsAShare() {
        SeasonBook.Worked worked = spread(
                row("Product", "Unit", "Active content"),
                row("Stuff", "kg", new SeasonBook.Shown(0.05, "0%")),
                "Dose (lb ai/ac)",
                10);
        assertThat(Units.KG.convert(given(worked, "product-spread"), Units.LB)).isCloseTo(2000, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
