package org.rickyard.templates;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;

/**
 * A column of a template sheet.
 *
 * @param spec the declared column
 * @param symbol the quantity typed in it: the column's own or one of its alternatives
 * @param heading its heading, with the unit
 */
record TemplateColumn(ColumnSpec spec, Symbol symbol, String heading) {
    private TemplateColumn(ColumnSpec spec, Symbol symbol) {
        this(spec, symbol, Headings.of(spec, symbol));
    }

    /**
     * The columns of a list as a template shows them. An output has two columns, in t/h and in m3/h; a column of any
     * other quantity has one, in the unit that its list takes where a heading names none.
     */
    static List<TemplateColumn> of(ListSpec list) {
        List<TemplateColumn> columns = new ArrayList<>();
        for (ColumnSpec spec : list.columns()) {
            columns.add(new TemplateColumn(spec, spec.symbol()));
            if (spec.equals(Machines.OUTPUT)) {
                spec.alternatives().forEach(other -> columns.add(new TemplateColumn(spec, other)));
            }
        }
        return columns;
    }
}
