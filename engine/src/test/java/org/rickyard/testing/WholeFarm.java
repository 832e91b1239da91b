package org.rickyard.testing;

import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * An invented farm that fills every sheet of work rates, season and cost: a silage gang with its own and a hired
 * forager, muck, ploughing, drilling and baling by a contractor. It is measured in metric or in imperial units.
 */
public final class WholeFarm {
    private final boolean imperial;

    private WholeFarm(boolean imperial) {
        this.imperial = imperial;
    }

    /** The farm in hectares, metres, tonnes and kilowatts. */
    public static SeasonBook metric() {
        return new WholeFarm(false).book();
    }

    /** The same farm in acres, feet, miles, long tons and horsepower. */
    public static SeasonBook imperial() {
        return new WholeFarm(true).book();
    }

    private double in(Unit metric, Unit customary, double value) {
        return imperial ? metric.convert(value, customary) : value;
    }

    private double area(double hectares) {
        return in(Units.HA, Units.AC, hectares);
    }

    private double metres(double metres) {
        return in(Units.M, Units.FT, metres);
    }

    private double speed(double kilometresPerHour) {
        return in(Units.KM_PER_H, Units.MPH, kilometresPerHour);
    }

    private double tonnes(double tonnes) {
        return in(Units.T, Units.LONG_TON, tonnes);
    }

    private double power(double kilowatts) {
        return in(Units.KW, Units.HP, kilowatts);
    }

    private String header(String metric, String customary) {
        return imperial ? customary : metric;
    }

    private SeasonBook book() {
        return new SeasonBook()
                .sheet("Fields", fields())
                .sheet("Machines", machines())
                .sheet("Clamps", clamps())
                .sheet("Jobs", jobs())
                .sheet("Assumptions", assumptions());
    }

    private Object[][] fields() {
        return new Object[][] {
            row(
                    "Holding",
                    "Field",
                    "Crop",
                    header("Area (ha)", "Area (ac)"),
                    header("Run length (m)", "Run length (ft)"),
                    header("Distance to clamp (km)", "Distance to clamp (miles)"),
                    header("Yield (t/ha)", "Yield (long tons/ac)"),
                    "Yield basis",
                    "DM at cutting (%)",
                    "DM at ensiling (%)",
                    "Clamp",
                    "Overhead lines",
                    header("Perimeter (m)", "Perimeter (ft)")),
            field("Moor End", "Long Acre", "grass", 7.3, 410, 2.1, 20, "as carted fresh", null, null, "yes", 1200),
            field("Moor End", "Bank Piece", "grass", 11.2, 280, 3.4, 26, "standing fresh", 18, 28, "no", 1460),
            field("Moor End", "Paddock", "grass", 0.8, 95, 0.4, 5, "dry matter", 18, 28, "no", 420),
            field("Moor End", "Top Stubble", "stubble", 14.6, 390, null, null, null, null, null, "no", null),
            field("Hill Top", "Lower Ley", "ley", 5.1, 230, null, 14, "as carted fresh", null, 40, "no", null),
        };
    }

    private Object[] field(
            String holding,
            String name,
            String crop,
            double area,
            double run,
            Double distance,
            Integer yield,
            String basis,
            Integer cutting,
            Integer ensiling,
            String lines,
            Integer perimeter) {
        boolean dry = "dry matter".equals(basis);
        return row(
                holding,
                name,
                crop,
                area(area),
                metres(run),
                distance == null ? null : in(Units.KM, Units.MILE, distance),
                yield == null ? null : yieldOf(yield, dry),
                basis,
                cutting,
                ensiling,
                distance == null ? null : "Big",
                lines,
                perimeter == null ? null : metres(perimeter));
    }

    private double yieldOf(double tonnes, boolean dry) {
        Unit customary = Units.LONG_TON.over(Units.AC);
        return in(Units.T_PER_HA, customary, tonnes);
    }

