package org.rickyard.workbook.open;

/**
 * A defined name.
 *
 * @param name as written, {@code _xlnm.Print_Titles} and the like included
 * @param localSheetId the zero-based position of the sheet it belongs to, or null for the whole workbook
 * @param formula what it stands for, without leading "="
 * @param hidden whether the name manager hides it
 */
public record DefinedName(String name, Integer localSheetId, String formula, boolean hidden) {}
