package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;
import org.rickyard.testing.SeasonBook;

/** A register of all machines, and a sheet of some of them with what is of those alone. */
class PartsOfMachinesTest {
    private static SheetOf register() {
        return new SheetOf("Machinery")
                .row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)")
                .row("Long boom", "sprayer", 24, 12, null)
                .row("Spinner", "fertiliser spreader", 24, 12, null);
    }

    @Test
    void whatIsToldInTwoTablesIsOneMachine() {
        FoundLists found = ListFinder.find(List.of(
                register(),
                new SheetOf("Sprayers")
                        .row("Sprayer", "Tank (UK gal)", "Number of nozzles", "Width (ft)")
                        .row("LONG BOOM", 660, 48, 78.74)));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(2);
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("sprayer");
        assertThat(machines.number(Machines.SPEED, 0)).isEqualTo(12);
        assertThat(machines.number(Machines.TANK, 0)).isEqualTo(660);
        assertThat(machines.unit(Machines.TANK, 0)).contains(Units.GAL_UK);
        assertThat(machines.address(Machines.TANK, 0).orElseThrow()).hasToString("Sprayers!B2");
        assertThat(machines.address(Machines.SPEED, 0).orElseThrow()).hasToString("Machinery!D2");
        assertThat(machines.address(Machines.WORKING_WIDTH, 0).orElseThrow()).hasToString("Machinery!C2");
        assertThat(machines.number(Machines.NOZZLES, 0)).isEqualTo(48);
        assertThat(machines.state(Machines.NOZZLES, 1)).isEqualTo(ListRows.State.NO_COLUMN);
        assertThat(machines.state(Machines.TANK, 1)).isEqualTo(ListRows.State.BLANK);
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("NOTE Sprayers!A2")
                        && line.contains("stands at Machinery!A2 too")
                        && line.contains("read as one machine"))
                .noneMatch(line -> line.startsWith("STOP"));
    }

    /** Another width, another type, nothing new, or another of the name: two machines of one name, which is told. */
    @ParameterizedTest
    @CsvSource({"sprayer, 12, 48, 3", "mower, 24, 48, 3", "sprayer, 24, , 3", "sprayer, 24, 48, 2"})
    void whereTheTwoDoNotAgreeOrSayNothingNewTheyAreTwo(String type, int width, Integer nozzles, int machines) {
        FoundLists found = ListFinder.find(List.of(
                register(),
                new SheetOf("More machines")
                        .row("Machine", "Type", "Working width (m)", "Number of nozzles")
                        .row("Long boom", type, width, nozzles)));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(machines);
        assertThat(said(found).stream()
                        .anyMatch(line ->
                                line.startsWith("STOP 'More machines'!A2") && line.contains("stands already in")))
                .isEqualTo(machines == 3);
    }

    /** As many tables as there are kinds of figures; one that says otherwise leaves all of them to be asked. */
    @ParameterizedTest
    @CsvSource({"sprayer, 1", "mower, 3"})
    void whatIsToldInThreeTablesIsOneMachineWhereAllAgree(String type, int rows) {
        FoundLists found = ListFinder.find(List.of(
                register(),
                new SheetOf("Sprayers").row("Sprayer", "Number of nozzles").row("Long boom", 48),
                new SheetOf("Tanks").row("Machine", "Type", "Usable tank (L)").row("Long boom", type, 2900)));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(rows + 1);
        assertThat(said(found).stream().anyMatch(line -> line.startsWith("STOP") && line.contains("stands already in")))
                .isEqualTo(rows > 1);
        if (rows == 1) {
            assertThat(machines.address(Machines.NOZZLES, 0).orElseThrow()).hasToString("Sprayers!B2");
            assertThat(machines.number(Machines.USABLE_TANK, 0)).isEqualTo(2900);
            assertThat(machines.number(Machines.SPEED, 0)).isEqualTo(12);
            assertThat(machines.state(Machines.USABLE_TANK, 1)).isEqualTo(ListRows.State.NO_COLUMN);
        }
    }

    /** A register has the types, and sheets before and after it the figures of the same machines. */
    @Test
    void figuresOfMachinesWhoseTypesStandInARegisterNeedNoTypes() {
        SheetOf work = new SheetOf("Work figures")
                .row("Machine", "Width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)")
                .row("Boom", 24, 12, 70, 3000)
                .row("Mower", 3, 10, 80, null);
        SheetOf types = new SheetOf("Register")
                .row("Machine", "Type")
                .row("Mower", "mower")
                .row("Boom", "sprayer")
                .row("Rake", "rake");
        SheetOf costs = new SheetOf("Costs")
                .row("Machine", "Purchase price", "Trade-in value", "Life (yr)", "Hours per year (h)")
                .row("Mower", 9000, 2000, 10, 100);
        FoundLists found = ListFinder.find(List.of(work, types, costs));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(3);
        assertThat(machines.text(Machines.TYPE, 1)).isEqualTo("mower");
        assertThat(machines.number(Machines.SPEED, 1)).isEqualTo(10);
        assertThat(machines.number(Machines.PURCHASE_PRICE, 1)).isEqualTo(9000);
        assertThat(machines.address(Machines.TYPE, 0).orElseThrow()).hasToString("Register!B3");
        assertThat(machines.text(Machines.MACHINE, 2)).isEqualTo("Rake");
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP") || line.contains("nothing of it is read"));
    }

    /** One that the register has not, or one whose name comes again: it is no more of the same, and is told. */
    @ParameterizedTest
    @CsvSource({"Plough", "Boom"})
    void figuresOfOthersOrOfOneTwiceAreNotRead(String name) {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Register")
                        .row("Machine", "Type", "Power (kW)", "Power basis")
                        .row("Boom", "sprayer", null, null)
                        .row("Old puller", "tractor", 90, "engine"),
                new SheetOf("Work figures")
                        .row("Machine", "Width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)")
                        .row("Boom", 24, 12, 70, 3000)
                        .row(name, 3, 7, 80, null)));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(2);
        assertThat(said(found))
                .anyMatch(line -> line.contains("it has no column Type, so nothing of it is read"))
                .noneMatch(line -> line.startsWith("STOP"));
    }

    /** 600 × 2 / (12 × 0.5): the results are those of the same figures in one row, and the grid agrees. */
    @Test
    void theAnswersAreThoseOfOneRow() {
        Object[] fields = row("Field", "Crop", "Area (ha)");
        Object[] field = row("Hill", "wheat", 10);
        Object[] jobs = row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)");
        Object[] job = row("Weeds", "Hill", "spray", "Long boom", 200);
        SeasonBook.Worked two = new SeasonBook()
                .sheet("Fields", fields, field)
                .sheet(
                        "Machinery",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Purchase price"),
                        row("Long boom", "sprayer", 24, 12, 40000))
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Tank (L)", "Number of nozzles", "Nozzle size"),
                        row("Long boom", 3000, 48, "04"))
                .sheet("Jobs", jobs, job)
                .run();
        SeasonBook.Worked one = new SeasonBook()
                .sheet("Fields", fields, field)
                .sheet(
                        "Machinery",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Purchase price",
                                "Tank (L)",
                                "Number of nozzles",
                                "Nozzle size"),
                        row("Long boom", "sprayer", 24, 12, 40000, 3000, 48, "04"))
                .sheet("Jobs", jobs, job)
                .run();
        assertThat(two.differences()).isEmpty();
        assertThat(two.results().stream()
                        .map(result -> result.id() + " " + result.number())
                        .toList())
                .isEqualTo(one.results().stream()
                        .map(result -> result.id() + " " + result.number())
                        .toList())
                .hasSizeGreaterThan(60);
    }
}
