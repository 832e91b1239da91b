package org.rickyard.workbook.graft;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Looks for what makes an office program offer to repair a workbook. Shares no code with what it checks. Each finding
 * is a line that names the part, so that the findings before and after a graft can be compared.
 */
public final class PackageLinter {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final List<String> WORKBOOK_ORDER = List.of(
            "fileVersion",
            "fileSharing",
            "workbookPr",
            "workbookProtection",
            "bookViews",
            "sheets",
            "functionGroups",
            "externalReferences",
            "definedNames",
            "calcPr",
            "oleSize",
            "customWorkbookViews",
            "pivotCaches",
            "smartTagPr",
            "smartTagTypes",
            "webPublishing",
            "fileRecoveryPr",
            "webPublishObjects",
            "extLst");
    private static final List<String> STYLES_ORDER = List.of(
            "numFmts",
            "fonts",
            "fills",
            "borders",
            "cellStyleXfs",
            "cellXfs",
            "cellStyles",
            "dxfs",
            "tableStyles",
            "colors",
            "extLst");

    private final Map<String, byte[]> parts = new TreeMap<>();
    private final Map<String, String> spelled = new HashMap<>();
    private final List<String> findings = new ArrayList<>();
    private final Map<String, Element> parsed = new HashMap<>();
    private final Map<String, Map<String, String[]>> links = new LinkedHashMap<>();
    private final Map<String, SheetLinter.Linted> sheets = new HashMap<>();
    private final DocumentBuilder parser = parser();
    private final SAXParser sheetParser = SheetLinter.parser();
    private int cellFormats = -1;

    private PackageLinter() {}

    /** All findings, in a fixed order. */
    public static List<String> lint(Path file) throws IOException {
        PackageLinter linter = new PackageLinter();
        linter.read(file);
        linter.relationships();
        linter.contentTypes();
        linter.styles();
        linter.workbook();
        linter.sheets();
        linter.drawings();
        return linter.findings;
    }

