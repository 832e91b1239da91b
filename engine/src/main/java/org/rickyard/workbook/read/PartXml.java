package org.rickyard.workbook.read;

import java.io.IOException;
import java.io.InputStream;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.rickyard.workbook.open.PartSource;

/**
 * One part read as a stream of XML events, without document types, entities or anything from outside the part. Elements
 * are told by their local name: writers differ in prefixes, and Strict and ordinary files in namespaces.
 */
final class PartXml implements AutoCloseable {
    private final String part;
    private final InputStream stream;

    /** The cursor; move it by {@link #next} only, so that every fault gets its sentence. */
    final XMLStreamReader at;

    private PartXml(String part, InputStream stream, XMLStreamReader at) {
        this.part = part;
        this.stream = stream;
        this.at = at;
    }

    static PartXml open(PartSource parts, String part) throws IOException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        // Without a reporter of its own the parser prints to the error stream.
        factory.setXMLReporter((message, type, information, location) -> {});
        InputStream stream = parts.open(part);
        try {
            return new PartXml(part, stream, factory.createXMLStreamReader(PartText.reader(stream)));
        } catch (XMLStreamException | IOException | RuntimeException e) {
            stream.close();
            throw UnreadablePartException.notXml(part, 0, 0, e);
        }
    }

    /**
     * Moves to the next event.
     *
     * @return the event's type; {@link XMLStreamConstants#END_DOCUMENT} at the end, however often asked
     */
    int next() throws IOException {
        int event;
        try {
            if (!at.hasNext()) {
                return XMLStreamConstants.END_DOCUMENT;
            }
            event = at.next();
        } catch (XMLStreamException e) {
            Location where = e.getLocation();
            throw UnreadablePartException.notXml(
                    part, where == null ? 0 : where.getLineNumber(), where == null ? 0 : where.getColumnNumber(), e);
        } catch (RuntimeException e) {
            // The parser lets some faults of malformed input through unwrapped.
            throw UnreadablePartException.notXml(part, 0, 0, e);
        }
        if (event == XMLStreamConstants.DTD) {
            throw UnreadablePartException.doctype(part);
        }
        if (event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw UnreadablePartException.notXml(part, at.getLocation().getLineNumber(), 0, null);
        }
        return event;
    }

    /** Moves to the next start tag of that local name; false if there is none before the end of the part. */
    boolean nextStart(String localName) throws IOException {
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT && at.getLocalName().equals(localName)) {
                return true;
            }
        }
        return false;
    }

    /** From a start tag, moves to its end tag. */
    void skip() throws IOException {
        for (int depth = 1; depth > 0; ) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                depth++;
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.END_DOCUMENT) {
                return;
            }
        }
    }

    /** The value of the attribute of that local name, whatever its prefix; null if there is none. */
    String attribute(String localName) {
        for (int i = 0; i < at.getAttributeCount(); i++) {
            if (at.getAttributeLocalName(i).equals(localName)) {
                return at.getAttributeValue(i);
            }
        }
        return null;
    }

    /** The value of a whole-number attribute, or the default if it is missing or no such number. */
    int attribute(String localName, int whenMissing) {
        String text = attribute(localName);
        int value = text == null ? -1 : WholeNumber.parse(text);
        return value < 0 ? whenMissing : value;
    }

    @Override
    public void close() throws IOException {
        try {
            at.close();
        } catch (XMLStreamException e) {
            throw UnreadablePartException.notXml(part, 0, 0, e);
        } finally {
            stream.close();
        }
    }
}
