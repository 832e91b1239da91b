package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.spraying.ProductOrder;

/** Loose fertiliser, seed and lime have a price and no packs. */
class LooseProductsTest {
    private static SeasonBook.Worked worked(Object pack) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Top", 20, "barley"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Spreader", "fertiliser spreader", 24, 10))
                .sheet(
                        "Products",
                        row("Product", "Unit", "Pack size", "Stock", "Price per unit"),
                        row("Feed", "kg", pack, 1000, 0.4))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit"),
                        row("Top", "spreading", "Spreader", "Feed", 300, "kg/ha"))
                .run();
    }

    /** 20 ha at 300 kg are 6,000; less 1,000 in stock, at 0.4. */
    @Test
    @Tag("derived")
    void theCostOfWhatComesLooseIsThatOfTheAmountToBuyAndItIsSaid() {
        SeasonBook.Worked worked = worked(null);
        assertThat(worked.plan().table("product-order").of(ProductOrder.COST).number(0))
                .isCloseTo(2000, within(1e-9));
        assertThat(worked.plan().table("product-order").of(TableSpec.CAUTIONS).word(0))
                .contains("no pack size is typed, so the cost is that of the amount to buy");
        assertThat(worked.result("packs-to-buy").reason()).contains("pack size missing");
        assertThat(worked.differences()).isEmpty();
    }

    /** 5,000 kg are nine packs of 600. */
    @Test
    @Tag("derived")
    void whatIsPackedCostsWholePacks() {
        SeasonBook.Worked worked = worked(600);
        assertThat(worked.plan().table("product-order").of(ProductOrder.COST).number(0))
                .isCloseTo(9 * 600 * 0.4, within(1e-9));
        assertThat(worked.plan().table("product-order").of(TableSpec.CAUTIONS).word(0))
                .isEmpty();
        assertThat(worked.differences()).isEmpty();
    }

    /** What cannot be read is not nothing: who typed a pack size does not buy loose. */
    @Test
    void aPackSizeThatCannotBeReadGivesNoCost() {
        SeasonBook.Worked worked = worked("ten");
        assertThat(worked.plan().table("product-order").of(ProductOrder.COST).has(0))
                .isFalse();
        assertThat(worked.differences()).isEmpty();
    }
}
