package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** Of two headers for one column none is used until it is told which, and the words under the first were. */
class AskedWordsTest {
    @Test
    void theCropOfTheFirstOfTwoYearsIsNotUsed() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "2025 crop", "2026 crop")
                .row("A", 10, "Wheat", "Grass")
                .row("B", 5, "Grass", "Wheat"));
        assertThat(found.rows(Fields.LIST).state(Fields.CROP, 0)).isEqualTo(State.ASKED);
        assertThat(names(found.rows(Fields.LIST), Fields.CROP)).containsExactly("", "");
        assertThat(found.rows(Fields.LIST).typed(Fields.CROP, 0)).isEqualTo("Wheat");
    }

    @Test
    void neitherAreTypesNorTheFieldsOfJobs() {
        FoundLists found = find(
                new SheetOf("Kit")
                        .row("Machine", "Type", "Category", "Width (m)", "Speed (km/h)")
                        .row("Mow", "mower", "forager", 3, 9),
                new SheetOf("Fields").row("Field", "Area (ha)").row("A", 10).row("B", 4),
                new SheetOf("Jobs")
                        .row("Field name", "Parcel", "Operation", "Machine")
                        .row("A", "B", "mow", "Mow"));
        assertThat(found.rows(Machines.LIST).text(Machines.TYPE, 0)).isEmpty();
        assertThat(found.rows(Jobs.LIST).text(Jobs.FIELD, 0)).isEmpty();
        assertThat(found.rows(Jobs.LIST).text(Jobs.OPERATION, 0)).isEqualTo("mowing");
    }

    /** Without names nothing could be told of the rows at all. */
    @Test
    void rowsKeepTheNamesThatTheyGoBy() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Paddock", "Parcel", "Area (ha)")
                .row("A", "B", 10)
                .row("C", "D", 4));
        assertThat(found.rows(Fields.LIST).state(Fields.FIELD, 0)).isEqualTo(State.ASKED);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "C");
    }
}