    private void read(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                String key = key(entry.getName());
                if (!entry.isDirectory() && spelled.put(key, entry.getName()) != null) {
                    findings.add(key + ": two entries with this name");
                }
                parts.put(key, zip.getInputStream(entry).readAllBytes());
            }
        }
    }

    private static String key(String name) {
        String key = name.replace('\\', '/').toLowerCase(Locale.ROOT);
        return key.startsWith("/") ? key.substring(1) : key;
    }

    private Element root(String part) {
        String key = key(part);
        if (!parsed.containsKey(key)) {
            parsed.put(key, parse(key));
        }
        return parsed.get(key);
    }

    private static DocumentBuilder parser() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            // Every node is looked at, so none gains by being made only when it is.
            factory.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false);
            return factory.newDocumentBuilder();
        } catch (ParserConfigurationException missing) {
            throw new IllegalStateException(missing);
        }
    }

    private Element parse(String key) {
        try {
            parser.reset();
            parser.setErrorHandler(null);
            return parser.parse(new ByteArrayInputStream(parts.getOrDefault(key, new byte[0])))
                    .getDocumentElement();
        } catch (SAXException | IOException malformed) {
            findings.add(key + ": not well-formed");
            return null;
        }
    }

    private static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        for (Node node = parent == null ? null : parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }

    private static List<Element> children(Element parent, String name) {
        return children(parent).stream()
                .filter(child -> name.equals(child.getLocalName()))
                .toList();
    }

    private static Element child(Element parent, String name) {
        List<Element> found = children(parent, name);
        return found.isEmpty() ? null : found.get(0);
    }

    private void relationships() {
        for (String key : List.copyOf(parts.keySet())) {
            int folder = key.lastIndexOf("_rels/");
            if (folder < 0 || !key.endsWith(".rels")) {
                continue;
            }
            String from = key.substring(0, folder) + key.substring(folder + 6, key.length() - 5);
            if (!from.isEmpty() && !parts.containsKey(from)) {
                findings.add(key + ": belongs to no part");
            }
            Map<String, String[]> out = links.computeIfAbsent(from, any -> new LinkedHashMap<>());
            for (Element link : children(root(key), "Relationship")) {
                String target = link.getAttribute("Target");
                boolean inside = !link.getAttribute("TargetMode").equals("External");
                String part = inside ? resolve(from, target) : target;
                if (inside
                        && !target.startsWith("#")
                        && !parts.containsKey(part)
                        && !parts.containsKey(part.replace("%20", " "))) {
                    findings.add(key + ": target " + target + " does not exist");
                }
                if (out.put(link.getAttribute("Id"), new String[] {link.getAttribute("Type"), part}) != null) {
                    findings.add(key + ": id " + link.getAttribute("Id") + " twice");
                }
            }
        }
    }

    private static String resolve(String from, String target) {
        String path = target.replace('\\', '/').replaceAll("#.*", "");
        String base = from.contains("/") ? from.substring(0, from.lastIndexOf('/') + 1) : "";
        List<String> steps = new ArrayList<>();
        for (String step : (path.startsWith("/") ? path : base + path).split("/")) {
            if (step.equals("..") && !steps.isEmpty()) {
                steps.remove(steps.size() - 1);
            } else if (!step.isEmpty() && !step.equals(".") && !step.equals("..")) {
                steps.add(step);
            }
        }
        return String.join("/", steps).toLowerCase(Locale.ROOT);
    }

    private void contentTypes() {
        Element types = root("[Content_Types].xml");
        Map<String, String> overrides = new HashMap<>();
        Map<String, String> defaults = new HashMap<>();
        for (Element type : children(types)) {
            boolean override = type.getLocalName().equals("Override");
            String name = override ? key(type.getAttribute("PartName")) : type.getAttribute("Extension");
            Map<String, String> into = override ? overrides : defaults;
            if (into.put(name.toLowerCase(Locale.ROOT), type.getAttribute("ContentType")) != null) {
                findings.add("[content_types].xml: " + name + " twice");
            }
            if (override && !parts.containsKey(name)) {
                findings.add("[content_types].xml: " + name + " does not exist");
            }
        }
        for (String part : parts.keySet()) {
            String extension = part.substring(part.lastIndexOf('.') + 1);
            boolean typed = overrides.containsKey(part) || defaults.containsKey(extension);
            if (!typed && !part.equals("[content_types].xml") && !part.endsWith("/")) {
                findings.add("[content_types].xml: no type for " + part);
            }
        }
        typesOf("worksheet", "worksheet+xml", overrides, defaults);
        typesOf("comments", "comments+xml", overrides, defaults);
        typesOf("vmlDrawing", "vmlDrawing", overrides, defaults);
        typesOf("styles", "styles+xml", overrides, defaults);
    }

    private void typesOf(String kind, String ending, Map<String, String> overrides, Map<String, String> defaults) {
        links.forEach((from, out) -> out.forEach((id, link) -> {
            String extension = link[1].substring(link[1].lastIndexOf('.') + 1);
            String type = overrides.getOrDefault(link[1], defaults.getOrDefault(extension, ""));
            if (link[0].endsWith("/" + kind) && parts.containsKey(link[1]) && !type.endsWith(ending)) {
                findings.add("[content_types].xml: " + link[1] + " is not typed as " + kind);
            }
        }));
    }

    private void order(String part, Element root, List<String> order) {
        int last = -1;
        for (Element child : children(root)) {
            int rank = MAIN.equals(child.getNamespaceURI()) ? order.indexOf(child.getLocalName()) : -1;
            if (rank >= 0 && rank <= last) {
                findings.add(part + ": " + child.getLocalName() + " is out of order");
            }
            last = Math.max(last, rank);
        }
    }

    private String workbookPart() {
        for (String[] link : links.getOrDefault("", Map.of()).values()) {
            if (link[0].endsWith("/officeDocument")) {
                return link[1];
            }
        }
        return "";
    }

    private String linked(String kind) {
        for (String[] link : links.getOrDefault(workbookPart(), Map.of()).values()) {
            if (link[0].endsWith("/" + kind) && parts.containsKey(link[1])) {
                return link[1];
            }
        }
        return null;
    }

    private void styles() {
        String part = linked("styles");
        Element styles = part == null ? null : root(part);
        if (styles == null) {
            return;
        }
        order(part, styles, STYLES_ORDER);
        Map<String, Integer> counts = new HashMap<>();
        for (Element table : children(styles)) {
            int rows = rows(table);
            counts.put(table.getLocalName(), rows);
            String count = table.getAttribute("count");
            if (!count.isEmpty() && !count.equals(Integer.toString(rows))) {
                findings.add(part + ": count of " + table.getLocalName() + " is not its rows");
            }
        }
        cellFormats = counts.getOrDefault("cellXfs", 0);
        List<String[]> references = List.of(
                new String[] {"fontId", "fonts"}, new String[] {"fillId", "fills"},
                new String[] {"borderId", "borders"}, new String[] {"xfId", "cellStyleXfs"});
        for (String table : List.of("cellXfs", "cellStyleXfs", "cellStyles")) {
            for (Element row : children(child(styles, table))) {
                for (String[] reference : references) {
                    String value = row.getAttribute(reference[0]);
                    if (!value.isEmpty() && Integer.parseInt(value) >= counts.getOrDefault(reference[1], 0)) {
                        findings.add(part + ": " + table + " refers to " + reference[0] + " " + value);
                    }
                }
            }
        }
        Set<String> names = new HashSet<>();
        for (Element style : children(child(styles, "cellStyles"), "cellStyle")) {
            if (!names.add(style.getAttribute("name").toLowerCase(Locale.ROOT))) {
                findings.add(part + ": style " + style.getAttribute("name") + " twice");
            }
        }
        Set<String> formats = new HashSet<>();
        for (Element format : children(child(styles, "numFmts"), "numFmt")) {
            if (!formats.add(format.getAttribute("numFmtId"))) {
                findings.add(part + ": number format " + format.getAttribute("numFmtId") + " twice");
            }
        }
    }

    /** Rows of a table; of alternative content, those of the fallback, or of the choice where there is none. */
    private static int rows(Element table) {
        int rows = 0;
        for (Element row : children(table)) {
            if (!row.getLocalName().equals("AlternateContent")) {
                rows++;
                continue;
            }
            Element fallback = child(row, "Fallback");
            rows += children(fallback == null ? child(row, "Choice") : fallback).size();
        }
        return rows;
    }

    private void workbook() {
        String part = workbookPart();
        Element workbook = root(part);
        if (workbook == null) {
            return;
        }
        order(part, workbook, WORKBOOK_ORDER);
        Set<String> names = new HashSet<>();
        Set<String> ids = new HashSet<>();
        Set<String> targets = new HashSet<>();
        List<Element> sheets = children(child(workbook, "sheets"), "sheet");
        for (Element sheet : sheets) {
            String name = sheet.getAttribute("name");
            boolean valid = !name.isEmpty()
                    && name.length() <= 31
                    && !name.matches(".*[:\\\\/?*\\[\\]].*")
                    && !name.startsWith("'")
                    && !name.endsWith("'")
                    && !name.equalsIgnoreCase("history");
            if (!valid || !names.add(name.toLowerCase(Locale.ROOT))) {
                findings.add(part + ": sheet name " + name + " is not valid or not unique");
            }
            String id = sheet.getAttribute("sheetId");
            if (!id.matches("[0-9]{1,5}") || Integer.parseInt(id) < 1 || Integer.parseInt(id) > 65534 || !ids.add(id)) {
                findings.add(part + ": sheetId " + id + " is not valid or not unique");
            }
            String link = sheet.getAttributeNS(RELATIONSHIPS, "id");
            boolean dangling =
                    !link.isEmpty() && !links.getOrDefault(part, Map.of()).containsKey(link);
            if (dangling || !link.isEmpty() && !targets.add(link)) {
                findings.add(part + ": relationship " + link + " of a sheet is missing or used twice");
            }
        }
        definedNames(part, workbook, sheets.size());
        calcChain(ids);
    }

    private void definedNames(String part, Element workbook, int sheets) {
        Set<String> names = new HashSet<>();
        for (Element name : children(child(workbook, "definedNames"), "definedName")) {
            String text = name.getAttribute("name");
            String local = name.getAttribute("localSheetId");
            if (!text.matches("[\\p{L}_\\\\][\\p{L}\\p{N}\\p{M}_.\\\\?]{0,254}")) {
                findings.add(part + ": name " + text + " is not valid");
            }
            if (text.matches("(?i)[A-Z]{1,3}[0-9]{1,7}|R|C|R[0-9]*C[0-9]*")) {
                findings.add(part + ": name " + text + " looks like a cell");
            }
            if (!local.isEmpty() && (!local.matches("[0-9]{1,5}") || Integer.parseInt(local) >= sheets)) {
                findings.add(part + ": name " + text + " belongs to sheet " + local);
            }
            if (!names.add(local + "!" + text.toLowerCase(Locale.ROOT))) {
                findings.add(part + ": name " + text + " twice");
            }
            if (name.getTextContent().startsWith("=") || name.getTextContent().isEmpty()) {
                findings.add(part + ": name " + text + " has no formula");
            }
        }
    }

    private void calcChain(Set<String> sheetIds) {
        String part = linked("calcChain");
        if (part == null) {
            return;
        }
        Map<String, Set<String>> formulas = new HashMap<>();
        String workbook = workbookPart();
        for (Element sheet : children(child(root(workbook), "sheets"), "sheet")) {
            String[] link = links.getOrDefault(workbook, Map.of()).get(sheet.getAttributeNS(RELATIONSHIPS, "id"));
            Set<String> cells = formulas.computeIfAbsent(sheet.getAttribute("sheetId"), any -> new HashSet<>());
            if (link != null && parts.containsKey(link[1])) {
                cells.addAll(sheet(link[1]).formulas());
            }
        }
        String sheet = "";
        for (Element cell : children(root(part))) {
            sheet = cell.getAttribute("i").isEmpty() ? sheet : cell.getAttribute("i");
            if (!formulas.getOrDefault(sheet, Set.of()).contains(cell.getAttribute("r"))) {
                findings.add(part + ": names " + cell.getAttribute("r") + " of sheet " + sheet + ", not a formula");
            }
        }
    }

    private void sheets() {
        links.getOrDefault(workbookPart(), Map.of()).values().stream()
                .filter(link -> link[0].endsWith("/worksheet") && parts.containsKey(link[1]))
                .forEach(link -> findings.addAll(sheet(link[1]).findings()));
    }

    private SheetLinter.Linted sheet(String part) {
        return sheets.computeIfAbsent(part, key -> {
            Map<String, String[]> out = links.getOrDefault(key, Map.of());
            return SheetLinter.lint(sheetParser, key, parts.get(key), cellFormats, out.keySet());
        });
    }

    private void drawings() {
        Map<String, String> blocks = new HashMap<>();
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            if (!part.getKey().endsWith(".vml")) {
                continue;
            }
            Element drawing = root(part.getKey());
            var maps = drawing == null ? null : drawing.getElementsByTagNameNS("*", "idmap");
            for (int index = 0; maps != null && index < maps.getLength(); index++) {
                for (String block :
                        ((Element) maps.item(index)).getAttribute("data").split(",")) {
                    String other = blocks.put(block.strip(), part.getKey());
                    if (other != null) {
                        findings.add(part.getKey() + ": shape block " + block + " is taken by " + other);
                    }
                }
            }
        }
    }
}
