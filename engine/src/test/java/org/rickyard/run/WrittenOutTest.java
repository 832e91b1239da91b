package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;

/** What has to be read out of words counts as much as what is typed as a number: doses, days, a basis in a header. */
class WrittenOutTest {
    @TempDir
    private Path folder;

    private static FarmBook spraying(String unit, Object dose, Object day) {
        return new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ha)")
                .row("Fields", "Top", "Wheat", 10)
                .sheet("Machines", "Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)")
                .row("Machines", "Sprayer", "sprayer", 24, 12, 3000)
                .sheet("Products", "Product", "Unit", "Highest dose", "Pack size (L)")
                .row("Products", "Herbicide A", unit, 3, 5)
                .sheet("Assumptions", "Item", "Value")
                .row("Assumptions", "Customary units", "UK")
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Product",
                        "Dose",
                        "Water volume (L/ha)",
                        "Earliest")
                .row("Jobs", "First", "Top", "spraying", "Sprayer", "Herbicide A", dose, 200, day);
    }

    @Test
    void aDoseWrittenWithItsUnitTellsWhatTheProductIsMeasuredIn() {
        FarmBook.Run run = spraying(null, "1.5 pt/ac", null).run(folder);
        assertThat(run.number("product-total", "Herbicide A")).isCloseTo(21.063, within(0.001));
        assertThat(run.result("product-total", "Herbicide A").unit()).isEqualTo("L");
    }

    @Test
    void aDoseWrittenInKilogramsOfAProductListedInLitresIsAStop() {
        assertThat(spraying("L", "1.5 kg/ha", null).run(folder).at(Severity.STOP))
                .containsExactly("Jobs!E2: 'Herbicide A' is dosed in kg here but the product list measures it in L; its"
                        + " packs and limits cannot be compared until both agree.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Earliest", "Date"})
    void twoJobsOnOneDayWrittenAsTextAreAskedAbout(String header) {
        FarmBook.Run run = spraying("L", 1, "2026-05-20")
                .with("Jobs", 0, 7, header)
                .row("Jobs", "Second", "Top", "spraying", "Sprayer", "Herbicide A", 1, 200, "2026-05-20")
                .run(folder);
        assertThat(run.at(Severity.CAUTION)).anyMatch(message -> message.startsWith("Jobs!H3: "));
    }

    @Test
    void theDayOfASprayJobByItselfAsksNothingOfTheSeason() {
        assertThat(spraying("L", 1, "2026-05-20").run(folder).sheets()).doesNotContain("Season", "Spray hours");
        FarmBook planned = spraying("L", 1, "2026-05-20")
                .with("Machines", 0, 4, "Hours per day")
                .with("Machines", 1, 4, 8);
        assertThat(planned.run(folder).sheets()).contains("Season");
    }

    @Test
    void aHeaderMaySayWhatTheYieldWasWeighedAs() {
        FarmBook.Run run = new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ha)", "Yield (t/ha as carted)", "DM at ensiling (%)", "Clamp")
                .row("Fields", "Top", "Grass", 10, 20, 28, "Main")
                .sheet("Clamps", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                .row("Clamps", "Main", "walled", 30, 9, 2)
                .run(folder);
        assertThat(run.number("crop-in-clamp")).isEqualTo(200);
    }

    @Test
    void aHeapWithRampsSaysThatTheyAreNotReckoned() {
        FarmBook book = new FarmBook()
                .sheet(
                        "Clamps",
                        "Clamp",
                        "Kind",
                        "Length (m)",
                        "Floor width (m)",
                        "Wall height (m)",
                        "Settled height (m)",
                        "Batter",
                        "Ramps",
                        "Ramp run",
                        "DM target (%)",
                        "Density dry matter (kg DM/m3)")
                .row("Clamps", "Heap", "heap", 30, 12, 0, 2.2, 1, 2, 3, 30, 200);
        FarmBook.Run run = book.run(folder);
        assertThat(run.at(Severity.CAUTION))
                .anyMatch(message -> message.contains("ramps are reckoned for walled clamps only"));
        assertThat(book.with("Clamps", 1, 7, 0).run(folder).at(Severity.CAUTION))
                .noneMatch(message -> message.contains("ramps are reckoned"));
        // The density typed, though as dry matter, is no default.
        assertThat(run.messages(Severity.NOTE)).noneMatch(message -> message.contains("a default for clamp density"));
        assertThat(book.with("Clamps", 1, 10, null).run(folder).messages(Severity.NOTE))
                .anyMatch(message -> message.contains("a default for clamp density (fresh) is used in 1 row"));
    }

    @Test
    void withoutAnyCropListedNoFillIsAmongTheAnswers() throws Exception {
        FarmBook book = new FarmBook()
                .sheet("Clamps", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target (%)")
                .row("Clamps", "Main", "walled", 30, 9, 2, 25);
        assertThat(summary(book)).contains("clamp capacity (fresh)").doesNotContain("clamp fill");
        book.sheet("Fields", "Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp")
                .row("Fields", "Top", "Grass", 10, 20, "as carted", 28, "Main");
        assertThat(summary(book)).contains("clamp capacity (fresh)", "clamp fill");
    }

    private List<String> summary(FarmBook book) throws Exception {
        List<String> words = new ArrayList<>();
        try (XSSFWorkbook workbook = new XSSFWorkbook(book.run(folder).written().toFile())) {
            workbook.getSheet("Summary")
                    .forEach(row -> row.forEach(cell -> words.add(new DataFormatter().formatCellValue(cell))));
        }
        return words;
    }
}
