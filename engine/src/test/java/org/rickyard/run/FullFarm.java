package org.rickyard.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;

/**
 * An invented farm that types a number into every column that any result table links to, so that each can be spoilt: a
 * gang at silage, sprayers of every kind, clamps with tanks and rollers, prices, stocks and herds. It is as small as that
 * allows.
 */
final class FullFarm {
    private FullFarm() {}

    /** The farm with all its inputs sound. */
    static Path write(Path file) {
        return write(file, number -> number);
    }

    /** The same with some inputs spoilt, drawn from a seed: blanks, texts, errors and impossible numbers. */
    static Path spoilt(Path file, long seed) {
        Random random = new Random(seed);
        TestBooks.Cells cells = new TestBooks.Cells(random);
        return write(file, number -> random.nextInt(3) == 0 ? cells.spoilt(number) : number);
    }

    private static Path write(Path file, Function<Double, Object> input) {
        try (ClientBook book = ClientBook.create()) {
            book.sheet("Fields", rows(FIELDS, input));
            book.sheet("Cuts", rows(CUTS, input));
            book.sheet("Machines", rows(MACHINES, input));
            book.sheet("Products", rows(PRODUCTS, input));
            book.sheet("Mixes", rows(MIXES, input));
            book.sheet("Jobs", rows(JOBS, input));
            book.sheet("Clamps", rows(CLAMPS, input));
            book.sheet("Stocks", rows(STOCKS, input));
            book.sheet("Herds", rows(HERDS, input));
            book.sheet("Nozzle test", rows(NOZZLE_TEST, input));
            book.sheet("Assumptions", rows(ASSUMPTIONS, input));
            book.sheet("Hay yard", rows(HAY_YARD, input));
            book.sheet("Spreading", rows(SPREADING, input));
            // Last, so that what a seed spoils of the lists above stays as it was.
            book.sheet("On trial", rows(ON_TRIAL, input));
            book.sheet("What is in it", rows(CONTENTS, input));
            book.sheet("Fed by content", rows(FED, input));
            book.sheet("Rated apart", rows(APART, input));
            book.sheet("Pulled apart", rows(PULLED, input));
            book.sheet("Dug apart", rows(DUG, input));
            book.sheet("Worked apart", rows(WORKED_APART, input));
            book.sheet("Told beside", rows(TOLD_BESIDE, input));
            book.sheet("Prices apart", rows(PRICES_APART, input));
            book.sheet("Stores in dry matter", rows(DRY_STORES, input));
            return book.save(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a list, each told by the headers of the cells it fills; the list has the headers of all its rows. */
    private static Object[][] rows(String text, Function<Double, Object> input) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (String line : text.replaceAll("\\|\\n", "|").split("\n")) {
            Map<String, Object> row = new LinkedHashMap<>();
            for (String cell : line.split("\\|")) {
                String[] parts = cell.split("=");
                row.put(parts[0].strip(), value(parts[1].strip(), input));
            }
            rows.add(row);
        }
        List<String> headers =
                rows.stream().flatMap(row -> row.keySet().stream()).distinct().toList();
        List<Object[]> cells = new ArrayList<>();
        cells.add(headers.toArray());
        rows.forEach(row -> cells.add(headers.stream().map(row::get).toArray()));
        return cells.toArray(Object[][]::new);
    }

    private static Object value(String text, Function<Double, Object> input) {
        if (text.matches("\\d{4}-\\d{2}-\\d{2}")) {
            return LocalDate.parse(text);
        }
        return text.matches("[0-9.]+") ? input.apply(Double.valueOf(text)) : text;
    }

    private static final String FIELDS =
            """
            Holding = Skel Beck | Field = Long Acre | Crop = grass | Area (ha) = 4.2 | Run length (m) = 210 |
                Distance to clamp (km) = 1.2 | Perimeter (m) = 860 | Yield (t/ha) = 25 |
                Yield basis = as carted fresh | DM at cutting (%) = 18 | DM at ensiling (%) = 28 | Clamp = Main
            Holding = Skel Beck | Field = Kiln Close | Crop = grass | Area (ha) = 5.3 | Run length (m) = 180 |
                Distance to clamp (km) = 2.5 | Yield (t/ha) = 6.5 | Yield basis = dry matter |
                DM at cutting (%) = 17 | DM at ensiling (%) = 30 | Clamp = Main
            Holding = Skel Beck | Field = Home Field | Crop = grass | Area (ha) = 3.7 |
                Distance to clamp (km) = 0.4 | Yield (t/ha) = 22 | Yield basis = standing fresh |
                DM at cutting (%) = 18 | DM at ensiling (%) = 27 | Clamp = Old pit
            Holding = Thorn Garth | Field = Low Stang | Country = England | Crop = wheat | Area (ha) = 11.5 | Block = North |
                Run length (m) = 320 | Distance to fill point (km) = 0.8 | Watercourse = stream |
                Distance to watercourse (m) = 15 | Perimeter (m) = 1400 | Row spacing (m) = 0.75
            Holding = Thorn Garth | Field = Home Field | Crop = wheat | Area (ha) = 17.3 | Block = North |
                Run length (m) = 410 | Distance to fill point (km) = 0.3 | Row spacing (m) = 0.75
            Holding = Thorn Garth | Field = Beacon | Country = Scotland | Crop = barley | Area (ha) = 8.25 |
                Distance to watercourse (m) = 60
            Holding = Thorn Garth | Field = Garth | Crop = apples | Area (ha) = 2.4 | Row spacing (m) = 4 |
                Tree height (m) = 3.2 | Tree width (m) = 1.6
            Holding = Thorn Garth | Field = Corner | Crop = grass | Area (ha) = 0.12
            """;

    private static final String CUTS =
            """
            Holding = Skel Beck | Field = Home Field | Cut = 1 | Yield (t/ha) = 24 |
                Yield basis = standing fresh | DM at cutting (%) = 18 | DM at ensiling (%) = 27 |
                Clamp = Old pit
            Holding = Skel Beck | Field = Home Field | Cut = 2 | Yield (t/ha) = 14 |
                Yield basis = as carted fresh | DM at cutting (%) = 17 | DM at ensiling (%) = 29 |
                Clamp = Heap
            """;

    private static final String MACHINES =
            """
            Machine = Mower 3 m | Type = mower | Working width (m) = 3.1 | Overlap (m) = 0.1 |
                Speed (km/h) = 10 | Field efficiency (%) = 80 | Turn time (s) = 15 |
                Other lost time (h/ha) = 0.05 | Mass (t) = 0.9 | Purchase price = 14000 |
                Trade-in value = 4000 | List price = 16000 | Life (yr) = 10 | Hours per year (h) = 60 |
                Hours now (h) = 200 | Own or hired = own | Charge = 42 | Charge unit = ha | Crew = 1
            Machine = Rake 6 m | Type = rake | Working width (m) = 6.5 | Speed (km/h) = 9 | Turn time (s) = 12 |
                Other lost time (h/ha) = 0.04 | Purchase price = 9000 | Trade-in value = 2500 |
                List price = 9900 | Life (yr) = 8 | Hours per year (h) = 50 | Own or hired = own | Charge = 95 |
                Charge unit = h
            Machine = Chopper | Type = forager | Working width (m) = 6.5 | Speed (km/h) = 7 |
                Field efficiency (%) = 75 | Output (t/h) = 70 | Power (kW) = 340 | Power basis = engine |
                Fuel (L/h) = 62 | Crew = 1 | Hours per day (h) = 10 | Own or hired = hired | Charge = 190 |
                Charge unit = h | Charge includes = all but fuel
            Machine = Topper | Type = mower | Rate of work (ha/h) = 2.2 | Fuel (L/ha) = 5
            Machine = Old mower | Type = mower | Working width (m) = 2.1 | Overlap (%) = 5 | Turn time (s) = 14 |
                Timed distance (m) = 100 | Timed seconds = 40
            Machine = Row hoe | Type = cultivator | Rows = 6 | Row width (m) = 0.5 | Speed (km/h) = 6 | Number = 2
            Machine = Four furrows | Type = plough | Rows = 4 | Row width (m) = 0.4 | Speed (km/h) = 6
            Machine = Boom | Type = sprayer | Number of nozzles = 24 | Nozzle spacing (m) = 0.5 |
                Timed distance (m) = 50 | Timed seconds = 20 | Tank (L) = 800 | Total flow (L/min) = 22
            Machine = Test rig | Type = sprayer | Nozzle spacing (m) = 0.5 | Speed (km/h) = 7.8 |
                Nozzle flow (L/min) = 1.3
            Machine = By the gauge | Type = sprayer | Nozzle spacing (m) = 0.5 | Speed (km/h) = 8 |
                Working width (m) = 12 | Nozzle size = 3 | Working pressure (bar) = 2.5
            Machine = Trailer 14 t | Type = trailer | Number = 3 | Payload (t) = 12 | Body volume (m3) = 38 |
                Load density (kg/m3) = 320 | Unladen mass (t) = 5.2 | Road speed laden (km/h) = 22 |
                Road speed empty (km/h) = 28 | Own or hired = hired | Charge = 2.1 | Charge unit = t | Crew = 1
            Machine = Wagon | Type = forage wagon | Working width (m) = 6.5 | Speed (km/h) = 8 |
                Output (t/h) = 35 | Payload (t) = 8 | Body volume (m3) = 30 | Load density (kg/m3) = 280 |
                Unladen mass (t) = 6 | Road speed laden (km/h) = 25 | Road speed empty (km/h) = 32
            Machine = Push-off | Type = buckrake | Payload (t) = 2.5 | Round time (min) = 2.2 | Mass (t) = 9 |
                Power (kW) = 110 | Power basis = engine | Own or hired = hired | Charge = 2.4 | Charge unit = t
            Machine = Baler | Type = baler | Working width (m) = 3 | Speed (km/h) = 8 | Field efficiency (%) = 70 |
                Own or hired = hired | Charge = 6 | Charge unit = bale | Charge includes = everything
            Machine = Packer | Type = clamp roller | Number = 1 | Mass (t) = 14 | Power (kW) = 120 | Power basis = engine |
                Fuel (L/h) = 14 | Crew = 1 | Own or hired = hired | Charge = 55 | Charge unit = h | Hours per day (h) = 9
            Machine = Tractor A | Type = tractor | Mass (t) = 6.4 | Power (kW) = 105 | Power basis = engine | Fuel (L/h) = 15 |
                Purchase price = 70000 | Trade-in value = 25000 | List price = 80000 | Life (yr) = 12 |
                Hours per year (h) = 600 | Hours now (h) = 3000 | Age (yr) = 5 | Own or hired = own
            Machine = Tractor B | Type = tractor | Power (kW) = 90 | Power basis = engine |
                Purchase price = 52000 | Trade-in value = 21000 | List price = 66000 | Life (yr) = 9 |
                Hours per year (h) = 550 | Own or hired = own
            Machine = Big sprayer | Type = sprayer | Working width (m) = 24 | Speed (km/h) = 12 |
                Lowest field speed (km/h) = 8 | Highest field speed (km/h) = 14 | Field efficiency (%) = 65 |
                Turn time (s) = 20 | Tank (L) = 3000 | Usable tank (L) = 2900 | Rinse tank (L) = 300 |
                Residual (L) = 20 | Number of nozzles = 48 | Nozzle spacing (m) = 0.5 | Nozzle size = 4 |
                Lowest pressure (bar) = 1 | Highest pressure (bar) = 5 | Spray quality = medium |
                Fill time (min) = 12 | Priming (L) = 40 | Move time (min) = 10 | Cleaning time (min) = 25 |
                Timed distance (m) = 100 | Timed seconds = 30 | Test area (m2) = 2400 | Test volume (L) = 48 |
                Road speed laden (km/h) = 25 | Road speed empty (km/h) = 30 | Hours per day (h) = 9
            Machine = Old sprayer | Type = sprayer | Working width (m) = 12 | Speed (km/h) = 8 |
                Lowest field speed (km/h) = 5 | Highest field speed (km/h) = 9 | Field efficiency (%) = 60 |
                Turn time (s) = 25 | Tank (L) = 1000 | Usable tank (L) = 950 | Rinse tank (L) = 100 |
                Residual (L) = 12 | Number of nozzles = 24 | Nozzle spacing (m) = 0.5 | Nozzle size = 3 |
                Lowest pressure (bar) = 1.5 | Highest pressure (bar) = 4 | Fill time (min) = 15 |
                Priming (L) = 15 | Move time (min) = 12 | Cleaning time (min) = 30 | Timed distance (m) = 100 |
                Timed seconds = 45 | Test area (m2) = 1200 | Test volume (L) = 20 |
                Road speed laden (km/h) = 20 | Road speed empty (km/h) = 25
            Machine = Tree sprayer | Type = air-blast sprayer | Speed (km/h) = 6 | Tank (L) = 1500 |
                Number of nozzles = 16 | Working width (m) = 4
            Machine = Back pack | Type = knapsack | Tank (L) = 16 | Usable tank (L) = 15
            Machine = Wick | Type = wiper | Tank (L) = 60 | Usable tank (L) = 55
            Machine = Tracked digger | Type = excavator | Output (m3/h) = 12 | Output basis = in ground |
                Hours per day (h) = 8
            Machine = Scoop | Type = excavator | Output (t/h) = 10 | Hours per day (h) = 8
            """;

    /** More machines, on a sheet that comes last, so that the numbers before it are drawn as they were. */
    private static final String HAY_YARD =
            """
            Machine = Own baler | Type = baler | Working width (m) = 3 | Speed (km/h) = 8 | Field efficiency (%) = 70 |
                Purchase price = 30000 | Trade-in value = 9000 | List price = 34000 | Life (yr) = 8 |
                Hours per year (h) = 120 | Own or hired = own | Charge = 7 | Charge unit = bale
            Machine = Second baler | Type = baler | Working width (m) = 3 | Speed (km/h) = 8 |
                Field efficiency (%) = 70 | Purchase price = 24000 | Trade-in value = 6000 | List price = 28000 |
                Life (yr) = 9 | Hours per year (h) = 90 | Own or hired = own | Charge = 4 | Charge unit = t
            Machine = Spinner | Type = fertiliser spreader | Working width (m) = 24 | Speed (km/h) = 12 |
                Field efficiency (%) = 70 | Payload (t) = 2 | Tank (L) = 1500 | Usable tank (L) = 1400
            """;

    /** More jobs, of a product that is sprayed as well and of one that is not. */
    private static final String SPREADING =
            """
            Holding = Skel Beck | Job = Granules | Field = grass | Operation = spread | Machine = Spinner |
                Product = Product A | Dose = 0.9 | Dose unit = L/ha
            Holding = Thorn Garth | Job = Top dressing | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Nitrogen | Dose = 180 | Dose unit = kg/ha
            """;

    private static final String ON_TRIAL =
            """
            Machine = Plot boom | Type = sprayer | Working width (m) = 6 | Speed (km/h) = 6 | Tank (L) = 500 |
                Usable tank (L) = 480 | Total flow (L/min) = 12
            """;

    private static final String CONTENTS =
            """
            Product = Granular N | Unit = kg | Nitrogen (%) = 34.5 | Pack size = 600 | Highest dose (kg/ha) = 500
            Product = Liquid N | Unit = L | Nitrogen (%) = 28 | Density (kg/L) = 1.28
            Product = Compound | Unit = kg | Phosphate (%) = 20 | Potash (%) = 30
            Product = Weedout | Unit = L | Active content (g/L) = 360 | Pack size = 5
            Product = Dust | Unit = kg | Active content (g/L) = 5 %
            """;

    private static final String FED =
            """
            Holding = Thorn Garth | Job = By nitrogen | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Granular N | Dose = 150 | Dose unit = kg N/ha
            Holding = Thorn Garth | Job = By phosphate | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Compound | Dose = 60 | Dose unit = kg P2O5/ha
            Holding = Thorn Garth | Job = By potash | Field = Low Stang | Operation = spread | Machine = Spinner |
                Product = Compound | Dose = 100 | Dose unit = lb K2O/ac
            Holding = Thorn Garth | Job = By dust | Field = Low Stang | Operation = spread | Machine = Spinner |
                Product = Dust | Dose = 11 | Dose unit = kg a.i./ha
            Holding = Thorn Garth | Job = Poured | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Weedout | Dose = 540 | Dose unit = g a.i./ha
            Holding = Thorn Garth | Job = Liquid feed | Field = Beacon | Operation = spray | Machine = Boom |
                Product = Liquid N | Dose = 60 | Dose unit = kg N/ha | Water volume (L/ha) = 200
            Holding = Thorn Garth | Job = Weeds by active | Field = Beacon | Operation = spray | Machine = Boom |
                Product = Weedout | Dose = 720 | Dose unit = g a.i./ha | Water volume (L/ha) = 150
            """;

    private static final String TOLD_BESIDE =
            """
            Holding = Thorn Garth | Job = Own nitrogen | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Bagged N | Dose = 90 | Dose unit = kg N/ha | Nitrogen content (%) = 27
            Holding = Thorn Garth | Job = Own phosphate | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Bagged P | Dose = 40 | Dose unit = kg P2O5/ha | Phosphate content (%) = 46
            Holding = Thorn Garth | Job = Own potash | Field = Beacon | Operation = spread | Machine = Spinner |
                Product = Bagged K | Dose = 60 | Dose unit = kg K2O/ha | Potash content (%) = 60
            Holding = Thorn Garth | Job = Own active | Field = Low Stang | Operation = spray | Machine = Boom |
                Product = Strong mix | Dose = 500 | Dose unit = g a.i./ha | Active content (g/L) = 250 |
                Water volume (L/ha) = 180
            """;

    /** Of machines that stand in other lists with their types. */
    private static final String PRICES_APART =
            """
            Machine = Muck cart | Purchase price = 21000 | Trade-in value = 6000 | Life (yr) = 10 |
                Hours per year (h) = 150 | Working width (m) = 8
            Machine = Own ripper | Purchase price = 7000 | Trade-in value = 1500 | Life (yr) = 12 |
                Hours per year (h) = 80 | Draught (kN/m) = 7
            """;

    private static final String APART =
            """
            Machine = Own plough | Type = plough | Working width (m) = 1.6 | Speed (km/h) = 7 |
                Field efficiency (%) = 80 | Draught (kN) = 12 | Purchase price = 9000 | Trade-in value = 2500 |
                Life (yr) = 10 | Hours per year (h) = 200 | Interest rate (%) = 6 | Insurance and housing (%) = 1
            Machine = Muck cart | Type = muck spreader | Working width (m) = 8 | Load distance (m) = 200 | Payload (t) = 8
            Machine = Slurry cart | Type = slurry tanker | Working width (m) = 10 | Load distance (m) = 400 |
                Tank (L) = 10000 | Usable tank (L) = 9500
            Machine = Yard loader | Type = loader | Number = 2 | Payload (t) = 1.5 | Round time (min) = 3
            Machine = Bale loader | Type = loader | Number = 2 | Output (t/h) = 30 | Payload (t) = 1 | Round time (min) = 4
            Machine = Yard shovel | Type = loader | Number = 2 | Body volume (m3) = 1.2 | Round time (min) = 0.5
            """;

    private static final String PULLED =
            """
            Machine = Own ripper | Type = subsoiler | Working width (m) = 3 | Speed (km/h) = 6 |
                Field efficiency (%) = 80 | Draught (kN/m) = 7
            """;

    private static final String DUG =
            """
            Holding = Skel Beck | Clamp = Trench | Kind = earth pit | Length (m) = 24 | Floor width (m) = 6 |
                Top width (m) = 12 | Wall height (m) = 3 | DM target (%) = 25 | Swell (%) = 35 | Country = other
            """;

    private static final String WORKED_APART =
            """
            Holding = Skel Beck | Job = Own ploughing | Field = Kiln Close | Operation = plough | Machine = Own plough |
                Tractor = Tractor A
            Holding = Skel Beck | Job = Own ripping | Field = Kiln Close | Operation = subsoil | Machine = Own ripper |
                Tractor = Tractor A
            """;

    private static final String PRODUCTS =
            """
            Product = Product A | Unit = L | Dose = 1 | Highest dose = 1.2 | Highest total dose = 3 |
                Most applications = 2 | Least interval (d) = 14 | Harvest interval (d) = 35 |
                Lowest water volume (L/ha) = 100 | Highest water volume (L/ha) = 400 | Spray quality = medium |
                Pack size = 5 | Stock = 12 | Price = 18 | Density (kg/L) = 1.1 |
                Nitrogen (%) = 8
            Product = Product B | Unit = L | Dose = 0.5 | Highest dose = 0.8 | Highest total dose = 1.6 |
                Most applications = 3 | Least interval (d) = 10 | Harvest interval (d) = 28 |
                Lowest water volume (L/ha) = 80 | Highest water volume (L/ha) = 300 | Pack size = 10 |
                Stock = 4 | Price per pack = 95
            Product = Product C | Unit = ml/100 L | Dose = 100 | Highest dose = 250 | Pack size = 1
            """;

    private static final String MIXES =
            """
            Mix = Two ways | Product = Product A | Dose = 0.9 | Dose unit = L/ha | Order in tank = 2
            Mix = Two ways | Product = Product B | Dose = 400 | Dose unit = ml/100 L | Order in tank = 1
            Mix = Two ways | Product = Product C | Dose = 150 | Dose unit = ml/100 L
            Mix = Wipe | Product = Product B | Dose = 30 | Dose unit = %
            """;

    private static final String JOBS =
            """
            Holding = Skel Beck | Job = Mow | Field = grass | Operation = mow | Machine = Mower 3 m |
                Tractor = Tractor A | Earliest = 2031-05-01 | Latest = 2031-05-10 | Workable days (%) = 60 |
                Hours per day (h) = 9
            Holding = Skel Beck | Job = First cut | Field = grass | Operation = silage |
                Machine = Rake 6 m; Chopper; Trailer 14 t x 3; Push-off; Packer | Tractor = Tractor B |
                Earliest = 2031-05-02 | Latest = 2031-05-13 | Workable days (%) = 60 | Hours per day (h) = 10
            Holding = Skel Beck | Job = Second cut | Field = Home Field | Operation = silage | Machine = Wagon |
                Tractor = Tractor A
            Holding = Thorn Garth | Job = T1 | Field = wheat | Operation = spray | Machine = Big sprayer |
                Tractor = Tractor B | Mix = Two ways | Water volume (L/ha) = 200 | Earliest = 2031-05-04 |
                Latest = 2031-05-09 | Last harvest date = 2031-08-04 | Workable days (%) = 50 |
                Hours per day (h) = 8 | Spray density (kg/L) = 1.1 | Band width (m) = 0.25 |
                Wind speed (km/h) = 9 | Wind height (m) = 2 | Air temperature (°C) = 18 | Humidity (%) = 65
            Holding = Thorn Garth | Job = T2 | Field = Beacon | Operation = spray | Machine = Old sprayer |
                Tractor = Tractor B | Product = Product A | Dose (L/ha) = 1.1 | Water volume (L/ha) = 150 |
                Speed (km/h) = 6.5 | Earliest = 2031-05-11 | Latest = 2031-05-17 |
                Last harvest date = 2031-07-30 | Workable days (%) = 55 | Wind speed (km/h) = 6 |
                Wind height (m) = 2 | Air temperature (°C) = 21 | Humidity (%) = 50
            Holding = Thorn Garth | Job = Trees | Field = Garth | Operation = spray | Machine = Tree sprayer |
                Product = Product A | Dose (L/ha) = 0.8 | Water volume (L/ha) = 500
            Holding = Thorn Garth | Job = Corners | Field = Corner | Operation = spray | Machine = Back pack |
                Product = Product B | Water volume (L/ha) = 200
            Holding = Skel Beck | Job = Hay | Field = grass | Operation = bale | Machine = Baler | Tractor = Tractor B
            Holding = Skel Beck | Job = More hay | Field = Long Acre | Operation = bale | Machine = Baler |
                Tractor = Tractor A
            Holding = Skel Beck | Job = Late hay | Field = Long Acre | Operation = bale | Machine = Own baler |
                Tractor = Tractor A
            Holding = Skel Beck | Job = Last hay | Field = Long Acre | Operation = bale | Machine = Second baler |
                Tractor = Tractor A
            Holding = Skel Beck | Job = Topping | Field = Kiln Close | Operation = mow | Machine = Topper
            Holding = Skel Beck | Job = Edges | Field = Kiln Close | Operation = mow | Machine = Old mower
            Holding = Thorn Garth | Job = Hoeing | Field = Beacon | Operation = cultivate | Machine = Row hoe |
                Days available (d) = 4 | Hours per day (h) = 8
            Holding = Skel Beck | Job = Rushes | Field = Kiln Close | Operation = wipe | Machine = Wick |
                Mix = Wipe
            Holding = Thorn Garth | Job = Nettles | Field = Corner | Operation = spray | Machine = Back pack |
                Product = Product A | Water volume (L/ha) = 300 | Days available (d) = 3 | Hours per day (h) = 6
            Holding = Thorn Garth | Job = Trees again | Field = Garth | Operation = spray |
                Machine = Tree sprayer | Product = Product B | Water volume (L/ha) = 400
            Holding = Skel Beck | Job = Weeds | Field = Long Acre | Operation = wipe | Machine = Wick |
                Mix = Wipe
            """;

    private static final String CLAMPS =
            """
            Holding = Skel Beck | Clamp = Main | Kind = walled | Length (m) = 40 | Floor width (m) = 12 |
                Wall height (m) = 3 | Settled height (m) = 2.8 | Batter = 0.1 | Ramps = 1 | Ramp run = 3 |
                Crown (m) = 0.4 | Filled height (m) = 3.3 | DM target (%) = 28 | Roller mass (t) = 14 |
                Layer (cm) = 15 | Delivery (t/h) = 60 | Effluent tank = Low tank | Tank holds (m3) = 60 |
                Distance to watercourse (m) = 40 | Year built or enlarged = 2008 | Country = England |
                Feed-out rate (m/week) = 2 | Additive (L/t) = 2
            Holding = Skel Beck | Clamp = Old pit | Kind = earth pit | Length (m) = 24 | Floor width (m) = 6 |
                Wall height (m) = 3 | Batter = 1 | DM target (%) = 25 | Effluent tank = 20 | Country = other |
                Roller mass (t) = 9 | Delivery (t/h) = 30 | Distance to watercourse (m) = 70 |
                Feed-out rate (m/week) = 1.5 | Soil = clay | Additive (L/t) = 3
            Holding = Skel Beck | Clamp = Heap | Kind = heap | Length (m) = 40 | Floor width (m) = 10 |
                Wall height (m) = 2 | Batter = 1.5 | DM target (%) = 30 | Density, dry matter (kg DM/m3) = 200
            Holding = Skel Beck | Clamp = As it lies | Kind = measured | Length (m) = 28 |
                Floor width (m) = 10 | Wall height (m) = 2.7 | DM target (%) = 26 | Density, fresh (kg/m3) = 700
            Holding = Skel Beck | Clamp = Taped | Kind = measured | Length (m) = 20 |
                Floor width (m) = 8 | Wall height (m) = 2.1 | DM target (%) = 24 | Density (m3/t) = 1.39
            """;

    private static final String STOCKS =
            """
            Holding = Skel Beck | Store = Main | Kind = clamp | Amount (t) = 300 | DM (%) = 27 |
                Already fed (t) = 40
            Holding = Skel Beck | Store = Round bales | Kind = bales | Count = 120 | Weight each (kg) = 600 |
                DM (%) = 45
            """;

    private static final String DRY_STORES =
            """
            Holding = Thorn Garth | Store = Hay | Kind = bales | Count = 60 | Weight each (kg DM) = 210 | DM (%) = 86
            Holding = Thorn Garth | Store = Old stack | Kind = bales | Amount (t DM) = 12 | DM (%) = 84
            """;

    private static final String HERDS =
            """
            Holding = Skel Beck | Group = Milkers | Head = 90 | Intake (kg DM/d) = 11 | Days = 180 |
                Clamp = Main
            Holding = Skel Beck | Group = Heifers | Head = 40 | Intake (t/month) = 0.7 | DM (%) = 28 |
                Start = 2031-11-01 | End = 2032-04-15 | Clamp = Old pit
            Holding = Thorn Garth | Group = Stores | Head = 20 | Intake (kg DM/d) = 6 | Days = 90
            Holding = Skel Beck | Group = Calves | Head = 15 | Intake (t/month) = 0.5 | DM (%) = 30 | Days = 120
            """;

    private static final String NOZZLE_TEST =
            """
            Sprayer = Big sprayer | Nozzle = 1 | Flow (L/min) = 1.58 | Pressure (bar) = 3
            Sprayer = Big sprayer | Nozzle = 2 | Flow (L/min) = 1.61 | Pressure (bar) = 3
            Sprayer = Big sprayer | Nozzle = 3 | Flow (L/min) = 1.6 | Pressure (bar) = 3
            Sprayer = Big sprayer | Nozzle = 4 | Flow (L/min) = 1.82 | Pressure (bar) = 3
            Sprayer = Old sprayer | Nozzle = 1 | Flow (L/min) = 1.25 | Pressure (bar) = 3 |
                New flow (L/min) = 1.18
            """;

    private static final String ASSUMPTIONS =
            """
            Item = wage | Value = 15 | Unit = money/h
            Item = fuel price | Value = 0.9 | Unit = money/L
            Item = interest rate | Value = 6 | Unit = %
            Item = insurance and housing | Value = 1.5 | Unit = %
            Item = use the packing model (1 yes, 0 no) | Value = 1
            """;
}
