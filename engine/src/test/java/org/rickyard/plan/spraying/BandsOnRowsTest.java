package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Bands over rows that are told of the planter that carries the nozzles, and not of each field. By arithmetic. */
@Tag("derived")
class BandsOnRowsTest {
    private static SeasonBook book(Object spacingOfField) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Row spacing (m)"), row("Low", 9, spacingOfField))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Rows", "Row spacing (cm)", "Speed (km/h)", "Tank (L)"),
                        row("Band kit", "sprayer", 8, 75, 8, 800))
                .sheet(
                        "Jobs",
                        row(
                                "Field",
                                "Operation",
                                "Machine",
                                "Product",
                                "Dose (L/ha)",
                                "Water volume (L/ha)",
                                "Band width (cm)"),
                        row("Low", "spraying", "Band kit", "Herbicide A", 2, 200, 25));
    }

    /** 25 cm of each 75 are sprayed: 3 of 9 ha, and 6 L of the 18. */
    @Test
    void theRowsOfTheMachineDoWhereTheFieldDoesNotSay() {
        SeasonBook.Worked worked = book(null).run();
        assertThat(worked.number("treated-area")).isCloseTo(3, within(1e-9));
        assertThat(worked.number("product-total")).isCloseTo(6, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** Rows of 50 cm typed for the field go before the machine's: 4.5 of 9 ha. */
    @Test
    void theRowsOfTheFieldGoBefore() {
        SeasonBook.Worked worked = book(0.5).run();
        assertThat(worked.number("treated-area")).isCloseTo(4.5, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }
}
