package org.rickyard.formula;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Values.State;
import org.rickyard.quantity.Unit;

/**
 * Evaluates an expression row by row, by the same guard and the same steps as its cell formula. An expression is made
 * ready once for a table and then asked for each row; no object is made per row.
 */
public final class Evaluator {
    /** A guarded number, ready for any row. */
    @FunctionalInterface
    public interface NumberAt {
        /** Puts the number into {@code out[0]} and says whether there is one. */
        boolean at(int row, double[] out);
    }

    /** A word, ready for any row. */
    @FunctionalInterface
    public interface WordAt {
        /** The word; "" if there is none. */
        String at(int row);
    }

    /** A condition, ready for any row. */
    @FunctionalInterface
    public interface TruthAt {
        /** Whether it holds; null if something it needs has no value. */
        Boolean at(int row);
    }

    @FunctionalInterface
    private interface Bare {
        double at(int row);
    }

    @FunctionalInterface
    private interface Truth {
        boolean at(int row);
    }

    private final RowValues values;

    private Evaluator(RowValues values) {
        this.values = values;
    }

    /** Makes a number expression ready. */
    public static NumberAt number(Expr expr, RowValues values) {
        return new Evaluator(values).guarded(expr);
    }

    /** Makes a text expression ready. */
    public static WordAt words(Expr expr, RowValues values) {
        return new Evaluator(values).word(expr);
    }

    /** Makes a condition ready. */
    public static TruthAt condition(Condition condition, RowValues values) {
        Evaluator evaluator = new Evaluator(values);
        Truth guard = evaluator.guard(Needs.of(condition));
        Truth truth = evaluator.truth(condition);
        return row -> guard.at(row) ? truth.at(row) : null;
    }

    private NumberAt guarded(Expr expr) {
        if (expr instanceof Expr.Choice e) {
            Truth guard = guard(Needs.of(e.when()));
            Truth when = truth(e.when());
            NumberAt then = guarded(e.then());
            NumberAt otherwise = guarded(e.otherwise());
            return (row, out) -> guard.at(row) && (when.at(row) ? then : otherwise).at(row, out);
        } else if (expr instanceof Expr.GivenElse e) {
            Values given = values.of(e.given());
            NumberAt otherwise = guarded(e.otherwise());
            return (row, out) -> {
                if (given.has(row)) {
                    out[0] = given.number(row);
                    return true;
                }
                return given.state(row) != State.UNUSABLE && otherwise.at(row, out);
            };
        } else if (expr instanceof Expr.Ref e) {
            Values column = values.of(e.symbol());
            return (row, out) -> {
                out[0] = column.number(row);
                return column.has(row);
            };
        } else if (expr instanceof Expr.From e) {
            Values column = values.of(e.table(), e.symbol());
            Values position = values.of(e.position());
            return (row, out) -> {
                if (!position.has(row)) {
                    return false;
                }
                int there = (int) position.number(row) - 1;
                out[0] = column.number(there);
                return column.has(there);
            };
        } else if (expr instanceof Expr.Position e) {
            Groups groups = Groups.of(values.of(e.table(), e.keyThere()), null);
            Values keys = values.of(e.keyHere());
            return (row, out) -> {
                out[0] = keys.has(row) ? groups.first((int) keys.number(row)) : Double.NaN;
                return !Double.isNaN(out[0]);
            };
        } else if (expr instanceof Expr.Total e) {
            return total(e);
        } else if (expr instanceof Expr.Before e) {
            return before(e);
        } else if (expr instanceof Expr.Count e) {
            Groups groups = Groups.of(values.of(e.table(), e.keyThere()), values.of(e.table(), e.counted()));
            Values keys = values.of(e.keyHere());
            return (row, out) -> {
                int key = (int) keys.number(row);
                out[0] = e.missing() ? groups.rows(key) - groups.counted(key) : groups.counted(key);
                return true;
            };
        }
        Truth guard = guard(Needs.of(expr));
        Bare bare = bare(expr);
        return (row, out) -> {
            if (!guard.at(row)) {
                return false;
            }
            out[0] = bare.at(row);
            return !Double.isNaN(out[0]) && !Double.isInfinite(out[0]);
        };
    }

    private NumberAt total(Expr.Total e) {
        Groups groups = Groups.of(values.of(e.table(), e.keyThere()), values.of(e.table(), e.summed()));
        Values keys = values.of(e.keyHere());
        return (row, out) -> {
            int key = (int) keys.number(row);
            out[0] = groups.sum(key);
            return groups.counted(key) > 0 && (!e.whole() || groups.counted(key) == groups.rows(key));
        };
    }

    private NumberAt before(Expr.Before e) {
        RunningTotals totals = RunningTotals.of(
                values.of(e.table(), e.key()), values.of(e.table(), e.order()), values.of(e.table(), e.summed()));
        Values keys = values.of(e.key());
        Values orders = values.of(e.order());
        return (row, out) ->
                keys.has(row) && orders.has(row) && totals.before((int) keys.number(row), orders.number(row), out);
    }

