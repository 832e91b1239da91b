package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.testing.SeasonBook;

/** Budgets are kept in dry matter, and so are the stores of some. */
class StocksInDryMatterTest {
    /** Greenfield farm, Farmers Journal 216282: 900 bales of 220 kg of dry matter, "about 200 t"; 32 % there on average. */
    @Test
    @Tag("published")
    void balesMayBeWeighedInDryMatter() {
        SeasonBook.Worked worked = of(row("Store", "Kind", "Count", "Weight each (kg DM)", "DM (%)"), 900, 220, 32);

        assertThat(worked.number("stock-dry-matter")).isCloseTo(198, Offset.offset(1e-9));
        assertThat(worked.number("stock-in-hand")).isCloseTo(618.75, Offset.offset(1e-9));
    }

    /** agproud.com: 300 t at 33-34 % is 100 t of dry matter. */
    @Test
    @Tag("published")
    void theAmountMayBeToldInDryMatter() {
        SeasonBook.Worked worked =
                of(row("Store", "Kind", "Amount (t DM)", "DM (%)", "Already fed (t)"), 100, 33.5, 100);

        assertThat(worked.number("stock-in-hand")).isCloseTo(200, Offset.offset(2.0));
    }

    /** A budget is made in dry matter: only what is said of it fresh asks for its share. */
    @Test
    void withoutTheShareOfDryMatterOnlyTheFreshIsWithheldAndAsked() {
        SeasonBook.Worked worked = of(row("Store", "Kind", "Amount (t DM)", "DM (%)"), 100, null);

        assertThat(worked.number("stock-dry-matter")).isEqualTo(100);
        assertThat(worked.number("feed-available")).isEqualTo(100);
        assertThat(of(row("Store", "Kind", "Count", "Weight each (kg DM)"), 900, 220)
                        .number("stock-dry-matter"))
                .isCloseTo(198, Offset.offset(1e-9));
        assertThat(worked.result("stock-in-hand").number()).isEmpty();
        assertThat(worked.result("stock-in-hand").reason()).doesNotContain("amount in store missing");
        assertThat(worked.messages()).anyMatch(message -> message.startsWith("dry matter missing"));
    }

    @Test
    void aBlankInItsColumnIsWhatIsMissing() {
        SeasonBook.Worked worked = of(row("Store", "Kind", "Count", "Weight each (kg DM)", "DM (%)"), 80, null, 86);

        assertThat(worked.result("stock-in-hand").number()).isEmpty();
        assertThat(worked.findings())
                .anyMatch(finding -> finding.message().startsWith("weight each missing")
                        && finding.cell().map(Object::toString).equals(Optional.of("Stocks!D2")));
    }

    /** What was fed since is told fresh. */
    @Test
    void whatWasFedOfItSinceAsksForTheShare() {
        SeasonBook.Worked worked = of(row("Store", "Kind", "Amount (t DM)", "Already fed (t)"), 100, 20);

        assertThat(worked.result("stock-dry-matter").number()).isEmpty();
    }

    /** It was passed over for 100 bales of 700 kg. */
    @Test
    void anAmountThatCannotBeReadIsNotReckonedFromBales() {
        for (Object amount : new Object[] {"much", -5}) {
            SeasonBook.Worked worked = worked(
                    row("Store", "Kind", "Amount (t DM)", "Count", "Weight each (kg)", "DM (%)"), amount, 100, 700, 28);

            assertThat(worked.result("stock-in-hand").reason()).contains("amount in store, dry matter");
            assertThat(worked.result("stock-dry-matter").number()).isEmpty();
            assertThat(worked.differences()).isEmpty();
        }
    }

    private static SeasonBook.Worked of(Object[] headers, Object... figures) {
        SeasonBook.Worked worked = worked(headers, figures);
        assertThat(worked.findings()).noneMatch(finding -> finding.severity() == Severity.STOP);
        assertThat(worked.differences()).isEmpty();
        return worked;
    }

    private static SeasonBook.Worked worked(Object[] headers, Object... figures) {
        Object[] store = new Object[headers.length];
        store[0] = "Stack";
        store[1] = "bales";
        System.arraycopy(figures, 0, store, 2, figures.length);
        return new SeasonBook()
                .sheet("Stocks", headers, store)
                .sheet("Herds", row("Group", "Head", "Intake (kg DM/day)", "Days"), row("Cows", 40, 10, 100))
                .run();
    }
}
