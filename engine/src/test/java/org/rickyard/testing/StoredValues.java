package org.rickyard.testing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.rickyard.lists.CellAddress;

/**
 * The values that a workbook stores beside its formulas, read straight from the file: by neither POI nor the engine, so
 * that a comparison with either is between two.
 */
public final class StoredValues {
    /** What stands for the value of a formula for which the file stores none. */
    public static final Object NONE = new Object() {
        @Override
        public String toString() {
            return "no stored value";
        }
    };

    private static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private StoredValues() {}

    /**
     * The value of every formula cell: {@link Double}, {@link String}, {@link Boolean}, {@link CellError} or
     * {@link #NONE}, in the order of the file.
     *
     * @param sheets the sheets wanted; all of them if none is named
     * @throws NoSuchElementException if there is no such sheet
     */
    public static Map<CellAddress, Object> of(Path xlsx, String... sheets) {
        Map<CellAddress, Object> values = new LinkedHashMap<>();
        read(xlsx, (cell, formula, value) -> values.put(cell, value), sheets);
        return values;
    }

    /**
     * The text of every formula of a sheet as the file has it; empty for one that shares the formula of another cell.
     *
     * @throws NoSuchElementException if there is no such sheet
     */
    public static Map<CellAddress, String> formulas(Path xlsx, String sheet) {
        Map<CellAddress, String> formulas = new HashMap<>();
        read(xlsx, (cell, formula, value) -> formulas.put(cell, formula), sheet);
        return formulas;
    }

    private interface FormulaCells {
        void add(CellAddress cell, String formula, Object value);
    }

    private static void read(Path xlsx, FormulaCells cells, String... sheets) {
        try (ZipFile zip = new ZipFile(xlsx.toFile())) {
            Map<String, String> parts = worksheets(zip);
            for (String sheet : sheets.length == 0 ? parts.keySet() : Set.copyOf(List.of(sheets))) {
                if (!parts.containsKey(sheet)) {
                    throw new NoSuchElementException("no worksheet '" + sheet + "' in " + xlsx + ": " + parts.keySet());
                }
                readSheet(zip, sheet, parts.get(sheet), cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (XMLStreamException e) {
            throw new AssertionError("not well-formed: " + xlsx, e);
        }
    }

    private static Map<String, String> worksheets(ZipFile zip) throws IOException, XMLStreamException {
        Map<String, String> targets = new HashMap<>();
        try (InputStream in = open(zip, "xl/_rels/workbook.xml.rels")) {
            XMLStreamReader xml = reader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("Relationship")) {
                    if (xml.getAttributeValue(null, "Type").endsWith("/worksheet")) {
                        String target = xml.getAttributeValue(null, "Target");
                        targets.put(
                                xml.getAttributeValue(null, "Id"),
                                target.startsWith("/") ? target.substring(1) : "xl/" + target);
                    }
                }
            }
        }
        Map<String, String> parts = new LinkedHashMap<>();
        try (InputStream in = open(zip, "xl/workbook.xml")) {
            XMLStreamReader xml = reader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("sheet")) {
                    String part = targets.get(xml.getAttributeValue(RELATIONSHIPS, "id"));
                    if (part != null) {
                        parts.put(xml.getAttributeValue(null, "name"), part);
                    }
                }
            }
        }
        return parts;
    }

    private static void readSheet(ZipFile zip, String sheet, String part, FormulaCells cells)
            throws IOException, XMLStreamException {
        try (InputStream in = open(zip, part)) {
            XMLStreamReader xml = reader(in);
            String reference = "";
            String type = "n";
            String formula = null;
            String value = null;
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.START_ELEMENT) {
                    switch (xml.getLocalName()) {
                        case "c" -> {
                            reference = xml.getAttributeValue(null, "r");
                            String given = xml.getAttributeValue(null, "t");
                            type = given == null ? "n" : given;
                            formula = null;
                            value = null;
                        }
                        case "f" -> formula = xml.getElementText();
                        case "v" -> value = xml.getElementText();
                        default -> {
                            // rows, inline strings and all else hold no value of a formula
                        }
                    }
                } else if (event == XMLStreamConstants.END_ELEMENT
                        && xml.getLocalName().equals("c")
                        && formula != null) {
                    cells.add(address(sheet, reference), formula, value(type, value));
                }
            }
        }
    }

    private static Object value(String type, String text) {
        return switch (type) {
            case "n" -> text == null || text.isEmpty() ? NONE : (Object) Double.valueOf(text);
            case "str" -> text == null ? "" : text;
            case "b" -> text == null ? NONE : (Object) (text.equals("1") || text.equals("true"));
            case "e" -> text == null ? NONE : new CellError(text);
            default -> throw new AssertionError("a formula cell of type '" + type + "'");
        };
    }

    private static CellAddress address(String sheet, String reference) {
        int letters = 0;
        int column = 0;
        while (Character.isLetter(reference.charAt(letters))) {
            column = column * 26 + reference.charAt(letters++) - 'A' + 1;
        }
        return new CellAddress(sheet, Integer.parseInt(reference.substring(letters)) - 1, column - 1);
    }

    private static InputStream open(ZipFile zip, String part) throws IOException {
        return zip.getInputStream(zip.getEntry(part));
    }

    private static XMLStreamReader reader(InputStream in) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory.createXMLStreamReader(in);
    }
}
