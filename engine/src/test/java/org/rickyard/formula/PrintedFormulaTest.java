package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.formula.NodeCases.LENGTH;
import static org.rickyard.formula.NodeCases.QUARTER;
import static org.rickyard.formula.NodeCases.SHARE;
import static org.rickyard.formula.NodeCases.SPEED;
import static org.rickyard.formula.NodeCases.WORD;
import static org.rickyard.formula.NodeCases.X;
import static org.rickyard.formula.NodeCases.Y;
import static org.rickyard.formula.NodeCases.Z;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.quantity.Units;

/** What a reader is shown of an expression: the formula in words, and with the numbers of a row. */
class PrintedFormulaTest {
    private static final Symbol WIDTH = Symbol.number("working width", Units.M);
    private static final Symbol EFFICIENCY = Symbol.number("field efficiency", Units.PERCENT);
    private static final Symbol RATE = Symbol.number("work rate", Units.HA_PER_H);
    private static final Formula WORK_RATE = new Formula(
            "work-rate",
            RATE,
            value(SPEED).times(WIDTH).times(EFFICIENCY),
            Source.derived("test"),
            "always",
            List.of());

    private static String words(Expr expr) {
        return WordsPrinter.words(expr);
    }

    private static String numbers(Expr expr, SmallGrid grid) {
        return NumbersPrinter.numbers(expr, grid, 0);
    }

    @Test
    void aWorkRateReadsAsTheTradeWritesIt() {
        assertThat(WORK_RATE.words()).isEqualTo("speed × working width × field efficiency ÷ 10");
        SmallGrid row = new SmallGrid().column(SPEED, 10).column(WIDTH, 3).column(EFFICIENCY, 80);
        assertThat(numbers(WORK_RATE.expr(), row)).isEqualTo("10 × 3 × 80 % ÷ 10");
    }

    @Test
    void aMissingQuantityStandsByItsName() {
        SmallGrid row = new SmallGrid()
                .column(SPEED, Values.State.BLANK)
                .column(WIDTH, 3)
                .column(EFFICIENCY, 80);
        assertThat(numbers(WORK_RATE.expr(), row)).isEqualTo("(speed: none) × 3 × 80 % ÷ 10");
    }

    @Test
    void bracketsStandOnlyWhereTheyMatter() {
        assertThat(words(value(X).minus(value(Y).minus(Z)))).isEqualTo("x − (y − z)");
        assertThat(words(value(X).minus(Y).minus(Z))).isEqualTo("x − y − z");
        assertThat(words(value(X).over(value(Y).over(Z)))).isEqualTo("x ÷ (y ÷ z)");
        assertThat(words(value(X).plus(Y).times(Z))).isEqualTo("(x + y) × z");
        assertThat(words(value(X).plus(value(Y).times(Z)))).isEqualTo("x + y × z");
        assertThat(words(value(X).plus(Y).power(2))).isEqualTo("(x + y)²");
        assertThat(words(new Expr.Negate(value(X).power(2)))).isEqualTo("(−x²)");
        assertThat(words(new Expr.Negate(value(X)).power(3))).isEqualTo("(−x)³");
    }

    @Test
    void aChoiceIsWrittenOutInWordsAndTakenInNumbers() {
        Expr expr =
                choice(Condition.compare(value(X), Relation.AT_LEAST, number(5)), value(Y).times(number(2)), value(Z));
        assertThat(words(expr)).isEqualTo("if x is at least 5: y × 2; otherwise: z");
        assertThat(numbers(expr, new SmallGrid().column(X, 6).column(Y, 1.5).column(Z, 9)))
                .isEqualTo("1.5 × 2");
        assertThat(numbers(expr, new SmallGrid().column(X, 4).column(Y, 1.5).column(Z, 9)))
                .isEqualTo("9");
    }

    @Test
    void aDefaultIsToldInWordsAndShownOnlyWhereItIsUsed() {
        Expr expr = given(SHARE, constant(QUARTER));
        assertThat(words(expr)).isEqualTo("share if given, otherwise a quarter");
        assertThat(numbers(expr, new SmallGrid().column(SHARE, 80))).isEqualTo("80 %");
        assertThat(numbers(expr, new SmallGrid().column(SHARE, Values.State.BLANK)))
                .isEqualTo("25 %");
    }

