package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.FarmBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.FarmBook;

/** Cautions are of a row: Summary says them with the first of its answers, and refers the others to it. */
class SummaryCautionsTest {
    private static final String HERE = "some of the listed work has no labour";
    private static final String ABOVE = "ok, with the cautions above";
    private static final int VALUE = 2;
    private static final int STATUS = 5;

    @TempDir
    Path folder;

    private Runs.Run farm(Object fuel) throws IOException {
        Path file = FarmBook.empty()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Long Acre", "grass", 4.2),
                        row("Top", "grass", 6.1))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Fuel (L/h)"),
                        row("Mower", "mower", 3, 12, 80, fuel),
                        row("Rake", "rake", 7, null, 80, fuel))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("Cut", "grass", "mow", "Mower"),
                        row("Rake up", "grass", "rake", "Rake"))
                .write(folder.resolve("in.xlsx"));
        return Runs.run(file, folder.resolve("out.xlsx"));
    }

    /** Of each answer of the holding's costs what stands behind it. */
    private static Map<String, Row> answers(Sheet summary) {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Row row : summary) {
            String result = row.getCell(1) == null ? "" : row.getCell(1).toString();
            if (result.startsWith("holding ") && !result.equals("holding hours")) {
                rows.put(result, row);
            }
        }
        return rows;
    }

    @Test
    void areSaidOnceARow() throws Exception {
        Runs.Run run = farm(9);
        try (ClientBook book = ClientBook.open(run.file())) {
            Map<String, Row> rows = answers(book.poi().getSheet("Summary"));
            assertThat(rows.keySet()).startsWith("holding fuel", "holding labour");
            assertThat(rows.get("holding fuel").getCell(STATUS).getStringCellValue())
                    .contains(HERE);
            assertThat(rows.get("holding labour").getCell(STATUS).getStringCellValue())
                    .isEqualTo(ABOVE);
        }
    }

    /** An answer that is withheld says what it lacks, so that the next one has to say them. Live, too. */
    @Test
    void areNotLostWhereTheFirstIsWithheld() throws Exception {
        Runs.Run run = farm("plenty");
        try (LiveGrid grid = new LiveGrid(run.file(), run.plan(), run.places())) {
            Map<String, Row> rows = answers(grid.sheet("Summary"));
            Row labour = rows.get("holding labour");
            assertThat(labour.getCell(VALUE).getNumericCellValue()).isPositive();
            assertThat(labour.getCell(STATUS).getStringCellValue()).contains(HERE);
            CellAddress status = new CellAddress("Summary", labour.getRowNum(), STATUS);
            assertThat(grid.value(status)).asString().contains(HERE);
            grid.spoil(new CellAddress("Machines", 1, 5), 9);
            assertThat(grid.value(status)).isEqualTo(ABOVE);
        }
    }
}
