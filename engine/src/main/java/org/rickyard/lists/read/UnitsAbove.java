package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;

/**
 * What is said of units above a list, "All areas in acres, distances in miles" or "Fields (acres)". Where headers say none
 * the usual unit of a column is not taken over the words of who wrote the list, and theirs neither, for nobody can tell
 * how far down they hold: it is asked.
 */
final class UnitsAbove {
    private static final int ROWS_LOOKED_AT = 6;

    /** A longer text is an essay, and no heading. */
    private static final int LONGEST = 200;

    /** With more of them a row is the header of another list, or one of its rows. */
    private static final int MOST_CELLS = 2;

    /** Miles are for no width, and inches for no haul: between a unit that may be meant and the column's own. */
    private static final double FARTHEST_APART = 100;

    private static final String WORD = "[\\p{L}²³]+[23]?";
    private static final String UNIT = WORD + "(?: ?/ ?" + WORD + "| per " + WORD + ")*";
    private static final String AND = " ?(?:,|&|\\+|\\band\\b|\\bor\\b) ?";
    private static final String THINGS =
            "\\b(area|distance|haul|length|width|height|depth|spacing|speed|yield|volume|tank|weight"
                    + "|size|rate|dose|flow|pressure|power|time|wind|rain|rainfall|price|cost"
                    + "|dimension|measurement|measure|figure)s?\\b";

    /** "Areas in acres", "all in feet", "Units: ft, mph", "Speeds mph", "Fields (acres)". */
    private static final Pattern SAID = Pattern.compile("(?i)(?:" + THINGS
            + "(?: are| is)?(?: all)?(?: in)?|\\bunits?(?: are)?(?: in)?|\\bin\\b|(?=\\())[ :=(-]*(" + UNIT + "(?:"
            + AND
            + UNIT + ")*)(?= ?(?:$|[.,;()\\n]|[-\u2013] | (?:unless|except|only|throughout|and)\\b))");

    private final FoundTable table;
    private final CustomaryUnits customary;

    UnitsAbove(FoundTable table, CustomaryUnits customary) {
        this.table = table;
        this.customary = customary;
    }

    /** What to ask where a unit is said above that would measure a column and is not its own; null if none is. */
    String doubt(ColumnSpec column, String header, Unit own) {
        Grid grid = table.grid();
        for (int row = table.headerRow() - 1; row >= Math.max(0, table.headerRow() - ROWS_LOOKED_AT); row--) {
            List<Integer> texts = texts(grid, row);
            if (texts == null) {
                return null;
            }
            for (int at : texts) {
                String text = Words.trim(grid.text(row, at));
                Unit said = said(text, column, header, own);
                if (said != null) {
                    return Words.quoted(text) + " (" + grid.address(row, at)
                            + ") stands above it: is it"
                            + " in " + said + "? Write the unit in the header, " + column.name() + " (" + said + ") or "
                            + column.name() + " (" + own + ").";
                }
            }
        }
        return null;
    }

    /** Where texts stand over the list; null if the row is one of another list. */
    private List<Integer> texts(Grid grid, int row) {
        List<Integer> texts = new ArrayList<>();
        for (int at = leftmost(grid); at <= table.lastColumn(); at++) {
            if (grid.kind(row, at) == Grid.Kind.NUMBER) {
                return null;
            }
            if (grid.kind(row, at) == Grid.Kind.TEXT && grid.text(row, at).length() <= LONGEST) {
                texts.add(at);
            }
        }
        return texts.size() > MOST_CELLS ? null : texts;
    }

    /** Where a sheet has a margin, titles stand in it: to the left of the list, unless another list is there. */
    private int leftmost(Grid grid) {
        int left = table.firstColumn();
        while (left > 0 && grid.kind(table.headerRow(), left - 1) == Grid.Kind.BLANK) {
            left--;
        }
        return left == 0 ? 0 : table.firstColumn();
    }

    private Unit said(String text, ColumnSpec column, String header, Unit own) {
        Matcher found = SAID.matcher(text);
        while (found.find()) {
            String thing = found.group(1);
            for (String word : found.group(2).split("(?i)" + AND)) {
                Unit unit = isOf(thing, column, header) ? differing(word.strip(), column, own) : null;
                if (unit != null) {
                    return unit;
                }
            }
        }
        return null;
    }

    /** Whether what is said of a thing is said of a column, which goes by the same word; of figures at large all are. */
    private static boolean isOf(String thing, ColumnSpec column, String header) {
        String word = thing == null ? "" : Words.normal(thing);
        boolean atLarge = List.of("", "dimension", "measurement", "measure", "figure", "size")
                .contains(word);
        return atLarge
                || Words.holds(HeaderText.normal(column.name()), word)
                || Words.holds(HeaderText.normal(header), word)
                || word.equals("haul") && Words.holds(HeaderText.normal(column.name()), "distance");
    }

    private Unit differing(String word, ColumnSpec column, Unit own) {
        UnitText read = UnitText.read(word, customary);
        List<Unit> units = read instanceof UnitText.Known known
                ? List.of(known.unit())
                : read instanceof UnitText.Ambiguous ambiguous ? ambiguous.candidates() : List.of();
        return units.stream()
                .filter(unit -> column.measuredBy(unit) && unit.isCompatible(own) && !unit.isSameScale(own))
                .filter(unit -> unit.isProportional() && own.isProportional() && isNear(unit.convert(1, own)))
                .findFirst()
                .orElse(null);
    }

    private static boolean isNear(double ratio) {
        return ratio < FARTHEST_APART && ratio > 1 / FARTHEST_APART;
    }
}
