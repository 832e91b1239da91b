package org.rickyard.templates;

import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFont;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;

/** The cell styles of a template, one named style for each role, in as many number formats as are asked for. */
final class Looks {
    /** Any number as typed. */
    static final String GENERAL = "General";
    /** Words, even where they look like a number ("04"). */
    static final String WORDS = "@";
    /** A day that reads alike everywhere. */
    static final String DAY = "yyyy-mm-dd";

    /** What a cell is for. */
    enum Role {
        /** The name of the sheet. */
        TITLE("List title"),
        /** Words to the reader. */
        NOTE("List note"),
        /** The same in a narrow column. */
        HELP("List help"),
        /** Plain words, wrapped. */
        TEXT("List text"),
        /** What a value may look like. */
        EXAMPLE("List example"),
        /** The heading of a column one may leave out. */
        HEADING("List heading"),
        /** The heading of a column that is needed. */
        NEEDED("List heading needed"),
        /** Where the client types. */
        INPUT("List input"),
        /** The client's own reckoning. */
        OWN("List own formula"),
        /** A sum under a list. */
        TOTAL("List total");

        private final String styleName;

        Role(String styleName) {
            this.styleName = styleName;
        }
    }

    private static final String GREEN = "1F4E3D";
    private static final String GREY = "595959";
    private static final String LINE = "BFC8BF";
    private static final int POINTS = 11;

    private final XSSFWorkbook workbook;
    private final Map<String, XSSFCellStyle> made = new LinkedHashMap<>();
    private final Map<String, XSSFFont> fonts = new LinkedHashMap<>();

    Looks(XSSFWorkbook workbook) {
        this.workbook = workbook;
        for (Role role : Role.values()) {
            XSSFCellStyle style = make(role, role == Role.INPUT || role == Role.OWN ? GENERAL : WORDS);
            CTXf named = (CTXf) style.getCoreXf().copy();
            if (named.isSetXfId()) {
                named.unsetXfId();
            }
            int index = workbook.getStylesSource().putCellStyleXf(named) - 1;
            if (index != role.ordinal() + 1) {
                throw new IllegalStateException("named styles do not stand in the order of their roles");
            }
            style.getCoreXf().setXfId(index);
        }
    }

    /** The style of a role for words. */
    XSSFCellStyle of(Role role) {
        return of(role, WORDS);
    }

    /** The style of a role in a number format. */
    XSSFCellStyle of(Role role, String format) {
        String key = role + " " + format;
        if (!made.containsKey(key)) {
            make(role, format).getCoreXf().setXfId(role.ordinal() + 1L);
        }
        return made.get(key);
    }

    /** The list of style names as it stands in the style part. */
    String namesElement() {
        StringBuilder xml = new StringBuilder("<cellStyles count=\"" + (Role.values().length + 1) + "\">");
        xml.append("<cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/>");
        for (Role role : Role.values()) {
            xml.append("<cellStyle name=\"" + role.styleName + "\" xfId=\"" + (role.ordinal() + 1) + "\"/>");
        }
        return xml.append("</cellStyles>").toString();
    }

    private XSSFCellStyle make(Role role, String format) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        switch (role) {
            case TITLE -> style.setFont(font(16, true, false, GREEN));
            case NOTE -> style.setFont(font(10, false, false, GREY));
            case HELP -> {
                style.setFont(font(9, false, false, GREY));
                style.setWrapText(true);
                style.setVerticalAlignment(VerticalAlignment.TOP);
            }
            case TEXT -> {
                style.setFont(font(POINTS, false, false, "000000"));
                style.setWrapText(true);
            }
            case EXAMPLE -> {
                style.setFont(font(10, false, true, GREY));
                style.setWrapText(true);
            }
            case HEADING -> heading(style, "E4ECE4", false);
            case NEEDED -> heading(style, "BCD3BF", true);
            case INPUT -> {
                style.setFont(font(POINTS, false, false, "000000"));
                fill(style, "FFFDF2");
                edges(style, BorderStyle.HAIR);
                if (!format.equals(WORDS)) {
                    // Keeps a number off the word in the next column.
                    style.setAlignment(HorizontalAlignment.RIGHT);
                    style.setIndention((short) 1);
                }
            }
            case OWN -> style.setFont(font(POINTS, false, false, "000000"));
            case TOTAL -> {
                style.setFont(font(POINTS, true, false, "000000"));
                style.setBorderTop(BorderStyle.MEDIUM);
                style.setTopBorderColor(color(GREEN));
            }
        }
        made.put(role + " " + format, style);
        return style;
    }

    private void heading(XSSFCellStyle style, String fill, boolean needed) {
        style.setFont(font(POINTS, true, false, "000000"));
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.LEFT);
        fill(style, fill);
        edges(style, BorderStyle.THIN);
        style.setBorderBottom(needed ? BorderStyle.MEDIUM : BorderStyle.THIN);
        style.setBottomBorderColor(color(GREEN));
    }

    private void edges(XSSFCellStyle style, BorderStyle line) {
        style.setBorderTop(line);
        style.setBorderBottom(line);
        style.setBorderLeft(line);
        style.setBorderRight(line);
        style.setTopBorderColor(color(LINE));
        style.setBottomBorderColor(color(LINE));
        style.setLeftBorderColor(color(LINE));
        style.setRightBorderColor(color(LINE));
    }

    private void fill(XSSFCellStyle style, String rgb) {
        style.setFillForegroundColor(color(rgb));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private XSSFFont font(int points, boolean bold, boolean italic, String rgb) {
        String key = points + " " + bold + " " + italic + " " + rgb;
        return fonts.computeIfAbsent(key, absent -> {
            // In the order of the schema; POI's own calls leave the elements in the order they were made.
            CTFont parts = CTFont.Factory.newInstance();
            if (bold) {
                parts.addNewB().setVal(true);
            }
            if (italic) {
                parts.addNewI().setVal(true);
            }
            parts.addNewSz().setVal(points);
            parts.addNewColor().setRgb(argb(rgb));
            parts.addNewName().setVal("Calibri");
            XSSFFont font = new XSSFFont(parts);
            font.registerTo(workbook.getStylesSource());
            return font;
        });
    }

    private static XSSFColor color(String rgb) {
        return new XSSFColor(argb(rgb));
    }

    private static byte[] argb(String rgb) {
        return HexFormat.of().parseHex("FF" + rgb);
    }
}
