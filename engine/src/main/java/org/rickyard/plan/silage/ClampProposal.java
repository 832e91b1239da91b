package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.rickyard.formula.Values;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.Crop;

/**
 * Which clamp to put a crop in that names none: cut by cut, fields in list order, into the clamps of the holding in
 * list order, each up to its capacity; a field may be split. It is a proposal and no formula: it is made anew at each
 * run, and stands in the sheet as parts in whole per cent.
 */
final class ClampProposal {
    private static final int MOST_ROUNDS = 5;
    private static final double FULL = 100;

    private final PlanContext plan;
    private final FeedFamily.FeedHoldings holdings;
    private final ListRows clamps;
    private final Map<Integer, List<Integer>> clampsOf = new HashMap<>();

    private ClampProposal(PlanContext plan, FeedFamily.FeedHoldings holdings) {
        this.plan = plan;
        this.holdings = holdings;
        this.clamps = plan.rows(Clamps.LIST);
        for (int clamp = 0; clamp < clamps.size(); clamp++) {
            clampsOf.computeIfAbsent(holdings.key(clamps.text(Clamps.HOLDING, clamp)), h -> new ArrayList<>())
                    .add(clamp);
        }
    }

    /** The rows with their proposals. */
    static CropRows of(CropRows crop, PlanContext plan, FeedFamily.FeedHoldings holdings) {
        return new ClampProposal(plan, holdings).propose(crop);
    }

    private CropRows propose(CropRows crop) {
        int[] open = Arrays.stream(crop.withoutClamp())
                .filter(row -> clampsOf.containsKey(holding(crop, row)))
                .toArray();
        if (open.length == 0) {
            return crop;
        }
        PlanContext typed = reckoned(crop);
        double[] capacity = capacities(crop, open, typed);
        CropRows proposed = crop;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            proposed = crop.with(parts(crop, open, typed, capacity));
            if (!lowered(capacity, reckoned(proposed).table("clamps").of(ClampContents.FILL))) {
                break;
            }
        }
        return proposed;
    }

    private int holding(CropRows crop, int row) {
        return holdings.key(crop.holding(row));
    }

    /** The crop and the clamps as they would be, without a word to the client. */
    private PlanContext reckoned(CropRows crop) {
        PlanContext scratch = plan.apart();
        scratch.add(ClampTables.CROP, crop.sources(holdings), "");
        int[] every = RowNumbers.rows(clamps.size());
        scratch.add(ClampTables.CLAMPS, ClampJoin.rows(clamps, every).with(ClampTables.CROPS, crop.crops()), "");
        return scratch;
    }

    /** What each clamp holds; where its dry matter is not known, as if open crops were put into it. */
    private double[] capacities(CropRows crop, int[] open, PlanContext typed) {
        Values known = typed.table("clamps").of(ClampContents.CAPACITY);
        Map<Integer, List<CropRows.Part>> trial = new HashMap<>();
        Map<Integer, Integer> next = new HashMap<>();
        for (int row : open) {
            List<Integer> unknown = clampsOf.get(holding(crop, row)).stream()
                    .filter(clamp -> !known.has(clamp))
                    .toList();
            if (!unknown.isEmpty()) {
                int turn = next.merge(holding(crop, row), 1, Integer::sum);
                trial.put(row, List.of(new CropRows.Part(unknown.get(turn % unknown.size()), CropRows.WHOLE)));
            }
        }
        Values tried = trial.isEmpty()
                ? known
                : reckoned(crop.with(trial)).table("clamps").of(ClampContents.CAPACITY);
        double[] capacity = new double[clamps.size()];
        for (int clamp = 0; clamp < capacity.length; clamp++) {
            capacity[clamp] = known.has(clamp) ? known.number(clamp) : tried.has(clamp) ? tried.number(clamp) : 0;
        }
        return capacity;
    }

    private Map<Integer, List<CropRows.Part>> parts(CropRows crop, int[] open, PlanContext typed, double[] capacity) {
        Values mass = typed.table("crop").of(Crop.ENSILED);
        Values in = typed.table("clamps").of(ClampContents.CROP_IN);
        double[] room = new double[capacity.length];
        for (int clamp = 0; clamp < room.length; clamp++) {
            room[clamp] = in.has(clamp) ? capacity[clamp] - in.number(clamp) : 0;
        }
        Map<Integer, List<CropRows.Part>> parts = new HashMap<>();
        List<Integer> order = IntStream.of(open)
                .boxed()
                .sorted(Comparator.comparingDouble(crop::cut))
                .toList();
        for (int row : order) {
            if (!mass.has(row)) {
                continue;
            }
            int left = CropRows.WHOLE;
            List<CropRows.Part> ofRow = new ArrayList<>();
            for (int clamp : clampsOf.get(holding(crop, row))) {
                int share = (int) Math.min(left, Math.floor(CropRows.WHOLE * room[clamp] / mass.number(row)));
                if (share > 0) {
                    ofRow.add(new CropRows.Part(clamp, share));
                    room[clamp] -= share * mass.number(row) / CropRows.WHOLE;
                    left -= share;
                }
            }
            parts.put(row, ofRow);
        }
        return parts;
    }

    /** Mixing crops of other dry matters may lower what a clamp holds; then less is put into it. */
    private static boolean lowered(double[] capacity, Values fill) {
        boolean lowered = false;
        for (int clamp = 0; clamp < capacity.length; clamp++) {
            if (capacity[clamp] > 0 && fill.has(clamp) && fill.number(clamp) > FULL) {
                capacity[clamp] *= FULL / fill.number(clamp);
                lowered = true;
            }
        }
        return lowered;
    }
}
