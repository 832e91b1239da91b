package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/** Fuel that is typed beside the tractor and not beside the machine that it pulls. */
class TractorFuelTest {
    private static final Object[] JOB_HEADERS = row("Job", "Field", "Operation", "Machine", "Tractor");

    /** 6 L/ha on 12 ha are 72 L, whatever the tractor's power would have made of them. */
    @Test
    @Tag("derived")
    void fuelByTheHectareOnTheTractorIsRead() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Width (m)",
                                "Speed (km/h)",
                                "Efficiency (%)",
                                "Power (kW)",
                                "Power basis",
                                "Fuel (L/ha)"),
                        row("Mower", "mower", 3, 10, 80, null, null, null),
                        row("Rake", "rake", 6, 10, 80, null, null, 2),
                        row("Red", "tractor", null, null, null, 80, "PTO", 6))
                .sheet("Jobs", JOB_HEADERS, row("1", "A", "mow", "Mower", "Red"), row("2", "A", "rake", "Rake", "Red"))
                .run();
        assertThat(worked.number("fuel-on-field", "1")).isCloseTo(72, within(1e-9));
        assertThat(worked.result("fuel-by", "1").word()).contains("typed, by area");
        // The machine's own figure goes before its tractor's: 2 L/ha.
        assertThat(worked.number("fuel-on-field", "2")).isCloseTo(24, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A machine's fuel by the hour is nearer to its work than its tractor's by the hectare: 2.4 ha/h, 5 h, 12 L/h. */
    @Test
    @Tag("derived")
    void fuelByTheHourOnTheMachineGoesBefore() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)", "Fuel (L/h)"),
                        row("Mower", "mower", 3, 10, 80, 12),
                        row("Rake", "rake", 6, 10, 80, null))
                .sheet(
                        "Tractors",
                        row("Tractor", "Type", "Power (kW)", "Power basis", "Fuel (L/ha)"),
                        row("Red", "tractor", 80, "PTO", 6))
                .sheet("Jobs", JOB_HEADERS, row("1", "A", "mow", "Mower", "Red"), row("2", "A", "rake", "Rake", "Red"))
                .run();
        assertThat(worked.number("fuel-on-field", "1")).isCloseTo(60, within(1e-9));
        assertThat(worked.result("fuel-by", "1").word()).contains("typed");
        assertThat(worked.number("fuel-on-field", "2")).isCloseTo(72, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A job may have several machines, so that it is no place for the fuel of one: told, with the place to type it. */
    @Test
    @Tag("derived")
    void fuelBesideTheJobIsToldToBeOfTheMachine() {
        for (String header : new String[] {"Fuel l/h", "Diesel (L/ha)", "GPH", "gal/h"}) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "grass"))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)"),
                            row("Mower", "mower", 3, 10, 80))
                    .sheet(
                            "Jobs",
                            row("Job", "Field", "Operation", "Machine", header),
                            row("1", "A", "mow", "Mower", 9))
                    .run();
            assertThat(worked.messages())
                    .anyMatch(message -> message.contains("not read as columns of Jobs: " + header)
                            && message.contains("\"" + header + "\" may be the Fuel, which is a column of Machines"));
        }
    }

    /** Nor for what one gets through in an hour. */
    @ParameterizedTest
    @Tag("derived")
    @ValueSource(strings = {"Output (t/h)", "Work rate (ac/h)", "Rate of work ha/h"})
    void anOutputBesideTheJobIsToldToBeOfTheMachine(String header) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 12, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)", "Efficiency (%)"),
                        row("Mower", "mower", 3, 10, 80))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine", header), row("1", "A", "mow", "Mower", 2))
                .run();
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("not read as columns of Jobs: " + header))
                .singleElement()
                .satisfies(message -> assertThat(message)
                        .contains("\"" + header + "\" may be the ")
                        .contains("gets through in an hour is typed there"));
    }
}
