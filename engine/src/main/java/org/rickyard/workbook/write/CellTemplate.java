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

    private final Kind kind;
    private final int column;
    private final int style;
    private final byte[][] pieces;
    private final int size;
    private final CellTemplate next;

    /**
     * A template without a formula.
     *
     * @param next templates of the same kind and column that were made before
     */
    CellTemplate(Kind kind, int column, int style, CellTemplate next) {
        this(kind, column, style, new byte[][] {NOTHING}, NOTHING, next);
    }

    /**
     * A template with a formula.
     *
     * @param formula its pieces, as they stand in a part
     */
    CellTemplate(Kind kind, int column, int style, byte[][] formula) {
        this(kind, column, style, formula, SheetXml.bytes(END_FORMULA), null);
    }

    private CellTemplate(Kind kind, int column, int style, byte[][] inside, byte[] end, CellTemplate next) {
        this.kind = kind;
        this.column = column;
        this.style = style;
        this.next = next;
        this.pieces = new byte[inside.length + 1][];
        pieces[0] = SheetXml.bytes("<c r=\"" + CellAddress.letters(column));
        ByteArrayOutputStream piece = new ByteArrayOutputStream();
        piece.writeBytes(SheetXml.bytes("\" s=\"" + style + kind.opening));
        for (int i = 0; i < inside.length; i++) {
            piece.writeBytes(inside[i]);
            if (i == inside.length - 1) {
                piece.writeBytes(end);
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

    /** Whether it is of cells like this one. */
    boolean isOf(Kind otherKind, int otherColumn, int otherStyle) {
        return kind == otherKind && column == otherColumn && style == otherStyle;
    }

    /** This one or the one behind it that has a look; null if there is none. */
    CellTemplate of(int wantedStyle) {
        CellTemplate each = this;
        while (each != null && each.style != wantedStyle) {
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
