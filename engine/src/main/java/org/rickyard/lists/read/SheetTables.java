package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.table.Form;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.table.TableFinder;
import org.rickyard.lists.text.Words;

/**
 * The tables of one sheet.
 *
 * @param finder who has found them
 * @param findings what is to be said of them
 */
record SheetTables(TableFinder finder, List<FoundTable> tables, List<Finding> findings) {
    /** How a sheet is gone through; the same again with what other sheets have told. */
    private record Way(Grid sheet, List<Vocabulary> known, Set<String> firstWords, int mostRows) {
        Form.Reading read(Form form) {
            return form.read(known, firstWords);
        }

        SheetTables go(OptionalInt typesKnownUnder) {
            List<Finding> findings = new ArrayList<>();
            TableFinder finder = new TableFinder(sheet, known, firstWords, findings);
            typesKnownUnder.ifPresent(finder::typesAreKnownUnder);
            return new SheetTables(finder, finder.find(mostRows), findings);
        }
    }

    /** Goes through each sheet, looking for headers no lower than so many rows. */
    static List<SheetTables> of(List<? extends Grid> sheets, List<Vocabulary> known, int mostRows) {
        Set<String> firstWords = TableFinder.firstWords(known);
        List<Way> ways = new ArrayList<>();
        List<SheetTables> read = new ArrayList<>();
        for (Grid sheet : sheets) {
            Way way = new Way(sheet, known, firstWords, mostRows);
            ways.add(way);
            read.add(way.go(OptionalInt.empty()));
        }
        readUntyped(ways, read);
        readForms(ways, read);
        return read;
    }

    /**
     * Reads the forms of which the workbook has no list proper. Beside one they are cards or summaries of what is listed;
     * only of a machine more may be told.
     */
    private static void readForms(List<Way> ways, List<SheetTables> read) {
        Set<ListSpec> listed = read.stream()
                .flatMap(sheet -> sheet.tables.stream())
                .flatMap(SheetTables::lists)
                .collect(Collectors.toSet());
        for (int i = 0; i < read.size(); i++) {
            Form form = read.get(i).finder.form().orElse(null);
            if (form != null) {
                read.set(i, read.get(i).with(form, ways.get(i).read(form), listed, read));
            }
        }
    }

    private SheetTables with(Form form, Form.Reading reading, Set<ListSpec> listed, List<SheetTables> all) {
        // Whether its title names one that is listed, or is the title of a card of one of them, is not known.
        if (reading.unnamed().isPresent()
                && reading.tables().stream()
                        .anyMatch(table -> table.chief() == Machines.LIST
                                && listed.contains(Machines.LIST)
                                && !isNamed(table, all))) {
            return with(form, List.of(), List.of(reading.unnamed().get()));
        }
        if (reading.tables().stream().noneMatch(table -> isListed(table, listed))) {
            return with(form, reading.tables(), reading.findings());
        }
        // A field may be listed, and still the job that its card tells be another.
        boolean known =
                reading.tables().stream().allMatch(table -> table.role(Jobs.LIST) == null && isNamed(table, all));
        return known ? with(form, List.of(), List.of(form.listed())) : this;
    }

    /** Whether all that a table of a form tells of are in tables of other sheets, by their names. */
    private static boolean isNamed(FoundTable table, List<SheetTables> all) {
        List<ColumnSpec> name = table.chief().identity().subList(0, 1);
        Set<String> names = all.stream()
                .flatMap(sheet -> sheet.tables.stream())
                .filter(other -> other.role(table.chief()) != null)
                .flatMap(other -> named(other, name))
                .collect(Collectors.toSet());
        return named(table, name).allMatch(names::contains);
    }

    /** With what was read of a form, and what is said of it in the place of that it is not read. */
    private SheetTables with(Form form, List<FoundTable> more, List<Finding> told) {
        List<Finding> said = new ArrayList<>(findings);
        int at = said.indexOf(form.notRead());
        said.remove(at);
        said.addAll(at, told);
        return new SheetTables(
                finder, Stream.concat(tables.stream(), more.stream()).toList(), said);
    }

    /** Whether what a form tells is listed: its jobs if it is a card of one, of which the field may well be listed. */
    private static boolean isListed(FoundTable table, Set<ListSpec> listed) {
        return table.role(Jobs.LIST) != null
                ? listed.contains(Jobs.LIST)
                : lists(table).anyMatch(list -> list != Machines.LIST && listed.contains(list));
    }

    private static Stream<ListSpec> lists(FoundTable table) {
        return table.roles().stream().map(match -> match.vocabulary().spec());
    }

    /**
     * A table that tells machines but for their types is one of machines where another has the types of all of them, as a
     * register has beside a sheet of working figures.
     */
    private static void readUntyped(List<Way> ways, List<SheetTables> read) {
        Set<String> typed = read.stream()
                .flatMap(sheet -> sheet.tables.stream())
                .filter(table -> table.chief() == Machines.LIST)
                .flatMap(SheetTables::machines)
                .collect(Collectors.toSet());
        for (int i = 0; !typed.isEmpty() && i < read.size(); i++) {
            OptionalInt untyped = read.get(i).finder.machinesWithoutType();
            if (untyped.isPresent()) {
                SheetTables again = ways.get(i).go(untyped);
                if (again.tellsAll(untyped.getAsInt(), typed)) {
                    read.set(i, again);
                }
            }
        }
    }

    /** Whether the machines under a row are some of these, each told once, as a record of their work does not. */
    private boolean tellsAll(int headerRow, Set<String> typed) {
        List<String> names = tables.stream()
                .filter(table -> table.chief() == Machines.LIST && table.headerRow() == headerRow)
                .flatMap(SheetTables::machines)
                .toList();
        return !names.isEmpty() && typed.containsAll(names) && new HashSet<>(names).size() == names.size();
    }

    /** What the machines of a table's rows are called. */
    static Stream<String> machines(FoundTable table) {
        return named(table, List.of(Machines.MACHINE));
    }

    /** What stands in a table's rows under the first header that means one of these. */
    private static Stream<String> named(FoundTable table, List<ColumnSpec> name) {
        return IntStream.range(0, table.count())
                .mapToObj(row -> Words.key(table.word(table.row(row), name)))
                .filter(word -> !word.isEmpty());
    }
}
