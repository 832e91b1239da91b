package org.rickyard.plan.cost;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.FieldYields;
import org.rickyard.plan.join.FieldsWorked;
import org.rickyard.plan.join.Holdings;
import org.rickyard.plan.join.JobIdentity;
import org.rickyard.plan.join.KindsOfMachines;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.silage.FieldCuts;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.workrate.WorkRows;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.PowerNeeded;
import org.rickyard.trade.workrate.StageRates;
import org.rickyard.trade.workrate.Suitability;

/** Makes the tables of power, fuel, labour and money. */
public final class CostFamily {
    private final PlanContext plan;
    private final List<WorkRows.Work> works;
    private final Holdings holdings;
    private final FieldCuts cuts;
    private final PriceRows prices;
    private final ListRows machines;
    private final KindsOfMachines kinds;
    private final int[] jobKeys;
    private final boolean noWork;

    private CostFamily(PlanContext plan, WorkRows works, Holdings holdings, FieldCuts cuts) {
        this.plan = plan;
        this.holdings = holdings;
        this.cuts = cuts;
        machines = plan.rows(Machines.LIST);
        kinds = works.kinds();
        prices = new PriceRows(plan.rows(Assumptions.LIST), plan.findings());
        askWhetherHired(works.all().stream()
                .mapToInt(WorkRows.Work::machine)
                .filter(machine -> machine >= 0)
                .distinct()
                .sorted()
                .toArray());
        boolean asked = prices.any()
                || works.all().stream().anyMatch(w -> w.tractor() >= 0 || powered(w.machine()) || charged(w.machine()))
                || IntStream.range(0, machines.size()).anyMatch(this::priced);
        this.works = asked ? works.all() : List.of();
        noWork = works.all().isEmpty();
        jobKeys = jobKeys(plan, this.works);
    }

    /** Makes them, for these works on these holdings; the tables of work rates and gangs must have been made before. */
    public static void build(PlanContext plan, WorkRows works, Holdings holdings, FieldCuts cuts) {
        new CostFamily(plan, works, holdings, cuts).build();
    }

    private void build() {
        String none =
                because("no job names a tractor, and no machine has power, fuel, crew, a price or a charge for hire");
        String unpriced = "no machine has a price: type its Purchase price and List price";
        String noMoney = because("no machine has a price, and no wage or fuel price is on Assumptions");
        plan.add(FuelAndLabourTable.INPUTS, work(works).with(Quantities.KIND_OF_MACHINE, kindsAtWork()), none);
        boolean noJobs = plan.rows(Jobs.LIST).size() == 0;
        if (noJobs) {
            tellWithoutJobs();
        }
        // A price tells what a year and an hour of its machine cost, whether or not a job names it.
        int[] atWork = noJobs ? new int[0] : used();
        int[] used = IntStream.concat(IntStream.range(0, machines.size()).filter(this::priced), Arrays.stream(atWork))
                .distinct()
                .sorted()
                .toArray();
        boolean anyPriced = Arrays.stream(used).anyMatch(this::priced);
        // An own machine without a price stands among the others, so that its row says which cell is blank.
        int[] priced = Arrays.stream(used)
                .filter(machine -> priced(machine) || anyPriced && !mayBeHired(machine))
                .toArray();
        boolean money = prices.any()
                || priced.length > 0
                || works.stream().anyMatch(w -> machines.isFilled(Machines.CHARGE, w.machine()));
        plan.add(
                CostTables.MACHINE_COSTS,
                prices.apply(new RowSources(priced.length)
                        .with(Role.MACHINE, machines, priced)
                        .with(Quantities.KIND_OF_MACHINE, kinds.of(priced))
                        .with(Keys.MACHINE_KEY, RowNumbers.keysOf(priced))),
                unpriced);
        plan.add(CostTables.JOB_COSTS, prices.apply(work(money ? works : List.of())), noMoney);
        int[] compared = Arrays.stream(atWork)
                .filter(machine ->
                        machines.isFilled(Machines.CHARGE, machine) && priced(machine) && !mayBeHired(machine))
                .toArray();
        plan.add(
                CostTables.OWN_OR_HIRE,
                new RowSources(compared.length)
                        .with(Role.MACHINE, machines, compared)
                        .with(Keys.MACHINE_KEY, RowNumbers.keysOf(compared)),
                "no own machine has a contractor's charge beside its price");
        int[] firsts = firstOfEachJob();
        int[] keys = Arrays.stream(firsts).map(i -> jobKeys[i]).toArray();
        FieldsWorked worked = new FieldsWorked(plan.rows(Jobs.LIST), plan.rows(Fields.LIST));
        for (int i = 0; i < works.size(); i++) {
            worked.add(jobKeys[i], works.get(i).job(), works.get(i).field());
        }
        plan.add(
                worked.in(CostTables.jobTotals(money)),
                new RowSources(firsts.length)
                        .with(
                                Role.JOB,
                                plan.rows(Jobs.LIST),
                                Arrays.stream(firsts)
                                        .map(i -> works.get(i).job())
                                        .toArray())
                        .with(Role.FIELD, plan.rows(Fields.LIST), worked.ofOneHolding(keys))
                        .with(Quantities.FIELDS_OF_JOB, worked.named(keys))
                        .with(Keys.JOB_KEY, keys),
                none);
        int[] firstFields = holdings.firstFields(ints(works, WorkRows.Work::field));
        plan.add(
                CostTables.holdingCosts(money),
                new RowSources(firstFields.length)
                        .with(Role.FIELD, plan.rows(Fields.LIST), firstFields)
                        .with(
                                Keys.HOLDING_KEY,
                                Arrays.stream(firstFields).map(holdings::key).toArray()),
                none);
    }

