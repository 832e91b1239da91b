package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.notation.ShiftedFormula;

/**
 * The formulas of one sheet as they come by: plain, shared (told once, meant for many cells) and over an area (told at
 * its first cell, where the others look like constants).
 */
final class FormulaReading {
    private final PartXml xml;
    private final boolean wantsText;
    private final Predicate<String> wantsShared;
    private final StringBuilder text = new StringBuilder();
    private final Map<String, Shared> shared = new HashMap<>();
    private final List<Spread> spreads = new ArrayList<>();
    private String formula;
    private boolean array;

    private record Shared(int row, int column, String formula) {}

    private record Spread(CellArea area, String formula) {}

    /**
     * The formulas of the sheet that is being read.
     *
     * @param wantsShared of which shared formulas the text is wanted for each cell
     */
    FormulaReading(PartXml xml, boolean wantsText, Predicate<String> wantsShared) {
        this.xml = xml;
        this.wantsText = wantsText;
        this.wantsShared = wantsShared;
    }

    void enterRow(int row) {
        if (!spreads.isEmpty()) {
            spreads.removeIf(spread -> spread.area.lastRow() < row);
        }
    }

    void clear() {
        formula = null;
        array = false;
    }

    /** From the start tag of a formula to its end tag. */
    void read(int row, int column) throws IOException {
        String type = xml.attribute("t");
        String reference = type == null ? null : xml.attribute("ref");
        String index = "shared".equals(type) ? xml.attribute("si") : null;
        boolean written = readText();
        String own = written && wantsText ? text.toString() : "";
        if (index != null) {
            Shared first = shared.get(index);
            if (written) {
                formula = own;
                if (first == null && wantsText && wantsShared.test(own)) {
                    shared.put(index, new Shared(row, column, own));
                }
            } else {
                boolean told = first != null && CellReference.onGrid(row, column);
                formula = told ? ShiftedFormula.of(first.formula, row - first.row, column - first.column) : "";
            }
        } else if (written || "array".equals(type) || "dataTable".equals(type)) {
            formula = own;
            array = type != null && !type.equals("normal");
            CellArea area = reference == null ? null : CellReference.area("", reference);
            if (area != null && !area.single()) {
                spreads.add(new Spread(area, own));
            }
        }
    }

    /** Gathers the text; whether there was any. */
    private boolean readText() throws IOException {
        text.setLength(0);
        boolean any = false;
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            switch (event) {
                case XMLStreamConstants.CHARACTERS -> {
                    any |= !xml.at.isBlank();
                    if (wantsText) {
                        text.append(xml.at.characters(), xml.at.textStart(), xml.at.textLength());
                    }
                }
                case XMLStreamConstants.START_ELEMENT -> xml.skip();
                case XMLStreamConstants.END_DOCUMENT -> {
                    return any;
                }
                default -> {}
            }
        }
        return any;
    }

    /** Whether the formula of the cell just read is one over arrays or of a data table. */
    boolean isArray() {
        return array;
    }

    /** The formula of the cell just read; null if it has none. */
    String formula(int row, int column) {
        if (formula != null || spreads.isEmpty()) {
            return formula;
        }
        for (Spread spread : spreads) {
            if (spread.area.contains(row, column)) {
                array = true;
                return spread.formula;
            }
        }
        return null;
    }
}
