package org.rickyard.formula;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.formula.Values.State.BLANK;
import static org.rickyard.formula.Values.State.UNUSABLE;
import static org.rickyard.formula.Values.State.WITHHELD;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * One small expression for every node and condition and every trap known, each with the answers worked out by hand, row
 * by row; {@link #NOTHING} where the value must be withheld.
 */
final class NodeCases {
    private NodeCases() {}

    /** Where the cell must show "". */
    static final String NOTHING = "";

    /** An expression, the rows it is worked out for, and the answers by hand. */
    record NodeCase(String name, SmallGrid grid, Expr expr, List<Object> answers) {
        @Override
        public String toString() {
            return name;
        }
    }

    static final Symbol X = Symbol.number("x", Units.ONE);
    static final Symbol Y = Symbol.number("y", Units.ONE);
    static final Symbol Z = Symbol.number("z", Units.ONE);
    static final Symbol SHARE = Symbol.number("share", Units.PERCENT);
    static final Symbol LENGTH = Symbol.number("length", Units.M);
    static final Symbol FEET = Symbol.number("feet", Units.FT);
    static final Symbol SPEED = Symbol.number("speed", Units.KM_PER_H);
    static final Symbol POWER = Symbol.number("power", Units.KW);
    static final Symbol WORD = Symbol.text("kind");
    static final Symbol KEY = Symbol.number("key", Units.ONE);
    static final Symbol AT = Symbol.number("row there", Units.ONE);
    private static final Symbol ORDER = Symbol.number("order", Units.ONE);

    private static final Unit WATT = Unit.of("W", Units.KW.dimension(), Ratio.ONE);
    private static final Source SOURCE = Source.derived("test");
    static final Constant TEN = new Constant("ten", 10, Units.ONE, SOURCE);
    static final Constant QUARTER = new Constant("a quarter", 25, Units.PERCENT, SOURCE);
    static final ReferenceTable STEPS = new ReferenceTable(
            "steps", "x", Units.ONE, "value", Units.ONE, List.of(Row.of(10, 1), Row.of(20, 3), Row.of(40, 7)), SOURCE);
    static final ReferenceTable SHARES = new ReferenceTable(
            "shares",
            "kind",
            Units.ONE,
            "share",
            Units.PERCENT,
            List.of(Row.of("mower", 80), Row.of("rake", 75), Row.of("field rolls", 85)),
            SOURCE);
    static final ReferenceTable NAMES = new ReferenceTable(
            "names", "x", Units.ONE, "name", Units.ONE, List.of(Row.of(0, "low"), Row.of(5, "high")), SOURCE);

    private static final List<NodeCase> ALL = new ArrayList<>();

    static List<NodeCase> all() {
        return ALL;
    }

    private static void add(String name, SmallGrid grid, Expr expr, Object... answers) {
        ALL.add(new NodeCase(name, grid, expr, List.of(answers)));
    }

    private static SmallGrid xy() {
        return new SmallGrid().column(X, 7, BLANK, 7, WITHHELD, UNUSABLE).column(Y, 2, 2, BLANK, 3, 2);
    }

    static {
        arithmetic();
        signs();
        rounding();
        functions();
        units();
        choices();
        lookups();
        words();
        joins();
        leastGiven();
    }

    private static void leastGiven() {
        String n = NOTHING;
        SmallGrid three = new SmallGrid()
                .column(X, 7, BLANK, 2, WITHHELD, UNUSABLE)
                .column(Y, 3, 5, 2, WITHHELD, 4)
                .column(Z, 5, BLANK, 9, WITHHELD, 6);
        List<Symbol> all = List.of(X, Y, Z);
        add("least of what is given", three, new Expr.LeastGiven(all), 3, 5, 2, n, 4);
        add("twice the least of what is given", three, number(2).times(new Expr.LeastGiven(all)), 6, 10, 4, n, 8);
        add(
                "label of the least, the first of equals",
                three,
                new Expr.LabelOfLeast(all, List.of("one", "two \"2\"", "three")),
                "two \"2\"",
                "two \"2\"",
                "one",
                n,
                "two \"2\"");
    }

    private static void arithmetic() {
        String n = NOTHING;
        add("number", new SmallGrid().column(X, 1), number(1.25).plus(X), 2.25);
        add("tiny number", new SmallGrid().column(X, 1), number(1e-10).times(X), 1e-10);
        add("quantity", xy(), value(X), 7, n, 7, n, n);
        add("sum", xy(), value(X).plus(Y), 9, n, n, n, n);
        add("difference", xy(), value(X).minus(Y), 5, n, n, n, n);
        add("product", xy(), value(X).times(Y), 14, n, n, n, n);
        add("quotient", xy(), value(X).over(Y), 3.5, n, n, n, n);
        SmallGrid zero = new SmallGrid().column(X, 7, 0).column(Y, 0, 0);
        add("division by zero is withheld", zero, value(X).over(Y), n, n);
        SmallGrid fraction =
                new SmallGrid().column(X, 6, 6, 0).column(Y, 2, 0, 2).column(Z, 12, 12, 12);
        add("a divisor that has no value of its own", fraction, value(Z).over(value(X).over(Y)), 4, n, n);
        add(
                "a logarithm of what has no value",
                fraction,
                Expr.call(Function.LN, value(X).over(Y).minus(number(2))),
                0,
                n,
                n);
        add("division by a difference of zero is withheld", zero, value(X).over(value(X).minus(X)), n, n);
        SmallGrid three = new SmallGrid().column(X, 20).column(Y, 6).column(Z, 2);
        add("difference of a difference", three, value(X).minus(value(Y).minus(Z)), 16);
        add("difference of a sum", three, value(X).minus(value(Y).plus(Z)), 12);
        add("quotient of a quotient", three, value(X).over(value(Y).over(Z)), 20.0 / 3);
        add("quotient of a product", three, value(X).over(value(Y).times(Z)), 20.0 / 12);
        add("product of sums", three, value(X).plus(Y).times(value(Y).minus(Z)), 104);
        add("square of a sum", three, value(Y).plus(Z).power(2), 64);
        add("constant", three, value(X).times(constant(TEN)), 200);
        add("per cent constant", three, value(X).times(constant(QUARTER)), 5);
        add("one and a per cent", three, value(X).times(number(1).plus(constant(QUARTER))), 25);
    }

    private static void signs() {
        SmallGrid two = new SmallGrid().column(X, 2, -2).column(Y, 3, 3);
        add("minus the square", two, new Expr.Negate(value(X).power(2)), -4, -4);
        add("the square of minus", two, new Expr.Negate(value(X)).power(2), 4, 4);
        add("the square of a negative number", two, number(-2).power(2).times(X), 8, -8);
        add("cube", two, value(X).power(3), 8, -8);
        add("negative power", two, value(X).power(-2), 0.25, 0.25);
        add("power of a power", two, value(X).power(2).power(3), 64, 64);
        add("minus a minus", two, value(Y).minus(new Expr.Negate(value(X))), 5, 1);
        add("minus a sum", two, new Expr.Negate(value(X).plus(Y)), -5, -1);
        add("over a square", two, value(Y).over(value(X).power(2)), 0.75, 0.75);
        SmallGrid zero = new SmallGrid().column(X, 0);
        add("negative power of zero is withheld", zero, value(X).power(-1), NOTHING);
    }

    private static void rounding() {
        SmallGrid noise = new SmallGrid().column(X, 0.1, 33, 4.35, 0.3, 3).column(Y, 0.2, 1.1, 100, 0.2, 1);
        Expr sum = value(X).plus(Y).times(number(10));
        add("rounded up without noise: sum", noise, call(Function.ROUND_UP, sum), 3, 341, 1044, 5, 40);
        Expr product = value(X).times(Y).times(number(10));
        add("rounded up without noise: product", noise, call(Function.ROUND_UP, product), 1, 363, 4350, 1, 30);
        add("rounded down without noise: product", noise, call(Function.ROUND_DOWN, product), 0, 363, 4350, 0, 30);
        Expr difference = value(X).minus(Y).over(number(0.1));
        add("rounded down without noise", noise, call(Function.ROUND_DOWN, difference), -1, 319, -956, 1, 20);
        SmallGrid halves = new SmallGrid().column(X, 0.5, -0.5, 2.5, -2.5, 2.675, 1.005, -1.005, 2.4, -2.6);
        add(
                "halves go away from zero",
                halves,
                call(Function.ROUND, value(X), number(0)),
                1,
                -1,
                3,
                -3,
                3,
                1,
                -1,
                2,
                -3);
        add(
                "halves at two decimals",
                halves,
                call(Function.ROUND, value(X), number(2)),
                0.5,
                -0.5,
                2.5,
                -2.5,
                2.68,
                1.01,
                -1.01,
                2.4,
                -2.6);
        add("up is away from zero", halves, call(Function.ROUND_UP, value(X)), 1, -1, 3, -3, 3, 2, -2, 3, -3);
        add("down is towards zero", halves, call(Function.ROUND_DOWN, value(X)), 0, 0, 2, -2, 2, 1, -1, 2, -2);
        SmallGrid tankfuls =
                new SmallGrid().column(X, 4000, 3460, 0.7 + 0.1, 1500).column(Y, 1000, 1500, 0.1, 1500);
        add("no phantom tankful", tankfuls, call(Function.ROUND_DOWN, value(X).over(Y)), 4, 2, 8, 1);
    }

    private static void functions() {
        String n = NOTHING;
        SmallGrid grid = new SmallGrid().column(X, 4, -4, 0, BLANK, 1e6).column(Y, 9, 2, -1, 3, 5);
        add("least", grid, least(value(X), value(Y), number(5)), 4, -4, -1, n, 5);
        add("greatest", grid, greatest(value(X), value(Y)), 9, 2, 0, n, 1e6);
        add("size", grid, call(Function.ABS, value(X).minus(Y)), 5, 6, 1, n, 999995);
        add("root, of nothing below zero", grid, call(Function.SQRT, value(X)), 2, n, 0, n, 1000);
        add(
                "logarithm, of nothing but above zero",
                grid,
                call(Function.LN, value(X)),
                Math.log(4),
                n,
                n,
                n,
                Math.log(1e6));
        add(
                "e to a power; too large is withheld",
                grid,
                call(Function.EXP, value(Y)),
                Math.exp(9),
                Math.exp(2),
                Math.exp(-1),
                Math.exp(3),
                Math.exp(5));
        add("arc tangent", grid, call(Function.ATAN, value(X)), Math.atan(4), -Math.atan(4), 0, n, Math.atan(1e6));
        add("least of one", grid, least(value(Y)), 9, 2, -1, 3, 5);
    }

    private static void units() {
        SmallGrid grid = new SmallGrid()
                .column(SHARE, 80, BLANK)
                .column(LENGTH, 3, 3)
                .column(FEET, 10, 10)
                .column(SPEED, 10, 18)
                .column(POWER, 40, 40);
        String n = NOTHING;
        add("per cent as a fraction", grid, value(LENGTH).times(SHARE), 2.4, n);
        add("per cent below the line", grid, value(LENGTH).over(SHARE), 3.75, n);
        add("square of a per cent", grid, value(SHARE).power(2), 0.64, n);
        add("less a per cent", grid, number(1).minus(SHARE), 0.2, n);
        add("feet added to metres", grid, value(LENGTH).plus(FEET), 6.048, 6.048);
        add("metres added to feet", grid, new Expr.Scale(value(FEET).plus(LENGTH), Units.M), 6.048, 6.048);
        add("hectares an hour", grid, value(SPEED).times(LENGTH).in(Units.HA_PER_H), 3, 5.4);
        add("an endless ratio", grid, value(SPEED).in(Units.M_PER_S), 10 / 3.6, 5);
        add("per cent back as per cent", grid, value(SHARE).in(Units.PERCENT), 80, n);
        add("fraction as per cent", grid, value(LENGTH).over(FEET).in(Units.PERCENT), 300 / 3.048, 300 / 3.048);
        add("number of kilowatts", grid, number(2.5).times(new Expr.NumberOf(value(POWER), Units.KW)), 100, 100);
        add("number of watts", grid, new Expr.NumberOf(value(POWER), WATT), 40000, 40000);
        SmallGrid some = new SmallGrid().column(X, 2, BLANK).column(LENGTH, 3, 3);
        add("as many metres as typed", some, new Expr.AsUnit(value(X), Units.M).plus(LENGTH), 5, n);
        add("so many metres", grid, new Expr.AsUnit(number(2), Units.M).plus(LENGTH), 5, 5);
        add("least of two units", grid, least(value(LENGTH), value(FEET)), 3, 3);
    }

    private static void choices() {
        String n = NOTHING;
        SmallGrid grid = new SmallGrid()
                .column(X, 6, 6, 5, 5, 4, BLANK, UNUSABLE)
                .column(Y, 1, BLANK, 1, BLANK, UNUSABLE, 1, 1)
                .column(Z, BLANK, 2, 2, 2, 2, 2, 2);
        for (Relation relation : Relation.values()) {
            Object[] answers = new Object[7];
            double[] xs = {6, 6, 5, 5, 4};
            Object[] ys = {1, n, 1, n, n};
            Object[] zs = {n, 2, 2, 2, 2};
            for (int row = 0; row < 7; row++) {
                answers[row] = row > 4 ? n : relation.holds(xs[row], 5) ? ys[row] : zs[row];
            }
            add(
                    "a branch not taken may lack its inputs: " + relation.words(),
                    grid,
                    choice(Condition.compare(value(X), relation, number(5)), value(Y), value(Z)),
                    answers);
        }
        Condition above = Condition.compare(value(X), Relation.MORE, number(5));
        Condition given = new Condition.Given(Y);
        add(
                "given, and within it another choice",
                grid,
                choice(
                        given,
                        value(X),
                        choice(new Condition.Blank(Y), value(Z), number(9).times(X))),
                6,
                2,
                5,
                2,
                36,
                n,
                n);
        add("all", grid, choice(Condition.all(List.of(above, given)), value(Y), value(Z)), 1, 2, 2, 2, 2, n, n);
        add(
                "any",
                grid,
                choice(Condition.any(List.of(above, given)), number(1).times(X), value(Z)),
                6,
                6,
                5,
                2,
                2,
                n,
                n);
        add("not", grid, choice(new Condition.Not(above), value(Z), value(X)), 6, 6, 2, 2, 2, n, n);
        add("given, otherwise", grid, given(Y, value(Z)), 1, 2, 1, 2, n, 1, 1);
        add("given, otherwise withheld", grid, given(Z, value(Y)), 1, 2, 2, 2, 2, 2, 2);
        add("given, otherwise a constant", grid, given(Y, constant(TEN)), 1, 10, 1, 10, n, 1, 1);
        SmallGrid shares = new SmallGrid().column(SHARE, 80, BLANK, WITHHELD, UNUSABLE);
        add("given per cent, otherwise a per cent", shares, given(SHARE, constant(QUARTER)), 80, 25, 25, n);
        add("only where", grid, value(X).times(number(2)).onlyWhen(above, "too small"), 12, 12, n, n, n, n, n);
        add(
                "only where, over what may be zero",
                grid,
                value(Z).over(value(X).minus(number(4))).onlyWhen(above, "no"),
                n,
                1,
                n,
                n,
                n,
                n,
                n);
    }

    private static void lookups() {
        String n = NOTHING;
        SmallGrid grid = new SmallGrid().column(X, 9.999, 10, 15, 20, 30, 40, 40.001, BLANK, 19.999);
        add(
                "between rows on a straight line, never beyond",
                grid,
                new Expr.Lookup(STEPS, value(X), Mode.LINEAR),
                n,
                1,
                2,
                3,
                5,
                7,
                n,
                n,
                2.9998);
        add("the last row not above", grid, new Expr.Lookup(STEPS, value(X), Mode.STEP), n, 1, 1, 3, 3, 7, 7, n, 1);
        add("this very row", grid, new Expr.Lookup(STEPS, value(X), Mode.EXACT), n, 1, n, 3, n, 7, n, n, n);
        for (Mode mode : Mode.values()) {
            Condition in = new Condition.InTable(STEPS, value(X), mode);
            boolean[] holds =
                    switch (mode) {
                        case LINEAR -> new boolean[] {false, true, true, true, true, true, false, false, true};
                        case STEP -> new boolean[] {false, true, true, true, true, true, true, false, true};
                        case EXACT -> new boolean[] {false, true, false, true, false, true, false, false, false};
                    };
            Object[] answers = new Object[9];
            for (int row = 0; row < 9; row++) {
                answers[row] = row == 7 ? (Object) n : holds[row] ? 1 : 0;
            }
            add("in the table: " + mode, grid, choice(in, number(1), number(0)), answers);
        }
        SmallGrid kinds = new SmallGrid().column(WORD, "mower", "Mower", "field rolls", "plough", BLANK, "rak", "80");
        Expr share = new Expr.Lookup(SHARES, value(WORD), Mode.EXACT);
        add("by a word", kinds, share.times(number(2)), 1.6, 1.6, 1.7, n, n, n, n);
        add("by a word, as per cent", kinds, share.in(Units.PERCENT), 80, 80, 85, n, n, n, n);
        add(
                "word in the table",
                kinds,
                choice(new Condition.InTable(SHARES, value(WORD), Mode.EXACT), number(1), number(0)),
                1,
                1,
                1,
                0,
                0,
                0,
                0);
        SmallGrid named = new SmallGrid().column(X, -1, 0, 4.9, 5, BLANK);
        add("a word by a number", named, new Expr.Lookup(NAMES, value(X), Mode.STEP), n, "low", "low", "high", n);
        add(
                "a table read with a sum",
                named,
                new Expr.Lookup(NAMES, value(X).plus(number(1)), Mode.STEP),
                "low",
                "low",
                "high",
                "high",
                n);
    }

    private static void words() {
        String n = NOTHING;
        SmallGrid grid =
                new SmallGrid().column(WORD, "walled", "WALLED", "heap", BLANK).column(X, 1, BLANK, 3, 4);
        Condition walled = Condition.is(WORD, "walled");
        add("is a word", grid, choice(walled, value(X), number(9).times(X)), 1, n, 27, 36);
        add("a word is given", grid, choice(new Condition.Given(WORD), number(1), number(0)), 1, 1, 1, 0);
        add("a word is blank", grid, choice(new Condition.Blank(WORD), number(1), number(0)), 0, 0, 0, 1);
        add(
                "words",
                grid,
                choice(walled, text("say \"walls\""), text("<no> & none")),
                "say \"walls\"",
                "say \"walls\"",
                "<no> & none",
                "<no> & none");
        add(
                "sentences joined",
                grid,
                new Expr.Join(List.of(
                        text("A. "),
                        choice(new Condition.Given(X), text(""), text("x missing. ")),
                        choice(walled, text("walls"), text("=none")))),
                "A. walls",
                "A. x missing. walls",
                "A. =none",
                "A. =none");
        add(
                "the label over a column",
                grid,
                new Expr.Join(List.of(new Expr.Label(X, X.name()), text(" missing. "))),
                X.name() + " missing. ",
                X.name() + " missing. ",
                X.name() + " missing. ",
                X.name() + " missing. ");
        add(
                "a word chosen by a number that may be missing",
                grid,
                choice(Condition.compare(value(X), Relation.MORE, number(2)), text("much"), text("little")),
                "little",
                n,
                "much",
                "much");
        Condition bothGiven = Condition.all(List.of(new Condition.Given(WORD), new Condition.Given(X)));
        add("a word and a number are given", grid, choice(bothGiven, number(1), number(0)), 1, 0, 1, 0);
        add("a word of the row", grid, value(WORD), "walled", "WALLED", "heap", n);
    }

    private static void joins() {
        String n = NOTHING;
        SmallGrid grid = new SmallGrid()
                .column(KEY, 1, 2, 3, 4, 0)
                .column(AT, 1, 2, BLANK, 4, WITHHELD)
                .column(ORDER, 4, 3, 1, BLANK, 2)
                .other("there", KEY, 1, 2, 2, 1, 3)
                .other("there", ORDER, 1, 1, 2, 3, 1)
                .other("there", X, 10, 20, BLANK, 0.5, WITHHELD)
                .other("there", WORD, "one", "two", BLANK, "four", "five");
        add("total of what there is", grid, new Expr.Total("there", X, KEY, KEY, false), 10.5, 20, n, n, n);
        add("total, whole or not at all", grid, new Expr.Total("there", X, KEY, KEY, true), 10.5, n, n, n, n);
        add("count of the given", grid, new Expr.Count("there", X, KEY, KEY, false), 2, 1, 0, 0, 0);
        add("count of the missing", grid, new Expr.Count("there", X, KEY, KEY, true), 0, 1, 1, 0, 0);
        add("total of the rows before", grid, new Expr.Before("there", X, KEY, ORDER), 10.5, n, 0, n, 0);
        SmallGrid unordered = new SmallGrid()
                .column(KEY, 1, 2)
                .column(ORDER, 4, 3)
                .other("there", KEY, 1, 1, 2)
                .other("there", ORDER, 1, BLANK, 1)
                .other("there", X, 10, 20, 5);
        add("no total before where a row has no order", unordered, new Expr.Before("there", X, KEY, ORDER), n, 5);
        add("position of the first such row", grid, new Expr.Position("there", KEY, KEY), 1, 2, 5, n, n);
        add("a number from that row", grid, new Expr.From("there", X, AT), 10, 20, n, 0.5, n);
        SmallGrid third = new SmallGrid().column(AT, 3).other("there", X, 10, 20, BLANK);
        add("no number where none stands in that row", third, new Expr.From("there", X, AT), n);
        add("a word from that row", grid, new Expr.From("there", WORD, AT), "one", "two", n, "four", n);
        add(
                "a total in one branch only",
                grid,
                choice(
                        Condition.compare(value(KEY), Relation.LESS, number(2)),
                        new Expr.Total("there", X, KEY, KEY, true),
                        value(KEY)),
                10.5,
                2,
                3,
                4,
                n);
    }
}
