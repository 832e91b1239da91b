package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.FeedOut;
import org.rickyard.trade.silage.FeedStock;

/** Cautions beside what they touch, each just where it begins and just where it does not; and those of whole sheets. */
class SilageCautionsTest {
    private static final Object[] HEADERS = row(
            "Clamp",
            "Kind",
            "Length (m)",
            "Floor width (m)",
            "Wall height (m)",
            "Settled height (m)",
            "Batter",
            "Ramps",
            "Ramp run",
            "Crown (m)",
            "DM target (%)",
            "Distance to watercourse (m)",
            "Country",
            "Year built or enlarged",
            "Overhead lines",
            "Roller mass (t)",
            "Delivery (t/h)",
            "Layer (cm)",
            "Additive (L/t)",
            "Density, fresh (kg/m3)");

    @TempDir
    Path folder;

    /** A clamp 40 × 10 m behind walls of 3 m, with some of its cells typed otherwise. */
    private static Object[] clamp(String name, Object... headerAndValue) {
        Object[] cells = new Object[HEADERS.length];
        cells[0] = name;
        set(cells, "Kind", "walled", "Length (m)", 40, "Floor width (m)", 10, "Wall height (m)", 3);
        set(cells, "Settled height (m)", 2, "DM target (%)", 30, "Country", "Wales");
        set(cells, "Distance to watercourse (m)", 80);
        set(cells, headerAndValue);
        return cells;
    }

    private static void set(Object[] cells, Object... headerAndValue) {
        for (int i = 0; i < headerAndValue.length; i += 2) {
            int column = java.util.Arrays.asList(HEADERS).indexOf(headerAndValue[i]);
            assertThat(column).as("%s", headerAndValue[i]).isNotNegative();
            cells[column] = headerAndValue[i + 1];
        }
    }

    private SilageBook book(Object[]... clamps) {
        Object[][] all = new Object[clamps.length + 1][];
        all[0] = HEADERS;
        System.arraycopy(clamps, 0, all, 1, clamps.length);
        return new SilageBook(folder).list("Clamps", all);
    }

    @Test
    void aHeapWhoseSidesMeetEndsInARidgeAndIsSaid() throws IOException {
        try (SilageBook book = book(
                        clamp("Ridge", "Kind", "heap", "Batter", 3, "Settled height (m)", 1.7),
                        clamp("Flat", "Kind", "heap", "Batter", 3, "Settled height (m)", 1.6),
                        clamp("In the field", "Kind", "field heap", "Batter", 3, "Settled height (m)", 2))
                .run()) {
            assertThat(book.number("clamps", ClampShape.HEAP_HEIGHT, 0)).isCloseTo(5 / 3.0, within(1e-12));
            assertThat(book.cautions("clamp-heights", 0))
                    .contains("the sides of this heap meet below the height typed");
            assertThat(book.cautions("clamp-heights", 1)).doesNotContain("meet");
            assertThat(book.cautions("clamp-heights", 2))
                    .contains("the sides of this heap meet below the height typed");
        }
    }

    @Test
    void rampsSteeperThanTheReferenceAreCautioned() throws IOException {
        try (SilageBook book = book(
                        clamp("Steep", "Ramps", 1, "Ramp run", 2.9),
                        clamp("Edge", "Ramps", 1, "Ramp run", 3),
                        clamp("None", "Ramp run", 2))
                .run()) {
            assertThat(book.cautions("clamp-heights", 0)).contains("ramp steeper than 1 in 3");
            assertThat(book.cautions("clamp-heights", 1)).doesNotContain("ramp");
            assertThat(book.cautions("clamp-heights", 2)).doesNotContain("ramp");
        }
    }

    @Test
    void silageAboveTheReachOfAnUnloaderAndLinesOverheadAreCautioned() throws IOException {
        // At 30 % dry matter the silage stands 1 m higher on the day than settled; the reach is 3.66 m.
        try (SilageBook book = book(
                        clamp("High", "Wall height (m)", 4, "Settled height (m)", 2.67),
                        clamp("Low", "Wall height (m)", 4, "Settled height (m)", 2.65),
                        clamp("Crowned", "Wall height (m)", 4, "Settled height (m)", 2.65, "Crown (m)", 0.1),
                        clamp("Lines", "Overhead lines", "yes"),
                        clamp("No lines", "Overhead lines", "no"))
                .run()) {
            assertThat(book.cautions("clamp-heights", 0)).contains("12 ft, 3.7 m");
            assertThat(book.cautions("clamp-heights", 1)).doesNotContain("12 ft");
            assertThat(book.cautions("clamp-heights", 2)).contains("12 ft, 3.7 m");
            assertThat(book.cautions("clamp-heights", 3)).contains("network operator");
            assertThat(book.cautions("clamp-heights", 4)).doesNotContain("network operator");
        }
    }

