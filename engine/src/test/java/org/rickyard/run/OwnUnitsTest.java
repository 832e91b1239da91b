package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.run.FarmsOfOwnUnits.american;
import static org.rickyard.run.FarmsOfOwnUnits.british;
import static org.rickyard.run.FarmsOfOwnUnits.farm;
import static org.rickyard.run.FarmsOfOwnUnits.group;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.audit.ExplanationText;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.JsonText;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.workbook.open.BookPackage;

/**
 * A farm is answered in the units it asked in, beside ours; one that measures as we do sees nothing of it. What the
 * invented farms must be answered is sums in their own units, in which nothing is converted at all: 20 acres at 10 gallons
 * an acre are 200 gallons.
 */
class OwnUnitsTest {
    private static final String IN_YOUR_UNITS = "In your units";

    @TempDir
    private Path folder;

    private static Object[] row(Object... cells) {
        return cells;
    }

    private Runs.Run run(ClientBook book) {
        try (book) {
            return Runs.run(book.save(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void answers(Runs.Run run, String id, String about, double number, String unit) {
        Result.Own own = run.result(id, about).own().orElseThrow(() -> new AssertionError(id + " in our unit only"));
        assertThat(own.unit()).as(id).isEqualTo(unit);
        assertThat(own.number()).as(id).isCloseTo(number, within(1e-9 * number));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UK", "US"})
    @Tag("derived")
    void aFarmIsAnsweredInItsOwnUnits(String country) {
        boolean uk = country.equals("UK");
        Runs.Run run = run(uk ? british() : american());
        String gallon = "gal(" + country + ")";
        String ton = uk ? "long ton" : "short ton";
        answers(run, "total-spray-mix", "T1", 200, gallon);
        answers(run, "part-tankful", "T1", 80, gallon);
        answers(run, "area-per-tankful", "T1", 12, "ac");
        answers(run, "product-total", "Weedkiller", 40, "pt(" + country + ")");
        answers(run, "machine-area", "Mower", 15, "ac");
        answers(run, "crop-ensiled", "Long Ley", 135, ton);
        assertThat(run.result("full-tankfuls", "T1").own()).isEmpty();
        assertThat(run.result("hours", "Cut").own()).isEmpty();
        Map<String, List<Object>> summary = summary(run);
        assertThat(summary.get("total spray mix").subList(2, 4)).containsExactly(200.0, gallon);
        assertThat(summary.get("part tankful").subList(2, 4)).containsExactly(80.0, gallon);
        assertThat(summary.get("product total").subList(2, 4)).containsExactly(40.0, "pt(" + country + ")");
        assertThat(summary.get("full tankfuls").subList(2, 4)).containsExactly("", "");
        assertThat(summary.get("clamp capacity (fresh)").get(3)).isEqualTo(ton);
        assertThat(columns(run, " in "))
                .containsExactlyInAnyOrder(
                        "Work rate in ac/h",
                        "Area worked in ac",
                        "Total spray mix in " + gallon,
                        "Area per tankful in ac",
                        "Part tankful in " + gallon,
                        "Even tankful in " + gallon,
                        "Nozzle output in " + gallon + "/min",
                        "Crop ensiled (fresh) in " + ton,
                        "Clamp volume in ft3",
                        "Clamp capacity (fresh) in " + ton,
                        "Crop in clamp (fresh) in " + ton,
                        "Room left (fresh; overfull if below 0) in " + ton,
                        "Filled height on the day in ft",
                        "Do-not-exceed height in ft");
    }

    /** 20 acres, of which a full tank sprays 12. */
    @Test
    @Tag("derived")
    void theCardTellsTheLandOfEachTankfulInAcresToo() throws IOException {
        Runs.Run run = run(american());
        try (ClientBook book = ClientBook.open(run.file())) {
            List<Object> acres = new ArrayList<>();
            int column = -1;
            for (Row line : book.poi().getSheet("Spray cards")) {
                if (line.getCell(0) != null && shown(line.getCell(0)).equals("Tankful by tankful")) {
                    column = line.getLastCellNum() - 1;
                    assertThat(shown(line.getCell(column))).isEqualTo("Area, ac");
                    assertThat(shown(line.getCell(column - 1))).isEqualTo("Spray, gal(US)");
                } else if (column >= 0 && line.getCell(column) != null) {
                    acres.add(shown(line.getCell(column)));
                }
            }
            assertThat(acres).containsExactly(12.0, 8.0);
        }
    }

    /** 9.2 ha × 35 m³/ha + 5.5 ha × 25 m³/ha = 459.5 m³; 12.4 ha × 20 t/ha = 248 t. */
    @Test
    @Tag("derived")
    void slurryAndMuckAreNeededInTheUnitsTheyAreSpreadBy() {
        Runs.Run run = run(ClientBook.create()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Flat", "grass", 9.2),
                        row("Bank", "grass", 5.5),
                        row("Stubble", "barley", 12.4))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Tanker", "slurry tanker", 9, 6),
                        row("Spreader", "muck spreader", 8, 7),
                        row("Disc spreader", "fertiliser spreader", 24, 12))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose"),
                        row("Flat", "slurry spreading", "Tanker", "Slurry", "35 m3/ha"),
                        row("Bank", "slurry spreading", "Tanker", "Slurry", "25 m3/ha"),
                        row("Stubble", "muck spreading", "Spreader", "Muck", "20 t/ha"),
                        row("Flat", "fertiliser spreading", "Disc spreader", "Fertiliser", "145 kg/ha")));
        answers(run, "product-need", "Slurry", 459.5, "m3");
        answers(run, "product-need", "Muck", 248, "t");
        answers(run, "product-spread", "Muck", 248, "t");
        assertThat(run.result("product-need", "Fertiliser").own()).isEmpty();
        // The last of them on Summary is the fertiliser, which is asked in our unit; the columns are there for the
        // others.
        assertThat(summary(run).get("need").subList(2, 4)).containsExactly("", "");
    }

    /** A foot is 0.3048 m by definition: two metres are 6.56 feet. Of what lies in no list the country tells. */
    @Test
    @Tag("derived")
    void cautionsNameTheirFiguresInTheFarmsUnitsFirst() {
        String clamps =
                String.join(" ", run(american()).plan().table("clamps").spec().cautions());
        assertThat(clamps).contains("on the day of filling silage stands 3.28-6.56 ft = 1-2 m higher");
        Runs.Run metric = run(ClientBook.create()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Mill Piece", "grass", 12))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row("Yard clamp", "walled", 25, 9, 2)));
        assertThat(String.join(" ", metric.plan().table("clamps").spec().cautions()))
                .contains("silage stands 1-2 m higher");
    }

    @Test
    @Tag("derived")
    void aCautionOnARowAndOnChecksNamesBothToo() {
        ClientBook hasty = american()
                .sheet(
                        "More machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (mph)", "Tank (gal)"),
                        row("Racer", "sprayer", 30, 14, 120))
                .sheet(
                        "More jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (gal/ac)"),
                        row("T2", "wheat", "spraying", "Racer", 10));
        assertThat(run(hasty).findings())
                .anyMatch(finding -> finding.message().contains("keep below 9.94-11.2 mph = 16-18 km/h"));
    }

    /** 20 acres at 9 tons an acre are 180 tons, whichever ton it is. */
    @ParameterizedTest
    @Tag("derived")
    @ValueSource(strings = {"short ton", "long ton"})
    void whoSpreadsTonsIsToldTons(String ton) {
        Runs.Run run = run(ClientBook.create()
                .sheet("Fields", row("Field", "Acres"), row("Mill Piece", 20))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (mph)"),
                        row("Spreader", "muck spreader", 20, 4))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose", "Dose unit"),
                        row("Muck", "Mill Piece", "muck spreading", "Spreader", "Manure", 9, ton + "/ac")));
        answers(run, "product-spread", "Muck", 180, ton);
        assertThat(run.result("product-spread", "Muck").unit()).isEqualTo("kg");
    }

    /** Course notes: 1.5 gal/min from each nozzle 30 in apart at 9.9 mph are 30 gallons an acre. */
    @Test
    @Tag("published")
    void whoCatchesGallonsIsToldGallons() {
        ClientBook book = ClientBook.create()
                .sheet("Fields", row("Field", "Acres"), row("Mill Piece", 20))
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Speed (mph)", "Nozzle flow (gpm)"),
                        row("Rig", "sprayer", 30, 9.9, 1.5))
                .sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"));
        answers(run(book), "rate-from-flow", "Rig", 30, "gal(US)/ac");
    }

    /** 30 ft at 5 mph: the extension's 18.2 acres an hour, as in the worked example of the formula. */
    @Test
    @Tag("published")
    void theRateOfWorkIsThePublishedOne() {
        Result.Own own = run(british()).results("spot-work-rate").get(0).own().orElseThrow();
        assertThat(own.unit()).isEqualTo("ac/h");
        assertThat(own.number()).isCloseTo(18.2, within(0.05));
    }

    @Test
    void inAGroupEachFarmIsAnsweredInItsOwn() {
        Runs.Run run = run(group());
        answers(run, "total-spray-mix", "North", 200, "gal(UK)");
        assertThat(run.results("work-rate")).hasSize(2);
        for (Result result : run.results()) {
            if ("South".equals(result.about().get("Holding"))) {
                assertThat(result.own()).as(result.id()).isEmpty();
            }
        }
        ResultTable rates = run.plan().table("work-rates");
        TableColumn own = rates.spec().columns().stream()
                .filter(column -> column.label().equals("Work rate in ac/h"))
                .findFirst()
                .orElseThrow();
        for (int row = 0; row < rates.rows(); row++) {
            boolean north =
                    rates.name(rates.spec().columns().get(0).symbol(), row).equals("North");
            assertThat(rates.of(own.symbol()).has(row)).isEqualTo(north);
        }
        assertThat(run.result("total-spray-mix", "South").number()).contains(2000.0);
    }

    @Test
    void aGallonOfNoCountryIsAskedAboutAndAnsweredInNone() {
        Runs.Run run = run(farm("gal", "long ton", "pt(UK)"));
        assertThat(run.messages()).anyMatch(message -> message.contains("gal(UK)/ac or gal(US)/ac"));
        assertThat(run.result("total-spray-mix", "T1").given()).isFalse();
        assertThat(columns(run, " in gal")).isEmpty();
        answers(run, "machine-area", "Mower", 15, "ac");
    }

    /** 8.5 lb in each 100 gallons of the 200 that are sprayed are 17 lb. */
    @ParameterizedTest
    @ValueSource(strings = {"lb/100 gal(US)", "lb/100 gal(UK)"})
    @Tag("derived")
    void aDoseInTheSprayIsAnsweredInWhatItWasAskedIn(String unit) {
        String gallon = unit.substring("lb/100 ".length());
        Runs.Run run = run(farm(gallon, "t", "pt(US)")
                .set(new CellAddress("Products", 1, 1), "kg")
                .set(new CellAddress("Jobs", 1, 5), 8.5)
                .set(new CellAddress("Jobs", 1, 6), unit));
        answers(run, "total-spray-mix", "T1", 200, gallon);
        answers(run, "product-total", "Weedkiller", 17, "lb");
    }

    /** One per cent is a gallon in a hundred gallons too, but nobody has said so. */
    @ParameterizedTest
    @ValueSource(strings = {"%", "L/100 L", "ml/L"})
    void aShareOfTheSprayIsInNoUnitOfItsOwn(String unit) {
        Runs.Run run = run(farm("L", "t", "ml")
                .set(new CellAddress("Jobs", 1, 5), unit.equals("ml/L") ? 10 : 1)
                .set(new CellAddress("Jobs", 1, 6), unit));
        assertThat(run.result("product-total", "Weedkiller").number().orElseThrow())
                .isCloseTo(2, within(1e-9));
        assertThat(run.result("product-total", "Weedkiller").own()).isEmpty();
    }

    /** One per cent of 200 gallons is two, for who fills by the gallon. */
    @ParameterizedTest
    @ValueSource(strings = {"gal(US)", "gal(UK)"})
    void aPerCentOfGallonsIsAnsweredInGallons(String gallon) {
        Runs.Run run = run(
                farm(gallon, "t", "ml").set(new CellAddress("Jobs", 1, 5), 1).set(new CellAddress("Jobs", 1, 6), "%"));
        answers(run, "product-total", "Weedkiller", 2, gallon);
    }

    @Test
    void pintsInAHundredGallonsAreAnsweredInPints() {
        Runs.Run run = run(farm("gal(UK)", "t", "pt(UK)")
                .set(new CellAddress("Jobs", 1, 5), 4)
                .set(new CellAddress("Jobs", 1, 6), "pt(UK)/100 gal(UK)"));
        answers(run, "product-total", "Weedkiller", 8, "pt(UK)");
    }

    /** Litres an acre, as in Ireland: the litre is ours, the acre is not. */
    @Test
    void litresAnAcreAreAnsweredInLitresAndAcres() {
        Runs.Run run = run(farm("L", "t", "ml"));
        assertThat(run.result("total-spray-mix", "T1").number().orElseThrow()).isCloseTo(200, within(1e-9));
        assertThat(run.result("total-spray-mix", "T1").own()).isEmpty();
        assertThat(run.result("product-total", "Weedkiller").own()).isEmpty();
        assertThat(run.result("crop-ensiled", "Long Ley").own()).isEmpty();
        answers(run, "area-per-tankful", "T1", 12, "ac");
    }

    /** 18,000 lb an acre on 15 acres are 135 tons of 2,000 lb, for who has said that his tons are American. */
    @Test
    void whoWeighsInPoundsIsAnsweredInTonsIfItIsKnownOfWhich() {
        CellAddress yield = new CellAddress("Fields", 3, 3);
        Runs.Run said = run(farm("gal(US)", "lb", "pt(US)")
                .set(yield, 18_000)
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", "US")));
        answers(said, "crop-ensiled", "Long Ley", 135, "short ton");
        Runs.Run unsaid = run(farm("gal(US)", "lb", "pt(US)").set(yield, 18_000));
        assertThat(unsaid.result("crop-ensiled", "Long Ley").given()).isTrue();
        assertThat(unsaid.result("crop-ensiled", "Long Ley").own()).isEmpty();
    }

    @Test
    void theCardForTheClampTellsItsHeightsInFeet() {
        Runs.Run run = run(british());
        Map<String, Object> card = new LinkedHashMap<>();
        try (ClientBook book = ClientBook.open(run.file())) {
            for (Row line : book.poi().getSheet("Clamp cards")) {
                if (line.getCell(0) != null && line.getCell(0).getCellType() == CellType.STRING) {
                    card.put(line.getCell(0).getStringCellValue(), shown(line.getCell(1)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertThat(card)
                .containsEntry("Wall height in ft", 7.0)
                .containsEntry("Length in ft", 80.0)
                .containsEntry("Silage height in ft", 6.0)
                .containsKey("Do-not-exceed height in ft")
                .doesNotContainKey("Least effluent tank, this silo alone in ft3");
    }

    @Test
    void aFarmThatMeasuresAsWeDoSeesNothingOfIt() throws Exception {
        Path file = TestBooks.smallFarm(folder.resolve("metric.xlsx"));
        Runs.Run run = Runs.run(file, folder.resolve("metric out.xlsx"));
        assertThat(run.results()).isNotEmpty().allSatisfy(result -> assertThat(result.own())
                .isEmpty());
        assertThat(columns(run, " in ")).isEmpty();
        assertThat(run.plan().tables().stream()
                        .flatMap(table -> table.spec().columns().stream())
                        .map(TableColumn::label))
                .doesNotContain("Measured in");
        try (ClientBook book = ClientBook.open(run.file())) {
            for (Row line : book.poi().getSheet("Summary")) {
                for (Cell cell : line) {
                    assertThat(cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "")
                            .isNotEqualTo(IN_YOUR_UNITS);
                }
            }
        }
        assertThat(json(file)).doesNotContain("\"own\"");
    }

    @Test
    void otherProgramsAreToldTheValueInBothUnits() throws Exception {
        run(british());
        Map<String, Object> json = JsonText.read(json(folder.resolve("in.xlsx")));
        Map<String, Object> mix = JsonText.objects(json, "results").stream()
                .filter(result -> result.get("id").equals("total-spray-mix"))
                .findFirst()
                .orElseThrow();
        assertThat(mix).containsEntry("unit", "L");
        assertThat((Double) mix.get("value")).isCloseTo(200 * 4.54609, within(1e-9));
        Map<?, ?> own = (Map<?, ?>) mix.get("own");
        assertThat(own.get("unit")).isEqualTo("gal(UK)");
        assertThat((Double) own.get("value")).isCloseTo(200, within(1e-9));
        assertThat(own).hasSize(2);
    }

    @Test
    void anExplanationSaysItInBothUnits() throws Exception {
        run(british());
        try (BookPackage book = BookPackage.open(folder.resolve("in.xlsx"))) {
            Recalculation run = Recalculation.of(book, RunOptions.usual());
            ResultTable blocks = run.plan().table("spray-blocks");
            String cell = run.sheets()
                    .places()
                    .cell(blocks.spec(), TankPlan.SPRAY_TOTAL, 0)
                    .toString();
            assertThat(ExplanationText.lines(ExplainedCell.of(run, cell))).contains("  in your units: 200 gal(UK)");
        }
    }

    private static String json(Path file) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ResultsJson.write(Recalculation.of(book, RunOptions.usual()), ResultsJson.Which.ALL, out);
            return out.toString(StandardCharsets.UTF_8);
        }
    }

    /** The labels of our columns that hold these words, and end in a unit other than ours. */
    private static List<String> columns(Runs.Run run, String words) {
        List<String> labels = new ArrayList<>();
        for (ResultTable table : run.plan().tables()) {
            for (TableColumn column : table.spec().columns()) {
                String unit = column.symbol().unit().symbol();
                if (!unit.isEmpty()
                        && column.label().endsWith(" in " + unit)
                        && column.label().contains(words)) {
                    labels.add(column.label());
                }
            }
        }
        return labels;
    }

    /** The lines of Summary by their result: value, unit, value in the client's unit, that unit. */
    private static Map<String, List<Object>> summary(Runs.Run run) {
        try (ClientBook book = ClientBook.open(run.file())) {
            Map<String, List<Object>> lines = new LinkedHashMap<>();
            for (Row line : book.poi().getSheet("Summary")) {
                if (line.getCell(1) != null && line.getCell(1).getCellType() == CellType.STRING) {
                    List<Object> cells = new ArrayList<>();
                    for (int column = 2; column < 6; column++) {
                        cells.add(shown(line.getCell(column)));
                    }
                    lines.put(line.getCell(1).getStringCellValue(), cells);
                }
            }
            assertThat(lines.get("Result")).containsExactly("Value", "Unit", IN_YOUR_UNITS, "Your unit");
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Object shown(Cell cell) {
        if (cell == null) {
            return "";
        }
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return type == CellType.NUMERIC
                ? Math.round(cell.getNumericCellValue() * 1e9) / 1e9
                : cell.getStringCellValue();
    }
}
