package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.follow.FormulaRefs;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.Relationship;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.PartReferences;

/** Where the client's cells, names, charts and pivot tables refer to cells of ours in so many letters. */
final class ClientReferences {
    /**
     * One reference.
     *
     * @param by what refers, as read aloud
     * @param cell the cell that refers, if it is a cell
     * @param area what it refers to
     */
    record Reference(String by, Optional<CellAddress> cell, CellArea area) {}

    private final BookPackage book;
    private final FormulaRefs refs;
    /** By what refers and to what, so that each is told but once. */
    private final Map<String, Reference> found = new LinkedHashMap<>();

    private ClientReferences(BookPackage book, FormulaRefs refs) {
        this.book = book;
        this.refs = refs;
    }

    /** All of them; the sheets must have been read through {@code refs}. */
    static List<Reference> of(BookPackage book, FormulaRefs refs, List<SheetRef> clients, Predicate<DefinedName> isOurs)
            throws IOException {
        ClientReferences references = new ClientReferences(book, refs);
        for (FormulaRefs.Mention mention : refs.mentions()) {
            references.add(mention.cell().toString(), Optional.of(mention.cell()), mention.formula());
        }
        for (DefinedName name : book.definedNames()) {
            if (!isOurs.test(name) && !name.name().startsWith("_xlnm.")) {
                references.add("the name '" + name.name() + "'", Optional.empty(), name.formula());
            }
        }
        for (SheetRef sheet : clients) {
            references.drawnOn(sheet);
        }
        return new ArrayList<>(references.found.values());
    }

    private void add(String by, Optional<CellAddress> cell, String formula) {
        for (CellArea area : refs.pointed(formula, cell.isPresent())) {
            found.putIfAbsent(by + "\n" + area, new Reference(by, cell, area));
        }
    }

    private void drawnOn(SheetRef sheet) throws IOException {
        for (Relationship link : links(sheet.part())) {
            if (link.is("drawing")) {
                for (Relationship drawn : links(link.target())) {
                    if (drawn.is("chart") || drawn.is("chartEx")) {
                        part("a chart on '" + sheet.name() + "'", drawn);
                    }
                }
            } else if (link.is("pivotTable")) {
                for (Relationship store : links(link.target())) {
                    if (store.is("pivotCacheDefinition")) {
                        part("a pivot table on '" + sheet.name() + "'", store);
                    }
                }
            }
        }
    }

    private void part(String by, Relationship link) throws IOException {
        if (!link.external() && book.exists(link.target())) {
            for (String formula : PartReferences.read(book, link.target())) {
                add(by, Optional.empty(), formula);
            }
        }
    }

    /** Links that cannot be read lead nowhere: the part is the client's and stays as it is. */
    private List<Relationship> links(String part) throws IOException {
        try {
            return part.isEmpty() ? List.of() : book.relationships(part);
        } catch (RefusedException unreadable) {
            return List.of();
        }
    }
}
