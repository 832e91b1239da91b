package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Which cell is named for a result that is withheld. */
class CausesTest {
    @Test
    void theCellNamedIsTheOneThatHoldsWhatCannotBeUsed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("A", 4, "grass", 28, "as carted fresh", 250))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Working width (m)", "Speed (km/h)", "Crew"),
                        row("Mower", "mower", null, 3, 12, 1))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().startsWith("something typed for the power needed is unusable"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.cell().map(Object::toString)).hasValue("Fields!F2"));
    }

    @Test
    void ofTwoListsTheOneWithoutTheColumnIsNamed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Land", row("Field", "Area (ha)", "Crop", "Distance to clamp (km)"), row("A", 4, "grass", 1))
                .sheet("Rented", row("Field", "Area (ha)", "Crop"), row("B", 3, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Payload (t)", "Road speed laden (km/h)"),
                        row("Forager", "forager", 60, null, null),
                        row("Trailer", "trailer", null, 12, 20))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("grass", "chop", "Forager; Trailer"))
                .run();
        assertThat(worked.messages())
                .anyMatch(message ->
                        message.startsWith("distance to clamp missing: the list on 'Rented' has no column for it, so"))
                .noneMatch(message -> message.startsWith("distance to clamp missing: no list has a column"));
    }
}
