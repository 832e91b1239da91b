package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.FileInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.JsonText;
import org.rickyard.testing.SeasonBook;
import org.rickyard.testing.WholeFarm;
import org.rickyard.workbook.open.BookPackage;

/** What a plan or a simulation finds is a result of its own, with its method named in place of a formula. */
@Tag("derived")
class MethodResultsTest {
    private static SeasonBook.Worked worked;
    private static List<Map<String, Object>> results;

    @BeforeAll
    static void run() throws Exception {
        worked = WholeFarm.metric().run();
        Path in = worked.file().resolveSibling("in.xlsx");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BookPackage book = BookPackage.open(in)) {
            ResultsJson.write(Recalculation.of(book, RunOptions.usual()), ResultsJson.Which.ALL, out);
        }
        results = JsonText.objects(JsonText.read(out.toString(StandardCharsets.UTF_8)), "results");
    }

    private static List<Map<String, Object>> of(String id) {
        return results.stream().filter(result -> result.get("id").equals(id)).toList();
    }

    @Test
    void theJsonNamesTheMethodInPlaceOfAFormula() {
        for (String id : List.of("planned-start", "planned-finish", "chop-and-cart-rate-simulated")) {
            assertThat(of(id)).as(id).isNotEmpty().allSatisfy(result -> {
                assertThat(result).containsKey("method").doesNotContainKey("formula");
                assertThat((String) result.get("method")).isNotBlank();
                assertThat(result.get("status")).isEqualTo("ok");
                assertThat(result.get("value")).isInstanceOf(Number.class);
                assertThat((String) result.get("source")).isNotBlank();
            });
        }
        assertThat(of("gang-rate"))
                .allSatisfy(result -> assertThat(result).containsKey("formula").doesNotContainKey("method"));
    }

    @Test
    void aPlannedDayShowsWhatItWasFoundFrom() {
        List<Object> names = new ArrayList<>();
        for (Map<String, Object> input : JsonText.objects(of("planned-start").get(0), "inputs")) {
            names.add(input.get("name"));
        }
        assertThat(names).contains("days it takes", "earliest day", "latest day");
    }

    @Test
    void theTrailHasALineForEachOfThem() throws Exception {
        List<String> lines = new ArrayList<>();
        try (XSSFWorkbook book =
                new XSSFWorkbook(new FileInputStream(worked.file().toFile()))) {
            for (Row row : book.getSheet("Trail")) {
                if (row.getCell(4) != null
                        && row.getCell(4).getStringCellValue().startsWith("method: ")) {
                    lines.add(row.getCell(0).getStringCellValue());
                }
            }
        }
        assertThat(lines).contains("planned start", "planned finish", "chopped and carted, simulated");
        long methods = worked.results().stream().filter(r -> r.byMethod()).count();
        assertThat(lines).hasSize((int) methods);
    }
}
