package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.LibreOfficeRecalculation;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.Parity;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/** A season's spraying of one invented farm, from the lists to every sheet of spraying. */
class SprayingPlanTest {
    @TempDir
    private static Path folder;

    private static FarmBook.Run run;

    @BeforeAll
    static void reckon() {
        run = SprayingSeason.book().run(folder);
    }

    @Test
    void everyValueOnEverySheetAgreesWithAnIndependentEvaluator() {
        // The trail repeats what stands on the other sheets, a line for each result, and takes the evaluator longest.
        String[] sheets =
                run.sheets().stream().filter(sheet -> !sheet.equals("Trail")).toArray(String[]::new);
        assertThat(Parity.differences(
                        StoredValues.of(run.written(), sheets), PoiRecalculation.of(run.written(), sheets)))
                .isEmpty();
        assertThat(run.sheets()).containsAll(SprayingSeason.SHEETS);
        assertThat(run.masterCheck()).isEqualTo("Checks: all totals agree");
    }

    @Test
    void libreOfficeToo() {
        LibreOffice.required();
        String[] sheets = Stream.concat(SprayingSeason.SHEETS.stream(), Stream.of("Spray cards"))
                .toArray(String[]::new);
        assertThat(Parity.differences(
                        StoredValues.of(run.written(), sheets), LibreOfficeRecalculation.of(run.written(), sheets)))
                .isEmpty();
    }

    @Test
    void theValidatorFindsNothingNew() {
        OoxmlValidator.required();
        assertThat(OoxmlValidator.worseThan(folder.resolve("in.xlsx"), run.written()))
                .isEmpty();
    }

    @Test
    void noSheetOfSprayingIsEmpty() {
        for (String sheet : SprayingSeason.SHEETS) {
            assertThat(run.results())
                    .as(sheet)
                    .anySatisfy(result -> assertThat(result.cell().sheet()).isEqualTo(sheet));
        }
    }

