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
import org.rickyard.trade.silage.Bales;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedOut;
import org.rickyard.trade.silage.FeedStock;
import org.rickyard.trade.silage.Losses;

/** Budgets that were printed, typed as a client would type them and run through the whole workbook. */
@Tag("published")
class PublishedFarmsTest {
    @TempDir
    Path folder;

    private SilageBook book() {
        return new SilageBook(folder);
    }

    /** agriland.co.uk 3 × 10 × 30 m and independent.ie 40 × 10 × 3 m at 25 %; Teagasc (E. Webb) 28 × 10 × 2.7 m ÷ 1.35. */
    @ParameterizedTest
    @CsvSource({"30, 10, 3, , 900, 612", "40, 10, 3, , 1200, 816", "28, 10, 2.7, 740.740740740741, 756, 560"})
    void clampsThatWereMeasuredHoldWhatWasPrinted(
            double length, double width, double height, Double density, double volume, double tonnes)
            throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Width (m)",
                                "Settled height (m)",
                                "DM target (%)",
                                "Density, fresh (kg/m3)"),
                        row("Printed", "measured", length, width, height, 25, density))
                .run()) {
            assertThat(book.number("clamps", ClampShape.VOLUME, 0)).isCloseTo(volume, within(1e-9));
            assertThat(book.number("clamps", ClampContents.CAPACITY, 0)).isCloseTo(tonnes, within(0.5));
            assertThat(book.word("clamps", ClampContents.DENSITY_FROM, 0))
                    .isEqualTo(density == null ? "table for grass, DAERA 2017" : "typed, fresh");
        }
    }

    /** Teagasc (E. Webb): 28 × 10 × 2.7 m of 1.35 m3 to the tonne are 560 t, however that is written. */
    @ParameterizedTest
    @CsvSource({
        "Density (m3/t), 1.35",
        "'Density, fresh (m3/t)', 1.35",
        "Cubic metres per tonne, 1.35",
        "Density (cu ft/tonne), 47.674852",
        "Density (ft3/long ton), 48.439878"
    })
    void whatATonneTakesUpIsADensity(String header, double typed) throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        row("Pit", "Kind", "Length (m)", "Width (m)", "Settled height (m)", header),
                        row("Printed", "measured", 28, 10, 2.7, typed),
                        row("Turned round by mistake", "measured", 28, 10, 2.7, 0.74))
                .run()) {
            assertThat(book.number("clamps", ClampContents.CAPACITY, 0)).isCloseTo(560, within(0.5));
            assertThat(book.word("clamps", ClampContents.DENSITY_FROM, 0)).isEqualTo("typed, space of a fresh tonne");
            assertThat(book.has("clamps", ClampContents.CAPACITY, 1)).isFalse();
        }
    }

    /** Farm press: stores of 655, 480, 110, 250 and 350 t are 1,845 t of silage; 550 bales at 0.9 t are 495 (Teagasc). */
    @Test
    void storesAddUpToTheStockThatWasPrinted() throws IOException {
        try (SilageBook book = book().list(
                        "Stocks",
                        row("Store", "Kind", "Amount (t)", "Count", "Weight each (kg)", "DM (%)"),
                        row("One", "clamp", 655, null, null, 25),
                        row("Two", "clamp", 480, null, null, 25),
                        row("Three", "bales", 110, null, null, 25),
                        row("Four", "clamp", 250, null, null, 25),
                        row("Five", "clamp", 350, null, null, 25),
                        row("Bales", "bales", null, 550, 900, 25))
                .run()) {
            double total = 0;
            for (int row = 0; row < 5; row++) {
                total += book.number("feed-stocks", FeedStock.IN_HAND, row);
            }
            assertThat(total).isCloseTo(1845, within(1e-9));
            assertThat(book.number("feed-stocks", FeedStock.IN_HAND, 5)).isCloseTo(495, within(1e-9));
        }
    }

    /**
     * MWPS dairy handbook, NPS-7: 15 % from harvest to storage, a further 10 % to the feed: 0.765 by the chain (derived),
     * and not the 0.75 of a sum.
     */
    @Test
    void lossesTypedOnAssumptionsAreChained() throws IOException {
        try (SilageBook book = book().list(
                        "Fields",
                        row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis"),
                        row("Low", 10, 10, "dry matter"))
                .list(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("field and harvest loss of dry matter", 15, "%"),
                        row("storage loss of dry matter", 10, "%"),
                        row("feed-out loss of dry matter", 0, "%"))
                .run()) {
            assertThat(book.number("crop", Losses.FED, 0))
                    .isCloseTo(76.5, within(1e-9))
                    .isNotCloseTo(75, within(1.0));
        }
    }

    /** LWK Niedersachsen: 3,600 m3 a year, half of it grass, 2.0 m a week, 2.50 m high: 17 m2 and 7 m, but build 8 m. */
    @Test
    void theFaceOfAHerdThatWasPrinted() throws IOException {
        double perDay = 1800 / 364.0 * 200;
        try (SilageBook book = book().list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "DM target (%)",
                                "Density, dry matter (kg DM/m3)",
                                "Feed-out rate (m/week)"),
                        row("Grass", "walled", 104, 7, 2.5, 30, 200, 2.0))
                .list(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("Cows and young stock", 240, perDay / 240, 364, "Grass"))
                .run()) {
            assertThat(book.number("clamp-feeding", FeedOut.PER_DAY, 0) * 7).isCloseTo(34.615, within(5e-4));
            assertThat(book.number("clamp-feeding", FeedOut.FACE_WANTED, 0)).isCloseTo(17.308, within(5e-4));
            assertThat(book.number("clamp-feeding", FeedOut.WIDTH_WANTED, 0)).isCloseTo(6.923, within(5e-4));
            assertThat(book.number("clamp-feeding", FeedOut.WIDTH_TO_BUILD, 0)).isEqualTo(8);
            // AG FuKo: 2.0 m a week all year are 104 m.
            assertThat(book.number("clamp-feeding", FeedOut.LENGTH_WANTED, 0)).isCloseTo(104, within(1e-9));
            assertThat(book.cautions("clamp-feeding", 0)).contains("narrower than 8 m");
        }
    }

    /** B. Holmes, Hay & Forage: 3,000 lb DM a day at 14 lb per ft3 are 214.3 ft3 a day; how wet it is, nobody asks. */
    @Test
    void whatADryMatterDensityTellsNeedsNoDryMatterContent() throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        row(
                                "Bunker silo",
                                "Type",
                                "Length (ft)",
                                "Width (ft)",
                                "Settled height (ft)",
                                "DM density (lb/ft3)"),
                        row("North", "walled", 100, 20, 8, 14))
                .list(
                        "Herds",
                        row("Group", "Head", "Daily DM (lb)", "Days", "Bunker"),
                        row("Cows", 100, 30, 180, "North"))
                .run()) {
            double cubicFoot = 0.028316846592;
            assertThat(book.number("clamp-feeding", FeedOut.PER_DAY, 0) / cubicFoot)
                    .isCloseTo(214.3, within(0.05));
            // 16,000 ft3 of 14 lb are 112 short tons.
            assertThat(book.number("clamps", ClampContents.CAPACITY_DM, 0)).isCloseTo(112 * 0.90718474, within(1e-9));
        }
    }

    /** Farmers Journal 216282: 900 bales at 220 kg hold 198 t of dry matter; here as what is over. */
    @Test
    void aSurplusIsCountedInBalesWithTheirDryMatterAndSpace() throws IOException {
        try (SilageBook book = book().list(
                        "Stocks", row("Store", "Kind", "Amount (t)", "DM (%)"), row("Stack", "clamp", 1000, 29.8))
                .list("Herds", row("Group", "Head", "Intake (kg DM/d)", "Days"), row("Cows", 100, 10, 100))
                .run()) {
            assertThat(book.number("feed-balance", FeedBalance.SURPLUS, 0)).isCloseTo(198, within(1e-9));
            assertThat(book.number("feed-balance", Bales.OF_SURPLUS, 0)).isEqualTo(900);
            // A cylinder of 1.25 × 1.20 m is 1.4726 m3.
            assertThat(book.number("feed-balance", Bales.SPACE_OF_SURPLUS, 0)).isCloseTo(900 * 1.4726, within(0.1));
        }
    }
}
