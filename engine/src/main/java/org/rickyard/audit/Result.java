package org.rickyard.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Formula;
import org.rickyard.lists.CellAddress;

/**
 * One result with its derivation.
 *
 * @param formula the formula it comes from
 * @param cell where it stands
 * @param about what it is about: holding, field, machine …
 * @param number its value, if it is a number and not withheld
 * @param word its value, if it is a word and not withheld
 * @param unit the unit of the number
 * @param causes why it is withheld; empty if it is not
 * @param numbers the formula with the row's numbers
 * @param inputs all inputs it used
 */
public record Result(
        Formula formula,
        CellAddress cell,
        Map<String, String> about,
        Optional<Double> number,
        Optional<String> word,
        String unit,
        List<Cause> causes,
        String numbers,
        List<InputUsed> inputs) {

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
