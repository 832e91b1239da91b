package org.rickyard.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.Formula;
import org.rickyard.formula.WorkedExample;
import org.rickyard.trade.catalogue.Catalogue;

/** Every worked example of the catalogue, at its printed rounding; the source stands in the test's name. */
class CatalogueExamplesTest {

    static Stream<Arguments> examples() {
        return Catalogue.all().stream().flatMap(formula -> formula.examples().stream()
                .map(example -> Arguments.of(formula.id(), example.source(), formula, example)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("examples")
    void meetsItsWorkedExample(String id, Object source, Formula formula, WorkedExample example) {
        if (example.answerWord() != null) {
            assertThat(example.computeWord(formula)).isEqualTo(example.answerWord());
            return;
        }
        assertThat(example.compute(formula)).as("%s must give a value", id).isPresent();
        // A print is half-up, so the exact value may lie on the edge itself; a whisker covers binary noise there.
        assertThat(example.compute(formula).orElseThrow())
                .isBetween(
                        example.answer() - example.tolerance() * (1 + 1e-9) - 1e-12,
                        example.answer() + example.tolerance() * (1 + 1e-9) + 1e-12);
    }

    @Test
    void idsAreUnique() {
        assertThat(Catalogue.all()).extracting(Formula::id).doesNotHaveDuplicates();
    }
}
