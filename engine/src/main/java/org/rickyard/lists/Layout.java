package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** What settles for good which header of the workbook means which column, and in which unit. */
public final class Layout {
    private Layout() {}

    /** Which list. */
    public static final ColumnSpec LIST_NAME =
            text("List", Quantities.LIST).needed().help("Fields, Machines, Products, ...");
    /** Which of its columns. */
    public static final ColumnSpec COLUMN =
            text("Column", Quantities.COLUMN).needed().help("The canonical name, such as Water volume.");
    /** The header meant. */
    public static final ColumnSpec HEADER = text("Header in this workbook", Quantities.HEADER)
            .needed()
            .also("header, header here, heading")
            .help("As it stands in the workbook.");
    /** Its unit. */
    public static final ColumnSpec UNIT =
            text("Unit", Quantities.UNIT).also("units").help("Only where the header does not say it.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Layout", List.of("column layout", "header layout"), List.of(LIST_NAME, COLUMN, HEADER, UNIT))
            .identifiedBy(HEADER)
            .needsHeaders(3);
}
