package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A small invented farm in British units and words of its own. LibreOffice has opened and saved it once, and the
 * outcome is kept as {@code saved-by-libreoffice.xlsx}: a workbook that no writer of this project made.
 */
final class SkelbeckWorkbook {
    private SkelbeckWorkbook() {}

    /** Writes the workbook that LibreOffice is to open: {@code args[0]} says where. */
    public static void main(String[] args) throws IOException {
        XSSFWorkbook workbook = new XSSFWorkbook();
        Looks looks = new Looks(workbook);
        new ClientSheet(workbook, looks, "Land", "Skelbeck", "Acres from the deeds.")
                .words("Farm", 12)
                .words("Field name", 16)
                .words("Cropping", 10)
                .number("Area (ac)", 9, 2)
                .words("Watercourse", 12)
                .number("Distance from yard (miles)", 10, 2)
                .number("Yield (t/ac)", 9, 1)
                .words("Yield basis", 14)
                .number("DM at ensiling (%)", 10, 0)
                .words("Pit", 12)
                .rows(
                        "Skelbeck",
                        """
                        Low Field    |Grass |11.25|stream   |0.25|4.9|as carted|27|Yard pit
                        High Field   |Grass |9.5  |none     |0.5 |4.6|as carted|27|Yard pit
                        Cow Pasture  |Grass |14   |dry ditch|0.75|4.4|as carted|27|Yard pit
                        Mill Holme   |Grass |6.75 |river    |1.1 |5.1|as carted|26|Yard pit
                        Twelve Acre  |Barley|12.1 |none     |0.9
                        Thistle Rigg |Barley|7.4  |none     |1.3""")
                .total("Total acres", 3)
                .finish(2);
        new ClientSheet(workbook, looks, "Kit", "Implements", "Measured in the yard.")
                .words("Implement", 18)
                .words("Type", 12)
                .number("Bout width (ft)", 9, 1)
                .number("Speed mph", 9, 1)
                .number("Efficiency %", 10, 0)
                .number("Tank (gal)", 9, 0)
                .rows(
                        """
                        Mower 9 ft   |mower  |9 |6.5|80
                        Rower        |rower  |14|6  |80
                        Boom sprayer |sprayer|40|5.5|60|180""")
                .finish(1);
        new ClientSheet(workbook, looks, "Work list", "What is to be done", "Early May to June.")
                .words("Where", 14)
                .words("Operation", 12)
                .words("Machine", 16)
                .words("Product", 14)
                .plain("Dose", 8)
                .words("Dose unit", 10)
                .number("Water rate (gal/ac)", 10, 0)
                .day("Earliest")
                .rows(
                        """
                        Grass      |cut   |Mower 9 ft  |           |   |    |  |2026-06-01
                        Grass      |row up|Rower       |           |   |    |  |2026-06-02
                        Twelve Acre|spray |Boom sprayer|Herbicide H|1.5|L/ha|20|2026-05-06""")
                .finish(1);
        new ClientSheet(workbook, looks, "Pits", "Silage pit", "Feet, inside the walls.")
                .words("Pit", 12)
                .words("Kind", 10)
                .number("Length (ft)", 9, 0)
                .number("Floor width (ft)", 9, 0)
                .number("Wall height (ft)", 9, 1)
                .words("Country", 12)
                .rows("""
                        Yard pit|walled|75|24|7.5|Scotland""")
                .finish(1);
        new ClientSheet(workbook, looks, "Assumptions", "Settings", "Our gallons are British.")
                .words("Item", 20)
                .words("Value", 10)
                .words("Unit", 10)
                .rows("""
                        Customary units|UK""")
                .finish(1);
        try (OutputStream out = Files.newOutputStream(Path.of(args[0]))) {
            FixedBook.write(workbook, looks, "Skelbeck (invented)", out);
        }
    }
}
