package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.open.Namespaces;

/** Writes the two parts that notes consist of: their texts, and the drawing of their boxes. */
final class NotesWriter {
    private static final String AUTHOR = "Rickyard";
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    /** Letters to a line of a box that spans three columns of usual width. */
    private static final int LETTERS_PER_LINE = 34;

    private static final int FEWEST_ROWS = 2;
    private static final int MOST_ROWS = 28;
    private static final int COLUMNS = 3;

    private final List<Note> notes;

    NotesWriter(List<Note> notes) {
        this.notes = notes.stream()
                .sorted(Comparator.comparingInt(Note::row).thenComparingInt(Note::column))
                .toList();
    }

    void comments(OutputStream out) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        text.append(XML).append("<comments xmlns=\"").append(Namespaces.MAIN).append("\"><authors><author>");
        text.append(AUTHOR).append("</author></authors><commentList>");
        for (Note note : notes) {
            text.append("<comment ref=\"").append(reference(note)).append("\" authorId=\"0\"><text><t");
            text.append(" xml:space=\"preserve\">").append(CellText.escaped(note.text()));
            text.append("</t></text></comment>");
        }
        text.append("</commentList></comments>").flush();
    }

    private static String reference(Note note) {
        StringBuilder letters = new StringBuilder();
        for (int rest = note.column() + 1; rest > 0; rest = (rest - 1) / 26) {
            letters.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return letters.append(note.row() + 1).toString();
    }

    /** @param blocks blocks of shape numbers, enough for the notes */
    void drawing(OutputStream out, List<Integer> blocks) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        text.append("<xml xmlns:v=\"urn:schemas-microsoft-com:vml\"")
                .append(" xmlns:o=\"urn:schemas-microsoft-com:office:office\"")
                .append(" xmlns:x=\"urn:schemas-microsoft-com:office:excel\">")
                .append("<o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" data=\"")
                .append(String.join(",", blocks.stream().map(String::valueOf).toList()))
                .append("\"/></o:shapelayout><v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\"")
                .append(" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/>")
                .append("<v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>");
        for (int index = 0; index < notes.size(); index++) {
            int block = blocks.get(index / NoteBlocks.SHAPES);
            int shape = block * (NoteBlocks.SHAPES + 1) + 1 + index % NoteBlocks.SHAPES;
            box(text, notes.get(index), shape, index + 1);
        }
        text.append("</xml>").flush();
    }

    private static void box(Writer text, Note note, int shape, int depth) throws IOException {
        int rows = Math.max(FEWEST_ROWS, Math.min(MOST_ROWS, lines(note.text()) + 1));
        int left = Math.min(note.column() + 1, CellAddress.COLUMNS - 1 - COLUMNS);
        int top = Math.min(Math.max(0, note.row() - 1), CellAddress.ROWS - 1 - rows);
        text.append("<v:shape id=\"_x0000_s" + shape + "\" type=\"#_x0000_t202\" style=\"position:absolute;")
                .append("margin-left:60pt;margin-top:2pt;width:150pt;height:" + rows * 15 + "pt;z-index:" + depth)
                .append(";visibility:hidden\" fillcolor=\"#ffffe1\" o:insetmode=\"auto\"><v:fill color2=\"#ffffe1\"/>")
                .append("<v:shadow color=\"black\" obscured=\"t\"/><v:path o:connecttype=\"none\"/>")
                .append("<v:textbox style=\"mso-direction-alt:auto\"><div style=\"text-align:left\"></div></v:textbox>")
                .append("<x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>")
                .append(left + ", 15, " + top + ", 2, " + (left + COLUMNS) + ", 15, " + (top + rows) + ", 4")
                .append("</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>" + note.row() + "</x:Row><x:Column>")
                .append(note.column() + "</x:Column></x:ClientData></v:shape>");
    }

    private static int lines(String text) {
        int lines = 0;
        for (String line : text.split("\n", -1)) {
            lines += 1 + Math.max(0, line.length() - 1) / LETTERS_PER_LINE;
        }
        return lines;
    }
}
