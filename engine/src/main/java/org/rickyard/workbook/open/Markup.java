package org.rickyard.workbook.open;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An XML part held whole, with the place of every token in its text. This is what lets a part be changed by insertion
 * only: all bytes that are not ours, white space, prefixes, encoding and byte order mark included, stay as they are.
 */
public final class Markup {
    private static final Pattern DECLARED =
            Pattern.compile("^<\\?xml[^>]*?\\sencoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]*)[\"']");

    private final byte[] bytes;
    private final Charset charset;
    private final String text;
    private final MarkupElement root;

    private Markup(byte[] bytes, Charset charset, String text, MarkupElement root) {
        this.bytes = bytes;
        this.charset = charset;
        this.text = text;
        this.root = root;
    }

    /**
     * Reads a part.
     *
     * @param workbook the name to show for the file
     * @throws RefusedException if it is not well-formed, has a document type, or its encoding cannot be kept
     */
    public static Markup parse(byte[] bytes, String part, String workbook) throws RefusedException {
        try {
            Charset charset = charset(bytes);
            String text = decode(bytes, charset);
            if (!Arrays.equals(text.getBytes(charset), bytes)) {
                throw new MalformedMarkupException("its encoding " + charset + " cannot be written back unchanged");
            }
            return new Markup(bytes, charset, text, new MarkupScanner(text).scan());
        } catch (MarkupScanner.DoctypeException doctype) {
            throw RefusedException.doctype(workbook, part);
        } catch (MalformedMarkupException malformed) {
            throw RefusedException.damaged(workbook, part, malformed.getMessage());
        }
    }

    private static Charset charset(byte[] bytes) throws MalformedMarkupException {
        int first = bytes.length > 1 ? (bytes[0] & 0xff) << 8 | bytes[1] & 0xff : 0;
        if (first == 0xFEFF || first == 0x003C) {
            return StandardCharsets.UTF_16BE;
        }
        if (first == 0xFFFE || first == 0x3C00) {
            return StandardCharsets.UTF_16LE;
        }
        boolean mark = first == 0xEFBB;
        String head = new String(bytes, 0, Math.min(bytes.length, 200), StandardCharsets.ISO_8859_1);
        Matcher declared = DECLARED.matcher(mark ? head.substring(Math.min(3, head.length())) : head);
        if (mark || !declared.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            Charset charset = Charset.forName(declared.group(1));
            if (!charset.canEncode()
                    || charset.name().startsWith("UTF-16")
                    || charset.name().startsWith("UTF-32")) {
                throw new MalformedMarkupException("it is not in the encoding " + declared.group(1) + " it declares");
            }
            return charset;
        } catch (IllegalArgumentException unknown) {
            throw new MalformedMarkupException("its encoding " + declared.group(1) + " is not known");
        }
    }

    private static String decode(byte[] bytes, Charset charset) throws MalformedMarkupException {
        try {
            CharBuffer chars = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes));
            return chars.toString();
        } catch (CharacterCodingException undecodable) {
            throw new MalformedMarkupException("it holds bytes that are not " + charset);
        }
    }

    /** The outermost element. */
    public MarkupElement root() {
        return root;
    }

    /** The part's bytes as read. */
    public byte[] bytes() {
        return bytes.clone();
    }

    String text() {
        return text;
    }

    byte[] encode(String edited) {
        return edited.getBytes(charset);
    }

    /** Text as it may stand in an attribute in double quotes or between tags, in this part's encoding. */
    public String escaped(String plain) {
        StringBuilder out = new StringBuilder(plain.length() + 16);
        var encoder = charset.newEncoder();
        plain.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> {
                    String letter = Character.toString(point);
                    if (point < 0x20 || !encoder.canEncode(letter)) {
                        out.append("&#").append(point).append(';');
                    } else {
                        out.append(letter);
                    }
                }
            }
        });
        return out.toString();
    }
}
