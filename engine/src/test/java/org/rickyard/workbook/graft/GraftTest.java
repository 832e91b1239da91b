package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TimeZone;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.open.SmallPackage;

public class GraftTest {
    private static final String WORKBOOK = "xl/workbook.xml";
    private static final String LINKS = "xl/_rels/workbook.xml.rels";
    private static final String TYPES = "[Content_Types].xml";

    @TempDir
    Path folder;

    /** Packages as real programs and hands write them. */
    public static Stream<Arguments> oddPackages() {
        return Stream.of(
                Arguments.of("plain", SmallPackage.plain()),
                Arguments.of("prefixed workbook", prefixed(WORKBOOK)),
                Arguments.of("prefixed styles", prefixed("xl/styles.xml")),
                Arguments.of("prefixed links", prefixed(LINKS)),
                Arguments.of("prefixed content types", prefixed(TYPES)),
                Arguments.of(
                        "self-closing lists",
                        SmallPackage.plain()
                                .edit(WORKBOOK, "</sheets>", "</sheets><definedNames/><calcPr/>")
                                .edit("xl/styles.xml", "<fonts count", "<numFmts count=\"0\"/><fonts count")),
                Arguments.of(
                        "full calculation refused before",
                        SmallPackage.plain().edit(WORKBOOK, "</sheets>", "</sheets><calcPr fullCalcOnLoad=\"0\"/>")),
                Arguments.of(
                        "later elements",
                        SmallPackage.plain().edit(WORKBOOK, "</sheets>", "</sheets><oleSize ref=\"A1\"/><extLst/>")),
                Arguments.of(
                        "UTF-16 little endian",
                        SmallPackage.plain()
                                .edit(WORKBOOK, "<?xml", "\uFEFF<?xml")
                                .encode(WORKBOOK, StandardCharsets.UTF_16LE, "UTF-16")),
                Arguments.of(
                        "UTF-16 big endian styles",
                        SmallPackage.plain()
                                .edit("xl/styles.xml", "<?xml", "\uFEFF<?xml")
                                .encode("xl/styles.xml", StandardCharsets.UTF_16BE, "UTF-16")),
                Arguments.of("byte order mark", SmallPackage.plain().edit(WORKBOOK, "<?xml", "\uFEFF<?xml")),
                Arguments.of(
                        "Latin-1",
                        SmallPackage.plain()
                                .edit(WORKBOOK, "Fields", "Fl\u00e4chen")
                                .encode(WORKBOOK, StandardCharsets.ISO_8859_1, "ISO-8859-1")),
                Arguments.of("no styles", withoutStyles()),
                Arguments.of(
                        "empty styles",
                        SmallPackage.plain().part("xl/styles.xml", "<styleSheet xmlns='" + SmallPackage.MAIN + "'/>")),
                Arguments.of(
                        "emptied style lists",
                        SmallPackage.plain()
                                .part(
                                        "xl/styles.xml",
                                        "<styleSheet xmlns='" + SmallPackage.MAIN
                                                + "'><fonts count='0'/><fills/><borders/>"
                                                + "<cellXfs/></styleSheet>")),
                Arguments.of(
                        "absolute targets",
                        SmallPackage.plain()
                                .edit(LINKS, "\"worksheets/", "\"/xl/worksheets/")
                                .edit(LINKS, "\"styles.xml", "\"/xl/styles.xml")),
                Arguments.of(
                        "targets in another case",
                        SmallPackage.plain().edit(LINKS, "worksheets/sheet1.xml", "Worksheets/Sheet1.XML")),
                Arguments.of("workbook elsewhere", workbookElsewhere()),
                Arguments.of(
                        "no relationship prefix on the root",
                        SmallPackage.plain()
                                .edit(WORKBOOK, " xmlns:r=\"" + SmallPackage.REL + "\"", "")
                                .edit(WORKBOOK, "r:id=", "xmlns:q=\"" + SmallPackage.REL + "\" q:id=")),
                Arguments.of(
                        "relationship prefix that means something else",
                        SmallPackage.plain()
                                .edit(WORKBOOK, " xmlns:r=\"" + SmallPackage.REL + "\"", " xmlns:r=\"urn:other\"")
                                .edit(WORKBOOK, "r:id=", "xmlns:q=\"" + SmallPackage.REL + "\" q:id=")),
                Arguments.of("chart sheet and hidden sheet", chartAndHidden()),
                Arguments.of("foreign notes", foreignNotes()),
                Arguments.of(
                        "no line breaks, single quotes",
                        SmallPackage.plain()
                                .part(
                                        LINKS,
                                        SmallPackage.relationships(
                                                        SmallPackage.link("R1", "worksheet", "worksheets/sheet1.xml"),
                                                        SmallPackage.link("rid7", "styles", "styles.xml"))
                                                .replace('"', '\''))
                                .edit(WORKBOOK, "rId1", "R1")),
                Arguments.of(
                        "default type for xml is the workbook",
                        SmallPackage.plain()
                                .edit(
                                        TYPES,
                                        "Extension=\"xml\" ContentType=\"application/xml\"",
                                        "Extension=\"xml\" ContentType=\"application/vnd.openxmlformats-officedocument."
                                                + "spreadsheetml.sheet.main+xml\"")));
    }

