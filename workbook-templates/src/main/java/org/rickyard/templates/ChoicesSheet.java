package org.rickyard.templates;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;

/**
 * The sheet that shows which words the columns of words take. They stand in one column, for side by side some of them
 * ("rake", "ha", "dry matter") would read like the headings of a list.
 */
final class ChoicesSheet {
    /** The name of the sheet. */
    static final String NAME = "Choices";

    private static final int FIRST_ROW = 3;

    /** Words to the columns that take them. */
    private final Map<List<String>, List<String>> places = new LinkedHashMap<>();

    /** The words of all columns shown. */
    ChoicesSheet(Map<ListSpec, List<TemplateColumn>> shown) {
        shown.forEach((list, columns) -> {
            for (TemplateColumn column : columns) {
                List<String> words = words(column.spec());
                if (!words.isEmpty()) {
                    places.computeIfAbsent(words, absent -> new ArrayList<>())
                            .add(column.spec().name() + " in " + list.name());
                }
            }
        });
    }

    private static List<String> words(ColumnSpec spec) {
        return List.copyOf(spec.choices().keySet());
    }

    /** Where the words of a column stand, as a cell range; empty for a column without words of its own. */
    Optional<String> range(ColumnSpec spec) {
        int row = FIRST_ROW;
        for (List<String> words : places.keySet()) {
            int first = row + 1;
            int last = row + words.size();
            if (words.equals(words(spec))) {
                return Optional.of(NAME + "!$A$" + (first + 1) + ":$A$" + (last + 1));
            }
            row = last + 2;
        }
        return Optional.empty();
    }

    /** Adds the sheet. */
    void addTo(XSSFWorkbook workbook, Looks looks) {
        XSSFSheet sheet = workbook.createSheet(NAME);
        sheet.setColumnWidth(0, 70 * 256);
        line(sheet, 0, "Choices: the words a column takes", looks, Looks.Role.TITLE)
                .setHeightInPoints(26);
        line(
                sheet,
                1,
                "Further words are understood as well; one that is not is reported by its cell.",
                looks,
                Looks.Role.NOTE);
        int row = FIRST_ROW;
        for (Map.Entry<List<String>, List<String>> entry : places.entrySet()) {
            line(sheet, row++, "Words for " + String.join(", ", entry.getValue()), looks, Looks.Role.HEADING);
            for (String word : entry.getKey()) {
                line(sheet, row++, word, looks, Looks.Role.TEXT);
            }
            row++;
        }
        PageSetup.apply(sheet, 1, 0, 0);
    }

    private static XSSFRow line(XSSFSheet sheet, int index, String text, Looks looks, Looks.Role role) {
        XSSFRow row = sheet.createRow(index);
        XSSFCell cell = row.createCell(0);
        cell.setCellValue(text);
        cell.setCellStyle(looks.of(role));
        return row;
    }
}
