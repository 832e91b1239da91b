package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.audit.Results;
import org.rickyard.plan.Headlines;
import org.rickyard.run.ResultsJson.Which;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.JsonText;
import org.rickyard.workbook.open.BookPackage;

class ResultsJsonTest {
    @TempDir
    Path folder;

    private Recalculation run(FarmBook farm) throws Exception {
        try (BookPackage book = BookPackage.open(farm.write(folder.resolve("farm.xlsx")))) {
            return Recalculation.of(book, RunOptions.usual());
        }
    }

    private static Map<String, Object> json(Recalculation run, Which which) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ResultsJson.write(run, which, out);
        return JsonText.read(out.toString(StandardCharsets.UTF_8));
    }

    private static Map<String, Object> result(Map<String, Object> json, String id, String machine) {
        return JsonText.objects(json, "results").stream()
                .filter(result -> result.get("id").equals(id))
                .filter(result ->
                        ((Map<?, ?>) result.get("about")).get("Machine").equals(machine))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void documentNamesItsFormatEngineAndWorkbook() throws Exception {
        Map<String, Object> json = json(run(FarmBook.usual()), Which.ALL);

        assertThat(json.keySet()).containsExactly("format", "engine", "workbook", "results", "findings");
        assertThat(json)
                .containsEntry("format", "rickyard.results/1")
                .containsEntry("engine", Recalculation.VERSION)
                .containsEntry("workbook", "farm.xlsx");
    }

    /** What a reader looks for on a sheet is told to programs too, where a row has what it takes, and never asked for. */
    @Test
    void figuresOfSheetsThatNoRowOwesAreTold() throws Exception {
        try (BookPackage book = BookPackage.open(FullFarm.write(folder.resolve("full.xlsx")))) {
            List<Map<String, Object>> told =
                    JsonText.objects(json(Recalculation.of(book, RunOptions.usual()), Which.ALL), "results").stream()
                            .filter(result -> result.get("value") != null)
                            .toList();
            assertThat(told)
                    .extracting(result -> result.get("id"))
                    .contains(
                            "product-cost",
                            "tree-row-volume",
                            "nozzle-mean",
                            "nozzles-worn-share",
                            "treated-area-of-block",
                            "days-to-harvest",
                            "product-in-load",
                            "mix-with-priming",
                            "left-after-rinsing",
                            "window-days",
                            "storage-loss-by-density",
                            "critical-ph",
                            "crop-to-feed",
                            "stock-to-feed",
                            "silo-volume",
                            "effluent-volume-bastiman",
                            "side-sheet",
                            "top-sheet",
                            "running-cost-per-hectare");
        }
    }

    /** Two rounds of one sprayer over one field, without a name of their own: by the rows of Jobs one knows which is which. */
    @Test
    void rowsOfTheSameNamesAreToldApartByWhereTheyWereTyped() throws Exception {
        Recalculation run = run(FarmBook.empty()
                .sheet("Fields", FarmBook.row("Field", "Area (ha)", "Crop"), FarmBook.row("Top", 4, "wheat"))
                .sheet(
                        "Machines",
                        FarmBook.row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        FarmBook.row("Sprayer", "sprayer", 24, 10, 900),
                        FarmBook.row("Mower", "mower", 3, 10, null))
                .sheet(
                        "Jobs",
                        FarmBook.row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        FarmBook.row("Top", "spraying", "Sprayer", 200),
                        FarmBook.row("Top", "spraying", "Sprayer", 300),
                        FarmBook.row("Top", "mowing", "Mower", null)));
        Map<String, Object> json = json(run, Which.ALL);
        assertThat(JsonText.objects(json, "results").stream()
                        .filter(result -> result.get("id").equals("total-spray-mix"))
                        .map(result -> ((Map<?, ?>) result.get("about")).get("Row") + " " + result.get("value")))
                .containsExactly("Jobs!2 800.0", "Jobs!3 1200.0");
        assertThat(((Map<?, ?>) result(json, "work-rate", "Mower").get("about")).get("Row"))
                .isNull();
        assertThat(JsonText.objects(json, "results").stream()
                        .map(result -> result.get("id") + " " + result.get("sheet") + " " + result.get("about")))
                .doesNotHaveDuplicates();
    }

    @Test
    void resultCarriesItsDerivationInTheDeclaredOrder() throws Exception {
        Map<String, Object> rate = result(json(run(FarmBook.usual()), Which.ALL), "work-rate", "Mower 3 m");

        assertThat(rate.keySet())
                .containsExactly(
                        "id", "sheet", "cell", "about", "value", "unit", "status", "reason", "formula", "numbers",
                        "inputs", "source");
        assertThat(rate)
                .containsEntry("sheet", "Work rates")
                .containsEntry("unit", "ha/h")
                .containsEntry("status", "ok")
                .containsEntry("reason", null)
                .containsEntry("formula", "speed × working width × field efficiency ÷ 10")
                .containsEntry("numbers", "10 × 3.048 × 80 % ÷ 10");
        assertThat((Double) rate.get("value")).isEqualTo(10 * 10 * 0.3048 * 80 / 100 / 10);
        assertThat(rate.get("cell").toString()).matches("[A-Z]+[0-9]+");
    }

    @Test
    void inputsSayWhereTheyStandAndHowTheyCameThere() throws Exception {
        Map<String, Object> rate = result(json(run(FarmBook.usual()), Which.ALL), "spot-work-rate", "Mower 3 m");

        List<Map<String, Object>> inputs = JsonText.objects(rate, "inputs");
        assertThat(inputs).isNotEmpty().allSatisfy(input -> assertThat(input.keySet())
                .containsExactly("name", "value", "unit", "cell", "from"));
        assertThat(inputs).anySatisfy(speed -> assertThat(speed)
                .containsEntry("name", "speed")
                .containsEntry("value", 10.0)
                .containsEntry("unit", "km/h")
                .containsEntry("cell", "Machines!D2")
                .containsEntry("from", "typed"));
    }

    @Test
    void withheldResultHasNoValueButAReason() throws Exception {
        Map<String, Object> rate = result(json(run(FarmBook.usual()), Which.ALL), "spot-work-rate", "Rake");

        assertThat(rate)
                .containsEntry("value", null)
                .containsEntry("status", "withheld")
                .containsEntry("reason", "speed missing (Machines!D3)");
        assertThat(JsonText.objects(rate, "inputs")).anySatisfy(speed -> assertThat(speed)
                .containsEntry("value", null)
                .containsEntry("cell", "Machines!D3")
                .containsEntry("from", "typed"));
    }

    @Test
    void findingsCarryTheirSeverityInLowerCase() throws Exception {
        FarmBook overdosed = FarmBook.usual().with("Jobs", 2, 5, 2.5);

        List<Map<String, Object>> findings = JsonText.objects(json(run(overdosed), Which.ALL), "findings");

        assertThat(findings)
                .allSatisfy(finding -> assertThat(finding.keySet()).containsExactly("severity", "cell", "message"));
        assertThat(findings.get(0)).containsEntry("severity", "stop");
        assertThat(findings).extracting(finding -> finding.get("severity")).containsOnly("stop", "caution", "note");
    }

    @Test
    void allResultsOrTheHeadlinesOnly() throws Exception {
        Recalculation run = run(FarmBook.usual());

        assertThat(JsonText.objects(json(run, Which.ALL), "results")).hasSize((int) Results.count(run.plan()));
        assertThat(JsonText.objects(json(run, Which.HEADLINE), "results"))
                .hasSize(Headlines.of(run.plan()).size());
    }

    @ParameterizedTest
    @CsvSource({
        "10, 10",
        "0.1, 0.1",
        "2.0E-3, 0.002",
        "-0.0, 0",
        "9007199254740993, 9007199254740992",
        "2.2250738585072014E-308, 2.2250738585072014E-308"
    })
    void numbersAreShortAndReadBackTheSame(double number, String expected) {
        String text = ResultsJson.shortest(number);

        assertThat(Double.parseDouble(text) + 0.0).isEqualTo(number + 0.0);
        assertThat(new BigDecimal(text)).isEqualByComparingTo(new BigDecimal(expected));
    }

    @Test
    void eachResultStandsOnALineOfItsOwn() throws Exception {
        Recalculation run = run(FarmBook.usual());
        ByteArrayOutputStream out = new ByteArrayOutputStream();

        ResultsJson.write(run, Which.ALL, out);

        long lines = out.toString(StandardCharsets.UTF_8)
                .lines()
                .filter(line -> line.startsWith("{\"id\":"))
                .count();
        assertThat(lines).isEqualTo(Results.count(run.plan()));
    }
}
