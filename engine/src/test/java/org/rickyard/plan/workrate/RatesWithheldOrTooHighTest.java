package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.testing.SeasonBook;

class RatesWithheldOrTooHighTest {
    private static SeasonBook.Worked slurry(String output, String fuel) throws IOException {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ac)", "Crop"), row("Home", 50, "Stubble"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                output,
                                fuel),
                        row("Umbilical", "umbilical", 12, 8, 75, 150, 7))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Home", "slurry spreading", "Umbilical"))
                .run();
    }

    /** 7.2 ha an hour at 30 m3/ha are 216 m3, of which the pump gives 150: nothing said so. */
    @Test
    void whatAPumpGivesIsToldToHoldNothingUp() throws IOException {
        assertThat(slurry("Output (m3/h)", "Fuel (L/h)").messages())
                .anyMatch(message -> message.startsWith("the m3 an hour of 'Umbilical' are no limit to its rate here"));
        assertThat(slurry("Turn time (s)", "Fuel (L/h)").messages())
                .noneMatch(message -> message.contains("the m3 an hour"));
    }

    /** Who has no sprayer and counts fuel in gallons had litres on an acre: 7 gallons an hour at 17.8 acres an hour. */
    @Test
    void fuelInGallonsIsAnsweredInGallons() throws IOException {
        Result fuel = slurry("Turn time (s)", "Fuel (gal(US)/h)").result("fuel-per-hectare", "Umbilical");
        assertThat(fuel.own()).hasValueSatisfying(own -> {
            assertThat(own.unit()).isEqualTo("gal(US)/ac");
            assertThat(own.number()).isCloseTo(7 / (7.2 * 2.4710538), within(1e-6));
        });
    }

    /** Its flow went by the row spacing, and its hours were withheld for want of a width that nobody measures. */
    @Test
    void whatAnOrchardSprayersWidthIsIsTold() throws IOException {
        assertThat(new SeasonBook()
                        .sheet("Fields", row("Field", "Area (ha)", "Row spacing (m)"), row("Apples", 4, 5.5))
                        .sheet("Machines", row("Machine", "Type", "Speed (km/h)"), row("Mister", "airblast", 5.5))
                        .sheet("Jobs", row("Field", "Operation", "Machine"), row("Apples", "spray", "Mister"))
                        .run()
                        .messages())
                .anyMatch(message -> message.startsWith("'Mister' has no working width, so its hours are left out."));
        // Two rows of 2.4 m are a width.
        assertThat(new SeasonBook()
                        .sheet("Fields", row("Field", "Area (ha)", "Row spacing (m)"), row("Vines", 4, 2.4))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Speed (km/h)", "Rows", "Row width (m)"),
                                row("Mister", "airblast", 5.5, 2, 2.4))
                        .sheet("Jobs", row("Field", "Operation", "Machine"), row("Vines", "spray", "Mister"))
                        .run()
                        .messages())
                .noneMatch(message -> message.contains("has no working width"));
    }
}
