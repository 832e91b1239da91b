package org.rickyard.lists.header;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** Distances there and back, of which the lists want the half: told with what to write, and never read. */
public final class ThereAndBack {
    private static final Pattern SAID = Pattern.compile("(?i)\\b(round[ -]trips?|there (and|&) back|out and back"
            + "|return (trip|journey|distance|haul|run)|both ways)\\b");

    /** The unit, last in the header, in brackets or not. */
    private static final Pattern UNIT = Pattern.compile("(\\p{L}+)\\.?[)\\]]?\\s*$");

    private final Grid grid;
    private final int headerRow;

    public ThereAndBack(Grid grid, int headerRow) {
        this.grid = grid;
        this.headerRow = headerRow;
    }

    /** Whether a header of a distance says that it is there and back. */
    public static boolean isSaid(ColumnSpec column, String header) {
        return column.measuredBy(Units.M) && SAID.matcher(header).find();
    }

    /** What must be asked of a header that is read as a distance, and says that it is there and back. */
    public String question(ColumnSpec column, int sheetColumn, String header) {
        String unit = unit(header);
        return "It is there and back, and " + column.name() + " is one way: write half of it under "
                + column.name() + " ("
                + (unit.isEmpty() ? column.symbol().unit().symbol() : unit) + ")"
                + half(sheetColumn) + ".";
    }

    /** Of a list of fields without a distance to the clamp: a header that is no column and gives twice one. */
    void caution(HeaderRow.Match match, String[] headers, List<Finding> findings) {
        for (int i = 0; i < match.headings().length && match.places(Fields.DISTANCE_TO_CLAMP) == 0; i++) {
            int column = match.firstColumn() + i;
            if (match.headings()[i] == null
                    && headers[column] != null
                    && SAID.matcher(headers[column]).find()
                    && !unit(headers[column]).isEmpty()) {
                String unit = " (" + unit(headers[column]) + ")";
                findings.add(Finding.caution(
                        grid.address(headerRow, column),
                        Words.quoted(headers[column])
                                + " is not read: it is there and back, and the lists have distances"
                                + " one way. Write half of it under " + Fields.DISTANCE_TO_CLAMP.name() + unit + ", or "
                                + Fields.DISTANCE_TO_FILL_POINT.name() + unit + " if it is that" + half(column)
                                + "."));
            }
        }
    }

    /** The unit of length that a header ends with; "" if it ends with another word, as a time does. */
    private static String unit(String header) {
        Matcher last = UNIT.matcher(header);
        return last.find()
                        && UnitText.read(last.group(1), CustomaryUnits.UNSET) instanceof UnitText.Known known
                        && known.unit().isCompatible(Units.M)
                ? known.unit().symbol()
                : "";
    }

    /** ": 3 for the 6 in Fields!D2"; "" where no figure stands under the header. */
    private String half(int column) {
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            if (grid.kind(row, column) == Grid.Kind.NUMBER) {
                double figure = grid.number(row, column);
                return ": " + Words.digits(figure / 2) + " for the " + Words.digits(figure) + " in "
                        + grid.address(row, column);
            }
        }
        return "";
    }
}
