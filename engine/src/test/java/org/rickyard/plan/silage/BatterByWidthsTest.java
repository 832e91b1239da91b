package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A trench is told by its width at the bottom and at the top: its batter was asked, though the two widths give it. */
@Tag("derived")
class BatterByWidthsTest {
    private static SeasonBook.Worked pits(Object[]... pits) {
        Object[][] rows = new Object[pits.length + 1][];
        rows[0] = row(
                "Pit",
                "Kind",
                "Length (m)",
                "Bottom width (m)",
                "Width at top (m)",
                "Depth (m)",
                "Batter",
                "Settled height (m)",
                "DM (%)");
        System.arraycopy(pits, 0, rows, 1, pits.length);
        return new SeasonBook()
                .sheet("Pits", rows)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (m3/h)", "Output basis"),
                        row("Digger", "excavator", 36.9, "in ground"))
                .run();
    }

    private static double number(SeasonBook.Worked worked, String id, String name) {
        return worked.result(id, name).number().orElseThrow();
    }

    /** The pit of 30 × 12 m at the top, 24 × 6 m at the floor, 3 m deep: 738 m3 by the prismoidal formula. */
    @Test
    void theWidthsOfATrenchGiveItsBatter() {
        SeasonBook.Worked worked = pits(
                row("Trench", "earth pit", 24, 6, 12, 3, null, null, 25),
                row("Same", "earth pit", 24, 6, null, 3, 1, null, 25));
        assertThat(number(worked, "volume-in-ground", "Trench")).isCloseTo(738, within(1e-9));
        assertThat(number(worked, "clamp-volume", "Trench")).isCloseTo(738, within(1e-9));
        assertThat(number(worked, "digging-hours", "Trench")).isCloseTo(20, within(1e-9));
        assertThat(number(worked, "volume-in-ground", "Same")).isCloseTo(738, within(1e-9));
        assertThat(worked.findings()).noneMatch(finding -> finding.message().contains("width at the top"));
        assertThat(worked.differences()).isEmpty();
    }

    /** The slope is that of the walls, at whatever height the silage stands between them: 30 × (12 × 2 + 0.1 × 4). */
    @Test
    void wallsLeanByTheirOwnHeight() {
        SeasonBook.Worked worked = pits(row("Leaning", "walled", 30, 12, 12.6, 3, null, 2, 25));
        assertThat(number(worked, "clamp-volume", "Leaning")).isCloseTo(732, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aTypedBatterStandsAndWhatDisagreesWithItIsTold() {
        SeasonBook.Worked worked = pits(
                row("Odd", "earth pit", 24, 6, 15, 3, 1, null, 25),
                row("Rounded", "earth pit", 24, 6, 12.5, 3, 1, null, 25));
        assertThat(number(worked, "clamp-volume", "Odd")).isCloseTo(738, within(1e-9));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("do not belong together at this floor width"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("Odd: "));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatGivesNoBatterIsWithheldAndSaysWhy() {
        SeasonBook.Worked worked = pits(
                row("Swapped", "earth pit", 24, 12, 6, 3, null, null, 25),
                row("Heap", "heap", 30, 12, 6, 2, null, null, 25),
                row("Flat", "walled", 30, 12, 13, 0, null, 2, 25),
                row("Unread", "walled", 30, 12, "wide", 3, null, null, 25),
                row("Neither", "earth pit", 24, 6, null, 3, null, null, 25));
        assertThat(worked.result("clamp-volume", "Swapped").toString()).contains("see whether the two were swapped");
        assertThat(worked.result("clamp-volume", "Heap").toString()).contains("of a heap type its Batter");
        assertThat(worked.result("clamp-volume", "Flat").toString()).contains("the wall height is 0");
        assertThat(worked.result("clamp-volume", "Unread").number()).isEmpty();
        assertThat(worked.result("clamp-volume", "Neither").toString()).contains("batter missing");
        assertThat(worked.differences()).isEmpty();
    }

    /** Its floor width is the mean of its widths, so a width at the top would count twice. */
    @Test
    void oneMeasuredAsItLiesKeepsItsMeanWidth() {
        SeasonBook.Worked worked = pits(row("Taped", "measured", 30, 12, 10, 3, null, null, 25));
        assertThat(number(worked, "clamp-volume", "Taped")).isCloseTo(1080, within(1e-9));
        assertThat(worked.findings()).anyMatch(finding -> finding.message().contains("type its mean width"));
    }
}
