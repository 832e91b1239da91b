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
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.Effluent;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.Packing;

/** What law and published limits say, at their edges, as stops and cautions beside the clamp they touch. */
class SilageRulesTest {
    private static final Object[] CLAMPS = row(
            "Clamp",
            "Kind",
            "Length (m)",
            "Floor width (m)",
            "Wall height (m)",
            "Settled height (m)",
            "Filled height (m)",
            "DM target (%)",
            "Effluent tank",
            "Tank holds (m3)",
            "Distance to watercourse (m)",
            "Country",
            "Batter",
            "Density, fresh (kg/m3)");

    @TempDir
    Path folder;

    private SilageBook clamps(Object[]... rows) {
        Object[][] all = new Object[rows.length + 1][];
        all[0] = CLAMPS;
        System.arraycopy(rows, 0, all, 1, rows.length);
        return new SilageBook(folder).list("Clamps", all).run();
    }

    /** A silo of a volume, as a measured body of 1 m2 section; long ones are stacked. */
    private static Object[] silo(String name, double volume, Object tank, Object holds, String country) {
        return row(name, "measured", volume / 20, 10, 0, 2, null, 25, tank, holds, 30, country, null, 680);
    }

    /** The steps of NISR 2019/81 sch. 7 para. 3 and SI 2010/1493 sch. 1 para. 3, from their text. */
    @Tag("derived")
    @ParameterizedTest
    @CsvSource({
        "400, 8.0, 9",
        "450, 9.0, 9",
        "451, 9.02, 12",
        "1050, 21.0, 21",
        "1499, 29.98, 30",
        "1500, 30.0, 30",
        "1501, 30.0067, 31",
        "1650, 31.005, 31",
        "2000, 33.35, 34",
        "3600, 44.07, 44"
    })
    void theLeastTankFollowsTheStepsOfEachLaw(double silo, double britain, double ulster) throws IOException {
        try (SilageBook book = clamps(
                silo("W", silo, null, null, "Wales"),
                silo("S", silo, null, null, "Scotland"),
                silo("E", silo, null, null, "England"),
                silo("N", silo, null, null, "NI"))) {
            for (int row = 0; row < 3; row++) {
                assertThat(book.number("clamp-effluent", EffluentTank.TANK_WANTED, row))
                        .isCloseTo(britain, within(1e-9));
            }
            assertThat(book.number("clamp-effluent", EffluentTank.TANK_WANTED, 3))
                    .isCloseTo(ulster, within(1e-9));
        }
    }

    @Test
    void whereNoRuleIsHeldTheDepartmentIsToBeAsked() throws IOException {
        try (SilageBook book = clamps(
                silo("I", 500, null, null, "Ireland"),
                silo("O", 500, null, null, "other"),
                silo("B", 500, null, null, null))) {
            for (int row = 0; row < 3; row++) {
                assertThat(book.has("clamp-effluent", EffluentTank.TANK_WANTED, row))
                        .isFalse();
                assertThat(book.status("clamp-effluent", row)).contains("ask the Department");
            }
            assertThat(book.word("clamp-effluent", EffluentTank.LAW, 0)).contains("GAP regulations");
            assertThat(book.word("clamp-effluent", EffluentTank.LAW, 1)).contains("no rule is held");
            assertThat(book.word("clamp-effluent", EffluentTank.LAW, 2)).contains("country missing");
        }
    }

    @Test
    void everyLawNamesItsYearAndAsksForTheCurrentOne() {
        for (var law : EffluentTank.LAWS.rows().subList(0, 4)) {
            assertThat(law.text()).containsPattern("(19|20)\\d\\d").contains("check the current law");
        }
    }

