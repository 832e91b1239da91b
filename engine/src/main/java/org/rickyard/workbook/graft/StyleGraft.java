package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.Markup;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.Namespaces;
import org.rickyard.workbook.open.RefusedException;

/**
 * Adds looks to a workbook's styles. Every table only grows at its end, because cells of the client's refer to rows by
 * number; rows that are there already are used again, so that a second run adds nothing and leaves the bytes alone.
 */
public final class StyleGraft {
    /** Highest number of cell formats written; Excel's own limit is 65,490. */
    private static final int MOST_FORMATS = 64_000;

    /** No program numbers formats so; behind the highest of all there would be no room. */
    private static final int FAR_TOO_HIGH = 1_000_000;

    private static final int FIRST_OWN_NUMBER_FORMAT = 164;

    /** The number formats whose codes are the same in every language (ECMA-376 part 1, 18.8.30). */
    private static final Map<String, Integer> BUILT_IN =
            Map.of("General", 0, "0", 1, "0.00", 2, "#,##0", 3, "#,##0.00", 4, "0%", 9, "0.00%", 10, "@", 49);

    private static final String EMPTY = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
            + "<styleSheet xmlns=\"" + Namespaces.MAIN + "\"></styleSheet>";

    private static final Tag DEFAULT_FONT = Tag.of("font")
            .holding(Tag.of("sz", "val", "11"), Tag.of("name", "val", "Calibri"), Tag.of("family", "val", "2"));

    private final String workbook;
    private final Markup markup;
    private final StyleTable numberFormats;
    private final StyleTable fonts;
    private final StyleTable fills;
    private final StyleTable borders;
    private final StyleTable styleFormats;
    private final StyleTable cellFormats;
    private final StyleTable styles;
    private final Tag clientFont;
    private final Map<CellLook, Integer> indices = new LinkedHashMap<>();
    private final Map<String, Integer> roles = new LinkedHashMap<>();
    private final byte[] bytes;

    private StyleGraft(byte[] present, String part, String workbook, List<CellLook> looks) throws RefusedException {
        byte[] base = present == null ? EMPTY.getBytes(StandardCharsets.UTF_8) : present;
        this.workbook = workbook;
        this.markup = Markup.parse(base, part, workbook);
        Tag plain = Tag.of("xf", "numFmtId", "0", "fontId", "0", "fillId", "0", "borderId", "0");
        Tag lined = Tag.of("border")
                .holding(Tag.of("left"), Tag.of("right"), Tag.of("top"), Tag.of("bottom"), Tag.of("diagonal"));
        numberFormats = new StyleTable(markup, "numFmts", "numFmt");
        fonts = new StyleTable(markup, "fonts", "font", DEFAULT_FONT);
        fills = new StyleTable(markup, "fills", "fill", pattern("none"), pattern("gray125"));
        borders = new StyleTable(markup, "borders", "border", lined);
        styleFormats = new StyleTable(markup, "cellStyleXfs", "xf", plain);
        cellFormats = new StyleTable(
                markup,
                "cellXfs",
                "xf",
                Tag.of("xf", "numFmtId", "0", "fontId", "0", "fillId", "0", "borderId", "0", "xfId", "0"));
        styles = new StyleTable(
                markup,
                "cellStyles",
                "cellStyle",
                Tag.of("cellStyle", "name", "Normal", "xfId", "0", "builtinId", "0"));
        clientFont = fonts.rows().get(0);
        for (CellLook look : looks) {
            if (!indices.containsKey(look)) {
                indices.put(look, cellFormat(look));
            }
        }
        bytes = applied(looks.isEmpty());
    }

    /**
     * Adds looks to a workbook's styles, which are created where it has none. Nothing is written yet.
     *
     * @throws RefusedException if the styles cannot be read or have no room left
     */
    public static StyleGraft of(BookPackage book, List<CellLook> looks) throws RefusedException, IOException {
        Optional<String> part = book.stylesPart();
        byte[] present = part.isPresent() ? book.bytes(part.get()) : null;
        return new StyleGraft(present, part.orElse("styles"), book.displayName(), looks);
    }

