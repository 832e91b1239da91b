package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.ProductsInARow;
import org.rickyard.lists.header.TypeInTitle;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** A place in a sheet that was recognised as one or more lists: its header and the rows that are its data. */
public final class FoundTable {
    final Grid grid;
    final int headerRow;
    final int firstColumn;
    final int lastColumn;
    List<HeaderRow.Match> roles;
    final Grid.TableRange range;
    final String[] headers;
    Set<Integer> unitColumns = Set.of();
    int unitsRow = -1;
    int secondHeaderRow = -1;
    /** Where the same header stands for the last time so far, as printed lists repeat it. */
    int lastHeaderRow;

    /** Holdings named between its rows, by the row of the sheet they stand in, downwards. */
    final SortedMap<Integer, HoldingAbove.Named> headings = new TreeMap<>();
    /** The holding that is named above its rows and below its header; null if none is. */
    HoldingAbove.Named heading;

    /** The title that tells the type of its machines; null if none does. */
    TypeInTitle title;
    /** Types of machines named between its rows, by the row of the sheet, downwards; empty for a line that names none. */
    final SortedMap<Integer, Optional<TypeInTitle>> types = new TreeMap<>();

    Set<String> dryFields = Set.of();

    private int[] rows = new int[64];
    private int count;

    FoundTable(Grid grid, int headerRow, List<HeaderRow.Match> roles, Grid.TableRange range, String[] headers) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.lastHeaderRow = headerRow;
        this.roles = roles;
        this.range = range;
        this.headers = headers;
        this.firstColumn = roles.get(0).firstColumn();
        this.lastColumn = roles.get(0).lastColumn();
    }

    /** The chief of the lists it serves. */
    public ListSpec chief() {
        return roles.get(0).vocabulary().spec();
    }

    /** The sheet it stands on. */
    public Grid grid() {
        return grid;
    }

    /** The row of its header. */
    public int headerRow() {
        return headerRow;
    }

    /** The first column of its header. */
    public int firstColumn() {
        return firstColumn;
    }

    /** The last column of its header. */
    public int lastColumn() {
        return lastColumn;
    }

    /** The lists it serves, the chief one first; more than one for a flat list. */
    public List<HeaderRow.Match> roles() {
        return roles;
    }

    /** The Excel table it stands in, or null. */
    public Grid.TableRange range() {
        return range;
    }

    /** Headers per column of the sheet; null where there is none. Not to be changed. */
    public String[] headers() {
        return headers;
    }

    /** The row of units under the header, or -1. */
    public int unitsRow() {
        return unitsRow;
    }

    /** The second row of a header two rows deep, or -1. */
    public int secondHeaderRow() {
        return secondHeaderRow;
    }

    /** The title that tells the type of its machines; null if none does. */
    public TypeInTitle title() {
        return title;
    }

    /** The names of fields whose crop is brought in dry, for a list of cuts that names the field alone. */
    public Set<String> dryFields() {
        return dryFields;
    }

    /** Columns that say nothing but the unit of the column on their left. */
    public Set<Integer> unitColumns() {
        return unitColumns;
    }

    /** The rows from one index up to another as a list of their own under the same header. */
    FoundTable part(int from, int to, HoldingAbove.Named named) {
        FoundTable part = new FoundTable(grid, headerRow, roles, range, headers);
        part.unitColumns = unitColumns;
        part.unitsRow = unitsRow;
        part.secondHeaderRow = secondHeaderRow;
        part.lastHeaderRow = lastHeaderRow;
        part.heading = named;
        part.title = title;
        part.headings.putAll(headings);
        part.dryFields = dryFields;
        part.rows = Arrays.copyOfRange(rows, from, to);
        part.count = to - from;
        return part;
    }

    void add(int row) {
        if (count == rows.length) {
            rows = Arrays.copyOf(rows, Math.max(count * 2, 64));
        }
        rows[count++] = row;
    }

    /** Takes the last row out again. */
    void dropLast() {
        count--;
    }

    public int count() {
        return count;
    }

    /** The row of the sheet in which the data row stands. */
    public int row(int index) {
        return rows[index];
    }

    /** The match that makes it serve a list, or null. */
    public HeaderRow.Match role(ListSpec spec) {
        for (HeaderRow.Match match : roles) {
            if (match.vocabulary().spec() == spec) {
                return match;
            }
        }
        return null;
    }

    /** All matches that make it serve a list: several where a row holds several rows of it ({@link ProductsInARow}). */
    public List<HeaderRow.Match> roles(ListSpec spec) {
        return roles.stream().filter(match -> match.vocabulary().spec() == spec).toList();
    }

    /** Leaves one of several lists out of it. */
    public void dropRole(ListSpec spec) {
        roles = roles.stream()
                .filter(match -> match.vocabulary().spec() != spec)
                .toList();
    }

    /** The columns of the sheet whose header means one of these for the chief list. */
    public int[] columnsOf(List<ColumnSpec> wanted) {
        HeaderRow.Match match = roles.get(0);
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && wanted.contains(heading.column())) {
                found.add(match.firstColumn() + i);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The columns of the sheet that hold numbers for any of its lists. */
    int[] numericColumns() {
        java.util.BitSet numeric = new java.util.BitSet();
        for (HeaderRow.Match match : roles) {
            for (int i = 0; i < match.headings().length; i++) {
                Heading heading = match.headings()[i];
                if (heading != null && heading.column().isNumeric()) {
                    numeric.set(match.firstColumn() + i);
                }
            }
        }
        return numeric.stream().toArray();
    }

    /** Whether a column of the sheet holds what is measured, and not how many there are. */
    boolean measures(int sheetColumn) {
        HeaderRow.Match match = roles.get(0);
        Heading heading = match.headings()[sheetColumn - match.firstColumn()];
        return heading != null
                && (heading.column().type() == ColumnSpec.Type.NUMBER
                        || heading.column().type() == ColumnSpec.Type.DOSE)
                && !heading.column().symbol().unit().isSameScale(Units.ONE);
    }

    /** Whether the header of a sheet column means a certain column of any of its lists, or the unit of one. */
    public boolean knows(int sheetColumn) {
        if (unitColumns.contains(sheetColumn)) {
            return true;
        }
        for (HeaderRow.Match match : roles) {
            Heading heading = match.headings()[sheetColumn - match.firstColumn()];
            if (heading != null && heading.isCertain()) {
                return true;
            }
        }
        return false;
    }

    /** What stands in a row under the first header that means one of these columns; "" if none does. */
    public String word(int sheetRow, List<ColumnSpec> wanted) {
        for (HeaderRow.Match match : roles) {
            for (int i = 0; i < match.headings().length; i++) {
                Heading heading = match.headings()[i];
                if (heading != null && heading.isCertain() && wanted.contains(heading.column())) {
                    return Words.trim(grid.text(sheetRow, match.firstColumn() + i));
                }
            }
        }
        return "";
    }

    public CellAddress address(int row, int column) {
        return grid.address(row, column);
    }
}
