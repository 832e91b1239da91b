package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

@Tag("derived")
class PriceRowsTest {
    /** A map of Java's whose order is another in every process must not decide it. */
    @Test
    void faultyPricesAreToldInOneOrderInEveryRun() {
        List<Finding> findings = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Insurance and housing", "some", "%"),
                        row("Interest rate", "some", "%"),
                        row("Fuel price", "some", "money/L"),
                        row("Wage", "some", "money/h"))
                .run()
                .plan()
                .findings();
        assertThat(findings)
                .extracting(Finding::message)
                .filteredOn(message -> message.contains(" wants a number in "))
                .extracting(message -> message.substring(0, message.indexOf(" wants")))
                .containsExactly("'wage'", "'fuel price'", "'interest rate'", "'insurance and housing'");
    }

    /** What the reading of the list has told already, and what to write instead, is not asked for again. */
    @Test
    void aPriceWithItsUnitBehindItIsToldOnceAndAWrongUnitInItsOwnCell() {
        List<Finding> findings = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Interest rate", "5 percent", "%"),
                        row("Wage", 15, "money/ha"))
                .run()
                .plan()
                .findings();
        assertThat(findings)
                .filteredOn(finding -> finding.cell().map(Object::toString).equals(Optional.of("Assumptions!B2")))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("Write the figure alone, 5"));
        assertThat(findings)
                .filteredOn(finding -> finding.message().contains("mend its unit"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.cell().map(Object::toString)).hasValue("Assumptions!C3"));
    }
}
