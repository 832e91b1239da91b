package org.rickyard.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/**
 * A workbook without fields, as worked examples are keyed in: what each machine gets through in an hour, what flows from
 * it, and what it put out in a test; some of it typed as no machine can be.
 */
final class MachinesAlone {
    private MachinesAlone() {}

    private static Object[] row(Object... cells) {
        return cells;
    }

    static Path write(Path file) {
        try (ClientBook book = ClientBook.create()
                .sheet(
                        "Rated",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Overlap (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)"),
                        row("Rake 6 m", "rake", 6, 0.3, 10, 75),
                        row("Plough 4 f", "plough", 1.6, null, 7, null),
                        row("Tedder", "tedder", 7.5, null, "fast", 80),
                        row("Rolls", "field rolls", 6, 7, 8, 80),
                        row("Drill 4 m", "drill", 4, null, 10, 180))
                .sheet(
                        "Tried",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Tank (L)",
                                "Usable tank (L)",
                                "Total flow (L/min)",
                                "Test area (m2)",
                                "Test volume (L)"),
                        row("Boom 12 m", "sprayer", 12, 8, 1000, 950, 32, 200, 4),
                        row("Boom 18 m", "sprayer", 18, 9, 1500, null, 54, 300, 6.6),
                        row("Boom 24 m", "sprayer", 24, 12, 3000, 2900, 96, null, null),
                        row("Hand lance", "knapsack", 1, 4, 15, null, 1.2, 50, 0.9),
                        row("Second lance", "knapsack", 1, 3.6, 15, 14, 1.1, 50, "half a can"),
                        row("Leaking boom", "sprayer", 12, 8, 1000, null, 0, 200, 5))
                .sheet(
                        "Loads",
                        row(
                                "Machine",
                                "Type",
                                "Number",
                                "Working width (m)",
                                "Tank (L)",
                                "Usable tank (L)",
                                "Payload (t)",
                                "Load distance (m)",
                                "Round time (min)",
                                "Output (t/h)"),
                        row("Shovel", "loader", 2, null, null, null, 1.5, null, 1.2, null),
                        row("Fork", "buckrake", null, null, null, null, 0.8, null, 4, null),
                        row("Known loader", "loader", 3, null, null, null, 1, null, 2, 40),
                        row("Slow loader", "loader", 1, null, null, null, 2, null, null, null),
                        row("Old buckrake", "buckrake", "a pair", null, null, null, 0.6, null, 3, null),
                        row("Muck 8 t", "muck spreader", null, 8, null, null, 8, 200, null, null),
                        row("Muck 10 t", "muck spreader", null, 9, null, null, 10, 240, null, null),
                        row("Muck 12 t", "muck spreader", null, 10, null, null, 12, 310, null, null),
                        row("Side spreader", "muck spreader", null, 6, null, null, "a heap", 150, null, null),
                        row("Wide spreader", "muck spreader", null, 12, null, null, 14, 0, null, null),
                        row("Lime", "fertiliser spreader", null, 12, null, null, 5, 900, null, null),
                        row("Tanker 8", "slurry tanker", null, 10, 8000, null, null, 350, null, null),
                        row("Tanker 10", "slurry tanker", null, 12, 10000, 9800, null, 400, null, null),
                        row("Tanker 12", "slurry tanker", null, 12, 12000, null, null, 500, null, null),
                        row("Tanker 14", "slurry tanker", null, null, 14000, null, null, 450, null, null),
                        row("Old tanker", "slurry tanker", null, 6, null, null, null, 200, null, null),
                        row("Small tanker", "slurry tanker", null, 6, 5000, null, null, "far", null, null))
                .sheet(
                        "Buckets",
                        row("Machine", "Type", "Bucket size (m3)", "Cycle time (s)"),
                        row("Digger 1 m3", "excavator", 1, 20),
                        row("Digger 0.8 m3", "excavator", 0.8, 18),
                        row("Scoop", "loader", 1.5, 40),
                        row("Shovel 2 m3", "loader", 2, 30),
                        row("Small digger", "excavator", 0.3, 0),
                        row("Big digger", "excavator", 1.6, 23))
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", "UK", null))) {
            return book.save(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
