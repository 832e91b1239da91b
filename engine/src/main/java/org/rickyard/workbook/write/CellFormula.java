package org.rickyard.workbook.write;

import java.util.List;
import org.rickyard.formula.CellPrinter;
import org.rickyard.workbook.graft.CellText;

/** A cell formula cut into fixed pieces between which one row number goes. Equal only to itself. */
public final class CellFormula {
    private final List<String> pieces;
    private final byte[][] escaped;

    private CellFormula(String formula) {
        pieces = List.of(formula.split(String.valueOf(CellPrinter.ROW), -1));
        escaped = new byte[pieces.size()][];
        for (int i = 0; i < escaped.length; i++) {
            escaped[i] = SheetXml.bytes(CellText.escaped(pieces.get(i)));
        }
    }

    /** The formula of a whole column, with {@link CellPrinter#ROW} where the row's number goes. */
    static CellFormula of(String formula) {
        return new CellFormula(formula);
    }

    /** The pieces, as they stand in the grid. */
    public List<String> pieces() {
        return pieces;
    }

    /** The pieces as they stand in a part. */
    byte[][] escaped() {
        return escaped;
    }
}
