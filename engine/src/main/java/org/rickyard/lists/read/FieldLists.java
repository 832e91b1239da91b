package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** Which of several tables that could be one is the list of fields. */
final class FieldLists {
    /** What fields are called where holdings are small, and the pieces of a trial elsewhere. */
    private static final String PLOT = "plot";

    /** Areas that differ by less were rounded, or measured another time; a part that is worked is less. */
    private static final double AS_GOOD_AS_EQUAL = 0.05;

    private final RowsOfList rows;
    private final List<Finding> findings;

    FieldLists(RowsOfList rows, List<Finding> findings) {
        this.rows = rows;
        this.findings = findings;
    }

    /** Where the workbook has a field list proper, the areas beside the jobs of a flat list are not a second one. */
    List<FoundTable> withoutSecond(List<FoundTable> tables) {
        List<FoundTable> proper = tables.stream()
                .filter(table -> table.roles().size() == 1 && table.role(Fields.LIST) != null)
                .toList();
        if (proper.isEmpty()) {
            return tables;
        }
        List<FoundTable> kept = new ArrayList<>();
        for (FoundTable table : tables) {
            if (table.roles().size() > 1 && table.role(Fields.LIST) != null) {
                String other =
                        otherArea(unnoted(table), rows.read(Fields.LIST, proper, new ArrayList<>(), new ArrayList<>()));
                CellAddress cell = table.address(table.headerRow(), table.firstColumn());
                String areas =
                        "This list has an area beside each field, but the workbook has a field list too: areas are"
                                + " taken from the field list";
                findings.add(
                        other.isEmpty()
                                ? Finding.note(cell, areas + ".")
                                : Finding.caution(
                                        cell,
                                        areas + ", and " + other
                                                + ". Hours, water and product are for the whole of it: where a part is worked,"
                                                + " give that part a name and an area of its own in the field list, and name it"
                                                + " here."));
                table.dropRole(Fields.LIST);
            }
            kept.add(table);
        }
        return kept;
    }

    /** The first field beside which another area stands than any of its name has in the field list; "" if none. */
    private static String otherArea(ListRows beside, ListRows fields) {
        Map<String, List<Double>> areas = new HashMap<>();
        for (int row = 0; row < fields.size(); row++) {
            if (fields.gives(Fields.AREA, row)) {
                areas.computeIfAbsent(NameKey.key(fields.text(Fields.FIELD, row)), any -> new ArrayList<>(1))
                        .add(hectares(fields, row));
            }
        }
        for (int row = 0; row < beside.size(); row++) {
            List<Double> known = areas.get(NameKey.key(beside.text(Fields.FIELD, row)));
            if (known != null && beside.gives(Fields.AREA, row)) {
                double here = hectares(beside, row);
                if (known.stream().allMatch(area -> Math.abs(area - here) > AS_GOOD_AS_EQUAL * area)) {
                    return "that of " + Words.quoted(beside.text(Fields.FIELD, row))
                            + beside.address(Fields.AREA, row)
                                    .map(cell -> " (" + cell + ")")
                                    .orElse("")
                            + " is another there";
                }
            }
        }
        return "";
    }

    private static double hectares(ListRows rows, int row) {
        return rows.unit(Fields.AREA, row).orElse(Units.HA).convert(rows.number(Fields.AREA, row), Units.HA);
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
                findings.add(again.otherCrop(unnoted(table))
                        .map(row -> otherCrop(table, row, proper))
                        .orElseGet(() -> Finding.note(
                                table.address(table.headerRow(), table.firstColumn()),
                                "Every row here names a field of the list that begins at "
                                        + proper.address(proper.headerRow(), proper.firstColumn())
                                        + ", with its area, and says nothing else of it, so this is not read as a second list of"
                                        + " fields.")));
            }
        }
        return kept;
    }

    /** The fields of another year, as a rule; with the crops of the wrong one everything is reckoned wrong. */
    private Finding otherCrop(FoundTable table, int row, FoundTable proper) {
        ListRows rows = unnoted(table);
        return Finding.caution(
                rows.address(Fields.CROP, row).orElse(null),
                "The fields here are those of the list that begins at "
                        + proper.address(proper.headerRow(), proper.firstColumn()) + ", but "
                        + Words.quoted(rows.text(Fields.FIELD, row))
                        + " has another crop there: crops are taken from that"
                        + " list, and this one is not read. If this is the one to reckon with, call its sheet Fields, or"
                        + " move the other to another workbook.");
    }

    private ListRows unnoted(FoundTable table) {
        return rows.read(Fields.LIST, List.of(table), new ArrayList<>(), new ArrayList<>());
    }
}
