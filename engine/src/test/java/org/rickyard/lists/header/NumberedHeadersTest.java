package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** Headers that are numbered or lettered, as forms have them. */
class NumberedHeadersTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1. Field|2. Area (ac)|3. Crop",
                "1.Field|2.Area (ac)|3.Crop",
                "2) Field|3) Area (ac)|5) Crop",
                "(1) Field|(2) Area (ac)|(3) Crop",
                "1 Field|2 Area (ac)|3 Crop",
                "1 - Field|2 - Area (ac)|3 - Crop",
                "2.1 Field|2.2 Area (ac)|2.3 Crop",
                "Q1 Field|Q2 Area (ac)|Q3 Crop",
                "Q1. Field|Q2: Area (ac)|Q3) Crop",
                "(a) Field|(b) Area (ac)|(c) Crop",
                "A. Field|B. Area (ac)|C. Crop",
                "(i) Field|(ii) Area (ac)|(iii) Crop",
                "Field|2. Area (ac)|3. Crop"
            })
    void theNumbersAreNoPartOfTheNames(String headers) {
        FoundLists found = find(new SheetOf("Land")
                .row((Object[]) headers.split("\\|"))
                .row("Long Acre", 12, "grass")
                .row("Top", 8, "barley"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(names(fields, Fields.FIELD)).containsExactly("Long Acre", "Top");
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(12);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(names(fields, Fields.CROP)).containsExactly("grass", "barley");
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
    }

    /** Two lists beside each other, each counted from one. */
    @Test
    void aListBesideBeginsAnew() {
        String[] headers = {"1. Field", "2. Area", null, "1. Machine", "2. Type"};
        NumberedHeaders.takeOff(headers, header -> false);
        assertThat(headers).containsExactly("Field", "Area", null, "Machine", "Type");
    }

    /** The first and the second cut are two things; what does not go up is no numbering. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1. Cut (t)|2. Cut (t)",
                "Q1 cost|Q2 cost",
                "2. Field|1. Area",
                "1. Field|Area",
                "3 m boom|3 m bar",
                "Field 1|Field 2",
                "a.i. (g/L)|b. Dose"
            })
    void numbersThatMeanSomethingStay(String row) {
        String[] headers = row.split("\\|");
        NumberedHeaders.takeOff(headers, header -> false);
        assertThat(headers).containsExactly(row.split("\\|"));
    }

    /** What Layout says of a header it says of it as it stands. */
    @Test
    void aHeaderThatLayoutNamesKeepsItsNumber() {
        FoundLists found = find(
                new SheetOf("Land").row("1. Field", "2. Size", "3. Crop").row("Long Acre", 12, "grass"),
                new SheetOf("Layout")
                        .row("List", "Column", "Header in this workbook", "Unit")
                        .row("Fields", "Area", "2. Size", "ac"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(12);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.findings()).isEmpty();
    }
}
