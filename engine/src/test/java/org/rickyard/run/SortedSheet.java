package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.SheetPlaces;

/** A result sheet whose rows a client has sorted. */
final class SortedSheet {
    private SortedSheet() {}

    /** Its rows in the opposite order, as office programs sort: references to a formula's own row go with it. */
    static void turnRound(Sheet sheet) {
        int first = SheetPlaces.FIRST_ROW;
        int last = sheet.getLastRowNum();
        assertThat(last).isGreaterThan(first);
        Map<CellAddress, Object> turned = new HashMap<>();
        for (int row = first; row <= last; row++) {
            int to = first + last - row;
            for (Cell cell : sheet.getRow(row)) {
                CellAddress place = new CellAddress(sheet.getSheetName(), to, cell.getColumnIndex());
                if (cell.getCellType() == CellType.FORMULA) {
                    String own = "(?<![!$A-Z])(\\$?[A-Z]{1,3})" + (row + 1) + "(?![0-9(])";
                    turned.put(place, "=" + cell.getCellFormula().replaceAll(own, "$1" + (to + 1)));
                } else {
                    turned.put(place, content(cell));
                }
            }
        }
        turned.forEach((place, content) -> {
            Row row = sheet.getRow(place.row());
            if (content instanceof String text && text.startsWith("=")) {
                (row.getCell(place.column()) == null ? row.createCell(place.column()) : row.getCell(place.column()))
                        .setCellFormula(text.substring(1));
            } else {
                if (row.getCell(place.column()) != null) {
                    row.removeCell(row.getCell(place.column()));
                }
                put(row, place.column(), content);
            }
        });
    }

    private static Object content(Cell cell) {
        return switch (cell.getCellType()) {
            case BLANK -> null;
            case NUMERIC -> cell.getNumericCellValue();
            default -> cell.getStringCellValue();
        };
    }

    private static void put(Row row, int column, Object value) {
        if (value instanceof Double number) {
            row.createCell(column).setCellValue(number);
        } else if (value instanceof String text) {
            row.createCell(column).setCellValue(text);
        }
    }
}
