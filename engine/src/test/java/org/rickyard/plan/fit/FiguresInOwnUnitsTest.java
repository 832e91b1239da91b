package org.rickyard.plan.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.quantity.OwnMeasures;
import org.rickyard.quantity.OwnMeasures.Kind;
import org.rickyard.quantity.Units;

/**
 * Cautions as somebody reads them who measures in feet, miles and short tons: 0.3048 m, 1.609344 km and 907.18474 kg by
 * definition.
 */
class FiguresInOwnUnitsTest {
    private static final OwnMeasures US =
            new OwnMeasures(Map.of(Kind.LENGTH, Units.FT, Kind.SPEED, Units.MPH, Kind.MASS, Units.SHORT_TON));

    @ParameterizedTest
    @Tag("derived")
    @CsvSource(
            delimiter = '|',
            value = {
                "some above 5.7 m). Lower | some above 18.7 ft = 5.7 m). Lower",
                "silage stands 1-2 m higher. | silage stands 3.28-6.56 ft = 1-2 m higher.",
                "silage only sinks, by 1 to 2 m. | silage only sinks, by 3.28 to 6.56 ft = 1 to 2 m.",
                "keep below 16-18 km/h, slower | keep below 9.94-11.2 mph = 16-18 km/h, slower",
                "above the 18.29 t that | above the 20.16 short ton = 18.29 t that",
                "at 5.2 m (to 33 kV), 6.7 m (132) | at 17.1 ft = 5.2 m (to 33 kV), 22 ft = 6.7 m (132)",
                "layer thicker than 30 cm, the most | layer thicker than 11.8 in = 30 cm, the most",
                "can drop 600 mm (HSENI) | can drop 23.6 in = 600 mm (HSENI)"
            })
    void theClientsUnitComesFirstAndThePublishedFigureStays(String sentence, String expected) {
        assertThat(FiguresInOwnUnits.in(sentence, US)).isEqualTo(expected);
    }

    /** What is to be typed, what is said in both already, and what is no length, speed or mass. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "such as ~Trailer 14 t x 3~",
                "less than 10 cm (4 in) a day",
                "an unloader (12 ft, 3.7 m): an",
                "3 in (7.6 cm) where it is cold",
                "below 200 kg dry matter per m3",
                "For maize DAERA printed 0.75 t/m3",
                "a crown of 4.8 m2 over it",
                "14 days' notice before first use"
            })
    void whatIsNoFigureToConvertStaysAsItIs(String sentence) {
        String quoted = sentence.replace('~', '"');
        assertThat(FiguresInOwnUnits.in(quoted, US)).isEqualTo(quoted);
    }

    @Test
    void ofWhatSomebodyMeasuresAsWeDoNothingIsConverted() {
        OwnMeasures feet = new OwnMeasures(Map.of(Kind.LENGTH, Units.FT));
        String both = "20 km/h, 10 m from water";
        assertThat(FiguresInOwnUnits.in(both, feet)).isEqualTo("20 km/h, 32.8 ft = 10 m from water");
        assertThat(FiguresInOwnUnits.in(both, new OwnMeasures(Map.of()))).isEqualTo(both);
    }
}
