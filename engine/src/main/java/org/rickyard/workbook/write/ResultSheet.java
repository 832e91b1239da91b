package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.CellPrinter;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.formula.WordsPrinter;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.CopiedResults;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.workbook.graft.Note;

/** Writes one result table as a sheet. */
final class ResultSheet extends OurSheet {
    private static final int WORDS_HEIGHT = 78;
    private static final int LABEL_HEIGHT = 45;
    private static final int HIGHEST_LABEL = 75;
    private static final int ONE_LINE = 15;
    /** Up to so many rows, words are broken into lines; a longer table is read on a screen, and kept lean. */
    private static final int MOST_WRAPPED = 200;

    private static final int MOST_FROZEN_COLUMNS = 3;
    private static final int WIDEST_NAME = 30;
    /** As many letters of a sentence take the room of so many digits, in which widths are told. */
    private static final int LETTERS = 10;

    private static final int DIGITS = 9;
    /** Room of a letter of the title, in those of the cells. */
    private static final double TITLE_LETTER = 1.35;

    private final ResultTable table;
    private final TableSpec spec;
    private final Looks.Numbers looks;
    private final CellPrinter printer;
    private final String masterCheck;
    private final String masterCheckValue;

    /** Asked for the width of a column, its cells and the height of every row; columns are long to compare. */
    private final Map<TableColumn, Integer> longestNames = new IdentityHashMap<>();

    ResultSheet(ResultTable table, GridNames names, Looks.Numbers looks, String masterCheck, String masterCheckValue) {
        this.table = table;
        this.spec = table.spec();
        this.looks = looks;
        this.printer = new CellPrinter(names);
        this.masterCheck = masterCheck;
        this.masterCheckValue = masterCheckValue;
    }

