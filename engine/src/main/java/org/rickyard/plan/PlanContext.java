package org.rickyard.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;

/** What the families of tables share while a plan is built: the lists, the findings, and the tables made before. */
final class PlanContext {
    private MeasuredInputs measured;
    private final FoundLists lists;
    private final ConstantsInForce constants;
    private final List<Finding> findings;
    private final Map<String, ResultTable> tables = new LinkedHashMap<>();
    private final Extent extent;
    private final OwnUnits ownUnits;

    /** How much of the tables is worked out. */
    enum Extent {
        /** Every table, fitted to the workbook. */
        ALL,
        /** Tables other than {@link ChiefTables} are left without rows, and those are fitted to the rows they have. */
        CHIEF_TABLES,
        /** Every table with every column that is declared, whether anything can fill it or not. */
        ALL_COLUMNS
    }

    /** A context. */
    PlanContext(
            FoundLists lists, ConstantsInForce constants, List<Finding> findings, Extent extent, OwnUnits ownUnits) {
        this.extent = extent;
        this.ownUnits = ownUnits;
        this.lists = lists;
        this.constants = constants;
        this.findings = findings;
    }

    Extent extent() {
        return extent;
    }

    OwnUnits ownUnits() {
        return ownUnits;
    }

    FoundLists lists() {
        return lists;
    }

    ListRows rows(ListSpec list) {
        return lists.rows(list);
    }

    ConstantsInForce constants() {
        return constants;
    }

    List<Finding> findings() {
        return findings;
    }

    Map<String, ResultTable> tables() {
        return tables;
    }

    /** A table made before. */
    ResultTable table(String id) {
        return tables.get(id);
    }

    private boolean leftOut(String table, Symbol symbol) {
        ResultTable made = tables.get(table);
        return made != null && made.leavesOut(symbol);
    }

    /** From now on what was measured stands in the tables where it is not typed. */
    void measureInputs() {
        measured = MeasuredInputs.build(this);
    }

    /** Makes and evaluates a table; the tables it reads must have been made before. */
    ResultTable add(TableSpec declared, RowSources sources, String emptyBecause) {
        TableSpec spec = measured == null ? declared : measured.in(declared, sources);
        boolean chiefOnly = extent == Extent.CHIEF_TABLES;
        boolean left = chiefOnly && !ChiefTables.contains(spec.id());
        if (chiefOnly && !left && !spec.reads().stream().allMatch(ChiefTables::contains)) {
            throw new IllegalStateException("the chief table '" + spec.id() + "' reads one that is none");
        }
        ResultTable table = left
                ? new ResultTable(
                        spec,
                        spec,
                        new RowSources(0),
                        "the workbook is so large that only the chief sheets are worked out; ask for all of them")
                : new ResultTable(
                        spec,
                        OwnUnitColumns.added(
                                sources.rows() == 0 || extent == Extent.ALL_COLUMNS
                                        ? spec
                                        : FittedTable.of(spec, sources, this::leftOut, chiefOnly),
                                sources,
                                ownUnits),
                        sources,
                        emptyBecause);
        tables.put(spec.id(), table);
        table.evaluate(tables, constants, lists.dayZero());
        return table;
    }
}