    @Test
    void silosThatShareATankAreReckonedSinglyAndTogether() throws IOException {
        try (SilageBook book = clamps(
                silo("One", 1000, "Low tank", null, "Wales"),
                silo("Two", 1000, "low TANK", 36, "Wales"),
                silo("Own", 400, 9, null, "Wales"))) {
            assertThat(book.table("effluent-tanks").rows()).isEqualTo(2);
            assertThat(book.number("effluent-tanks", EffluentTank.TANK_SINGLY, 0))
                    .isCloseTo(40, within(1e-9));
            assertThat(book.number("effluent-tanks", EffluentTank.TANK_TOGETHER, 0))
                    .isCloseTo(33.35, within(1e-9));
            assertThat(book.number("effluent-tanks", EffluentTank.TANK_LARGER, 0))
                    .isCloseTo(40, within(1e-9));
            assertThat(book.number("effluent-tanks", EffluentTank.SPARE, 0)).isCloseTo(-4, within(1e-9));
            assertThat(book.cautions("effluent-tanks", 0)).startsWith("STOP: the tank is smaller");
            assertThat(book.number("effluent-tanks", EffluentTank.SPARE, 1)).isCloseTo(1, within(1e-9));
            assertThat(book.cautions("effluent-tanks", 1)).isEmpty();
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void underTenMetresFromWaterIsAStopAndABlankIsNotFar() throws IOException {
        Object[] near = silo("Near", 400, null, null, "Wales");
        near[10] = 9.9;
        Object[] edge = silo("Edge", 400, null, null, "Wales");
        edge[10] = 10;
        Object[] blank = silo("Blank", 400, null, null, "Wales");
        blank[10] = null;
        try (SilageBook book = clamps(near, edge, blank)) {
            assertThat(book.cautions("clamp-effluent", 0)).contains("STOP: less than 10 m from water");
            assertThat(book.cautions("clamp-effluent", 1)).doesNotContain("from water");
            assertThat(book.cautions("clamp-effluent", 2)).contains("a blank does not mean that there is none");
        }
    }

    /** CAFRE's two points, 612 t: 91.8 m3 at 18 % and 15.3 m3 at 25 %; nothing is said below 18 %. */
    @Test
    void effluentIsReadOffThePublishedPointsAndNotBeyond() throws IOException {
        Object[] wet = silo("Wet", 900, null, null, "Wales");
        wet[7] = 18;
        Object[] between = silo("Between", 900, null, null, "Wales");
        between[7] = 24;
        Object[] dry = silo("Dry", 900, null, null, "Wales");
        Object[] wetter = silo("Wetter", 900, null, null, "Wales");
        wetter[7] = 17;
        try (SilageBook book = clamps(wet, between, dry, wetter)) {
            assertThat(book.number("clamp-effluent", Effluent.VOLUME, 0)).isCloseTo(91.8, within(0.05));
            assertThat(book.number("clamp-effluent", Effluent.VOLUME, 1)).isCloseTo(91.8, within(0.05));
            assertThat(book.number("clamp-effluent", Effluent.VOLUME, 2)).isCloseTo(15.3, within(0.05));
            assertThat(book.has("clamp-effluent", Effluent.VOLUME, 3)).isFalse();
            assertThat(book.number("clamp-effluent", Effluent.BY_CURVE, 3)).isPositive();
            assertThat(book.cautions("clamp-effluent", 0)).contains("wilt to at least 25 %");
        }
    }

    /** HSENI as reported by the Farmers Journal: 3.4 m behind a wall of 3.0 m fails in Northern Ireland. */
    @Tag("published")
    @Test
    void aWalledSiloIsNotFilledAboveItsWallInNorthernIreland() throws IOException {
        Object[] ulster = row("N", "walled", 30, 10, 3.0, 2.4, 3.4, 28, null, null, 30, "NI", null, null);
        Object[] wales = row("W", "walled", 30, 10, 3.0, 2.4, 3.4, 28, null, null, 30, "Wales", null, null);
        Object[] high = row("H", "walled", 30, 10, 1.5, 2.4, 3.1, 28, null, null, 30, "Wales", null, null);
        Object[] level = row("L", "walled", 30, 10, 3.4, 2.4, 3.4, 28, null, null, 30, "NI", null, null);
        try (SilageBook book = clamps(ulster, wales, high, level)) {
            assertThat(book.cautions("clamp-heights", 0)).contains("STOP: HSENI");
            assertThat(book.cautions("clamp-heights", 1))
                    .contains("check the wall's loading notice")
                    .doesNotContain("STOP");
            assertThat(book.cautions("clamp-heights", 2)).contains("STOP: on the day of filling");
            assertThat(book.cautions("clamp-heights", 3)).isEmpty();
            assertThat(book.number("clamp-heights", ClampHeights.HIGHEST, 0)).isEqualTo(3.0);
        }
    }

    /** Irish Farmers Journal: 1 m of settling if dry, 2 m if wet. */
    @Test
    void onTheDayOfFillingSilageStandsOneMetreHigherIfDryAndTwoIfWet() throws IOException {
        Object[] dry = row("D", "walled", 30, 10, 4, 2.4, null, 35, null, null, 30, "Wales", null, null);
        Object[] wet = row("W", "walled", 30, 10, 4, 2.4, null, 18, null, null, 30, "Wales", null, null);
        Object[] middle = row("M", "walled", 30, 10, 4, 2.4, null, 25, null, null, 30, "Wales", null, null);
        try (SilageBook book = clamps(dry, wet, middle)) {
            assertThat(book.number("clamp-heights", ClampHeights.HEIGHT_ON_DAY, 0))
                    .isCloseTo(3.4, within(1e-12));
            assertThat(book.number("clamp-heights", ClampHeights.HEIGHT_ON_DAY, 1))
                    .isCloseTo(4.4, within(1e-12));
            assertThat(book.number("clamp-heights", ClampHeights.HEIGHT_ON_DAY, 2))
                    .isCloseTo(3.9, within(1e-12));
        }
    }

    @Test
    void slopesSteeperThanTheReferenceAreCautioned() throws IOException {
        Object[] heap = row("Heap", "heap", 30, 14, 0, 2, null, 28, null, null, 30, "Wales", 2.5, null);
        Object[] flat = row("Flat", "heap", 30, 14, 0, 2, null, 28, null, null, 30, "Wales", 3, null);
        Object[] pit = row("Pit", "earth pit", 30, 8, 2, null, null, 28, null, null, 30, "Wales", 0.8, null);
        try (SilageBook book = clamps(heap, flat, pit)) {
            assertThat(book.cautions("clamp-heights", 0)).contains("steeper than 1 in 3");
            assertThat(book.cautions("clamp-heights", 1)).doesNotContain("steeper");
            assertThat(book.cautions("clamp-heights", 2)).contains("steeper than 45 degrees");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "England, STOP: new earth-banked pits have been barred",
        "Wales, STOP: new earth-banked pits have been barred",
        "NI, STOP: an unlined pit cannot comply here",
        "Scotland, STOP: an unlined pit cannot comply here",
        "Ireland, CAUTION: earth pit: no rule is held"
    })
    void theLawOnPitsStopsThePlanAndNotTheArithmetic(String country, String said) throws IOException {
        Object[] pit = row("Pit", "earth pit", 24, 6, 3, null, null, 28, null, null, 30, country, 1, null);
        try (SilageBook book = clamps(pit)) {
            assertThat(book.cautions("pit-digging", 0)).contains(said);
            assertThat(book.number("pit-digging", org.rickyard.trade.silage.Digging.IN_GROUND_VOLUME, 0))
                    .isCloseTo(738, within(1e-9));
        }
    }

    @Test
    void densitiesOfOthersAreARangeOnlyWhereMoreThanOneIsPublished() throws IOException {
        Object[] quarter = row("Q", "walled", 30, 10, 3, 3, 3, 25.3, null, null, 30, "Wales", null, null);
        Object[] dry = row("D", "walled", 30, 10, 3, 3, 3, 40, null, null, 30, "Wales", null, null);
        try (SilageBook book = clamps(quarter, dry)) {
            assertThat(book.word("clamp-density", Packing.OTHER_DENSITIES, 0)).startsWith("650-719");
            assertThat(book.word("clamp-density", Packing.OTHER_DENSITIES, 1)).isEqualTo("no published range");
        }
    }
}
