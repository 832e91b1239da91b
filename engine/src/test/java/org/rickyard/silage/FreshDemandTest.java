package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What stock eats, where it is known as it lies and nobody knows the dry matter of it. */
class FreshDemandTest {
    /**
     * Teagasc as reported: five months, 100 cows at 1.6 t 800 t, 22 heifers at 1.3 t 143 t, 25 weanlings at 0.7 t 87.5 t
     * (the total printed there is a slip).
     */
    @Test
    @Tag("published")
    void tonnesAMonthGiveTheFreshDemandWithoutDryMatter() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fodder budget",
                        row("Type of stock", "Number", "Months", "Tonnes per month"),
                        row("Dairy cows", 100, 5, 1.6),
                        row("In-calf heifers", 22, 5, 1.3),
                        row("Weanlings", 25, 5, 0.7))
                .run();
        assertThat(worked.number("feed-demand-fresh", "Dairy cows")).isCloseTo(800, within(0.5));
        assertThat(worked.number("feed-demand-fresh", "In-calf heifers")).isCloseTo(143, within(0.5));
        assertThat(worked.number("feed-demand-fresh", "Weanlings")).isCloseTo(87.5, within(0.05));
        assertThat(worked.result("feed-demand", "Dairy cows").given()).isFalse();
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("the demand is given fresh alone, and nothing of dry matter"));
        assertThat(worked.differences()).isEmpty();
    }

    /** Bales are no clamp: a group fed from them was a stop for want of a list of clamps, though all of it is reckoned. */
    @Test
    @Tag("derived")
    void aGroupFedFromBalesCountsForTheFarm() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Stocks",
                        row("Store", "Kind", "Count", "Weight each (kg)", "DM (%)"),
                        row("Baleage", "bales", 180, 700, 45))
                .sheet(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Fed from"),
                        row("Heifers", 90, 4, 76, "Baleage"))
                .run();
        assertThat(worked.number("feed-available")).isCloseTo(180 * 0.7 * 0.45, within(1e-9));
        assertThat(worked.number("feed-demand")).isCloseTo(90 * 4 * 76 / 1000.0, within(1e-9));
        assertThat(worked.messages())
                .noneMatch(message -> message.contains("this group is fed from a clamp"))
                .anyMatch(message -> message.startsWith("'Baleage' is a store on Stocks and no clamp"));
    }

    /** Grass that is grazed lies in no clamp, and was a stop that asked for it in the list of clamps. */
    @Test
    @Tag("derived")
    void whatLiesInNoClampIsNoStop() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row("Pit A", "walled", 30, 8, 2.5))
                .sheet(
                        "Herds",
                        row("Group", "Head", "Intake (kg DM/d)", "Days", "Feed source"),
                        row("Heifers", 90, 4, 76, "Grazing"),
                        row("Cows", 90, 8, 76, "Pit B"))
                .run();
        assertThat(worked.messages())
                .noneMatch(message -> message.contains("no clamp 'Grazing'"))
                .anyMatch(message -> message.startsWith("'Grazing' is taken for feed that lies in no clamp"))
                .anyMatch(message -> message.contains("there is no clamp 'Pit B' in the clamp list"));
    }

    /** Farmers Journal: 30 cows for 14 days at 50 kg are 21 t. */
    @Test
    @Tag("published")
    void kilogramsADayDoToo() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Herd", row("Group", "Cows", "Silage (kg fresh/day)", "Days"), row("Cows", 30, 50, 14))
                .run();
        assertThat(worked.number("feed-demand-fresh")).isCloseTo(21, within(0.5));
        assertThat(worked.differences()).isEmpty();
    }

    /** Teagasc: 100 cows, 140 days, 12 kg: 168 t DM, 763 t at 22 %, cut off instead of rounded (F2). */
    @Test
    @Tag("published")
    void theFreshDemandOfADryIntakeIsAnAnswerToo() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Stock", row("Class", "Head", "Days", "kg DM/day", "DM %"), row("Cows", 100, 140, 12, 22))
                .run();
        assertThat(worked.number("feed-demand")).isCloseTo(168, within(0.5));
        assertThat(Math.floor(worked.number("feed-demand-fresh"))).isEqualTo(763);
        assertThat(worked.differences()).isEmpty();
    }

    /** Farmers Journal: 30 sucklers at 1.5 t a month for 4 months are 180 t. */
    @Test
    @Tag("published")
    void aColumnStockNamesTheGroups() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Herd", row("Stock", "Number", "t/head/month", "Months"), row("Sucklers", 30, 1.5, 4))
                .run();
        assertThat(worked.number("feed-demand-fresh", "Sucklers")).isCloseTo(180, within(0.5));
        assertThat(worked.differences()).isEmpty();
    }
}
