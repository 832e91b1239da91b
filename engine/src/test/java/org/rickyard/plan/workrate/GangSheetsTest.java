package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;

/** Gangs from the client's words to the grid. Figures: derived arithmetic of a forager of 40 t/h in 20 t/ha. */
@Tag("derived")
class GangSheetsTest {

    private static SeasonBook farm(int trailers, Object distance) {
        return farm("Mower; Rake; Forager; Trailer x " + trailers + "; Loader; Roller", distance);
    }

    private static SeasonBook farm(String gang, Object distance) {
        return farm(gang, distance, 14);
    }

    private static SeasonBook farm(String gang, Object distance, Object roller) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Run length (m)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "Clamp",
                                "Overhead lines",
                                "Perimeter (m)"),
                        row(
                                "Moor End",
                                "Long Acre",
                                "grass",
                                7,
                                400,
                                distance,
                                20,
                                "as carted fresh",
                                "Big",
                                "yes",
                                1100),
                        row("Moor End", "Corner", "grass", 0.8, 90, distance, 20, "as carted fresh", "Big", "no", 100))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Output (t/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)",
                                "Mass (t)",
                                "Unladen mass (t)",
                                "Body volume (m3)",
                                "Round time (min)"),
                        row("Mower", "mower", 3, 10, 80),
                        row("Rake", "rake", 6.5, 10, 80),
                        row("Forager", "forager", 6.5, 5.5, 70, 40),
                        row("Trailer", "trailer", null, null, null, null, 8, 20, 25, null, 4),
                        row("Loader", "loader", null, null, null, null, 2, null, null, null, null, null, 2),
                        row("Roller", "clamp roller", null, null, null, null, null, null, null, roller))
                .sheet(
                        "Clamps",
                        row("Holding", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Country"),
                        row("Moor End", "Big", "walled", 40, 12, 3, "England"))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Hours per day"),
                        row("First cut", "grass", "silage", gang, 10));
    }

    @Test
    void twoTrailersHoldTheGangUp() {
        SeasonBook.Worked worked = farm(2, 2).run();
        assertThat(worked.number("cycle-time", "Long Acre")).isCloseTo(30.3, within(1e-9));
        assertThat(worked.number("trailers-needed", "Long Acre")).isEqualTo(3);
        assertThat(worked.number("carting-rate", "Long Acre")).isCloseTo(31.683, within(1e-3));
        assertThat(worked.number("forager-idle-share", "Long Acre")).isCloseTo(20.79, within(0.01));
        assertThat(worked.number("gang-rate", "Long Acre")).isCloseTo(1.584, within(1e-3));
        assertThat(worked.word("bottleneck", "Long Acre")).isEqualTo("carting");
        assertThat(worked.number("work-rate", "Long Acre", "Forager")).isCloseTo(2.0, within(1e-9));
        assertThat(worked.number("gang-rate-expected", "Long Acre"))
                .isLessThanOrEqualTo(worked.number("gang-rate", "Long Acre"));
    }

    @Test
    void withThreeTrailersTheRollerHoldsItUp() {
        SeasonBook.Worked worked = farm(3, 2).run();
        assertThat(worked.number("gang-rate", "Long Acre")).isCloseTo(1.75, within(1e-9));
        assertThat(worked.word("bottleneck", "Long Acre")).isEqualTo("rolling");
        assertThat(worked.number("gang-hours", "Long Acre")).isCloseTo(4, within(1e-9));
    }

    @Test
    void theGridAgrees() {
        assertThat(farm(2, 2).run().differences()).isEmpty();
    }

    @Test
    void withoutDistanceTheGangIsWithheldAndSaysWhy() {
        SeasonBook.Worked worked = farm(2, null).run();
        assertThat(worked.result("gang-rate", "Long Acre").given()).isFalse();
        assertThat(worked.result("cycle-time", "Long Acre").reason()).contains("distance to clamp missing");
        assertThat(worked.number("work-rate", "Long Acre", "Forager")).isCloseTo(2.0, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void anImpossibleShapeIsAStop() {
        SeasonBook.Worked worked = farm(2, 2).run();
        assertThat(worked.result("shape-index", "Corner").given()).isFalse();
        assertThat(worked.messages()).anyMatch(m -> m.contains("area and perimeter cannot belong to one field"));
        assertThat(worked.number("shape-index", "Long Acre")).isCloseTo(70000 / 1100.0 / 1100, within(1e-9));
    }

    @Test
    void aGangWithoutAnyRateNamesWhatIsComparedAndTheBlankCell() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis"),
                        row("Long Acre", "grass", 7, 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Forager", "forager", null, 5.5, 70))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("First cut", "grass", "silage", "Forager"),
                        row("Second cut", "grass", "silage", "Forager; Forager"))
                .run();
        String said = "none of these has a value: chopping, area per hour; carting, area per hour; pushing up, area per"
                + " hour; rolling, area per hour";
        String blank = "working width missing";
        assertThat(worked.result("gang-rate", "Second cut").reason()).isEqualTo(said + "; " + blank + " (Machines!C2)");
        assertThat(worked.messages()).anyMatch(message -> message.startsWith(said + ". As it is, "));
        // The grid says the same of the row.
        assertThat(worked.plan().table("gangs").of(TableSpec.STATUS).word(0)).startsWith(said + ". ");
        assertThat(worked.differences()).isEmpty();
    }

    /** Trailers at a combine have what fills them beside them; that they are nowhere reckoned is said, and not to name it. */
    @Test
    void trailersThatAnotherMachineFillsAreSaidToBeLeftOut() {
        for (String filler : new String[] {"Combine; ", ""}) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("A", "wheat", 20))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Payload (t)"),
                            row("Combine", "combine", 9, 5, null),
                            row("Grain trailer", "trailer", null, null, 14))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine"),
                            row("A", "combining", filler + "Grain trailer x 2"))
                    .run();
            boolean filled = !filler.isEmpty();
            assertThat(worked.messages())
                    .filteredOn(message -> message.contains("forager"))
                    .singleElement()
                    .satisfies(message -> {
                        assertThat(message.contains("Name the machine that fills them"))
                                .isEqualTo(!filled);
                        assertThat(message.contains("in no hours, days, fuel, labour or cost"))
                                .isEqualTo(filled);
                    });
        }
    }

    /**
     * Nobody waits for a roller: 8 t are for 20 t/h by the rule the gang is reckoned with, for 32 by the lenient one,
     * and forager and trailers bring 40.
     */
    @Test
    void aForagerThatOutrunsTheRollerIsToldAtTheClamp() {
        String said = "forager and trailers could bring more than the rolling weight takes";
        String gang = "Forager; Trailer x 4; Loader; Roller";
        SeasonBook.Worked worked = farm(gang, 1, 8).run();
        assertThat(worked.number("gang-rate-by-mass", "Long Acre")).isCloseTo(20, within(1e-9));
        assertThat(worked.number("delivery-reckoned")).isCloseTo(20, within(1e-9));
        assertThat(worked.messages())
                .anyMatch(m -> m.contains(said) && m.contains("delivery if rolling held nothing up is 40 t/h"));
        assertThat(worked.differences()).isEmpty();
        assertThat(farm(gang, 1, 14).run().messages()).noneMatch(m -> m.contains(said));
    }

    /** A trailer that is too heavy is so on every field: it is told once, and does not push other stops off the screen. */
    @Test
    void rowsOfOneCauseAreToldOnce() {
        SeasonBook.Worked worked = farm("Forager; Heavy trailer x 2; Roller", 1)
                .sheet(
                        "Trailers",
                        row(
                                "Machine",
                                "Type",
                                "Payload (t)",
                                "Unladen mass (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Heavy trailer", "trailer", 14, 6, 20, 25))
                .run();
        List<String> told = worked.messages().stream()
                .filter(m -> m.contains("above the 18.29 t"))
                .toList();
        assertThat(told).hasSize(1);
        assertThat(told.get(0))
                .contains("Long Acre, Heavy trailer")
                .contains("It is the same in 1 more row, down to Carting!");
    }
}
