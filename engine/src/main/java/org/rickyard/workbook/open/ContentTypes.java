package org.rickyard.workbook.open;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What {@code [Content_Types].xml} says about each part. */
public final class ContentTypes {
    /** The part's name. */
    public static final String PART = "[Content_Types].xml";

    private final Markup markup;
    private final Map<String, MarkupElement> overrides = new HashMap<>();
    private final Map<String, MarkupElement> defaults = new HashMap<>();

    ContentTypes(Markup markup) {
        this.markup = markup;
        for (MarkupElement element : markup.root().children()) {
            if (element.is("Override")) {
                element.value("PartName").ifPresent(name -> overrides.put(PartNames.key(name), element));
            } else if (element.is("Default")) {
                element.value("Extension").ifPresent(ext -> defaults.put(ext.toLowerCase(Locale.ROOT), element));
            }
        }
    }

    /** The part with its offsets. */
    public Markup markup() {
        return markup;
    }

    /** The type of a part: its own, else that of its extension. */
    public Optional<String> of(String part) {
        return override(part)
                .or(() -> defaultOf(part.substring(part.lastIndexOf('.') + 1)))
                .flatMap(element -> element.value("ContentType"));
    }

    /** The entry for this part alone. */
    public Optional<MarkupElement> override(String part) {
        return Optional.ofNullable(overrides.get(PartNames.key(part)));
    }

    /** The entry for an extension, given without dot. */
    public Optional<MarkupElement> defaultOf(String extension) {
        return Optional.ofNullable(defaults.get(extension.toLowerCase(Locale.ROOT)));
    }

    /** Keys ({@link PartNames#key}) of all parts with an entry of their own. */
    public Iterable<String> overriddenKeys() {
        return overrides.keySet();
    }
}
