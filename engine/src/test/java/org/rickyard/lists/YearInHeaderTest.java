package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Units;

/** "Crop 2026" is the crop; of two years none is taken. */
class YearInHeaderTest {
    private static FoundLists fields(Object... headers) {
        Object[] row = new Object[headers.length];
        for (int i = 0; i < row.length; i++) {
            boolean number = headers[i].toString().matches("(?i).*(area|acres|ha\\b|yield).*");
            row[i] = headers[i].equals("Field") ? "Top" : number ? (Object) (i + 1.0) : "crop " + i;
        }
        return ListFinder.find(List.of(new SheetOf("Fields").row(headers).row(row)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Crop 2026",
                "2026 crop",
                "Crop (2026)",
                "Crop 2026/27",
                "2026-2027 Cropping",
                "Crop, harvest 2026"
            })
    void aCropOfAYearIsTheCropAndSaidToBe(String header) {
        FoundLists found = fields("Field", header, "Area (ha)");
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 0)).isEqualTo("crop 1");
        assertThat(found.findings()).singleElement().satisfies(note -> {
            assertThat(note.severity()).isEqualTo(Severity.NOTE);
            assertThat(note.cell()).hasValue(new CellAddress("Fields", 0, 1));
            assertThat(note.message()).isEqualTo("\"" + header + "\" is read as Crop of Fields, whatever its year.");
        });
    }

    @ParameterizedTest
    @CsvSource({"Area 2026 (ha), ha", "Area (ac) 2026, ac", "2026 acres, ac", "Acres 2026, ac", "Area ac 2026, ac"})
    void anAreaOfAYearKeepsItsUnit(String header, String unit) {
        FoundLists found = fields("Field", "Crop", header);
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.GIVEN);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0).orElseThrow().symbol())
                .isEqualTo(unit);
        assertThat(found.findings()).hasSize(1);
    }

    @Test
    void ofTwoYearsNoneIsTakenAndItIsAsked() {
        FoundLists found = fields("Field", "Crop 2025", "Crop 2026", "Area (ha)");
        assertThat(found.rows(Fields.LIST).state(Fields.CROP, 0)).isEqualTo(State.ASKED);
        assertThat(found.findings()).singleElement().satisfies(asked -> {
            assertThat(asked.severity()).isEqualTo(Severity.STOP);
            assertThat(asked.message())
                    .contains("\"Crop 2025\" (Fields!B1)", "\"Crop 2026\" (Fields!C1)", "none of them is used");
        });
    }

    @Test
    void layoutSaysWhichYearIsMeant() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Fields")
                        .row("Field", "Crop 2025", "Crop 2026", "Area (ha)")
                        .row("Top", "oats", "wheat", 4),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Fields", "Crop", "Crop 2026", null)));
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 0)).isEqualTo("wheat");
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Severity.STOP);
    }

    @Test
    void theHeaderWithoutAYearIsTakenBeforeOneWith() {
        FoundLists found = fields("Field", "Crop 2025", "Crop", "Area (ha)");
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 0)).isEqualTo("crop 2");
        assertThat(found.findings()).singleElement().satisfies(note -> assertThat(note.message())
                .isEqualTo("\"Crop 2025\" is not read: the Crop of Fields is taken from the header without a year."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Yield 2025 (t/ha)", "Crop 26", "Crop before 2026", "Crop 2026 plan", "Crop 20260"})
    void whatMayBeARecordOrAnotherThingIsNotTaken(String header) {
        FoundLists found = fields("Field", header, "Area (ha)");
        assertThat(found.rows(Fields.LIST).state(Fields.CROP, 0)).isEqualTo(State.NO_COLUMN);
        assertThat(found.rows(Fields.LIST).state(Fields.YIELD, 0)).isEqualTo(State.NO_COLUMN);
    }

    @Test
    void aListWhoseHeadersAllBearTheYearIsFound() {
        FoundLists found = fields("Field", "Cropping 2026", "Area 2026 (ac)");
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
    }
}
