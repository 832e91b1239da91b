package org.rickyard.lists.read;

/**
 * A column of a sheet taken for a column of a list.
 *
 * @param sheetColumn zero-based
 * @param header as it stands in the sheet
 * @param rest what the header or the units row says beside the name; "" if nothing
 * @param unit the unit its header gives or its default; the unit of a row may still differ
 * @param asked whether its meaning or unit must be asked, so that no cell of it is used
 */
record Binding(int sheetColumn, String header, String rest, ColumnUnit unit, boolean asked) {}
