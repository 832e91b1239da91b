package org.rickyard.trade.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.trade.season.DayPlan.Job;
import org.rickyard.trade.season.DayPlan.Slot;

/** How many of a machine are taken when. Figures: counted out by hand, and by looking at every day. */
@Tag("derived")
class TakenOverTimeTest {
    @Test
    void aJobBeginsWhenEnoughAreFreeForAllOfIt() {
        TakenOverTime taken = new TakenOverTime();
        taken.take(10, 12, 1);
        taken.take(14, 16, 2);
        assertThat(taken.free(10, 5, 1)).isEqualTo(16);
        assertThat(taken.free(10, 4, 1)).isEqualTo(10);
        assertThat(taken.free(11, 2, 0)).isEqualTo(12);
        assertThat(taken.free(11, 3, 0)).isEqualTo(16);
        assertThat(taken.free(11, 3, 2)).isEqualTo(11);
        assertThat(taken.free(Double.NEGATIVE_INFINITY, 1, 0)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void whatIsAboveIsToldInStretches() {
        TakenOverTime taken = new TakenOverTime();
        taken.take(10, 20, 1);
        taken.take(12, 14, 1);
        taken.take(14, 15, 2);
        taken.take(17, 20, 1);
        assertThat(taken.above(1)).isEqualTo(Map.of(12.0, 15.0, 17.0, 20.0));
        assertThat(taken.above(2)).isEqualTo(Map.of(14.0, 15.0));
        assertThat(taken.above(3)).isEmpty();
    }

    /** Looked at every half day, no more are ever out than there are. */
    @Test
    void plansOfSeveralAlikeHoldDayByDay() {
        Random random = new Random(11);
        for (int plan = 0; plan < 30; plan++) {
            List<Job> jobs = new ArrayList<>();
            for (int job = 0; job < 12; job++) {
                List<Integer> machines = new ArrayList<>(List.of(1));
                if (random.nextInt(3) == 0) {
                    machines.add(1);
                }
                jobs.add(new Job(0.5 + random.nextInt(8) / 2.0, 10 + random.nextInt(10), 99, machines, List.of(), 0));
            }
            List<Slot> slots = DayPlan.of(jobs, Map.of(1, 3));
            for (double day = 10.25; day < 80; day += 0.5) {
                assertThat(out(jobs, slots, day)).isLessThanOrEqualTo(3);
            }
        }
    }

    private static int out(List<Job> jobs, List<Slot> slots, double day) {
        int out = 0;
        for (int job = 0; job < jobs.size(); job++) {
            boolean at = slots.get(job).start() < day && day < slots.get(job).finish();
            out += at ? jobs.get(job).machines().size() : 0;
        }
        return out;
    }
}
