package org.rickyard.workbook.graft;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.lang.ref.SoftReference;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.ext.DefaultHandler2;

/** The part of the linter that looks into a worksheet, as it is read: a sheet may be large and is looked at once. */
final class SheetLinter extends DefaultHandler2 {
    /** What is printed over or under a page, codes and all. */
    private static final int MOST_OF_HEADER = 255;

    private static final List<String> ORDER = List.of(
            "sheetPr",
            "dimension",
            "sheetViews",
            "sheetFormatPr",
            "cols",
            "sheetData",
            "sheetCalcPr",
            "sheetProtection",
            "protectedRanges",
            "scenarios",
            "autoFilter",
            "sortState",
            "dataConsolidate",
            "customSheetViews",
            "mergeCells",
            "phoneticPr",
            "conditionalFormatting",
            "dataValidations",
            "hyperlinks",
            "printOptions",
            "pageMargins",
            "pageSetup",
            "headerFooter",
            "rowBreaks",
            "colBreaks",
            "customProperties",
            "cellWatches",
            "ignoredErrors",
            "smartTags",
            "drawing",
            "legacyDrawing",
            "legacyDrawingHF",
            "drawingHF",
            "picture",
            "oleObjects",
            "controls",
            "webPublishItems",
            "tableParts",
            "extLst");
    private static final Set<String> EMPTY_FORBIDDEN = Set.of("cols", "mergeCells", "hyperlinks", "dataValidations");
    private static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final int MOST_HYPERLINKS = 65_530;
    private static final Pattern LETTERS = Pattern.compile("[A-Za-z]+");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9.]+([eE][-+]?[0-9]+)?");

    private final String part;
    private final int formats;
    private final Set<String> links;
    private final List<String> findings = new ArrayList<>();
    private final Set<String> formulas = new HashSet<>();

    /** How many elements are open, the worksheet itself among them. */
    private int depth;
    /** Whether the elements open lie in rows of cells. */
    private boolean inData;

    private int lastRank = -1;
    private String child = "";
    private boolean childIsEmpty;
    private int childElements;

    private long lastRow;
    private String row;
    private int lastColumn;

    private boolean inHeader;
    private boolean inCell;
    private String reference;
    private String type;
    private boolean hasMetadata;
    private final Set<String> inside = new HashSet<>();
    private final StringBuilder text = new StringBuilder();

    private SheetLinter(String part, int formats, Set<String> links) {
        this.part = part;
        this.formats = formats;
        this.links = links;
    }

    /** What was found in a worksheet, and which of its cells hold formulas. */
    record Linted(List<String> findings, Set<String> formulas) {}

    /** All that the outcome rests on, the sheet itself by fingerprints. */
    private record Sheet(String part, int length, long one, long other, int formats, Set<String> links) {}

    /** Of the sheets that a run writes most are those that another test's run has written. */
    private static final Map<Sheet, SoftReference<Linted>> KNOWN = new ConcurrentHashMap<>();

    static SAXParser parser() {
        try {
            SAXParserFactory factory = SAXParserFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newSAXParser();
        } catch (ParserConfigurationException | SAXException missing) {
            throw new IllegalStateException(missing);
        }
    }

    /**
     * Looks a worksheet over.
     *
     * @param formats how many cell formats the workbook has; below 0 if that is not known
     * @param links the ids of the relationships of the sheet
     */
    static Linted lint(SAXParser parser, String part, byte[] sheet, int formats, Set<String> links) {
        CRC32 one = new CRC32();
        one.update(sheet);
        CRC32C other = new CRC32C();
        other.update(sheet);
        Sheet key = new Sheet(part, sheet.length, one.getValue(), other.getValue(), formats, Set.copyOf(links));
        SoftReference<Linted> known = KNOWN.get(key);
        Linted linted = known == null ? null : known.get();
        if (linted == null) {
            linted = read(parser, part, sheet, formats, links);
            KNOWN.put(key, new SoftReference<>(linted));
        }
        return linted;
    }

    private static Linted read(SAXParser parser, String part, byte[] sheet, int formats, Set<String> links) {
        SheetLinter linter = new SheetLinter(part, formats, links);
        try {
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", linter);
            parser.parse(new ByteArrayInputStream(sheet), linter);
            return new Linted(linter.findings, linter.formulas);
        } catch (SAXException | IOException malformed) {
            return new Linted(List.of(part + ": not well-formed"), Set.of());
        }
    }

    @Override
    public void fatalError(SAXParseException fault) throws SAXException {
        throw fault;
    }

    private void add(String finding) {
        findings.add(part + ": " + finding);
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
        depth++;
        childIsEmpty = false;
        if (depth == 2) {
            startOfChild(name);
            inData = "sheetData".equals(name);
        } else if (depth == 3) {
            childElements++;
            inHeader = name.endsWith("Header") || name.endsWith("Footer");
            text.setLength(0);
        }
        if (!inData) {
            references(name, attributes);
        } else if (depth == 3) {
            row(attributes);
        } else if (depth == 4) {
            inCell = "c".equals(name);
            reference = value(attributes, "r");
            if (inCell) {
                cell(attributes);
            }
        } else if (depth == 5) {
            text.setLength(0);
            inside.add(name);
        }
    }

    @Override
    public void endElement(String uri, String name, String qualified) {
        if (depth == 2) {
            endOfChild();
        } else if (depth == 3 && inHeader) {
            if (text.length() > MOST_OF_HEADER) {
                add(name + " is too long");
            }
            inHeader = false;
        } else if (inData && depth == 4 && inCell) {
            endOfCell();
        } else if (inData && depth == 5) {
            if ("f".equals(name)) {
                formulas.add(reference);
            }
            if (inCell) {
                content(name, text.toString());
            }
        }
        depth--;
    }

    @Override
    public void characters(char[] from, int start, int length) {
        childIsEmpty = false;
        if (inCell && depth >= 5 || inHeader) {
            text.append(from, start, length);
        }
    }

    @Override
    public void comment(char[] from, int start, int length) {
        childIsEmpty = false;
    }

    @Override
    public void processingInstruction(String target, String data) {
        childIsEmpty = false;
    }

    private static String value(Attributes attributes, String name) {
        String value = attributes.getValue(name);
        return value == null ? "" : value;
    }

    private void startOfChild(String name) {
        int rank = ORDER.indexOf(name);
        boolean again = rank == lastRank && name.equals("conditionalFormatting");
        if (rank >= 0 && rank <= lastRank && !again) {
            add(name + " is out of order");
        }
        lastRank = Math.max(lastRank, rank);
        child = name;
        childIsEmpty = true;
        childElements = 0;
    }

    private void endOfChild() {
        if (childIsEmpty && EMPTY_FORBIDDEN.contains(child)) {
            add(child + " is empty");
        }
        if (child.equals("hyperlinks") && childElements > MOST_HYPERLINKS) {
            add("too many hyperlinks");
        }
        inData = false;
    }

    private void references(String name, Attributes attributes) {
        String id = attributes.getValue(RELATIONSHIPS, "id");
        if (id != null && !id.isEmpty() && !links.contains(id)) {
            add(name + " refers to " + id + ", which does not exist");
        }
    }

    private void row(Attributes attributes) {
        String number = value(attributes, "r");
        long current = number.isEmpty() ? lastRow + 1 : Long.parseLong(number);
        if (current <= lastRow || current > 1_048_576) {
            add("row " + number + " is out of order");
        }
        lastRow = current;
        row = Long.toString(current);
        lastColumn = 0;
    }

    private void cell(Attributes attributes) {
        int column = reference.isEmpty() ? lastColumn + 1 : column(reference);
        boolean inRow = reference.isEmpty() || withoutLetters(reference).equals(row);
        if (column <= lastColumn || column > 16_384 || !inRow) {
            add("cell " + reference + " is out of order");
        }
        lastColumn = column;
        String style = value(attributes, "s");
        if (!style.isEmpty() && formats >= 0 && Integer.parseInt(style) >= Math.max(1, formats)) {
            add(reference + " has the style " + style);
        }
        type = value(attributes, "t");
        hasMetadata = attributes.getValue("cm") != null;
        inside.clear();
    }

    private static String withoutLetters(String reference) {
        return LETTERS.matcher(reference).replaceAll("");
    }

    private static int column(String reference) {
        int column = 0;
        for (int at = 0; at < reference.length() && Character.isLetter(reference.charAt(at)); at++) {
            column = column * 26 + Character.toUpperCase(reference.charAt(at)) - 'A' + 1;
        }
        return column;
    }

    private void endOfCell() {
        if (type.equals("inlineStr") != inside.contains("is") || inside.contains("is") && inside.contains("v")) {
            add(reference + " is not shaped as text in the cell");
        }
        if (hasMetadata) {
            add(reference + " has cell metadata");
        }
        inCell = false;
    }

    private void content(String name, String text) {
        switch (name) {
            case "f" -> {
                if (text.startsWith("=") || text.length() > 8192) {
                    add(reference + " has a formula with \"=\" or too long");
                }
            }
            case "v" -> {
                boolean number = type.isEmpty() || type.equals("n");
                if (number && !text.isEmpty() && !NUMBER.matcher(text.strip()).matches()) {
                    add(reference + " has the number " + text);
                }
            }
            case "is" -> {
                if (text.length() > 32_767) {
                    add(reference + " has a text too long");
                }
            }
            default -> {}
        }
        if (holdsControlCharacter(text)) {
            add(reference + " holds a control character");
        }
    }

    private static boolean holdsControlCharacter(String text) {
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter < 0x20 && letter != '\t' && letter != '\n' && letter != '\r') {
                return true;
            }
        }
        return false;
    }
}
