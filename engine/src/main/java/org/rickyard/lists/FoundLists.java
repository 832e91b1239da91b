package org.rickyard.lists;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.rickyard.quantity.CustomaryUnits;

/** All input lists of a workbook, and what was noticed in finding them. */
public final class FoundLists {
    private final Map<String, ListRows> rows;
    private final List<Finding> findings;
    private final CustomaryUnits customary;
    private final List<Place> places;
    private final LocalDate dayZero;

    public FoundLists(
            Map<String, ListRows> rows,
            List<Finding> findings,
            CustomaryUnits customary,
            List<Place> places,
            LocalDate dayZero) {
        this.rows = Map.copyOf(rows);
        this.findings = List.copyOf(findings);
        this.customary = customary;
        this.places = List.copyOf(places);
        this.dayZero = dayZero;
    }

    /** The rows of a list in sheet and row order; none if the workbook has no such list. */
    public ListRows rows(ListSpec list) {
        return rows.get(list.name());
    }

    /** What was noticed, in the order of lists, columns and rows. */
    public List<Finding> findings() {
        return findings;
    }

    /** The day whose number is 0 in the workbook. */
    public LocalDate dayZero() {
        return dayZero;
    }

    /** Whose gallons and tons the workbook means. */
    public CustomaryUnits customary() {
        return customary;
    }

    /** Which list was read from where; a flat list stands here once for each list it serves. */
    public List<Place> places() {
        return places;
    }
}
