package org.rickyard.run;

import java.util.List;
import java.util.stream.IntStream;

/** A season's spraying of one invented farm that fills every sheet of spraying. */
final class SprayingSeason {
    private SprayingSeason() {}

    /** Every sheet of spraying. */
    static final List<String> SHEETS = List.of(
            "Spray fields",
            "Spray blocks",
            "Tank mix",
            "Tank loads",
            "Tank fills",
            "Spray washing",
            "Order list",
            "Applications",
            "Spray records",
            "Season dose",
            "Nozzles",
            "Speed band",
            "Nozzle choice",
            "Nozzle wear",
            "Nozzle sets",
            "Water volumes",
            "Spray hours",
            "Spray weather",
            "Trees",
            "Knapsack",
            "Weed wiper",
            "Timed runs",
            "Area tests");

    /** 14 April 2025 as a spreadsheet counts days. */
    private static final int APRIL = 45761;

    static FarmBook book() {
        FarmBook book = new FarmBook()
                .sheet(
                        "Fields",
                        "Holding",
                        "Field",
                        "Crop",
                        "Area (ha)",
                        "Run length (m)",
                        "Distance to fill point (km)",
                        "Watercourse",
                        "Row spacing (m)",
                        "Tree height (m)",
                        "Tree width (m)",
                        "Country")
                .row("Fields", "Moor End", "Long Acre", "wheat", 4, 400, 1.5, "stream", null, null, null, "England")
                .row("Fields", "Moor End", "Home Field", "wheat", 6, 400, 1.5, null, null, null, null, "England")
                .row("Fields", "Moor End", "Top", "wheat", 7.3, 400, 1.5, "none", null, null, null, "England")
                .row("Fields", "Moor End", "Orchard", "apples", 2, null, null, null, 4, 3, 1.5, "England")
                .row("Fields", "Moor End", "Beet", "beet", 9, null, null, null, 0.5, null, null, "Ireland")
                .row("Fields", "Moor End", "Rushes", "grass", 3, null, null, null, null, null, null, "Ireland")
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Nozzle spacing (m)",
                        "Number of nozzles",
                        "Nozzle size",
                        "Lowest pressure (bar)",
                        "Highest pressure (bar)",
                        "Spray quality",
                        "Turn time (s)",
                        "Fill time (min)",
                        "Road speed laden (km/h)",
                        "Road speed empty (km/h)",
                        "Residual (L)",
                        "Rinse tank (L)",
                        "Priming (L)",
                        "Lowest field speed (km/h)",
                        "Highest field speed (km/h)",
                        "Hours per day (h)",
                        "Move time (min)",
                        "Cleaning time (min)",
                        "Timed distance (m)",
                        "Timed seconds (s)",
                        "Test area (m2)",
                        "Test volume (L)")
                .row(
                        "Machines",
                        "Sprayer",
                        "sprayer",
                        24,
                        12,
                        1500,
                        0.5,
                        48,
                        "04",
                        1.5,
                        4,
                        "medium",
                        20,
                        12,
                        20,
                        20,
                        30,
                        300,
                        10,
                        8,
                        14,
                        6,
                        10,
                        30,
                        100,
                        30,
                        null,
                        null)
                .row("Machines", "Mist blower", "air-blast sprayer", 4, 6, 1000, null, 16)
                .row(
                        "Machines",
                        "Knapsack",
                        "knapsack",
                        1,
                        4,
                        15,
                        null,
                        1,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        100,
                        6)
                .row("Machines", "Wiper", "wiper", 3, 6, 60)
                .sheet(
                        "Products",
                        "Product",
                        "Unit",
                        "Highest dose",
                        "Highest total dose",
                        "Most applications",
                        "Least interval (d)",
                        "Harvest interval (d)",
                        "Lowest water volume (L/ha)",
                        "Highest water volume (L/ha)",
                        "Spray quality",
                        "Buffer category",
                        "Authorisation no.",
                        "Pack size",
                        "Stock",
                        "Price")
                .row("Products", "Herbicide A", "L", 1.25, 2, 2, 14, 60, 100, 400, "medium", "B", "00001", 5, 4, 8)
                .row("Products", "Wetter", "L", 0.3, null, null, null, null, null, null, null, null, null, 1, null, 12)
                .row("Products", "Rush killer", "L", null, null, null, null, null, null, null, null, null, null, 1)
                .sheet("Mixes", "Mix", "Product", "Dose", "Dose unit", "Order in tank")
                .row("Mixes", "T1 mix", "Wetter", 0.2, "%", 2)
                .row("Mixes", "T1 mix", "Herbicide A", 1.25, "L/ha", 1)
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Mix",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)",
                        "Earliest",
                        "Latest",
                        "Workable days (%)",
                        "Last harvest date",
                        "Band width (m)",
                        "Wind speed (km/h)",
                        "Wind height (m)",
                        "Air temperature (°C)",
                        "Humidity (%)",
                        "Spray density (kg/L)")
                .row(
                        "Jobs",
                        "T1",
                        "wheat",
                        "spraying",
                        "Sprayer",
                        "T1 mix",
                        null,
                        null,
                        null,
                        200,
                        APRIL,
                        APRIL + 13,
                        50,
                        APRIL + 100,
                        null,
                        12,
                        10,
                        20,
                        50)
                .row(
                        "Jobs",
                        "T2",
                        "Top",
                        "spraying",
                        "Sprayer",
                        null,
                        "Herbicide A",
                        1,
                        "L/ha",
                        100,
                        APRIL + 7,
                        APRIL + 9,
                        50,
                        APRIL + 50,
                        null,
                        4,
                        1,
                        28,
                        30)
                .row(
                        "Jobs",
                        "Feed",
                        "Home Field",
                        "spraying",
                        "Sprayer",
                        null,
                        "Liquid feed",
                        200,
                        "L/ha",
                        200,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        1.28)
                .row("Jobs", "Apples", "Orchard", "spraying", "Mist blower", null, "Herbicide A", 0.5, "L/ha", 400)
                .row(
                        "Jobs",
                        "Beet bands",
                        "Beet",
                        "spraying",
                        "Sprayer",
                        null,
                        "Herbicide A",
                        1,
                        "L/ha",
                        200,
                        null,
                        null,
                        null,
                        null,
                        0.25)
                .row("Jobs", "Spots", "Rushes", "spraying", "Knapsack", null, "Rush killer", 3, "L/ha", 150)
                .row("Jobs", "Wipe", "Rushes", "wiping", "Wiper", null, "Rush killer", 33, "%")
                .sheet("Nozzle test", "Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)");
        IntStream.rangeClosed(1, 10)
                .forEach(nozzle ->
                        book.row("Nozzle test", "Sprayer", nozzle, nozzle == 3 ? 1.4 : nozzle == 7 ? 1.8 : 1.6, 3));
        return book;
    }
}
