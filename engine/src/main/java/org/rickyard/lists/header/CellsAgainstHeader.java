package org.rickyard.lists.header;

import java.util.List;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/** Headers that are not what their words say, as the cells under them tell: numbers of rows, names of people. */
final class CellsAgainstHeader {
    /** Columns that a lone "No." may mean. */
    private static final List<ColumnSpec> COUNTS = List.of(Machines.NUMBER, Herds.HEAD, Stocks.COUNT);

    /** A number all the same, if one that must be typed in figures. */
    private static final Set<String> NUMBER_WORDS =
            Set.of("none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "twelve");

    /** Larger numbers are none that stand for a word, as 1 does for yes and 360 for a digger, and no spans of years. */
    private static final int FIRST_YEAR = 1000;

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    CellsAgainstHeader(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** Takes out, or leaves open, the headings that their cells contradict. */
    void apply(HeaderRow.Match match, Heading[] headings) {
        numbersOfRows(match, headings);
        yearsOfMaking(match, headings);
        for (int i = 0; i < headings.length; i++) {
            leaveWhatCannotBe(headings, i, match.firstColumn() + i);
        }
    }

    /** "No." over 1, 2, 3 counts the rows, and not what is in them. */
    private void numbersOfRows(HeaderRow.Match match, Heading[] headings) {
        for (int i = 0; i < headings.length; i++) {
            Heading heading = headings[i];
            if (heading == null
                    || !heading.isCertain()
                    || heading.settled()
                    || !COUNTS.contains(heading.column())
                    || !HeaderText.of(headers[match.firstColumn() + i]).normal().equals("number")
                    || Words.normal(headers[match.firstColumn() + i])
                            .equals(Words.normal(heading.column().name()))) {
                continue;
            }
            int rows = countedUp(match.firstColumn() + i);
            if (match.places(heading.column()) > 1 && rows > 1) {
                headings[i] = null;
                note(match.firstColumn() + i, " is not read: its cells number the rows.");
            } else if (rows > 2) {
                headings[i] = new Heading(heading.candidates(), heading.rest(), 1, false, null);
            }
        }
    }

    /** A "Year" over 2015 and 2018 is when machines were made or bought, which is neither how old they are nor how long kept. */
    private void yearsOfMaking(HeaderRow.Match match, Heading[] headings) {
        for (int i = 0; i < headings.length; i++) {
            if (headings[i] != null
                    && !headings[i].isCertain()
                    && headings[i].candidates().contains(Machines.AGE)
                    && holdsYears(match.firstColumn() + i)) {
                headings[i] = null;
            }
        }
    }

    private boolean holdsYears(int sheetColumn) {
        boolean any = false;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            if (kind == Grid.Kind.NUMBER && grid.number(row, sheetColumn) > FIRST_YEAR) {
                any = true;
            } else if (kind != Grid.Kind.BLANK) {
                return false;
            }
        }
        return any;
    }

    /**
     * "Operator" over the names of people counts no crew, and "Season" over years is no time of feeding: a header by
     * another name than the column's own is none of it where not one cell could be.
     */
    private void leaveWhatCannotBe(Heading[] headings, int place, int sheetColumn) {
        Heading heading = headings[place];
        boolean open = heading != null
                && heading.isCertain()
                && heading.weight() == 2
                && !heading.settled()
                && heading.rest().isEmpty()
                && !heading.column().required();
        boolean figures = open && heading.column().type() == ColumnSpec.Type.NUMBER;
        boolean words = open && heading.column().type() == ColumnSpec.Type.CHOICE;
        if (!figures && !words) {
            return;
        }
        int others = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            String text = kind == Grid.Kind.TEXT ? Words.trim(grid.text(row, sheetColumn)) : "";
            boolean blank =
                    kind == Grid.Kind.BLANK || kind == Grid.Kind.TEXT && (text.isEmpty() || Words.marksBlank(text));
            boolean other = figures
                    ? kind == Grid.Kind.TEXT
                            && text.chars().noneMatch(Character::isDigit)
                            && !NUMBER_WORDS.contains(Words.normal(text))
                    : kind == Grid.Kind.NUMBER && grid.number(row, sheetColumn) > FIRST_YEAR;
            if (!blank && !other) {
                return;
            }
            others += other ? 1 : 0;
        }
        if (others > 0) {
            headings[place] = null;
            note(sheetColumn, " is not read as the " + heading.column().name() + ": none of its cells could be one.");
        }
    }

    /** How many rows a column counts up from 1; 0 if it holds other figures. */
    private int countedUp(int sheetColumn) {
        int count = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            if (kind == Grid.Kind.NUMBER && grid.number(row, sheetColumn) == count + 1) {
                count++;
            } else if (kind != Grid.Kind.BLANK) {
                return 0;
            }
        }
        return count;
    }

    private void note(int sheetColumn, String what) {
        findings.add(Finding.note(grid.address(headerRow, sheetColumn), Words.quoted(headers[sheetColumn]) + what));
    }
}
