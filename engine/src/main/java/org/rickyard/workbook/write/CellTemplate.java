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
    private static final String END_FORMULA = "</f><v>";

    private final int style;
    private final CellFormula formula;
    private final byte[][] pieces;
    private final int size;

    /**
     * A template.
     *
     * @param formula null unless the kind is one of a formula
     */
    CellTemplate(Kind kind, int column, int style, CellFormula formula) {
        this.style = style;
        this.formula = formula;
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

    boolean isOf(int otherStyle, CellFormula otherFormula) {
        return style == otherStyle && formula == otherFormula;
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
