package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

class NobodyAtWorkTest {
    private static SeasonBook.Worked drilling(Object crew) throws IOException {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Long", 6.5, "Barley"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Crew",
                                "Fuel (L/h)"),
                        row("Drill", "drill", 4, 9, 68, crew, null),
                        row("Tractor", "tractor", null, null, null, 1, 14))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Tractor"),
                        row("Long", "drilling", "Drill", "Tractor"))
                .run();
    }

    /** Who costs a ring's machines writes the driver to the tractor and 0 to what it pulls: the work cost no wages. */
    @Test
    void workOfNobodyIsTold() throws IOException {
        assertThat(drilling(0).messages())
                .anyMatch(message -> message.contains("the crew is 0, so this work has no labour and no wages"));
        assertThat(drilling(1).messages()).noneMatch(message -> message.contains("the crew is 0"));
        assertThat(drilling(null).messages()).noneMatch(message -> message.contains("the crew is 0"));
    }
}
