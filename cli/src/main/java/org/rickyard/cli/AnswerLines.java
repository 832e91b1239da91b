package org.rickyard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.audit.Cause;
import org.rickyard.audit.Causes;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Finding;
import org.rickyard.plan.Headlines;
import org.rickyard.plan.Headlines.Headline;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.TableSpec;

/** The headlines of a plan as aligned lines, holding by holding. */
final class AnswerLines {
    private static final int WIDEST = 48;

    private record Line(String about, String result, String value, String unit, String warning) {
        private Line {
            about = OneLine.of(about);
            value = OneLine.of(value);
        }
    }

    private AnswerLines() {}

    static List<String> of(WorkPlan plan) {
        Map<String, List<Line>> holdings = new LinkedHashMap<>();
        Headlines.byHeading(plan).forEach((heading, headlines) -> holdings.put(heading, lines(plan, headlines)));
        List<Line> all = holdings.values().stream().flatMap(List::stream).toList();
        int about = all.stream().mapToInt(line -> width(line.about())).max().orElse(0);
        int result = all.stream().mapToInt(line -> width(line.result())).max().orElse(0);
        int value = all.stream()
                .filter(line -> !line.unit().isEmpty())
                .mapToInt(line -> width(line.value()))
                .max()
                .orElse(0);
        List<String> lines = new ArrayList<>();
        holdings.forEach((holding, answers) -> {
            lines.add(OneLine.of(holding));
            for (Line line : answers) {
                String padding = line.unit().isEmpty() ? "" : " ".repeat(Math.max(0, value - width(line.value())));
                lines.add("  " + padded(line.about(), Math.min(WIDEST, about)) + "  "
                        + padded(line.result(), Math.min(WIDEST, result)) + "  "
                        + (padding + line.value() + " " + line.unit()).stripTrailing() + line.warning());
            }
        });
        return lines;
    }

    /** A warning is of a row, and so is given with the first of its answers that is not withheld. */
    private static List<Line> lines(WorkPlan plan, List<Headline> headlines) {
        List<Line> lines = new ArrayList<>();
        Headline warned = null;
        for (Headline headline : headlines) {
            boolean first = warned == null || warned.table() != headline.table() || warned.row() != headline.row();
            boolean has = headline.table().of(headline.formula().result()).has(headline.row());
            lines.add(line(plan, headline, first && has ? warning(headline) : ""));
            warned = has ? headline : warned;
        }
        return lines;
    }

    /** That a number is not to be read alone: hours that leave work out look like hours of all of it. */
    private static String warning(Headline headline) {
        if (headline.table().spec().column(TableSpec.CAUTIONS).isEmpty()) {
            return "";
        }
        String cautions = headline.table().of(TableSpec.CAUTIONS).word(headline.row());
        return cautions.isEmpty()
                ? ""
                : cautions.contains(Finding.Severity.STOP + ": ")
                        ? "  (STOP: see Summary)"
                        : "  (CAUTION: see Summary)";
    }

    private static Line line(WorkPlan plan, Headline headline, String warning) {
        Symbol symbol = headline.formula().result();
        Values values = headline.table().of(symbol);
        int row = headline.row();
        if (!values.has(row)) {
            Cause why = new Causes().of(headline.table(), symbol, row).get(0);
            return new Line(headline.about(), symbol.name(), "withheld: " + why, "", "");
        }
        if (values.words()) {
            return new Line(headline.about(), symbol.name(), values.word(row), "", warning);
        }
        String unit = headline.table().unit(symbol, row);
        String number = ReadingNumber.of(values.number(row), symbol.decimals());
        String own = plan.ownUnits()
                .of(headline.table(), symbol, row)
                .map(wanted -> " = " + ReadingNumber.of(wanted.scaling().apply(values.number(row)), wanted.decimals())
                        + " " + wanted.unit())
                .orElse("");
        return new Line(headline.about(), symbol.name(), number, unit.isEmpty() ? " " : unit + own, warning);
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }
}
