package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding;
import org.rickyard.plan.Headlines;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.spraying.ProductOrder;

/** Prices on Assumptions under the names that people give them, and machines that have a price and no job. */
class PricesAsWrittenTest {
    private static final Object[][] MACHINES = {
        row(
                "Item",
                "Type",
                "List price",
                "Purchase price",
                "Trade-in value",
                "Life (yr)",
                "Hours per year (h)",
                "Hours now (h)",
                "Power (PTO hp)"),
        row("Tractor 180", "tractor", 150000, 130000, 34500, 15, 400, 0, 180)
    };

    private static List<String> said(SeasonBook.Worked worked) {
        return worked.findings().stream()
                .map(finding -> finding.cell().map(Object::toString).orElse("-") + " " + finding.message())
                .toList();
    }

    /** Iowa State AgDM A3-29: salvage 23 % of list, insurance and housing 1 % of the price, $1,300. */
    @Test
    @Tag("published")
    void aListOfPricesWithoutJobsIsReckoned() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Machinery costs", MACHINES)
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Interest", 8, "%"),
                        row("Insurance & housing", 1, "%"))
                .run();
        assertThat(worked.number("insurance-and-housing")).isEqualTo(1300, within(0.5));
        assertThat(worked.number("remaining-value")).isEqualTo(23, within(0.5));
        // Derived: 95,500 over 15 years; the mean of price and trade-in at 8 %.
        assertThat(worked.number("depreciation")).isEqualTo(95500 / 15.0, within(1e-9));
        assertThat(worked.number("interest")).isEqualTo(6580, within(1e-9));
        assertThat(Headlines.of(worked.plan()).stream()
                        .map(headline ->
                                headline.about() + ": " + headline.formula().id()))
                .containsExactly("Tractor 180: ownership-cost", "Tractor 180: machine-cost-per-hour");
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    @Tag("derived")
    void dieselAndWageRateAreReadAndWhatIsUnknownIsTold() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("A", "Grass", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)", "Fuel (L/h)"),
                        row("Mower", "mower", 3, 10, 80, 10))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Diesel price", 0.8, "£/L"),
                        row("Wage rate", 15, "£/h"),
                        row("Red diesel", 0.7, "£/L"),
                        row("Country", "UK", null),
                        row("Wobble", 3, null),
                        row("Barley price", 150, "£/t"))
                .run();
        // 12 ha at 2.4 ha/h is 5 h, so 50 L; labour a tenth more than the hours.
        assertThat(worked.number("fuel-cost")).isEqualTo(40, within(1e-9));
        assertThat(worked.number("labour-cost")).isEqualTo(82.5, within(1e-9));
        assertThat(said(worked))
                .contains(
                        "Assumptions!A4 the fuel price stands already in Assumptions!A2, and that one is used. Leave one of"
                                + " the two.",
                        "Assumptions!B5 \"UK\" is no country known here: write England, Wales, Scotland, Northern Ireland,"
                                + " Ireland, other.",
                        "Assumptions!A6 not known here, so without effect: \"Wobble\" (Assumptions!A6), \"Barley price\""
                                + " (Assumptions!A7). Expected in Item of Assumptions: the name of a constant as it stands on"
                                + " Basis, wage, fuel price, interest rate, insurance and housing, Country, or Customary"
                                + " units.");
        assertThat(worked.findings().stream().map(Finding::message))
                .noneMatch(message -> message.contains("wage missing") || message.contains("fuel price missing"));
    }

    /** "Item | Value | Unit" over a sprayer's figures is a form, and nothing told its reader where to write them. */
    @Test
    void aFormForOneMachineIsToldWhereItsFiguresGo() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("A", 12))
                .sheet("Machines", row("Machine", "Type", "Width (m)"), row("Mower", "mower", 3))
                .sheet(
                        "Sprayer setup",
                        row("Item", "Value", "Unit"),
                        row("Boom", 30, "m"),
                        row("Tank", 5000, "L"),
                        row("Nozzle spacing", 50, "cm"),
                        row("Colour", "red", null))
                .run();
        assertThat(said(worked))
                .anyMatch(line -> line.contains("\"Boom\" ('Sprayer setup'!A2)")
                        && line.endsWith(
                                " Most of these are headers of the list Machines: write them beside one another in"
                                        + " one row there, with what they are in the row below."));
    }

    @Test
    @Tag("derived")
    void aPriceThatIsMissingIsAskedForOnAssumptions() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Machinery costs", MACHINES)
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Interest", 8, "%"))
                .run();
        assertThat(worked.result("ownership-cost").causes().get(0).what())
                .isEqualTo("insurance and housing missing: type it on a list called Assumptions (Item, Value, Unit)");
    }

    /** What is asked for, written as it is asked, settles it. */
    @Test
    void theHeaderThatAQuestionAboutAPriceSuggestsIsRead() {
        String otherwise =
                ", if that holds for every product. Otherwise write L in Unit, and give pack size, stock, price"
                        + " and doses without a unit of their own in L.";
        String asked = "Price may be per L or per fl oz(US): write it in the header, Price per L" + otherwise;
        assertThat(productAt("Price").messages()).contains(asked);
        assertThat(productAt("Price per L").messages()).noneMatch(message -> message.contains("Price may be"));
        String pack = "Pack size may be in L or in fl oz(US): write it in the header, Pack size (L)" + otherwise;
        assertThat(productAt("Pack size").messages()).contains(pack);
        assertThat(productAt("Pack size (L)").messages()).noneMatch(message -> message.contains("Pack size may be"));
    }

    /** Five litres under a header in grams were five thousandths: 27,000 packs of a fungicide were to be bought. */
    @ParameterizedTest
    @CsvSource({"Pack size (g), 5", "Stock (g), 12", "Price per g, 34"})
    void aHeaderForOneProductDoesNotMakeThousandthsOfAnother(String header, double number) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                .sheet("Machines", row("Machine", "Type"), row("Sprayer", "sprayer"))
                .sheet(
                        "Products",
                        row("Product", "Unit", header),
                        row("Granule", "g", 240),
                        row("Fungicide", "L", number))
                .run();
        assertThat(said(worked))
                .anyMatch(m -> m.startsWith("Products!C3 The header says g and this product is counted in L"));
        assertThat(said(worked)).noneMatch(m -> m.startsWith("Products!C2"));
    }

    /** Who counts a product in gallons has its packs, stock and price in gallons: 2.5 gal are 9.4635 L. */
    @Test
    void packsOfAProductCountedInGallonsAreInGallons() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Acres"), row("Top", "wheat", 40))
                .sheet("Machines", row("Machine", "Type", "Tank (gal(US))"), row("Sprayer", "sprayer", 500))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Pack size", "Stock", "Price"),
                        row("Herbicide A", "gal(US)", 2.5, 4, 60))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose",
                                "Dose unit",
                                "Water volume (gal(US)/ac)"),
                        row("Weeds", "Top", "spray", "Sprayer", "Herbicide A", 0.5, "gal(US)/ac", 15))
                .run();
        // 20 gal less 4 in stock are 16: seven packs of 2.5 at 60 a gallon.
        assertThat(worked.number("packs-to-buy")).isEqualTo(7);
        assertThat(worked.plan().table("product-order").of(ProductOrder.COST).number(0))
                .isCloseTo(7 * 2.5 * 60, within(1e-6));
        assertThat(worked.differences()).isEmpty();
    }

    private static SeasonBook.Worked productAt(String header) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                .sheet("Machines", row("Machine", "Type"), row("Sprayer", "sprayer"))
                .sheet("Products", row("Product", "Unit", header), row("Herbicide A", "fl oz(US)", 80))
                .run();
    }
}
