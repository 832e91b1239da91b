package org.rickyard.lists.read;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * A bare "Area" in a list that tells yields, doses or water by the acre, and nothing by the hectare, is hardly one of
 * hectares: two and a half times the product would be ordered for it. It is asked.
 */
final class AcresBeside {
    /** "fl oz/A" as well, but not "n/a". */
    private static final Pattern BY_THE_ACRE =
            Pattern.compile("(?i)(?:/|\\bper) ?(?:acs?|acres?)\\b|(?<!\\bn ?)/ ?A\\b|\\bgpa\\b");

    private static final Pattern BY_THE_HECTARE = Pattern.compile("(?i)(?:/|\\bper) ?(?:has?|hectares?)\\b|\\bha-1");

    private AcresBeside() {}

    /** What to ask of a column of areas whose header says no unit; null if nothing. */
    static String doubt(FoundTable table, ColumnSpec column, Unit own) {
        if (!own.isSameScale(Units.HA)) {
            return null;
        }
        List<String> headers = Arrays.stream(table.headers(), table.firstColumn(), table.lastColumn() + 1)
                .filter(Objects::nonNull)
                .toList();
        return headers.stream()
                        .anyMatch(header -> BY_THE_HECTARE.matcher(header).find())
                ? null
                : headers.stream()
                        .filter(header -> BY_THE_ACRE.matcher(header).find())
                        .findFirst()
                        .map(header ->
                                Words.quoted(header) + " beside it is by the acre: is it in ac? Write the unit in the"
                                        + " header, " + column.name() + " (ac) or " + column.name() + " (ha).")
                        .orElse(null);
    }
}
