package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What a load puts on a hectare, told by how far it is spread: nothing was said of it. */
class LoadTestsTest {
    private static SeasonBook.Worked machines(Object[]... rows) {
        return new SeasonBook().sheet("Machines", rows).run();
    }

    private static double number(SeasonBook.Worked worked, String id, String name) {
        return worked.result(id, name).number().orElseThrow();
    }

    /** University of Florida, UF00067504, table 1: 20 lb over 10 × 435 ft are 4,350 square feet and 200 lb an acre. */
    @Tag("published")
    @Test
    void aLoadOverADistanceAndAWidthIsARate() {
        SeasonBook.Worked worked = machines(
                row("Machine", "Type", "Bout width (ft)", "Distance spread (ft)", "Payload (lb)"),
                row("Tried", "fertiliser spreader", 10, 435, 20));
        assertThat(number(worked, "load-area", "Tried") * 10_000 / 0.3048 / 0.3048)
                .isCloseTo(4350, within(0.5));
        double poundsAnAcre = number(worked, "load-spread-rate", "Tried") * 1000 / 0.45359237 * 0.40468564224;
        assertThat(poundsAnAcre).isCloseTo(200, within(0.5));
        assertThat(worked.differences()).isEmpty();
    }

    @Tag("derived")
    @Test
    void tankersGoByTheirTank() {
        SeasonBook.Worked worked = machines(
                row("Machine", "Type", "Working width (m)", "Load distance (m)", "Payload (t)", "Tank (L)"),
                row("Tanker", "slurry tanker", 10, 400, null, 10000),
                row("Muck", "muck spreader", 8, 200, 8, null),
                row("No load", "muck spreader", 8, 200, null, null),
                row("No distance", "muck spreader", 8, null, 8, null),
                row("Cart", "trailer", 8, 200, 8, null));
        assertThat(number(worked, "load-volume-rate", "Tanker")).isCloseTo(25_000, within(1e-6));
        assertThat(number(worked, "load-spread-rate", "Muck")).isCloseTo(50, within(1e-9));
        assertThat(worked.result("load-spread-rate", "No load").toString()).contains("payload missing");
        assertThat(worked.plan().table("load-tests").rows()).isEqualTo(2);
        assertThat(worked.plan().table("tanker-tests").rows()).isEqualTo(1);
        assertThat(worked.differences()).isEmpty();
    }

    /** A run by the watch is one of the speed, whatever is carried. */
    @Tag("derived")
    @Test
    void aTimedRunIsNoDistanceOfALoad() {
        SeasonBook.Worked worked = machines(
                row("Machine", "Type", "Working width (m)", "Timed distance (m)", "Timed seconds", "Payload (t)"),
                row("Muck", "muck spreader", 8, 100, 45, 8));
        assertThat(worked.plan().tables()).noneMatch(table -> table.spec().id().equals("load-tests"));
    }
}
