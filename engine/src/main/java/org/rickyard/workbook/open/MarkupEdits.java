package org.rickyard.workbook.open;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Insertions, replacements and removals at offsets of a {@link Markup}; all else stays as it is. */
public final class MarkupEdits {
    private record Edit(int from, int to, String text) {}

    private final Markup markup;
    private final List<Edit> edits = new ArrayList<>();
    private final Map<MarkupElement, StringBuilder> appended = new LinkedHashMap<>();

    /** @param markup the part to change; it is not changed itself */
    public MarkupEdits(Markup markup) {
        this.markup = markup;
    }

    /** Inserts at an offset; several at one offset stand in the order of the calls. */
    public void insert(int at, String text) {
        edits.add(new Edit(at, at, text));
    }

    /** Replaces a stretch. */
    public void replace(int from, int to, String text) {
        edits.add(new Edit(from, to, text));
    }

    /** Removes an element and its tags, nothing around it. */
    public void remove(MarkupElement element) {
        edits.add(new Edit(element.start(), element.end(), ""));
    }

    /** Appends to the children of an element, opening it up where it is written as one tag. */
    public void append(MarkupElement parent, String children) {
        if (!children.isEmpty()) {
            appended.computeIfAbsent(parent, any -> new StringBuilder()).append(children);
        }
    }

    /** Sets an attribute without prefix; {@code value} must already be escaped. Nothing is done if it has the value. */
    public void set(MarkupElement element, String name, String value) {
        var present = element.attribute(name);
        if (present.isEmpty()) {
            int at = element.start() + 1 + element.name().length();
            insert(at, " " + name + "=\"" + value + "\"");
        } else if (!present.get().value().equals(value)) {
            replace(present.get().valueStart(), present.get().valueEnd(), value);
        }
    }

    /** The part with all edits made; the very same bytes if there are none. */
    public byte[] apply() {
        return apply(UnaryOperator.identity());
    }

    /**
     * The same, with something in the inserted texts told only now.
     *
     * @param filledIn is given each text that is put in, and nothing of the part itself
     */
    public byte[] apply(UnaryOperator<String> filledIn) {
        if (edits.isEmpty() && appended.isEmpty()) {
            return markup.bytes();
        }
        List<Edit> ordered = new ArrayList<>(edits);
        appended.forEach((parent, children) -> ordered.add(appending(parent, children.toString())));
        ordered.sort(Comparator.comparingInt(Edit::from).thenComparingInt(edit -> edit.from() == edit.to() ? 0 : 1));
        StringBuilder out = new StringBuilder(markup.text().length() + 1024);
        int done = 0;
        for (Edit edit : ordered) {
            if (edit.from() < done) {
                throw new IllegalStateException("two edits of one stretch of markup");
            }
            out.append(markup.text(), done, edit.from()).append(filledIn.apply(edit.text()));
            done = edit.to();
        }
        return markup.encode(
                out.append(markup.text(), done, markup.text().length()).toString());
    }

    private static Edit appending(MarkupElement parent, String children) {
        if (parent.selfClosing()) {
            int slash = parent.startTagEnd() - 2;
            return new Edit(slash, slash + 2, ">" + children + "</" + parent.name() + ">");
        }
        return new Edit(parent.endTagStart(), parent.endTagStart(), children);
    }
}
