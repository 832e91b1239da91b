package org.rickyard.workbook.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.Parts;
import org.rickyard.workbook.read.TableParts;

class FormulaRefsTest {
    private static final List<String> OURS = List.of("Work rates", "Summary", "O'Brien's clamps");
    private static final List<SheetRef> SHEETS = IntStream.range(0, 5)
            .mapToObj(i -> Parts.sheet(
                    List.of("Fields", "Work rates", "Notes", "Summary", "O'Brien's clamps")
                            .get(i),
                    i + 1))
            .toList();
    private static final BookScope SCOPE = new BookScope(
            SHEETS,
            Map.of(
                    "Rickyard_total", "Summary!$C$3",
                    "MyTotal", "'Work rates'!$K$4*2",
                    "Again", "MyTotal+1",
                    "Circle", "Circle+1",
                    "Notes!Local", "Summary!$A$1",
                    "LeftOfMe", "Fields!A1",
                    "Harmless", "Fields!$A$1"),
            List.of(
                    new TableParts.Table(
                            "Summary", new TableRange("OurTable", 4, 9, 0, 1, 1, 1), List.of("Name", "Output")),
                    new TableParts.Table(
                            "Fields",
                            new TableRange("FieldList", 0, 9, 0, 2, 1, 0),
                            List.of("Field", "Area", "Crop"))));

    private static List<CellArea> areas(FormulaRefs.Mention mention) {
        return SCOPE.areas(mention.formula(), mention.cell());
    }

    private static FormulaRefs read(String... formulas) throws IOException {
        StringBuilder rows = new StringBuilder("<row r=\"1\">");
        for (String formula : formulas) {
            rows.append("<c><f>")
                    .append(formula.replace("&", "&amp;").replace("<", "&lt;"))
                    .append("</f><v>1</v></c>");
        }
        FormulaRefs refs = new FormulaRefs(SCOPE, OURS, Set.of());
        new BookReader(new Parts().withRows(rows + "</row>"), Optional.empty(), Optional.empty(), false)
                .stream(Parts.SHEET, refs.reading("Fields"));
        return refs;
    }

    /** A name of one sheet goes before one of the workbook, and ours are of the workbook. */
    @Test
    void aNameOfOneSheetThatBeginsAsOursDoIsTheClients() throws IOException {
        BookScope scope = new BookScope(
                SHEETS,
                Map.of(
                        "Rickyard_hours", "Summary!$C$3",
                        "Fields!Rickyard_hours", "Fields!$B$2",
                        "Fields!Rickyard_end", "Summary!$A$1"),
                List.of());
        FormulaRefs refs = new FormulaRefs(scope, OURS, Set.of());
        new BookReader(
                        new Parts()
                                .withRows(
                                        "<row r=\"1\"><c><f>rickyard_hours*2</f></c><c><f>Fields!Rickyard_hours</f></c>"
                                                + "<c><f>Notes!Rickyard_hours</f></c><c><f>Rickyard_end</f></c></row>"),
                        Optional.empty(),
                        Optional.empty(),
                        false)
                .stream(Parts.SHEET, refs.reading("Fields"));
        assertThat(refs.mentions())
                .extracting(FormulaRefs.Mention::formula)
                .containsExactly("Notes!Rickyard_hours", "Rickyard_end");
    }

    @Test
    void namesThatLeadToManyNamesAreEachFollowedOnce() throws IOException {
        Map<String, String> names =
                new HashMap<>(Map.of("Circle", "Circle+Circle+Circle+Circle", "Name30", "Summary!$A$1"));
        for (int i = 0; i < 30; i++) {
            names.put("Name" + i, ("+Name" + (i + 1)).repeat(8));
        }
        BookScope scope = new BookScope(SHEETS, names, List.of());
        FormulaRefs refs = new FormulaRefs(scope, OURS, Set.of());
        new BookReader(
                        new Parts().withRows("<row><c><f>Circle</f></c><c><f>Name0*2</f></c></row>"),
                        Optional.empty(),
                        Optional.empty(),
                        false)
                .stream(Parts.SHEET, refs.reading("Fields"));

        assertThat(refs.mentions())
                .extracting(mention -> mention.cell().toString())
                .containsExactly("Fields!B1");
        assertThat(scope.areas("Name0+Circle", new CellAddress("Fields", 0, 0)))
                .containsExactly(new CellArea("Summary", 0, 0, 0, 0));
    }

