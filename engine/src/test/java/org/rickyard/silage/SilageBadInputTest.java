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
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedDemand;

/** What people mistype about silage, and whether they are told so kindly, with the cell. */
class SilageBadInputTest {
    private static final Object[] FIELDS = row(
            "Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at cutting (%)", "DM at ensiling (%)", "Clamp");
    private static final Object[] CLAMPS = row(
            "Clamp",
            "Kind",
            "Length (m)",
            "Floor width (m)",
            "Wall height (m)",
            "Settled height (m)",
            "Filled height (m)",
            "Ramps",
            "Ramp run",
            "DM target (%)",
            "Density, fresh (kg/m3)",
            "Density, dry matter (kg DM/m3)");
    private static final Object[] HERDS = row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp");

    @TempDir
    Path folder;

    private SilageBook book() {
        return new SilageBook(folder);
    }

    private static Object[] clamp(String name, Object... rest) {
        Object[] row = new Object[CLAMPS.length];
        row[0] = name;
        row[1] = "walled";
        System.arraycopy(rest, 0, row, 2, rest.length);
        return row;
    }

    @Test
    void aFractionWherePerCentIsMeantIsAskedBack() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "as carted fresh", 18, 0.28, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Fields!F2 DM at ensiling 0.28 % DM cannot be: expected above 5,"
                            + " below 95 % DM. If 28 % is meant, write 28."));
            assertThat(book.has("crop", Crop.CROP_DM, 0)).isFalse();
        }
    }

    /** Full height, an upright clamp 30 x 10 x 3 m: 30 m2 over 30 m less the ramp, and half of that under the ramp. */
    @ParameterizedTest
    @CsvSource({"1 in 4, 720", "4:1, 720", "45°, 855"})
    void aRampRunWrittenAsASlopeIsReadAsTheMetresAlong(String typed, double volume) throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3, 3, null, 1, typed, 25))
                .run()) {
            assertThat(book.number("clamps", ClampShape.VOLUME, 0)).isEqualTo(volume, within(1e-9));
            assertThat(book.has("clamps", ClampContents.CAPACITY, 0)).isTrue();
        }
    }

    /** Who does as he is asked in a cell that is formatted as text, as "1:5" may have been, is not told the same again. */
    @Test
    void aNumberStoredAsTextIsToBeTypedAgain() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3, 3, null, 1, "0.5", 25))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.endsWith("Clamps!I2 \"0.5\" is stored as text: type it again as a number."));
        }
    }

    @Test
    void aRampRunThatCouldRunEitherWayIsAsked() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3, 3, null, 1, "1:5", 25))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.endsWith("Clamps!I2 Which way does \"1:5\" run? Write metres along for each"
                            + " metre up, or 1 in 3 for 3 m along and 1 m up."));
            assertThat(book.has("clamps", ClampContents.CAPACITY, 0)).isFalse();
        }
    }

    @Test
    void gramsPerKilogramWherePerCentIsMeantAreAskedBack() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "as carted fresh", 18, 280, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Fields!F2 DM at ensiling 280 % DM cannot be: expected above 5,"
                            + " below 95 % DM. If it is grams per kilogram, write g/kg in the header."));
        }
    }

    @Test
    void aWallOfTenIsTakenButFeetAreSuspected() throws IOException {
        try (SilageBook book =
                book().list("Clamps", CLAMPS, clamp("Big", 100, 40, 10)).run()) {
            assertThat(book.cautions("clamp-heights", 0)).contains("if it was measured in feet, write ft");
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Clamps!E2 Wall height 10 m is unusual (usually from 0 up to"
                            + " 4.5 m). It is used as it is; check the value and its unit."));
            assertThat(book.number("clamps", ClampShape.VOLUME, 0)).isEqualTo(40_000);
        }
    }

    @Test
    void settledAboveFilledIsAStop() throws IOException {
        try (SilageBook book =
                book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3, 3.2, 2.8)).run()) {
            assertThat(book.cautions("clamp-heights", 0))
                    .contains("STOP: the settled height typed is above the filled");
            assertThat(book.findings())
                    .anyMatch(
                            said -> said.contains("STOP Clamps!F2 the settled height typed, 3.2 m, is above the filled"
                                    + " height typed, 2.8 m: silage only sinks, by 1 to 2 m. Expected a settled height below the"
                                    + " filled one; correct either."));
        }
    }

    @Test
    void aRampLongerThanTheClampIsWithheldAndSaid() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 10, 10, 3, null, null, 1, 4, 30))
                .run()) {
            assertThat(book.has("clamps", ClampShape.VOLUME, 0)).isFalse();
            assertThat(book.status("clamps", 0)).contains("the ramp is longer than the clamp");
            assertThat(book.findings())
                    .anyMatch(said ->
                            said.contains("STOP Clamps!I2 a ramp run of 4 at a silage height of 3 m makes a ramp"
                                    + " 12 m long, longer than the clamp's 10 m. Expected ramps within the length of the floor;"
                                    + " correct Ramp run, Ramps or Length."));
        }
    }

    @Test
    void twoRampsThatOverlapAreWithheldAndSaid() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 20, 10, 3, null, null, 2, 4, 30))
                .run()) {
            assertThat(book.has("clamps", ClampShape.VOLUME, 0)).isFalse();
            assertThat(book.status("clamps", 0))
                    .contains("the two ramps overlap")
                    .doesNotContain("the ramp is longer");
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("STOP Clamps!I2 a ramp run of 4 at a silage height of 3 m makes two"
                            + " ramps that overlap: together 24 m long, longer than the clamp's 20 m."));
        }
    }

    @Test
    void aHerdOfNothingIsSaidAndTheOthersAreStillReckoned() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .list("Herds", HERDS, row("Cows", 0, 11, 180, "Big"), row("Heifers", 20, 6, 180, "Big"))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Herds!B2 Head 0 cannot be: expected above 0"))
                    .anyMatch(said -> said.contains("Herds!B2") && said.contains("leave its row out"));
            assertThat(book.has("feed-demand", FeedDemand.GROUP_DEMAND, 0)).isFalse();
            assertThat(book.number("feed-demand", FeedDemand.GROUP_DEMAND, 1)).isEqualTo(21.6);
            assertThat(book.has("feed-balance", FeedBalance.DEMAND_TOTAL, 0)).isFalse();
        }
    }

    @Test
    void anIntakeOfFortyFiveIsSuspectedOfBeingFresh() throws IOException {
        try (SilageBook book = book().list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .list("Herds", HERDS, row("Cows", 20, 45, 180, "Big"))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(
                            said -> said.contains("STOP Herds!C2 an intake of 45 kg dry matter a day: no animal eats so"
                                    + " much; expected up to 30, usually under 18. If it is fresh feed, write kg fresh/day in the"
                                    + " header and the dry matter of the feed in DM."));
            assertThat(book.has("feed-demand", FeedDemand.GROUP_DEMAND, 0)).isFalse();
        }
    }

    @Test
    void aClampThatIsMissingIsNamedForFieldAndForHerd() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "as carted fresh", 18, 28, "Bigg"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .list("Herds", HERDS, row("Cows", 20, 11, 180, "Bigg"))
                .run()) {
            assertThat(book.stops())
                    .anyMatch(stop -> stop.message()
                                    .contains(
                                            "there is no clamp 'Bigg' in the clamp list; add it there or mend the name."
                                                    + " Did you mean 'Big'? This crop is allotted to none.")
                            && stop.cell().orElseThrow().toString().equals("Fields!G2"))
                    .anyMatch(stop -> stop.message().contains("counts for the farm, but for no clamp")
                            && stop.cell().orElseThrow().toString().equals("Herds!E2"));
            assertThat(book.number("feed-balance", FeedBalance.DEMAND_TOTAL, 0)).isEqualTo(39.6);
        }
    }

    @Test
    void withoutAListOfClampsThatIsSaidOnce() throws IOException {
        try (SilageBook book = book().list(
                        "Fields",
                        FIELDS,
                        row("Low", 5, 20, "as carted fresh", 18, 28, "Big"),
                        row("High", 4, 20, "as carted fresh", 18, 28, "Small"))
                .list("Herds", HERDS, row("Cows", 20, 11, 180, "Big"), row("Heifers", 20, 6, 180, "Small"))
                .run()) {
            String needs =
                    " It needs at least the headers Clamp, Kind, Length, Floor width and Wall height; a sheet whose"
                            + " headers come near to that is named among the findings.";
            assertThat(book.stops().stream().map(stop -> stop.cell().orElseThrow() + " " + stop.message()))
                    .filteredOn(stop -> stop.contains("clamp"))
                    .containsExactlyInAnyOrder(
                            "Fields!G2 this crop is for a clamp, but no list of clamps was found in this workbook, so no"
                                    + " crop is allotted to one." + needs,
                            "Herds!E2 this group is fed from a clamp, but no list of clamps was found in this workbook,"
                                    + " so no group counts for one." + needs);
            assertThat(book.number("feed-balance", FeedBalance.DEMAND_TOTAL, 0)).isPositive();
        }
    }

    @Test
    void aClampNamedTwiceOnOneHoldingIsSaidOnce() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "as carted fresh", 18, 28, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3), clamp(" BIG", 20, 10, 3), clamp("big", 25, 10, 3))
                .run()) {
            assertThat(book.findings())
                    .filteredOn(said -> said.contains("stands more than once"))
                    .singleElement()
                    .asString()
                    .contains("STOP Clamps!A3 the clamp 'BIG' stands more than once in the clamp list of one holding;"
                            + " give each its own name. Crop and stock that name it are allotted to none till then.");
            assertThat(book.number("clamps", ClampContents.CROP_IN, 0)).isZero();
        }
    }

    @Test
    void aFieldOfNoNamedHoldingIsAskedForItWhereTwoHaveAClampOfThatName() throws IOException {
        try (SilageBook book = book().list(
                        "Fields",
                        row("Farm", "Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("North", "Low", 5, 20, "as carted fresh", 28, "Big"),
                        row(null, "High", 5, 20, "as carted fresh", 28, "Big"))
                .list(
                        "Clamps",
                        row("Farm", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row("North", "Big", "walled", 30, 10, 3),
                        row("South", "Big", "walled", 30, 10, 3))
                .run()) {
            assertThat(book.findings())
                    .contains("STOP Fields!G3 more than one holding has a clamp 'Big', and this row names none: write"
                            + " its holding in the column Holding of every row. This crop is allotted to none.");
        }
    }

    @Test
    void noDefaultStandsInForAFormulaWithoutAStoredValue() throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM (%)", "kg DM/m3"),
                        row("Big", "walled", 30, 10, 3, 28, new SilageBook.NotCalculated("NOW()*0+210")),
                        row("Table", "walled", 30, 10, 3, 28, null))
                .run()) {
            assertThat(book.has("clamps", ClampContents.CAPACITY, 0)).isFalse();
            assertThat(book.has("clamps", ClampShape.VOLUME, 0)).isTrue();
            // Blank is another thing: then the table is the default, and said to be one.
            assertThat(book.number("clamps", ClampContents.CAPACITY, 1)).isEqualTo(900 * 0.632, within(1e-9));
            assertThat(book.findings())
                    .anyMatch(said -> said.startsWith("STOP Clamps!G2 The formula of this cell has no stored value."));
        }
    }

    @Test
    void aYieldWithoutBasisWithholdsTheCropAndItsClamp() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, null, 18, 28, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .run()) {
            assertThat(book.has("crop", Crop.ENSILED, 0)).isFalse();
            assertThat(book.status("crop", 0)).contains("no yield with its basis");
            assertThat(book.findings())
                    .anyMatch(
                            said -> said.contains("STOP Fields!C2 a yield of 20 t/ha stands without its basis. Expected"
                                    + " standing fresh, as carted fresh or dry matter; write it in Yield basis."));
            assertThat(book.has("clamps", ClampContents.CROP_IN, 0)).isFalse();
            assertThat(book.has("clamps", ClampShape.VOLUME, 0)).isTrue();
        }
    }

    @Test
    void densitiesThatDoNotBelongTogetherAreSaid() throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        CLAMPS,
                        clamp("Apart", 30, 10, 3, null, null, null, null, 30, 700, 204),
                        clamp("Near", 30, 10, 3, null, null, null, null, 30, 700, 207))
                .run()) {
            assertThat(book.cautions("clamps", 0)).contains("do not belong together");
            assertThat(book.cautions("clamps", 1)).doesNotContain("do not belong together");
        }
    }

    /** Farmers Journal 692751 (press) printed 750 kg/m3 of dry matter or 250 fresh: swapped. */
    @Test
    void thePrintedSwapOfDensitiesIsRefused() throws IOException {
        try (SilageBook book = book().list(
                        "Clamps", CLAMPS, clamp("Swapped", 30, 10, 3, null, null, null, null, 30, null, 750))
                .run()) {
            assertThat(book.has("clamps", ClampContents.DENSITY, 0)).isFalse();
            assertThat(book.findings()).anyMatch(said -> said.contains("Clamps!L2") && said.contains("cannot be"));
        }
    }

    @Test
    void cropThatGrowsWetterFromCuttingToEnsilingIsAStop() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "standing fresh", 28, 18, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said ->
                            said.contains("STOP Fields!F2 dry matter at ensiling, 18 % DM, is below dry matter at"
                                    + " cutting, 28 % DM: crop dries as it lies."));
            assertThat(book.cautions("crop", 0)).contains("STOP: wetter at ensiling than at cutting");
        }
    }

    @Test
    void cropThatDriesIsNoSlip() throws IOException {
        try (SilageBook book = book().list("Fields", FIELDS, row("Low", 5, 20, "standing fresh", 18, 28, "Big"))
                .list("Clamps", CLAMPS, clamp("Big", 30, 10, 3, 2.8, 3.6, 2, 4, 30))
                .run()) {
            assertThat(book.findings()).noneMatch(said -> said.contains("crop dries as it lies"));
            assertThat(book.findings()).noneMatch(said -> said.contains("silage only sinks"));
            assertThat(book.findings()).noneMatch(said -> said.contains("longer than the clamp"));
            assertThat(book.findings()).noneMatch(said -> said.contains("without its basis"));
        }
    }

    /** Twenty-six per cent is stored as 0.26 where the cell shows it with its sign. */
    @Test
    void dryMatterShownInPerCentIsHeldAgainstDryMatterThatIsNot() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        SeasonBook.row(
                                "Field",
                                "Area (ha)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)"),
                        SeasonBook.row("Low", 5, 20, "standing fresh", 18, new SeasonBook.Shown(0.26, "0%")),
                        SeasonBook.row("High", 5, 20, "standing fresh", new SeasonBook.Shown(0.26, "0%"), 18))
                .sheet(
                        "Machines",
                        SeasonBook.row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        SeasonBook.row("Mower", "mower", 3, 10))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().startsWith("dry matter at ensiling"))
                .extracting(finding -> finding.cell().map(Object::toString).orElse(""))
                .containsExactly("Fields!F3");
    }

    /** 14 ft × 0.3048 = 4.2672 m and 12 ft × 0.3048 = 3.6576 m, by the definition of the foot. */
    @Test
    void whatIsTypedInAnotherUnitIsToldInBoth() throws IOException {
        try (SilageBook book = book().list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (ft)",
                                "Floor width (ft)",
                                "Wall height (ft)",
                                "Settled height (ft)"),
                        row("Main", "walled", 160, 50, 12, 14))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("silage above the wall")
                            && said.contains("Here silage height is 4.267 m (Clamps!F2), wall height is 12 ft = 3.658 m"
                                    + " (Clamps!E2)."));
        }
    }
}
