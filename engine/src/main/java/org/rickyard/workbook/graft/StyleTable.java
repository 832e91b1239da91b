package org.rickyard.workbook.graft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.workbook.open.Markup;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.MarkupElement;
import org.rickyard.workbook.open.Namespaces;

/** A numbered table in the styles (fonts, fills, cellXfs …): cells know its rows by number, so it only grows. */
final class StyleTable {
    /**
     * Stems of the extensions that today's spreadsheet programs understand: of alternative content they take the
     * first choice that asks for nothing else.
     */
    private static final Set<String> UNDERSTOOD = Set.of(
            "http://schemas.microsoft.com/office/spreadsheetml/", "http://schemas.microsoft.com/office/excel/");

    private final String name;
    private final MarkupElement root;
    private final Markup markup;
    private final MarkupElement container;
    private final List<Tag> rows = new ArrayList<>();
    private final Map<Tag, Integer> firstAt = new HashMap<>();
    private final List<Tag> added = new ArrayList<>();

    /** @param defaults what must stand first where the table is missing or empty */
    StyleTable(Markup markup, String name, String row, Tag... defaults) {
        this.name = name;
        this.markup = markup;
        this.root = markup.root();
        this.container = root.child(name).orElse(null);
        if (container != null) {
            collect(container, row);
        }
        if (rows.isEmpty()) {
            for (Tag each : defaults) {
                append(each);
            }
        }
    }

    private void collect(MarkupElement parent, String row) {
        for (MarkupElement child : parent.children()) {
            if (child.localName().equals(row) && child.namespace().equals(root.namespace())) {
                firstAt.putIfAbsent(Tag.of(child), rows.size());
                rows.add(Tag.of(child));
            } else if (child.localName().equals("AlternateContent")
                    && child.namespace().equals(Namespaces.COMPATIBILITY)) {
                branch(child, row);
            }
        }
    }

    private void branch(MarkupElement alternatives, String row) {
        for (MarkupElement choice : alternatives.children()) {
            boolean fallback = choice.localName().equals("Fallback");
            if (fallback || choice.value("Requires").filter(needs -> understood(choice, needs)).isPresent()) {
                collect(choice, row);
                return;
            }
        }
    }

    private static boolean understood(MarkupElement choice, String prefixes) {
        for (String prefix : prefixes.strip().split("\\s+")) {
            String namespace = choice.namespaceOf(prefix);
            if (namespace == null || UNDERSTOOD.stream().noneMatch(namespace::startsWith)) {
                return false;
            }
        }
        return true;
    }

    /** All rows, those added included. */
    List<Tag> rows() {
        return rows;
    }

    /** The number of a row like this one, which is added if there is none. */
    int indexOf(Tag row) {
        Integer present = firstAt.get(row);
        return present != null ? present : append(row);
    }

    /** Adds a row even if there is one like it. */
    int append(Tag row) {
        firstAt.putIfAbsent(row, rows.size());
        rows.add(row);
        added.add(row);
        return rows.size() - 1;
    }

    /** Writes the rows added, the table itself where it is missing, and its count. */
    void apply(MarkupEdits edits) {
        if (added.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder();
        added.forEach(row -> text.append(row.written(root, markup)));
        String count = Integer.toString(rows.size());
        if (container == null) {
            String tag = root.named(name);
            String whole = "<" + tag + " count=\"" + count + "\">" + text + "</" + tag + ">";
            SchemaOrder.STYLES.insert(edits, root, name, whole);
        } else {
            edits.set(container, "count", count);
            edits.append(container, text.toString());
        }
    }
}
