package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.GraftTest;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.open.SmallPackage;

/** Workbooks as other programs and hands write them, each through a whole run and a second one over its result. */
class OddWorkbooksTest {
    private static final String WORKBOOK = "xl/workbook.xml";
    private static final String TYPES = "[Content_Types].xml";

    @TempDir
    Path folder;

    static Stream<Arguments> books() {
        return Stream.concat(
                GraftTest.oddPackages(),
                Stream.of(
                        Arguments.of("macros", macros()),
                        Arguments.of("hidden sheet", SmallPackage.plain().edit(WORKBOOK, "sheetId=\"1\"", HIDDEN)),
                        Arguments.of(
                                "days from 1904",
                                SmallPackage.plain()
                                        .edit(WORKBOOK, "<bookViews>", "<workbookPr date1904=\"1\"/><bookViews>")),
                        Arguments.of(
                                "the highest number of a sheet",
                                SmallPackage.plain().edit(WORKBOOK, "sheetId=\"1\"", "sheetId=\"65534\"")),
                        Arguments.of("calculation by hand", manual()),
                        Arguments.of("a sheet called Summary", called("Summary")),
                        Arguments.of("a sheet called work RATES", called("work RATES")),
                        Arguments.of("many cell formats", formats(40_000))));
    }

    /** A hidden sheet beside one that is seen: a workbook must show one. */
    private static final String HIDDEN = "sheetId=\"7\" state=\"hidden\"";

