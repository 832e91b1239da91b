package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** How much soil swells when dug may be known: it was not read, and 25 % taken for 35. */
@Tag("derived")
class SwellTypedTest {
    private static final SeasonBook.Worked WORKED = new SeasonBook()
            .sheet(
                    "Pits",
                    row("Pit", "Kind", "Length (m)", "Floor width (m)", "Depth (m)", "Batter", "Soil", "Bulking (%)"),
                    row("Typed", "earth pit", 24, 6, 3, 1, "clay", 35),
                    row("By soil", "earth pit", 24, 6, 3, 1, "sand", null),
                    row("Neither", "earth pit", 24, 6, 3, 1, null, null),
                    row("Unread", "earth pit", 24, 6, 3, 1, "sand", "a third"),
                    row("Too much", "earth pit", 24, 6, 3, 1, "sand", 250))
            .sheet(
                    "Machines",
                    row("Machine", "Type", "Output (m3/h)", "Output basis"),
                    row("Digger", "excavator", 40, "loose"))
            .run();

    private static double spoil(String pit) {
        return WORKED.result("spoil-volume", pit).number().orElseThrow();
    }

    @Test
    void whatIsTypedComesBeforeTheSoilAndTheSoilBeforeTheConstant() {
        assertThat(spoil("Typed")).isCloseTo(738 * 1.35, within(1e-9));
        assertThat(spoil("By soil")).isCloseTo(738 * 1.11, within(1e-9));
        assertThat(spoil("Neither")).isCloseTo(738 * 1.25, within(1e-9));
        assertThat(WORKED.result("digging-hours", "Typed").number().orElseThrow())
                .isCloseTo(738 * 1.35 / 40, within(1e-9));
        assertThat(WORKED.differences()).isEmpty();
    }

    @Test
    void whatCannotBeReadOrBeIsNoDefault() {
        assertThat(WORKED.result("spoil-volume", "Unread").number()).isEmpty();
        assertThat(WORKED.result("spoil-volume", "Too much").number()).isEmpty();
        assertThat(WORKED.result("spoil-volume", "Too much").toString()).contains("swell of this soil");
    }
}
