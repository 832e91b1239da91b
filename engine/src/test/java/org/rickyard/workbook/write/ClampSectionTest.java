package org.rickyard.workbook.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.plan.ChiefTables;
import org.rickyard.plan.WorkPlan;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;

/** The section of a clamp, drawn from the tables. */
class ClampSectionTest {
    @TempDir
    Path folder;

    private static void row(Sheet sheet, int at, Object... cells) {
        Row row = sheet.createRow(at);
        for (int i = 0; i < cells.length; i++) {
            if (cells[i] instanceof Number number) {
                row.createCell(i).setCellValue(number.doubleValue());
            } else {
                row.createCell(i).setCellValue(cells[i].toString());
            }
        }
    }

    /** Many fields and many mowers: so many lines of work that only the chief tables are worked out. */
    private List<String> drawn(int fieldsAndMowers, boolean heights) throws Exception {
        Path file = folder.resolve("farm " + fieldsAndMowers + ".xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet fields = workbook.createSheet("Fields");
            row(fields, 0, "Field", "Area (ha)", "Crop");
            Sheet machines = workbook.createSheet("Machines");
            row(machines, 0, "Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)");
            for (int i = 1; i <= fieldsAndMowers; i++) {
                row(fields, i, "F" + i, 1, "grass");
                row(machines, i, "M" + i, "mower", 3, 10, 80);
            }
            Sheet clamps = workbook.createSheet("Clamps");
            row(clamps, 0, "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target (%)");
            row(clamps, 1, "Big", "walled", 30, 10, 2, 28);
            workbook.write(out);
        }
        try (BookPackage book = BookPackage.open(file)) {
            WorkPlan plan = Recalculation.of(book, RunOptions.usual()).plan();
            assertThat(plan.table("clamp-heights").rows()).isEqualTo(heights ? 1 : 0);
            return ClampSection.of(plan.table("clamps"), plan.table("clamp-heights"), 0);
        }
    }

    private static long count(List<String> lines, char mark) {
        return lines.stream()
                .filter(ClampSection::isDrawn)
                .flatMapToInt(String::chars)
                .filter(c -> c == mark)
                .count();
    }

    @Test
    void wallsSilageTheDayAndTheLimitAreDrawn() throws Exception {
        List<String> lines = drawn(1, true);
        assertThat(count(lines, ClampSection.WALL)).isPositive();
        assertThat(count(lines, ClampSection.SETTLED)).isPositive();
        assertThat(count(lines, ClampSection.ON_DAY)).isPositive();
        assertThat(count(lines, ClampSection.LIMIT)).isBetween(10L, (long) ClampSection.COLUMNS);
    }

    @Test
    void theSectionIsDrawnThoughTheHeightsOfAVeryLargeWorkbookAreLeftOut() throws Exception {
        int side = (int) Math.sqrt(ChiefTables.MOST_LINES) + 1;
        List<String> lines = drawn(side, false);
        assertThat(count(lines, ClampSection.WALL)).isPositive();
        assertThat(count(lines, ClampSection.SETTLED)).isPositive();
        assertThat(count(lines, ClampSection.ON_DAY)).isZero();
        assertThat(count(lines, ClampSection.LIMIT)).isZero();
    }
}
