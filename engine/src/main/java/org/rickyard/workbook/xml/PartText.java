package org.rickyard.workbook.xml;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The characters of an XML part. Decoding is done here and not by the parser, because the parser writes to the error
 * stream when it meets bytes that are no characters.
 */
public final class PartText {
    private static final int LONGEST_DECLARATION = 256;
    private static final Pattern ENCODING = Pattern.compile("^<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._-]+)");

    private PartText() {}

    /** A reader by byte order mark, zero bytes or XML declaration; wrong bytes make it fail with an IOException. */
    public static ReaderAhead reader(InputStream stream) throws IOException {
        PushbackInputStream start = new PushbackInputStream(stream, LONGEST_DECLARATION);
        byte[] bytes = new byte[LONGEST_DECLARATION];
        int count = start.readNBytes(bytes, 0, LONGEST_DECLARATION);
        int mark = markLength(bytes, count);
        start.unread(bytes, mark, count - mark);
        return new ReaderAhead(
                start, new InputStreamReader(start, charset(bytes, count).newDecoder()));
    }

    private static int markLength(byte[] bytes, int count) {
        if (starts(bytes, count, 0xEF, 0xBB, 0xBF)) {
            return 3;
        }
        return starts(bytes, count, 0xFE, 0xFF) || starts(bytes, count, 0xFF, 0xFE) ? 2 : 0;
    }

    private static Charset charset(byte[] bytes, int count) throws IOException {
        if (starts(bytes, count, 0xFE, 0xFF) || starts(bytes, count, 0, '<')) {
            return StandardCharsets.UTF_16BE;
        }
        if (starts(bytes, count, 0xFF, 0xFE) || starts(bytes, count, '<', 0)) {
            return StandardCharsets.UTF_16LE;
        }
        Matcher declared = ENCODING.matcher(new String(bytes, 0, count, StandardCharsets.ISO_8859_1));
        if (starts(bytes, count, 0xEF, 0xBB, 0xBF) || !declared.find()) {
            return StandardCharsets.UTF_8;
        }
        try {
            Charset charset = Charset.forName(declared.group(1));
            // Whatever the declaration says, these bytes are not two to a character.
            return charset.name().startsWith("UTF-16") ? StandardCharsets.UTF_8 : charset;
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw new IOException("unknown encoding " + declared.group(1), e);
        }
    }

    private static boolean starts(byte[] bytes, int count, int... expected) {
        if (count < expected.length) {
            return false;
        }
        for (int i = 0; i < expected.length; i++) {
            if ((bytes[i] & 0xFF) != expected[i]) {
                return false;
            }
        }
        return true;
    }
}
