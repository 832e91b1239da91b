package org.rickyard.workbook.graft;

/**
 * A note on a cell.
 *
 * @param row zero-based
 * @param column zero-based
 * @param text at most 32,767 characters; lines are parted by a line feed
 */
public record Note(int row, int column, String text) {
    private static final int LONGEST = 32_767;

    /** @throws IllegalArgumentException if the text is too long for a cell's note */
    public Note {
        if (text.length() > LONGEST) {
            throw new IllegalArgumentException("a note has at most 32,767 characters, not " + text.length());
        }
    }
}
