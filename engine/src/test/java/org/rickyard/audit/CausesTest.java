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
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", null, 3, "fast"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().startsWith("something typed for the power needed is unusable"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.cell().map(Object::toString)).hasValue("Machines!E2"));
    }
}
