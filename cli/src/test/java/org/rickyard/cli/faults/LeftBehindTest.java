package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.cli.Ran;

/**
 * Every state in which a run can be killed, made on purpose: the steps between the last byte of the new file and its
 * having the name are so short that chance hardly ever meets them.
 */
class LeftBehindTest {
    private static final String LOCK = ".rickyard-farm.xlsx.lock";
    private static final String TEMPORARY = ".rickyard-farm.xlsx.tmp";
    private static final String STEP = ".rickyard-farm.xlsx.former";
    private static final String KEPT = "farm.before.xlsx";

    @TempDir
    Path scratch;

    private Farm farm;
    private byte[] result;

    @BeforeEach
    void makeAFarm() throws IOException {
        farm = Farm.in(scratch.resolve("farm"));
        Path out = scratch.resolve("result.xlsx");
        assertThat(Ran.rickyard("run", farm.book(), "--to", out).code()).isZero();
        result = Files.readAllBytes(out);
        Files.writeString(farm.sibling(LOCK), "4711-1");
    }

    private void nextRunCleansUp(String said) throws IOException {
        Ran ran = Ran.rickyard("run", farm.book());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains(said);
        assertThat(farm.files()).containsExactly(KEPT, "farm.xlsx");
        assertThat(farm.book()).hasBinaryContent(result);
        assertThat(farm.sibling(KEPT)).hasBinaryContent(farm.original());
    }

    private void left(String name, byte[] bytes) throws IOException {
        Files.write(farm.sibling(name), bytes);
    }

    @Test
    void killedBeforeAnythingWasWritten() throws Exception {
        nextRunCleansUp("Wrote farm.xlsx.");
    }

    @Test
    void killedInTheMiddleOfTheNewFile() throws Exception {
        left(TEMPORARY, Arrays.copyOf(result, result.length / 2));
        nextRunCleansUp("Wrote farm.xlsx.");
    }

    @Test
    void killedWithTheNewFileComplete() throws Exception {
        left(TEMPORARY, result);
        nextRunCleansUp("Wrote farm.xlsx.");
    }

    @Test
    void killedWhileTheFormerFileWasCopied() throws Exception {
        left(TEMPORARY, result);
        left(STEP, Arrays.copyOf(farm.original(), 1000));
        nextRunCleansUp("kept as farm.before.xlsx");
    }

    @Test
    void killedWithTheFormerFileLinkedButNotYetNamed() throws Exception {
        left(TEMPORARY, result);
        Files.createLink(farm.sibling(STEP), farm.book());
        nextRunCleansUp("kept as farm.before.xlsx");
    }

    @Test
    void killedWithTheFormerFileKeptAndTheNewOneNotYetInPlace() throws Exception {
        left(TEMPORARY, result);
        Files.createLink(farm.sibling(KEPT), farm.book());
        nextRunCleansUp("kept as farm.before.xlsx");
    }

    @Test
    void killedWithTheNewFileInPlaceButTheLockNotYetRemoved() throws Exception {
        left(KEPT, farm.original());
        left("farm.xlsx", result);
        nextRunCleansUp("nothing would change");
    }

    @Test
    void killedRunsToOtherFilesAreCleanedUpByTheNextOnesToThem() throws Exception {
        List<String> left = List.of(
                ".rickyard-answers.xlsx.tmp",
                ".rickyard-answers.xlsx.lock",
                ".rickyard-answers.json.tmp",
                ".rickyard-answers.json.lock");
        for (String name : left) {
            left(name, new byte[] {'P', 'K'});
        }
        Files.delete(farm.sibling(LOCK));

        Ran ran = Ran.rickyard(
                "run", farm.book(), "--to", farm.sibling("answers.xlsx"), "--json", farm.sibling("answers.json"));

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(farm.files()).containsExactly("answers.json", "answers.xlsx", "farm.xlsx");
    }
}
