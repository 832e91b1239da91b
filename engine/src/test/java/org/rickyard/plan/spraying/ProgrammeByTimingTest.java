package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

class ProgrammeByTimingTest {
    /** Without days, what was sprayed at two timings was one tank mix: 10 ha at 200 L/ha twice are 4,000 L, not 2,000. */
    @ParameterizedTest
    @ValueSource(strings = {"Timing", "Spray no."})
    void eachTimingIsATankMixOfItsOwn(String header) throws IOException {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("A", "Wheat", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 12, 3000))
                .sheet(
                        "Programme",
                        row(header, "Crop", "Product", "Dose", "Water (L/ha)", "Sprayer"),
                        row("T1", "Wheat", "Fungicide C", "1 L/ha", 200, "Sprayer"),
                        row("T1", "Wheat", "Growth regulator D", "1.25 L/ha", 200, "Sprayer"),
                        row("T2", "Wheat", "Fungicide E", "1.2 L/ha", 200, "Sprayer"))
                .run();
        assertThat(worked.number("total-spray-mix", "T1")).isCloseTo(2000, within(1e-6));
        assertThat(worked.number("total-spray-mix", "T2")).isCloseTo(2000, within(1e-6));
        assertThat(worked.number("product-total", "T2", "Fungicide E")).isCloseTo(12, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
