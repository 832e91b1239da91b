package org.rickyard.lists.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Layout;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Place;
import org.rickyard.lists.Products;
import org.rickyard.lists.Shared;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.ProductsInARow;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.table.DryFields;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.table.Hidden;
import org.rickyard.lists.table.HoldingAbove;
import org.rickyard.lists.table.RowsLikeHeaders;
import org.rickyard.lists.table.TableFinder;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;

/**
 * Finds the input lists of a workbook by their headers, wherever they stand.
 *
 * <p>What the workbook says of itself is read first: the list Layout (which header means which column) and the item
 * {@link Assumptions#CUSTOMARY_UNITS}. Then every sheet is gone through; tables of one kind are put together in sheet
 * order.
 */
public final class ListFinder {
    /** Layout and Assumptions are short and stand high up; so the first look need not go down long lists. */
    private static final int FIRST_LOOK = 500;

    /** What fields are called where holdings are small, and the pieces of a trial elsewhere. */
    private static final String PLOT = "plot";

    private final List<? extends Grid> sheets;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Vocabulary> vocabularies = new ArrayList<>();
    private CustomaryUnits customary = CustomaryUnits.UNSET;
    private boolean dashesAreNames;
    private Map<FoundTable, HoldingAbove.Named> holdings = Map.of();

    private ListFinder(List<? extends Grid> sheets) {
        this.sheets = sheets;
    }

    /** Finds all lists. The sheets are those of the client alone, in workbook order. */
    public static FoundLists find(List<? extends Grid> sheets) {
        return new ListFinder(sheets).find();
    }

    private FoundLists find() {
        for (ListSpec list : Lists.ALL) {
            vocabularies.add(new Vocabulary(list));
        }
        OwnWords own = new OwnWords(vocabularies, findings);
        read(own);
        List<FoundTable> tables = HoldingAbove.parted(findTables(sheets, vocabularies, Integer.MAX_VALUE, findings));
        findings.addAll(Hidden.sheets(sheets, tables));
        tables = withoutSecondFields(tables);
        holdings = HoldingAbove.of(tables, new ArrayList<>());
        tables = withoutFieldsAgain(tables);
        findings.addAll(Hidden.rowsAndColumns(tables));
        dashesAreNames = tables.stream().anyMatch(ListFinder::namesARowByADash);
        holdings = HoldingAbove.of(tables, findings);
        DryFields.tell(tables);
        Map<String, ListRows> rows = new LinkedHashMap<>();
        List<Place> places = new ArrayList<>();
        for (ListSpec list : Lists.ALL) {
            rows.put(list.name(), rows(list, tables, places));
        }
        DosesOfOneProduct.ask(rows, customary, findings);
        own.noteUnused(rows.get(Layout.LIST.name()), places);
        noteBlankHoldings(rows.get(Fields.LIST.name()));
        findings.addAll(NamesTwice.in(rows.get(Fields.LIST.name()), Fields.FIELD));
        findings.addAll(NamesTwice.in(rows.get(Machines.LIST.name()), Machines.MACHINE));
        findings.addAll(TankAsBody.in(rows.get(Machines.LIST.name())));
        findings.addAll(NamesTwice.in(rows.get(Products.LIST.name()), Products.PRODUCT));
        findings.addAll(NamesTwice.in(rows.get(Clamps.LIST.name()), Clamps.CLAMP));
        LocalDate dayZero =
                sheets.isEmpty() ? Grid.USUAL_DAY_ZERO : sheets.get(0).dayZero();
        return new FoundLists(rows, List.copyOf(new LinkedHashSet<>(findings)), customary, places, dayZero);
    }

