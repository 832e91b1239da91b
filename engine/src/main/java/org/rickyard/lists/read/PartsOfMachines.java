package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Shared;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/**
 * Machines that are told in several tables, as in a register of all machines and a sheet of the sprayers: one machine each,
 * whose columns stand in one table or another. Only where what any two of them say of it is the same, and each says
 * something that the other does not; otherwise they are several of one name, and that is told.
 */
final class PartsOfMachines {
    /** A row of one table. */
    private record Part(int table, int row) {}

    private final List<FoundTable> tables;
    private final List<Binder.Bound> bound;
    private final Map<Part, List<Part>> others = new HashMap<>();
    private final Map<Part, Part> firsts = new HashMap<>();

    private PartsOfMachines(List<FoundTable> tables, List<Binder.Bound> bound) {
        this.tables = tables;
        this.bound = bound;
    }

    /** Looks for them; of any list but that of machines there are none. */
    static PartsOfMachines of(ListSpec list, List<FoundTable> tables, List<Binder.Bound> bound, List<Finding> into) {
        PartsOfMachines parts = new PartsOfMachines(tables, bound);
        if (list == Machines.LIST && tables.size() > 1) {
            parts.find(into);
        }
        return parts;
    }

    /** Whether a row is not the rest of one in a table before. */
    boolean isFirst(int table, int row) {
        return firsts.isEmpty() || !firsts.containsKey(new Part(table, row));
    }

    /** Tells where the rest of a row stands, if it has one. */
    void tellOther(int table, int row, int listRow, OtherParts into) {
        if (!others.isEmpty()) {
            others.getOrDefault(new Part(table, row), List.of())
                    .forEach(other -> into.put(listRow, other.table(), other.row()));
        }
    }

    private void find(List<Finding> into) {
        Map<String, List<Part>> named = new LinkedHashMap<>();
        for (int table = 0; table < tables.size(); table++) {
            FoundTable found = tables.get(table);
            if (found.chief() != Machines.LIST) {
                continue;
            }
            for (int index = 0; index < found.count(); index++) {
                Part part = new Part(table, found.row(index));
                String name = Words.key(text(Machines.MACHINE, part));
                if (!name.isEmpty()) {
                    named.computeIfAbsent(name, n -> new ArrayList<>(1)).add(part);
                }
            }
        }
        Map<List<Integer>, List<Part>> told = new LinkedHashMap<>();
        for (List<Part> parts : named.values()) {
            if (parts.size() > 1 && areOne(parts)) {
                Part first = parts.get(0);
                List<Part> rests = parts.subList(1, parts.size());
                others.put(first, rests);
                for (Part rest : rests) {
                    firsts.put(rest, first);
                    told.computeIfAbsent(List.of(first.table(), rest.table()), t -> new ArrayList<>())
                            .add(rest);
                }
            }
        }
        told.values().forEach(rests -> into.add(told(rests)));
    }

    private Finding told(List<Part> rests) {
        Part rest = rests.get(0);
        Part first = firsts.get(rest);
        int more = rests.size() - 1;
        String others = more == 0 ? "" : more == 1 ? " (so does 1 more)" : " (so do " + more + " more)";
        return Finding.note(
                tables.get(rest.table()).address(rest.row(), name(rest)),
                "The machine " + Words.quoted(text(Machines.MACHINE, rest)) + " stands at "
                        + tables.get(first.table()).address(first.row(), name(first)) + " too" + others
                        + ", and what both rows say is the same: they are read as one machine, each figure from where it"
                        + " stands. If they are two, give each its own name.");
    }

    private int name(Part part) {
        return bound.get(part.table()).bindings().get(Machines.MACHINE).get(0).sheetColumn();
    }

    private boolean areOne(List<Part> parts) {
        for (int one = 0; one < parts.size(); one++) {
            for (int other = one + 1; other < parts.size(); other++) {
                if (!isOne(parts.get(one), parts.get(other))) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isOne(Part one, Part other) {
        if (tables.get(one.table()) == tables.get(other.table())) {
            return false;
        }
        boolean newHere = false;
        boolean newThere = false;
        for (ColumnSpec column : Machines.LIST.columns()) {
            String here = text(column, one);
            String there = text(column, other);
            if (column == Machines.MACHINE || here.isEmpty() && there.isEmpty()) {
                continue;
            }
            if (!here.isEmpty() && !there.isEmpty()) {
                if (!isSame(column, one, here, other, there)) {
                    return false;
                }
            } else if (column.isNumeric() || column == Machines.TYPE) {
                newHere |= there.isEmpty();
                newThere |= here.isEmpty();
            }
        }
        return newHere && newThere;
    }

    private boolean isSame(ColumnSpec column, Part one, String here, Part other, String there) {
        if (column == Machines.TYPE) {
            return type(here).equals(type(there));
        }
        if (column == Shared.HOLDING || column.isOfWords()) {
            return Words.key(here).equals(Words.key(there));
        }
        Binding binding = binding(column, one);
        Binding second = binding(column, other);
        return binding != null
                && second != null
                && FlatRows.isSame(
                        tables.get(one.table()).grid(),
                        one.row(),
                        binding,
                        tables.get(other.table()).grid(),
                        other.row(),
                        second);
    }

    private static String type(String text) {
        String words = Words.normal(text);
        return ChoiceWords.MACHINE_TYPES.getOrDefault(words, words);
    }

    /** The only header of a column; null if there are several or none. */
    private Binding binding(ColumnSpec column, Part part) {
        List<Binding> bindings = bound.get(part.table()).bindings().get(column);
        return bindings == null || bindings.size() > 1 ? null : bindings.get(0);
    }

    /** What a row says under any of the headers of a column, or its table above them; "" if nothing. */
    private String text(ColumnSpec column, Part part) {
        Binder.Bound columns = bound.get(part.table());
        List<Binding> bindings = columns.bindings().get(column);
        if (bindings == null) {
            return columns.words().getOrDefault(column, "");
        }
        for (Binding binding : bindings) {
            String text = Words.trim(tables.get(part.table()).grid().words(part.row(), binding.sheetColumn()));
            if (!text.isEmpty() && (column == Machines.MACHINE || !Words.marksBlank(text))) {
                return text;
            }
        }
        return "";
    }
}
