package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** A list of contractors and what they ask for, where nobody knows yields, widths or speeds. */
class ContractorsWithoutYieldTest {
    private static SeasonBook.Worked hired(String header, String unit, double charge) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "grass"))
                .sheet(
                        "Contractors",
                        row("Machine", "Type", "Own or hired", header, "Charge unit", "Charge includes"),
                        row("Mower", "mower", "contractor", charge, unit, "everything"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Mower"))
                .run();
    }

    /** National Association of Agricultural Contractors, reported: mowing 30.30 a hectare. */
    @Test
    @Tag("derived")
    void aChargeByTheHectareNeedsNoYield() {
        SeasonBook.Worked worked = hired("Charge", "ha", 30.30);
        assertThat(worked.number("hire-bill")).isCloseTo(303, within(1e-9));
        assertThat(worked.number("cost-of-work")).isCloseTo(303, within(1e-9));
        assertThat(worked.number("cost-per-hectare")).isCloseTo(30.30, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    @Tag("derived")
    void aCustomRateByTheAcreIsThatCharge() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 100, "hay"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Own or hired", "Custom rate ($/ac)", "Charge includes"),
                        row("Mower", "mower", "custom hired", 14, "everything"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Mower"))
                .run();
        assertThat(worked.number("hire-bill")).isCloseTo(1400, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    @Tag("derived")
    void aChargeByTheTonneSaysThatNoYieldIsThere() {
        SeasonBook.Worked worked = hired("Charge", "t", 2);
        assertThat(worked.result("hire-bill").given()).isFalse();
        assertThat(worked.result("hire-bill").reason())
                .contains("yield as carted missing: no list has a column that it could come from");
        assertThat(worked.differences()).isEmpty();
    }
}
