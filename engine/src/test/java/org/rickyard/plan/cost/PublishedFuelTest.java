package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.quantity.Units;
import org.rickyard.testing.SeasonBook;

/** Fuel of whole ways of growing a crop, as extension services print it: passes in US gal/ac and their sum. */
@Tag("published")
class PublishedFuelTest {
    private static final double ACRES = 100;
    /** 8.25 ft at 10 mph without loss is 10 ac/h, so a machine of ten times as many gal/h burns a pass's gal/ac. */
    private static final double ACRES_PER_HOUR = 10;

    static Stream<Arguments> ways() {
        return Stream.of(
                way("University of Nebraska, Fuel Requirements: plough", "5.28", 2.25, 0.60, 0.74, 0.74, 0.52, 0.43),
                way("University of Nebraska, Fuel Requirements: chisel", "3.34", 1.05, 0.60, 0.74, 0.52, 0.43),
                way("University of Nebraska, Fuel Requirements: disc", "2.71", 0.60, 0.74, 0.74, 0.52, 0.11),
                way("University of Nebraska, Fuel Requirements: strip-till", "1.75", 1.00, 0.52, 0.23),
                way("University of Nebraska, Fuel Requirements: no-till", "1.35", 0.60, 0.52, 0.23),
                way("No-Till Farmer: no-till corn", "2.3", 0.15, 0.45, 0.10, 1.6),
                way("NRCS Montana, first way", "3.1", 0.36, 0.27, 0.27, 0.70, 0.70, 0.80),
                way("NRCS Montana, second way", "4.6", 2.5, 0.27, 0.27, 0.70, 0.70, 0.16));
    }

    private static Arguments way(String source, String printed, double... passes) {
        return Arguments.of(source, new BigDecimal(printed), passes);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ways")
    void theFuelOfTheHoldingIsTheSumOfThePasses(String source, BigDecimal printed, double[] passes) {
        List<Object[]> machines = new ArrayList<>();
        List<Object[]> jobs = new ArrayList<>();
        machines.add(row(
                "Machine",
                "Type",
                "Working width (ft)",
                "Speed (mph)",
                "Field efficiency (%)",
                "Fuel (gal/h)",
                "Crew"));
        jobs.add(row("Holding", "Job", "Field", "Operation", "Machine"));
        for (int i = 0; i < passes.length; i++) {
            machines.add(row("Pass " + i, "cultivator", 8.25, 10, 100, passes[i] * ACRES_PER_HOUR, 1));
            jobs.add(row("Home", "Job " + i, "Long Acre", "pass " + i, "Pass " + i));
        }
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Holding", "Field", "Area (ac)"), row("Home", "Long Acre", ACRES))
                .sheet("Machines", machines.toArray(Object[][]::new))
                .sheet("Jobs", jobs.toArray(Object[][]::new))
                .sheet("Assumptions", row("Item", "Value", "Unit"), row("Customary units", "US", null))
                .run();

        double gallonsPerAcre = Units.L.convert(worked.number("holding-fuel", "Home"), Units.GAL_US) / ACRES;

        double halfOfTheLastDigit = printed.ulp().doubleValue() / 2;
        assertThat(gallonsPerAcre).isCloseTo(printed.doubleValue(), within(halfOfTheLastDigit + 1e-9));
    }
}
