package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AGE;
import static org.rickyard.trade.Quantities.HOURS_PER_YEAR;
import static org.rickyard.trade.Quantities.KIND_OF_MACHINE;
import static org.rickyard.trade.Quantities.LIFE;
import static org.rickyard.trade.Quantities.POWER;

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

    /** How old it is then. */
    public static final Symbol OLD = Symbol.number("age when it goes", Units.YR)
            .possible(Range.above(0, AGE.possible().high() + LIFE.possible().high()))
            .decimals(0);

    /** As far as the curve is held. */
    public static final Constant OLDEST =
            new Constant("age up to which the remaining value of tractors is told", 20, Units.YR, CURVE).aboveZero();

    /** {@code age-when-it-goes}: its age now and the years it is kept; a new machine has no age yet. */
    public static final Formula AGE_WHEN_IT_GOES = new Formula(
            "age-when-it-goes",
            OLD,
            choice(
                    new Condition.Given(AGE),
                    value(AGE).plus(LIFE),
                    value(LIFE)
                            .onlyWhen(
                                    Condition.all(List.of(
                                            new Condition.Blank(AGE),
                                            Condition.compare(
                                                    value(RepairCost.START),
                                                    Condition.Relation.EQUAL,
                                                    new Expr.AsUnit(number(0), Units.H)))),
                                    "age missing: the machine has run already, so how old it is must be typed")),
            Source.derived("age now and the years it is kept"),
            "without an age, machines without hours are new",
            List.of(
                    WorkedExample.from(Source.derived("10 years old, kept 5 more"))
                            .with(AGE, 10)
                            .with(LIFE, 5)
                            .gives(15, Units.YR, 6),
                    WorkedExample.from(Source.derived("new, kept 12 years"))
                            .with(LIFE, 12)
                            .with(RepairCost.START, 0)
                            .gives(12, Units.YR, 6)));

    private static Expr at(ReferenceTable table) {
        return new Expr.Lookup(table, value(POWER), Expr.Lookup.Mode.STEP);
    }

    /** {@code remaining-value}: (C1 − C2 √age − C3 √hours a year)². */
    public static final Formula REMAINING = new Formula(
            "remaining-value",
            SHARE,
            at(C1).minus(at(C2).times(Expr.call(Function.SQRT, new Expr.NumberOf(value(OLD), Units.YR))))
                    .minus(at(C3).times(Expr.call(Function.SQRT, new Expr.NumberOf(value(HOURS_PER_YEAR), Units.H))))
                    .power(2)
                    .onlyWhen(
                            Condition.compare(value(OLD), Condition.Relation.AT_MOST, constant(OLDEST)),
                            "it is older then than the curve is held for")
                    .onlyWhen(Condition.is(KIND_OF_MACHINE, "tractor"), "the curve held is for tractors"),
            CURVE,
            "tractors, up to 20 years old when they go; share of the current list price, not of the price paid. Comparison only",
            List.of(
                    example("Iowa State University, 105 hp, 10 yr, 400 h/yr: 37 %", 78, 10, 37),
                    example("Iowa State University, 180 hp, 15 yr, 400 h/yr: 23 %", 134, 15, 23)));

    private static WorkedExample example(String source, double kilowatts, double years, double percent) {
        return WorkedExample.from(Source.published(source))
                .with(KIND_OF_MACHINE, "tractor")
                .with(POWER, kilowatts)
                .with(OLD, years)
                .with(HOURS_PER_YEAR, 400)
                .gives(percent, Units.PERCENT, 0);
    }
}
