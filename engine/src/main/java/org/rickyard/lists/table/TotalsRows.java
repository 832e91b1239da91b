package org.rickyard.lists.table;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Shared;
import org.rickyard.lists.text.Words;

/** Tells rows that sum up those above them from rows of a list: by a word for a total, or a formula without a name. */
final class TotalsRows {
    private static final Set<String> TOTALS = Set.of(
            "total",
            "sum",
            "subtotal",
            "sub total",
            "grand total",
            "total area",
            "total ha",
            "total ac",
            "overall",
            "overall total",
            "farm total",
            "average",
            "mean",
            "av",
            "ave",
            "avg",
            "total hectare",
            "total acre",
            "total tonne",
            "total t",
            "block total",
            "holding total",
            "sum total",
            "total farm",
            "total all field",
            "all field",
            "total head",
            "total cow",
            "total cattle",
            "total stock",
            "total animal",
            "total number",
            "total acreage",
            "total silage",
            "total feed",
            "total tonnage",
            "total dm",
            "total t dm");

    /** Of these, words that tell what a thing is like as well, as a soil that is "average": totals only as a name. */
    private static final Set<String> DESCRIBING =
            Set.of("average", "mean", "av", "ave", "avg", "sum", "overall", "all field");

    /** How the name of a row ends that sums up a part of the rows above. */
    private static final List<String> ENDS_AS_TOTAL =
            List.of(" total", " totals", " subtotal", " subtotals", " sub-total", " sub total");

    private final FoundTable table;
    private final Grid grid;
    private final int[] identity;
    private final int[] numeric;

    /** Whether "All fields" is where something is done, as in a list of jobs. */
    private final boolean isDoneOnFields;

    /**
     * For one list.
     *
     * @param identity the columns of the sheet that name its rows
     * @param numeric those that hold its figures
     */
    TotalsRows(FoundTable table, int[] identity, int[] numeric) {
        this.table = table;
        this.grid = table.grid;
        this.identity = identity;
        this.numeric = numeric;
        this.isDoneOnFields = table.role(Jobs.LIST) != null || table.role(Cuts.LIST) != null;
    }

    /**
     * Whether a row is one of totals.
     *
     * @param named whether something stands where the list has its names
     */
    boolean holds(int row, boolean named) {
        boolean first = true;
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            Grid.Kind kind = grid.kind(row, column);
            if (kind == Grid.Kind.TEXT) {
                String text = grid.text(row, column);
                if (text.length() <= 24
                        && mayBeTotals(text)
                        && saysTotals(Words.normal(text), first && !named || isIdentity(column))) {
                    return true;
                }
            }
            first &= kind == Grid.Kind.BLANK;
        }
        if (named && !isCalledTotal(row)) {
            return isCalledTotalOf(row);
        }
        for (int column : numeric) {
            if (grid.isFormula(row, column)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a row of totals says that it sums up a part only: "Sub-total". */
    boolean saysSubtotals(int row) {
        for (int column = table.firstColumn; column <= table.lastColumn; column++) {
            String normal = grid.kind(row, column) == Grid.Kind.TEXT ? Words.normal(grid.text(row, column)) : "";
            if (normal.startsWith("sub total") || normal.startsWith("subtotal")) {
                return true;
            }
        }
        return false;
    }

    /** Whether a text is a word for totals; {@code asName} where it stands as the name of its row. */
    private boolean saysTotals(String normal, boolean asName) {
        return TOTALS.contains(normal)
                && (asName || !DESCRIBING.contains(normal))
                && !(isDoneOnFields && normal.equals("all field"));
    }

    private boolean isIdentity(int column) {
        for (int own : identity) {
            if (own == column) {
                return true;
            }
        }
        return false;
    }

    /** "Home Farm total" between the fields sums up some of them, though its figures may be typed. */
    private boolean isCalledTotalOf(int row) {
        if (!SumOfRows.isOfAmounts(table)) {
            return false;
        }
        for (int column : identity) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                String text = grid.text(row, column).strip().toLowerCase(Locale.ROOT);
                if (ENDS_AS_TOTAL.stream().anyMatch(text::endsWith)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Whether a row without a name is told to sum up a part of the list: "Hill Farm total" where farms stand. Elsewhere a
     * text may end so and sum up nothing: a weedkiller, or a note.
     */
    boolean isTotalOfNamed(int row) {
        for (int column : table.columnsOf(List.of(Shared.HOLDING, Shared.BLOCK))) {
            if (grid.kind(row, column) == Grid.Kind.TEXT) {
                String text = grid.text(row, column).strip().toLowerCase(Locale.ROOT);
                if (ENDS_AS_TOTAL.stream().anyMatch(text::endsWith)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** "Total insured": with a formula under the figures it sums them up, and is no name of a row of its own. */
    private boolean isCalledTotal(int row) {
        for (int column : identity) {
            if (grid.kind(row, column) == Grid.Kind.TEXT
                    && grid.text(row, column).strip().regionMatches(true, 0, "total ", 0, "total ".length())) {
                return true;
            }
        }
        return false;
    }

    /** A cheap look at the beginning, since every row is asked. */
    private static boolean mayBeTotals(String text) {
        int start = 0;
        while (start < text.length() && !Character.isLetter(text.charAt(start))) {
            start++;
        }
        if (start == text.length()) {
            return false;
        }
        String beginning =
                switch (Character.toLowerCase(text.charAt(start))) {
                    case 't' -> "total";
                    case 's' -> "su";
                    case 'g' -> "grand";
                    case 'a' -> text.regionMatches(true, start, "all", 0, 3) ? "all" : "av";
                    case 'm' -> "mean";
                    case 'o' -> "overall";
                    case 'f' -> "farm total";
                    case 'b' -> "block total";
                    case 'h' -> "holding total";
                    default -> null;
                };
        return beginning != null && text.regionMatches(true, start, beginning, 0, beginning.length());
    }
}
