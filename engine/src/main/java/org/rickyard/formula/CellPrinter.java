package org.rickyard.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Prints an expression as a cell formula, guarded so that what is missing withholds and never counts as zero. */
public final class CellPrinter {
    /** Stands where the row's number goes; cell formulas are the same in every row but for it. */
    public static final char ROW = '\u0001';

    private static final int SUM = 1;
    private static final int PRODUCT = 2;
    private static final int ATOM = 3;
    private static final String ANY_NUMBER = "\">-1E+300\"";

    private final CellNames names;

    /** A printer for one table. */
    public CellPrinter(CellNames names) {
        this.names = names;
    }

    /** The formula of a cell, without the leading equals sign; a text expression needs no guard. */
    public String guarded(Expr expr) {
        return guarded(expr, Set.of());
    }

    /** As above, where some quantities are known to have a value already. */
    private String guarded(Expr expr, Set<Symbol> known) {
        if (expr instanceof Expr.Choice e) {
            return guardedChoice(e, known);
        } else if (expr instanceof Expr.GivenElse e) {
            String cell = names.cell(e.given());
            return "IF(ISNUMBER(" + cell + ")," + cell + ",IF(" + cell + "=\"\"," + guarded(e.otherwise(), known)
                    + ",\"\"))";
        } else if (expr instanceof Expr.Ref e) {
            String cell = names.cell(e.symbol());
            return e.symbol().type() == Symbol.Type.TEXT ? cell : "IF(ISNUMBER(" + cell + ")," + cell + ",\"\")";
        } else if (expr instanceof Expr.From e) {
            return from(e);
        } else if (expr instanceof Expr.Position e) {
            return position(e);
        } else if (expr instanceof Expr.Total e) {
            return total(e);
        } else if (expr instanceof Expr.Before e) {
            return before(e);
        } else if (expr instanceof Expr.Count e) {
            return count(e);
        } else if (expr instanceof Expr.Text || expr instanceof Expr.Join) {
            return print(expr);
        }
        return guard(Needs.of(expr), known, print(expr));
    }

    private String guardedChoice(Expr.Choice e, Set<Symbol> known) {
        Needs needs = Needs.of(e.when());
        Set<Symbol> inside = new LinkedHashSet<>(known);
        inside.addAll(needs.quantities());
        String branches = "IF(" + condition(e.when()) + "," + guarded(e.then(), inside) + ","
                + guarded(e.otherwise(), inside) + ")";
        return guard(needs, known, branches);
    }

    private String guard(Needs needs, Set<Symbol> known, String body) {
        List<String> counted = needs.quantities().stream()
                .filter(symbol -> !known.contains(symbol))
                .map(names::cell)
                .toList();
        // The grid's AND reads all its parts, so what could fail on a missing value is asked only once all are there,
        // and what could fail where another requirement does only once that is met.
        String inner = body;
        List<List<Needs.Requirement>> turns = needs.turns();
        for (int turn = turns.size() - 1; turn >= 0; turn--) {
            String required =
                    turns.get(turn).stream().map(r -> condition(r.condition())).collect(Collectors.joining(","));
            inner = "IF(" + (turns.get(turn).size() == 1 ? required : "AND(" + required + ")") + "," + inner + ",\"\")";
        }
        return counted.isEmpty()
                ? inner
                : "IF(COUNT(" + String.join(",", counted) + ")=" + counted.size() + "," + inner + ",\"\")";
    }

    private String from(Expr.From e) {
        String position = names.cell(e.position());
        String read = "INDEX(" + names.column(e.table(), e.symbol()) + "," + position + ")";
        String body =
                e.symbol().type() == Symbol.Type.TEXT ? read + "&\"\"" : "IF(ISNUMBER(" + read + ")," + read + ",\"\")";
        return "IF(ISNUMBER(" + position + ")," + body + ",\"\")";
    }

    /** A key that no row there carries would make MATCH an error, which no guard further on would let by. */
    private String position(Expr.Position e) {
        String match = "MATCH(" + names.cell(e.keyHere()) + "," + names.column(e.table(), e.keyThere()) + ",0)";
        return "IF(ISNUMBER(" + match + ")," + match + ",\"\")";
    }

    private String total(Expr.Total e) {
        String keys = names.column(e.table(), e.keyThere()) + "," + names.cell(e.keyHere());
        String values = names.column(e.table(), e.summed());
        String counted = "COUNTIFS(" + keys + "," + values + "," + ANY_NUMBER + ")";
        String guard = e.whole() ? "AND(" + counted + ">0," + counted + "=COUNTIFS(" + keys + "))" : counted + ">0";
        return "IF(" + guard + ",SUMIFS(" + values + "," + keys + "),\"\")";
    }

