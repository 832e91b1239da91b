package org.rickyard.workbook.graft;

import java.util.HashSet;
import java.util.Set;
import org.rickyard.workbook.open.ContentTypes;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.MarkupElement;
import org.rickyard.workbook.open.PartNames;

/** Names the types of our parts in {@code [Content_Types].xml}. */
final class ContentTypesEdit {
    private final ContentTypes types;
    private final MarkupElement root;
    private final MarkupEdits edits;
    private final Set<String> defaulted = new HashSet<>();

    ContentTypesEdit(ContentTypes types) {
        this.types = types;
        this.root = types.markup().root();
        this.edits = new MarkupEdits(types.markup());
    }

    /** Sees to it that a part has this type, by an entry of its own. */
    void part(String part, String type) {
        var present = types.override(part);
        if (present.isPresent()) {
            edits.set(present.get(), "ContentType", type);
            return;
        }
        edits.append(
                root,
                "<" + root.named("Override") + " PartName=\"/" + types.markup().escaped(part) + "\" ContentType=\""
                        + type + "\"/>");
    }

    /** Sees to it that a part has this type, through its extension where that is free or says so already. */
    void byExtension(String part, String type) {
        String extension = part.substring(part.lastIndexOf('.') + 1);
        if (types.override(part).isEmpty() && types.defaultOf(extension).isEmpty()) {
            if (defaulted.add(extension)) {
                edits.append(
                        root,
                        "<" + root.named("Default") + " Extension=\"" + extension + "\" ContentType=\"" + type
                                + "\"/>");
            }
        } else if (!types.of(part).filter(type::equals).isPresent()) {
            part(part, type);
        }
    }

    /** Takes out the entry of a part that goes. */
    void removed(String part) {
        types.override(PartNames.key(part)).ifPresent(edits::remove);
    }

    byte[] bytes() {
        return edits.apply();
    }
}
