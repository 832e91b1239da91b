package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What goes into the tank for each spraying of a field: the products and mixes of its job rows, in whatever order. Sprayings
 * that hold the same have the same content.
 */
final class TankContents {
    /** The sets of things met so far, in ascending order; the first holds nothing. */
    private final List<int[]> sets = new ArrayList<>(List.of(new int[0]));

    private final Map<String, Integer> numbers = new HashMap<>(Map.of(Arrays.toString(new int[0]), 0));
    /** A set and a thing that is added to it; and the set they make. */
    private final TupleNumbers steps = new TupleNumbers(2);

    private int[] made = new int[16];
    private int[] setOf = new int[16];

    /** Of each spraying the last of its entries, counted from 1; of each entry its job row and the entry before it. */
    private int[] last = new int[16];

    private int[] jobs = new int[16];
    private int[] before = new int[16];
    private int entries;

    /** Adds what a job row puts into the tank of a spraying; sprayings and things are told by numbers from 0. */
    void add(int spraying, int thing, int job) {
        if (spraying >= setOf.length) {
            setOf = Arrays.copyOf(setOf, 2 * spraying);
            last = Arrays.copyOf(last, 2 * spraying);
        }
        setOf[spraying] = with(setOf[spraying], thing);
        if (entries == jobs.length) {
            jobs = Arrays.copyOf(jobs, 2 * entries);
            before = Arrays.copyOf(before, 2 * entries);
        }
        jobs[entries] = job;
        before[entries] = last[spraying];
        last[spraying] = ++entries;
    }

    private int with(int set, int thing) {
        int known = steps.count();
        int step = steps.of(set, thing);
        if (step < known) {
            return made[step];
        }
        if (step == made.length) {
            made = Arrays.copyOf(made, 2 * step);
        }
        made[step] = joined(set, thing);
        return made[step];
    }

    private int joined(int set, int thing) {
        int[] things = sets.get(set);
        if (Arrays.binarySearch(things, thing) >= 0) {
            return set;
        }
        int[] more = Arrays.copyOf(things, things.length + 1);
        more[things.length] = thing;
        Arrays.sort(more);
        Integer known = numbers.putIfAbsent(Arrays.toString(more), sets.size());
        if (known != null) {
            return known;
        }
        sets.add(more);
        return sets.size() - 1;
    }

    /** The number of the set of things in the tank of a spraying. */
    int set(int spraying) {
        return setOf[spraying];
    }

    /** The job rows of a spraying, in the order they were added. */
    List<Integer> jobs(int spraying) {
        List<Integer> rows = new ArrayList<>();
        for (int entry = last[spraying]; entry > 0; entry = before[entry - 1]) {
            rows.add(jobs[entry - 1]);
        }
        Collections.reverse(rows);
        return rows;
    }
}