    private Object[][] machines() {
        return new Object[][] {
            row(
                    "Machine",
                    "Type",
                    header("Working width (m)", "Working width (ft)"),
                    header("Speed (km/h)", "Speed (mph)"),
                    "Field efficiency (%)",
                    "Turn time (s)",
                    header("Overlap (m)", "Overlap (ft)"),
                    header("Output (t/h)", "Output (long tons/h)"),
                    header("Payload (t)", "Payload (long tons)"),
                    header("Body volume (m3)", "Body volume (ft3)"),
                    header("Road speed laden (km/h)", "Road speed laden (mph)"),
                    header("Road speed empty (km/h)", "Road speed empty (mph)"),
                    header("Mass (t)", "Mass (long tons)"),
                    header("Unladen mass (t)", "Unladen mass (long tons)"),
                    "Round time (min)",
                    header("Power (kW)", "Power (hp)"),
                    "Power basis",
                    header("Fuel (L/h)", "Fuel (gal UK/h)"),
                    "Crew",
                    "Hours per day",
                    "Own or hired",
                    header("Charge", "Charge"),
                    "Charge unit",
                    "Charge includes",
                    "List price",
                    "Purchase price",
                    "Trade-in value",
                    "Hours now",
                    "Life (yr)",
                    "Hours per year (h)",
                    "Age (yr)"),
            implement(
                    "Mower 3 m", "mower", 3, 12, null, 18.0, 0.2, 0.9, "own", 34.0, "ha", 14000, 12500, 3000, 300, 120),
            implement("Tedder", "tedder", 7.6, 11, 80, null, null, 1.1, "own", null, null, 11000, 9500, 2500, 0, 90),
            implement("Rake", "rake", 6.8, 10, 78, null, null, 1.2, "own", null, null, 12000, 10000, 2000, 150, 90),
            row(
                    "Forager",
                    "forager",
                    metres(6.8),
                    speed(7.5),
                    70,
                    null,
                    null,
                    tonnes(55),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    power(330),
                    "engine",
                    null,
                    1,
                    11,
                    "hired",
                    190.0,
                    "h",
                    "all but fuel"),
            row(
                    "Trailer 10 t",
                    "trailer",
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    tonnes(10),
                    in(Units.M3, Units.FT3, 28),
                    speed(22),
                    speed(28),
                    tonnes(3.8),
                    tonnes(3.8)),
            row(
                    "Trailer 8 t",
                    "trailer",
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    tonnes(8),
                    null,
                    speed(20),
                    speed(25),
                    tonnes(3.1),
                    tonnes(3.1)),
            row(
                    "Buckrake",
                    "buckrake",
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    tonnes(2.2),
                    null,
                    null,
                    null,
                    null,
                    null,
                    2.4),
            row("Roller", "clamp roller", null, null, null, null, null, null, null, null, null, null, tonnes(15)),
            implement(
                    "Plough", "plough", 1.75, 6.5, 82, null, null, 1.3, "own", null, null, 21000, 19000, 5000, 0, 150),
            implement("Drill", "drill", 3, 9, null, null, null, 1.6, "own", null, null, 26000, 24000, 8000, 0, 80),
            row(
                    "Baler",
                    "baler",
                    metres(5.5),
                    speed(9),
                    null,
                    null,
                    null,
                    tonnes(16),
                    null,
                    null,
                    null,
                    null,
                    tonnes(3),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    "hired",
                    11.0,
                    "t",
                    "everything"),
            tractor("Red 90", 66, "PTO", 52000, 46000, 15000, 2400),
            tractor("Blue 140", 104, "engine", 98000, 90000, 30000, 1200),
            tractor("Green 110", 82, "engine", 76000, 69000, 22000, 900),
        };
    }

    private Object[] implement(
            String name,
            String type,
            double width,
            double speed,
            Integer efficiency,
            Double turn,
            Double overlap,
            double mass,
            String own,
            Double charge,
            String unit,
            int list,
            int paid,
            int left,
            int now,
            int yearly) {
        Object due = charge == null ? null : imperial ? Units.AC.convert(charge, Units.HA) : charge;
        return row(
                name,
                type,
                metres(width),
                speed(speed),
                efficiency,
                turn,
                overlap == null ? null : metres(overlap),
                null,
                null,
                null,
                null,
                null,
                tonnes(mass),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                own,
                due,
                imperial && unit != null ? "ac" : unit,
                charge == null ? null : "everything",
                list,
                paid,
                left,
                now,
                10,
                yearly);
    }

    private Object[] tractor(String name, double power, String basis, int list, int paid, int left, int now) {
        return row(
                name,
                "tractor",
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
                power(power),
                basis,
                null,
                null,
                10,
                "own",
                null,
                null,
                null,
                list,
                paid,
                left,
                now,
                12,
                600,
                now / 600);
    }

    private Object[][] clamps() {
        return new Object[][] {
            row(
                    "Holding",
                    "Clamp",
                    "Kind",
                    header("Length (m)", "Length (ft)"),
                    header("Floor width (m)", "Floor width (ft)"),
                    header("Wall height (m)", "Wall height (ft)"),
                    "Country"),
            row("Moor End", "Big", "walled", metres(42), metres(11), metres(2.6), "England"),
        };
    }

    private Object[][] jobs() {
        LocalDate may = LocalDate.of(2026, 5, 18);
        return new Object[][] {
            row(
                    "Holding",
                    "Job",
                    "Field",
                    "Operation",
                    "Machine",
                    "Tractor",
                    "After",
                    "Lag (h)",
                    "Earliest",
                    "Latest",
                    "Workable days (%)",
                    "Hours per day"),
            row(
                    "Moor End",
                    "First cut",
                    "grass",
                    "silage",
                    "Mower 3 m; Tedder; Rake; Forager; Trailer 10 t x 2; Trailer 8 t; Buckrake; Roller",
                    "Blue 140; Red 90; Red 90; -; Blue 140; Red 90; Green 110; -",
                    null,
                    null,
                    may,
                    may.plusDays(4),
                    50,
                    10),
            row(
                    "Moor End",
                    "Ploughing",
                    "Top Stubble",
                    "plough",
                    "Plough",
                    "Green 110",
                    null,
                    null,
                    may.plusDays(1),
                    may.plusDays(10),
                    60,
                    9),
            row(
                    "Moor End",
                    "Drilling",
                    "Top Stubble",
                    "drill",
                    "Drill",
                    "Red 90",
                    "Ploughing",
                    48,
                    null,
                    may.plusDays(14),
                    50,
                    13),
            row(
                    "Hill Top",
                    "Hay",
                    "Lower Ley",
                    "mow",
                    "Mower 3 m",
                    "Red 90",
                    null,
                    null,
                    may.plusDays(8),
                    may.plusDays(14),
                    40,
                    8),
            row("Hill Top", "Baling", "Lower Ley", "bale", "Baler", null, "Hay", 72, null, may.plusDays(20), 40, 8),
        };
    }

    private Object[][] assumptions() {
        return new Object[][] {
            row("Item", "Value", "Unit"),
            row("Wage", 16, "£/h"),
            row("Fuel price", 0.92, "£/L"),
            row("Interest rate", 6, "%"),
            row("Insurance and housing", 1, "%"),
        };
    }
}
