package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.PERIMETER;
import static org.rickyard.trade.Quantities.RUN_LENGTH;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How size and shape of a field tell on the work: what cannot be, and what makes work slow. */
public final class FieldShape {
    private FieldShape() {}

    /** Area over perimeter squared. */
    public static final Symbol SHAPE_INDEX =
            Symbol.number("shape index", Units.ONE).possible(Range.POSITIVE).decimals(4);
    /** Area over run length. */
    public static final Symbol MEAN_WIDTH =
            Symbol.number("mean width", Units.M).possible(Range.POSITIVE).decimals(0);

    private static final Source HARASIMOWICZ = Source.published(
            "Harasimowicz & Ostragowska 2001, EJPAU 4(2) #03, abstract: beyond these the gain is insignificant");
    private static final Source GEOMETRY = Source.derived("a circle has the most area for its perimeter: 1 ÷ (4π)");

    /** Area below which small fields slow the work. */
    public static final Constant SMALL_AREA = new Constant("Small field, area below", 1, Units.HA, HARASIMOWICZ);
    /** Run length below which turning weighs. */
    public static final Constant SHORT_RUN = new Constant("Small field, run below", 150, Units.M, HARASIMOWICZ);
    /** Mean width below which a field is narrow. */
    public static final Constant NARROW = new Constant("Small field, width below", 30, Units.M, HARASIMOWICZ);
    /** No figure has more area over its perimeter squared. */
    public static final Constant MOST_SHAPE =
            new Constant("Greatest possible area over perimeter squared", 1 / (4 * Math.PI), Units.ONE, GEOMETRY);

    /** The area and perimeter typed cannot belong to one field. */
    public static final Condition IMPOSSIBLE = Condition.compare(
            value(AREA).over(PERIMETER).over(PERIMETER), Condition.Relation.MORE, constant(MOST_SHAPE));

    /** {@code shape-index}: area ÷ perimeter². */
    public static final Formula SHAPE = new Formula(
            "shape-index",
            SHAPE_INDEX,
            value(AREA)
                    .over(PERIMETER)
                    .over(PERIMETER)
                    .onlyWhen(
                            new Condition.Not(IMPOSSIBLE),
                            "area and perimeter cannot belong to one field: no field has so much area inside so short"
                                    + " a boundary"),
            GEOMETRY,
            "square 0.0625, circle 0.0796; the lower, the longer the boundary for the area",
            List.of(WorkedExample.from(Source.derived("a square of 1 ha: 10,000 ÷ 400²"))
                    .with(AREA, 1)
                    .with(PERIMETER, 400)
                    .gives(0.0625, Units.ONE, 6)));

    /** Mean width: area ÷ run length. */
    public static final Formula WIDTH = new Formula(
            "mean-width",
            MEAN_WIDTH,
            value(AREA).over(RUN_LENGTH),
            Source.derived("area over length"),
            "runs all along the field",
            List.of(WorkedExample.from(Source.derived("4 ha on 400 m runs"))
                    .with(AREA, 4)
                    .with(RUN_LENGTH, 400)
                    .gives(100, Units.M, 6)));
}
