package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.workbook.open.SafeXml;

class WellFormedTest {
    private static final String GOOD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
            + "<a xmlns=\"urn:a\" xmlns:r=\"urn:r\"><c r=\"A1\" t='str' r:id=\"x\"><f>1&lt;2&amp;\"é€😀\"&#10;&#x41;</f><v/></c\n>"
            + "<r:b xmlns:q=\"urn:q\"><q:x q:y=\"1\"/></r:b><e /></a>\n";
    private static final int SEEDS = 20_000;

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static boolean parserTakes(byte[] text) {
        try {
            // Decoded first, strictly: the parser prints what it thinks of broken UTF-8.
            String decoded = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(text))
                    .toString();
            XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(new StringReader(decoded));
            while (reader.hasNext()) {
                reader.next();
            }
            return true;
        } catch (XMLStreamException | CharacterCodingException malformed) {
            return false;
        }
    }

    @Test
    void whatWeWriteIsTaken() {
        assertThat(WellFormed.fault(utf8(GOOD))).isNull();
        assertThat(parserTakes(utf8(GOOD))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "text",
                "<a>",
                "<a></b>",
                "</a>",
                "<a/><b/>",
                "<a/>text",
                "<a><b></a></b>",
                "<a b=\"1\" b=\"2\"/>",
                "<a b=\"1\"c=\"2\"/>",
                "<a b=1/>",
                "<a b/>",
                "<a b=\"<\"/>",
                "<a b=\"1/>",
                "<a",
                "<a>&</a>",
                "<a>&nbsp;</a>",
                "<a>&amp</a>",
                "<a>&#0;</a>",
                "<a>&#xD800;</a>",
                "<a>&#x110000;</a>",
                "<a>]]></a>",
                "<a>\u0001</a>",
                "<a>\uFFFE</a>",
                "<a r:id=\"1\"/>",
                "<r:a/>",
                "<a><b xmlns:r=\"urn:r\"/><r:c/></a>",
                "<!DOCTYPE a><a/>",
                "<1/>",
            })
    void whatAParserWouldRefuseIsFound(String bad) {
        assertThat(parserTakes(utf8(bad)) && !bad.startsWith("<!DOCTYPE"))
                .as("a parser takes it")
                .isFalse();
        assertThat(WellFormed.fault(utf8(bad))).isNotNull();
    }

    @Test
    void brokenUtf8IsFound() {
        byte[][] bad = {
            {'<', 'a', '>', (byte) 0xC3, '<', '/', 'a', '>'},
            {'<', 'a', '>', (byte) 0xED, (byte) 0xA0, (byte) 0x80, '<', '/', 'a', '>'},
            {'<', 'a', '>', (byte) 0xC0, (byte) 0x80, '<', '/', 'a', '>'}
        };
        for (byte[] text : bad) {
            assertThat(WellFormed.fault(text)).isNotNull();
        }
    }

    /** Bytes changed, taken out or put in at random: whatever a parser refuses is found. */
    @Test
    void itTakesNothingThatAParserRefuses() {
        int refused = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            byte[] text = utf8(GOOD);
            for (int change = 0; change <= random.nextInt(3); change++) {
                text = changed(text, random);
            }
            if (!parserTakes(text)) {
                refused++;
                assertThat(WellFormed.fault(text))
                        .as("seed %d: %s", seed, new String(text, StandardCharsets.UTF_8))
                        .isNotNull();
            }
        }
        assertThat(refused).isBetween(SEEDS / 4, SEEDS - SEEDS / 20);
    }

    private static byte[] changed(byte[] text, Random random) {
        byte[] letters = utf8("<>/&;\"'= :ab]!-?#xr\u00e9\u0001");
        int at = 60 + random.nextInt(text.length - 60);
        byte letter = letters[random.nextInt(letters.length)];
        switch (random.nextInt(3)) {
            case 0 -> {
                byte[] other = text.clone();
                other[at] = letter;
                return other;
            }
            case 1 -> {
                byte[] shorter = new byte[text.length - 1];
                System.arraycopy(text, 0, shorter, 0, at);
                System.arraycopy(text, at + 1, shorter, at, text.length - at - 1);
                return shorter;
            }
            default -> {
                byte[] longer = new byte[text.length + 1];
                System.arraycopy(text, 0, longer, 0, at);
                longer[at] = letter;
                System.arraycopy(text, at, longer, at + 1, text.length - at);
                return longer;
            }
        }
    }
}
