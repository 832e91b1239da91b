package org.rickyard.formula;

import java.util.stream.Collectors;
import org.rickyard.quantity.Unit;

/** Prints an expression in words: {@code speed × working width × field efficiency ÷ 10}. */
public class WordsPrinter {
    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int ATOM = 3;

    /** A printer of names. */
    protected WordsPrinter() {}

    /** The expression in words. */
    public static String words(Expr expr) {
        return new WordsPrinter().print(expr, SUM);
    }

    /** The condition in words. */
    public static String words(Condition condition) {
        return new WordsPrinter().condition(condition);
    }

    /** A quantity of the row. */
    protected String quantity(Symbol symbol) {
        return symbol.name();
    }

    /** A constant. */
    protected String constant(Constant constant) {
        return constant.name();
    }

    /** What has a value only under a condition, which its range of validity tells. */
    protected String only(Expr.Only e, int least) {
        return print(e.then(), least);
    }

    /** A choice between two. */
    protected String choice(Expr.Choice e) {
        return "if " + condition(e.when()) + ": " + print(e.then(), SUM) + "; otherwise: " + print(e.otherwise(), SUM);
    }

    /** A given value or another. */
    protected String givenElse(Expr.GivenElse e) {
        return quantity(e.given()) + " if given, otherwise " + print(e.otherwise(), SUM);
    }

    /** A reading of a table. */
    protected String lookup(Expr.Lookup e) {
        String how = e.mode() == Expr.Lookup.Mode.LINEAR ? " (between the rows on a straight line)" : "";
        return "'" + e.table().name() + "' at " + print(e.key(), ATOM) + how;
    }

    /** A total over another table. */
    protected String total(Expr.Total e) {
        return "total of " + e.summed().name();
    }

    /** A count over another table. */
    protected String count(Expr.Count e) {
        return "rows " + (e.missing() ? "without " : "with ") + e.counted().name();
    }

    /** A quantity of another table. */
    protected String from(Expr.From e) {
        return e.symbol().name() + " of that row";
    }

    final String print(Expr expr, int least) {
        if (expr instanceof Expr.Num e) {
            return e.value() == Math.PI ? "π" : signed(Numbers.exact(e.value()), least);
        } else if (expr instanceof Expr.Const e) {
            return signed(constant(e.constant()), least);
        } else if (expr instanceof Expr.Ref e) {
            return signed(quantity(e.symbol()), least);
        } else if (expr instanceof Expr.Sum e) {
            return bracket(print(e.a(), SUM) + " + " + print(e.b(), PRODUCT), SUM, least);
        } else if (expr instanceof Expr.Difference e) {
            return bracket(print(e.a(), SUM) + " − " + print(e.b(), PRODUCT), SUM, least);
        } else if (expr instanceof Expr.Product e) {
            return bracket(print(e.a(), PRODUCT) + " × " + print(e.b(), ATOM), PRODUCT, least);
        } else if (expr instanceof Expr.Quotient e) {
            return bracket(print(e.a(), PRODUCT) + " ÷ " + print(e.b(), ATOM), PRODUCT, least);
        } else if (expr instanceof Expr.Power e) {
            return print(e.base(), ATOM) + superscript(e.exponent());
        } else if (expr instanceof Expr.Negate e) {
            return "(−" + print(e.a(), ATOM) + ")";
        } else if (expr instanceof Expr.Scale e) {
            return scale(e, least);
        } else if (expr instanceof Expr.NumberOf e) {
            return numberOf(e, least);
        } else if (expr instanceof Expr.AsUnit e) {
            // "÷ 1" would look like a slip; "÷ 1 yr" says what it is there for.
            return e.a() instanceof Expr.Num one && one.value() == 1 ? "1 " + e.unit() : print(e.a(), least);
        } else if (expr instanceof Expr.Only e) {
            return only(e, least);
        } else if (expr instanceof Expr.Call e) {
            return call(e);
        } else if (expr instanceof Expr.Choice e) {
            return bracket(choice(e), SUM, least);
        } else if (expr instanceof Expr.GivenElse e) {
            return bracket(givenElse(e), SUM, least);
        } else if (expr instanceof Expr.Lookup e) {
            return lookup(e);
        } else if (expr instanceof Expr.Text e) {
            return "\"" + e.text() + "\"";
        } else if (expr instanceof Expr.LeastGiven e) {
            return "least given of " + each(e.symbols());
        } else if (expr instanceof Expr.LabelOfLeast e) {
            return "which is least given of " + each(e.symbols());
        } else if (expr instanceof Expr.Label e) {
            return e.symbol().name();
        } else if (expr instanceof Expr.Join e) {
            return e.parts().stream().map(part -> print(part, SUM)).collect(Collectors.joining(" and "));
        } else if (expr instanceof Expr.Total e) {
            return total(e);
        } else if (expr instanceof Expr.Before e) {
            return "total of " + e.summed().name() + " of the rows before it";
        } else if (expr instanceof Expr.Count e) {
            return count(e);
        } else if (expr instanceof Expr.Position e) {
            return "the row with this " + e.keyHere().name();
        } else if (expr instanceof Expr.From e) {
            return from(e);
        }
        throw new IllegalArgumentException("unknown expression " + expr);
    }

