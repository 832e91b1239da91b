package org.rickyard.workbook.follow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.CellSink;
import org.rickyard.workbook.read.SheetCells;

/**
 * Works out the client's formulas for which the file stores no value. Libraries for scripts write such files: the values
 * come only when a spreadsheet program opens them. What is not certain to come out there as it does here (dates of
 * today, arrays, other workbooks, functions off {@link CertainFunctions the list}, errors) stays without a value.
 */
public final class UnstoredFormulas {
    /** Beyond that many the workbook has to be opened and saved: the texts of more formulas take too much room. */
    static final int MOST = 200_000;

    private final Map<Long, String> formulas = new HashMap<>();

    /**
     * What was worked out.
     *
     * @param count how many cells
     * @param first one of them; null if there are none
     */
    public record Done(int count, CellAddress first) {}

    private UnstoredFormulas() {}

    /**
     * Gives the cells without stored value the value that their formulas come to, where that is certain.
     *
     * @param scope the names and tables of the workbook
     * @param sheets the sheets that were read, which are read once more if they have such cells
     */
    public static Done workOut(BookScope scope, BookReader reader, List<SheetRef> sheets, List<SheetCells> cells)
            throws IOException {
        long uncomputed = cells.stream().mapToLong(SheetCells::uncomputed).sum();
        if (uncomputed == 0 || uncomputed > MOST) {
            return new Done(0, null);
        }
        UnstoredFormulas unstored = new UnstoredFormulas();
        for (SheetRef sheet : sheets) {
            for (int i = 0; i < cells.size(); i++) {
                if (cells.get(i).sheet().equals(sheet.name()) && cells.get(i).uncomputed() > 0) {
                    reader.stream(sheet, unstored.reading(i));
                }
            }
        }
        return unstored.workOut(scope, cells);
    }

    private Done workOut(BookScope scope, List<SheetCells> cells) {
        EvaluatedBook book = new EvaluatedBook(scope, cells, formulas);
        // In the order of the sheets and rows: what leans on cells above finds them worked out.
        List<Long> places = new ArrayList<>(formulas.keySet());
        places.sort(null);
        Map<Long, EvaluatedBook.Outcome> outcomes = new HashMap<>();
        for (long place : places) {
            EvaluatedBook.Outcome outcome = book.outcome(place);
            if (outcome != null) {
                outcomes.put(place, outcome);
            }
        }
        CellAddress first = null;
        for (long place : places) {
            EvaluatedBook.Outcome outcome = outcomes.get(place);
            if (outcome != null) {
                SheetCells sheet = cells.get(sheet(place));
                sheet.comesTo(row(place), column(place), outcome.kind(), outcome.number(), outcome.text());
                first = first == null ? new CellAddress(sheet.sheet(), row(place), column(place)) : first;
            }
        }
        return new Done(outcomes.size(), first);
    }

    private CellSink reading(int sheet) {
        return new CellSink() {
            private boolean array;

            @Override
            public void arrayFormula() {
                array = true;
            }

            @Override
            public void cell(
                    int row, int column, Kind kind, double number, String text, Format format, String formula) {
                if (kind == Kind.UNCOMPUTED && !array && !formula.isEmpty()) {
                    formulas.put(place(sheet, row, column), formula);
                }
                array = false;
            }
        };
    }

    /** A place in the book as a number that sorts by sheet, row and column. */
    static long place(int sheet, int row, int column) {
        return ((long) sheet * CellAddress.ROWS + row) * CellAddress.COLUMNS + column;
    }

    static int sheet(long place) {
        return (int) (place / CellAddress.COLUMNS / CellAddress.ROWS);
    }

    static int row(long place) {
        return (int) (place / CellAddress.COLUMNS % CellAddress.ROWS);
    }

    static int column(long place) {
        return (int) (place % CellAddress.COLUMNS);
    }
}
