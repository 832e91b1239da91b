package org.rickyard.workbook.notation;

import org.rickyard.lists.CellAddress;

/**
 * A cursor over the parts of a formula that say what it refers to. Everything else (operators, brackets, white space)
 * is passed over as single characters of kind OTHER. Formulas are as files hold them: English, comma separated, A1
 * style.
 */
public final class FormulaTokens {
    /** What stands at the cursor. */
    public enum Kind {
        /** A text in double quotes. */
        STRING,
        /** A cell, a range of cells, whole columns or whole rows, without its sheet. */
        REFERENCE,
        /** A defined name. */
        NAME,
        /** A table reference with its brackets; {@link #name} is the table, "" inside the table itself. */
        STRUCTURED,
        /** A function's name. */
        FUNCTION,
        /** A number. */
        NUMBER,
        /** Any other character, or an error code. */
        OTHER
    }

    private final String formula;
    private int position;
    private Kind kind = Kind.OTHER;
    private int start;
    private String sheet;
    private String name = "";
    private int firstRow;
    private int firstColumn;
    private int lastRow;
    private int lastColumn;
    private boolean firstRowHeld;
    private boolean firstColumnHeld;
    private boolean lastRowHeld;
    private boolean lastColumnHeld;

    /** Before the first token of a formula, which begins without its equals sign. */
    public FormulaTokens(String formula) {
        this.formula = formula;
    }

    /** What the token is. */
    public Kind kind() {
        return kind;
    }

    /** Where the token starts, after its sheet prefix. */
    public int start() {
        return start;
    }

    /** One past the end of the token. */
    public int end() {
        return position;
    }

    /**
     * The sheet before the exclamation mark, unquoted; null if there is none. Two sheets with a colon between for a
     * reference through several sheets; with {@code [n]} before it for another workbook.
     */
    public String sheet() {
        return sheet;
    }

    /** The defined name, or the table of a structured reference. */
    public String name() {
        return name;
    }

    /**
     * The area of a reference, moved down and right where no dollar sign holds it and wrapped at the grid's edges.
     */
    public CellArea area(String onSheet, int rows, int columns) {
        return CellArea.between(
                onSheet,
                moved(firstRow, firstRowHeld, rows, CellAddress.ROWS),
                moved(firstColumn, firstColumnHeld, columns, CellAddress.COLUMNS),
                moved(lastRow, lastRowHeld, rows, CellAddress.ROWS),
                moved(lastColumn, lastColumnHeld, columns, CellAddress.COLUMNS));
    }

    /** Whether dollar signs hold all of a reference. */
    public boolean isAbsolute() {
        return firstRowHeld && firstColumnHeld && lastRowHeld && lastColumnHeld;
    }

    private static int moved(int index, boolean held, int by, int limit) {
        return held ? index : Math.floorMod(index + by, limit);
    }

    /** Moves on; false at the end. */
    public boolean next() {
        sheet = null;
        name = "";
        if (position >= formula.length()) {
            return false;
        }
        start = position;
        char c = formula.charAt(position);
        if (c == '"') {
            position = FormulaText.endOfQuoted(formula, position, '"');
            kind = Kind.STRING;
        } else if (c == '\'') {
            quotedSheet();
        } else if (c == '[') {
            bracket();
        } else if (c == '#') {
            error();
        } else if (c >= '0' && c <= '9' || c == '.') {
            number();
        } else if (FormulaText.isWordStart(c)) {
            word();
        } else {
            position++;
            kind = Kind.OTHER;
        }
        return true;
    }

    private void quotedSheet() {
        int close = FormulaText.endOfQuoted(formula, position, '\'');
        if (close < formula.length() && formula.charAt(close) == '!') {
            sheet = formula.substring(position + 1, close - 1).replace("''", "'");
            position = close + 1;
            afterSheet();
        } else {
            position = close;
            kind = Kind.OTHER;
        }
    }

    private void bracket() {
        int close = FormulaText.endOfBrackets(formula, position);
        int word = close;
        while (word < formula.length()
                && (FormulaText.isWordPart(formula.charAt(word)) || formula.charAt(word) == ':')) {
            word++;
        }
        if (word < formula.length() && formula.charAt(word) == '!') {
            sheet = formula.substring(position, word);
            position = word + 1;
            afterSheet();
        } else {
            position = close;
            kind = Kind.STRUCTURED;
        }
    }

    private void error() {
        position = FormulaText.endOfError(formula, position);
        kind = Kind.OTHER;
    }

