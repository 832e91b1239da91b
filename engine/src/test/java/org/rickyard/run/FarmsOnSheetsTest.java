package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.testing.Parity;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/** A group with a sheet for each farm, headed with its name, and the same field on two farms. */
class FarmsOnSheetsTest {
    @TempDir
    Path folder;

    private static FarmBook group() {
        return new FarmBook()
                .sheet("Hill", "Farm: Hill Farm")
                .row("Hill", "Field", "Area (ha)")
                .row("Hill", "Home Field", 4)
                .sheet("Vale", "Farm", "Vale Farm")
                .row("Vale", "Field", "Area (ha)")
                .row("Vale", "Home Field", 6)
                .sheet("Kit", "Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)")
                .row("Kit", "Mower", "mower", 3, 12, 80)
                .sheet("Work", "Farm", "Field", "Operation", "Machine")
                .row("Work", "Hill Farm", "Home Field", "mowing", "Mower")
                .row("Work", "Vale Farm", "Home Field", "mowing", "Mower");
    }

    @Test
    void eachFarmsFieldIsItsOwn() {
        FarmBook.Run run = group().run(folder);
        assertThat(run.at(Severity.STOP)).isEmpty();
        double hill = run.number("holding-hours", "Hill Farm");
        assertThat(run.number("holding-hours", "Vale Farm")).isCloseTo(hill * 6 / 4, within(1e-12));
    }

    @Test
    void theGridAgreesAndLeadsToTheNames() throws IOException {
        FarmBook.Run run = group().run(folder);
        String[] ours = run.sheets().toArray(String[]::new);
        var stored = StoredValues.of(run.written(), ours);
        assertThat(Parity.differences(stored, PoiRecalculation.of(run.written(), ours), cell -> 0))
                .isEmpty();
        assertThat(stored).containsEntry(new CellAddress("Work rates", 10, 0), "Vale Farm");
        Path again = folder.resolve("again.xlsx");
        assertThat(Files.mismatch(run.written(), Runs.run(run.written(), again).file()))
                .isEqualTo(-1);
    }
}
