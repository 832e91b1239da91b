package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.cli.Ran;
import org.rickyard.testing.FarmBook;

/** The disk is full, at one stage of the run or another, or may not be written to at all. */
class FullDiskTest {
    @TempDir
    Path scratch;

    private Farm farm;
    private int needed;

    @BeforeEach
    void makeAFarm() throws IOException {
        OwnDisk.required(scratch);
        farm = Farm.in(scratch.resolve("farm"));
        Path result = scratch.resolve("result.xlsx");
        assertThat(Ran.rickyard("run", farm.book(), "--to", result).code()).isZero();
        needed = kibibytes(farm.book()) + kibibytes(result);
    }

    /** In whole pages, as a disk counts. */
    private static int kibibytes(Path file) throws IOException {
        return (int) ((Files.size(file) + 4095) / 4096 * 4);
    }

    private static String fullFor(String name) {
        return "\"" + name + "\" was not written: there is no room left on the disk. Free some space and run again.";
    }

    private void bookIsWholeAndAlone(OwnDisk disk) throws IOException {
        assertThat(disk.after().resolve("farm.xlsx")).hasBinaryContent(farm.original());
        assertThat(Farm.files(disk.after())).containsExactly("farm.xlsx");
    }

    /** Room for no part of the result, for a quarter, a half, all but its last page. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 0.5, 1})
    void bookIsWholeAndNothingIsLeftWhereverTheDiskFills(double part) throws Exception {
        int size = kibibytes(farm.book());
        int room = (int) ((needed - size) * part) / 4 * 4;
        OwnDisk disk = new OwnDisk(scratch, size + room, 0);

        Ran ran = disk.run(List.of(farm.book()), ":", "run", "DISK/farm.xlsx");

        farm.keptFrom(ran, fullFor("farm.xlsx"));
        bookIsWholeAndAlone(disk);
    }

    @Test
    void withJustEnoughRoomTheRunSucceeds() throws Exception {
        OwnDisk disk = new OwnDisk(scratch, needed + 8, 0);

        Ran ran = disk.run(List.of(farm.book()), ":", "run", "DISK/farm.xlsx");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(disk.after().resolve("farm.before.xlsx")).hasBinaryContent(farm.original());
        assertThat(disk.after().resolve("farm.xlsx"))
                .hasBinaryContent(Files.readAllBytes(scratch.resolve("result.xlsx")));
    }

    @Test
    void onceRoomIsMadeTheNextRunSucceeds() throws Exception {
        OwnDisk disk = new OwnDisk(scratch, needed + 64, 64);
        String firstRun =
                String.join(" ", Program.words()) + " run DISK/farm.xlsx 2> /dev/null || test $? = 5; rm DISK/ballast";

        Ran ran = disk.run(List.of(farm.book()), firstRun, "run", "DISK/farm.xlsx");

        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(Farm.files(disk.after())).containsExactly("farm.before.xlsx", "farm.xlsx");
    }

    @Test
    void resultsForOtherProgramsThatFindNoRoomLeaveTheBookAsItWas() throws Exception {
        Path aside = Files.writeString(scratch.resolve("note.txt"), "on the full disk");
        OwnDisk disk = new OwnDisk(scratch, 16, 4);
        Farm whole = Farm.in(scratch.resolve("many results"), "farm.xlsx", FarmBook.usual());

        Ran ran = disk.run(List.of(aside), ":", "run", whole.book().toString(), "--json", "DISK/results.json");

        whole.keptFrom(ran, fullFor("results.json"));
        assertThat(whole.files()).containsExactly("farm.xlsx");
        assertThat(Farm.files(disk.after())).containsExactly("note.txt");
    }

    @Test
    void otherFileThatFindsNoRoomIsNotLeftInPieces() throws Exception {
        Path aside = Files.writeString(scratch.resolve("note.txt"), "on the full disk");
        OwnDisk disk = new OwnDisk(scratch, 32, 0);

        Ran ran = disk.run(List.of(aside), ":", "run", farm.book().toString(), "--to", "DISK/answers.xlsx");

        farm.keptFrom(ran, fullFor("answers.xlsx"));
        assertThat(Farm.files(disk.after())).containsExactly("note.txt");
    }

    @Test
    void newWorkbookThatFindsNoRoomIsNotLeftInPieces() throws Exception {
        Path aside = Files.writeString(scratch.resolve("note.txt"), "on the full disk");
        OwnDisk disk = new OwnDisk(scratch, 12, 0);

        Ran ran = disk.run(List.of(aside), ":", "new", "DISK/fresh.xlsx", "--kind", "demo");

        farm.keptFrom(ran, fullFor("fresh.xlsx"));
        assertThat(Farm.files(disk.after())).containsExactly("note.txt");
    }

    @Test
    void diskThatMayOnlyBeRead() throws Exception {
        OwnDisk disk = new OwnDisk(scratch, needed + 64, 0);

        Ran ran = disk.run(List.of(farm.book()), "mount -o remount,ro DISK", "run", "DISK/farm.xlsx");

        farm.keptFrom(
                ran,
                "\"farm.xlsx\" was not written: it may only be read. Clear its read-only mark or write to another"
                        + " file.");
    }
}
