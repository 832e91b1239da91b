package org.rickyard.workbook.graft;

import java.util.Arrays;

/**
 * Reads a part of ours back and says whether it is well-formed, as strictly as an XML parser would of what we write: UTF-8
 * without document type, comments or sections. It looks at each byte once and makes no objects, for a parser proper is
 * made ready at a cost that a small workbook feels, and our parts are the largest in the file.
 */
final class WellFormed {
    private static final int DEEPEST = 64;
    private static final int MOST_ATTRIBUTES = 64;
    private static final byte[] XMLNS = {'x', 'm', 'l', 'n', 's', ':'};
    private static final String[] ENTITIES = {"amp;", "lt;", "gt;", "quot;", "apos;"};

    private final byte[] text;
    private final int end;
    private int at;
    /** Where the names of the open elements begin and end. */
    private final int[] open = new int[2 * DEEPEST];

    private int depth;
    private final int[] attributes = new int[2 * MOST_ATTRIBUTES];
    /** Where the declared prefixes begin and end, and how deep their elements stand. */
    private final int[] declared = new int[3 * MOST_ATTRIBUTES];

    private int prefixes;
    private String fault;

    private WellFormed(byte[] text) {
        this.text = text;
        this.end = text.length;
    }

    /** What is wrong with a part, as a clause with its place; null if nothing is. */
    static String fault(byte[] part) {
        WellFormed check = new WellFormed(part);
        check.document();
        return check.fault == null ? null : check.fault + " at byte " + check.at;
    }

    private boolean fail(String what) {
        fault = fault == null ? what : fault;
        return false;
    }

    private void document() {
        if (starts("<?xml ")) {
            while (at < end && text[at] != '>') {
                at++;
            }
            if (at == end || text[at - 1] != '?') {
                fail("the declaration is not closed");
                return;
            }
            at++;
        }
        boolean root = false;
        while (fault == null && at < end) {
            if (text[at] != '<') {
                characters();
            } else if (at + 1 < end && text[at + 1] == '/') {
                endTag();
            } else if (depth == 0 && root) {
                fail("there are two roots");
            } else {
                root = startTag();
            }
        }
        if (fault == null && (depth > 0 || !root)) {
            fail("it ends too early");
        }
    }

