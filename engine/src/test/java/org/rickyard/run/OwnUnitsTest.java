package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
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
import org.rickyard.quantity.GnuUnits;
import org.rickyard.testing.JsonText;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;
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

    /** One farm as it is written in a country whose gallon, ton and pint these are. */
    private static ClientBook farm(String gallon, String ton, String pint) {
        return ClientBook.create()
                .sheet(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ac)",
                                "Yield (" + ton + "/ac)",
                                "Yield basis",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Mill Piece", "wheat", 12),
                        row("Gallows Hill", "wheat", 8),
                        row("Long Ley", "grass", 15, 9, "as carted fresh", 28, "Yard clamp"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (ft)",
                                "Speed (mph)",
                                "Field efficiency (%)",
                                "Tank (" + gallon + ")"),
                        row("Sprayer", "sprayer", 30, 5, 70, 120),
                        row("Mower", "mower", 10, 5, 80))
                .sheet("Products", row("Product", "Unit"), row("Weedkiller", "L"))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose",
                                "Dose unit",
                                "Water volume (" + gallon + "/ac)"),
                        row("T1", "wheat", "spraying", "Sprayer", "Weedkiller", 2, pint + "/ac", 10),
                        row("Cut", "Long Ley", "mowing", "Mower"))
                .sheet(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (ft)",
                                "Floor width (ft)",
                                "Wall height (ft)",
                                "Settled height (ft)"),
                        row("Yard clamp", "walled", 80, 30, 7, 6));
    }

    private static ClientBook british() {
        return farm("gal(UK)", "long ton", "pt(UK)");
    }

    private static ClientBook american() {
        return farm("gal", "ton", "pt")
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", "US"));
    }

    /** Two farms on sheets of their own: acres and gallons in the north, hectares and litres in the south. */
    private static ClientBook group() {
        return ClientBook.create()
                .sheet(
                        "North land",
                        row("Holding", "Field", "Crop", "Area (ac)"),
                        row("North", "Mill Piece", "wheat", 20))
                .sheet(
                        "South land",
                        row("Holding", "Field", "Crop", "Area (ha)"),
                        row("South", "Chalk Pit", "barley", 20))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)"),
                        row("Sprayer", "sprayer", 12, 8, 70, 600))
                .sheet(
                        "North work",
                        row("Job", "Field", "Operation", "Machine", "Water volume (UK gallons per acre)"),
                        row("T1", "Mill Piece", "spraying", "Sprayer", 10))
                .sheet(
                        "South work",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("S1", "Chalk Pit", "spraying", "Sprayer", 100));
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
                        "Crop ensiled (fresh) in " + ton,
                        "Clamp volume in ft3",
                        "Clamp capacity (fresh) in " + ton,
                        "Crop in clamp (fresh) in " + ton,
                        "Room left (fresh; overfull if below 0) in " + ton,
                        "Filled height on the day in ft",
                        "Do-not-exceed height in ft");
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
    void everyAnswerIsOursTimesTheFactorOfGnuUnits() throws Exception {
        GnuUnits.required();
        Map<String, List<String>> asked = Map.of(
                "gal(UK)", List.of("liter", "brgallon"),
                "long ton", List.of("tonne", "longton"),
                "long ton DM", List.of("tonne", "longton"),
                "ac", List.of("hectare", "intacre"),
                "ac/h", List.of("hectare/hour", "intacre/hour"),
                "ft", List.of("meter", "foot"),
                "ft3", List.of("meter^3", "foot^3"),
                "pt(UK)", List.of("liter", "brpint"));
        Map<String, Double> factors = new LinkedHashMap<>();
        int compared = 0;
        for (Result result : run(british()).results()) {
            if (result.own().isPresent() && asked.containsKey(result.own().get().unit())) {
                String unit = result.own().get().unit();
                if (!factors.containsKey(unit)) {
                    factors.put(
                            unit,
                            GnuUnits.ratio(
                                    folder,
                                    asked.get(unit).get(0),
                                    asked.get(unit).get(1)));
                }
                double expected = result.number().orElseThrow() * factors.get(unit);
                assertThat(result.own().get().number())
                        .as(result.id())
                        .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
                compared++;
            }
        }
        assertThat(factors.keySet()).isEqualTo(asked.keySet());
        assertThat(compared).isGreaterThan(20);
    }

    private static final Object[] SPOILT = {null, "ten", "", ClientBook.ERROR, -10};

    /** Spoils the water volume of the British farm as it was written. */
    private Path spoilt(Runs.Run run, Object value) throws IOException {
        try (ClientBook book = ClientBook.open(run.file())) {
            return book.set(new CellAddress("Jobs", 1, 7), value).save(folder.resolve("spoilt.xlsx"));
        }
    }

    @Test
    void poiWorksOutWhatIsStored() {
        for (ClientBook book : List.of(british(), american(), group())) {
            Runs.Run run = run(book);
            assertThat(run.differences(PoiRecalculation.of(run.file(), run.ours())))
                    .isEmpty();
        }
    }

    @Test
    void aRunOverItsOwnOutputChangesNothing() throws IOException {
        for (ClientBook book : List.of(british(), group())) {
            Path first = run(book).file();
            Path second = Runs.run(first, folder.resolve("second.xlsx")).file();
            assertThat(Files.mismatch(first, second)).isEqualTo(-1);
        }
    }

    @Test
    void theValidatorFindsNothingNew() {
        OoxmlValidator.required();
        for (ClientBook book : List.of(british(), group())) {
            Runs.Run run = run(book);
            assertThat(OoxmlValidator.worseThan(folder.resolve("in.xlsx"), run.file()))
                    .isEmpty();
        }
    }

    /** The group, which the British farm is part of, and that farm with a blank in it; in one call, for each takes long. */
    @Test
    void libreOfficeWorksOutWhatIsStoredAndWithholdsWhatIsSpoilt() throws IOException {
        LibreOffice.required();
        Runs.Run group = kept(run(group()), "group.xlsx");
        Runs.Run farm = run(british());
        Path spoilt = spoilt(farm, null);
        List<Path> recalculated = LibreOffice.recalculateAll(List.of(group.file(), spoilt));
        assertThat(group.differences(StoredValues.of(recalculated.get(0), group.ours())))
                .isEmpty();
        Map<CellAddress, Object> own = ownCells(farm.file());
        assertThat(blank(StoredValues.of(recalculated.get(1)), own))
                .hasSize(6)
                .containsExactlyElementsOf(blank(PoiRecalculation.of(spoilt), own));
    }

    private Runs.Run kept(Runs.Run run, String name) throws IOException {
        Path file = Files.copy(run.file(), folder.resolve(name));
        return new Runs.Run(file, run.plan(), run.places(), run.sheets(), run.findings(), run.results());
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

    /** Every cell in the client's unit goes blank with the one beside it, and no other does. */
    @Test
    void whatIsWithheldIsWithheldInBothUnits() throws IOException {
        Runs.Run run = run(british());
        Map<CellAddress, Object> own = ownCells(run.file());
        assertThat(own.values()).allSatisfy(value -> assertThat(value).isInstanceOf(Double.class));
        for (Object value : SPOILT) {
            Map<CellAddress, Object> now = PoiRecalculation.of(spoilt(run, value));
            List<CellAddress> blank = blank(now, own);
            assertThat(blank.stream().filter(cell -> cell.sheet().equals("Summary")))
                    .hasSize(2);
            assertThat(blank.stream().filter(cell -> cell.sheet().equals("Spray blocks")))
                    .hasSize(4);
            assertThat(blank).hasSize(6);
            // On a card a figure of ours says that it is withheld; the one beside it only goes.
            assertThat(StoredValues.of(run.file(), "Spray cards").entrySet().stream()
                            .filter(cell -> cell.getValue() instanceof Double && "".equals(now.get(cell.getKey()))))
                    .hasSizeGreaterThanOrEqualTo(5);
            own.forEach((cell, stored) -> {
                if (!blank.contains(cell)) {
                    double number = (Double) stored;
                    assertThat((Double) now.get(cell))
                            .as("%s", cell)
                            .isCloseTo(number, within(1e-9 * Math.abs(number)));
                }
            });
        }
    }

    private static List<CellAddress> blank(Map<CellAddress, Object> now, Map<CellAddress, Object> own) {
        return own.keySet().stream().filter(cell -> "".equals(now.get(cell))).toList();
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

    /** The stored values of every cell of Summary and of the tables that is in a unit of the client's. */
    private static Map<CellAddress, Object> ownCells(Path file) throws IOException {
        Map<CellAddress, Object> stored = StoredValues.of(file);
        Map<CellAddress, Object> cells = new LinkedHashMap<>();
        try (ClientBook book = ClientBook.open(file)) {
            for (Sheet sheet : book.poi()) {
                boolean summary = sheet.getSheetName().equals("Summary");
                Row labels = sheet.getRow(6);
                stored.forEach((cell, value) -> {
                    if (!cell.sheet().equals(sheet.getSheetName())) {
                        return;
                    }
                    Cell label = summary || labels == null ? null : labels.getCell(cell.column());
                    boolean own = summary
                            ? cell.column() == 4
                            : label != null && label.toString().matches(".* in (ac|ac/h|ft|ft3|long ton|gal\\(UK\\))");
                    if (own && cell.row() > 8) {
                        cells.put(cell, value);
                    }
                });
            }
        }
        assertThat(cells).hasSizeGreaterThan(15);
        return cells;
    }
}
