package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Name;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Some programs leave out, as they save, the part that says how our sheets were written. Then nothing of them is replaced. */
class LostRecordTest {
    @TempDir
    static Path folder;

    private static Runs.Run first;
    private static Runs.Run again;

    @BeforeAll
    static void aRunOverAWorkbookWithoutItsRecord() throws IOException {
        first = Runs.run(TestBooks.smallFarm(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
        try (ClientBook book = ClientBook.open(first.file())) {
            ClientBook.dropRecord(book.poi());
            // Markers hold a copy of it; those of earlier versions did not.
            for (Name name : book.poi().getAllNames()) {
                if (name.getNameName().equals(OurSheets.MARKER)) {
                    name.setRefersToFormula(name.getRefersToFormula().replaceAll(" .*", "\""));
                }
            }
            again = Runs.run(book.save(folder.resolve("lost.xlsx")), folder.resolve("again.xlsx"));
        }
    }

    @Test
    void everySheetIsKeptAndTheResultsStandBesideThem() {
        assertThat(first.sheets()).isNotEmpty();
        assertThat(again.sheets())
                .containsExactlyElementsOf(
                        first.sheets().stream().map(name -> name + " 2").toList());
    }

    @Test
    void itIsSaidOnceWithEveryName() {
        List<String> said = again.messages().stream()
                .filter(message -> message.contains("as your own"))
                .toList();
        assertThat(said)
                .singleElement()
                .asString()
                .startsWith(
                        "these sheets were written by a run, but the workbook no" + " longer holds the record of how");
        assertThat(said.get(0))
                .contains(first.sheets().stream().map(name -> "'" + name + "'").toList());
    }

    @Test
    void theNextRunSaysTheSameAndChangesNothing() throws IOException {
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(third.messages()).isEqualTo(again.messages());
        assertThat(Files.mismatch(again.file(), third.file())).isEqualTo(-1);
    }
}
