package org.rickyard.workbook.xml;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.Random;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.workbook.open.SafeXml;

/** Our reading of XML against that of Java's own parser: the same events, or both say that it is no XML. */
@Tag("derived")
class XmlCursorTest {
    private static final String FAULT = "no XML";
    private static final String DOCTYPE = "DOCTYPE";

    static List<String> documents() {
        return List.of(
                "<a/>",
                "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\r\n<a>\r\n<b c='1'/>\rx\n</a>\n",
                "<?xml version='1.0'?><!-- so --><?go on?><a b = '1'  c=\"2\" >t<!-- a-b --><?x?>u</a ><!-- - --><?y z?>\n",
                "<x:a xmlns:x='u' xmlns:y=\"v\" x:b='1' y:b='2' b='3'><y:c xmlns='w' xmlns:y='z'/><y:c/></x:a>",
                "<a b='&lt;&gt;&amp;&quot;&apos;&#65;&#x42;&#x1F33E;' c=' \t\r\n x \r y \n'>&lt;&#13;&#10;&#x9;&gt; ] ]] &#93;]></a>",
                "<a><![CDATA[ <b> & ]] ]> \r\n]]>x<![CDATA[]]>y<![CDATA[]]]]></a>",
                "<a b=\"'\" c='\"'>\u00e4\u4e2d\ud83c\udf3e\ufffd</a>",
                "<\u00e4\u00df b\u00e9='1'><_-.1/></\u00e4\u00df>",
                "<a xml:space='preserve' xml:lang='en'> <b/> </a>",
                "<sheetData><row r=\"1\" spans=\"1:3\"><c r=\"A1\" s=\"2\" t=\"inlineStr\"><is><t>Long &amp; Acre</t></is></c>"
                        + "<c r=\"B1\"><v>1.5E-3</v></c><c r=\"C1\" t=\"str\"><f>A1&amp;\"]]\"</f><v/></c></row></sheetData>");
    }

