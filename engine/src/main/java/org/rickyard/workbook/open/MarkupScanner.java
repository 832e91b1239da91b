package org.rickyard.workbook.open;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads XML text into elements with offsets. Knows no document types, hence no entities beyond the five of XML. */
final class MarkupScanner {
    /** Thrown on a document type declaration. */
    static final class DoctypeException extends MalformedMarkupException {
        private static final long serialVersionUID = 1L;

        DoctypeException() {
            super("it holds a document type declaration");
        }
    }

    private final String text;
    private int at;
    private MarkupElement root;
    private MarkupElement open;
    private final List<MarkupElement> path = new ArrayList<>();

    MarkupScanner(String text) {
        this.text = text;
    }

    MarkupElement scan() throws MalformedMarkupException {
        at = text.startsWith("\uFEFF") ? 1 : 0;
        while (at < text.length()) {
            int tag = text.indexOf('<', at);
            characters(at, tag < 0 ? text.length() : tag);
            if (tag < 0) {
                break;
            }
            at = tag;
            markup();
        }
        if (root == null || open != null) {
            throw new MalformedMarkupException("it ends too early");
        }
        return root;
    }

    private void characters(int from, int to) throws MalformedMarkupException {
        if (from == to) {
            return;
        }
        if (open != null) {
            open.addText(unescaped(text, from, to));
        } else if (!text.substring(from, to).isBlank()) {
            throw new MalformedMarkupException("it holds text outside its root");
        }
    }

    private void markup() throws MalformedMarkupException {
        if (text.startsWith("<?", at)) {
            at = after("?>", at + 2);
        } else if (text.startsWith("<!--", at)) {
            at = after("-->", at + 4);
        } else if (text.startsWith("<![CDATA[", at)) {
            int from = at + 9;
            at = after("]]>", from);
            if (open == null) {
                throw new MalformedMarkupException("it holds text outside its root");
            }
            open.addText(text.substring(from, at - 3));
        } else if (text.startsWith("<!", at)) {
            throw new DoctypeException();
        } else if (text.startsWith("</", at)) {
            endTag();
        } else {
            startTag();
        }
    }

    private int after(String token, int from) throws MalformedMarkupException {
        int found = text.indexOf(token, from);
        if (found < 0) {
            throw new MalformedMarkupException("it ends too early");
        }
        return found + token.length();
    }

    private void endTag() throws MalformedMarkupException {
        int start = at;
        int end = after(">", at);
        String name = text.substring(start + 2, end - 1).stripTrailing();
        if (open == null || !open.name().equals(name)) {
            throw new MalformedMarkupException("the end tag </" + name + "> has no start tag");
        }
        open.closed(start, end);
        at = end;
        leave();
    }

    private void leave() {
        path.remove(path.size() - 1);
        open = path.isEmpty() ? null : path.get(path.size() - 1);
    }

    private void startTag() throws MalformedMarkupException {
        int start = at++;
        String name = name();
        List<MarkupElement.Attribute> attributes = new ArrayList<>();
        Set<String> names = new HashSet<>();
        boolean spaced = space();
        while (peek() != '>' && peek() != '/') {
            MarkupElement.Attribute attribute = attribute();
            if (!spaced || !names.add(attribute.name())) {
                throw new MalformedMarkupException("the attribute " + attribute.name() + " is misplaced");
            }
            attributes.add(attribute);
            spaced = space();
        }
        boolean empty = peek() == '/';
        at += empty ? 1 : 0;
        if (peek() != '>') {
            throw new MalformedMarkupException("the tag <" + name + "> is not closed");
        }
        at++;
        if (root != null && open == null) {
            throw new MalformedMarkupException("it has two roots");
        }
        MarkupElement element = new MarkupElement(open, name, start, List.copyOf(attributes));
        element.opened(at, empty);
        checkPrefixes(element);
        if (open == null) {
            root = element;
        } else {
            open.add(element);
        }
        if (!empty) {
            path.add(element);
            open = element;
        }
    }

    private static void checkPrefixes(MarkupElement element) throws MalformedMarkupException {
        boolean known = element.prefix().isEmpty() || element.namespaceOf(element.prefix()) != null;
        for (MarkupElement.Attribute attribute : element.attributes()) {
            int colon = attribute.name().indexOf(':');
            String prefix = colon < 0 ? "xml" : attribute.name().substring(0, colon);
            known &= prefix.equals("xmlns") || element.namespaceOf(prefix) != null;
        }
        if (!known) {
            throw new MalformedMarkupException("a prefix in <" + element.name() + "> is not declared");
        }
    }

    private MarkupElement.Attribute attribute() throws MalformedMarkupException {
        String name = name();
        space();
        if (peek() != '=') {
            throw new MalformedMarkupException("the attribute " + name + " has no value");
        }
        at++;
        space();
        char quote = peek();
        int from = at + 1;
        int to = quote == '"' || quote == '\'' ? text.indexOf(quote, from) : -1;
        if (to < 0 || text.substring(from, to).indexOf('<') >= 0) {
            throw new MalformedMarkupException("the value of " + name + " is not quoted");
        }
        at = to + 1;
        return new MarkupElement.Attribute(name, from, to, unescaped(text, from, to));
    }

    private String name() throws MalformedMarkupException {
        int from = at;
        while (at < text.length() && " \t\r\n=/><\"'&".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        if (from == at) {
            throw new MalformedMarkupException("a name is missing");
        }
        return text.substring(from, at);
    }

    private boolean space() {
        int from = at;
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return at > from;
    }

    private char peek() throws MalformedMarkupException {
        if (at >= text.length()) {
            throw new MalformedMarkupException("it ends too early");
        }
        return text.charAt(at);
    }

    private static String unescaped(String text, int from, int to) throws MalformedMarkupException {
        String raw = text.substring(from, to);
        if (raw.indexOf('&') < 0) {
            return raw;
        }
        StringBuilder out = new StringBuilder(raw.length());
        int done = 0;
        for (int amp = raw.indexOf('&'); amp >= 0; amp = raw.indexOf('&', done)) {
            int semicolon = raw.indexOf(';', amp);
            if (semicolon < 0) {
                throw new MalformedMarkupException("an entity is not closed");
            }
            out.append(raw, done, amp).append(entity(raw.substring(amp + 1, semicolon)));
            done = semicolon + 1;
        }
        return out.append(raw, done, raw.length()).toString();
    }

    private static String entity(String name) throws MalformedMarkupException {
        switch (name) {
            case "amp":
                return "&";
            case "lt":
                return "<";
            case "gt":
                return ">";
            case "quot":
                return "\"";
            case "apos":
                return "'";
            default:
                break;
        }
        try {
            if (name.startsWith("#x")) {
                return Character.toString(Integer.parseInt(name.substring(2), 16));
            }
            if (name.startsWith("#")) {
                return Character.toString(Integer.parseInt(name.substring(1)));
            }
        } catch (IllegalArgumentException notANumber) {
            throw new MalformedMarkupException("the entity &" + name + "; is not a character");
        }
        throw new MalformedMarkupException("the entity &" + name + "; is not known");
    }
}