    @Test
    void theFittedSizeAndItsPressureFollowFromVolumeSpeedAndSpacing() {
        assertThat(run.results("nozzle-output", "T1", "Sprayer"))
                .isNotEmpty()
                .allSatisfy(result -> assertThat(result.number().orElseThrow()).isEqualTo(2.0, within(1e-12)));
        assertThat(run.number("nozzle-pressure", "T1", "04")).isEqualTo(4.6875, within(1e-9));
        assertThat(run.number("pressure-at-lowest-speed", "T1")).isEqualTo(4.6875 * 64 / 144, within(1e-9));
        assertThat(run.number("pressure-at-highest-speed", "T1")).isEqualTo(4.6875 * 196 / 144, within(1e-9));
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .startsWith("Sprayer, T1: at the highest speed the pressure is above"));
    }

    /** 2.00 L/min, window 1.5 to 4 bar: 05 gives 3 bar, 06 2.08; 03 and 04 lie above (derived from ISO nominals). */
    @Test
    void sizesInsideTheWindowRankBeforeAllOthers() {
        assertThat(run.number("nozzle-rank", "T1", "05")).isEqualTo(1);
        assertThat(run.number("nozzle-rank", "T1", "06")).isEqualTo(2);
        assertThat(run.word("pressure-window", "T1", "03")).isEqualTo("above the window");
        assertThat(run.word("pressure-window", "T1", "08")).isEqualTo("below the window");
        List<Double> ranks = run.results("nozzle-rank", "T1").stream()
                .map(result -> result.number().orElseThrow())
                .sorted()
                .toList();
        assertThat(ranks).hasSize(13).doesNotHaveDuplicates().startsWith(1.0).endsWith(13.0);
    }

    @Test
    void heavierLiquidWantsMorePressureByItsDensity() {
        assertThat(run.number("density-factor", "Feed")).isEqualTo(Math.sqrt(1.28), within(1e-12));
        assertThat(run.number("nozzle-pressure", "Feed", "04")).isEqualTo(4.6875 * 1.28, within(1e-9));
    }

    @Test
    void aTankfulEndsOneFieldAndBeginsTheNext() {
        assertThat(run.number("area-in-tankful", "T1", "Long Acre", "tankful 1"))
                .isEqualTo(4);
        assertThat(run.number("area-in-tankful", "T1", "Home Field", "tankful 1"))
                .isEqualTo(3.5);
        assertThat(run.number("area-in-tankful", "T1", "Home Field", "tankful 2"))
                .isEqualTo(2.5);
        assertThat(run.number("area-in-tankful", "T1", "Top", "tankful 2")).isEqualTo(5);
        assertThat(run.number("area-in-tankful", "T1", "Top", "tankful 3")).isEqualTo(2.3, within(1e-9));
    }

    @Test
    void hectaresOverTankfulsSumToTheBlockAndProductsToTheirTotals() {
        assertThat(sum("area-in-tankful", "T1")).isEqualTo(17.3, within(1e-9));
        for (String product : List.of("Herbicide A", "Wetter")) {
            assertThat(sum("product-in-tankful", "T1", product))
                    .isEqualTo(run.number("product-total", "T1", product), within(1e-9));
        }
    }

    @Test
    void productsGoIntoTheTankInTheOrderTyped() {
        assertThat(run.results("product-in-tankful", "T1", "tankful 1").stream()
                        .map(result -> result.about().get("Product"))
                        .toList())
                .containsExactly("Herbicide A", "Wetter");
    }

    /** 0.2 % of 200 L/ha is 0.4 L/ha; the label's ceiling of 0.3 is lower, and holds. */
    @Test
    void theLowerOfAShareOfTheSprayAndACeilingPerHectareHoldsAndIsSaid() {
        assertThat(run.number("product-total", "T1", "Wetter")).isEqualTo(17.3 * 0.3, within(1e-9));
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("T1, Wetter, Sprayer: the share of the spray would come to more"));
    }

    @Test
    void packsAreRoundedUpOnceOverAllJobs() {
        double need = 21.625 + 7.3 + 1 + 4.5;
        assertThat(run.number("product-need", "Herbicide A")).isEqualTo(need, within(1e-9));
        assertThat(run.number("packs-to-buy", "Herbicide A")).isEqualTo(7);
        assertThat(run.number("product-left-over", "Herbicide A")).isEqualTo(4 + 35 - need, within(1e-9));
    }

    @Test
    void theSeasonsDoseIntervalAndHarvestAreHeldAgainstTheLabel() {
        assertThat(run.number("season-dose", "Top", "Herbicide A")).isEqualTo(2.25);
        assertThat(run.number("applications", "Top", "Herbicide A")).isEqualTo(2);
        assertThat(run.messages(Severity.STOP))
                .anySatisfy(message -> assertThat(message).contains("more than the highest total"))
                .anySatisfy(message -> assertThat(message).contains("too soon after the application before"))
                .anySatisfy(message -> assertThat(message).contains("too near to harvest"));
    }

    @Test
    void blockedAndWornNozzlesAreToldApart() {
        assertThat(run.word("nozzle-verdict", "Sprayer", "3")).isEqualTo("low: clean and test again");
        assertThat(run.word("nozzle-verdict", "Sprayer", "7")).isEqualTo("worn: replace");
        assertThat(run.word("nozzle-verdict", "Sprayer", "1")).isEqualTo("even");
        assertThat(run.result("nozzle-deviation-from-new", "Sprayer", "1").number())
                .contains(0.0);
    }

    @Test
    void aTestAtAnotherPressureIsNotHeldAgainstTheJob() {
        assertThat(run.messages(Severity.STOP))
                .noneSatisfy(message -> assertThat(message).contains("the boom gives"));
        assertThat(run.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("at another pressure than this job needs"));
    }

    @Test
    void bandsTakeOnlyTheirShareOfMixAndProduct() {
        assertThat(run.number("treated-area", "Beet bands", "Beet")).isEqualTo(4.5);
        assertThat(run.number("total-spray-mix", "Beet bands")).isEqualTo(900);
        assertThat(run.number("product-total", "Beet bands")).isEqualTo(4.5);
    }

    @Test
    void aWiderRowMeansLessCrownOnAHectare(@TempDir Path other) {
        assertThat(run.number("tree-row-volume", "Orchard")).isEqualTo(11250, within(1e-9));
        FarmBook wider = SprayingSeason.book()
                .row("Fields", "Moor End", "Wide", "apples", 2, null, null, null, 8, 3, 1.5)
                .row("Jobs", "Wide apples", "Wide", "spraying", "Mist blower", null, "Herbicide A", 0.5, "L/ha", 400);
        assertThat(wider.run(other).number("tree-row-volume", "Wide"))
                .as("multiplying by the row distance, as one printed note does, would give more")
                .isEqualTo(5625, within(1e-9));
    }

    @Test
    void weatherGivesCautionsAndNeverLeaveToSpray() {
        assertThat(run.number("delta-t", "T1")).isEqualTo(6.301, within(0.0005));
        assertThat(run.number("wind-at-boom", "T1")).isEqualTo(6);
        assertThat(run.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("T2").contains("Delta-T above 10"));
        assertThat(run.results("wind-caution")).isNotEmpty().allSatisfy(result -> assertThat(
                        result.word().orElse(""))
                .doesNotContainIgnoringCase("ideal")
                .doesNotContainIgnoringCase("safe"));
    }

    @Test
    void everyApplicationHasItsLineInTheRecordsWithTheItemsOfItsCountry() {
        assertThat(run.results("record-items")).hasSameSizeAs(run.results("product-on-field"));
        assertThat(run.word("record-items", "Top", "T2")).contains("Art. 67(1)").contains("Great Britain");
        assertThat(run.word("record-items", "Beet", "Beet bands"))
                .contains("2023/564")
                .contains("2026");
    }

    /** What is blank or no number in the client's cells withholds; nothing turns into an error or a zero dose. */
    @ParameterizedTest
    @ValueSource(strings = {"", "not known"})
    void inputsTakenAwayInTheGridWithholdWithoutErrors(String typed) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(run.written()))) {
            for (Sheet sheet : workbook) {
                if (!run.sheets().contains(sheet.getSheetName())) {
                    sheet.forEach(row -> row.forEach(cell -> {
                        if (cell.getCellType() == CellType.NUMERIC) {
                            if (typed.isEmpty()) {
                                cell.setBlank();
                            } else {
                                cell.setCellValue(typed);
                            }
                        }
                    }));
                }
            }
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            for (String name :
                    List.of("Spray fields", "Spray blocks", "Tank mix", "Tank fills", "Order list", "Nozzles")) {
                for (Row row : workbook.getSheet(name)) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            assertThat(evaluator.evaluate(cell).getCellType())
                                    .as(name + "!" + cell.getAddress())
                                    .isNotEqualTo(CellType.ERROR);
                        }
                    }
                }
            }
            int column = column(workbook.getSheet("Tank mix"), "Product total");
            Cell total = workbook.getSheet("Tank mix").getRow(9).getCell(column);
            assertThat(evaluator.evaluate(total).getStringValue()).isEmpty();
        }
    }

    private static int column(Sheet sheet, String label) {
        for (Cell cell : sheet.getRow(6)) {
            if (cell.getStringCellValue().equals(label)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no column '" + label + "' on " + sheet.getSheetName());
    }

    /** Common practice, historic: 60-100 gal(UK)/ac is quoted as 660-1,100 L/ha and 5-20 as 55-220. */
    @Test
    void oldVolumesInGallonsAreWhatTheyAreQuotedAsWithinTheirRounding() {
        Unit gallons = Units.GAL_UK.over(Units.AC);
        assertThat(gallons.convert(60, Units.L_PER_HA))
                .isEqualTo(674, within(0.5))
                .isEqualTo(660, within(15.0));
        assertThat(gallons.convert(100, Units.L_PER_HA))
                .isEqualTo(1123, within(0.5))
                .isEqualTo(1100, within(25.0));
        assertThat(gallons.convert(5, Units.L_PER_HA))
                .isEqualTo(56.2, within(0.05))
                .isEqualTo(55, within(1.5));
        assertThat(gallons.convert(20, Units.L_PER_HA))
                .isEqualTo(224.7, within(0.05))
                .isEqualTo(220, within(5.0));
    }

    @Test
    void missingPartsMakeTheHoursABestCase() {
        assertThat(run.number("spraying-efficiency", "Apples")).isEqualTo(100);
        assertThat(StoredValues.of(run.written(), "Spray fields").values())
                .anySatisfy(
                        value -> assertThat(value.toString()).startsWith("turning (type run length and turn time)"));
    }

    private double sum(String id, String... about) {
        return run.results(id, about).stream()
                .mapToDouble(result -> result.number().orElseThrow())
                .sum();
    }
}
