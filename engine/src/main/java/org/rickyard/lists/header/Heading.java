package org.rickyard.lists.header;

import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.text.SaidUnit;

/**
 * A header read for one list.
 *
 * @param candidates the columns it could mean; one if certain
 * @param rest what it says beside the name, a unit as a rule
 * @param weight how good the match is: 3 for the canonical name, 2 for a synonym, 1 for an unclear one
 * @param settled whether the Layout sheet says so
 * @param word the canonical word of a qualifying column that the header holds; null if none
 * @param dated whether it names a year beside the column: "Crop 2026"
 */
public record Heading(
        List<ColumnSpec> candidates, String rest, int weight, boolean settled, String word, boolean dated) {
    Heading(List<ColumnSpec> candidates, String rest, int weight, boolean settled, String word) {
        this(candidates, rest, weight, settled, word, false);
    }

    /** Whether it can mean one column only, by its name, a synonym or Layout, and not by a header that is unclear. */
    public boolean isCertain() {
        return candidates.size() == 1 && weight > 1;
    }

    /** Whether it says nothing but its column and unit: "Mower" may be what a machine is, and "Field 3" what a field is called. */
    public boolean isPlain() {
        return word == null && (rest.isEmpty() || HeaderUnit.fits(column(), rest));
    }

    /** The column it means, or the likeliest where it could mean several. */
    public ColumnSpec column() {
        return candidates.get(0);
    }

    /** The unit that a header says, which has been read as this: beside the name, or the whole of it where it is one. */
    String unitIn(String header) {
        return rest.isEmpty() && SaidUnit.isUnit(header) ? header : rest;
    }

    /** The heading of one that another header is sure to be. */
    Heading without(ColumnSpec column) {
        List<ColumnSpec> left =
                candidates.stream().filter(each -> each != column).toList();
        return new Heading(left, rest, weight, settled, word, dated);
    }

    /** A certain heading in the place of this one. */
    Heading as(ColumnSpec column, String unit) {
        return new Heading(List.of(column), unit, 2, settled, null, false);
    }
}
