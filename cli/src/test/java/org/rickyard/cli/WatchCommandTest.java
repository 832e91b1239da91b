package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.FarmBook;

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

    @Test
    void aWorkbookThatIsNotThereAndAGoalThatIsTheWorkbookAreRefused() {
        assertThat(Ran.rickyard("watch", folder.resolve("none.xlsx")).code()).isEqualTo(3);
        assertThat(Ran.rickyard("watch", book, "--to", book).code()).isEqualTo(2);
        assertThat(Ran.rickyard("watch", book, "--to", folder.resolve("a.txt")).code())
                .isEqualTo(2);
    }

    /** Types another area over that of the first field and saves as most programs do, by a new file in its place. */
    private static void type(Path book, double area) throws IOException {
        Path fresh = book.resolveSibling("fresh.tmp");
        try (InputStream in = Files.newInputStream(book);
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(fresh)) {
            workbook.getSheet("Fields").getRow(1).getCell(3).setCellValue(area);
            workbook.write(out);
        }
        Files.move(fresh, book, StandardCopyOption.REPLACE_EXISTING);
    }
}
