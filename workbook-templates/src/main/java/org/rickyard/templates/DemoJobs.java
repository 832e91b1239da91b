package org.rickyard.templates;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The jobs of the demo: first cut on three farms, fertiliser, and three sprayings. */
final class DemoJobs {
    private DemoJobs() {}

    static void addTo(XSSFWorkbook workbook, Looks looks) {
        ClientSheet jobs = new ClientSheet(
                        workbook,
                        looks,
                        "Jobs",
                        "Jobs, spring 2026",
                        "Under Field stands a field, a crop or a block of the farm.")
                .words("Holding", 13)
                .words("Job", 15)
                .words("Field", 13)
                .words("Operation", 12)
                .words("Machine", 62)
                .words("Tractor", 38)
                .words("Mix", 18)
                .words("Product", 14)
                .plain("Dose", 8)
                .words("Dose unit", 9)
                .number("Water volume (L/ha)", 10, 0)
                .number("Cut", 7, 0)
                .words("After", 15)
                .number("Lag (h)", 8, 0)
                .day("Earliest")
                .day("Latest")
                .words("Growth stage", 10)
                .day("Last harvest date")
                .number("Workable days (%)", 10, 0)
                .number("Wind speed (m/s)", 8, 1)
                .number("Wind height (m)", 8, 0)
                .number("Air temperature (°C)", 11, 0)
                .number("Humidity (%)", 9, 0);
        cut(
                jobs,
                "Thrushmere",
                "T",
                "Forager; Trailer 12 t x 3; Buckrake; Roller tractor",
                "-; Tractor 85 kW x 3",
                "2026-05-18|2026-05-29");
        cut(
                jobs,
                "Pellbrook",
                "P",
                "Forager; Trailer 12 t x 2; Loader; Roller tractor",
                "-; Tractor 85 kW x 2",
                "2026-05-25|2026-06-05");
        cut(
                jobs,
                "Oxlow End",
                "O",
                "Forager; Trailer 12 t x 2; Trailer 8 t; Buckrake; Roller tractor",
                "-; Tractor 85 kW x 2; Tractor 85 kW",
                "2026-05-25|2026-06-05");
        jobs.rows(
                "Thrushmere",
                """
    Spread T|Grass|spreading|Spreader 24 m|Tractor 85 kW||Fertiliser G|250|kg/ha|||||2026-03-16|2026-03-30|||60
    Wheat T|Hill|spraying|Sprayer 24 m|Tractor 120 kW|Wheat first spray||||200||||2026-04-14|2026-04-28|GS 31|2026-08-12|45|3.5|10|12|70""");
        jobs.rows(
                "Pellbrook",
                """
    Docks P|Beck side|spraying|Sprayer 12 m|Tractor 85 kW|Grass docks||||200||||2026-04-20|2026-04-30||2026-05-25|45|2.5|10|14|65
    Barley P|Barley|spraying|Sprayer 24 m|Tractor 120 kW||Herbicide B|1.5|L/ha|200||||2026-05-04|2026-05-14|GS 24|2026-08-03|45|6|10|17|58""");
        jobs.finish(3);
    }

    /** Mow, shake out, row up, and lift: the lifting gang chops, carts, pushes up and rolls at one pace. */
    private static void cut(ClientSheet jobs, String holding, String mark, String gang, String tractors, String days) {
        jobs.rows(
                holding,
                """
                Mow %1$s |Grass|mowing  |Mower 3.2 m |Tractor 120 kW||||||1|         |  |%3$s|||50
                Ted %1$s |Grass|tedding |Tedder 7.6 m|Tractor 85 kW ||||||1|Mow %1$s |2 |%3$s|||50
                Rake %1$s|Grass|raking  |Rake 7 m    |Tractor 85 kW ||||||1|Ted %1$s |20|%3$s|||50
                Lift %1$s|Grass|chopping|%2$s        |%4$s          ||||||1|Rake %1$s|1 |%3$s|||50"""
                        .formatted(mark, gang, days, tractors));
    }
}
