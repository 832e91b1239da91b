package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.names;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;

/** Hay and straw as they are kept on sheets of their own. */
class BaleStoresTest {
    @ParameterizedTest
    @CsvSource({
        "Hay store, Hay, No. of bales, Bale weight (kg)",
        "Straw stock, Straw, Bales, Weight each (kg)",
        "Hay and straw in store, Hay / straw, Bales, kg per bale",
        "Bale store, Bale type, Number, kg each",
        "Bale store, Location, Bales, Weight each (kg)"
    })
    void whatIsStoredIsTheStore(String sheet, String store, String count, String weight) {
        FoundLists found = find(new SheetOf(sheet).row(store, count, weight).row("First cut", 120, 250));
        ListRows stocks = found.rows(Stocks.LIST);
        assertThat(names(stocks, Stocks.STORE)).containsExactly("First cut");
        assertThat(stocks.number(Stocks.COUNT, 0)).isEqualTo(120);
        assertThat(stocks.number(Stocks.WEIGHT_EACH, 0)).isEqualTo(250);
        assertThat(found.findings()).isEmpty();
    }

    /** Elsewhere they may be what was made or fed: not read, but told. */
    @Test
    void onASheetOfNoNameTheyAreAskedAbout() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Hay", "No. of bales", "Bale weight (kg)", "DM %")
                .row("First cut", 120, 250, 85));
        assertThat(found.rows(Stocks.LIST).size()).isZero();
        assertThat(messages(found, Severity.CAUTION))
                .singleElement()
                .asString()
                .contains("the list Stocks, but it has no column Store", "\"Hay\"");
    }

    /** Twenty of a spray in its store were twenty tonnes of feed. */
    @Test
    void whereSpraysAreKeptIsNoStoreOfFeed() {
        FoundLists found = FoundIn.find(new SheetOf("Stocks")
                .row("Product", "Location", "Amount")
                .row("Spray", "Lock-up", 20)
                .row("Wetter", "Lock-up", 10));
        assertThat(found.rows(Stocks.LIST).size()).isZero();
    }

    /** On another sheet the bales may have been made there. */
    @Test
    void aLocationIsNoStoreOnASheetOfNoName() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Location", "No. of bales", "Bale weight (kg)", "DM %")
                .row("Top barn", 120, 250, 85));
        assertThat(found.rows(Stocks.LIST).size()).isZero();
        assertThat(messages(found, Severity.CAUTION)).singleElement().asString().contains("\"Location\"");
    }
}