    private Truth guard(Needs needs) {
        Values[] required = needs.quantities().stream().map(values::of).toArray(Values[]::new);
        List<Truth> conditions = new ArrayList<>();
        for (Needs.Requirement requirement : needs.requirements()) {
            conditions.add(truth(requirement.condition()));
        }
        Truth[] further = conditions.toArray(Truth[]::new);
        return row -> {
            for (Values column : required) {
                if (!column.has(row)) {
                    return false;
                }
            }
            for (Truth condition : further) {
                if (!condition.at(row)) {
                    return false;
                }
            }
            return true;
        };
    }

    private Bare bare(Expr expr) {
        if (expr instanceof Expr.Scale e) {
            return scale(e);
        } else if (expr instanceof Expr.NumberOf e) {
            return bare(UnitChecker.in(e.a(), e.in()));
        } else if (expr instanceof Expr.AsUnit e) {
            return bare(e.a());
        } else if (expr instanceof Expr.Only e) {
            return bare(e.then());
        }
        Bare leaf = leaf(expr);
        if (leaf != null) {
            return UnitChecker.isPercent(UnitChecker.storedUnit(expr)) ? row -> leaf.at(row) / 100 : leaf;
        }
        if (expr instanceof Expr.Num e) {
            double value = e.value();
            return row -> value;
        } else if (expr instanceof Expr.Sum e) {
            Bare a = bare(e.a());
            Bare b = bare(e.b());
            return row -> a.at(row) + b.at(row);
        } else if (expr instanceof Expr.Difference e) {
            Bare a = bare(e.a());
            Bare b = bare(e.b());
            return row -> a.at(row) - b.at(row);
        } else if (expr instanceof Expr.Product e) {
            Bare a = bare(e.a());
            Bare b = bare(e.b());
            return row -> a.at(row) * b.at(row);
        } else if (expr instanceof Expr.Quotient e) {
            Bare a = bare(e.a());
            Bare b = bare(e.b());
            return row -> a.at(row) / b.at(row);
        } else if (expr instanceof Expr.Power e) {
            Bare base = bare(e.base());
            int exponent = e.exponent();
            return row -> Math.pow(base.at(row), exponent);
        } else if (expr instanceof Expr.Negate e) {
            Bare a = bare(e.a());
            return row -> -a.at(row);
        } else if (expr instanceof Expr.Call e) {
            return call(e);
        }
        throw new IllegalArgumentException(expr.getClass().getSimpleName() + " gives no number here");
    }

