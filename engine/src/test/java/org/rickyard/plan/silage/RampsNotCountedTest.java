package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/**
 * A pit of which the slope of its front is typed, and not how many of its ends slope: it was reckoned at full height over
 * its whole length, 1165 t for 1079.
 */
@Tag("derived")
class RampsNotCountedTest {
    private static SeasonBook.Worked pit(Object ramps) {
        return pit("45°", ramps);
    }

    private static SeasonBook.Worked pit(String slope, Object ramps) {
        return new SeasonBook()
                .sheet(
                        "Pits",
                        row(
                                "Pit",
                                "Kind",
                                "Length (m)",
                                "Width (m)",
                                "Settled height (m)",
                                "Front slope",
                                "Ramps",
                                "m3/t"),
                        row("Sloped", "walled", 30, 15, 3.6, slope, ramps, 1.39),
                        row("Level", "walled", 30, 15, 3.6, null, null, 1.39))
                .run();
    }

    @Test
    void howManyEndsSlopeIsAskedAndNotTakenAsNone() {
        SeasonBook.Worked worked = pit(null);
        assertThat(worked.result("clamp-capacity", "Sloped").number()).isEmpty();
        assertThat(worked.result("clamp-capacity", "Sloped").toString()).contains("ramps missing");
        assertThat(worked.result("clamp-volume", "Level").number().orElseThrow())
                .isCloseTo(1620, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A slope is there, whatever it is: that there are no ramps would be a guess. */
    @Test
    void aSlopeThatCannotBeReadIsNoneThatIsLeftOut() {
        assertThat(pit("steep", null).result("clamp-capacity", "Sloped").number())
                .isEmpty();
        assertThat(pit("steep", null).result("clamp-capacity", "Sloped").toString())
                .contains("ramps missing");
    }

    /** 45 degrees: 15 × 3.6 × 26.4 and half of 15 × 3.6 × 3.6. */
    @Test
    void oneSlopeTypedIsTakenOff() {
        assertThat(pit(1).result("clamp-volume", "Sloped").number().orElseThrow())
                .isCloseTo(1522.8, within(1e-9));
    }
}
