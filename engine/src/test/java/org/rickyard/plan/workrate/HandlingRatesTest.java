package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A loader or buckrake of which the load and the time of a round are typed had no answer outside a gang. */
@Tag("derived")
class HandlingRatesTest {
    private static final Object[] HEAD =
            row("Machine", "Type", "Number", "Average load (lb)", "Time per cycle (min)", "Output (t/h)");

    /**
     * National Institute of Agricultural Engineering, Press 10 December 1960: 32 bales a trip by buckrake, 4 man-hours for
     * 1,000; of 56 lb each that is 6 1/4 (long) tons an hour.
     */
    @Test
    void aBuckrakeByItselfIsRatedByItsLoadAndRound() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        HEAD,
                        row("Buckrake", "buckrake", null, 32 * 56, 32 * 0.24, null),
                        row("Pair", "loader", 2, 32 * 56, 32 * 0.24, null),
                        row("Typed", "loader", 2, 32 * 56, 32 * 0.24, 30),
                        row("Half", "loader", null, 2000, null, null),
                        row("Trailer", "trailer", null, 20000, 30, null))
                .run();
        assertThat(worked.result("handling-rate", "Buckrake").number().orElseThrow())
                .isCloseTo(6.25 * 1.0160469088, within(1e-9));
        assertThat(worked.result("handling-rate", "Pair").number().orElseThrow())
                .isCloseTo(12.5 * 1.0160469088, within(1e-9));
        assertThat(worked.result("handling-rate", "Typed").number().orElseThrow())
                .isCloseTo(60, within(1e-9));
        assertThat(worked.result("handling-rate", "Half").toString()).contains("round time missing");
        assertThat(worked.plan().table("handling-rates").rows()).isEqualTo(4);
        assertThat(worked.differences()).isEmpty();
    }

    /** Among the stages of its gang it is answered already, with those alike that the job names. */
    @Test
    void oneThatAGangHasIsNotToldTwice() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Distance to clamp (km)", "Yield (t/ha)", "Yield basis"),
                        row("A", "grass", 10, 2, 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Payload (t)", "Round time (min)", "Output (t/h)", "Road speed (km/h)"),
                        row("Chopper", "forager", null, null, 50, null),
                        row("Cart", "trailer", 10, null, null, 25),
                        row("Pusher", "buckrake", 1.2, 2, null, null),
                        row("Shovel", "loader", 1.5, 1.5, null, null))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "silage", "Chopper; Cart x 3; Pusher"))
                .run();
        assertThat(worked.plan().table("handling-rates").rows()).isEqualTo(1);
        assertThat(worked.result("handling-rate", "Shovel").number().orElseThrow())
                .isCloseTo(60, within(1e-9));
    }

    /**
     * Inputs of a published exercise: a bucket of 1.5 cubic yards heaped, filled to 0.9, a cycle of 25 s, 50 minutes an
     * hour: 144 × 1.35 × 0.8333 = 162 loose cubic yards an hour.
     */
    @Test
    void aBucketAndItsCycleAreLooseSoilAnHour() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Bucket size (yd3)", "Cycle time (s)"),
                        row("Digger", "excavator", 1.5, 25),
                        row("Shovel", "loader", 1.5, 25),
                        row("Tanker", "slurry tanker", 10, 900),
                        row("No cycle", "excavator", 1.5, null))
                .run();
        assertThat(worked.result("bucket-rate", "Digger").number().orElseThrow())
                .isCloseTo(162 * 0.764554857984, within(1e-9));
        assertThat(worked.result("bucket-rate", "Shovel").number().orElseThrow())
                .isCloseTo(162 * 0.764554857984, within(1e-9));
        assertThat(worked.plan().table("bucket-rates").rows()).isEqualTo(2);
        assertThat(worked.differences()).isEmpty();
    }
}