    /** A note for each column that is calculated: source, validity, decimals shown. */
    List<Note> notes() {
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < spec.columns().size(); i++) {
            TableColumn column = spec.columns().get(i);
            if (column instanceof TableColumn.Calculated calculated) {
                Formula formula = calculated.formula();
                notes.add(new Note(
                        SheetPlaces.LABEL_ROW,
                        i,
                        formula.id() + "\nSource: " + formula.source() + "\nValid: " + formula.validity()));
            } else if (column instanceof TableColumn.Method method && !method.bar()) {
                notes.add(new Note(
                        SheetPlaces.LABEL_ROW,
                        i,
                        method.method().name() + "\nMethod: " + method.method().words() + "\nSource: "
                                + method.method().source()));
            } else if (column instanceof TableColumn.Link link && link.symbol().type() == Symbol.Type.NUMBER) {
                notes.add(new Note(
                        SheetPlaces.LABEL_ROW,
                        i,
                        "Possible: " + link.symbol().possible().words() + "\nUsual: "
                                + link.symbol().usual().words()));
            }
        }
        return notes;
    }

    @Override
    void write(SheetXml sheet) throws IOException {
        List<Integer> widths = widths();
        sheet.begin(widths, SheetPlaces.FIRST_ROW, frozenColumns());
        head(sheet, widths);
        if (table.rows() == 0) {
            sheet.row(SheetPlaces.FIRST_ROW);
            sheet.text(0, looks.of(Looks.TEXT), "No rows: " + table.emptyBecause() + ".");
        } else {
            rows(sheet);
        }
        sheet.end(!notes().isEmpty(), spec.title());
    }

    private List<Integer> widths() {
        List<Integer> widths = new ArrayList<>();
        for (TableColumn column : spec.columns()) {
            widths.add(Math.max(width(column), ofNames(column)));
        }
        return widths;
    }

    /** Wide enough for what stands in it, and for the longest word of its label, which is bold and cannot be broken. */
    private static int width(TableColumn column) {
        int longest = 0;
        for (String word : column.label().split(" ")) {
            longest = Math.max(longest, word.length());
        }
        int unit = column.symbol().unit().symbol().length();
        return Math.max(ofContent(column), Math.max(longest > 7 ? longest + 2 : longest, unit > 13 ? unit : 0));
    }

    /** So that names are not cut off by the cell beside them. */
    private int ofNames(TableColumn column) {
        return Math.min(WIDEST_NAME, longestName(column) + 1);
    }

    private static boolean isBar(TableColumn column) {
        return column instanceof TableColumn.Method method && method.bar();
    }

    private int longestName(TableColumn column) {
        return longestNames.computeIfAbsent(column, this::lookForLongestName);
    }

    private int lookForLongestName(TableColumn column) {
        int longest = 0;
        if (isBar(column) || column instanceof TableColumn.Name || column instanceof TableColumn.Word) {
            Values values = table.of(column.symbol());
            for (int row = 0; row < table.rows() && row < MOST_WRAPPED && values.words(); row++) {
                longest = Math.max(longest, values.word(row).length());
            }
        }
        return longest;
    }

    /** Whether names stand in a column that are longer than it may be wide, and would be cut off by the cell beside them. */
    private boolean breaksNames(TableColumn column) {
        return wraps() && longestName(column) >= WIDEST_NAME;
    }

    private static int ofContent(TableColumn column) {
        Symbol symbol = column.symbol();
        if (column instanceof TableColumn.Sentence) {
            return 50;
        } else if (column instanceof TableColumn.Name || column instanceof TableColumn.Word) {
            return 14;
        } else if (column instanceof TableColumn.Key) {
            return 8;
        } else if (column instanceof TableColumn.Method method && method.bar()) {
            return 11;
        } else if (symbol.type() == Symbol.Type.TEXT) {
            // An answer in words must be readable in its cell.
            return 24;
        } else if (symbol.type() == Symbol.Type.DATE) {
            return 12;
        } else if (symbol.decimals() > 2 || symbol.unit().symbol().length() > 8) {
            return 13;
        }
        return column instanceof TableColumn.Joined ? 10 : 11;
    }

    /** The columns of names that stay in sight. */
    int frozenColumns() {
        int names = 0;
        while (names < spec.columns().size() && tellsRowsApart(spec.columns().get(names))) {
            names++;
        }
        return Math.min(names, MOST_FROZEN_COLUMNS);
    }

    /**
     * The columns of names that stand on each printed page; none where every page has them anyway, since LibreOffice
     * lays out all pages of a sheet with such columns as it opens the workbook.
     */
    int repeatedColumns() {
        return SheetXml.pagesAcross(widths()) == 1 ? 0 : frozenColumns();
    }

    private static boolean tellsRowsApart(TableColumn column) {
        return column instanceof TableColumn.Name || column instanceof TableColumn.Word word && word.identity();
    }

    private void head(SheetXml sheet, List<Integer> widths) throws IOException {
        sheet.row(SheetPlaces.TITLE_ROW, 22);
        sheet.text(0, looks.of(Looks.TITLE), spec.title());
        int check = besideTitle(widths);
        sheet.formula(check, looks.of(Looks.CHECK), CellFormula.of(masterCheck), masterCheckValue);
        List<String> cautions = cautions(widths);
        for (int i = 0; i < cautions.size(); i++) {
            sheet.row(SheetPlaces.CAUTION_ROW + i);
            sheet.text(0, looks.of(Looks.CAUTION), cautions.get(i));
        }
        totals(sheet);
        List<String> labels = spec.columns().stream().map(TableColumn::label).toList();
        sheet.row(SheetPlaces.LABEL_ROW, Math.max(LABEL_HEIGHT, Math.min(HIGHEST_LABEL, sheet.heightFor(labels))));
        for (int i = 0; i < spec.columns().size(); i++) {
            sheet.text(i, looks.of(Looks.LABEL), labels.get(i));
        }
        sheet.row(SheetPlaces.UNIT_ROW);
        for (int i = 0; i < spec.columns().size(); i++) {
            Symbol symbol = spec.columns().get(i).symbol();
            String unit = symbol.unit().symbol();
            sheet.text(i, looks.of(Looks.UNIT), unit.isEmpty() ? "-" : unit);
        }
        List<String> words = spec.columns().stream().map(ResultSheet::words).toList();
        sheet.row(SheetPlaces.WORDS_ROW, Math.min(WORDS_HEIGHT, Math.max(2 * ONE_LINE, sheet.heightFor(words))));
        for (int i = 0; i < spec.columns().size(); i++) {
            sheet.text(i, looks.of(Looks.WORDS), words.get(i));
        }
    }

    /**
     * The lines of caution. Of a sheet two pages wide or more, one that would run on over the edge of the first page is
     * broken before it, so long as there are rows for that: on the next page the repeated columns would stand in it.
     */
    private List<String> cautions(List<Integer> widths) {
        List<String> whole = spec.cautions()
                .subList(0, Math.min(SheetPlaces.CAUTION_ROWS, spec.cautions().size()));
        int pages = SheetXml.pagesAcross(widths);
        if (pages == 1) {
            return whole;
        }
        int across = widths.stream().mapToInt(Integer::intValue).sum();
        int repeated = widths.subList(0, frozenColumns()).stream()
                .mapToInt(Integer::intValue)
                .sum();
        int room = (across + repeated * (pages - 1)) / pages * LETTERS / DIGITS;
        List<String> broken = new ArrayList<>();
        whole.forEach(caution -> broken.addAll(BrokenLines.of(caution, room, "  ")));
        int rows = (spec.totals().isEmpty() ? SheetPlaces.LABEL_ROW : SheetPlaces.TOTAL_ROW) - SheetPlaces.CAUTION_ROW;
        return broken.size() <= rows ? broken : whole;
    }

    /** The first column behind the title, which the cell there would otherwise cut off. */
    private int besideTitle(List<Integer> widths) {
        int check = Math.max(frozenColumns(), spec.columns().size() > 8 ? 8 : 4);
        int room = 0;
        for (int i = 0; i < check && i < widths.size(); i++) {
            room += widths.get(i);
        }
        while (check < widths.size() - 1 && room < spec.title().length() * TITLE_LETTER) {
            room += widths.get(check++);
        }
        return check;
    }

    private static String words(TableColumn column) {
        if (column instanceof TableColumn.Calculated calculated) {
            return calculated.formula().words();
        } else if (column instanceof TableColumn.Joined joined) {
            return WordsPrinter.words(joined.expr());
        } else if (column instanceof TableColumn.Word word) {
            return word.places().isEmpty() ? "" : "read from your text";
        } else if (column instanceof TableColumn.Key) {
            return "joins rows";
        } else if (column instanceof TableColumn.Method method) {
            return method.bar() ? "" : "method: " + method.method().words() + "; run again to renew";
        } else if (column instanceof TableColumn.Sentence) {
            return "live: changes with the cells of its row";
        }
        return CopiedResults.LINK;
    }

    private void totals(SheetXml sheet) throws IOException {
        if (spec.totals().isEmpty()) {
            return;
        }
        sheet.row(SheetPlaces.TOTAL_ROW);
        sheet.text(0, looks.of(Looks.TOTAL), "Total");
        for (TableSpec.TotalName total : ordered()) {
            Total sum = Total.of(table, total.symbol());
            int column = spec.position(total.symbol());
            int look = looks.of(Looks.decimals(Looks.TOTAL, ColumnWriters.decimals(total.symbol())));
            String range = range(total.symbol());
            CellFormula formula = CellFormula.of("IF(COUNT(" + range + ")=0,\"\",SUM(" + range + "))");
            if (sum.given()) {
                sheet.formula(column, look, formula, sum.sum());
            } else {
                sheet.formula(column, look, formula, "");
            }
        }
        sheet.row(SheetPlaces.LEFT_OUT_ROW);
        sheet.text(0, looks.of(Looks.TOTAL), "Rows left out");
        for (TableSpec.TotalName total : ordered()) {
            Total sum = Total.of(table, total);
            sheet.formula(
                    spec.position(total.symbol()),
                    looks.of(Looks.decimals(Looks.TOTAL, 0)),
                    CellFormula.of(
                            total.leftOut() == null
                                    ? table.rows() + "-COUNT(" + range(total.symbol()) + ")"
                                    : "SUM(" + range(total.leftOut()) + ")"),
                    sum.leftOut());
        }
    }

    private List<TableSpec.TotalName> ordered() {
        List<TableSpec.TotalName> ordered = new ArrayList<>(spec.totals());
        ordered.sort((a, b) -> Integer.compare(spec.position(a.symbol()), spec.position(b.symbol())));
        return ordered;
    }

    private String range(Symbol symbol) {
        String letters = CellAddress.letters(spec.position(symbol));
        return letters + "$" + (SheetPlaces.FIRST_ROW + 1) + ":" + letters + "$"
                + (SheetPlaces.FIRST_ROW + Math.max(1, table.rows()));
    }

    private void rows(SheetXml sheet) throws IOException {
        ColumnWriters.ColumnWriter[] writers =
                new ColumnWriters(table, looks, printer, wraps(), this::breaksNames).all();
        sheet.table();
        for (int row = 0; row < table.rows(); row++) {
            int height = wraps() ? sheet.heightFor(words(row)) : 0;
            if (height > ONE_LINE) {
                sheet.row(SheetPlaces.FIRST_ROW + row, height);
            } else {
                sheet.row(SheetPlaces.FIRST_ROW + row);
            }
            for (ColumnWriters.ColumnWriter writer : writers) {
                writer.put(sheet, row);
            }
        }
    }

    private boolean wraps() {
        return table.rows() <= MOST_WRAPPED;
    }

    /** The words of a row that are broken into lines, by column. */
    private List<String> words(int row) {
        List<String> texts = new ArrayList<>();
        for (TableColumn column : spec.columns()) {
            boolean name = column instanceof TableColumn.Name || column instanceof TableColumn.Word || isBar(column);
            boolean wrapped =
                    name ? breaksNames(column) : table.of(column.symbol()).words();
            texts.add(wrapped ? table.of(column.symbol()).word(row) : "");
        }
        return texts;
    }
}
