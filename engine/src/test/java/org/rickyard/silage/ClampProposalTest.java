package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.formula.Symbol;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.Crop;

/** Crops that name no clamp: proposed in list order, to capacity, and marked so. */
class ClampProposalTest {
    private static final Symbol PROPOSED = Symbol.text("clamp proposed (list order, to capacity)");

    @TempDir
    Path folder;

    private SilageBook farm(Object dmTarget) {
        return new SilageBook(folder)
                .list(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Area (ha)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Moor End", "A", 10, 40, "as carted fresh", 25, null),
                        row("Moor End", "B", 10, 60, "as carted fresh", 30, null),
                        row("Moor End", "C", 10, 10, "as carted fresh", 30, "Second"),
                        row("Far", "D", 10, 60, "as carted fresh", 30, null),
                        row("Moor End", "E", 10, 60, "as carted fresh", 30, "Nowhere"))
                .list(
                        "Clamps",
                        row(
                                "Holding",
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "DM target (%)"),
                        row("Moor End", "First", "walled", 30, 10, 2, dmTarget),
                        row("Moor End", "Second", "walled", 30, 10, 2, dmTarget))
                .run();
    }

    @Test
    void fieldsFillTheFirstClampAndWhatIsOverGoesToTheNext() throws IOException {
        try (SilageBook farm = farm(25)) {
            // 600 m3 at 25 % hold 408 t. A's 400 t go to First whole; 1 % of B is 6 t and fits, 2 % does not.
            assertThat(farm.table("crop").rows()).isEqualTo(7);
            assertThat(farm.word("crop", PROPOSED, 0)).isEqualTo("First");
            assertThat(farm.number("crop", Crop.SHARE, 0)).isEqualTo(100);
            assertThat(farm.word("crop", PROPOSED, 1)).isEqualTo("First");
            assertThat(farm.number("crop", Crop.SHARE, 1)).isEqualTo(1);
            assertThat(farm.word("crop", PROPOSED, 2)).isEqualTo("Second");
            assertThat(farm.number("crop", Crop.SHARE, 2)).isEqualTo(51);
            assertThat(farm.word("crop", PROPOSED, 3)).isEmpty();
            assertThat(farm.number("crop", Crop.SHARE, 3)).isEqualTo(48);
            assertThat(farm.cautions("crop", 0)).contains("one is proposed");
            assertThat(farm.cautions("crop", 4)).doesNotContain("proposed");
        }
    }

    @Test
    void cropInIsCropAllottedAndCropLeftOut() throws IOException {
        try (SilageBook farm = farm(25)) {
            double all = 0;
            double out = 0;
            for (int row = 0; row < farm.table("crop").rows(); row++) {
                all += farm.number("crop", Crop.ENSILED, row);
                out += farm.number("crop", Keys.CLAMP_KEY, row) == 0 ? farm.number("crop", Crop.ENSILED, row) : 0;
            }
            double in =
                    farm.number("clamps", ClampContents.CROP_IN, 0) + farm.number("clamps", ClampContents.CROP_IN, 1);
            assertThat(all).isCloseTo(2300, within(1e-9));
            assertThat(in + out).isCloseTo(all, within(1e-9));
            assertThat(farm.masterCheck()).doesNotContain("CHECK");
            assertThat(farm.disagreements()).isEmpty();
        }
    }

    @Test
    void aHoldingWithoutClampsAndAFieldWithAWrongNameAreProposedNothing() throws IOException {
        try (SilageBook farm = farm(25)) {
            assertThat(farm.word("crop", PROPOSED, 5)).isEmpty();
            assertThat(farm.number("crop", Keys.CLAMP_KEY, 5)).isZero();
            assertThat(farm.word("crop", PROPOSED, 6)).isEmpty();
            assertThat(farm.number("crop", Keys.CLAMP_KEY, 6)).isZero();
        }
    }

    @Test
    void withoutATargetTheDryMatterOfTheCropDecidesAndNothingProposedOverfillsAClamp() throws IOException {
        try (SilageBook farm = farm(null)) {
            for (int clamp = 0; clamp < 2; clamp++) {
                assertThat(farm.number("clamps", ClampContents.FILL, clamp)).isBetween(90.0, 100.0);
                assertThat(farm.number("clamps", ClampContents.ROOM, clamp)).isNotNegative();
            }
        }
    }
}
