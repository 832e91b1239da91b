package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.ROW_SPACING;
import static org.rickyard.trade.Quantities.TREES;
import static org.rickyard.trade.Quantities.TREE_SPACING;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Trees, bushes and vines counted: the ground they stand on by their spacing, and how many a hectare takes. */
public final class TreeCounts {
    private TreeCounts() {}

    private static final Unit ON_HA = Units.ONE.over(Units.HA).named("trees/ha");

    /** Trees on a hectare. */
    public static final Symbol DENSITY =
            Symbol.number("tree density", ON_HA).possible(Range.POSITIVE).decimals(0);
    /** Ground that the counted trees take, ha. */
    public static final Symbol TREE_AREA =
            Symbol.number("area by trees", Units.HA).possible(Range.POSITIVE).decimals(2);
    /** Of the field's area, per cent. */
    public static final Symbol SHARE = Symbol.number("area by trees, of the field's", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** How many trees the field's area takes. */
    public static final Symbol FOR_AREA = Symbol.number("trees for the area", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source CIDER = Source.published(
            "cideruk.com 2010, treated area of an orchard: 2,560 trees at 5.5 × 2.75 m are 3.87 ha, at 18 × 9 ft 9.52 ac; often 12 %"
                    + " below the field's area");
    private static final Source TURNED = Source.derived("the ground of one tree is row spacing × tree spacing");

    /** Above this share trees, spacing or area must be wrong. */
    public static final Constant MOST_SHARE = new Constant(
            "trees cannot fill more of a field than",
            105,
            Units.PERCENT,
            Source.memory("judgement: the whole of it, and what counting and measuring may be out by"));
    /** Below this share much of the field has no trees. */
    public static final Constant LEAST_SHARE = new Constant(
            "trees fill unusually little of a field, below",
            75,
            Units.PERCENT,
            Source.memory("judgement: well below the 88 % that is usual in cider orchards"));

    /** {@code trees-per-hectare}: 1 ÷ (row spacing × tree spacing). */
    public static final Formula TREES_PER_HECTARE = new Formula(
            "trees-per-hectare",
            DENSITY,
            number(1).over(value(ROW_SPACING).times(TREE_SPACING)),
            TURNED,
            "straight rows, square or oblong; vines and bushes alike. Headlands and gaps left out",
            List.of(
                    WorkedExample.from(Source.derived("2,560 trees on the 3.872 ha of the printed example"))
                            .with(ROW_SPACING, 5.5)
                            .with(TREE_SPACING, 2.75)
                            .gives(661, ON_HA, 0),
                    WorkedExample.from(Source.derived("4 × 1 m: 2,500"))
                            .with(ROW_SPACING, 4)
                            .with(TREE_SPACING, 1)
                            .gives(2500, ON_HA, 6)));

    /** {@code area-by-trees}: trees × row spacing × tree spacing. */
    public static final Formula AREA_BY_TREES = new Formula(
            "area-by-trees",
            TREE_AREA,
            value(TREES).times(ROW_SPACING).times(TREE_SPACING),
            CIDER,
            "trees that stand, at one spacing; the field with its headlands is larger",
            List.of(
                    WorkedExample.from(CIDER)
                            .with(TREES, 2560)
                            .with(ROW_SPACING, 5.5)
                            .with(TREE_SPACING, 2.75)
                            .gives(3.87, Units.HA, 2),
                    WorkedExample.from(CIDER)
                            .with(TREES, 2560)
                            .with(ROW_SPACING, 18, Units.FT)
                            .with(TREE_SPACING, 9, Units.FT)
                            .gives(9.52, Units.AC, 2)));

    /** {@code area-by-trees-share}: area by trees ÷ area. */
    public static final Formula SHARE_OF_FIELD = new Formula(
            "area-by-trees-share",
            SHARE,
            value(TREE_AREA).over(AREA),
            Source.derived("one area over the other"),
            "often about 88 % where the area is the whole field's (cideruk.com 2010)",
            List.of(WorkedExample.from(Source.derived("3.872 ÷ 4.4"))
                    .with(TREE_AREA, 3.872)
                    .with(AREA, 4.4)
                    .gives(88, Units.PERCENT, 6)));

    /** {@code trees-for-area}: area × tree density. */
    public static final Formula TREES_FOR_AREA = new Formula(
            "trees-for-area",
            FOR_AREA,
            value(AREA).times(DENSITY),
            TURNED,
            "an area planted all over; take the headlands off it first",
            List.of(WorkedExample.from(Source.derived("2 ha at 2,500 a hectare"))
                    .with(AREA, 2)
                    .with(DENSITY, 2500)
                    .gives(5000, Units.ONE, 6)));
}
