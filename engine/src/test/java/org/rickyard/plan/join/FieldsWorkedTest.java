package org.rickyard.plan.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.Quantities;

/** Jobs without a name, as most lists have them: the rows of their sheets say on which fields they are done. */
class FieldsWorkedTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 5, 9);

    /** Two sprayings, the second on three fields, the last of which is of this holding. */
    private static SeasonBook.Worked worked(String firstName, String holdingOfLast) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)"),
                        row("Hill", "Top", "wheat", 10),
                        row("Hill", "Barn", "wheat", 20),
                        row("Hill", "Pond", "barley", 4),
                        row(holdingOfLast, "Far", "wheat", 3))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)", "Fuel (L/h)"),
                        row("Sprayer", "sprayer", 24, 10, 3000, 9))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose (L/ha)",
                                "Water (L/ha)",
                                "Earliest",
                                "Latest",
                                "Hours per day (h)",
                                "Workable days (%)"),
                        row(firstName, "Pond", "spray", "Sprayer", "Fungicide", 1, 200, FIRST, LAST, 8, 60),
                        row(null, "wheat", "spray", "Sprayer", "Wetter", 1, 200, FIRST, LAST.plusDays(1), 8, 60))
                .run();
    }

    private static List<String> words(ResultTable table, Symbol symbol) {
        return IntStream.range(0, table.rows()).mapToObj(table.of(symbol)::word).toList();
    }

    @Test
    void theirRowsNameTheFields() {
        SeasonBook.Worked worked = worked(null, "Hill");
        for (String table : List.of("spray-blocks", "tank-mix", "season", "day-plan", "bookings", "job-totals")) {
            assertThat(words(worked.plan().table(table), Quantities.FIELDS_OF_JOB))
                    .as(table)
                    .containsExactly("Pond", "Top, Barn and 1 more");
        }
        assertThat(words(worked.plan().table("tank-fills"), Quantities.FIELDS_OF_JOB))
                .startsWith("Pond", "Top, Barn and 1 more");
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void whatIsSaidOfThemNamesTheFields() {
        assertThat(worked(null, "Hill").findings())
                .extracting(Finding::message)
                .anyMatch(message -> message.startsWith("'spraying of Pond (Sprayer)' and 'spraying of Top, Barn and 1"
                        + " more (Sprayer)' both want 'Sprayer' on the same days"));
    }

    /** A card in the cab must say where it is for. */
    @Test
    void theirCardsNameTheFields() throws IOException {
        List<String> firsts = new ArrayList<>();
        try (XSSFWorkbook book =
                new XSSFWorkbook(Files.newInputStream(worked(null, "Hill").file()))) {
            book.getSheet("Spray cards").forEach(row -> {
                if (row.getCell(0) != null) {
                    firsts.add(row.getCell(0).toString());
                }
            });
        }
        assertThat(firsts).contains("Pond, spray, Sprayer (Hill)", "Top, Barn and 1 more, spray, Sprayer (Hill)");
    }

    /** Two jobs of one day are more than a column of the chart is wide. */
    @Test
    void theChartHasRoomForThem() throws IOException {
        try (XSSFWorkbook book =
                new XSSFWorkbook(Files.newInputStream(worked(null, "Hill").file()))) {
            Row row = book.getSheet("Time chart").getRow(SheetPlaces.FIRST_ROW);
            Cell day = row.getCell(2);
            assertThat(day.getStringCellValue()).isEqualTo("spraying of Pond + spraying of Top, Barn and 1 more");
            assertThat(day.getCellStyle().getWrapText()).isTrue();
            assertThat(row.getHeightInPoints()).isGreaterThanOrEqualTo(30);
        }
    }

    @Test
    void aJobWithANameGoesByIt() {
        assertThat(words(worked("Late", "Hill").plan().table("season"), Quantities.FIELDS_OF_JOB))
                .containsExactly("", "Top, Barn and 1 more");
    }

    /** The job list tells no holdings: a job is of the holding of its fields, unless they are of two. */
    @Test
    void aJobOnFieldsOfOneHoldingIsOfIt() {
        for (String table : List.of("season", "job-totals")) {
            ResultTable one = worked(null, "Hill").plan().table(table);
            assertThat(one.name(Quantities.HOLDING, 0)).as(table).isEqualTo("Hill");
            assertThat(one.name(Quantities.HOLDING, 1)).as(table).isEqualTo("Hill");
            ResultTable two = worked(null, "Dale").plan().table(table);
            assertThat(two.name(Quantities.HOLDING, 0)).as(table).isEqualTo("Hill");
            assertThat(two.name(Quantities.HOLDING, 1)).as(table).isEmpty();
        }
    }
}
