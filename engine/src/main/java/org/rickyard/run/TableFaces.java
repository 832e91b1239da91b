package org.rickyard.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.read.CellSink;

/** The face of a result sheet, as it is to be written and as it was found in the file. */
final class TableFaces implements CellSink {
    private final List<String> identity = new ArrayList<>();
    private final BitSet wanted = new BitSet();
    private final List<String> columns = new ArrayList<>();
    private final Map<Integer, Map<String, String>> rows = new HashMap<>();
    /** Rows of whose names some are not in the file: programs of scripts write formulas and do not work them out. */
    private final BitSet untold = new BitSet();

    private int lastRow = SheetPlaces.FIRST_ROW - 1;

    /**
     * Reads the face of the sheet as it was.
     *
     * @param table the table, whose names tell the rows of the sheet apart
     * @param areas the areas that will be asked for
     */
    TableFaces(ResultTable table, List<CellArea> areas) {
        identity(table).forEach(symbol -> identity.add(label(table, symbol)));
        for (CellArea area : areas) {
            for (int row : SheetFace.looked(area)) {
                wanted.set(row);
            }
        }
    }

    private static List<Symbol> identity(ResultTable table) {
        List<Symbol> symbols = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            if (column instanceof TableColumn.Name || column instanceof TableColumn.Word word && word.identity()) {
                symbols.add(column.symbol());
            }
        }
        return symbols;
    }

    private static String label(ResultTable table, Symbol symbol) {
        return SheetFace.words(table.spec().column(symbol).orElseThrow().label());
    }

    /** The face of the sheet as it is to be written. */
    static SheetFace now(ResultTable table) {
        List<String> columns = new ArrayList<>();
        table.spec().columns().forEach(column -> columns.add(SheetFace.words(column.label())));
        List<Symbol> symbols = identity(table);
        List<String> labels =
                symbols.stream().map(symbol -> label(table, symbol)).toList();
        return new SheetFace(
                columns,
                labels,
                SheetPlaces.FIRST_ROW,
                SheetPlaces.FIRST_ROW + table.rows() - 1,
                row -> symbols.stream()
                        .map(symbol -> SheetFace.words(table.of(symbol).word(row - SheetPlaces.FIRST_ROW)))
                        .toList());
    }

    @Override
    public void cell(int row, int column, Kind kind, double number, String text, Format format, String formula) {
        if (row == SheetPlaces.LABEL_ROW) {
            columns.addAll(Collections.nCopies(Math.max(0, column + 1 - columns.size()), ""));
            columns.set(column, SheetFace.words(text));
        } else if (row >= SheetPlaces.FIRST_ROW && column < columns.size()) {
            // A sheet without rows says why in a text where the first row would be.
            boolean reason = formula == null && column == 0 && text.startsWith("No rows: ");
            lastRow = reason ? lastRow : Math.max(lastRow, row);
            if (!reason && wanted.get(row) && identity.contains(columns.get(column))) {
                rows.computeIfAbsent(row, r -> new HashMap<>()).put(columns.get(column), SheetFace.words(text));
                untold.set(row, untold.get(row) || kind == Kind.UNCOMPUTED);
            }
        }
    }

    @Override
    public boolean wantsFormulaText() {
        return false;
    }

    /**
     * The face of the sheet as it was; it knows the wanted rows only.
     *
     * @param now tells of rows of which the file does not tell what they were about: what is known of them begins here
     */
    SheetFace before(SheetFace now) {
        List<String> labels = identity.stream().filter(columns::contains).toList();
        return new SheetFace(columns, labels, SheetPlaces.FIRST_ROW, lastRow, row -> {
            Map<String, String> words = untold.get(row) ? words(now, row) : rows.getOrDefault(row, Map.of());
            return labels.stream().map(label -> words.getOrDefault(label, "")).toList();
        });
    }

    private static Map<String, String> words(SheetFace face, int row) {
        Map<String, String> words = new HashMap<>();
        if (row <= face.lastRow()) {
            List<String> item = face.item().apply(row);
            face.labels()
                    .forEach(label -> words.put(label, item.get(face.labels().indexOf(label))));
        }
        return words;
    }
}
