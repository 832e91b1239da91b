package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.run.TestBooks;
import org.rickyard.testing.FarmBook;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** Tables without the columns that nothing in a workbook can fill: what goes, what stays, and that no value changes. */
class FittedTableTest {
    @TempDir
    static Path folder;

    private static final Object[] FIELDS = FarmBook.row("Field", "Crop", "Area (ha)");
    private static final Object[] LONG_ACRE = FarmBook.row("Long Acre", "grass", 4);

    private static WorkPlan plan(Path file) {
        try (BookPackage book = BookPackage.open(file)) {
            return Recalculation.of(book, RunOptions.usual()).plan();
        } catch (IOException | RefusedException e) {
            throw new AssertionError(e);
        }
    }

    private static WorkPlan plan(String name, FarmBook book) throws IOException {
        return plan(book.write(folder.resolve(name + ".xlsx")));
    }

    private static FarmBook farm(Object[] machineHeaders, Object... machine) {
        return FarmBook.empty().sheet("Fields", FIELDS, LONG_ACRE).sheet("Machines", machineHeaders, machine);
    }

    private static List<String> columns(WorkPlan plan) {
        return plan.table(WorkTotals.WORK_RATES).spec().columns().stream()
                .map(column -> column.symbol().name())
                .toList();
    }

    private static String status(WorkPlan plan) {
        return plan.table(WorkTotals.WORK_RATES).of(TableSpec.STATUS).word(0);
    }

    @Test
    void columnWithoutHeaderGoesAndWithItTheStepsThatNeedIt() throws IOException {
        WorkPlan plan = plan(
                "bare",
                farm(
                        FarmBook.row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        FarmBook.row("Mower", "mower", 3, 10)));
        assertThat(columns(plan))
                .contains("speed", "working width", "work rate", "hours")
                .doesNotContain(
                        "overlap", "turn time", "run length", "output", "yield", "yield basis", "rate by throughput");
        assertThat(status(plan)).isEqualTo("ok");
        ResultTable rates = plan.table(WorkTotals.WORK_RATES);
        assertThat(rates.leavesOut(Quantities.TURN_TIME)).isTrue();
        assertThat(rates.of(Quantities.TURN_TIME).has(0))
                .as("a reader in Java meets a blank")
                .isFalse();
        assertThat(rates.leavesOut(FieldRates.RATE)).isFalse();
    }

    @Test
    void blankCellsUnderAHeaderKeepTheColumn() throws IOException {
        WorkPlan plan = plan(
                "blanks",
                farm(
                        FarmBook.row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        FarmBook.row("Mower", "mower", 3, 10, null)));
        assertThat(columns(plan)).contains("field efficiency");
        ResultTable rates = plan.table(WorkTotals.WORK_RATES);
        assertThat(rates.links(Quantities.FIELD_EFFICIENCY).address(0)).isPresent();
    }

    @Test
    void whatAResultCannotDoWithoutStaysAndIsAskedFor() throws IOException {
        WorkPlan plan = plan(
                "no-speed",
                farm(FarmBook.row("Machine", "Type", "Working width (m)"), FarmBook.row("Mower", "mower", 3)));
        assertThat(columns(plan)).contains("speed", "work rate", "hours");
        assertThat(status(plan)).isEqualTo("Speed missing. ");
    }

    static Stream<Path> books() throws IOException {
        return Stream.of(
                FarmBook.usual().write(folder.resolve("usual.xlsx")),
                TestBooks.smallFarm(folder.resolve("small.xlsx")),
                TestBooks.awkward(folder.resolve("awkward.xlsx")),
                TestBooks.random(folder.resolve("random-1.xlsx"), 1, false),
                TestBooks.random(folder.resolve("random-2.xlsx"), 2, false),
                TestBooks.random(folder.resolve("random-3.xlsx"), 3, true));
    }

    @ParameterizedTest
    @MethodSource("books")
    void noValueChangesAndOnlyWhatIsNeverThereIsLeftOut(Path file) {
        WorkPlan fitted = plan(file);
        assertThat(left(fitted, WorkPlan.withAllColumns(fitted.lists()), false)).isPositive();
    }

    /** As a very large workbook has them: the columns that no row needs go, and no value changes. */
    @ParameterizedTest
    @MethodSource("books")
    void noValueChangesWhereTablesAreFittedToTheirRows(Path file) {
        WorkPlan usual = plan(file);
        WorkPlan chief = WorkPlan.ofChiefTables(usual.lists());
        assertThat(left(chief, WorkPlan.withAllColumns(usual.lists()), true)).isPositive();
    }

    private static int left(WorkPlan fitted, WorkPlan whole, boolean chiefOnly) {
        int left = 0;
        for (ResultTable table : fitted.tables()) {
            ResultTable full = whole.table(table.spec().id());
            if (chiefOnly && !ChiefTables.contains(table.spec().id())) {
                continue;
            }
            assertThat(table.rows()).isEqualTo(full.rows());
            for (TableColumn column : full.spec().columns()) {
                if (Sentences.isAppended(column)) {
                    continue;
                }
                boolean out = table.leavesOut(column.symbol());
                left += out ? 1 : 0;
                same(table, full, column.symbol(), out);
            }
            rules(fitted, table, full);
            status(table);
        }
        return left;
    }

    private static void same(ResultTable table, ResultTable full, Symbol symbol, boolean out) {
        Values now = table.of(symbol);
        Values then = full.of(symbol);
        for (int row = 0; row < full.rows(); row++) {
            String where = table.spec().sheet() + ", " + symbol + ", row " + row;
            assertThat(now.has(row)).as(where).isEqualTo(then.has(row) && !out);
            assertThat(then.has(row) && out)
                    .as("left out though it has a value: " + where)
                    .isFalse();
            if (now.has(row) && now.words()) {
                assertThat(now.word(row)).as(where).isEqualTo(then.word(row));
            } else if (now.has(row)) {
                assertThat(now.number(row)).as(where).isEqualTo(then.number(row));
            }
        }
    }

    private static void rules(WorkPlan fitted, ResultTable table, ResultTable full) {
        for (CautionRule rule : full.spec().rules()) {
            Evaluator.TruthAt whole = Evaluator.condition(rule.when(), full);
            String said = fitted.ownUnits().said(rule.text(), "");
            List<Evaluator.TruthAt> kept = table.spec().rules().stream()
                    .filter(one -> one.text().equals(said))
                    .map(one -> Evaluator.condition(one.when(), table))
                    .toList();
            for (int row = 0; row < full.rows(); row++) {
                int at = row;
                if (Boolean.TRUE.equals(whole.at(row))) {
                    assertThat(kept).as(rule.text()).anyMatch(one -> Boolean.TRUE.equals(one.at(at)));
                }
            }
        }
    }

    /** A row says "ok" if all its results are there, and otherwise what it lacks. */
    private static void status(ResultTable table) {
        if (table.spec().column(TableSpec.STATUS).isEmpty()) {
            return;
        }
        for (int row = 0; row < table.rows(); row++) {
            boolean all = true;
            for (TableColumn column : table.spec().columns()) {
                boolean result = column instanceof TableColumn.Calculated calculated && calculated.result();
                all &= !result || table.of(column.symbol()).has(row);
            }
            String status = table.of(TableSpec.STATUS).word(row);
            assertThat(status.equals("ok"))
                    .as(table.spec().sheet() + ": " + status)
                    .isEqualTo(all);
            assertThat(status).as(table.spec().sheet()).isNotEmpty();
        }
    }
}
