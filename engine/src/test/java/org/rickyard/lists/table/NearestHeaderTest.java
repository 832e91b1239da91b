package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.SheetOf;

/** Rows that are nearly the header of a list are told, and others are not. */
class NearestHeaderTest {
    private static final SheetOf FIELDS =
            new SheetOf("Land").row("Field", "Area (ha)").row("A", 5);

    private static List<String> near(SheetOf sheet) {
        return said(find(FIELDS, sheet)).stream()
                .filter(line -> line.contains("looks like the header"))
                .toList();
    }

    @Test
    void headersThatAListKnowsOneAndAllAreTold() {
        assertThat(near(new SheetOf("Calibration")
                        .row("Sprayer", "Test area (ft2)", "Volume sprayed (L)")
                        .row("Boom 1", 340, 0.9)))
                .singleElement()
                .asString()
                .startsWith("CAUTION Calibration!A1 This row looks like the header of the list Machines, but it has no"
                        + " column Type, so nothing of it is read.");
    }

    @Test
    void withOneThatIsNotKnownTheyAreAnotherTable() {
        assertThat(near(new SheetOf("Service")
                        .row("Machine", "Engine hours", "Oil changed")
                        .row("Tractor", 3400, 12)))
                .isEmpty();
    }

    @Test
    void withoutFiguresTheyAreAnotherTable() {
        assertThat(near(new SheetOf("Spares")
                        .row("Machine", "Engine hours", "Speed")
                        .row("Tractor", "see book", "see book")))
                .isEmpty();
    }
}
