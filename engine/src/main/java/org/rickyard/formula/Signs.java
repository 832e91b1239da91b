package org.rickyard.formula;

import org.rickyard.quantity.Range;

/** Reads from the possible ranges whether an expression is surely above zero, or surely not below it. */
final class Signs {
    private Signs() {}

    static boolean positive(Expr expr) {
        if (expr instanceof Expr.Num e) {
            return e.value() > 0;
        } else if (expr instanceof Expr.Const e) {
            return positive(e.constant().possible());
        } else if (expr instanceof Expr.Ref e) {
            return positive(e.symbol().possible());
        } else if (expr instanceof Expr.Product e) {
            return positive(e.a()) && positive(e.b());
        } else if (expr instanceof Expr.Quotient e) {
            return positive(e.a()) && positive(e.b());
        } else if (expr instanceof Expr.Sum e) {
            return positive(e.a()) && notNegative(e.b()) || notNegative(e.a()) && positive(e.b());
        } else if (expr instanceof Expr.Power e) {
            return positive(e.base());
        } else if (expr instanceof Expr.Scale e) {
            return positive(e.a());
        } else if (expr instanceof Expr.NumberOf e) {
            return positive(e.a());
        } else if (expr instanceof Expr.AsUnit e) {
            return positive(e.a());
        } else if (expr instanceof Expr.LeastGiven e) {
            return e.symbols().stream().allMatch(symbol -> positive(symbol.possible()));
        } else if (expr instanceof Expr.Call e) {
            return switch (e.function()) {
                case EXP -> true;
                case SQRT, ABS -> positive(e.arguments().get(0));
                case MIN -> e.arguments().stream().allMatch(Signs::positive);
                case MAX -> e.arguments().stream().anyMatch(Signs::positive);
                default -> false;
            };
        }
        return false;
    }

    static boolean notNegative(Expr expr) {
        if (positive(expr)) {
            return true;
        }
        if (expr instanceof Expr.Num e) {
            return e.value() >= 0;
        } else if (expr instanceof Expr.Const e) {
            return e.constant().possible().low() >= 0;
        } else if (expr instanceof Expr.Ref e) {
            return e.symbol().possible().low() >= 0;
        } else if (expr instanceof Expr.Product e) {
            return notNegative(e.a()) && notNegative(e.b());
        } else if (expr instanceof Expr.Quotient e) {
            return notNegative(e.a()) && positive(e.b());
        } else if (expr instanceof Expr.Sum e) {
            return notNegative(e.a()) && notNegative(e.b());
        } else if (expr instanceof Expr.Scale e) {
            return notNegative(e.a());
        } else if (expr instanceof Expr.Power e) {
            return e.exponent() % 2 == 0 || notNegative(e.base());
        } else if (expr instanceof Expr.Call e) {
            return e.function() == Function.ABS
                    || e.function() == Function.SQRT
                    || e.arguments().stream().allMatch(Signs::notNegative) && e.function() != Function.LN;
        }
        return false;
    }

    private static boolean positive(Range range) {
        return range.low() > 0 || range.low() == 0 && range.lowOpen();
    }
}
