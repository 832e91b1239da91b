package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.Products;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.Countries;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.join.MixesOfJobs;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.join.TupleNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SeasonDose;

/** Applications of products to fields: one record each, and the season of each product on each field. */
final class SprayRecordRows {
    /** One product on one field; the job row that puts it there, and the one that tells the day of harvest. */
    private record Application(int line, int product, int season, int job, int harvest) {}

    private final PlanContext plan;
    private final ListRows jobs;
    private final SprayLines lines;
    private final SprayRows products;
    private final MixesOfJobs mixOf;
    private final Countries countries;
    private final List<Application> applications = new ArrayList<>();
    /** The applications of each product on each field, by day. */
    private final List<List<Integer>> seasons = new ArrayList<>();

    SprayRecordRows(PlanContext plan, JobLines read, SprayLines lines, SprayRows products) {
        this.plan = plan;
        this.jobs = plan.rows(Jobs.LIST);
        this.lines = lines;
        this.products = products;
        this.mixOf = read.mixOf();
        this.countries = new Countries(plan.lists());
        TupleNumbers numbers = new TupleNumbers(2);
        List<JobLines.Block> blocks = read.blocks();
        for (int block = 0; block < blocks.size(); block++) {
            for (int line : lines.ofBlock(blocks.get(block).key())) {
                List<Integer> rows = read.rows(lines.line(line));
                int harvest = harvest(rows, lines.line(line).job());
                for (int product : products.ofBlock(block)) {
                    int season = numbers.of(
                            products.productKey(product), lines.line(line).field());
                    if (season == seasons.size()) {
                        // Most have one application only.
                        seasons.add(new ArrayList<>(1));
                    }
                    seasons.get(season).add(applications.size());
                    applications.add(new Application(line, product, season + 1, applied(rows, product), harvest));
                }
            }
        }
        Comparator<Integer> byDay = Comparator.comparingDouble(this::day);
        for (List<Integer> season : seasons) {
            if (season.size() > 1) {
                season.sort(byDay);
            }
        }
    }

    /** The row of a spraying that names a product, or the mix it is of. */
    private int applied(List<Integer> rows, int product) {
        if (rows.size() == 1) {
            return rows.get(0);
        }
        ListedProducts.Use wanted = products.use(product);
        boolean mixed = wanted.mix() >= 0;
        String name =
                mixed ? plan.rows(Mixes.LIST).text(Mixes.MIX, wanted.mix()) : jobs.text(Jobs.PRODUCT, wanted.job());
        return rows.stream()
                .filter(row -> NameKey.key(mixed ? mixOf.name(row) : jobs.text(Jobs.PRODUCT, row))
                        .equals(NameKey.key(name)))
                .findFirst()
                .orElse(rows.get(0));
    }

    private int harvest(List<Integer> rows, int leading) {
        return rows.stream()
                .filter(row -> jobs.isFilled(Jobs.LAST_HARVEST_DATE, row))
                .findFirst()
                .orElse(leading);
    }

    /** The earliest day typed for the product or its spraying; those without one come last, in list order. */
    private double day(int application) {
        Application applied = applications.get(application);
        int own = applied.job();
        int job = jobs.isFilled(Jobs.EARLIEST, own)
                ? own
                : lines.line(applied.line()).job();
        return jobs.gives(Jobs.EARLIEST, job) ? jobs.number(Jobs.EARLIEST, job) : Double.MAX_VALUE;
    }

    RowSources records() {
        int count = applications.size();
        int[] previous = new int[count];
        int[] which = new int[count];
        for (List<Integer> season : seasons) {
            for (int i = 0; i < season.size(); i++) {
                which[season.get(i)] = i + 1;
                previous[season.get(i)] = season.get(Math.max(0, i - 1)) + 1;
            }
        }
        return sources(RowNumbers.rows(count))
                .with(Keys.RECORD_KEY, RowNumbers.keys(count))
                .with(Keys.PREVIOUS_KEY, previous)
                .with(SeasonDose.WHICH, which);
    }

    RowSources season() {
        int[] firsts = new int[seasons.size()];
        for (int i = 0; i < firsts.length; i++) {
            firsts[i] = seasons.get(i).get(0);
        }
        return sources(firsts);
    }

    private RowSources sources(int[] at) {
        int count = at.length;
        int[] job = new int[count];
        int[] applied = new int[count];
        int[] harvest = new int[count];
        int[] dosed = new int[count];
        int[] mix = new int[count];
        int[] product = new int[count];
        int[] field = new int[count];
        int[] machine = new int[count];
        int[] spray = new int[count];
        int[] mixKey = new int[count];
        int[] season = new int[count];
        String[] unit = new String[count];
        String[] country = new String[count];
        for (int i = 0; i < count; i++) {
            Application application = applications.get(at[i]);
            JobLines.Line line = lines.line(application.line());
            ListedProducts.Use row = products.use(application.product());
            job[i] = line.job();
            applied[i] = application.job();
            harvest[i] = application.harvest();
            dosed[i] = row.job() < 0 ? -1 : application.job();
            mix[i] = row.mix();
            product[i] = row.product();
            field[i] = line.field();
            machine[i] = line.machine();
            spray[i] = application.line() + 1;
            mixKey[i] = application.product() + 1;
            season[i] = application.season();
            unit[i] = row.unit();
            country[i] = country(line.field());
        }
        return new RowSources(count)
                .with(Role.JOB, jobs, job)
                .with(Role.APPLIED_JOB, jobs, applied)
                .with(Role.HARVEST_JOB, jobs, harvest)
                .with(Role.DOSED_JOB, jobs, dosed)
                .with(Role.MIX, plan.rows(Mixes.LIST), mix)
                .with(Role.PRODUCT, plan.rows(Products.LIST), product)
                .with(Role.FIELD, plan.rows(Fields.LIST), field)
                .with(Role.MACHINE, plan.rows(Machines.LIST), machine)
                .with(Keys.SPRAY_KEY, spray)
                .with(Keys.TANK_MIX_KEY, mixKey)
                .with(Keys.SEASON_KEY, season)
                .with(Quantities.PRODUCT_UNIT, unit)
                .with(Quantities.COUNTRY, country);
    }

    /** The country of the field's holding; null where the field's own cell says, to which the table is linked. */
    private String country(int field) {
        return plan.rows(Fields.LIST).state(Fields.COUNTRY, field) == ListRows.State.GIVEN ? null : countries.of(field);
    }
}
