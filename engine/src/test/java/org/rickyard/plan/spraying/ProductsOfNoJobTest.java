package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** Products that are listed, with jobs none of which takes one, are on no sheet, and that is said. */
class ProductsOfNoJobTest {
    private static List<Finding> said(String column, String cell, String machine) {
        return new SeasonBook()
                        .sheet("Fields", row("Field", "Area (ha)"), row("A", 10))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                                row("Sprayer", "sprayer", 24, 12, 2000),
                                row("Mower", "mower", 3, 12, null))
                        .sheet(
                                "Jobs",
                                row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)", column),
                                row("T1", "A", "spray", machine, 200, cell))
                        .sheet(
                                "Products",
                                row("Job", "Product", "Rate", "Unit", "Pack size"),
                                row("T1", "Herbicide A", 0.8, "L/ha", 5),
                                row("T1", "Foliar feed", 3, "kg/ha", 25))
                        .run()
                        .plan()
                        .findings()
                        .stream()
                        .filter(finding -> finding.message().startsWith("no job says that it takes"))
                        .toList();
    }

    @Test
    void whereNoJobTakesOneItIsTold() {
        assertThat(said("Remark", "early", "Sprayer")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
            assertThat(finding.cell().orElseThrow()).hasToString("Products!B2");
            assertThat(finding.message())
                    .startsWith("no job says that it takes one of the 2 listed products, so what goes into a tank");
        });
    }

    @Test
    void whereAJobTakesOneOrNothingIsSprayedItIsNot() {
        assertThat(said("Product", "Herbicide A", "Sprayer")).isEmpty();
        assertThat(said("Remark", "early", "Mower")).isEmpty();
    }
}
