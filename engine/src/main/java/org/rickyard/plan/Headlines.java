package org.rickyard.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Values;
import org.rickyard.lists.Counted;
import org.rickyard.plan.season.SeasonTables;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.cost.CostTotals;
import org.rickyard.trade.cost.JobCost;
import org.rickyard.trade.cost.OwnOrHire;
import org.rickyard.trade.cost.OwnershipCost;
import org.rickyard.trade.season.SeasonFit;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.spraying.CatchRun;
import org.rickyard.trade.spraying.FlowRates;
import org.rickyard.trade.spraying.LoadTest;
import org.rickyard.trade.spraying.NozzleWear;
import org.rickyard.trade.spraying.ProductOrder;
import org.rickyard.trade.spraying.SmallSprayers;
import org.rickyard.trade.spraying.Spreading;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.workrate.BucketRate;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.StageRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The few answers of a plan that matter most, for summaries. */
public final class Headlines {
    private static final int MOST_ROWS_OF_A_TABLE = 20;
    private static final int MOST_FIELDS = 2;

    /**
     * One answer.
     *
     * @param table its table
     * @param formula its formula
     * @param row its row
     * @param holding whose it is
     * @param about what it is about, the holding left out
     */
    public record Headline(ResultTable table, Formula formula, int row, String holding, String about) {}

    private Headlines() {}

    /** The answers under a heading each: of every holding its own, and of what is worked out for all of them together. */
    public static Map<String, List<Headline>> byHeading(WorkPlan plan) {
        List<Headline> headlines = of(plan);
        boolean named =
                headlines.stream().anyMatch(headline -> !headline.holding().isEmpty());
        Map<String, List<Headline>> headings = new LinkedHashMap<>();
        for (Headline headline : headlines) {
            boolean lacksHolding =
                    named && headline.table().spec().column(Quantities.HOLDING).isPresent();
            String heading = !headline.holding().isEmpty()
                    ? headline.holding()
                    : lacksHolding ? "Without holding" : "All together";
            headings.computeIfAbsent(heading, h -> new ArrayList<>()).add(headline);
        }
        return headings;
    }

    /** The answers, table by table. */
    public static List<Headline> of(WorkPlan plan) {
        List<Headline> headlines = new ArrayList<>();
        add(headlines, plan.table("holding-totals"), List.of(WorkTotals.HOLDING_HOURS));
        if (!plan.hasJobs()) {
            add(headlines, plan.table(WorkTotals.WORK_RATES), List.of(FieldRates.WORK_RATE, FieldRates.HOURS));
        }
        add(headlines, plan.table(WorkTotals.MACHINE_RATES), List.of(FieldRates.WORK_RATE));
        add(headlines, plan.table(StageRates.HANDLING_RATES), List.of(StageRates.HANDLING));
        add(headlines, plan.table(BucketRate.TABLE), List.of(BucketRate.RATE));
        addTests(headlines, plan);
        add(
                headlines,
                plan.table("spray-blocks"),
                List.of(TankPlan.TOTAL_SPRAY_MIX, TankPlan.FULL_TANKFULS, TankPlan.PART_TANKFUL));
        add(headlines, plan.table("tank-mix"), List.of(TankPlan.PRODUCT_TOTAL));
        add(headlines, plan.table("product-order"), toBuy(plan));
        // Where no crop is listed at all, nobody asks how full the clamps are.
        boolean withCrop = plan.table("crop").rows() > 0;
        add(
                headlines,
                plan.table("clamps"),
                withCrop
                        ? List.of(ClampContents.CLAMP_CAPACITY, ClampContents.CLAMP_FILL)
                        : List.of(ClampContents.CLAMP_CAPACITY));
        add(
                headlines,
                plan.table("feed-balance"),
                List.of(FeedBalance.DAYS_FEED_LASTS, FeedBalance.SURPLUS_OR_SHORTFALL));
        addSlowest(headlines, plan.table(GangRates.GANGS));
        add(headlines, plan.table("pit-digging"), List.of(Digging.DIGGING_HOURS));
        add(headlines, plan.table(SeasonTables.SEASON_ID), List.of(SeasonFit.VERDICT));
        addLate(headlines, plan.table(SeasonTables.PLAN_ID));
        if (!plan.hasJobs()) {
            add(
                    headlines,
                    plan.table(JobCost.MACHINE_COSTS),
                    List.of(OwnershipCost.OWNERSHIP_OF_YEAR, JobCost.COST_OF_HOUR));
        }
        addOwnOrHire(headlines, plan.table("own-or-hire"));
        ResultTable costs = plan.table("holding-costs");
        add(
                headlines,
                costs,
                costs.spec().column(CostTotals.COST).isPresent()
                        ? List.of(CostTotals.HOLDING_FUEL, CostTotals.HOLDING_LABOUR, CostTotals.HOLDING_COST)
                        : List.of(CostTotals.HOLDING_FUEL, CostTotals.HOLDING_LABOUR));
        return headlines;
    }

