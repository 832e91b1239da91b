package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Place;
import org.rickyard.lists.Products;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;
import org.rickyard.quantity.Units;

/** Where a list stands, and what belongs to it. */
class ListFinderTest {
    @Test
    void aListMayHaveTitlesAboveBlankRowsInsideAndTotalsBelow() {
        SheetOf sheet = new SheetOf("Land")
                .row("Invented Estates")
                .row("as at the spring")
                .row()
                .row(null, "Field", "Old number", "Area (ha)")
                .row(null, "Long Acre", "12/3", 4.5)
                .row()
                .row(null, "Well Field", "12/4", 3)
                .row(null, "Total", null, 7.5)
                .formula(7, 3);
        FoundLists found = find(sheet);
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD)).containsExactly("Long Acre", "Well Field");
        assertThat(fields.address(Fields.AREA, 1)).hasValue(new CellAddress("Land", 6, 3));
        assertThat(messages(found, Severity.NOTE)).singleElement().asString().contains("row of totals");
        Place place = found.places().get(0);
        assertThat(place.first().row()).isEqualTo(3);
        assertThat(place.span()).isEqualTo("rows 5 to 7");
        assertThat(place.unrecognised()).containsExactly("Old number");
    }

    @Test
    void aSumWithoutLabelIsNoField() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row(null, 9)
                .formula(3, 1);
        assertThat(names(find(sheet).rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
    }

    @Test
    void subtotalsInsideAListAreSkippedAndTheListGoesOn() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Sub-total", 4)
                .row("B", 5)
                .row("Grand total", 9);
        assertThat(names(find(sheet).rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
    }

    @Test
    void whatStandsBelowTheTotalsIsNotTakenForFieldsAndIsSaid() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Total", 4)
                .row()
                .row("Grass", 120)
                .row("Maize", 40);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A");
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().startsWith("2 rows from here on");
    }

    @Test
    void unitsMayStandInARowUnderTheHeader() {
        SheetOf sheet = new SheetOf("Machines")
                .row("Machine", "Type", "Working width", "Speed")
                .row(null, null, "ft", "mph")
                .row("Mower", "mower", 10, 6);
        FoundLists found = find(sheet);
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.FT);
        assertThat(machines.unit(Machines.SPEED, 0)).hasValue(Units.MPH);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aHeaderRepeatedOnEachPageIsNoRow() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("Field", "Area (ha)")
                .row("B", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.places()).hasSize(1);
    }

    @Test
    void aNameThatEndsInItsUnitIsInIt() {
        assertThat(find(new SheetOf("Kit")
                                .row("Machine", "Type", "Working life (years)")
                                .row("Mower", "mower", 8)
                                .row("Rake", "rake", 8))
                        .findings())
                .isEmpty();
        assertThat(find(new SheetOf("Kit")
                                .row("Machine", "Type", "Life (years)")
                                .row("Mower", "mower", 8))
                        .findings())
                .isEmpty();
    }

    @Test
    void blankHeaderColumnsMayStandInsideAList() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Area (ha)", null, "Crop", null, "Run length (m)")
                .row("A", 4, null, "Grass", null, 200);
        ListRows fields = find(sheet).rows(Fields.LIST);
        assertThat(fields.text(Fields.CROP, 0)).isEqualTo("Grass");
        assertThat(fields.number(Fields.RUN_LENGTH, 0)).isEqualTo(200);
    }

    @Test
    void listsOfOneKindOnSeveralSheetsArePutTogetherInSheetOrder() {
        FoundLists found = find(
                new SheetOf("North").row("Field", "Area (ha)").row("N", 4),
                new SheetOf("South").row("Area (ac)", "Field").row(10, "S"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD)).containsExactly("N", "S");
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.HA);
        assertThat(fields.unit(Fields.AREA, 1)).hasValue(Units.AC);
        assertThat(found.places()).hasSize(2);
    }

    @Test
    void hiddenSheetsAreReadAndSaid() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).hide());
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.NOTE)).singleElement().asString().contains("hidden");
    }

    /** Not so where nothing is read from them. */
    @Test
    void hiddenColumnsAreReadAndSaid() {
        SheetOf fields = new SheetOf("Fields")
                .row("Field", "Area (ha)", "Where to turn", "Crop")
                .row("A", 4, "left", "wheat")
                .hideColumn(1)
                .hideColumn(2);
        FoundLists found = find(fields);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4);
        assertThat(found.findings())
                .filteredOn(finding -> finding.message().contains("hidden"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.message()).startsWith("1 column of Fields is hidden; it is read all the same.");
                    assertThat(finding.cell()).contains(new CellAddress("Fields", 0, 1));
                });
        assertThat(messages(find(fields.hideColumn(3)), Severity.NOTE))
                .anyMatch(message -> message.startsWith(
                        "2 columns of Fields are hidden, this the first; they are read all the same."));
    }

    @Test
    void hiddenRowsAreReadAndSaid() {
        SheetOf fields = new SheetOf("Fields")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("C", 6)
                .hideRow(2);
        FoundLists found = find(fields);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.message()).startsWith("1 row of Fields is hidden; it is read all the same.");
            assertThat(finding.cell()).contains(new CellAddress("Fields", 2, 0));
        });
        assertThat(messages(find(fields.hideRow(3)), Severity.NOTE))
                .singleElement()
                .asString()
                .startsWith("2 rows of Fields are hidden, this the first; they are read all the same.");
        assertThat(messages(find(fields.hide()), Severity.NOTE))
                .singleElement()
                .asString()
                .contains("The sheet");
    }

    @Test
    void aTableOfTheClientsOwnIsNoList() {
        FoundLists found = find(
                new SheetOf("Suppliers").row("Product", "Telephone").row("Seeds", 123),
                new SheetOf("Rent").row("Field", "Rent").row("A", 300),
                new SheetOf("Ideas").row("Item", "Value").row("Drain the bog", 9),
                new SheetOf("Diary").row("Date", "Crop").row(46000, "Grass"));
        assertThat(found.places()).isEmpty();
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aSheetCalledByAListsNameThatLacksAColumnSaysWhich() {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Width (m)", "Speed").row("Mower", 3, 10));
        assertThat(found.places()).isEmpty();
        assertThat(messages(found, Severity.STOP)).singleElement().asString().contains("no column Type");
    }

    @Test
    void theNameOfASheetHelpsWhereHeadersAreFew() {
        FoundLists found =
                find(new SheetOf("Products").row("Product", "Dose (L/ha)").row("Invented 250", 1));
        assertThat(found.rows(Products.LIST).size()).isEqualTo(1);
        FoundLists titled = find(
                new SheetOf("Sheet1").row("Assumptions").row("Item", "Value").row("Wage", 15));
        assertThat(titled.rows(Assumptions.LIST).size()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Rate/ac", "Rate/ha", "Rate per ha", "Rate per acre"})
    void aRateForAnAreaIsAskedLikeALoneRate(String header) {
        FoundLists found = find(
                new SheetOf("Jobs").row("Field", "Operation", "Machine", header).row("A", "spray", "Sprayer", 200));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() != Finding.Severity.NOTE)
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .startsWith("The header \"" + header + "\" could mean Water volume or Dose of Jobs."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate", "Rate/ac"})
    void aRateIsToldAsUnreadWhereWaterAndDoseStandElsewhere(String header) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water volume (L/ha)", "Dose (L/ha)", header)
                .row("A", "spray", "Sprayer", 200, 1.5, 7));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(1.5);
        assertThat(found.findings())
                .singleElement()
                .isEqualTo(Finding.note(
                        new CellAddress("Jobs", 0, 5),
                        "\"" + header + "\" is not read: Water volume and Dose of Jobs are taken from other columns."));
    }

    @Test
    void aRowWithoutItsNameIsLeftOutAndSaid() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).row(null, 7));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().contains("no Field");
    }

    @Test
    void aLineThatIsARemarkIsNoRowAndIsSaid() {
        SheetOf sheet = new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "Grass", 4)
                .row("(A was reseeded in autumn)")
                .row("Note: B is in the scheme")
                .row("(B)", "Grass", 5);
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "(B)");
        assertThat(found.findings()).hasSize(2).allSatisfy(finding -> assertThat(finding.message())
                .startsWith("This row holds nothing but")
                .endsWith("so it is not read as a row of Fields."));
    }

    /** Nothing was said of a list of fields whose names stand under a word of the place. */
    @Test
    void fieldsUnderAnUnknownHeaderAreToldWhereNoOtherListHasAny() {
        SheetOf meadows = new SheetOf("Hay").row("Meadow", "Acres", "Crop").row("East", 22, "hay");
        assertThat(find(meadows).findings()).singleElement().satisfies(finding -> {
            assertThat(finding.cell().orElseThrow().toString()).isEqualTo("'Hay'!B1");
            assertThat(finding.message())
                    .startsWith("This row looks like the header of the list Fields, but it has no column Field, so"
                            + " nothing of it is read. Not known of its headers: \"Meadow\".");
        });
        assertThat(find(new SheetOf("Feed").row("Silo", "Tonnes", "DM %").row("Pit 1", 816, 25))
                        .findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .startsWith("This row looks like the header of the list Stocks, but it has no column Store, so"
                                + " nothing of it is read. Not known of its headers: \"Silo\"."));
        SheetOf fields = new SheetOf("Land").row("Field", "Area (ha)").row("A", 4);
        assertThat(ListFinder.find(List.of(meadows, fields)).findings()).isEmpty();
        // Without a figure below, or on the sheet of something else, it is nothing of the kind.
        assertThat(find(new SheetOf("Hay").row("Meadow", "Acres", "Crop").row("East", "all", "hay"))
                        .findings())
                .isEmpty();
        assertThat(find(new SheetOf("Diary").row("Month", "Acres", "Crop").row("May", 22, "hay"))
                        .findings())
                .isEmpty();
    }

    @Test
    void aListThatIsNotReadIsToldBesideOneThatIs() {
        FoundLists found = find(new SheetOf("Farm")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row()
                .row("Cattle")
                .row("Group", "Head", "Eats", "Days")
                .row("Cows", 60, 10, 180));
        assertThat(found.rows(Herds.LIST).size()).isZero();
        assertThat(found.findings()).anySatisfy(finding -> {
            assertThat(finding.cell().orElseThrow().toString()).isEqualTo("Farm!A5");
            assertThat(finding.message())
                    .startsWith("This row looks like the header of the list Herds, but it has no column Intake, so");
        });
    }

    @Test
    void tonnesBesideAClampAreInStoreOnASheetOfStocksOnly() {
        Object[] header = {"Clamp", "Tonnes", "DM %"};
        FoundLists stocks = find(new SheetOf("Silage in store").row(header).row("Big", 400, 28));
        assertThat(names(stocks.rows(Stocks.LIST), Stocks.STORE)).containsExactly("Big");
        FoundLists capacities = find(new SheetOf("Clamp capacities").row(header).row("Big", 400, 28));
        assertThat(capacities.rows(Stocks.LIST).size()).isZero();
        FoundLists both = find(
                new SheetOf("Stocks").row("Store", "Clamp", "Tonnes", "DM %").row("First cut", "Big", 400, 28));
        assertThat(names(both.rows(Stocks.LIST), Stocks.STORE)).containsExactly("First cut");
    }

    @Test
    void silageWithItsUnitIsWhatAHeadEatsAndALotIsAStore() {
        ListRows herds = find(new SheetOf("Winter")
                        .row("Group", "Number", "Silage kg fresh/hd/day", "Silage DM %", "Days")
                        .row("Cows", 80, 42, 28, 150))
                .rows(Herds.LIST);
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(42);
        assertThat(herds.unit(Herds.INTAKE, 0).orElseThrow().symbol()).isEqualTo("kg/d");
        assertThat(herds.number(Herds.DM, 0)).isEqualTo(28);
        ListRows stocks = find(new SheetOf("Sheds")
                        .row("Lot", "No. bales", "Bale weight (kg)", "DM %")
                        .row("2025 hay", 300, 18, 85))
                .rows(Stocks.LIST);
        assertThat(names(stocks, Stocks.STORE)).containsExactly("2025 hay");
        assertThat(stocks.number(Stocks.COUNT, 0)).isEqualTo(300);
    }

    @Test
    void aFieldWithoutAreaIsStillARow() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)").row("A", 4).row("B", null));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 1)).isEqualTo(ListRows.State.BLANK);
    }

    @Test
    void namesThatLookLikePatternsNumbersOrFormulasAreNames() {
        String longName = "x".repeat(300);
        Object[] names = {
            "*", "?", "~", ">5", "=HYPERLINK(\"a\")", "007", longName, "O'Brien", "Total Acre Field", "Sum"
        };
        SheetOf sheet = new SheetOf("Fields").row("Field", "Area (ha)");
        for (Object name : names) {
            sheet.row(name, 4);
        }
        sheet.row(7, 4).row(7.5, 4).row("\u00a0Hill\u2007\u200b", 4);
        ListRows fields = find(sheet).rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD))
                .containsExactly(
                        "*",
                        "?",
                        "~",
                        ">5",
                        "=HYPERLINK(\"a\")",
                        "007",
                        longName,
                        "O'Brien",
                        "Total Acre Field",
                        "7",
                        "7.5",
                        "Hill");
    }

    @Test
    void aNameThatStandsTwiceOnOneHoldingIsAStop() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Holding", "Field", "Area (ha)")
                .row("East", "Home Field", 4)
                .row("West", "Home Field", 4)
                .row("west ", "HOME FIELD", 4));
        assertThat(messages(found, Severity.STOP)).singleElement().asString().contains("Fields!B3");
        assertThat(found.findings().get(0).cell()).hasValue(new CellAddress("Fields", 3, 1));
    }

    @Test
    void anEmptyWorkbookHasNoListsAndNoFindings() {
        FoundLists found = find(new SheetOf("Sheet1"));
        assertThat(found.places()).isEmpty();
        assertThat(found.findings()).isEmpty();
        assertThat(found.rows(Fields.LIST).size()).isZero();
        assertThat(ListFinder.find(List.of()).rows(Jobs.LIST).size()).isZero();
    }
}
