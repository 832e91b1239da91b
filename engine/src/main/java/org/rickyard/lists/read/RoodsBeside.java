package org.rickyard.lists.read;

import java.util.regex.Pattern;
import org.rickyard.lists.Grid;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/**
 * Acres with the roods and perches of each field in columns of their own, as deeds have them: the whole acres alone are
 * too little by anything up to one. It is asked.
 */
final class RoodsBeside {
    private static final Pattern PARTS_OF_AN_ACRE = Pattern.compile("(?i)^\\W*(?:roods?|perch(?:es)?|poles?)\\b");

    private RoodsBeside() {}

    /** What to ask of a column of areas; null if no roods or perches stand beside it. */
    static String doubt(FoundTable table, int areas) {
        for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
            String header = table.headers()[column];
            if (column != areas
                    && header != null
                    && PARTS_OF_AN_ACRE.matcher(header).find()
                    && hasFigures(table, column)) {
                return Words.quoted(header)
                        + " beside it has parts of its acres, and they are not added up: write decimal acres in one column"
                        + " (a rood is 0.25 ac, a perch 1/160 ac).";
            }
        }
        return null;
    }

    private static boolean hasFigures(FoundTable table, int column) {
        for (int i = 0; i < table.count(); i++) {
            if (table.grid().kind(table.row(i), column) == Grid.Kind.NUMBER
                    && table.grid().number(table.row(i), column) > 0) {
                return true;
            }
        }
        return false;
    }
}
