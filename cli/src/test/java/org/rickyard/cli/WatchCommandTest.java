package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.Skips;
import org.rickyard.workbook.graft.SafeReplacement;

/** A workbook that is recalculated each time it is saved; here each look follows what is done before it. */
class WatchCommandTest {
    private static final Executable NOTHING = () -> {};

    @TempDir
    private Path folder;

    private Path book;

    @BeforeEach
    void farm() throws IOException {
        book = FarmBook.usual().write(folder.resolve("farm.xlsx"));
    }

    @Test
    void itIsWorkedOutAtOnceAndWhenItIsSavedAndLeftAloneBetween() throws Exception {
        Path same = Files.copy(book, folder.resolve("same.xlsx"));
        Ran.rickyard("run", same);
        byte[] first = Files.readAllBytes(same);

        Ran ran = Ran.watching(
                List.of(
                        () -> assertThat(book).as("worked out at once").hasBinaryContent(first),
                        NOTHING,
                        NOTHING,
                        () -> {
                            type(book, 3.5);
                            Files.copy(book, same, StandardCopyOption.REPLACE_EXISTING);
                        },
                        NOTHING,
                        NOTHING,
                        NOTHING),
                "watch",
                book);

        assertThat(ran.code()).isZero();
        Ran.rickyard("run", same);
        assertThat(book).hasBinaryContent(Files.readAllBytes(same));
        assertThat(ran.err()).containsOnlyOnce("was saved").containsOnlyOnce("Watching");
        assertThat(ran.err().split("Wrote farm.xlsx", -1)).as("written twice").hasSize(3);
        assertThat(ran.err()).doesNotContain("up to date");
    }

    @Test
    void aFileThatIsStillBeingWrittenIsNotRead() {
        Path answers = folder.resolve("answers.xlsx");

        Ran ran = Ran.watching(
                List.of(
                        () -> Files.delete(answers),
                        () -> Files.write(book, new byte[1000]),
                        () -> Files.write(book, new byte[2000]),
                        () -> {
                            Files.delete(book);
                            FarmBook.usual().write(book);
                        },
                        () -> assertThat(answers).doesNotExist(),
                        NOTHING),
                "watch",
                book,
                "--to",
                answers);

        assertThat(ran.err()).doesNotContain("damaged", "not a workbook");
        assertThat(answers).exists();
    }

    @Test
    void whileAProgramHasItOpenTheAnswersAreToldAndItIsWrittenWhenItIsClosed() throws Exception {
        byte[] original = Files.readAllBytes(book);
        Path mark = Files.createFile(folder.resolve(".~lock.farm.xlsx#"));

        Ran ran = Ran.watching(
                List.of(
                        () -> assertThat(book).hasBinaryContent(original),
                        () -> type(book, 3.5),
                        NOTHING,
                        () -> assertThat(Opening.holdsOurSheets(book)).isFalse(),
                        () -> Files.delete(mark),
                        () -> assertThat(Opening.holdsOurSheets(book)).isTrue(),
                        NOTHING),
                "watch",
                book);

        assertThat(ran.err().split("is open in a spreadsheet program and will be written when it is closed", -1))
                .as("told at first and when it was saved")
                .hasSize(3);
        assertThat(ran.err()).contains("delete \".~lock.farm.xlsx#\"").containsOnlyOnce("Wrote farm.xlsx");
        assertThat(ran.out().split("Moor End", -1)).as("answers each time").hasSizeGreaterThan(3);
    }

    @Test
    void whatCannotBeUsedIsToldAndTheNextSaveIsTaken() {
        Ran ran = Ran.watching(
                List.of(
                        () -> Files.writeString(book, "no workbook"),
                        NOTHING,
                        () -> Files.delete(book),
                        NOTHING,
                        NOTHING,
                        () -> FarmBook.usual().write(book),
                        NOTHING),
                "watch",
                book);

        assertThat(ran.code()).isZero();
        assertThat(ran.err())
                .containsOnlyOnce("\"farm.xlsx\" is not there any more. It is waited for.")
                .doesNotContain("Exception");
        assertThat(ran.err().split("was saved", -1)).hasSize(3);
        assertThat(Opening.holdsOurSheets(book)).isTrue();
    }

    /** What was owed since it was open was tried, and its refusal told, at every look. */
    @Test
    void whatHasBecomeAFolderIsToldOnce() throws Exception {
        Path mark = Files.createFile(folder.resolve(".~lock.farm.xlsx#"));

        Ran ran = Ran.watching(
                List.of(
                        NOTHING,
                        () -> {
                            Files.delete(book);
                            Files.createDirectory(book);
                            Files.delete(mark);
                        },
                        NOTHING,
                        NOTHING,
                        NOTHING,
                        () -> {
                            Files.delete(book);
                            FarmBook.usual().write(book);
                        },
                        NOTHING),
                "watch",
                book);

        assertThat(ran.err()).containsOnlyOnce("is a folder").containsOnlyOnce("Wrote farm.xlsx");
    }

