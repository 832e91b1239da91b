package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;

/** Bales that are counted under a header without a unit are no tonnes. */
class CountedBalesTest {
    /** 15 of 210 bales at 320 kg are 4.8 t, and not 15. */
    @ParameterizedTest
    @CsvSource({"Already fed, false", "Used to date, false", "Already fed (t), true", "Tonnes fed, true"})
    void whatIsFedOfCountedBalesIsAskedFor(String header, boolean read) {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Kind", "Count", "Weight each (kg)", "DM (%)", header)
                .row("Haylage", "bales", 210, 320, 60, 15));
        assertThat(found.rows(Stocks.LIST).gives(Stocks.ALREADY_FED, 0)).isEqualTo(read);
        assertThat(messages(found, Severity.STOP)).hasSize(read ? 0 : 1);
    }

    @Test
    void whatIsFedOfTonnesIsInTonnes() {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Kind", "Amount (t)", "Count", "Weight each (kg)", "DM (%)", "Already fed")
                .row("Pit", "clamp", 600, null, null, 28, 120)
                .row("Haylage", "bales", null, 210, 320, 60, null));
        assertThat(found.rows(Stocks.LIST).number(Stocks.ALREADY_FED, 0)).isEqualTo(120);
        assertThat(found.rows(Stocks.LIST).gives(Stocks.ALREADY_FED, 0)).isTrue();
    }

    /** 320 bales stood there as 320 t. */
    @ParameterizedTest
    @CsvSource({"Qty, false", "Stock, false", "On hand, false", "Tonnes, true", "Amount (t), true"})
    void whatIsThereBesideTheWeightOfEachIsAskedFor(String header, boolean read) {
        FoundLists found = find(new SheetOf("Feed on hand")
                .row("Store", "Kind", header, "Weight each (lb)", "DM (%)")
                .row("Round hay", "bales", 320, 1150, 88));
        assertThat(found.rows(Stocks.LIST).gives(Stocks.AMOUNT, 0)).isEqualTo(read);
        assertThat(messages(found, Severity.STOP)).hasSize(read ? 0 : 1);
    }

    /** 310 bales stood there as 310 t, for "Unit weight" was not read, or no weight was there at all. */
    @ParameterizedTest
    @CsvSource({"Unit weight (t), 0.65", "Avg weight (lb), 1150", "Each (kg), 650", "lb/bale, 1150", "Remarks,"})
    void howManyBalesThereAreIsNoAmount(String header, Double weight) {
        FoundLists found = find(new SheetOf("Feed on hand")
                .row("Feed", "Kind", "Quantity", "DM (%)", header)
                .row("Round hay", "Round bales", 310, 88, weight)
                .row("Pit", "clamp", 400, 28, null));
        assertThat(found.rows(Stocks.LIST).gives(Stocks.AMOUNT, 0)).isFalse();
        assertThat(messages(found, Severity.STOP)).singleElement().satisfies(stop -> assertThat(stop)
                .contains("says no unit", "so many bales?"));
        assertThat(messages(found, Severity.NOTE)).noneMatch(note -> note.contains("Amount (t); the units"));
    }

    @ParameterizedTest
    @CsvSource({"Unit weight (t), 0.65, t", "Each (lb), 1150, lb", "lb/bale, 1150, lb", "lbs per bale, 1150, lb"})
    void theWeightOfEachIsInTheUnitThatItsHeaderSays(String header, double weight, String unit) {
        FoundLists found = find(new SheetOf("Feed on hand")
                .row("Feed", "Kind", "Count", "DM (%)", header)
                .row("Round hay", "bales", 310, 88, weight));
        assertThat(found.rows(Stocks.LIST)
                        .unit(Stocks.WEIGHT_EACH, 0)
                        .orElseThrow()
                        .symbol())
                .isEqualTo(unit);
    }

    @Test
    void clampsAloneAreInTonnes() {
        FoundLists found = find(new SheetOf("Feed on hand")
                .row("Feed", "Kind", "Quantity", "DM (%)")
                .row("Pit", "clamp", 400, 28)
                .row("Bales", "bales", null, 60));
        assertThat(found.rows(Stocks.LIST).number(Stocks.AMOUNT, 0)).isEqualTo(400);
        assertThat(found.rows(Stocks.LIST).gives(Stocks.AMOUNT, 0)).isTrue();
    }

    @Test
    void aCountBesideItLeavesTheAmountInTonnes() {
        FoundLists found = find(new SheetOf("Feed on hand")
                .row("Store", "Kind", "Qty", "Bales", "Weight each (kg)", "DM (%)")
                .row("Pit", "clamp", 320, null, null, 28)
                .row("Hay", "bales", null, 40, 300, 86));
        assertThat(found.rows(Stocks.LIST).number(Stocks.AMOUNT, 0)).isEqualTo(320);
        assertThat(found.rows(Stocks.LIST).gives(Stocks.AMOUNT, 0)).isTrue();
    }
}
