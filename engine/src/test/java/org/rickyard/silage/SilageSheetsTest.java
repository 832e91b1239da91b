package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.Parity;
import org.rickyard.testing.StoredValues;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;

/** A whole invented farm through the engine, into a file, and back through an evaluator that is not ours. */
class SilageSheetsTest {
    @TempDir
    Path folder;

    private SilageBook farm() {
        return new SilageBook(folder)
                .list(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Moor End", "Long Acre", "grass", 14.2, 25, "as carted fresh", 18, 28, "Big clamp"),
                        row("Moor End", "Home Field", "grass", 16.1, 22, "standing fresh", 18, 28, "Big clamp"),
                        row("Moor End", "Far Side", "maize", 9, 12, "dry matter", 28, 31, "Bay 2"),
                        row("Moor End", "Top", "grass", 6, 20, "standing fresh", 18, 28, null))
                .list(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Output (m3/h)",
                                "Output basis",
                                "Hours per day",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Mass (t)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Digger", "excavator", 12, "in ground", 9, null, null, null, 20, null, null, null),
                        row("Forager", "forager", null, null, 10, 6, 7, 70, null, null, null, null),
                        row("Trailer", "trailer", null, null, null, null, null, null, null, 11, 25, 32),
                        row("Packer", "clamp roller", null, null, null, null, null, null, 14, null, null, null))
                .list(
                        "Jobs",
                        row("Holding", "Job", "Field", "Operation", "Machine"),
                        row("Moor End", "First", "Home Field", "forage", "Forager; Trailer x 3"))
                .list("Assumptions", row("Item", "Value", "Unit"), row("use the packing model (1 yes, 0 no)", 1, null))
                .list(
                        "Clamps",
                        row(
                                "Holding",
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
                                "Crown shape",
                                "DM target (%)",
                                "Density, dry matter (kg DM/m3)",
                                "Roller mass (t)",
                                "Delivery (t/h)",
                                "Effluent tank",
                                "Tank holds (m3)",
                                "Distance to watercourse (m)",
                                "Country",
                                "Feed-out rate (m/week)",
                                "Feeding season",
                                "Soil",
                                "Additive (L/t)",
                                "Year built or enlarged",
                                "Overhead lines",
                                "Filled height (m)"),
                        row(
                                "Moor End",
                                "Big clamp",
                                "walled",
                                40,
                                12,
                                3,
                                2.6,
                                0.1,
                                1,
                                3,
                                0.4,
                                null,
                                null,
                                null,
                                14,
                                60,
                                "Low tank",
                                30,
                                45,
                                "England",
                                null,
                                "winter",
                                null,
                                3,
                                2004,
                                "no",
                                null),
                        row(
                                "Moor End",
                                "Bay 2",
                                "bunker",
                                30,
                                9,
                                2.4,
                                2.2,
                                null,
                                2,
                                4,
                                0.3,
                                "straight shouldered",
                                null,
                                235,
                                null,
                                40,
                                "Low tank",
                                null,
                                8,
                                "England",
                                2,
                                null,
                                null,
                                null,
                                1988,
                                "yes",
                                3.1),
                        row(
                                "Moor End",
                                "New pit",
                                "earth pit",
                                24,
                                6,
                                3,
                                null,
                                1,
                                null,
                                null,
                                null,
                                null,
                                25,
                                null,
                                null,
                                null,
                                12,
                                null,
                                60,
                                "Wales",
                                null,
                                "summer",
                                "clay",
                                null,
                                null,
                                null,
                                null),
                        row(
                                "Moor End",
                                "Slab",
                                "heap",
                                30,
                                14,
                                0,
                                2.5,
                                3,
                                null,
                                null,
                                null,
                                null,
                                30,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                "Northern Ireland",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null),
                        row(
                                "Moor End",
                                "Old heap",
                                "measured",
                                20,
                                8,
                                0,
                                1.9,
                                null,
                                null,
                                null,
                                null,
                                null,
                                22,
                                null,
                                null,
                                null,
                                40,
                                null,
                                30,
                                "Northern Ireland",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null),
                        row(
                                "Moor End",
                                "Field end",
                                "field heap",
                                25,
                                9,
                                0,
                                1.8,
                                2,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                "Ireland",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null))
                .list(
                        "Stocks",
                        row(
                                "Holding",
                                "Store",
                                "Kind",
                                "Amount (t)",
                                "Count",
                                "Weight each (kg)",
                                "DM (%)",
                                "Already fed (t)"),
                        row("Moor End", "Big clamp", "clamp", 60, null, null, 27, 20),
                        row("Moor End", "Bales", "bales", null, 120, 650, 38, null))
                .list(
                        "Herds",
                        row("Holding", "Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("Moor End", "Cows", 90, 11, 170, "Big clamp"),
                        row("Moor End", "Heifers", 40, 6, 160, "Bay 2"))
                .run();
    }

    @Test
    void everyCellOfTheFarmAgreesWithAnotherEvaluator() throws IOException {
        try (SilageBook farm = farm()) {
            assertThat(farm.disagreements()).isEmpty();
            assertThat(farm.masterCheck()).doesNotContain("CHECK");
        }
    }

    @Test
    void noFormulaOutgrowsACell() throws IOException {
        try (SilageBook farm = farm()) {
            assertThat(farm.longestFormula()).hasSizeLessThan(8192);
        }
    }

    @Test
    void everySheetOfSilageHasRows() throws IOException {
        try (SilageBook farm = farm()) {
            for (String sheet : SilageUnitsTest.SHEETS) {
                assertThat(farm.table(sheet).rows()).as(sheet).isPositive();
            }
        }
    }

    @Test
    void libreOfficeWorksOutWhatIsStoredAndTheValidatorFindsNothing() throws IOException {
        LibreOffice.required();
        try (SilageBook farm = farm()) {
            Path out = farm.write();
            Map<CellAddress, Object> stored = StoredValues.of(out);
            assertThat(stored).hasSizeGreaterThan(1500);
            assertThat(Parity.differences(stored, StoredValues.of(LibreOffice.recalculate(out)), cell -> 10))
                    .isEmpty();
            OoxmlValidator.required();
            assertThat(OoxmlValidator.errors(out)).isEmpty();
        }
    }

    /** Names are joined without their outer spaces, but stored as the grid's own link gives them. */
    @Test
    void namesWithOuterSpacesAreJoinedAndStoredAsTheyStand() throws IOException {
        try (SilageBook book = new SilageBook(folder)
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
                        row("Moor End ", " Low ", 10, 20, "as carted fresh", 28, "big\u00a0"))
                .list(
                        "Clamps",
                        row("Holding", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row(" Moor End", "Big ", "walled", 30, 10, 3))
                .list(
                        "Herds",
                        row("Holding", "Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("moor end", "Cows  ", 10, 11, 170, " BIG"))
                .run()) {
            assertThat(book.number("clamps", ClampContents.CROP_IN, 0)).isEqualTo(200);
            assertThat(book.table("clamp-feeding").rows()).isEqualTo(1);
            assertThat(book.word("clamps", Quantities.CLAMP, 0)).isEqualTo("Big ");
            assertThat(book.disagreements()).isEmpty();
            if (LibreOffice.present()) {
                Path out = book.write();
                assertThat(Parity.differences(
                                StoredValues.of(out), StoredValues.of(LibreOffice.recalculate(out)), cell -> 10))
                        .isEmpty();
            }
        }
    }
}
