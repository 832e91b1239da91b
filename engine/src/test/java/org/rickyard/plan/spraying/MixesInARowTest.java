package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.TankPlan;

/** Products that stand beside each other in a row of jobs are the tank mix that they are when they stand below each other. */
class MixesInARowTest {
    private static SeasonBook.Worked worked(Object[]... jobs) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Long Acre", 10), row("Far", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Jobs", jobs)
                .run();
    }

    private static final Object[] WIDE =
            row("Field", "Machine", "Water (L/ha)", "Product 1", "Dose 1 (L/ha)", "Product 2", "Dose 2 (kg/ha)");

    /** Product and total of each row of the tank mix. */
    private static List<String> mix(SeasonBook.Worked worked) {
        ResultTable mix = worked.plan().table("tank-mix");
        List<String> rows = new ArrayList<>();
        for (int row = 0; row < mix.rows(); row++) {
            rows.add(mix.name(Quantities.PRODUCT, row) + " "
                    + mix.of(TankPlan.PRODUCT_FOR_BLOCK).number(row));
        }
        return rows;
    }

    @Test
    void rowsBesideAndBelowEachOtherAreTheSameMix() {
        SeasonBook.Worked wide = worked(
                WIDE,
                row("Long Acre", "Sprayer", 200, "Aq", 1.5, "Bel", 2),
                row("Far", "Sprayer", 200, "Aq", 1.5, "Bel", 2));
        SeasonBook.Worked tall = worked(
                row("Field", "Machine", "Water (L/ha)", "Product", "Dose", "Dose unit"),
                row("Long Acre", "Sprayer", 200, "Aq", 1.5, "L/ha"),
                row("Long Acre", "Sprayer", 200, "Bel", 2, "kg/ha"),
                row("Far", "Sprayer", 200, "Aq", 1.5, "L/ha"),
                row("Far", "Sprayer", 200, "Bel", 2, "kg/ha"));
        assertThat(mix(wide)).containsExactly("Aq 22.5", "Bel 30.0").isEqualTo(mix(tall));
        assertThat(wide.plan().table("spray-blocks").rows()).isEqualTo(1);
        assertThat(wide.differences()).isEmpty();
    }

    @Test
    void anotherRowOfTheSameFieldIsAnotherSpraying() {
        SeasonBook.Worked worked = worked(
                WIDE,
                row("Long Acre", "Sprayer", 200, "Aq", 1.5, "Bel", 2),
                row("Long Acre", "Sprayer", 200, "Cor", 1, null, null));
        assertThat(worked.plan().table("spray-blocks").rows()).isEqualTo(2);
        assertThat(worked.plan().table("work-rates").rows()).isEqualTo(2);
        assertThat(worked.differences()).isEmpty();
    }
}