    private static SmallPackage prefixed(String part) {
        SmallPackage small = SmallPackage.plain();
        String text = small.text(part).replaceAll("<(/?)([A-Za-z])", "<$1x:$2").replace("xmlns=", "xmlns:x=");
        return small.part(part, text);
    }

    private static SmallPackage withoutStyles() {
        return SmallPackage.plain()
                .without("xl/styles.xml")
                .edit(LINKS, SmallPackage.link("rId2", "styles", "styles.xml"), "")
                .edit(
                        TYPES,
                        "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-"
                                + "officedocument.spreadsheetml.styles+xml\"/>",
                        "");
    }

    private static SmallPackage workbookElsewhere() {
        SmallPackage small = SmallPackage.plain();
        small.part("book/main.xml", small.text(WORKBOOK)).without(WORKBOOK);
        small.part("book/_rels/main.xml.rels", small.text(LINKS)).without(LINKS);
        small.edit("book/_rels/main.xml.rels", "worksheets/sheet1.xml", "../data/fields.xml");
        small.edit("book/_rels/main.xml.rels", "styles.xml", "../xl/styles.xml");
        small.part("data/fields.xml", small.text("xl/worksheets/sheet1.xml"));
        small.without("xl/worksheets/sheet1.xml");
        return small.edit(TYPES, "/xl/worksheets/sheet1.xml", "/data/fields.xml")
                .edit(TYPES, "/xl/workbook.xml", "/book/main.xml")
                .edit("_rels/.rels", "xl/workbook.xml", "/book/main.xml");
    }

    private static SmallPackage chartAndHidden() {
        return SmallPackage.plain()
                .linked(
                        "xl/chartsheets/sheet1.xml",
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.chartsheet+xml",
                        "rId3",
                        "chartsheet",
                        "chartsheets/sheet1.xml",
                        "<chartsheet xmlns=\"" + SmallPackage.MAIN
                                + "\"><sheetViews><sheetView workbookViewId=\"0\"/></sheetViews></chartsheet>")
                .linked(
                        "xl/worksheets/sheet2.xml",
                        SmallPackage.SHEET,
                        "rId4",
                        "worksheet",
                        "worksheets/sheet2.xml",
                        SmallPackage.sheet(""))
                .edit(
                        WORKBOOK,
                        "</sheets>",
                        "<sheet name=\"Chart\" sheetId=\"9\" r:id=\"rId3\"/>"
                                + "<sheet name=\"Old\" sheetId=\"4\" state=\"veryHidden\" r:id=\"rId4\"/></sheets>"
                                + "<definedNames><definedName name=\"Local\" localSheetId=\"2\">Old!$A$1</definedName>"
                                + "<definedName name=\"Area\">Fields!$B$1</definedName></definedNames>");
    }

