package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Place;
import org.rickyard.lists.Shared;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.ProductsInARow;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.table.HoldingAbove;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;

/** Reads the rows of one list out of the tables that were found for it. */
final class RowsOfList {
    private final CustomaryUnits customary;
    private final boolean dashesAreNames;
    private final Map<FoundTable, HoldingAbove.Named> holdings;

    /**
     * Takes what holds for all lists.
     *
     * @param dashesAreNames whether something is called "-", so that another list that says so means it
     * @param holdings the holding that stands above a table, where one does
     */
    RowsOfList(CustomaryUnits customary, boolean dashesAreNames, Map<FoundTable, HoldingAbove.Named> holdings) {
        this.customary = customary;
        this.dashesAreNames = dashesAreNames;
        this.holdings = holdings;
    }

    /**
     * Reads the rows.
     *
     * @param places takes where they stand
     * @param into takes what there is to say of them
     */
    ListRows read(ListSpec list, List<FoundTable> tables, List<Place> places, List<Finding> into) {
        List<FoundTable> used = new ArrayList<>();
        List<Binder.Bound> bound = new ArrayList<>();
        int size = 0;
        for (FoundTable table : tables) {
            for (HeaderRow.Match match : table.roles(list)) {
                Binder.Bound columns = new Binder(table, match, customary, into).bind();
                nameHolding(list, holdings.get(table), columns, into);
                used.add(table);
                bound.add(columns);
                size += table.count();
                places.add(place(list, table, match, columns));
            }
        }
        int[] tableOf = new int[size];
        int[] sheetRow = new int[size];
        int next = 0;
        Map<String, FlatRows.First> seen = new HashMap<>();
        PartsOfMachines machines = PartsOfMachines.of(list, used, bound, into);
        OtherParts others = new OtherParts();
        int parts = 1;
        for (int i = 0; i < used.size(); i += parts) {
            FoundTable table = used.get(i);
            FlatRows flat = FlatRows.of(list, table, bound.get(i), seen, into);
            List<HeaderRow.Match> matches = table.roles(list);
            parts = matches.size();
            for (int index = 0; index < table.count(); index++) {
                int row = table.row(index);
                for (int part = 0; part < parts; part++) {
                    if (ProductsInARow.takes(matches, part, table.grid(), row)
                            && (flat == null || flat.isFirst(row))
                            && machines.isFirst(i, row)) {
                        machines.tellOther(i, row, next, others);
                        tableOf[next] = i + part;
                        sheetRow[next++] = row;
                    }
                }
            }
        }
        FoundRows rows = new FoundRows(
                list,
                used.toArray(new FoundTable[0]),
                bound.toArray(new Binder.Bound[0]),
                Arrays.copyOf(tableOf, next),
                Arrays.copyOf(sheetRow, next),
                others);
        readColumns(rows, into);
        return rows;
    }

    private static void nameHolding(
            ListSpec list, HoldingAbove.Named holding, Binder.Bound columns, List<Finding> into) {
        if (holding != null && list.columns().contains(Shared.HOLDING)) {
            columns.words().put(Shared.HOLDING, holding.name());
            columns.wordsAt().put(Shared.HOLDING, holding.cell());
            into.add(Finding.note(
                    holding.cell(),
                    "The rows of " + list.name() + " below are taken to be of the holding "
                            + Words.quoted(holding.name())
                            + ", which stands above them. Where they are not, add a column Holding."));
        }
    }

    /** Columns that decide the units of others are read first. */
    private void readColumns(FoundRows rows, List<Finding> into) {
        if (rows.tables.length == 0) {
            return;
        }
        ListSpec list = rows.spec();
        for (ColumnSpec column : list.columns()) {
            if (decides(list, column)) {
                new ColumnReader(rows, column, customary, dashesAreNames, into).read();
            }
        }
        for (ColumnSpec column : list.columns()) {
            if (!decides(list, column)) {
                new ColumnReader(rows, column, customary, dashesAreNames, into).read();
            }
        }
    }

    private static boolean decides(ListSpec list, ColumnSpec column) {
        return list.unitColumns().containsValue(column) || list.qualifiers().containsValue(column);
    }

    private static Optional<CellAddress> rowAt(FoundTable table, int index) {
        return table.count() == 0
                ? Optional.empty()
                : Optional.of(table.address(table.row(index), table.firstColumn()));
    }

    private static Place place(ListSpec list, FoundTable table, HeaderRow.Match match, Binder.Bound bound) {
        List<Place.Column> columns = new ArrayList<>();
        List<String> unrecognised = new ArrayList<>();
        for (int sheetColumn = match.firstColumn(); sheetColumn <= match.lastColumn(); sheetColumn++) {
            int before = columns.size();
            for (ColumnSpec column : list.columns()) {
                for (Binding binding : bound.bindings().getOrDefault(column, List.of())) {
                    if (binding.sheetColumn() == sheetColumn) {
                        columns.add(new Place.Column(
                                column,
                                binding.header(),
                                table.address(table.headerRow(), sheetColumn),
                                Optional.ofNullable(binding.unit().unit()),
                                binding.unit().assumed(),
                                binding.asked()));
                    }
                }
            }
            if (columns.size() == before && table.headers()[sheetColumn] != null && !table.knows(sheetColumn)) {
                unrecognised.add(table.headers()[sheetColumn]);
            }
        }
        return new Place(
                list,
                table.grid().sheet(),
                Optional.ofNullable(table.range()).map(Grid.TableRange::name),
                table.count(),
                rowAt(table, 0),
                rowAt(table, table.count() - 1),
                table.grid().isTurned(),
                List.copyOf(columns),
                List.copyOf(unrecognised));
    }
}
