package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** One farm written in metric, UK and US units: the answers are the same numbers. */
class SprayingUnitsTest {
    @TempDir
    private Path folder;

    /** The units of one country. */
    private record Writing(
            Unit area,
            Unit length,
            Unit speed,
            Unit spacing,
            Unit volume,
            Unit rate,
            Unit pressure,
            Unit run,
            Unit temperature,
            Unit density,
            String dose,
            double litres) {}

    private static final Writing METRIC = new Writing(
            Units.HA,
            Units.M,
            Units.KM_PER_H,
            Units.M,
            Units.L,
            Units.L_PER_HA,
            Units.BAR,
            Units.KM,
            Units.CELSIUS,
            Units.KG.over(Units.L),
            "L/ha",
            1);
    private static final Writing UK = new Writing(
            Units.AC,
            Units.FT,
            Units.MPH,
            Units.IN,
            Units.GAL_UK,
            Units.GAL_UK.over(Units.AC),
            Units.PSI,
            Units.MILE,
            Units.FAHRENHEIT,
            Units.LB.over(Units.GAL_UK),
            "pt/ac",
            Units.PT_UK.over(Units.AC).convert(1, Units.L_PER_HA));
    private static final Writing US = new Writing(
            Units.AC,
            Units.FT,
            Units.MPH,
            Units.IN,
            Units.GAL_US,
            Units.GAL_US.over(Units.AC),
            Units.PSI,
            Units.MILE,
            Units.FAHRENHEIT,
            Units.LB.over(Units.GAL_US),
            "fl oz/ac",
            Units.FL_OZ_US.over(Units.AC).convert(1, Units.L_PER_HA));

