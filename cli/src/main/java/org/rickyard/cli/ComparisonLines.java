package org.rickyard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.rickyard.audit.Comparison;
import org.rickyard.audit.Difference;
import org.rickyard.audit.Difference.Figure;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.ListChanges;
import org.rickyard.quantity.Units;

/** What is not the same in two workbooks, as lines: causes first, then answers, rows and warnings. */
final class ComparisonLines {
    private static final int MOST_LINES = 20;
    private static final String TO = " -> ";
    /** Answers that look alike at their usual decimals are told with more, up to so many. */
    private static final int MOST_DECIMALS = 9;

    private final boolean all;
    private final List<String> lines = new ArrayList<>();

    private ComparisonLines(boolean all) {
        this.all = all;
    }

    /**
     * The lines.
     *
     * @param before the findings of the first workbook
     * @param after those of the second
     * @param all every line, in place of the main answers and the first rows
     */
    static List<String> of(
            ListChanges lists, Comparison results, List<Finding> before, List<Finding> after, boolean all) {
        ComparisonLines lines = new ComparisonLines(all);
        lines.section("Typed otherwise", lists.changes(), ComparisonLines::typed);
        lines.section("Rows in the second workbook only", lists.added(), ComparisonLines::row);
        lines.section("Rows in the first workbook only", lists.gone(), ComparisonLines::row);
        lines.results(results);
        lines.findings("in the second workbook only", Comparison.without(after, before));
        lines.findings("in the first workbook only", Comparison.without(before, after));
        return lines.lines.isEmpty()
                ? List.of("Nothing differs: the same was typed in both, and " + results.same()
                        + (results.same() == 1 ? " result is" : " results are") + " the same.")
                : lines.lines;
    }

    private interface Words<T> {
        String of(T one);
    }

    private <T> void section(String heading, Iterable<T> those, Words<T> words) {
        List<String> found = new ArrayList<>();
        those.forEach(one -> found.add("  " + OneLine.of(words.of(one))));
        if (found.isEmpty()) {
            return;
        }
        lines.add(heading + " (" + found.size() + ")");
        int shown = all ? found.size() : Math.min(MOST_LINES, found.size());
        lines.addAll(found.subList(0, shown));
        if (shown < found.size()) {
            lines.add("  and " + (found.size() - shown) + " more: --all shows them");
        }
    }

    private static String typed(ListChanges.Change change) {
        return change.cell() + "  " + change.row() + (change.row().isEmpty() ? "" : ", ") + change.column() + ": "
                + orNothing(change.before()) + TO + orNothing(change.after());
    }

    private static String orNothing(String typed) {
        return typed.isEmpty() ? "nothing" : typed;
    }

    private static String row(ListChanges.Row row) {
        return row.cell() + "  " + row.name();
    }

    private void results(Comparison results) {
        List<Difference> differences = results.differences();
        if (differences.isEmpty()) {
            return;
        }
        List<Difference> shown = differences.stream()
                .filter(difference -> all || difference.headline())
                .toList();
        lines.add("Results that differ (" + differences.size() + "; " + results.same() + " are the same)");
        Map<String, List<Difference>> holdings = new LinkedHashMap<>();
        shown.forEach(difference -> holdings.computeIfAbsent(difference.holding(), h -> new ArrayList<>())
                .add(difference));
        holdings.forEach((holding, those) -> {
            lines.add("  " + (holding.isEmpty() ? "All together" : OneLine.of(holding)));
            those.forEach(difference -> lines.add("    "
                    + OneLine.of((difference.about().isEmpty() ? "" : difference.about() + ", ") + difference.what()
                            + ": " + change(difference) + "  (" + difference.cell() + ")")));
        });
        int others = differences.size() - shown.size();
        if (others > 0) {
            lines.add("  " + (shown.isEmpty() ? "" : "and ") + Counted.more(others, "result")
                    + " on the result sheets: --all shows each");
        }
    }

    private static String change(Difference difference) {
        Optional<Figure> before = difference.before();
        Optional<Figure> after = difference.after();
        if (before.isPresent()
                && after.isPresent()
                && before.get().number().isPresent()
                && after.get().number().isPresent()) {
            return numbers(before.get(), after.get());
        }
        return before.map(ComparisonLines::one).orElse("none")
                + TO
                + after.map(ComparisonLines::one).orElse("none");
    }

    private static String one(Figure figure) {
        return figure.number().isPresent()
                ? told(figure, number -> ReadingNumber.of(number, figure.decimals()))
                : figure.given() ? figure.words() : "withheld: " + figure.words();
    }

    private static String told(Figure figure, DoubleFunction<String> reading) {
        return withUnit(reading.apply(figure.number().orElseThrow()), figure.unit())
                + figure.own()
                        .map(own -> " = " + withUnit(reading.apply(own.number()), own.unit()))
                        .orElse("");
    }

    private static String withUnit(String number, String unit) {
        return (number + " " + unit).strip();
    }

    private static String numbers(Figure before, Figure after) {
        int decimals = after.decimals();
        DoubleFunction<String> reading = number -> ReadingNumber.of(number, decimals);
        for (int more = decimals; more <= MOST_DECIMALS && told(before, reading).equals(told(after, reading)); more++) {
            int enough = more;
            reading = number -> ReadingNumber.rounded(number, enough);
        }
        return told(before, reading) + TO + told(after, reading) + share(before, after);
    }

    /** By how much of what it was; of nothing, of what is short, and of a share itself, a share says nothing. */
    private static String share(Figure before, Figure after) {
        double was = before.number().orElseThrow();
        double is = after.number().orElseThrow();
        boolean comparable = before.unit().equals(after.unit()) && !after.unit().equals(Units.PERCENT.symbol());
        if (was <= 0 || is <= 0 || !comparable) {
            return "";
        }
        double share = (is - was) / was * 100;
        return " (" + (share > 0 ? "+" : "") + ReadingNumber.of(share, 1) + " %)";
    }

    private void findings(String where, List<Finding> findings) {
        section("STOP " + where, of(Severity.STOP, findings), Report::words);
        section("Cautions " + where, of(Severity.CAUTION, findings), Report::words);
    }

    private static List<Finding> of(Severity severity, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == severity)
                .toList();
    }
}
