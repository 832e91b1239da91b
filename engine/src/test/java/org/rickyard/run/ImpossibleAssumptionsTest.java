package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Constant;
import org.rickyard.plan.WorkPlan;
import org.rickyard.quantity.Range;
import org.rickyard.testing.SeasonBook;

/** A constant is not overruled with what it cannot be: neither by a run nor in the grid afterwards. */
class ImpossibleAssumptionsTest {
    private static final double FAR = 1e9;

    private static SeasonBook.Worked with(List<Object[]> assumptions) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Roller mass (t)"),
                        row("Big", "walled", 40, 12, 3, 15))
                .sheet("Assumptions", assumptions.toArray(Object[][]::new))
                .run();
    }

    /** Constants that have bounds, with a value just outside of one. */
    private static double outside(Constant constant) {
        Range possible = constant.possible();
        return possible.hasHigh() ? possible.high() + FAR : possible.lowOpen() ? possible.low() : possible.low() - FAR;
    }

    private static List<Constant> bounded() {
        return WorkPlan.constants().stream()
                .filter(constant -> !constant.possible().equals(Range.ANY))
                .toList();
    }

    private static List<Object[]> rows(boolean impossible) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(row("Item", "Value", "Unit"));
        for (Constant constant : bounded()) {
            rows.add(row(
                    constant.name(),
                    impossible ? outside(constant) : constant.value(),
                    constant.unit().toString()));
        }
        return rows;
    }

    @Test
    @Tag("regression")
    void aRunKeepsTheValueHeldAndSaysWhy() {
        SeasonBook.Worked worked = with(rows(true));
        assertThat(bounded()).hasSizeGreaterThan(100);
        assertThat(worked.plan().constantsInForce().all()).isEmpty();
        for (Constant constant : bounded()) {
            assertThat(worked.messages())
                    .anyMatch(message -> message.startsWith("'" + constant.name() + "' is ")
                            && message.contains(
                                    "possible is " + constant.possible().words()));
        }
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    @Tag("regression")
    void theGridKeepsTheValueHeldAndSaysThatItDoes() throws IOException {
        SeasonBook.Worked worked = with(rows(false));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(worked.file()))) {
            Sheet assumptions = book.getSheet("Assumptions");
            for (int i = 0; i < bounded().size(); i++) {
                assumptions
                        .getRow(i + 1)
                        .getCell(1)
                        .setCellValue(outside(bounded().get(i)));
            }
            FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
            for (Constant constant : bounded()) {
                Row basis = line(book.getSheet("Basis"), constant.name());
                assertThat(evaluator.evaluate(basis.getCell(1)).getNumberValue())
                        .as(constant.name())
                        .isEqualTo(constant.value());
                assertThat(evaluator.evaluate(basis.getCell(5)).getStringValue())
                        .isEqualTo(
                                "not used: possible is " + constant.possible().words());
            }
            int numbers = 0;
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        CellValue value = evaluator.evaluate(cell);
                        CellType type = value == null ? CellType.BLANK : value.getCellType();
                        assertThat(type)
                                .as(sheet.getSheetName() + " " + cell.getAddress())
                                .isNotEqualTo(CellType.ERROR);
                        numbers += type == CellType.NUMERIC ? 1 : 0;
                    }
                }
            }
            assertThat(numbers).isGreaterThan(bounded().size());
        }
    }

    private static Row line(Sheet sheet, String name) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(name)) {
                    return row;
                }
            }
        }
        throw new AssertionError("no row '" + name + "' on " + sheet.getSheetName());
    }
}