    @Test
    void ukAndUsWorkbooksOfOneFarmGiveTheMetricAnswers() {
        Map<String, Double> metric = answers(METRIC, null);
        FarmBook.Run run = book(METRIC, null, 12).run(folder);
        Set<String> answered = new TreeSet<>();
        run.results().stream()
                .filter(result -> result.number().isPresent() || result.word().isPresent())
                .forEach(result -> answered.add(result.cell().sheet()));
        assertThat(answered).containsAll(SprayingSeason.SHEETS);
        Map<String, String> words = words(METRIC, null);
        for (Map.Entry<String, Writing> other : Map.of("UK", UK, "US", US).entrySet()) {
            words(other.getValue(), other.getKey())
                    .forEach((what, word) ->
                            assertThat(word).as(other.getKey() + ": " + what).isEqualTo(words.get(what)));
            Map<String, Double> answers = answers(other.getValue(), other.getKey());
            assertThat(answers.keySet()).as(other.getKey()).isEqualTo(metric.keySet());
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

    private Map<String, String> words(Writing writing, String customary) {
        Map<String, String> words = new TreeMap<>();
        book(writing, customary, 12).run(folder).results().forEach(result -> result.word()
                .ifPresent(word -> words.put(result.formula().id() + " " + result.about(), word)));
        return words;
    }

    private static FarmBook book(Writing w, String customary, double speed) {
        FarmBook book = new FarmBook();
        fields(book, w);
        machines(book, w, speed);
        products(book, w);
        jobs(book, w);
        book.sheet(
                "Nozzle test", "Sprayer", "Nozzle", head("Flow", w.volume(), "/min"), head("Pressure", w.pressure()));
        for (int nozzle = 1; nozzle <= 5; nozzle++) {
            book.row(
                    "Nozzle test",
                    "Sprayer",
                    nozzle,
                    in(nozzle == 3 ? 1.4 : nozzle == 4 ? 1.82 : 1.6, Units.L, w.volume()),
                    in(3, Units.BAR, w.pressure()));
        }
        if (customary != null) {
            book.sheet("Assumptions", "Item", "Value", "Unit").row("Assumptions", "Customary units", customary);
        }
        return book;
    }

    private static void fields(FarmBook book, Writing w) {
        book.sheet(
                "Fields",
                "Field",
                "Crop",
                head("Area", w.area()),
                head("Run length", w.length()),
                head("Distance to fill point", w.run()),
                head("Row spacing", w.length()),
                head("Tree height", w.length()),
                head("Tree width", w.length()),
                "Country");
        field(book, w, "Long Acre", "wheat", 4, 400, 1.5, null, null, null);
        field(book, w, "Top", "wheat", 13.3, 350, 0.5, null, null, null);
        field(book, w, "Orchard", "apples", 2.1, 120, 0.7, 4.1, 3.1, 1.6);
        field(book, w, "Beet", "beet", 9, 300, 0.7, 0.55, null, null);
        field(book, w, "Rushes", "grass", 0.7, null, null, null, null, null);
    }

    private static void field(
            FarmBook book,
            Writing w,
            String name,
            String crop,
            double area,
            Integer run,
            Double fill,
            Double row,
            Double height,
            Double width) {
        book.row(
                "Fields",
                name,
                crop,
                in(area, Units.HA, w.area()),
                run == null ? null : in(run, Units.M, w.length()),
                fill == null ? null : in(fill, Units.KM, w.run()),
                row == null ? null : in(row, Units.M, w.length()),
                height == null ? null : in(height, Units.M, w.length()),
                width == null ? null : in(width, Units.M, w.length()),
                "England");
    }

    private static void machines(FarmBook book, Writing w, double speed) {
        book.sheet(
                "Machines",
                "Machine",
                "Type",
                head("Working width", w.length()),
                head("Speed", w.speed()),
                head("Tank", w.volume()),
                head("Nozzle spacing", w.spacing()),
                "Number of nozzles",
                "Nozzle size",
                head("Lowest pressure", w.pressure()),
                head("Highest pressure", w.pressure()),
                "Turn time (s)",
                "Fill time (min)",
                head("Road speed laden", w.speed()),
                head("Road speed empty", w.speed()),
                head("Residual", w.volume()),
                head("Rinse tank", w.volume()),
                head("Priming", w.volume()),
                head("Lowest field speed", w.speed()),
                head("Highest field speed", w.speed()),
                "Hours per day (h)",
                "Move time (min)",
                "Cleaning time (min)",
                head("Timed distance", w.length()),
                "Timed seconds (s)",
                head("Test area", w.area()),
                head("Test volume", w.volume()));
        machine(book, w, "Sprayer", "sprayer", 24, speed, 1510, 48, "04");
        machine(book, w, "Mist blower", "air-blast sprayer", 4, speed / 2, 1010, 16, null);
        machine(book, w, "Knapsack", "knapsack", 1, speed / 3, 15.5, 1, null);
        machine(book, w, "Wiper", "wiper", 3, speed / 2, 61, 1, null);
    }

    private static void machine(
            FarmBook book,
            Writing w,
            String name,
            String type,
            double width,
            double speed,
            double tank,
            int nozzles,
            String size) {
        boolean boom = size != null;
        book.row(
                "Machines",
                name,
                type,
                in(width, Units.M, w.length()),
                in(speed, Units.KM_PER_H, w.speed()),
                in(tank, Units.L, w.volume()),
                boom ? in(width / nozzles, Units.M, w.spacing()) : null,
                nozzles,
                size,
                boom ? in(1.51, Units.BAR, w.pressure()) : null,
                boom ? in(4.01, Units.BAR, w.pressure()) : null,
                20,
                12,
                in(20, Units.KM_PER_H, w.speed()),
                in(25, Units.KM_PER_H, w.speed()),
                in(tank / 50, Units.L, w.volume()),
                in(tank / 5, Units.L, w.volume()),
                in(tank / 150, Units.L, w.volume()),
                in(speed * 0.7, Units.KM_PER_H, w.speed()),
                in(speed * 1.2, Units.KM_PER_H, w.speed()),
                6,
                10,
                30,
                in(100, Units.M, w.length()),
                31,
                in(0.011, Units.HA, w.area()),
                in(6.1, Units.L, w.volume()));
    }

    private static void products(FarmBook book, Writing w) {
        book.sheet(
                        "Products",
                        "Product",
                        "Unit",
                        head("Lowest water volume", w.rate()),
                        head("Highest water volume", w.rate()),
                        "Highest dose",
                        "Pack size",
                        "Stock",
                        "Price",
                        "Harvest interval (d)",
                        "Least interval (d)")
                .row(
                        "Products",
                        "Herbicide A",
                        "L",
                        in(100, Units.L_PER_HA, w.rate()),
                        in(400, Units.L_PER_HA, w.rate()),
                        2,
                        5,
                        3,
                        8,
                        60,
                        14)
                .row("Products", "Wetter", "L", null, null, 0.5, 1, null, 12)
                .row("Products", "Rush killer", "L", null, null, null, 1, null, 9)
                .sheet("Mixes", "Mix", "Product", "Dose", "Dose unit", "Order in tank")
                .row("Mixes", "T1 mix", "Wetter", 0.2, "%", 2)
                .row("Mixes", "T1 mix", "Herbicide A", 1.25 / w.litres(), w.dose(), 1);
    }

    private static void jobs(FarmBook book, Writing w) {
        book.sheet(
                "Jobs",
                "Job",
                "Field",
                "Operation",
                "Machine",
                "Mix",
                "Product",
                "Dose",
                "Dose unit",
                head("Water volume", w.rate()),
                "Earliest",
                "Latest",
                "Workable days (%)",
                "Last harvest date",
                head("Band width", w.spacing()),
                head("Wind speed", w.speed()),
                head("Wind height", w.length()),
                head("Air temperature", w.temperature()),
                "Humidity (%)",
                head("Spray density", w.density()));
        job(book, w, "T1", "wheat", "Sprayer", "T1 mix", null, 0, 200, 45761, null, null);
        job(book, w, "T2", "Top", "Sprayer", null, "Herbicide A", 1, 110, 45780, null, null);
        job(book, w, "Feed", "Long Acre", "Sprayer", null, "Liquid feed", 180, 180, 45770, null, 1.28);
        job(book, w, "Apples", "Orchard", "Mist blower", null, "Herbicide A", 0.5, 390, 45765, null, null);
        job(book, w, "Bands", "Beet", "Sprayer", null, "Herbicide A", 1, 210, 45766, 0.26, null);
        job(book, w, "Spots", "Rushes", "Knapsack", null, "Rush killer", 3, 155, 45767, null, null);
        book.row("Jobs", "Wipe", "Rushes", "wiping", "Wiper", null, "Rush killer", 33, "%");
    }

    private static void job(
            FarmBook book,
            Writing w,
            String name,
            String field,
            String machine,
            String mix,
            String product,
            double dose,
            double water,
            int day,
            Double band,
            Double density) {
        book.row(
                "Jobs",
                name,
                field,
                "spraying",
                machine,
                mix,
                product,
                product == null ? null : dose / w.litres(),
                product == null ? null : w.dose(),
                in(water, Units.L_PER_HA, w.rate()),
                day,
                day + 9,
                50,
                day + 90,
                band == null ? null : in(band, Units.M, w.spacing()),
                in(12, Units.KM_PER_H, w.speed()),
                in(10, Units.M, w.length()),
                in(21, Units.CELSIUS, w.temperature()),
                45,
                density == null ? null : in(density, Units.KG.over(Units.L), w.density()));
    }

    private static String head(String name, Unit unit) {
        return head(name, unit, "");
    }

    private static String head(String name, Unit unit, String per) {
        return name + " (" + name(unit) + per + ")";
    }

    /** As advisers write it: the country stands on Assumptions. */
    private static String name(Unit unit) {
        return unit.symbol().replace("(UK)", "").replace("(US)", "");
    }

    private static double in(double value, Unit from, Unit to) {
        return from.convert(value, to);
    }
}
