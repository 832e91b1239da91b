package org.rickyard.workbook.xml;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;

/**
 * Reads an XML document event by event: start tags, end tags and text. It is as strict as a parser that minds
 * namespaces must be, but knows no document types, and so no entities beyond the five of XML and characters told by
 * their number. Comments and instructions are passed over.
 *
 * <p>Java's own parser, which a test holds it against, reads the same; but making that ready takes a small workbook
 * longer than reading its cells, and a large one a third of the whole time of reading.
 *
 * <p>This file is one automaton and is kept whole: its steps share the place in the window, the open elements and the
 * attributes at hand. What could be told apart stands beside it: characters, names, prefixes and attributes.
 */
public final class XmlCursor extends XmlCharacters {
    private static final Pattern DECLARATION = Pattern.compile("<\\?xml\\s+version\\s*=\\s*(\"1\\.[01]\"|'1\\.[01]')"
            + "(\\s+encoding\\s*=\\s*(\"[^\"]+\"|'[^']+'))?"
            + "(\\s+standalone\\s*=\\s*(\"(yes|no)\"|'(yes|no)'))?\\s*\\?>");
    private static final int LONGEST_DECLARATION = 1000;
    /** As many as Java's own parser allows. */
    private static final int MOST_ATTRIBUTES = 10_000;

    private final XmlNames names = new XmlNames();
    private final XmlPrefixes prefixes = new XmlPrefixes();
    private final XmlAttributes attributes = new XmlAttributes();

    private boolean begun;
    private boolean rootRead;
    private boolean inSection;
    private boolean selfClosed;

    private String[] open = new String[32];
    private String[] openLocal = new String[32];
    private int depth;

    private String prefix;
    private String local;
    /** How many prefixes the tag declares, which are not given out. */
    private int declarations;

    /** A cursor before the first event. */
    public XmlCursor(Reader in) {
        super(in);
    }

    /**
     * Moves to the next event, one of START_ELEMENT, END_ELEMENT, CHARACTERS, END_DOCUMENT and DTD of
     * {@link XMLStreamConstants}. A document type is not read, only met: nothing may be asked after DTD.
     */
    public int next() throws IOException, XmlFault {
        from = at;
        if (selfClosed) {
            selfClosed = false;
            leave();
            return XMLStreamConstants.END_ELEMENT;
        }
        if (inSection) {
            return section();
        }
        if (!begun) {
            declaration();
        }
        while (true) {
            from = at;
            if (depth == 0) {
                while ((at < limit || more()) && isSpace(buffer[at])) {
                    noteLine(buffer[at++]);
                    from = at;
                }
                if (at == limit) {
                    if (!rootRead) {
                        throw fault();
                    }
                    return XMLStreamConstants.END_DOCUMENT;
                }
            }
            if (peek() != '<') {
                if (depth == 0) {
                    throw fault();
                }
                return text();
            }
            char c = charAfter(1);
            if (c == '/') {
                endTag();
                return XMLStreamConstants.END_ELEMENT;
            } else if (c == '?') {
                instruction();
            } else if (c != '!') {
                if (!plainTag()) {
                    startTag();
                }
                return XMLStreamConstants.START_ELEMENT;
            } else if (starts("<!--")) {
                comment();
            } else if (depth > 0 && starts("<![CDATA[")) {
                at += 9;
                inSection = true;
                return section();
            } else if (!rootRead && depth == 0 && starts("<!DOCTYPE")) {
                return XMLStreamConstants.DTD;
            } else {
                throw fault();
            }
        }
    }

    private void declaration() throws IOException, XmlFault {
        begun = true;
        if (!starts("<?xml") || XmlNames.isInside(charAfter(5)) || charAfter(5) == ':') {
            return;
        }
        while (!starts("?>")) {
            if (at - from > LONGEST_DECLARATION || at == limit) {
                throw fault();
            }
            at++;
        }
        at += 2;
        if (!DECLARATION.matcher(new String(buffer, from, at - from)).matches()) {
            throw fault();
        }
        for (int i = from, end = at; i < end; i++) {
            at = i + 1;
            noteLine(buffer[i]);
        }
    }

    private char charAfter(int count) throws IOException, XmlFault {
        if (limit - at > count) {
            return buffer[at + count];
        }
        at += count;
        char c = peek();
        at -= count;
        return c;
    }

