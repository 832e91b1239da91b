package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names that may be another thing too: they are read where they stand alone, and take nothing from a surer header. */
class RareNamesTest {
    @ParameterizedTest
    @CsvSource({
        "Pass length (m), Run length (m)",
        "Furrow length (m), Row length (m)",
        "Distance to mains water (m), Distance to fill point (m)"
    })
    void aLengthOrDistanceOfAFieldGivesWayToASurerName(String rare, String sure) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (ha)", rare, sure).row("A", 4, 250, 300));
        ColumnSpec column = sure.startsWith("R") ? Fields.RUN_LENGTH : Fields.DISTANCE_TO_FILL_POINT;
        assertThat(found.rows(Fields.LIST).gives(column, 0)).isTrue();
        assertThat(found.rows(Fields.LIST).number(column, 0)).isEqualTo(300);
        assertThat(found.places().get(0).unrecognised()).containsExactly(rare);
        found = find(new SheetOf("Fields").row("Field", "Area (ha)", rare).row("A", 4, 250));
        assertThat(found.rows(Fields.LIST).number(column, 0)).isEqualTo(250);
    }

    @ParameterizedTest
    @CsvSource({"Planned date, Sprayed on", "Earliest, Applied on", "Date, Treated on", "Start, Treatment date"})
    void theDayOfAJobIsThePlannedOneWhereThereIsOne(String sure, String rare) {
        ListRows jobs = find(new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", sure, rare)
                        .row("A", "spraying", "S", "Herbicide", 1, "2026-05-10", "2026-05-13"))
                .rows(Jobs.LIST);
        assertThat(jobs.address(Jobs.EARLIEST, 0).orElseThrow()).hasToString("Jobs!F2");
        assertThat(jobs.gives(Jobs.EARLIEST, 0)).isTrue();
    }

    @Test
    void turningBesideATurnTimeAndMinutesOnTheRoadAreNotTakenForThem() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Turning", "Turn time (s)", "Road laden (min)", "Road empty (min)")
                .row("M", "trailer", 12, 20, 15, 12));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.TURN_TIME, 0)).isEqualTo(20);
        assertThat(machines.gives(Machines.TURN_TIME, 0)).isTrue();
        assertThat(machines.state(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
        assertThat(found.places().get(0).unrecognised())
                .containsExactly("Turning", "Road laden (min)", "Road empty (min)");
    }

    /** Ten bags in store are no bag of ten kilograms. */
    @Test
    void aCountOfBagsIsNoPack() {
        FoundLists found = find(
                new SheetOf("Products").row("Product", "Unit", "Bags", "Price").row("Nitrogen 34", "kg", 10, 0.4));
        assertThat(found.rows(Products.LIST).state(Products.PACK_SIZE, 0)).isEqualTo(ListRows.State.NO_COLUMN);
    }

    @ParameterizedTest
    @CsvSource({
        "Silage intake (kg DM/hd/d), kg straw/hd/day",
        "Intake (kg DM/hd/d), kg hay/hd/day",
        "kg DM/hd/day, kg DM silage/hd/day",
        "Silage (kg/hd/day), Straw (kg/hd/day)"
    })
    void whatElseIsEatenTakesNothingFromTheIntake(String intake, String other) {
        ListRows herds = find(new SheetOf("Herds")
                        .row("Group", "Head", intake, other, "DM %", "Days")
                        .row("Cows", 100, 10, 2, 30, 180))
                .rows(Herds.LIST);
        assertThat(herds.gives(Herds.INTAKE, 0)).isTrue();
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(10);
    }

    @Test
    void ofTwoFeedsBesideEachOtherItIsAskedWhich() {
        ListRows herds = find(new SheetOf("Herds")
                        .row("Group", "Head", "kg grass silage/hd/day", "kg maize silage/hd/day", "DM %", "Days")
                        .row("Cows", 100, 30, 20, 30, 180))
                .rows(Herds.LIST);
        assertThat(herds.state(Herds.INTAKE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @Test
    void aHeaderIsToldForWhatIsNoUnitInItAndNotTheRow() {
        FoundLists found =
                find(new SheetOf("Products").row("Product", "Unit", "Dose (h)").row("Herbicide", "L", 3));
        assertThat(said(found))
                .singleElement()
                .asString()
                .startsWith("STOP Products!C2 \"h\" is not a dose unit known here");
    }

    @Test
    void tonnesInANameAreAUnit() {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Kind", "Tonnes left (as fed)", "DM %")
                .row("Bunker", "clamp", 100, 30));
        assertThat(found.rows(Stocks.LIST).number(Stocks.AMOUNT, 0)).isEqualTo(100);
        assertThat(said(found)).isEmpty();
    }

    /** A lone price may be of a new machine or of an old one; beside what it is sold for it is not that. */
    @Test
    void aPriceThatIsAskedTakesNothingFromTheResale() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Price", "Resale")
                .row("M", "mower", 36000, 12000));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.gives(Machines.TRADE_IN_VALUE, 0)).isTrue();
        assertThat(machines.number(Machines.TRADE_IN_VALUE, 0)).isEqualTo(12000);
        assertThat(machines.gives(Machines.PURCHASE_PRICE, 0)).isFalse();
        assertThat(said(found))
                .anyMatch(line -> line.contains("\"Price\" could mean List price or Purchase price of Machines"));
    }
}
