package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.BODY_VOLUME;
import static org.rickyard.trade.Quantities.ROUND_TIME;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What a loader or excavator moves in an hour by its bucket and the time of a cycle. */
public final class BucketRate {
    private BucketRate() {}

    /** The table of those that have a bucket and a cycle. */
    public static final String TABLE = "bucket-rates";

    /** Loose soil moved. */
    public static final Symbol LOOSE_RATE = Symbol.number("loose volume moved", Units.M3_PER_H)
            .possible(Range.POSITIVE)
            .decimals(0);

    /** How full a bucket is. */
    public static final Constant FILL = new Constant(
                    "bucket fill",
                    90,
                    Units.PERCENT,
                    Source.published(
                            "Komatsu Specifications & Application Handbook: wheel loader in average loading 85 to"
                                    + " 95 %; easy 100 to 110, difficult 75 to 80"))
            .aboveZero();
    /** How much of an hour is worked. */
    public static final Constant HOUR = new Constant(
                    "share of an hour that is worked in loading",
                    50 * 100 / 60.0,
                    Units.PERCENT,
                    Source.published("Komatsu Specifications & Application Handbook: an hour of 50 minutes, 83 %"))
            .possible(Range.above(0, 100));

    /** {@code bucket-rate}: bucket × fill × share of the hour worked ÷ cycle. */
    public static final Formula RATE = new Formula(
            "bucket-rate",
            LOOSE_RATE,
            value(BODY_VOLUME).times(constant(FILL)).times(constant(HOUR)).over(ROUND_TIME),
            Source.published("Komatsu Specifications & Application Handbook: Q = q × K × 60 ÷ Cm × E"),
            "heaped bucket, loose soil: what it was in the ground is less by the swell; steady loading without waiting",
            List.of(WorkedExample.from(
                            Source.derived("1.5 yd3 heaped, filled to 0.9, 25 s, 50 minutes an hour: 144 × 1.35"
                                    + " × 0.8333 = 162 loose yd3/h (inputs of a published exercise)"))
                    .with(BODY_VOLUME, 1.5, Units.YD3)
                    .with(ROUND_TIME, 25, Units.S)
                    .gives(162, Units.YD3.over(Units.H), 6)));
}
