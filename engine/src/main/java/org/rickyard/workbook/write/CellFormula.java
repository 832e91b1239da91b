package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.CellPrinter;

/** A cell formula cut into fixed pieces between which the row's number goes. */
final class CellFormula {
    private final byte[][] pieces;
    private final String formula;

    private CellFormula(byte[][] pieces, String formula) {
        this.pieces = pieces;
        this.formula = formula;
    }

    /** The formula of a whole column, with {@link CellPrinter#ROW} where the row's number goes. */
    static CellFormula of(String formula) {
        List<byte[]> pieces = new ArrayList<>();
        int from = 0;
        for (int at = formula.indexOf(CellPrinter.ROW); at >= 0; at = formula.indexOf(CellPrinter.ROW, from)) {
            pieces.add(SheetXml.bytes(ByteText.escape(formula.substring(from, at))));
            from = at + 1;
        }
        pieces.add(SheetXml.bytes(ByteText.escape(formula.substring(from))));
        return new CellFormula(pieces.toArray(byte[][]::new), formula);
    }

    void put(ByteText out, int rowNumber) throws IOException {
        out.put(pieces[0]);
        for (int i = 1; i < pieces.length; i++) {
            out.put(rowNumber).put(pieces[i]);
        }
    }

    /** The formula of one row. */
    String text(int rowNumber) {
        return formula.replace(String.valueOf(CellPrinter.ROW), Integer.toString(rowNumber));
    }
}
