package org.rickyard.plan.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.plan.table.ConstantsInForce;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableSpec;

/** What the families of tables share while a plan is built: the lists, the findings, and the tables made before. */
public final class PlanContext {
    private MeasuredInputs measured;
    private final FoundLists lists;
    private final ConstantsInForce constants;
    private final List<Finding> findings;
    private final Map<String, ResultTable> tables = new LinkedHashMap<>();
    private final Extent extent;
    private final OwnUnits ownUnits;
    private final Map<String, List<Symbol>> chiefAnswers;
    private final Consumer<Runnable> evaluations;

    /**
     * A context.
     *
     * @param chiefAnswers of the tables, by their ids, the answers beside which the same stands in the client's own unit
     * @param evaluations takes the evaluation of each table that is made, to have it done by the time it is asked for
     */
    public PlanContext(
            FoundLists lists,
            ConstantsInForce constants,
            List<Finding> findings,
            Extent extent,
            OwnUnits ownUnits,
            Map<String, List<Symbol>> chiefAnswers,
            Consumer<Runnable> evaluations) {
        this.evaluations = evaluations;
        this.extent = extent;
        this.ownUnits = ownUnits;
        this.lists = lists;
        this.constants = constants;
        this.findings = findings;
        this.chiefAnswers = chiefAnswers;
    }

    /**
     * Another for the same lists, with no tables yet and findings of its own: for what is tried before it is settled. Its
     * tables are evaluated when they are asked.
     */
    public PlanContext apart() {
        return new PlanContext(lists, constants, new ArrayList<>(), extent, ownUnits, chiefAnswers, evaluation -> {});
    }

    /** The lists of the workbook. */
    public FoundLists lists() {
        return lists;
    }

    /** The rows of a list; none if the workbook does not have it. */
    public ListRows rows(ListSpec list) {
        return lists.rows(list);
    }

    /** The constants reckoned with. */
    public ConstantsInForce constants() {
        return constants;
    }

    /** What has been noticed so far; more is added at the end. */
    public List<Finding> findings() {
        return findings;
    }

    /** The tables made so far, by their ids, in the order they were made in. */
    public Map<String, ResultTable> tables() {
        return tables;
    }

    /** A table made before. */
    public ResultTable table(String id) {
        return tables.get(id);
    }

    private boolean leftOut(String table, Symbol symbol) {
        ResultTable made = tables.get(table);
        return made != null && made.leavesOut(symbol);
    }

    /** From now on what was measured stands in the tables where it is not typed. */
    public void measureInputs() {
        measured = MeasuredInputs.build(this);
    }

    /** Makes a table and has it evaluated; the tables it reads must have been made before. */
    public ResultTable add(TableSpec declared, RowSources sources, String emptyBecause) {
        TableSpec spec = measured == null ? declared : measured.in(declared, sources);
        boolean left = !extent.worked().test(spec.id());
        if (!left && !spec.reads().stream().allMatch(extent.worked())) {
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
                                sources.rows() == 0 || !extent.fitted()
                                        ? spec
                                        : FittedTable.of(
                                                spec,
                                                sources,
                                                this::leftOut,
                                                extent.toTheirRows(),
                                                sentence -> ownUnits.said(sentence, "")),
                                chiefAnswers.getOrDefault(spec.id(), List.of()),
                                sources,
                                ownUnits),
                        sources,
                        emptyBecause);
        Runnable evaluation = table.evaluation(tables, constants, lists.dayZero());
        tables.put(spec.id(), table);
        evaluations.accept(evaluation);
        return table;
    }
}
