package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** A product that its machine neither sprays, spreads nor drills is on no sheet, and that is said. */
class ProductsNotSprayedTest {
    private static List<Finding> said(Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] = row("Job", "Field", "Operation", "Machine", "Product", "Dose", "Dose unit", "Water volume (L/ha)");
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        return new SeasonBook()
                        .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 10, "wheat"))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                                row("Cultivator", "cultivator", 6, 12, null),
                                row("Odd one", null, 24, 12, null),
                                row("Sprayer", "sprayer", 24, 12, 2000))
                        .sheet("Jobs", rows)
                        .run()
                        .plan()
                        .findings()
                        .stream()
                        .filter(finding -> finding.message().contains("not sprayed"))
                        .toList();
    }

    @Test
    void aProductThatNothingPutsOutIsToldWithItsCell() {
        assertThat(said(
                        row("N1", "A", "spread", "Cultivator", "Nitrogen 34", 250, "kg/ha", null),
                        row("N2", "A", "spread", "Cultivator", "Nitrogen 34", 150, "kg/ha", null),
                        row("N3", "A", "spread", "Cultivator", "Potash", 100, "kg/ha", null),
                        row("T1", "A", "spray", "Sprayer", "Herbicide A", 1, "L/ha", 200)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!E2");
                    assertThat(finding.message())
                            .startsWith(
                                    "'Nitrogen 34' (and 1 more product) is not sprayed, spread or drilled, so how much");
                });
    }

    /** A mix was lost without a word where a product would have been told. */
    @Test
    void aMixThatNothingPutsOutIsToldToo() {
        assertThat(new SeasonBook()
                        .sheet("Fields", row("Field", "Area (ha)"), row("A", 10))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                                row("Cultivator", "cultivator", 6, 12),
                                row("Odd one", null, 24, 12))
                        .sheet(
                                "Mixes",
                                row("Mix", "Product", "Dose (L/ha)"),
                                row("M1", "Alpha", 1),
                                row("M2", "Beta", 1))
                        .sheet(
                                "Jobs",
                                row("Job", "Field", "Operation", "Machine", "Mix"),
                                row("T1", "A", "spray", "Cultivator", "M1"),
                                row("T2", "A", "spray", "Odd one", "M2"))
                        .run()
                        .messages())
                .anyMatch(message -> message.startsWith("the mix 'M1' is not sprayed, spread or drilled"))
                .anyMatch(message -> message.contains("put out of the mix 'M2' or another product"));
    }

    @Test
    void whatIsSprayedOrWhoseMachineIsUnknownIsNot() {
        assertThat(said(
                        row("T1", "A", "spray", "Sprayer", "Herbicide A", 1, "L/ha", 200),
                        row("T1", "A", "spray", "Sprayer", "Herbicide B", 1, "L/ha", 200),
                        row("X", "A", "spread", "Odd one", "Potash", 100, "kg/ha", null)))
                .isEmpty();
    }

    @Test
    void aProductPutOutByAMachineOfNoKnownTypeIsToldAndItsWorkIsWithheld() {
        for (String type : new String[] {null, "Thingamajig"}) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet("Fields", row("Field", "Area (ha)"), row("A", 10), row("B", 5))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                            row("Tanker", "slurry tanker", 12, 8),
                            row("Hose", type, 12, 8))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Product", "Dose (m3/ha)"),
                            row("A", "slurry", "Tanker", "Slurry", 30),
                            row("B", "slurry", "Hose", "Slurry", 30),
                            row("A", "slurry", "Hose", "Slurry", 20))
                    .run();
            assertThat(worked.plan().findings())
                    .filteredOn(finding -> finding.message().contains("has no Type"))
                    .as(String.valueOf(type))
                    .singleElement()
                    .satisfies(finding -> {
                        assertThat(finding.cell().orElseThrow()).hasToString("Jobs!D3");
                        assertThat(finding.message())
                                .contains("'Hose'")
                                .contains("'Slurry'")
                                .contains("missing from the order list")
                                .contains("(Machines!B3)");
                    });
            assertThat(worked.results())
                    .filteredOn(result -> result.id().equals("hours"))
                    .as("a row for each work of the hose, withheld, beside the tanker's")
                    .hasSize(3)
                    .noneMatch(result -> result.about().get("Machine").equals("Hose")
                            && result.number().isPresent());
            assertThat(worked.differences()).isEmpty();
        }
    }
}