    private static SmallPackage foreignNotes() {
        return SmallPackage.plain()
                .edit(
                        TYPES,
                        "<Default Extension=\"xml\"",
                        "<Default Extension=\"vml\" ContentType=\"application/"
                                + "vnd.openxmlformats-officedocument.vmlDrawing\"/><Default Extension=\"xml\"")
                .edit(
                        TYPES,
                        "</Types>",
                        "<Override PartName=\"/xl/comments1.xml\" ContentType=\"application/"
                                + "vnd.openxmlformats-officedocument.spreadsheetml.comments+xml\"/></Types>")
                .part(
                        "xl/worksheets/_rels/sheet1.xml.rels",
                        SmallPackage.relationships(
                                SmallPackage.link("rId1", "vmlDrawing", "../drawings/vmlDrawing1.vml"),
                                SmallPackage.link("rId2", "comments", "../comments1.xml")))
                .part(
                        "xl/comments1.xml",
                        "<comments xmlns=\"" + SmallPackage.MAIN + "\"><authors><author>A</author>"
                                + "</authors><commentList><comment ref=\"A1\" authorId=\"0\"><text><t>n</t></text></comment>"
                                + "</commentList></comments>")
                .part(
                        "xl/drawings/vmlDrawing1.vml",
                        "<xml xmlns:v=\"urn:schemas-microsoft-com:vml\""
                                + " xmlns:o=\"urn:schemas-microsoft-com:office:office\""
                                + " xmlns:x=\"urn:schemas-microsoft-com:office:excel\"><o:shapelayout v:ext=\"edit\">"
                                + "<o:idmap v:ext=\"edit\" data=\"1\"/></o:shapelayout><v:shape id=\"_x0000_s1025\""
                                + " type=\"#_x0000_t202\"><x:ClientData ObjectType=\"Note\"><x:Row>0</x:Row>"
                                + "<x:Column>0</x:Column></x:ClientData></v:shape></xml>")
                .edit(
                        "xl/worksheets/sheet1.xml",
                        "</worksheet>",
                        "<legacyDrawing xmlns:r=\"" + SmallPackage.REL + "\" r:id=\"rId1\"/></worksheet>");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("oddPackages")
    void sheetsAreAddedAndNothingElseChanges(String what, SmallPackage small) throws Exception {
        Path in = small.writeTo(folder.resolve("client.xlsx"));
        assertThat(PackageLinter.lint(in)).isEmpty();
        int before = sheetNames(in).size();

        Path out = folder.resolve("out.xlsx");
        GraftReport report = Grafting.of("Work rates", "Basis").run(in, out);

        assertThat(PackageLinter.lint(out)).isEmpty();
        assertThat(sheetNames(out)).hasSize(before + 2).endsWith("Work rates", "Basis");
        assertThat(report.removed()).isEmpty();
        try (XSSFWorkbook book = new XSSFWorkbook(out.toFile())) {
            var cell = book.getSheet("Work rates").getRow(2).getCell(0);
            assertThat(cell.getNumericCellValue()).isEqualTo(4.25);
            assertThat(cell.getCellStyle().getDataFormatString()).isEqualTo("#,##0.00\" ha\"");
            assertThat(cell.getCellStyle().getFillForegroundColorColor().getARGBHex())
                    .isEqualTo("FFFFF2CC");
            assertThat(cell.getCellComment().getString().getString()).isEqualTo("Work rate\nspeed \u00d7 width");
            assertThat(book.getForceFormulaRecalculation()).isTrue();
            assertThat(book.getName("Rickyard_rate").getRefersToFormula()).isEqualTo("'Work rates'!$A$3");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("oddPackages")
    void aSecondRunGivesTheSameFile(String what, SmallPackage small) throws Exception {
        Path in = small.writeTo(folder.resolve("client.xlsx"));
        Path once = folder.resolve("once.xlsx");
        Path twice = folder.resolve("twice.xlsx");
        Grafting.of("Work rates", "Basis").run(in, once);
        GraftReport second = Grafting.of("Work rates", "Basis").run(once, twice);
        assertThat(Files.mismatch(once, twice)).isEqualTo(-1);
        assertThat(second.edited()).isEmpty();
        assertThat(second.removed()).isEmpty();
    }

    private List<String> sheetNames(Path file) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            return book.sheets().stream().map(SheetRef::name).toList();
        }
    }

    private String part(Path file, String part) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            return new String(book.bytes(part), StandardCharsets.UTF_8);
        }
    }

    @Test
    void everyByteOfAnEditedPartStaysAndOnlyInsertionsAreMade() throws Exception {
        SmallPackage small = chartAndHidden();
        Path in = small.writeTo(folder.resolve("client.xlsx"));
        Path out = folder.resolve("out.xlsx");
        Grafting.of("Work rates").run(in, out);
        for (String part : List.of(WORKBOOK, LINKS, TYPES)) {
            assertThat(isSubsequence(small.text(part), part(out, part)))
                    .as(part)
                    .isTrue();
        }
        String styles = small.text("xl/styles.xml").replaceAll("count=\"\\d+\"", "count=\"\"");
        assertThat(isSubsequence(styles, part(out, "xl/styles.xml"))).isTrue();
    }

    private static boolean isSubsequence(String before, String after) {
        int at = 0;
        for (int index = 0; index < after.length() && at < before.length(); index++) {
            at += before.charAt(at) == after.charAt(index) ? 1 : 0;
        }
        return at == before.length();
    }

    @Test
    void replacedSheetsKeepSlotNameNumberAndPartAndOthersComeAfter() throws Exception {
        Path in = chartAndHidden().writeTo(folder.resolve("client.xlsx"));
        Path once = folder.resolve("once.xlsx");
        Path twice = folder.resolve("twice.xlsx");
        GraftReport first = Grafting.of("Work rates").run(in, once);
        GraftReport second = Grafting.of("Work rates", "Basis").value(7.5).run(once, twice);
        assertThat(second.sheets().get(0)).isEqualTo(first.sheets().get(0));
        assertThat(first.sheets().get(0).sheetId()).isEqualTo(10);
        assertThat(first.sheets().get(0).position()).isEqualTo(3);
        assertThat(first.sheets().get(0).part()).isEqualTo("xl/worksheets/sheet3.xml");
        assertThat(sheetNames(twice)).containsExactly("Fields", "Chart", "Old", "Work rates", "Basis");
        assertThat(part(twice, "xl/worksheets/sheet3.xml")).contains("<v>7.5</v>");
        assertThat(PackageLinter.lint(twice)).isEmpty();
        try (BookPackage book = BookPackage.open(twice)) {
            assertThat(book.definedNames())
                    .contains(new DefinedName("Local", 2, "Old!$A$1", false))
                    .contains(new DefinedName("_xlnm.Print_Titles", 3, "'Work rates'!$1:$1", false))
                    .contains(new DefinedName("_xlnm.Print_Titles", 4, "'Basis'!$1:$1", false))
                    .filteredOn(name -> name.name().equals("Rickyard_rate"))
                    .hasSize(1);
        }
    }

    @Test
    void notesThatAreNoLongerNeededGoWithTheirPartsAndTypes() throws Exception {
        Path in = foreignNotes().writeTo(folder.resolve("client.xlsx"));
        Path once = folder.resolve("once.xlsx");
        Path twice = folder.resolve("twice.xlsx");
        Grafting.of("Work rates").run(in, once);
        GraftReport report = Grafting.of("Work rates").withoutNotes().run(once, twice);
        assertThat(report.removed())
                .containsExactlyInAnyOrder(
                        "xl/worksheets/_rels/sheet2.xml.rels", "xl/comments2.xml", "xl/drawings/vmlDrawing2.vml");
        assertThat(PackageLinter.lint(twice)).isEmpty();
        assertThat(part(twice, TYPES)).contains("/xl/comments1.xml").doesNotContain("/xl/comments2.xml");
    }

    @Test
    void notesTakeShapeNumbersThatNoOtherDrawingHas() throws Exception {
        Path in = foreignNotes().writeTo(folder.resolve("client.xlsx"));
        Path out = folder.resolve("out.xlsx");
        Grafting.of("Work rates").run(in, out);
        assertThat(part(out, "xl/drawings/vmlDrawing2.vml"))
                .contains("data=\"2\"")
                .contains("_x0000_s2049");
    }

    @Test
    void aChainOfCalculationStaysUnlessItNamesOurCells() throws Exception {
        String type = "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml";
        SmallPackage small = SmallPackage.plain()
                .edit("xl/worksheets/sheet1.xml", "<v>4.25</v>", "<f>1+1</f><v>2</v>")
                .linked(
                        "xl/calcChain.xml",
                        type,
                        "rId3",
                        "calcChain",
                        "calcChain.xml",
                        "<calcChain xmlns=\"" + SmallPackage.MAIN + "\"><c r=\"B1\" i=\"1\"/></calcChain>");
        Path in = small.writeTo(folder.resolve("client.xlsx"));
        Path once = folder.resolve("once.xlsx");
        Path twice = folder.resolve("twice.xlsx");
        assertThat(Grafting.of("Work rates").run(in, once).removed()).isEmpty();
        assertThat(Grafting.of("Work rates").run(once, twice).removed()).isEmpty();

        SmallPackage recalculated = small.part(
                "xl/calcChain.xml",
                "<calcChain xmlns=\"" + SmallPackage.MAIN
                        + "\"><c r=\"B1\" i=\"1\"/><c r=\"A3\" i=\"2\"/></calcChain>");
        Path naming = Repacked.with(once, "xl/calcChain.xml", recalculated.text("xl/calcChain.xml"), folder);
        assertThat(PackageLinter.lint(naming)).isEmpty();
        assertThat(Grafting.of("Work rates").run(naming, twice).removed()).containsExactly("xl/calcChain.xml");
        assertThat(PackageLinter.lint(twice)).isEmpty();
    }

    @Test
    void theBytesDependNeitherOnThreadsNorOnTheTimeZone() throws Exception {
        Path in = foreignNotes().writeTo(folder.resolve("client.xlsx"));
        Path reference = folder.resolve("one.xlsx");
        Grafting.of("Work rates").run(in, reference, 6, 1);
        TimeZone home = TimeZone.getDefault();
        try {
            for (String zone : List.of("UTC", "America/St_Johns", "Pacific/Kiritimati", "Europe/Berlin")) {
                TimeZone.setDefault(TimeZone.getTimeZone(zone));
                Path other = folder.resolve("other.xlsx");
                Grafting.of("Work rates").run(in, other, 6, 3);
                assertThat(Files.mismatch(reference, other)).as(zone).isEqualTo(-1);
            }
        } finally {
            TimeZone.setDefault(home);
        }
    }

    @Test
    void aNameOfOursThatTheClientUsesIsRefusedWithASentence() throws Exception {
        Path in = SmallPackage.plain()
                .edit(
                        WORKBOOK,
                        "</sheets>",
                        "</sheets><definedNames><definedName name=\"RATES\">Fields!$A$1</definedName></definedNames>")
                .writeTo(folder.resolve("client.xlsx"));
        try (BookPackage book = BookPackage.open(in)) {
            GraftPlan plan = new GraftPlan().globalName("Rates", "Fields!$B$1");
            assertThatThrownBy(() -> Graft.write(book, plan, folder.resolve("out.xlsx"), 6, 1))
                    .isInstanceOf(RefusedException.class)
                    .hasMessageContaining("client.xlsx")
                    .hasMessageContaining("Rates")
                    .hasMessageContaining("Rename it");
        }
        assertThat(folder.resolve("out.xlsx")).doesNotExist();
    }

    @Test
    void twoSheetsOfOneNameAreAProgrammersMistake() throws Exception {
        Path in = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        try (BookPackage book = BookPackage.open(in)) {
            StyleGraft styles = StyleGraft.of(book, TestSheets.LOOKS);
            GraftPlan plan = new GraftPlan().addSheet(TestSheets.sheet("fields", styles, List.of()));
            assertThatThrownBy(() -> Graft.write(book, plan, folder.resolve("out.xlsx"), 6, 1))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("fields");
        }
    }

    @Test
    void aFullSheetNameIsCutToMakeRoomForItsNumber() {
        String longest = "A sheet name of thirty-one signs";
        assertThat(Graft.freeName(Set.of(), longest)).isEqualTo("A sheet name of thirty-one sign");
        assertThat(Graft.freeName(Set.of("a SHEET name of thirty-one sign"), longest))
                .isEqualTo("A sheet name of thirty-one si 2");
        assertThat(Graft.freeName(Set.of("Basis", "BASIS 2"), "Basis")).isEqualTo("Basis 3");
        assertThat(Graft.freeName(Set.of(), "Clamp 1/2: 'north'")).isEqualTo("Clamp 1-2- 'north");
        assertThat(Graft.freeName(Set.of(), "History")).isEqualTo("History 2");
    }

    @Test
    void stateComesBackByItsNamespace() throws Exception {
        Path in = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        Path out = folder.resolve("out.xlsx");
        Grafting.of("Work rates").run(in, out);
        try (BookPackage book = BookPackage.open(out)) {
            assertThat(book.customXml(Grafting.NAMESPACE))
                    .hasValueSatisfying(state -> assertThat(new String(state, StandardCharsets.UTF_8))
                            .startsWith("<state "));
            assertThat(book.customXml("urn:other")).isEmpty();
        }
    }

    @Test
    void stateThatLibreOfficeHasHungOnThePackageIsFoundAndReplacedInPlace() throws Exception {
        SmallPackage saved = SmallPackage.plain()
                .edit(
                        "_rels/.rels",
                        "</Relationships>",
                        SmallPackage.link("rId4", "customXml", "../customXml/item1.xml") + "</Relationships>")
                .part("customXml/item1.xml", "<state xmlns=\"" + Grafting.NAMESPACE + "\">former</state>");
        Path out = folder.resolve("out.xlsx");
        GraftReport report = Grafting.of("Work rates").run(saved.writeTo(folder.resolve("client.xlsx")), out);
        assertThat(report.written()).contains("customXml/item1.xml").doesNotContain("customXml/item2.xml");
        assertThat(part(out, "customXml/item1.xml")).doesNotContain("former");
        assertThat(part(out, LINKS)).contains("\"../customXml/item1.xml\"");
        Path twice = folder.resolve("twice.xlsx");
        Grafting.of("Work rates").run(out, twice);
        assertThat(Files.mismatch(out, twice)).isEqualTo(-1);
    }

    @Test
    void foreignEntriesKeepTheirPlaceTimeAndPackedBytes() throws IOException, RefusedException {
        Path in = SmallPackage.plain().writeTo(folder.resolve("client.xlsx"));
        Path out = folder.resolve("out.xlsx");
        GraftReport report = Grafting.of("Work rates").run(in, out);
        assertThat(report.bytes()).isEqualTo(Files.size(out));
        try (BookPackage before = BookPackage.open(in);
                BookPackage after = BookPackage.open(out)) {
            var old = before.entries();
            for (int index = 0; index < old.size(); index++) {
                assertThat(after.entries().get(index).getName())
                        .isEqualTo(old.get(index).getName());
            }
            var sheet = old.get(4);
            assertThat(sheet.getName()).isEqualTo("xl/worksheets/sheet1.xml");
            assertThat(after.dosTime(after.entries().get(4))).isEqualTo(before.dosTime(sheet));
        }
    }

    /** Some programs write entries with backslashes or a leading slash. */
    @Test
    void entriesWithOtherSlashesAreExtendedOnceAndForAll() throws Exception {
        List<UnaryOperator<String>> spellings = List.of(
                part -> part.startsWith("xl/") ? part.replace('/', '\\') : part,
                part -> part.startsWith("xl/") ? "/" + part : part);
        for (int i = 0; i < spellings.size(); i++) {
            Path in = SmallPackage.plain().renamed(spellings.get(i)).writeTo(folder.resolve("client" + i + ".xlsx"));
            Path once = folder.resolve("once" + i + ".xlsx");
            Path twice = folder.resolve("twice" + i + ".xlsx");
            Grafting.of("Work rates").filledIn().run(in, once);
            Grafting.of("Work rates").filledIn().run(once, twice);
            assertThat(Files.mismatch(once, twice)).isEqualTo(-1);
        }
    }
}
