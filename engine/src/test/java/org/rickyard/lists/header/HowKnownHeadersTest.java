package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundIn;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;

/** Headers with a word that tells how the figures beneath them are known. */
class HowKnownHeadersTest {
    private static double inOurs(ListRows rows, ColumnSpec column) {
        return rows.unit(column, 0)
                .orElseThrow()
                .convert(rows.number(column, 0), column.symbol().unit());
    }

    private static double machine(ColumnSpec column, String header, Object cell) {
        FoundLists found =
                FoundIn.find(new SheetOf("Kit").row("Machine", "Type", header).row("Mower", "mower", cell));
        ListRows machines = found.rows(Machines.LIST);
        return inOurs(machines, column);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Speed km/h (actual)      | 12
                    Speed km/h actual        | 12
                    Speed actual (km/h)      | 12
                    Actual speed km/h        | 12
                    Average speed (km/h)     | 12
                    Avg. speed               | 12
                    Av. speed                | 12
                    Ave speed (km/h)         | 12
                    Exp. speed km/h          | 12
                    Speed km/h (average)     | 12
                    Typical speed, km/h      | 12
                    Speed - km/h - measured  | 12
                    Average speed (mph)      | 19.312128
                    """)
    void speedIsSpeedHoweverItIsKnown(String header, double kmPerHour) {
        assertThat(machine(Machines.SPEED, header, 12)).isCloseTo(kmPerHour, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Area ha (GPS)          | Yield t/ha (est)       | 10  | 25
                    Area ha measured       | Average yield (t/ha)   | 10  | 25
                    Mapped area (ha)       | 5-yr avg yield (t/ha)  | 10  | 25
                    Area ac est            | Expected yield t/ac    | 4.0468564224  | 61.776
                    """)
    void areasAndYieldsKeepTheirUnit(String area, String yield, double hectares, double tonnes) {
        FoundLists found = FoundIn.find(
                new SheetOf("Fields").row("Field", area, yield, "Yield basis").row("Top", 10, 25, "fresh"));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(inOurs(fields, Fields.AREA)).isCloseTo(hectares, within(1e-9));
        assertThat(inOurs(fields, Fields.YIELD)).isCloseTo(tonnes, within(0.001));
    }

    @Test
    void whatStandsBesideTheFigureItselfIsNotReadForIt() {
        FoundLists found = FoundIn.find(new SheetOf("Kit")
                .row("Machine", "Type", "Speed (km/h)", "Average speed (km/h)")
                .row("Mower", "mower", 12, 9));
        assertThat(found.rows(Machines.LIST).number(Machines.SPEED, 0)).isEqualTo(12);
    }

    @Test
    void ofPlannedAndAchievedNeitherIsTaken() {
        FoundLists found = FoundIn.find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Yield t/ha (budget)", "Yield t/ha (achieved)")
                .row("Top", 10, 40, 30));
        assertThat(found.rows(Fields.LIST).isFilled(Fields.YIELD, 0)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"Average", "Speed max (km/h)", "Actual driver", "Average cost/ha", "Actual hours"})
    void wordsThatSayMoreAreLeft(String header) {
        FoundLists found =
                FoundIn.find(new SheetOf("Kit").row("Machine", "Type", header).row("Mower", "mower", 12));
        assertThat(found.rows(Machines.LIST).isFilled(Machines.SPEED, 0)).isFalse();
    }
}
