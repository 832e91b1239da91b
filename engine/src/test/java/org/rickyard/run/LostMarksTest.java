package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.Finding;

/**
 * Some programs drop the record and every defined name as they save, so that nothing says any longer which sheets a run has
 * written. Their answers must not be read as lists.
 */
class LostMarksTest {
    @TempDir
    static Path folder;

    private static Runs.Run first;
    private static Runs.Run again;

    @BeforeAll
    static void aRunOverAWorkbookThatSaysNothingOfOurs() throws IOException {
        first = Runs.run(TestBooks.smallFarm(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
        try (ClientBook book = ClientBook.open(first.file())) {
            ClientBook.dropRecord(book.poi());
            for (Name name : List.copyOf(book.poi().getAllNames())) {
                book.poi().removeName(name);
            }
            again = Runs.run(book.save(folder.resolve("lost.xlsx")), folder.resolve("again.xlsx"));
        }
    }

    @Test
    void theAnswersAreThoseOfTheListsAlone() {
        assertThat(first.results()).isNotEmpty();
        assertThat(answers(again)).isEqualTo(answers(first));
    }

    @Test
    void everySheetIsKeptAndToldAndTheResultsStandBesideThem() {
        assertThat(again.sheets())
                .containsExactlyElementsOf(
                        first.sheets().stream().map(name -> name + " 2").toList());
        assertThat(again.messages().stream()
                        .filter(message -> message.contains("as your own"))
                        .toList())
                .singleElement()
                .satisfies(message -> assertThat(message)
                        .contains(first.sheets().stream()
                                .map(name -> "'" + name + "'")
                                .toList()));
    }

    @Test
    void theNextRunChangesNothing() throws IOException {
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(third.messages()).isEqualTo(again.messages());
        assertThat(Files.mismatch(again.file(), third.file())).isEqualTo(-1);
    }

    /** As an adviser keeps last year's answers: pasted as values on a sheet of their own. */
    @Test
    void pagesPastedAsValuesAreNoListsEither() throws IOException {
        Runs.Run beside;
        try (ClientBook book = ClientBook.open(first.file())) {
            for (String name : first.sheets()) {
                paste(book.poi().getSheet(name), book.poi().createSheet("Last year, " + name));
            }
            beside = Runs.run(book.save(folder.resolve("pasted.xlsx")), folder.resolve("beside.xlsx"));
        }
        assertThat(answers(beside)).isEqualTo(answers(first));
        assertThat(beside.sheets()).isEqualTo(first.sheets());
        assertThat(beside.findings().stream()
                        .filter(finding -> finding.cell()
                                .filter(cell -> cell.sheet().startsWith("Last year"))
                                .isPresent())
                        .map(Finding::message))
                .hasSize(first.sheets().size())
                .containsOnly("These are results of a run, copied here; they are not read as a list.");
    }

    /** As a client sees beside his fields whether he must run again: by a formula, or as he has pasted it. */
    @Test
    void aListThatShowsTheMasterCheckIsStillAList() throws IOException {
        Runs.Run again;
        try (ClientBook book = ClientBook.open(first.file())) {
            for (String name : List.of("Fields", "Machines")) {
                Row row = book.poi().getSheet(name).getRow(name.equals("Fields") ? 0 : 1);
                Cell shown = row.createCell(row.getLastCellNum() + 1);
                shown.setCellValue(
                        book.poi().getSheet("Summary").getRow(1).getCell(0).getStringCellValue());
                if (name.equals("Fields")) {
                    shown.setCellFormula("Summary!$A$2");
                }
            }
            again = Runs.run(book.save(folder.resolve("shown.xlsx")), folder.resolve("shown again.xlsx"));
        }
        assertThat(answers(again)).isEqualTo(answers(first));
        assertThat(again.messages())
                .noneSatisfy(message -> assertThat(message).contains("results of a run, copied here"));
    }

    private static void paste(Sheet from, Sheet to) {
        for (Row row : from) {
            Row pasted = to.createRow(row.getRowNum());
            for (Cell cell : row) {
                CellType type =
                        cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
                Cell value = pasted.createCell(cell.getColumnIndex());
                if (type == CellType.NUMERIC) {
                    value.setCellValue(cell.getNumericCellValue());
                } else if (type == CellType.STRING) {
                    value.setCellValue(cell.getStringCellValue());
                }
            }
        }
    }

    private static List<String> answers(Runs.Run run) {
        return run.results().stream()
                .map(result -> String.join(
                        " ",
                        result.id(),
                        result.about().toString(),
                        result.number().toString(),
                        result.word().toString(),
                        result.numbers()))
                .toList();
    }
}
