package org.rickyard.workbook.open;

/**
 * A sheet as the workbook part lists it.
 *
 * @param name its name
 * @param position zero-based position among all sheets, chart sheets included ({@code localSheetId})
 * @param sheetId its sheetId attribute
 * @param part its part name without leading slash; empty for an old macro module, which has no part
 * @param hidden whether it is hidden or very hidden
 * @param worksheet whether it is an ordinary sheet of cells, not a chart, dialog or macro sheet
 */
public record SheetRef(String name, int position, int sheetId, String part, boolean hidden, boolean worksheet) {}
