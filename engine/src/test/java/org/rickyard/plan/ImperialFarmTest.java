package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A farm that measures in acres, feet and miles gets the same answers; what cannot be meant is asked about. */
@Tag("derived")
class ImperialFarmTest {

    private static SeasonBook farm(Object[] fields, Object[] field, Object[] machines, Object[] mower) {
        return new SeasonBook()
                .sheet("Fields", fields, field)
                .sheet("Machines", machines, mower)
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Cut", "Long Acre", "mow", "Mower"));
    }

    private static SeasonBook metric(Object efficiency) {
        return farm(
                row("Field", "Crop", "Area (ha)", "Run length (m)"),
                row("Long Acre", "grass", 4.0468564224, 201.168),
                row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Turn time (s)", "Field efficiency (%)"),
                row("Mower", "mower", 3.048, 8.04672, 20, efficiency));
    }

    @Test
    void metricAndImperialAgree() {
        SeasonBook.Worked imperial = farm(
                        row("Field", "Crop", "Area (ac)", "Run length (yd)"),
                        row("Long Acre", "grass", 10, 220),
                        row("Machine", "Type", "Working width (ft)", "Speed (mph)", "Turn time (s)"),
                        row("Mower", "mower", 10, 5, 20))
                .run();
        SeasonBook.Worked metric = metric(null).run();
        for (String id : new String[] {"spot-work-rate", "work-rate", "hours", "field-efficiency"}) {
            assertThat(imperial.number(id, "Mower")).as(id).isCloseTo(metric.number(id, "Mower"), within(1e-9));
        }
        assertThat(imperial.differences()).isEmpty();
    }

    @Test
    void anEfficiencyOfNoughtPointEightIsAskedAbout() {
        SeasonBook.Worked worked = metric(0.8).run();
        assertThat(worked.messages()).anyMatch(m -> m.contains("If 80 % is meant, write 80"));
        assertThat(worked.result("work-rate", "Mower").given()).isFalse();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void efficiencyAndTurnTimeAreNeverMixed() {
        SeasonBook.Worked both = metric(75).run();
        assertThat(both.number("field-efficiency", "Mower")).isCloseTo(75, within(1e-9));
        assertThat(both.messages()).anyMatch(m -> m.contains("field efficiency and turn time are both typed"));
    }
}
