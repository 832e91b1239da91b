package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.spraying.SmallSprayers;

/** Slips that once changed the answers, or took a caution away, without a word. */
class SilentSlipsTest {
    private static final Object[][] FIELDS = {
        row("Holding", "Field", "Area (ha)", "Crop", "Country", "Yield (t/ha)", "Yield basis"),
        row("High Farm", "A", 10, "wheat", "England", null, null),
        row("Low Farm", "B", 6, "grass", "England", 20, "as carted fresh"),
        row("Low Farm", "C", 8, "grass", "England", 20, "as carted fresh")
    };

    private static List<String> told(WorkPlan plan, String part) {
        return plan.findings().stream()
                .filter(finding -> finding.message().contains(part))
                .map(finding -> finding.severity() + " @ "
                        + finding.cell().map(Object::toString).orElse(""))
                .toList();
    }

    @Test
    void aJobOnFieldsThatItsHoldingHasNotIsTold() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet("Machines", row("Machine", "Type"), row("Mower", "mower"))
                .sheet(
                        "Jobs",
                        row("Holding", "Job", "Field", "Operation", "Machine"),
                        row("Lo Farm", "M1", "all", "mowing", "Mower"),
                        row("High Farm", "M2", "grass", "mowing", "Mower"),
                        row("Low Farm", "M3", "grass", "mowing", "Mower"))
                .run()
                .plan();
        String stop = Finding.Severity.STOP + " @ ";
        assertThat(told(plan, "is on the holding")).containsExactly(stop + "Jobs!A2", stop + "Jobs!A3");
    }

    /** A third of 40 L. */
    @Test
    void aWiperLentByAnotherHoldingIsReckoned() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Machines",
                        row("Holding", "Machine", "Type", "Tank (L)"),
                        row("High Farm", "Wiper", "wiper", 40))
                .sheet(
                        "Jobs",
                        row("Holding", "Job", "Field", "Operation", "Machine", "Product", "Dose (%)"),
                        row("Low Farm", "W", "B", "spraying", "Wiper", "X", 33))
                .run()
                .plan();
        assertThat(plan.table("wiper").rows()).isEqualTo(1);
        assertThat(plan.table("wiper").of(SmallSprayers.WIPER_PRODUCT).number(0))
                .isCloseTo(13.2, within(1e-9));
    }

    /** The table of usual speeds was rounded from whole miles an hour: 3 for ploughs, 5 for foragers, 12 for mowers. */
    @Test
    void milesAnHourThatATableWasRoundedFromAreInsideIt() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (mph)"),
                        row("Plough", "plough", 2, 3),
                        row("Forager", "forager", 3, 5),
                        row("Mower", "mower", 3, 12),
                        row("Quick mower", "mower", 3, 13))
                .sheet(
                        "Jobs",
                        row("Holding", "Job", "Field", "Operation", "Machine"),
                        row("High Farm", "P", "A", "ploughing", "Plough"),
                        row("Low Farm", "F", "B", "chopping", "Forager"),
                        row("Low Farm", "M", "B", "mowing", "Mower"),
                        row("Low Farm", "Q", "B", "mowing", "Quick mower"))
                .run();
        assertThat(worked.messages().stream().filter(said -> said.contains("the speed is outside what is usual")))
                .singleElement()
                .asString()
                .contains("Quick mower");
    }

    @Test
    void aUsableTankThatIsMoreThanTheTankIsAStop() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Tank (L)", "Usable tank (L)"),
                        row("Small", "sprayer", 1000, 1000),
                        row("Big", "sprayer", 3000, 3500))
                .sheet(
                        "Jobs",
                        row("Holding", "Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("High Farm", "S1", "A", "spraying", "Small", 200),
                        row("High Farm", "S2", "A", "spraying", "Big", 200))
                .run();
        assertThat(worked.findings().stream()
                        .filter(finding -> finding.message().contains("more than the tank holds")))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Finding.Severity.STOP))
                .satisfies(finding -> assertThat(finding.message()).contains("S2"));
    }

    @Test
    void aCutListedForItsFieldAndForItsCropIsTold() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Cuts",
                        row("Field", "Crop", "Cut", "Yield (t/ha)", "Yield basis"),
                        row("B", null, 1, 30, "as carted fresh"),
                        row(null, "grass", 1, 20, "as carted fresh"),
                        row(null, "grass", 2, 15, "as carted fresh"))
                .run()
                .plan();
        assertThat(told(plan, "stands already in Cuts!C2")).containsExactly(Finding.Severity.CAUTION + " @ Cuts!C3");
    }

    /** The crown is asked about for itself: where it is blank the side may stand above the wall all the same. */
    @Test
    void aBlankCrownTakesNoCautionOfTheWallAway() {
        ResultTable clamps = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Settled height (m)",
                                "Crown (m)"),
                        row("Side", "walled", 40, 12, 2, 3, null),
                        row("Twice", "walled", 40, 12, 2, 4.5, null),
                        row("Crown", "walled", 40, 12, 2, 1.9, 0.5),
                        row("Level", "walled", 40, 12, 2, 1.5, 0.5),
                        row("Below", "walled", 40, 12, 2, 2, null))
                .run()
                .plan()
                .table("clamps");
        List<String> said = java.util.stream.IntStream.range(0, 5)
                .mapToObj(clamp -> clamps.of(TableSpec.CAUTIONS).word(clamp))
                .toList();
        assertThat(said.get(0)).contains("above the wall").doesNotContain("twice");
        assertThat(said.get(1)).contains("above twice the wall height").contains("above the wall");
        assertThat(said.get(2)).containsOnlyOnce("above the wall");
        assertThat(said.get(3)).doesNotContain("above the wall");
        assertThat(said.get(4)).doesNotContain("above the wall");
    }

    @Test
    void aBlankRoadSpeedTakesNoCautionOfTheOtherAway() {
        ResultTable carting = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 6, 8, null, null, null),
                        row("Trailer", "trailer", null, null, 10, 50, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("c", "B", "chopping", "Forager; Trailer x 3"))
                .run()
                .plan()
                .table("carting");
        assertThat(carting.of(TableSpec.CAUTIONS).word(0)).contains("road speed laden is above the 40 km/h");
    }

    @Test
    void aTankThatHoldsTwoVolumesIsTold() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Effluent tank",
                                "Tank volume (m3)"),
                        row("N", "walled", 40, 12, 2, "Tank A", 60),
                        row("S", "walled", 40, 12, 2, "Tank A", 30),
                        row("W", "walled", 40, 12, 2, "Tank A", 60))
                .run()
                .plan();
        assertThat(told(plan, "'Tank A' holds 30 here and 60 in Clamps!G2"))
                .containsExactly(Finding.Severity.CAUTION + " @ Clamps!G3");
    }

    @Test
    void aSetOfNozzlesCaughtAtTwoPressuresIsTold() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet("Machines", row("Machine", "Type"), row("Sprayer", "sprayer"))
                .sheet(
                        "Nozzle test",
                        row("Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)"),
                        row("Sprayer", 1, 1.2, null),
                        row("Sprayer", 2, 1.2, 3),
                        row("Sprayer", 3, 1.2, 3),
                        row("Sprayer", 4, 1.6, 5),
                        row("Sprayer", 5, 1.6, 5))
                .run()
                .plan();
        assertThat(told(plan, "were caught at 3 and at 5"))
                .containsExactly(Finding.Severity.CAUTION + " @ 'Nozzle test'!D5");
    }

    /** Typed with its hour, a day is still that day. */
    @Test
    void twoSprayingsOfADayAreToldWhateverTheirHours() {
        WorkPlan plan = new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose (L/ha)",
                                "Water volume (L/ha)",
                                "Earliest"),
                        row("T1", "A", "spraying", "Sprayer", "X", 1, 200, 46143.25),
                        row("T2", "A", "spraying", "Sprayer", "X", 1, 200, 46143.75))
                .run()
                .plan();
        assertThat(told(plan, "is sprayed by two jobs")).hasSize(1);
    }

    /** 80 L/ac under a header that says so are 197.7 L/ha; 488 L/ha, read as L/ac once more, are over the label's most. */
    @Test
    void aLowWaterVolumeIsNotSaidToBeInsideTheLabelsRangeAsLitresPerAcre() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 12, 3000))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Lowest water volume (L/ha)", "Highest water volume (L/ha)"),
                        row("Herbicide A", "L", 200, 400))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ac)"),
                        row("Top", "spraying", "Sprayer", "Herbicide A", 1, 80))
                .run();
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("the water volume is below the least on the label"))
                .anyMatch(message -> message.contains("read as L/ac the same number would not be below the least"))
                .noneMatch(message -> message.contains("inside the label's range"));
    }
}
