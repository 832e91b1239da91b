package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CONCENTRATION;
import static org.rickyard.trade.Quantities.TEST_AREA;
import static org.rickyard.trade.Quantities.TEST_VOLUME;
import static org.rickyard.trade.Quantities.TIMED_DISTANCE;
import static org.rickyard.trade.Quantities.TIMED_SECONDS;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.spraying.TankPlan.TANK_FILLED;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.TimedRun;

/** Knapsacks, wipers, and the runs by which any sprayer is checked. */
public final class SmallSprayers {
    private SmallSprayers() {}

    /** Ground one fill of a knapsack covers. */
    public static final Symbol AREA_PER_FILL =
            Symbol.number("area per fill", Units.M2).possible(Range.POSITIVE).decimals(0);
    /** Product in one fill of a wiper. */
    public static final Symbol WIPER_PRODUCT = Symbol.number("product in the wiper", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Speed of a timed run. */
    public static final Symbol TIMED_SPEED = Symbol.number("timed speed", Units.KM_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Rate of a test over an area. */
    public static final Symbol TESTED_RATE = Symbol.number("tested rate", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** Ground that a tankful covers at what was measured. */
    public static final Symbol FILL_AREA = Symbol.number("area per tankful at this rate", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(3);

    private static final Source ALBERTA =
            Source.published("Government of Alberta, Agdex 606-1, p. 10-11: 800 m, to the nearest second");
    private static final Source OKLAHOMA = Source.published("Oklahoma State University, turf calibration: 200 ft");
    private static final Source OHIO_817 =
            Source.published("Ohio State University Extension Bulletin 817-00, Calibrating"
                    + " Turfgrass Chemical Application Equipment: ounces caught over 1/128 ac are gallons an acre");
    private static final Source UTAH = Source.published("Utah State University 2014: 1/128 ac by width of the boom");
    private static final Source SUMNER =
            Source.published("Alabama ANR-725 and P. E. Sumner, Georgia: 1/128 ac by spacing or band");
    private static final Unit HUNDRED_M2 = Unit.of("100 m2", Units.M2.dimension(), Ratio.of(100, 1));
    private static final Source HANDOUT =
            Source.published("calibration course handout: 200 ft, to whole seconds and half or whole mph");
    private static final Source FIRST = Source.derived("15 L at 150 L/ha covers 1,000 m2");

    /** {@code area-per-fill}: tank ÷ water volume. */
    public static final Formula KNAPSACK_AREA = new Formula(
            "area-per-fill",
            AREA_PER_FILL,
            value(TANK_FILLED).over(WATER_VOLUME),
            FIRST,
            "at the walking speed and swath of the test",
            List.of(WorkedExample.from(FIRST)
                    .with(TANK_FILLED, 15)
                    .with(WATER_VOLUME, 150)
                    .gives(1000, Units.M2, 6)));

    private static final Source KNAPSACK_FILLS =
            Source.derived("2 L on 100 m2 is 200 L/ha, so 10 L cover 500 m2, five times 100 m2");

    /** {@code area-per-tankful-as-tested}: tank ÷ tested rate. */
    public static final Formula AREA_OF_FILL_AS_TESTED = new Formula(
            "area-per-tankful-as-tested",
            FILL_AREA,
            value(TANK_FILLED).over(TESTED_RATE),
            KNAPSACK_FILLS,
            "at the speed, width and pressure of the test",
            List.of(WorkedExample.from(KNAPSACK_FILLS)
                    .with(TANK_FILLED, 10)
                    .with(TESTED_RATE, 200)
                    .gives(500, Units.M2, 6)));

    /** {@code wiper-product}: mix × share of product. */
    public static final Formula PRODUCT_IN_WIPER = new Formula(
            "wiper-product",
            WIPER_PRODUCT,
            value(TANK_FILLED).times(CONCENTRATION),
            SpraySources.courseNotes("Q10: 2 % in 500 L is 10 L"),
            "a wiper has no litres per hectare: the label gives the share of product; weeds must stand clear of the"
                    + " crop (about 10-15 cm, from memory)",
            List.of(WorkedExample.from(SpraySources.courseNotes("Q10: 2 % in 500 L is 10 L"))
                    .with(TANK_FILLED, 500)
                    .with(CONCENTRATION, 0.02)
                    .gives(10, Units.PRODUCT_UNIT, 6)));

    /** {@code timed-speed}: distance ÷ time. */
    public static final Formula SPEED_OF_RUN = new Formula(
            "timed-speed",
            TIMED_SPEED,
            TimedRun.SPEED,
            SpraySources.FARM_PRESS,
            "in the field with the tank half full, not on the road; the clock reads wheel slip as speed",
            timed());

    /** {@code area-test-rate}: litres ÷ area. */
    public static final Formula AREA_TEST_RATE = new Formula(
            "area-test-rate",
            TESTED_RATE,
            value(TEST_VOLUME).over(TEST_AREA),
            SpraySources.courseNotes("Q2"),
            "water only, the same speed and pressure as at work",
            areaTests());

    /**
     * Tests by litres and area, and the method of 1/128 ac, in which so many US ounces are so many US gallons an acre. Its
     * printed distances are rounded or cut to the foot (22 in 185.6, 32 in 127.6, 38 in 107.5).
     */
    private static List<WorkedExample> areaTests() {
        List<WorkedExample> examples = new ArrayList<>(List.of(
                WorkedExample.from(SpraySources.courseNotes("Q2: 100 m2, 15 L to 9 L"))
                        .with(TEST_AREA, 100)
                        .with(TEST_VOLUME, 6)
                        .gives(600, Units.L_PER_HA, 6),
                WorkedExample.from(Source.published("Florida exam guide p. 213: 660 ft of a 10 ft swath, 12 gal"))
                        .with(TEST_AREA, 6600, Units.FT.pow(2))
                        .with(TEST_VOLUME, 12, Units.GAL_US)
                        .gives(79.2, Units.GAL_US.over(Units.AC), 1),
                WorkedExample.from(Source.secondHand("student diary of a catch test: 1.01 L on 46 × 0.51 m"))
                        .with(TEST_AREA, 23.46)
                        .with(TEST_VOLUME, 1.01)
                        .gives(430.5, Units.L_PER_HA, 1),
                WorkedExample.from(Source.published("NSW DPI 2009: litres on 10 × 1 m, times 10, are litres on 100 m2"))
                        .with(TEST_AREA, 10)
                        .with(TEST_VOLUME, 0.6)
                        .gives(6, Units.L.over(HUNDRED_M2), 6)));
        double[][] spacings = {
            {18, 227}, {20, 204}, {22, 185}, {24, 170}, {26, 157}, {28, 146},
            {30, 136}, {32, 127}, {34, 120}, {36, 113}, {38, 107}, {40, 102},
        };
        for (double[] row : spacings) {
            examples.add(ounces(OHIO_817, row[0] / 12, row[1], 1));
        }
        for (double[] row : new double[][] {{9, 37.8}, {12, 28.4}, {15, 22.7}}) {
            examples.add(ounces(UTAH, row[0], row[1], 0.05));
        }
        examples.add(ounces(SUMNER, 19 / 12.0, 215, 0.5));
        examples.add(ounces(SUMNER, 1, 340, 0.5));
        return List.copyOf(examples);
    }

    /** 80 oz, the mean of the bulletin's example, caught over a printed distance in feet that is good to so much. */
    private static WorkedExample ounces(Source source, double width, double distance, double rounding) {
        return WorkedExample.from(source)
                .with(TEST_AREA, width * distance, Units.FT.pow(2))
                .with(TEST_VOLUME, 80, Units.FL_OZ_US)
                .givesWithin(80, Units.GAL_US.over(Units.AC), 80 * rounding / (distance - rounding));
    }

    /**
     * 800 m at 8 to 12 km/h, printed to the second. The row for 7 km/h prints 6:48 where 6:51 is right, and is left
     * out.
     */
    private static List<WorkedExample> timed() {
        List<WorkedExample> examples = new ArrayList<>();
        double[][] rows = {{8, 360}, {9, 320}, {10, 288}, {11, 262}, {12, 240}};
        for (double[] row : rows) {
            double halfSecond = row[0] * 0.5 / row[1];
            examples.add(WorkedExample.from(ALBERTA)
                    .with(TIMED_DISTANCE, 800)
                    .with(TIMED_SECONDS, row[1])
                    .givesWithin(row[0], Units.KM_PER_H, halfSecond));
        }
        examples.add(feet(OKLAHOMA, 45, 3, 0.06));
        examples.add(feet(OKLAHOMA, 27, 5, 0.06));
        double[][] handout = {{39, 3.5}, {34, 4}, {30, 4.5}, {23, 6}, {19, 7}, {17, 8}, {15, 9}, {14, 10}};
        for (double[] row : handout) {
            examples.add(feet(HANDOUT, row[0], row[1], 0.3));
        }
        return List.copyOf(examples);
    }

    private static WorkedExample feet(Source source, double seconds, double mph, double rounding) {
        return WorkedExample.from(source)
                .with(TIMED_DISTANCE, 200, Units.FT)
                .with(TIMED_SECONDS, seconds)
                .givesWithin(mph, Units.MPH, rounding);
    }
}
