package org.rickyard.lists.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Clamps;
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
import org.rickyard.lists.header.FlatList;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.table.DryFields;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.table.Hidden;
import org.rickyard.lists.table.HoldingAbove;
import org.rickyard.lists.table.RowsLikeHeaders;
import org.rickyard.lists.table.TableFinder;
import org.rickyard.lists.table.TypesBetween;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.lists.text.Spelling;
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

    /** To hold more names against one another takes longer than their reader would wait. */
    private static final int MOST_NAMES = 200;

    private final List<? extends Grid> sheets;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Vocabulary> vocabularies = new ArrayList<>();
    private CustomaryUnits customary = CustomaryUnits.UNSET;

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
        List<FoundTable> tables = HoldingAbove.parted(
                TypesBetween.parted(findTables(sheets, vocabularies, Integer.MAX_VALUE, findings), findings));
        findings.addAll(Hidden.sheets(sheets, tables));
        tables = new FieldLists(reader(false, HoldingAbove.of(tables, new ArrayList<>())), findings)
                .withoutSecond(tables);
        Map<FoundTable, HoldingAbove.Named> above = HoldingAbove.of(tables, new ArrayList<>());
        tables = new FieldLists(reader(false, above), findings).withoutRepeated(tables);
        withoutSecondMachines(tables);
        findings.addAll(Hidden.rowsAndColumns(tables));
        boolean dashesAreNames = tables.stream().anyMatch(ListFinder::namesARowByADash);
        RowsOfList reader = reader(dashesAreNames, HoldingAbove.of(tables, findings));
        DryFields.tell(tables);
        Map<String, ListRows> rows = new LinkedHashMap<>();
        List<Place> places = new ArrayList<>();
        for (ListSpec list : Lists.ALL) {
            rows.put(list.name(), reader.read(list, tables, places, findings));
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

    /**
     * Where the workbook has a machine list proper, what stands of machines beside the jobs of a flat list is no second one.
     * It is more of the same where the list has none of them, as one of tractors alone has no mower, nor any that could be
     * meant by them.
     */
    private void withoutSecondMachines(List<FoundTable> tables) {
        List<FoundTable> proper =
                tables.stream().filter(table -> table.chief() == Machines.LIST).toList();
        if (proper.isEmpty()) {
            return;
        }
        Set<String> listed = proper.stream().flatMap(SheetTables::machines).collect(Collectors.toSet());
        for (FoundTable table : tables) {
            HeaderRow.Match machines = table.role(Machines.LIST);
            if (machines != null
                    && table.chief() != Machines.LIST
                    && (SheetTables.machines(table).findAny().isEmpty() || namesOneOf(table, listed))) {
                table.dropRole(Machines.LIST);
                String said = FlatList.ofMachines(machines, table.headers());
                if (said.isEmpty()) {
                    continue;
                }
                findings.add(Finding.note(
                        table.address(table.headerRow(), table.firstColumn()),
                        "This list says of machines what they are (" + said
                                + "), but the workbook has a machine list too: it is taken from the machine list."));
            }
        }
    }

    /**
     * Whether a table names a machine that is listed, by itself or in a gang, or one that a slip makes another: its reader
     * is asked then which is meant, and what stands beside it makes no machine of the slip.
     */
    private static boolean namesOneOf(FoundTable table, Set<String> listed) {
        Set<String> named = SheetTables.machines(table)
                .flatMap(gang -> MachineMention.parse(gang, listed::contains).stream())
                .map(MachineMention::name)
                .collect(Collectors.toSet());
        return named.stream().anyMatch(listed::contains)
                || named.size() <= MOST_NAMES
                        && listed.size() <= MOST_NAMES
                        && named.stream()
                                .anyMatch(name -> !Spelling.near(name, listed).isEmpty());
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
        List<SheetTables> read = SheetTables.of(sheets, known, mostRows);
        List<FoundTable> tables = new ArrayList<>();
        for (SheetTables sheet : read) {
            tables.addAll(sheet.tables());
            into.addAll(sheet.findings());
        }
        read.forEach(sheet -> sheet.finder().unnamed().forEach((list, told) -> {
            if (tables.stream().noneMatch(table -> table.role(list) != null)) {
                into.add(told);
            }
        }));
        return tables;
    }

    private RowsOfList reader(boolean dashesAreNames, Map<FoundTable, HoldingAbove.Named> holdings) {
        return new RowsOfList(customary, dashesAreNames, holdings);
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
                .filter(sheet -> new RowsLikeHeaders(sheet, ownWords, List.of()).any(FIRST_LOOK))
                .toList();
        // Most workbooks have neither, and vocabularies take longer to make than a small sheet to look through.
        List<FoundTable> tables = likely.isEmpty()
                ? List.of()
                : findTables(likely, Lists.ALL.stream().map(Vocabulary::new).toList(), FIRST_LOOK, ignored);
        ListRows assumptions = reader(false, Map.of()).read(Assumptions.LIST, tables, new ArrayList<>(), ignored);
        customary = words.customary(assumptions);
        words.settle(reader(false, Map.of()).read(Layout.LIST, tables, new ArrayList<>(), ignored));
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
}
