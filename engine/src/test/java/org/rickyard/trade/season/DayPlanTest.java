package org.rickyard.trade.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.trade.season.DayPlan.Job;
import org.rickyard.trade.season.DayPlan.Slot;

/** The plan keeps its rules on invented seasons, and is no later than a search through every whole-day plan. */
@Tag("derived")
class DayPlanTest {
    private static final int HORIZON = 14;

    /** Whole days, so that a search day by day can be compared with it. */
    private static List<Job> season(long seed, int most) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(most - 1);
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int earliest = random.nextInt(4);
            int days = 1 + random.nextInt(3);
            List<Integer> machines =
                    random.nextInt(3) == 0 ? List.of(random.nextInt(3), 3) : List.of(random.nextInt(3));
            List<Integer> after = i > 0 && random.nextInt(3) == 0 ? List.of(random.nextInt(i)) : List.of();
            int lag = after.isEmpty() ? 0 : random.nextInt(2);
            jobs.add(new Job(days, earliest, earliest + days - 1 + random.nextInt(3), machines, after, lag));
        }
        return jobs;
    }

    private static double late(List<Job> jobs, List<Slot> slots) {
        double late = 0;
        for (int i = 0; i < jobs.size(); i++) {
            late += DayPlan.daysLate(jobs.get(i), slots.get(i));
        }
        return late;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothingIsBookedTwiceAndNothingBeginsTooSoon(long block) {
        for (long seed = block * 50; seed < block * 50 + 50; seed++) {
            List<Job> jobs = season(seed, 14);
            List<Slot> slots = DayPlan.of(jobs, Map.of());
            for (int i = 0; i < jobs.size(); i++) {
                Job job = jobs.get(i);
                Slot slot = slots.get(i);
                assertThat(slot.planned()).isTrue();
                assertThat(slot.start()).isGreaterThanOrEqualTo(job.earliest());
                assertThat(slot.finish() - slot.start()).isCloseTo(job.days(), within(1e-9));
                for (int before : job.after()) {
                    assertThat(slot.start())
                            .isGreaterThanOrEqualTo(slots.get(before).finish() + job.lag() - 1e-9);
                }
                for (int j = 0; j < i; j++) {
                    boolean share = jobs.get(j).machines().stream()
                            .anyMatch(machine -> job.machines().contains(machine));
                    boolean apart = slot.start() >= slots.get(j).finish() - 1e-9
                            || slots.get(j).start() >= slot.finish() - 1e-9;
                    assertThat(!share || apart)
                            .as("seed %s: jobs %s and %s", seed, i, j)
                            .isTrue();
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void upToSixJobsAreNoLaterThanTheBestOfAllWholeDayPlans(long block) {
        for (long seed = block * 1000; seed < block * 1000 + 12; seed++) {
            List<Job> jobs = season(seed, block < 5 ? 4 : 6);
            double best = search(jobs, new int[jobs.size()], 0, 0, Double.MAX_VALUE);
            assertThat(late(jobs, DayPlan.of(jobs, Map.of())))
                    .as("seed %s", seed)
                    .isLessThanOrEqualTo(best);
        }
    }

    /** Half days, and jobs that name jobs further down the list; the search goes by half days. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theSameWithHalfDaysAndPredecessorsAnywhereInTheList(long block) {
        for (long seed = block * 700; seed < block * 700 + 25; seed++) {
            Random random = new Random(seed);
            List<Job> forward = halfDays(random, 2 + random.nextInt(block < 4 ? 3 : 4));
            double best = searchHalfDays(forward, new double[forward.size()], 0, 0, Double.MAX_VALUE);
            List<Job> backward = reversed(forward);
            assertThat(late(backward, DayPlan.of(backward, Map.of())))
                    .as("seed %s", seed)
                    .isLessThanOrEqualTo(best);
        }
    }

    private static List<Job> halfDays(Random random, int count) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int earliest = random.nextInt(3);
            double days = (1 + random.nextInt(4)) / 2.0;
            List<Integer> machines =
                    random.nextInt(3) == 0 ? List.of(random.nextInt(2), 2) : List.of(random.nextInt(2));
            List<Integer> after = i > 0 && random.nextInt(3) == 0 ? List.of(random.nextInt(i)) : List.of();
            double lag = after.isEmpty() ? 0 : random.nextInt(3) / 2.0;
            int latest = earliest + (int) Math.ceil(days) - 1 + random.nextInt(2);
            jobs.add(new Job(days, earliest, latest, machines, after, lag));
        }
        return jobs;
    }

    private static List<Job> reversed(List<Job> jobs) {
        List<Job> reversed = new ArrayList<>();
        for (int i = jobs.size() - 1; i >= 0; i--) {
            Job job = jobs.get(i);
            List<Integer> after =
                    job.after().stream().map(at -> jobs.size() - 1 - at).toList();
            reversed.add(new Job(job.days(), job.earliest(), job.latest(), job.machines(), after, job.lag()));
        }
        return reversed;
    }

    private static double searchHalfDays(List<Job> jobs, double[] start, int next, double late, double best) {
        if (late >= best) {
            return best;
        }
        if (next == jobs.size()) {
            return late;
        }
        Job job = jobs.get(next);
        double found = best;
        for (double at = job.earliest(); at <= HORIZON && found > 0; at += 0.5) {
            start[next] = at;
            if (fits(jobs, start, next)) {
                double lastDay = Math.max(Math.floor(at), Math.ceil(at + job.days()) - 1);
                double more = Math.max(0, lastDay - job.latest());
                found = searchHalfDays(jobs, start, next + 1, late + more, found);
            }
        }
        return found;
    }

    private static boolean fits(List<Job> jobs, double[] start, int at) {
        Job job = jobs.get(at);
        for (int before : job.after()) {
            if (start[at] < start[before] + jobs.get(before).days() + job.lag()) {
                return false;
            }
        }
        for (int other = 0; other < at; other++) {
            boolean share = jobs.get(other).machines().stream().anyMatch(job.machines()::contains);
            if (share && start[at] < start[other] + jobs.get(other).days() && start[other] < start[at] + job.days()) {
                return false;
            }
        }
        return true;
    }

    /** Tries every first day of every job; jobs name only jobs before them in the list. */
    private static double search(List<Job> jobs, int[] start, int next, double late, double best) {
        if (late >= best) {
            return best;
        }
        if (next == jobs.size()) {
            return late;
        }
        Job job = jobs.get(next);
        double found = best;
        for (int day = (int) job.earliest(); day + job.days() <= HORIZON && found > 0; day++) {
            start[next] = day;
            if (allowed(jobs, start, next)) {
                double more = Math.max(0, day + job.days() - 1 - job.latest());
                found = search(jobs, start, next + 1, late + more, found);
            }
        }
        return found;
    }

    private static boolean allowed(List<Job> jobs, int[] start, int at) {
        Job job = jobs.get(at);
        for (int before : job.after()) {
            if (start[at] < start[before] + jobs.get(before).days() + job.lag()) {
                return false;
            }
        }
        for (int other = 0; other < at; other++) {
            boolean share = jobs.get(other).machines().stream().anyMatch(job.machines()::contains);
            boolean over = start[at] < start[other] + jobs.get(other).days() && start[other] < start[at] + job.days();
            if (share && over) {
                return false;
            }
        }
        return true;
    }

    @Test
    void tiesGoByListOrder() {
        List<Job> alike =
                List.of(new Job(1, 10, 20, List.of(1), List.of(), 0), new Job(1, 10, 20, List.of(1), List.of(), 0));
        assertThat(DayPlan.of(alike, Map.of())).extracting(Slot::firstDay).containsExactly(10.0, 11.0);
    }

    @Test
    void theMoreUrgentJobGoesFirstWhateverTheList() {
        List<Job> jobs =
                List.of(new Job(3, 10, 20, List.of(1), List.of(), 0), new Job(1, 10, 10, List.of(1), List.of(), 0));
        assertThat(DayPlan.of(jobs, Map.of())).extracting(Slot::firstDay).containsExactly(11.0, 10.0);
    }

    @Test
    void aLoopIsFoundAndNotPlannedWhileOthersAre() {
        List<Job> jobs = List.of(
                new Job(1, 1, 5, List.of(1), List.of(1), 0),
                new Job(1, 1, 5, List.of(2), List.of(0), 0),
                new Job(1, 1, 5, List.of(1), List.of(), 0));
        assertThat(DayPlan.loops(jobs)).containsExactly(0, 1);
        List<Slot> slots = DayPlan.of(jobs, Map.of());
        assertThat(slots.get(0).planned()).isFalse();
        assertThat(slots.get(2).planned()).isTrue();
    }

    @Test
    void theSameJobsGiveTheSamePlan() {
        List<Job> jobs = season(99, 14);
        assertThat(DayPlan.of(jobs, Map.of())).isEqualTo(DayPlan.of(jobs, Map.of()));
    }

    /** Common practice: three tractors alike pull three jobs on one day; the fourth waits for the first to be done. */
    @Test
    void ofSeveralAlikeAsManyAreBookedAsThereAre() {
        List<Job> jobs = List.of(
                new Job(2, 10, 20, List.of(1), List.of(), 0),
                new Job(3, 10, 20, List.of(1), List.of(), 0),
                new Job(3, 10, 20, List.of(1), List.of(), 0),
                new Job(1, 10, 20, List.of(1), List.of(), 0));
        assertThat(DayPlan.of(jobs, Map.of(1, 3))).extracting(Slot::firstDay).containsExactly(10.0, 10.0, 10.0, 12.0);
        // A gang that takes three of four leaves one; one that takes more than there are has the place to itself.
        List<Job> gang = List.of(
                new Job(4, 10, 20, List.of(1, 1, 1), List.of(), 0),
                new Job(2, 10, 20, List.of(1), List.of(), 0),
                new Job(1, 10, 20, List.of(1, 1), List.of(), 0));
        assertThat(DayPlan.of(gang, Map.of(1, 4))).extracting(Slot::firstDay).containsExactly(10.0, 10.0, 14.0);
        assertThat(DayPlan.of(gang, Map.of())).extracting(Slot::start).doesNotHaveDuplicates();
    }
}
