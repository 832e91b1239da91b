package org.rickyard.formula;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A calculation of the trade, declared once.
 *
 * @param id kebab-case trade term, stable for ever
 * @param result the quantity it gives, with its unit and decimals
 * @param expr the expression, in the result's unit
 * @param source who says so
 * @param validity where it holds, in words
 * @param examples worked examples the project did not compute, or derivations marked so
 */
public record Formula(
        String id, Symbol result, Expr expr, Source source, String validity, List<WorkedExample> examples) {

    private static final Pattern KEBAB_CASE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    /** Brings the expression to the result's unit; refuses another dimension. */
    public Formula {
        if (!KEBAB_CASE.matcher(id).matches()) {
            throw new IllegalArgumentException("'" + id + "' is not in kebab-case");
        }
        if (result.type() != Symbol.Type.TEXT) {
            expr = UnitChecker.in(expr, result.unit());
        }
        examples = List.copyOf(examples);
    }

    /** The quantities and words the expression reads from its own row. */
    public Set<Symbol> inputs() {
        return Inputs.of(expr);
    }

    /** The constants the expression reads. */
    public Set<Constant> constants() {
        return Inputs.constantsOf(expr);
    }

    /** The reference tables the expression reads. */
    public Set<ReferenceTable> tables() {
        return Inputs.tablesOf(expr);
    }

    /** The formula in words. */
    public String words() {
        return WordsPrinter.words(expr);
    }
}
