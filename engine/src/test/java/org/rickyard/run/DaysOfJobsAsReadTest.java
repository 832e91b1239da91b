package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;

/** Two rows of one day are one job, and of two days two: a day that is changed afterwards asks for a new run. */
class DaysOfJobsAsReadTest {
    private static final CellAddress MASTER = new CellAddress("Checks", 1, 0);
    private static final CellAddress SECOND_DAY = new CellAddress("Jobs", 2, 6);

    @TempDir
    Path folder;

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** No season is planned here, which follows its days anyway. */
    @ParameterizedTest
    @ValueSource(strings = {"", "Docks"})
    void aDayThatPartsOneTankIntoTwoIsSaid(String job) throws IOException {
        LocalDate may = LocalDate.of(2026, 5, 20);
        Path client = folder.resolve("in.xlsx");
        ClientBook.create()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Beacon", "wheat", 8.2))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Boom", "sprayer", 12, 8, 900))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Earliest"),
                        row(job, "Beacon", "spraying", "Boom", "Product A", 1, may),
                        row(job, "Beacon", "spraying", "Boom", "Product B", 1, may))
                .save(client);
        Runs.Run run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 1));
        try (LiveGrid grid = new LiveGrid(run.file(), run.plan(), run.places())) {
            assertThat(grid.value(MASTER)).isEqualTo("Checks: all totals agree");
            grid.spoil(SECOND_DAY, 46204);
            assertThat((String) grid.value(MASTER)).startsWith("Checks: RUN AGAIN - ");
        }
    }
}