    private String each(java.util.List<Symbol> symbols) {
        return symbols.stream().map(this::quantity).collect(Collectors.joining("; ", "(", ")"));
    }

    /** A bare number of units; of a percentage it is said, since elsewhere that enters as a fraction. */
    private String numberOf(Expr.NumberOf e, int least) {
        Unit stored = UnitChecker.storedUnit(e.a());
        return stored != null && UnitChecker.isPercent(stored) && UnitChecker.isPercent(e.in())
                ? percents(e.a())
                : print(UnitChecker.in(e.a(), e.in()), least);
    }

    /** How many per cent a quantity or constant is. */
    protected String percents(Expr stored) {
        return print(stored, ATOM) + " in %";
    }

    private String scale(Expr.Scale e, int least) {
        if (UnitChecker.storedUnit(e.a()) != null
                && UnitChecker.storedUnit(e.a()).isSameScale(e.to())) {
            return print(e.a(), least);
        }
        Scaling scaling = Scaling.of(e.a().unit().ratioTo(e.to()));
        return scaling.isNothing()
                ? print(e.a(), least)
                : bracket(print(e.a(), PRODUCT) + scaling.words(), PRODUCT, least);
    }

    private String call(Expr.Call e) {
        if (e.isFreedOfNoise()) {
            // Who reads it would not put it into a calculator, where there is no such noise.
            return print(e.arguments().get(0), ATOM);
        }
        if (e.function() == Function.ROUND) {
            return print(e.arguments().get(0), ATOM) + " rounded to "
                    + print(e.arguments().get(1), ATOM) + " decimals";
        }
        return e.function().words() + " "
                + e.arguments().stream().map(a -> print(a, SUM)).collect(Collectors.joining("; ", "(", ")"));
    }

    final String condition(Condition condition) {
        if (condition instanceof Condition.Compare c) {
            return print(c.a(), SUM) + " is " + c.relation().words() + " " + print(c.b(), SUM);
        } else if (condition instanceof Condition.Is c) {
            return c.symbol().name() + " is " + c.word();
        } else if (condition instanceof Condition.Given c) {
            return c.symbol().name() + " is given";
        } else if (condition instanceof Condition.Blank c) {
            return c.symbol().name() + " is blank";
        } else if (condition instanceof Condition.InTable c) {
            return print(c.key(), SUM) + " is in the table '" + c.table().name() + "'";
        } else if (condition instanceof Condition.All c) {
            // Who reads "a and b or c" takes the and first.
            return c.parts().stream()
                    .map(part ->
                            part instanceof Condition.Any any && any.parts().size() > 1
                                    ? "(" + condition(part) + ")"
                                    : condition(part))
                    .collect(Collectors.joining(" and "));
        } else if (condition instanceof Condition.Any c) {
            return c.parts().stream().map(this::condition).collect(Collectors.joining(" or "));
        } else if (condition instanceof Condition.Not c && c.condition() instanceof Condition.Blank blank) {
            return blank.symbol().name() + " is typed";
        } else if (condition instanceof Condition.Not c) {
            return "not (" + condition(c.condition()) + ")";
        }
        throw new IllegalArgumentException("unknown condition " + condition);
    }

    /** A number below 0 in brackets where a sign before it or a power behind it would be misread. */
    private static String signed(String number, int least) {
        return bracket(number, number.startsWith("-") ? SUM : ATOM, least);
    }

    private static String superscript(int exponent) {
        return switch (exponent) {
            case 2 -> "²";
            case 3 -> "³";
            default -> "^" + exponent;
        };
    }

    private static String bracket(String text, int strength, int least) {
        return strength < least ? "(" + text + ")" : text;
    }
}
