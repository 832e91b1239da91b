package org.rickyard.workbook.open;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Builds small workbooks part by part, as odd as a test needs them. */
public final class SmallPackage {
    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n";
    public static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    public static final String REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    public static final String SHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

    /** The same for every file, so that two differ in nothing but what a test makes differ. */
    private static final LocalDateTime WRITTEN = LocalDateTime.of(2024, 5, 6, 7, 8, 10);

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    /** One sheet "Fields" with a name and a size, styles, no shared strings. */
    public static SmallPackage plain() {
        SmallPackage small = new SmallPackage();
        small.part(
                "[Content_Types].xml",
                DECLARATION
                        + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                        + "<Default Extension=\"rels\""
                        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"" + WORKBOOK + "\"/>"
                        + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"" + SHEET + "\"/>"
                        + "<Override PartName=\"/xl/styles.xml\" ContentType=\""
                        + "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/></Types>");
        small.part("_rels/.rels", relationships(link("rId1", "officeDocument", "xl/workbook.xml")));
        small.part(
                "xl/workbook.xml",
                DECLARATION + "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + REL + "\">"
                        + "<bookViews><workbookView/></bookViews>"
                        + "<sheets><sheet name=\"Fields\" sheetId=\"1\" r:id=\"rId1\"/></sheets></workbook>");
        small.part(
                "xl/_rels/workbook.xml.rels",
                relationships(
                        link("rId1", "worksheet", "worksheets/sheet1.xml"), link("rId2", "styles", "styles.xml")));
        small.part(
                "xl/worksheets/sheet1.xml",
                sheet("<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is>"
                        + "<t>Long Acre</t></is>"
                        + "</c><c r=\"B1\"><v>4.25</v></c></row>"));
        small.part(
                "xl/styles.xml",
                DECLARATION + "<styleSheet xmlns=\"" + MAIN + "\">"
                        + "<fonts count=\"1\"><font><sz val=\"10\"/><name val=\"Arial\"/><family val=\"2\"/></font></fonts>"
                        + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill>"
                        + "<fill><patternFill patternType=\"gray125\"/></fill></fills>"
                        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
                        + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/>"
                        + "</cellStyleXfs>"
                        + "<cellXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
                        + "</cellXfs>"
                        + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles>"
                        + "</styleSheet>");
        return small;
    }

    public static String sheet(String rows) {
        return DECLARATION + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>";
    }

    public static String link(String id, String kind, String target) {
        return "<Relationship Id=\"" + id + "\" Type=\"" + REL + "/" + kind + "\" Target=\"" + target + "\"/>";
    }

    public static String relationships(String... links) {
        return DECLARATION + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + String.join("", links) + "</Relationships>";
    }

    public SmallPackage part(String name, String text) {
        return part(name, text.getBytes(StandardCharsets.UTF_8));
    }

    public SmallPackage part(String name, byte[] bytes) {
        parts.put(name, bytes);
        return this;
    }

    public SmallPackage without(String name) {
        parts.remove(name);
        return this;
    }

    /** Has parts under other names, in their places. */
    public SmallPackage renamed(UnaryOperator<String> name) {
        Map<String, byte[]> before = new LinkedHashMap<>(parts);
        parts.clear();
        before.forEach((part, bytes) -> parts.put(name.apply(part), bytes));
        return this;
    }

    public String text(String name) {
        return new String(parts.get(name), StandardCharsets.UTF_8);
    }

    /** Changes the text of a part; the piece to be replaced must be there. */
    public SmallPackage edit(String name, String piece, String other) {
        String text = text(name);
        if (!text.contains(piece)) {
            throw new IllegalArgumentException(name + " does not hold " + piece);
        }
        return part(name, text.replace(piece, other));
    }

    /** Writes a part in another encoding, with its byte order mark for UTF-16. */
    public SmallPackage encode(String name, Charset charset, String declared) {
        return part(name, text(name).replace("UTF-8", declared).getBytes(charset));
    }

    /** Adds a part with its type and a link from the workbook. */
    public SmallPackage linked(String name, String type, String id, String kind, String target, String content) {
        edit(
                "[Content_Types].xml",
                "</Types>",
                "<Override PartName=\"/" + name + "\" ContentType=\"" + type + "\"/></Types>");
        edit("xl/_rels/workbook.xml.rels", "</Relationships>", link(id, kind, target) + "</Relationships>");
        return part(name, content);
    }

    public Path writeTo(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                ZipEntry entry = new ZipEntry(part.getKey());
                entry.setTimeLocal(WRITTEN);
                zip.putNextEntry(entry);
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return file;
    }
}
