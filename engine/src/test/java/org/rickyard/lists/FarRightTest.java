package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;

/** A list so far to the right that nobody looks for one there is told, not passed over. */
class FarRightTest {
    private static Object[] from(int column, Object... cells) {
        Object[] row = new Object[column + cells.length];
        System.arraycopy(cells, 0, row, column, cells.length);
        return row;
    }

    private static FoundLists fieldsFrom(int column) {
        return find(new SheetOf("Land")
                .row(from(column, "Field", "Crop", "Area (ha)"))
                .row(from(column, "Long Acre", "grass", 4.2)));
    }

    @Test
    void aListBeyondTheLastColumnLookedAtIsSaidNotToBeRead() {
        FoundLists found = fieldsFrom(500);
        assertThat(found.rows(Fields.LIST).size()).isZero();
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("CAUTION Land!SI1 This looks like the header of a list"));
    }

    @Test
    void oneBeforeItIsRead() {
        FoundLists found = fieldsFrom(300);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(said(found)).noneMatch(line -> line.contains("looks like the header of a list"));
    }

    @Test
    void aListIsReadHoweverManyColumnsOfOtherThingsItHas() {
        Object[] header = from(3, from(0, new Object[60]));
        Object[] row = header.clone();
        for (int i = 3; i < header.length; i++) {
            header[i] = i % 10 == 0 ? (Object) (1990 + i) : "Observed " + i;
            row[i] = i;
        }
        System.arraycopy(new Object[] {"Field", "Area (ha)", "Crop"}, 0, header, 0, 3);
        System.arraycopy(new Object[] {"Long Acre", 4.2, "grass"}, 0, row, 0, 3);
        FoundLists found = find(new SheetOf("Land").row(header).row(row));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4.2);
    }
}
