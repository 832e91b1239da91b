package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.ListRows.State;
import org.rickyard.quantity.Units;

/** What the cells of a column of doses or nozzle sizes give. */
class DoseCellsTest {
    @ParameterizedTest
    @CsvSource({
        "04, 4",
        "ISO 04, 4",
        "11004, 4",
        "110-04, 4",
        "red 04, 4",
        "F110/1.6/3.0, 4",
        "025, 2.5",
        "110025, 2.5",
        "8003, 3",
        "015, 1.5",
        "0067, 0.67",
        "10, 10"
    })
    void nozzleSizesAreReadAsTheyAreWritten(String text, double size) {
        ListRows machines = nozzle(text).rows(Machines.LIST);
        assertThat(machines.state(Machines.NOZZLE_SIZE, 0)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 0)).isCloseTo(size, within(1e-12));
    }

    private static FoundLists nozzle(Object size) {
        return find(
                new SheetOf("Machines").row("Machine", "Type", "Nozzle size").row("S", "sprayer", size));
    }

    @Test
    void aNozzleColourOrALostZeroIsAsked() {
        assertThat(nozzle("red").rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0))
                .isEqualTo(State.ASKED);
        assertThat(nozzle(25).rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0))
                .isEqualTo(State.ASKED);
        assertThat(nozzle(4).rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0)).isEqualTo(State.GIVEN);
        assertThat(nozzle("fan").rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0))
                .isEqualTo(State.NOT_READABLE);
    }

    @Test
    void dosesHaveTheUnitOfHeaderRowOrCell() {
        FoundLists found = find(new SheetOf("Mixes")
                .row("Mix", "Product", "Dose", "Dose unit")
                .row("M", "A", 1.5, "L/ha")
                .row("M", "B", 20, "g/ac")
                .row("M", "C", 0.1, "%")
                .row("M", "D", "250 ml/100 L", null)
                .row("M", "E", 2, null)
                .row("M", "F", 2, "bucket"));
        ListRows mixes = found.rows(Mixes.LIST);
        assertThat(mixes.unit(Mixes.DOSE, 0).orElseThrow().convert(1.5, Units.DOSE))
                .isEqualTo(1.5);
        assertThat(mixes.productUnit(Mixes.DOSE, 0)).hasValue("L");
        assertThat(mixes.unit(Mixes.DOSE, 1).orElseThrow().convert(20, Units.DOSE))
                .isCloseTo(0.02 / 0.40468564224, within(1e-12));
        assertThat(mixes.productUnit(Mixes.DOSE, 1)).hasValue("kg");
        assertThat(mixes.unit(Mixes.DOSE, 2).orElseThrow().convert(0.1, Units.CONCENTRATION))
                .isCloseTo(0.001, within(1e-15));
        assertThat(mixes.state(Mixes.DOSE, 3)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(mixes.number(Mixes.DOSE, 3)).isEqualTo(250);
        assertThat(mixes.unit(Mixes.DOSE, 3).orElseThrow().convert(250, Units.CONCENTRATION))
                .isCloseTo(0.0025, within(1e-15));
        assertThat(mixes.unit(Mixes.DOSE, 4)).hasValue(Units.DOSE);
        assertThat(mixes.productUnit(Mixes.DOSE, 4)).isEmpty();
        assertThat(mixes.state(Mixes.DOSE, 5)).isEqualTo(State.ASKED);
        assertThat(found.findings()).hasSize(2);
    }

    @Test
    void aProductsUnitIsItsOwnOrThatOfItsDose() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (per ha)", "Pack size", "Price", "Highest dose")
                .row("A", "L", 1.5, 5, 20, 2)
                .row("B", "g/ha", 250, 1, 90, 300)
                .row("C", "tablet", 3, 20, 2, 5));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.unit(Products.DOSE, 0).orElseThrow().convert(1.5, Units.DOSE))
                .isEqualTo(1.5);
        assertThat(products.productUnit(Products.PACK_SIZE, 0)).hasValue("L");
        assertThat(products.unit(Products.DOSE, 1).orElseThrow().convert(250, Units.DOSE))
                .isEqualTo(0.25);
        assertThat(products.productUnit(Products.PACK_SIZE, 1)).hasValue("kg");
        assertThat(products.productUnit(Products.DOSE, 2)).hasValue("tablet");
        assertThat(products.unit(Products.PRICE, 2)
                        .orElseThrow()
                        .isCompatible(Units.MONEY_UNIT.over(Units.PRODUCT_UNIT)))
                .isTrue();
    }

    @Test
    void aHeaderAndARowThatDisagreeAboutADoseAreAsked() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Dose (L/ha)")
                .row("A", "kg", 1.5)
                .row("B", "L", 1.5));
        assertThat(found.rows(Products.LIST).state(Products.DOSE, 0)).isEqualTo(State.ASKED);
        assertThat(found.rows(Products.LIST).state(Products.DOSE, 1)).isEqualTo(State.GIVEN);
    }

    @Test
    void aBlankDoseStillHasTheUnitItWillBeTypedIn() {
        ListRows mixes = find(new SheetOf("Mixes")
                        .row("Mix", "Product", "Dose", "Dose unit")
                        .row("M", "A", null, "g/ha"))
                .rows(Mixes.LIST);
        assertThat(mixes.state(Mixes.DOSE, 0)).isEqualTo(State.BLANK);
        assertThat(mixes.productUnit(Mixes.DOSE, 0)).hasValue("kg");
    }

    @Test
    void whatOneAnswerSettlesIsAskedOnce() {
        FoundLists found = find(new SheetOf("Mixes")
                .row("Mix", "Product", "Dose", "Dose unit")
                .row("M", "A", 32, "fl oz/ac")
                .row("M", "B", 8, "lb/ac")
                .row("N", "A", 20, "fl oz/ac")
                .row("N", "C", 16, "fl oz/ac"));
        String question = "\"fl oz/ac\" could be fl oz(UK)/ac or fl oz(US)/ac: write which, or add the item \"Customary"
                + " units\" with the value UK or US to a sheet Assumptions.";
        assertThat(FoundIn.said(found))
                .filteredOn(words -> words.contains("fl oz"))
                .containsExactly("STOP Mixes!C2 " + question + " It is the same in 2 more cells, down to Mixes!C5.");
        ListRows mixes = found.rows(Mixes.LIST);
        assertThat(mixes.state(Mixes.DOSE, 3)).isEqualTo(State.ASKED);
        assertThat(mixes.state(Mixes.DOSE, 1)).isEqualTo(State.GIVEN);
    }
}
