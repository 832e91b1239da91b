package org.rickyard.templates;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;

/**
 * The empty sheet of one list. Everything to be read by a person, the example included, stands above the heading row,
 * for below it every row is a row of the list.
 */
final class ListSheet {
    private static final int TITLE_ROW = 0;
    private static final int GUIDE_ROW = 1;
    private static final int NEEDED_ROW = 2;
    private static final int HELP_ROW = 3;
    private static final int EXAMPLE_ROW = 4;
    /** The row of the headings, counted from 0. */
    static final int HEADING_ROW = 5;

    private static final int ENTRY_ROWS = 34;
    private static final int LAST_CHECKED_ROW = 2000;
    private static final int NARROWEST = 11;
    private static final int WIDEST = 27;

    private final ListSpec list;
    private final List<TemplateColumn> columns;
    private final ListGuide guide;
    private final Looks looks;
    private final XSSFSheet sheet;

    private ListSheet(XSSFWorkbook workbook, Looks looks, ListSpec list, List<TemplateColumn> columns) {
        this.list = list;
        this.columns = columns;
        this.guide = ListGuide.to(list).orElseThrow();
        this.looks = looks;
        this.sheet = workbook.createSheet(list.name());
    }

    /**
     * Adds the sheet of a list.
     *
     * @param columns the columns shown, in order
     * @param choices where the words of a column stand that are too long for a rule of their own
     */
    static void add(
            XSSFWorkbook workbook, Looks looks, ListSpec list, List<TemplateColumn> columns, ChoicesSheet choices) {
        ListSheet made = new ListSheet(workbook, looks, list, columns);
        made.writeTop();
        made.writeColumns();
        made.acceptDigitsAsWords();
        EntryRules rules = new EntryRules(made.sheet, HEADING_ROW + 1, LAST_CHECKED_ROW);
        for (int i = 0; i < columns.size(); i++) {
            rules.add(columns.get(i), i, choices.range(columns.get(i).spec()));
        }
        made.sheet.createFreezePane(made.frozenColumns(), HEADING_ROW + 1);
        PageSetup.apply(made.sheet, columns.size(), HEADING_ROW, HEADING_ROW);
    }

    private void writeTop() {
        row(TITLE_ROW, 24);
        row(GUIDE_ROW, 16);
        cell(TITLE_ROW, 0, list.name() + ": " + guide.purpose(), looks.of(Looks.Role.TITLE));
        cell(
                GUIDE_ROW,
                0,
                "Type from row " + (HEADING_ROW + 2) + " down. A column that is not needed may stay empty or go. "
                        + "To type in another unit, write that unit in the heading.",
                looks.of(Looks.Role.NOTE));
    }

    private void writeColumns() {
        XSSFRow neededRow = row(NEEDED_ROW, 14);
        row(EXAMPLE_ROW, 28);
        XSSFRow headingRow = row(HEADING_ROW, 18);
        for (int row = HEADING_ROW + 1; row <= HEADING_ROW + ENTRY_ROWS; row++) {
            sheet.createRow(row);
        }
        XSSFRow helpRow = row(HELP_ROW, 12);
        int lines = 1;
        int neededLines = 1;
        int headingLines = 1;
        for (int i = 0; i < columns.size(); i++) {
            TemplateColumn column = columns.get(i);
            String example = "e.g. " + guide.example(column).orElseThrow();
            int width = width(column, example);
            lines = Math.max(lines, lines(column.spec().help(), width));
            neededLines = Math.max(neededLines, lines(need(column.spec()), width));
            headingLines = Math.max(headingLines, lines(column.heading(), width - 2));
            sheet.setColumnWidth(i, width * 256);
            cell(NEEDED_ROW, i, need(column.spec()), looks.of(Looks.Role.HELP));
            cell(HELP_ROW, i, column.spec().help(), looks.of(Looks.Role.HELP));
            cell(EXAMPLE_ROW, i, example, looks.of(Looks.Role.EXAMPLE));
            cell(
                    HEADING_ROW,
                    i,
                    column.heading(),
                    looks.of(column.spec().required() ? Looks.Role.NEEDED : Looks.Role.HEADING));
            XSSFCellStyle input = looks.of(Looks.Role.INPUT, format(column.spec()));
            for (int row = HEADING_ROW + 1; row <= HEADING_ROW + ENTRY_ROWS; row++) {
                sheet.getRow(row).createCell(i).setCellStyle(input);
            }
        }
        neededRow.setHeightInPoints(2 + 12f * neededLines);
        headingRow.setHeightInPoints(4 + 15f * headingLines);
        helpRow.setHeightInPoints(4 + 12f * lines);
    }

    /** No office program shall complain of a field called 7: columns of words hold digits as words. */
    private void acceptDigitsAsWords() {
        int from = -1;
        for (int i = 0; i <= columns.size(); i++) {
            boolean words = i < columns.size() && format(columns.get(i).spec()).equals(Looks.WORDS);
            if (words && from < 0) {
                from = i;
            } else if (!words && from >= 0) {
                sheet.addIgnoredErrors(
                        new CellRangeAddress(HEADING_ROW + 1, LAST_CHECKED_ROW, from, i - 1),
                        IgnoredErrorType.NUMBER_STORED_AS_TEXT);
                from = -1;
            }
        }
    }

    /** "needed", "optional", or what it may be exchanged for. */
    private String need(ColumnSpec spec) {
        if (spec.required()) {
            return "needed";
        }
        return list.oneOf().stream()
                .filter(oneOf -> oneOf.ways().stream().anyMatch(way -> way.contains(spec)))
                .map(oneOf -> "needed: " + oneOf.words())
                .collect(Collectors.collectingAndThen(Collectors.joining("; "), s -> s.isEmpty() ? "optional" : s));
    }

    private static String format(ColumnSpec spec) {
        return switch (spec.type()) {
            case TEXT, CHOICE, NOZZLE -> Looks.WORDS;
            case DATE -> Looks.DAY;
            case NUMBER, DOSE, BATTER, TEXT_OR_NUMBER -> Looks.GENERAL;
        };
    }

    /** The columns that name a row stay in sight, if that leaves room for the others. */
    private int frozenColumns() {
        int last = 0;
        for (int i = 0; i < Math.min(3, columns.size()); i++) {
            if (list.identity().contains(columns.get(i).spec())) {
                last = i + 1;
            }
        }
        return last;
    }

    private static int width(TemplateColumn column, String example) {
        int longestWord = 0;
        for (String word : column.heading().split(" ")) {
            longestWord = Math.max(longestWord, word.length());
        }
        int help = (column.spec().help().length() + 3) / 4;
        int wanted = Math.max(Math.max(longestWord + 3, example.length() + 1), help);
        return Math.min(Math.max(wanted, NARROWEST), WIDEST);
    }

    /** How many lines a text takes when wrapped between words, a little on the safe side. */
    private static int lines(String text, int width) {
        int lines = 1;
        int at = 0;
        for (String word : text.split(" ")) {
            if (at > 0 && at + 1 + word.length() > width) {
                lines++;
                at = 0;
            }
            at += (at > 0 ? 1 : 0) + word.length();
        }
        return lines;
    }

    private XSSFRow row(int index, float points) {
        XSSFRow row = sheet.createRow(index);
        row.setHeightInPoints(points);
        return row;
    }

    private void cell(int row, int column, String text, XSSFCellStyle style) {
        XSSFCell cell = sheet.getRow(row).createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }
}