    /**
     * Reads a start tag as nearly all of them are: whole in the window, one space before each attribute, no prefix, no
     * declaration, no value with anything in it to put right. False for any other, which is then read step by step.
     */
    private boolean plainTag() {
        if (depth == 0 || depth == open.length) {
            return false;
        }
        char[] characters = buffer;
        int start = at + 1;
        int i = XmlNames.endOfPlain(characters, start, limit);
        if (i < 0) {
            return false;
        }
        String element = names.name(characters, start, i);
        attributes.clear();
        while (characters[i] == ' ') {
            start = i + 1;
            i = XmlNames.endOfPlain(characters, start, limit);
            if (i < 0 || limit - i < 2 || characters[i] != '=' || characters[i + 1] != '"') {
                return false;
            }
            String name = names.name(characters, start, i);
            start = i + 2;
            i = endOfPlainValue(characters, start, limit);
            if (limit - i < 2 || characters[i] != '"' || name.equals("xmlns") || !attributes.fewWithout(name)) {
                return false;
            }
            attributes.add("", name, start - from, i - from);
            i++;
        }
        boolean closed = characters[i] == '/';
        i += closed ? 1 : 0;
        if (i == limit || characters[i] != '>') {
            return false;
        }
        at = i + 1;
        selfClosed = closed;
        open[depth] = element;
        openLocal[depth++] = element;
        local = element;
        return true;
    }

    private int text() throws IOException, XmlFault {
        to = at;
        int brackets = 0;
        while (true) {
            if (at == limit) {
                if (at - from >= PIECE && brackets == 0) {
                    return XMLStreamConstants.CHARACTERS;
                }
                if (!more()) {
                    throw fault();
                }
            }
            char c = buffer[at];
            if (isPlain(c)) {
                if (c == '>' && brackets > 1) {
                    throw fault();
                }
                brackets = 0;
                int end = endOfPlainText(buffer, at, limit);
                if (to != at) {
                    System.arraycopy(buffer, at, buffer, to, end - at);
                }
                to += end - at;
                at = end;
            } else if (c == '<') {
                return XMLStreamConstants.CHARACTERS;
            } else if (c == ']') {
                brackets++;
                at++;
                buffer[to++] = c;
            } else if (c == '&') {
                brackets = 0;
                entity();
            } else {
                brackets = 0;
                put();
            }
        }
    }

    /** Text that stands as it is, up to its end mark. */
    private int section() throws IOException, XmlFault {
        from = at;
        to = at;
        while (true) {
            if (at == limit && at - from >= PIECE) {
                return XMLStreamConstants.CHARACTERS;
            }
            char c = peek();
            if (c == ']' && starts("]]>")) {
                at += 3;
                inSection = false;
                return XMLStreamConstants.CHARACTERS;
            }
            if (isPlain(c) || c == '<' || c == '&' || c == ']') {
                at++;
                buffer[to++] = c;
            } else {
                put();
            }
        }
    }

    private void comment() throws IOException, XmlFault {
        at += 4;
        while (!starts("--")) {
            from = at;
            pass();
        }
        at += 2;
        if (peek() != '>') {
            throw fault();
        }
        at++;
    }

    private void instruction() throws IOException, XmlFault {
        at += 2;
        int start = at - from;
        word();
        while (peek() == ':' || XmlNames.isInside(buffer[at])) {
            at++;
        }
        if (new String(buffer, from + start, at - from - start).equalsIgnoreCase("xml")) {
            throw fault();
        }
        if (!space() && !starts("?>")) {
            throw fault();
        }
        while (!starts("?>")) {
            from = at;
            pass();
        }
        at += 2;
    }

    private void endTag() throws IOException, XmlFault {
        at += 2;
        String name = depth == 0 ? null : open[depth - 1];
        if (name != null
                && limit - at > name.length()
                && buffer[at + name.length()] == '>'
                && XmlNames.matches(name, buffer, at)) {
            at += name.length() + 1;
            leave();
            return;
        }
        if (name == null || !starts(name)) {
            throw fault();
        }
        at += name.length();
        space();
        if (peek() != '>') {
            throw fault();
        }
        at++;
        leave();
    }

    private void leave() {
        depth--;
        prefixes.leave(depth);
        local = openLocal[depth];
        attributes.clear();
    }

