package org.rickyard.workbook.xml;

import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/** The characters of an XML document as they come by: a window of them, their entities, and where a fault stands. */
class XmlCharacters {
    private static final int WINDOW = 1 << 14;
    /** No tag is as long as this; a part that claims so is not read into memory. */
    private static final int LARGEST_WINDOW = 1 << 24;
    /** Text longer than this may be given in pieces, so that the window need not hold all of it. */
    static final int PIECE = 1 << 12;

    private static final String[] ENTITIES = {"amp;", "lt;", "gt;", "quot;", "apos;"};
    private static final char[] MEANT = {'&', '<', '>', '"', '\''};
    /** Characters that stand for themselves in text; the others end it or need a second look. */
    private static final boolean[] PLAIN = new boolean[128];

    static {
        Arrays.fill(PLAIN, ' ', PLAIN.length, true);
        PLAIN['\t'] = true;
        PLAIN['<'] = false;
        PLAIN['&'] = false;
        PLAIN[']'] = false;
    }

    private final Reader in;
    private boolean ended;

    char[] buffer = new char[WINDOW];
    /** The next character to be read. */
    int at;
    /** One past the last character of the window. */
    int limit;
    /** The first character of the window that is still wanted. */
    int from;
    /** One past the last character of the text read so far, which is put right in its place. */
    int to;

    private long before;
    private int line = 1;
    private long lineStart;

    XmlCharacters(Reader in) {
        this.in = in;
    }

    static boolean isPlain(char c) {
        return c < 128 ? PLAIN[c] : c < Character.MIN_SURROGATE;
    }

    /** The first character from there on that does not stand for itself in text, or the limit. */
    static int endOfPlainText(char[] characters, int start, int limit) {
        int i = start;
        while (i < limit && isPlain(characters[i])) {
            i++;
        }
        return i;
    }

    /** The first character from there on that is no letter, digit or the like of a value, or the limit. */
    static int endOfPlainValue(char[] characters, int start, int limit) {
        boolean[] plain = PLAIN;
        int i = start;
        while (i < limit) {
            char c = characters[i];
            if (c >= 128 || c == '"' || c == '\t' || !plain[c]) {
                return i;
            }
            i++;
        }
        return i;
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\n' || c == '\r' || c == '\t';
    }

    XmlFault fault() {
        return new XmlFault(line, (int) Math.min(Integer.MAX_VALUE, before + at - lineStart + 1));
    }

    /** Reads on, keeping what stands from {@link #from}; false at the end of the document. */
    boolean more() throws IOException, XmlFault {
        if (ended) {
            return false;
        }
        if (from > 0) {
            System.arraycopy(buffer, from, buffer, 0, limit - from);
            at -= from;
            to -= from;
            limit -= from;
            before += from;
            from = 0;
        }
        if (limit == buffer.length) {
            if (limit == LARGEST_WINDOW) {
                throw fault();
            }
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        int read = in.read(buffer, limit, buffer.length - limit);
        ended = read < 0;
        limit += Math.max(0, read);
        return !ended;
    }

    /** The next character, which must be there. */
    char peek() throws IOException, XmlFault {
        if (at == limit && !more()) {
            throw fault();
        }
        return buffer[at];
    }

    /** Whether the next characters are those of a token. */
    boolean starts(String token) throws IOException, XmlFault {
        while (limit - at < token.length()) {
            if (!more()) {
                return false;
            }
        }
        for (int i = 0; i < token.length(); i++) {
            if (buffer[at + i] != token.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Passes over white space; whether there was any. */
    boolean space() throws IOException, XmlFault {
        boolean any = false;
        while (at < limit || more()) {
            char c = buffer[at];
            if (!isSpace(c)) {
                break;
            }
            any = true;
            at++;
            noteLine(c);
        }
        return any;
    }

    /** To be called past each character that may end a line. */
    void noteLine(char c) {
        if (c == '\n') {
            line++;
            lineStart = before + at;
        }
    }

    /** Passes over one character, which XML must allow, in a comment or the like. */
    char pass() throws IOException, XmlFault {
        char c = peek();
        if (isPlain(c) || c == '<' || c == '&' || c == ']') {
            at++;
            return c;
        }
        to = at;
        put();
        return c;
    }

    /**
     * Takes over one character that is not plain, or stands for several: line ends become one, pairs stay together.
     * Not for the start of entities and tags.
     */
    void put() throws IOException, XmlFault {
        char c = buffer[at];
        if (c == '\r') {
            at++;
            if ((at < limit || more()) && buffer[at] == '\n') {
                at++;
                noteLine('\n');
            }
            buffer[to++] = '\n';
            return;
        }
        if (Character.isHighSurrogate(c)) {
            while (limit - at < 2) {
                if (!more()) {
                    throw fault();
                }
            }
            if (!Character.isLowSurrogate(buffer[at + 1])) {
                throw fault();
            }
            buffer[to++] = c;
            buffer[to++] = buffer[at + 1];
            at += 2;
            return;
        }
        if (!allowed(c)) {
            throw fault();
        }
        at++;
        noteLine(c);
        buffer[to++] = c;
    }

    private static boolean allowed(int character) {
        return character >= ' ' && character < Character.MIN_SURROGATE
                || character == '\t'
                || character == '\n'
                || character == '\r'
                || character > Character.MAX_SURROGATE && character < 0xFFFE
                || character >= Character.MIN_SUPPLEMENTARY_CODE_POINT && character <= Character.MAX_CODE_POINT;
    }

    /** Takes over the character that an entity stands for: one of the five of XML, or one told by its number. */
    void entity() throws IOException, XmlFault {
        at++;
        for (int i = 0; i < ENTITIES.length; i++) {
            if (starts(ENTITIES[i])) {
                at += ENTITIES[i].length();
                buffer[to++] = MEANT[i];
                return;
            }
        }
        if (peek() != '#') {
            throw fault();
        }
        at++;
        int radix = peek() == 'x' ? 16 : 10;
        at += radix == 16 ? 1 : 0;
        int value = 0;
        int digits = 0;
        for (char c = peek(); c != ';'; c = peek()) {
            int digit = c < 128 ? Character.digit(c, radix) : -1;
            if (digit < 0) {
                throw fault();
            }
            value = Math.min(value * radix + digit, Character.MAX_CODE_POINT + 1);
            digits++;
            at++;
        }
        if (digits == 0 || !allowed(value)) {
            throw fault();
        }
        at++;
        to += Character.toChars(value, buffer, to);
    }
}
