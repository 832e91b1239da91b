package org.rickyard.templates;

import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.usermodel.PrintOrientation;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How a sheet is printed: A4 landscape, fitted to its width, heading rows repeated, page x of y. */
final class PageSetup {
    /** Columns that are still readable side by side on one page. */
    private static final int COLUMNS_ON_A_PAGE = 20;

    private PageSetup() {}

    /**
     * Sets up a sheet.
     *
     * @param columns how many columns it has; a wide list takes several pages side by side
     * @param firstRow first row repeated on each page, counted from 0
     * @param lastRow last row repeated on each page
     */
    static void apply(XSSFSheet sheet, int columns, int firstRow, int lastRow) {
        XSSFPrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PaperSize.A4_PAPER);
        print.setOrientation(PrintOrientation.LANDSCAPE);
        sheet.setFitToPage(true);
        print.setFitWidth((short) ((columns + COLUMNS_ON_A_PAGE - 1) / COLUMNS_ON_A_PAGE));
        print.setFitHeight((short) 0);
        sheet.setRepeatingRows(new CellRangeAddress(firstRow, lastRow, -1, -1));
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("Page &P of &N");
    }
}
