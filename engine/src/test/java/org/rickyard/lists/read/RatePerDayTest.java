package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.SheetOf;

/** A rate in a day was to be written per hour, with both figures there and none told. */
class RatePerDayTest {
    private static final String ASKED =
            "The unit of \"Work rate (ac/day)\" is not certain. A rate per day needs the hours"
                    + " of that day: write it per hour.";

    @Test
    void whatToTypeIsToldByTheHoursBeside() {
        assertThat(messages(
                        find(new SheetOf("Machines")
                                .row("Machine", "Type", "Work rate (ac/day)", "Hours per day")
                                .row("Mower", "mower", 40, 8)
                                .row("Rake", "rake", null, 8)
                                .row("Tedder", "tedder", 65, 10)
                                .row("Baler", "baler", 30, null)),
                        Severity.STOP))
                .containsExactly(
                        ASKED + " By \"Hours per day\" beside it: head it Rate of work (ac/h) and type 5 in"
                                + " Machines!C2 (40 ÷ 8 h), 6.5 in Machines!C4 (65 ÷ 10 h). Until then its cells are not used.");
    }

    @Test
    void withoutHoursOrInAnotherUnitNoFigureIsTold() {
        for (String hours : new String[] {"Crew", "Hours per day (min)"}) {
            assertThat(messages(
                            find(new SheetOf("Machines")
                                    .row("Machine", "Type", "Work rate (ac/day)", hours)
                                    .row("Mower", "mower", 40, 8)),
                            Severity.STOP))
                    .contains(ASKED + " Until then its cells are not used.");
        }
    }
}
