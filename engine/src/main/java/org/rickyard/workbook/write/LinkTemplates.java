package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.rickyard.lists.CellAddress;

/** Link formulas cut into pieces, and the addresses between them, kept so that no text is made twice. */
final class LinkTemplates {
    private final Map<String, byte[][]> templates = new HashMap<>();
    private final Map<String, byte[]> sheets = new HashMap<>();
    private final byte[][] columns = new byte[400][];

    /** Writes a formula with the client's cell in its places. */
    void put(ByteText out, String formula, CellAddress cell) throws IOException {
        byte[][] pieces = templates.get(formula);
        if (pieces == null) {
            String[] parts = formula.split(LinkFormula.SOURCE_TEXT, -1);
            pieces = new byte[parts.length][];
            for (int i = 0; i < parts.length; i++) {
                pieces[i] = SheetXml.bytes(ByteText.escape(parts[i]));
            }
            templates.put(formula, pieces);
        }
        byte[] sheet = sheets.get(cell.sheet());
        if (sheet == null) {
            sheet = SheetXml.bytes(ByteText.escape(CellAddress.quoted(cell.sheet())) + "!$");
            sheets.put(cell.sheet(), sheet);
        }
        byte[] column = cell.column() < columns.length ? columns[cell.column()] : null;
        if (column == null) {
            column = SheetXml.bytes(CellAddress.letters(cell.column()) + "$");
            if (cell.column() < columns.length) {
                columns[cell.column()] = column;
            }
        }
        out.put(pieces[0]);
        for (int i = 1; i < pieces.length; i++) {
            out.put(sheet).put(column).put(cell.row() + 1).put(pieces[i]);
        }
    }
}
