package org.rickyard.audit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.rickyard.audit.Difference.Figure;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.RowPairs;
import org.rickyard.plan.Headlines;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.trade.Quantities;

/**
 * Which results are not the same in two workbooks that were both worked out: last year's and this, or one before and
 * after a change. Rows belong together as {@link RowPairs} has it; what was renamed has results in one of them alone.
 */
public final class Comparison {
    private static final String HOLDING = new TableColumn.Name(Quantities.HOLDING, List.of()).label();

    private static final MathContext ALIKE = new MathContext(9);

    /** How much a want withholds follows from how many rows there are, and is no news of its own. */
    private static final Pattern HOW_MANY = Pattern.compile("(, so|[.] As it is,) [0-9]+ results? .*");

    private final Results before;
    private final Results after;
    private final List<Difference> differences = new ArrayList<>();
    private long same;

    private record Headline(String table, Map<String, String> row, Symbol answer) {}

    private Comparison(Results before, Results after) {
        this.before = before;
        this.after = after;
        Set<Headline> headlines = new LinkedHashSet<>();
        headlines(before, headlines);
        headlines(after, headlines);
        for (ResultTable table : after.plan().tables()) {
            table(before.plan().table(table.spec().id()), table, headlines);
        }
    }

    /** Holds the results of one workbook against those of another. */
    public static Comparison of(Results before, Results after) {
        return new Comparison(before, after);
    }

    private static void headlines(Results results, Set<Headline> headlines) {
        Map<ResultTable, List<Map<String, String>>> names = new HashMap<>();
        for (Headlines.Headline line : Headlines.of(results.plan())) {
            ResultTable table = line.table();
            headlines.add(new Headline(
                    table.spec().id(),
                    names.computeIfAbsent(table, Results::abouts).get(line.row()),
                    line.formula().result()));
        }
    }

    private void table(ResultTable was, ResultTable is, Set<Headline> headlines) {
        List<Map<String, String>> namesBefore = Results.abouts(was);
        List<Map<String, String>> namesAfter = Results.abouts(is);
        List<TableColumn> answersBefore = Results.answers(was);
        List<TableColumn> answersAfter = Results.answers(is);
        RowPairs pairs =
                RowPairs.of(rows(before, was, answersBefore, namesBefore), rows(after, is, answersAfter, namesAfter));
        // A table lacks the columns that its workbook has nothing for.
        List<TableColumn> left = answersBefore.stream()
                .filter(column -> is.spec().column(column.symbol()).isEmpty())
                .toList();
        for (int row = 0; row < is.rows(); row++) {
            Map<String, String> names = namesAfter.get(row);
            int former = pairs.former(row);
            for (TableColumn column : answersAfter) {
                boolean also = former != RowPairs.NONE
                        && was.spec().column(column.symbol()).isPresent();
                take(
                        is,
                        column.symbol(),
                        names,
                        also ? answer(before, was, column, former) : Optional.empty(),
                        answer(after, is, column, row),
                        headlines);
            }
            if (former != RowPairs.NONE) {
                gone(was, former, names, left, headlines);
            }
        }
        pairs.alone().forEach(row -> gone(was, row, namesBefore.get(row), answersBefore, headlines));
    }

    private static RowPairs.Rows rows(
            Results results, ResultTable table, List<TableColumn> answers, List<Map<String, String>> abouts) {
        return new RowPairs.Rows(
                table.rows(), row -> Results.names(abouts.get(row)), row -> told(results, table, answers, row));
    }

    /** What a row tells, in as many digits as two programs agree on. */
    private static List<String> told(Results results, ResultTable table, List<TableColumn> answers, int row) {
        List<String> told = new ArrayList<>();
        for (TableColumn column : answers) {
            answer(results, table, column, row)
                    .ifPresent(figure -> told.add(column.symbol().name()
                            + ' '
                            + figure.number()
                                    .map(number -> new BigDecimal(number, ALIKE).doubleValue() + "")
                                    .orElse(figure.words())));
        }
        return told;
    }

    /** Takes what a row of the earlier workbook alone tells. */
    private void gone(
            ResultTable was, int row, Map<String, String> names, List<TableColumn> columns, Set<Headline> headlines) {
        for (TableColumn column : columns) {
            take(was, column.symbol(), names, answer(before, was, column, row), Optional.empty(), headlines);
        }
    }

    private void take(
            ResultTable table,
            Symbol symbol,
            Map<String, String> names,
            Optional<Figure> then,
            Optional<Figure> now,
            Set<Headline> headlines) {
        if (then.isEmpty() && now.isEmpty()) {
            return;
        }
        if (then.isPresent() && now.isPresent() && now.get().saysTheSameAs(then.get())) {
            same++;
            return;
        }
        String holding = "";
        List<String> about = new ArrayList<>();
        for (Map.Entry<String, String> name : names.entrySet()) {
            if (name.getKey().equals(HOLDING)) {
                holding = name.getValue();
            } else {
                about.add(name.getValue());
            }
        }
        boolean headline = headlines.contains(new Headline(table.spec().id(), names, symbol));
        differences.add(new Difference(holding, String.join(", ", about), symbol.name(), then, now, headline));
    }

    private static Optional<Figure> answer(Results results, ResultTable table, TableColumn column, int row) {
        if (!Results.isTold(table, column, row)) {
            return Optional.empty();
        }
        Symbol symbol = column.symbol();
        Values values = table.of(symbol);
        boolean given = values.has(row);
        String words = given ? Results.word(table, symbol, row) : why(results, table, symbol, row);
        boolean number = given && words.isEmpty() && !values.words();
        return Optional.of(new Figure(
                results.places().cell(table.spec(), symbol, row),
                number ? Optional.of(values.number(row)) : Optional.empty(),
                words,
                given,
                table.unit(symbol, row),
                symbol.decimals(),
                number ? results.own(table, symbol, row, values.number(row)) : Optional.empty()));
    }

    private static String why(Results results, ResultTable table, Symbol symbol, int row) {
        List<Cause> causes = results.causes().of(table, symbol, row);
        return causes.get(0).what() + Counted.andMore(causes.size() - 1);
    }

    /** Results that differ, those of one workbook alone among them, in the order of the sheets. */
    public List<Difference> differences() {
        return List.copyOf(differences);
    }

    /** How many results are the same in both. */
    public long same() {
        return same;
    }

    /** Findings of the one that are not among those of the other, wherever they stand and with whatever figures. */
    public static List<Finding> without(List<Finding> findings, List<Finding> others) {
        Set<String> known = new LinkedHashSet<>();
        others.forEach(finding -> known.add(sentence(finding)));
        return findings.stream()
                .filter(finding -> !known.contains(sentence(finding)))
                .toList();
    }

    private static String sentence(Finding finding) {
        String message = finding.message();
        int figures = message.indexOf(RuleFigures.HERE);
        String sentence = figures < 0 ? message : message.substring(0, figures);
        return finding.severity() + " " + HOW_MANY.matcher(sentence).replaceAll("");
    }
}