    /** What a machine was found to put out: who tests it asks for that before all else. */
    private static void addTests(List<Headline> headlines, WorkPlan plan) {
        add(headlines, plan.table("timed-runs"), List.of(SmallSprayers.SPEED_OF_RUN));
        add(headlines, plan.table("flow-rates"), List.of(FlowRates.RATE_FROM_FLOW));
        add(headlines, plan.table(CatchRun.TABLE), List.of(CatchRun.CATCH_RATE));
        add(headlines, plan.table("area-tests"), List.of(SmallSprayers.AREA_TEST_RATE));
        add(headlines, plan.table("spreader-tests"), List.of(Spreading.TEST_RATE));
        add(headlines, plan.table("load-tests"), List.of(LoadTest.RATE_BY_WEIGHT));
        add(headlines, plan.table("tanker-tests"), List.of(LoadTest.RATE_BY_VOLUME));
        add(headlines, plan.table("nozzle-sets"), List.of(NozzleWear.MEASURED_RATE));
    }

    /** Packs where the workbook has packs at all: slurry has none, and what is sprayed may be told by the litre only. */
    private static List<Formula> toBuy(WorkPlan plan) {
        ResultTable order = plan.table("product-order");
        if (IntStream.range(0, order.rows()).noneMatch(order.links(Quantities.PACK_SIZE)::exists)) {
            return List.of(ProductOrder.PRODUCT_NEED);
        }
        return plan.table(Spreading.TABLE).rows() > 0
                ? List.of(ProductOrder.PRODUCT_NEED, ProductOrder.PACKS_TO_BUY)
                : List.of(ProductOrder.PACKS_TO_BUY);
    }

    /**
     * What is not among the answers, for there would be too many: "and 2 more rows on 'Spray blocks', 5 on 'Tank mix'";
     * empty where nothing is. The sheets are named, since the rows left out are of whichever holding comes last there.
     */
    public static String leftOut(WorkPlan plan, Function<TableSpec, String> sheet) {
        StringJoiner words = new StringJoiner(", ", "and ", "").setEmptyValue("");
        Set<String> counted = new HashSet<>(Set.of(SeasonTables.PLAN_ID));
        for (Headline headline : of(plan)) {
            ResultTable table = headline.table();
            // Asked once for each table: of gangs all rows are gone through.
            int more = counted.add(table.spec().id()) ? notShown(table) : 0;
            if (more > 0) {
                words.add((words.length() == 0 ? Counted.more(more, "row") : more) + " on '" + sheet.apply(table.spec())
                        + "'");
            }
        }
        return words.toString();
    }

    /** Rows of a table that has its first on Summary; of a gang one field stands for all. */
    private static int notShown(ResultTable table) {
        return table.spec().id().equals(GangRates.GANGS)
                ? byJob(table).stream()
                        .skip(MOST_ROWS_OF_A_TABLE)
                        .mapToInt(List::size)
                        .sum()
                : table.rows() - MOST_ROWS_OF_A_TABLE;
    }

    private static void add(List<Headline> headlines, ResultTable table, List<Formula> formulas) {
        // Some are made only where there is something for them.
        if (table == null) {
            return;
        }
        int shown = Math.min(table.rows(), MOST_ROWS_OF_A_TABLE);
        List<String> holdings = new ArrayList<>();
        List<String> abouts = new ArrayList<>();
        for (int row = 0; row < shown; row++) {
            boolean held = table.spec().column(Quantities.HOLDING).isPresent();
            holdings.add(held ? table.name(Quantities.HOLDING, row) : "");
            abouts.add(about(table, row));
        }
        // Jobs without a name of their own are told apart by where they are done, and else by where they are typed.
        tellApart(holdings, abouts, row -> fields(table, row));
        tellApart(holdings, abouts, table::written);
        for (int row = 0; row < shown; row++) {
            for (Formula formula : formulas) {
                headlines.add(new Headline(table, formula, row, holdings.get(row), abouts.get(row)));
            }
        }
    }

    private static void tellApart(List<String> holdings, List<String> abouts, IntFunction<String> more) {
        Map<String, Integer> alike = new HashMap<>();
        for (int row = 0; row < abouts.size(); row++) {
            alike.merge(holdings.get(row) + '\n' + abouts.get(row), 1, Integer::sum);
        }
        for (int row = 0; row < abouts.size(); row++) {
            String about = abouts.get(row);
            String told = alike.get(holdings.get(row) + '\n' + about) > 1 ? more.apply(row) : "";
            abouts.set(row, told.isEmpty() ? about : told + ", " + about);
        }
    }

    /** A job may fit its days by itself and still be late, where it waits for a machine or another job. */
    private static void addLate(List<Headline> headlines, ResultTable dayPlan) {
        Values late = dayPlan.of(SeasonFit.DAYS_LATE);
        int shown = 0;
        for (int row = 0; row < dayPlan.rows() && shown < MOST_ROWS_OF_A_TABLE; row++) {
            if (late.has(row) && late.number(row) > 0) {
                headlines.add(new Headline(
                        dayPlan, SeasonFit.LATE, row, dayPlan.name(Quantities.HOLDING, row), about(dayPlan, row)));
                shown++;
            }
        }
    }

