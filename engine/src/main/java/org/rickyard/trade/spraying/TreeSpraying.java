package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.NOZZLES;
import static org.rickyard.trade.Quantities.ROW_SPACING;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.TREE_HEIGHT;
import static org.rickyard.trade.Quantities.TREE_WIDTH;
import static org.rickyard.trade.Quantities.WATER_VOLUME;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Trees and bushes in rows: volume and wall of leaf, and what each side and nozzle must give. */
public final class TreeSpraying {
    private TreeSpraying() {}

    /** Cubic metres of crown on a hectare. */
    public static final Symbol TREE_ROW_VOLUME = Symbol.number("tree row volume", Units.M3.over(Units.HA))
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Square metres of leaf wall on a hectare. */
    public static final Symbol LEAF_WALL_AREA = Symbol.number("leaf wall area", Units.M2.over(Units.HA))
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Water that would just drip. */
    public static final Symbol DILUTE = Symbol.number("dilute volume", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** How many times stronger than dilute. */
    public static final Symbol CONCENTRATION_FACTOR = Symbol.number("concentration factor", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Both sides together. */
    public static final Symbol FLOW = flow("flow, both sides");
    /** One side. */
    public static final Symbol FLOW_PER_SIDE = flow("flow per side");
    /** One open nozzle. */
    public static final Symbol FLOW_PER_NOZZLE = flow("flow per open nozzle");

    private static final Source PENN_STATE =
            Source.published("Penn State Tree Fruit Production Guide, tree row volume: 20 × 23 ft, rows 35 ft apart");
    private static final Source LANDERS =
            Source.published("A. Landers, Tree Row Volume, Cornell University NYSAES: 0.7 to 1.0 gal per 1,000 ft3");
    private static final Source MASSACHUSETTS =
            Source.published("UMass Extension, Block-specific Sprayer Calibration Worksheet: GPA × mph × row ÷ 495");
    private static final Source EPPO =
            Source.derived("two walls of the height along each row; EPPO PP 1/239 is the standard, its text not read");

    /** US gallons for a thousand cubic feet of crown. */
    public static final Unit GALLONS_PER_1000_FT3 = Unit.of(
            "gal(US)/1000 ft3",
            Units.GAL_US.over(Units.FT3).dimension(),
            Units.GAL_US.over(Units.FT3).factor().times(Ratio.of(1, 1000)));

    /** Dilute spray for a crown volume; 0.7 is 93.6 L per 1,000 m3. */
    public static final Constant DILUTE_RATE =
            new Constant("dilute spray for a volume of crown", 0.7, GALLONS_PER_1000_FT3, LANDERS);

    /** {@code tree-row-volume}: height × width ÷ row spacing. Divided by the row, never multiplied. */
    public static final Formula ROW_VOLUME = new Formula(
            "tree-row-volume",
            TREE_ROW_VOLUME,
            value(TREE_HEIGHT).times(TREE_WIDTH).over(ROW_SPACING),
            PENN_STATE,
            "hedge-like rows; one printed note multiplies by the row distance, which is a mistake",
            List.of(
                    WorkedExample.from(PENN_STATE)
                            .with(TREE_HEIGHT, 20, Units.FT)
                            .with(TREE_WIDTH, 23, Units.FT)
                            .with(ROW_SPACING, 35, Units.FT)
                            .gives(572503, Units.FT3.over(Units.AC), 0),
                    WorkedExample.from(Source.derived("3 × 1.5 m on rows 4 m apart"))
                            .with(TREE_HEIGHT, 3)
                            .with(TREE_WIDTH, 1.5)
                            .with(ROW_SPACING, 4)
                            .gives(11250, Units.M3.over(Units.HA), 6)));

    /** {@code leaf-wall-area}: 2 × height ÷ row spacing. */
    public static final Formula WALL_AREA = new Formula(
            "leaf-wall-area",
            LEAF_WALL_AREA,
            number(2).times(TREE_HEIGHT).over(ROW_SPACING),
            EPPO,
            "height of the leaf wall that is sprayed, both sides",
            List.of(WorkedExample.from(Source.derived("2 × 2.5 × 10,000 ÷ 3.5"))
                    .with(TREE_HEIGHT, 2.5)
                    .with(ROW_SPACING, 3.5)
                    .gives(14286, Units.M2.over(Units.HA), 0)));

    /** {@code dilute-volume}: tree row volume × dilute spray for a volume of crown. */
    public static final Formula DILUTE_VOLUME = new Formula(
            "dilute-volume",
            DILUTE,
            value(TREE_ROW_VOLUME).times(constant(DILUTE_RATE)),
            LANDERS,
            "0.5 bare (a grower's page), 0.7 well pruned, 1.0 dense, in US gallons for 1,000 ft3; set yours on"
                    + " Assumptions",
            List.of(
                    WorkedExample.from(PENN_STATE)
                            .with(TREE_ROW_VOLUME, 572503, Units.FT3.over(Units.AC))
                            .givesWithin(400, Units.GAL_US.over(Units.AC), 1),
                    WorkedExample.from(PENN_STATE)
                            .with(TREE_ROW_VOLUME, 572503 / 2.0, Units.FT3.over(Units.AC))
                            .givesWithin(200, Units.GAL_US.over(Units.AC), 0.5)));

    /** {@code concentration-factor}: dilute ÷ actual. */
    public static final Formula CONCENTRATION = new Formula(
            "concentration-factor",
            CONCENTRATION_FACTOR,
            value(DILUTE).over(WATER_VOLUME),
            MASSACHUSETTS,
            "the label's dose per hectare or per wall decides, not the strength",
            List.of(WorkedExample.from(Source.derived("UMass formula, dilute ÷ actual: 400 gal/ac sprayed in 100"))
                    .with(DILUTE, 400, Units.GAL_US.over(Units.AC))
                    .with(WATER_VOLUME, 100, Units.GAL_US.over(Units.AC))
                    .gives(4, Units.ONE, 6)));

    /** {@code airblast-flow}: water volume × speed × row spacing, both sides. */
    public static final Formula AIRBLAST_FLOW = new Formula(
            "airblast-flow",
            FLOW,
            value(WATER_VOLUME).times(SPEED).times(ROW_SPACING),
            MASSACHUSETTS,
            "both sides sprayed, every row driven",
            List.of(
                    WorkedExample.from(Source.derived("400 L/ha, 6 km/h, rows 3.5 m apart"))
                            .with(WATER_VOLUME, 400)
                            .with(SPEED, 6)
                            .with(ROW_SPACING, 3.5)
                            .gives(14, Units.L_PER_MIN, 6),
                    WorkedExample.from(Source.derived("UMass formula: 100 × 2.5 × 20 ÷ 495 = 10.101"))
                            .with(WATER_VOLUME, 100, Units.GAL_US.over(Units.AC))
                            .with(SPEED, 2.5, Units.MPH)
                            .with(ROW_SPACING, 20, Units.FT)
                            .gives(10.101, Units.GAL_US.over(Units.MIN), 3)));

    /** {@code flow-per-side}. */
    public static final Formula PER_SIDE = new Formula(
            "flow-per-side",
            FLOW_PER_SIDE,
            value(FLOW).over(number(2)),
            Source.derived("half of it"),
            "both sides alike",
            List.of(WorkedExample.from(Source.derived("14 L/min is 7 a side"))
                    .with(FLOW, 14)
                    .gives(7, Units.L_PER_MIN, 6)));

    /** {@code flow-per-open-nozzle}. */
    public static final Formula PER_NOZZLE = new Formula(
            "flow-per-open-nozzle",
            FLOW_PER_NOZZLE,
            value(FLOW).over(NOZZLES),
            Source.derived("shared by the open nozzles; 14 L/min over 16 is 0.875"),
            "number of nozzles: those that are open",
            List.of(WorkedExample.from(Source.derived("14 L/min over 16 nozzles"))
                    .with(FLOW, 14)
                    .with(NOZZLES, 16)
                    .gives(0.875, Units.L_PER_MIN, 6)));

    private static Symbol flow(String name) {
        return Symbol.number(name, Units.L_PER_MIN).possible(Range.POSITIVE).decimals(2);
    }
}