    @ParameterizedTest
    @MethodSource("documents")
    void goodDocumentsAreReadAsJavasParserReadsThem(String text) {
        assertThat(theirs(text)).isNotEqualTo(FAULT);
        assertThat(ours(text, Integer.MAX_VALUE)).isEqualTo(theirs(text));
        assertThat(ours(text, 1)).isEqualTo(theirs(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "a",
                "<",
                "<a",
                "<a>",
                "<a></b>",
                "<a></a",
                "<a></aa>",
                "<aa></a>",
                "<a/><a/>",
                "<a/>x",
                "x<a/>",
                "</a>",
                "<a b/>",
                "<a b=1/>",
                "<a b='1'c='2'/>",
                "<a b='1' b='2'/>",
                "<a xmlns:x='u' xmlns:y='u' x:b='1' y:b='2'/>",
                "<a xmlns:x='u' xmlns:x='u'/>",
                "<a xmlns='u' xmlns='u'/>",
                "<a xmlns:x=''/>",
                "<a xmlns:xml='u'/>",
                "<a xmlns:xmlns='u'/>",
                "<a xmlns:x='http://www.w3.org/2000/xmlns/'/>",
                "<a xmlns:x='http://www.w3.org/XML/1998/namespace'/>",
                "<x:a/>",
                "<a x:b='1'/>",
                "<a><b xmlns:x='u'/><x:c/></a>",
                "<a:b:c xmlns:a='u'/>",
                "<a:/>",
                "<1a/>",
                "<-a/>",
                "< a/>",
                "<a / >",
                "<a b='<'/>",
                "<a b='&'/>",
                "<a b='&x;'/>",
                "<a b='1\"/>",
                "<a>&</a>",
                "<a>&x;</a>",
                "<a>&amp</a>",
                "<a>&#;</a>",
                "<a>&#x;</a>",
                "<a>&#X41;</a>",
                "<a>&#0;</a>",
                "<a>&#xD800;</a>",
                "<a>&#xFFFE;</a>",
                "<a>&#x110000;</a>",
                "<a>&#99999999999;</a>",
                "<a>]]></a>",
                "<a>]]]></a>",
                "<a>\u0001</a>",
                "<a>\ufffe</a>",
                "<a b='\u0000'/>",
                "<a>\ud800</a>",
                "<a>\ud800x</a>",
                "<a>\udc00</a>",
                "<a><![CDATA[</a>",
                "<a><![CDATA[\u0002]]></a>",
                "<![CDATA[x]]><a/>",
                "<a/><![CDATA[x]]>",
                "<a><!-- -- --></a>",
                "<a><!-- ---></a>",
                "<a><!-- </a>",
                "<a><!- x --></a>",
                "<a><!-- \u0003 --></a>",
                "<a><?xml x?></a>",
                "<a><?XML x?></a>",
                "<a><? x?></a>",
                "<a><?x</a>",
                "<a><?x~?></a>",
                " <?xml version='1.0'?><a/>",
                "<?xml?><a/>",
                "<?xml version='2.0'?><a/>",
                "<?xml encoding='UTF-8'?><a/>",
                "<?xml version='1.0' standalone='maybe'?><a/>",
                "<?xml version='1.0' standalone='yes' encoding='UTF-8'?><a/>",
                "<?xml version='1.0'><a/>",
                "<a><!DOCTYPE a></a>",
                "<a/><!DOCTYPE a>"
            })
    void whatIsNoXmlIsNoneToEither(String text) {
        assertThat(theirs(text)).isEqualTo(FAULT);
        assertThat(ours(text, Integer.MAX_VALUE)).isEqualTo(FAULT);
        assertThat(ours(text, 1)).isEqualTo(FAULT);
        // Within an element, and in the quotation marks that writers use, tags take the shorter way.
        String within = "<r>" + text.replace('\'', '"') + "</r>";
        assertThat(ours(within, Integer.MAX_VALUE)).isEqualTo(theirs(within));
    }

    /** Namespaces in XML 1.0, production 7. */
    @Test
    void aNameDoesNotBeginWithTheColonOfAPrefix() {
        assertThat(ours("<:a/>", 1)).isEqualTo(FAULT);
        assertThat(ours("<a :b='1'/>", 1)).isEqualTo(FAULT);
    }

    @Test
    void documentTypesAreMet() {
        String text = "<?xml version='1.0'?>\n<!-- x --><!DOCTYPE a [<!ENTITY b 'c'>]><a>&b;</a>";
        assertThat(theirs(text)).isEqualTo(DOCTYPE);
        assertThat(ours(text, Integer.MAX_VALUE)).isEqualTo(DOCTYPE);
    }

    @ParameterizedTest
    @MethodSource("documents")
    void spoiltDocumentsAreReadAlikeOrNotAtAll(String text) {
        Random random = new Random(text.hashCode());
        String signs = "<>/?!-[]&;'\"= \n\r\tab:x#1CDATA";
        int faults = 0;
        int read = 0;
        for (int i = 0; i < 3_000; i++) {
            StringBuilder spoilt = new StringBuilder(text);
            for (int changes = 1 + random.nextInt(2); changes > 0 && spoilt.length() > 0; changes--) {
                int at = random.nextInt(spoilt.length());
                char sign = signs.charAt(random.nextInt(signs.length()));
                switch (random.nextInt(4)) {
                    case 0 -> spoilt.deleteCharAt(at);
                    case 1 -> spoilt.insert(at, sign);
                    case 2 -> spoilt.setCharAt(at, sign);
                    default ->
                        spoilt.insert(at, spoilt.substring(at, Math.min(spoilt.length(), at + 1 + random.nextInt(9))));
                }
            }
            String document = spoilt.toString();
            // Java's parser lets a name begin with a colon, against Namespaces in XML 1.0, section 4.
            boolean colonFirst = document.matches("(?s).*[\\s</?]:.*");
            String expected = colonFirst ? ours(document, Integer.MAX_VALUE) : theirs(document);
            assertThat(ours(document, 1 + random.nextInt(9))).as(document).isEqualTo(expected);
            assertThat(ours(document, Integer.MAX_VALUE)).as(document).isEqualTo(expected);
            faults += expected.equals(FAULT) ? 1 : 0;
            read += expected.equals(FAULT) ? 0 : 1;
        }
        assertThat(faults).isPositive();
        assertThat(read).isPositive();
    }

    @Test
    void longTextsNamesAndTagsAreReadWhole() {
        StringBuilder text = new StringBuilder("<a>");
        Random random = new Random(7);
        for (int i = 0; i < 40_000; i++) {
            switch (random.nextInt(8)) {
                case 0 -> text.append("]&#x1F33E;]&gt;");
                case 1 -> text.append("\r\n");
                case 2 -> text.append("\ud83c\udf3e");
                default -> text.append("word ").append(i);
            }
        }
        text.append("<![CDATA[").append("]] x\r".repeat(5_000)).append("]]>");
        text.append("<b c='").append("v&lt;\t".repeat(20_000)).append("'");
        for (int i = 0; i < 200; i++) {
            text.append(" n").append(i).append("='").append(i).append("'");
        }
        text.append("/>")
                .append("<d>".repeat(3_000))
                .append("</d>".repeat(3_000))
                .append("</a>");
        assertThat(theirs(text.toString())).isNotEqualTo(FAULT);
        assertThat(ours(text.toString(), 5_000)).isEqualTo(theirs(text.toString()));
        assertThat(ours("<a" + " b".repeat(1) + "='1'" + " ".repeat(50_000) + "/>", 999))
                .isEqualTo("+a b=1;-a");
        String twice = text.toString().replace(" n150='150'", " n20='150'");
        assertThat(theirs(twice)).isEqualTo(FAULT);
        assertThat(ours(twice, 5_000)).isEqualTo(FAULT);
    }

    @Test
    void aFaultIsToldByLineAndColumn() throws IOException {
        XmlCursor cursor = new XmlCursor(new StringReader("<a>\r\n<b>\n  <c></d></b></a>"));
        try {
            while (cursor.next() != XMLStreamConstants.END_DOCUMENT) {
                // On to the fault.
            }
            throw new AssertionError("no fault was found");
        } catch (XmlFault fault) {
            assertThat(fault.line()).isEqualTo(3);
            assertThat(fault.column()).isBetween(6, 9);
        }
    }

    /** All that a reader of parts is told, as one text; texts that follow each other are one. */
    static String ours(String document, int pieces) {
        StringBuilder out = new StringBuilder();
        boolean inText = false;
        XmlCursor cursor = new XmlCursor(new InPieces(document, pieces));
        try {
            for (int event = cursor.next(); event != XMLStreamConstants.END_DOCUMENT; event = cursor.next()) {
                if (event == XMLStreamConstants.DTD) {
                    return DOCTYPE;
                } else if (event == XMLStreamConstants.CHARACTERS) {
                    if (cursor.textLength() > 0) {
                        out.append(inText ? "" : "'");
                        out.append(cursor.characters(), cursor.textStart(), cursor.textLength());
                        inText = true;
                    }
                    continue;
                }
                inText = false;
                out.append(event == XMLStreamConstants.START_ELEMENT ? "+" : "-")
                        .append(cursor.name());
                for (int i = 0; event == XMLStreamConstants.START_ELEMENT && i < cursor.attributes(); i++) {
                    out.append(' ').append(cursor.attributeName(i)).append('=').append(cursor.attributeValue(i));
                }
                out.append(event == XMLStreamConstants.START_ELEMENT ? ";" : "");
            }
        } catch (XmlFault fault) {
            return FAULT;
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toString();
    }

    static String theirs(String document) {
        StringBuilder out = new StringBuilder();
        boolean inText = false;
        XMLInputFactory factory = SafeXml.factory();
        factory.setXMLReporter((message, type, information, location) -> {});
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(document));
            while (reader.hasNext()) {
                switch (reader.next()) {
                    case XMLStreamConstants.DTD -> {
                        return DOCTYPE;
                    }
                    case XMLStreamConstants.ENTITY_REFERENCE -> {
                        return FAULT;
                    }
                    case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE -> {
                        if (reader.getTextLength() > 0) {
                            out.append(inText ? "" : "'").append(reader.getText());
                            inText = true;
                        }
                    }
                    case XMLStreamConstants.START_ELEMENT -> {
                        inText = false;
                        out.append("+").append(reader.getLocalName());
                        for (int i = 0; i < reader.getAttributeCount(); i++) {
                            out.append(' ').append(reader.getAttributeLocalName(i));
                            out.append('=').append(reader.getAttributeValue(i));
                        }
                        out.append(';');
                    }
                    case XMLStreamConstants.END_ELEMENT -> {
                        inText = false;
                        out.append("-").append(reader.getLocalName());
                    }
                    default -> {}
                }
            }
        } catch (XMLStreamException | RuntimeException fault) {
            return FAULT;
        }
        return out.toString();
    }

    /** Gives a few characters at a time, so that everything is once cut in two. */
    private static final class InPieces extends Reader {
        private final StringReader all;
        private final int most;

        InPieces(String text, int most) {
            this.all = new StringReader(text);
            this.most = most;
        }

        @Override
        public int read(char[] into, int offset, int length) throws IOException {
            return all.read(into, offset, Math.min(most, length));
        }

        @Override
        public void close() {
            all.close();
        }
    }
}