    /** It said "wait until it is done and run again", and did not try again itself before the next save. */
    @Test
    void whileAnotherRunWorksOnItItIsWaitedFor() throws Exception {
        SafeReplacement other = SafeReplacement.begin(book);

        Ran ran = Ran.watching(
                List.of(
                        NOTHING,
                        NOTHING,
                        () -> assertThat(Opening.holdsOurSheets(book)).isFalse(),
                        other::close,
                        NOTHING),
                "watch",
                book);

        assertThat(ran.err())
                .containsOnlyOnce("\"farm.xlsx\" was not written: another run is working on it. It is tried again when"
                        + " that is done.")
                .doesNotContain("run again")
                .containsOnlyOnce("Wrote farm.xlsx");
    }

    /** What was saved while it was read is worked out by the next look, and nobody is told to do so. */
    @Test
    void whatWasSavedWhileItWasReadIsWorkedOutAgain() throws Exception {
        byte[] noise = new byte[5 << 20];
        new Random(1).nextBytes(noise);
        change(book, workbook -> workbook.addPicture(noise, Workbook.PICTURE_TYPE_PNG));

        Ran ran = Ran.watchingLarge(() -> type(book, 3.5), List.of(NOTHING, NOTHING, NOTHING), "watch", book);

        assertThat(ran.err())
                .containsOnlyOnce(
                        "\"farm.xlsx\" was not written: it was changed while it was being read. It is worked out"
                                + " again.")
                .doesNotContain("Run again")
                .containsOnlyOnce("Wrote farm.xlsx");
    }

    /** Another file that is to hold the answers may be changed too: no save of the workbook would bring them then. */
    @Test
    void aGoalThatAppearsWhileTheWorkbookIsReadIsWrittenAllTheSame() throws Exception {
        byte[] noise = new byte[5 << 20];
        new Random(1).nextBytes(noise);
        change(book, workbook -> workbook.addPicture(noise, Workbook.PICTURE_TYPE_PNG));
        Path answers = folder.resolve("answers.xlsx");

        Ran ran = Ran.watchingLarge(
                () -> FarmBook.usual().write(answers), List.of(NOTHING, NOTHING), "watch", book, "--to", answers);

        assertThat(ran.err()).contains("It is worked out again.").containsOnlyOnce("Wrote answers.xlsx");
        assertThat(Opening.holdsOurSheets(answers)).isTrue();
    }

    /** A spreadsheet program marks the file by the name it was opened by, which may be that of a link to it. */
    @Test
    void aMarkBesideALinkHoldsTheFileItLeadsTo() throws Exception {
        Path desk = Files.createDirectory(folder.resolve("desk"));
        Path link = desk.resolve("today.xlsx");
        boolean made;
        try {
            Files.createSymbolicLink(link, book);
            made = true;
        } catch (UnsupportedOperationException | IOException notHere) {
            made = false;
        }
        Skips.unless(made, "symbolic links cannot be made here");
        Path mark = Files.createFile(desk.resolve("~$today.xlsx"));

        Ran run = Ran.rickyard("run", link);
        Ran ran = Ran.watching(
                List.of(
                        NOTHING,
                        () -> assertThat(Opening.holdsOurSheets(book)).isFalse(),
                        () -> Files.delete(mark),
                        NOTHING,
                        () -> type(book, 3.5),
                        NOTHING,
                        NOTHING),
                "watch",
                link);

        assertThat(run.err()).contains("a spreadsheet program has it open").contains("beside the link to it");
        assertThat(ran.err())
                .containsOnlyOnce("is open in a spreadsheet program")
                .containsOnlyOnce("was saved");
        assertThat(ran.err().split("Wrote farm.xlsx", -1)).as("written twice").hasSize(3);
        assertThat(link).isSymbolicLink();
    }

    @Test
    void aWorkbookThatIsNotThereAndAGoalThatIsTheWorkbookAreRefused() {
        assertThat(Ran.rickyard("watch", folder.resolve("none.xlsx")).code()).isEqualTo(3);
        assertThat(Ran.rickyard("watch", book, "--to", book).code()).isEqualTo(2);
        assertThat(Ran.rickyard("watch", book, "--to", folder.resolve("a.txt")).code())
                .isEqualTo(2);
    }

    /** Types another area over that of the first field. */
    private static void type(Path book, double area) throws IOException {
        change(
                book,
                workbook -> workbook.getSheet("Fields").getRow(1).getCell(3).setCellValue(area));
    }

    /** Saves as most programs do, by a new file in its place. */
    private static void change(Path book, Consumer<XSSFWorkbook> change) throws IOException {
        Path fresh = book.resolveSibling("fresh.tmp");
        try (InputStream in = Files.newInputStream(book);
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(fresh)) {
            change.accept(workbook);
            workbook.write(out);
        }
        Files.move(fresh, book, StandardCopyOption.REPLACE_EXISTING);
    }
}
