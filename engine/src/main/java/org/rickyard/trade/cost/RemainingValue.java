package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.HOURS_PER_YEAR;
import static org.rickyard.trade.Quantities.LIFE;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.POWER;

import java.util.List;
import org.rickyard.formula.Condition;
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

/** What a tractor might still be worth, as a share of today's list price: American market, from memory, for comparison. */
public final class RemainingValue {
    private RemainingValue() {}

    /** Share of list price. */
    public static final Symbol SHARE = Symbol.number("remaining value (US market, from memory)", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source CURVE = Source.memory("ASAE D497 after Cross and Perry; the middle and large rows agree"
            + " with Iowa State University examples");

    private static final ReferenceTable C1 = coefficient("C1", 0.981, 0.942, 0.976);
    private static final ReferenceTable C2 = coefficient("C2", 0.093, 0.100, 0.119);
    private static final ReferenceTable C3 = coefficient("C3", 0.0058, 0.0008, 0.0019);

    private static ReferenceTable coefficient(String name, double small, double middle, double large) {
        return new ReferenceTable(
                "Remaining value of tractors, " + name,
                "power above",
                Units.KW,
                name,
                Units.ONE,
                List.of(Row.of(0, small), Row.of(60, middle), Row.of(112, large)),
                CURVE);
    }

    private static Expr at(ReferenceTable table) {
        return new Expr.Lookup(table, value(POWER), Expr.Lookup.Mode.STEP);
    }

    /** {@code remaining-value}: (C1 − C2 √years − C3 √hours a year)². */
    public static final Formula REMAINING = new Formula(
            "remaining-value",
            SHARE,
            at(C1).minus(at(C2).times(Expr.call(Function.SQRT, new Expr.NumberOf(value(LIFE), Units.YR))))
                    .minus(at(C3).times(Expr.call(Function.SQRT, new Expr.NumberOf(value(HOURS_PER_YEAR), Units.H))))
                    .power(2)
                    .onlyWhen(Condition.is(MACHINE_TYPE, "tractor"), "the curve held is for tractors"),
            CURVE,
            "tractors, 1 to 20 years; share of the current list price, not of the price paid. Comparison only",
            List.of(
                    example("Iowa State University, 105 hp, 10 yr, 400 h/yr: 37 %", 78, 10, 37),
                    example("Iowa State University, 180 hp, 15 yr, 400 h/yr: 23 %", 134, 15, 23)));

    private static WorkedExample example(String source, double kilowatts, double years, double percent) {
        return WorkedExample.from(Source.published(source))
                .with(MACHINE_TYPE, "tractor")
                .with(POWER, kilowatts)
                .with(LIFE, years)
                .with(HOURS_PER_YEAR, 400)
                .gives(percent, Units.PERCENT, 0);
    }
}
