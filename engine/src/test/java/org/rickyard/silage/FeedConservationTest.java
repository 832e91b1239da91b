package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.audit.BalanceCheck;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedDemand;

/** What all groups eat is what all holdings must feed, and what is fed from clamps is part of it. */
@Tag("derived")
class FeedConservationTest {
    private static final String DEMAND = "Feed demand: group by group = holding by holding (t DM)";

    @TempDir
    Path folder;

    private SilageBook farms(Object headOfSheep) {
        return new SilageBook(folder)
                .list(
                        "Clamps",
                        row("Holding", "Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row("Moor End", "Big", "walled", 30, 10, 3))
                .list(
                        "Stocks",
                        row("Holding", "Store", "Kind", "Amount (t)", "DM (%)", "Already fed (t)"),
                        row("Moor End", "Big", "clamp", 300, 28, 50),
                        row("Far", "Stack", "bales", 80, 35, null))
                .list(
                        "Herds",
                        row("Holding", "Group", "Head", "Intake (kg DM/d)", "Days", "Clamp"),
                        row("Moor End", "Cows", 90, 11, 170, "Big"),
                        row("Far", "Heifers", 40, 6, 160, null),
                        row("Moor End", "Calves", 33, 3.7, 140, null),
                        row("Far", "Sheep", headOfSheep, 1.1, 60, null))
                .run();
    }

    private static BalanceCheck demand(SilageBook book) {
        return book.checks().stream()
                .filter(check -> check.what().equals(DEMAND))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatTheGroupsEatIsWhatTheHoldingsFeed() throws IOException {
        try (SilageBook book = farms(300)) {
            double groups = (90 * 11 * 170 + 40 * 6 * 160 + 33 * 3.7 * 140 + 300 * 1.1 * 60) / 1000;
            BalanceCheck check = demand(book);
            assertThat(check.left()).isCloseTo(groups, within(1e-9));
            assertThat(check.right()).isCloseTo(groups, within(1e-9));
            assertThat(check.withheld()).isZero();
            assertThat(check.verdict()).isEqualTo("ok");
            assertThat(book.number("feed-balance", FeedBalance.DEMAND_TOTAL, 0)
                            + book.number("feed-balance", FeedBalance.DEMAND_TOTAL, 1))
                    .isCloseTo(groups, within(1e-9));
            // Only the cows are fed from the clamp; stock in hand is after what was fed already.
            assertThat(book.number("clamp-feeding", FeedBalance.DEMAND_TOTAL, 0))
                    .isCloseTo(90 * 11 * 0.17, within(1e-9));
            assertThat(book.number("clamp-feeding", FeedBalance.AVAILABLE, 0)).isCloseTo(250 * 0.28, within(1e-9));
            assertThat(book.number("clamp-feeding", FeedBalance.SURPLUS, 0))
                    .isCloseTo(250 * 0.28 - 90 * 11 * 0.17, within(1e-9));
            assertThat(book.number("feed-balance", FeedBalance.AVAILABLE, 0)
                            + book.number("feed-balance", FeedBalance.AVAILABLE, 1))
                    .isCloseTo(250 * 0.28 + 80 * 0.35, within(1e-9));
        }
    }

    /** A total that cannot be held against another agrees with nothing: the master check must not say it does. */
    @Test
    void aTotalThatLacksRowsIsNotSaidToAgree() throws IOException {
        try (SilageBook book = farms("a few")) {
            assertThat(demand(book).verdict()).isEqualTo("incomplete");
            assertThat(demand(book).withheld()).isEqualTo(2);
            assertThat(book.masterCheck()).isEqualTo("Checks: no total is wrong, but some are incomplete, see Checks");
            assertThat(book.disagreements()).isEmpty();
        }
        try (SilageBook book = farms(300)) {
            assertThat(book.masterCheck()).isEqualTo("Checks: all totals agree");
        }
    }

    /** Nothing listed is not nothing in store: "0 days, buy early" would look like an answer. */
    @Test
    void whereNeitherCropNorStockIsListedNothingIsToldOfHowLongItLasts() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Herds",
                        row("Group", "Head", "kg DM/head/day", "Days", "DM of feed %"),
                        row("Cows", 100, 12, 140, 22),
                        row("Weanlings", 25, 5, 120, 22))
                .run()) {
            assertThat(book.number("feed-balance", FeedBalance.DEMAND_TOTAL, 0)).isCloseTo(183, within(1e-9));
            // Teagasc prints 763 t for the cows, cut off.
            assertThat(Math.floor(book.number("feed-demand", FeedDemand.GROUP_FRESH, 0)))
                    .isEqualTo(763);
            for (Symbol told : List.of(
                    FeedBalance.AVAILABLE, FeedBalance.DAYS_OF_FEED, FeedBalance.SURPLUS, FeedBalance.ANIMALS)) {
                assertThat(book.has("feed-balance", told, 0)).as(told.name()).isFalse();
            }
            assertThat(book.status("feed-balance", 0)).contains("no crop and no stock is listed for this feed");
            assertThat(book.cautions("feed-balance", 0)).doesNotContain("buy early");
        }
    }

