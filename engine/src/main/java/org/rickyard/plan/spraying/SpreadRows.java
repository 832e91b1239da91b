package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** The products that are spread or drilled, field by field: fertiliser, muck, slurry, seed; of a mix each of its lines. */
final class SpreadRows {
    /** Types of machines that nothing but solids is spread by. */
    private static final Set<String> SOLIDS = Set.of("fertiliser spreader");

    private final FoundLists lists;
    private final ListedProducts products;
    private final List<Finding> findings;
    private final Set<Finding> told = new HashSet<>();
    private final List<JobLines.Spread> spreads = new ArrayList<>();
    private final List<ListedProducts.Use> uses = new ArrayList<>();

    SpreadRows(FoundLists lists, List<JobLines.Spread> all, ListedProducts products, List<Finding> findings) {
        this.lists = lists;
        this.products = products;
        this.findings = findings;
        List<ListedProducts.Use> ofJob = List.of();
        int job = -1;
        for (JobLines.Spread spread : all) {
            if (spread.job() != job) {
                job = spread.job();
                ofJob = uses(job, SOLIDS.contains(lists.rows(Machines.LIST).text(Machines.TYPE, spread.machine())));
            }
            for (ListedProducts.Use use : ofJob) {
                spreads.add(spread);
                uses.add(use);
            }
        }
    }

    private List<ListedProducts.Use> uses(int job, boolean solid) {
        ListRows jobs = lists.rows(Jobs.LIST);
        ListRows mixes = lists.rows(Mixes.LIST);
        List<ListedProducts.Use> some = new ArrayList<>();
        if (products.mixOf().takes(job)) {
            for (int line : products.linesOfMix(job)) {
                if (isOnAnArea(mixes, Mixes.PRODUCT, Mixes.DOSE, line)) {
                    some.add(products.use(
                            -1, line, mixes.text(Mixes.PRODUCT, line), mixes.address(Mixes.PRODUCT, line)));
                }
            }
        }
        if (jobs.isFilled(Jobs.PRODUCT, job) && isOnAnArea(jobs, Jobs.PRODUCT, Jobs.DOSE, job)) {
            some.add(products.use(job, -1, jobs.text(Jobs.PRODUCT, job), jobs.address(Jobs.PRODUCT, job), solid));
        }
        return some;
    }

    /** Whether a dose is not a share of a spray, which nothing that spreads or drills mixes; that is told. */
    private boolean isOnAnArea(ListRows list, ColumnSpec product, ColumnSpec dose, int row) {
        Optional<Unit> unit = list.unit(dose, row);
        if (unit.isEmpty() || unit.get().isCompatible(Units.DOSE) || unit.get().isCompatible(Units.SUBSTANCE_DOSE)) {
            return true;
        }
        Finding share = Finding.stop(
                list.address(dose, row).orElse(null),
                "'" + list.text(product, row) + "' is spread or drilled, and its dose in " + unit.get()
                        + " is a share of a spray. Expected an amount on an area (kg/ha, t/ac, m3/ha): correct the dose"
                        + " or the machine. Nothing is worked out for it.");
        if (told.add(share)) {
            findings.add(share);
        }
        return false;
    }

    /** What is used, row by row. */
    List<ListedProducts.Use> uses() {
        return uses;
    }

    /** Whether it is timed of any machine how long a load takes it. */
    boolean inRounds() {
        ListRows machines = lists.rows(Machines.LIST);
        return spreads.stream().anyMatch(spread -> machines.isFilled(Machines.ROUND_TIME, spread.machine()));
    }

    /** The sources of the table, one row per job, field and product. */
    RowSources sources() {
        return new RowSources(uses.size())
                .with(
                        Role.JOB,
                        lists.rows(Jobs.LIST),
                        spreads.stream().mapToInt(JobLines.Spread::job).toArray())
                .with(
                        Role.DOSED_JOB,
                        lists.rows(Jobs.LIST),
                        uses.stream().mapToInt(ListedProducts.Use::job).toArray())
                .with(
                        Role.MIX,
                        lists.rows(Mixes.LIST),
                        uses.stream().mapToInt(ListedProducts.Use::mix).toArray())
                .with(
                        Role.PRODUCT,
                        lists.rows(Products.LIST),
                        uses.stream().mapToInt(ListedProducts.Use::product).toArray())
                .with(
                        Role.MACHINE,
                        lists.rows(Machines.LIST),
                        spreads.stream().mapToInt(JobLines.Spread::machine).toArray())
                .with(
                        Role.FIELD,
                        lists.rows(Fields.LIST),
                        spreads.stream().mapToInt(JobLines.Spread::field).toArray())
                .with(
                        Keys.PRODUCT_KEY,
                        uses.stream().mapToInt(ListedProducts.Use::key).toArray())
                .with(
                        Quantities.PRODUCT_UNIT,
                        uses.stream()
                                .map(use -> use.unit().isEmpty() ? null : use.unit())
                                .toArray(String[]::new));
    }
}
