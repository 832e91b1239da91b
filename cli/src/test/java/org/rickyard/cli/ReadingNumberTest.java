package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ReadingNumberTest {
    @Test
    void hundredthsAreToldOnlyOfWhatIsSmall() {
        assertThat(ReadingNumber.of(11205, 2)).isEqualTo("11205");
        assertThat(ReadingNumber.of(136.95, 2)).isEqualTo("137.0");
        assertThat(ReadingNumber.of(-1620.4, 2)).isEqualTo("-1620");
        assertThat(ReadingNumber.of(1.5562, 2)).isEqualTo("1.56");
        assertThat(ReadingNumber.of(0.0004, 2)).isEqualTo("0.0004");
        assertThat(ReadingNumber.of(1234.56, 1)).isEqualTo("1234.6");
        // Tons of an amount in kilograms are told to the kilogram where they are few.
        assertThat(ReadingNumber.of(91, 4)).isEqualTo("91.00");
        assertThat(ReadingNumber.of(5.25, 4)).isEqualTo("5.250");
        assertThat(ReadingNumber.of(0.1115, 4)).isEqualTo("0.1115");
    }

    @Test
    void aNumberIsToldToTheDecimalWhereThatIsAsked() {
        assertThat(ReadingNumber.rounded(11205.125, 2)).isEqualTo("11205.13");
        assertThat(ReadingNumber.rounded(0, 1)).isEqualTo("0.0");
        assertThat(ReadingNumber.rounded(0.0004, 1)).isEqualTo("0.0004");
    }
}
