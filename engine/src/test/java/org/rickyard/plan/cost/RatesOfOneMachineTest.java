package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/**
 * Interest, insurance and housing of one machine, typed in its own row as worked examples tell them: they were not read,
 * and had to be typed on Assumptions, for all machines alike.
 */
@Tag("derived")
class RatesOfOneMachineTest {
    private static Object[] tractor(String name, Object interest, Object insurance) {
        return row(name, "tractor", 685000, 685000 * 0.33, 15, 450, interest, insurance);
    }

    private static SeasonBook machines(String interest, String insurance, Object[]... rows) {
        Object[][] all = new Object[rows.length + 1][];
        all[0] = row(
                "Machine",
                "Type",
                "Purchase price",
                "Trade-in value",
                "Life (yr)",
                "Hours per year (h)",
                interest,
                insurance);
        System.arraycopy(rows, 0, all, 1, rows.length);
        return new SeasonBook().sheet("Machines", all);
    }

    private static double number(SeasonBook.Worked worked, String id, String name) {
        return worked.result(id, name).number().orElseThrow();
    }

    /**
     * An examination case, inputs published, answers derived: 685,000, 33 % left after 15 years, 450 h a year, interest 3
     * %, insurance and housing 1 % of the purchase price: interest 13,665.75, insurance 6,850, 113.58 an hour.
     */
    @Test
    void aWorkedExampleIsAnsweredFromItsOwnRow() {
        SeasonBook.Worked worked = machines("Interest (%)", "Insurance and housing (%)", tractor("Exam", 3, 1))
                .run();
        assertThat(number(worked, "interest", "Exam")).isCloseTo(13665.75, within(0.005));
        assertThat(number(worked, "insurance-and-housing", "Exam")).isCloseTo(6850, within(1e-9));
        assertThat(number(worked, "ownership-cost-per-hour", "Exam")).isCloseTo(113.58, within(0.005));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void itsOwnStandsBeforeThatOfAllMachines() {
        SeasonBook.Worked worked = machines(
                        "Interest (%)",
                        "Insurance and housing (%)",
                        tractor("Own", 3, 1),
                        tractor("As all", null, null),
                        tractor("Unread", "high", null))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Interest rate", 6, "%"),
                        row("Insurance and housing", 2, "%"))
                .run();
        assertThat(number(worked, "interest", "Own")).isCloseTo(13665.75, within(0.005));
        assertThat(number(worked, "interest", "As all")).isCloseTo(2 * 13665.75, within(0.005));
        assertThat(number(worked, "insurance-and-housing", "As all")).isCloseTo(13700, within(1e-9));
        assertThat(worked.result("interest", "Unread").number()).isEmpty();
        assertThat(worked.differences()).isEmpty();
    }

    /** A column of what interest comes to in money is no rate. */
    @Test
    void moneyIsNotTakenForARate() {
        for (String header : new String[] {"Interest", "Interest (£/yr)"}) {
            SeasonBook.Worked worked = machines(header, "Notes", tractor("Reckoned", 3, null))
                    .sheet(
                            "Assumptions",
                            row("Item", "Value", "Unit"),
                            row("Interest rate", 6, "%"),
                            row("Insurance and housing", 2, "%"))
                    .run();
            assertThat(number(worked, "interest", "Reckoned")).as(header).isCloseTo(27331.5, within(0.005));
        }
    }

    @Test
    void whatMayBeAFractionIsTold() {
        SeasonBook.Worked worked = machines("Interest rate", "Insurance and housing", tractor("Fractions", 0.08, 0.01))
                .run();
        assertThat(worked.findings())
                .anyMatch(finding -> finding.message().startsWith("Interest rate 0.08 % is unusual"))
                .anyMatch(finding -> finding.message().startsWith("Insurance and housing 0.01 % is unusual"));
    }
}
