package org.rickyard.plan.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.OwnMeasures;
import org.rickyard.quantity.Unit;
import org.rickyard.trade.Quantities;

/**
 * Puts beside the chief answers of a table the same in the client's own unit, where that is another than ours. Each is a
 * column of its own, as live as the one it repeats; where holdings measure differently, a column of words says how each
 * row's holding does, and a row has its value in the column of its unit only.
 */
final class OwnUnitColumns {
    /** How the holding of a row measures. */
    static final Symbol MEASURED_IN = Symbol.text("measured in");

    private final TableSpec spec;
    private final List<Symbol> answers;
    private final OwnMeasures[] rows;
    private final Set<OwnMeasures> kinds = new LinkedHashSet<>();

    private OwnUnitColumns(TableSpec spec, List<Symbol> answers, OwnMeasures[] rows) {
        this.spec = spec;
        this.answers = answers;
        this.rows = rows;
        kinds.addAll(List.of(rows));
    }

    /**
     * The table with these columns; just as it is where all rows are of holdings that measure as we do.
     *
     * @param answers the chief answers of the table
     */
    static TableSpec added(TableSpec spec, List<Symbol> answers, RowSources sources, OwnUnits units) {
        if (units.none() || sources.rows() == 0 || answers.isEmpty()) {
            return spec;
        }
        OwnUnitColumns columns = new OwnUnitColumns(spec, answers, measures(spec, sources, units));
        TableSpec more = spec.with(columns.columns());
        if (more.column(MEASURED_IN).isPresent()) {
            sources.with(MEASURED_IN, columns.words());
        }
        return more;
    }

    private static OwnMeasures[] measures(TableSpec spec, RowSources sources, OwnUnits units) {
        OwnMeasures[] measures = new OwnMeasures[sources.rows()];
        LinkCells names = spec.column(Quantities.HOLDING)
                .filter(TableColumn.Name.class::isInstance)
                .map(column ->
                        new LinkCells(column.symbol(), ((TableColumn.Name) column).places(), sources, sources.rows()))
                .orElse(null);
        for (int row = 0; row < measures.length; row++) {
            measures[row] = units.of(names == null ? "" : names.text(row));
        }
        return measures;
    }

    private String[] words() {
        String[] words = new String[rows.length];
        for (int row = 0; row < words.length; row++) {
            words[row] = rows[row].words();
        }
        return words;
    }

    private List<TableColumn> columns() {
        List<TableColumn> columns = new ArrayList<>();
        int first = -1;
        for (TableColumn column : spec.columns()) {
            columns.add(column);
            if (answers.contains(column.symbol())) {
                Map<Unit, List<OwnMeasures>> own = own(column.symbol());
                for (Map.Entry<Unit, List<OwnMeasures>> unit : own.entrySet()) {
                    boolean all = unit.getValue().size() == kinds.size();
                    if (!all && first < 0) {
                        first = columns.size();
                    }
                    columns.add(column(column.symbol(), unit.getKey(), all ? List.of() : unit.getValue()));
                }
            }
        }
        if (first >= 0) {
            columns.add(first, new TableColumn.Word(MEASURED_IN, List.of()));
        }
        return columns;
    }

    /** The units other than ours in which rows want a quantity, each with those who want it. */
    private Map<Unit, List<OwnMeasures>> own(Symbol symbol) {
        Map<Unit, List<OwnMeasures>> own = new LinkedHashMap<>();
        for (OwnMeasures kind : kinds) {
            Optional<Unit> unit = kind.of(symbol.unit());
            unit.ifPresent(
                    one -> own.computeIfAbsent(one, u -> new ArrayList<>()).add(kind));
        }
        return own;
    }

    private static TableColumn column(Symbol ours, Unit unit, List<OwnMeasures> only) {
        Symbol own = Symbol.number(ours.name() + " in " + unit, unit)
                .decimals(OwnUnit.of(ours, unit).decimals());
        Expr same = new Expr.Scale(Expr.value(ours), unit);
        List<Condition> measured = only.stream()
                .map(OwnMeasures::words)
                .distinct()
                .map(words -> Condition.is(MEASURED_IN, words))
                .toList();
        return new TableColumn.Joined(
                own,
                measured.isEmpty()
                        ? same
                        : same.onlyWhen(
                                measured.size() == 1 ? measured.get(0) : Condition.any(measured),
                                "its holding does not measure in " + unit));
    }
}
