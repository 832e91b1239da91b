package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The client's own sheet, which is no list: remarks, and sums that look at the lists. */
final class DemoNotes {
    private static final int FIRST_ROW = 3;

    private DemoNotes() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        XSSFSheet sheet = workbook.createSheet("Notes");
        sheet.setColumnWidth(0, 46 * 256);
        sheet.setColumnWidth(1, 14 * 256);
        sheet.setColumnWidth(2, 2 * 256);
        sheet.setColumnWidth(3, 50 * 256);
        text(sheet, 0, 0, "Thrushmere group, season 2026", looks, Looks.Role.TITLE);
        sheet.getRow(0).setHeightInPoints(26);
        text(
                sheet,
                1,
                0,
                "Farms, fields, machines and products in this book are invented. Product limits here are no label.",
                looks,
                Looks.Role.NOTE);
        figure(sheet, looks, 0, "Land at Thrushmere and Pellbrook, ha", "SUM(Fields!D5:D26)", "");
        figure(
                sheet,
                looks,
                1,
                "Land at Oxlow End, ha",
                "SUM('Oxlow End fields'!D5:D12)*0.40468564224",
                "Oxlow End still reckons in acres.");
        figure(sheet, looks, 2, "All land, ha", "B4+B5", "");
        figure(
                sheet,
                looks,
                3,
                "Of it grass for first cut, ha",
                "SUMIFS(Fields!D5:D26,Fields!C5:C26,\"Grass\")+SUMIFS('Oxlow End fields'!D5:D12,"
                        + "'Oxlow End fields'!C5:C12,\"Grass\")*0.40468564224",
                "");
        figure(sheet, looks, 4, "Contractor's price for lifting, per ha", "", "Quoted in March, trailers included.");
        sheet.getRow(FIRST_ROW + 4).getCell(1).setCellValue(165);
        sheet.getRow(FIRST_ROW + 4).getCell(1).setCellStyle(looks.of(Looks.Role.INPUT, "#,##0.00"));
        figure(
                sheet,
                looks,
                5,
                "All lifting by contractor would cost",
                "B7*B8",
                "Against our own gang: ask the adviser.");
        String[] remarks = {
            "To do",
            "Speed of the new fertiliser spreader: look it up.",
            "Alder Carr: is it a ditch or a stream along the low side?",
            "Dose for the barley weeds was written down in a hurry; check against the label.",
            "New pit at Oxlow End is still to be dug. Ask about buried services first.",
        };
        for (int i = 0; i < remarks.length; i++) {
            text(sheet, FIRST_ROW + 7 + i, 0, remarks[i], looks, i == 0 ? Looks.Role.TITLE : Looks.Role.NOTE);
        }
        sheet.getRow(FIRST_ROW + 7).setHeightInPoints(26);
        PageSetup.apply(sheet, 4, 0, 0);
    }

    private static void figure(XSSFSheet sheet, Looks looks, int line, String label, String formula, String remark) {
        int row = FIRST_ROW + line;
        text(sheet, row, 0, label, looks, Looks.Role.TEXT);
        XSSFCell cell = sheet.getRow(row).createCell(1);
        cell.setCellStyle(looks.of(Looks.Role.OWN, "#,##0.00"));
        if (!formula.isEmpty()) {
            cell.setCellFormula(formula);
        }
        if (!remark.isEmpty()) {
            text(sheet, row, 3, remark, looks, Looks.Role.NOTE);
        }
    }

    private static void text(XSSFSheet sheet, int row, int column, String text, Looks looks, Looks.Role role) {
        XSSFRow line = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        XSSFCell cell = line.createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(looks.of(role));
    }
}
