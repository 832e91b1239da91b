package org.rickyard.benchmark;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes the benchmark workbook: many fields, fifteen columns each (thirteen where only rates are asked for), with a crop of grass and one spraying job, so that
 * every field is a row in all three families: work rates, spraying, silage. A job covers a block of ten fields, as the
 * list of jobs allows, and its tank mix is reckoned for the block. The data are invented and depend on the row number
 * alone.
 */
final class BenchmarkBook {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String[] SHEETS = {"Fields", "Machines", "Products", "Jobs", "Clamps"};

    private static final int FIELDS_OF_BLOCK = 10;
    private static final String[] SOILS = {"clay", "loam", "sand", "peat"};

    private BenchmarkBook() {}

    /** Which families the book feeds. */
    enum Kind {
        /** Work rates, spraying and silage; each block of fields is one job. */
        ALL_FAMILIES,
        /** The same with a job row for each field, and so a tank mix for each field. */
        A_JOB_ROW_PER_FIELD,
        /** Work rates only: no water volume, no product, no yield. */
        WORK_RATES_ONLY
    }

    static void write(Path file, int fields, Kind kind) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            Writer writer = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 16);
            entry(zip, writer, "[Content_Types].xml", contentTypes());
            entry(
                    zip,
                    writer,
                    "_rels/.rels",
                    "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                            + "<Relationship Id=\"rId1\" Type=\"" + RELATIONS
                            + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            entry(zip, writer, "xl/workbook.xml", workbook());
            entry(zip, writer, "xl/_rels/workbook.xml.rels", workbookRelations());
            boolean all = kind != Kind.WORK_RATES_ONLY;
            begin(zip, writer, 1);
            fields(writer, fields, all);
            end(zip, writer);
            begin(zip, writer, 2);
            row(writer, 1, "Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)", "Nozzle spacing (m)");
            for (int i = 0; i < 20; i++) {
                row(writer, i + 2, "Sprayer " + (i + 1), "sprayer", 12 + i % 5 * 3, 8 + i % 5, 800 + i % 9 * 200, 0.5);
            }
            end(zip, writer);
            begin(zip, writer, 3);
            row(writer, 1, "Product", "Unit", "Dose (L/ha)", "Highest dose (L/ha)", "Pack size");
            for (int i = 0; i < 10; i++) {
                row(writer, i + 2, "Product " + (i + 1), "L", 0.5 + i * 0.25, 3, 5);
            }
            end(zip, writer);
            begin(zip, writer, 4);
            jobs(writer, fields, kind);
            end(zip, writer);
            begin(zip, writer, 5);
            row(writer, 1, "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target (%)");
            for (int i = 0; i < 40; i++) {
                row(writer, i + 2, "Clamp " + (i + 1), "walled", 40 + i, 12, 3, 28);
            }
            end(zip, writer);
            writer.flush();
        }
    }

    private static void fields(Writer writer, int fields, boolean all) throws IOException {
        List<Object> headers = new ArrayList<>(List.of(
                "Holding",
                "Field",
                "Crop",
                "Area (ha)",
                "Block",
                "Distance to clamp (km)",
                "Watercourse",
                "Slope (%)",
                "Overhead lines",
                "Notes",
                "Soil"));
        headers.addAll(
                all
                        ? List.of("Yield (t/ha)", "Yield basis", "DM at cutting (%)", "DM at ensiling (%)")
                        : List.of("Tree height (m)", "Former name"));
        row(writer, 1, headers.toArray());
        for (int i = 0; i < fields; i++) {
            List<Object> cells = new ArrayList<>(List.of(
                    holding(i),
                    "Field " + (i + 1),
                    "grass",
                    1 + i % 37 * 0.25,
                    "Block " + (i / FIELDS_OF_BLOCK + 1),
                    0.5 + i % 9 * 0.5,
                    i % 5 == 0 ? "stream" : "none",
                    i % 9,
                    i % 11 == 0 ? "yes" : "no",
                    "sheet " + i % 83,
                    SOILS[i % SOILS.length]));
            cells.addAll(
                    all
                            ? List.of(18 + i % 12, "as carted fresh", 17 + i % 4, 25 + i % 8)
                            : List.of("", "Piece " + i % 97));
            row(writer, i + 2, cells.toArray());
        }
    }

    private static void jobs(Writer writer, int fields, Kind kind) throws IOException {
        row(
                writer,
                1,
                "Holding",
                "Job",
                "Field",
                "Operation",
                "Machine",
                kind == Kind.WORK_RATES_ONLY ? "Remark 1" : "Product",
                kind == Kind.WORK_RATES_ONLY ? "Remark 2" : "Dose (L/ha)",
                kind == Kind.WORK_RATES_ONLY ? "Remark 3" : "Water volume (L/ha)");
        boolean each = kind == Kind.A_JOB_ROW_PER_FIELD;
        int jobs = each ? fields : (fields + FIELDS_OF_BLOCK - 1) / FIELDS_OF_BLOCK;
        for (int i = 0; i < jobs; i++) {
            boolean all = kind != Kind.WORK_RATES_ONLY;
            row(
                    writer,
                    i + 2,
                    holding(each ? i : i * FIELDS_OF_BLOCK),
                    "Job " + (i + 1),
                    (each ? "Field " : "Block ") + (i + 1),
                    "spraying",
                    "Sprayer " + (i % 20 + 1),
                    all ? "Product " + (i % 10 + 1) : "",
                    all ? (Object) (0.5 + i % 10 * 0.25) : "",
                    all ? (Object) (100 + i % 5 * 50) : "");
        }
    }

    private static String holding(int field) {
        return "Holding " + (field / FIELDS_OF_BLOCK % 40 + 1);
    }

    private static String contentTypes() {
        StringBuilder xml = new StringBuilder(
                "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default"
                        + " Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/><Override"
                        + " PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument"
                        + ".spreadsheetml.sheet.main+xml\"/>");
        for (int i = 1; i <= SHEETS.length; i++) {
            xml.append("<Override PartName=\"/xl/worksheets/sheet")
                    .append(i)
                    .append(".xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml"
                            + ".worksheet+xml\"/>");
        }
        return xml.append("</Types>").toString();
    }

    private static String workbook() {
        StringBuilder xml =
                new StringBuilder("<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets>");
        for (int i = 1; i <= SHEETS.length; i++) {
            xml.append("<sheet name=\"")
                    .append(SHEETS[i - 1])
                    .append("\" sheetId=\"")
                    .append(i)
                    .append("\" r:id=\"rId")
                    .append(i)
                    .append("\"/>");
        }
        return xml.append("</sheets></workbook>").toString();
    }

    private static String workbookRelations() {
        StringBuilder xml = new StringBuilder(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
        for (int i = 1; i <= SHEETS.length; i++) {
            xml.append("<Relationship Id=\"rId")
                    .append(i)
                    .append("\" Type=\"")
                    .append(RELATIONS)
                    .append("/worksheet\" Target=\"worksheets/sheet")
                    .append(i)
                    .append(".xml\"/>");
        }
        return xml.append("</Relationships>").toString();
    }

    private static void entry(ZipOutputStream zip, Writer writer, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        writer.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
        writer.write(text);
        writer.flush();
        zip.closeEntry();
    }

    private static void begin(ZipOutputStream zip, Writer writer, int number) throws IOException {
        zip.putNextEntry(new ZipEntry("xl/worksheets/sheet" + number + ".xml"));
        writer.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<worksheet xmlns=\"" + MAIN
                + "\"><sheetData>");
    }

    private static void end(ZipOutputStream zip, Writer writer) throws IOException {
        writer.write("</sheetData></worksheet>");
        writer.flush();
        zip.closeEntry();
    }

    private static void row(Writer writer, int number, Object... values) throws IOException {
        writer.write("<row r=\"" + number + "\">");
        for (int i = 0; i < values.length; i++) {
            String cell = "<c r=\"" + (char) ('A' + i) + number + "\"";
            if (values[i] instanceof Number) {
                writer.write(cell + "><v>" + values[i] + "</v></c>");
            } else if (!values[i].toString().isEmpty()) {
                writer.write(cell + " t=\"inlineStr\"><is><t>" + values[i] + "</t></is></c>");
            }
        }
        writer.write("</row>");
    }
}
