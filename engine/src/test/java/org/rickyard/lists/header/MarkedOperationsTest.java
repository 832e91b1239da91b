package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** Operations across, fields down, and a mark where the one is for the other. */
class MarkedOperationsTest {
    @ParameterizedTest
    @ValueSource(strings = {"Y", "x", "Yes", "✓", "√"})
    void aTableOfMarksIsToldAndNotRead(String mark) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Mowing", "Tedding", "Raking", "Drill")
                .row("Long Acre", mark, null, mark, null)
                .row("Top", mark, mark, "-", null));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
        assertThat(messages(found, Severity.STOP)).isEmpty();
        assertThat(messages(found, Severity.CAUTION)).isEmpty();
        assertThat(messages(found, Severity.NOTE))
                .singleElement()
                .asString()
                .contains("\"Mowing\", \"Tedding\", \"Raking\"", "Write a list Jobs");
    }

    /** "Drill" over yes and no asked for a machine called Yes. */
    @Test
    void theFieldsBesideThemAreReadAllTheSame() {
        FoundLists found = find(new SheetOf("Work plan")
                .row("Field", "Area (ha)", "Spray", "Plough", "Drill", "Crop")
                .row("Long Acre", 5, "Yes", null, "Yes", "barley")
                .row("Top", 8, "Yes", "Yes", "No", "wheat"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 1)).isEqualTo(8);
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 1)).isEqualTo("wheat");
        assertThat(found.rows(Jobs.LIST).size()).isZero();
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    /** A list of jobs below keeps its own columns, and what tractors can do is no work on fields. */
    @Test
    void otherColumnsOfSuchNamesStay() {
        FoundLists jobs =
                find(new SheetOf("Work").row("Field", "Operation", "Drill").row("Long Acre", "drilling", "Old drill"));
        assertThat(jobs.rows(Jobs.LIST).text(Jobs.MACHINE, 0)).isEqualTo("Old drill");
        FoundLists tractors = find(new SheetOf("Tractors")
                .row("Name", "Power (PTO kW)", "Spray", "Plough")
                .row("A", 90, "Y", "N"));
        assertThat(tractors.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(messages(tractors, Severity.NOTE)).noneMatch(note -> note.contains("not read as work"));
    }
}
