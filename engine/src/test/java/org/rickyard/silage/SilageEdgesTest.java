package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSurface;
import org.rickyard.trade.silage.Covering;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.Effluent;
import org.rickyard.trade.silage.FeedOut;
import org.rickyard.trade.silage.FilledByCrop;
import org.rickyard.trade.silage.Packing;

/** Clamps at the edge of what can be: what has no meaning is withheld, what is doubtful is said. Figures derived. */
@Tag("derived")
class SilageEdgesTest {
    private static final Object[] CLAMPS = row(
            "Clamp",
            "Kind",
            "Length (m)",
            "Floor width (m)",
            "Wall height (m)",
            "Settled height (m)",
            "Batter",
            "DM target (%)",
            "Density, fresh (kg/m3)",
            "Density, dry matter (kg DM/m3)",
            "Country",
            "Ramps",
            "Ramp run");
    private static final Object[] FIELDS = row(
            "Field",
            "Crop",
            "Area (ha)",
            "Yield (t/ha)",
            "Yield basis",
            "DM at cutting (%)",
            "DM at ensiling (%)",
            "Clamp");

    @TempDir
    Path folder;

    private SilageBook clamps(Object[]... rows) {
        return book(CLAMPS, rows, "Clamps");
    }

    private SilageBook book(Object[] header, Object[][] rows, String list) {
        Object[][] all = new Object[rows.length + 1][];
        all[0] = header;
        System.arraycopy(rows, 0, all, 1, rows.length);
        return new SilageBook(folder).list(list, all);
    }

    private static Object[] walled(String name, Object... rest) {
        Object[] row = new Object[CLAMPS.length];
        System.arraycopy(row(name, "walled", 30, 10), 0, row, 0, 4);
        System.arraycopy(rest, 0, row, 4, rest.length);
        return row;
    }

    private static Object[] grass(String field, Object area, Object yield, Object ensiled, String clamp) {
        return row(field, "grass", area, yield, "as carted fresh", 15, ensiled, clamp);
    }

