package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.SeasonBook;

/** A workbook may count its days from 1900 or from 1904; what is said of a day must be the same. */
class DaysFrom1904Test {
    private static final LocalDate TENTH = LocalDate.of(2026, 5, 10);

    private static SeasonBook book() {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Long Acre", "grass", 24),
                        row("Far", "grass", 24))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Rake", "rake", 6, 10, 80),
                        row("Old red", "tractor"))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Tractor",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day"),
                        // One day is typed as a date and one as a text, which must not part by four years.
                        row("Cut", "Far", "mow", "Mower", "Old red", TENTH, "2026-05-12", 50, 10),
                        row("Row up", "Long Acre", "rake", "Rake", "Old red", "2026-05-10", TENTH.plusDays(9), 50, 10));
    }

    private static List<String> chart(SeasonBook.Worked worked) {
        return worked.plan().table("time-chart").spec().columns().stream()
                .map(TableColumn::label)
                .toList();
    }

    @Test
    void theChartNamesTheSameDays() {
        List<String> labels = chart(book().from1904().run());
        assertThat(labels).contains("Sun 10 May 2026").isEqualTo(chart(book().run()));
    }

    @Test
    void resultsAndFindingsAreTheSame() {
        SeasonBook.Worked from1904 = book().from1904().run();
        SeasonBook.Worked from1900 = book().run();
        assertThat(from1904.findings().stream().map(Finding::message))
                .anyMatch(message -> message.contains("10 May"))
                .isEqualTo(from1900.findings().stream().map(Finding::message).toList());
        for (String job : List.of("Cut", "Row up")) {
            assertThat(from1904.number("days-available", job)).isEqualTo(from1900.number("days-available", job));
        }
    }
}
