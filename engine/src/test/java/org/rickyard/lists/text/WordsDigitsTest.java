package org.rickyard.lists.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.poi.ss.util.NumberToTextConverter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A number that is taken for a name must read as its cell does in a formula; POI says how that is. */
class WordsDigitsTest {
    @ParameterizedTest
    @ValueSource(doubles = {0, 7, -7.5, 0.25, 1e-5, 123456789012L, 1e15, 9e19, 1e20, -1.5e22, 1.25e100, 1e300})
    void numbersReadAsASpreadsheetReadsThem(double value) {
        assertThat(Words.digits(value)).isEqualTo(NumberToTextConverter.toText(value));
    }
}
