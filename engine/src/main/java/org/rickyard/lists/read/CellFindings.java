package org.rickyard.lists.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** The findings about the cells of one column: one each, up to a number that can still be read, then a count. */
final class CellFindings {
    private static final int MOST = 50;

    private final ListSpec list;
    private final ColumnSpec column;
    private final List<Finding> findings;
    private final Map<String, Asked> questions = new HashMap<>();
    private int bad;
    private int unusual;
    private CellAddress lastBad;
    private CellAddress lastUnusual;

    CellFindings(ListSpec list, ColumnSpec column, List<Finding> findings) {
        this.list = list;
        this.column = column;
        this.findings = findings;
    }

    /** A cell that cannot be used. */
    void bad(CellAddress cell, String message) {
        lastBad = cell;
        if (bad++ < MOST) {
            findings.add(Finding.stop(cell, message));
        }
    }

    /** A cell that waits for an answer, which may be the answer for others of the column too; told once for all of them. */
    void asked(CellAddress cell, String question) {
        Asked asked = questions.computeIfAbsent(question, q -> new Asked(Finding.stop(cell, q)));
        if (asked.cells++ == 0) {
            findings.add(asked.first);
        }
        asked.last = cell;
    }

    /** A question, and the cells that wait for its answer. */
    private static final class Asked {
        private final Finding first;
        private int cells;
        private CellAddress last;

        Asked(Finding first) {
            this.first = first;
        }

        Finding ofAll() {
            return sameIn(first, cells - 1, last);
        }
    }

    /** A question that waits in further cells of its column. */
    static Finding sameIn(Finding first, int more, CellAddress last) {
        return Finding.stop(
                first.cell().orElse(null),
                first.message() + " It is the same in " + Counted.more(more, "cell") + ", down to " + last + ".");
    }

    /** A cell that is used, but is not what such cells usually hold. */
    void unusual(CellAddress cell, Symbol symbol, Range usual, double value, Unit unit) {
        lastUnusual = cell;
        if (unusual++ < MOST) {
            findings.add(Finding.caution(
                    cell,
                    column.name() + " " + amount(value, unit) + inOurs(symbol, value, unit) + " is unusual (usually "
                            + range(usual, symbol.unit())
                            + "). It is used as it is; check the value and its unit." + psi(symbol, value, unit)));
        }
    }

    /** A range in tonnes and hectares says little of tons and acres: the same in the unit of the range. */
    private static String inOurs(Symbol symbol, double value, Unit unit) {
        if (unit.isSameScale(symbol.unit()) || !unit.isCompatible(symbol.unit())) {
            return "";
        }
        double ours = unit.convert(value, symbol.unit());
        return " = " + amount(BigDecimal.valueOf(ours).round(new MathContext(4)).doubleValue(), symbol.unit());
    }

    /** A pressure that would be usual if it were psi. */
    private static String psi(Symbol symbol, double value, Unit unit) {
        boolean bar = symbol.unit().isSameScale(Units.BAR) && unit.isSameScale(Units.BAR);
        double read = Units.PSI.convert(value, Units.BAR);
        return bar && value > 5 && read <= symbol.possible().high()
                ? " If it is psi, write psi in the header: " + Words.digits(value) + " psi is "
                        + Words.digits(Math.round(read * 10) / 10.0) + " bar."
                : "";
    }

    /** A cell that is used in a way its reader should know of. */
    void readAs(CellAddress cell, String message) {
        findings.add(Finding.note(cell, message));
    }

    /** Something about the whole column. */
    void note(String what) {
        findings.add(assumed(list, column, what));
    }

    /** What was taken for granted of a column. */
    static Finding assumed(ListSpec list, ColumnSpec column, String what) {
        return new Finding(
                Finding.Severity.NOTE,
                java.util.Optional.empty(),
                list.name() + ", " + column.name() + ": " + what + ". Write the unit to be sure.");
    }

    void finish() {
        for (Asked asked : questions.values()) {
            if (asked.cells > 1) {
                findings.replaceAll(finding -> finding == asked.first ? asked.ofAll() : finding);
            }
        }
        if (bad > MOST) {
            findings.add(Finding.stop(
                    lastBad,
                    "And " + Counted.more(bad - MOST, "cell") + " of " + list.name() + ", " + column.name()
                            + (bad - MOST == 1
                                    ? ", this one, cannot be used."
                                    : ", down to this one, cannot be used.")));
        }
        if (unusual > MOST) {
            findings.add(Finding.caution(
                    lastUnusual,
                    "And " + Counted.more(unusual - MOST, "cell") + " of " + list.name() + ", " + column.name()
                            + (unusual - MOST == 1 ? ", this one, is unusual." : ", down to this one, are unusual.")));
        }
    }

    static String impossible(ColumnSpec column, Symbol symbol, double value, Unit unit, double own) {
        String text = column.name() + " " + amount(value, unit) + inOurs(symbol, value, unit) + " cannot be: expected "
                + range(symbol.possible(), symbol.unit()) + ".";
        boolean percent =
                symbol.unit().isSameScale(Units.PERCENT) || symbol.unit().isSameScale(Units.PERCENT_DM);
        if (percent && own > 0 && own <= 1) {
            return text + " If " + Words.digits(Math.round(own * 1e4) / 1e2) + " % is meant, write "
                    + Words.digits(Math.round(own * 1e4) / 1e2) + ".";
        }
        if (percent && own > 100 && own <= 1000) {
            return text + " If it is grams per kilogram, write g/kg in the header.";
        }
        String psi = psi(symbol, value, unit);
        if (!psi.isEmpty()) {
            return text + psi;
        }
        if (symbol.unit().isSameScale(Units.M)
                && unit.isSameScale(Units.M)
                && own > symbol.possible().high()) {
            return text + " If it is centimetres, inches or feet, write that unit in the header.";
        }
        return symbol.unit().symbol().isEmpty()
                ? text + " Correct the value."
                : text + " Correct the value, or the unit in the header.";
    }

    /** What a cell of the column should hold, in words. */
    static String expected(ColumnSpec column) {
        Symbol symbol = column.symbol();
        return switch (column.type()) {
            case TEXT -> "words";
            case DATE -> "a day";
            case CHOICE -> "one of " + String.join(", ", column.choices().keySet());
            case DOSE -> "a dose";
            case BATTER -> "a batter, metres out for each metre up";
            case NOZZLE -> "a nozzle size such as 04";
            case NUMBER, TEXT_OR_NUMBER -> {
                String range = range(symbol.possible(), symbol.unit());
                yield symbol.possible().equals(Range.ANY) ? "a number" : "a number " + range;
            }
        };
    }

    /** The same where the header has a unit of its own: a range in hectares is no word on how to write acres. */
    static String expected(ColumnSpec column, Unit unit) {
        Unit ours = column.symbol().unit();
        boolean other = unit != null && unit.isCompatible(ours) && !unit.isSameScale(ours);
        return expected(column) + (other ? ", written in " + unit : "");
    }

    private static String range(Range range, Unit unit) {
        // What a product is measured in differs from row to row.
        String shown = unit.symbol().replace("product unit", "L or kg");
        return shown.isEmpty() ? range.words() : range.words() + " " + shown;
    }

    private static String amount(double value, Unit unit) {
        String digits = Words.digits(Double.parseDouble(String.format(java.util.Locale.ROOT, "%.6g", value)));
        return unit.symbol().isEmpty() ? digits : digits + " " + unit;
    }
}
