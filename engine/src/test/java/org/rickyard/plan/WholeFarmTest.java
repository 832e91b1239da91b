package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.Parity;
import org.rickyard.testing.SeasonBook;
import org.rickyard.testing.StoredValues;
import org.rickyard.testing.WholeFarm;

/**
 * A farm that fills every sheet of work rates, season and cost: the three evaluators agree on it, and so do metric and
 * imperial.
 */
@Tag("derived")
class WholeFarmTest {
    private static final List<String> TABLES = List.of(
            "field-shapes",
            "work-rates",
            "machine-totals",
            "holding-totals",
            "gang-crop",
            "clamp-rollers",
            "carting",
            "trailers",
            "gang-stages",
            "gangs",
            "gangs-expected",
            "work-inputs",
            "machine-costs",
            "job-costs",
            "own-or-hire",
            "job-totals",
            "holding-costs",
            "season",
            "day-plan",
            "bookings",
            "machine-season",
            "time-chart");

    private static SeasonBook.Worked metric;
    private static SeasonBook.Worked imperial;

    @BeforeAll
    static void run() {
        metric = WholeFarm.metric().run();
        imperial = WholeFarm.imperial().run();
    }

    @Test
    void everySheetHasRowsAndEveryResultIsGivenSomewhere() {
        Map<String, Integer> given = new LinkedHashMap<>();
        for (String id : TABLES) {
            assertThat(metric.plan().table(id).rows()).as(id).isPositive();
        }
        for (Result result : metric.results()) {
            given.merge(result.id(), result.given() ? 1 : 0, Integer::sum);
        }
        for (String id : TABLES) {
            for (TableColumn column : metric.plan().table(id).spec().columns()) {
                if (column instanceof TableColumn.Calculated calculated && calculated.result()) {
                    assertThat(given).as(id).containsKey(calculated.formula().id());
                    assertThat(given.get(calculated.formula().id()))
                            .as(calculated.formula().id())
                            .isPositive();
                }
            }
        }
    }

    /** What an adviser asks a farm by name must be told in Trail and JSON, be it owed by every row or not. */
    @Test
    void everyAnswerOfTheTradeIsTold() {
        List<String> asked = List.of(
                "spot-work-rate work-rate field-efficiency passes turn-share material-rate work-rate-limited-by",
                "shape-index mean-width gang-rate gang-rate-by-mass bottleneck chopping-slack carting-slack",
                "pushing-up-slack rolling-slack mowing-slack gang-area-per-day stage-rate stage-rate-by-mass",
                "stage-area-per-day payload loads fill-time cycle-time carting-rate trailers-needed forager-idle-share",
                "trailer-queue chop-and-cart-rate-one-fewer chop-and-cart-rate-needed chop-and-cart-rate-one-more",
                "rolling-capacity gang-rolling-capacity handling-rate chop-and-cart-rate-simulated gang-rate-expected",
                "pto-power drawbar-power power-needed power-share fuel fuel-by fuel-per-hectare fuel-per-tonne",
                "lubricant-cost labour labour-per-driver labour-per-day driver-day days-needed days-available",
                "season-fit required-work-rate required-width required-speed required-hours-per-day machines-required",
                "machines-to-hire planned-start planned-finish days-late depreciation interest repairs",
                "insurance-and-housing capital-recovery fuel-cost labour-cost hire-bill cost-of-work cost-per-hour",
                "cost-per-hectare cost-per-tonne job-cost job-cost-per-hectare job-crop job-cost-per-tonne holding-cost",
                "running-cost break-even-area own-or-hire bales-made remaining-value");
        List<String> given = metric.results().stream()
                .filter(Result::given)
                .map(Result::id)
                .distinct()
                .toList();
        assertThat(given).containsAll(List.of(String.join(" ", asked).split(" ")));
    }

    @Test
    void theGridAgreesByPoi() {
        assertThat(metric.differences()).isEmpty();
        assertThat(imperial.differences()).isEmpty();
    }

    @Test
    void theGridAgreesByLibreOffice() {
        LibreOffice.required();
        String[] sheets = sheets();
        Map<CellAddress, Object> stored = StoredValues.of(metric.file(), sheets);
        assertThat(stored).hasSizeGreaterThan(2000);
        assertThat(Parity.differences(stored, StoredValues.of(LibreOffice.recalculate(metric.file()), sheets)))
                .isEmpty();
    }

    @Test
    void theValidatorFindsNothingNew() {
        OoxmlValidator.required();
        for (SeasonBook.Worked worked : List.of(metric, imperial)) {
            Path input = worked.file().resolveSibling("in.xlsx");
            assertThat(OoxmlValidator.worseThan(input, worked.file())).isEmpty();
        }
    }

    @Test
    void metricAndImperialAgreeOnEverySheet() {
        List<String> differences = new ArrayList<>();
        int compared = 0;
        for (String id : TABLES) {
            ResultTable one = metric.plan().table(id);
            ResultTable other = imperial.plan().table(id);
            assertThat(other.rows()).as(id).isEqualTo(one.rows());
            for (TableColumn column : one.spec().columns()) {
                Symbol symbol = column.symbol();
                for (int row = 0; row < one.rows(); row++) {
                    compared++;
                    // What cautions state is told in the units of who reads them, before the same in ours.
                    String difference = symbol.equals(TableSpec.CAUTIONS)
                            ? difference(
                                    one.of(symbol).word(row), other.of(symbol).word(row))
                            : difference(one.of(symbol), other.of(symbol), row);
                    // A charge is typed per hectare here and per acre there, and is named so.
                    if (!difference.isEmpty() && !symbol.name().equals("charge unit")) {
                        differences.add(id + ", " + symbol + ", row " + row + ": " + difference);
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(3000);
        assertThat(differences).isEmpty();
    }

    private static String difference(String metrically, String said) {
        String expected = imperial.plan().ownUnits().said(metrically, "");
        return expected.equals(said) ? "" : expected + " against " + said;
    }

    private static String difference(Values one, Values other, int row) {
        if (one.has(row) != other.has(row)) {
            return one.has(row) + " against " + other.has(row);
        } else if (!one.has(row)) {
            return "";
        } else if (one.words()) {
            return one.word(row).equals(other.word(row)) ? "" : one.word(row) + " against " + other.word(row);
        }
        double a = one.number(row);
        double b = other.number(row);
        boolean agree = Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
        return agree ? "" : a + " against " + b;
    }

    private static String[] sheets() {
        return TABLES.stream().map(id -> metric.plan().table(id).spec().sheet()).toArray(String[]::new);
    }
}
