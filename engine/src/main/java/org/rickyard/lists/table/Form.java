package org.rickyard.lists.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.header.Vocabulary;

/** A form on a sheet: the headers of a list stand below one another, and what is told of each thing on their right. */
public final class Form {
    /**
     * What became of reading a form.
     *
     * @param tables the lists that were read from it; none if it could not be read
     * @param findings what is to be said of them, or why there are none
     * @param unnamed how it is said that it is not read for want of a name, where only its title gave it one
     */
    public record Reading(List<FoundTable> tables, List<Finding> findings, Optional<Finding> unnamed) {
        Reading(List<FoundTable> tables, List<Finding> findings) {
            this(tables, findings, Optional.empty());
        }
    }

    private final Grid grid;
    private final ListOnItsSide list;
    private final List<FoundTable> beside;
    private final FormLines lines;

    /**
     * A form.
     *
     * @param beside the lists proper of its sheet
     */
    Form(Grid grid, ListOnItsSide list, List<FoundTable> beside, List<Vocabulary> vocabularies) {
        this.grid = grid;
        this.list = list;
        this.beside = beside;
        this.lines = FormLines.of(grid, list, beside, vocabularies);
    }

    /** Whether a row of the sheet is one of its own. */
    boolean holds(int row) {
        return list.holds(row) || lines.turned().stream().anyMatch(part -> part.isFrom(row));
    }

    /** How it is said that it is not read. */
    public Finding notRead() {
        return list.notRead(grid, beside, List.of());
    }

    /** How it is said that what it tells of is read elsewhere. */
    public Finding listed() {
        return list.listed(grid);
    }

    /** Reads it as a list of which the rows stand beside one another. */
    public Reading read(List<Vocabulary> vocabularies, Set<String> firstWords) {
        if (!lines.asked().isEmpty()) {
            return new Reading(List.of(), lines.asked());
        }
        List<FoundTable> tables = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<String> lacking = new ArrayList<>();
        for (FormGrid part : lines.turned()) {
            TableFinder finder = new TableFinder(part, vocabularies, firstWords, findings);
            tables.addAll(finder.find(part.rows()));
            lacking.addAll(finder.lackedBy(list.spec()));
        }
        boolean unnamed = tables.stream().allMatch(table -> table.count() == 0);
        if (unnamed) {
            FormNames.of(new FormCells(grid, vocabularies), list.spec(), lacking)
                    .ifPresent(names -> readNamed(names, vocabularies, firstWords, tables, findings));
        }
        if (tables.stream().allMatch(table -> table.count() == 0)) {
            return new Reading(List.of(), List.of(lacks(lacking)));
        }
        findings.add(0, list.read(grid));
        findings.addAll(lines.told());
        boolean titled = unnamed && lines.turned().get(0).things() == 1;
        return new Reading(tables, findings, titled ? Optional.of(lacks(lacking)) : Optional.empty());
    }

    private Finding lacks(List<String> lacking) {
        return list.notRead(grid, beside, lacking.stream().distinct().toList());
    }

    /** Reads it once more, with names that no label says. */
    private void readNamed(
            FormNames names,
            List<Vocabulary> vocabularies,
            Set<String> firstWords,
            List<FoundTable> tables,
            List<Finding> findings) {
        tables.clear();
        findings.clear();
        for (FormGrid part : lines.turned()) {
            FormGrid named = names.named(part, lines.turned().size() == 1).orElse(null);
            if (named == null) {
                tables.clear();
                return;
            }
            findings.add(names.told(named));
            tables.addAll(new TableFinder(named, vocabularies, firstWords, findings).find(named.rows()));
        }
    }
}
