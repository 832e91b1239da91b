package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Which cell is named for a result that is withheld. */
class CausesTest {
    @Test
    void theCellNamedIsTheOneThatHoldsWhatCannotBeUsed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("A", 4, "grass", 28, "as carted fresh", 250))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Working width (m)", "Speed (km/h)", "Crew"),
                        row("Mower", "mower", null, 3, 12, 1))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().startsWith("something typed for the power needed is unusable"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.cell().map(Object::toString)).hasValue("Fields!F2"));
    }

    @Test
    void ofTwoListsTheOneWithoutTheColumnIsNamed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Land", row("Field", "Area (ha)", "Crop", "Distance to clamp (km)"), row("A", 4, "grass", 1))
                .sheet("Rented", row("Field", "Area (ha)", "Crop"), row("B", 3, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Output (t/h)", "Payload (t)", "Road speed laden (km/h)"),
                        row("Forager", "forager", 60, null, null),
                        row("Trailer", "trailer", null, 12, 20))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("grass", "chop", "Forager; Trailer"))
                .run();
        assertThat(worked.messages())
                .anyMatch(message ->
                        message.startsWith("distance to clamp missing: the list on 'Rented' has no column for it."))
                .noneMatch(message -> message.startsWith("distance to clamp missing: no list has a column"));
    }

    /** A speed is typed or timed: whoever has neither is told both ways at once, in the cell that is surest. */
    @Test
    void waysThatStandInForEachOtherAreOneCause() {
        SeasonBook.Worked worked = timed(null, null);
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("missing") && message.contains("speed"))
                .singleElement()
                .asString()
                .startsWith("forward speed missing: type it, or timed distance and timed seconds. As it is, ");
        assertThat(worked.messages()).noneMatch(message -> message.startsWith("timed "));
        assertThat(worked.result("spot-work-rate", "Other").reason())
                .isEqualTo("forward speed missing: type it, or timed distance and timed seconds (Machines!D3)");
    }

    /** Half a timed run is nothing unusable: what is asked for is its other half. */
    @Test
    void ofHalfAMeasureTheOtherHalfIsAskedFor() {
        SeasonBook.Worked worked = timed(50, null);
        assertThat(worked.result("spot-work-rate", "Other").reason())
                .isEqualTo("forward speed missing: type it, or timed seconds (Machines!D3)");
        assertThat(worked.messages()).noneMatch(message -> message.contains("unusable"));
        assertThat(timed(50, 20).number("spot-work-rate", "Other")).isCloseTo(9 * 3 / 10.0, within(1e-9));
        assertThat(timed("fast", null).result("spot-work-rate", "Other").reason())
                .isEqualTo("timed distance is not readable: 'fast' (Machines!E3)");
    }

    private static SeasonBook.Worked timed(Object distance, Integer seconds) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Timed distance (m)",
                                "Timed seconds (s)",
                                "Power (kW)",
                                "Power basis"),
                        row("Mower", "mower", 3, null, 50, 20, null, null),
                        row("Other", "mower", 3, null, distance, seconds, 90, "engine"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"), row("A", "mow", "Other"))
                .run();
    }

    /** "No list has a column for it" does not say where to type it. */
    @Test
    void aColumnThatIsNowhereIsNamedWithItsList() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("A", 4))
                .sheet("Machines", row("Machine", "Type"), row("Boom", "sprayer"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "spray", "Boom"))
                .run();
        assertThat(worked.messages())
                .anyMatch(message -> message.startsWith(
                        "speed missing: no list has a column for it; add Speed to Machines. As it is, "))
                .anyMatch(message -> message.startsWith(
                        "water volume missing: no list has a column for it; add Water volume to Jobs. As it is, "));
    }

    /** Of several totals that the simulation reads only the one that lacks something is a cause, and that by its cell. */
    @Test
    void whatAMethodHasIsNoCauseOfWhatItLacks() {
        SeasonBook.Worked worked = gang(null, 12);
        assertThat(worked.messages())
                .noneMatch(message -> message.contains(" is withheld"))
                .anyMatch(message -> message.startsWith("road speed laden missing")
                        && message.contains("'Trailers'")
                        && message.contains("'Gangs with chance'"));
        assertThat(worked.result("gang-rate-expected").reason()).contains("road speed laden missing (Machines!I3)");
    }

    /** The plan of days lacks what Season lacks; that is told once, by its cell, and not as a reason of its own. */
    @Test
    void whatAnotherSheetWithholdsIsToldByItsOwnCause() {
        SeasonBook.Worked worked = gang(20, null);
        assertThat(worked.result("planned-start", "Mower").reason()).isEqualTo("speed missing (Machines!D4)");
        assertThat(worked.messages()).noneMatch(message -> message.contains("see Season"));
    }

    /** The branch that is taken without a gang rate lacks nothing itself, but has nothing to say either. */
    @Test
    void whatIsEmptyForWantOfAnotherResultIsToldByTheCauseOfThatOne() {
        SeasonBook.Worked worked = gang(null, 12);
        assertThat(worked.result("bottleneck").reason())
                .isNotBlank()
                .isEqualTo(worked.result("gang-rate").reason());
    }

    /** A result without a value always has a reason: JSON, the terminal and the comparison lean on it. */
    @Test
    void whatHasNoValueHasACause() {
        for (SeasonBook.Worked worked : List.of(gang(null, 12), gang(20, null), gang(null, null))) {
            assertThat(worked.results())
                    .filteredOn(
                            result -> result.number().isEmpty() && result.word().isEmpty())
                    .isNotEmpty()
                    .isNotEmpty()
                    .allSatisfy(result -> assertThat(result.reason()).isNotBlank());
        }
    }

    private static SeasonBook.Worked gang(Integer laden, Integer mowing) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)"),
                        row("A", 4, "grass", 20, "as carted fresh", 2))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Output (t/h)",
                                "Payload (t)",
                                "Number",
                                "Hours per day (h)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 6, 7, 40, null, null, 9, null, null),
                        row("Trailer", "trailer", null, null, null, 8, 3, 9, laden, 25),
                        row("Mower", "mower", 3, mowing, null, null, null, 9, null, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Earliest", "Latest", "Workable days (%)"),
                        row("Cut", "A", "mow", "Mower", 46160, 46170, 50),
                        row("Lift", "A", "chop", "Forager; Trailer x 3", 46162, 46175, 50))
                .run();
    }
}