    /** Sums of such yields come to a hair over 45 %, and no table of densities reaches further than that. */
    @Test
    void fieldsAllOfOneDryMatterMakeAClampOfJustThat() throws IOException {
        Object[][] fields = {
            grass("A", 2.9, 19.7, 45, "Dry"),
            grass("B", 6.3, 13.9, 45, "Dry"),
            grass("C", 1.1, 28.3, 45, "Dry"),
            grass("D", 7.7, 11.1, 45, "Dry"),
            grass("E", 5.3, 9.7, 45, "Dry")
        };
        try (SilageBook book = book(FIELDS, fields, "Fields")
                .list("Clamps", CLAMPS, walled("Dry", 2.5))
                .run()) {
            assertThat(book.number("clamps", ClampContents.CLAMP_DM, 0)).isEqualTo(45);
            assertThat(book.number("clamps", ClampContents.DENSITY, 0)).isCloseTo(420, within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void withoutAnyHeightNothingIsHeldInsteadOfNought() throws IOException {
        try (SilageBook book = clamps(
                        walled("Wall", 0, null, null, 25, null, null, "Wales"),
                        row("Heap", "heap", 30, 10, 0, null, 3, 25, null, null, "Wales"),
                        row("Pit", "earth pit", 30, 10, 0, 2, 1, 25, null, null, "Wales"))
                .run()) {
            for (int row = 0; row < 2; row++) {
                assertThat(book.has("clamps", ClampShape.VOLUME, row)).isFalse();
                assertThat(book.has("clamps", ClampContents.CAPACITY, row)).isFalse();
                assertThat(book.has("clamp-effluent", Effluent.VOLUME, row)).isFalse();
                assertThat(book.status("clamps", row))
                        .contains("type the height of the wall or pit, or how high a heap stands");
            }
            assertThat(book.has("clamp-heights", ClampHeights.HIGHEST, 0)).isFalse();
            assertThat(book.has("clamps", ClampShape.VOLUME, 2)).isTrue();
            assertThat(book.has("pit-digging", Digging.IN_GROUND_VOLUME, 0)).isFalse();
            assertThat(book.status("pit-digging", 0)).contains("the pit has no depth");
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** 300 kg dry matter at 20 % would be 1,500 kg fresh in a cubic metre, 1,000 kg fresh at 60 % 600 kg dry. */
    @Test
    void noSilageIsHeavierThanSilageWithoutPores() throws IOException {
        try (SilageBook book = clamps(
                        walled("Dry", 2.5, null, null, 20, null, 300, "Wales"),
                        walled("Fresh", 2.5, null, null, 60, 1000, null, "Wales"),
                        walled("Wet", 2.5, null, null, 18, 1150, null, "Wales"),
                        walled("Most", 2.5, null, null, 20, null, 230, "Wales"))
                .run()) {
            assertThat(book.has("clamps", ClampContents.DENSITY, 0)).isFalse();
            assertThat(book.has("clamps", ClampContents.CAPACITY, 0)).isFalse();
            assertThat(book.status("clamps", 0)).contains("see whether it is the fresh density");
            assertThat(book.has("clamps", ClampContents.DENSITY_DM, 1)).isFalse();
            assertThat(book.status("clamps", 1)).contains("more dry matter in a cubic metre than any silage holds");
            assertThat(book.has("clamp-density", Packing.PORES, 2)).isFalse();
            assertThat(book.status("clamp-density", 2)).contains("denser than silage without any pores");
            assertThat(book.number("clamps", ClampContents.DENSITY, 3)).isCloseTo(1150, within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void aCropThatIsFarTooMuchFillsToNoHeightAndOneThatIsTooMuchIsSaid() throws IOException {
        Object[][] fields = {
            grass("Far", 400, 40, 30, "Far"), grass("Twice", 32, 30, 30, "Twice"), grass("Over", 10, 50, 30, "Over")
        };
        try (SilageBook book = book(FIELDS, fields, "Fields")
                .list("Clamps", CLAMPS, walled("Far", 2.5), walled("Twice", 2.5), walled("Over", 2.5))
                .run()) {
            assertThat(book.has("clamp-heights", FilledByCrop.FILLED_TO, 0)).isFalse();
            assertThat(book.status("clamp-heights", 0)).contains("the crop is far more than this clamp holds");
            assertThat(book.cautions("clamp-heights", 0))
                    .contains("STOP: the crop listed is more than it holds at any height");
            // 960 t at 600 kg/m3 are 1,600 m3 on 300 m2.
            assertThat(book.number("clamp-heights", FilledByCrop.FILLED_TO, 1)).isCloseTo(16 / 3.0, within(1e-9));
            assertThat(book.cautions("clamp-heights", 1))
                    .contains("STOP: the crop listed would fill it above twice its wall");
            assertThat(book.cautions("clamp-heights", 2))
                    .contains("on the day it stands higher than the heights given here")
                    .doesNotContain("STOP");
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** HSA and FCI rate Irish walls to twice their height; the rule is not carried over the sea. */
    @Test
    void outsideIrelandTheWallIsAsHighAsAnyHeightThatIsHeld() throws IOException {
        try (SilageBook book = clamps(
                        walled("Ireland", 1.5, null, null, 28, null, null, "Ireland"),
                        walled("England", 1.5, null, null, 28, null, null, "England"),
                        walled("Scotland", 1.5, null, null, 28, null, null, "Scotland"),
                        walled("Nowhere", 1.5, null, null, 28))
                .run()) {
            assertThat(book.number("clamp-heights", ClampHeights.HIGHEST, 0)).isCloseTo(3, within(1e-12));
            for (int row = 1; row < 4; row++) {
                assertThat(book.number("clamp-heights", ClampHeights.HIGHEST, row))
                        .isCloseTo(1.5, within(1e-12));
            }
        }
    }

    @Test
    void aWallOfOneInTenIsAskedAboutAndAnImpossibleOneIsToldAsItWasRead() throws IOException {
        try (SilageBook book = clamps(
                        walled("Ten", 2.5, null, "1 in 10", 28),
                        walled("Twelve", 2.5, null, "1 in 12", 28),
                        walled("Tenth", 2.5, null, 0.1, 28))
                .run()) {
            assertThat(book.cautions("clamps", 0)).contains("a wall that leans out by more than it rises");
            assertThat(book.cautions("clamps", 2)).doesNotContain("leans out");
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("batter impossible: 12, possible is from 0 up to 10, so"));
        }
    }

    /** The crop stands in two parts of the check, in clamps and in none: its withheld rows are counted once. */
    @Test
    void aRowThatIsWithheldIsCountedOnceInACheck() throws IOException {
        Object[][] fields = {
            grass("A", 5, 20, 30, "One"), grass("B", 5, "lots", 30, "One"), grass("C", 5, 20, 30, null),
        };
        try (SilageBook book = book(FIELDS, fields, "Fields")
                .list("Clamps", CLAMPS, walled("One", 2.5))
                .run()) {
            assertThat(book.checks())
                    .filteredOn(check -> check.what().startsWith("Crop: field by field"))
                    .singleElement()
                    .satisfies(check -> {
                        assertThat(check.withheld()).isEqualTo(2);
                        assertThat(check.verdict()).isEqualTo("incomplete");
                    });
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** Typed 28 % over a crop of 34 %: everything of the clamp would go by 28, and the feed by 34. */
    @Test
    void aDryMatterTypedThatIsNotTheCropsIsAskedAbout() throws IOException {
        Object[][] fields = {
            grass("A", 5, 20, 34, "Off"), grass("B", 5, 20, 31, "Edge"), grass("C", 5, 20, 31.1, "Over")
        };
        try (SilageBook book = book(FIELDS, fields, "Fields")
                .list(
                        "Clamps",
                        CLAMPS,
                        walled("Off", 2.5, null, null, 28),
                        walled("Edge", 2.5, null, null, 28),
                        walled("Over", 2.5, null, null, 28),
                        walled("Empty", 2.5, null, null, 28))
                .run()) {
            String said = "the dry matter typed for the clamp is not that of the crop";
            assertThat(book.cautions("clamps", 0)).contains(said);
            assertThat(book.cautions("clamps", 1)).doesNotContain(said);
            assertThat(book.cautions("clamps", 2)).contains(said);
            assertThat(book.cautions("clamps", 3)).doesNotContain(said);
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** Two ramps of 7.5 m on 10 m of floor: neither a volume nor a surface to cover. */
    @Test
    void rampsThatOverlapLeaveNoSurface() throws IOException {
        try (SilageBook book = clamps(row("Short", "walled", 10, 8, 2.5, null, null, 28, null, null, "Wales", 2, 3))
                .run()) {
            assertThat(book.has("clamps", ClampSurface.SURFACE, 0)).isFalse();
            assertThat(book.has("clamp-covering", Covering.TYRES, 0)).isFalse();
            assertThat(book.status("clamps", 0)).contains("the two ramps overlap");
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** Shoulders of 45 degrees on 1 m meet at 0.5 m: a crown of 0.6 m has neither a section nor a width to cover. */
    @Test
    void shouldersThatMeetLeaveNothingToCover() throws IOException {
        Object[] header = {
            "Clamp",
            "Kind",
            "Length (m)",
            "Floor width (m)",
            "Wall height (m)",
            "DM target (%)",
            "Crown (m)",
            "Crown shape"
        };
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Clamps",
                        header,
                        row("Met", "walled", 30, 1, 3, 28, 0.6, "straight shouldered"),
                        row("Just", "walled", 30, 1, 3, 28, 0.5, "straight shouldered"))
                .run()) {
            assertThat(book.has("clamps", ClampSurface.SURFACE, 0)).isFalse();
            assertThat(book.has("clamp-covering", Covering.SHEET, 0)).isFalse();
            assertThat(book.number("clamps", ClampSurface.SURFACE, 1)).isCloseTo(30 * Math.sqrt(2), within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void lucerneIsNoGrass() throws IOException {
        Object[][] fields = {row("L", "Lucerne", 5, 20, "as carted fresh", 20, 30, "L"), grass("G", 5, 20, 30, "G")};
        try (SilageBook book = book(FIELDS, fields, "Fields")
                .list("Clamps", CLAMPS, walled("L", 2.5), walled("G", 2.5))
                .run()) {
            assertThat(book.cautions("clamps", 0)).contains("the density table is for grass");
            assertThat(book.cautions("clamp-density", 0))
                    .contains("printed for grass, and this clamp takes another crop");
            assertThat(book.cautions("clamps", 1)).doesNotContain("for grass");
            assertThat(book.cautions("clamp-density", 1)).doesNotContain("for grass");
        }
    }

    /** 12 × 30 m with sides 3 for 1 end in a ridge at 2 m, whatever height is typed: 4 m3 a day ÷ 0.25 m ÷ 2 m. */
    @Test
    void theWidthOfAHeapIsWantedAtTheHeightItReaches() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Settled height (m)",
                                "Batter",
                                "DM target (%)",
                                "Density, fresh (kg/m3)",
                                "Feed-out rate (m/week)"),
                        row("Heap", "heap", 30, 12, 0, 3, 3, 30, 600, 1.75))
                .list(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("Cows", 60, 12, 90, "Heap"))
                .run()) {
            assertThat(book.number("clamps", ClampShape.HEAP_HEIGHT, 0)).isCloseTo(2, within(1e-12));
            assertThat(book.number("clamp-feeding", FeedOut.FACE_WANTED, 0)).isCloseTo(16, within(1e-9));
            assertThat(book.number("clamp-feeding", FeedOut.WIDTH_WANTED, 0)).isCloseTo(8, within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }
}
