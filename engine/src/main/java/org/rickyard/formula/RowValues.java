package org.rickyard.formula;

import java.time.LocalDate;

/** The columns a formula is read against: those of its own table, those of others, and the constants in force. */
public interface RowValues {
    /** A column of this table. */
    Values of(Symbol symbol);

    /** A column of another table, already evaluated. */
    Values of(String table, Symbol symbol);

    /** The constant's value after Assumptions. */
    double constant(Constant constant);

    /** The day that the days of this workbook are counted from. */
    default LocalDate dayZero() {
        return Days.USUAL_ZERO;
    }

    /** A condition made ready for these rows; a table that is asked the same one often keeps it. */
    default Evaluator.TruthAt truth(Condition condition) {
        return Evaluator.condition(condition, this);
    }
}
