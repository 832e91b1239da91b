package org.rickyard.workbook.write;

import java.io.ByteArrayOutputStream;
import org.rickyard.lists.CellAddress;

/**
 * What is the same in cell after cell of a column: everything but the row's number, the one other row number that a
 * formula may hold, and the value. Kept ready as bytes, so that a cell is a few copies.
 */
final class CellTemplate {
    /** What a cell holds, which decides what stands around it. */
    enum Kind {
        EMPTY("\"/>"),
        NUMBER("\"><v>"),
        TEXT("\" t=\"inlineStr\"><is><t xml:space=\"preserve\">"),
        NUMBER_FORMULA("\"><f>"),
        WORD_FORMULA("\" t=\"str\"><f>");

        private final String opening;

        Kind(String opening) {
            this.opening = opening;
        }
    }

    private static final byte[] NOTHING = {};
    /** What stands between a formula and its value. */
    static final String END_FORMULA = "</f><v>";

    private final int style;
    private final CellFormula formula;
    private final byte[][] pieces;
    private final int size;
    private final CellTemplate next;

    /**
     * A template.
     *
     * @param formula null if the cell holds none, or one that is put behind the template by itself
     * @param next templates of the same kind and column that were made before
     */
    CellTemplate(Kind kind, int column, int style, CellFormula formula, CellTemplate next) {
        this.style = style;
        this.formula = formula;
        this.next = next;
        byte[][] inside = formula == null ? new byte[][] {NOTHING} : formula.escaped();
        this.pieces = new byte[inside.length + 1][];
        pieces[0] = SheetXml.bytes("<c r=\"" + CellAddress.letters(column));
        ByteArrayOutputStream piece = new ByteArrayOutputStream();
        piece.writeBytes(SheetXml.bytes("\" s=\"" + style + kind.opening));
        for (int i = 0; i < inside.length; i++) {
            piece.writeBytes(inside[i]);
            if (formula != null && i == inside.length - 1) {
                piece.writeBytes(SheetXml.bytes(END_FORMULA));
            }
            pieces[i + 1] = piece.toByteArray();
            piece.reset();
        }
        int sum = 0;
        for (byte[] each : pieces) {
            sum += each.length;
        }
        this.size = sum;
    }

    /** This one or the one behind it that is of a style and formula; null if there is none. */
    CellTemplate of(int wantedStyle, CellFormula wantedFormula) {
        CellTemplate each = this;
        while (each != null && (each.style != wantedStyle || each.formula != wantedFormula)) {
            each = each.next;
        }
        return each;
    }

    /** The row's number stands behind the first, the other row number behind each further one but the last. */
    byte[][] pieces() {
        return pieces;
    }

    /** How many bytes the pieces have. */
    int size() {
        return size;
    }
}
