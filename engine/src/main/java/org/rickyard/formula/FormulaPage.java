package org.rickyard.formula;

import java.util.Locale;

/** Prints a formula's page of the catalogue: what it gives, from what, who says so, and how it was checked. */
public final class FormulaPage {
    private FormulaPage() {}

    /** The page as plain text. */
    public static String print(Formula formula) {
        StringBuilder page = new StringBuilder();
        page.append(formula.id()).append('\n');
        page.append("  ")
                .append(formula.result().name())
                .append(unit(formula.result()))
                .append(" = ");
        page.append(formula.words()).append("\n\n");
        page.append("  Inputs\n");
        for (Symbol input : formula.inputs()) {
            page.append("    ").append(input.name()).append(unit(input));
            if (input.type() == Symbol.Type.NUMBER) {
                page.append(": possible ").append(input.possible().words());
                page.append("; usual ").append(input.usual().words());
            }
            page.append('\n');
        }
        for (Constant constant : formula.constants()) {
            page.append("    ").append(constant.name()).append(" = ").append(Numbers.readable(constant.value()));
            page.append(' ')
                    .append(constant.unit())
                    .append("; ")
                    .append(constant.source())
                    .append('\n');
        }
        for (ReferenceTable table : formula.tables()) {
            page.append("    table '")
                    .append(table.name())
                    .append("'; ")
                    .append(table.source())
                    .append('\n');
        }
        page.append("\n  Source    ").append(formula.source()).append('\n');
        page.append("  Validity  ").append(formula.validity()).append('\n');
        page.append("\n  Checked against\n");
        for (WorkedExample example : formula.examples()) {
            page.append("    ").append(line(formula, example)).append('\n');
        }
        if (formula.examples().isEmpty()) {
            page.append("    no worked example; see the derivation tests\n");
        }
        return page.toString();
    }

    private static String line(Formula formula, WorkedExample example) {
        StringBuilder line = new StringBuilder();
        for (Symbol input : formula.inputs()) {
            if (example.numbers().containsKey(input)) {
                line.append(input.name())
                        .append(' ')
                        .append(Numbers.readable(example.numbers().get(input)));
                line.append(input.unit().symbol().isEmpty() ? "" : " " + input.unit())
                        .append(", ");
            } else if (example.words().containsKey(input)) {
                line.append(input.name())
                        .append(' ')
                        .append(example.words().get(input))
                        .append(", ");
            }
        }
        if (line.length() > 1) {
            line.setLength(line.length() - 2);
        }
        line.append(" -> ");
        if (example.answerWord() != null) {
            line.append(example.answerWord());
        } else {
            line.append(example.answerAsPrinted());
        }
        line.append("  [")
                .append(example.source()
                        .standing()
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .replace('_', ' '));
        return line.append("] ").append(example.source().reference()).toString();
    }

    private static String unit(Symbol symbol) {
        return symbol.unit().symbol().isEmpty() ? "" : " (" + symbol.unit() + ")";
    }
}
