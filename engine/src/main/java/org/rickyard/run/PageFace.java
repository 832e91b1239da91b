package org.rickyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.read.CellSink;
import org.rickyard.workbook.write.CellFormula;
import org.rickyard.workbook.write.Meaning;

/**
 * The face of a sheet of ours that is no table (Summary, Basis, Spray cards, Clamp cards): a row is about the words
 * typed in it, under the last line above it that holds one text and nothing else.
 */
final class PageFace implements CellSink, Meaning {
    private static final List<String> LABELS = List.of("heading", "line");

    /** Only the first columns name a line; further ones hold units, drawings and the like. */
    private static final int NAMES = 2;

    private static final class Line {
        private final List<String> words = new ArrayList<>();
        private int cells;
    }

    private final Map<Integer, Line> lines = new TreeMap<>();

    private void line(int row, int column, String typed) {
        Line line = lines.computeIfAbsent(row, r -> new Line());
        line.cells++;
        if (typed != null && column < NAMES) {
            line.words.add(SheetFace.words(typed));
        }
    }

    @Override
    public void cell(int row, int column, Kind kind, double number, String text, Format format, String formula) {
        line(row, column, formula == null && kind == Kind.TEXT ? text : null);
    }

    @Override
    public boolean wantsFormulaText() {
        return false;
    }

    @Override
    public void formula(int row, int column, CellFormula formula, int number) {
        line(row, column, null);
    }

    @Override
    public void number(int row, int column, double number) {
        line(row, column, null);
    }

    @Override
    public void text(int row, int column, String text) {
        line(row, column, text);
    }

    /** The face, once all cells have been told. */
    SheetFace face() {
        List<List<String>> items = new ArrayList<>();
        String heading = "";
        for (Map.Entry<Integer, Line> entry : lines.entrySet()) {
            while (items.size() < entry.getKey()) {
                items.add(List.of("", ""));
            }
            Line line = entry.getValue();
            boolean alone = line.cells == 1 && line.words.size() == 1;
            heading = alone ? line.words.get(0) : heading;
            items.add(line.words.isEmpty() ? List.of("", "") : List.of(heading, String.join(", ", line.words)));
        }
        return new SheetFace(List.of(), LABELS, 0, items.size() - 1, items::get);
    }
}
