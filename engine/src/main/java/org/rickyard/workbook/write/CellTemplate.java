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

    /** What stands between a formula and its value. */
    static final String END_FORMULA = "</f><v>";

    private final Kind kind;
    private final int column;
    private final int style;
    private final byte[][] pieces;
    private final CellTemplate next;

    /** The cell written last, from which the next one differs in a digit or two of each number. */
    private byte[] cell;

    private final DigitsInPlace row;
    private final DigitsInPlace number;

    /**
     * A template without a formula.
     *
     * @param next templates of the same kind and column that were made before
     */
    CellTemplate(Kind kind, int column, int style, CellTemplate next) {
        this(kind, column, style, new byte[1][0], new byte[0], next);
    }

    /**
     * A template with a formula.
     *
     * @param formula its pieces, as they stand in a part
     * @param next templates of the same formula that were made before
     */
    CellTemplate(Kind kind, int column, int style, byte[][] formula, CellTemplate next) {
        this(kind, column, style, formula, SheetXml.bytes(END_FORMULA), next);
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
        this.row = new DigitsInPlace(1);
        this.number = new DigitsInPlace(pieces.length - 2);
    }

    /** This one or the one behind it that is of such cells; null if there is none. */
    CellTemplate of(Kind wantedKind, int wantedColumn, int wantedStyle) {
        CellTemplate each = this;
        while (each != null && (each.style != wantedStyle || each.kind != wantedKind || each.column != wantedColumn)) {
            each = each.next;
        }
        return each;
    }

    /**
     * A cell up to its value, to be read before the next is asked for.
     *
     * @param rowNumber its row's number, from 1
     * @param otherNumber the other row number that its formula may hold, from 0
     */
    byte[] cell(int rowNumber, int otherNumber) {
        if (cell == null || !row.fits(rowNumber) || !number.fits(otherNumber)) {
            cell = made(rowNumber, otherNumber);
        } else {
            row.put(rowNumber, cell);
            number.put(otherNumber, cell);
        }
        return cell;
    }

    private byte[] made(int rowNumber, int otherNumber) {
        ByteArrayOutputStream made = new ByteArrayOutputStream();
        made.writeBytes(pieces[0]);
        row.append(0, rowNumber, made);
        made.writeBytes(pieces[1]);
        for (int i = 2; i < pieces.length; i++) {
            number.append(i - 2, otherNumber, made);
            made.writeBytes(pieces[i]);
        }
        return made.toByteArray();
    }
}
