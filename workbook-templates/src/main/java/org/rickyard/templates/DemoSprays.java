package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Products, mixes and a nozzle test of the demo. The products are invented, and so are their limits. */
final class DemoSprays {
    private DemoSprays() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        addProducts(workbook, looks);
        addMixes(workbook, looks);
        addNozzleTest(workbook, looks);
    }

    private static void addProducts(XSSFWorkbook workbook, Looks looks) {
        new ClientSheet(
                        workbook,
                        looks,
                        "Products",
                        "Spray store",
                        "Invented products with invented limits. For a real product only the label in hand counts.")
                .words("Product", 21)
                .words("Unit", 7)
                .plain("Dose", 8)
                .plain("Highest dose", 9)
                .plain("Highest total dose", 9)
                .number("Most applications", 13, 0)
                .number("Least interval (d)", 9, 0)
                .number("Harvest interval (d)", 9, 0)
                .words("Latest stage", 9)
                .number("Lowest water volume (L/ha)", 15, 0)
                .number("Highest water volume (L/ha)", 15, 0)
                .words("Spray quality", 10)
                .words("Authorisation no.", 14)
                .number("Density (kg/L)", 9, 2)
                .plain("Pack size", 8)
                .plain("Stock", 8)
                .number("Price", 8, 2)
                .rows(
                        """
            Herbicide A       |L |2   |2  |2  |1|  |21|     |200|400|coarse|invented|1.06|5  |20  |14.5
            Herbicide B       |L |1   |1.2|1.2|1|  |  |GS 39|150|300|medium|invented|1.12|5  |10  |22
            Fungicide C       |L |1   |1.5|3  |2|21|35|GS 69|100|300|medium|invented|1.02|5  |12  |31
            Growth regulator D|L |1.25|2.5|2.5|1|  |  |GS 32|150|400|medium|invented|1.1 |10 |30  |4.2
            Wetter E          |L |    |   |   | |  |  |     |   |   |      |invented|1.0 |1  |3   |9
            Fertiliser G      |kg|250 |   |   | |  |  |     |   |   |      |        |    |600|9000|0.38""")
                .finish(1);
    }

    private static void addMixes(XSSFWorkbook workbook, Looks looks) {
        new ClientSheet(workbook, looks, "Mixes", "Tank mixes", "Mixing order and what may be mixed: see the labels.")
                .words("Mix", 18)
                .words("Product", 21)
                .plain("Dose", 9)
                .words("Dose unit", 10)
                .number("Order in tank", 9, 0)
                .rows(
                        """
            Wheat first spray|Fungicide C       |1   |L/ha|1
            Wheat first spray|Growth regulator D|1.25|L/ha|2
            Wheat first spray|Wetter E          |0.1 |%   |3
            Grass docks      |Herbicide A       |2   |L/ha|1
            Grass docks      |Wetter E          |0.1 |%   |2""")
                .finish(1);
    }

    private static void addNozzleTest(XSSFWorkbook workbook, Looks looks) {
        ClientSheet test = new ClientSheet(
                        workbook,
                        looks,
                        "Nozzle test",
                        "Catch test, Sprayer 12 m",
                        "One minute into the jug, clean water, every nozzle. Two have worn.")
                .words("Sprayer", 16)
                .number("Nozzle", 9, 0)
                .number("Flow (L/min)", 9, 2)
                .number("Pressure (bar)", 10, 1)
                .number("New flow (L/min)", 10, 2);
        double[] flows = {
            1.21, 1.20, 1.22, 1.19, 1.23, 1.21, 1.20, 1.36, 1.22, 1.21, 1.20, 1.22,
            1.21, 1.23, 1.20, 1.22, 1.21, 1.19, 1.34, 1.22, 1.20, 1.21, 1.22, 1.20
        };
        for (int i = 0; i < flows.length; i++) {
            test.row("Sprayer 12 m", i + 1, flows[i], 3, 1.2);
        }
        test.finish(1);
    }
}
