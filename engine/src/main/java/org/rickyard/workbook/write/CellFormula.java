package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.List;
import org.rickyard.formula.CellPrinter;

/** A cell formula cut into fixed pieces between which one row number goes. Equal only to itself. */
public final class CellFormula {
    private final List<String> pieces;
    private final byte[][] escaped;

    private CellFormula(String formula) {
        pieces = List.of(formula.split(String.valueOf(CellPrinter.ROW), -1));
        escaped = pieces.stream()
                .map(piece -> SheetXml.bytes(ByteText.escape(piece)))
                .toArray(byte[][]::new);
    }

    /** The formula of a whole column, with {@link CellPrinter#ROW} where the row's number goes. */
    static CellFormula of(String formula) {
        return new CellFormula(formula);
    }

    /** The pieces, as they stand in the grid. */
    public List<String> pieces() {
        return pieces;
    }

    void put(ByteText out, int rowNumber) throws IOException {
        out.put(escaped[0]);
        for (int i = 1; i < escaped.length; i++) {
            out.put(rowNumber).put(escaped[i]);
        }
    }
}
