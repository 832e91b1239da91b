package org.rickyard.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.rickyard.run.ClientBook.Percent;
import org.rickyard.run.ClientBook.Typed;

/** Workbooks of invented holdings, as clients might keep them. The same seed gives the same cells. */
public final class TestBooks {
    private TestBooks() {}

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static Path saved(ClientBook book, Path file) {
        try (book) {
            return book.save(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A small farm of two holdings that feeds every table: mowing, raking and two sprayings over blocks, a mix, a pit to
     * dig, clamps of every kind, and a few gaps.
     */
    public static Path smallFarm(Path file) {
        return saved(smallFarm(), file);
    }

    /** The small farm, to be added to. */
    public static ClientBook smallFarm() {
        return ClientBook.create()
                .sheet(
                        "Cuts",
                        row(
                                "Holding",
                                "Field",
                                "Cut",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Skel Beck", "Far Ings", 1, 24, "standing fresh", 18, 27, "Old pit"),
                        row("Skel Beck", "Far Ings", 2, 14, "as carted fresh", 17, 29, "Old pit"))
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Block",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Skel Beck", "Long Acre", "grass", 4.2, null, 25, "as carted fresh", 18, 28, "Main"),
                        row("Skel Beck", "Home Field", "grass", 6.1, null, 22, "standing fresh", 18, 28, "Main"),
                        row("Skel Beck", "Kiln Close", "grass", 5.3, null, 6.5, "dry matter", 17, 30, "Main"),
                        row("Skel Beck", "Far Ings", "grass", 3.7, null, 24, "standing fresh", 18, 27, "Old pit"),
                        row("Thorn Garth", "Home Field", "wheat", 17.3, "North", null, null, null, null, null),
                        row("Thorn Garth", "Low Stang", "wheat", 11.5, "North", null, null, null, null, null),
                        row("Thorn Garth", "Beacon", "barley", 8.25, "South", null, null, null, null, null),
                        row("Thorn Garth", "Whin", "barley", 6.75, "South", null, null, null, null, null))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Tank (L)",
                                "Usable tank (L)",
                                "Nozzle spacing (m)",
                                "Output (m3/h)",
                                "Output basis",
                                "Output (t/h)"),
                        row("Mower 3 m", "mower", 3, 10, 80, null, null, null, null, null),
                        row("Rake 6 m", "rake", 6.5, 9, null, null, null, null, null, null),
                        row("Big sprayer", "sprayer", 24, 12, null, 1500, null, 0.5, null, null),
                        row("Old sprayer", "sprayer", 12, 8, 60, 1000, 950, 0.5, null, null),
                        row("Tracked digger", "excavator", null, null, null, null, null, null, 12, "in ground"),
                        row("Hired digger", "excavator", null, null, null, null, null, null, 20, "loose"),
                        row("Scoop", "excavator", null, null, null, null, null, null, null, null, 10))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Dose", "Highest dose", "Pack size"),
                        row("Product A", "L", 1, 1.2, 5),
                        row("Product B", "kg", 0.4, 0.5, 2),
                        row("Product C", "L", 0.8, null, 10))
                .sheet(
                        "Mixes",
                        row("Mix", "Product", "Dose", "Dose unit"),
                        row("Two ways", "Product A", 1.1, "L/ha"),
                        row("Two ways", "Product C", 500, "ml/100 L"))
                .sheet(
                        "Jobs",
                        row(
                                "Holding",
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Mix",
                                "Product",
                                "Dose (L/ha)",
                                "Water volume (L/ha)",
                                "Speed (km/h)"),
                        row(
                                "Skel Beck",
                                "First cut",
                                "grass",
                                "mow",
                                "Mower 3 m; Rake 6 m",
                                null,
                                null,
                                null,
                                null,
                                null),
                        row("Skel Beck", "Second cut", "Long Acre", "mow", "Mower 3 m", null, null, null, null, 8),
                        row("Thorn Garth", "T1", "wheat", "spray", "Big sprayer", null, "Product A", 1.25, 200, null),
                        row("Thorn Garth", "T2", "barley", "spray", "Old sprayer", "Two ways", null, null, 150, 6.5),
                        row("Thorn Garth", "T3", "Beacon", "spray", "Big sprayer", null, "Product B", null, 100, null))
                .sheet(
                        "Clamps",
                        row(
                                "Holding",
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Settled height (m)",
                                "Batter",
                                "Ramps",
                                "Ramp run",
                                "DM target (%)",
                                "Density, fresh (kg/m3)",
                                "Density, dry matter (kg DM/m3)"),
                        row("Skel Beck", "Main", "walled", 40, 12, 3, 2.8, 0.1, 1, 3, null, null, null),
                        row("Skel Beck", "Old pit", "earth pit", 24, 6, 3, null, 1, null, null, 25, null, null),
                        row("Skel Beck", "Heap", "heap", 40, 10, 2, null, 1.5, null, null, 30, null, 200),
                        row("Skel Beck", "As it lies", "measured", 28, 10, 2.7, null, null, null, null, 26, 700, null));
    }

    /**
     * About 200 rows in seven lists, drawn from a seed: hectares on one sheet and acres on another, feet, miles and
     * gallons, per cent as figures and as formats, and among them blanks, text, errors and impossible numbers.
     */
    public static Path random(Path file, long seed, boolean from1904) {
        ClientBook book = random(seed, from1904 ? ClientBook.create().from1904() : ClientBook.create());
        return saved(book, file);
    }

    private static ClientBook random(long seed, ClientBook book) {
        Random random = new Random(seed);
        Cells cells = new Cells(random);
        String[] holdings = {"Skel Beck", "Thorn Garth", "High Dale"};
        String[] crops = {"grass", "wheat", "maize", "barley", "clover"};
        String[] bases = {"as carted fresh", "standing fresh", "dry matter", null, "guessed"};
        List<Object[]> fields = new ArrayList<>();
        List<Object[]> acres = new ArrayList<>();
        fields.add(row(
                "Holding",
                "Field",
                "Crop",
                "Area (ha)",
                "Block",
                "Yield (t/ha)",
                "Yield basis",
                "DM at cutting (%)",
                "DM at ensiling (%)",
                "Clamp"));
        acres.add(row("Farm", "Field name", "Crop", "Area (ac)"));
        for (int i = 0; i < 60; i++) {
            String basis = cells.of(bases);
            Object yield = "dry matter".equals(basis) ? cells.number(3, 15) : cells.number(10, 60);
            fields.add(row(
                    cells.of(holdings),
                    "Field " + (i + 1),
                    cells.of(crops),
                    cells.number(0.5, 30),
                    cells.of("North", "South", null),
                    yield,
                    basis,
                    cells.share(14, 24),
                    cells.share(22, 44),
                    cells.of("Clamp 1", "Clamp 2", "Clamp 3", null, "Nowhere")));
        }
        for (int i = 0; i < 30; i++) {
            acres.add(row(cells.of(holdings), "Parcel " + (i + 1), cells.of(crops), cells.number(1, 70)));
        }
        List<Object[]> machines = new ArrayList<>();
        machines.add(row(
                "Machine",
                "Type",
                "Working width (ft)",
                "Speed (mph)",
                "Field efficiency",
                "Tank (gal)",
                "Usable tank (L)",
                "Nozzle spacing (in)",
                "Output (m3/h)",
                "Output basis"));
        String[] types = {
            "mower", "rake", "sprayer", "sprayer", "drill", "excavator", "tedder", "plough", null, "air-blast sprayer"
        };
        for (int i = 0; i < 25; i++) {
            machines.add(row(
                    "Machine " + (i + 1),
                    cells.of(types),
                    cells.number(6, 100),
                    cells.number(2, 11),
                    cells.percent(0.5, 0.9),
                    cells.number(100, 900),
                    cells.number(400, 3900),
                    cells.of(20, 19.7, null),
                    cells.number(5, 60),
                    cells.of("loose", "in ground", null)));
        }
        List<Object[]> products = new ArrayList<>();
        products.add(row("Product", "Unit", "Dose", "Highest dose", "Pack size"));
        for (int i = 0; i < 15; i++) {
            products.add(row(
                    "Product " + (i + 1),
                    cells.of("L", "kg", "L"),
                    cells.number(0.1, 4),
                    cells.number(0.5, 5),
                    cells.of(1, 5, 10, 20, null)));
        }
        List<Object[]> mixes = new ArrayList<>();
        mixes.add(row("Mix", "Product", "Dose", "Dose unit"));
        for (int i = 0; i < 20; i++) {
            mixes.add(row(
                    "Mix " + (i / 2 + 1),
                    "Product " + (random.nextInt(16) + 1),
                    cells.number(0.1, 3),
                    cells.of("L/ha", "L/ha", "kg/ha", "ml/100 L", "pt/ac", null)));
        }
        List<Object[]> jobs = new ArrayList<>();
        jobs.add(row(
                "Holding",
                "Job",
                "Field",
                "Operation",
                "Machine",
                "Mix",
                "Product",
                "Dose (L/ha)",
                "Water volume (gal/ac)",
                "Speed (mph)"));
        for (int i = 0; i < 40; i++) {
            boolean mix = random.nextBoolean();
            jobs.add(row(
                    cells.of(holdings[0], holdings[1], null),
                    "Job " + (i / 2 + 1),
                    cells.of(
                            "Field " + (random.nextInt(60) + 1),
                            "grass",
                            "North",
                            "Parcel " + (random.nextInt(30) + 1),
                            "all",
                            "Lost"),
                    cells.of("mow", "spray", "drill"),
                    "Machine " + (random.nextInt(27) + 1),
                    mix ? "Mix " + (random.nextInt(11) + 1) : null,
                    mix ? null : "Product " + (random.nextInt(15) + 1),
                    mix ? null : cells.number(0.2, 4),
                    cells.number(5, 40),
                    random.nextBoolean() ? null : cells.number(3, 9)));
        }
        List<Object[]> clamps = new ArrayList<>();
        clamps.add(row(
                "Clamp",
                "Kind",
                "Length (ft)",
                "Floor width (m)",
                "Wall height (m)",
                "Settled height (m)",
                "Batter",
                "Ramps",
                "Ramp run",
                "DM target (%)",
                "Density, fresh (kg/m3)",
                "Density, dry matter (lb DM/ft3)"));
        for (int i = 0; i < 12; i++) {
            clamps.add(row(
                    "Clamp " + (i + 1),
                    cells.of("walled", "earth pit", "heap", "field heap", "measured", null),
                    cells.number(30, 200),
                    cells.number(5, 16),
                    cells.number(1, 4),
                    random.nextBoolean() ? null : cells.number(1, 4),
                    cells.of(0, 0.1, 1, 1.5, "1 in 3", "45°", null),
                    cells.of(0, 1, 2, null),
                    cells.of(2, 3, 4, null),
                    random.nextBoolean() ? null : cells.share(17, 47),
                    random.nextInt(3) > 0 ? null : cells.number(500, 800),
                    random.nextInt(3) > 0 ? null : cells.number(9, 18)));
        }
        List<Object[]> cuts = new ArrayList<>();
        cuts.add(row(
                "Field",
                "Cut",
                "Start",
                "End",
                "Yield (t/ac)",
                "Yield basis",
                "DM at cutting (%)",
                "DM at ensiling (%)",
                "Clamp"));
        for (int i = 0; i < 20; i++) {
            cuts.add(row(
                    "Field " + (random.nextInt(60) + 1),
                    cells.of(1, 2, 3),
                    LocalDate.of(2031, 5, 1 + i),
                    cells.of(LocalDate.of(2031, 5, 3 + i), null),
                    cells.number(4, 16),
                    cells.of(bases),
                    cells.share(15, 22),
                    cells.share(20, 40),
                    cells.of("Clamp 4", "Clamp 5", null)));
        }
        return book.sheet("Fields", fields.toArray(Object[][]::new))
                .sheet("Hill land", acres.toArray(Object[][]::new))
                .sheet("Machines", machines.toArray(Object[][]::new))
                .sheet("Products", products.toArray(Object[][]::new))
                .sheet("Mixes", mixes.toArray(Object[][]::new))
                .sheet("Jobs", jobs.toArray(Object[][]::new))
                .sheet("Clamps", clamps.toArray(Object[][]::new))
                .sheet("Cuts", cuts.toArray(Object[][]::new))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Customary units", "UK", null),
                        row("swell of soil when dug", 30, "%"),
                        row("in-ground density of soil", 1.9, "t/m3"));
    }

    /** Draws cells that are mostly sound. */
    record Cells(Random random) {
        Object number(double low, double high) {
            return spoilt(Math.round((low + (high - low) * random.nextDouble()) * 100) / 100.0);
        }

        /** Per cent as a plain figure. */
        Object share(double low, double high) {
            return spoilt((double) Math.round(low + (high - low) * random.nextDouble()));
        }

        /** Per cent as a format or as a figure. */
        Object percent(double low, double high) {
            double share = Math.round((low + (high - low) * random.nextDouble()) * 100) / 100.0;
            return random.nextInt(3) == 0
                    ? spoilt(Math.rint(share * 100))
                    : random.nextInt(4) == 0 ? null : new Percent(share);
        }

        /** A sound number, or what one finds in its place now and then. */
        Object spoilt(double sound) {
            return switch (random.nextInt(24)) {
                case 0, 1 -> null;
                case 2 -> Double.toString(sound);
                case 3 -> "to be measured";
                case 4 -> ClientBook.ERROR;
                case 5 -> -sound;
                case 6 -> sound * 1e6;
                case 7 -> ClientBook.EMPTY_TEXT;
                case 8 -> new Typed(sound + "+0", sound);
                default -> sound;
            };
        }

        @SafeVarargs
        final <T> T of(T... choices) {
            return choices[random.nextInt(choices.length)];
        }
    }

    /** The names that patterns, numbers, formulas and case could confuse. */
    static final List<String> AWKWARD = List.of(
            "*",
            "?",
            "~",
            "a?c*",
            ">5",
            "=x",
            "007",
            "7",
            "LONG ACRE ",
            "Long\u00a0Acre\u00a0",
            "'=1+1",
            "=HYPERLINK(\"http://a\",\"b\")",
            "O'Brien",
            "\"quoted\"",
            "<b>&amp;",
            "Überfeld ß",
            "地块 7",
            "\uD83D\uDE9C tractor",
            "true",
            "#N/A",
            "1e5",
            "-",
            "A1",
            "Total acre",
            "x".repeat(300));

    /** A book whose every name is awkward, on sheets whose names are. */
    public static Path awkward(Path file) {
        List<Object[]> fields = new ArrayList<>();
        fields.add(row(
                "Holding",
                "Field",
                "Crop",
                "Area (ha)",
                "Block",
                "Yield (t/ha)",
                "Yield basis",
                "DM at cutting (%)",
                "DM at ensiling (%)",
                "Clamp"));
        List<Object[]> machines = new ArrayList<>();
        machines.add(row(
                "Holding", "Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)"));
        List<Object[]> jobs = new ArrayList<>();
        jobs.add(row(
                "Holding", "Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"));
        List<Object[]> clamps = new ArrayList<>();
        clamps.add(row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target (%)"));
        List<Object[]> products = new ArrayList<>();
        products.add(row("Product", "Unit", "Pack size"));
        List<Object> names = new ArrayList<>(AWKWARD);
        names.addAll(List.of(12, 0.1 + 0.2, 1234567890123L, 2.5));
        for (int i = 0; i < names.size(); i++) {
            Object name = names.get(i);
            fields.add(row("*", name, "grass", i + 1, null, 20, "as carted fresh", 18, 28, name));
            machines.add(row("*", name, i % 2 == 0 ? "sprayer" : "mower", 3, 10, 80, 1000));
            jobs.add(row(
                    "*",
                    "Job " + name,
                    name,
                    i % 2 == 0 ? "spray" : "mow",
                    name,
                    i % 2 == 0 ? name : null,
                    i % 2 == 0 ? 1 : null,
                    i % 2 == 0 ? 200 : null));
            clamps.add(row(name, "walled", 10 + i, 5, 2, 28));
            products.add(row(name, "L", 5));
        }
        return saved(
                ClientBook.create()
                        .sheet("O'Brien's fields", fields.toArray(Object[][]::new))
                        .sheet("A1", machines.toArray(Object[][]::new))
                        .sheet("Summary", jobs.toArray(Object[][]::new))
                        .sheet("Größe & <Co>", clamps.toArray(Object[][]::new))
                        .sheet("地块!", products.toArray(Object[][]::new)),
                file);
    }
}
