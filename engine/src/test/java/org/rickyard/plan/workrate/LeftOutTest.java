package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A holding's total that is not of all its work says so, where it stands and on Checks. */
class LeftOutTest {
    private static SeasonBook.Worked farm(Object speedOfRake, Object crewOfRake) {
        return new SeasonBook()
                .sheet("Fields", row("Holding", "Field", "Area (ha)"), row("North", "A", 10), row("South", "B", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Fuel (L/h)", "Crew"),
                        row("Mower", "mower", 3, 10, 12, 1),
                        row("Rake", "rake", 6, speedOfRake, 8, crewOfRake))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("A", "mowing", "Mower"),
                        row("A", "raking", "Rake"),
                        row("B", "mowing", "Mower"))
                .run();
    }

    private static List<String> said(SeasonBook.Worked worked) {
        return worked.findings().stream()
                .map(finding -> finding.message())
                .filter(message -> message.contains("some of the listed work"))
                .toList();
    }

    @Test
    void partOfTheWorkIsNotTheWhole() {
        SeasonBook.Worked worked = farm(null, 1);
        assertThat(said(worked))
                .hasSize(3)
                .isNotEmpty()
                .allSatisfy(message -> assertThat(message).startsWith("North: some of the listed work has no "))
                .anySatisfy(message -> assertThat(message)
                        .contains("has no fuel and is not in the holding's fuel; see Fuel and labour."))
                .anySatisfy(message -> assertThat(message)
                        .contains("has no hours and is not in the holding's hours; see Work rates."));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void allOfTheWorkNeedsNoWord() {
        assertThat(said(farm(10, 1))).isEmpty();
    }

    /** Where nothing is summed there is no sum to take for the whole; its own status says why. */
    @Test
    void noneOfTheWorkIsWithheldAsBefore() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Holding", "Field", "Area (ha)"), row("North", "A", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, null))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Mower"))
                .run();
        assertThat(worked.results()).noneMatch(result -> result.id().equals("holding-hours") && result.given());
        assertThat(said(worked)).isEmpty();
    }

    @Test
    void whereThereIsOneHoldingWithoutANameTheSentenceStandsAlone() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("A", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, 10),
                        row("Rake", "rake", 6, null))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("A", "mowing", "Mower"),
                        row("A", "raking", "Rake"))
                .run();
        assertThat(said(worked)).isNotEmpty().allSatisfy(message -> assertThat(message)
                .startsWith("some of the listed work"));
    }
}
