package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** Figures with their units in one cell, as people type them on a form. */
class UnitsInCellsTest {
    private static FoundLists card(Object tank) {
        return ListFinder.find(List.of(new SheetOf("Spray")
                .row("Field", "Top")
                .row("Area", "5 ha")
                .row("Sprayer", "Boom")
                .row("Boom width", "24 m")
                .row("Nozzle spacing", "50 cm")
                .row("Speed", "5 mph")
                .row("Water volume", "200 L/ha")
                .row("Field efficiency", "70 %")
                .row("Tank", tank)));
    }

    /** Each was a stop. */
    @Test
    void theyAreReadFromAForm() {
        FoundLists found = card("900 litres");
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.state(Machines.WORKING_WIDTH, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(24);
        assertThat(machines.number(Machines.NOZZLE_SPACING, 0)).isEqualTo(0.5);
        assertThat(machines.number(Machines.TANK, 0)).isEqualTo(900);
        assertThat(machines.number(Machines.FIELD_EFFICIENCY, 0)).isEqualTo(70);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(5);
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(200);
        assertThat(jobs.unit(Jobs.SPEED, 0)).hasValue(Units.KM_PER_H);
        // 5 × 1.609344: the mile by its definition.
        assertThat(jobs.number(Jobs.SPEED, 0)).isCloseTo(8.04672, within(1e-9));
        assertThat(said(found))
                .noneMatch(line -> line.startsWith("STOP"))
                .noneMatch(line -> line.contains("No unit is written"));
    }

    /** Two thousand, or two with three decimals; gallons of which country. */
    @Test
    void whatIsNotSureIsAsked() {
        for (String tank : List.of("2.000 L", "2,000 L", "500 gal", "about 900 L", "900-1000 L", "24 m")) {
            FoundLists found = card(tank);
            assertThat(found.rows(Machines.LIST).state(Machines.TANK, 0))
                    .as(tank)
                    .isEqualTo(ListRows.State.NOT_READABLE);
            assertThat(said(found)).as(tank).anyMatch(line -> line.startsWith("STOP Spray!B9"));
        }
    }

    /** Nobody parts thousands behind a nought: "0.875 L/min" was a stop. */
    @Test
    void behindANoughtAreDecimals() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Sprayer")
                .row("Machine", "Old sprayer")
                .row("Type", "sprayer")
                .row("Nozzle spacing", "0.508 m")
                .row("Nozzle flow", "0.875 L/min")));
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLE_SPACING, 0)).isEqualTo(0.508);
        assertThat(machines.number(Machines.NOZZLE_FLOW, 0)).isEqualTo(0.875);
    }

    /** A stop said: "40 t/ha" is 40 t/ha. */
    @Test
    void aYieldIsReadInTheUnitOfItsBasis() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Field")
                .row("Field", "Top")
                .row("Crop", "grass")
                .row("Area", "5 ha")
                .row("Yield", "40 t/ha")
                .row("Yield basis", "standing fresh")));
        assertThat(found.rows(Fields.LIST).number(Fields.YIELD, 0)).isEqualTo(40);
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
    }

    @Test
    void oneThatCannotBeIsSaidToBeSo() {
        assertThat(card("0.5 L").rows(Machines.LIST).state(Machines.TANK, 0)).isEqualTo(ListRows.State.IMPOSSIBLE);
    }

    /** A text among the numbers of a list is as likely a slip. */
    @Test
    void inAListTheyAreAskedAbout() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Fields").row("Field", "Area").row("Top", "5 ha").row("Low", 4)));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.NOT_READABLE);
    }
}
