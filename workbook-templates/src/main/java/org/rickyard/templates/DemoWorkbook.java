package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * An invented group of three farms, as a client would hand it over. It is honest about what such a book lacks: one farm
 * reckons in acres, a machine has no speed, a watercourse is left blank, and one dose is above its limit. Farms, fields
 * and products do not exist; sizes and rates are common practice.
 */
public final class DemoWorkbook {
    private DemoWorkbook() {}

    /** Writes the workbook; the stream is flushed and left open. */
    public static void write(OutputStream out) throws IOException {
        XSSFWorkbook workbook = new XSSFWorkbook();
        Looks looks = new Looks(workbook);
        DemoNotes.addTo(workbook, looks);
        DemoLand.addTo(workbook, looks);
        DemoMachines.addTo(workbook, looks);
        DemoSprays.addTo(workbook, looks);
        DemoJobs.addTo(workbook, looks);
        DemoFeed.addTo(workbook, looks);
        DemoPrices.addTo(workbook, looks);
        FixedBook.write(workbook, looks, "Thrushmere group 2026 (invented)", out);
    }
}