    @Test
    void aTableReadingNamesItsTable() {
        Expr linear = new Expr.Lookup(NodeCases.STEPS, value(X), Mode.LINEAR);
        assertThat(words(linear)).isEqualTo("'steps' at x (between the rows on a straight line)");
        assertThat(numbers(linear, new SmallGrid().column(X, 15))).isEqualTo("2 (from 'steps')");
        Expr share = new Expr.Lookup(NodeCases.SHARES, value(WORD), Mode.EXACT);
        assertThat(numbers(share, new SmallGrid().column(WORD, "mower"))).isEqualTo("80 % (from 'shares')");
    }

    @Test
    void conversionsAreWrittenAsExactRatios() {
        assertThat(words(value(SPEED).in(Units.M_PER_S))).isEqualTo("speed × 5 ÷ 18");
        assertThat(words(value(LENGTH).in(Units.KM))).isEqualTo("length ÷ 1000");
        assertThat(words(value(LENGTH).in(Units.FT))).isEqualTo("length ÷ 0.3048");
    }

    @Test
    void functionsAndConditionsReadAsSentences() {
        assertThat(words(call(Function.ROUND_UP, value(X).over(Y)))).isEqualTo("rounded up (x ÷ y)");
        assertThat(words(Expr.least(value(X), value(Y)))).isEqualTo("least of (x; y)");
        assertThat(words(call(Function.ROUND, value(X).plus(Y), number(2)))).isEqualTo("(x + y) rounded to 2 decimals");
        // Cut to nine decimals against binary noise, which is nothing to a reader.
        assertThat(words(call(Function.ROUND, value(X).plus(Y), number(9)))).isEqualTo("(x + y)");
        assertThat(WordsPrinter.words(Condition.all(List.of(Condition.is(WORD, "heap"), new Condition.Given(X)))))
                .isEqualTo("kind is heap and x is given");
        assertThat(WordsPrinter.words(new Condition.Not(new Condition.Blank(X))))
                .isEqualTo("x is typed");
    }

    @Test
    void longNumbersAreRoundedToSixDigitsForAReaderOnly() {
        SmallGrid row = new SmallGrid().column(X, 1 / 3.0).column(Y, 1234567.25).column(Z, 12.5);
        assertThat(numbers(value(X).times(Y).times(Z), row)).isEqualTo("0.333333 × 1234567 × 12.5");
    }

    @Test
    void aBareNumberOfPerCentIsNoFraction() {
        Expr bare = new Expr.NumberOf(value(SHARE), Units.PERCENT).plus(number(8));
        assertThat(words(bare)).isEqualTo("share in % + 8");
        assertThat(numbers(bare, new SmallGrid().column(SHARE, 70))).isEqualTo("70 + 8");
    }

    @Test
    void anOrInsideAnAndIsBracketed() {
        Condition either = Condition.any(List.of(new Condition.Given(X), new Condition.Blank(Y)));
        assertThat(WordsPrinter.words(Condition.all(List.of(Condition.is(WORD, "heap"), either))))
                .isEqualTo("kind is heap and (x is given or y is blank)");
    }

    @Test
    void aNumberBelowNoughtIsBracketedBehindASign() {
        SmallGrid row = new SmallGrid().column(X, -2).column(Y, -3.5);
        assertThat(numbers(value(X).minus(value(Y)), row)).isEqualTo("-2 − (-3.5)");
        assertThat(numbers(value(X).power(2), row)).isEqualTo("(-2)²");
    }

    @Test
    void anAnswerIsPrintedAsCloselyAsItIsHeldTo() {
        WorkedExample.Draft draft = WorkedExample.from(Source.derived("test"));
        assertThat(draft.gives(21.739000000000004, Units.PERCENT, 3).answerAsPrinted())
                .isEqualTo("21.739 %");
        assertThat(draft.gives(763, Units.T, 0).answerAsPrinted()).isEqualTo("763 t");
        assertThat(draft.givesWithin(0.38, Units.L_PER_MIN, 0.02).answerAsPrinted())
                .isEqualTo("0.38 L/min (within 0.02 L/min)");
        assertThat(draft.givesWithin(4.634349800722958, Units.H, 0.0005).answerAsPrinted())
                .isEqualTo("4.634 h");
    }
}