    private static SmallPackage macros() {
        return SmallPackage.plain()
                .edit(
                        TYPES,
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.macroEnabled.main+xml")
                .edit(
                        "xl/_rels/workbook.xml.rels",
                        "</Relationships>",
                        "<Relationship Id=\"rId9\" Type=\"http://schemas.microsoft.com/office/2006/relationships/"
                                + "vbaProject\" Target=\"vbaProject.bin\"/></Relationships>")
                .edit(
                        TYPES,
                        "</Types>",
                        "<Override PartName=\"/xl/vbaProject.bin\""
                                + " ContentType=\"application/vnd.ms-office.vbaProject\"/></Types>")
                .part("xl/vbaProject.bin", new byte[] {1, 2, 3, 0, 5});
    }

    private static SmallPackage manual() {
        return SmallPackage.plain().edit(WORKBOOK, "</sheets>", "</sheets><calcPr calcMode=\"manual\"/>");
    }

    private static SmallPackage called(String name) {
        return SmallPackage.plain().edit(WORKBOOK, "name=\"Fields\"", "name=\"" + name + "\"");
    }

    private static SmallPackage formats(int count) {
        String one = "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>";
        return SmallPackage.plain()
                .edit(
                        "xl/styles.xml",
                        "<cellXfs count=\"1\">",
                        "<cellXfs count=\"" + (count + 1) + "\">" + one.repeat(count));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void comesThroughWithEveryPartOfItsOwn(String what, SmallPackage small) throws Exception {
        Path original = small.writeTo(folder.resolve("original.xlsx"));
        Path in = folder.resolve("in.xlsx");
        Path out = folder.resolve("out.xlsx");
        ListsAdded.to(original, in);
        Runs.Run run = Runs.tried(in, out, RunOptions.usual());
        assertThat(run.result("work-rate", ListsAdded.FIELD).number()).contains(ListsAdded.WORK_RATE);
        assertThat(ForeignParts.identical(original, out, report(in))).isPositive();
        Runs.Run again = Runs.tried(out, folder.resolve("again.xlsx"), RunOptions.usual());
        assertThat(Files.mismatch(out, again.file())).isEqualTo(-1);
        sheetsStandAsTheyDid(original, out);
    }

    private GraftReport report(Path in) throws IOException, RefusedException {
        try (BookPackage book = BookPackage.open(in)) {
            Path out = folder.resolve("once more.xlsx");
            GraftReport report = Recalculation.of(book, RunOptions.usual()).write(out);
            Linted.after(in, out);
            return report;
        }
    }

    /** Names, order, numbers and hiding of the client's sheets, and their names for cells, are as before. */
    private static void sheetsStandAsTheyDid(Path original, Path out) throws IOException, RefusedException {
        try (BookPackage before = BookPackage.open(original);
                BookPackage after = BookPackage.open(out)) {
            assertThat(after.sheets().subList(0, before.sheets().size())).isEqualTo(before.sheets());
            assertThat(after.definedNames()).containsAll(before.definedNames());
            assertThat(after.date1904()).isEqualTo(before.date1904());
            assertThat(after.manualCalculation()).isEqualTo(before.manualCalculation());
            assertThat(after.contentTypes().of(after.workbookPart()))
                    .isEqualTo(before.contentTypes().of(before.workbookPart()));
        }
    }

    private Runs.Run run(SmallPackage small) throws Exception {
        Path in = folder.resolve("in.xlsx");
        ListsAdded.to(small.writeTo(folder.resolve("original.xlsx")), in);
        return Runs.tried(in, folder.resolve("out.xlsx"), RunOptions.usual());
    }

    @Test
    void calculationByHandIsSaid() throws Exception {
        assertThat(run(manual()).messages())
                .anyMatch(message -> message.startsWith("this workbook is set to calculate by hand only"));
    }

    @Test
    void roundingToWhatIsShownIsSaid() throws Exception {
        assertThat(run(SmallPackage.plain().edit(WORKBOOK, "</sheets>", "</sheets><calcPr fullPrecision=\"0\"/>"))
                        .messages())
                .anyMatch(
                        message -> message.startsWith("this workbook is set to reckon with numbers as they are shown"));
        assertThat(run(SmallPackage.plain().edit(WORKBOOK, "</sheets>", "</sheets><calcPr fullPrecision=\"1\"/>"))
                        .messages())
                .noneMatch(message -> message.contains("as they are shown"));
    }

    @Test
    void aNameThatTheClientHasTakenGetsANumber() throws Exception {
        assertThat(run(called("Summary")).sheets()).contains("Summary 2").doesNotContain("Summary");
        assertThat(run(called("work RATES")).sheets()).contains("Work rates 2").doesNotContain("Work rates");
    }

    @Test
    void ourSheetsAreSeenBesideHiddenOnes() throws Exception {
        Runs.Run run = run(SmallPackage.plain().edit(WORKBOOK, "sheetId=\"1\"", HIDDEN));
        try (BookPackage book = BookPackage.open(run.file())) {
            assertThat(book.sheets().stream().filter(SheetRef::hidden).map(SheetRef::name))
                    .containsExactly("Fields");
        }
    }

    @Test
    void withoutRoomForOurFormatsNothingIsWritten() throws Exception {
        Path in = folder.resolve("in.xlsx");
        Path out = folder.resolve("out.xlsx");
        ListsAdded.to(formats(63_999).writeTo(folder.resolve("original.xlsx")), in);
        assertThatThrownBy(() -> Runs.tried(in, out, RunOptions.usual()))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("64,000 cell formats")
                .hasMessageContaining("Copy the lists");
        assertThat(out).doesNotExist();
    }

    /** Only what a run has brought does it take away. */
    @Test
    void aNameOfTheClientsMayBeginAsOursDo() throws Exception {
        Path in = folder.resolve("in.xlsx");
        SmallPackage small = SmallPackage.plain()
                .edit(
                        WORKBOOK,
                        "</sheets>",
                        "</sheets><definedNames><definedName name=\"Rickyard_price\">Fields!$B$1</definedName>"
                                + "<definedName name=\"Rickyard_gone\">#REF!$P$5</definedName></definedNames>");
        ListsAdded.to(small.writeTo(folder.resolve("original.xlsx")), in);
        Path once = Runs.run(in, folder.resolve("once.xlsx")).file();
        Path twice = Runs.run(once, folder.resolve("twice.xlsx")).file();
        assertThat(Files.mismatch(once, twice)).isEqualTo(-1);
        try (BookPackage book = BookPackage.open(twice)) {
            assertThat(book.definedNames())
                    .extracting(DefinedName::name)
                    .contains("Rickyard_price")
                    .doesNotContain("Rickyard_gone");
        }
    }
}
