package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Prices and rates of the demo that hold for the whole group. They are invented. */
final class DemoPrices {
    private DemoPrices() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        new ClientSheet(
                        workbook,
                        looks,
                        "Assumptions",
                        "Prices and rates of the group",
                        "Invented, in pounds. A line here also overrules a constant shown on Basis.")
                .words("Item", 24)
                .plain("Value", 9)
                .words("Unit", 9)
                .rows(
                        """
            Wage                 |17.5|£/h
            Fuel price           |0.92|£/L
            Interest rate        |6   |%
            Insurance and housing|1.5 |%""")
                .finish(1);
    }
}
