package org.rickyard.workbook.graft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.workbook.open.Markup;
import org.rickyard.workbook.open.MarkupElement;

/**
 * A small piece of markup, for comparing what a workbook has with what it needs: two are equal if they have the same
 * name, the same attributes in any order, and equal children in order.
 */
record Tag(String name, Map<String, String> attributes, List<Tag> children) {
    /** @param attributes names and values by turns; those with a null value are left out */
    static Tag of(String name, String... attributes) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int index = 0; index < attributes.length; index += 2) {
            if (attributes[index + 1] != null) {
                map.put(attributes[index], attributes[index + 1]);
            }
        }
        return new Tag(name, map, List.of());
    }

    Tag holding(List<Tag> inner) {
        return new Tag(name, attributes, List.copyOf(inner));
    }

    Tag holding(Tag... inner) {
        return holding(List.of(inner));
    }

    /** Reads off an element; children of foreign namespaces keep their prefix and so equal none of ours. */
    static Tag of(MarkupElement element) {
        Map<String, String> map = new LinkedHashMap<>();
        element.attributes().stream()
                .filter(attribute -> !attribute.name().startsWith("xmlns"))
                .forEach(attribute -> map.put(attribute.name(), attribute.value()));
        List<Tag> inner = element.children().stream().map(Tag::of).toList();
        String name =
                element.prefix().isEmpty() || element.is(element.localName()) ? element.localName() : element.name();
        return new Tag(name, map, inner);
    }

    /** As markup, its names written in the manner of {@code like}. */
    String written(MarkupElement like, Markup markup) {
        StringBuilder out = new StringBuilder();
        write(out, like, markup);
        return out.toString();
    }

    private void write(StringBuilder out, MarkupElement like, Markup markup) {
        String tag = like.named(name);
        out.append('<').append(tag);
        attributes.forEach((key, value) -> out.append(' ')
                .append(key)
                .append("=\"")
                .append(markup.escaped(value))
                .append('"'));
        if (children.isEmpty()) {
            out.append("/>");
            return;
        }
        out.append('>');
        children.forEach(child -> child.write(out, like, markup));
        out.append("</").append(tag).append('>');
    }
}