    /** Adds looks to a styles part, or to none for null. */
    public static StyleGraft ofPart(byte[] present, List<CellLook> looks) throws RefusedException {
        return new StyleGraft(present, "styles", "workbook", looks);
    }

    private byte[] applied(boolean untouched) {
        MarkupEdits edits = new MarkupEdits(markup);
        if (!untouched) {
            List.of(numberFormats, fonts, fills, borders, styleFormats, cellFormats, styles)
                    .forEach(table -> table.apply(edits));
        }
        return edits.apply();
    }

    /** The number by which a cell ({@code s="…"}) gets each look. */
    public Map<CellLook, Integer> indices() {
        return Map.copyOf(indices);
    }

    /** The number by which a cell gets a look. */
    public int index(CellLook look) {
        Integer index = indices.get(look);
        if (index == null) {
            throw new IllegalArgumentException("this look was not grafted: " + look);
        }
        return index;
    }

    /** The styles part with the looks in it. */
    public byte[] bytes() {
        return bytes.clone();
    }

    private int cellFormat(CellLook look) throws RefusedException {
        List<String> attributes = new ArrayList<>(tables(look));
        attributes.addAll(List.of("xfId", Integer.toString(role(look))));
        attributes.addAll(List.of("applyNumberFormat", "1", "applyFont", "1", "applyFill", "1", "applyBorder", "1"));
        Tag alignment = alignment(look);
        Tag format =
                alignment == null ? Tag.of("xf", attributes.toArray(String[]::new)) : aligned(attributes, alignment);
        int index = cellFormats.indexOf(format);
        if (cellFormats.rows().size() > MOST_FORMATS) {
            String detail = "more than 64,000 cell formats; unused ones can be cleared away";
            throw new RefusedException(RefusedException.Reason.FORMAT_LIMIT, workbook, detail);
        }
        return index;
    }

    private static Tag aligned(List<String> attributes, Tag alignment) {
        attributes.addAll(List.of("applyAlignment", "1"));
        return Tag.of("xf", attributes.toArray(String[]::new)).holding(alignment);
    }

    /** The rows of the other tables that a look needs, as attributes of its format. */
    private List<String> tables(CellLook look) {
        return List.of(
                "numFmtId", Integer.toString(numberFormat(look.numberFormat())),
                "fontId", Integer.toString(fonts.indexOf(font(look))),
                "fillId", Integer.toString(look.fillRgb() == null ? 0 : fills.indexOf(solid(look.fillRgb()))),
                "borderId", Integer.toString(border(look.border())));
    }

    /** The number of the named style's format. A style of that name that looks otherwise is somebody else's. */
    private int role(CellLook look) {
        Integer known = roles.get(look.role());
        if (known != null) {
            return known;
        }
        Tag format = Tag.of("xf", tables(look.ofRole()).toArray(String[]::new));
        for (int number = 1; ; number++) {
            String name = number == 1 ? look.role() : look.role() + " " + number;
            Optional<Tag> present = style(name);
            if (present.isEmpty()) {
                int row = styleFormats.append(format);
                styles.append(Tag.of("cellStyle", "name", name, "xfId", Integer.toString(row)));
                roles.put(look.role(), row);
                return row;
            }
            int row = number(present.get(), "xfId");
            if (row >= 0
                    && row < styleFormats.rows().size()
                    && styleFormats.rows().get(row).equals(format)) {
                roles.put(look.role(), row);
                return row;
            }
        }
    }

