package org.rickyard.workbook.follow;

import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.formula.ptg.AbstractFunctionPtg;
import org.apache.poi.ss.formula.ptg.PowerPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.UnaryMinusPtg;

/**
 * Which formulas come to the same in every spreadsheet program, at every time and in every country, and so may be worked
 * out without one: those of plain arithmetic and of functions that know neither clock, nor chance, nor language.
 */
final class CertainFunctions {
    private static final Set<String> NAMES = Set.of(
            "ABS",
            "AND",
            "AVERAGE",
            "CONCATENATE",
            "COUNT",
            "COUNTA",
            "COUNTIF",
            "COUNTIFS",
            "EXP",
            "HLOOKUP",
            "IF",
            "IFERROR",
            "INDEX",
            "INT",
            "ISBLANK",
            "ISNUMBER",
            "ISTEXT",
            "LEFT",
            "LEN",
            "LN",
            "LOOKUP",
            "MATCH",
            "MAX",
            "MID",
            "MIN",
            "MOD",
            "NOT",
            "OR",
            "PI",
            "POWER",
            "PRODUCT",
            "RIGHT",
            "ROUND",
            "ROUNDDOWN",
            "ROUNDUP",
            "SQRT",
            "SUBTOTAL",
            "SUM",
            "SUMIF",
            "SUMIFS",
            "SUMPRODUCT",
            "TRIM",
            "TRUNC",
            "VLOOKUP");

    private CertainFunctions() {}

    /** Whether a function is. */
    static boolean isCertain(String name) {
        return NAMES.contains(name.toUpperCase(Locale.ROOT));
    }

    /** Whether all of a formula is certain. */
    static boolean only(Ptg[] formula) {
        boolean minus = false;
        boolean power = false;
        for (Ptg token : formula) {
            if (token instanceof AbstractFunctionPtg function
                    && !function.isExternalFunction()
                    && !isCertain(function.getName())) {
                return false;
            }
            minus |= token instanceof UnaryMinusPtg;
            power |= token instanceof PowerPtg;
        }
        // The minus of -2^2 binds less tightly here than in spreadsheets.
        return !minus || !power;
    }
}
