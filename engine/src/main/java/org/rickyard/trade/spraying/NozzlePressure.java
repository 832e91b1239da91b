package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.BAND_WIDTH;
import static org.rickyard.trade.Quantities.HIGHEST_SPEED;
import static org.rickyard.trade.Quantities.LOWEST_SPEED;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.NOZZLES;
import static org.rickyard.trade.Quantities.NOZZLE_SIZE;
import static org.rickyard.trade.Quantities.NOZZLE_SPACING;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.SPRAY_DENSITY;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;
import static org.rickyard.trade.spraying.SprayRates.OUTPUT_PER_NOZZLE;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/**
 * The pressure at which the fitted nozzles give what is wanted. One basis is held to throughout: the ISO 10625 nominal
 * flow at 3 bar. Charts drawn up in US gallons at 40 psi lie 1.3 % lower.
 */
public final class NozzlePressure {
    private NozzlePressure() {}

    /** The spacing reckoned with: of the band, as typed, or boom width over nozzles. */
    public static final Symbol SPACING_USED =
            Symbol.number("width per nozzle", Units.M).possible(Range.POSITIVE).decimals(3);
    /** The density reckoned with. */
    public static final Symbol DENSITY_USED = Symbol.number("density of the spray", Units.KG.over(Units.L))
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Square root of the density relative to water. */
    public static final Symbol FACTOR =
            Symbol.number("density factor", Units.ONE).possible(Range.POSITIVE).decimals(2);
    /** The flow of water a nozzle would show at the same pressure. */
    public static final Symbol WATER_FLOW = Symbol.number("output read as water", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Nominal flow of a size. */
    public static final Symbol NOMINAL_FLOW = Symbol.number("nominal flow at 3 bar", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Pressure wanted. */
    public static final Symbol WANTED_PRESSURE =
            Symbol.number("nozzle pressure", Units.BAR).possible(Range.POSITIVE).decimals(1);
    /** Pressure at the lowest speed. */
    public static final Symbol AT_LOWEST_SPEED = Symbol.number("pressure at lowest speed", Units.BAR)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Pressure at the highest speed. */
    public static final Symbol AT_HIGHEST_SPEED = Symbol.number("pressure at highest speed", Units.BAR)
            .possible(Range.POSITIVE)
            .decimals(1);

    private static final Source ISO_10625 = Source.memory(
            "ISO 10625:2018, nominal flow at 3 bar; 03 = 1.2 L/min is read in UK PSD, LERAP accreditation");
    private static final Source COURSE_NOTES = SpraySources.courseNotes("Q8: flow = K × root of pressure");
    private static final Source FOUR_TIMES =
            Source.secondHand("agrichem.dz: 0.2 gal(US)/min at 10 psi, 0.4 at 40 psi: four times the pressure");
    private static final Source NEBRASKA = Source.published(
            "University of Nebraska-Lincoln CropWatch 2016, Setting the Sprayer Flow Rate for Non-Water Solutions");
    private static final Source CHOICE =
            Source.derived("2.00 L/min from ISO nominal flows: 03 8.333, 04 4.6875, 05 3.000," + " 06 2.0833 bar");

    /** Rows printed with pounds a US gallon, the density and the factor; at 11.06 the print has 1.32 for 1.326. */
    private static final double[][] WEIGHED = {
        {11.06, 1.32, 1.15}, {11.4, 1.37, 1.17}, {11.5, 1.38, 1.17}, {11.6, 1.39, 1.18}, {12.0, 1.44, 1.20},
    };

    /** Where none is typed: water. */
    public static final Constant USUAL_DENSITY = new Constant(
                    "density of spray liquid, if none is typed",
                    1,
                    Units.KG.over(Units.L),
                    Source.commonPractice("water weighs 1 kg a litre"))
            .possible(SPRAY_DENSITY.possible());
    /** What charts of nozzles are made for. */
    public static final Constant WATER_DENSITY = new Constant(
                    "density of water, for which nozzle charts are made",
                    1,
                    Units.KG.over(Units.L),
                    Source.commonPractice("water weighs 1 kg a litre"))
            .aboveZero();
    /** The pressure at which sizes are named. */
    public static final Constant REFERENCE_PRESSURE =
            new Constant("pressure at which nozzle sizes are named", 3, Units.BAR, ISO_10625).aboveZero();
    /** How far number of nozzles × spacing may lie from the boom width. */
    public static final Constant SPACING_TOLERANCE = new Constant(
            "nozzles × spacing may differ from the boom width by",
            2,
            Units.PERCENT,
            Source.commonPractice("judgement; GRDC Spray Application Manual 8.3 shows a 1.6 % error from 0.508 m"
                    + " nozzles on a chart for 0.500 m"));

    /** Nominal flows by size; colours of the standard stand in {@link #COLOURS}. */
    public static final ReferenceTable ISO_SIZES = new ReferenceTable(
            "Nozzle sizes: flow at 3 bar",
            "size (4 for 04)",
            Units.ONE,
            "flow",
            Units.L_PER_MIN,
            List.of(
                    Row.of(1, 0.4),
                    Row.of(1.5, 0.6),
                    Row.of(2, 0.8),
                    Row.of(2.5, 1.0),
                    Row.of(3, 1.2),
                    Row.of(3.5, 1.4),
                    Row.of(4, 1.6),
                    Row.of(5, 2.0),
                    Row.of(6, 2.4),
                    Row.of(8, 3.2),
                    Row.of(10, 4.0),
                    Row.of(15, 6.0),
                    Row.of(20, 8.0)),
            ISO_10625);

    /** What a nozzle of a size gives at a pressure: the nominal flow of the size × root of (pressure ÷ 3 bar). */
    static final Expr FLOW_AT_PRESSURE = new Expr.Lookup(ISO_SIZES, value(NOZZLE_SIZE), Expr.Lookup.Mode.EXACT)
            .times(call(Function.SQRT, value(Quantities.PRESSURE).over(constant(REFERENCE_PRESSURE))));

    /** The standard's colour of each size, as a word. Not the colour of a droplet class. */
    public static final ReferenceTable COLOURS = new ReferenceTable(
            "Nozzle sizes: colour",
            "size (4 for 04)",
            Units.ONE,
            "colour",
            Units.ONE,
            List.of(
                    Row.of(1, "orange"),
                    Row.of(1.5, "green"),
                    Row.of(2, "yellow"),
                    Row.of(2.5, "lilac"),
                    Row.of(3, "blue"),
                    Row.of(3.5, "brown-red"),
                    Row.of(4, "red"),
                    Row.of(5, "brown"),
                    Row.of(6, "grey"),
                    Row.of(8, "white"),
                    Row.of(10, "light blue"),
                    Row.of(15, "light green"),
                    Row.of(20, "black")),
            Source.memory("ISO 10625; 025, 03, 04 and 05 are read at LWK, Richtige Duesenwahl; 02 to 06 at Grainews"));

    private static final Expr SHARE_OF_WIDTH = value(WORKING_WIDTH).over(NOZZLES);
    private static final Expr ALONG_A_BOOM = given(BAND_WIDTH, given(NOZZLE_SPACING, SHARE_OF_WIDTH));

    /** {@code nozzle-spacing}: of the band, as typed, or boom width ÷ number of nozzles. */
    public static final Formula SPACING = new Formula(
            "nozzle-spacing",
            SPACING_USED,
            ALONG_A_BOOM,
            Source.derived("section width = number of nozzles × spacing (GRDC Spray Application Manual, module 8.3)"),
            "one nozzle over each band where bands are sprayed; measure the spacing, do not trust the chart",
            List.of(
                    WorkedExample.from(Source.derived("24 m over 48 nozzles is 0.5 m"))
                            .with(WORKING_WIDTH, 24)
                            .with(NOZZLES, 48)
                            .gives(0.5, Units.M, 6),
                    WorkedExample.from(Source.derived("the typed band stands before the typed spacing"))
                            .with(BAND_WIDTH, 0.3)
                            .with(NOZZLE_SPACING, 0.5)
                            .gives(0.3, Units.M, 6)));

    /**
     * {@code width-per-nozzle}: the same for any sprayer; nozzles that stand above each other share the width, whatever
     * their spacing.
     */
    public static final Formula WIDTH_PER_NOZZLE = new Formula(
            "width-per-nozzle",
            SPACING_USED,
            choice(Condition.is(MACHINE_TYPE, "air-blast sprayer"), SHARE_OF_WIDTH, ALONG_A_BOOM),
            SPACING.source(),
            "along a boom the spacing; the open nozzles of an air-blast sprayer all spray the width of a row",
            List.of(
                    WorkedExample.from(Source.derived("12 nozzles one above the other, 25 cm apart, on rows of 4 m"))
                            .with(MACHINE_TYPE, "air-blast sprayer")
                            .with(WORKING_WIDTH, 4)
                            .with(NOZZLES, 12)
                            .with(NOZZLE_SPACING, 0.25)
                            .gives(0.333, Units.M, 3),
                    WorkedExample.from(Source.derived("24 m over 48 nozzles is 0.5 m"))
                            .with(MACHINE_TYPE, "sprayer")
                            .with(WORKING_WIDTH, 24)
                            .with(NOZZLES, 48)
                            .gives(0.5, Units.M, 6),
                    WorkedExample.from(Source.derived("the typed band stands before the typed spacing"))
                            .with(MACHINE_TYPE, "sprayer")
                            .with(BAND_WIDTH, 0.3)
                            .with(NOZZLE_SPACING, 0.5)
                            .gives(0.3, Units.M, 6)));

    /** The density reckoned with: typed, or water. */
    public static final Formula DENSITY = new Formula(
            "spray-density",
            DENSITY_USED,
            given(SPRAY_DENSITY, constant(USUAL_DENSITY)),
            Source.commonPractice("as typed, otherwise water"),
            "liquid fertiliser is heavier than water: 28-0-0 about 1.28",
            weighedExamples());

    /** {@code density-factor}: root of the density relative to water. */
    public static final Formula DENSITY_FACTOR = new Formula(
            "density-factor",
            FACTOR,
            call(Function.SQRT, value(DENSITY_USED).over(constant(WATER_DENSITY))),
            NEBRASKA,
            "0.79 to 1.92 as tabled; thick suspensions deviate",
            densityExamples());

    /** {@code water-equivalent-output}: what to look for in a chart made for water. */
    public static final Formula WATER_OUTPUT = new Formula(
            "water-equivalent-output",
            WATER_FLOW,
            value(OUTPUT_PER_NOZZLE).times(FACTOR),
            NEBRASKA,
            "to choose a nozzle from a chart for water",
            List.of(WorkedExample.from(
                            Source.derived("1.00 L/min of a liquid of 1.28 kg/L reads as 1.13 L/min of water"))
                    .with(OUTPUT_PER_NOZZLE, 1)
                    .with(FACTOR, 1.13)
                    .gives(1.13, Units.L_PER_MIN, 2)));

    /** The nominal flow of the fitted size. */
    public static final Formula NOMINAL = new Formula(
            "nominal-nozzle-flow",
            NOMINAL_FLOW,
            new Expr.Lookup(ISO_SIZES, value(NOZZLE_SIZE), Expr.Lookup.Mode.EXACT),
            ISO_10625,
            "one hydraulic nozzle per body; not rotary atomisers or pulse-width control",
            List.of(WorkedExample.from(SpraySources.PSD).with(NOZZLE_SIZE, 3).gives(1.2, Units.L_PER_MIN, 1)));

    /** {@code nozzle-pressure}: 3 bar × (output ÷ nominal flow)². */
    public static final Formula NOZZLE_PRESSURE = new Formula(
            "nozzle-pressure",
            WANTED_PRESSURE,
            constant(REFERENCE_PRESSURE)
                    .times(value(WATER_FLOW).over(NOMINAL_FLOW).power(2)),
            COURSE_NOTES,
            "pressure at the nozzle, within the maker's range; the gauge shows more by what the lines lose",
            pressureExamples());

    private static List<WorkedExample> pressureExamples() {
        List<WorkedExample> examples = new ArrayList<>(List.of(
                WorkedExample.from(SpraySources.PSD)
                        .with(WATER_FLOW, 1.2)
                        .with(NOMINAL_FLOW, 1.2)
                        .gives(3, Units.BAR, 1),
                // Q = 1.2 × root of p gives 3.6 at 9 bar, so its flow at 3 bar is 1.2 × root of 3.
                WorkedExample.from(COURSE_NOTES)
                        .with(WATER_FLOW, 3.6)
                        .with(NOMINAL_FLOW, 1.2 * StrictMath.sqrt(3))
                        .gives(9, Units.BAR, 1),
                // 1.8 L/min at 4 bar becomes 2.7 at 9 bar.
                WorkedExample.from(COURSE_NOTES)
                        .with(WATER_FLOW, 2.7)
                        .with(NOMINAL_FLOW, 1.8 * StrictMath.sqrt(0.75))
                        .gives(9, Units.BAR, 1),
                // Double pressure gives 1.41 times the flow; the print's rounding is 0.4 % of flow, 0.7 % of pressure.
                WorkedExample.from(COURSE_NOTES)
                        .with(WATER_FLOW, 1.41)
                        .with(NOMINAL_FLOW, 1)
                        .givesWithin(6, Units.BAR, 6 * 0.008),
                WorkedExample.from(FOUR_TIMES)
                        .with(WATER_FLOW, 0.4, Units.GAL_US.over(Units.MIN))
                        .with(
                                NOMINAL_FLOW,
                                0.2 * StrictMath.sqrt(3 / Units.PSI.convert(10, Units.BAR)),
                                Units.GAL_US.over(Units.MIN))
                        .gives(40, Units.PSI, 1)));
        // The sizes of the Alberta table are named in US gallons at 40 psi, 1.3 % of flow or 2.7 % of pressure below
        // the
        // standard's; the printed flow is cut to a hundredth besides (0.75 stands for 0.757).
        for (double[] row : new double[][] {{0.38, 0.4}, {0.57, 0.6}, {0.75, 0.8}}) {
            examples.add(WorkedExample.from(SpraySources.ALBERTA)
                    .with(WATER_FLOW, row[0])
                    .with(NOMINAL_FLOW, row[1])
                    .givesWithin(275, Units.KPA, 275 * (0.027 + 0.02 / row[0])));
        }
        for (double[] row : new double[][] {{1.2, 8.333}, {1.6, 4.6875}, {2.0, 3.000}, {2.4, 2.0833}}) {
            examples.add(WorkedExample.from(CHOICE)
                    .with(WATER_FLOW, 2)
                    .with(NOMINAL_FLOW, row[0])
                    .givesWithin(row[1], Units.BAR, 0.0005));
        }
        return List.copyOf(examples);
    }

    /** {@code pressure-at-lowest-speed}. */
    public static final Formula PRESSURE_AT_LOWEST_SPEED =
            atSpeed("pressure-at-lowest-speed", AT_LOWEST_SPEED, LOWEST_SPEED, 8, 1.3333);
    /** {@code pressure-at-highest-speed}. */
    public static final Formula PRESSURE_AT_HIGHEST_SPEED =
            atSpeed("pressure-at-highest-speed", AT_HIGHEST_SPEED, HIGHEST_SPEED, 14.4, 4.32);

    private static Formula atSpeed(String id, Symbol result, Symbol speed, double example, double answer) {
        return new Formula(
                id,
                result,
                value(WANTED_PRESSURE).times(value(speed).over(SPEED).power(2)),
                Source.derived("flow goes with speed, pressure with flow squared: speed + 20 % is pressure × 1.44"),
                "a rate controller that holds the volume per hectare",
                List.of(WorkedExample.from(Source.derived("12 to 14.4 km/h is + 20 %: 3 bar × 1.44; 8 km/h: 3 × 4/9"))
                        .with(WANTED_PRESSURE, 3)
                        .with(SPEED, 12)
                        .with(speed, example)
                        .gives(answer, Units.BAR, 3)));
    }

    private static List<WorkedExample> weighedExamples() {
        List<WorkedExample> examples = new ArrayList<>();
        for (double[] row : WEIGHED) {
            examples.add(WorkedExample.from(NEBRASKA)
                    .with(SPRAY_DENSITY, row[0], Units.LB.over(Units.GAL_US))
                    .givesWithin(row[1], Units.KG.over(Units.L), 0.006));
        }
        examples.add(WorkedExample.from(USUAL_DENSITY.source()).gives(1, Units.KG.over(Units.L), 2));
        return List.copyOf(examples);
    }

    /**
     * The table row by row, from the density and, where it is printed, from the weight of a gallon. The print rounded
     * twice: the density to two places, then its root.
     */
    private static List<WorkedExample> densityExamples() {
        double[][] rows = {
            {0.79, 0.89}, {0.84, 0.92}, {0.96, 0.98}, {1.00, 1.00}, {1.08, 1.04}, {1.20, 1.10}, {1.28, 1.13},
            {1.32, 1.15}, {1.37, 1.17}, {1.38, 1.17}, {1.39, 1.18}, {1.44, 1.20}, {1.68, 1.30}, {1.92, 1.39},
        };
        List<WorkedExample> examples = new ArrayList<>();
        for (double[] row : rows) {
            examples.add(WorkedExample.from(NEBRASKA).with(DENSITY_USED, row[0]).gives(row[1], Units.ONE, 2));
        }
        for (double[] row : WEIGHED) {
            examples.add(WorkedExample.from(NEBRASKA)
                    .with(DENSITY_USED, row[0], Units.LB.over(Units.GAL_US))
                    .gives(row[2], Units.ONE, 2));
        }
        return List.copyOf(examples);
    }
}
