package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.cli.Ran;

/** Somebody else is at the workbook: a spreadsheet program holds it, or it changes while a run reads it. */
class HeldOrChangedTest {
    private static final String HELD =
            "\"farm.xlsx\" was not written: a spreadsheet program has it open. Close it there and run again";
    private static final String CHANGED =
            "\"farm.xlsx\" was not written: it was changed while it was being read. Run again to work from its new"
                    + " content.";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"~$farm.xlsx", ".~lock.farm.xlsx#"})
    void heldBookIsNotWrittenButMayBeLookedOver(String mark) throws Exception {
        Farm farm = Farm.in(folder);
        Files.createFile(folder.resolve(mark));

        farm.keptFrom(
                Ran.rickyard("run", farm.book()),
                HELD + " (if none has it open any more, delete \"" + mark
                        + "\" beside it, the mark that a program leaves behind when it crashes).");

        assertThat(Ran.rickyard("check", farm.book()).code()).isZero();
        assertThat(Ran.rickyard("run", farm.book(), "--dry-run").code()).isZero();
        assertThat(farm.files()).containsExactlyInAnyOrder(mark, "farm.xlsx");
    }

    @Test
    void heldBookMayBeWorkedOutToAnotherFile() throws Exception {
        Farm farm = Farm.in(folder);
        Files.createFile(folder.resolve("~$farm.xlsx"));

        assertThat(Ran.rickyard("run", farm.book(), "--to", folder.resolve("answers.xlsx"))
                        .code())
                .isZero();

        assertThat(farm.files()).containsExactly("answers.xlsx", "farm.xlsx", "~$farm.xlsx");
    }

    @Test
    void heldTargetIsNotWrittenOver() throws Exception {
        Farm farm = Farm.in(folder);
        Path answers = Files.writeString(folder.resolve("answers.xlsx"), "open in another window");
        Files.createFile(folder.resolve("~$answers.xlsx"));

        Ran ran = Ran.rickyard("run", farm.book(), "--to", answers);

        farm.keptFrom(ran, "\"answers.xlsx\" was not written: a spreadsheet program has it open.");
        assertThat(answers).hasContent("open in another window");
    }

    @Test
    void bookOpenedWhileARunReadsItIsNotWritten() throws Exception {
        Farm farm = Farm.in(folder);

        Ran ran =
                Ran.meanwhile(() -> Files.createFile(folder.resolve("~$farm.xlsx")), "run", farm.book(), "--json", "-");

        farm.keptFrom(ran, HELD);
        assertThat(farm.files()).containsExactly("farm.xlsx", "~$farm.xlsx");
    }

    @Test
    void bookSavedWhileARunReadsItKeepsWhatWasSaved() throws Exception {
        Farm farm = Farm.in(folder);
        Path newer = Farm.in(folder.resolve("newer")).book();
        Farm.edit(newer, "Fields", 1, 3, 5.5);
        byte[] saved = Files.readAllBytes(newer);

        Ran ran = Ran.meanwhile(() -> Files.write(farm.book(), saved), "run", farm.book(), "--json", "-");

        new Farm(farm.book(), saved).keptFrom(ran, CHANGED);
        assertThat(farm.files()).containsExactly("farm.xlsx", "newer");
        Ran again = Ran.rickyard("run", farm.book());
        assertThat(again.code()).isZero();
        assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(saved);
    }

    @Test
    void changeIsNoticedEvenIfTimeAndSizeAreTheSame() throws Exception {
        Farm farm = Farm.in(folder);
        byte[] changed = farm.original().clone();
        changed[changed.length - 1] ^= 1;
        FileTime time = Files.getLastModifiedTime(farm.book());

        Ran ran = Ran.meanwhile(
                () -> {
                    Files.write(farm.book(), changed);
                    Files.setLastModifiedTime(farm.book(), time);
                },
                "run",
                farm.book(),
                "--json",
                "-");

        new Farm(farm.book(), changed).keptFrom(ran, CHANGED);
    }

    @Test
    void bookTakenAwayWhileARunReadsItDoesNotComeBack() throws Exception {
        Farm farm = Farm.in(folder);
        Path moved = folder.resolve("moved.xlsx");

        Ran ran = Ran.meanwhile(() -> Files.move(farm.book(), moved), "run", farm.book(), "--json", "-");

        new Farm(moved, farm.original()).keptFrom(ran, CHANGED);
        assertThat(farm.files()).containsExactly("moved.xlsx");
    }

    @Test
    void sourceChangedWhileARunToAnotherFileReadsItGivesNoResult() throws Exception {
        Farm farm = Farm.in(folder);

        Ran ran = Ran.meanwhile(
                () -> Files.write(farm.book(), new byte[] {0}, StandardOpenOption.APPEND),
                "run",
                farm.book(),
                "--to",
                folder.resolve("answers.xlsx"),
                "--json",
                "-");

        assertThat(ran.code()).isEqualTo(5);
        assertThat(ran.err())
                .contains(
                        "\"answers.xlsx\" was not written: the workbook was changed while it was being read. Run again"
                                + " to work from its new content (farm.xlsx).");
        assertThat(farm.files()).containsExactly("farm.xlsx");
    }

    @Test
    void targetThatAppearsMeanwhileIsNotWrittenOver() throws Exception {
        Farm farm = Farm.in(folder);
        Path answers = folder.resolve("answers.xlsx");

        Ran ran = Ran.meanwhile(
                () -> Files.writeString(answers, "somebody else's"),
                "run",
                farm.book(),
                "--to",
                answers,
                "--json",
                "-");

        farm.keptFrom(ran, "\"answers.xlsx\" was not written: it was changed while it was being read.");
        assertThat(answers).hasContent("somebody else's");
        assertThat(farm.files()).containsExactly("answers.xlsx", "farm.xlsx");
    }
}
