package org.rickyard.workbook.write;

import java.util.HashMap;
import java.util.Map;
import org.rickyard.formula.CellPrinter;
import org.rickyard.lists.CellAddress;

/** Link formulas by the client's sheet and column they lead to; only the row differs from link to link. */
final class LinkTemplates {
    private record Key(String formula, String sheet, int column) {}

    private final Map<Key, CellFormula> templates = new HashMap<>();
    private final Key[] lastKeys = new Key[400];
    private final CellFormula[] lastTemplates = new CellFormula[400];

    /**
     * The formula that leads to a cell.
     *
     * @param at the column of ours it stands in, whose last formula is looked at first
     */
    CellFormula of(int at, String formula, CellAddress cell) {
        Key last = lastKeys[at];
        if (last != null
                && last.column() == cell.column()
                && last.formula().equals(formula)
                && last.sheet().equals(cell.sheet())) {
            return lastTemplates[at];
        }
        Key key = new Key(formula, cell.sheet(), cell.column());
        CellFormula template = templates.computeIfAbsent(key, LinkTemplates::made);
        lastKeys[at] = key;
        lastTemplates[at] = template;
        return template;
    }

    private static CellFormula made(Key key) {
        String sheet = CellAddress.quoted(key.sheet()) + "!";
        String letters = CellAddress.letters(key.column());
        return CellFormula.of(key.formula()
                .replace(LinkFormula.SOURCE_TEXT, sheet + "$" + letters + "$" + CellPrinter.ROW)
                .replace(Hyperlink.PLACE, Hyperlink.inText(sheet) + letters + CellPrinter.ROW));
    }
}
