package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.SheetOf;

/** What a client works out himself and is taken as typed: it was told of nowhere. */
class OwnResultsTest {
    private static final String TOLD =
            "\"Work rate (ha/h)\" is worked out here by a formula of yours. It is taken as if it"
                    + " were typed, as Rate of work of Machines, so a work rate from width and speed does not stand beside it. To have"
                    + " ours, clear it or give it a header that says it is yours.";

    private static SheetOf form() {
        return new SheetOf("Mower")
                .row("Machine", "Wide")
                .row("Type", "mower")
                .row("Working width (m)", 9)
                .row("Speed (km/h)", 14)
                .row("Work rate (ha/h)", 10.1);
    }

    private static SheetOf list() {
        return new SheetOf("Mowers")
                .row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Work rate (ha/h)")
                .row("Wide", "mower", 9, 14, 10.1);
    }

    @Test
    void itIsToldOnFormsAndInLists() {
        assertThat(said(ListFinder.find(List.of(form().formula(4, 1))))).contains("NOTE Mower!B5 " + TOLD);
        assertThat(said(ListFinder.find(List.of(list().formula(1, 4))))).contains("NOTE Mowers!E2 " + TOLD);
    }

    @Test
    void whatIsTypedIsNot() {
        assertThat(said(ListFinder.find(List.of(form())))).noneMatch(line -> line.contains("formula of yours"));
        assertThat(said(ListFinder.find(List.of(list())))).noneMatch(line -> line.contains("formula of yours"));
    }

    /** Without a speed it may be looked up anywhere. */
    @Test
    void whatCannotBeWorkedOutBesideItIsAnInput() {
        assertThat(said(ListFinder.find(List.of(new SheetOf("Mowers")
                        .row("Machine", "Type", "Work rate (ha/h)")
                        .row("Wide", "mower", 12)
                        .formula(1, 2)))))
                .noneMatch(line -> line.contains("formula of yours"));
    }
}
