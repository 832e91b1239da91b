package org.rickyard.trade.workrate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which machines are reckoned on which crops where no job says: what everyone on a farm knows (common practice). */
@Tag("common-practice")
class SuitabilityTest {
    @ParameterizedTest
    @CsvSource({
        "mower, Grass, true",
        "mower, Perennial ryegrass, true",
        "mower, 2nd-cut ley, true",
        "mower, Leys, true",
        "mower, Red clover, true",
        "mower, PG, true",
        "mower, Oaten hay, true",
        "mower, Spring barley, false",
        "tedder, Barley, false",
        "rake, W. Barley, false",
        "wiper, barley, false",
        "mower, Forage maize, false",
        "mower, Corn silage, false",
        "forager, Corn silage, true",
        "forager, Forage maize, true",
        "forager, Whole crop wheat, true",
        "forager, Barley, false",
        "combine, Spring barley, true",
        "combine, WW, true",
        "combine, WOSR, true",
        "combine, Field beans, true",
        "combine, Soybeans, true",
        "combine, Peas, true",
        "combine, Rye, true",
        "combine, Ryegrass, false",
        "combine, Pears, false",
        "combine, Grapes, false",
        "drill, WB, true",
        "drill, Potatoes, true",
        "drill, Ryegrass, false",
        "plough, Stubble, true",
        "plough, Peaches, false",
        "air-blast sprayer, Pears, true",
        "air-blast sprayer, Grapes, true",
        "air-blast sprayer, Bushes, true",
        "air-blast sprayer, Vineyard, true",
        "drill, Fodderbeet, true",
        "air-blast sprayer, Peas, false",
        "sprayer, anything, true",
        "combine, '', true"
    })
    void aCropIsToldByItsWords(String type, String crop, boolean suits) {
        assertThat(Suitability.suits(type, crop)).isEqualTo(suits);
        assertThat(Suitability.types(crop).contains(type)).isEqualTo(suits);
    }

    @Test
    void aCropOfNoWordKnownIsUnknown() {
        assertThat(Suitability.isKnown("Lawn")).isFalse();
        assertThat(Suitability.isKnown("Wheat 1")).isTrue();
    }
}
