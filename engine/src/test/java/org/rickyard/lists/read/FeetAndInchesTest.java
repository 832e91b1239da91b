package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** 10.6 under feet and inches may be 10'6" or six tenths of a foot; of 10.11 the two are nearly a foot apart. */
class FeetAndInchesTest {
    private static FoundLists width(String unit, Object width) {
        return find(new SheetOf("Machines")
                .row("Machine", "Type", "Working width (" + unit + ")")
                .row("M", "mower", width));
    }

    @ParameterizedTest
    @CsvSource({
        "ft & in, 10.6, false",
        "feet and inches, 10.11, false",
        "ft-in, 10.5, false",
        "ft & in, 10, true",
        "ft, 10.6, true",
        "feet, 10.5, true"
    })
    void whatStandsBehindThePointIsAsked(String unit, double width, boolean read) {
        FoundLists found = width(unit, width);
        assertThat(found.rows(Machines.LIST).gives(Machines.WORKING_WIDTH, 0)).isEqualTo(read);
        assertThat(messages(found, Severity.STOP)).hasSize(read ? 0 : 1);
    }

    @Test
    void itIsSaidHowToWriteThem() {
        assertThat(messages(width("ft & in", 10.6), Severity.STOP))
                .singleElement()
                .asString()
                .contains("Write 10'6\" for inches; for parts of a foot write ft alone in the header.");
        assertThat(width("ft & in", "10'6\"").rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0))
                .isEqualTo(10.5);
    }
}
