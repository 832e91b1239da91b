package org.rickyard.workbook.write;

import java.util.List;
import org.rickyard.formula.CellPrinter;
import org.rickyard.workbook.graft.CellText;

/**
 * A cell formula cut into fixed pieces between which one row number goes. Equal only to itself, and written by one
 * thread.
 */
public final class CellFormula {
    private final List<String> pieces;
    private final byte[][] escaped;
    /** Of the cells it was written into, few: mostly it stands in one column, with numbers and words. */
    private CellTemplate template;

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

    /** Whether it holds no row number, and so mostly is one of a kind. */
    boolean isWhole() {
        return escaped.length == 1;
    }

    /** A whole formula as it stands in a part. */
    byte[] whole() {
        return escaped[0];
    }

    /** The template of its cells in a column. */
    CellTemplate template(CellTemplate.Kind kind, int column, int style) {
        CellTemplate known = template == null ? null : template.of(kind, column, style);
        if (known == null) {
            known = new CellTemplate(kind, column, style, escaped, template);
            template = known;
        }
        return known;
    }
}
