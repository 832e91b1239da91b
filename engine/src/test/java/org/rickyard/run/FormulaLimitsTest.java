package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;

/** What a cell can hold: Excel takes no formula of more than 8,192 characters, 64 levels or 255 arguments. */
class FormulaLimitsTest {
    private static final int LONGEST = 8192;
    private static final int DEEPEST = 64;
    private static final int MOST_ARGUMENTS = 255;
    /** Row numbers may have seven digits in a large workbook; the small farm's have two. */
    private static final int DIGITS_TO_COME = 5;

    @TempDir
    static Path folder;

    private static Runs.Run run;

    @BeforeAll
    static void write() {
        run = Runs.run(TestBooks.smallFarm(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
    }

    @Test
    void noFormulaIsTooLongOrTooDeepEvenInTheLargestWorkbook() throws IOException {
        List<String> faults = new ArrayList<>();
        try (ClientBook book = ClientBook.open(run.file())) {
            for (String name : run.sheets()) {
                book.poi().getSheet(name).forEach(row -> row.forEach(cell -> check(cell, faults)));
            }
        }
        assertThat(faults).isEmpty();
    }

    private static void check(Cell cell, List<String> faults) {
        if (cell.getCellType() != CellType.FORMULA) {
            return;
        }
        String formula = cell.getCellFormula();
        int references = 0;
        int depth = 0;
        int deepest = 0;
        boolean quoted = false;
        List<Integer> arguments = new ArrayList<>();
        int most = 0;
        for (int i = 0; i < formula.length(); i++) {
            char c = formula.charAt(i);
            quoted ^= c == '"';
            if (quoted) {
                continue;
            }
            if (Character.isDigit(c)
                    && i > 0
                    && (Character.isLetter(formula.charAt(i - 1)) || formula.charAt(i - 1) == '$')) {
                references++;
            } else if (c == '(') {
                deepest = Math.max(deepest, ++depth);
                arguments.add(1);
            } else if (c == ')') {
                depth--;
                most = Math.max(most, arguments.remove(arguments.size() - 1));
            } else if (c == ',') {
                arguments.set(arguments.size() - 1, arguments.get(arguments.size() - 1) + 1);
            }
        }
        if (formula.length() + references * DIGITS_TO_COME > LONGEST || deepest > DEEPEST || most > MOST_ARGUMENTS) {
            faults.add(cell.getSheet().getSheetName() + "!" + cell.getAddress() + ": " + formula.length()
                    + " characters, " + references + " references, " + deepest + " levels, " + most + " arguments");
        }
    }

    @Test
    void everyColumnReadsOnlyColumnsToItsLeftAndWhatJoinsRowsAtTheRightEnd() {
        for (ResultTable table : run.plan().tables()) {
            if (table.rows() == 0) {
                // Nothing is written of it but why, so it is not fitted to the workbook either.
                continue;
            }
            List<TableColumn> joins = table.spec().columns().stream()
                    .filter(TableColumn::joinsRows)
                    .toList();
            List<TableColumn> columns = table.spec().columns();
            assertThat(columns.subList(columns.size() - joins.size(), columns.size()))
                    .as(table.spec().id())
                    .isEqualTo(joins);
            Set<Symbol> before = new HashSet<>();
            joins.forEach(join -> before.add(join.symbol()));
            for (TableColumn column : columns.subList(0, columns.size() - joins.size())) {
                Expr expr = column instanceof TableColumn.Calculated calculated
                        ? calculated.formula().expr()
                        : column instanceof TableColumn.Joined joined
                                ? joined.expr()
                                : column instanceof TableColumn.Sentence sentence ? sentence.expr() : null;
                if (expr != null) {
                    assertThat(before)
                            .as("%s: %s", table.spec().id(), column.symbol())
                            .containsAll(Inputs.of(expr));
                }
                assertThat(before.add(column.symbol()))
                        .as("%s has %s twice", table.spec().id(), column.symbol())
                        .isTrue();
            }
        }
    }
}
