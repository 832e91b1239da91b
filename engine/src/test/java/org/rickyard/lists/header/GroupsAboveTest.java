package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundIn;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** Headings of groups over a header take nothing of it, whichever column they stand over. */
class GroupsAboveTest {
    private static final Object[] HEADERS = {
        "Machine", "Type", "Working width (m)", "Speed (km/h)", "Turn time (s)", "Crew", "Life"
    };

    @ParameterizedTest
    @ValueSource(strings = {"Work", "Cost", "Field work", "Details", "Width"})
    void aHeadingLeavesTheColumnUnderIt(String heading) {
        for (int column = 1; column < HEADERS.length; column++) {
            Object[] above = new Object[HEADERS.length];
            above[0] = "Names";
            above[column] = heading;
            FoundLists found =
                    find(new SheetOf("Machines").row(above).row(HEADERS).row("Mower", "mower", 3, 10, 12, 1, 8));
            ListRows machines = found.rows(Machines.LIST);
            assertThat(machines.size()).as(heading + " over " + HEADERS[column]).isEqualTo(1);
            assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(3);
            assertThat(machines.number(Machines.SPEED, 0)).isEqualTo(10);
            assertThat(machines.number(Machines.TURN_TIME, 0)).isEqualTo(12);
            assertThat(machines.number(Machines.CREW, 0)).isEqualTo(1);
            assertThat(machines.number(Machines.LIFE, 0)).isEqualTo(8);
            assertThat(found.places().get(0).unrecognised())
                    .as(heading + " over " + HEADERS[column])
                    .isEmpty();
        }
    }

    @Test
    void headingsThatWouldBeAListByThemselvesAreNone() {
        ListRows fields = find(new SheetOf("Land")
                        .row("Field", null, "Area", null, "Crop", null)
                        .row("Field name", "Block", "Net area (ac)", "Slope (%)", "Crop", "Yield (t/ha)")
                        .row("Long Acre", "North", 10, 5, "grass", 25))
                .rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.text(Fields.FIELD, 0)).isEqualTo("Long Acre");
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(10);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(fields.number(Fields.SLOPE, 0)).isEqualTo(5);
        assertThat(fields.number(Fields.YIELD, 0)).isEqualTo(25);
    }

    @Test
    void aHeadingOverTheDaysOfAHerdLeavesThem() {
        ListRows herds = find(new SheetOf("Herds")
                        .row("Names", null, null, "Figures", null)
                        .row("Group", "Head", "Intake (kg DM/d)", "Days", "Clamp")
                        .row("Milkers", 90, 11, 180, "Main")
                        .row("Heifers", 40, 6, 150, "Main"))
                .rows(Herds.LIST);
        assertThat(herds.number(Herds.DAYS, 0)).isEqualTo(180);
    }

    /** On a sheet called Tank mixes "Tank mix" over product and dose was a stop: a list of mixes without either. */
    @Test
    void groupsThatBeginNoListAreNoListThatLacksAColumn() {
        FoundLists found = FoundIn.find(
                new SheetOf("Tank mixes")
                        .row("Job", null, "Spray", null, "Tank mix", null)
                        .row("Field", "Area (ha)", "Sprayer", "Water (L/ha)", "Product", "Dose (L/ha)")
                        .row("Hill", 20, "S21", 100, "Fung P", 0.8),
                new SheetOf("Sprayer").row("Sprayer", "Type", "Tank (L)").row("S21", "sprayer", 1500));
        assertThat(found.rows(Jobs.LIST).number(Jobs.DOSE, 0)).isEqualTo(0.8);
        assertThat(FoundIn.said(found)).noneMatch(line -> line.contains("looks like the header"));
    }
}
