package org.rickyard.templates;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.Products;
import org.rickyard.lists.Stocks;

/**
 * What a template says about a list beyond its declaration: what a row is, and an example of each column. The farms,
 * products and prices are invented.
 */
final class ListGuide {
    private static final List<ListGuide> ALL = List.of(
            new ListGuide(
                    Fields.LIST,
                    "one row for each field",
                    """
                    Holding: Thrushmere
                    Field: Long Acre
                    Crop: Grass
                    Area: 5.85
                    Block: Home
                    Run length: 420
                    Distance to clamp: 0.6
                    Distance to fill point: 0.5
                    Watercourse: stream
                    Distance to watercourse: 6
                    Overhead lines: no
                    Slope: 4
                    Perimeter: 1100
                    Yield: 22
                    Yield basis: standing fresh
                    DM at cutting: 18
                    DM at ensiling: 28
                    Clamp: Main clamp
                    Row spacing: 4
                    Tree height: 3
                    Tree width: 2
                    Country: England
                    Notes: gate in the north corner
                    Tree spacing: 1.5
                    Number of trees: 1200"""),
            new ListGuide(
                    Cuts.LIST,
                    "one row for each cut of a field or crop; leave the list empty if every field is cut once",
                    """
                    Holding: Thrushmere
                    Field: Long Acre
                    Crop: or Grass
                    Cut: 1
                    Start: 2026-05-18
                    End: 2026-05-22
                    Yield: 22
                    Yield basis: standing fresh
                    DM at cutting: 18
                    DM at ensiling: 28
                    Clamp: Main clamp"""),
            new ListGuide(
                    Machines.LIST,
                    "one row for each machine; fill in only what its type needs",
                    """
                    Holding: Thrushmere
                    Machine: Mower 3.2 m
                    Type: mower
                    Number: 1
                    Working width: 3.2
                    Overlap: 0.2
                    Speed: 12
                    Lowest field speed: 8
                    Highest field speed: 15
                    Field efficiency: 80
                    Turn time: 20
                    Other lost time: 0.05
                    Output (t/h): 60
                    Output (m3/h): 25
                    Output basis: in ground
                    Payload: 12
                    Body volume: 40
                    Load density: 350
                    Round time: 3
                    Mass: 12.5
                    Unladen mass: 5.2
                    Power: 95
                    Power basis: engine
                    Fuel: 14
                    Crew: 1
                    Tank: 3000
                    Usable tank: 2900
                    Rinse tank: 300
                    Residual: 25
                    Number of nozzles: 48
                    Nozzle spacing: 0.5
                    Nozzle size: 04
                    Lowest pressure: 1.5
                    Highest pressure: 5
                    Spray quality: medium
                    Last tested: 2025-03-12
                    Fill time: 15
                    Priming: 30
                    Move time: 15
                    Cleaning time: 30
                    Timed distance: 100
                    Timed seconds: 36
                    Test area: 120
                    Test volume: 2.4
                    Road speed laden: 25
                    Road speed empty: 30
                    Hours per day: 9
                    Own or hired: own
                    Charge: 45
                    Charge unit: h
                    Charge includes: everything
                    List price: 21000
                    Purchase price: 18500
                    Trade-in value: 6000
                    Age: 4
                    Hours now: 620
                    Life: 10
                    Hours per year: 150
                    Rate of work: 3.1
                    Rows: 8
                    Row width: 0.5
                    Nozzle flow: 1.2
                    Total flow: 28.8
                    Working pressure: 3
                    Test weight: 12
                    Pump flow: 250
                    Wheel turns loaded: 10
                    Wheel turns unloaded: 9
                    Interest rate: 6
                    Insurance and housing: 1
                    Load distance: 250
                    Draught: 12
                    Wheel circumference: 2.1
                    Wheel turns: 12
                    Run catch: 0.75"""),
            new ListGuide(
                    Products.LIST,
                    "one row for each product, its limits copied from the label you hold",
                    """
                    Product: Herbicide A
                    Unit: L
                    Dose: 2
                    Highest dose: 2
                    Highest total dose: 2
                    Most applications: 1
                    Least interval: 21
                    Harvest interval: 21
                    Latest stage: GS 39
                    Lowest water volume: 200
                    Highest water volume: 400
                    Spray quality: coarse
                    Buffer category: as the label says
                    Authorisation no.: as the label says
                    Density: 1.05
                    Pack size: 5
                    Stock: 20
                    Price: 14.5
                    Nitrogen: 0
                    Active content: 360
                    Phosphate: 0
                    Potash: 0"""),
            new ListGuide(
                    Mixes.LIST,
                    "one row for each product in a tank mix",
                    """
                    Mix: Grass docks
                    Product: Herbicide A
                    Dose: 2
                    Dose unit: L/ha
                    Order in tank: 1"""),
            new ListGuide(
                    Jobs.LIST,
                    "one row for each job; several machines that work together stand in one cell",
                    """
                    Holding: Thrushmere
                    Job: Lift 1
                    Field: Grass
                    Operation: chopping
                    Machine: Forager; Trailer 12 t x 3; Buckrake
                    Tractor: Tractor 120 kW
                    Mix: Grass docks
                    Product: or Herbicide A
                    Dose: 2
                    Dose unit: L/ha
                    Water volume: 200
                    Speed: 10
                    Cut: 1
                    Block: Home
                    After: Rake 1
                    Lag: 4
                    Earliest: 2026-05-18
                    Latest: 2026-05-29
                    Growth stage: GS 31
                    Last harvest date: 2026-08-10
                    Workable days: 55
                    Hours per day: 9
                    Spray density: 1.28
                    Band width: 0.25
                    Wind speed: 9
                    Wind height: 2
                    Air temperature: 16
                    Humidity: 65
                    Days available: 6
                    Active content: 360
                    Nitrogen content: 34.5
                    Phosphate content: 46
                    Potash content: 60"""),
            new ListGuide(
                    Clamps.LIST,
                    "one row for each clamp, pit or heap",
                    """
                    Holding: Thrushmere
                    Clamp: Main clamp
                    Kind: walled
                    Length: 38
                    Floor width: 11
                    Wall height: 2.4
                    Settled height: 2.3
                    Batter: 1 in 5
                    Ramps: 1
                    Ramp run: 4
                    Crown: 0.3
                    Density, fresh: 700
                    Density, dry matter: 200
                    DM target: 28
                    Roller mass: 12
                    Layer: 15
                    Delivery: 45
                    Effluent tank: 24
                    Distance to watercourse: 45
                    Year built or enlarged: 2004
                    Country: England
                    Feed-out rate: 1.6
                    Feeding season: winter
                    Crown shape: parabolic
                    Filled height: 2.6
                    Overhead lines: no
                    Tank holds: 24
                    Soil: common earth
                    Additive: 2
                    Swell: 25
                    Top width: 12"""),
            new ListGuide(
                    Stocks.LIST,
                    "one row for each store of feed",
                    """
                    Holding: Thrushmere
                    Store: Round bales
                    Kind: bales
                    Amount: 45
                    Count: or 80
                    Weight each: 550
                    DM: 35
                    Date: 2026-04-30
                    Already fed: 6"""),
            new ListGuide(
                    Herds.LIST,
                    "one row for each group of stock fed alike",
                    """
                    Holding: Thrushmere
                    Group: Dairy cows
                    Head: 60
                    Intake: 10
                    DM: 28
                    Days: 180
                    Start: 2026-10-15
                    End: 2027-04-12
                    Clamp: Main clamp"""),
            new ListGuide(
                    NozzleTest.LIST,
                    "one row for each nozzle of a catch test, made with clean water",
                    """
                    Sprayer: Sprayer 12 m
                    Nozzle: 1
                    Flow: 1.22
                    Pressure: 3
                    New flow: 1.2
                    Holding: Thrushmere"""),
            new ListGuide(
                    Assumptions.LIST,
                    "overrules a constant or default by its name on Basis; may stay empty",
                    """
                    Item: Customary units
                    Value: UK
                    Unit: L/ha"""),
            new ListGuide(
                    Layout.LIST,
                    "settles which heading means which column; may stay empty",
                    """
                    List: Jobs
                    Column: Water volume
                    Header in this workbook: Rate
                    Unit: L/ha"""));

    private final ListSpec list;
    private final String purpose;
    private final Map<String, String> examples = new LinkedHashMap<>();

    private ListGuide(ListSpec list, String purpose, String examples) {
        this.list = list;
        this.purpose = purpose;
        for (String line : examples.split("\n")) {
            int colon = line.indexOf(": ");
            this.examples.put(line.substring(0, colon), line.substring(colon + 2));
        }
    }

    /** The guide to a list. */
    static Optional<ListGuide> to(ListSpec list) {
        return ALL.stream().filter(guide -> guide.list == list).findFirst();
    }

    /** What a row of the list is. */
    String purpose() {
        return purpose;
    }

    /** An example for a column: by its heading where two columns share the name, else by its name. */
    Optional<String> example(TemplateColumn column) {
        return Optional.ofNullable(examples.getOrDefault(
                column.heading(), examples.get(column.spec().name())));
    }

    /** The columns that have an example, as written here. */
    List<String> columns() {
        return List.copyOf(examples.keySet());
    }
}
