package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.cli.Ran;

/** Two runs of one workbook at the same time, in processes of their own. */
class TwoRunsTest {
    private static final String WAIT =
            "\"demo.xlsx\" was not written: another run is working on it. Wait until it is done and run again.";

    @TempDir
    Path scratch;

    private Path folder;
    private Path demo;

    @BeforeEach
    void makeTheDemo() throws Exception {
        folder = Files.createDirectory(scratch.resolve("farm"));
        demo = folder.resolve("demo.xlsx");
        assertThat(Ran.rickyard("new", demo, "--kind", "demo").code()).isZero();
    }

    @Test
    void theSecondIsToldToWaitAndTheFirstGoesOn() throws Exception {
        byte[] original = Files.readAllBytes(demo);
        try (ChildRun first = ChildRun.start(scratch, "run", demo, "--json", "-")) {
            first.awaitResults();

            Ran second = Ran.rickyard("run", demo);
            assertThat(second.code()).isEqualTo(5);
            assertThat(second.err()).contains(WAIT);
            assertThat(Files.readAllBytes(demo)).isEqualTo(original);

            assertThat(first.end()).as(first.messages()).isZero();
        }
        assertThat(Farm.files(folder)).containsExactly("demo.before.xlsx", "demo.xlsx");
        assertThat(folder.resolve("demo.before.xlsx")).hasBinaryContent(original);
        assertThat(Ran.rickyard("run", demo).err()).contains("nothing would change");
    }

    @Test
    void aRunToAnotherFileNeedNotWait() throws Exception {
        try (ChildRun first = ChildRun.start(scratch, "run", demo, "--json", "-")) {
            first.awaitResults();
            assertThat(Ran.rickyard("run", demo, "--to", scratch.resolve("aside.xlsx"))
                            .code())
                    .isZero();
            assertThat(first.end()).as(first.messages()).isZero();
        }
        assertThat(scratch.resolve("aside.xlsx")).hasBinaryContent(Files.readAllBytes(demo));
    }

    @Test
    void whenTheFirstIsKilledTheNextNeedNotWait() throws Exception {
        try (ChildRun first = ChildRun.start(scratch, "run", demo, "--json", "-")) {
            first.awaitResults();
            first.kill();
        }
        assertThat(Farm.files(folder)).contains(".rickyard-demo.xlsx.lock", ".rickyard-demo.xlsx.tmp");
        assertThat(Ran.rickyard("run", demo).code()).isZero();
        assertThat(Farm.files(folder)).containsExactly("demo.before.xlsx", "demo.xlsx");
    }

    @Test
    void manyAtOnceLeaveOneWholeResult() throws Exception {
        byte[] original = Files.readAllBytes(demo);
        Path expected = scratch.resolve("expected.xlsx");
        assertThat(Ran.rickyard("run", demo, "--to", expected).code()).isZero();
        List<ChildRun> runs = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            runs.add(ChildRun.start(scratch, "run", demo));
        }
        int done = 0;
        for (ChildRun run : runs) {
            int code = run.end();
            assertThat(code).as(run.messages()).isIn(0, 5);
            if (code == 5) {
                assertThat(run.messages()).contains(WAIT);
            } else {
                done++;
            }
        }
        assertThat(done).isPositive();
        assertThat(demo).hasBinaryContent(Files.readAllBytes(expected));
        assertThat(folder.resolve("demo.before.xlsx")).hasBinaryContent(original);
        assertThat(Farm.files(folder)).containsExactly("demo.before.xlsx", "demo.xlsx");
    }
}
