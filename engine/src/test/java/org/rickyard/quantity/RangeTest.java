package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {
    @Test
    void boundsBelongToARangeUnlessTheyAreOpen() {
        assertThat(Range.of(5, 100).contains(5)).isTrue();
        assertThat(Range.of(5, 100).contains(100)).isTrue();
        assertThat(Range.above(5, 100).contains(5)).isFalse();
        assertThat(Range.below(5, 100).contains(100)).isFalse();
        assertThat(Range.POSITIVE.contains(0)).isFalse();
        assertThat(Range.NOT_NEGATIVE.contains(-0.0)).isTrue();
    }

    /** A grid compares fifteen digits, so for it a number with such noise is the bound itself. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 5, 9.5, 95, 100, 5000, 1e6})
    void binaryNoiseAtABoundIsTheBound(double bound) {
        double above = Math.nextUp(bound);
        double below = Math.nextDown(bound);
        assertThat(Range.of(0, bound).contains(above)).isTrue();
        assertThat(Range.of(bound, 2 * bound).contains(below)).isTrue();
        assertThat(Range.below(0, bound).contains(below)).isFalse();
        assertThat(Range.above(bound, 2 * bound).contains(above)).isFalse();
        assertThat(Range.of(0, bound).contains(bound * (1 + 1e-13))).isFalse();
        assertThat(Range.below(0, bound).contains(bound * (1 - 1e-13))).isTrue();
    }

    @Test
    void nothingIsNoiseBesideZeroOrWithoutABound() {
        assertThat(Range.POSITIVE.contains(1e-300)).isTrue();
        assertThat(Range.NOT_NEGATIVE.contains(-1e-17)).isFalse();
        assertThat(Range.POSITIVE.contains(Double.POSITIVE_INFINITY)).isFalse();
        assertThat(Range.ANY.contains(Double.NaN)).isFalse();
    }
}
