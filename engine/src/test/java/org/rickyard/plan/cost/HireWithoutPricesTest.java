package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.testing.SeasonBook;

/** A list of contractors' charges, with no price of anything: the bill all the same. Figures: derived arithmetic. */
@Tag("derived")
class HireWithoutPricesTest {
    private static SeasonBook.Worked farm(String ownOrHired) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ac)"), row("A", "Grass", 20), row("B", "Grass", 35))
                .sheet(
                        "Contractors",
                        row(
                                "Machine",
                                "Type",
                                "Own or hired",
                                "Rate",
                                "Per",
                                "Includes",
                                "Width (ft)",
                                "Speed (mph)",
                                "Efficiency (%)"),
                        row("Mower", "mower", ownOrHired, 21, "acre", "all in", 10, 7, 80))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("all", "mow", "Mower"))
                .run();
    }

    @Test
    void theBillIsTheChargeTimesTheAcres() {
        SeasonBook.Worked worked = farm("Contractor");
        // 20 and 35 acres at 21 an acre.
        assertThat(worked.number("hire-bill", "A")).isCloseTo(420, within(1e-9));
        assertThat(worked.number("hire-bill", "B")).isCloseTo(735, within(1e-9));
        assertThat(worked.number("holding-cost")).isCloseTo(1155, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aChargeOfWhichNobodySaysThatItIsForHireIsToldToBeInNoBill() {
        SeasonBook.Worked worked = farm(null);
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("is in no bill"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.cell().orElseThrow()).hasToString("Contractors!D2");
                    assertThat(finding.message())
                            .isEqualTo(
                                    "'Mower' has a charge but nothing says that it is hired, so it is reckoned as your"
                                            + " own and the charge is in no bill. Write hired (or own) in a column Own or hired,"
                                            + " and in Charge includes whether the charge is for everything, all but fuel, or the"
                                            + " machine only.");
                });
    }
}
