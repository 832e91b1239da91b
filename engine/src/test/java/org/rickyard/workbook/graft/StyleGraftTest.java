package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SmallPackage;

class StyleGraftTest {
    private static final CellLook INPUT = CellLook.of("Rickyard input").withFill("FFF2CC");

    private static byte[] plain() {
        return SmallPackage.plain().text("xl/styles.xml").getBytes(StandardCharsets.UTF_8);
    }

    private static String text(StyleGraft styles) {
        return new String(styles.bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void looksAreAppendedAndCountsFollow() throws RefusedException {
        CellLook hectares = INPUT.withNumberFormat("0.00\" ha\"");
        StyleGraft styles = StyleGraft.ofPart(plain(), List.of(INPUT, hectares, INPUT));
        assertThat(styles.indices())
                .containsEntry(INPUT, 1)
                .containsEntry(hectares, 2)
                .hasSize(2);
        assertThat(text(styles))
                .contains("<numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"0.00&quot; ha&quot;\"/></numFmts>"
                        + "<fonts count=\"1\">")
                .contains("<fills count=\"3\">")
                .contains("<cellStyleXfs count=\"2\">")
                .contains("<cellXfs count=\"3\">")
                .contains("<cellStyles count=\"2\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/>"
                        + "<cellStyle name=\"Rickyard input\" xfId=\"1\"/>");
    }

    @Test
    void graftingTheSameLooksAgainChangesNothing() throws RefusedException {
        List<CellLook> looks = List.of(
                INPUT,
                INPUT.withNumberFormat("0.0"),
                CellLook.of("Rickyard title")
                        .withBold()
                        .withItalic()
                        .withSize(14)
                        .withFont("1F4E79"),
                CellLook.of("Rickyard head")
                        .withWrap()
                        .withVertical(CellLook.Vertical.TOP)
                        .withAlign(CellLook.Align.CENTER)
                        .withBorder(CellLook.Border.BOTTOM));
        StyleGraft once = StyleGraft.ofPart(plain(), looks);
        StyleGraft twice = StyleGraft.ofPart(once.bytes(), looks);
        assertThat(twice.bytes()).isEqualTo(once.bytes());
        assertThat(twice.indices()).isEqualTo(once.indices());
    }

    @Test
    void noLooksLeaveTheStylesAlone() throws RefusedException {
        byte[] odd = ("<styleSheet xmlns='" + SmallPackage.MAIN + "'/>").getBytes(StandardCharsets.UTF_8);
        assertThat(StyleGraft.ofPart(odd, List.of()).bytes()).isEqualTo(odd);
    }

    @Test
    void aStyleOfOurNameThatLooksOtherwiseIsLeftAndOursIsNumbered() throws RefusedException {
        byte[] taken = SmallPackage.plain()
                .edit("xl/styles.xml", "</cellStyles>", "<cellStyle name=\"RICKYARD INPUT\" xfId=\"0\"/></cellStyles>")
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        StyleGraft once = StyleGraft.ofPart(taken, List.of(INPUT));
        assertThat(text(once)).contains("\"RICKYARD INPUT\" xfId=\"0\"").contains("\"Rickyard input 2\" xfId=\"1\"");
        assertThat(StyleGraft.ofPart(once.bytes(), List.of(INPUT)).bytes()).isEqualTo(once.bytes());
    }

    @Test
    void ourNumberFormatsComeAfterTheClients() throws RefusedException {
        byte[] formats = SmallPackage.plain()
                .edit(
                        "xl/styles.xml",
                        "<fonts",
                        "<numFmts count=\"2\">"
                                + "<numFmt numFmtId=\"170\" formatCode=\"0.000\"/><numFmt numFmtId=\"3\" formatCode=\"x\"/>"
                                + "</numFmts><fonts")
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        StyleGraft styles =
                StyleGraft.ofPart(formats, List.of(INPUT.withNumberFormat("0.000"), INPUT.withNumberFormat("0.0000")));
        assertThat(text(styles))
                .contains("<numFmts count=\"3\">")
                .contains("<numFmt numFmtId=\"171\" formatCode=\"0.0000\"/></numFmts>")
                .contains("<xf numFmtId=\"170\" fontId=\"0\"");
    }

    @Test
    void behindTheHighestNumberOfAFormatOursAreFoundAgainToo() throws RefusedException {
        byte[] formats = SmallPackage.plain()
                .edit(
                        "xl/styles.xml",
                        "<fonts",
                        "<numFmts count=\"1\"><numFmt numFmtId=\"999999999\" formatCode=\"0.000\"/></numFmts><fonts")
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        CellLook look = INPUT.withNumberFormat("0.0000");
        StyleGraft once = StyleGraft.ofPart(formats, List.of(look));
        assertThat(text(once)).contains("<numFmt numFmtId=\"164\" formatCode=\"0.0000\"/></numFmts>");
        assertThat(StyleGraft.ofPart(once.bytes(), List.of(look)).bytes()).isEqualTo(once.bytes());
    }

    @Test
    void ofAlternativeContentTheBranchThatOfficeProgramsTakeIsCounted() throws RefusedException {
        String mc = "http://schemas.openxmlformats.org/markup-compatibility/2006";
        String one = "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>";
        byte[] alternatives = SmallPackage.plain()
                .edit(
                        "xl/styles.xml",
                        "xfId=\"0\"/></cellXfs>",
                        "xfId=\"0\"/>"
                                + "<mc:AlternateContent xmlns:mc=\"" + mc + "\">"
                                + "<mc:Choice xmlns:z=\"urn:unknown\" Requires=\"z\">"
                                + one + one + one + "</mc:Choice><mc:Fallback>" + one + one
                                + "</mc:Fallback></mc:AlternateContent></cellXfs>")
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        StyleGraft styles = StyleGraft.ofPart(alternatives, List.of(INPUT));
        assertThat(styles.index(INPUT)).isEqualTo(3);
        assertThat(text(styles)).contains("<cellXfs count=\"4\">");
    }

    @Test
    void aFirstBorderWithLinesIsNotTakenForNone() throws RefusedException {
        byte[] lined = SmallPackage.plain()
                .edit("xl/styles.xml", "<left/>", "<left style=\"thin\"/>")
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        StyleGraft styles = StyleGraft.ofPart(lined, List.of(INPUT));
        assertThat(text(styles)).contains("<borders count=\"2\">").contains("borderId=\"1\" xfId=\"1\"");
    }

    @Test
    void ourTypefaceIsTheClientsButAColourWrittenWrongIsNotCopied() throws RefusedException {
        String font = "<sz val=\"10\"/><color theme=\"1\"/><name val=\"Arial\"/>";
        CellLook bold = CellLook.of("Rickyard title").withBold();
        assertThat(text(StyleGraft.ofPart(withFont(font), List.of(bold)))).contains("<font><b/>" + font + "<family");
        String wrong = font.replace("theme=\"1\"", "rgb=\"000000\"");
        assertThat(text(StyleGraft.ofPart(withFont(wrong), List.of(bold))))
                .contains("<font><b/><sz val=\"10\"/><name val=\"Arial\"/>");
    }

    private static byte[] withFont(String font) {
        return SmallPackage.plain()
                .edit("xl/styles.xml", "<sz val=\"10\"/><name val=\"Arial\"/>", font)
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void missingStylesAreCreatedWithWhatEveryWorkbookNeeds() throws RefusedException {
        StyleGraft styles = StyleGraft.ofPart(null, List.of(INPUT));
        assertThat(styles.index(INPUT)).isEqualTo(1);
        assertThat(text(styles))
                .contains("<fills count=\"3\"><fill><patternFill patternType=\"none\"/></fill>"
                        + "<fill><patternFill patternType=\"gray125\"/></fill>");
    }

    @Test
    void aFullTableIsRefusedWithASentence() {
        String one = "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>";
        byte[] full = SmallPackage.plain()
                .edit("xl/styles.xml", "<cellXfs count=\"1\">", "<cellXfs>" + one.repeat(63_999))
                .text("xl/styles.xml")
                .getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> StyleGraft.ofPart(full, List.of(INPUT)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("64,000 cell formats")
                .hasMessageContaining("Copy the lists");
    }

    @Test
    void coloursAreWrittenInOneWayOnly() {
        assertThatThrownBy(() -> INPUT.withFill("#fff2cc"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("RRGGBB");
    }
}
