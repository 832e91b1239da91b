package org.rickyard.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Keys;
import org.rickyard.trade.workrate.GangRates;

/** Makes the tables of power, fuel, labour and money. */
final class CostFamily {
    private final PlanContext plan;
    private final List<WorkRows.Work> works;
    private final Holdings holdings;
    private final PriceRows prices;
    private final ListRows machines;

    private CostFamily(PlanContext plan, WorkRows works, Holdings holdings) {
        this.plan = plan;
        this.holdings = holdings;
        machines = plan.rows(Machines.LIST);
        prices = new PriceRows(plan.rows(Assumptions.LIST), plan.findings());
        boolean asked = prices.any()
                || works.all().stream().anyMatch(w -> w.tractor() >= 0 || powered(w.machine()))
                || IntStream.range(0, machines.size()).anyMatch(this::priced);
        this.works = asked ? works.all() : List.of();
    }

    static void build(PlanContext plan, WorkRows works, Holdings holdings) {
        new CostFamily(plan, works, holdings).build();
    }

    private void build() {
        String none = "no job names a tractor, and no machine has power, fuel, crew or a price";
        String unpriced = "no machine in the jobs has a price, and no wage or fuel price is on Assumptions";
        plan.add(CostTables.INPUTS, work(works), none);
        int[] priced = works.stream()
                .flatMap(w -> java.util.stream.Stream.of(w.machine(), w.tractor()))
                .filter(machine -> machine >= 0 && priced(machine))
                .mapToInt(Integer::intValue)
                .distinct()
                .sorted()
                .toArray();
        boolean money =
                prices.any() || priced.length > 0 || works.stream().anyMatch(w -> given(Machines.CHARGE, w.machine()));
        plan.add(
                CostTables.MACHINE_COSTS,
                prices.apply(new RowSources(priced.length)
                        .with(Role.MACHINE, machines, priced)
                        .with(Keys.MACHINE_KEY, plusOne(priced))),
                unpriced);
        plan.add(CostTables.JOB_COSTS, prices.apply(work(money ? works : List.of())), unpriced);
        int[] compared = Arrays.stream(priced)
                .filter(machine -> given(Machines.CHARGE, machine)
                        && !machines.text(Machines.OWN_OR_HIRED, machine).equals("hired"))
                .toArray();
        plan.add(
                CostTables.OWN_OR_HIRE,
                new RowSources(compared.length)
                        .with(Role.MACHINE, machines, compared)
                        .with(Keys.MACHINE_KEY, plusOne(compared)),
                "no own machine has a contractor's charge beside its price");
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

    private RowSources work(List<WorkRows.Work> rows) {
        int[] field = ints(rows, WorkRows.Work::field);
        RowSources sources = new RowSources(rows.size())
                .with(Role.JOB, plan.rows(Jobs.LIST), ints(rows, WorkRows.Work::job))
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, machines, ints(rows, WorkRows.Work::machine))
                .with(Role.TRACTOR, machines, ints(rows, WorkRows.Work::tractor))
                .with(Keys.WORK_KEY, CropRows.ascending(rows.size(), 1))
                .with(Keys.LINE_KEY, ints(rows, WorkRows.Work::line))
                .with(Keys.GANG_KEY, ints(rows, WorkRows.Work::gang))
                .with(Keys.MACHINE_KEY, plusOne(ints(rows, WorkRows.Work::machine)))
                .with(Keys.TRACTOR_KEY, plusOne(ints(rows, WorkRows.Work::tractor)))
                .with(Keys.HOLDING_KEY, Arrays.stream(field).map(holdings::key).toArray())
                .with(
                        GangRates.ALIKE,
                        rows.stream().mapToDouble(WorkRows.Work::alike).toArray());
        return FieldYields.apply(sources, plan.lists(), field);
    }

    private boolean powered(int machine) {
        return given(Machines.POWER, machine) || given(Machines.FUEL, machine) || given(Machines.CREW, machine);
    }

    private boolean priced(int machine) {
        return given(Machines.PURCHASE_PRICE, machine) || given(Machines.LIST_PRICE, machine);
    }

    private boolean given(ColumnSpec column, int machine) {
        ListRows.State state = machines.state(column, machine);
        return state != ListRows.State.NO_COLUMN && state != ListRows.State.BLANK;
    }

    private static int[] ints(List<WorkRows.Work> rows, ToIntFunction<WorkRows.Work> of) {
        return rows.stream().mapToInt(of).toArray();
    }

    private static int[] plusOne(int[] numbers) {
        return Arrays.stream(numbers).map(n -> n + 1).toArray();
    }
}
