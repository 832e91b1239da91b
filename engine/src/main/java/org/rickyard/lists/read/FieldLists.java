package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.HeaderText;

/** Which of several tables that could be one is the list of fields. */
final class FieldLists {
    /** What fields are called where holdings are small, and the pieces of a trial elsewhere. */
    private static final String PLOT = "plot";

    private final RowsOfList rows;
    private final List<Finding> findings;

    FieldLists(RowsOfList rows, List<Finding> findings) {
        this.rows = rows;
        this.findings = findings;
    }

    /** Where the workbook has a field list proper, the areas beside the jobs of a flat list are not a second one. */
    static List<FoundTable> withoutSecond(List<FoundTable> tables, List<Finding> findings) {
        boolean proper =
                tables.stream().anyMatch(table -> table.roles().size() == 1 && table.role(Fields.LIST) != null);
        if (!proper) {
            return tables;
        }
        List<FoundTable> kept = new ArrayList<>();
        for (FoundTable table : tables) {
            if (table.roles().size() > 1 && table.role(Fields.LIST) != null) {
                findings.add(Finding.note(
                        table.address(table.headerRow(), table.firstColumn()),
                        "This list has an area beside each field, but the workbook has a field list too: areas are"
                                + " taken from the field list."));
                table.dropRole(Fields.LIST);
            }
            kept.add(table);
        }
        return kept;
    }

    private static boolean isOfPlots(FoundTable table) {
        String header = table.role(Fields.LIST).headerOf(Fields.FIELD, table.headers());
        return table.roles().size() == 1
                && header != null
                && HeaderText.of(header).normal().startsWith(PLOT);
    }

    /**
     * Where one table is the field list by its sheet's name, or the fullest, those that only repeat it are left out, and
     * the plots of trials.
     */
    List<FoundTable> withoutRepeated(List<FoundTable> tables) {
        List<FoundTable> fields =
                tables.stream().filter(table -> table.role(Fields.LIST) != null).toList();
        if (fields.size() < 2) {
            return tables;
        }
        FoundTable proper = fields.stream()
                .max(Comparator.comparingInt(table -> {
                    HeaderRow.Match match = table.role(Fields.LIST);
                    return match.matched()
                            + (match.vocabulary().isNamed(table.grid().sheet()) ? 100 : 0);
                }))
                .orElseThrow();
        FieldsAgain again = new FieldsAgain(unnoted(proper));
        List<FoundTable> kept = new ArrayList<>(tables);
        for (FoundTable table : fields) {
            if (isOfPlots(table) && !isOfPlots(proper)) {
                kept.remove(table);
                findings.add(Finding.caution(
                        table.address(table.headerRow(), table.firstColumn()),
                        "These are plots, and the workbook has a list of fields, which begins at "
                                + proper.address(proper.headerRow(), proper.firstColumn())
                                + ": the plots of a trial lie within fields, so they are not read as more of them. If they"
                                + " are fields, call their column Field."));
            } else if (table != proper && table.roles().size() == 1 && again.isRepeatedBy(unnoted(table))) {
                kept.remove(table);
                findings.add(Finding.note(
                        table.address(table.headerRow(), table.firstColumn()),
                        "Every row here names a field of the list that begins at "
                                + proper.address(proper.headerRow(), proper.firstColumn())
                                + ", with its area, and says nothing else of it, so this is not read as a second list of"
                                + " fields."));
            }
        }
        return kept;
    }

    private ListRows unnoted(FoundTable table) {
        return rows.read(Fields.LIST, List.of(table), new ArrayList<>(), new ArrayList<>());
    }
}
