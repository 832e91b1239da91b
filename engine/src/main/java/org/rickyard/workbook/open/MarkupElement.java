package org.rickyard.workbook.open;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An element of a {@link Markup} with the offsets of its tags in the text. */
public final class MarkupElement {
    /**
     * An attribute.
     *
     * @param name as written, prefix included
     * @param valueStart offset of the first character inside the quotes
     * @param valueEnd offset of the closing quote
     * @param value its value, read out
     */
    public record Attribute(String name, int valueStart, int valueEnd, String value) {}

    private final MarkupElement parent;
    private final String prefix;
    private final String localName;
    private final int start;
    private final List<Attribute> attributes;
    private final Map<String, String> declared;
    private List<MarkupElement> children = List.of();
    private String text = "";
    private int startTagEnd;
    private int endTagStart;
    private int end;
    private boolean selfClosing;

    MarkupElement(MarkupElement parent, String name, int start, List<Attribute> attributes) {
        int colon = name.indexOf(':');
        this.parent = parent;
        this.prefix = colon < 0 ? "" : name.substring(0, colon);
        this.localName = name.substring(colon + 1);
        this.start = start;
        this.attributes = attributes;
        Map<String, String> found = null;
        for (Attribute attribute : attributes) {
            if (attribute.name().equals("xmlns") || attribute.name().startsWith("xmlns:")) {
                found = found == null ? new LinkedHashMap<>() : found;
                found.put(
                        attribute.name().equals("xmlns") ? "" : attribute.name().substring(6), attribute.value());
            }
        }
        this.declared = found == null ? Map.of() : found;
    }

    void opened(int tagEnd, boolean empty) {
        startTagEnd = tagEnd;
        selfClosing = empty;
        endTagStart = tagEnd;
        end = tagEnd;
    }

    void closed(int tagStart, int tagEnd) {
        endTagStart = tagStart;
        end = tagEnd;
    }

    void add(MarkupElement child) {
        if (children.isEmpty()) {
            children = new ArrayList<>(4);
        }
        children.add(child);
    }

    /** White space between children is dropped: it means nothing, and a table of styles has much of it. */
    void addText(String more) {
        if (!children.isEmpty() && more.isBlank()) {
            return;
        }
        text = text.isEmpty() ? more : text + more;
    }

    /** The name without prefix. */
    public String localName() {
        return localName;
    }

    /** The prefix, "" for none. */
    public String prefix() {
        return prefix;
    }

    /** The name as written. */
    public String name() {
        return prefix.isEmpty() ? localName : prefix + ":" + localName;
    }

    /** A name with this element's own prefix: what a new child or sibling of the same kind is called. */
    public String named(String local) {
        return prefix.isEmpty() ? local : prefix + ":" + local;
    }

    /** The namespace of the element, "" for none. */
    public String namespace() {
        return Optional.ofNullable(namespaceOf(prefix)).orElse("");
    }

    /** What a prefix stands for here, or null. */
    public String namespaceOf(String wanted) {
        for (MarkupElement element = this; element != null; element = element.parent) {
            String found = element.declared.get(wanted);
            if (found != null) {
                return found;
            }
        }
        return wanted.equals("xml") ? "http://www.w3.org/XML/1998/namespace" : null;
    }

    /** A non-empty prefix that stands for this namespace here. */
    public Optional<String> prefixOf(String namespace) {
        for (MarkupElement element = this; element != null; element = element.parent) {
            for (Map.Entry<String, String> entry : element.declared.entrySet()) {
                boolean free = !entry.getKey().isEmpty() && namespace.equals(namespaceOf(entry.getKey()));
                if (free && entry.getValue().equals(namespace)) {
                    return Optional.of(entry.getKey());
                }
            }
        }
        return Optional.empty();
    }

    /** Whether it has this local name in the namespace of its parent (or any, for a root). */
    public boolean is(String local) {
        return localName.equals(local) && (parent == null || namespace().equals(parent.namespace()));
    }

    /** All children, in order. */
    public List<MarkupElement> children() {
        return Collections.unmodifiableList(children);
    }

    /** Children with this local name in this element's namespace. */
    public List<MarkupElement> children(String local) {
        return children.stream().filter(child -> child.is(local)).toList();
    }

    /** The first such child. */
    public Optional<MarkupElement> child(String local) {
        return children.stream().filter(child -> child.is(local)).findFirst();
    }

    /** All attributes, in order. */
    public List<Attribute> attributes() {
        return Collections.unmodifiableList(attributes);
    }

    /** An attribute without prefix. */
    public Optional<Attribute> attribute(String name) {
        return attributes.stream()
                .filter(attribute -> attribute.name().equals(name))
                .findFirst();
    }

    /** The value of an attribute without prefix. */
    public Optional<String> value(String name) {
        return attribute(name).map(Attribute::value);
    }

    /** The value of an attribute in a namespace, whatever its prefix. */
    public Optional<String> value(String namespace, String local) {
        return attributes.stream()
                .filter(attribute -> {
                    int colon = attribute.name().indexOf(':');
                    return colon > 0
                            && attribute.name().substring(colon + 1).equals(local)
                            && namespace.equals(namespaceOf(attribute.name().substring(0, colon)));
                })
                .map(Attribute::value)
                .findFirst();
    }

    /** Whether a yes/no attribute says yes. */
    public boolean flag(String name) {
        return value(name)
                .map(String::strip)
                .filter(v -> v.equals("1") || v.equals("true") || v.equals("on"))
                .isPresent();
    }

    /** Its own text, that of its children left out. */
    public String text() {
        return text;
    }

    /** Offset of the "&lt;" of its start tag. */
    public int start() {
        return start;
    }

    /** Offset after the "&gt;" of its start tag. */
    public int startTagEnd() {
        return startTagEnd;
    }

    /** Offset of its end tag; the end of the start tag where it closes itself. */
    public int endTagStart() {
        return endTagStart;
    }

    /** Offset after the element. */
    public int end() {
        return end;
    }

    /** Whether it is written as one tag. */
    public boolean selfClosing() {
        return selfClosing;
    }
}
