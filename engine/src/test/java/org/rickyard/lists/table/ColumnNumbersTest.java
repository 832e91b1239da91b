package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.names;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

/** Forms number their columns in a row under the headers. */
class ColumnNumbersTest {
    static Stream<List<Object>> numbers() {
        return Stream.of(
                List.<Object>of(1, 2, 3, 4),
                List.<Object>of("1", "2", "3", "4"),
                List.<Object>of("(1)", "(2)", "(3)", "(4)"),
                List.<Object>of("(a)", "(b)", "(c)", "(d)"),
                List.<Object>of("A", "B", "C", "D"));
    }

    /** There was a field called 1, of two hectares. */
    @ParameterizedTest
    @MethodSource("numbers")
    void theyAreNoRowOfTheList(List<Object> numbers) {
        FoundLists found = find(new SheetOf("Land")
                .row("Field", "Area (ha)", "Crop", "Run length (m)")
                .row(numbers.toArray())
                .row("Long Acre", 5, "grass", 200)
                .row("Top", 8, "grass", 150));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("Long Acre", "Top");
        assertThat(said(found))
                .singleElement()
                .asString()
                .isEqualTo("NOTE Land!A2 This row numbers the columns and is not read as a row of Fields.");
    }

    /** A field may be called 1, and hold any figures but these. */
    @Test
    void otherFiguresAreARow() {
        FoundLists found = find(new SheetOf("Land")
                .row("Field", "Area (ha)", "Crop")
                .row(1, 2, "grass")
                .row(2, 2.4, "grass"));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("1", "2");
    }

    /** Fields that are numbered, the first of two hectares on a slope of three per cent. */
    @ParameterizedTest
    @MethodSource("firstRows")
    void aRowBelowWhichTheNamesGoOnIsARow(List<Object> first, Object second) {
        FoundLists found = find(new SheetOf("Land")
                .row("Field", "Area (ha)", "Slope (%)")
                .row(first.toArray())
                .row(second, 4, 6));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(2);
    }

    static Stream<Arguments> firstRows() {
        return Stream.of(
                Arguments.of(List.of(1, 2, 3), 2),
                Arguments.of(List.of("1", 2, 3), "2"),
                Arguments.of(List.of("A", 2, 3), "Top"),
                Arguments.of(List.of("A", 2, 3), "B"));
    }
}
