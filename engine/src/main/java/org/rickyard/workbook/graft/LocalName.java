package org.rickyard.workbook.graft;

/**
 * A defined name that belongs to one sheet.
 *
 * @param name unique on the sheet; {@code _xlnm.Print_Titles} and the like for built-in ones
 * @param formula what it stands for, without leading "="
 * @param hidden whether the name manager hides it
 */
public record LocalName(String name, String formula, boolean hidden) {
    /** A name that the name manager shows. */
    public LocalName(String name, String formula) {
        this(name, formula, false);
    }
}
