package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A unit that stands in the number format is read on every run, also once cells of the client's depend on our results. */
class ShownUnitAgainTest {
    @TempDir
    Path folder;

    private static void row(Sheet sheet, Object... cells) {
        Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int i = 0; i < cells.length; i++) {
            Cell cell = row.createCell(i);
            if (cells[i] instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else {
                cell.setCellValue(cells[i].toString());
            }
        }
    }

    private Path farm() throws IOException {
        Path file = folder.resolve("farm.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet fields = book.createSheet("Fields");
            row(fields, "Field", "Crop", "Area (ha)");
            row(fields, "Top", "grass", 6);
            Sheet machines = book.createSheet("Machines");
            row(machines, "Machine", "Type", "Working width", "Speed (km/h)", "Field efficiency (%)");
            row(machines, "Mower", "mower", 10, 10, 80);
            CellStyle feet = book.createCellStyle();
            feet.setDataFormat(book.createDataFormat().getFormat("0.0\" ft\""));
            machines.getRow(1).getCell(2).setCellStyle(feet);
            book.write(out);
        }
        return file;
    }

    private Path withADashboard(Path file) throws IOException {
        Path changed = folder.resolve("dashboard.xlsx");
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(changed)) {
            book.createSheet("Mine").createRow(0).createCell(0).setCellFormula("'Work rates'!A10");
            book.write(out);
        }
        return changed;
    }

    private static double rate(Runs.Run run) {
        return run.results().stream()
                .filter(result -> result.id().equals("work-rate"))
                .findFirst()
                .orElseThrow()
                .number()
                .orElseThrow();
    }

    @Test
    void aDashboardChangesNoUnit() throws IOException {
        Runs.Run first = Runs.run(farm(), folder.resolve("out.xlsx"));
        // 10 ft at 10 km/h and 80 %.
        assertThat(rate(first)).isCloseTo(3.048 * 10 * 0.8 / 10, within(1e-9));
        Runs.Run again = Runs.run(withADashboard(first.file()), folder.resolve("again.xlsx"));
        assertThat(rate(again)).isEqualTo(rate(first));
    }
}
