package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** One farm written in metric, UK and US units: the answers are the same numbers. */
class SprayingUnitsTest {
    @TempDir
    private Path folder;

    private record Writing(
            Unit area, Unit length, Unit speed, Unit spacing, Unit volume, Unit rate, Unit pressure, Unit run) {}

    private static final Writing METRIC =
            new Writing(Units.HA, Units.M, Units.KM_PER_H, Units.M, Units.L, Units.L_PER_HA, Units.BAR, Units.KM);
    private static final Writing UK = new Writing(
            Units.AC, Units.FT, Units.MPH, Units.IN, Units.GAL_UK, Units.GAL_UK.over(Units.AC), Units.PSI, Units.MILE);
    private static final Writing US = new Writing(
            Units.AC, Units.FT, Units.MPH, Units.IN, Units.GAL_US, Units.GAL_US.over(Units.AC), Units.PSI, Units.MILE);

    @Test
    void ukAndUsWorkbooksOfOneFarmGiveTheMetricAnswers() {
        Map<String, Double> metric = answers(METRIC, null);
        assertThat(metric).hasSizeGreaterThan(100);
        for (Map.Entry<String, Writing> other : Map.of("UK", UK, "US", US).entrySet()) {
            Map<String, Double> answers = answers(other.getValue(), other.getKey());
            assertThat(answers.keySet()).isEqualTo(metric.keySet());
            answers.forEach((what, value) -> {
                if (metric.get(what) == 0) {
                    assertThat(value).as(what).isZero();
                } else {
                    assertThat(value)
                            .as(other.getKey() + ": " + what)
                            .isCloseTo(metric.get(what), withinPercentage(1e-7));
                }
            });
        }
    }

    @Test
    void doublingTheSpeedDoublesTheOutputAndQuadruplesThePressure() {
        FarmBook.Run slow = book(METRIC, null, 6).run(folder);
        FarmBook.Run fast = book(METRIC, null, 12).run(folder);
        assertThat(fast.number("water-equivalent-output", "T1"))
                .isCloseTo(2 * slow.number("water-equivalent-output", "T1"), withinPercentage(1e-10));
        assertThat(fast.number("nozzle-pressure", "T1", "04"))
                .isCloseTo(4 * slow.number("nozzle-pressure", "T1", "04"), withinPercentage(1e-10));
    }

    private Map<String, Double> answers(Writing writing, String customary) {
        Map<String, Double> answers = new TreeMap<>();
        book(writing, customary, 12).run(folder).results().forEach(result -> result.number()
                .ifPresent(number -> answers.put(result.id() + " " + result.about(), number)));
        return answers;
    }

    private static FarmBook book(Writing w, String customary, double speed) {
        FarmBook book = new FarmBook()
                .sheet(
                        "Fields",
                        "Field",
                        "Crop",
                        "Area (" + w.area() + ")",
                        "Run length (" + w.length() + ")",
                        "Distance to fill point (" + w.run() + ")")
                .row(
                        "Fields",
                        "Long Acre",
                        "wheat",
                        in(4, Units.HA, w.area()),
                        in(400, Units.M, w.length()),
                        in(1.5, Units.KM, w.run()))
                .row(
                        "Fields",
                        "Top",
                        "wheat",
                        in(13.3, Units.HA, w.area()),
                        in(350, Units.M, w.length()),
                        in(0.5, Units.KM, w.run()))
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (" + w.length() + ")",
                        "Speed (" + w.speed() + ")",
                        "Tank (" + name(w.volume()) + ")",
                        "Nozzle spacing (" + w.spacing() + ")",
                        "Number of nozzles",
                        "Nozzle size",
                        "Lowest pressure (" + w.pressure() + ")",
                        "Highest pressure (" + w.pressure() + ")",
                        "Turn time (s)",
                        "Fill time (min)",
                        "Road speed laden (" + w.speed() + ")",
                        "Road speed empty (" + w.speed() + ")",
                        "Residual (" + name(w.volume()) + ")",
                        "Rinse tank (" + name(w.volume()) + ")")
                .row(
                        "Machines",
                        "Sprayer",
                        "sprayer",
                        in(24, Units.M, w.length()),
                        in(speed, Units.KM_PER_H, w.speed()),
                        in(1510, Units.L, w.volume()),
                        in(0.5, Units.M, w.spacing()),
                        48,
                        "04",
                        in(1.51, Units.BAR, w.pressure()),
                        in(4.01, Units.BAR, w.pressure()),
                        20,
                        12,
                        in(20, Units.KM_PER_H, w.speed()),
                        in(25, Units.KM_PER_H, w.speed()),
                        in(30, Units.L, w.volume()),
                        in(300, Units.L, w.volume()))
                .sheet("Products", "Product", "Unit", "Pack size")
                .row("Products", "Herbicide A", "L", 5)
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (" + name(w.rate()) + ")")
                .row(
                        "Jobs",
                        "T1",
                        "wheat",
                        "spraying",
                        "Sprayer",
                        "Herbicide A",
                        1.25,
                        "L/ha",
                        in(200, Units.L_PER_HA, w.rate()));
        if (customary != null) {
            book.sheet("Assumptions", "Item", "Value", "Unit").row("Assumptions", "Customary units", customary);
        }
        return book;
    }

    /** As advisers write it: the country stands on Assumptions. */
    private static String name(Unit unit) {
        return unit.symbol().replace("(UK)", "").replace("(US)", "");
    }

    private static double in(double value, Unit from, Unit to) {
        return from.convert(value, to);
    }
}
