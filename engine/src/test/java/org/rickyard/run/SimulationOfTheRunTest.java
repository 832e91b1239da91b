package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;

/** What a gang does with chance is simulated by a run only: where it was simulated with other figures, its row says so. */
class SimulationOfTheRunTest {
    @TempDir
    Path folder;

    private CellAddress cautions;

    private LiveGrid write() {
        Path client = folder.resolve("in.xlsx");
        ClientBook.create()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Distance to clamp (km)", "Yield (t/ha)", "Yield basis"),
                        row("Long Acre", "grass", 7, 2, 20, "as carted fresh"))
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
                                "Road speed empty (km/h)"),
                        row("Forager", "self-propelled forager", 6.5, 5.5, 70, 40, null, null, null),
                        row("Trailer", "trailer", null, null, null, null, 8, 20, 25))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Hours per day"),
                        row("First cut", "grass", "silage", "Forager; Trailer x 2", 10))
                .sheet(
                        "Assumptions",
                        row("Item", "Value"),
                        row("Seed of the carting simulation", -3),
                        row("Spread of carting times", 25))
                .save(client);
        Runs.Run run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 1));
        ResultTable gangs = run.plan().table("gangs-expected");
        assertThat(gangs.rows()).isEqualTo(1);
        cautions = run.places().cell(gangs.spec(), TableSpec.CAUTIONS, 0);
        return new LiveGrid(run.file(), run.plan(), run.places());
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** A shorter way, a slower forager, a smaller spread, another seed. */
    @ParameterizedTest
    @CsvSource({"Fields,1,3,1", "Machines,1,5,30", "Assumptions,2,1,10", "Assumptions,1,1,4"})
    void itAsksForANewRunWhereItWasSimulatedWithOtherFigures(String sheet, int row, int column, double number)
            throws Exception {
        try (LiveGrid grid = write()) {
            assertThat(grid.value(cautions)).isEqualTo("");
            grid.spoil(new CellAddress(sheet, row, column), number);
            assertThat((String) grid.value(cautions)).contains("run again");
        }
    }

    /** A larger field takes longer at the same rate. */
    @Test
    void whatItDoesNotRestOnAsksForNothing() throws Exception {
        try (LiveGrid grid = write()) {
            grid.spoil(new CellAddress("Fields", 1, 2), 12.0);
            assertThat(grid.value(cautions)).isEqualTo("");
        }
    }
}