    private String before(Expr.Before e) {
        String order = names.cell(e.order());
        String lower = names.column(e.table(), e.key()) + "," + names.cell(e.key()) + ","
                + names.column(e.table(), e.order()) + ",\"<\"&" + order;
        String values = names.column(e.table(), e.summed());
        String whole = "COUNTIFS(" + lower + ")=COUNTIFS(" + lower + "," + values + "," + ANY_NUMBER + ")";
        if (!names.isKey(e.table(), e.order())) {
            // A row of no known order might come before this one.
            String keys = names.column(e.table(), e.key()) + "," + names.cell(e.key());
            String orders = names.column(e.table(), e.order());
            whole = "AND(COUNTIFS(" + keys + ")=COUNTIFS(" + keys + "," + orders + "," + ANY_NUMBER + ")," + whole
                    + ")";
        }
        return "IF(COUNT(" + names.cell(e.key()) + "," + order + ")=2,IF(" + whole + ",SUMIFS(" + values + "," + lower
                + "),\"\"),\"\")";
    }

    private String count(Expr.Count e) {
        String keys = names.column(e.table(), e.keyThere()) + "," + names.cell(e.keyHere());
        String counted = "COUNTIFS(" + keys + "," + names.column(e.table(), e.counted()) + "," + ANY_NUMBER + ")";
        return e.missing() ? "COUNTIFS(" + keys + ")-" + counted : counted;
    }

    /** The bare expression, without guard. */
    public String print(Expr expr) {
        return print(expr, SUM);
    }

    private String print(Expr expr, int least) {
        if (expr instanceof Expr.Scale e) {
            return scale(e, least);
        }
        if (expr instanceof Expr.NumberOf e) {
            return print(UnitChecker.in(e.a(), e.in()), least);
        }
        if (expr instanceof Expr.AsUnit e) {
            return print(e.a(), least);
        }
        if (expr instanceof Expr.Only e) {
            return print(e.then(), least);
        }
        String leaf = leaf(expr);
        if (leaf != null) {
            boolean percent = UnitChecker.isPercent(UnitChecker.storedUnit(expr));
            return percent ? bracket(leaf + "/100", PRODUCT, least) : leaf;
        }
        if (expr instanceof Expr.Num e) {
            return e.value() < 0 ? "(" + Numbers.exact(e.value()) + ")" : Numbers.exact(e.value());
        } else if (expr instanceof Expr.Sum e) {
            return bracket(print(e.a(), SUM) + "+" + print(e.b(), PRODUCT), SUM, least);
        } else if (expr instanceof Expr.Difference e) {
            return bracket(print(e.a(), SUM) + "-" + print(e.b(), PRODUCT), SUM, least);
        } else if (expr instanceof Expr.Product e) {
            return bracket(print(e.a(), PRODUCT) + "*" + print(e.b(), ATOM), PRODUCT, least);
        } else if (expr instanceof Expr.Quotient e) {
            return bracket(print(e.a(), PRODUCT) + "/" + print(e.b(), ATOM), PRODUCT, least);
        } else if (expr instanceof Expr.Power e) {
            // POI and the grid read -2^2 differently, so powers and negations always stand in brackets.
            return "(" + print(e.base(), ATOM) + "^" + (e.exponent() < 0 ? "(" + e.exponent() + ")" : e.exponent())
                    + ")";
        } else if (expr instanceof Expr.Negate e) {
            return "(-" + print(e.a(), ATOM) + ")";
        } else if (expr instanceof Expr.Call e) {
            return call(e);
        } else if (expr instanceof Expr.Choice e) {
            return guardedChoice(e, Set.of());
        } else if (expr instanceof Expr.Text e) {
            return "\"" + e.text().replace("\"", "\"\"") + "\"";
        } else if (expr instanceof Expr.Label e) {
            return names.label(e.symbol());
        } else if (expr instanceof Expr.Join e) {
            return bracket(
                    e.parts().stream().map(part -> print(part, SUM)).collect(Collectors.joining("&")), SUM, least);
        } else if (expr instanceof Expr.LabelOfLeast e) {
            return labelOfLeast(e);
        }
        throw new IllegalArgumentException(expr.getClass().getSimpleName() + " stands only at the top of a formula");
    }

    private String cells(List<Symbol> symbols) {
        return symbols.stream().map(names::cell).collect(Collectors.joining(","));
    }

    /** A cell without value holds the empty text, which MIN passes over and which equals no number. */
    private String labelOfLeast(Expr.LabelOfLeast e) {
        String cells = cells(e.symbols());
        String labels = "\"\"";
        for (int i = e.symbols().size() - 1; i >= 0; i--) {
            labels = "IF(" + names.cell(e.symbols().get(i)) + "=MIN(" + cells + "),\""
                    + e.labels().get(i).replace("\"", "\"\"") + "\"," + labels + ")";
        }
        return "IF(COUNT(" + cells + ")>0," + labels + ",\"\")";
    }

