package org.rickyard.workbook.follow;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
 *
 * <p>Other libraries store 0 for every formula. Where the file says of each that it came to 0, and one of them certainly
 * comes to something else, no program has worked them out, and none of those values is taken.
 */
public final class UnstoredFormulas {
    /** Beyond that many the workbook has to be opened and saved: the texts of more formulas take too much room. */
    static final int MOST = 200_000;

    /** What the spreadsheet program may make a nought of where binary numbers leave a trace: 0.3 - 0.1 - 0.2. */
    private static final double TRACE = 1e-9;

    private final Map<Long, String> formulas = new HashMap<>();
    /** Those for which 0 is stored, where it is for all. */
    private final Set<Long> noughts = new HashSet<>();

    private final boolean allNoughts;

    /**
     * What was worked out.
     *
     * @param count how many cells
     * @param first one of them; null if there are none
     * @param storedAsNought whether the file has a 0 for each of the workbook's formulas, in place of no value
     */
    public record Done(int count, CellAddress first, boolean storedAsNought) {}

    private UnstoredFormulas(boolean allNoughts) {
        this.allNoughts = allNoughts;
    }

    /**
     * Gives the cells without stored value the value that their formulas come to, where that is certain.
     *
     * @param scope the names and tables of the workbook
     * @param sheets the sheets that were read, which are read once more if they have such cells
     */
    public static Done workOut(BookScope scope, BookReader reader, List<SheetRef> sheets, List<SheetCells> cells)
            throws IOException {
        long uncomputed = cells.stream().mapToLong(SheetCells::uncomputed).sum();
        long noughts = cells.stream().mapToLong(SheetCells::noughts).sum();
        boolean allNoughts = noughts > 0
                && uncomputed + noughts <= MOST
                && uncomputed + noughts
                        == cells.stream().mapToLong(SheetCells::formulas).sum();
        if (uncomputed == 0 && !allNoughts || uncomputed > MOST) {
            return new Done(0, null, false);
        }
        UnstoredFormulas unstored = new UnstoredFormulas(allNoughts);
        for (SheetRef sheet : sheets) {
            for (int i = 0; i < cells.size(); i++) {
                boolean asked = cells.get(i).uncomputed() > 0
                        || allNoughts && cells.get(i).noughts() > 0;
                if (asked && cells.get(i).sheet().equals(sheet.name())) {
                    reader.stream(sheet, unstored.reading(i));
                }
            }
        }
        return unstored.workOut(scope, cells);
    }

    private Done workOut(BookScope scope, List<SheetCells> cells) {
        noughts.forEach(place -> cells.get(sheet(place)).isUncomputed(row(place), column(place)));
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
        boolean believed = noughts.stream().map(outcomes::get).allMatch(UnstoredFormulas::mayBeNought);
        if (believed) {
            noughts.forEach(place -> outcomes.remove(place));
            noughts.forEach(place -> cells.get(sheet(place)).comesTo(row(place), column(place), Kind.NUMBER, 0, ""));
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
        return new Done(outcomes.size(), first, !believed);
    }

    /** Whether a stored 0 may be what a formula came to, as far as can be told. */
    private static boolean mayBeNought(EvaluatedBook.Outcome outcome) {
        return outcome == null || outcome.kind() == Kind.NUMBER && Math.abs(outcome.number()) <= TRACE;
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
                boolean nought = allNoughts && formula != null && kind == Kind.NUMBER && number == 0;
                if (nought) {
                    noughts.add(place(sheet, row, column));
                }
                if ((nought || kind == Kind.UNCOMPUTED) && !array && !formula.isEmpty()) {
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
