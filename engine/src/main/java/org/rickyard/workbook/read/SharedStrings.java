package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.workbook.open.PartSource;

/** The texts that cells share by number. Runs of rich text are joined; phonetic guides are left out. */
public final class SharedStrings {
    private String[] texts = new String[64];
    private int count;

    private SharedStrings() {}

    /**
     * Reads the part; none if the workbook has none.
     *
     * @throws UnreadablePartException if the part is damaged
     */
    public static SharedStrings read(PartSource parts, Optional<String> part) throws IOException {
        SharedStrings strings = new SharedStrings();
        if (part.isEmpty() || !parts.exists(part.get())) {
            return strings;
        }
        try (PartXml xml = PartXml.open(parts, part.get(), "The list of shared texts")) {
            RichText text = new RichText();
            while (xml.nextStart("si")) {
                text.clear();
                text.read(xml);
                strings.add(text.decoded());
            }
        }
        return strings;
    }

    private void add(String text) {
        if (count == texts.length) {
            texts = Arrays.copyOf(texts, 2 * count);
        }
        texts[count++] = text;
    }

    /** How many texts there are. */
    public int size() {
        return count;
    }

    /**
     * The text of a number.
     *
     * @return the text, or null if there is none of that number
     */
    public String text(int index) {
        return index >= 0 && index < count ? texts[index] : null;
    }

    /** The joined text of an {@code si} or {@code is} element. */
    static final class RichText {
        private char[] characters = new char[256];
        private int length;

        void clear() {
            length = 0;
        }

        int length() {
            return length;
        }

        char[] characters() {
            return characters;
        }

        /** From the start tag to its end tag, adds the characters of every {@code t} outside phonetic runs. */
        void read(PartXml xml) throws IOException {
            int depth = 1;
            boolean inText = false;
            while (depth > 0) {
                switch (xml.next()) {
                    case XMLStreamConstants.START_ELEMENT -> {
                        String name = xml.at.name();
                        boolean text = name.equals("t");
                        if (!text && (name.equals("rPh") || name.equals("rPr") || name.equals("phoneticPr"))) {
                            xml.skip();
                        } else {
                            depth++;
                            inText = text;
                        }
                    }
                    case XMLStreamConstants.END_ELEMENT -> {
                        depth--;
                        inText = false;
                    }
                    case XMLStreamConstants.CHARACTERS -> {
                        if (inText) {
                            append(xml);
                        }
                    }
                    case XMLStreamConstants.END_DOCUMENT -> depth = 0;
                    default -> {}
                }
            }
        }

        /** Adds the characters of the event the cursor stands on. */
        void append(PartXml xml) {
            int added = xml.at.textLength();
            if (length + added > characters.length) {
                characters = Arrays.copyOf(characters, Math.max(2 * characters.length, length + added));
            }
            System.arraycopy(xml.at.characters(), xml.at.textStart(), characters, length, added);
            length += added;
        }

        String decoded() {
            return EscapedText.decode(new String(characters, 0, length));
        }
    }
}
