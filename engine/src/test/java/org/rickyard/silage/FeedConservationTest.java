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
import org.rickyard.plan.ResultTable;
import org.rickyard.trade.silage.Feeding;

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
            assertThat(book.number("feed-balance", Feeding.DEMAND_TOTAL, 0)
                            + book.number("feed-balance", Feeding.DEMAND_TOTAL, 1))
                    .isCloseTo(groups, within(1e-9));
            // Only the cows are fed from the clamp; stock in hand is after what was fed already.
            assertThat(book.number("clamp-feeding", Feeding.DEMAND_TOTAL, 0)).isCloseTo(90 * 11 * 0.17, within(1e-9));
            assertThat(book.number("clamp-feeding", Feeding.AVAILABLE, 0)).isCloseTo(250 * 0.28, within(1e-9));
            assertThat(book.number("clamp-feeding", Feeding.SURPLUS, 0))
                    .isCloseTo(250 * 0.28 - 90 * 11 * 0.17, within(1e-9));
            assertThat(book.number("feed-balance", Feeding.AVAILABLE, 0)
                            + book.number("feed-balance", Feeding.AVAILABLE, 1))
                    .isCloseTo(250 * 0.28 + 80 * 0.35, within(1e-9));
        }
    }

    @Test
    void oneGroupWithheldWithholdsItsHoldingAndTheCheckSaysSo() throws IOException {
        try (SilageBook book = farms(null)) {
            assertThat(book.has("feed-balance", Feeding.DEMAND_TOTAL, 0)).isTrue();
            assertThat(book.has("feed-balance", Feeding.DEMAND_TOTAL, 1)).isFalse();
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
                    List.of(new BalanceCheck.Part(groups, Feeding.GROUP_DEMAND, null, true)),
                    List.of(new BalanceCheck.Part(clamps, Feeding.DEMAND_TOTAL, null, true)));
            assertThat(wrong.withheld()).isZero();
            assertThat(wrong.verdict()).isEqualTo("CHECK");
        }
    }
}
