package org.rickyard.formula;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitMismatchException;
import org.rickyard.quantity.Units;

/** Reads the unit of an expression, and refuses expressions whose units do not fit together. */
final class UnitChecker {
    private UnitChecker() {}

    static Unit unitOf(Expr expr) {
        if (expr instanceof Expr.Const e) {
            return arithmeticUnit(e.constant().unit());
        } else if (expr instanceof Expr.Ref e) {
            return arithmeticUnit(e.symbol().unit());
        } else if (expr instanceof Expr.From e) {
            return arithmeticUnit(e.symbol().unit());
        } else if (expr instanceof Expr.Total e) {
            return arithmeticUnit(e.summed().unit());
        } else if (expr instanceof Expr.LeastGiven e) {
            return arithmeticUnit(e.symbols().get(0).unit());
        } else if (expr instanceof Expr.Before e) {
            return arithmeticUnit(e.summed().unit());
        } else if (expr instanceof Expr.Sum e) {
            return unitOf(e.a());
        } else if (expr instanceof Expr.Difference e) {
            return unitOf(e.a());
        } else if (expr instanceof Expr.Product e) {
            return unitOf(e.a()).times(unitOf(e.b()));
        } else if (expr instanceof Expr.Quotient e) {
            return unitOf(e.a()).over(unitOf(e.b()));
        } else if (expr instanceof Expr.Power e) {
            return unitOf(e.base()).pow(e.exponent());
        } else if (expr instanceof Expr.Negate e) {
            return unitOf(e.a());
        } else if (expr instanceof Expr.Call e) {
            return callUnit(e);
        } else if (expr instanceof Expr.Scale e) {
            return e.to();
        } else if (expr instanceof Expr.AsUnit e) {
            return e.unitGiven();
        } else if (expr instanceof Expr.Choice e) {
            return unitOf(e.then());
        } else if (expr instanceof Expr.Only e) {
            return unitOf(e.then());
        } else if (expr instanceof Expr.GivenElse e) {
            return e.given().unit();
        } else if (expr instanceof Expr.Lookup e) {
            return arithmeticUnit(e.table().valueUnit());
        }
        return Units.ONE;
    }

    /** Quantities that are compared cell by cell, so all in one unit. */
    static List<Symbol> alike(List<Symbol> symbols) {
        for (Symbol symbol : symbols) {
            if (!symbol.unit().isSameScale(symbols.get(0).unit())) {
                throw new UnitMismatchException(symbol.unit(), symbols.get(0).unit());
            }
        }
        return List.copyOf(symbols);
    }

    /** A value in per cent enters arithmetic as a fraction. */
    static Unit arithmeticUnit(Unit unit) {
        return isPercent(unit) ? Unit.of("", unit.dimension(), Ratio.ONE) : unit;
    }

    static boolean isPercent(Unit unit) {
        return unit.isSameScale(Units.PERCENT) || unit.isSameScale(Units.PERCENT_DM);
    }

    /** The second brought to the unit of the first. */
    static Expr aligned(Expr first, Expr second) {
        return in(second, unitOf(first));
    }

    /**
     * The expression brought to a unit. Inside a choice each branch is brought there, so that a per cent that is
     * only chosen between is not divided by 100 and multiplied again. What was brought to another unit on the way is brought
     * to this one at once. A given value stands in its own unit.
     */
    static Expr in(Expr expr, Unit unit) {
        if (isIn(expr, unit)) {
            return expr;
        }
        if (expr instanceof Expr.Scale scale) {
            return in(scale.a(), unit);
        }
        if (expr instanceof Expr.Choice choice) {
            return new Expr.Choice(choice.when(), in(choice.then(), unit), in(choice.otherwise(), unit));
        }
        if (expr instanceof Expr.Only only) {
            return new Expr.Only(only.when(), in(only.then(), unit), only.otherwise());
        }
        if (expr instanceof Expr.GivenElse) {
            throw new UnitMismatchException(unitOf(expr), unit);
        }
        return new Expr.Scale(expr, unit);
    }

    /** The unit a leaf's stored number is in, before a per cent is read as a fraction; null if it is no leaf. */
    static Unit storedUnit(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            return e.symbol().unit();
        } else if (expr instanceof Expr.Const e) {
            return e.constant().unit();
        } else if (expr instanceof Expr.Lookup e) {
            return e.table().valueUnit();
        } else if (expr instanceof Expr.LeastGiven e) {
            return e.symbols().get(0).unit();
        }
        return null;
    }

    static boolean isIn(Expr expr, Unit unit) {
        return unitOf(expr).isSameScale(unit);
    }

    static List<Expr> arguments(Function function, List<Expr> arguments) {
        if (!function.takes(arguments.size())) {
            throw new IllegalArgumentException(function + " does not take " + arguments.size() + " arguments");
        }
        switch (function) {
            case MIN, MAX -> {
                List<Expr> aligned = new ArrayList<>();
                for (Expr argument : arguments) {
                    aligned.add(aligned(arguments.get(0), argument));
                }
                return List.copyOf(aligned);
            }
            case EXP, LN, ATAN -> requireNumber(arguments.get(0));
            case ROUND -> {
                if (!(arguments.get(1) instanceof Expr.Num)) {
                    throw new IllegalArgumentException("ROUND takes a plain number of decimals");
                }
            }
            case SQRT -> root(unitOf(arguments.get(0)));
            default -> {}
        }
        return List.copyOf(arguments);
    }

    private static void requireNumber(Expr argument) {
        if (!isIn(argument, Units.ONE)) {
            throw new UnitMismatchException(unitOf(argument), Units.ONE);
        }
    }

    private static Unit callUnit(Expr.Call call) {
        Unit first = unitOf(call.arguments().get(0));
        return switch (call.function()) {
            case EXP, LN, ATAN -> Units.ONE;
            case SQRT -> root(first);
            default -> first;
        };
    }

    private static Unit root(Unit unit) {
        if (unit.isSameScale(Units.ONE)) {
            return Units.ONE;
        }
        throw new IllegalArgumentException("the square root of '" + unit + "' has no unit of the trade;"
                + " take the number of units first, or the root of a ratio");
    }
}
