package org.rickyard.templates;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.quantity.Range;

/**
 * What an office program checks while the client types. It warns and never forbids: other words and other units are
 * understood too, and the engine says what it could not use.
 */
final class EntryRules {
    /** The longest list of words a cell rule may hold by itself. */
    static final int LONGEST_LITERAL = 255;

    private static final String FIRST_DAY = "36526";
    private static final int LONGEST_MESSAGE = 255;

    private final XSSFSheet sheet;
    private final DataValidationHelper helper;
    private final int firstRow;
    private final int lastRow;

    /** Rules for the rows from {@code firstRow} to {@code lastRow}, counted from 0. */
    EntryRules(XSSFSheet sheet, int firstRow, int lastRow) {
        this.sheet = sheet;
        this.helper = sheet.getDataValidationHelper();
        this.firstRow = firstRow;
        this.lastRow = lastRow;
    }

    /** Adds the rule of a column, if it has one. */
    void add(TemplateColumn column, int index, Optional<String> wordsRange) {
        ColumnSpec spec = column.spec();
        switch (spec.type()) {
            case CHOICE -> choice(spec, index, wordsRange, true);
            case TEXT -> {
                if (!spec.choices().isEmpty()) {
                    choice(spec, index, wordsRange, false);
                }
            }
            case NUMBER -> number(column, index);
            case DOSE ->
                add(
                        helper.createDecimalConstraint(OperatorType.GREATER_THAN, "0", null),
                        index,
                        spec.name()
                                + ": a number above 0 was expected. Rickyard leaves out what it cannot use, and says"
                                + " so. Keep this value?");
            case DATE ->
                add(
                        helper.createDateConstraint(OperatorType.GREATER_OR_EQUAL, FIRST_DAY, null, null),
                        index,
                        spec.name() + ": a day was expected, such as 18 May 2026. Keep this value?");
            case BATTER, NOZZLE, TEXT_OR_NUMBER -> {
                // Words and numbers both make sense here, so there is nothing to warn of.
            }
        }
    }

    private void choice(ColumnSpec spec, int index, Optional<String> wordsRange, boolean warn) {
        List<String> words = List.copyOf(spec.choices().keySet());
        boolean fits = String.join(",", words).length() <= LONGEST_LITERAL;
        DataValidationConstraint constraint = fits
                ? helper.createExplicitListConstraint(words.toArray(String[]::new))
                : helper.createFormulaListConstraint(wordsRange.orElseThrow());
        add(
                constraint,
                index,
                spec.name() + ": this word is not in the list. Some further words are understood; the others are left"
                        + " out and reported. Keep this word?",
                warn);
    }

    private void number(TemplateColumn column, int index) {
        Range possible = column.symbol().possible();
        if (!possible.hasLow() && !possible.hasHigh()) {
            return;
        }
        String unit = Headings.unit(column.spec(), column.symbol());
        String message = column.spec().name() + ": " + possible.words()
                + (unit.isEmpty() ? "" : " " + unit)
                + " is possible. What lies outside is left out, and Rickyard says so. Keep this value?"
                + (unit.isEmpty() ? "" : " (Yes, if you have changed the unit in the heading.)");
        add(constraint(possible, index), index, message);
    }

    private DataValidationConstraint constraint(Range range, int index) {
        String low = plain(range.low());
        String high = plain(range.high());
        if (!range.hasHigh()) {
            return helper.createDecimalConstraint(
                    range.lowOpen() ? OperatorType.GREATER_THAN : OperatorType.GREATER_OR_EQUAL, low, null);
        }
        if (!range.lowOpen() && !range.highOpen()) {
            return helper.createDecimalConstraint(OperatorType.BETWEEN, low, high);
        }
        String cell = CellReference.convertNumToColString(index) + (firstRow + 1);
        return helper.createCustomConstraint("AND(ISNUMBER(" + cell + "),"
                + cell + (range.lowOpen() ? ">" : ">=") + low + ","
                + cell + (range.highOpen() ? "<" : "<=") + high + ")");
    }

    private static String plain(double value) {
        return Double.isInfinite(value)
                ? ""
                : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private void add(DataValidationConstraint constraint, int index, String message) {
        add(constraint, index, message, true);
    }

    private void add(DataValidationConstraint constraint, int index, String message, boolean warn) {
        if (message.length() > LONGEST_MESSAGE) {
            throw new IllegalStateException("too long for a message box: " + message);
        }
        DataValidation rule =
                helper.createValidation(constraint, new CellRangeAddressList(firstRow, lastRow, index, index));
        rule.setErrorStyle(DataValidation.ErrorStyle.WARNING);
        rule.createErrorBox("Please look again", message);
        rule.setShowErrorBox(warn);
        rule.setEmptyCellAllowed(true);
        sheet.addValidationData(rule);
    }
}
