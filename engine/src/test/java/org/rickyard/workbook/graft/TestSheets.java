package org.rickyard.workbook.graft;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Small sheets of ours for tests. */
final class TestSheets {
    static final CellLook TITLE = CellLook.of("Rickyard title").withBold().withSize(14);
    static final CellLook INPUT = CellLook.of("Rickyard input")
            .withFill("FFF2CC")
            .withBorder(CellLook.Border.THIN)
            .withNumberFormat("#,##0.00\" ha\"");
    static final List<CellLook> LOOKS = List.of(TITLE, INPUT);
    static final String MARKER = "_Rickyard_sheet";

    private TestSheets() {}

    static String xml(StyleGraft styles, boolean notes, double value) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
                + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
                + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheetData>"
                + "<row r=\"1\"><c r=\"A1\" s=\"" + styles.index(TITLE) + "\" t=\"inlineStr\"><is>"
                + "<t xml:space=\"preserve\">Work rates</t></is></c></row>"
                + "<row r=\"3\"><c r=\"A3\" s=\"" + styles.index(INPUT) + "\"><f>ROUND(" + value + ",2)</f><v>"
                + value + "</v></c></row></sheetData>"
                + (notes ? "<legacyDrawing r:id=\"" + NewSheet.NOTES_RELATIONSHIP + "\"/>" : "") + "</worksheet>";
    }

    static NewSheet sheet(String name, StyleGraft styles, List<Note> notes) {
        return sheet(name, styles, notes, 4.25);
    }

    static NewSheet sheet(String name, StyleGraft styles, List<Note> notes, double value) {
        byte[] bytes = xml(styles, !notes.isEmpty(), value).getBytes(StandardCharsets.UTF_8);
        String quoted = "'" + name.replace("'", "''") + "'";
        return new NewSheet(name, out -> out.write(bytes), notes, List.of(
                new LocalName(MARKER, quoted + "!$A$1", true),
                new LocalName("_xlnm.Print_Titles", quoted + "!$1:$1")));
    }
}