    /** The kinds of the machines at work, foragers in maize by a name of their own. */
    private String[] kindsAtWork() {
        String[] kinds = this.kinds.of(ints(works, WorkRows.Work::machine));
        ListRows fields = plan.rows(Fields.LIST);
        for (int i = 0; i < kinds.length; i++) {
            // Of most kinds the crop does not matter, and reading it takes longer than asking the kind.
            String inMaize = kinds[i] == null ? null : PowerNeeded.inMaize(kinds[i]);
            if (inMaize != null
                    && !inMaize.equals(kinds[i])
                    && Suitability.isMaize(fields.text(Fields.CROP, works.get(i).field()))) {
                kinds[i] = inMaize;
            }
        }
        return kinds;
    }

    /** Why there are no rows of work: this, or that nothing works anywhere. */
    private String because(String nothingAsked) {
        return noWork
                ? "no machine of the machine list has work on a field; what jobs name and lists lack is on Checks"
                : nothingAsked;
    }

    private int[] used() {
        return works.stream()
                .flatMap(w -> java.util.stream.Stream.of(w.machine(), w.tractor()))
                .filter(machine -> machine >= 0)
                .mapToInt(Integer::intValue)
                .distinct()
                .sorted()
                .toArray();
    }

    private RowSources work(List<WorkRows.Work> rows) {
        int[] job = ints(rows, WorkRows.Work::job);
        int[] field = ints(rows, WorkRows.Work::field);
        int[] machine = ints(rows, WorkRows.Work::machine);
        int[] tractor = ints(rows, WorkRows.Work::tractor);
        RowSources sources = new RowSources(rows.size())
                .with(Role.JOB, plan.rows(Jobs.LIST), job)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, machines, machine)
                .with(Quantities.KIND_OF_MACHINE, kinds.of(machine))
                .with(Role.TRACTOR, machines, tractor)
                .with(Keys.WORK_KEY, RowNumbers.keys(rows.size()))
                .with(Keys.LINE_KEY, ints(rows, WorkRows.Work::line))
                .with(Keys.GANG_KEY, ints(rows, WorkRows.Work::gang))
                .with(Keys.MACHINE_KEY, RowNumbers.keysOf(machine))
                .with(Keys.JOB_KEY, rows.isEmpty() ? new int[0] : jobKeys)
                .with(Keys.AREA_KEY, rows.isEmpty() ? new int[0] : areaKeys())
                .with(Keys.TRACTOR_KEY, RowNumbers.keysOf(tractor))
                .with(Keys.HOLDING_KEY, Arrays.stream(field).map(holdings::key).toArray())
                .with(
                        StageRates.ALIKE,
                        rows.stream().mapToDouble(WorkRows.Work::alike).toArray());
        sources.only(Quantities.FUEL_FOR_AREA, notByTheHour(rows));
        return FieldYields.apply(sources, plan.lists(), field, cuts.of(job, field));
    }

    /** A machine's own fuel by the hour goes before its tractor's by the hectare. */
    private boolean[] notByTheHour(List<WorkRows.Work> rows) {
        boolean[] applies = new boolean[rows.size()];
        for (int i = 0; i < applies.length; i++) {
            int machine = rows.get(i).machine();
            applies[i] = machine < 0
                    || !machines.isFilled(Machines.FUEL, machine)
                    || machines.unit(Machines.FUEL, machine)
                            .map(unit -> unit.isCompatible(Quantities.FUEL_FOR_AREA.unit()))
                            .orElse(true);
        }
        return applies;
    }

    /** Each job's number. */
    private static int[] jobKeys(PlanContext plan, List<WorkRows.Work> works) {
        JobIdentity identity = new JobIdentity(plan.rows(Jobs.LIST), plan.rows(Fields.LIST));
        Map<String, Integer> keys = new HashMap<>();
        return works.stream()
                .mapToInt(work -> keys.computeIfAbsent(identity.key(work.job()), job -> keys.size() + 1))
                .toArray();
    }

    private int[] areaKeys() {
        Set<Long> seen = new HashSet<>();
        int[] keys = new int[works.size()];
        for (int i = 0; i < keys.length; i++) {
            boolean first = seen.add((long) jobKeys[i] << 32 | works.get(i).field());
            keys[i] = first ? jobKeys[i] : 0;
        }
        return keys;
    }

    private int[] firstOfEachJob() {
        Set<Integer> seen = new HashSet<>();
        return IntStream.range(0, works.size())
                .filter(i -> seen.add(jobKeys[i]))
                .toArray();
    }

    /** Whether it is hired, or something is typed for that which cannot be read. */
    private boolean mayBeHired(int machine) {
        return machines.isFilled(Machines.OWN_OR_HIRED, machine)
                && (!machines.gives(Machines.OWN_OR_HIRED, machine)
                        || machines.text(Machines.OWN_OR_HIRED, machine).equals("hired"));
    }

    private boolean charged(int machine) {
        return mayBeHired(machine) && machines.isFilled(Machines.CHARGE, machine);
    }

    /** A charge beside a price is for comparison; one alone is a bill that nobody would miss if it were left out. */
    private void askWhetherHired(int[] used) {
        for (int machine : used) {
            if (machines.isFilled(Machines.CHARGE, machine)
                    && !machines.isFilled(Machines.OWN_OR_HIRED, machine)
                    && !priced(machine)) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.CHARGE, machine).orElse(null),
                                "'" + machines.text(Machines.MACHINE, machine)
                                        + "' has a charge but nothing says that it is hired, so it is reckoned as your own"
                                        + " and the charge is in no bill. Write hired (or own) in a column Own or hired, and"
                                        + " in Charge includes whether the charge is for everything, all but fuel, or the"
                                        + " machine only."));
            }
        }
    }

    /** What is burnt, who drives and what is charged stood there, and nothing said why no answer came of it. */
    private void tellWithoutJobs() {
        for (ColumnSpec column : List.of(Machines.FUEL, Machines.CREW, Machines.CHARGE)) {
            int first = IntStream.range(0, machines.size())
                    .filter(machine -> machines.isFilled(column, machine))
                    .findFirst()
                    .orElse(-1);
            if (first >= 0) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(column, first).orElse(null),
                                "fuel, labour, charges and the cost of work are reckoned for jobs, and none are listed here,"
                                        + " so what is typed of them, and any wage or fuel price, is used for nothing yet."
                                        + " Add a list Jobs with the headers Field, Operation and Machine, and say in it"
                                        + " which machine works which field."));
                return;
            }
        }
    }

    private boolean powered(int machine) {
        return machines.isFilled(Machines.POWER, machine)
                || machines.isFilled(Machines.FUEL, machine)
                || machines.isFilled(Machines.CREW, machine);
    }

    private boolean priced(int machine) {
        return machines.isFilled(Machines.PURCHASE_PRICE, machine) || machines.isFilled(Machines.LIST_PRICE, machine);
    }

    private static int[] ints(List<WorkRows.Work> rows, ToIntFunction<WorkRows.Work> of) {
        return rows.stream().mapToInt(of).toArray();
    }
}
