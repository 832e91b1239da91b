package org.rickyard.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupTest {
    private static Markup parse(String text) throws RefusedException {
        return Markup.parse(text.getBytes(StandardCharsets.UTF_8), "part.xml", "client.xlsx");
    }

    @Test
    void elementsKnowTheirNamespaceTextAndAttributes() throws RefusedException {
        MarkupElement root = parse("<a:r xmlns:a='urn:a' xmlns:b=\"urn:b\"><!-- <no/> --><a:n b:id='7' x=' 1 &lt; 2 '>"
                        + "T&amp;<![CDATA[<U>]]>&#x41;&#66;</a:n><n xmlns='urn:c'/><?pi <no/>?></a:r>")
                .root();
        assertThat(root.namespace()).isEqualTo("urn:a");
        assertThat(root.children()).hasSize(2);
        MarkupElement first = root.child("n").orElseThrow();
        assertThat(first.text()).isEqualTo("T&<U>AB");
        assertThat(first.value("x")).contains(" 1 < 2 ");
        assertThat(first.value("urn:b", "id")).contains("7");
        assertThat(root.children("n")).containsExactly(first);
        assertThat(root.prefixOf("urn:b")).contains("b");
        assertThat(root.prefixOf("urn:c")).isEmpty();
    }

    @Test
    void editsLeaveEveryOtherCharacterAsItIs() throws RefusedException {
        Markup markup = parse("\uFEFF<?xml version='1.0'?>\r\n<r  a = 'x' ><e/>\t<f ></f ></r>\r\n<!-- end -->");
        MarkupEdits edits = new MarkupEdits(markup);
        edits.append(markup.root().child("e").orElseThrow(), "<new/>");
        edits.append(markup.root().child("e").orElseThrow(), "<newer/>");
        edits.set(markup.root(), "a", "y");
        edits.set(markup.root(), "b", "z");
        edits.remove(markup.root().child("f").orElseThrow());
        edits.append(markup.root(), "<last/>");
        assertThat(new String(edits.apply(), StandardCharsets.UTF_8))
                .isEqualTo("\uFEFF<?xml version='1.0'?>\r\n<r b=\"z\"  a = 'y' ><e><new/><newer/></e>\t<last/></r>\r\n"
                        + "<!-- end -->");
    }

    @Test
    void noEditGivesTheSameBytes() throws RefusedException {
        byte[] bytes = "\uFEFF<?xml version='1.0' encoding='UTF-16'?><r/>".getBytes(StandardCharsets.UTF_16LE);
        assertThat(new MarkupEdits(Markup.parse(bytes, "p", "w")).apply()).isEqualTo(bytes);
    }

    @Test
    void lettersThatTheEncodingLacksAreWrittenAsNumbers() throws RefusedException {
        byte[] bytes = "<?xml version='1.0' encoding='US-ASCII'?><r/>".getBytes(StandardCharsets.US_ASCII);
        Markup markup = Markup.parse(bytes, "p", "w");
        assertThat(markup.escaped("M\u00fc & \"s\" \uD83D\uDE9C")).isEqualTo("M&#252; &amp; &quot;s&quot; &#128668;");
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "<r>", "<r></s>", "<r/><s/>", "text<r/>", "<r a='1' a='2'/>", "<r a=1/>", "<r a='<'/>", "<r>&nbsp;</r>",
        "<r>&amp</r>", "<x:r/>", "<r x:a='1'/>", "<r><!-- </r>", "<r", "<r a='1'b='2'/>", "<>", "<r>&#xZZ;</r>"
    })
    void whatIsNotWellFormedIsRefused(String text) {
        assertThatThrownBy(() -> parse(text))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("part.xml")
                .hasMessageContaining("damaged");
    }

    @Test
    void bytesThatAreNotInTheDeclaredEncodingAreRefused() {
        byte[] bytes = {'<', 'r', '>', (byte) 0xE4, '<', '/', 'r', '>'};
        assertThatThrownBy(() -> Markup.parse(bytes, "p", "w")).hasMessageContaining("UTF-8");
        byte[] unknown = "<?xml version='1.0' encoding='X-NONE-SUCH'?><r/>".getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> Markup.parse(unknown, "p", "w")).hasMessageContaining("X-NONE-SUCH");
    }

    @Test
    void deepNestingNeedsNoStack() throws RefusedException {
        int depth = 200_000;
        Markup markup = parse("<a>".repeat(depth) + "</a>".repeat(depth));
        assertThat(markup.root().children()).hasSize(1);
    }

    @Test
    void targetsAreResolvedFromTheirPart() {
        assertThat(PartNames.resolve("xl/worksheets/sheet1.xml", "../comments1.xml")).isEqualTo("xl/comments1.xml");
        assertThat(PartNames.resolve("xl/workbook.xml", "/xl/./a/../b.xml#x")).isEqualTo("xl/b.xml");
        assertThat(PartNames.resolve("", "xl\\workbook.xml")).isEqualTo("xl/workbook.xml");
        assertThat(PartNames.resolve("a/b.xml", "../../../c.xml")).isEqualTo("c.xml");
        assertThat(PartNames.relative("xl/worksheets/sheet1.xml", "xl/comments1.xml")).isEqualTo("../comments1.xml");
        assertThat(PartNames.relative("xl/workbook.xml", "xl/worksheets/s.xml")).isEqualTo("worksheets/s.xml");
        assertThat(PartNames.relative("workbook.xml", "customXml/item1.xml")).isEqualTo("customXml/item1.xml");
        assertThat(PartNames.relationshipsOf("xl/workbook.xml")).isEqualTo("xl/_rels/workbook.xml.rels");
        assertThat(PartNames.relationshipsOf("")).isEqualTo("_rels/.rels");
    }
}
