package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** What is said of a time of day where a number is wanted: 0.0083 for 0:12. */
class TimesOfDayTest {
    @ParameterizedTest
    @CsvSource({"720, 0:12", "20, 0:00:20", "19200, 5:20", "45296, 12:34:56"})
    void itIsShownAsAClockShowsIt(int seconds, String clock) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Fill time (min)")
                        .row("S", "sprayer", seconds / 86_400.0)
                        .format(1, 2, Format.DATE))
                .rows(Machines.LIST);
        assertThat(machines.state(Machines.FILL_TIME, 0)).isEqualTo(State.NOT_READABLE);
        assertThat(machines.text(Machines.FILL_TIME, 0)).isEqualTo(clock);
    }
}
