package org.rickyard.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Constant;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.read.AsRead;
import org.rickyard.plan.cost.CostFamily;
import org.rickyard.plan.fit.Extent;
import org.rickyard.plan.fit.OwnUnits;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.fit.UnreadColumns;
import org.rickyard.plan.join.Countries;
import org.rickyard.plan.join.JobIdentity;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.OneSeason;
import org.rickyard.plan.season.SeasonFamily;
import org.rickyard.plan.silage.ClampFamily;
import org.rickyard.plan.spraying.SprayFamily;
import org.rickyard.plan.table.ConstantsInForce;
import org.rickyard.plan.table.EvaluatingThread;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.workrate.WorkRateFamily;
import org.rickyard.trade.catalogue.Catalogue;
import org.rickyard.trade.season.MachineSeason;

/** The lists joined into result tables and evaluated: all there is to say about a workbook, before any is written. */
public final class WorkPlan {
    private final Map<String, ResultTable> tables = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final FoundLists lists;
    private final ConstantsInForce constants;
    private final boolean hasJobs;
    private OwnUnits ownUnits;
    private boolean blocksOfRows;

    private WorkPlan(FoundLists lists) {
        this.lists = lists;
        this.hasJobs = lists.rows(Jobs.LIST).size() > 0;
        findings.addAll(lists.findings());
        constants = ConstantsInForce.read(constants(), lists.rows(Assumptions.LIST), lists.customary(), findings);
        UnknownItems.tell(constants(), lists, findings);
        if (hasJobs) {
            // Without jobs nothing is carted on the road or sprayed, and no law of a country is quoted for fields.
            Countries.ask(lists, findings);
            OneSeason.ask(lists, findings);
        }
    }

    /**
     * Joins and evaluates. Same lists, same plan.
     *
     * @param allTables whether every table is wanted however large the workbook is; see {@link ChiefTables}
     */
    public static WorkPlan of(FoundLists lists, boolean allTables) {
        WorkPlan plan = new WorkPlan(lists);
        plan.build(allTables, true);
        return plan;
    }

    /** As of a very large workbook: the chief tables only, fitted to their rows. */
    static WorkPlan ofChiefTables(FoundLists lists) {
        WorkPlan plan = new WorkPlan(lists);
        plan.build(Extent.only(ChiefTables::contains), new JobLines(lists, plan.findings));
        return plan;
    }

    /** The same with every column that is declared, filled or not: what the fitted tables are held against. */
    static WorkPlan withAllColumns(FoundLists lists) {
        WorkPlan plan = new WorkPlan(lists);
        plan.build(true, false);
        return plan;
    }

    /** Every constant that any formula or caution reads, in the order of Basis. */
    public static List<Constant> constants() {
        return Catalogue.constants();
    }

    private void build(boolean allTables, boolean fitted) {
        JobLines jobLines = new JobLines(lists, findings);
        boolean chiefOnly = !allTables && jobLines.lines().size() > ChiefTables.MOST_LINES;
        if (chiefOnly) {
            findings.add(Finding.note(
                    null,
                    "there are more than " + ChiefTables.MOST_LINES + " lines of work, so only the chief sheets are"
                            + " worked out; ask for all of them with --all-sheets."));
        }
        build(chiefOnly ? Extent.only(ChiefTables::contains) : fitted ? Extent.ALL : Extent.ALL_COLUMNS, jobLines);
    }

    private void build(Extent extent, JobLines jobLines) {
        ownUnits = new OwnUnits(lists, jobLines.lines());
        blocksOfRows = jobLines.joinsRows();
        try (EvaluatingThread beside = new EvaluatingThread()) {
            PlanContext context =
                    new PlanContext(lists, constants, findings, extent, ownUnits, ChiefAnswers.OF_TABLES, beside::take);
            context.measureInputs();
            ClampFamily silage = new ClampFamily(context);
            WorkRateFamily work = WorkRateFamily.build(context, jobLines, silage.fieldCuts(), silage.rollers());
            CostFamily.build(context, work.works(), work.holdings(), silage.fieldCuts());
            SeasonFamily.build(context, work.tasks(), work.works());
            SprayFamily.build(context, jobLines);
            silage.build();
            tables.putAll(context.tables());
        }
        EvaluatingThread.finish(tables.values());
        if (extent.fitted()) {
            UnreadColumns.leaveOut(tables.values());
        }
    }

    /** The tables in reading order. */
    public Collection<ResultTable> tables() {
        return tables.values();
    }

    /** A table by its id. */
    public ResultTable table(String id) {
        return tables.get(id);
    }

    /** What was noticed in reading and joining. */
    public List<Finding> findings() {
        return findings;
    }

    /** The lists it was made from. */
    public FoundLists lists() {
        return lists;
    }

    /** What of the lists only a run can read anew. */
    public AsRead asRead() {
        return new AsRead(
                lists,
                DecidingNumbers.bringRows(),
                DecidingNumbers.places(tables.values()),
                DecidingNumbers.exact(
                        blocksOfRows,
                        planned(),
                        JobIdentity.mayBePartedByDays(lists.rows(Jobs.LIST), lists.rows(Fields.LIST))));
    }

    /** Whether jobs have been given days, of several machines alike as many as there are. */
    private boolean planned() {
        ResultTable bookings = tables.get(MachineSeason.BOOKINGS);
        return bookings != null && bookings.rows() > 0;
    }

    /** The constants reckoned with. */
    public ConstantsInForce constantsInForce() {
        return constants;
    }

    /** In which units the client wants his answers. */
    public OwnUnits ownUnits() {
        return ownUnits;
    }

    /** Whether there are jobs; without them each machine is shown as if used once. */
    public boolean hasJobs() {
        return hasJobs;
    }
}
