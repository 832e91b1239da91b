package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.formula.NodeCases.WORD;
import static org.rickyard.formula.NodeCases.X;
import static org.rickyard.formula.NodeCases.Y;
import static org.rickyard.formula.NodeCases.Z;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What an expression must have before it is worked out. */
class NeedsTest {
    private static List<String> said(List<Needs.Requirement> requirements) {
        return requirements.stream().map(Needs.Requirement::otherwise).toList();
    }

    @Test
    void numbersAreNeededAndWordsAreNot() {
        assertThat(Needs.of(value(X).plus(Y)).quantities()).containsExactly(X, Y);
        assertThat(Needs.of(value(WORD)).quantities()).isEmpty();
    }

    @Test
    void aDivisorIsAskedForOnceHoweverOftenItDivides() {
        assertThat(said(Needs.of(value(X).over(Z).plus(value(Y).over(Z))).requirements()))
                .containsExactly("z is zero");
    }

    @Test
    void whatHasNoMeaningWithoutAnotherIsAskedInALaterTurn() {
        Expr inner = value(X).over(Y);
        Expr middle = value(Z).over(inner);

        assertThat(Needs.of(value(X).over(middle)).turns())
                .extracting(NeedsTest::said)
                .containsExactly(
                        List.of("y is zero"),
                        List.of(WordsPrinter.words(inner) + " is zero"),
                        List.of(WordsPrinter.words(middle) + " is zero"));
    }

    @Test
    void onlyAPowerBelowNoughtDivides() {
        assertThat(said(Needs.of(value(X).power(-1)).requirements())).containsExactly("x is zero");
        assertThat(Needs.of(value(X).power(0)).requirements()).isEmpty();
        assertThat(Needs.of(value(X).power(2)).requirements()).isEmpty();
    }
}
