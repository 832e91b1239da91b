package org.rickyard.workbook.graft;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The part of the linter that looks into a worksheet. */
final class SheetLinter {
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
    private final Element sheet;
    private final int formats;
    private final Set<String> links;
    private final List<String> findings;
    private long lastRow;

    private SheetLinter(String part, Element sheet, int formats, Set<String> links, List<String> findings) {
        this.part = part;
        this.sheet = sheet;
        this.formats = formats;
        this.links = links;
        this.findings = findings;
    }

    static void lint(String part, Element sheet, int formats, Set<String> links, List<String> findings) {
        SheetLinter linter = new SheetLinter(part, sheet, formats, links, findings);
        linter.order();
        linter.references(sheet);
        for (Node node = sheet.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && "sheetData".equals(element.getLocalName())) {
                linter.rows(element);
            }
        }
    }

    private void add(String finding) {
        findings.add(part + ": " + finding);
    }

    private void order() {
        int last = -1;
        for (Node node = sheet.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                int rank = ORDER.indexOf(element.getLocalName());
                boolean again = rank == last && element.getLocalName().equals("conditionalFormatting");
                if (rank >= 0 && rank <= last && !again) {
                    add(element.getLocalName() + " is out of order");
                }
                last = Math.max(last, rank);
                boolean empty = element.getFirstChild() == null;
                if (empty && EMPTY_FORBIDDEN.contains(element.getLocalName())) {
                    add(element.getLocalName() + " is empty");
                }
                int hyperlinks = element.getLocalName().equals("hyperlinks")
                        ? element.getChildNodes().getLength()
                        : 0;
                if (hyperlinks > MOST_HYPERLINKS) {
                    add("too many hyperlinks");
                }
            }
        }
    }

    private void references(Element element) {
        if ("sheetData".equals(element.getLocalName())) {
            return;
        }
        String id = element.getAttributeNS(RELATIONSHIPS, "id");
        if (!id.isEmpty() && !links.contains(id)) {
            add(element.getLocalName() + " refers to " + id + ", which does not exist");
        }
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                references(child);
            }
        }
    }

    private void rows(Element data) {
        for (Node node = data.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element row) {
                String number = row.getAttribute("r");
                long current = number.isEmpty() ? lastRow + 1 : Long.parseLong(number);
                if (current <= lastRow || current > 1_048_576) {
                    add("row " + number + " is out of order");
                }
                lastRow = current;
                cells(row, current);
            }
        }
    }

    private void cells(Element row, long number) {
        int last = 0;
        String here = Long.toString(number);
        for (Node node = row.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element cell && "c".equals(cell.getLocalName())) {
                String reference = cell.getAttribute("r");
                int column = reference.isEmpty() ? last + 1 : column(reference);
                boolean inRow = reference.isEmpty()
                        || LETTERS.matcher(reference).replaceAll("").equals(here);
                if (column <= last || column > 16_384 || !inRow) {
                    add("cell " + reference + " is out of order");
                }
                last = column;
                cell(cell, reference);
            }
        }
    }

    private static int column(String reference) {
        int column = 0;
        for (int at = 0; at < reference.length() && Character.isLetter(reference.charAt(at)); at++) {
            column = column * 26 + Character.toUpperCase(reference.charAt(at)) - 'A' + 1;
        }
        return column;
    }

    private void cell(Element cell, String reference) {
        String style = cell.getAttribute("s");
        if (!style.isEmpty() && formats >= 0 && Integer.parseInt(style) >= Math.max(1, formats)) {
            add(reference + " has the style " + style);
        }
        String type = cell.getAttribute("t");
        Set<String> inside = new HashSet<>();
        for (Node node = cell.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                inside.add(element.getLocalName());
                content(element, type, reference);
            }
        }
        if (type.equals("inlineStr") != inside.contains("is") || inside.contains("is") && inside.contains("v")) {
            add(reference + " is not shaped as text in the cell");
        }
        if (cell.hasAttribute("cm")) {
            add(reference + " has cell metadata");
        }
    }

    private void content(Element element, String type, String reference) {
        String text = element.getTextContent();
        switch (element.getLocalName()) {
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
