package org.rickyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.rickyard.workbook.graft.WatchedReference.Stood;
import org.rickyard.workbook.notation.CellArea;

/**
 * What stands where on a sheet of ours, in words: what each column holds and what each row is about.
 *
 * @param columns the label of each column, none if columns never change
 * @param labels by what rows are told apart
 * @param firstRow of the rows that may move
 * @param lastRow the last row there is
 * @param item the words of a row under these labels
 */
record SheetFace(List<String> columns, List<String> labels, int firstRow, int lastRow, IntFunction<List<String>> item) {
    /** Rows of longer areas are known by the first and the last. */
    static final int LONGEST = 200;

    private static final List<String> COLUMN = List.of("column");

    /** The rows of an area that are looked at. */
    static int[] looked(CellArea area) {
        if (area.lastRow() - area.firstRow() >= LONGEST) {
            return new int[] {area.firstRow(), area.lastRow()};
        }
        int[] rows = new int[area.lastRow() - area.firstRow() + 1];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = area.firstRow() + i;
        }
        return rows;
    }

    /** What stands in the rows of an area. */
    Stood rows(CellArea area) {
        List<List<String>> items = new ArrayList<>();
        for (int row : looked(area)) {
            if (row >= firstRow && row <= lastRow) {
                List<String> words = item.apply(row);
                if (words.stream().anyMatch(word -> !word.isEmpty())) {
                    items.add(words);
                }
            }
        }
        boolean all = area.firstRow() <= firstRow && area.lastRow() >= lastRow && lastRow >= firstRow;
        return new Stood(labels, items, all);
    }

    /** What stands in the columns of an area. */
    Stood columns(CellArea area) {
        List<List<String>> items = new ArrayList<>();
        for (int column = area.firstColumn(); column <= area.lastColumn() && column < columns.size(); column++) {
            items.add(List.of(columns.get(column)));
        }
        boolean all = area.firstColumn() == 0 && area.lastColumn() >= columns.size() - 1;
        return new Stood(COLUMN, items, all);
    }

    /** A text as it is compared and kept: in one line, without letters that XML cannot hold. */
    static String words(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean space = Character.isWhitespace(c) || Character.isSpaceChar(c) || Character.isISOControl(c);
            if (!space) {
                boolean pair = Character.isHighSurrogate(c)
                        && i + 1 < text.length()
                        && Character.isLowSurrogate(text.charAt(i + 1));
                if (pair) {
                    plain.append(c).append(text.charAt(++i));
                } else {
                    plain.append(Character.isSurrogate(c) || c >= 0xFFFE ? '?' : c);
                }
            } else if (plain.length() > 0 && plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
            }
        }
        return plain.toString().strip();
    }
}
