package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.formula.CellPrinter;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.read.AsRead;

/**
 * As read: row by row of the client's lists the words that the run read, beside those that stand there now. The cells of
 * ours follow numbers by themselves; where a word differs, what was made of it (rows, joins, choices) is of the run.
 */
final class AsReadSheet extends OurSheet {
    private static final int COUNT_ROW = 4;
    private static final int LABEL_ROW = 5;
    static final String TITLE = "As read: the words of your lists when the workbook was run";

    static final int FIRST_ROW = 6;
    private static final int READ = 2;
    private static final int NOW = 3;
    private static final int VERDICT = 4;
    private static final String FILLED = " filled";
    private static final String SAME = "as read";
    private static final String CHANGED = "changed: run again";

    private final AsRead lists;
    private final Looks.Numbers looks;
    private final String masterCheck;
    private final String masterCheckValue;
    private final int most;

    AsReadSheet(AsRead lists, Looks.Numbers looks, String masterCheck, String masterCheckValue) {
        this(lists, looks, masterCheck, masterCheckValue, CellAddress.ROWS - FIRST_ROW);
    }

    /** A sheet of no more than so many rows. */
    AsReadSheet(AsRead lists, Looks.Numbers looks, String masterCheck, String masterCheckValue, int most) {
        this.lists = lists;
        this.looks = looks;
        this.masterCheck = masterCheck;
        this.masterCheckValue = masterCheckValue;
        this.most = most;
    }

    /** The cell that counts the rows that have changed, for other sheets. */
    static String count(String name) {
        return new CellAddress(name, COUNT_ROW, VERDICT).absolute();
    }

    @Override
    void write(SheetXml sheet) throws IOException {
        List<AsRead.Filled> filled = lists.filled();
        int rows = filled.size() + lists.count();
        sheet.begin(List.of(14, 20, 60, 60, 20), FIRST_ROW, 0);
        sheet.row(0, 22);
        sheet.text(0, looks.of(Looks.TITLE), TITLE);
        sheet.row(1);
        sheet.formula(0, looks.of(Looks.CHECK), CellFormula.of(masterCheck), masterCheckValue);
        sheet.row(2);
        sheet.text(
                0,
                looks.of(Looks.TEXT),
                "Change a number and the results follow. Headers, names, words and units are read by a run only, and so"
                        + " is whether some numbers are typed at all (# below).");
        sheet.row(3);
        sheet.text(
                0,
                looks.of(Looks.TEXT),
                "Where a row says changed, what rests on its words is still of the run: run again. What was added"
                        + " shows in the row below a list, or by the cells filled in its chief column."
                        + (rows > most ? " Your lists have more rows than fit here: the last are not looked at." : ""));
        sheet.row(COUNT_ROW);
        sheet.text(READ, looks.of(Looks.NAME), "Rows changed since the run");
        sheet.formula(
                VERDICT,
                looks.of(Looks.decimals(Looks.RESULT, 0)),
                CellFormula.of("COUNTIFS(" + letters(VERDICT) + (FIRST_ROW + 1) + ":" + letters(VERDICT)
                        + (FIRST_ROW + Math.max(1, Math.min(rows, most))) + ",\"" + CHANGED + "\")"),
                0);
        sheet.row(LABEL_ROW);
        List<String> labels = List.of("List", "Row", "As read", "Now", "Verdict");
        for (int i = 0; i < labels.size(); i++) {
            sheet.text(i, looks.of(Looks.LABEL), labels.get(i));
        }
        sheet.table();
        Rows rowByRow = new Rows(sheet);
        for (AsRead.Filled column : filled) {
            rowByRow.take(column);
        }
        lists.forEach(rowByRow);
        sheet.end();
    }

