package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/**
 * A number that is not read for what it is shown as, or because it is no day, is still a number to a link: the grid
 * reckoned with it as soon as the workbook was opened.
 */
class NumbersNotReadTest {
    private static SeasonBook.Worked season(Object earliest, Object speed, Object hours) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "grass", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, speed))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Earliest", "Latest", "Hours per day (h)"),
                        row("Top", "mow", "Mower", earliest, LocalDate.of(2026, 5, 9), hours))
                .run();
    }

    @ParameterizedTest
    @ValueSource(doubles = {12, 20260514, 99999})
    void aNumberThatIsNoDayIsWithheldInTheGridToo(double earliest) {
        SeasonBook.Worked worked = season(earliest, 10, 8);
        assertThat(worked.messages()).anyMatch(message -> message.contains(" is not a day; write a date."));
        assertThat(worked.result("season-fit", "Mower").given()).isFalse();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatIsShownAsADayOrATimeIsNoSpeedAndNoHours() {
        SeasonBook.Worked worked = season(
                LocalDate.of(2026, 5, 1), new SeasonBook.Shown(10, "yyyy-mm-dd"), new SeasonBook.Shown(0.35, "h:mm"));
        assertThat(worked.result("spot-work-rate", "Mower").given()).isFalse();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatIsShownAsPerCentIsNoSpeed() {
        SeasonBook.Worked worked = season(LocalDate.of(2026, 5, 1), new SeasonBook.Shown(0.1, "0%"), 8);
        assertThat(worked.result("spot-work-rate", "Mower").given()).isFalse();
        assertThat(worked.differences()).isEmpty();
    }
}
