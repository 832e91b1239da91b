package org.rickyard.run;

/** A small farm on forms, of which the labels stand below one another, and the same in lists proper. */
final class FarmOnForms {
    private static final Object[][] PRICES = {
        row("Item", "Value", "Unit"),
        row("Wage", 16, "money/h"),
        row("Fuel price", 0.9, "money/L"),
        row("Interest rate", 5, "%"),
        row("Insurance and housing", 1.5, "%")
    };

    private FarmOnForms() {}

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** A clamp named by its title, under "Item", "Value" and "Unit", two machines below one another, and a card of one job in two halves. */
    static ClientBook forms() {
        return ClientBook.create()
                .sheet(
                        "Bunker",
                        row("Main clamp"),
                        row("Item", "Value", "Unit"),
                        row("Kind", "walled", null),
                        row("Length", 30, "m"),
                        row("Floor width", 9, "m"),
                        row("Wall height", 2.4, "m"),
                        row("Settled height", 2.2, "m"),
                        row("Density, dry matter", 215, "kg DM/m3"),
                        row("DM target", 30, "%"))
                .sheet(
                        "Tackle",
                        row("Mowing and raking"),
                        row("Machine", "Mower"),
                        row("Type", "mower"),
                        row("Working width (m)", 3.1),
                        row("Speed (km/h)", 10),
                        row("Field efficiency (%)", 80),
                        row(),
                        row("Machine", "Rake"),
                        row("Type", "rake"),
                        row("Working width (m)", 6),
                        row("Speed (km/h)", 11),
                        row("Field efficiency (%)", 75))
                .sheet(
                        "Job card",
                        row("Field", "Beacon", null, "Sprayer", "Boom"),
                        row("Crop", "wheat", null, "Working width (m)", 12),
                        row("Area (ha)", 8.2, null, "Tank (L)", "900 litres"),
                        row("Operation", "spraying", null, "Speed (km/h)", 8),
                        row("Product", "Product A", null, "Water volume (L/ha)", 200),
                        row("Dose (L/ha)", 1.2, null, "Purchase price", 21000),
                        row(null, null, null, "Trade-in value", 6000),
                        row(null, null, null, "List price", 24000),
                        row(null, null, null, "Life (yr)", 10),
                        row(null, null, null, "Hours per year", 150),
                        row(null, null, null, "Own or hired", "own"),
                        row(null, null, null, "Charge (/ha)", 14),
                        row(null, null, null, "Fuel (L/h)", 14))
                .sheet("Assumptions", PRICES);
    }

    /** The same, each in lists proper. */
    static ClientBook lists() {
        return ClientBook.create()
                .sheet(
                        "Bunker",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Settled height (m)",
                                "Density, dry matter (kg DM/m3)",
                                "DM target (%)"),
                        row("Main clamp", "walled", 30, 9, 2.4, 2.2, 215, 30))
                .sheet(
                        "Tackle",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mower", "mower", 3.1, 10, 80),
                        row("Rake", "rake", 6, 11, 75))
                .sheet(
                        "Job card",
                        row(
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Operation",
                                "Product",
                                "Dose (L/ha)",
                                "Sprayer",
                                "Working width (m)",
                                "Tank (L)",
                                "Speed (km/h)",
                                "Water volume (L/ha)",
                                "Purchase price",
                                "Trade-in value",
                                "List price",
                                "Life (yr)",
                                "Hours per year",
                                "Own or hired",
                                "Charge (/ha)",
                                "Fuel (L/h)"),
                        row(
                                "Beacon",
                                "wheat",
                                8.2,
                                "spraying",
                                "Product A",
                                1.2,
                                "Boom",
                                12,
                                900,
                                8,
                                200,
                                21000,
                                6000,
                                24000,
                                10,
                                150,
                                "own",
                                14,
                                14))
                .sheet("Assumptions", PRICES);
    }
}
