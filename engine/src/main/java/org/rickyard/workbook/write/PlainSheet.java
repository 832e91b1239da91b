package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.graft.CellLook;

/** A small sheet built line by line: Summary, Basis, Checks, About. */
final class PlainSheet extends OurSheet {
    private sealed interface Cell {}

    private record TextCell(CellLook look, String text) implements Cell {}

    private record NumberCell(CellLook look, double number) implements Cell {}

    private record FormulaCell(CellLook look, String formula, Double number, String text) implements Cell {}

    /** One line; cells are put from left to right. */
    final class Line {
        private final List<Cell> cells = new ArrayList<>();
        private int height;

        /** A text; the empty text leaves the cell out. */
        Line text(CellLook look, String text) {
            cells.add(new TextCell(look, text));
            return this;
        }

        /** A typed number. */
        Line number(CellLook look, double number) {
            cells.add(new NumberCell(look, number));
            return this;
        }

        /** A formula that gives a number now. */
        Line formula(CellLook look, String formula, double number) {
            cells.add(new FormulaCell(look, formula, number, null));
            return this;
        }

        /** A formula that gives a text now. */
        Line formula(CellLook look, String formula, String text) {
            cells.add(new FormulaCell(look, formula, null, text));
            return this;
        }

        /** A formula that leads to a cell. */
        Line linkTo(CellAddress cell) {
            return formula(Looks.LINK, Hyperlink.to(cell), cell.toString());
        }

        /** Leaves a cell out. */
        Line skip() {
            cells.add(null);
            return this;
        }

        /** A height in points. */
        Line height(int points) {
            height = points;
            return this;
        }
    }

    private final Looks.Numbers looks;
    private final List<Integer> widths;
    private final int frozenRows;
    private final List<Line> lines = new ArrayList<>();
    private final Set<Integer> pages = new LinkedHashSet<>();
    private boolean cards;

    PlainSheet(Looks.Numbers looks, List<Integer> widths, int frozenRows) {
        this.looks = looks;
        this.widths = widths;
        this.frozenRows = frozenRows;
    }

    /** Begins the next line. */
    Line line() {
        Line line = new Line();
        lines.add(line);
        return line;
    }

    /**
     * A long text over as many lines as it needs, each beginning in the same column: it runs on over the columns to its
     * right, which a text broken inside its cell could not.
     *
     * @param from the line it begins on, at the cell that comes next
     * @param width of a line in characters
     */
    void paragraph(Line from, CellLook look, String text, int width) {
        int before = from.cells.size();
        List<String> lines = BrokenLines.of(text, width, "");
        from.text(look, lines.get(0));
        for (String words : lines.subList(1, lines.size())) {
            Line line = line();
            for (int i = 0; i < before; i++) {
                line.skip();
            }
            line.text(look, words);
        }
    }

    /** Whether a cell of the first column can show a text whole that is broken into lines in it. */
    boolean holds(String text) {
        return SheetXml.holds(text, widths.get(0));
    }

    /** Prints the sheet upright, as cards. */
    PlainSheet asCards() {
        cards = true;
        return this;
    }

    /** Begins the next card, on a page of its own. */
    void newPage() {
        pages.add(next());
    }

    /** The index of the line that comes next. */
    int next() {
        return lines.size();
    }

    @Override
    void write(SheetXml sheet) throws IOException {
        sheet.begin(widths, frozenRows, 0, !cards);
        int head = 0;
        int card = 0;
        int highest = 0;
        for (int row = 0; row < lines.size(); row++) {
            Line line = lines.get(row);
            int height = line.height > 0
                    ? line.height
                    : line.cells.isEmpty() ? SheetXml.LINE_HEIGHT : sheet.heightFor(wrapped(line));
            head += row < frozenRows ? height : 0;
            card = (pages.contains(row) ? head : card) + height;
            highest = Math.max(highest, card);
            if (line.cells.isEmpty()) {
                continue;
            }
            sheet.row(row, height);
            for (int column = 0; column < line.cells.size(); column++) {
                put(sheet, column, line.cells.get(column));
            }
        }
        if (cards) {
            sheet.endCards(
                    List.copyOf(pages),
                    highest,
                    widths.stream().mapToInt(width -> width).sum());
        } else {
            sheet.end();
        }
    }

    private static List<String> wrapped(Line line) {
        List<String> texts = new ArrayList<>();
        for (Cell cell : line.cells) {
            if (cell instanceof TextCell text) {
                texts.add(text.look().wrap() ? text.text() : "");
            } else if (cell instanceof FormulaCell formula && formula.text() != null) {
                texts.add(formula.look().wrap() ? formula.text() : "");
            } else {
                texts.add("");
            }
        }
        return texts;
    }

    private void put(SheetXml sheet, int column, Cell cell) throws IOException {
        if (cell instanceof TextCell text) {
            sheet.text(column, looks.of(text.look()), text.text());
        } else if (cell instanceof NumberCell number) {
            sheet.number(column, looks.of(number.look()), number.number());
        } else if (cell instanceof FormulaCell formula) {
            CellFormula content = CellFormula.of(formula.formula());
            if (formula.number() != null) {
                sheet.formula(column, looks.of(formula.look()), content, formula.number());
            } else {
                sheet.formula(column, looks.of(formula.look()), content, formula.text());
            }
        }
    }
}
