package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Units;

/** What a Layout sheet settles, and what customary units settle. */
class LayoutSheetTest {
    @Test
    void layoutSettlesWhatAHeaderMeans() {
        SheetOf jobs = new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Rate", "Menge")
                .row("A", "spray", "Sprayer", 200, 5);
        FoundLists asked = find(jobs);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        FoundLists settled = find(
                jobs,
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Jobs", "Water volume", "Rate", "L/ha")
                        .row("jobs", "speed", "Menge", "mph"));
        ListRows rows = settled.rows(Jobs.LIST);
        assertThat(rows.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(rows.unit(Jobs.WATER_VOLUME, 0)).hasValue(Units.L_PER_HA);
        assertThat(rows.state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(rows.unit(Jobs.SPEED, 0)).hasValue(Units.MPH);
        assertThat(settled.findings()).isEmpty();
    }

    @Test
    void layoutSettlesWhichOfTwoHeadersIsTheColumn() {
        SheetOf fields =
                new SheetOf("Fields").row("Field", "Area (ac)", "Acres").row("A", 12, 9.9);
        FoundLists asked = find(fields);
        assertThat(asked.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(messages(asked, Severity.STOP)).singleElement().asString().contains("Fields!B1", "Fields!C1");
        FoundLists settled = find(
                fields,
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook")
                        .row("Fields", "Area", "Acres"));
        assertThat(settled.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(9.9);
        assertThat(settled.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(settled.findings()).isEmpty();
    }

    @Test
    void layoutLeavesAHeaderOfTheSameColumnThatMeasuresAnotherKind() {
        FoundLists found = find(
                new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length", "Floor width", "Wall height", "Density, fresh (kg/m3)", "Room")
                        .row("Main", "walled", 40, 10, 3, 700, null)
                        .row("Taped", "measured", 20, 8, 2, null, 1.4),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Clamps", "Density, fresh", "Room", "m3/t"));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.number(Clamps.FRESH_DENSITY, 0)).isEqualTo(700);
        assertThat(clamps.number(Clamps.FRESH_DENSITY, 1)).isEqualTo(1.4);
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
    }

    @Test
    void whatLayoutPassesOverIsSaidWhereItAloneIsFilled() {
        FoundLists found = find(
                new SheetOf("Fields")
                        .row("Field", "Area (ac)", "Acres")
                        .row("A", 12, 9.9)
                        .row("B", 7, null),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook")
                        .row("Fields", "Area", "Acres"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 1)).isEqualTo(ListRows.State.BLANK);
        assertThat(found.findings()).singleElement().satisfies(said -> {
            assertThat(said.severity()).isEqualTo(Severity.CAUTION);
            assertThat(said.cell()).hasToString("Optional[Fields!B3]");
            assertThat(said.message()).contains("\"Acres\" (Fields!C1)", "\"Area (ac)\"");
        });
    }

    @Test
    void aLayoutRowThatNamesNothingKnownIsSaid() {
        FoundLists found = find(new SheetOf("Layout")
                .row("List", "Column", "Header in this workbook", "Unit")
                .row("Feilds", "Area", "Size", null)
                .row("Fields", "Hectarage of it", "Size", null));
        assertThat(messages(found, Severity.CAUTION)).hasSize(2);
    }

    @Test
    void customaryUnitsSettleGallonsForTheWholeWorkbook() {
        SheetOf jobs = new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water volume (gal/ac)")
                .row("A", "spray", "Sprayer", 20);
        FoundLists asked = find(jobs);
        assertThat(asked.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(messages(asked, Severity.STOP)).singleElement().asString().contains("gal(UK)", "gal(US)");
        FoundLists settled = find(
                jobs, new SheetOf("Assumptions").row("Item", "Value", "Unit").row("customary units", "UK"));
        assertThat(settled.customary()).isEqualTo(CustomaryUnits.UK);
        assertThat(settled.rows(Jobs.LIST).state(Jobs.WATER_VOLUME, 0)).isEqualTo(ListRows.State.GIVEN);
    }

    /** Codes of a form: nothing in them is a word that begins a header. */
    @Test
    void headersThatAreCodesAreFound() {
        for (Object[] codes : new Object[][] {{"Q21", "Q22", "Q23"}, {"21", "22", "23"}, {21, 22, 23}}) {
            FoundLists found = find(
                    new SheetOf("Form").row(codes).row("Long Acre", 12, "grass").row("Top", 8, "barley"),
                    new SheetOf("Layout")
                            .row("List", "Column", "Header in this workbook", "Unit")
                            .row("Fields", "Field", codes[0])
                            .row("Fields", "Area", codes[1], "ac")
                            .row("Fields", "Crop", codes[2]));
            ListRows fields = found.rows(Fields.LIST);
            assertThat(fields.size()).isEqualTo(2);
            assertThat(fields.number(Fields.AREA, 1)).isEqualTo(8);
            assertThat(fields.unit(Fields.AREA, 1)).hasValue(Units.AC);
            assertThat(fields.text(Fields.CROP, 1)).isEqualTo("barley");
            assertThat(found.findings()).isEmpty();
        }
    }

    /** The unit beside a header is no part of its name; another unit makes it another thing. */
    @Test
    void aHeaderMayGoOnWithItsUnit() {
        FoundLists found = find(
                new SheetOf("Land").row("Field", "Crop", "Q24 (ac)", "Q24 (km)").row("Long Acre", "grass", 12, 3),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook")
                        .row("Fields", "Area", "Q24"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(12);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.findings()).isEmpty();
    }
}
