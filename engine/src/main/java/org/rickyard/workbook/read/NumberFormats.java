package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.lists.Grid.Format;
import org.rickyard.workbook.open.PartSource;

/** How the cell styles of a workbook show numbers: per style index, so far as it changes what is meant. */
public final class NumberFormats {
    private Format[] byStyle = new Format[64];
    private String[] unitByStyle = new String[64];
    private int count;
    private boolean showsUnits;

    private NumberFormats() {}

    /**
     * Reads the styles part; all general if the workbook has none.
     *
     * @throws UnreadablePartException if the part is damaged
     */
    public static NumberFormats read(PartSource parts, Optional<String> part) throws IOException {
        NumberFormats formats = new NumberFormats();
        if (part.isEmpty() || !parts.exists(part.get())) {
            return formats;
        }
        Map<Integer, Format> codes = new HashMap<>();
        Map<Integer, String> units = new HashMap<>();
        boolean inCellStyles = false;
        try (PartXml xml = PartXml.open(parts, part.get(), "The list of cell styles")) {
            for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
                if (event == XMLStreamConstants.END_ELEMENT) {
                    inCellStyles &= !xml.at.name().equals("cellXfs");
                } else if (event == XMLStreamConstants.START_ELEMENT) {
                    switch (xml.at.name()) {
                        // Of alternate contents the first choice is the one in use; both would count styles twice.
                        case "Fallback", "dxfs" -> xml.skip();
                        case "cellXfs" -> inCellStyles = true;
                        case "numFmt" -> {
                            String code = xml.attribute("formatCode");
                            int id = xml.attribute("numFmtId", -1);
                            if (code != null && id >= 0) {
                                codes.put(id, ofCode(code));
                                units.put(id, ShownUnit.ofCode(code));
                            }
                        }
                        case "xf" -> {
                            if (inCellStyles) {
                                int id = xml.attribute("numFmtId", 0);
                                formats.add(codes.getOrDefault(id, ofBuiltIn(id)), units.getOrDefault(id, ""));
                            }
                        }
                        default -> {}
                    }
                }
            }
        }
        return formats;
    }

    private void add(Format format, String unit) {
        if (count == byStyle.length) {
            byStyle = Arrays.copyOf(byStyle, 2 * count);
            unitByStyle = Arrays.copyOf(unitByStyle, 2 * count);
        }
        unitByStyle[count] = unit;
        byStyle[count++] = format;
        showsUnits |= !unit.isEmpty();
    }

    /** Whether any style shows a text behind its numbers. */
    boolean showsUnits() {
        return showsUnits;
    }

    /** The text that a style shows behind its numbers; "" if none. */
    String unitOfStyle(int style) {
        return style >= 0 && style < count ? unitByStyle[style] : "";
    }

    /** The format of a style index; GENERAL for an index that the workbook does not declare. */
    public Format ofStyle(int style) {
        return style >= 0 && style < count ? byStyle[style] : Format.GENERAL;
    }

    /** What a built-in number format means (ECMA-376 part 1, 18.8.30; 27-36 and 50-58 are East Asian dates). */
    static Format ofBuiltIn(int id) {
        if (id == 9 || id == 10) {
            return Format.PERCENT;
        }
        boolean date = id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 47 || id >= 50 && id <= 58;
        return date ? Format.DATE : Format.GENERAL;
    }

    /**
     * What a format code means, by its first section. Quoted text, escaped characters and bracketed parts (colours,
     * currencies, conditions) say nothing about the number, save the elapsed times {@code [h]}, {@code [mm]},
     * {@code [ss]}. A code that has shown a digit place before any date letter is a number with a unit behind it.
     */
    static Format ofCode(String code) {
        boolean digitPlace = false;
        boolean date = false;
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            switch (c) {
                case '"' -> i = skipTo(code, '"', i);
                case '\\', '_', '*' -> i++;
                case '[' -> {
                    int close = skipTo(code, ']', i);
                    String inside = code.substring(i + 1, Math.min(close, code.length()));
                    date |= inside.matches("[hH]+|[mM]+|[sS]+");
                    i = close;
                }
                case '%' -> {
                    return Format.PERCENT;
                }
                case ';' -> i = code.length();
                case '0', '#', '?' -> digitPlace = true;
                case 'y', 'Y', 'm', 'M', 'd', 'D', 'h', 'H', 's', 'S' -> date |= !digitPlace;
                default -> {}
            }
        }
        return date ? Format.DATE : Format.GENERAL;
    }

    private static int skipTo(String code, char end, int from) {
        int at = code.indexOf(end, from + 1);
        return at < 0 ? code.length() : at;
    }
}
