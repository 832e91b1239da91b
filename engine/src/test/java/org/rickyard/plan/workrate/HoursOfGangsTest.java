package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Grass of 20 t/ha: chopping 2.00, three trailers more, rolling 1.75 ha/h, all by arithmetic. */
@Tag("derived")
class HoursOfGangsTest {
    private static SeasonBook.Worked worked(double mph, Object tractor, Object tractors) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "Clamp",
                                "Country"),
                        row("Long Acre", "grass", 7, 2, 20, "as carted fresh", "Big", "England"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Number",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Output (t/h)",
                                "Payload (t)",
                                "Road speed laden (mph)",
                                "Road speed empty (mph)",
                                "Mass (t)"),
                        row("Forager", "forager", null, 6.5, 5.5, 70, 40, null, null, null, null),
                        row("Trailer", "trailer", 3, null, null, null, null, 8, mph, mph, null),
                        row("Roller", "clamp roller", null, null, null, null, null, null, null, null, 14),
                        row("Tractor", "tractor", tractors, null, null, null, null, null, null, null, 7),
                        row("Second", "tractor", 3, null, null, null, null, null, null, null, 7))
                .sheet("Clamps", row("Clamp", "Kind", "Country"), row("Big", "walled", "England"))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Cut", "grass", "silage", "Forager; Trailer x 3; Roller", tractor))
                .run();
    }

    private static List<String> told(SeasonBook.Worked worked, String part) {
        return worked.messages().stream()
                .filter(message -> message.contains(part))
                .toList();
    }

    @Test
    void aForagerThatItsGangHoldsUpIsToldToTakeLongerThanMachineHoursHas() {
        SeasonBook.Worked worked = worked(25, null, null);
        assertThat(worked.number("hours")).isCloseTo(3.5, within(1e-9));
        assertThat(worked.number("gang-hours")).isCloseTo(4, within(1e-9));
        assertThat(told(worked, "'Forager' takes 3.5 h on Work rates, at its own pace, and 4 h on Gangs"))
                .hasSize(1);
    }

    /** Great Britain's rules call 40 km/h 25 mph, which is 40.2 km/h; 26 mph is 41.8. */
    @ParameterizedTest
    @CsvSource({"25, 0", "26, 2"})
    void twentyFiveMilesAnHourAreTheLimitAndNotAboveIt(double mph, int cautions) {
        SeasonBook.Worked worked = worked(mph, null, null);
        assertThat(told(worked, "is above the 40 km/h")).hasSize(cautions);
        assertThat(told(worked, "Road speed laden")).hasSize(cautions / 2);
    }

    @Test
    void oneTractorBeforeSeveralMachinesOfAGangIsTold() {
        assertThat(told(worked(25, "Tractor", null), "'Tractor' is named for 3 machines that work at the same time"))
                .singleElement()
                .asString()
                .contains("(Forager, Trailer, Roller)");
        assertThat(told(worked(25, "Tractor", 5), "at the same time")).isEmpty();
        assertThat(told(worked(25, "-; Second; Tractor", null), "at the same time"))
                .isEmpty();
    }
}