    /**
     * HSENI: never above the wall; HSA and FCI: at most twice the wall. The crown is silage too: 2.8 m on the day with a
     * crown of 0.4 m stands 3.2 m high.
     */
    @Test
    void aCrownAboveTheWallIsAboveTheWall() throws IOException {
        // At 30 % dry matter the silage stands 1 m higher on the day than settled.
        try (SilageBook book = book(
                        clamp("N", "Country", "Northern Ireland", "Settled height (m)", 1.8, "Crown (m)", 0.4),
                        clamp("W", "Settled height (m)", 1.8, "Crown (m)", 0.4),
                        clamp("Level", "Country", "Northern Ireland", "Settled height (m)", 1.8, "Crown (m)", 0.2),
                        clamp("Twice", "Wall height (m)", 1.5, "Settled height (m)", 1.9, "Crown (m)", 0.2),
                        // 1.7 + 1 + 0.6 is a hair over 3.3 in binary.
                        clamp("Hair", "Wall height (m)", 3.3, "Settled height (m)", 1.7, "Crown (m)", 0.6))
                .run()) {
            assertThat(book.cautions("clamp-heights", 0)).contains("STOP: HSENI");
            assertThat(book.cautions("clamp-heights", 1))
                    .contains("check the wall's loading notice")
                    .doesNotContain("STOP");
            assertThat(book.cautions("clamp-heights", 2)).isEmpty();
            assertThat(book.cautions("clamp-heights", 3)).contains("STOP: on the day of filling");
            assertThat(book.cautions("clamp-heights", 4)).doesNotContain("above the wall");
        }
    }

    /** Where no dry matter is known, nor by how much it settles, settled silage above its wall is still above its wall. */
    @Test
    void aSettledCrownAboveTheWallIsToldWithoutTheDryMatter() throws IOException {
        try (SilageBook book = book(
                        clamp("Crown", "DM target (%)", null, "Settled height (m)", 2.8, "Crown (m)", 0.5),
                        clamp("Level", "DM target (%)", null, "Settled height (m)", 2.5, "Crown (m)", 0.5),
                        clamp("Bare", "DM target (%)", null, "Settled height (m)", 2.8),
                        clamp("Twice", "Wall height (m)", 1.5, "Settled height (m)", 2.8, "Crown (m)", 0.5))
                .run()) {
            assertThat(book.has("clamp-heights", ClampHeights.TOP_ON_DAY, 0)).isFalse();
            assertThat(book.cautions("clamps", 0))
                    .contains("silage above the wall: check the wall's loading notice")
                    .doesNotContain("STOP");
            assertThat(book.cautions("clamps", 1)).doesNotContain("above the wall");
            assertThat(book.cautions("clamps", 2)).doesNotContain("above the wall");
            assertThat(book.cautions("clamps", 3)).contains("STOP: silage above twice the wall height");
        }
    }

    /** DAFM S128 as reported: 50 m on new yards in Ireland, 10 m for extensions; 10 m in Great Britain. */
    @ParameterizedTest
    @CsvSource({"9.9, true, true", "10, false, true", "49.9, false, true", "50, false, false"})
    void irelandAsksMoreDistanceFromWaterThanWales(double metres, boolean stop, boolean ask) throws IOException {
        try (SilageBook book = book(
                        clamp("I", "Country", "Ireland", "Distance to watercourse (m)", metres),
                        clamp("W", "Country", "Wales", "Distance to watercourse (m)", metres))
                .run()) {
            for (int row = 0; row < 2; row++) {
                assertThat(book.cautions("clamp-effluent", row).contains("STOP: less than 10 m from water"))
                        .isEqualTo(stop);
            }
            assertThat(book.cautions("clamp-effluent", 0).contains("Ireland asks 50 m from water of new yards"))
                    .isEqualTo(ask);
            assertThat(book.cautions("clamp-effluent", 1)).doesNotContain("50 m");
        }
    }

    @Test
    void fieldSilageIsToBeNotifiedAndOldSilosMayBeExempt() throws IOException {
        try (SilageBook book = book(
                        clamp("Field", "Kind", "field heap", "Batter", 3, "Settled height (m)", 1),
                        clamp("Heap", "Kind", "heap", "Batter", 3, "Settled height (m)", 1),
                        clamp("Old", "Year built or enlarged", 1990),
                        clamp("New", "Year built or enlarged", 1992),
                        // Exempt is what was built before March 1991.
                        clamp("Between", "Year built or enlarged", 1991))
                .run()) {
            assertThat(book.cautions("clamp-effluent", 0))
                    .contains("14 days' notice")
                    .contains("50 m from a protected supply");
            assertThat(book.cautions("clamp-effluent", 1)).doesNotContain("notice");
            assertThat(book.cautions("clamp-effluent", 2))
                    .contains("built in 1991 or before")
                    .contains("before March 1991")
                    .contains("Scotland");
            assertThat(book.cautions("clamp-effluent", 3)).doesNotContain("1991");
            assertThat(book.cautions("clamp-effluent", 4)).contains("built in 1991 or before");
        }
    }

