package org.rickyard.workbook.graft;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.Markup;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.MarkupElement;
import org.rickyard.workbook.open.Namespaces;
import org.rickyard.workbook.open.RefusedException;

/** Names our sheets and our defined names in the workbook part. */
final class WorkbookEdit {
    private final BookPackage source;
    private final Markup markup;
    private final MarkupElement root;
    private final MarkupElement sheets;
    private final MarkupEdits edits;

    WorkbookEdit(BookPackage source) {
        this.source = source;
        this.markup = source.workbookMarkup();
        this.root = markup.root();
        this.sheets = root.child("sheets").orElseThrow();
        this.edits = new MarkupEdits(markup);
    }

    /** Lists a sheet after all others. */
    void addSheet(String name, int sheetId, String relationshipId) {
        Optional<String> bound = sheets.prefixOf(Namespaces.RELATIONSHIPS);
        String prefix = bound.orElse("rel");
        String declared = bound.isPresent() ? "" : " xmlns:rel=\"" + Namespaces.RELATIONSHIPS + "\"";
        edits.append(
                sheets,
                "<" + sheets.named("sheet") + declared + " name=\"" + markup.escaped(name) + "\" sheetId=\"" + sheetId
                        + "\" " + prefix + ":id=\"" + relationshipId + "\"/>");
    }

    /**
     * Puts our names in the place of those we had.
     *
     * @param ours names to be put in, in order
     * @param drop which of the present ones go
     * @throws RefusedException if one of ours is taken by a name that stays
     */
    void names(List<DefinedName> ours, Predicate<DefinedName> drop) throws RefusedException {
        MarkupElement container = root.child("definedNames").orElse(null);
        Set<String> kept = new HashSet<>();
        List<MarkupElement> dropped = new ArrayList<>();
        List<MarkupElement> present = container == null ? List.of() : container.children("definedName");
        for (int index = 0; index < present.size(); index++) {
            DefinedName name = source.definedNames().get(index);
            if (drop.test(name)) {
                dropped.add(present.get(index));
            } else {
                kept.add(key(name));
            }
        }
        StringBuilder text = new StringBuilder();
        for (DefinedName name : ours) {
            if (!kept.add(key(name))) {
                throw new RefusedException(RefusedException.Reason.NAME_TAKEN, source.displayName(), name.name());
            }
            text.append(written(name));
        }
        if (container == null) {
            create(text.toString());
        } else if (kept.isEmpty() && !dropped.isEmpty()) {
            edits.remove(container);
        } else {
            dropped.forEach(edits::remove);
            edits.append(container, text.toString());
        }
    }

    private void create(String names) {
        if (!names.isEmpty()) {
            String tag = root.named("definedNames");
            SchemaOrder.WORKBOOK.insert(edits, root, "definedNames", "<" + tag + ">" + names + "</" + tag + ">");
        }
    }

    private static String key(DefinedName name) {
        return name.localSheetId() + "!" + name.name().toLowerCase(Locale.ROOT);
    }

    private String written(DefinedName name) {
        String tag = root.named("definedName");
        String local = name.localSheetId() == null ? "" : " localSheetId=\"" + name.localSheetId() + "\"";
        String hidden = name.hidden() ? " hidden=\"1\"" : "";
        return "<" + tag + " name=\"" + markup.escaped(name.name()) + "\"" + local + hidden + ">"
                + markup.escaped(name.formula()) + "</" + tag + ">";
    }

    /** Has everything calculated when the file is opened. */
    void fullCalcOnLoad() {
        Optional<MarkupElement> present = root.child("calcPr");
        if (present.isEmpty()) {
            String tag = "<" + root.named("calcPr") + " fullCalcOnLoad=\"1\"/>";
            SchemaOrder.WORKBOOK.insert(edits, root, "calcPr", tag);
        } else if (!present.get().flag("fullCalcOnLoad")) {
            edits.set(present.get(), "fullCalcOnLoad", "1");
        }
    }

    byte[] bytes() {
        return edits.apply();
    }

    byte[] bytes(UnaryOperator<String> filledIn) {
        return edits.apply(filledIn);
    }
}
