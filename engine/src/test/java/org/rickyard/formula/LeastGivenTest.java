package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rickyard.quantity.UnitMismatchException;
import org.rickyard.quantity.Units;

/** The least of what is given, and its label; what the grid makes of both is compared where gangs are written. */
class LeastGivenTest {
    private static final Symbol A = Symbol.number("a", Units.HA_PER_H);
    private static final Symbol B = Symbol.number("b", Units.HA_PER_H);
    private static final Symbol C = Symbol.number("c", Units.HA_PER_H);
    private static final List<Symbol> ALL = List.of(A, B, C);
    private static final Source SOURCE = Source.derived("order of numbers");
    private static final Formula LEAST = new Formula(
            "least", Symbol.number("least", Units.HA_PER_H), new Expr.LeastGiven(ALL), SOURCE, "", List.of());
    private static final Formula LABEL = new Formula(
            "label",
            Symbol.text("label"),
            new Expr.LabelOfLeast(ALL, List.of("first", "second", "third")),
            SOURCE,
            "",
            List.of());

    @Test
    void whatHasNoValueIsPassedOver() {
        WorkedExample two = WorkedExample.from(SOURCE).with(B, 3).with(C, 2).gives(2, Units.HA_PER_H, 6);
        assertThat(two.compute(LEAST)).isEqualTo(Optional.of(2.0));
        assertThat(two.computeWord(LABEL)).isEqualTo("third");
    }

    @Test
    void ofEqualsTheFirstIsNamed() {
        WorkedExample equal = WorkedExample.from(SOURCE).with(A, 2).with(B, 2).gives(2, Units.HA_PER_H, 6);
        assertThat(equal.computeWord(LABEL)).isEqualTo("first");
    }

    @Test
    void ofNothingThereIsNoLeast() {
        WorkedExample none = WorkedExample.from(SOURCE).gives(0, Units.HA_PER_H, 6);
        assertThat(none.compute(LEAST)).isEmpty();
        assertThat(none.computeWord(LABEL)).isEmpty();
    }

    @Test
    void quantitiesInDifferentUnitsAreRefused() {
        Symbol other = Symbol.number("tonnes", Units.T_PER_H);
        assertThatThrownBy(() -> new Expr.LeastGiven(List.of(A, other))).isInstanceOf(UnitMismatchException.class);
        assertThatThrownBy(() -> new Expr.LabelOfLeast(List.of(A), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
