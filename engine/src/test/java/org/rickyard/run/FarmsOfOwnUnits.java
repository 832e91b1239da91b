package org.rickyard.run;

/** Invented farms that measure otherwise than we do. */
final class FarmsOfOwnUnits {
    private FarmsOfOwnUnits() {}

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** One farm as it is written in a country whose gallon, ton and pint these are. */
    static ClientBook farm(String gallon, String ton, String pint) {
        return ClientBook.create()
                .sheet(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ac)",
                                "Yield (" + ton + "/ac)",
                                "Yield basis",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Mill Piece", "wheat", 12),
                        row("Gallows Hill", "wheat", 8),
                        row("Long Ley", "grass", 15, 9, "as carted fresh", 28, "Yard clamp"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (ft)",
                                "Speed (mph)",
                                "Field efficiency (%)",
                                "Tank (" + gallon + ")"),
                        row("Sprayer", "sprayer", 30, 5, 70, 120),
                        row("Mower", "mower", 10, 5, 80))
                .sheet("Products", row("Product", "Unit"), row("Weedkiller", "L"))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose",
                                "Dose unit",
                                "Water volume (" + gallon + "/ac)"),
                        row("T1", "wheat", "spraying", "Sprayer", "Weedkiller", 2, pint + "/ac", 10),
                        row("Cut", "Long Ley", "mowing", "Mower"))
                .sheet(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (ft)",
                                "Floor width (ft)",
                                "Wall height (ft)",
                                "Settled height (ft)"),
                        row("Yard clamp", "walled", 80, 30, 7, 6));
    }

    static ClientBook british() {
        return farm("gal(UK)", "long ton", "pt(UK)");
    }

    static ClientBook american() {
        return farm("gal", "ton", "pt")
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", "US"));
    }

    /** Two farms on sheets of their own: acres and gallons in the north, hectares and litres in the south. */
    static ClientBook group() {
        return ClientBook.create()
                .sheet(
                        "North land",
                        row("Holding", "Field", "Crop", "Area (ac)"),
                        row("North", "Mill Piece", "wheat", 20))
                .sheet(
                        "South land",
                        row("Holding", "Field", "Crop", "Area (ha)"),
                        row("South", "Chalk Pit", "barley", 20))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)"),
                        row("Sprayer", "sprayer", 12, 8, 70, 600))
                .sheet(
                        "North work",
                        row("Job", "Field", "Operation", "Machine", "Water volume (UK gallons per acre)"),
                        row("T1", "Mill Piece", "spraying", "Sprayer", 10))
                .sheet(
                        "South work",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("S1", "Chalk Pit", "spraying", "Sprayer", 100));
    }
}
