package org.rickyard.plan.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** Rows of the job list without a name are one job where they are of one time, and else are not. */
class JobIdentityTest {
    private static SeasonBook.Worked worked(Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] =
                row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water (L/ha)", "GS", "Earliest");
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Long Acre", 10), row("Far", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000),
                        row("Mower", "mower", 3, 10, null))
                .sheet("Jobs", rows)
                .run();
    }

    private static Object[] spray(String job, String product, Object stage) {
        return row(job, "Long Acre", "spray", "Sprayer", product, 1, 200, stage, null);
    }

    private static Object[] mow(String field, LocalDate day) {
        return row(null, field, "mow", "Mower", null, null, null, null, day);
    }

    private static List<String> products(SeasonBook.Worked worked, int block) {
        ResultTable mix = worked.plan().table("tank-mix");
        ResultTable blocks = worked.plan().table("spray-blocks");
        List<String> products = new ArrayList<>();
        for (int row = 0; row < mix.rows(); row++) {
            if (mix.of(Keys.BLOCK_KEY).number(row) == blocks.of(Keys.BLOCK_KEY).number(block)) {
                products.add(mix.name(Quantities.PRODUCT, row));
            }
        }
        return products;
    }

    @Test
    void twoSprayingsOfAFieldAreTwoTanks() {
        SeasonBook.Worked worked = worked(spray(null, "Herbicide", "31"), spray(null, "Fungicide", "39"));
        assertThat(worked.plan().table("spray-blocks").rows()).isEqualTo(2);
        assertThat(products(worked, 0)).containsExactly("Herbicide");
        assertThat(products(worked, 1)).containsExactly("Fungicide");
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aRowThatTellsNoTimeIsAnotherProductInTheTankAbove() {
        SeasonBook.Worked worked =
                worked(spray(null, "Herbicide", "31"), spray(null, "Wetter", null), spray(null, "Fungicide", "39"));
        assertThat(worked.plan().table("spray-blocks").rows()).isEqualTo(2);
        assertThat(products(worked, 0)).containsExactly("Herbicide", "Wetter");
    }

    @Test
    void rowsOfOneNameAreOneJobWhateverTheirTime() {
        SeasonBook.Worked worked = worked(spray("T1", "Herbicide", "31"), spray("T1", "Wetter", "32"));
        assertThat(worked.plan().table("spray-blocks").rows()).isEqualTo(1);
        assertThat(products(worked, 0)).containsExactly("Herbicide", "Wetter");
    }

    @Test
    void theSecondCutOfAFieldIsWorkOfItsOwn() {
        LocalDate may = LocalDate.of(2026, 5, 10);
        SeasonBook.Worked worked =
                worked(mow("Long Acre", may), mow("Far", may), mow("Long Acre", may.plusDays(40)), mow("Far", null));
        ResultTable rates = worked.plan().table("work-rates");
        List<String> fields = new ArrayList<>();
        for (int row = 0; row < rates.rows(); row++) {
            fields.add(rates.name(Quantities.FIELD, row));
        }
        assertThat(fields).containsExactly("Long Acre", "Far", "Long Acre", "Far");
        assertThat(worked.differences()).isEmpty();
    }
}
