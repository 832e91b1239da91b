package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.SmallPackage;

/** What on a sheet of ours is told for the client's own. */
class HandMarksTest {
    @TempDir
    Path folder;

    private boolean marked(SmallPackage small) throws Exception {
        try (BookPackage book = BookPackage.open(small.writeTo(folder.resolve("book.xlsx")))) {
            return HandMarks.on(book, book.sheets().get(0), Optional.empty());
        }
    }

    private static SmallPackage leading(String kind, String target, String part, String content) {
        return SmallPackage.plain()
                .part(
                        "xl/worksheets/_rels/sheet1.xml.rels",
                        SmallPackage.relationships(SmallPackage.link("rId1", kind, target)))
                .part(part, content);
    }

    @Test
    void aSheetThatLeadsNowhereHasNone() throws Exception {
        assertThat(marked(SmallPackage.plain())).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"A7,false", "ZZ7,false", "A1,true", "C10,true", "A700,true"})
    void notesOfOursStandOnTheLabelsOnly(String cell, boolean expected) throws Exception {
        assertThat(marked(leading(
                        "comments",
                        "../comments1.xml",
                        "xl/comments1.xml",
                        "<x:comments xmlns:x=\"" + SmallPackage.MAIN + "\"><x:commentList><x:comment ref=\"B7\"/>"
                                + "<x:comment ref=\"" + cell + "\"/></x:commentList></x:comments>")))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"drawing,true", "pivotTable,true", "table,true", "threadedComment,true", "printerSettings,false"})
    void chartsAndTheLikeAreTheClients(String kind, boolean expected) throws Exception {
        assertThat(marked(leading(kind, "../other/part1.xml", "xl/other/part1.xml", "<x/>")))
                .isEqualTo(expected);
    }

    @Test
    void aSheetOfOursWithAChartAndANoteIsKeptAndTheResultsStandBesideIt() throws Exception {
        Path in = folder.resolve("in.xlsx");
        ListsAdded.to(SmallPackage.plain().writeTo(folder.resolve("original.xlsx")), in);
        Path marked = folder.resolve("marked.xlsx");
        try (ClientBook book =
                ClientBook.open(Runs.run(in, folder.resolve("out.xlsx")).file())) {
            XSSFSheet sheet = book.poi().getSheet("Work rates");
            XSSFDrawing drawing = sheet.createDrawingPatriarch();
            drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 20, 20, 25, 30));
            drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 3, 9, 5, 12))
                    .setString("ask the contractor");
            book.save(marked);
        }
        Runs.Run again = Runs.run(marked, folder.resolve("again.xlsx"));
        assertThat(again.messages())
                .anyMatch(message -> message.startsWith("the sheet 'Work rates' was written by a run and then edited"));
        assertThat(again.sheets()).contains("Work rates 2").doesNotContain("Work rates");
        Runs.Run third = Runs.run(again.file(), folder.resolve("third.xlsx"));
        assertThat(Files.mismatch(again.file(), third.file())).isEqualTo(-1);
        try (ClientBook book = ClientBook.open(third.file())) {
            XSSFSheet sheet = book.poi().getSheet("Work rates");
            assertThat(sheet.createDrawingPatriarch().getCharts()).hasSize(1);
            assertThat(sheet.getCellComments().values())
                    .anyMatch(note -> note.getString().getString().equals("ask the contractor"));
        }
    }

    @Test
    void looksAreNoMarkAndAboutSaysThatTheyGo() throws Exception {
        Path in = folder.resolve("in.xlsx");
        ListsAdded.to(SmallPackage.plain().writeTo(folder.resolve("original.xlsx")), in);
        Path looked = folder.resolve("looked.xlsx");
        Runs.Run first = Runs.run(in, folder.resolve("out.xlsx"));
        try (ClientBook book = ClientBook.open(first.file())) {
            var formats = book.poi().getSheet("Work rates").getSheetConditionalFormatting();
            formats.addConditionalFormatting(
                    new CellRangeAddress[] {CellRangeAddress.valueOf("F10:F12")},
                    formats.createConditionalFormattingRule("F10>3"));
            book.save(looked);
        }
        Runs.Run again = Runs.run(looked, folder.resolve("again.xlsx"));
        assertThat(again.sheets()).contains("Work rates").doesNotContain("Work rates 2");
        try (ClientBook book = ClientBook.open(again.file())) {
            assertThat(book.poi()
                            .getSheet("Work rates")
                            .getSheetConditionalFormatting()
                            .getNumConditionalFormattings())
                    .isZero();
            assertThat(book.poi().getSheet("About"))
                    .anyMatch(row -> row.getCell(1) != null
                            && row.getCell(1)
                                    .toString()
                                    .contains("conditional formats and validation rules that you give them go"));
        }
    }

    @ParameterizedTest
    @CsvSource({"Work rates", "Summary"})
    void aNoteOfOursThatSaysOtherwiseIsTheClientsAndSoIsOneOnARowWhereOursStandElsewhere(String name) throws Exception {
        Path in = folder.resolve("in.xlsx");
        ListsAdded.to(SmallPackage.plain().writeTo(folder.resolve("original.xlsx")), in);
        Path marked = folder.resolve("marked.xlsx");
        try (ClientBook book =
                ClientBook.open(Runs.run(in, folder.resolve("out.xlsx")).file())) {
            XSSFSheet sheet = book.poi().getSheet(name);
            if (sheet.getCellComments().isEmpty()) {
                XSSFDrawing drawing = sheet.createDrawingPatriarch();
                drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 1, SheetPlaces.LABEL_ROW, 3, 9))
                        .setString("ask the contractor");
            } else {
                XSSFComment note = sheet.getCellComments().values().iterator().next();
                note.setString(note.getString().getString() + " Ask the contractor.");
            }
            book.save(marked);
        }
        Runs.Run again = Runs.run(marked, folder.resolve("again.xlsx"));
        assertThat(again.sheets()).contains(name + " 2").doesNotContain(name);
    }
}
