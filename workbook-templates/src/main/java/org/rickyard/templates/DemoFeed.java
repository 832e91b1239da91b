package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Clamps, stores and herds of the demo. */
final class DemoFeed {
    private DemoFeed() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        new ClientSheet(
                        workbook,
                        looks,
                        "Clamps",
                        "Clamps and pits",
                        "Inside measures in metres. The pit at Oxlow End is still to be dug.")
                .words("Holding", 13)
                .words("Clamp", 14)
                .words("Kind", 11)
                .number("Length (m)", 9, 1)
                .number("Floor width (m)", 9, 1)
                .number("Wall height (m)", 9, 1)
                .number("Settled height (m)", 9, 1)
                .plain("Batter", 9)
                .number("Ramps", 8, 0)
                .number("Ramp run", 8, 1)
                .number("DM target (%)", 9, 0)
                .number("Roller mass (t)", 9, 0)
                .number("Layer (cm)", 8, 0)
                .number("Delivery (t/h)", 9, 0)
                .number("Effluent tank (m3)", 9, 0)
                .number("Distance to watercourse (m)", 13, 0)
                .plain("Year built or enlarged", 11)
                .words("Country", 10)
                .number("Feed-out rate (m/week)", 10, 1)
                .words("Feeding season", 11)
                .number("Crown (m)", 8, 1)
                .words("Crown shape", 10)
                .words("Overhead lines", 9)
                .words("Soil", 11)
                .number("Additive (L/t)", 9, 1)
                .rows(
                        """
            Thrushmere|Main clamp|walled   |38|11|2.4|2.3|0.2   |1|4|28|12|15|45|24|60 |2004|England|1.5|winter|0.4|parabolic|no |            |1.5
            Pellbrook |Old clamp |walled   |24|9 |2.2|2.1|      |0| |30|12|15|40|12|45 |1987|England|1.2|winter|   |         |yes|            |
            Oxlow End |Oxlow pit |earth pit|24|7 |2.2|2.0|1 in 1|1|3|27|12|20|40|  |120|2026|other  |1.2|winter|   |         |no |common earth|""")
                .finish(2);
        new ClientSheet(workbook, looks, "Stocks", "Feed left over", "Counted at the end of April.")
                .words("Holding", 13)
                .words("Store", 16)
                .words("Kind", 9)
                .number("Amount (t)", 9, 0)
                .number("Count", 8, 0)
                .number("Weight each (kg)", 9, 0)
                .number("DM (%)", 8, 0)
                .day("Date")
                .rows(
                        """
            Thrushmere|Main clamp |clamp|85|   |   |27|2026-04-30
            Thrushmere|Round bales|bales|  |64 |550|38|2026-04-30
            Oxlow End |Hay        |bales|  |120|240|85|2026-04-30""")
                .finish(2);
        new ClientSheet(
                        workbook,
                        looks,
                        "Herds",
                        "Stock to be wintered",
                        "Dry matter of silage that one animal eats in a day; other feed is not counted here.")
                .words("Holding", 13)
                .words("Group", 18)
                .number("Head", 8, 0)
                .number("Intake (kg DM/d)", 10, 1)
                .number("Days (d)", 8, 0)
                .words("Clamp", 14)
                .rows(
                        """
            Thrushmere|Dairy cows     |74|11 |180|Main clamp
            Thrushmere|Bulling heifers|26|6.5|170|Main clamp
            Pellbrook |Suckler cows   |46|9  |175|Old clamp
            Oxlow End |Store cattle   |58|6  |180|Oxlow pit""")
                .finish(2);
    }
}
