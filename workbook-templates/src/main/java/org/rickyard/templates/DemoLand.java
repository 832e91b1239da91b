package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The fields of the demo: two farms in hectares on one sheet, the third in acres on its own. */
final class DemoLand {
    private DemoLand() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        addHectares(workbook, looks);
        addAcres(workbook, looks);
    }

    private static void addHectares(XSSFWorkbook workbook, Looks looks) {
        ClientSheet fields = new ClientSheet(
                        workbook,
                        looks,
                        "Fields",
                        "Fields at Thrushmere and Pellbrook",
                        "Net areas, measured 2024. Yields are for the first cut.")
                .words("Holding", 13)
                .words("Field", 17)
                .words("Crop", 10)
                .number("Area (ha)", 9, 2)
                .words("Block", 11)
                .number("Run length (m)", 9, 0)
                .number("Distance to clamp (km)", 11, 1)
                .number("Distance to fill point (km)", 11, 1)
                .words("Watercourse", 13)
                .number("Distance to watercourse (m)", 13, 1)
                .words("Overhead lines", 11)
                .number("Slope (%)", 8, 0)
                .number("Yield (t/ha)", 8, 1)
                .words("Yield basis", 15)
                .number("DM at cutting (%)", 10, 0)
                .number("DM at ensiling (%)", 10, 0)
                .words("Clamp", 12)
                .words("Notes", 28);
        fields.rows(
                "Thrushmere",
                """
        Home Field    |Grass |6.40|Home|310|0.4|0.3|none     | |yes|3 |22|standing fresh|18|28|Main clamp
        Long Acre     |Grass |5.85|Home|420|0.6|0.5|stream   |6|no |4 |22|standing fresh|18|28|Main clamp
        Chapel Bank   |Grass |4.20|Home|240|0.9|0.8|none     | |no |14|19|standing fresh|19|28|Main clamp|Steep
        Lower Lea     |Grass |7.10|Lea |380|1.6|1.5|river    |8|no |1 |24|standing fresh|17|27|Main clamp
        Upper Lea     |Grass |5.60|Lea |350|1.8|1.7|none     | |no |3 |22|standing fresh|18|28|Main clamp
        Rushy Meadow  |Grass |3.90|Lea |210|2.1|2.0|dry ditch|2|no |2 |17|standing fresh|17|27|Main clamp
        Fox Hole      |Grass |2.75|Lea |160|2.3|2.2|none     | |no |9 |18|standing fresh|18|28|Main clamp
        Six Acre      |Grass |2.43|Home|190|0.5|0.4|none     | |no |2 |21|standing fresh|18|28|Main clamp
        Ten Acre      |Grass |4.05|Home|260|0.7|0.6|none     | |no |2 |21|standing fresh|18|28|Main clamp
        Hill Piece    |Wheat |9.80|Hill|460|   |1.2|none     | |no |6
        Windmill Field|Wheat |8.35|Hill|430|   |1.4|none     | |no |5
        Stony Ground  |Wheat |6.90|Hill|340|   |1.6|dry ditch|3|no |4
        Limekiln Field|Barley|5.20|Lane|300|   |1.1|none     | |no |5""");
        fields.rows(
                        "Pellbrook",
                        """
        Home Field   |Grass |4.60|Beck side|280|0.3|0.3|stream|4 |no |2 |4.2|dry matter|18|30|Old clamp
        Bottom Meadow|Grass |6.20|Beck side|330|0.7|0.6|stream|5 |no |1 |4.4|dry matter|18|30|Old clamp
        Alder Carr   |Grass |3.35|Beck side|200|0.9|0.9|      |  |no |1 |3.6|dry matter|17|28|Old clamp|Look at the beck
        Near Croft   |Grass |2.80|Crofts   |180|0.2|0.2|none  |  |yes|3 |4.1|dry matter|18|30|Old clamp
        Far Croft    |Grass |3.10|Crofts   |190|0.4|0.4|none  |  |no |3 |4.1|dry matter|18|30|Old clamp
        Quarry Field |Grass |1.95|Crofts   |150|0.8|0.8|lake  |15|no |11|3.8|dry matter|18|30|Old clamp
        Barn Field   |Barley|5.45|Lane     |310|   |0.5|none  |  |no |4
        Gorse Field  |Barley|6.05|Lane     |320|   |0.9|none  |  |no |7
        Long Close   |Wheat |7.30|Top      |440|   |1.3|none  |  |no |3""")
                .total("Total", 3)
                .finish(2);
    }

    private static void addAcres(XSSFWorkbook workbook, Looks looks) {
        new ClientSheet(
                        workbook,
                        looks,
                        "Oxlow End fields",
                        "Oxlow End, from the old field book",
                        "Areas in acres, yields in tonnes an acre over the weighbridge.")
                .words("Farm", 13)
                .words("Field name", 15)
                .words("Crop", 10)
                .number("Area (ac)", 9, 1)
                .number("Distance to pit (km)", 11, 1)
                .number("Distance to fill point (km)", 11, 1)
                .words("Watercourse", 13)
                .number("Distance to watercourse (m)", 13, 0)
                .number("Yield (t/ac)", 9, 1)
                .words("Yield basis", 15)
                .number("DM at cutting (%)", 10, 0)
                .number("DM at ensiling (%)", 10, 0)
                .words("Pit", 12)
                .rows(
                        "Oxlow End",
                        """
        North Park   |Grass |12.5|0.5|0.4|none     | |4.8|as carted fresh|18|27|Oxlow pit
        Middle Park  |Grass |10.2|0.7|0.6|none     | |4.8|as carted fresh|18|27|Oxlow pit
        South Park   |Grass |14.0|0.9|0.8|none     | |5.0|as carted fresh|18|27|Oxlow pit
        Pit Field    |Grass |6.4 |0.1|0.2|none     | |4.5|as carted fresh|18|27|Oxlow pit
        Orchard Field|Grass |4.8 |0.3|0.2|none     | |4.2|as carted fresh|18|27|Oxlow pit
        Moor Edge    |Grass |16.3|2.4|2.2|dry ditch|3|4.0|as carted fresh|18|27|Oxlow pit
        Beck Field   |Barley|9.6 |   |0.8|stream   |7
        Gate Field   |Barley|7.1 |   |1.1|none""")
                .finish(2);
    }
}
