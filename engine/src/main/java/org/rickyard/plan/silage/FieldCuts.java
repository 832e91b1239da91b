package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.CutsMet;

/**
 * Which cut of the cut list a job meets on a field, and which clamp that crop goes to: typed for the cut, for the field,
 * or proposed.
 */
public final class FieldCuts {
    private static final int NONE = -1;

    private final ListRows jobs;
    private final ListRows cuts;
    private final ListRows fields;
    private final ListRows clamps;
    private final List<Finding> findings;
    private final Map<Integer, List<Integer>> ofField = new HashMap<>();
    private final Map<Place, List<CropRows.Part>> parts = new HashMap<>();

    /** A field and a row of the cut list, -1 without cuts. */
    private record Place(int field, int cut) {}

    FieldCuts(PlanContext plan, CropRows crop) {
        this.jobs = plan.rows(Jobs.LIST);
        this.cuts = plan.rows(Cuts.LIST);
        this.fields = plan.rows(Fields.LIST);
        this.clamps = plan.rows(Clamps.LIST);
        this.findings = plan.findings();
        crop.each((field, cut, clamp, share) -> {
            List<Integer> known = ofField.computeIfAbsent(field, f -> new ArrayList<>());
            if (cut >= 0 && !known.contains(cut)) {
                known.add(cut);
            }
            if (clamp >= 0) {
                parts.computeIfAbsent(new Place(field, cut), place -> new ArrayList<>())
                        .add(new CropRows.Part(clamp, share));
            }
        });
    }

    /** For each job and field the cut that is met, or those that it may be. */
    public CutsMet of(int[] job, int[] field) {
        CutsMet met = CutsMet.told(new int[field.length]);
        for (int i = 0; i < field.length; i++) {
            met.rows()[i] = cut(job[i], field[i]);
            List<Integer> perhaps = perhaps(job[i], field[i]);
            if (!perhaps.isEmpty()) {
                met.perhaps()[i] = perhaps.stream().mapToInt(cut -> cut).toArray();
                met.unread()[i] = unread(job[i], perhaps);
            }
        }
        return met;
    }

    /** The cuts it may be where a Cut that cannot be read leaves it open; none where it is told, or nobody says which. */
    private List<Integer> perhaps(int job, int field) {
        List<Integer> known = ofField.getOrDefault(field, List.of());
        if (job < 0 || !jobs.isFilled(Jobs.CUT, job) || cut(job, field) != NONE) {
            return List.of();
        }
        return jobs.gives(Jobs.CUT, job)
                ? known.stream()
                        .filter(cut -> cuts.isFilled(Cuts.CUT, cut) && !cuts.gives(Cuts.CUT, cut))
                        .toList()
                : known;
    }

    private CellAddress unread(int job, List<Integer> perhaps) {
        return (jobs.gives(Jobs.CUT, job) ? cuts.address(Cuts.CUT, perhaps.get(0)) : jobs.address(Jobs.CUT, job))
                .orElseThrow();
    }

    private int cut(int job, int field) {
        List<Integer> known = ofField.getOrDefault(field, List.of());
        if (job >= 0 && jobs.isFilled(Jobs.CUT, job) && !jobs.gives(Jobs.CUT, job)) {
            return NONE;
        }
        if (job >= 0 && jobs.gives(Jobs.CUT, job)) {
            double wanted = jobs.number(Jobs.CUT, job);
            return known.stream()
                    .filter(cut -> number(cut) == wanted)
                    .findFirst()
                    .orElse(NONE);
        }
        return known.size() == 1 ? known.get(0) : NONE;
    }

    private double number(int cut) {
        return cuts.gives(Cuts.CUT, cut) ? cuts.number(Cuts.CUT, cut) : Double.NaN;
    }

    /**
     * The row of the clamp list a gang brings a field's crop to; -1 if none is named or proposed, or it cannot be told.
     * What cannot be told is asked at the job.
     */
    public int clamp(int job, int field) {
        int cut = cut(job, field);
        List<Integer> known = ofField.getOrDefault(field, List.of());
        if (cut == NONE && !known.isEmpty()) {
            return untold(job, field, known);
        }
        List<CropRows.Part> bound = parts.getOrDefault(new Place(field, cut), List.of());
        CropRows.Part most = bound.stream()
                .max(Comparator.comparingInt(CropRows.Part::share))
                .orElse(null);
        if (most != null && bound.size() > 1) {
            findings.add(Finding.note(
                    jobs.address(Jobs.MACHINE, job).orElse(null),
                    "the crop of '" + fields.text(Fields.FIELD, field) + "' is split between "
                            + String.join(
                                    " and ",
                                    bound.stream()
                                            .map(part -> "'" + clamps.text(Clamps.CLAMP, part.clamp()) + "'")
                                            .toList())
                            + "; its gang is reckoned with '" + clamps.text(Clamps.CLAMP, most.clamp())
                            + "', which takes most. For another, type Delivery in the clamp list."));
        }
        return most == null ? NONE : most.clamp();
    }

    private int untold(int job, int field, List<Integer> known) {
        List<Integer> perhaps = perhaps(job, field);
        if (!perhaps.isEmpty()) {
            findings.add(
                    Finding.caution(
                            unread(job, perhaps),
                            "which cut of '" + fields.text(Fields.FIELD, field)
                                    + "' is brought in cannot be told, since this Cut cannot be read. Till it is a number, what"
                                    + " hangs on yield and dry matter of the cut is withheld, and the crop counts for no clamp."));
            return NONE;
        }
        boolean asked = jobs.gives(Jobs.CUT, job);
        String listed = String.join(
                ", ",
                known.stream()
                        .map(cut ->
                                cuts.gives(Cuts.CUT, cut) ? Numbers.readable(number(cut)) : "one without its number")
                        .toList());
        findings.add(Finding.caution(
                jobs.address(asked ? Jobs.CUT : Jobs.JOB, job)
                        .or(() -> jobs.address(Jobs.MACHINE, job))
                        .orElse(null),
                (asked
                                ? "cut " + Numbers.readable(jobs.number(Jobs.CUT, job)) + " of '"
                                : "this job does not say which cut of '")
                        + fields.text(Fields.FIELD, field)
                        + (asked ? "' is not in the cut list, which has cut " : "' it brings in; the cut list has ")
                        + listed + ". Expected one of them; write it in Cut. Till then the yield of the field list is"
                        + " used, if there is one, and the crop counts for no clamp."));
        return NONE;
    }
}
