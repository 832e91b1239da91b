package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.stream.Collectors;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.open.PartSource;

/** Finds the Excel tables of a sheet by way of the sheet's relationships. */
public final class TableParts {
    private TableParts() {}

    /**
     * An Excel table with its columns.
     *
     * @param sheet the sheet it is on
     * @param range name and place
     * @param columns the names of its columns, left to right
     */
    public record Table(String sheet, TableRange range, List<String> columns) {}

    /**
     * The tables of a sheet; none if it has no relationships. A table part that is missing or has no place on the grid
     * is passed over: the cells are there all the same.
     *
     * @throws UnreadablePartException if one of the parts is damaged
     */
    public static List<Table> read(PartSource parts, String sheet, String sheetPart) throws IOException {
        int slash = sheetPart.lastIndexOf('/');
        String folder = sheetPart.substring(0, slash + 1);
        String relationships = folder + "_rels/" + sheetPart.substring(slash + 1) + ".rels";
        if (!parts.exists(relationships)) {
            return List.of();
        }
        List<String> targets = new ArrayList<>();
        try (PartXml xml = PartXml.open(parts, relationships, "The list of tables of the sheet " + sheet)) {
            while (xml.nextStart("Relationship")) {
                String type = xml.attribute("Type");
                String target = xml.attribute("Target");
                boolean external = "External".equals(xml.attribute("TargetMode"));
                if (type != null && target != null && type.endsWith("/relationships/table") && !external) {
                    targets.add(resolve(folder, target));
                }
            }
        }
        List<Table> tables = new ArrayList<>();
        for (String part : targets) {
            if (parts.exists(part)) {
                Table table = readTable(parts, sheet, part);
                if (table != null) {
                    tables.add(table);
                }
            }
        }
        return tables;
    }

    private static Table readTable(PartSource parts, String sheet, String part) throws IOException {
        try (PartXml xml = PartXml.open(parts, part, "A table of the sheet " + sheet)) {
            if (!xml.nextStart("table")) {
                return null;
            }
            String reference = xml.attribute("ref");
            CellArea area = reference == null ? null : CellReference.area(sheet, reference);
            if (area == null) {
                return null;
            }
            String name = xml.attribute("displayName");
            name = name == null ? xml.attribute("name") : name;
            int headers = Math.min(1, xml.attribute("headerRowCount", 1));
            int totals = Math.min(1, xml.attribute("totalsRowCount", 0));
            List<String> columns = new ArrayList<>();
            while (xml.nextStart("tableColumn")) {
                String column = xml.attribute("name");
                columns.add(column == null ? "" : EscapedText.decode(column));
            }
            TableRange range = new TableRange(
                    name == null ? "" : name,
                    area.firstRow(),
                    area.lastRow(),
                    area.firstColumn(),
                    area.lastColumn(),
                    headers,
                    totals);
            return new Table(sheet, range, List.copyOf(columns));
        }
    }

    /** The part that a target means, seen from a folder: absolute from the root, otherwise relative to the folder. */
    static String resolve(String folder, String target) {
        String path = target.replace('\\', '/');
        path = path.startsWith("/") ? path : folder + path;
        Deque<String> steps = new ArrayDeque<>();
        for (String step : Arrays.asList(path.split("/"))) {
            if (step.equals("..")) {
                steps.pollLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return steps.stream().collect(Collectors.joining("/"));
    }
}
