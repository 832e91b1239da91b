package org.rickyard.trade.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.trade.workrate.CartingSimulation.Kind;

/** Checked against its limiting cases: no spread, one trailer, very many trailers. */
@Tag("derived")
class CartingSimulationTest {

    private static List<Kind> trailers(int count) {
        return List.of(new Kind(count, 8, 12, 18.3));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 8})
    void withoutSpreadItIsTheClosedForm(int count) {
        double paper = Math.min(40, count * 8 * 60 / 30.3);
        assertThat(CartingSimulation.rate(trailers(count), 1, 0, 1, 2000)).isCloseTo(paper, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.05, 0.1, 0.2, 0.4, 0.8})
    void itIsNeverAboveTheClosedForm(double spread) {
        for (int count = 1; count <= 6; count++) {
            for (long seed = 1; seed <= 5; seed++) {
                assertThat(CartingSimulation.rate(trailers(count), 1, spread, seed, 2000))
                        .isPositive()
                        .isLessThanOrEqualTo(CartingSimulation.onPaper(trailers(count), 1));
            }
        }
    }

    @Test
    void itTendsToTheClosedFormAsTheSpreadGoes() {
        for (int count = 1; count <= 5; count++) {
            double paper = CartingSimulation.onPaper(trailers(count), 1);
            assertThat(CartingSimulation.rate(trailers(count), 1, 1e-7, 1, 2000))
                    .isCloseTo(paper, within(1e-4 * paper));
            assertThat(CartingSimulation.rate(trailers(count), 1, 0.02, 1, 20000))
                    .isCloseTo(paper, within(0.02 * paper));
        }
    }

    @Test
    void oneTrailerNeverQueuesSoChanceTakesNothing() {
        double paper = CartingSimulation.onPaper(trailers(1), 1);
        assertThat(CartingSimulation.rate(trailers(1), 1, 0.3, 7, 20000)).isCloseTo(paper, within(0.005 * paper));
    }

    @Test
    void nearBalanceBunchingCosts() {
        double paper = CartingSimulation.onPaper(trailers(3), 1);
        assertThat(CartingSimulation.rate(trailers(3), 1, 0.4, 1, 20000)).isLessThan(0.95 * paper);
    }

    @Test
    void moreTrailersNeverSlowTheGang() {
        double before = 0;
        for (int count = 1; count <= 8; count++) {
            double rate = CartingSimulation.rate(trailers(count), 1, 0.25, 3, 50000);
            assertThat(rate).isGreaterThan(before * 0.99);
            before = Math.max(before, rate);
        }
        assertThat(before).isCloseTo(40, within(0.4));
    }

    @Test
    void theSameSeedGivesTheSameRateToTheLastBit() {
        double one = CartingSimulation.rate(trailers(3), 1, 0.2, 42, 2000);
        assertThat(CartingSimulation.rate(trailers(3), 1, 0.2, 42, 2000)).isEqualTo(one);
        assertThat(CartingSimulation.rate(trailers(3), 1, 0.2, 43, 2000)).isNotEqualTo(one);
    }

    /** Two foragers that never lack a trailer chop twice as much as one; with too few trailers, what those carry. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 8})
    void eachForagerFillsATrailerOfItsOwn(int count) {
        double paper = Math.min(80, count * 8 * 60 / 30.3);
        assertThat(CartingSimulation.rate(trailers(count), 2, 0, 1, 2000)).isCloseTo(paper, within(1e-9));
        assertThat(CartingSimulation.rate(trailers(count), 2, 1e-7, 1, 2000)).isCloseTo(paper, within(1e-4 * paper));
        assertThat(CartingSimulation.rate(trailers(count), 2, 0.02, 1, 20000)).isCloseTo(paper, within(0.02 * paper));
    }
}
