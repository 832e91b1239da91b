package org.rickyard.plan.spraying;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Values;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.JobLines;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.WorkTotals;

/**
 * A sprayer's hours are reckoned twice: on Work rates, as for any machine, by an efficiency or by turns; and on Spray
 * fields part by part. Costs and the season go by the first. Where the two lie far apart, that is said once of the
 * sprayer, with what would bring them together.
 */
final class HoursOfSprayers {
    /** Nearer than a tenth the two ways of reckoning are as good as one. */
    private static final double ALIKE = 1.1;

    private static final class Hours {
        private double onWorkRates;
        private double byParts;
        private double spraying;
        private double area;
        private double filling;
    }

    private HoursOfSprayers() {}

    /**
     * Says it.
     *
     * @param lines all lines of the job list, in the order of Work rates; those with a block stand on Spray fields
     */
    static void tell(PlanContext plan, List<JobLines.Line> lines) {
        ListRows machines = plan.rows(Machines.LIST);
        hours(plan, lines).forEach((machine, hours) -> {
            String name = machines.text(Machines.MACHINE, machine);
            if (hours.filling == 0) {
                plan.findings()
                        .add(
                                Finding.note(
                                        machines.address(Machines.FILL_TIME, machine)
                                                .or(() -> machines.address(Machines.MACHINE, machine))
                                                .orElse(null),
                                        "no time for filling '" + name
                                                + "' or fetching its water is typed, so Water volumes has the"
                                                + " same hours at every volume, though a lower one saves fills. Expected Fill time (min)."));
            }
            String both = "the spraying of '" + name + "' takes " + Numbers.rounded(hours.byParts, 2)
                    + " h on Spray fields, part by part,"
                    + " and " + Numbers.rounded(hours.onWorkRates, 2)
                    + " h on Work rates, by an efficiency or by turns alone. Machine"
                    + " hours, Season, fuel, labour and cost go by Work rates";
            if (hours.byParts > ALIKE * hours.onWorkRates) {
                plan.findings()
                        .add(Finding.caution(
                                machines.address(Machines.MACHINE, machine).orElse(null),
                                both + ", so they count too few hours. To bring the two together, "
                                        + (byTurns(machines, machine) ? lostTime(hours) : efficiency(hours))
                                        + "."));
            } else if (hours.onWorkRates > ALIKE * hours.byParts) {
                plan.findings()
                        .add(Finding.note(
                                machines.address(Machines.MACHINE, machine).orElse(null),
                                both + "; Spray hours goes by Spray fields. A part that is not typed is not in Spray"
                                        + " fields: type those left out to bring the two together."));
            }
        });
    }

    /** An efficiency would put the turns that are typed out of use. */
    private static boolean byTurns(ListRows machines, int machine) {
        return machines.isFilled(Machines.TURN_TIME, machine) && !machines.isFilled(Machines.FIELD_EFFICIENCY, machine);
    }

    private static String lostTime(Hours hours) {
        return "add about " + Numbers.rounded((hours.byParts - hours.onWorkRates) / hours.area, 3)
                + " h/ha to its Other lost time";
    }

    private static String efficiency(Hours hours) {
        return "type about " + Math.max(2, Math.round(100 * hours.spraying / hours.byParts))
                + " % as its Field efficiency";
    }

    /**
     * Of several sprayers alike in a job, Season shares the hours among them, and what goes by the tank is of one.
     *
     * @param blocks the spray blocks
     */
    static void tellOfSeveral(PlanContext plan, List<JobLines.Block> blocks) {
        ListRows machines = plan.rows(Machines.LIST);
        ListRows jobs = plan.rows(Jobs.LIST);
        NameKey names = NameKey.of(machines, Machines.MACHINE);
        Set<Integer> told = new HashSet<>();
        for (JobLines.Block block : blocks) {
            String name = machines.text(Machines.MACHINE, block.machine());
            for (MachineMention mention :
                    MachineMention.parse(jobs.text(Jobs.MACHINE, block.firstJob()), names::knows)) {
                if (mention.count() > 1
                        && NameKey.key(mention.name()).equals(NameKey.key(name))
                        && told.add(block.firstJob())) {
                    plan.findings()
                            .add(Finding.note(
                                    jobs.address(Jobs.MACHINE, block.firstJob()).orElse(null),
                                    "'" + name + "' x " + mention.count()
                                            + ": Spray hours and the tankfuls are reckoned as"
                                            + " if one did the whole block; Season shares its hours among them. Give"
                                            + " each its own row and fields to plan its tanks."));
                }
            }
        }
    }

    /** Of each sprayer, over the fields that have hours in both. */
    private static Map<Integer, Hours> hours(PlanContext plan, List<JobLines.Line> lines) {
        Values rates = plan.table(WorkTotals.WORK_RATES).of(FieldRates.FIELD_HOURS);
        Values parts = plan.table(SprayWork.FIELDS).of(SprayWork.HOURS);
        Values spraying = plan.table(SprayWork.FIELDS).of(SprayWork.SPRAYING);
        Values areas = plan.table(SprayWork.FIELDS).of(Quantities.AREA);
        Values filling = plan.table(SprayWork.FIELDS).of(SprayWork.FILLING);
        Values fetching = plan.table(SprayWork.FIELDS).of(SprayWork.FETCHING);
        Map<Integer, Hours> found = new TreeMap<>();
        int row = 0;
        for (int line = 0; line < lines.size(); line++) {
            if (lines.get(line).block() <= 0) {
                continue;
            }
            if (rates.has(line) && parts.has(row)) {
                Hours hours = found.computeIfAbsent(lines.get(line).machine(), machine -> new Hours());
                hours.onWorkRates += rates.number(line);
                hours.byParts += parts.number(row);
                hours.spraying += spraying.number(row);
                hours.area += areas.number(row);
                hours.filling += filling.number(row) + fetching.number(row);
            }
            row++;
        }
        return found;
    }
}
