package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The first sheet of an empty template: what to do with it, and what it is not. */
final class StartSheet {
    private StartSheet() {}

    /** Adds the sheet; further lines stand before the cautions. */
    static void addTo(XSSFWorkbook workbook, Looks looks, String title, String... further) {
        XSSFSheet sheet = workbook.createSheet("Start here");
        sheet.setColumnWidth(0, 110 * 256);
        int row = 0;
        line(sheet, row++, title, looks, Looks.Role.TITLE);
        for (String text : further) {
            line(sheet, row++, text, looks, Looks.Role.TEXT);
        }
        String[] general = {
            "Fill in what you know and leave the rest blank. A blank is never taken for zero, \"none\" or \"no\".",
            "Each sheet has its help above the headings: whether a column is needed, what it means, and an example.",
            "Sheets and columns you do not use may be deleted, and the order of columns is free. Sheets of your own may"
                    + " be added.",
            "Units stand in the headings. To type acres, write \"Area (ac)\" in place of \"Area (ha)\".",
            "Then run:  rickyard run FILE.xlsx  - it adds new sheets of live formulas and changes none of yours.",
        };
        for (String text : general) {
            line(sheet, row++, text, looks, Looks.Role.TEXT);
        }
        String[] cautions = {
            "",
            "Caution",
            "The label you hold and local law decide doses, water volumes, intervals and distances to water.",
            "Work on clamps, in pits, on the road and near power lines can kill. The figures are for planning; they"
                    + " give no clearance, and take the place of no licensed or trained person.",
        };
        for (String text : cautions) {
            line(sheet, row++, text, looks, text.equals("Caution") ? Looks.Role.TITLE : Looks.Role.TEXT);
        }
        PageSetup.apply(sheet, 1, 0, 0);
    }

    private static void line(XSSFSheet sheet, int index, String text, Looks looks, Looks.Role role) {
        XSSFRow row = sheet.createRow(index);
        row.setHeightInPoints(role == Looks.Role.TITLE ? 26 : text.length() > 125 ? 34 : 19);
        XSSFCell cell = row.createCell(0);
        cell.setCellValue(text);
        cell.setCellStyle(looks.of(role));
    }
}
