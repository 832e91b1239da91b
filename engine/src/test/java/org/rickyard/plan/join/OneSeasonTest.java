package org.rickyard.plan.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** Jobs are added up as those of one season; whoever keeps two in one list is told. */
class OneSeasonTest {
    private static List<Finding> findings(Object firstDay, Object lastDay) {
        return new SeasonBook()
                        .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                                row("Sprayer", "sprayer", 24, 10, 3000))
                        .sheet(
                                "Jobs",
                                row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water (L/ha)", "Date"),
                                row("Top", "spray", "Sprayer", "Fungicide", 1, 200, lastDay),
                                row("Top", "spray", "Sprayer", "Fungicide", 1, 200, firstDay),
                                row("Top", "spray", "Sprayer", "Fungicide", 1, 200, null))
                        .run()
                        .findings()
                        .stream()
                        .filter(finding -> finding.message().contains("more than a year"))
                        .toList();
    }

    @Test
    void jobsOfTwoSeasonsAreAddedUpAndToldSo() {
        assertThat(findings(LocalDate.of(2025, 4, 20), LocalDate.of(2026, 5, 20)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!G2");
                    assertThat(finding.message())
                            .contains("from 2025-04-20 (Jobs!G3) to 2026-05-20 (Jobs!G2)")
                            .contains("each season in a workbook of its own");
                });
    }

    /** Scripts and copies from elsewhere bring days as words. */
    @Test
    void daysTypedAsTextCountToo() {
        assertThat(findings("2025-04-20", "2026-05-20")).hasSize(1);
    }

    @Test
    void theJobsOfOneYearAreNotAskedAbout() {
        assertThat(findings(LocalDate.of(2025, 8, 25), LocalDate.of(2026, 8, 26)))
                .isEmpty();
        assertThat(findings(null, null)).isEmpty();
    }
}
