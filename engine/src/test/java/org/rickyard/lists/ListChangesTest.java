package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What was typed otherwise in one workbook than in another. */
class ListChangesTest {
    private static SheetOf sheet(String name, Object[]... rows) {
        SheetOf sheet = new SheetOf(name);
        for (Object[] row : rows) {
            sheet.row(row);
        }
        return sheet;
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static List<String> told(ListChanges changes) {
        return changes.changes().stream()
                .map(change -> change.cell() + " | " + change.row() + " | " + change.column() + " | " + change.before()
                        + " | " + change.after())
                .toList();
    }

    private static List<String> rows(List<ListChanges.Row> rows) {
        return rows.stream().map(row -> row.cell() + " | " + row.name()).toList();
    }

    private static final SheetOf FIELDS = sheet(
            "Fields",
            row("Holding", "Field", "Crop", "Area (ha)", "Slope (%)"),
            row("Elm", "Top", "wheat", 6.4, 3),
            row("Elm", "Low", "grass", 0.3, null),
            row("Ash", "Top", "wheat", 5, 2));

    @Test
    void cellsAreToldWithTheirUnitsAndNothingIsToldOfWhatStandsElsewhere() {
        SheetOf sorted = sheet(
                "Fields",
                row("Field", "Holding", "Crop", "Area (ha)", "Slope (%)"),
                row("Top", "Ash", "wheat", 5, null),
                row("Low", "Elm", "grass", 0.1 + 0.2, 4),
                row("Top", "Elm", "barley", 7.125, 3));

        ListChanges changes = ListChanges.of(find(FIELDS), find(sorted));

        assertThat(told(changes))
                .containsExactly(
                        "Fields!E2 | Ash, Top | Slope | 2 % | ",
                        "Fields!E3 | Elm, Low | Slope |  | 4 %",
                        "Fields!C4 | Elm, Top | Crop | wheat | barley",
                        "Fields!D4 | Elm, Top | Area | 6.4 ha | 7.125 ha");
        assertThat(changes.added()).isEmpty();
        assertThat(changes.gone()).isEmpty();
    }

    @Test
    void aRowRenamedIsGoneAndNew() {
        SheetOf renamed = sheet(
                "Fields",
                row("Holding", "Field", "Crop", "Area (ha)", "Slope (%)"),
                row("Elm", "Top", "wheat", 6.4, 3),
                row("Ash", "Top", "wheat", 5, 2),
                row("Ash", "Low", "grass", 0.3, null));

        ListChanges changes = ListChanges.of(find(FIELDS), find(renamed));

        assertThat(told(changes)).isEmpty();
        assertThat(rows(changes.gone())).containsExactly("Fields!B3 | Elm, Low");
        assertThat(rows(changes.added())).containsExactly("Fields!B4 | Ash, Low");
    }

    @Test
    void aUnitTypedOtherwiseIsToldAndSoIsWhatCannotBeRead() {
        SheetOf other = sheet(
                "Fields",
                row("Holding", "Field", "Crop", "Area (ac)", "Slope (%)"),
                row("Elm", "Top", "wheat", 6.4, "steep"),
                row("Elm", "Low", "grass", 0.3, null),
                row("Ash", "Top", "wheat", 5, 2));

        assertThat(told(ListChanges.of(find(FIELDS), find(other))))
                .containsExactly(
                        "Fields!D2 | Elm, Top | Area | 6.4 ha | 6.4 ac",
                        "Fields!E2 | Elm, Top | Slope | 3 % | \"steep\" (not used)",
                        "Fields!D3 | Elm, Low | Area | 0.3 ha | 0.3 ac",
                        "Fields!D4 | Ash, Top | Area | 5 ha | 5 ac");
    }

    /** Products of a mix bear the mix's name: the one that stayed is not told, the one that was exchanged is. */
    @Test
    void ofRowsWithOneNameThoseThatAreAlikeBelongTogetherFirst() {
        SheetOf mixes = sheet(
                "Mixes",
                row("Mix", "Product", "Dose", "Dose unit"),
                row("T1", "A", 1, "L/ha"),
                row("T1", "B", 0.5, "L/ha"));
        SheetOf exchanged = sheet(
                "Mixes",
                row("Mix", "Product", "Dose", "Dose unit"),
                row("T1", "B", 0.5, "L/ha"),
                row("T1", "C", 1, "L/ha"),
                row("T1", "D", 2, "L/ha"));

        ListChanges changes = ListChanges.of(find(mixes), find(exchanged));

        assertThat(told(changes)).containsExactly("Mixes!B3 | T1 | Product | A | C");
        assertThat(rows(changes.added())).containsExactly("Mixes!A4 | T1");
    }

    /** Numbers that differ only behind the digits that are easily read are told with all of theirs. */
    @Test
    void whatDiffersIsSeenToDiffer() {
        SheetOf finer = sheet(
                "Fields",
                row("Holding", "Field", "Crop", "Area (ha)", "Slope (%)"),
                row("Elm", "Top", "wheat", 6.4000001, 3),
                row("Elm", "Low", "grass", 0.3, null),
                row("Ash", "Top", "wheat", 5, 2));

        assertThat(told(ListChanges.of(find(FIELDS), find(finer))))
                .containsExactly("Fields!D2 | Elm, Top | Area | 6.4 ha | 6.4000001 ha");
    }

    @Test
    void aListAgainstItselfIsTheSame() {
        ListChanges changes = ListChanges.of(find(FIELDS), find(FIELDS));

        assertThat(changes.changes()).isEmpty();
        assertThat(changes.added()).isEmpty();
        assertThat(changes.gone()).isEmpty();
    }

    @Test
    void aTextThatReadsAsTheNumberDoesIsToldAsAText() {
        SheetOf typed = sheet("Fields", row("Field", "Area (ha)"), row("Top", 10));
        SheetOf text = sheet("Fields", row("Field", "Area (ha)"), row("Top", "10 ha"));
        assertThat(told(ListChanges.of(find(typed), find(text))))
                .containsExactly("Fields!B2 | Top | Area | 10 ha | \"10 ha\" (not used)");
    }
}
