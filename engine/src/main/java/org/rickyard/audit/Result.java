package org.rickyard.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.TableColumn;

/**
 * One result with its derivation.
 *
 * @param column the column it stands in: a formula's, or that of a method such as a plan or a simulation
 * @param cell where it stands
 * @param about what it is about: holding, field, machine …
 * @param number its value, if it is a number and not withheld
 * @param word its value, if it is a word and not withheld
 * @param unit the unit of the number
 * @param own the same number in the client's own unit, where he measures in another than ours
 * @param causes why it is withheld; empty if it is not
 * @param numbers the formula with the row's numbers; empty for a method
 * @param inputs all inputs it used
 */
public record Result(
        TableColumn column,
        CellAddress cell,
        Map<String, String> about,
        Optional<Double> number,
        Optional<String> word,
        String unit,
        Optional<Own> own,
        List<Cause> causes,
        String numbers,
        List<InputUsed> inputs) {

    /** A number in the client's own unit. */
    public record Own(double number, String unit) {}

    /** Whether a method found it in place of a formula. */
    public boolean byMethod() {
        return column instanceof TableColumn.Method;
    }

    /** The formula it comes from. */
    public Formula formula() {
        return ((TableColumn.Calculated) column).formula();
    }

    /** The trade term it goes by, stable for ever. */
    public String id() {
        return column instanceof TableColumn.Method method
                ? method.method().name()
                : formula().id();
    }

    /** What it is. */
    public Symbol symbol() {
        return column.symbol();
    }

    /** The formula, or what the method does, in words. */
    public String words() {
        return column instanceof TableColumn.Method method
                ? method.method().words()
                : formula().words();
    }

    /** Who says so. */
    public String source() {
        return (column instanceof TableColumn.Method method
                        ? method.method().source()
                        : formula().source())
                .toString();
    }

    /** Whether there is a value. */
    public boolean given() {
        return number.isPresent() || word.isPresent();
    }

    /** "ok" or "withheld". */
    public String status() {
        return given() ? "ok" : "withheld";
    }

    /** The causes in one line. */
    public String reason() {
        return String.join("; ", causes.stream().map(Cause::toString).toList());
    }
}
