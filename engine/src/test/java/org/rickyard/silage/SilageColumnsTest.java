package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.Units;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.Rolling;
import org.rickyard.trade.silage.SilageCatalogue;

/** No tonnage of crop or silage is read without its being said whether it is fresh or dry. */
class SilageColumnsTest {
    /** Masses that are no crop: soil, and the machines that roll. */
    private static final List<Symbol> NO_CROP = List.of(
            Digging.SPOIL_TONNES, Rolling.MASS_USED, Rolling.WEIGHT, Rolling.WEIGHT_THIRD, Rolling.WEIGHT_FORTY);

    @Test
    void everyTonnageSaysFreshOrDry() {
        List<String> silent = new ArrayList<>();
        int tonnages = 0;
        for (Formula formula : SilageCatalogue.FORMULAS) {
            Symbol result = formula.result();
            boolean dry = result.type() == Symbol.Type.NUMBER && result.unit().isCompatible(Units.T_DM);
            boolean mass = result.type() == Symbol.Type.NUMBER && result.unit().isCompatible(Units.T);
            if (!dry && !mass || NO_CROP.contains(result)) {
                continue;
            }
            tonnages++;
            if (!result.name().contains(dry ? "dry matter" : "fresh")) {
                silent.add(result.name() + " in " + result.unit());
            }
        }
        assertThat(silent).isEmpty();
        assertThat(tonnages).isGreaterThanOrEqualTo(20);
    }
}
