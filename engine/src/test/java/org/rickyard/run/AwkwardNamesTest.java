package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.testing.JsonText;
import org.rickyard.workbook.open.BookPackage;

/**
 * Names that patterns, numbers, formulas and case could confuse, each the key of a field, a machine, a product and a
 * clamp: every job finds its own field, machine and product, in the engine's results, in their cell references, in the
 * totals of blocks and in JSON. That the grid agrees is {@link WrittenFileParityTest}'s affair.
 */
class AwkwardNamesTest {
    /** A line that begins so is the sum under a list. */
    private static final String SUM = "Total acre";
    /** 10 km/h on 3 m at 80 %. */
    private static final double WORK_RATE = 2.4;

    @TempDir
    static Path folder;

    private static List<Map<String, Object>> results;
    private static List<Map<String, Object>> findings;

    @BeforeAll
    static void run() throws Exception {
        Path file = TestBooks.awkward(folder.resolve("awkward.xlsx"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BookPackage book = BookPackage.open(file)) {
            ResultsJson.write(Recalculation.of(book, RunOptions.usual()), ResultsJson.Which.ALL, out);
        }
        Map<String, Object> json = JsonText.read(out.toString(StandardCharsets.UTF_8));
        results = JsonText.objects(json, "results");
        findings = JsonText.objects(json, "findings");
    }

    static Stream<Arguments> names() throws IOException {
        List<Arguments> names = new ArrayList<>();
        for (int i = 0; i < TestBooks.AWKWARD.size(); i++) {
            String name = TestBooks.AWKWARD.get(i);
            if (!name.equals(SUM)) {
                names.add(Arguments.of(name.length() > 40 ? "300 letters" : name, i));
            }
        }
        return names.stream();
    }

    /** A name without the spaces around it, as results are told. */
    private static String plain(String name) {
        return name.replace('\u00a0', ' ').strip();
    }

    private static Optional<Map<String, Object>> result(String id, String job) {
        List<Map<String, Object>> found = results.stream()
                .filter(result -> result.get("id").equals(id))
                .filter(result -> plain(String.valueOf(((Map<?, ?>) result.get("about")).get("Job")))
                        .equals(job))
                .toList();
        assertThat(found).as("%s of %s", id, job).hasSizeLessThanOrEqualTo(1);
        return found.stream().findFirst();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("names")
    void aJobFindsItsOwnFieldMachineAndProduct(String shown, int index) {
        String name = TestBooks.AWKWARD.get(index);
        double area = index + 1;
        Map<String, Object> hours = result("hours", plain("Job " + name)).orElseThrow();
        assertThat(((Map<?, ?>) hours.get("about")).values().stream().map(value -> plain(String.valueOf(value))))
                .filteredOn(value -> value.equals(plain(name)))
                .as("field and machine, as they were typed")
                .hasSizeGreaterThanOrEqualTo(2);
        assertThat(((Number) hours.get("value")).doubleValue()).isCloseTo(area / WORK_RATE, offset(1e-12));
        assertThat(JsonText.objects(hours, "inputs")).anySatisfy(input -> {
            assertThat(input.get("name")).isEqualTo("area");
            assertThat(input.get("cell")).isEqualTo("'O''Brien''s fields'!D" + (index + 2));
        });
        Optional<Map<String, Object>> mix = result("total-spray-mix", plain("Job " + name));
        assertThat(mix.isPresent()).as("a spraying").isEqualTo(index % 2 == 0);
        mix.ifPresent(block -> assertThat(((Number) block.get("value")).doubleValue())
                .as("200 L/ha on the field alone")
                .isEqualTo(200 * area));
    }

    @Test
    void everyMachineIsFoundAndALineThatReadsAsASumIsSaid() {
        // A semicolon parts the machines of a gang, but not a name that stands in the machine list as it is.
        assertThat(findings).noneSatisfy(finding -> assertThat((String) finding.get("message"))
                .contains("there is no machine"));
        assertThat(findings).anySatisfy(finding -> {
            assertThat(finding.get("cell")).isEqualTo("Summary!A" + (TestBooks.AWKWARD.indexOf(SUM) + 2));
            assertThat((String) finding.get("message")).isEqualTo("This row of totals is not read as a row of Jobs.");
        });
    }
}
