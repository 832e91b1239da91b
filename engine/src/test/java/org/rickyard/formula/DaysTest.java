package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DaysTest {
    @Test
    void aDayIsToldByItsDate() {
        assertThat(Days.text(46170.75, Days.USUAL_ZERO)).isEqualTo("2026-05-28");
        assertThat(Days.text(2_958_465, Days.USUAL_ZERO)).isEqualTo("9999-12-31");
    }

    /** Days are reckoned from numbers, and a number may have been typed with twelve zeros too many. */
    @Test
    void aDayThatNoGridShowsIsSaidToBeSo() {
        assertThat(Days.text(2_958_466, Days.USUAL_ZERO)).isEqualTo("after the year 9999");
        assertThat(Days.text(5e14, Days.USUAL_ZERO)).isEqualTo("after the year 9999");
    }
}
