package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.audit.Result;

/** What must hold of any tank plan, tried on farms drawn at random from a seed. */
class SprayingPropertiesTest {
    private static final int JOBS = 12;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatGoesIntoTheTankfulsIsWhatTheBlockNeeds(long seed) {
        FarmBook.Run run = farm(new Random(seed)).run(folder);
        int even = 0;
        for (int i = 1; i <= JOBS; i++) {
            String job = "J" + i;
            double hectares = sum(run.results("treated-area", job));
            double mix = run.number("total-spray-mix", job);
            double full = run.number("full-tankfuls", job);
            double part = run.number("part-tankful", job);
            assertThat(sum(run.results("area-in-tankful", job))).as(job).isEqualTo(hectares, within(1e-7));
            assertThat(sum(run.results("spray-on-field", job))).as(job).isEqualTo(mix, within(1e-5));
            assertThat(sum(run.results("product-in-tankful", job)))
                    .as(job)
                    .isEqualTo(run.number("product-total", job), within(1e-7));
            long tankfuls = run.results("product-in-tankful", job).size();
            assertThat(tankfuls).as("no phantom tankful of %s", job).isEqualTo((long) full + (part > 0 ? 1 : 0));
            assertThat(run.results("product-in-tankful", job))
                    .as(job)
                    .isNotEmpty()
                    .allSatisfy(
                            result -> assertThat(result.number().orElseThrow()).isPositive());
            even += part == 0 ? 1 : 0;
        }
        assertThat(even).as("blocks that come out in whole tankfuls").isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void pressureGoesWithTheSquareOfTheOutput(long seed) {
        FarmBook.Run run = farm(new Random(seed)).run(folder);
        for (int i = 2; i <= JOBS; i++) {
            double outputs =
                    run.number("water-equivalent-output", "J" + i) / run.number("water-equivalent-output", "J1");
            double pressures = run.number("nozzle-pressure", "J" + i, "04") / run.number("nozzle-pressure", "J1", "04");
            assertThat(pressures).isEqualTo(outputs * outputs, within(1e-9 * pressures));
        }
        assertThat(run.results("water-equivalent-output")).hasSize(JOBS);
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7})
    void doublingTheSpeedDoublesTheOutputQuadruplesThePressureAndHalvesTheTime(long seed) {
        FarmBook.Run slow = farm(new Random(seed), 1).run(folder);
        FarmBook.Run fast = farm(new Random(seed), 2).run(folder);
        for (int i = 1; i <= JOBS; i++) {
            String job = "J" + i;
            assertThat(fast.number("water-equivalent-output", job))
                    .isCloseTo(2 * slow.number("water-equivalent-output", job), withinPercentage(1e-7));
            assertThat(fast.number("nozzle-pressure", job, "04"))
                    .isCloseTo(4 * slow.number("nozzle-pressure", job, "04"), withinPercentage(1e-7));
            // No turning, filling or fetching is typed, so the hours are spraying alone.
            assertThat(sum(fast.results("spraying-hours", job)))
                    .isCloseTo(sum(slow.results("spraying-hours", job)) / 2, withinPercentage(1e-7));
            assertThat(fast.number("product-total", job)).isEqualTo(slow.number("product-total", job));
        }
    }

    /** Areas of tenths of a hectare; every third job is laid out to come out in whole tankfuls. */
    private static FarmBook farm(Random random) {
        return farm(random, 1);
    }

    private static FarmBook farm(Random random, int timesAsFast) {
        FarmBook book = new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ha)", "Block")
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Nozzle spacing (m)")
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)");
        for (int i = 1; i <= JOBS; i++) {
            int fields = 1 + random.nextInt(5);
            double total = 0;
            for (int f = 0; f < fields; f++) {
                double area = (1 + random.nextInt(150)) / 10.0;
                total += area;
                book.row("Fields", "F" + i + "." + f, "crop " + i, area, "B" + i);
            }
            int water = 50 + 10 * random.nextInt(50);
            double tank = i % 3 == 0 ? total * water / 3 : 500 + 100 * random.nextInt(35);
            book.row(
                            "Machines",
                            "S" + i,
                            "sprayer",
                            12 + random.nextInt(25),
                            timesAsFast * (6 + random.nextInt(8)),
                            Math.max(tank, 5),
                            0.5)
                    .row(
                            "Jobs",
                            "J" + i,
                            "crop " + i,
                            "spraying",
                            "S" + i,
                            "Product " + i,
                            (1 + random.nextInt(400)) / 100.0,
                            "L/ha",
                            water);
        }
        return book;
    }

    private static double sum(List<Result> results) {
        return results.stream()
                .mapToDouble(result -> result.number().orElseThrow())
                .sum();
    }
}
