package org.rickyard.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;

/**
 * The sheet that shows which words the columns of words take. Its headings name list and column together, so that it
 * is never taken for a list itself.
 */
final class ChoicesSheet {
    /** The name of the sheet. */
    static final String NAME = "Choices";

    private static final int HEADING_ROW = 3;

    private final Map<String, List<String>> words = new LinkedHashMap<>();
    private final Map<String, String> ranges = new LinkedHashMap<>();

    /** The words of all columns shown. */
    ChoicesSheet(Map<ListSpec, List<TemplateColumn>> shown) {
        shown.forEach((list, columns) -> {
            for (TemplateColumn column : columns) {
                if (!column.spec().choices().isEmpty()) {
                    add(list, column.spec());
                }
            }
        });
    }

    private void add(ListSpec list, ColumnSpec spec) {
        List<String> entries = List.copyOf(spec.choices().keySet());
        String heading = heading(list, spec);
        String letter = CellReference.convertNumToColString(words.size());
        words.put(heading, entries);
        ranges.put(
                heading,
                NAME + "!$" + letter + "$" + (HEADING_ROW + 2) + ":$" + letter + "$"
                        + (HEADING_ROW + 1 + entries.size()));
    }

    /** Where the words of a column stand, as a cell range; empty for a column without words of its own. */
    Optional<String> range(ListSpec list, ColumnSpec spec) {
        return Optional.ofNullable(ranges.get(heading(list, spec)));
    }

    private static String heading(ListSpec list, ColumnSpec spec) {
        return list.name() + ": " + spec.name();
    }

    /** Adds the sheet. */
    void addTo(XSSFWorkbook workbook, Looks looks) {
        XSSFSheet sheet = workbook.createSheet(NAME);
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("Choices: the words a column takes"));
        lines.add(List.of("Many further words are understood as well; any that is not is reported by its cell."));
        lines.add(List.of());
        lines.add(List.copyOf(words.keySet()));
        int most = words.values().stream().mapToInt(List::size).max().orElse(0);
        for (int i = 0; i < most; i++) {
            int place = i;
            lines.add(words.values().stream()
                    .map(entries -> place < entries.size() ? entries.get(place) : "")
                    .toList());
        }
        for (int row = 0; row < lines.size(); row++) {
            write(sheet, row, lines.get(row), style(looks, row));
        }
        int column = 0;
        for (Map.Entry<String, List<String>> entry : words.entrySet()) {
            int longest =
                    entry.getValue().stream().mapToInt(String::length).max().orElse(0);
            sheet.setColumnWidth(column++, Math.max(longest + 4, entry.getKey().length() / 2 + 7) * 256);
        }
        sheet.getRow(0).setHeightInPoints(24);
        sheet.getRow(HEADING_ROW).setHeightInPoints(34);
        sheet.createFreezePane(0, HEADING_ROW + 1);
        PageSetup.apply(sheet, words.size(), HEADING_ROW, HEADING_ROW);
    }

    private static XSSFCellStyle style(Looks looks, int row) {
        return looks.of(
                switch (row) {
                    case 0 -> Looks.Role.TITLE;
                    case 1, 2 -> Looks.Role.NOTE;
                    case HEADING_ROW -> Looks.Role.HEADING;
                    default -> Looks.Role.TEXT;
                });
    }

    private static void write(XSSFSheet sheet, int row, List<String> texts, XSSFCellStyle style) {
        sheet.createRow(row);
        for (int column = 0; column < texts.size(); column++) {
            if (!texts.get(column).isEmpty()) {
                XSSFCell cell = sheet.getRow(row).createCell(column);
                cell.setCellValue(texts.get(column));
                cell.setCellStyle(style);
            }
        }
    }
}
