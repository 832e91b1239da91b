package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.NOZZLE_CATCH;
import static org.rickyard.trade.Quantities.NOZZLE_SPACING;
import static org.rickyard.trade.Quantities.TIMED_DISTANCE;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * What one nozzle gives over a measured run, as the method of 1/128 of an acre asks for it: over the distance that suits
 * the spacing, so many US ounces are so many US gallons an acre.
 */
public final class CatchRun {
    private CatchRun() {}

    /** Id of the table. */
    public static final String TABLE = "catch-runs";

    /** What the catch comes to on a hectare. */
    public static final Symbol CAUGHT_RATE = Symbol.number("rate from the catch", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source OHIO_817 =
            Source.published("Ohio State University Extension Bulletin 817-00, Calibrating"
                    + " Turfgrass Chemical Application Equipment: ounces caught over 1/128 ac are gallons an acre");
    private static final Source SUMNER =
            Source.published("Alabama ANR-725 and P. E. Sumner, Georgia: 1/128 ac by spacing or band");

    /** {@code catch-run-rate}: catch ÷ (distance × spacing). */
    public static final Formula CATCH_RATE = new Formula(
            "catch-run-rate",
            CAUGHT_RATE,
            value(NOZZLE_CATCH).over(value(TIMED_DISTANCE).times(NOZZLE_SPACING)),
            OHIO_817,
            "water, caught from one nozzle for as long as the run takes, or the mean of several; where bands are"
                    + " sprayed, their width is the spacing and the rate is that in the band",
            examples());

    /** Printed distances are rounded or cut to the foot (22 in 185.6, 32 in 127.6, 38 in 107.5). */
    private static List<WorkedExample> examples() {
        List<WorkedExample> examples = new ArrayList<>();
        double[][] spacings = {
            {18, 227}, {20, 204}, {22, 185}, {24, 170}, {26, 157}, {28, 146},
            {30, 136}, {32, 127}, {34, 120}, {36, 113}, {38, 107}, {40, 102},
        };
        for (double[] row : spacings) {
            examples.add(ounces(OHIO_817, row[0], row[1], 1));
        }
        examples.add(ounces(SUMNER, 19, 215, 0.5));
        examples.add(ounces(SUMNER, 12, 340, 0.5));
        return List.copyOf(examples);
    }

    /** 80 oz, the mean of the bulletin's example, over a distance in feet that is printed to so much. */
    private static WorkedExample ounces(Source source, double inches, double feet, double rounding) {
        Unit gallons = Units.GAL_US.over(Units.AC);
        return WorkedExample.from(source)
                .with(NOZZLE_CATCH, 80, Units.FL_OZ_US)
                .with(NOZZLE_SPACING, inches, Units.IN)
                .with(TIMED_DISTANCE, feet, Units.FT)
                .givesWithin(80, gallons, 80 * rounding / (feet - rounding));
    }
}
