package org.rickyard.lists.table;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Set;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.text.Words;

/**
 * Tells by its figures whether the last row of a list sums up those above it, or a row between them those since the last
 * such row, whatever it is called: "Whole farm", "All", or the farm's own name. Read as one more field it would double the
 * farm.
 */
final class SumOfRows {
    /** What it is, so far as its figures show. */
    enum Verdict {
        /** A row of the list. */
        NONE,
        /** One figure that is the sum of those above: it may be chance. */
        PERHAPS,
        /** A row of totals. */
        TOTALS,
        /** A row of means. */
        MEANS
    }

    /** The lists whose figures can be added up; "all" in a list of jobs is what they are done on. */
    private static final Set<ListSpec> OF_AMOUNTS = Set.of(Fields.LIST, Stocks.LIST, Herds.LIST);

    /** Names of rows of means. */
    private static final Set<String> OF_MEANS = Set.of("avg", "ave", "average ...", "mean ...");

    /** Names of rows that are about all the rows above; dots stand for what may follow. */
    private static final Set<String> OF_ALL =
            Set.of("", "all", "whole farm", "farm", "overall", "everything", "sum", "σ", "total ...", "sum ...");

    private final FoundTable table;
    private final Grid grid;
    private final int[] identity;
    private final int[] numeric;

    /** Of each of the numeric columns, the sum and the count of its numbers since the last row of totals. */
    private final double[] sums;

    private final int[] counts;

    /** The first row of the list since the last row of totals. */
    private int blockStart;

    /**
     * For one list.
     *
     * @param identity the columns of the sheet that name its rows
     * @param numeric those that hold its figures
     */
    SumOfRows(FoundTable table, int[] identity, int[] numeric) {
        this.table = table;
        this.grid = table.grid;
        this.identity = identity;
        this.numeric = numeric;
        this.sums = new double[numeric.length];
        this.counts = new int[numeric.length];
    }

    /** Whether the figures of a list can be added up. */
    static boolean isOfAmounts(FoundTable table) {
        return OF_AMOUNTS.contains(table.chief());
    }

    /** A row was added to the list. */
    void added(int row) {
        for (int i = 0; i < numeric.length; i++) {
            if (grid.kind(row, numeric[i]) == Grid.Kind.NUMBER) {
                sums[i] += grid.number(row, numeric[i]);
                counts[i]++;
            }
        }
    }

    /** A row of totals was passed: those below it sum up what follows. */
    void passed() {
        Arrays.fill(sums, 0);
        Arrays.fill(counts, 0);
        blockStart = table.count();
    }

    /**
     * What a row is that comes next, held against the rows since the last one of totals: a farm's name beside the sum of its
     * fields. One figure that is typed and is a sum may be chance; a formula is hardly.
     */
    Verdict ofNextRow(int row) {
        if (table.count() - blockStart < 2 || !isOfAmounts(table)) {
            return Verdict.NONE;
        }
        int filled = 0;
        boolean measured = false;
        boolean formula = false;
        for (int i = 0; i < numeric.length; i++) {
            if (grid.kind(row, numeric[i]) == Grid.Kind.NUMBER) {
                if (counts[i] < 2 || sums[i] <= 0 || !isRounded(grid.number(row, numeric[i]), sums[i])) {
                    return Verdict.NONE;
                }
                filled++;
                measured |= table.measures(numeric[i]);
                formula |= grid.isFormula(row, numeric[i]);
            }
        }
        if (!measured) {
            return Verdict.NONE;
        }
        boolean less = saysLessThanTheOthers(row, blockStart, table.count());
        return less && (formula || filled > 1) ? Verdict.TOTALS : less || formula ? Verdict.PERHAPS : Verdict.NONE;
    }

    /** What the last row of the list is. */
    Verdict ofLastRow() {
        int last = table.count() - 1;
        if (last < 2 || !isOfAmounts(table)) {
            return Verdict.NONE;
        }
        int row = table.row(last);
        int filled = 0;
        int sums = 0;
        int means = 0;
        int either = 0;
        int measured = 0;
        for (int column : numeric) {
            if (grid.kind(row, column) == Grid.Kind.NUMBER) {
                double value = grid.number(row, column);
                filled++;
                double sum = 0;
                int numbers = 0;
                for (int i = 0; i < last; i++) {
                    if (grid.kind(table.row(i), column) == Grid.Kind.NUMBER) {
                        sum += grid.number(table.row(i), column);
                        numbers++;
                    }
                }
                boolean summed = numbers > 1 && sum > 0 && isRounded(value, sum);
                sums += summed ? 1 : 0;
                measured += summed && table.measures(column) ? 1 : 0;
                boolean mean = numbers > 1 && sum > 0 && isRounded(value, sum / numbers);
                means += mean ? 1 : 0;
                // A share or a yield in a row of totals is the mean of those above.
                either += summed || mean ? 1 : 0;
                if (filled == 1 && either == 0) {
                    return Verdict.NONE;
                }
            }
        }
        if (filled == 0) {
            return Verdict.NONE;
        }
        if (isCalled(row, OF_MEANS) && means == filled) {
            return Verdict.MEANS;
        }
        boolean called = isCalled(row, OF_ALL) && either == filled && sums > 0;
        if (called || sums == filled && filled > 1 && measured > 0 && saysLessThanTheOthers(row, 0, last)) {
            return Verdict.TOTALS;
        }
        // Small counts, as 1, 2 and 3, often happen to be sums.
        return sums == filled && measured > 0 ? Verdict.PERHAPS : Verdict.NONE;
    }

    /** Whether it is called so: "All", "Total Skel Beck", or a sign without letters. */
    private boolean isCalled(int row, Set<String> names) {
        for (int column : identity) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                String name = Words.normal(grid.text(row, column));
                if (names.contains(name) || names.contains(name.split(" ")[0] + " ...")) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether words that stand in each row above, a crop or a type, are missing here. */
    private boolean saysLessThanTheOthers(int row, int from, int to) {
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            boolean words = grid.kind(row, column) == Grid.Kind.BLANK && !isIdentity(column);
            for (int i = from; i < to && words; i++) {
                words = grid.kind(table.row(i), column) == Grid.Kind.TEXT;
            }
            if (words) {
                return true;
            }
        }
        return false;
    }

    private boolean isIdentity(int column) {
        for (int own : identity) {
            if (own == column) {
                return true;
            }
        }
        return false;
    }

    /** Whether a figure is another one, as far as it is written out. */
    private static boolean isRounded(double written, double exact) {
        if (!(Math.abs(written - exact) <= 0.01 * Math.abs(exact))) {
            // No rounding goes further; most rows are told by this alone.
            return false;
        }
        int decimals =
                new BigDecimal(Double.toString(written)).stripTrailingZeros().scale();
        double half = 0.5 * Math.pow(10, -Math.max(0, decimals));
        return Math.abs(written - exact) <= Math.min(half * (1 + 1e-9), 0.01 * Math.abs(exact))
                || Math.abs(written - exact) <= 1e-9 * Math.abs(exact);
    }
}