    /** The stored number of a leaf, before a per cent is divided by 100; null if it is no leaf. */
    private String leaf(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            return names.cell(e.symbol());
        } else if (expr instanceof Expr.Const e) {
            return names.constant(e.constant());
        } else if (expr instanceof Expr.Lookup e) {
            return lookup(e);
        } else if (expr instanceof Expr.LeastGiven e) {
            return "MIN(" + cells(e.symbols()) + ")";
        }
        return null;
    }

    private String scale(Expr.Scale e, int least) {
        if (UnitChecker.storedUnit(e.a()) != null
                && UnitChecker.storedUnit(e.a()).isSameScale(e.to())) {
            return leaf(e.a());
        }
        Scaling scaling = Scaling.of(e.a().unit().ratioTo(e.to()));
        return scaling.isNothing()
                ? print(e.a(), least)
                : bracket(print(e.a(), PRODUCT) + scaling.cell(), PRODUCT, least);
    }

    private String call(Expr.Call e) {
        String arguments = e.arguments().stream().map(this::print).collect(Collectors.joining(","));
        return switch (e.function()) {
            case ROUND_UP, ROUND_DOWN ->
                e.function().cell() + "(ROUND(" + arguments + "," + Function.NOISE_DECIMALS + "),0)";
            default -> e.function().cell() + "(" + arguments + ")";
        };
    }

    private String lookup(Expr.Lookup e) {
        String keys = names.keys(e.table());
        String values = names.values(e.table());
        String key = print(e.key());
        return switch (e.mode()) {
            case EXACT -> "INDEX(" + values + ",MATCH(" + key + "," + keys + ",0))";
            case STEP -> "INDEX(" + values + ",MATCH(" + key + "," + keys + ",1))";
            case LINEAR -> {
                String row = "MIN(MATCH(" + key + "," + keys + ",1),"
                        + (e.table().rows().size() - 1) + ")";
                String next = "(" + row + "+1)";
                String low = "INDEX(" + keys + "," + row + ")";
                yield "(INDEX(" + values + "," + row + ")+(" + key + "-" + low + ")*(INDEX(" + values + "," + next
                        + ")-INDEX(" + values + "," + row + "))/(INDEX(" + keys + "," + next + ")-" + low + "))";
            }
        };
    }

    /** A condition as the grid tests it. */
    public String condition(Condition condition) {
        if (condition instanceof Condition.Compare c) {
            return print(c.a()) + c.relation().cell() + print(c.b());
        } else if (condition instanceof Condition.Is c) {
            return names.cell(c.symbol()) + "=\"" + c.word().replace("\"", "\"\"") + "\"";
        } else if (condition instanceof Condition.Given c) {
            return c.symbol().type() == Symbol.Type.TEXT
                    ? names.cell(c.symbol()) + "<>\"\""
                    : "ISNUMBER(" + names.cell(c.symbol()) + ")";
        } else if (condition instanceof Condition.Blank c) {
            return names.cell(c.symbol()) + "=\"\"";
        } else if (condition instanceof Condition.InTable c) {
            return inTable(c);
        } else if (condition instanceof Condition.All c) {
            return all(c);
        } else if (condition instanceof Condition.Any c) {
            return c.parts().stream().map(this::condition).collect(Collectors.joining(",", "OR(", ")"));
        } else if (condition instanceof Condition.Not c && c.condition() instanceof Condition.Blank blank) {
            return names.cell(blank.symbol()) + "<>\"\"";
        } else if (condition instanceof Condition.Not c) {
            return "NOT(" + condition(c.condition()) + ")";
        }
        throw new IllegalArgumentException("unknown condition " + condition);
    }

    /** Numbers that must all be there are counted in one go; the rest stands in an AND. */
    private String all(Condition.All all) {
        List<String> counted = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (Condition part : all.parts()) {
            if (part instanceof Condition.Given given && given.symbol().type() != Symbol.Type.TEXT) {
                counted.add(names.cell(given.symbol()));
            } else {
                others.add(condition(part));
            }
        }
        if (!counted.isEmpty()) {
            others.add(0, "COUNT(" + String.join(",", counted) + ")=" + counted.size());
        }
        return others.size() == 1 ? others.get(0) : "AND(" + String.join(",", others) + ")";
    }

    private String inTable(Condition.InTable c) {
        String keys = names.keys(c.table());
        String key = print(c.key());
        int size = c.table().rows().size();
        return switch (c.mode()) {
            case EXACT -> "ISNUMBER(MATCH(" + key + "," + keys + ",0))";
            case STEP -> key + ">=INDEX(" + keys + ",1)";
            case LINEAR -> "AND(" + key + ">=INDEX(" + keys + ",1)," + key + "<=INDEX(" + keys + "," + size + "))";
        };
    }

    private static String bracket(String text, int strength, int least) {
        return strength < least ? "(" + text + ")" : text;
    }
}
