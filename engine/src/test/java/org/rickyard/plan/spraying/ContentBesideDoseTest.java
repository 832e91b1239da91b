package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.quantity.Units;
import org.rickyard.testing.SeasonBook;

/** What a product holds, told beside its dose in a list of jobs, where no product list tells it. */
class ContentBesideDoseTest {
    private static final Object[] JOBS = row(
            "Field",
            "Operation",
            "Machine",
            "Product",
            "Dose (g ai/ha)",
            "Active content (g/L)",
            "Water volume (L/ha)");

    private static SeasonBook book() {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 10), row("Far", "wheat", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 12, 3000),
                        row("Spinner", "fertiliser spreader", 18, 12, null));
    }

    private static List<Double> given(SeasonBook.Worked worked, String id) {
        return worked.results().stream()
                .filter(one -> one.id().equals(id) && one.number().isPresent())
                .map(one -> one.number().get())
                .toList();
    }

    /** Extension exercise 7a: 3 lb of active ingredient an acre from 8 lb/gal are 0.375 gal an acre. */
    @Tag("published")
    @Test
    void aFlatListTellsTheContentBesideTheDose() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 12, 3000))
                .sheet(
                        "Sheet1",
                        row(
                                "Field",
                                "Area (ac)",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose (lb ai/ac)",
                                "Concentration (lb ai/gal (US))",
                                "Water volume (L/ha)"),
                        row("Hill", 10, "spraying", "Sprayer", "Stuff", 3, 8, 200))
                .run();
        assertThat(given(worked, "product-total")).singleElement().satisfies(litres -> assertThat(
                        Units.L.convert(litres, Units.GAL_US))
                .isCloseTo(3.75, within(1e-9)));
        assertThat(worked.messages()).noneMatch(message -> message.contains("is not told"));
        assertThat(worked.differences()).isEmpty();
    }

    /** Of another content it is another amount, so the fields are no block of one tank mix. */
    @Test
    void twoContentsOfOneProductAreToldAndEachDoseGoesByItsOwn() {
        SeasonBook.Worked worked = book().sheet(
                        "Jobs",
                        JOBS,
                        row("Hill", "spraying", "Sprayer", "Stuff", 720, 360, 200),
                        row("Far", "spraying", "Sprayer", "Stuff", 720, 450, 200))
                .run();
        assertThat(given(worked, "product-total"))
                .satisfiesExactly(litres -> assertThat(litres).isCloseTo(20, within(1e-9)), litres -> assertThat(litres)
                        .isCloseTo(8, within(1e-9)));
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("'Stuff' holds 450 g/L (Jobs!F3) of active ingredient here and"
                        + " 360 g/L (Jobs!F2) elsewhere"))
                .hasSize(1);
        assertThat(worked.differences()).isEmpty();
    }

    /** What stands beside the dose goes before the product list. */
    @Test
    void theProductListTellsItForTheOthers() {
        SeasonBook.Worked worked = book().sheet(
                        "Products", row("Product", "Unit", "Active content (g/L)"), row("Stuff", "L", 360))
                .sheet(
                        "Jobs",
                        JOBS,
                        row("Hill", "spraying", "Sprayer", "Stuff", 720, null, 200),
                        row("Far", "spraying", "Sprayer", "Stuff", 720, 450, 200))
                .run();
        assertThat(given(worked, "product-total"))
                .satisfiesExactly(litres -> assertThat(litres).isCloseTo(20, within(1e-9)), litres -> assertThat(litres)
                        .isCloseTo(8, within(1e-9)));
        assertThat(worked.messages()).anyMatch(message -> message.contains("'Stuff' holds 450 g/L"));
    }

    /** A share by weight in the product list is no way round what stands beside the dose, whatever its density says. */
    @Test
    void whatALitreHoldsBesideTheDoseGoesBeforeAShareOfTheList() {
        for (Object density : new Object[] {1.2, null}) {
            SeasonBook.Worked worked = book().sheet(
                            "Products",
                            row("Product", "Unit", "Active content (%)", "Density (kg/L)"),
                            row("Stuff", "L", 50, density))
                    .sheet("Jobs", JOBS, row("Hill", "spraying", "Sprayer", "Stuff", 720, 360, 200))
                    .run();
            assertThat(given(worked, "product-total")).singleElement().satisfies(litres -> assertThat(litres)
                    .isCloseTo(20, within(1e-9)));
            assertThat(worked.differences()).isEmpty();
        }
    }

    /** A content of a litre stood first, and the shares after it were held against it alone, which says nothing. */
    @Test
    void sharesAreHeldAgainstEachOtherBesideAContentOfALitre() {
        SeasonBook.Worked worked = book().sheet(
                        "Products",
                        row("Product", "Unit", "Active content (%)", "Density (kg/L)"),
                        row("Stuff", "L", 50, 1.2))
                .sheet(
                        "Jobs",
                        row(
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose (g ai/ha)",
                                "Active content",
                                "Water volume (L/ha)"),
                        row("Hill", "spraying", "Sprayer", "Stuff", 720, "360 g/L", 200),
                        row("Far", "spraying", "Sprayer", "Stuff", 720, "36 %", 200))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("'Stuff' holds ") && message.contains("50 %"))
                .hasSize(1);
    }

    /** It was read and not used, and nothing said so. */
    @Test
    void aContentBesideAMixIsOfNobodyKnowsWhichProduct() {
        SeasonBook.Worked worked = book().sheet(
                        "Mixes",
                        row("Mix", "Product", "Dose (g ai/ha)"),
                        row("T1", "Stuff", 720),
                        row("T1", "Other", 500))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Mix", "Active content (g/L)", "Water volume (L/ha)"),
                        row("Hill", "spraying", "Sprayer", "T1", 360, 200),
                        row("Far", "spraying", "Sprayer", "T1", 360, 200))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("does not say which of its products holds so much of active"))
                .hasSize(1);
    }

    /** Kilograms cannot go by the litre: there the share of the list is all that helps. */
    @Test
    void aProductInKilogramsGoesByTheShareOfTheList() {
        SeasonBook.Worked worked = book().sheet(
                        "Products", row("Product", "Unit", "Active content (%)"), row("Stuff", "kg", 50))
                .sheet("Jobs", JOBS, row("Hill", "spraying", "Sprayer", "Stuff", 720, 360, 200))
                .run();
        assertThat(given(worked, "product-total")).singleElement().satisfies(kilograms -> assertThat(kilograms)
                .isCloseTo(14.4, within(1e-9)));
        assertThat(worked.differences()).isEmpty();
    }

    /** Common practice: 100 kg/ha of N is 290 kg/ha of 34.5 %, 217 of 46 %; a spreader of solids spreads kilograms. */
    @Tag("common-practice")
    @Test
    void nutrientsOfWhatASpreaderSpreadsGoByWeight() {
        SeasonBook.Worked worked = book().sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (kg N/ha)", "N %"),
                        row("Hill", "fertiliser spreading", "Spinner", "Nitrate", 100, 34.5),
                        row("Far", "fertiliser spreading", "Spinner", "Urea", 100, 46))
                .run();
        assertThat(given(worked, "product-spread"))
                .satisfiesExactly(
                        kilograms -> assertThat(kilograms).isCloseTo(2900, within(5.0)),
                        kilograms -> assertThat(kilograms).isCloseTo(1087, within(2.5)));
        assertThat(worked.differences()).isEmpty();
    }

    /** "N units/ac" and "N (kg/ha)" are what is spread, and no share of the product. */
    @Test
    void whatIsOnAnAreaIsNoContent() {
        for (String header : List.of("N units/ac", "N (kg/ha)")) {
            SeasonBook.Worked worked = book().sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Product", header, "Nitrogen %"),
                            row("Hill", "fertiliser spreading", "Spinner", "Nitrate", 100, 34.5))
                    .run();
            assertThat(given(worked, "product-spread")).as(header).hasSize(1);
            assertThat(worked.messages())
                    .as(header)
                    .anyMatch(message -> message.contains("\"" + header + "\" is read as the Dose of Jobs"));
        }
    }

    /** The second product was reckoned by the content of the first. */
    @Test
    void ofSeveralProductsInARowEachHasItsOwnContentOrNone() {
        String[] headers = {"Field", "Operation", "Machine", "Water volume (L/ha)"};
        SeasonBook.Worked each = book().sheet(
                        "Jobs",
                        row(
                                headers[0],
                                headers[1],
                                headers[2],
                                headers[3],
                                "Product 1",
                                "Dose 1 (g ai/ha)",
                                "Active content 1 (g/L)",
                                "Product 2",
                                "Dose 2 (g ai/ha)",
                                "Active content 2 (g/L)"),
                        row("Hill", "spraying", "Sprayer", 200, "One", 720, 360, "Two", 500, 500))
                .run();
        assertThat(given(each, "product-total")).containsExactly(20.0, 10.0);
        SeasonBook.Worked one = book().sheet(
                        "Jobs",
                        row(
                                headers[0],
                                headers[1],
                                headers[2],
                                headers[3],
                                "Product",
                                "Dose (g ai/ha)",
                                "Product",
                                "Dose (g ai/ha)",
                                "Concentration (g/L)"),
                        row("Hill", "spraying", "Sprayer", 200, "One", 720, "Two", 500, 500))
                .run();
        assertThat(given(one, "product-total")).isEmpty();
        assertThat(one.messages()).anyMatch(message -> message.contains("Concentration (g/L)"));
    }

    /** A gram in 100 mL: 36 % w/v is 360 g/L; what is told by the litre is measured by it. */
    @Test
    void aContentByVolumeTellsThatTheProductGoesByLitres() {
        for (Object[] content : List.of(
                row("Active content (% w/v)", 36), row("Active content (kg/m3)", 360), row("ai (g ai/L)", 360))) {
            SeasonBook.Worked worked = book().sheet(
                            "Products", row("Product", content[0], "Price"), row("Stuff", content[1], 5))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Product", "Dose (g ai/ha)", "Water volume (L/ha)"),
                            row("Hill", "spraying", "Sprayer", "Stuff", 720, 200))
                    .run();
            assertThat(given(worked, "product-total"))
                    .as(content[0].toString())
                    .singleElement()
                    .satisfies(litres -> assertThat(litres).isCloseTo(20, within(1e-9)));
            assertThat(worked.differences()).isEmpty();
        }
    }
}
