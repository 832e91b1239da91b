package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.Linted;

/** Every workbook of a folder, each as by itself, and none kept back by another. */
class GroupCommandTest {
    @TempDir
    Path folder;

    private Path farm(String name) throws IOException {
        return FarmBook.usual().write(folder.resolve(name));
    }

    private Path invoice(String name) throws IOException {
        Path file = folder.resolve(name);
        try (XSSFWorkbook book = new XSSFWorkbook();
                var out = Files.newOutputStream(file)) {
            book.createSheet("Invoice").createRow(0).createCell(0).setCellValue("Invoice 12");
            book.write(out);
        }
        return file;
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void eachWorkbookBecomesWhatARunByItselfMakesOfIt() throws Exception {
        Path one = farm("One farm.xlsx");
        Path two = FarmBook.usual().with("Fields", 1, 3, 5.5).write(folder.resolve("two.XLSX"));
        Path alone = Files.createDirectory(folder.resolve("alone"));
        byte[] expectedOne = alone(one, alone);
        byte[] expectedTwo = alone(two, alone);
        byte[] before = Files.readAllBytes(one);

        Ran ran = Ran.rickyard("group", folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).containsPattern("One farm\\.xlsx +written +\\d+ results");
        assertThat(ran.out()).containsPattern("two\\.XLSX +written +\\d+ results");
        assertThat(ran.err()).contains("2 workbooks: 2 written.", "Nothing here is a clearance");
        assertThat(Files.readAllBytes(one)).isEqualTo(expectedOne);
        assertThat(Files.readAllBytes(two)).isEqualTo(expectedTwo);
        assertThat(Files.readAllBytes(folder.resolve("One farm.before.xlsx"))).isEqualTo(before);
        Linted.after(before, expectedOne);
    }

    private static byte[] alone(Path book, Path folder) throws IOException {
        Path copy = folder.resolve(book.getFileName());
        Files.copy(book, copy);
        assertThat(Ran.rickyard("run", copy).code()).isZero();
        return Files.readAllBytes(copy);
    }

    @Test
    void secondTimeNothingIsWrittenAndFormerFilesAreNoWorkbooksOfTheGroup() throws Exception {
        farm("a.xlsx");
        farm("b.xlsx");
        // Nothing of this name stands beside it, so it is a client's own.
        farm("c.before.xlsx");
        Ran.rickyard("group", folder);
        List<String> first = files(folder);

        Ran second = Ran.rickyard("group", folder);

        assertThat(second.code()).isZero();
        assertThat(second.err()).contains("3 workbooks: 3 up to date.");
        assertThat(second.out()).doesNotContain("a.before.xlsx");
        assertThat(files(folder)).isEqualTo(first);
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there no name of a file holds a line break")
    void aLineBreakInANameMakesNoSecondLine() throws Exception {
        invoice("one\nfarm\tand another.xlsx");
        Path other = farm("plain.xlsx");
        Path to = Files.createDirectory(folder.resolve("to"));
        Path broken = Files.copy(other, folder.resolve("two\nfarms.xlsx"));

        Ran ran = Ran.rickyard("group", folder, "--to", to);

        assertThat(ran.out().lines())
                .hasSize(3)
                .anyMatch(line -> line.startsWith("one farm and another.xlsx  holds no list"))
                .anyMatch(line -> line.startsWith("two farms.xlsx") && line.contains("  written"));
        assertThat(to.resolve(broken.getFileName())).exists();
    }

    @Test
    void whatKeepsOneBackDoesNotKeepTheOthers() throws Exception {
        Path good = farm("a.xlsx");
        Path held = farm("held.xlsx");
        Files.createFile(folder.resolve("~$held.xlsx"));
        Path broken = Files.writeString(folder.resolve("broken.xlsx"), "no workbook at all");
        Path last = farm("z.xlsx");
        byte[] heldBefore = Files.readAllBytes(held);

        Ran ran = Ran.rickyard("group", folder);

        assertThat(ran.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(ran.out()).containsPattern("a\\.xlsx +written").containsPattern("z\\.xlsx +written");
        assertThat(ran.out()).containsPattern("held\\.xlsx +not done").containsPattern("broken\\.xlsx +not done");
        assertThat(ran.err())
                .contains(
                        "\"broken.xlsx\" is not an .xlsx workbook", "held.xlsx", "4 workbooks: 2 written, 2 not done.")
                .doesNotContain("Exception");
        assertThat(Files.readAllBytes(held)).isEqualTo(heldBefore);
        assertThat(Files.readString(broken)).isEqualTo("no workbook at all");
        assertThat(Opening.holdsOurSheets(good)).isTrue();
        assertThat(Opening.holdsOurSheets(last)).isTrue();
    }

    @Test
    void aDamagedWorkbookAloneIsCodeThree() throws Exception {
        farm("a.xlsx");
        Files.writeString(folder.resolve("broken.xlsx"), "no workbook at all");

        assertThat(Ran.rickyard("group", folder).code()).isEqualTo(Exit.REFUSED);
    }

    @Test
    void aWorkbookWithoutListsIsPassedOver() throws Exception {
        Path invoice = invoice("invoice.xlsx");
        byte[] before = Files.readAllBytes(invoice);
        assertThat(Ran.rickyard("group", folder).code()).isEqualTo(Exit.REFUSED);
        farm("farm.xlsx");

        Ran ran = Ran.rickyard("group", folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("invoice.xlsx  holds no list");
        assertThat(ran.err()).contains("1 written, 1 holds no list.");
        assertThat(Files.readAllBytes(invoice)).isEqualTo(before);
        assertThat(files(folder)).containsExactly("farm.before.xlsx", "farm.xlsx", "invoice.xlsx");
        invoice("second.xlsx");
        assertThat(Ran.rickyard("group", folder).err()).contains("1 up to date, 2 hold no list.");
    }

    @Test
    void otherKindsHiddenFilesAndSecondNamesAreLeftAside() throws Exception {
        farm("farm.xlsx");
        Files.createFile(folder.resolve("prices.xls"));
        Files.createFile(folder.resolve("letter.docx"));
        Files.createFile(folder.resolve(".hidden.xlsx"));
        Files.createSymbolicLink(folder.resolve("a link.xlsx"), Path.of("farm.xlsx"));

        Ran ran = Ran.rickyard("group", folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("farm.xlsx").hasLineCount(1);
        assertThat(ran.err())
                .contains("1 workbook: 1 written.", "prices.xls.", "Another name of a workbook above: a link.xlsx.")
                .doesNotContain("letter", "hidden");
    }

    @Test
    void whatIsNotLookedIntoIsSaid() throws Exception {
        FarmBook.usual().write(Files.createDirectory(folder.resolve("Hill")).resolve("farm.xlsx"));
        Path answers = Files.createDirectory(folder.resolve("answers"));
        Files.createSymbolicLink(folder.resolve("Dale"), Path.of("Hill"));
        Files.createSymbolicLink(folder.resolve("gone.xlsx"), Path.of("nowhere.xlsx"));
        Files.createSymbolicLink(folder.resolve("gone.txt"), Path.of("nowhere.txt"));
        Files.createDirectory(folder.resolve(".git"));

        assertThat(Ran.rickyard("group", folder, "--to", answers).err().lines())
                .contains(
                        "There is no workbook (.xlsx, .xlsm) in this folder.",
                        "Links to a file that is not there: gone.xlsx.",
                        "Links to folders, which are not followed: Dale.",
                        "Subfolders not looked into (--subfolders takes them in): Hill.");
        assertThat(Ran.rickyard("group", folder, "--to", answers, "--subfolders")
                        .err())
                .contains("1 workbook: 1 written.", "not followed: Dale.", "not there: gone.xlsx.")
                .doesNotContain("not looked into", "gone.txt", ".git");
    }

    @Test
    void aFolderMayBeGivenByALinkToIt() throws Exception {
        Path real = Files.createDirectory(folder.resolve("real"));
        Path farm = FarmBook.usual().write(real.resolve("farm.xlsx"));
        Path link = Files.createSymbolicLink(folder.resolve("clients"), Path.of("real"));

        Ran ran = Ran.rickyard("group", link);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("farm.xlsx  written");
        assertThat(Opening.holdsOurSheets(farm)).isTrue();
    }

    @Test
    void whatKeepsAWorkbookBackIsSaidWithItsFolder() throws Exception {
        Files.writeString(Files.createDirectory(folder.resolve("Hill")).resolve("farm.xlsx"), "no workbook at all");
        farm("farm.xlsx");

        Ran ran = Ran.rickyard("group", folder, "--subfolders");

        assertThat(ran.err().replace('\\', '/'))
                .contains("Hill/farm.xlsx:" + System.lineSeparator() + "\"farm.xlsx\" is not an .xlsx workbook");
    }

    @Test
    void toAnotherFolderLeavesTheWorkbooksAsTheyAre() throws Exception {
        Path farm = farm("farm.xlsx");
        Path deep = Files.createDirectory(folder.resolve("Hill"));
        FarmBook.usual().write(deep.resolve("farm.xlsx"));
        Path answers = Files.createDirectory(folder.resolve("answers"));
        byte[] before = Files.readAllBytes(farm);

        Ran ran = Ran.rickyard("group", folder, "--subfolders", "--to", answers);

        assertThat(ran.code()).isZero();
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
        assertThat(files(folder))
                .containsExactly("Hill/farm.xlsx", "answers/Hill/farm.xlsx", "answers/farm.xlsx", "farm.xlsx");
        assertThat(ran.out()).hasLineCount(2);
    }

    @Test
    void dryRunWritesNothing() throws Exception {
        farm("farm.xlsx");

        Ran ran = Ran.rickyard("group", folder, "--dry-run");

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).containsPattern("farm\\.xlsx +would be worked out +\\d+ results");
        assertThat(files(folder)).containsExactly("farm.xlsx");
    }

    @Test
    void dryRunTellsWhichWorkbooksAreUpToDate() throws Exception {
        Path done = farm("done.xlsx");
        Ran.rickyard("run", done);
        farm("new.xlsx");
        List<String> before = files(folder);

        Ran ran = Ran.rickyard("group", folder, "--dry-run");

        assertThat(ran.out())
                .containsPattern("done\\.xlsx +up to date +\\d+ results")
                .containsPattern("new\\.xlsx +would be worked out +\\d+ results");
        assertThat(ran.err()).contains("2 workbooks: 1 up to date, 1 would be worked out.");
        assertThat(files(folder)).isEqualTo(before);
    }

    @Test
    void stopsStandUnderTheirWorkbookAndStrictTellsWithheldResults() throws Exception {
        Path farm = FarmBook.usual().with("Machines", 1, 4, "twelve").write(folder.resolve("farm.xlsx"));

        Ran ran = Ran.rickyard("group", folder, "--strict");

        assertThat(ran.code()).isEqualTo(Exit.WITHHELD);
        assertThat(ran.out()).containsPattern("\\d+ withheld, 1 stop");
        assertThat(ran.err()).contains("  STOP Machines!").contains("\"twelve\"");
        assertThat(ran.err().lines().toList())
                .containsSubsequence(
                        "farm.xlsx:",
                        ran.err()
                                .lines()
                                .filter(line -> line.startsWith("  STOP Machines!"))
                                .findFirst()
                                .orElseThrow());
        assertThat(Opening.holdsOurSheets(farm)).isTrue();
    }

    /** Its figures stay as they were, beside new ones: among many workbooks nobody would look for that. */
    @Test
    void aSheetThatIsKeptIsSaidUnderItsWorkbook() throws Exception {
        Path farm = farm("farm.xlsx");
        farm("other.xlsx");
        assertThat(Ran.rickyard("group", folder).err()).doesNotContain("Kept as your own");
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(farm))) {
            book.getSheet("Work rates").getRow(9).createCell(3).setCellValue("typed over");
            try (var out = Files.newOutputStream(farm)) {
                book.write(out);
            }
        }

        Ran ran = Ran.rickyard("group", folder);

        assertThat(ran.code()).isZero();
        assertThat(ran.err().lines().toList())
                .startsWith("farm.xlsx:", "  Kept as your own, not brought up to date: Work rates.");
        assertThat(ran.err()).doesNotContain("other.xlsx:");
    }

    @Test
    void wrongFoldersAreSaid() throws Exception {
        Path farm = farm("farm.xlsx");

        assertThat(Ran.rickyard("group", folder.resolve("none")).err()).contains("There is no folder");
        assertThat(Ran.rickyard("group", farm).err()).contains("is a file; 'rickyard run'");
        assertThat(Ran.rickyard("group", folder, "--to", folder).code()).isEqualTo(Exit.USAGE);
        assertThat(Ran.rickyard("group", folder, "--to", folder.resolve("none")).err())
                .contains("There is no folder", "to write to");
        assertThat(Ran.rickyard("group", folder, "--to", farm).err())
                .contains("is a file; --to names the folder to write to");
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Ran none = Ran.rickyard("group", empty);
        assertThat(none.code()).isEqualTo(Exit.REFUSED);
        assertThat(none.err()).contains("There is no workbook (.xlsx, .xlsm) in this folder.");
    }
}
