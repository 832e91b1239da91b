package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/** Who has no figure writes a dash: that is a blank to the run, and has to be one to the sheet when it is recalculated. */
class MarkedBlanksTest {
    @ParameterizedTest
    @ValueSource(strings = {"-", "n/a", "?", "tbc", "  ", "- ", "\u2013"})
    void whatMarksABlankIsOneInTheGridToo(String mark) throws IOException {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Run length (m)", "Clamp"),
                        row("Long", 6.5, "Barley", mark, mark),
                        row("Short", 4, "Barley", 200, null))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Crew",
                                "Overlap (m)",
                                "Output (t/h)",
                                "Fuel (L/h)"),
                        row("Drill", "drill", 4, 9, 68, mark, mark, mark, mark),
                        row("Tractor", "tractor", null, null, null, 1, null, null, 14))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Tractor", "Speed (km/h)", "Hours per day"),
                        row("Long", "drilling", "Drill", "Tractor", mark, mark),
                        row("Short", "drilling", "Drill", "Tractor", 8, 9))
                .run();
        assertThat(worked.differences()).isEmpty();
        assertThat(worked.number("hours", "Long")).isCloseTo(6.5 / (4 * 9 * 0.68 / 10), within(1e-9));
    }
}
