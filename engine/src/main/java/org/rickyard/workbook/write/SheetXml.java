package org.rickyard.workbook.write;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.graft.CellText;
import org.rickyard.workbook.graft.NewSheet;

/** Writes a worksheet part from top to bottom. Rows and cells are given in ascending order. */
final class SheetXml {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n"
            + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\""
            + " xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">"
            + "<sheetPr><tabColor rgb=\"FF3D5A45\"/>";
    private static final String MARGINS =
            "</sheetData><pageMargins left=\"0.4\" right=\"0.4\" top=\"0.6\" bottom=\"0.6\""
                    + " header=\"0.3\" footer=\"0.3\"/>";
    private static final String PAGE = "&amp;L&amp;F, &amp;A&amp;RPage &amp;P of &amp;N";
    private static final String FOOTER = "<headerFooter><oddFooter>" + PAGE + "</oddFooter></headerFooter>";
    /**
     * Printed over the pages behind the first, where the cells beside the repeated columns cut the head's lines off;
     * LibreOffice prints it over the first of a sheet too, unless that is the first of the workbook.
     */
    private static final String HEAD_IS_WHOLE = " (lines cut off below stand whole on the sheet's first page)";

    /** Upright cards of about 100 characters across. */
    private static final int CARD_SCALE = 75;
    /** Smaller letters than these nobody reads in a cab; what is longer yet takes two pages. */
    private static final int SMALLEST_CARD_SCALE = 50;
    /** Between the margins of an upright A4 page, in points, with a little to spare for the printer. */
    private static final int CARD_ROOM = 740;
    /**
     * And across, in characters: of wide letters (a digit of seven points at eleven), which a machine takes that has not
     * the workbook's own. What is wider prints a page with nothing on it behind each card.
     */
    private static final int CARD_WIDTH = 76;

    static final int LINE_HEIGHT = 15;
    private static final int HIGHEST_ROW = 405;
    private static final int PAGE_WIDTH = 280;
    private static final int LONGEST_TEXT = 32_767;
    private static final int MOST_COLUMNS = 400;

    private static final byte[] END_FORMULA = bytes(CellTemplate.END_FORMULA);
    private static final byte[] END_VALUE = bytes("</v></c>");
    private static final byte[] END_INLINE = bytes("</t></is></c>");
    private static final byte[] ROW = bytes("<row r=\"");
    private static final byte[] END_ROW_TAG = bytes("\">");
    private static final byte[] END_ROW = bytes("</row>");

    private final ByteText out;
    private final Meaning meaning;
    /** By kind and column, the templates in use. */
    private final CellTemplate[][] templates = new CellTemplate[CellTemplate.Kind.values().length][MOST_COLUMNS];

    /** By column, the word written last, and its bytes once it is repeated, as in most columns. */
    private final String[] lastWords = new String[MOST_COLUMNS];

    private final byte[][] lastBytes = new byte[MOST_COLUMNS][];

    private final LinkTemplates links = new LinkTemplates();
    private List<Integer> widths = List.of();
    private PrintedExtent extent = new PrintedExtent(List.of(), 0);
    private int row = -1;
    /** Whether nothing in the row is broken into lines. */
    private boolean oneLine;
    /** Whether words run on over empty cells; in a table each but the last has its neighbour. */
    private boolean runsOn = true;

    /**
     * A writer of one part.
     *
     * @param meaning told what each cell means, or null
     */
    SheetXml(OutputStream stream, Meaning meaning) {
        this.out = new ByteText(stream);
        this.meaning = meaning;
    }