    /** As LibreOffice 7.4 writes a sheet's name whose vowels are marks: without quotes. */
    @Test
    void aSheetNameWithVowelSignsNeedsNoQuotes() {
        BookScope scope = new BookScope(List.of(Parts.sheet("ข้อมูล", 1)), Map.of(), List.of());

        assertThat(scope.areas("ข้อมูล!C2+0", new CellAddress("ข้อมูล", 0, 0)))
                .containsExactly(new CellArea("ข้อมูล", 1, 2, 1, 2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'Work rates'!K7*2",
                "SUM('work RATES'!K7:K9)",
                "Summary!C5",
                "SUMMARY!$C$5+1",
                "IF(A1>2,Summary!C5,\"\")",
                "'O''Brien''s clamps'!A1",
                "SUM(Fields:Notes!A1)",
                "SUM('Fields:Notes'!A1)",
                "SUM(A1:B2,'Fields:O''Brien''s clamps'!A1)",
                "Fields!A1+SUM(Notes!A1:'Work rates'!A1)",
                "Summary!#REF!",
                "'Work rates'!Anything",
                "Rickyard_total",
                "rickyard_Unknown+1",
                "MyTotal",
                "Again*2",
                "SUM(OurTable[Output])",
                "\"Summary!A1\"&Summary!A1",
                "[0]!Rickyard_total",
                "[0]Summary!A1"
            })
    void aFormulaThatPointsToOurSheetsIsAMention(String formula) throws IOException {
        assertThat(read("A1+1", formula).mentions())
                .containsExactly(new FormulaRefs.Mention(new CellAddress("Fields", 0, 1), formula));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Notes!A1",
                "\"Summary!A1\"",
                "INDIRECT(\"'Work rates'!A1\")",
                "\"a\"\"'Work rates'!A1\"",
                "[1]Summary!A1",
                "'[1]Work rates'!A1",
                "[1]!Rickyard_total",
                "MySummary!A1",
                "Harmless+Circle",
                "Local",
                "NotRickyard_total",
                "SUM(FieldList[Area])",
                "Summary",
                "Rates"
            })
    void otherFormulasAreNotMentions(String formula) throws IOException {
        assertThat(read(formula).mentions()).isEmpty();
    }

    @Test
    void namesOfOneSheetCountOnThatSheetOnly() throws IOException {
        FormulaRefs refs = new FormulaRefs(SCOPE, OURS, Set.of());
        new BookReader(
                        new Parts().withRows("<row><c><f>Local</f></c></row>"),
                        Optional.empty(),
                        Optional.empty(),
                        false)
                .stream(Parts.SHEET, refs.reading("Notes"));
        assertThat(refs.mentions()).hasSize(1);
        assertThat(areas(refs.mentions().get(0))).containsExactly(new CellArea("Summary", 0, 0, 0, 0));
    }

    @Test
    void whatAMentionRefersToIsFollowedThroughNamesAndTables() throws IOException {
        FormulaRefs refs = read(
                "'Work rates'!K7+Fields!A1+SUM(Summary!$B$9:C3)",
                "Again+Rickyard_total",
                "SUM(Summary!B:C)+Summary!#REF!",
                "SUM(OurTable[Output])+SUM(OurTable)",
                "SUM(OurTable[[#All],[Name]:[Output]])+OurTable[[#Totals],[Output]]");
        assertThat(refs.mentions().stream().map(FormulaRefsTest::areas).map(Object::toString))
                .containsExactly(
                        "['Work rates'!K7, Fields!A1, Summary!B3:C9]",
                        "['Work rates'!K4, Summary!C3]",
                        "[Summary!B1:C1048576]",
                        "[Summary!B6:B9, Summary!A6:B9]",
                        "[Summary!A5:B10, Summary!B10]");
    }

    @Test
    void sharedFormulasAreFollowedCellByCell() throws IOException {
        FormulaRefs refs = new FormulaRefs(SCOPE, OURS, Set.of());
        new BookReader(
                        new Parts()
                                .withRows("<row r=\"1\"><c r=\"A1\"><f t=\"shared\" si=\"0\""
                                        + " ref=\"A1:A2\">Summary!C5</f></c></row><row r=\"2\"><c r=\"A2\"><f"
                                        + " t=\"shared\" si=\"0\"/></c></row>"),
                        Optional.empty(),
                        Optional.empty(),
                        false)
                .stream(Parts.SHEET, refs.reading("Fields"));
        assertThat(refs.mentions()).hasSize(2);
        assertThat(areas(refs.mentions().get(1)).toString()).isEqualTo("[Summary!C6]");
    }

    @Test
    void relativeNamesAreSeenFromTheirCell() {
        assertThat(SCOPE.areas("LeftOfMe", new CellAddress("Notes", 4, 2)).toString())
                .isEqualTo("[Fields!C5]");
    }

    @Test
    void thisRowOfATableIsOneRow() {
        CellAddress inside = new CellAddress("Fields", 4, 2);
        assertThat(SCOPE.areas("FieldList[[#This Row],[Area]]", inside).toString())
                .isEqualTo("[Fields!B5]");
        assertThat(SCOPE.areas("[@Area]*2", inside).toString()).isEqualTo("[Fields!B5]");
        assertThat(SCOPE.areas("FieldList[@[Area]:[Crop]]", inside).toString()).isEqualTo("[Fields!B5:C5]");
        assertThat(SCOPE.areas("FieldList[#Totals]", inside)).isEmpty();
    }

    @Test
    void totalsOfOursAreKnownBeforeThereIsASheetOfOurs() {
        FormulaRefs refs = new FormulaRefs(SCOPE, List.of(), Set.of());
        refs.reading("Fields").cell(3, 1, Kind.ERROR, 0, "#NAME?", Format.GENERAL, "2*Rickyard_hours");
        refs.reading("Fields").cell(4, 1, Kind.NUMBER, 4, "", Format.GENERAL, "2*A5");
        assertThat(refs.mentions())
                .extracting(FormulaRefs.Mention::cell)
                .containsExactly(new CellAddress("Fields", 3, 1));
    }
}