    @Test
    void aStoreWhoseAmountIsNotKnownIsListedAllTheSame() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list("Herds", row("Group", "Head", "Intake (kg DM/d)", "Days"), row("Cows", 100, 12, 140))
                .list("Stocks", row("Store", "Amount (t)", "DM (%)"), row("Big", "lots", 25))
                .run()) {
            assertThat(book.has("feed-balance", FeedBalance.DAYS_OF_FEED, 0)).isFalse();
            assertThat(book.status("feed-balance", 0)).doesNotContain("no crop and no stock is listed");
        }
    }

    @Test
    void rowsOfOneClampAreAddedUpAndThatIsTold() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Density, fresh (kg/m3)"),
                        row("One", "walled", 20, 8, 2.5, 700))
                .list("Herds", row("Group", "Head", "Intake (kg DM/d)", "Days"), row("Cows", 60, 10, 150))
                .list(
                        "Stocks",
                        row("Store", "Kind", "Amount (t)", "DM (%)"),
                        row("One", "clamp", 200, 28),
                        row("one ", "clamp", 150, 30),
                        row("One", "bales", 20, 30))
                .run()) {
            assertThat(book.number("feed-balance", FeedBalance.AVAILABLE, 0)).isCloseTo(56 + 45 + 6, within(1e-9));
            assertThat(book.findings())
                    .filteredOn(said -> said.contains("which are added up"))
                    .singleElement()
                    .asString()
                    .startsWith("CAUTION Stocks!A3 the clamp 'One' stands in 2 rows of Stocks (Stocks!A2, Stocks!A3),");
        }
    }

    @Test
    void aStoreFedOutIsNoFeedAndThatIsTold() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list("Herds", row("Group", "Head", "Intake (kg DM/d)", "Days"), row("Cows", 100, 12, 140))
                .list("Stocks", row("Store", "Amount (t)", "DM (%)", "Already fed (t)"), row("Big", 300, 25, 300))
                .run()) {
            assertThat(book.number("feed-balance", FeedBalance.DAYS_OF_FEED, 0)).isZero();
            assertThat(book.number("feed-balance", FeedBalance.SURPLUS, 0)).isCloseTo(-168, within(1e-9));
            assertThat(book.cautions("feed-balance", 0)).contains("buy early");
        }
    }

    @Test
    void oneGroupWithheldWithholdsItsHoldingAndTheCheckSaysSo() throws IOException {
        try (SilageBook book = farms(null)) {
            assertThat(book.has("feed-balance", FeedBalance.DEMAND_TOTAL, 0)).isTrue();
            assertThat(book.has("feed-balance", FeedBalance.DEMAND_TOTAL, 1)).isFalse();
            assertThat(demand(book).verdict()).isEqualTo("incomplete");
            assertThat(demand(book).withheld()).isEqualTo(2);
        }
    }

    /** The check can fail: held against a column that is not its other route, it does. */
    @Test
    void aTotalThatIsNotTheOtherIsFound() throws IOException {
        try (SilageBook book = farms(300)) {
            ResultTable groups = book.table("feed-demand");
            ResultTable clamps = book.table("clamp-feeding");
            BalanceCheck wrong = new BalanceCheck(
                    "groups = clamps",
                    List.of(new BalanceCheck.Part(groups, FeedDemand.GROUP_DEMAND, null, true)),
                    List.of(new BalanceCheck.Part(clamps, FeedBalance.DEMAND_TOTAL, null, true)));
            assertThat(wrong.withheld()).isZero();
            assertThat(wrong.verdict()).isEqualTo("CHECK");
        }
    }
}