    private Optional<Tag> style(String name) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return styles.rows().stream()
                .filter(style -> wanted.equals(
                        style.attributes().getOrDefault("name", "").toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private int numberFormat(String code) {
        Integer builtIn = BUILT_IN.get(code);
        if (builtIn != null) {
            return builtIn;
        }
        int next = FIRST_OWN_NUMBER_FORMAT;
        for (Tag format : numberFormats.rows()) {
            int id = number(format, "numFmtId");
            if (code.equals(format.attributes().get("formatCode")) && id >= FIRST_OWN_NUMBER_FORMAT) {
                return id;
            }
            next = id < FAR_TOO_HIGH ? Math.max(next, id + 1) : next;
        }
        numberFormats.append(Tag.of("numFmt", "numFmtId", Integer.toString(next), "formatCode", code));
        return next;
    }

    /** A number in the client's styles, or -1 where there is none that could be one. */
    private static int number(Tag tag, String attribute) {
        String text = tag.attributes().getOrDefault(attribute, "").strip();
        return text.matches("[0-9]{1,9}") ? Integer.parseInt(text) : -1;
    }

    /** In the typeface of the client's own cells, so that our sheets look at home. */
    private Tag font(CellLook look) {
        List<Tag> parts = new ArrayList<>();
        if (look.bold()) {
            parts.add(Tag.of("b"));
        }
        if (look.italic()) {
            parts.add(Tag.of("i"));
        }
        parts.add(look.size() > 0 ? Tag.of("sz", "val", Integer.toString(look.size())) : ofClient("sz"));
        Optional<Tag> colour = look.fontRgb() == null
                ? clientPart("color").filter(StyleGraft::wellFormedColour)
                : Optional.of(rgb("color", look.fontRgb()));
        colour.ifPresent(parts::add);
        parts.add(ofClient("name"));
        List.of("family", "charset", "scheme").forEach(part -> clientPart(part).ifPresent(parts::add));
        return Tag.of("font").holding(parts);
    }

    private Optional<Tag> clientPart(String part) {
        return clientFont.children().stream()
                .filter(tag -> tag.name().equals(part))
                .findFirst();
    }

    /** Some programs write RRGGBB where AARRGGBB is asked for; such a colour is not spread further. */
    private static boolean wellFormedColour(Tag colour) {
        return colour.attributes().getOrDefault("rgb", "FF000000").matches("[0-9A-Fa-f]{8}");
    }

    private Tag ofClient(String part) {
        return clientPart(part).orElseGet(() -> DEFAULT_FONT.children().stream()
                .filter(tag -> tag.name().equals(part))
                .findFirst()
                .orElseThrow());
    }

    private static Tag rgb(String element, String colour) {
        return Tag.of(element, "rgb", "FF" + colour);
    }

    private static Tag pattern(String type) {
        return Tag.of("fill").holding(Tag.of("patternFill", "patternType", type));
    }

    private static Tag solid(String colour) {
        Tag pattern = Tag.of("patternFill", "patternType", "solid")
                .holding(rgb("fgColor", colour), Tag.of("bgColor", "indexed", "64"));
        return Tag.of("fill").holding(pattern);
    }

    private int border(CellLook.Border border) {
        boolean none = border == CellLook.Border.NONE;
        boolean firstIsNone = borders.rows().get(0).children().stream()
                .noneMatch(side -> side.attributes().containsKey("style"));
        if (none && firstIsNone) {
            return 0;
        }
        boolean all = border == CellLook.Border.THIN;
        Tag diagonal = Tag.of("diagonal");
        return borders.indexOf(Tag.of("border")
                .holding(line("left", all), line("right", all), line("top", all), line("bottom", !none), diagonal));
    }

    private static Tag line(String side, boolean drawn) {
        return drawn ? Tag.of(side, "style", "thin").holding(rgb("color", "BFBFBF")) : Tag.of(side);
    }

    private static Tag alignment(CellLook look) {
        boolean plain =
                look.align() == CellLook.Align.GENERAL && look.vertical() == CellLook.Vertical.BOTTOM && !look.wrap();
        if (plain) {
            return null;
        }
        String horizontal = look.align() == CellLook.Align.GENERAL ? null : lower(look.align());
        String vertical = look.vertical() == CellLook.Vertical.BOTTOM ? null : lower(look.vertical());
        return Tag.of(
                "alignment", "horizontal", horizontal, "vertical", vertical, "wrapText", look.wrap() ? "1" : null);
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
