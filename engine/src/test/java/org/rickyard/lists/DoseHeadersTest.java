package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.Units;

/** Headers of products, doses and nozzles that say too little by themselves, read with what stands beside and under them. */
class DoseHeadersTest {
    private static SheetOf flat(String rate) {
        return new SheetOf("Spray program")
                .row("Field", "Crop", "Acres", "Sprayer", "Product", rate, "Unit", "Carrier (gal(US)/ac)")
                .row("North 40", "Corn", 38.5, "Boom", "Herbicide A", 32, "fl oz(US)/ac", 15)
                .row("North 40", "Corn", 38.5, "Boom", "AMS", 2.5, "lb/ac", 15)
                .row("North 40", "Corn", 38.5, "Boom", "Surfactant", 0.25, "% v/v", 15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Dose"})
    void aUnitOverUnitsOfDosesIsNoHolding(String rate) {
        FoundLists found = find(flat(rate));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.text(Fields.HOLDING, 0)).isEmpty();
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.HOLDING, 0)).isEmpty();
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(32);
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow()).hasToString("fl oz(US)/ac");
        assertThat(jobs.unit(Jobs.DOSE, 2).orElseThrow()).hasToString("%");
        assertThat(said(found))
                .contains(
                        "NOTE 'Spray program'!G1 \"Unit\" is read as Dose unit of Jobs: its cells are units, not names of"
                                + " farms.");
    }

    @Test
    void unitsThatDifferFromRowToRowAreAsked() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area", "Unit", "Crop")
                .row("A", 10, "ac", "Grass")
                .row("B", 20, "ha", "Grass"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(said(found))
                .anyMatch(line -> line.startsWith(
                        "STOP Fields!B1 The unit of \"Area\" is not certain. Its rows are in ac or ha"));
    }

    @Test
    void aRateBesideTheWaterVolumeIsTheDose() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Rate (L/ha)", "Water rate (L/ha)")
                .row("A", "spray", "Sprayer", "Fungicide", 1.5, 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(1.5);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Jobs!E1 \"Rate (L/ha)\" is read as the Dose of Jobs, since \"Product\" and \"Water"
                                + " rate (L/ha)\" stand beside it. If it is something else, rename it.");
    }

    @Test
    void aRateBesideAProductAloneIsAskedAsBefore() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Rate (L/ha)")
                .row("A", "spray", "Sprayer", "Fungicide", 200));
        assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void aRateInAMixWithItsUnitIsTheDose() {
        FoundLists found = find(new SheetOf("Tank mixes")
                .row("Mix", "Product", "Rate", "Unit")
                .row("T1", "Fungicide", 1, "l/ha")
                .row("T1", "Wetter", 200, "ml/100 l"));
        ListRows mixes = found.rows(Mixes.LIST);
        assertThat(mixes.number(Mixes.DOSE, 1)).isEqualTo(200);
        assertThat(mixes.unit(Mixes.DOSE, 1).orElseThrow()).hasToString("ml/100 L");
    }

    @Test
    void aNozzleOverSizesIsTheSize() {
        FoundLists found = find(new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Boom (m)", "Nozzle")
                .row("A", "sprayer", 24, "ISO 03 blue")
                .row("B", "sprayer", 12, 11004)
                .row("C", "sprayer", 12, "F110 025"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 0)).isEqualTo(3);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 1)).isEqualTo(4);
        assertThat(machines.number(Machines.NOZZLE_SIZE, 2)).isEqualTo(2.5);
        assertThat(said(found))
                .containsExactly(
                        "NOTE Sprayers!D1 \"Nozzle\" is read as the Nozzle size of Machines: its cells are written"
                                + " as sizes are.");
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 48})
    void aNozzleOverPlainNumbersIsAskedAsBefore(int number) {
        FoundLists found = find(new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Boom (m)", "Nozzle")
                .row("A", "sprayer", 24, number));
        assertThat(found.rows(Machines.LIST).state(Machines.NOZZLE_SIZE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.rows(Machines.LIST).state(Machines.NOZZLES, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void productsBesideEachOtherAreToldAsUnread() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ha)").row("Top", 6),
                new SheetOf("Jobs")
                        .row(
                                "Field",
                                "Operation",
                                "Machine",
                                "Herbicide 1",
                                "Rate 1 (l/ha)",
                                "Fungicide 1",
                                "Rate 2 (l/ha)")
                        .row("Top", "spray", "SP24", "A", 1, "B", 2));
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() == Severity.CAUTION)
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!D1");
                    assertThat(finding.message())
                            .isEqualTo(
                                    "\"Herbicide 1\" and \"Fungicide 1\" stand beside each other in one row and are not read."
                                            + " Write one row for each product, with columns Product, Dose and Dose unit: rows of"
                                            + " one job, field and machine are one tank mix.");
                });
    }

    @Test
    void productsBesideFieldsAreNoProductList() {
        FoundLists alone = find(new SheetOf("Spray plan")
                .row("Field", "Product", "Dose (L/ha)", "Water (L/ha)")
                .row("A", "Herbicide", 2, 200)
                .row("B", "Herbicide", 2, 200));
        assertThat(alone.rows(Products.LIST).size()).isZero();
        assertThat(said(alone))
                .containsExactly(
                        "STOP 'Spray plan'!A1 This row looks like the header of the list Jobs, but it has no column"
                                + " Machine, so nothing of it is read. Add the column, or name it in a sheet Layout (List, Column,"
                                + " Header in this workbook, Unit).");
        FoundLists flat = find(new SheetOf("Spraying")
                .row("Field", "Area (ha)", "Product", "Dose (L/ha)", "Water volume (L/ha)")
                .row("A", 10, "Herbicide", 2, 200)
                .row("B", 5, "Herbicide", 2, 200));
        assertThat(flat.rows(Products.LIST).size()).isZero();
        assertThat(flat.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(said(flat))
                .containsExactly("CAUTION Spraying!A1 These fields have work beside them (\"Product\", \"Dose (L/ha)\","
                        + " \"Water volume (L/ha)\") but no column Machine, so they are read as fields alone and nothing of"
                        + " the work is worked out. Add a column Machine with names from the machine list.");
    }

    @Test
    void aProductListMayStillTouchAFieldList() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Field", "Area (ha)", "Product", "Unit", "Dose (L/ha)", "Pack size")
                .row("A", 10, "Herbicide", "L", 2, 5));
        assertThat(found.rows(Products.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
    }

    @Test
    void moneyForAPackIsAPriceAndNoPack() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Unit", "Pack size (L)", "£/pack")
                .row("Fungicide", "L", 5, 160));
        ListRows products = found.rows(Products.LIST);
        assertThat(products.number(Products.PACK_SIZE, 0)).isEqualTo(5);
        assertThat(products.number(Products.PRICE, 0)).isEqualTo(160);
        assertThat(products.unit(Products.PRICE, 0)).hasValue(Units.MONEY_UNIT);
        FoundLists alone = find(
                new SheetOf("Products").row("Product", "Unit", "$/L", "Stock").row("Fungicide", "L", 32, 4));
        assertThat(alone.rows(Products.LIST).has(Products.PACK_SIZE)).isFalse();
        assertThat(alone.rows(Products.LIST).number(Products.PRICE, 0)).isEqualTo(32);
        FoundLists machines =
                find(new SheetOf("Machines").row("Machine", "Type", "£/ha").row("Mower", "mower", 30));
        assertThat(machines.places().get(0).unrecognised()).containsExactly("£/ha");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"GPA (US)", "gal/ac (US)", "Water rate gal/ac US", "Carrier (gal/ac US)", "Volume (US gal/ac)"})
    void aCountryBehindAUnitSaysWhose(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "spray", "Sprayer", 15));
        assertThat(found.rows(Jobs.LIST).unit(Jobs.WATER_VOLUME, 0))
                .hasValueSatisfying(unit -> assertThat(unit.convert(15, Units.L_PER_HA))
                        // 15 US gal/ac, a gallon of 9.353956 L/ha.
                        .isCloseTo(140.309, org.assertj.core.api.Assertions.within(0.001)));
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void bagsAndWeightInVolumeAreDoses() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit", "Water (L/ha)")
                .row("A", "spray", "S", "Powder", 2, "bags/ha", 200)
                .row("A", "spray", "S", "Salt", 0.25, "% w/v", 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.productUnit(Jobs.DOSE, 0)).hasValue("tablet");
        assertThat(jobs.productUnit(Jobs.DOSE, 1)).hasValue("kg");
        // A quarter of a per cent is 0.25 kg in 100 L.
        assertThat(jobs.unit(Jobs.DOSE, 1).orElseThrow().convert(0.25, Units.CONCENTRATION))
                .isCloseTo(0.0025, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aRateOfAMixThatSaysItsUnitIsTheDose() {
        FoundLists found = find(
                new SheetOf("Tank mixes").row("Mix", "Product", "Rate (L/ha)").row("T1", "Fungicide", 1));
        assertThat(found.rows(Mixes.LIST).number(Mixes.DOSE, 0)).isEqualTo(1);
        FoundLists bare =
                find(new SheetOf("Tank mixes").row("Mix", "Product", "Rate").row("T1", "Fungicide", 1));
        assertThat(bare.rows(Mixes.LIST).state(Mixes.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate (£/ha)", "Dose (£/ha)", "Rate £/ac"})
    void whatAProductCostsIsNoDose(String header) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", header, "Water volume (L/ha)")
                .row("Long Ground", "spraying", "Sprayer", "Alpha", 20, 100));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.PRODUCT, 0)).isEqualTo("Alpha");
        assertThat(jobs.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(100);
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }
}
