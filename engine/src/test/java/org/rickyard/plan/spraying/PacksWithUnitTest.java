package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.spraying.ProductOrder;

/** Packs and stocks as they stand on a list of products: with their unit in the cell. */
class PacksWithUnitTest {
    private static SeasonBook.Worked worked(Object unit, Object pack, Object stock, double dose, String doseUnit) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Top", 20, "barley"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 1500))
                .sheet("Products", row("Product", "Unit", "Pack size", "Stock"), row("Feed", unit, pack, stock))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose", "Dose unit", "Water volume (L/ha)"),
                        row("Top", "spraying", "Sprayer", "Feed", dose, doseUnit, 200))
                .run();
    }

    /** 20 ha at 3 are 60; a pack of 5 and 10 in stock leave 50 and ten packs, in whatever they are counted. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({
        "kg, 5 kg, 10 kg, kg/ha",
        "L, 5 l, 10, L/ha",
        "L, 5000 ml, 10L, L/ha",
        ", 5 kg, 10 kg, kg/ha",
        "kg, 5000 g, 10, kg/ha"
    })
    void theUnitInTheCellIsRead(String unit, String pack, String stock, String doseUnit) {
        SeasonBook.Worked worked = worked(unit, pack, stock.equals("10") ? 10 : stock, 3, doseUnit);
        assertThat(worked.number("product-to-buy")).isCloseTo(50, within(1e-9));
        assertThat(worked.number("packs-to-buy")).isEqualTo(10);
        assertThat(stops(worked)).isEmpty();
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void aPackOfTheOtherKindOfUnitIsRefusedWithWhatToDo() {
        SeasonBook.Worked worked = worked("L", "25 kg", null, 3, "L/ha");
        assertThat(stops(worked))
                .singleElement()
                .asString()
                .contains("\"25 kg\" is in kg, and this product is counted in L")
                .contains("Write its Pack size in L, or mend its Unit.");
        assertThat(worked.result("packs-to-buy").number()).isEmpty();
    }

    /** Where no Unit says it, the pack does; a dose in the other kind is a stop, and never packs of kilograms for litres. */
    @Test
    void aPackThatIsNotOfWhatTheDoseIsInIsAStop() {
        SeasonBook.Worked worked = worked(null, "25 kg", null, 3, "L/ha");
        assertThat(stops(worked))
                .singleElement()
                .asString()
                .contains("dosed in L here but")
                .contains("measures it in kg");
        assertThat(worked.result("packs-to-buy").number()).isEmpty();
        SeasonBook.Worked both = worked(null, "25 kg", "10 l", 3, "kg/ha");
        assertThat(stops(both)).singleElement().asString().contains("has its Stock in L here and is dosed in kg");
    }

    /** Listed and in stock in litres, dosed in kilograms: who reads the order list alone must not take it for all there is. */
    @Test
    void theRowOfTheOrderListSaysThatTheStockIsNotCounted() {
        SeasonBook.Worked worked = worked("L", 5, 1000, 3, "kg/ha");
        assertThat(worked.number("product-to-buy")).isCloseTo(60, within(1e-9));
        ResultTable order = worked.plan().table("product-order");
        assertThat(order.of(ProductOrder.LISTED_IN).word(0)).isEqualTo("L");
        assertThat(order.of(TableSpec.CAUTIONS).word(0))
                .contains("the product list has this product in another unit")
                .contains("what is to buy is all of the need");
        assertThat(worked.differences()).isEmpty();
        assertThat(worked("L", 5, 10, 3, "L/ha")
                        .plan()
                        .table("product-order")
                        .spec()
                        .column(ProductOrder.LISTED_IN))
                .isEmpty();
    }

    @Test
    void whatIsNoAmountOfProductIsRefusedAsBefore() {
        for (String pack : List.of("10 x 1 L", "5 L/ha", "a drum", "5 %")) {
            assertThat(stops(worked("L", pack, null, 3, "L/ha")))
                    .as(pack)
                    .singleElement()
                    .asString()
                    .contains("is not a number");
        }
    }

    private static List<String> stops(SeasonBook.Worked worked) {
        return worked.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(finding -> finding.message())
                .toList();
    }
}
