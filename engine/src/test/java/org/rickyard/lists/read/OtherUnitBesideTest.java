package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** Hectares beside acres are one area; of each row the column that is filled counts, and two that are filled must agree. */
class OtherUnitBesideTest {
    private static FoundLists fields(Object[]... rows) {
        SheetOf sheet = new SheetOf("Fields");
        for (Object[] row : rows) {
            sheet.row(row);
        }
        return ListFinder.find(List.of(sheet));
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static List<Finding> stopsAndCautions(FoundLists found) {
        return found.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
    }

    @Test
    void hectaresBesideAcresAreReadAsHectares() {
        FoundLists found = fields(
                row("Field", "Area (ha)", "Area (ac)"), row("Long Ground", 4.05, 10.01), row("Top Piece", 6.2, 15.3));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.state(Fields.AREA, 0)).isEqualTo(State.GIVEN);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(4.05);
        assertThat(fields.unit(Fields.AREA, 1).orElseThrow().symbol()).isEqualTo("ha");
        assertThat(found.findings())
                .singleElement()
                .extracting(Finding::message)
                .isEqualTo("The headers \"Area (ha)\" (Fields!B1) and \"Area (ac)\" (Fields!C1) are read as one Area of"
                        + " Fields in several units: in each row the one that is filled, and the first where several"
                        + " are and agree.");
    }

    /** 1 ac = 0.40468564224 ha (international acre); roundings as a person writes them. */
    @ParameterizedTest
    @CsvSource({
        "4.0, 10, GIVEN", // 2.5 acres to the hectare
        "0.4, 1, GIVEN",
        "0.1, 0.2, GIVEN", // 0.08 ha, each to one decimal
        "40, 98.84, GIVEN",
        "100, 247.1, GIVEN",
        "4.05, 12.1, ASKED",
        "40, 95, ASKED",
        "40, 4000, ASKED",
        "4, 0, ASKED"
    })
    void twoThatAreFilledMustAgreeAsTheyAreWritten(double hectares, double acres, State state) {
        FoundLists found = fields(row("Field", "Hectares", "Acres"), row("Long Ground", hectares, acres));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(state);
        FoundLists turned = fields(row("Field", "Acres", "Hectares"), row("Long Ground", acres, hectares));
        assertThat(turned.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(state);
    }

    @Test
    void aContradictionIsAskedInItsRowAlone() {
        FoundLists found = fields(
                row("Field", "Area (ha)", "Area (ac)"), row("Long Ground", 4.05, 10.01), row("Top Piece", 6.2, 25));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.state(Fields.AREA, 0)).isEqualTo(State.GIVEN);
        assertThat(fields.state(Fields.AREA, 1)).isEqualTo(State.ASKED);
        assertThat(stopsAndCautions(found)).singleElement().satisfies(finding -> {
            assertThat(finding.cell()).hasValue(new CellAddress("Fields", 2, 1));
            assertThat(finding.message())
                    .isEqualTo(
                            "Two columns of this row say its Area, and not the same: 6.2 ha here, 25 ac in Fields!C3."
                                    + " Mend one of them or leave it blank.");
        });
    }

    @Test
    void eachRowMayBeFilledInItsOwnUnit() {
        FoundLists found = fields(
                row("Field", "Area (ha)", "Area (ac)"),
                row("Long Ground", 4.05, null),
                row("Top Piece", null, 15.3),
                row("Mill Close", "n/a", 7.5),
                row("Glebe", null, null));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(4.05);
        assertThat(fields.unit(Fields.AREA, 0).orElseThrow().symbol()).isEqualTo("ha");
        assertThat(fields.address(Fields.AREA, 1)).hasValue(new CellAddress("Fields", 2, 2));
        assertThat(fields.unit(Fields.AREA, 1).orElseThrow().symbol()).isEqualTo("ac");
        assertThat(fields.state(Fields.AREA, 2)).isEqualTo(State.GIVEN);
        assertThat(fields.unit(Fields.AREA, 2).orElseThrow().symbol()).isEqualTo("ac");
        assertThat(fields.state(Fields.AREA, 3)).isEqualTo(State.BLANK);
        assertThat(stopsAndCautions(found)).isEmpty();
    }

    @Test
    void aTextBesideANumberIsAsked() {
        FoundLists found =
                fields(row("Field", "Area (ha)", "Area (ac)"), row("Long Ground", 4.05, "ten"), row("Top", 1, 2.5));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.ASKED);
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 1)).isEqualTo(State.GIVEN);
    }

    @Test
    void twoOfOneUnitCouldBeTwoThings() {
        FoundLists found = fields(row("Field", "Area (ha)", "Hectares"), row("Long Ground", 4.05, 4.05));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.ASKED);
        assertThat(stopsAndCautions(found))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("could all be Area of Fields");
    }

    @Test
    void threeUnitsOfOneThingMustAllAgree() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Machines")
                .row("Machine", "Type", "Speed (km/h)", "Speed (mph)", "Speed (m/s)", "Width (m)", "Width (ft)")
                .row("Sprayer", "sprayer", 9.7, 6, 2.7, 24, 79)
                .row("Other", "sprayer", 9.7, 6, 9.7, 24, 24)));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.state(Machines.SPEED, 0)).isEqualTo(State.GIVEN);
        assertThat(machines.state(Machines.WORKING_WIDTH, 0)).isEqualTo(State.GIVEN);
        assertThat(machines.state(Machines.SPEED, 1)).isEqualTo(State.ASKED);
        assertThat(machines.state(Machines.WORKING_WIDTH, 1)).isEqualTo(State.ASKED);
    }

    @Test
    void aFormulaWithoutAStoredValueContradictsNothing() {
        FoundLists found = fields(
                row("Field", "Area (ha)", "Area (ac)"),
                row("Long Ground", 4.05, SheetOf.NOT_CALCULATED),
                row("Top Piece", SheetOf.NOT_CALCULATED, 15.3));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.state(Fields.AREA, 0)).isEqualTo(State.GIVEN);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(4.05);
        assertThat(fields.state(Fields.AREA, 1)).isEqualTo(State.UNCOMPUTED);
        assertThat(stopsAndCautions(found)).singleElement().satisfies(told -> assertThat(told.cell())
                .hasValue(new CellAddress("Fields", 2, 1)));
    }
}