    @Test
    void aThickLayerAndMoreCropThanTheRollersTakeAreCautioned() throws IOException {
        try (SilageBook book = book(
                        clamp("Thick", "Roller mass (t)", 15, "Delivery (t/h)", 60.1, "Layer (cm)", 31),
                        clamp("Thin", "Roller mass (t)", 15, "Delivery (t/h)", 60, "Layer (cm)", 30))
                .run()) {
            assertThat(book.cautions("clamp-rolling", 0))
                    .contains("layer thicker than 30 cm")
                    .contains("more crop arrives than the rolling weight takes");
            assertThat(book.cautions("clamp-rolling", 1)).isEmpty();
        }
    }

    @Test
    void anAdditiveRateOutsideTheUsualIsAskedAbout() throws IOException {
        try (SilageBook book = book(
                        clamp("Much", "Additive (L/t)", 8.1),
                        clamp("Little", "Additive (L/t)", 0.4),
                        clamp("Usual", "Additive (L/t)", 8))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Clamps!S2 Additive 8.1 L/t is unusual (usually from 0.5 up to 8"))
                    .anyMatch(said -> said.contains("Clamps!S3 Additive 0.4 L/t is unusual"))
                    .noneMatch(said -> said.contains("Clamps!S4"));
        }
    }

    /** LWK Niedersachsen: 8 m for two machines side by side; a face that is too wide moves too slowly. */
    @Test
    void twoMachinesWantEightMetresAndTheWidthToBuildIsNeverLess() throws IOException {
        try (SilageBook book = book(
                        clamp("Narrow", "Floor width (m)", 7.9),
                        clamp("Edge", "Floor width (m)", 8),
                        clamp("Wide", "Floor width (m)", 30))
                .list(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("A", 60, 10, 180, "Narrow"),
                        row("B", 60, 10, 180, "Edge"),
                        row("C", 60, 10, 180, "Wide"))
                .run()) {
            assertThat(book.cautions("clamp-feeding", 0)).contains("narrower than 8 m");
            assertThat(book.cautions("clamp-feeding", 1)).doesNotContain("narrower");
            assertThat(book.cautions("clamp-feeding", 2))
                    .doesNotContain("narrower")
                    .contains("less than 10 cm (4 in) a day");
            assertThat(book.has("clamp-feeding", FeedOut.WIDTH_WANTED, 0)).isFalse();
        }
        Object[] seasonless = clamp("Small herd");
        Object[] headers = java.util.Arrays.copyOf(HEADERS, HEADERS.length + 1);
        headers[HEADERS.length] = "Feeding season";
        Object[] winter = java.util.Arrays.copyOf(seasonless, HEADERS.length + 1);
        winter[HEADERS.length] = "winter";
        try (SilageBook book = new SilageBook(folder)
                .list("Clamps", headers, winter)
                .list(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("Few", 30, 10, 180, "Small herd"))
                .run()) {
            double wanted = book.number("clamp-feeding", FeedOut.WIDTH_WANTED, 0);
            assertThat(wanted).isCloseTo(30 * 10 / 180.0 * 7 / 1.5 / 2, within(1e-9));
            assertThat(book.number("clamp-feeding", FeedOut.WIDTH_TO_BUILD, 0)).isEqualTo(8);
        }
    }

    @Test
    void anOverfullClampIsSaidAndAnUnderfullOneShowsItsRoom() throws IOException {
        Object[] full = clamp("Over", "Density, fresh (kg/m3)", 700);
        Object[] part = clamp("Under", "Density, fresh (kg/m3)", 700);
        // 40 × 10 × 2 m at 700 kg/m3 hold 560 t.
        try (SilageBook book = book(full, part)
                .list(
                        "Fields",
                        row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("A", 28.1, 20, "as carted fresh", 30, "Over"),
                        row("B", 14, 20, "as carted fresh", 30, "Under"))
                .run()) {
            assertThat(book.number("clamps", ClampContents.ROOM, 0)).isCloseTo(-2, within(1e-9));
            assertThat(book.cautions("clamps", 0)).contains("more crop is allotted than the clamp holds");
            assertThat(book.number("clamps", ClampContents.ROOM, 1)).isCloseTo(280, within(1e-9));
            assertThat(book.number("clamps", ClampContents.FILL, 1)).isCloseTo(50, within(1e-9));
            assertThat(book.cautions("clamps", 1)).isEmpty();
        }
    }

    /** Everything that can hurt stands on the sheet whose figures lead to it, and each defers to those who decide. */
    @Test
    void theDangersStandOnTheSheetsTheyBelongTo() throws IOException {
        try (SilageBook book = book(
                        clamp("Big", "Additive (L/t)", 3, "Roller mass (t)", 15, "Delivery (t/h)", 50),
                        clamp("Pit", "Kind", "earth pit", "Batter", 1))
                .list(
                        "Fields",
                        row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("A", 14, 20, "as carted fresh", 30, "Big"))
                .list("Herds", row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"), row("A", 60, 10, 180, "Big"))
                .run()) {
            on(book, "Clamp heights", "loading notice", "5.2 m", "network operator", "three tyre widths", "undercut");
            on(
                    book,
                    "Clamp rolling",
                    "overturn",
                    "children and bystanders",
                    "loading notice",
                    "soft or sloping",
                    "the road");
            on(book, "Clamp covering", "21 and 28-42 days", "falls from the edge", "Nobody under the sheet");
            on(book, "Clamp additive", "Acids", "label");
            on(book, "Clamp effluent", "hydrogen sulphide", "never enter", "current law", "regulator");
            on(book, "Pit digging", "buried services", "at least the depth", "engineer", "fence the edge", "regulator");
            on(book, "Feed balance", "face", "children", "nutritionist");
            on(book, "Bales", "10 m of water", "20 m from water", "two high", "chock", "current law");
            on(
                    book,
                    "Basis",
                    "WSI 2021/77 (2021",
                    "NISR 2019/81 (2019)",
                    "SSI 2021/412",
                    "SI 2010/639 (2010",
                    "check the");
            on(book, "Clamp capacity", "1-2 m higher", "carbon dioxide", "slurry store", "regulator");
        }
    }

    private static void on(SilageBook book, String sheet, String... dangers) {
        assertThat(String.join(" ", book.texts(sheet))).as(sheet).contains(dangers);
    }

    /** 100 bales of 600 kg are 60 t; a tenth of what was typed is let pass. */
    @ParameterizedTest
    @CsvSource({"66, false", "67, true", "55, false", "54, true"})
    void anAmountThatIsNotWhatWasCountedAndWeighed(double tonnes, boolean said) throws IOException {
        try (SilageBook book = book(clamp("Main"))
                .list(
                        "Stocks",
                        row("Store", "Kind", "Amount (t)", "Count", "Weight each (kg)", "DM (%)"),
                        row("Stack", "bales", tonnes, 100, 600, 40))
                .run()) {
            String caution = "count × weight each is not the amount typed";
            assertThat(book.cautions("feed-stocks", 0).contains(caution)).isEqualTo(said);
            assertThat(book.number("feed-stocks", FeedStock.IN_HAND, 0)).isEqualTo(tonnes, within(1e-9));
            assertThat(book.findings().stream().filter(finding -> finding.contains(caution)))
                    .hasSize(said ? 1 : 0);
            assertThat(book.disagreements()).isEmpty();
        }
    }

    /** 40 × 10 × 2 m at 600 kg/m3 are 480 t. */
    @ParameterizedTest
    @CsvSource({"Main, 479, false", "Main, 481, true", "Stack, 481, false"})
    void moreInStoreThanItsClampHolds(String store, double tonnes, boolean said) throws IOException {
        try (SilageBook book = book(clamp("Main", "Density, fresh (kg/m3)", 600, "Batter", 0))
                .list("Stocks", row("Store", "Kind", "Amount (t)", "DM (%)"), row(store, "clamp", tonnes, 30))
                .run()) {
            String caution = "more is in store than this clamp holds";
            assertThat(book.number("clamps", ClampContents.CAPACITY, 0)).isEqualTo(480, within(1e-9));
            assertThat(book.status("feed-stocks", 0)).isEqualTo("ok");
            assertThat(book.cautions("feed-stocks", 0).contains(caution)).isEqualTo(said);
            assertThat(book.findings().stream().filter(finding -> finding.contains(caution)))
                    .hasSize(said ? 1 : 0)
                    .allMatch(finding -> finding.matches(
                            ".*Here in store \\(fresh\\) is 481 t \\(Stocks!C2\\), clamp capacity \\(fresh\\) is 480 t"
                                    + " \\('Clamp capacity'![A-Z]+[0-9]+\\)\\."));
            assertThat(book.disagreements()).isEmpty();
        }
    }
}
