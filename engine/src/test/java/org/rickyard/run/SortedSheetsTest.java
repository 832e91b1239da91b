package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.testing.CalculatedBook;

/** After a result sheet was sorted, Summary, the cards and Trail give the figures they gave, or say that they withhold them. */
class SortedSheetsTest {
    @TempDir
    static Path folder;

    private static Runs.Run run;

    @BeforeAll
    static void write() {
        run = Runs.run(FullFarm.write(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
    }

    @Test
    void noPageShowsAnotherRowsFigure() throws IOException {
        try (ClientBook book = ClientBook.open(run.file())) {
            Map<CellAddress, Object> before = figures(book.poi());
            for (ResultTable table : run.plan().tables()) {
                Sheet sheet = book.poi().getSheet(run.places().sheet(table.spec()));
                if (sheet != null && table.rows() > 1) {
                    SortedSheet.turnRound(sheet);
                }
            }
            Map<CellAddress, Object> after = figures(book.poi());
            Map<CellAddress, Object> others = new LinkedHashMap<>();
            after.forEach((cell, value) -> {
                String words = String.valueOf(value);
                boolean withheld = words.equals("run again") || words.contains("sorted") || words.isEmpty();
                if (!withheld && !value.equals(before.get(cell))) {
                    others.put(cell, before.get(cell) + " is now " + value);
                }
            });
            assertThat(others).isEmpty();
            assertThat(after.values().stream().filter("run again"::equals)).hasSizeGreaterThan(100);
        }
    }

    /** What the formulas of Summary, the cards and Trail give. */
    private static Map<CellAddress, Object> figures(XSSFWorkbook workbook) {
        CalculatedBook calculated = new CalculatedBook(workbook);
        Map<CellAddress, Object> figures = new LinkedHashMap<>();
        for (String name : new String[] {"Summary", "Spray cards", "Clamp cards", "Trail"}) {
            int sheet = workbook.getSheetIndex(name);
            for (Row row : workbook.getSheet(name)) {
                for (Cell cell : row) {
                    if (row.getRowNum() > 1 && cell.getCellType() == CellType.FORMULA && !leads(cell)) {
                        CellAddress at = new CellAddress(name, row.getRowNum(), cell.getColumnIndex());
                        figures.put(at, plain(calculated.value(calculated.cell(sheet, at.row(), at.column()))));
                    }
                }
            }
        }
        return figures;
    }

    private static boolean leads(Cell cell) {
        return cell.getCellFormula().startsWith("HYPERLINK");
    }

    private static Object plain(ValueEval value) {
        return value instanceof NumberEval number
                ? (Object) Math.round(number.getNumberValue() * 1e6)
                : value instanceof StringEval text ? text.getStringValue() : value.toString();
    }
}
