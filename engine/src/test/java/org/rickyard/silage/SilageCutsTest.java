package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.trade.Keys;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.Filling;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.Throughput;

/** Farms that cut more than once: what goes where, cut by cut, and what the gangs of each cut bring. */
class SilageCutsTest {
    private static final Object[] CUTS =
            row("Field", "Cut", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp");
    private static final Object[] CLAMPS =
            row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Density, fresh (kg/m3)");
    private static final Object[] JOBS = row("Job", "Field", "Operation", "Machine", "Cut", "Hours per day");

    @TempDir
    Path folder;

    private SilageBook machines() {
        return new SilageBook(folder)
                .list(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Number",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 1, 6, 7, 70, null, null, null),
                        row("Trailer", "trailer", 2, null, null, null, 10, 25, 32));
    }

    @Test
    void cutsBesideTheFieldAreNotReadAndThatIsToldWithWhatToDo() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "1st cut t DM/ha", "Cut 2 yield (t/ha)", "Notes of 2025"),
                        row("Low", "Grass", 10, 4, 14, null))
                .run()) {
            assertThat(book.findings())
                    .contains("CAUTION Fields!A1 what is told of single cuts beside the field is not read: 1st cut t"
                            + " DM/ha, Cut 2 yield (t/ha). Write it in a list Cuts, one row for each field and cut:"
                            + " Field, Cut, Yield, Yield basis, DM at ensiling, Clamp.");
        }
    }

    @Test
    void grainIsNoSilageUnlessItsClampOrItsDryMatterSaysSo() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("Low", "Grass", 10, 20, "as carted fresh", 28, "One"),
                        row("Grain", "Winter wheat", 8, 9, "as carted fresh", 85, null),
                        row("Roots", "Potatoes", 8, 45, "as carted fresh", null, null),
                        row("Whole", "Whole crop wheat", 6, 28, "as carted fresh", null, null),
                        row("Early", "Spring barley", 5, 25, "as carted fresh", 38, null),
                        row("Crimped", "Wheat", 4, 9, "as carted fresh", 70, "One"))
                .list("Clamps", CLAMPS, row("One", "walled", 60, 10, 3, 700))
                .run()) {
            assertThat(book.texts("Crop")).contains("Whole", "Early", "Crimped").doesNotContain("Grain", "Roots");
            assertThat(book.findings())
                    .anyMatch(
                            said -> said.contains("NOTE Fields!B3 the Winter wheat of 'Grain' is not taken for silage"))
                    .anyMatch(said -> said.contains("NOTE Fields!B4 the Potatoes of 'Roots' is not taken for silage"));
        }
    }

    @Test
    void cutsAreAllottedOneAfterAnother() throws IOException {
        // Listed second cut first. Each clamp holds 400 m3 at 700 kg/m3, 280 t; each cut brings 200 t.
        try (SilageBook book = new SilageBook(folder)
                .list("Fields", row("Field", "Area (ha)"), row("Low", 10), row("High", 10))
                .list(
                        "Cuts",
                        CUTS,
                        row("Low", 2, 20, "as carted fresh", 30, null),
                        row("High", 1, 20, "as carted fresh", 30, null),
                        row("Low", 1, 20, "as carted fresh", 30, null))
                .list("Clamps", CLAMPS, row("First", "walled", 20, 10, 2, 700), row("Second", "walled", 20, 10, 2, 700))
                .run()) {
            double[][] in = new double[3][3];
            for (int row = 0; row < book.table("crop").rows(); row++) {
                int cut = (int) book.number("crop", org.rickyard.trade.Quantities.CUT_NUMBER, row);
                int clamp = (int) book.number("crop", Keys.CLAMP_KEY, row);
                in[cut][clamp] += book.number("crop", Crop.ENSILED, row);
            }
            // The first cut fills the first clamp and begins the second; the second cut takes what is left.
            assertThat(in[1][1]).isCloseTo(280, within(1e-9));
            assertThat(in[1][2]).isCloseTo(120, within(1e-9));
            assertThat(in[2][2]).isCloseTo(160, within(1e-9));
            assertThat(in[2][0]).isCloseTo(40, within(1e-9));
        }
    }

    /** Equal dry matter at 20 and 40 % is 26.7 % together, for the wet one weighs twice as much; the mean is 30. */
    @Test
    void theMeanDryMatterIsWeightedByDryMatterAndNotTheMeanOfThePercentages() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Fields",
                        row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("Wet", 10, 6, "dry matter", 20, "Big"),
                        row("Dry", 10, 6, "dry matter", 40, "Big"))
                .list("Clamps", CLAMPS, row("Big", "walled", 40, 10, 2, 700))
                .run()) {
            // 60 t of dry matter each: 300 t at 20 % and 150 t at 40 %. 120 t in 450 t are 26.7 %, not 30 %.
            assertThat(book.number("clamps", ClampContents.CLAMP_DM, 0)).isCloseTo(100 * 120 / 450.0, within(1e-9));
            double harmonic = 120 / (60 / 20.0 + 60 / 40.0);
            assertThat(book.number("clamps", ClampContents.CLAMP_DM, 0)).isCloseTo(harmonic, within(1e-9));
        }
    }

    @Test
    void aGangMeetsTheCutItsJobNamesAndFillsThatCutsClamp() throws IOException {
        try (SilageBook book = machines()
                .list(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Distance to clamp (km)", "Yield (t/ha)", "Yield basis"),
                        row("Low", "grass", 10, 1, 99, "as carted fresh"))
                .list(
                        "Cuts",
                        CUTS,
                        row("Low", 1, 25, "as carted fresh", 28, "Big"),
                        row("Low", 2, 4, "dry matter", 32, "Bay"))
                .list("Clamps", CLAMPS, row("Bay", "walled", 20, 8, 2, 700), row("Big", "walled", 40, 10, 2, 700))
                .list(
                        "Jobs",
                        JOBS,
                        row("First cut", "Low", "forage", "Forager; Trailer x 2", 1, 8),
                        row("Second cut", "Low", "forage", "Forager; Trailer x 2", 2, 12))
                .run()) {
            assertThat(book.number("gang-crop", Throughput.YIELD_CARTED, 0)).isEqualTo(25);
            assertThat(book.number("gang-crop", Throughput.YIELD_CARTED, 1)).isCloseTo(12.5, within(1e-12));
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 0)).isEqualTo(2);
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 1)).isEqualTo(1);
            for (int cut = 0; cut < 2; cut++) {
                int clamp = cut == 0 ? 1 : 0;
                double hours = book.number("gangs", GangRates.GANG_HOURS, cut);
                assertThat(book.number("clamp-rolling", Filling.HOURS, clamp)).isCloseTo(hours, within(1e-9));
                assertThat(book.number("clamp-rolling", Filling.DAYS_OPEN, clamp))
                        .isCloseTo(hours / (cut == 0 ? 8 : 12), within(1e-9));
            }
            assertThat(book.findings()).noneMatch(said -> said.contains("which cut"));
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void aJobThatDoesNotSayWhichCutOrNamesOneThatIsNotListedIsAskedAtItsCell() throws IOException {
        try (SilageBook book = machines()
                .list("Fields", row("Field", "Crop", "Area (ha)", "Distance to clamp (km)"), row("Low", "grass", 10, 1))
                .list(
                        "Cuts",
                        CUTS,
                        row("Low", 1, 25, "as carted fresh", 28, "Big"),
                        row("Low", 2, 12, "as carted fresh", 32, "Big"))
                .list("Clamps", CLAMPS, row("Big", "walled", 40, 10, 2, 700))
                .list(
                        "Jobs",
                        JOBS,
                        row("Some cut", "Low", "forage", "Forager; Trailer x 2", null, null),
                        row("Third cut", "Low", "forage", "Forager; Trailer x 2", 3, null))
                .run()) {
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Jobs!A2 this job does not say which cut of 'Low' it brings in;"
                            + " the cut list has 1, 2. Expected one of them; write it in Cut."))
                    .anyMatch(said -> said.contains("Jobs!E3 cut 3 of 'Low' is not in the cut list, which has cut"
                            + " 1, 2. Expected one of them; write it in Cut."));
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 0)).isZero();
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 1)).isZero();
        }
    }

    @Test
    void aGangFillsTheClampThatIsProposedAndASplitIsSaid() throws IOException {
        try (SilageBook book = machines()
                .list(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)"),
                        row("Low", "grass", 10, 1, 20, "as carted fresh", 28),
                        row("High", "grass", 20, 1, 20, "as carted fresh", 28))
                .list("Clamps", CLAMPS, row("First", "walled", 20, 10, 2, 700), row("Second", "walled", 40, 10, 2, 700))
                .list(
                        "Jobs",
                        JOBS,
                        row("A", "Low", "forage", "Forager; Trailer x 2", null, null),
                        row("B", "High", "forage", "Forager; Trailer x 2", null, null))
                .run()) {
            // First holds 280 t: all 200 t of Low and 20 % of the 400 t of High; the rest goes to Second.
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 0)).isEqualTo(1);
            assertThat(book.number("gangs", Keys.CLAMP_KEY, 1)).isEqualTo(2);
            assertThat(book.findings())
                    .anyMatch(said -> said.contains("Jobs!D3 the crop of 'High' is split between 'First' and 'Second';"
                            + " its gang is reckoned with 'Second', which takes most."));
            double rate = 200 / book.number("gangs", GangRates.GANG_HOURS, 0);
            assertThat(book.number("clamp-rolling", Filling.DELIVERY_USED, 0)).isCloseTo(rate, within(1e-9));
            assertThat(book.number("clamp-rolling", Filling.HOURS, 0)).isCloseTo(280 / rate, within(1e-9));
            assertThat(book.disagreements()).isEmpty();
        }
    }
}
