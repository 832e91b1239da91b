package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.quantity.Units;

/** What a nozzle gives is caught for a quarter, half or whole minute, and the header says so. */
class CatchTimeTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ml in 30 s | 600",
                "mL in 30 seconds | 600",
                "ml/30 s | 600",
                "ml / 30sec | 600",
                "ml per 30 s | 600",
                "mls in 30 secs | 600",
                "Catch (ml in 30 s) | 600",
                "Catch, ml/30 s | 600",
                "Caught in 30 s (ml) | 600",
                "Collected in 30 seconds (ml) | 600",
                "Output ml in 30 s | 600",
                "Flow (mL/30 s) | 600",
                "Catch (ml in 15 s) | 300",
                "ml in 15 s | 300",
                "Catch (ml in 1 min) | 1200",
                "ml in 1 minute | 1200",
                "Catch (ml in 60 s) | 1200",
                "Catch (L in 30 s) | 0.6",
                "Flow (ml/min) | 1200"
            })
    void whatIsCaughtInATimeIsAFlow(String header, double caught) {
        FoundLists found = find(new SheetOf("Nozzle test")
                .row("Sprayer", "Nozzle", header, "Pressure (bar)")
                .row("Boom 24", "1", caught, 3));
        ListRows tests = found.rows(NozzleTest.LIST);
        assertThat(found.findings()).isEmpty();
        assertThat(tests.unit(NozzleTest.FLOW, 0).orElseThrow().convert(caught, Units.L_PER_MIN))
                .isCloseTo(1.2, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"Catch (fl oz in 15 s)", "oz in 15 sec", "Ounces in 15 seconds"})
    void whoseOuncesIsStillAsked(String header) {
        SheetOf test = new SheetOf("Nozzle test")
                .row("Sprayer", "Nozzle", header, "Pressure (bar)")
                .row("Boom 24", "1", 10, 3);
        FoundLists found = find(test);
        assertThat(found.findings()).singleElement().satisfies(asked -> assertThat(asked.message())
                .contains("fl oz"));
        ListRows tests = find(
                        test, new SheetOf("Assumptions").row("Item", "Value").row("Customary units", "US"))
                .rows(NozzleTest.LIST);
        assertThat(tests.unit(NozzleTest.FLOW, 0).orElseThrow().convert(10, Units.L_PER_MIN))
                .isCloseTo(40 * 0.0295735295625, within(1e-12));
    }

    /** Without the time there is no flow, and a time alone is no catch. */
    @ParameterizedTest
    @CsvSource({"Catch (ml)", "Catch in 30 s"})
    void anAmountWithoutItsTimeIsAsked(String header) {
        FoundLists found = find(new SheetOf("Nozzle test")
                .row("Sprayer", "Nozzle", header, "Pressure (bar)")
                .row("Boom 24", "1", 600, 3));
        assertThat(found.rows(NozzleTest.LIST).gives(NozzleTest.FLOW, 0)).isFalse();
        assertThat(found.findings()).isNotEmpty();
    }
}
