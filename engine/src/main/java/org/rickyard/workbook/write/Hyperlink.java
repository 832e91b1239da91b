package org.rickyard.workbook.write;

import org.rickyard.lists.CellAddress;

/** The formula that leads to a cell when clicked. */
final class Hyperlink {
    /** Stands where the place of the cell goes, as {@link CellAddress#toString} says it. */
    static final String PLACE = "\u0003";

    /** The formula of all cells. */
    static final String TO_PLACE = "HYPERLINK(\"#" + PLACE + "\",\"" + PLACE + "\")";

    private Hyperlink() {}

    static String to(CellAddress cell) {
        return TO_PLACE.replace(PLACE, inText(cell.toString()));
    }

    /** As it stands in a text of a formula. */
    static String inText(String place) {
        return place.replace("\"", "\"\"");
    }
}
