package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.silage.Filling;

/** How many days of its own a gang is at a field. */
public final class GangDays {
    private GangDays() {}

    /** Hours a gang is at it in a day. */
    public static final Symbol GANG_HOURS_A_DAY = Symbol.number("hours of carting in a day", Units.H)
            .possible(Range.above(0, 24))
            .decimals(1);
    /** Days of its own that a gang needs. */
    public static final Symbol DAYS_OF_GANG =
            Symbol.number("gang days", Units.D).possible(Range.POSITIVE).decimals(2);
    /** {@code carting-hours-a-day}: typed for the job or its leading machine, otherwise the constant. */
    public static final Formula CARTING_HOURS_A_DAY = new Formula(
            "carting-hours-a-day",
            GANG_HOURS_A_DAY,
            given(HOURS_PER_DAY, constant(Filling.HOURS_A_DAY)),
            Filling.HOURS_A_DAY.source(),
            "typed for the job or its leading machine, otherwise a long day",
            List.of(
                    WorkedExample.from(Filling.HOURS_A_DAY.source()).gives(10, Units.H, 0),
                    WorkedExample.from(Source.derived("what is typed stands"))
                            .with(HOURS_PER_DAY, 8)
                            .gives(8, Units.H, 0)));

    /** {@code gang-days}: gang hours ÷ hours a day. */
    public static final Formula DAYS_RECKONED = new Formula(
            "gang-days",
            DAYS_OF_GANG,
            new Expr.AsUnit(value(GangRates.GANG_HOURS).over(GANG_HOURS_A_DAY), Units.D),
            Source.derived("hours over hours a day"),
            "days without rain; moving between fields comes on top",
            List.of(WorkedExample.from(Source.derived("4 h in days of 8 h"))
                    .with(GangRates.GANG_HOURS, 4)
                    .with(GANG_HOURS_A_DAY, 8)
                    .gives(0.5, Units.D, 6)));

    static List<Formula> formulas() {
        return List.of(CARTING_HOURS_A_DAY, DAYS_RECKONED);
    }
}
