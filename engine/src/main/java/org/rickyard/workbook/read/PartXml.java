package org.rickyard.workbook.read;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipException;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.workbook.open.PartSource;
import org.rickyard.workbook.xml.PartText;
import org.rickyard.workbook.xml.ReaderAhead;
import org.rickyard.workbook.xml.XmlCursor;
import org.rickyard.workbook.xml.XmlFault;

/**
 * One part read as a stream of XML events, without document types, entities or anything from outside the part. Elements
 * are told by their local name: writers differ in prefixes, and Strict and ordinary files in namespaces.
 */
final class PartXml implements AutoCloseable {
    private final String part;
    private final String subject;
    private final ReaderAhead characters;

    /** The cursor; move it by {@link #next} only, so that every fault gets its sentence. */
    final XmlCursor at;

    private PartXml(String part, String subject, InputStream stream) throws IOException {
        this.part = part;
        this.subject = subject;
        try {
            characters = PartText.reader(stream);
            at = new XmlCursor(characters);
        } catch (IOException | RuntimeException e) {
            stream.close();
            throw damaged("", e);
        }
    }

    /**
     * Opens a part.
     *
     * @param subject what the part is, as the subject of a sentence: {@code The sheet Fields}
     * @throws UnreadablePartException if the part is missing or damaged from its first byte
     */
    static PartXml open(PartSource parts, String part, String subject) throws IOException {
        if (!parts.exists(part)) {
            String missing = subject + " cannot be read: its part " + part + " is missing from the file.";
            throw new UnreadablePartException(missing, null);
        }
        return new PartXml(part, subject, parts.open(part));
    }

    /**
     * Moves to the next event.
     *
     * @return the event's type; {@link XMLStreamConstants#END_DOCUMENT} at the end, however often asked
     */
    int next() throws IOException {
        int event;
        try {
            event = at.next();
        } catch (XmlFault e) {
            throw damaged(" (line " + e.line() + ", column " + e.column() + ")", e);
        } catch (IOException e) {
            throw damaged("", e);
        }
        if (event == XMLStreamConstants.DTD) {
            throw new UnreadablePartException(
                    subject + " cannot be read: its part " + part + " holds a document type declaration (DOCTYPE),"
                            + " which no spreadsheet program writes and which can hide harmful content.",
                    null);
        }
        return event;
    }

    private UnreadablePartException damaged(String place, Throwable cause) {
        String what = cause instanceof ZipException ? "what is packed is not what was written" : "it is not XML";
        String damaged = subject + " cannot be read: its part " + part + " is damaged, " + what + place + ".";
        return new UnreadablePartException(damaged, cause);
    }

    /** Moves to the next start tag of that local name; false if there is none before the end of the part. */
    boolean nextStart(String localName) throws IOException {
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT && at.name().equals(localName)) {
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

    /** Passes over the rest of the part unread: only at its end is it known that all of it is as it was packed. */
    void passOver() throws IOException {
        try {
            characters.passOver();
        } catch (IOException e) {
            throw damaged("", e);
        }
    }

    /** The value of the attribute of that local name, whatever its prefix; null if there is none. */
    String attribute(String localName) {
        for (int i = 0; i < at.attributes(); i++) {
            if (at.attributeName(i).equals(localName)) {
                return at.attributeValue(i);
            }
        }
        return null;
    }

    /** The value of a whole-number attribute, or the default if it is missing or no such number. */
    int attribute(String localName, int whenMissing) {
        for (int i = 0; i < at.attributes(); i++) {
            if (at.attributeName(i).equals(localName)) {
                int value = WholeNumber.parse(at.characters(), at.attributeStart(i), at.attributeEnd(i));
                return value < 0 ? whenMissing : value;
            }
        }
        return whenMissing;
    }

    @Override
    public void close() throws IOException {
        characters.close();
    }
}