    private void number() {
        int digits = FormulaText.endOfDigits(formula, position);
        if (digits < formula.length() && formula.charAt(digits) == ':' && referenceFrom(position)) {
            return;
        }
        position = FormulaText.endOfNumber(formula, position);
        kind = Kind.NUMBER;
    }

    private void word() {
        int end = FormulaText.endOfWord(formula, position);
        char after = end < formula.length() ? formula.charAt(end) : ' ';
        if (after == '!') {
            sheet = formula.substring(position, end);
            position = end + 1;
            afterSheet();
            return;
        }
        if (after == ':' && !isCellOrColumn(position, end)) {
            int second = FormulaText.endOfWord(formula, end + 1);
            if (second > end + 1 && second < formula.length() && formula.charAt(second) == '!') {
                sheet = formula.substring(position, second);
                position = second + 1;
                afterSheet();
                return;
            }
        }
        nameOrReference();
    }

    private void afterSheet() {
        start = position;
        if (position < formula.length() && formula.charAt(position) == '#') {
            error();
        } else if (position < formula.length() && FormulaText.isWordPart(formula.charAt(position))) {
            nameOrReference();
        } else {
            kind = Kind.OTHER;
        }
    }

    private void nameOrReference() {
        if (referenceFrom(position)) {
            return;
        }
        int end = FormulaText.endOfWord(formula, position);
        if (end == position) {
            end++;
        }
        char after = end < formula.length() ? formula.charAt(end) : ' ';
        name = formula.substring(position, end);
        if (after == '(') {
            kind = Kind.FUNCTION;
        } else if (after == '[') {
            end = FormulaText.endOfBrackets(formula, end);
            kind = Kind.STRUCTURED;
        } else {
            kind = name.equalsIgnoreCase("true") || name.equalsIgnoreCase("false") ? Kind.OTHER : Kind.NAME;
        }
        position = end;
    }

    private boolean isCellOrColumn(int from, int end) {
        ReferencePart part = ReferencePart.at(formula, from);
        return part != null && part.end() == end && part.hasColumn();
    }

    /** If a reference starts there, takes it. */
    private boolean referenceFrom(int from) {
        ReferencePart first = ReferencePart.at(formula, from);
        if (first == null) {
            return false;
        }
        ReferencePart last = first;
        if (first.end() < formula.length() && formula.charAt(first.end()) == ':') {
            ReferencePart second = ReferencePart.at(formula, afterSamePrefix(first.end() + 1));
            if (second != null && second.hasRow() == first.hasRow() && second.hasColumn() == first.hasColumn()) {
                last = second;
            }
        }
        if (last == first && !(first.hasRow() && first.hasColumn())) {
            return false;
        }
        boolean wholeColumns = !first.hasRow();
        boolean wholeRows = !first.hasColumn();
        firstRow = wholeColumns ? 0 : first.row();
        lastRow = wholeColumns ? CellAddress.ROWS - 1 : last.row();
        firstColumn = wholeRows ? 0 : first.column();
        lastColumn = wholeRows ? CellAddress.COLUMNS - 1 : last.column();
        firstRowHeld = wholeColumns || first.rowHeld();
        lastRowHeld = wholeColumns || last.rowHeld();
        firstColumnHeld = wholeRows || first.columnHeld();
        lastColumnHeld = wholeRows || last.columnHeld();
        position = last.end();
        kind = Kind.REFERENCE;
        return true;
    }

    /** Behind a sheet that is named again after the colon, as in {@code Fields!A1:Fields!B2}; otherwise unmoved. */
    private int afterSamePrefix(int from) {
        if (sheet == null || from >= formula.length()) {
            return from;
        }
        if (formula.charAt(from) == '\'') {
            int close = FormulaText.endOfQuoted(formula, from, '\'');
            boolean same = close < formula.length()
                    && formula.charAt(close) == '!'
                    && formula.substring(from + 1, close - 1).replace("''", "'").equalsIgnoreCase(sheet);
            return same ? close + 1 : from;
        }
        boolean same = formula.regionMatches(true, from, sheet + "!", 0, sheet.length() + 1);
        return same ? from + sheet.length() + 1 : from;
    }

    /** The zero-based column of its letters. */
    static int column(String letters) {
        int column = 0;
        for (int i = 0; i < letters.length(); i++) {
            column = 26 * column + (letters.charAt(i) | 0x20) - 'a' + 1;
        }
        return column - 1;
    }
}