    /** Where something is called "-" or "?", another list that says so means it, and not that there is none. */
    private static boolean namesARowByADash(FoundTable table) {
        int[] identity = table.columnsOf(table.chief().identity());
        for (int column : identity) {
            for (int i = 0; i < table.count(); i++) {
                if (table.grid().kind(table.row(i), column) == Grid.Kind.TEXT
                        && Words.marksBlank(Words.trim(table.grid().text(table.row(i), column)))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<FoundTable> findTables(
            List<? extends Grid> sheets, List<Vocabulary> known, int mostRows, List<Finding> into) {
        Set<String> firstWords = TableFinder.firstWords(known);
        List<FoundTable> tables = new ArrayList<>();
        List<TableFinder> finders = new ArrayList<>();
        for (Grid sheet : sheets) {
            TableFinder finder = new TableFinder(sheet, known, firstWords, into);
            tables.addAll(finder.find(mostRows));
            finders.add(finder);
        }
        finders.forEach(finder -> finder.unnamed().forEach((list, told) -> {
            if (tables.stream().noneMatch(table -> table.role(list) != null)) {
                into.add(told);
            }
        }));
        return tables;
    }

    private void read(OwnWords words) {
        List<Vocabulary> own = vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() == Layout.LIST || vocabulary.spec() == Assumptions.LIST)
                .toList();
        Set<String> ownWords = TableFinder.firstWords(own);
        // All lists are looked for where these may be, so that each is told from those beside it. What that settles is
        // settled anew afterwards.
        List<Finding> ignored = new ArrayList<>();
        List<? extends Grid> likely = sheets.stream()
                .filter(sheet -> new RowsLikeHeaders(sheet, ownWords).any(FIRST_LOOK))
                .toList();
        // Most workbooks have neither, and vocabularies take longer to make than a small sheet to look through.
        List<FoundTable> tables = likely.isEmpty()
                ? List.of()
                : findTables(likely, Lists.ALL.stream().map(Vocabulary::new).toList(), FIRST_LOOK, ignored);
        ListRows assumptions = rows(Assumptions.LIST, tables, new ArrayList<>(), ignored);
        customary = words.customary(assumptions);
        words.settle(rows(Layout.LIST, tables, new ArrayList<>(), ignored));
    }

    /** Where the workbook has a field list proper, the areas beside the jobs of a flat list are not a second one. */
    private List<FoundTable> withoutSecondFields(List<FoundTable> tables) {
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
    private List<FoundTable> withoutFieldsAgain(List<FoundTable> tables) {
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
        return rows(Fields.LIST, List.of(table), new ArrayList<>(), new ArrayList<>());
    }

    private ListRows rows(ListSpec list, List<FoundTable> tables, List<Place> places) {
        return rows(list, tables, places, findings);
    }

    private ListRows rows(ListSpec list, List<FoundTable> tables, List<Place> places, List<Finding> into) {
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
        Map<String, CellAddress> seen = new HashMap<>();
        int parts = 1;
        for (int i = 0; i < used.size(); i += parts) {
            FoundTable table = used.get(i);
            boolean flat = table.roles().size() > 1 && list == Fields.LIST;
            List<HeaderRow.Match> matches = table.roles(list);
            parts = matches.size();
            for (int index = 0; index < table.count(); index++) {
                int row = table.row(index);
                for (int part = 0; part < parts; part++) {
                    if (ProductsInARow.takes(matches, part, table.grid(), row)
                            && (!flat || isFirst(table, bound.get(i), row, seen, into))) {
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
                java.util.Arrays.copyOf(tableOf, next),
                java.util.Arrays.copyOf(sheetRow, next));
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

    /** In a flat list a field stands once for each of its jobs; the first row of it is the field. */
    private static boolean isFirst(
            FoundTable table, Binder.Bound bound, int row, Map<String, CellAddress> seen, List<Finding> into) {
        String field = text(table, bound, Fields.FIELD, row);
        String key = Words.key(text(table, bound, Fields.HOLDING, row)) + '\n' + Words.key(field);
        List<Binding> area = bound.bindings().get(Fields.AREA);
        int areaColumn = area.get(0).sheetColumn();
        CellAddress first = seen.putIfAbsent(key, table.address(row, areaColumn));
        if (first == null) {
            return true;
        }
        boolean same = first.sheet().equals(table.grid().sheet())
                && (table.grid().kind(row, areaColumn) == Grid.Kind.BLANK
                        || table.grid().number(first.row(), first.column())
                                == table.grid().number(row, areaColumn));
        if (!same) {
            into.add(Finding.caution(
                    table.address(row, areaColumn),
                    "The field " + Words.quoted(field) + " has another area here than in " + first
                            + "; the first is used."));
        }
        return false;
    }

    private static String text(FoundTable table, Binder.Bound bound, ColumnSpec column, int row) {
        List<Binding> bindings = bound.bindings().get(column);
        if (bindings == null) {
            return bound.words().getOrDefault(column, "");
        }
        int sheetColumn = bindings.get(0).sheetColumn();
        return table.grid().words(FoundRows.sheetRow(column, table.grid(), row, sheetColumn), sheetColumn);
    }

    /** A name written once over several rows stands in the first of them only. */
    private void noteBlankHoldings(ListRows fields) {
        int first = -1;
        int blank = 0;
        boolean named = false;
        for (int row = 0; row < fields.size(); row++) {
            ListRows.State state = fields.state(Fields.HOLDING, row);
            named |= state == ListRows.State.GIVEN;
            if (named && state == ListRows.State.BLANK) {
                first = first < 0 ? row : first;
                blank++;
            }
        }
        if (blank > 0) {
            findings.add(Finding.caution(
                    fields.address(Fields.HOLDING, first).orElse(null),
                    (blank == 1 ? "This field has" : "This field and " + (blank - 1) + " more have")
                            + " no holding, though a row above has one, so they are reckoned as of none. A name stands for"
                            + " its own row only: write it in every row, or merge the cells that it is for."));
        }
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
                                sheetColumn,
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
        int count = table.count();
        return new Place(
                list,
                table.grid().sheet(),
                Optional.ofNullable(table.range()).map(Grid.TableRange::name),
                table.headerRow(),
                count == 0 ? -1 : table.row(0),
                count == 0 ? -1 : table.row(count - 1),
                count,
                List.copyOf(columns),
                List.copyOf(unrecognised));
    }
}
