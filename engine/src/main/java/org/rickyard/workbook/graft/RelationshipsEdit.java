package org.rickyard.workbook.graft;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rickyard.workbook.open.Markup;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.MarkupElement;
import org.rickyard.workbook.open.PartNames;

/** Adds links to the relationships of the client's workbook part, in the manner in which its own are written. */
final class RelationshipsEdit {
    private final String from;
    private final Markup markup;
    private final MarkupElement root;
    private final MarkupEdits edits;
    private final Set<String> ids = new HashSet<>();
    private boolean absolute;
    private int next = 1;

    RelationshipsEdit(String from, Markup markup) {
        this.from = from;
        this.markup = markup;
        this.root = markup.root();
        this.edits = new MarkupEdits(markup);
        for (MarkupElement link : root.children("Relationship")) {
            String id = link.value("Id").orElse("").toLowerCase(Locale.ROOT);
            ids.add(id);
            if (id.matches("rid[0-9]{1,8}")) {
                next = Math.max(next, Integer.parseInt(id.substring(3)) + 1);
            }
            absolute |= link.value("Target")
                    .filter(target -> target.startsWith("/"))
                    .isPresent();
        }
    }

    /** Adds a link and gives its id. */
    String add(String type, String part) {
        while (!ids.add("rid" + next)) {
            next++;
        }
        String id = "rId" + next;
        String target = markup.escaped(absolute ? "/" + part : PartNames.relative(from, part));
        edits.append(
                root,
                "<" + root.named("Relationship") + " Id=\"" + id + "\" Type=\"" + type + "\" Target=\"" + target
                        + "\"/>");
        return id;
    }

    /** Takes out all links to a part. */
    void removed(String part) {
        List<MarkupElement> links = root.children("Relationship");
        for (MarkupElement link : links) {
            boolean external =
                    link.value("TargetMode").filter("External"::equals).isPresent();
            String target = PartNames.resolve(from, link.value("Target").orElse(""));
            if (!external && PartNames.key(target).equals(PartNames.key(part))) {
                edits.remove(link);
            }
        }
    }

    byte[] bytes() {
        return edits.apply();
    }
}