    /**
     * How fast each gang goes, and what holds it up, on the field where it goes slowest: the day is planned by that. Which
     * field that is does not change with the figures before the next run, and nobody knows it of fields without a rate.
     */
    private static void addSlowest(List<Headline> headlines, ResultTable gangs) {
        Values rates = gangs.of(GangRates.GANG_RATE);
        List<List<Integer>> shown =
                byJob(gangs).stream().limit(MOST_ROWS_OF_A_TABLE).toList();
        int[] slowest = new int[shown.size()];
        List<String> holdings = new ArrayList<>();
        List<String> abouts = new ArrayList<>();
        for (int i = 0; i < slowest.length; i++) {
            List<Integer> rows = shown.get(i);
            slowest[i] = rows.stream()
                    .filter(rates::has)
                    .min(Comparator.comparingDouble(rates::number))
                    .orElse(rows.get(0));
            holdings.add(gangs.name(Quantities.HOLDING, slowest[i]));
            abouts.add(about(gangs, slowest[i]));
        }
        tellApart(holdings, abouts, i -> gangs.written(slowest[i]));
        for (int i = 0; i < slowest.length; i++) {
            String about = abouts.get(i) + whyThisField(rates, shown.get(i));
            headlines.add(new Headline(gangs, GangRates.RATE_OF_GANG, slowest[i], holdings.get(i), about));
            if (rates.has(slowest[i])) {
                headlines.add(new Headline(gangs, GangRates.BOTTLENECK_OF_GANG, slowest[i], holdings.get(i), about));
            }
        }
    }

    private static String whyThisField(Values rates, List<Integer> rows) {
        long given = rows.stream().filter(rates::has).count();
        if (rows.size() == 1 || given == 0) {
            return "";
        }
        return given == rows.size()
                ? ", where the gang was slowest when run"
                : ", where the gang was slowest when run of the fields that have a rate";
    }

    /** The rows of each gang, one for each field: by where its job is typed, for many jobs have no name. */
    private static Collection<List<Integer>> byJob(ResultTable gangs) {
        Map<String, List<Integer>> jobs = new LinkedHashMap<>();
        for (int row = 0; row < gangs.rows(); row++) {
            String job = gangs.name(Quantities.HOLDING, row) + '\n' + gangs.written(row);
            jobs.computeIfAbsent(job, any -> new ArrayList<>()).add(row);
        }
        return jobs.values();
    }

    /** Whether a machine pays, and from what area on; where there is none the sentence says so. */
    private static void addOwnOrHire(List<Headline> headlines, ResultTable machines) {
        int shown = Math.min(machines.rows(), MOST_ROWS_OF_A_TABLE);
        for (int row = 0; row < shown; row++) {
            String holding = machines.name(Quantities.HOLDING, row);
            headlines.add(new Headline(machines, OwnOrHire.SENTENCE, row, holding, about(machines, row)));
            if (machines.of(OwnOrHire.BREAK_EVEN).has(row)) {
                headlines.add(new Headline(machines, OwnOrHire.BREAK_EVEN_AREA, row, holding, about(machines, row)));
            }
        }
    }

    /** The fields of a row's block, "North 40, Barn and 3 more"; "" if it has none. */
    private static String fields(ResultTable table, int row) {
        ResultTable work = table.other(WorkTotals.WORK_RATES);
        if (work == null
                || table.spec().column(Keys.BLOCK_KEY).isEmpty()
                || work.spec().column(Keys.BLOCK_KEY).isEmpty()
                || !fieldsOfJob(table, row).isEmpty()) {
            return "";
        }
        double block = table.of(Keys.BLOCK_KEY).number(row);
        Values blocks = work.of(Keys.BLOCK_KEY);
        List<String> named = new ArrayList<>();
        int more = 0;
        for (int line = 0; line < work.rows(); line++) {
            if (blocks.has(line) && blocks.number(line) == block) {
                more += named.size() == MOST_FIELDS ? 1 : 0;
                if (named.size() < MOST_FIELDS) {
                    named.add(work.name(Quantities.FIELD, line));
                }
            }
        }
        return String.join(", ", named) + Counted.andMore(more);
    }

    /** The fields of a job without a name, which its row tells itself. */
    private static String fieldsOfJob(ResultTable table, int row) {
        return table.spec().column(Quantities.FIELDS_OF_JOB).isEmpty()
                ? ""
                : table.of(Quantities.FIELDS_OF_JOB).word(row);
    }

    private static String about(ResultTable table, int row) {
        List<String> words = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            boolean fields = column.symbol().equals(Quantities.FIELDS_OF_JOB);
            if (fields || column instanceof TableColumn.Name && !column.symbol().equals(Quantities.HOLDING)) {
                String name = fields ? fieldsOfJob(table, row) : table.name(column.symbol(), row);
                if (!name.isEmpty()) {
                    words.add(name);
                }
            }
        }
        String whole = table.spec().id().equals("feed-balance") ? "all stock fed" : "all listed work";
        return words.isEmpty() ? whole : String.join(", ", words);
    }
}
