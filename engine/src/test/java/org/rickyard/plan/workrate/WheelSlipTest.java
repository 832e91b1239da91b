package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Turns of a wheel with and without its load give the slip. */
class WheelSlipTest {
    private static SeasonBook.Worked tractor(Object loaded, Object unloaded) {
        return new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Wheel turns loaded", "Unloaded wheel revs"),
                        row("Red", "tractor", loaded, unloaded))
                .run();
    }

    /** A tractor's operator's manual, chart of slip over the way of 10 loaded turns. */
    @ParameterizedTest
    @CsvSource({"9, 10", "8.5, 15", "8, 20"})
    @Tag("published")
    void turnsGiveTheSlip(double unloaded, double slip) {
        SeasonBook.Worked worked = tractor(10, unloaded);
        assertThat(worked.number("wheel-slip")).isCloseTo(slip, within(1e-9));
        assertThat(worked.messages().stream().anyMatch(m -> m.contains("more slip than is best")))
                .isEqualTo(slip > 16);
        assertThat(worked.messages()).noneMatch(m -> m.contains("less slip than is best"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void hardlyAnySlipIsTold() {
        assertThat(tractor(10, 9.75).messages()).anyMatch(m -> m.contains("less slip than is best even on concrete"));
    }

    @Test
    void whatIsWantingOrMixedUpWithholdsIt() {
        SeasonBook.Worked worked = tractor(10, null);
        assertThat(worked.result("wheel-slip").reason()).contains("wheel turns unloaded missing (Machines!D2)");
        assertThat(worked.differences()).isEmpty();
        worked = tractor(9, 10);
        assertThat(worked.result("wheel-slip").status()).isEqualTo("withheld");
        assertThat(worked.result("wheel-slip").reason()).contains("are the two mixed up");
        assertThat(worked.messages()).noneMatch(m -> m.contains("slip than is best"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void withoutThoseColumnsNothingIsAddedToAWorkbook() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Machines", row("Machine", "Type", "Power (hp)"), row("Red", "tractor", 120))
                .run();
        assertThat(worked.results()).noneMatch(result -> result.id().equals("wheel-slip"));
    }
}