    /** One that only tells what each cell means. */
    SheetXml(Meaning meaning) {
        this(OutputStream.nullOutputStream(), meaning);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Begins the part: widths of the columns, and what stays in sight when the rest is scrolled. */
    void begin(List<Integer> widths, int frozenRows, int frozenColumns) throws IOException {
        begin(widths, frozenRows, frozenColumns, true);
    }

    /** The same; a sheet that is not fitted to its pages is broken where it says, which one fitted need not be. */
    void begin(List<Integer> widths, int frozenRows, int frozenColumns, boolean fitted) throws IOException {
        this.widths = List.copyOf(widths);
        // What is not fitted to its page must keep to it.
        this.extent = new PrintedExtent(widths, fitted ? PAGE_WIDTH : 0);
        out.put(HEAD).put(fitted ? "<pageSetUpPr fitToPage=\"1\"/></sheetPr>" : "</sheetPr>");
        out.put("<sheetViews><sheetView workbookViewId=\"0\" showGridLines=\"0\">");
        if (frozenRows > 0 || frozenColumns > 0) {
            String pane = frozenColumns == 0 ? "bottomLeft" : frozenRows == 0 ? "topRight" : "bottomRight";
            out.put("<pane" + (frozenColumns == 0 ? "" : " xSplit=\"" + frozenColumns + "\"")
                    + (frozenRows == 0 ? "" : " ySplit=\"" + frozenRows + "\"") + " topLeftCell=\""
                    + CellAddress.letters(frozenColumns) + (frozenRows + 1) + "\" activePane=\"" + pane
                    + "\" state=\"frozen\"/><selection pane=\"" + pane + "\"/>");
        }
        out.put("</sheetView></sheetViews><sheetFormatPr defaultRowHeight=\"15\"/><cols>");
        for (int i = 0; i < widths.size(); i++) {
            out.put("<col min=\"" + (i + 1) + "\" max=\"" + (i + 1) + "\" width=\"" + widths.get(i)
                    + "\" customWidth=\"1\"/>");
        }
        out.put("</cols><sheetData>");
    }

    /** Begins a row of ordinary height. */
    void row(int index) throws IOException {
        endRow();
        row = index;
        oneLine = true;
        extent.row(index);
        out.put(ROW).put(index + 1).put(END_ROW_TAG);
    }

    /** Begins a row of a height in points. */
    void row(int index, int height) throws IOException {
        endRow();
        row = index;
        oneLine = height < 2 * LINE_HEIGHT;
        extent.row(index);
        out.put(ROW).put(index + 1).put("\" ht=\"" + height + "\" customHeight=\"1\">");
    }

    /**
     * The height that texts need when each is broken into lines in its own column; programs that open the file do not
     * all work it out for themselves.
     *
     * @param texts by column; null or empty where there is none
     */
    int heightFor(List<String> texts) {
        int most = 1;
        for (int i = 0; i < texts.size() && i < widths.size(); i++) {
            String text = texts.get(i);
            if (text != null && !text.isEmpty()) {
                most = Math.max(most, linesOf(text, widths.get(i)));
            }
        }
        return Math.min(HIGHEST_ROW, most * LINE_HEIGHT);
    }

    /** Whether a row can be as high as a text needs that is broken into lines in a column. */
    static boolean holds(String text, int width) {
        return linesOf(text, width) * LINE_HEIGHT <= HIGHEST_ROW;
    }

    private static int linesOf(String text, int width) {
        return text.lines().mapToInt(line -> linesIn(line, width)).sum();
    }

    private static int linesIn(String text, int width) {
        int room = Math.max(4, width - 2);
        return (text.length() + room - 1) / room;
    }

    /** A sheet too wide for one page in readable letters is fitted to two or more, with its names on each. */
    static int pagesAcross(List<Integer> widths) {
        int total = widths.stream().mapToInt(Integer::intValue).sum();
        return Math.max(1, (total + PAGE_WIDTH - 1) / PAGE_WIDTH);
    }

    /** How far it reaches so far. */
    PrintedExtent extent() {
        return extent;
    }

    private void endRow() throws IOException {
        if (row >= 0) {
            out.put(END_ROW);
        }
    }

    /** Begins the rows of a table, in which every cell has one on its right. */
    void table() {
        runsOn = false;
    }

    /** Writes a cell without a formula up to its value. */
    private void open(CellTemplate.Kind kind, int column, int style) throws IOException {
        extent.cell(column);
        CellTemplate known = templates[kind.ordinal()][column];
        CellTemplate template = known == null ? null : known.of(kind, column, style);
        if (template == null) {
            // The looks that a column has are few.
            template = new CellTemplate(kind, column, style, known);
            templates[kind.ordinal()][column] = template;
        }
        out.put(template.cell(row + 1, 0));
    }

    /** Writes a cell with a formula up to its value. */
    private void open(CellTemplate.Kind kind, int column, int style, CellFormula formula, int number)
            throws IOException {
        if (formula.isWhole()) {
            open(kind, column, style);
            out.put(formula.whole()).put(END_FORMULA);
        } else {
            extent.cell(column);
            out.put(formula.template(kind, column, style).cell(row + 1, number));
        }
    }

    /** A cell with nothing in it but its look. */
    void empty(int column, int style) throws IOException {
        open(CellTemplate.Kind.EMPTY, column, style);
    }

    /** A typed number. */
    void number(int column, int style, double value) throws IOException {
        if (meaning != null) {
            meaning.number(row, column, value);
        }
        open(CellTemplate.Kind.NUMBER, column, style);
        out.put(value).put(END_VALUE);
    }

    /** A text, never read as a formula. */
    void text(int column, int style, String text) throws IOException {
        if (text.isEmpty()) {
            empty(column, style);
            return;
        }
        String shown = text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) : text;
        if (meaning != null) {
            meaning.text(row, column, shown);
        }
        if (oneLine && (runsOn || column == widths.size() - 1)) {
            extent.text(column, shown.length());
        }
        open(CellTemplate.Kind.TEXT, column, style);
        word(column, shown);
        out.put(END_INLINE);
    }

