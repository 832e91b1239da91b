package org.rickyard.lists.header;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Shared;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** Columns that say the unit of another: "Unit" on its right, "Yield unit" anywhere in the row of headers. */
final class UnitsBeside {
    private static final String UNIT = "unit";

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    /** Columns of the sheet that say the unit of another. */
    private final Set<Integer> unitColumns = new HashSet<>();

    UnitsBeside(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** Whether a header says no more than "Unit". */
    static boolean isUnit(String header) {
        return HeaderText.of(header).normal().equals(UNIT);
    }

    /** Takes what one header says of the unit of another. Returns whether nothing else is to be asked of it. */
    boolean take(HeaderRow.Match match, Heading[] headings, int place) {
        if (isUnits(match, place)) {
            unitsOf(match, headings, place);
            return true;
        }
        if (headings[place] == null) {
            unitsOfAName(match, headings, place);
            return true;
        }
        return false;
    }

    /** The columns of the sheet that were found to say the unit of another. */
    Set<Integer> columns() {
        return unitColumns;
    }

    /** Whether a header says no more than "Unit" and what stands under it is units, as a farm's name is not. */
    private boolean isUnits(HeaderRow.Match match, int place) {
        Heading heading = match.headings()[place];
        if (heading == null || !heading.isCertain() || heading.settled()) {
            return false;
        }
        ListSpec spec = match.vocabulary().spec();
        boolean holding = heading.column() == Shared.HOLDING;
        boolean again = spec.unitColumns().containsValue(heading.column()) && match.places(heading.column()) > 1;
        int sheetColumn = match.firstColumn() + place;
        return (holding || again) && isUnit(headers[sheetColumn]) && holdsUnits(sheetColumn);
    }

    private boolean holdsUnits(int sheetColumn) {
        int units = 0;
        int others = 0;
        for (String cell : TextsBelow.of(grid, headerRow, sheetColumn)) {
            String text = Words.trim(cell);
            boolean unit = SaidUnit.isUnit(text);
            units += unit ? 1 : 0;
            others += unit || text.isEmpty() || Words.marksBlank(text) ? 0 : 1;
        }
        return units > others;
    }

    /** Units that stand beside a column are those of the column on their left. */
    private void unitsOf(HeaderRow.Match match, Heading[] headings, int place) {
        ListSpec spec = match.vocabulary().spec();
        Heading heading = headings[place];
        Heading left = place == 0 ? null : headings[place - 1];
        headings[place] = null;
        int sheetColumn = match.firstColumn() + place;
        if (left == null) {
            return;
        }
        ColumnSpec own = left.candidates().stream()
                .map(spec.unitColumns()::get)
                .filter(column -> column != null)
                .findFirst()
                .orElse(null);
        boolean taken = own != null && match.with(headings).places(own) > 0;
        if (own != null && !taken) {
            headings[place] = heading.as(own, "");
            if (heading.column() == Shared.HOLDING) {
                note(
                        sheetColumn,
                        " is read as " + own.name() + " of " + spec.name() + ": its cells are units, not names of"
                                + " farms.");
            }
            return;
        }
        if (left.isCertain() && left.column().isNumeric() && left.rest().isEmpty()) {
            headings[place - 1] = left.as(left.column(), theUnit(sheetColumn, sheetColumn - 1));
            unitColumns.add(sheetColumn);
            note(sheetColumn, " is read as the unit of " + Words.quoted(headers[sheetColumn - 1]) + ".");
        }
    }

    /** "Yield unit" over units is the unit of "Yield": passed over, nine tons an acre were nine tonnes a hectare. */
    private void unitsOfAName(HeaderRow.Match match, Heading[] headings, int place) {
        int sheetColumn = match.firstColumn() + place;
        String header = headers[sheetColumn] == null
                ? ""
                : HeaderText.of(headers[sheetColumn]).normal();
        if (!header.endsWith(" " + UNIT)) {
            return;
        }
        String name = header.substring(0, header.length() - UNIT.length() - 1);
        for (int i = 0; i < headings.length; i++) {
            int of = match.firstColumn() + i;
            Heading heading = headings[i];
            boolean meant = heading != null
                    && heading.isCertain()
                    && heading.rest().isEmpty()
                    && heading.column().type() == ColumnSpec.Type.NUMBER
                    && !match.vocabulary().spec().unitColumns().containsKey(heading.column())
                    && names(match.vocabulary(), name, heading.column());
            String unit = meant ? theUnit(sheetColumn, of) : "";
            if (!unit.isEmpty()) {
                headings[i] = heading.as(heading.column(), unit);
                unitColumns.add(sheetColumn);
                note(sheetColumn, " is read as the unit of " + Words.quoted(headers[of]) + ".");
                return;
            }
        }
    }

    /** Whether a name without a unit means a column: "Width unit" is the unit of "Working width". */
    private static boolean names(Vocabulary vocabulary, String name, ColumnSpec column) {
        Heading named = vocabulary.read(HeaderText.of(name));
        return named != null
                && named.isCertain()
                && named.column() == column
                && named.rest().isEmpty();
    }

    /**
     * The one unit in a column, or all of them, which is none that a column of figures can have.
     *
     * @param of the figures: further down, where none of them are, other lists may stand
     */
    private String theUnit(int sheetColumn, int of) {
        Set<String> units = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>();
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            String text = grid.kind(row, sheetColumn) == Grid.Kind.TEXT ? Words.trim(grid.text(row, sheetColumn)) : "";
            if (SaidUnit.isUnit(text)) {
                all.add(text);
                if (grid.kind(row, of) == Grid.Kind.NUMBER) {
                    units.add(text);
                }
            }
        }
        // Figures that are yet to be typed, or typed as texts, are in that unit when they come.
        units = units.isEmpty() ? all : units;
        return String.join(" or ", units);
    }

    private void note(int sheetColumn, String what) {
        findings.add(Finding.note(grid.address(headerRow, sheetColumn), Words.quoted(headers[sheetColumn]) + what));
    }
}
