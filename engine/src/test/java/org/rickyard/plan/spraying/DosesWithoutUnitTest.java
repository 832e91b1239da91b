package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** A product that the product list says no unit of, dosed with a unit here and without one there. */
class DosesWithoutUnitTest {
    private static SeasonBook book(String lastUnit) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("A", "wheat", 10), row("B", "wheat", 20))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 2000))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Water volume (L/ha)",
                                "Product",
                                "Dose",
                                "Dose unit"),
                        row("T1", "A", "spraying", "Sprayer", 200, "Alpha", 1.5, "L/ha"),
                        row("T2", "B", "spraying", "Sprayer", 200, "Alpha", 2, null),
                        row("T3", "A", "spraying", "Sprayer", 200, "Alpha", 1, lastUnit));
    }

    private static List<String> needs(SeasonBook.Worked worked) {
        return worked.results().stream()
                .filter(result -> result.id().equals("product-need"))
                .map(result -> result.number().orElseThrow() + " " + result.unit())
                .toList();
    }

    /** 10 × 1.5 + 20 × 2 + 10 × 1. */
    @Test
    void itIsOrderedOnceInTheUnitOfItsOtherDosesAndThatIsTold() {
        SeasonBook.Worked worked = book("L/ha").run();
        assertThat(needs(worked)).containsExactly("65.0 L");
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("has no unit here"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
                    assertThat(finding.cell().orElseThrow().toString()).isEqualTo("Jobs!G3");
                });
        assertThat(worked.differences()).isEmpty();
    }

    /** Nothing says which of the two it is. */
    @Test
    void whereOthersDifferItIsTakenToBeInNone() {
        assertThat(needs(book("kg/ha").run())).containsExactly("15.0 L", "40.0 product unit", "10.0 kg");
    }

    @Test
    void litresAndKilogramsOfAListedProductAreNeverAddedUp() {
        SeasonBook.Worked worked = book("kg/ha")
                .sheet("Products", row("Product", "Pack size"), row("Alpha", 5))
                .run();
        assertThat(needs(worked)).containsExactly("55.0 L", "10.0 kg");
        assertThat(worked.messages()).anyMatch(message -> message.contains("is dosed in kg here but elsewhere in L"));
    }
}