    private Bare leaf(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            Values column = values.of(e.symbol());
            return column::number;
        } else if (expr instanceof Expr.Const e) {
            double value = values.constant(e.constant());
            return row -> value;
        } else if (expr instanceof Expr.Lookup e) {
            return lookup(e);
        } else if (expr instanceof Expr.LeastGiven e) {
            Values[] columns = columns(e.symbols());
            return row -> {
                int least = least(columns, row);
                return least < 0 ? Double.NaN : columns[least].number(row);
            };
        }
        return null;
    }

    private Values[] columns(List<Symbol> symbols) {
        return symbols.stream().map(values::of).toArray(Values[]::new);
    }

    /** Which column holds the least of the values there are, the first of equals; -1 if there are none. */
    private static int least(Values[] columns, int row) {
        int least = -1;
        for (int i = 0; i < columns.length; i++) {
            if (columns[i].has(row) && (least < 0 || columns[i].number(row) < columns[least].number(row))) {
                least = i;
            }
        }
        return least;
    }

    private Bare scale(Expr.Scale e) {
        Unit stored = UnitChecker.storedUnit(e.a());
        if (stored != null && stored.isSameScale(e.to())) {
            return leaf(e.a());
        }
        Scaling scaling = Scaling.of(e.a().unit().ratioTo(e.to()));
        Bare a = bare(e.a());
        return scaling.isNothing() ? a : row -> scaling.apply(a.at(row));
    }

    private Bare call(Expr.Call e) {
        Bare[] arguments = e.arguments().stream().map(this::bare).toArray(Bare[]::new);
        Function function = e.function();
        if (arguments.length == 1) {
            return row -> function.apply(arguments[0].at(row));
        }
        return row -> {
            double result = arguments[0].at(row);
            for (int i = 1; i < arguments.length; i++) {
                result = function.apply(result, arguments[i].at(row));
            }
            return result;
        };
    }

    private Bare lookup(Expr.Lookup e) {
        ReferenceTable table = e.table();
        if (table.wordKeys()) {
            WordAt key = word(e.key());
            WordRows rows = new WordRows(table);
            return row -> table.rows().get(rows.find(key.at(row))).value();
        }
        Bare key = bare(e.key());
        if (e.mode() == Expr.Lookup.Mode.LINEAR) {
            int last = table.rows().size() - 2;
            return row -> {
                double x = key.at(row);
                int i = Math.min(table.step(x), last);
                ReferenceTable.Row low = table.rows().get(i);
                ReferenceTable.Row high = table.rows().get(i + 1);
                return low.value() + (x - low.key()) * (high.value() - low.value()) / (high.key() - low.key());
            };
        }
        return row -> table.rows().get(table.step(key.at(row))).value();
    }

    private WordAt word(Expr expr) {
        if (expr instanceof Expr.Ref e) {
            Values column = values.of(e.symbol());
            return column::word;
        } else if (expr instanceof Expr.Text e) {
            return row -> e.text();
        } else if (expr instanceof Expr.Label e) {
            return row -> e.text();
        } else if (expr instanceof Expr.Join e) {
            WordAt[] parts = e.parts().stream().map(this::word).toArray(WordAt[]::new);
            return row -> {
                String joined = "";
                for (WordAt part : parts) {
                    String text = part.at(row);
                    joined = joined.isEmpty() ? text : text.isEmpty() ? joined : joined.concat(text);
                }
                return joined;
            };
        } else if (expr instanceof Expr.LabelOfLeast e) {
            Values[] columns = columns(e.symbols());
            return row -> {
                int least = least(columns, row);
                return least < 0 ? "" : e.labels().get(least);
            };
        } else if (expr instanceof Expr.Choice e) {
            Truth guard = guard(Needs.of(e.when()));
            Truth when = truth(e.when());
            WordAt then = word(e.then());
            WordAt otherwise = word(e.otherwise());
            return row -> guard.at(row) ? (when.at(row) ? then : otherwise).at(row) : "";
        } else if (expr instanceof Expr.Only e) {
            Truth guard = guard(Needs.of(e));
            WordAt then = word(e.then());
            return row -> guard.at(row) ? then.at(row) : "";
        } else if (expr instanceof Expr.From e) {
            Values column = values.of(e.table(), e.symbol());
            Values position = values.of(e.position());
            return row -> position.has(row) ? column.word((int) position.number(row) - 1) : "";
        } else if (expr instanceof Expr.Lookup e) {
            Truth guard = guard(Needs.of(e));
            ReferenceTable table = e.table();
            if (table.wordKeys()) {
                WordAt key = word(e.key());
                WordRows rows = new WordRows(table);
                return row ->
                        guard.at(row) ? table.rows().get(rows.find(key.at(row))).text() : "";
            }
            Bare key = bare(e.key());
            return row ->
                    guard.at(row) ? table.rows().get(table.step(key.at(row))).text() : "";
        }
        throw new IllegalArgumentException(expr.getClass().getSimpleName() + " gives no words");
    }

    private Truth truth(Condition condition) {
        if (condition instanceof Condition.Compare c) {
            Bare a = bare(c.a());
            Bare b = bare(c.b());
            return row -> c.relation().holds(a.at(row), b.at(row));
        } else if (condition instanceof Condition.Is c) {
            Values column = values.of(c.symbol());
            return row -> c.word().equalsIgnoreCase(column.word(row));
        } else if (condition instanceof Condition.Given c) {
            Values column = values.of(c.symbol());
            return column::has;
        } else if (condition instanceof Condition.Blank c) {
            Values column = values.of(c.symbol());
            return row -> !column.has(row) && column.state(row) != State.UNUSABLE;
        } else if (condition instanceof Condition.InTable c) {
            return inTable(c);
        } else if (condition instanceof Condition.All c) {
            Truth[] parts = c.parts().stream().map(this::truth).toArray(Truth[]::new);
            return row -> {
                for (Truth part : parts) {
                    if (!part.at(row)) {
                        return false;
                    }
                }
                return true;
            };
        } else if (condition instanceof Condition.Any c) {
            Truth[] parts = c.parts().stream().map(this::truth).toArray(Truth[]::new);
            return row -> {
                for (Truth part : parts) {
                    if (part.at(row)) {
                        return true;
                    }
                }
                return false;
            };
        } else if (condition instanceof Condition.Not c) {
            Truth inner = truth(c.condition());
            return row -> !inner.at(row);
        }
        throw new IllegalArgumentException("unknown condition " + condition);
    }

    private Truth inTable(Condition.InTable c) {
        ReferenceTable table = c.table();
        if (table.wordKeys()) {
            WordAt key = word(c.key());
            WordRows rows = new WordRows(table);
            return row -> rows.find(key.at(row)) >= 0;
        }
        Bare key = bare(c.key());
        return switch (c.mode()) {
            case EXACT ->
                row -> {
                    double x = key.at(row);
                    int i = table.step(x);
                    return i >= 0 && table.rows().get(i).key() == x;
                };
            case STEP -> row -> key.at(row) >= table.lowestKey();
            case LINEAR ->
                row -> {
                    double x = key.at(row);
                    return x >= table.lowestKey() && x <= table.highestKey();
                };
        };
    }
}
