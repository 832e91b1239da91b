package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.audit.InputUsed;
import org.rickyard.audit.Result;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.testing.SeasonBook;

/**
 * Trailers of two kinds, forage wagons, rolling as the clamp list has it, and chance. Figures: derived arithmetic of a
 * forager of 40 t/h in 20 t/ha, 2 km from the clamp: 8 t take 12 min to fill and 30.3 min round; 4 t take 6 and 24.3.
 */
@Tag("derived")
class TrailerSheetsTest {

    private static SeasonBook farm(String gang, Object rollerMass, Object[]... assumptions) {
        SeasonBook book = new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "Clamp"),
                        row("Moor End", "Long Acre", "grass", 7, 2, 20, "as carted fresh", "Big"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Output (t/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)",
                                "Hours per day"),
                        row("Mower", "mower", 3, 10, 80, null, null, null, null, 6),
                        row("Forager", "forager", 6.5, 5.5, 70, 40, null, null, null, 10),
                        row("Big trailer", "trailer", null, null, null, null, 8, 20, 25),
                        row("Small trailer", "trailer", null, null, null, null, 4, 20, 25),
                        row("Wagon", "forage wagon", null, null, null, 60, 8, 20, 25, 8))
                .sheet(
                        "Clamps",
                        row(
                                "Holding",
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Roller mass (t)"),
                        row("Moor End", "Big", "walled", 40, 12, 3, rollerMass))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("First cut", "grass", "silage", gang));
        if (assumptions.length > 0) {
            Object[][] rows = new Object[assumptions.length + 1][];
            rows[0] = row("Item", "Value", "Unit");
            System.arraycopy(assumptions, 0, rows, 1, assumptions.length);
            book.sheet("Assumptions", rows);
        }
        return book;
    }

    /** Two foragers of 40 t/h fill a trailer each in 12 min: twice 2.525 trailers are wanted, and 80 t/h can be carried. */
    @Test
    void foragersSideBySideEachFillATrailer() {
        SeasonBook.Worked worked = farm("Forager x 2; Big trailer x 6", null).run();
        assertThat(worked.number("cycle-time")).isCloseTo(30.3, within(1e-9));
        assertThat(worked.number("trailers-at-balance")).isCloseTo(5.05, within(1e-9));
        assertThat(worked.number("trailers-needed")).isEqualTo(6);
        assertThat(worked.number("forager-idle-share")).isZero();
        assertThat(worked.number("forager-idle-share-one-fewer")).isCloseTo(100 * (1 - 5 / 5.05), within(1e-9));
        assertThat(worked.number("trailer-queue")).isCloseTo(6 * 12 / 2.0 - 30.3, within(1e-9));
        assertThat(worked.number("chop-and-cart-rate-needed"))
                .isCloseTo(80, within(1e-9))
                .isCloseTo(worked.number("gang-rate-by-mass"), within(1e-9));
        assertThat(worked.number("chop-and-cart-rate-simulated"))
                .as("chance takes something away, not the second forager")
                .isBetween(65.0, 80.0);
        assertThat(worked.differences()).isEmpty();
    }

    /** The mean of a quick and a slow forager is not that of two quick ones and a slow one. */
    @ParameterizedTest
    @CsvSource({
        "Forager x 2; Big trailer x 6, false",
        "Forager; Mule; Big trailer x 6, false",
        "Forager x 2; Mule; Big trailer x 6, true"
    })
    void theMeanOfForagersOfSeveralKindsIsSaidToBeOne(String gang, boolean told) {
        SeasonBook.Worked worked = farm(gang, null)
                .sheet(
                        "More machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Mule", "forager", 3.25, 5.5, 70))
                .run();
        assertThat(worked.messages().stream().filter(message -> message.contains("by the mean of the kinds")))
                .hasSize(told ? 1 : 0);
        assertThat(worked.number("trailers-needed")).isPositive();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void kindsOfTrailersAddUp() {
        SeasonBook.Worked worked =
                farm("Forager; Big trailer; Small trailer x 2", null).run();
        double served = 12 / 30.3 + 2 * 6 / 24.3;
        assertThat(worked.number("forager-idle-share", "Big trailer"))
                .isCloseTo(100 * (1 - served), within(1e-9))
                .isEqualTo(worked.number("forager-idle-share", "Small trailer"));
        // One big trailer serves 39.6 % of the time, so 60.4 % of 4.05 small ones are needed: three.
        assertThat(worked.number("trailers-needed", "Small trailer")).isEqualTo(3);
        assertThat(worked.number("trailers-needed", "Big trailer")).isEqualTo(2);
        assertThat(worked.number("chop-and-cart-rate-one-fewer", "Small trailer"))
                .isCloseTo(60 * (8 / 30.3 + 2 * 4 / 24.3), within(1e-9))
                .isCloseTo(worked.number("chop-and-cart-rate", "Long Acre"), within(1e-9));
        assertThat(worked.number("chop-and-cart-rate-needed", "Small trailer")).isCloseTo(40, within(1e-9));
        assertThat(worked.number("forager-idle-share-needed", "Small trailer")).isZero();
        assertThat(worked.number("trailer-queue-one-more", "Small trailer")).isCloseTo(12 + 4 * 6 - 24.3, within(1e-9));
        assertThat(worked.messages()).anyMatch(m -> m.contains("the forager waits for trailers"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void moreTrailersNeverSlowTheGang() {
        SeasonBook.Worked worked = farm("Forager; Big trailer x 2", null).run();
        double fewer = worked.number("chop-and-cart-rate-one-fewer", "Long Acre");
        double needed = worked.number("chop-and-cart-rate-needed", "Long Acre");
        assertThat(fewer).isLessThan(needed);
        assertThat(worked.number("chop-and-cart-rate-one-more", "Long Acre")).isGreaterThanOrEqualTo(needed);
    }

    @Test
    void wagonsLoadThemselvesAndKeepNoForagerWaiting() {
        SeasonBook.Worked worked = farm("Wagon x 2", null).run();
        assertThat(worked.plan().table("trailers").rows()).isZero();
        // 8 t at 60 t/h take 8 min to load and 26.3 min round.
        assertThat(worked.number("cycle-time", "Wagon")).isCloseTo(26.3, within(1e-9));
        assertThat(worked.number("gang-rate", "Long Acre")).isCloseTo(2 * 8 * 60 / 26.3 / 20, within(1e-9));
        assertThat(worked.number("chop-and-cart-rate-simulated", "Long Acre"))
                .isCloseTo(worked.number("chop-and-cart-rate", "Long Acre"), within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void theClampListRollsWhereTheGangHasNoRoller() {
        SeasonBook.Worked worked = farm("Forager; Big trailer x 3", 14).run();
        assertThat(worked.number("gang-rate", "Long Acre")).isCloseTo(1.75, within(1e-9));
        assertThat(worked.word("bottleneck", "Long Acre")).isEqualTo("rolling");
    }

    /** One definition: what the clamp's own sheet says, read off that sheet. */
    @Test
    void theGangReadsTheClampsOwnRollingCapacity() {
        SeasonBook.Worked worked = farm("Forager; Big trailer x 3", 14).run();
        Result rolling = worked.result("gang-rolling-capacity", "Long Acre");
        assertThat(rolling.number().orElseThrow())
                .isEqualTo(worked.number("rolling-capacity-rule-of-800", "Big"))
                .isCloseTo(35, within(1e-9));
        assertThat(rolling.inputs())
                .filteredOn(input -> input.name().equals("rolling capacity, rule of 800"))
                .hasSize(1);
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aRollerMassThatCannotBeReadWithholdsTheGangAndIsNotLeftOut() {
        SeasonBook.Worked worked = farm("Forager; Big trailer x 3", "heavy").run();
        assertThat(worked.result("gang-rate", "Long Acre").given()).isFalse();
        assertThat(worked.number("carting-rate", "Long Acre")).isPositive();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void mowingIsHeldAgainstTheGangByTheDay() {
        // 2.4 ha/h for 6 h are 14.4 ha; the gang does 2 ha/h for 10 h.
        SeasonBook.Worked worked = farm("Mower; Forager; Big trailer x 3", null).run();
        ResultTable gangs = worked.plan().table("gangs");
        var mowing = org.rickyard.trade.workrate.GangStage.MOWING;
        assertThat(gangs.of(mowing.day()).number(0)).isCloseTo(14.4, within(1e-9));
        assertThat(gangs.of(mowing.slack()).number(0)).isCloseTo(14.4 / 20, within(1e-9));
        assertThat(worked.messages()).anyMatch(m -> m.contains("mowing gets through less in its day than the gang"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void chanceNeverAddsAndIsNothingWithoutSpread() {
        SeasonBook.Worked usual = farm("Forager; Big trailer x 3", null).run();
        assertThat(usual.number("chop-and-cart-rate-simulated", "Long Acre"))
                .isLessThan(usual.number("chop-and-cart-rate", "Long Acre"))
                .isGreaterThan(30);
        SeasonBook.Worked without = farm("Forager; Big trailer x 3", null, row("Spread of carting times", 0, "%"))
                .run();
        assertThat(without.number("chop-and-cart-rate-simulated", "Long Acre"))
                .isCloseTo(without.number("chop-and-cart-rate", "Long Acre"), within(1e-9));
        assertThat(without.number("gang-rate-expected", "Long Acre"))
                .isCloseTo(without.number("gang-rate", "Long Acre"), within(1e-9));
    }

    @Test
    void theSimulationNamesItsMethodSeedAndLoads() {
        SeasonBook.Worked worked = farm(
                        "Forager; Big trailer x 3",
                        null,
                        row("Seed of the carting simulation", 7, null),
                        row("Loads in the carting simulation", 500, null))
                .run();
        Result simulated = worked.result("chop-and-cart-rate-simulated", "Long Acre");
        assertThat(simulated.byMethod()).isTrue();
        // No more digits than any library writes, or the sheet would come back as one that somebody edited.
        assertThat(new java.math.BigDecimal(simulated.number().orElseThrow().toString()).scale())
                .isLessThanOrEqualTo(9);
        assertThat(simulated.words()).contains("one trailer after another is filled");
        assertThat(simulated.inputs())
                .extracting(InputUsed::name)
                .contains("seed", "loads simulated", "spread of times", "load of Long Acre", "cycle time of Long Acre");
        assertThat(input(simulated, "seed")).isEqualTo(7);
        assertThat(input(simulated, "loads simulated")).isEqualTo(500);
        assertThat(input(simulated, "spread of times")).isEqualTo(20);
        assertThat(worked.differences()).isEmpty();
    }

    private static double input(Result result, String name) {
        return result.inputs().stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .flatMap(InputUsed::number)
                .orElseThrow();
    }
}
