package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.SpoilHeap;

/** Pits as an adviser asks for them: what comes out, how long it takes by each way of rating an excavator, where to. */
@Tag("derived")
class PitDiggingTest {
    @TempDir
    Path folder;

    private SilageBook pits(String outputHeader, double output, Object basis, Object hours, Object[]... pits) {
        Object[][] clamps = new Object[pits.length + 1][];
        clamps[0] =
                row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Batter", "Soil", "Country");
        System.arraycopy(pits, 0, clamps, 1, pits.length);
        return new SilageBook(folder)
                .list("Clamps", clamps)
                .list(
                        "Machines",
                        row("Machine", "Type", outputHeader, "Output basis", "Hours per day"),
                        row("Digger", "excavator", output, basis, hours))
                .run();
    }

    private static Object[] pit(double depth, double batter, Object soil) {
        return row("Pit", "earth pit", 24, 6, depth, batter, soil, "Ireland");
    }

    /** 738 m3 in clay that swells by 30 %, 1.8 t/m3: 959.4 m3 loose, 1,328.4 t, never 959.4 × 1.8. */
    @ParameterizedTest
    @CsvSource({"Output (m3/h), 20, in ground, 36.9", "Output (m3/h), 20, loose, 47.97", "Output (t/h), 20, , 66.42"})
    void hoursFollowTheBasisOfTheExcavatorsOutput(String header, double output, String basis, double hours)
            throws IOException {
        try (SilageBook book = pits(header, output, basis, 9, pit(3, 1, "clay"))) {
            assertThat(book.number("pit-digging", Digging.IN_GROUND_VOLUME, 0)).isCloseTo(738, within(1e-9));
            assertThat(book.number("pit-digging", Digging.SPOIL, 0)).isCloseTo(959.4, within(1e-9));
            assertThat(book.number("pit-digging", Digging.SPOIL_TONNES, 0)).isCloseTo(1328.4, within(1e-9));
            assertThat(book.number("pit-digging", Digging.DIG_HOURS, 0)).isCloseTo(hours, within(1e-9));
            assertThat(book.number("pit-digging", Digging.DIG_DAYS, 0)).isCloseTo(hours / 9, within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** There was a stop for want of a list of fields, though all that was asked for stood there. */
    @Test
    void aJobThatDigsAPitIsNoWorkOnAField() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Batter", "Soil"),
                        row("Top yard", "earth pit", 24, 6, 3, 1, "clay"),
                        row("Bay", "walled", 24, 6, 3, null, null))
                .list("Machines", row("Machine", "Type", "Output (t/h)"), row("Digger", "excavator", 20))
                .list(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("Bay", "Digging", "Digger"),
                        row("Top yard", "Digging", "Digger"),
                        row("Low yard", "Digging", "Digger"))
                .run()) {
            assertThat(book.number("pit-digging", Digging.DIG_HOURS, 0)).isCloseTo(66.42, within(1e-9));
            assertThat(book.findings())
                    .anyMatch(line -> line.contains("'Top yard' is a clamp and no field"))
                    // Nothing on Pit digging is of a walled clamp.
                    .noneMatch(line -> line.contains("'Bay' is a clamp and no field"))
                    .anyMatch(line -> line.contains("these jobs name fields"));
        }
    }

    @Test
    void anOutputInCubicMetresWithoutItsBasisIsAskedAndNotGuessed() throws IOException {
        try (SilageBook book = pits("Output (m3/h)", 20, null, null, pit(3, 1, null))) {
            assertThat(book.has("pit-digging", Digging.DIG_HOURS, 0)).isFalse();
            assertThat(book.status("pit-digging", 0)).contains("output basis missing (in ground or loose)");
            assertThat(book.number("pit-digging", Digging.SPOIL, 0)).isCloseTo(922.5, within(1e-9));
        }
    }

    @Test
    void theSpoilHeapHoldsTheSpoilAndStandsBackByTheDepthAndNeverUnderAMetre() throws IOException {
        try (SilageBook book =
                pits("Output (t/h)", 20, null, null, pit(3, 1, "clay"), pit(0.8, 1.2, "sand"), pit(2.2, 1.5, null))) {
            double[] depths = {3, 0.8, 2.2};
            double[] batters = {1, 1.2, 1.5};
            for (int row = 0; row < 3; row++) {
                double length = 24 + 2 * batters[row] * depths[row];
                double height = book.number("pit-digging", SpoilHeap.HEIGHT, row);
                double width = book.number("pit-digging", SpoilHeap.WIDTH, row);
                // A bank as long as the pit is on top, cut into slices: it holds what was dug, loose.
                double slices =
                        length * Slices.sum(-width / 2, width / 2, y -> height * (1 - Math.abs(y) / (width / 2)));
                assertThat(slices).isCloseTo(book.number("pit-digging", Digging.SPOIL, row), within(1e-9 * slices));
                assertThat(width / 2 / height).isCloseTo(1.5, within(1e-9));
                assertThat(book.number("pit-digging", SpoilHeap.FOOTPRINT, row))
                        .isCloseTo(width * length, within(1e-9));
                assertThat(book.number("pit-digging", SpoilHeap.BACK, row)).isEqualTo(Math.max(depths[row], 1));
            }
            assertThat(String.join(" ", book.texts("Pit digging"))).contains("at least the depth of the pit");
        }
    }
}
