package org.rickyard.plan.fit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.UnaryOperator;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Method;
import org.rickyard.formula.Simplifier;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;

/**
 * A result table fitted to one workbook: a column that nothing in the workbook can fill is left out, with the steps that
 * would need it, and every formula, caution and status is without what is then never there. No value changes by it.
 *
 * <p>Only a header that stands nowhere in the client's lists makes a column superfluous; under a header, blank cells can be
 * filled in at any time. What a result cannot do without stays, and the status of its rows asks for it.
 */
final class FittedTable {
    private final TableSpec declared;
    private final BiPredicate<String, Symbol> absentThere;
    private final UnaryOperator<String> said;
    private final Set<Symbol> absent = new LinkedHashSet<>();
    private final Map<Symbol, Expr> simple = new HashMap<>();
    private final Map<Symbol, Set<String>> words = new HashMap<>();
    /** What reads a column that another table was left without, and so cannot be written at all, result or not. */
    private final Set<Symbol> gone = new LinkedHashSet<>();

    private Simplifier simplifier;

    private FittedTable(TableSpec declared, BiPredicate<String, Symbol> absentThere, UnaryOperator<String> said) {
        this.said = said;
        this.declared = declared;
        this.absentThere = absentThere;
    }

    /**
     * The table without what these rows can never fill.
     *
     * @param absentThere whether a column of a table made before was left out of it
     * @param toItsRows whether what no row has need of goes too, though another row might; so a very large workbook is
     *     kept lean, at the price that columns may come and go with what its rows hold
     * @param said a caution as this client reads it: with its figures in his units
     */
    static TableSpec of(
            TableSpec declared,
            RowSources sources,
            BiPredicate<String, Symbol> absentThere,
            boolean toItsRows,
            UnaryOperator<String> said) {
        FittedTable fitted = new FittedTable(declared, absentThere, said);
        for (TableColumn column : declared.columns()) {
            if (isAbsent(column, sources, toItsRows)) {
                fitted.absent.add(column.symbol());
            }
        }
        fitted.wordsRead(sources, toItsRows);
        fitted.follow();
        fitted.keepWhatIsAskedFor();
        return fitted.spec();
    }

    private static boolean isAbsent(TableColumn column, RowSources sources, boolean toItsRows) {
        if (column instanceof TableColumn.Name name && name.symbol().equals(Quantities.BLOCK)) {
            // Blocks are a help to those who split their fields; names of other things are what a row is about. They
            // stand leftmost, so that with the first holding told every column of every sheet would move.
            return name.places().stream().noneMatch(sources::hasColumn);
        } else if (column instanceof TableColumn.Link link) {
            return toItsRows && sources.appliesNowhere(link.symbol())
                    || link.places().stream().noneMatch(place -> sources.canFill(place, link.symbol()));
        } else if (column instanceof TableColumn.Word word) {
            return !word.places().isEmpty()
                    && !sources.hasWord(word.symbol())
                    && word.places().stream().noneMatch(sources::hasColumn);
        }
        return false;
    }

    /**
     * The words that a run has read stand in the sheet as they are until the next one, so no others need be asked about;
     * least of all whether one was unreadable, where all were read.
     */
    private void wordsRead(RowSources sources, boolean toItsRows) {
        for (TableColumn column : declared.columns()) {
            if (column instanceof TableColumn.Word word && (toItsRows || word.unreadTold())) {
                Set<String> read = ResultTable.wordsOf(word, sources);
                if (!toItsRows) {
                    word.places()
                            .forEach(place ->
                                    read.addAll(place.column().choices().keySet()));
                }
                words.put(word.symbol(), read);
            }
        }
    }

    /** Simplifies; a step that then never has a value is absent too, and so on. */
    private void follow() {
        boolean further;
        do {
            int before = absent.size();
            Map<Symbol, Set<String>> known = Map.copyOf(words);
            simplifier = new Simplifier(Set.copyOf(absent), known, absentThere);
            for (TableColumn column : declared.columns()) {
                Expr expr = expr(column);
                if (expr != null) {
                    Expr now = simplifier.simplify(expr);
                    simple.put(column.symbol(), now);
                    Simplifier.words(now).ifPresent(some -> words.put(column.symbol(), some));
                    boolean never = simplifier.never(now);
                    if (readsWhatIsLeftOut(now)
                            || never && Inputs.of(now).stream().anyMatch(gone::contains)) {
                        gone.add(column.symbol());
                    }
                    if (never && !isResult(column) || gone.contains(column.symbol())) {
                        absent.add(column.symbol());
                    }
                }
            }
            further = absent.size() > before || !words.equals(known);
        } while (further);
        if (!gone.isEmpty()) {
            LeftOutBranches branches = new LeftOutBranches(gone);
            simple.replaceAll((symbol, expr) -> gone.contains(symbol) ? expr : branches.without(expr));
        }
    }

