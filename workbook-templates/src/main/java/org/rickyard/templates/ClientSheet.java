package org.rickyard.templates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A sheet as a client would have made it: a title, a remark, a heading row and typed rows. */
final class ClientSheet {
    private static final int HEADING_ROW = 3;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private final XSSFSheet sheet;
    private final Looks looks;
    private final List<String> formats = new ArrayList<>();
    private int nextRow = HEADING_ROW + 1;

    /** Begins a sheet with its title and a remark under it. */
    ClientSheet(XSSFWorkbook workbook, Looks looks, String name, String title, String remark) {
        this.looks = looks;
        this.sheet = workbook.createSheet(name);
        words(0, title, Looks.Role.TITLE).setHeightInPoints(26);
        words(1, remark, Looks.Role.NOTE);
        sheet.createRow(2);
        sheet.createRow(HEADING_ROW).setHeightInPoints(50);
    }

    /** Adds a column of words. */
    ClientSheet words(String heading, int width) {
        return column(heading, width, Looks.WORDS);
    }

    /** Adds a column of numbers shown with so many decimals. */
    ClientSheet number(String heading, int width, int decimals) {
        return column(heading, width, decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals));
    }

    /** Adds a column of numbers as typed. */
    ClientSheet plain(String heading, int width) {
        return column(heading, width, Looks.GENERAL);
    }

    /** Adds a column of days. */
    ClientSheet day(String heading) {
        return column(heading, 12, Looks.DAY);
    }

    private ClientSheet column(String heading, int width, String format) {
        int index = formats.size();
        formats.add(format);
        sheet.setColumnWidth(index, width * 256);
        XSSFCell cell = sheet.getRow(HEADING_ROW).createCell(index);
        cell.setCellValue(heading);
        cell.setCellStyle(looks.of(Looks.Role.HEADING));
        return this;
    }

    /** Adds a row; what is null or not given stays blank. */
    ClientSheet row(Object... values) {
        if (values.length > formats.size()) {
            throw new IllegalArgumentException(sheet.getSheetName() + ": more values than columns");
        }
        XSSFRow row = sheet.createRow(nextRow++);
        for (int i = 0; i < formats.size(); i++) {
            XSSFCell cell = row.createCell(i);
            cell.setCellStyle(looks.of(Looks.Role.INPUT, formats.get(i)));
            if (i < values.length && values[i] != null) {
                set(cell, values[i]);
            }
        }
        return this;
    }

    /**
     * Adds rows written as lines, their cells parted by "|". A column of words takes them as words, one of days as
     * yyyy-mm-dd, any other as a number; a column of plain values takes words where they are no number.
     */
    ClientSheet rows(String lines) {
        return rows("", lines);
    }

    /** The same, every row beginning with the same holding unless that is empty. */
    ClientSheet rows(String holding, String lines) {
        for (String line : lines.split("\n")) {
            String[] texts = (holding.isEmpty() ? line : holding + "|" + line).split("\\|", -1);
            Object[] values = new Object[texts.length];
            for (int i = 0; i < texts.length; i++) {
                values[i] = value(texts[i].strip(), formats.get(i));
            }
            row(values);
        }
        return this;
    }

    private static Object value(String text, String format) {
        if (text.isEmpty()) {
            return null;
        }
        boolean number = NUMBER.matcher(text).matches();
        return switch (format) {
            case Looks.WORDS -> text;
            case Looks.DAY -> LocalDate.parse(text);
            case Looks.GENERAL -> number ? Double.valueOf(text) : text;
            default -> Double.valueOf(text);
        };
    }

    private static void set(XSSFCell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
        } else {
            cell.setCellValue((String) value);
        }
    }

    /** Adds a line under the rows that sums a column. */
    ClientSheet total(String label, int column) {
        XSSFRow row = sheet.createRow(nextRow);
        for (int i = 0; i < formats.size(); i++) {
            row.createCell(i).setCellStyle(looks.of(Looks.Role.TOTAL, i == column ? formats.get(i) : Looks.WORDS));
        }
        row.getCell(0).setCellValue(label);
        row.getCell(column).setCellFormula("SUM(" + cells(column).formatAsString() + ")");
        return this;
    }

    /** The typed cells of a column. */
    AreaReference cells(int column) {
        return new AreaReference(
                new CellReference(HEADING_ROW + 1, column),
                new CellReference(nextRow - 1, column),
                SpreadsheetVersion.EXCEL2007);
    }

    /** Makes the list an Excel table of this name. */
    ClientSheet asTable(String name) {
        AreaReference area = new AreaReference(
                new CellReference(HEADING_ROW, 0),
                new CellReference(nextRow - 1, formats.size() - 1),
                SpreadsheetVersion.EXCEL2007);
        XSSFTable table = sheet.createTable(area);
        table.setName(name);
        table.setDisplayName(name);
        table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
        return this;
    }

    /** Keeps headings and the first columns in sight and sets up the page. */
    ClientSheet finish(int frozenColumns) {
        sheet.createFreezePane(frozenColumns, HEADING_ROW + 1);
        PageSetup.apply(sheet, formats.size(), HEADING_ROW, HEADING_ROW);
        return this;
    }

    private XSSFRow words(int index, String text, Looks.Role role) {
        XSSFRow row = sheet.createRow(index);
        XSSFCell cell = row.createCell(0);
        cell.setCellValue(text);
        cell.setCellStyle(looks.of(role));
        return row;
    }
}
