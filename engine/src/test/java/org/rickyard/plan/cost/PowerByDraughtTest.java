package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** The draught of a machine, where it is known, was not read: its power came from a table of others, or not at all. */
@Tag("derived")
class PowerByDraughtTest {
    private static SeasonBook.Worked worked(String draught, Object[]... machines) {
        Object[][] rows = new Object[machines.length + 2][];
        rows[0] = row(
                "Machine",
                "Type",
                "Width (m)",
                "Speed (km/h)",
                "Efficiency (%)",
                "Weight (t)",
                draught,
                "Power (kW)",
                "Power basis");
        rows[1] = row("Red", "tractor", null, null, null, 6, null, 100, "PTO");
        Object[][] jobs = new Object[machines.length + 1][];
        jobs[0] = row("Job", "Field", "Operation", "Machine", "Tractor");
        for (int i = 0; i < machines.length; i++) {
            rows[i + 2] = machines[i];
            jobs[i + 1] = row(machines[i][0], "A", "work", machines[i][0], "Red");
        }
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "wheat"))
                .sheet("Machines", rows)
                .sheet("Jobs", jobs)
                .run();
    }

    /** 10 kN at 7.2 km/h are 20 kW; over 0.73, 27.40 at the PTO; of 100 kW 27.4 %: (0.22 × 0.274 + 0.096) × 100. */
    @Test
    void whatIsTypedStandsBeforeTheTable() {
        SeasonBook.Worked worked = worked(
                "Draught (kN)",
                row("Plough", "plough", 1.6, 7.2, 80, null, 10),
                row("By table", "plough", 1.6, 7.2, 80, null, null));
        assertThat(worked.number("drawbar-power", "Plough")).isCloseTo(20, within(1e-9));
        assertThat(worked.number("power-needed", "Plough")).isCloseTo(20 / 0.73, within(1e-9));
        assertThat(worked.number("fuel", "Plough")).isCloseTo(22 * 0.2 / 0.73 + 9.6, within(1e-9));
        // 13.5 hp for each foot of 1.6 m, at 7.2 km/h for 4.5 mph.
        assertThat(worked.number("power-needed", "By table"))
                .isCloseTo(13.5 * 0.74569987158 * 1.6 / 0.3048 * 7.2 / 4.5 / 1.609344, within(1e-6));
        assertThat(worked.differences()).isEmpty();
    }

    /** Nothing is held of a subsoiler, which its draught makes up for; what the shaft of a power harrow takes is not told. */
    @Test
    void whatIsOnlyDrawnIsReckonedByItsDraughtAlone() {
        SeasonBook.Worked worked = worked(
                "Draft (kN/m)",
                row("Subsoiler", "subsoiler", 3, 6, 80, null, 7),
                row("No draught", "subsoiler", 3, 6, 80, 1.2, null),
                row("Rolls", "field rolls", 6, 8, 80, null, 1),
                row("Tiller", "power harrow", 3, 6, 80, null, 2));
        assertThat(worked.number("power-needed", "Subsoiler")).isCloseTo(35 / 0.73, within(1e-9));
        assertThat(worked.number("power-needed", "Rolls")).isCloseTo(48 / 3.6 / 0.73, within(1e-9));
        assertThat(worked.result("fuel-by", "No draught").word().orElse("")).startsWith("yearly average");
        assertThat(worked.result("fuel-by", "Tiller").word().orElse("")).startsWith("yearly average");
        assertThat(worked.differences()).isEmpty();
    }

    /** A mower of 2 t with 3 kN: 15 kW of the shaft, and 3 kN at 10 km/h in the place of its weight's share. */
    @Test
    void theShaftComesOnTop() {
        SeasonBook.Worked worked = worked("Draught (kN)", row("Mower", "mower", 3, 10, 80, 2, 3));
        assertThat(worked.number("power-needed", "Mower")).isCloseTo(15 + 30 / 3.6 / 0.73, within(1e-9));
    }

    /** hp = lbf × mph ÷ 375: 3,750 lbf at 5 mph are 50 hp. */
    @Test
    void poundsOfForceAreRead() {
        SeasonBook.Worked worked = worked("Draft (lbf)", row("Ripper", "subsoiler", 3, 5 * 1.609344, 80, null, 3750));
        assertThat(worked.number("drawbar-power", "Ripper")).isCloseTo(50 * 0.74569987158, within(1e-6));
    }

    @Test
    void whatCannotBeReadIsNoDraughtThatIsNotKnown() {
        SeasonBook.Worked worked = worked("Draught (kN)", row("Plough", "plough", 1.6, 7.2, 80, null, "heavy"));
        assertThat(worked.result("fuel", "Plough").number()).isEmpty();
        // Pounds of mass are none of force.
        assertThat(worked("Draft (lb)", row("Plough", "plough", 1.6, 7.2, 80, null, 2000))
                        .result("fuel", "Plough")
                        .number())
                .isEmpty();
    }
}
