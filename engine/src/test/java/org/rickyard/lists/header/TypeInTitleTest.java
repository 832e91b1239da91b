package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** The type of machines that have no column Type, by the title above them or the name of their sheet. */
class TypeInTitleTest {
    private static final Object[] HEADERS = {"Name", "Width (m)", "Speed (km/h)"};

    @ParameterizedTest
    @CsvSource({
        "Mowers, mower",
        "Our tractors, tractor",
        "COMBINES, combine",
        "List of ploughs 2026, plough",
        "Sprayer list, sprayer",
        "Forage harvesters, forager"
    })
    void theNameOfTheSheetSaysIt(String sheet, String type) {
        FoundLists found = find(new SheetOf(sheet)
                .row("Name", "Width (m)", "Speed (km/h)", "List price (£)")
                .row("Old red", 3, 7, 9000));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly(type);
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
        assertThat(messages(found, Severity.NOTE))
                .singleElement()
                .asString()
                .contains("by the name \"" + sheet + "\"", "of the Type " + type);
    }

    /** A name and one figure are enough under a title of several; it is told where the type was read. */
    @Test
    void theTitleAboveSaysIt() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Trailers")
                .row()
                .row("Name", "Payload (t)", "Colour")
                .row("Old red", 12, "red"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.TYPE)).containsExactly("trailer");
        assertThat(machines.address(Machines.TYPE, 0)).hasToString("Optional['Kit'!A1]");
    }

    @Test
    void theNameOfAnExcelTableSaysIt() {
        FoundLists found = find(new SheetOf("Kit")
                .row(HEADERS)
                .row("Old red", 3, 7)
                .table(new Grid.TableRange("Mowers", 0, 1, 0, 2, 1, 0)));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly("mower");
    }

    /** Spreaders may be of fertiliser or muck, and "Slurry" over a capacity is a store as likely as a tanker. */
    @ParameterizedTest
    @ValueSource(strings = {"Spreaders", "Mowers and rakes", "Mower repairs", "Slurry", "Machines", "Hedge trimmers"})
    void otherTitlesSayNone(String sheet) {
        FoundLists found = find(
                new SheetOf(sheet).row("Name", "Body volume (m3)", "Colour").row("Old red", 3, "red"));
        assertThat(found.rows(Machines.LIST).size()).isZero();
    }

    @Test
    void theirOwnHeaderAndColumnGoBeforeTheTitle() {
        assertThat(names(
                        find(new SheetOf("Mowers")
                                        .row("Name", "Type", "Width (m)", "Speed (km/h)")
                                        .row("A", "rake", 6, 12))
                                .rows(Machines.LIST),
                        Machines.TYPE))
                .containsExactly("rake");
        assertThat(names(
                        find(new SheetOf("Sprayers")
                                        .row("Tractor", "Width (m)", "Speed (km/h)", "Power (PTO kW)")
                                        .row("A", 6, 12, 90))
                                .rows(Machines.LIST),
                        Machines.TYPE))
                .containsExactly("tractor");
    }

    /** The rakes were mowers under the first header come again. */
    @Test
    void theSameHeadersUnderAnotherTitleAreOfAnotherType() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Mowers")
                .row(HEADERS)
                .row("A", 3, 10)
                .row("B", 3, 9)
                .row()
                .row("Rakes")
                .row(HEADERS)
                .row("C", 6, 12));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(names(machines, Machines.MACHINE)).containsExactly("A", "B", "C");
        assertThat(names(machines, Machines.TYPE)).containsExactly("mower", "mower", "rake");
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
    }

    /** As printed lists repeat their headers on each page. */
    @Test
    void theSameHeadersWithoutATitleGoOn() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Mowers")
                .row(HEADERS)
                .row("A", 3, 10)
                .row("B", 3, 9)
                .row("C", 3, 8)
                .row(HEADERS)
                .row("D", 2, 8));
        assertThat(names(found.rows(Machines.LIST), Machines.TYPE)).containsExactly("mower", "mower", "mower", "mower");
    }

    /** Of machines of any type it is asked which it is. */
    @Test
    void whatTheyHoldIsTheTankOfSprayersAndTheBodyOfOthers() {
        ListRows machines = find(
                        new SheetOf("Sprayers")
                                .row("Name", "Capacity (L)", "Width (m)")
                                .row("A", 800, 12),
                        new SheetOf("Slurry tankers")
                                .row("Name", "Capacity (m3)", "Width (m)")
                                .row("B", 9, 8))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.TANK, 0)).isEqualTo(800);
        assertThat(machines.number(Machines.BODY_VOLUME, 1)).isEqualTo(9);
        assertThat(machines.gives(Machines.BODY_VOLUME, 0)).isFalse();
        assertThat(machines.gives(Machines.TANK, 1)).isFalse();
    }

    /** Who drove which, and at what settings: the machines stood there twice, and in their own list once more. */
    @Test
    void aSheetWhoseNamesComeAgainIsARecord() {
        FoundLists found = find(
                new SheetOf("Sprayers")
                        .row("Sprayer", "Pressure (bar)", "Speed (km/h)")
                        .row("Long boom", 2, 12)
                        .row("Long boom", 3, 10),
                new SheetOf("Machines")
                        .row("Machine", "Type", "Working width (m)", "Speed (km/h)")
                        .row("Long boom", "sprayer", 24, 12));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .contains("by \"Sprayers\", but its names come again", "a record");
    }
}
