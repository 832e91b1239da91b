package org.rickyard.workbook.write;

import org.rickyard.lists.CellAddress;

/** The formula that leads to a cell when clicked. */
final class Hyperlink {
    private Hyperlink() {}

    static String to(CellAddress cell) {
        String target = cell.toString().replace("\"", "\"\"");
        return "HYPERLINK(\"#" + target + "\",\"" + target + "\")";
    }
}
