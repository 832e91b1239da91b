package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.PoiRecalculation;

/** A name that is an error in the client's list: our cell for it is empty, and so it is wherever it is told live. */
class NamesWithErrorsTest {
    @Test
    void aCardTellsOfANozzleWithoutAName(@TempDir Path folder) throws IOException {
        Path file;
        try (ClientBook book = ClientBook.create()) {
            book.sheet("Fields", new Object[] {"Field", "Crop", "Area (ha)"}, new Object[] {"Top", "wheat", 4.0});
            book.sheet(
                    "Machines",
                    new Object[] {"Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"},
                    new Object[] {"Boom", "sprayer", 24.0, 12.0, 1500.0});
            book.sheet(
                    "Jobs",
                    new Object[] {
                        "Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"
                    },
                    new Object[] {"T1", "Top", "spray", "Boom", "Herbicide A", 1.0, 200.0});
            book.sheet(
                    "Nozzle test",
                    new Object[] {"Sprayer", "Nozzle", "Flow (L/min)"},
                    new Object[] {"Boom", 1.0, 1.6},
                    new Object[] {"Boom", 2.0, 1.6},
                    new Object[] {"Boom", ClientBook.ERROR, 2.4});
            file = book.save(folder.resolve("in.xlsx"));
        }
        Runs.Run run = Runs.run(file, folder.resolve("out.xlsx"));

        assertThat(run.messages()).anyMatch(message -> message.contains("do not spray with it"));
        assertThat(run.differences(PoiRecalculation.of(run.file(), run.ours()))).isEmpty();
    }
}
