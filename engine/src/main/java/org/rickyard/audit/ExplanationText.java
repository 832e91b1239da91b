package org.rickyard.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rickyard.audit.Explanation.Value;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.formula.Numbers;

/** Prints an explanation as indented lines, the result first and what it came from below it. */
public final class ExplanationText {
    private final List<String> lines = new ArrayList<>();

    private ExplanationText() {}

    /** The lines of an explanation. */
    public static List<String> lines(Explanation explanation) {
        ExplanationText text = new ExplanationText();
        text.node(explanation, "", "");
        return text.lines;
    }

    private void node(Explanation node, String indent, String mark) {
        lines.add(indent + mark + headline(node));
        String inner = indent + (mark.isEmpty() ? "  " : "    ");
        if (!node.about().isEmpty()) {
            lines.add(inner + "of: " + about(node.about()));
        }
        node.causes().forEach(cause -> lines.add(inner + "because: " + cause));
        node.working().ifPresent(working -> {
            lines.add(inner + "= " + working.words());
            if (!working.numbers().isEmpty() && !working.numbers().equals(working.words())) {
                lines.add(inner + "= " + working.numbers());
            }
            if (!working.source().isEmpty()) {
                lines.add(inner + "source: " + working.source()
                        + (working.id().isEmpty() ? "" : "; formula " + working.id()));
            }
        });
        node.notes().forEach(note -> lines.add(inner + note));
        node.inputs().forEach(input -> node(input, inner, "- "));
        if (!node.uses().isEmpty()) {
            lines.add(inner + "used by:");
            node.uses()
                    .forEach(use -> lines.add(inner + "- " + headline(use)
                            + (use.about().isEmpty() ? "" : ", of " + about(use.about()))));
        }
    }

    private static String about(Map<String, String> about) {
        return String.join(", ", about.values());
    }

    private static String headline(Explanation node) {
        Value value = node.value();
        String where = node.cell().map(cell -> " @ " + cell).orElse("");
        if (value == Value.NONE) {
            return node.name() + where;
        }
        if (!value.given()) {
            return node.name() + (value.from() == From.MISSING ? ": not given" : ": withheld") + where;
        }
        String text = !value.word().isEmpty()
                ? value.word()
                : value.number()
                        .map(number -> Numbers.readable(number) + (value.unit().isEmpty() ? "" : " " + value.unit()))
                        .orElse("");
        return node.name() + " = " + text + where + origin(value.from());
    }

    private static String origin(From from) {
        return from == From.CALCULATED ? "" : " (" + from.words() + ")";
    }
}
