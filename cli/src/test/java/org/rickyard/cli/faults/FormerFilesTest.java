package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.cli.Ran;

/** Under which name the former file is kept, and what is never overwritten by it. */
class FormerFilesTest {
    @TempDir
    Path folder;

    private static void runs(Path book, String kept) throws IOException {
        Ran ran = Ran.rickyard("run", book);
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.err()).contains("Wrote farm.xlsx.", "The former file is kept as " + kept + ".");
    }

    @Test
    void originalIsKeptForeverAndTheLastResultBesideIt() throws Exception {
        Farm farm = Farm.in(folder);
        runs(farm.book(), "farm.before.xlsx");
        byte[] former = null;
        for (double area : new double[] {5, 6, 7}) {
            Farm.edit(farm.book(), "Fields", 1, 3, area);
            former = Files.readAllBytes(farm.book());
            runs(farm.book(), "farm.before-2.xlsx");
        }
        assertThat(folder.resolve("farm.before.xlsx")).hasBinaryContent(farm.original());
        assertThat(folder.resolve("farm.before-2.xlsx")).hasBinaryContent(former);
        assertThat(farm.files()).containsExactly("farm.before-2.xlsx", "farm.before.xlsx", "farm.xlsx");
    }

    @Test
    void clientsOwnFilesUnderThoseNamesArePassedBy() throws Exception {
        Farm farm = Farm.in(folder);
        Files.writeString(farm.sibling("farm.before.xlsx"), "no workbook at all");
        byte[] other = Files.readAllBytes(
                Farm.in(folder.resolve("other"), "farm.before-2.xlsx").book());
        Files.write(farm.sibling("farm.before-2.xlsx"), other);
        Files.createDirectory(farm.sibling("farm.before-3.xlsx"));
        Farm.edit(farm.book(), "Fields", 1, 3, 5);

        runs(farm.book(), "farm.before-4.xlsx");

        assertThat(farm.sibling("farm.before.xlsx")).hasContent("no workbook at all");
        assertThat(farm.sibling("farm.before-2.xlsx")).hasBinaryContent(other);
        assertThat(farm.sibling("farm.before-3.xlsx")).isEmptyDirectory();
    }

    @Test
    void theSameFileIsNotKeptTwice() throws Exception {
        Farm farm = Farm.in(folder);
        runs(farm.book(), "farm.before.xlsx");
        Files.write(farm.book(), farm.original());

        runs(farm.book(), "farm.before.xlsx");

        assertThat(farm.files()).containsExactly("farm.before.xlsx", "farm.xlsx");
        assertThat(farm.sibling("farm.before.xlsx")).hasBinaryContent(farm.original());
    }

    @Test
    void resultsReplaceOlderResultsAtTheTargetAndTheClientsOwnFileIsKept() throws Exception {
        Farm farm = Farm.in(folder);
        Path answers = folder.resolve("answers.xlsx");
        byte[] own =
                Files.readAllBytes(Farm.in(folder.resolve("other"), "a.xlsx").book());
        Files.write(answers, own);
        Farm.edit(farm.book(), "Fields", 1, 3, 5);

        Ran ran = Ran.rickyard("run", farm.book(), "--to", answers);

        assertThat(ran.err()).contains("Wrote answers.xlsx.", "kept as answers.before.xlsx");
        assertThat(folder.resolve("answers.before.xlsx")).hasBinaryContent(own);
    }

    /** What was typed into the answers is in no other file: the third run in a row threw it away. */
    @Test
    void answersThatWereEditedAreNotOverwrittenByLaterOnes() throws Exception {
        Farm farm = Farm.in(folder);
        Path answers = folder.resolve("answers.xlsx");
        assertThat(Ran.rickyard("run", farm.book(), "--to", answers).code()).isZero();
        Farm.edit(answers, "Fields", 1, 3, 9);
        byte[] edited = Files.readAllBytes(answers);

        String[] kept = {"answers.before.xlsx", "answers.before-2.xlsx", "answers.before-2.xlsx"};
        for (int i = 0; i < kept.length; i++) {
            Farm.edit(farm.book(), "Fields", 1, 3, 5 + i);
            assertThat(Ran.rickyard("run", farm.book(), "--to", answers).err()).contains("kept as " + kept[i] + ".");
            assertThat(folder.resolve("answers.before.xlsx")).hasBinaryContent(edited);
        }
    }

    @Test
    void runOnTheKeptFileItselfDoesNotDisturbTheBook() throws Exception {
        Farm farm = Farm.in(folder);
        runs(farm.book(), "farm.before.xlsx");
        byte[] result = Files.readAllBytes(farm.book());

        Ran ran = Ran.rickyard("run", farm.sibling("farm.before.xlsx"));

        assertThat(ran.code()).isZero();
        assertThat(farm.book()).hasBinaryContent(result);
        assertThat(farm.sibling("farm.before.xlsx")).hasBinaryContent(result);
        assertThat(farm.sibling("farm.before.before.xlsx")).hasBinaryContent(farm.original());
    }
}