    /** The rows of the table, written one after another. */
    private final class Rows implements AsRead.Taker {
        private final SheetXml sheet;
        private final int text = looks.of(Looks.NAME);
        private final int link = looks.of(Looks.LINK);
        private final int check = looks.of(Looks.CHECK);
        private final CellFormula verdict;
        private final Map<String, Map<List<AsRead.Part>, CellFormula>> formulas = new HashMap<>();
        /** Most rows have their cells from the row before; to look those up would take longer than to write them. */
        private List<AsRead.Part> parts;

        private String place;
        private CellFormula joined;
        private int next = FIRST_ROW;

        Rows(SheetXml sheet) {
            this.sheet = sheet;
            String now = letters(NOW) + CellPrinter.ROW;
            verdict = CellFormula.of("IF(ISTEXT(" + now + "),IF(" + now + "=" + letters(READ) + CellPrinter.ROW
                    + "&\"\",\"" + SAME + "\",\"" + CHANGED + "\"),\"" + CHANGED + "\")");
        }

        void take(AsRead.Filled column) throws IOException {
            String read = column.count() + FILLED;
            begin(column.list(), column.first(), read);
            sheet.formula(NOW, text, CellFormula.of(counted(column)), read);
            sheet.formula(VERDICT, check, verdict, SAME);
        }

        @Override
        public void take(AsRead.Line line) throws IOException {
            if (next >= FIRST_ROW + most) {
                return;
            }
            if (parts != line.parts() || !line.first().sheet().equals(place)) {
                parts = line.parts();
                place = line.first().sheet();
                joined = formulas.computeIfAbsent(place, any -> new HashMap<>())
                        .computeIfAbsent(parts, cells -> CellFormula.of(joined(place, cells)));
            }
            begin(line.list(), line.first(), line.text());
            sheet.formulaOf(NOW, text, joined, line.first().row() + 1, line.text());
            sheet.formula(VERDICT, check, verdict, SAME);
        }

        private void begin(String list, CellAddress cell, String read) throws IOException {
            sheet.row(next++);
            sheet.text(0, text, list);
            sheet.linkTo(1, link, cell);
            sheet.text(READ, text, read);
        }
    }

    /** The cell beyond the last is reached for and taken off again, so that one put in right before it lies within. */
    private static String counted(AsRead.Filled cells) {
        boolean across = cells.first().row() == cells.last().row();
        CellAddress last = cells.last();
        CellAddress beyond = new CellAddress(
                last.sheet(),
                across ? last.row() : Math.min(last.row() + 1, CellAddress.ROWS - 1),
                across ? Math.min(last.column() + 1, CellAddress.COLUMNS - 1) : last.column());
        String all = cells.first().absolute() + ":$" + letters(beyond.column()) + "$" + (beyond.row() + 1);
        return "(" + filled(all) + (beyond.equals(last) ? "" : "-" + filled(beyond.absolute())) + ")&\"" + FILLED
                + "\"";
    }

    /** Not by a pattern for words: LibreOffice finds numbers by it too. */
    private static String filled(String range) {
        return "COUNTA(" + range + ")";
    }

    private static String joined(String place, List<AsRead.Part> parts) {
        StringBuilder formula = new StringBuilder();
        String sheet = CellAddress.quoted(place) + "!$";
        for (AsRead.Part part : parts) {
            String cell = sheet + letters(part.column()) + "$" + CellPrinter.ROW;
            formula.append(formula.isEmpty() ? "" : "&\"" + AsRead.BETWEEN + "\"&");
            formula.append(
                    switch (part.how()) {
                        case WORDS -> cell + (parts.size() == 1 ? "&\"\"" : "");
                        case ANY_NUMBER -> "IF(ISNUMBER(" + cell + "),\"" + AsRead.NUMBER + "\"," + cell + "&\"\")";
                        case THOUSANDTHS ->
                            "IF(ISNUMBER(" + cell + "),ROUND(" + cell + "*1000,0)&\"\"," + cell + "&\"\")";
                    });
        }
        return formula.toString();
    }

    private static String letters(int column) {
        return CellAddress.letters(column);
    }
}