    private boolean readsWhatIsLeftOut(Expr expr) {
        return Inputs.otherTablesOf(expr).stream()
                .filter(table -> !table.equals(declared.id()))
                .anyMatch(table -> Inputs.of(table, expr).stream().anyMatch(symbol -> absentThere.test(table, symbol)));
    }

    /** What a column that stays still reads, down to the typed cells, stays too. */
    private void keepWhatIsAskedFor() {
        Deque<Symbol> asked = new ArrayDeque<>();
        for (TableColumn column : declared.columns()) {
            if (!absent.contains(column.symbol())) {
                read(simple.get(column.symbol()), asked);
                reads(column).forEach(expr -> read(expr, asked));
            }
        }
        rules().forEach(rule -> asked.addAll(Inputs.of(rule.when())));
        declared.totals().forEach(total -> asked.add(total.symbol()));
        while (!asked.isEmpty()) {
            Symbol symbol = asked.remove();
            if (!gone.contains(symbol) && absent.remove(symbol)) {
                read(simple.get(symbol), asked);
            }
        }
    }

    private void read(Expr expr, Deque<Symbol> asked) {
        if (expr != null) {
            asked.addAll(Inputs.of(expr));
            asked.addAll(Inputs.of(declared.id(), expr));
        }
    }

    /** What a method reads, without what nothing in the workbook can fill. */
    private List<Expr> reads(TableColumn column) {
        return column instanceof TableColumn.Method found
                ? found.method().reads().stream()
                        .map(simplifier::simplify)
                        .filter(expr -> !simplifier.never(expr))
                        .toList()
                : List.of();
    }

    private List<CautionRule> rules() {
        List<CautionRule> rules = new ArrayList<>();
        for (CautionRule rule : declared.rules()) {
            if (!simplifier.neverSaid(rule.when())) {
                Condition when = simplifier.simplify(rule.when());
                rules.add(new CautionRule(rule.severity(), when, said.apply(rule.text())));
            }
        }
        return rules;
    }

    private TableSpec spec() {
        List<TableColumn> columns = new ArrayList<>();
        for (TableColumn column : declared.columns()) {
            if (!absent.contains(column.symbol()) && !Sentences.isAppended(column)) {
                columns.add(fitted(column));
            }
        }
        List<CautionRule> rules = rules();
        boolean says = declared.column(TableSpec.STATUS).isPresent();
        return new TableSpec(
                declared.id(),
                declared.sheet(),
                declared.title(),
                declared.grain(),
                says ? Sentences.written(columns, rules) : List.copyOf(columns),
                declared.totals(),
                declared.cautions().stream().map(said).toList(),
                rules);
    }

    private TableColumn fitted(TableColumn column) {
        Expr now = simple.get(column.symbol());
        if (column instanceof TableColumn.Calculated calculated) {
            return calculated.by(now);
        } else if (column instanceof TableColumn.Joined) {
            return new TableColumn.Joined(column.symbol(), now);
        } else if (column instanceof TableColumn.Sentence) {
            return new TableColumn.Sentence(column.symbol(), now);
        } else if (column instanceof TableColumn.Method found) {
            Method method = found.method();
            return new TableColumn.Method(
                    found.symbol(),
                    new Method(method.name(), method.words(), method.source(), reads(column)),
                    found.result(),
                    found.because(),
                    found.bar());
        }
        return column;
    }

    /** The expression behind a column, but for the sentences at the right end; null if there is none. */
    static Expr expr(TableColumn column) {
        if (column instanceof TableColumn.Calculated calculated) {
            return calculated.formula().expr();
        } else if (column instanceof TableColumn.Sentence sentence && !Sentences.isAppended(column)) {
            return sentence.expr();
        }
        return column instanceof TableColumn.Joined joined ? joined.expr() : null;
    }

    private static boolean isResult(TableColumn column) {
        return column instanceof TableColumn.Calculated calculated && calculated.result();
    }
}
