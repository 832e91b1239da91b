package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Prices on Assumptions whose unit stands in their name, as in "Fuel price ($/gal)", or is plain from the number. */
class PricesInTheItemTest {
    private static SeasonBook.Worked tractor(String item, Object rate) {
        return new SeasonBook()
                .sheet(
                        "Tractors",
                        row(
                                "Tractor",
                                "Type",
                                "List price ($)",
                                "Initial cost ($)",
                                "Salvage value ($)",
                                "Ownership life (yr)",
                                "Annual use (h)"),
                        row("T180", "tractor", 150000, 130000, 34500, 15, 400))
                .sheet("Assumptions", row("Item", "Value"), row(item, rate))
                .run();
    }

    /** Iowa State AgDM A3-29, 180 hp: capital recovery factor of 8 % over 15 years, 0.1168. */
    @Test
    @Tag("derived")
    void aRateOfAWholePerCentIsOneHoweverItIsWritten() {
        for (String item : new String[] {"Interest rate", "Interest rate (%)", "Interest rate, %", "Interest rate %"}) {
            SeasonBook.Worked worked = tractor(item, 8);
            assertThat(worked.number("capital-recovery-factor")).as(item).isCloseTo(0.1168, within(0.00005));
            assertThat(worked.number("capital-recovery")).as(item).isCloseTo(13917.22, within(0.005));
            assertThat(worked.differences()).isEmpty();
        }
    }

    /** Iowa State: 4.62 US gal/h at 3.40 a gallon is 15.71 an hour, 15 % of it for oil 2.36. */
    @Test
    @Tag("published")
    void aPriceByTheGallonIsReadFromTheItem() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Acres", "Crop"), row("A", 10, "hay"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Acres per hour", "Fuel (gal/h)"),
                        row("Mower", "mower", 10, 4.62))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mowing", "Mower"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value"),
                        row("Customary units", "US"),
                        row("Fuel price ($/gal)", 3.40),
                        row("Wage ($/h)", 15))
                .run();
        assertThat(worked.number("fuel-cost")).isCloseTo(15.71, within(0.005));
        assertThat(worked.number("lubricant-cost")).isCloseTo(2.36, within(0.005));
        // Ten acres an hour for an hour, and a tenth more for the driver (derived).
        assertThat(worked.number("labour-cost")).isCloseTo(16.5, within(1e-9));
        assertThat(worked.messages()).noneMatch(message -> message.contains("not known here"));
        assertThat(worked.differences()).isEmpty();
    }
}
