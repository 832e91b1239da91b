package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.Units;

/** Headers and words as they stand in workbooks that hold a whole farm, a contractor's book, a custom operator's. */
class WholeFarmWordsTest {
    private static List<Severity> severities(FoundLists found) {
        return found.findings().stream().map(Finding::severity).distinct().toList();
    }

    @ParameterizedTest
    @CsvSource({"Field name,Parcel no.", "Field,OS no.", "Field,Parcel"})
    void aFieldIsKnownByItsNameAndNotByItsNumber(String name, String number) {
        FoundLists found = find(new SheetOf("Land")
                .row(number, name, "Area (ha)")
                .row("SX1 5678", "Ten Acre", 4)
                .row("SX1 6001", "Long Meadow", 7));
        assertThat(found.rows(Fields.LIST).text(Fields.FIELD, 1)).isEqualTo("Long Meadow");
        assertThat(found.findings())
                .singleElement()
                .satisfies(note -> assertThat(note.message())
                        .contains(number)
                        .contains("is taken from \"" + name + "\"")
                        .contains("other lists must name it so"))
                .extracting(Finding::severity)
                .isEqualTo(Severity.NOTE);
    }

    @Test
    void aMachineBesideItsModelIsTheMachine() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Model", "Type", "Working width (m)")
                .row("Front mower", "X 31", "mower", 3.1));
        assertThat(found.rows(Machines.LIST).text(Machines.MACHINE, 0)).isEqualTo("Front mower");
        assertThat(severities(found)).containsExactly(Severity.NOTE);
    }

    @Test
    void twoThatAreNoMoreTheNameThanEachOtherAreAskedStill() {
        FoundLists found =
                find(new SheetOf("Land").row("Parcel", "Paddock", "Area (ha)").row("A", "B", 4));
        assertThat(severities(found)).contains(Severity.STOP);
    }

    @Test
    void theMachineAndTheImplementOfAJobAreAskedStill() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Implement")
                .row("A", "mowing", "Tractor", "Mower"));
        assertThat(severities(found)).contains(Severity.STOP);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Field / block / crop",
                "Field / block",
                "Field or block",
                "Field, crop or block",
                "Crop or field"
            })
    void whereAJobIsDone(String header) {
        FoundLists found = find(
                new SheetOf("Sheet1").row(header, "Operation", "Machine(s)").row("Grass", "mowing", "Mower"));
        assertThat(found.rows(Jobs.LIST).text(Jobs.FIELD, 0)).isEqualTo("Grass");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aTaskIsTheOperationWhereItNamesOne() {
        FoundLists found = find(new SheetOf("Bookings")
                .row("Client", "Field", "Task", "Gear", "Product", "Dose (L/ha)")
                .row("K", "all", "mow", "Mower", null, null)
                .row("K", "Bog", "spray", "Sprayer", "P", 2));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.text(Jobs.OPERATION, 0)).isEqualTo("mowing");
        assertThat(jobs.text(Jobs.MACHINE, 1)).isEqualTo("Sprayer");
    }

    @Test
    void aTaskBesideAnOperationOrWithNamesOfItsOwnIsTheJob() {
        ListRows beside = find(new SheetOf("Jobs")
                        .row("Task", "Field", "Operation", "Machine")
                        .row("first", "A", "mowing", "Mower"))
                .rows(Jobs.LIST);
        assertThat(beside.text(Jobs.JOB, 0)).isEqualTo("first");
        ListRows named = find(new SheetOf("Jobs")
                        .row("Task", "Field", "Machine", "Product", "Dose (L/ha)")
                        .row("T1 wheat", "A", "Sprayer", "P", 1))
                .rows(Jobs.LIST);
        assertThat(named.text(Jobs.JOB, 0)).isEqualTo("T1 wheat");
        assertThat(named.has(Jobs.OPERATION)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "fresh standing,standing fresh",
        "as hauled,as carted fresh",
        "fresh carted,as carted fresh",
        "standing fresh weight,standing fresh"
    })
    void whatAYieldWasWeighedAs(String written, String read) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis")
                .row("A", 4, 20, written));
        assertThat(found.rows(Fields.LIST).text(Fields.YIELD_BASIS, 0)).isEqualTo(read);
    }

    @Test
    void aCultivatorDrillDrillsAndAPackerIsAsked() {
        FoundLists found = find(new SheetOf("Gear")
                .row("Item", "Sort", "Width (m)", "Box cap. (t)")
                .row("Drill", "Cultivator drill", 4, null)
                .row("Packer", "packer", 3, null)
                .row("Cart", "trailer", null, 14));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("drill");
        assertThat(machines.number(Machines.PAYLOAD, 2)).isEqualTo(14);
        assertThat(found.findings())
                .anySatisfy(finding ->
                        assertThat(finding.message()).contains("packer").contains("clamp roller"));
    }

    @Test
    void aRateBesideTheHighestRateIsADose() {
        FoundLists found = find(new SheetOf("Sprays")
                .row("Product", "Max rate (L/ha)", "Rate (L/ac)", "Pack (L)")
                .row("P", 2, 0.8, 5));
        assertThat(found.rows(Products.LIST).number(Products.DOSE, 0)).isEqualTo(0.8);
        assertThat(severities(found)).containsExactly(Severity.NOTE);
    }

    @Test
    void clampsAsACustomOperatorListsThem() {
        FoundLists found = find(new SheetOf("Bunkers")
                .row("Farm", "Bunker", "Style", "Length (ft)", "Width (ft)", "Wall ht (ft)", "Tractor rolling (t)")
                .row("F", "North", "walled", 180, 50, 12, 15.5));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.text(Clamps.KIND, 0)).isEqualTo("walled");
        assertThat(clamps.number(Clamps.ROLLER_MASS, 0)).isEqualTo(15.5);
        assertThat(clamps.unit(Clamps.ROLLER_MASS, 0)).hasValue(Units.T);
    }

    @Test
    void waterByItsCommonNames() {
        FoundLists found = find(new SheetOf("Paddocks")
                .row("Paddock", "Area (ha)", "Drain / creek", "km to stack")
                .row("1", 3.2, "creek", 0.4));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.text(Fields.WATERCOURSE, 0)).isEqualTo("stream");
        assertThat(fields.number(Fields.DISTANCE_TO_CLAMP, 0)).isEqualTo(0.4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"USA", "New Zealand", "NZ", "Canada"})
    void aCountryWhoseRulesAreNotHeldIsAnotherCountry(String country) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)", "Country").row("A", 4, country));
        assertThat(found.rows(Fields.LIST).text(Fields.COUNTRY, 0)).isEqualTo("other");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHarvesterThatDrivesItselfIsAsked() {
        FoundLists found = find(
                new SheetOf("Kit").row("Machine", "Sort", "Width (m)").row("Chopper", "self propelled harvester", 7.6));
        assertThat(found.findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("write forager or combine"));
    }

    @Test
    void tonsInAStorageAreInStore() {
        FoundLists found = find(new SheetOf("Inventory")
                .row("Farm", "Storage", "Tons (t)", "DM (%)")
                .row("F", "North", 2600, 34));
        ListRows stocks = found.rows(Stocks.LIST);
        assertThat(stocks.text(Stocks.STORE, 0)).isEqualTo("North");
        assertThat(stocks.number(Stocks.AMOUNT, 0)).isEqualTo(2600);
        assertThat(found.findings()).isEmpty();
    }

    /** The amount in store is fresh; what is typed as dry matter is told as not read, and not passed over. */
    @Test
    void aSheetOfFeedOnHandInTonnesOfDryMatterIsTold() {
        FoundLists found = find(
                new SheetOf("Feed on hand").row("Feed", "Tonnes DM", "Source").row("Stack", 32, "est"));
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.cell()).hasValue(new CellAddress("Feed on hand", 0, 0));
            assertThat(finding.message()).contains("list Stocks").contains("Amount");
        });
    }

    private static SheetOf grossAndNet() {
        return new SheetOf("Fields")
                .row("Field", "Gross area (ha)", "Net area (ha)")
                .row("A", 4.3, 4.05);
    }

    @Test
    void grossAndNetAreAskedWithBothNamed() {
        FoundLists found = find(grossAndNet());
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isFalse();
        assertThat(found.findings()).singleElement().satisfies(stop -> {
            assertThat(stop.severity()).isEqualTo(Severity.STOP);
            assertThat(stop.message())
                    .contains(
                            "\"Net area (ha)\" (Fields!C1) and \"Gross area (ha)\" (Fields!B1) could all be Area of Fields")
                    .contains("Fields | Area | Net area (ha)");
        });
    }

    @ParameterizedTest
    @CsvSource({"Net area (ha),4.05", "Gross area (ha),4.3"})
    void layoutAnswersWhichOfThem(String header, double area) {
        FoundLists found = find(
                grossAndNet(),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Fields", "Area", header, "ha"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(area);
        assertThat(severities(found)).doesNotContain(Severity.STOP, Severity.CAUTION);
    }
}
