package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Several groups of one holding: unlike intakes are added up, and periods that follow one another are told. */
class UnlikeGroupsTest {
    private static final String AT_ONCE = "count all rows as eating at once";

    private static SeasonBook.Worked of(double stored, Object[] header, Object[]... groups) {
        Object[][] rows = new Object[groups.length + 1][];
        rows[0] = header;
        System.arraycopy(groups, 0, rows, 1, groups.length);
        return new SeasonBook()
                .sheet("Stocks", row("Store", "Kind", "Amount (t)", "DM (%)"), row("Stack", "bales", stored, 28))
                .sheet("Herds", rows)
                .run();
    }

    private static Object[] days() {
        return row("Group", "Head", "Intake (kg DM/day)", "Days");
    }

    /** Teagasc's two groups, 1,200 and 125 kg a day, 168 and 15 t: of 210 t of dry matter for 158.5 days 27 t are over. */
    @Test
    @Tag("published")
    void unlikeIntakesAreAddedUpByTheDayAndByThePeriod() {
        SeasonBook.Worked worked = of(750, days(), row("Cows", 100, 12, 140), row("Weanlings", 25, 5, 120));

        assertThat(worked.number("days-of-feed")).isCloseTo(750 * 0.28 / 1.325, within());
        assertThat(worked.number("surplus-or-shortfall")).isCloseTo(750 * 0.28 - 183, within());
        assertThat(worked.messages()).noneMatch(m -> m.contains(AT_ONCE));
        assertThat(worked.differences()).isEmpty();
    }

    private static Offset<Double> within() {
        return Offset.offset(1e-9);
    }

    /** One herd before and after Christmas ate as two herds: its 150 days of feed were 76, and nothing was said. */
    @Test
    void oneGroupInTwoPeriodsIsTold() {
        SeasonBook.Worked worked = of(600, days(), row("Cows", 100, 10, 60), row("cows ", 100, 12, 90));

        assertThat(worked.messages())
                .anyMatch(m -> m.startsWith("the group 'Cows' stands in 2 rows (Herds!A2, Herds!A3), and days of feed,")
                        && m.contains(AT_ONCE)
                        && m.contains("write one row with all its days"));
    }

    @Test
    void periodsThatFollowOneAnotherAreToldByTheirDates() {
        Object[] header = row("Group", "Head", "Intake (kg DM/day)", "Start", "End");
        LocalDate christmas = LocalDate.of(2026, 12, 25);
        Object[] early = row("Early", 100, 10, LocalDate.of(2026, 11, 1), christmas);
        Object[] late = row("Late", 100, 12, christmas.plusDays(1), LocalDate.of(2027, 3, 30));
        Object[] both = row("Both", 100, 12, christmas, LocalDate.of(2027, 3, 30));

        assertThat(of(600, header, early, late).messages())
                .anyMatch(m ->
                        m.startsWith("'Late' is fed only when 'Early' (Herds!E2) no longer is") && m.contains(AT_ONCE));
        assertThat(of(600, header, early, both).messages()).noneMatch(m -> m.contains(AT_ONCE));
    }
}
