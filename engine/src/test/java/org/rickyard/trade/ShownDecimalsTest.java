package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Units;
import org.rickyard.trade.catalogue.Catalogue;

/** One kind of amount is told alike wherever it stands. */
class ShownDecimalsTest {
    /** 84 g of a granule are not 0.08 kg on one sheet and 0.084 on another; whole packs and loads have no decimals. */
    @Test
    void amountsOfProductAreToldToTheMillilitreOrGram() {
        assertThat(Catalogue.all())
                .extracting(formula -> formula.result())
                .filteredOn(result -> result.unit().equals(Units.PRODUCT_UNIT))
                .hasSizeGreaterThan(8)
                .allSatisfy(result ->
                        assertThat(result.decimals()).as(result.name()).isIn(0, 3))
                .filteredOn(result -> result.decimals() == 0)
                .extracting(Symbol::name)
                .containsExactlyInAnyOrder("whole L, kg or tablets", "product in a full load");
    }

    /** "Days open 0.8 -" stood on the clamp card, and "days needed 0.6 d" on Season. */
    @Test
    void whatIsCountedInDaysSaysSo() {
        assertThat(Catalogue.all())
                .extracting(formula -> formula.result())
                .filteredOn(result -> result.type() == Symbol.Type.NUMBER)
                .filteredOn(result -> result.name().matches("(.* )?days( .*)?"))
                .hasSizeGreaterThan(15)
                .allSatisfy(
                        result -> assertThat(result.unit()).as(result.name()).isEqualTo(Units.D));
    }
}
