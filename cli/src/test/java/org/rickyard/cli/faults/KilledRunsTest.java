package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.benchmark.Benchmark;
import org.rickyard.cli.Ran;
import org.rickyard.testing.Extent;

/**
 * Runs in place, killed at seeded moments as by a power cut: {@value #USUAL_MOMENTS} of them in the gate,
 * {@value #ALL_MOMENTS} in the whole, or as many as {@code -Drickyard.kills=N} says. The first run of a workbook and a later one take turns; of each, every other kill
 * comes at a time counted from the start of the process, and every other from the moment the new file begins to be
 * written, where more can go wrong.
 */
class KilledRunsTest {
    private static final int USUAL_MOMENTS = 8;
    private static final int ALL_MOMENTS = 200;
    private static final int USUAL_FIELDS = 60;
    private static final int ALL_FIELDS = 200;
    private static final long SEED = 20_260_301;

    private static final String BOOK = "farm.xlsx";
    private static final String TEMPORARY = ".rickyard-farm.xlsx.tmp";

    @TempDir
    Path scratch;

    private byte[] original;
    private byte[] older;
    private byte[] result;
    private byte[] resultOfOlder;

    /** How far a run had come when it was killed, as its files tell. */
    private enum Stage {
        NOTHING_WRITTEN_YET,
        WRITING,
        NEW_FILE_IN_PLACE
    }

    @BeforeEach
    void makeTheBooks() throws Exception {
        Path made = scratch.resolve("made.xlsx");
        Benchmark.main(
                new String[] {"make", made.toString(), "" + (Extent.whole() ? ALL_FIELDS : USUAL_FIELDS), "all"});
        original = Files.readAllBytes(made);
        result = written(made);
        Path before = scratch.resolve("older.xlsx");
        assertThat(Ran.rickyard("run", made, "--to", before, "--trail-rows", "0")
                        .code())
                .isZero();
        older = Files.readAllBytes(before);
        resultOfOlder = written(before);
        assertThat(resultOfOlder).isNotEqualTo(older);
    }

    private byte[] written(Path book) throws IOException {
        Path out = scratch.resolve("out.xlsx");
        assertThat(Ran.rickyard("run", book, "--to", out).code()).isZero();
        byte[] bytes = Files.readAllBytes(out);
        Files.delete(out);
        return bytes;
    }

    @Test
    void bookIsWholeAtEveryMomentAndTheNextRunCleansUpAndSucceeds() throws Exception {
        int moments = Extent.of("rickyard.kills", USUAL_MOMENTS, ALL_MOMENTS);
        Random random = new Random(SEED);
        long untilWriting = 0;
        long whole = 0;
        Map<Stage, Integer> stages = new TreeMap<>();
        for (int moment = -1; moment < moments; moment++) {
            boolean first = moment % 2 == 0;
            Path folder = Files.createDirectory(scratch.resolve("moment " + moment));
            Path book = Files.write(folder.resolve(BOOK), first ? original : older);
            if (!first) {
                Files.write(folder.resolve("farm.before.xlsx"), original);
            }
            try (ChildRun run = ChildRun.start(scratch, "run", "--quiet", book)) {
                if (moment < 0) {
                    // An undisturbed one, to learn how long they take here and now.
                    long start = System.nanoTime();
                    awaitTemporary(folder, run);
                    untilWriting = System.nanoTime() - start;
                    assertThat(run.end()).as(run.messages()).isZero();
                    whole = System.nanoTime() - start;
                } else {
                    double part = random.nextDouble();
                    if (moment / 2 % 2 == 0) {
                        TimeUnit.NANOSECONDS.sleep((long) (part * 1.1 * whole));
                    } else {
                        awaitTemporary(folder, run);
                        TimeUnit.NANOSECONDS.sleep((long) (part * (whole - untilWriting)));
                    }
                    run.kill();
                    stages.merge(check(folder, first), 1, Integer::sum);
                }
            }
            nextRunSucceeds(folder, first);
            delete(folder);
        }
        System.out.println("killed at " + moments + " moments (seed " + SEED + "): " + stages);
        assertThat(stages.values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(moments);
        assertThat(stages).containsKey(Stage.WRITING);
    }

    private static void awaitTemporary(Path folder, ChildRun run) throws InterruptedException {
        while (run.alive() && !Files.exists(folder.resolve(TEMPORARY), LinkOption.NOFOLLOW_LINKS)) {
            TimeUnit.MICROSECONDS.sleep(500);
        }
    }

    /** Under the book's name is one whole file, the former or the new one, and every kept file is what it was. */
    private Stage check(Path folder, boolean first) throws IOException {
        byte[] former = first ? original : older;
        byte[] expected = first ? result : resultOfOlder;
        byte[] now = Files.readAllBytes(folder.resolve(BOOK));
        assertThat(now).isIn(former, expected);
        boolean done = !Arrays.equals(now, former);
        Path kept = folder.resolve(first ? "farm.before.xlsx" : "farm.before-2.xlsx");
        assertThat(Files.exists(kept) || !done).as("the former file is kept").isTrue();
        if (Files.exists(kept)) {
            assertThat(kept).hasBinaryContent(former);
        }
        if (!first) {
            assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(original);
        }
        if (done) {
            return Stage.NEW_FILE_IN_PLACE;
        }
        return Files.exists(folder.resolve(TEMPORARY)) ? Stage.WRITING : Stage.NOTHING_WRITTEN_YET;
    }

    private void nextRunSucceeds(Path folder, boolean first) throws IOException {
        Ran next = Ran.rickyard("run", folder.resolve(BOOK));
        assertThat(next.code()).as(next.err()).isZero();
        List<String> files = new ArrayList<>(List.of("farm.before.xlsx", BOOK));
        if (!first) {
            files.add(0, "farm.before-2.xlsx");
        }
        assertThat(Farm.files(folder)).isEqualTo(files);
        assertThat(folder.resolve(BOOK)).hasBinaryContent(first ? result : resultOfOlder);
        assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(original);
        if (!first) {
            assertThat(folder.resolve("farm.before-2.xlsx")).hasBinaryContent(older);
        }
    }

    private static void delete(Path folder) throws IOException {
        for (String file : Farm.files(folder)) {
            Files.delete(folder.resolve(file));
        }
        Files.delete(folder);
    }
}
