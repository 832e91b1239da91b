package org.rickyard.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.audit.Cause;
import org.rickyard.audit.Causes;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.Headlines;
import org.rickyard.plan.Headlines.Headline;
import org.rickyard.plan.WorkPlan;

/** The headlines of a plan as aligned lines, holding by holding. */
final class AnswerLines {
    private static final int WIDEST = 48;

    private record Line(String about, String result, String value, String unit) {
        private Line {
            about = OneLine.of(about);
            value = OneLine.of(value);
        }
    }

    private AnswerLines() {}

    static List<String> of(WorkPlan plan) {
        Map<String, List<Line>> holdings = new LinkedHashMap<>();
        Headlines.byHeading(plan)
                .forEach((heading, headlines) -> holdings.put(
                        heading,
                        headlines.stream().map(headline -> line(plan, headline)).toList()));
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
                        + (padding + line.value() + " " + line.unit()).stripTrailing());
            }
        });
        return lines;
    }

    private static Line line(WorkPlan plan, Headline headline) {
        Symbol symbol = headline.formula().result();
        Values values = headline.table().of(symbol);
        int row = headline.row();
        if (!values.has(row)) {
            Cause why = new Causes().of(headline.table(), symbol, row).get(0);
            return new Line(headline.about(), symbol.name(), "withheld: " + why, "");
        }
        if (values.words()) {
            return new Line(headline.about(), symbol.name(), values.word(row), "");
        }
        String unit = headline.table().unit(symbol, row);
        String number = ReadingNumber.of(values.number(row), symbol.decimals());
        String own = plan.ownUnits()
                .of(headline.table(), symbol, row)
                .map(wanted -> " = " + ReadingNumber.of(wanted.scaling().apply(values.number(row)), wanted.decimals())
                        + " " + wanted.unit())
                .orElse("");
        return new Line(headline.about(), symbol.name(), number, unit.isEmpty() ? " " : unit + own);
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }
}
