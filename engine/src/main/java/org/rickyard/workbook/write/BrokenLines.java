package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;

/** A long text as lines of a width, so that it can run on over the cells to its right and none need be merged. */
final class BrokenLines {
    private BrokenLines() {}

    /**
     * The lines; a word longer than a line is cut.
     *
     * @param width of a line in characters
     * @param indent what lines after the first begin with
     */
    static List<String> of(String text, int width, String indent) {
        List<String> lines = new ArrayList<>();
        String lead = "";
        String rest = text;
        while (lead.length() + rest.length() > width) {
            int room = width - lead.length();
            int space = rest.lastIndexOf(' ', room);
            int end = space > 0 ? space : room;
            lines.add(lead + rest.substring(0, end));
            rest = rest.substring(end).strip();
            lead = indent;
        }
        lines.add(lead + rest);
        return lines;
    }
}
