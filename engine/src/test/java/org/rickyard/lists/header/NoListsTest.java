package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** What a client keeps beside the lists: diaries, invoices, contacts, soil tests. None is taken for a list. */
class NoListsTest {
    private static List<Severity> severities(FoundLists found) {
        return found.findings().stream().map(Finding::severity).distinct().toList();
    }

    private static SheetOf fields() {
        return new SheetOf("Fields")
                .row("Field", "Area (ha)", "Crop", "Run length (m)")
                .row("A", 4.05, "Grass", 200)
                .row("B", 6, "Grass", 250);
    }

    private static SheetOf diary(String name) {
        return new SheetOf(name)
                .row("Date", "What", "Field", "Hours", "Who", "Machine")
                .row(LocalDate.of(2026, 3, 2), "Rolled grass", "A", 3, "T", "Rolls")
                .row(LocalDate.of(2026, 3, 9), "Market", null, null, "J", null);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Diary", "Diary 2026", "Timesheets", "Work log", "Invoices"})
    void aSheetThatIsCalledSomethingElseHoldsNoJobs(String name) {
        FoundLists found = find(fields(), diary(name));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
        assertThat(severities(found)).containsExactly(Severity.NOTE);
    }

    @Test
    void theSameRowsOnASheetOfJobsAreJobs() {
        assertThat(find(fields(), diary("Work plan")).rows(Jobs.LIST).size()).isEqualTo(1);
        assertThat(find(fields(), diary("Sheet4")).rows(Jobs.LIST).size()).isEqualTo(1);
    }

    @Test
    void aTitleThatNamesTheListGoesBeforeTheNameOfTheSheet() {
        FoundLists found = find(
                new SheetOf("Diary").row("Jobs").row("What", "Field", "Machine").row("mowing", "A", "Mower"));
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(1);
    }

    @Test
    void aNearMissOnSuchASheetIsNotTold() {
        FoundLists found = find(
                fields(),
                new SheetOf("Hours log")
                        .row("Date", "Driver", "Machine", "Start hrs", "End hrs", "Diesel (L)", "Client", "Acres")
                        .row(LocalDate.of(2026, 5, 3), "P", "Mower", 1210, 1214.5, 130, "C", 19.5));
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void peopleAreNoMachines() {
        FoundLists found = find(new SheetOf("People")
                .row("Name", "Business", "Phone", "Type")
                .row("A. Grower", "Agronomy", "01000 000001", "crops")
                .row("B. Digger", "Silage gang", "01000 000002", "contractor"));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(severities(found)).containsExactly(Severity.NOTE);
    }

    @Test
    void machinesWithoutFiguresAreMachinesAllTheSameIfOneTypeIsKnown() {
        FoundLists found = find(new SheetOf("People")
                .row("Name", "Business", "Type")
                .row("Big one", "Home", "trailed mower")
                .row("Odd one", "Home", "thing"));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(2);
    }

    @Test
    void soilTestsOfTheSameFieldsAreNoSecondList() {
        FoundLists found = find(
                fields(),
                new SheetOf("Soil")
                        .row("Field", "Area (ac)", "pH", "P index")
                        .row("A", 10, 6.2, 2)
                        .row("B", 14.83, 5.9, 1));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4.05);
        assertThat(found.findings())
                .singleElement()
                .satisfies(note -> assertThat(note.message()).contains("not read as a second list of fields"))
                .extracting(Finding::cell)
                .isEqualTo(Optional.of(new CellAddress("Soil", 0, 0)));
    }

    @Test
    void otherAreasOrOneFieldMoreAreAskedAsBefore() {
        for (Object[] last : new Object[][] {{"B", 3, 5.9}, {"C", 6, 5.9}}) {
            FoundLists found = find(
                    fields(),
                    new SheetOf("Soil")
                            .row("Field", "Area (ha)", "pH")
                            .row("A", 4.05, 6.2)
                            .row(last));
            assertThat(found.rows(Fields.LIST).size()).isEqualTo(4);
            assertThat(severities(found)).contains(Severity.STOP);
        }
    }

    @Test
    void aTableThatSaysMoreOfTheFieldsIsAskedAboutAsBefore() {
        FoundLists found = find(
                fields(),
                new SheetOf("Yields")
                        .row("Field", "Area (ha)", "Yield (t DM/ha)")
                        .row("A", 4.05, 5)
                        .row("B", 6, 5));
        assertThat(severities(found)).contains(Severity.STOP);
    }

    @Test
    void fieldsOfTheSameNamesOnAnotherHoldingAreAListOfTheirOwn() {
        FoundLists found = find(
                new SheetOf("North")
                        .row("Farm", "Field", "Area (ha)")
                        .row("North", "A", 4)
                        .row("North", "B", 6),
                new SheetOf("South")
                        .row("Farm", "Field", "Area (ha)")
                        .row("South", "A", 4)
                        .row("South", "B", 6));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(4);
    }

    @Test
    void norDoesATitleThatNamesAnotherFarmMakeThemTheSame() {
        FoundLists found = find(
                new SheetOf("North")
                        .row("Farm: North")
                        .row("Field", "Area (ha)")
                        .row("A", 4)
                        .row("B", 6),
                new SheetOf("South")
                        .row("Farm: South")
                        .row("Field", "Area (ha)")
                        .row("A", 4)
                        .row("B", 6));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(4);
    }

    @Test
    void aTotalUnderHeadIsNoGroup() {
        FoundLists found = find(new SheetOf("Herds")
                .row("Group", "Head", "DM intake (kg/day)", "Days (d)")
                .row("Cows", 85, 11, 180)
                .row("Total head", 85, null, null));
        assertThat(found.rows(Herds.LIST).size()).isEqualTo(1);
    }

    @Test
    void aRowCalledTotalWithAFormulaIsNoMachine() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Working width (m)", "List price")
                .row("Mower", "mower", 3, 9000)
                .row("Total insured", null, null, 9000)
                .formula(2, 3));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
    }

    @Test
    void aNameThatBeginsSoWithoutAFormulaIsAName() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Working width (m)")
                .row("Total mower", "mower", 3));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
    }

    @Test
    void aRowOfFiguresIsNoHeaderThatLacksAColumn() {
        FoundLists found = find(
                fields(),
                new SheetOf("Stores")
                        .row(
                                "Store",
                                "Type",
                                "Diameter ft",
                                "Height ft",
                                "Length m",
                                "Width m",
                                "Wall height m",
                                "DM %")
                        .row("Tower 1", "tower silo", 20, 60, null, null, null, 35)
                        .row("Bunker", "bunker", null, null, 40, 12, 3, 30));
        assertThat(found.findings())
                .as("the header above is told, and no row under it")
                .isNotEmpty()
                .allSatisfy(finding ->
                        assertThat(finding.cell().orElseThrow().toString()).doesNotEndWith("A3"));
        assertThat(severities(found)).contains(Severity.CAUTION).doesNotContain(Severity.STOP);
    }
}
