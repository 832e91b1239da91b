package org.rickyard.workbook.graft;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.rickyard.workbook.graft.WatchedReference.Stood;

/** How a watched reference is kept in the part of our state. Its texts hold no letters that XML cannot. */
final class WatchedXml {
    static final String ELEMENT = "watched";

    private WatchedXml() {}

    static void append(StringBuilder xml, WatchedReference watched) {
        xml.append('<').append(ELEMENT).append(" sheet=\"").append(watched.sheet());
        xml.append("\" area=\"").append(watched.firstRow()).append(' ').append(watched.firstColumn());
        xml.append(' ').append(watched.lastRow()).append(' ').append(watched.lastColumn());
        xml.append("\"><by>").append(CellText.escaped(watched.by())).append("</by>");
        append(xml, "rows", watched.rows());
        append(xml, "columns", watched.columns());
        xml.append("</").append(ELEMENT).append('>');
    }

    private static void append(StringBuilder xml, String name, Stood stood) {
        xml.append('<').append(name).append(stood.all() ? " all=\"true\">" : ">");
        stood.labels()
                .forEach(label ->
                        xml.append("<label>").append(CellText.escaped(label)).append("</label>"));
        for (List<String> item : stood.items()) {
            xml.append("<item>");
            item.forEach(
                    word -> xml.append("<is>").append(CellText.escaped(word)).append("</is>"));
            xml.append("</item>");
        }
        xml.append("</").append(name).append('>');
    }

    /** Reads one from its start tag on. */
    static WatchedReference read(XMLStreamReader reader) throws XMLStreamException {
        String sheet = reader.getAttributeValue(null, "sheet");
        String[] area = reader.getAttributeValue(null, "area").split(" ");
        String by = null;
        Stood rows = null;
        Stood columns = null;
        while (!ends(reader, ELEMENT)) {
            if (reader.getEventType() == XMLStreamConstants.START_ELEMENT) {
                switch (reader.getLocalName()) {
                    case "by" -> by = reader.getElementText();
                    case "rows" -> rows = stood(reader, "rows");
                    case "columns" -> columns = stood(reader, "columns");
                    default -> {}
                }
            }
            reader.next();
        }
        if (by == null || rows == null || columns == null || area.length != 4) {
            throw new XMLStreamException("a watched reference is not whole");
        }
        return new WatchedReference(
                by,
                sheet,
                Integer.parseInt(area[0]),
                Integer.parseInt(area[1]),
                Integer.parseInt(area[2]),
                Integer.parseInt(area[3]),
                rows,
                columns);
    }

    private static Stood stood(XMLStreamReader reader, String name) throws XMLStreamException {
        boolean all = "true".equals(reader.getAttributeValue(null, "all"));
        List<String> labels = new ArrayList<>();
        List<List<String>> items = new ArrayList<>();
        while (!ends(reader, name)) {
            if (reader.getEventType() == XMLStreamConstants.START_ELEMENT) {
                switch (reader.getLocalName()) {
                    case "label" -> labels.add(reader.getElementText());
                    case "item" -> items.add(new ArrayList<>());
                    case "is" -> items.get(items.size() - 1).add(reader.getElementText());
                    default -> {}
                }
            }
            reader.next();
        }
        return new Stood(labels, items, all);
    }

    private static boolean ends(XMLStreamReader reader, String name) {
        return reader.getEventType() == XMLStreamConstants.END_ELEMENT
                && reader.getLocalName().equals(name);
    }
}