    private void startTag() throws IOException, XmlFault {
        if (depth == 0 && rootRead) {
            throw fault();
        }
        rootRead = true;
        at++;
        attributes.clear();
        declarations = 0;
        int start = at - from;
        readName();
        String elementPrefix = prefix;
        String elementLocal = local;
        String whole = elementPrefix.isEmpty() ? elementLocal : names.name(buffer, from + start, at);
        boolean spaced = false;
        char c = buffer[at];
        if (isSpace(c)) {
            spaced = space();
            c = peek();
        }
        while (c != '>' && c != '/') {
            if (!spaced) {
                throw fault();
            }
            attribute();
            spaced = space();
            c = peek();
        }
        at++;
        if (c == '/') {
            if (peek() != '>') {
                throw fault();
            }
            at++;
            selfClosed = true;
        }
        boolean known = elementPrefix.isEmpty() || prefixes.meaning(elementPrefix) != null;
        if (!known || !attributes.known(prefixes) || attributes.twice(prefixes)) {
            throw fault();
        }
        if (depth == open.length) {
            open = Arrays.copyOf(open, 2 * depth);
            openLocal = Arrays.copyOf(openLocal, 2 * depth);
        }
        open[depth] = whole;
        openLocal[depth++] = elementLocal;
        local = elementLocal;
    }

    private void attribute() throws IOException, XmlFault {
        if (attributes.count() + declarations >= MOST_ATTRIBUTES) {
            throw fault();
        }
        readName();
        String ownPrefix = prefix;
        String ownLocal = local;
        if (buffer[at] != '=') {
            space();
            if (peek() != '=') {
                throw fault();
            }
        }
        at++;
        space();
        char quote = peek();
        if (quote != '"' && quote != '\'') {
            throw fault();
        }
        at++;
        int start = at - from;
        value(quote);
        int end = to - from;
        boolean declaresDefault = ownPrefix.isEmpty() && ownLocal.equals("xmlns");
        if (declaresDefault || ownPrefix.equals("xmlns")) {
            declare(declaresDefault ? "" : ownLocal, new String(buffer, from + start, end - start));
            return;
        }
        attributes.add(ownPrefix, ownLocal, start, end);
    }

    private void declare(String declared, String meaning) throws XmlFault {
        if (prefixes.declaredAt(declared, depth + 1) || !prefixes.declare(declared, meaning, depth + 1)) {
            throw fault();
        }
        declarations++;
    }

    /** Up to the closing quotation mark and past it. White space of any kind becomes spaces. */
    private void value(char quote) throws IOException, XmlFault {
        to = at;
        while (true) {
            char c = peek();
            if (c == quote) {
                at++;
                return;
            } else if (c == '&') {
                entity();
            } else if (c == '<') {
                throw fault();
            } else if (isPlain(c) && c != '\t' || c == ']') {
                if (to != at) {
                    buffer[to] = c;
                }
                to++;
                at++;
            } else {
                put();
                if (isSpace(c)) {
                    buffer[to - 1] = ' ';
                }
            }
        }
    }

    /** Reads a name with its prefix, if any; at least one character stands behind it. */
    private void readName() throws IOException, XmlFault {
        int start = at - from;
        word();
        prefix = "";
        if (buffer[at] == ':') {
            prefix = names.name(buffer, from + start, at);
            at++;
            start = at - from;
            word();
        }
        local = names.name(buffer, from + start, at);
    }

    private void word() throws IOException, XmlFault {
        int start = at - from;
        if (!XmlNames.isStart(peek())) {
            throw fault();
        }
        do {
            at++;
        } while (XmlNames.isInside(peek()));
        if (at - from - start > XmlNames.LONGEST) {
            throw fault();
        }
    }

    /** The name of the element whose start or end tag was read, without prefix. */
    public String name() {
        return local;
    }

    /** How many attributes the start tag has; declarations of prefixes are not among them. */
    public int attributes() {
        return attributes.count();
    }

    /** The name of an attribute, without prefix. */
    public String attributeName(int attribute) {
        return attributes.name(attribute);
    }

    /** The value of an attribute. */
    public String attributeValue(int attribute) {
        return new String(buffer, attributeStart(attribute), attributeEnd(attribute) - attributeStart(attribute));
    }

    /** Where in {@link #characters} the value of an attribute begins. */
    public int attributeStart(int attribute) {
        return from + attributes.start(attribute);
    }

    /** One past the end of the value of an attribute. */
    public int attributeEnd(int attribute) {
        return from + attributes.end(attribute);
    }

    /** What the places of texts and values count in; good until the next event. */
    public char[] characters() {
        return buffer;
    }

    /** Where the text begins that was read. */
    public int textStart() {
        return from;
    }

    /** How long the text is that was read; a long one comes in several pieces. */
    public int textLength() {
        return to - from;
    }

    /** Whether the text that was read is nothing but white space. */
    public boolean isBlank() {
        for (int i = from; i < to; i++) {
            if (!isSpace(buffer[i])) {
                return false;
            }
        }
        return true;
    }
}