    /** A formula with a number as its present value. */
    void formula(int column, int style, CellFormula formula, double value) throws IOException {
        formula(column, style, formula, row + 1, value);
    }

    /** A formula with a text as its present value. */
    void formula(int column, int style, CellFormula formula, String value) throws IOException {
        formula(column, style, formula, row + 1, value);
    }

    /** A formula about a row of the client's, by its number, with a text as its present value. */
    void formulaOf(int column, int style, CellFormula formula, int number, String value) throws IOException {
        formula(column, style, formula, number, value);
    }

    /** A link with a number as its present value. */
    void link(int column, int style, String formula, CellAddress cell, double value) throws IOException {
        formula(column, style, links.of(column, formula, cell), cell.row() + 1, value);
    }

    /** A link with a text as its present value. */
    void link(int column, int style, String formula, CellAddress cell, String value) throws IOException {
        formula(column, style, links.of(column, formula, cell), cell.row() + 1, value);
    }

    /** A formula that leads to a cell when clicked. */
    void linkTo(int column, int style, CellAddress cell) throws IOException {
        formula(column, style, links.of(column, Hyperlink.TO_PLACE, cell), cell.row() + 1, cell.toString());
    }

    private void formula(int column, int style, CellFormula formula, int number, double value) throws IOException {
        if (meaning != null) {
            meaning.formula(row, column, formula, number);
        }
        open(CellTemplate.Kind.NUMBER_FORMULA, column, style, formula, number);
        out.put(value).put(END_VALUE);
    }

    private void formula(int column, int style, CellFormula formula, int number, String value) throws IOException {
        if (meaning != null) {
            meaning.formula(row, column, formula, number);
        }
        if (oneLine && runsOn) {
            extent.text(column, value.length());
        }
        open(CellTemplate.Kind.WORD_FORMULA, column, style, formula, number);
        word(column, value);
        out.put(END_VALUE);
    }

    private void word(int column, String text) throws IOException {
        // Not by its letters: names differ in the last of them.
        if (text != lastWords[column]) {
            lastWords[column] = text;
            lastBytes[column] = null;
            out.putEscaped(text);
            return;
        }
        if (lastBytes[column] == null) {
            lastBytes[column] = bytes(CellText.escaped(text));
        }
        out.put(lastBytes[column]);
    }

    /** Ends the part. */
    void end() throws IOException {
        end(false, "");
    }

    /** Ends the part; with notes it refers to their drawing. A title goes over further pages of a sheet several wide. */
    void end(boolean notes, String title) throws IOException {
        endRow();
        out.put(MARGINS);
        out.put("<pageSetup paperSize=\"9\" orientation=\"landscape\" fitToWidth=\"" + pagesAcross(widths)
                + "\" fitToHeight=\"0\"/>");
        if (title.isEmpty() || pagesAcross(widths) == 1) {
            out.put(FOOTER);
        } else {
            out.put("<headerFooter differentFirst=\"1\"><oddHeader>&amp;L");
            out.putEscaped(title.replace("&", "&&") + HEAD_IS_WHOLE);
            out.put("</oddHeader><oddFooter>" + PAGE + "</oddFooter><firstFooter>" + PAGE
                    + "</firstFooter></headerFooter>");
        }
        if (notes) {
            out.put("<legacyDrawing r:id=\"" + NewSheet.NOTES_RELATIONSHIP + "\"/>");
        }
        out.put("</worksheet>");
        out.flush();
    }

    /** Cards that hold much are printed smaller, all alike, so that none breaks over two pages. */
    private static int cardScale(int highest, int width) {
        int fitting = Math.min(100 * CARD_ROOM / Math.max(1, highest), 100 * CARD_WIDTH / Math.max(1, width));
        return Math.max(SMALLEST_CARD_SCALE, Math.min(CARD_SCALE, fitting));
    }

    /**
     * Ends the part as cards for print, upright; each of these rows begins a page.
     *
     * @param highest of the cards in points, with what is repeated over it
     * @param width of all columns in characters
     */
    void endCards(List<Integer> firstRows, int highest, int width) throws IOException {
        endRow();
        out.put(MARGINS);
        out.put("<pageSetup paperSize=\"9\" scale=\"" + cardScale(highest, width) + "\" orientation=\"portrait\"/>");
        out.put(FOOTER);
        if (!firstRows.isEmpty()) {
            int breaks = firstRows.size();
            out.put("<rowBreaks count=\"" + breaks + "\" manualBreakCount=\"" + breaks + "\">");
            for (int firstRow : firstRows) {
                out.put("<brk id=\"" + firstRow + "\" max=\"16383\" man=\"1\"/>");
            }
            out.put("</rowBreaks>");
        }
        out.put("</worksheet>");
        out.flush();
    }
}
