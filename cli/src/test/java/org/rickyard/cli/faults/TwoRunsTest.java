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
import org.rickyard.testing.FarmBook;

/** Two runs of one workbook at the same time, in processes of their own. */
class TwoRunsTest {
    private static final String WAIT =
            "\"farm.xlsx\" was not written: another run is working on it. Wait until it is done and run again.";

    @TempDir
    Path scratch;

    private Path folder;
    private Path book;

    /** A farm whose results are more than a pipe holds, so that a run waits until they are read. */
    @BeforeEach
    void makeTheFarm() throws Exception {
        folder = Files.createDirectory(scratch.resolve("farm"));
        book = FarmBook.usual().write(folder.resolve("farm.xlsx"));
    }

    @Test
    void theSecondIsToldToWaitAndTheFirstGoesOn() throws Exception {
        byte[] original = Files.readAllBytes(book);
        try (ChildRun first = ChildRun.start(scratch, "run", book, "--json", "-")) {
            first.awaitResults();

            Ran second = Ran.rickyard("run", book);
            assertThat(second.code()).isEqualTo(5);
            assertThat(second.err()).contains(WAIT);
            assertThat(Files.readAllBytes(book)).isEqualTo(original);

            assertThat(first.end()).as(first.messages()).isZero();
        }
        assertThat(Farm.files(folder)).containsExactly("farm.before.xlsx", "farm.xlsx");
        assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(original);
        assertThat(Ran.rickyard("run", book).err()).contains("nothing would change");
    }

    @Test
    void aRunToAnotherFileNeedNotWait() throws Exception {
        try (ChildRun first = ChildRun.start(scratch, "run", book, "--json", "-")) {
            first.awaitResults();
            assertThat(Ran.rickyard("run", book, "--to", scratch.resolve("aside.xlsx"))
                            .code())
                    .isZero();
            assertThat(first.end()).as(first.messages()).isZero();
        }
        assertThat(scratch.resolve("aside.xlsx")).hasBinaryContent(Files.readAllBytes(book));
    }

    @Test
    void whenTheFirstIsKilledTheNextNeedNotWait() throws Exception {
        try (ChildRun first = ChildRun.start(scratch, "run", book, "--json", "-")) {
            first.awaitResults();
            first.kill();
        }
        assertThat(Farm.files(folder)).contains(".rickyard-farm.xlsx.lock", ".rickyard-farm.xlsx.tmp");
        assertThat(Ran.rickyard("run", book).code()).isZero();
        assertThat(Farm.files(folder)).containsExactly("farm.before.xlsx", "farm.xlsx");
    }

    @Test
    void manyAtOnceLeaveOneWholeResult() throws Exception {
        byte[] original = Files.readAllBytes(book);
        Path expected = scratch.resolve("expected.xlsx");
        assertThat(Ran.rickyard("run", book, "--to", expected).code()).isZero();
        List<ChildRun> runs = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            runs.add(ChildRun.start(scratch, "run", book));
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
        assertThat(book).hasBinaryContent(Files.readAllBytes(expected));
        assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(original);
        assertThat(Farm.files(folder)).containsExactly("farm.before.xlsx", "farm.xlsx");
    }
}