    private boolean starts(String token) {
        if (at + token.length() > end) {
            return false;
        }
        for (int i = 0; i < token.length(); i++) {
            if (text[at + i] != token.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Text up to the next tag; outside the root it may only be blank. */
    private void characters() {
        while (at < end && text[at] != '<') {
            if (depth == 0 && !blank(text[at])) {
                fail("there is text outside the root");
                return;
            }
            if (text[at] == ']' && starts("]]>")) {
                fail("there is the end of a section");
                return;
            }
            if (!character()) {
                return;
            }
        }
    }

    /** One character of text or of a value: a plain byte, an entity or a sequence of UTF-8. */
    private boolean character() {
        byte b = text[at];
        if (b == '&') {
            return entity();
        } else if (b >= ' ' || blank(b)) {
            at++;
            return true;
        }
        return b < 0 ? sequence() : fail("there is a control character");
    }

    private boolean entity() {
        at++;
        for (String name : ENTITIES) {
            if (starts(name)) {
                at += name.length();
                return true;
            }
        }
        if (at + 1 >= end || text[at] != '#') {
            return fail("there is an unknown entity");
        }
        boolean hex = text[at + 1] == 'x';
        at += hex ? 2 : 1;
        int value = 0;
        int from = at;
        while (at < end && Character.digit(text[at], hex ? 16 : 10) >= 0 && value <= Character.MAX_CODE_POINT) {
            value = value * (hex ? 16 : 10) + Character.digit(text[at++], hex ? 16 : 10);
        }
        boolean closed = at > from && at < end && text[at] == ';';
        at++;
        return closed && allowed(value) || fail("there is an impossible character");
    }

    private static boolean allowed(int character) {
        return character == '\t'
                || character == '\n'
                || character == '\r'
                || character >= ' ' && character < 0xD800
                || character >= 0xE000 && character < 0xFFFE
                || character >= 0x10000 && character <= Character.MAX_CODE_POINT;
    }

    private boolean sequence() {
        int first = text[at] & 0xFF;
        int length = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
        if (first < 0xC2 || first > 0xF4 || at + length > end) {
            return fail("it is not UTF-8");
        }
        int value = first & 0x7F >> length;
        for (int i = 1; i < length; i++) {
            if ((text[at + i] & 0xC0) != 0x80) {
                return fail("it is not UTF-8");
            }
            value = value << 6 | text[at + i] & 0x3F;
        }
        boolean shortest = length == 2 || value >= (length == 3 ? 0x800 : 0x10000);
        if (!shortest || !allowed(value)) {
            return fail("it is not UTF-8");
        }
        at += length;
        return true;
    }

    private static boolean blank(byte b) {
        return b == ' ' || b == '\t' || b == '\n' || b == '\r';
    }

    /** A name; those that occur in our parts are ASCII, with at most one prefix. */
    private boolean name() {
        boolean whole = word();
        if (whole && at < end && text[at] == ':') {
            at++;
            whole = word();
        }
        return whole || fail("a name is missing");
    }

    private boolean word() {
        int from = at;
        while (at < end && nameByte(text[at], at > from)) {
            at++;
        }
        return at > from;
    }

    private static boolean nameByte(byte b, boolean inside) {
        return b >= 'a' && b <= 'z'
                || b >= 'A' && b <= 'Z'
                || b == '_'
                || inside && (b >= '0' && b <= '9' || b == '-' || b == '.');
    }

    private void endTag() {
        at += 2;
        int from = at;
        if (depth == 0 || !name()) {
            fail("an end tag has no start tag");
            return;
        }
        depth--;
        if (!Arrays.equals(text, from, at, text, open[2 * depth], open[2 * depth + 1])) {
            fail("an end tag has no start tag");
            return;
        }
        while (prefixes > 0 && declared[3 * prefixes - 1] >= depth) {
            prefixes--;
        }
        space();
        close();
    }

    private boolean close() {
        if (at >= end || text[at] != '>') {
            return fail("a tag is not closed");
        }
        at++;
        return true;
    }

    private boolean space() {
        int from = at;
        while (at < end && blank(text[at])) {
            at++;
        }
        return at > from;
    }

    private boolean startTag() {
        int from = ++at;
        if (!name()) {
            return false;
        }
        int to = at;
        int count = 0;
        boolean spaced = space();
        while (at < end && text[at] != '>' && text[at] != '/') {
            if (!spaced || count == MOST_ATTRIBUTES || !attribute(count++)) {
                return fail("an attribute is misplaced");
            }
            spaced = space();
        }
        int known = prefixes;
        if (!declare(count) || !prefixed(from, to) || !prefixed(count)) {
            return fail("a prefix is not declared");
        }
        if (at < end && text[at] == '/') {
            at++;
            prefixes = known;
        } else if (depth == DEEPEST) {
            return fail("elements stand too deep in one another");
        } else {
            open[2 * depth] = from;
            open[2 * depth + 1] = to;
            depth++;
        }
        return close();
    }

    /** Notes the prefixes that the attributes of a start tag declare. */
    private boolean declare(int count) {
        for (int i = 0; i < count; i++) {
            int from = attributes[2 * i];
            int to = attributes[2 * i + 1];
            if (declaresPrefix(from, to)) {
                if (3 * prefixes == declared.length) {
                    return false;
                }
                declared[3 * prefixes] = from + 6;
                declared[3 * prefixes + 1] = to;
                declared[3 * prefixes + 2] = depth;
                prefixes++;
            }
        }
        return true;
    }

    private boolean declaresPrefix(int from, int to) {
        return to - from > XMLNS.length && Arrays.equals(text, from, from + XMLNS.length, XMLNS, 0, XMLNS.length);
    }

    private boolean prefixed(int count) {
        for (int i = 0; i < count; i++) {
            if (!prefixed(attributes[2 * i], attributes[2 * i + 1])) {
                return false;
            }
        }
        return true;
    }

    /** Whether a name has no prefix, or one that is known here. */
    private boolean prefixed(int from, int to) {
        int colon = from;
        while (colon < to && text[colon] != ':') {
            colon++;
        }
        boolean known = colon == to
                || Arrays.equals(text, from, colon, XMLNS, 0, 3)
                || Arrays.equals(text, from, colon, XMLNS, 0, 5);
        for (int i = 0; i < prefixes && !known; i++) {
            known = Arrays.equals(text, from, colon, text, declared[3 * i], declared[3 * i + 1]);
        }
        return known;
    }

    private boolean attribute(int count) {
        int from = at;
        if (!name()) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            if (Arrays.equals(text, from, at, text, attributes[2 * i], attributes[2 * i + 1])) {
                return fail("an attribute stands twice");
            }
        }
        attributes[2 * count] = from;
        attributes[2 * count + 1] = at;
        if (!starts("=\"") && !starts("='")) {
            return fail("a value is not quoted");
        }
        byte quote = text[at + 1];
        at += 2;
        int value = at;
        while (at < end && text[at] != quote) {
            if (text[at] == '<' || !character()) {
                return fail("a value is not closed");
            }
        }
        boolean prefixOfNothing = at == value && declaresPrefix(from, value);
        at++;
        return at <= end && !prefixOfNothing || fail("a value is not closed");
    }
}
