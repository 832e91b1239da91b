package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.cli.Ran;

/** The program itself, as it waits for a workbook to be saved and is ended while it waits. */
class WatchedProgramTest {
    @TempDir
    Path scratch;

    @Test
    void itTakesASaveAndLeavesNothingBehindWhenItIsEnded() throws Exception {
        Farm farm = Farm.in(scratch.resolve("farm"));

        try (ChildRun watch = ChildRun.start(scratch, "watch", farm.book())) {
            watch.awaitMessage("Wrote farm.xlsx", 1);
            Farm.edit(farm.book(), "Fields", 1, 3, 5.5);
            watch.awaitMessage("Wrote farm.xlsx", 2);
            Farm.edit(farm.book(), "Fields", 1, 3, 6.5);
            watch.awaitMessage("Wrote farm.xlsx", 3);
            watch.kill();
        }

        assertThat(farm.files())
                .as("the client's own file, and that of the last time, however often it was saved")
                .containsExactly("farm.before-2.xlsx", "farm.before.xlsx", "farm.xlsx");
        assertThat(farm.sibling("farm.before.xlsx")).hasBinaryContent(farm.original());
        assertThat(Ran.rickyard("run", farm.book()).err()).contains("nothing would change");
    }
}
