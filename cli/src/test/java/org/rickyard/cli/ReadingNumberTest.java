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
    }
}
