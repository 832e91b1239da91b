package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.testing.SeasonBook;

/** Fields and machines alone: which machine is reckoned on which field, and what is said where none is. */
@Tag("derived")
class CropsWithoutJobsTest {
    private static SeasonBook.Worked farm(Object[]... fields) {
        Object[][] rows = new Object[fields.length + 1][];
        rows[0] = row("Field", "Crop", "Area (ha)");
        System.arraycopy(fields, 0, rows, 1, fields.length);
        return new SeasonBook()
                .sheet("Fields", rows)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Combine", "combine", 6, 5, 70))
                .run();
    }

    @Test
    void noMowerIsReckonedOnBarley() {
        SeasonBook.Worked worked = farm(row("Hill", "Spring barley", 10), row("Ley", "Grass ley", 4));
        assertThat(worked.results().stream()
                        .filter(result -> result.id().equals("work-rate"))
                        .map(result -> result.about().get("Field") + ", "
                                + result.about().get("Machine")))
                .containsExactly("Ley, Mower", "Hill, Combine");
        assertThat(worked.findings()).noneMatch(finding -> finding.message().contains("is no crop known here"));
    }

    @Test
    void aMachineThatWorksNoneOfTheCropsIsTold() {
        SeasonBook.Worked worked = farm(row("Hill", "Spring barley", 10));
        assertThat(worked.findings())
                .anyMatch(finding -> finding.message()
                                .startsWith(
                                        "'Mower' works none of the crops listed, so without a job list it is not reckoned")
                        && finding.cell().orElseThrow().toString().equals("Machines!B2"));
        SeasonBook.Worked both = farm(row("Hill", "Spring barley", 10), row("Ley", "Grass ley", 4));
        assertThat(both.findings()).noneMatch(finding -> finding.message().contains("none of the crops listed"));
    }

    /** The type stands once over two mowers: the second was left out without a word. */
    @Test
    void aMachineWithoutATypeIsTold() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Ley", "Grass ley", 4))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Front", "mower", 3, 10, 80),
                        row("Rear", null, 3, 10, 80))
                .run();
        assertThat(worked.findings())
                .anyMatch(finding -> finding.severity() == Severity.CAUTION
                        && finding.message().startsWith("'Rear' has no Type, so without a job list it is not reckoned")
                        && finding.cell().orElseThrow().toString().equals("Machines!B3"));
    }

    @Test
    void aCropWithoutAKnownWordIsTold() {
        SeasonBook.Worked worked = farm(row("Hill", "Lawn", 10), row("Back", "lawn", 3), row("Ley", "PG", 4));
        assertThat(worked.number("work-rate", "Ley")).isEqualTo(2.4);
        Finding found = worked.findings().stream()
                .filter(finding -> finding.message().contains("is no crop known here"))
                .reduce((one, other) -> {
                    throw new AssertionError("told twice");
                })
                .orElseThrow();
        assertThat(found.severity()).isEqualTo(Severity.CAUTION);
        assertThat(found.cell().orElseThrow()).hasToString("Fields!B2");
        assertThat(found.message())
                .isEqualTo("\"Lawn\" is no crop known here, so without a job list machines that work some crops and not"
                        + " others are not reckoned on it. Say what it is as well (\"Lawn (grass)\"; the table 'Crops a"
                        + " machine works, if no job says' on Basis has the words), or list the work as Jobs.");
    }
}
