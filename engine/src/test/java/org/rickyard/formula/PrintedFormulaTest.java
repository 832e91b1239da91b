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

    /** Brought to the unit of the branch before it and back again it would be multiplied and divided by the same. */
    @Test
    void aBranchIsBroughtToTheUnitOfTheWholeAtOnce() {
        Symbol tonnes = Symbol.number("tonnes", Units.T);
        Symbol kilograms = Symbol.number("kilograms", Units.KG);
        Condition heavy = Condition.compare(value(X), Relation.AT_LEAST, number(5));
        Expr inner = choice(heavy, value(kilograms), value(tonnes));
        assertThat(words(UnitChecker.in(inner, Units.T)))
                .isEqualTo("if x is at least 5: kilograms ÷ 1000; otherwise: tonnes");
        assertThat(words(choice(heavy, value(tonnes), inner)))
                .isEqualTo(
                        "if x is at least 5: tonnes; otherwise: if x is at least 5: kilograms ÷ 1000; otherwise: tonnes");
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
    void aFigureThatDoesNotHoldIsNotShownAsTheAnswer() {
        Expr expr = value(X).times(number(2))
                .onlyWhen(Condition.compare(value(X), Relation.MORE, number(5)), "x is too small");
        assertThat(words(expr)).isEqualTo("x × 2");
        assertThat(numbers(expr, new SmallGrid().column(X, 6))).isEqualTo("6 × 2");
        assertThat(numbers(expr, new SmallGrid().column(X, 4))).isEqualTo("(none: x is too small)");
        assertThat(numbers(expr, new SmallGrid().column(X, Values.State.BLANK))).isEqualTo("(x: none) × 2");
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
    void everyConditionReadsAsASentence() {
        Condition more = Condition.compare(value(X), Relation.MORE, number(5));
        assertThat(WordsPrinter.words(new Condition.Blank(X))).isEqualTo("x is blank");
        assertThat(WordsPrinter.words(new Condition.Not(more))).isEqualTo("not (x is above 5)");
        assertThat(WordsPrinter.words(Condition.any(List.of(more, new Condition.Given(Y)))))
                .isEqualTo("x is above 5 or y is given");
        assertThat(WordsPrinter.words(new Condition.InTable(NodeCases.STEPS, value(X), Mode.STEP)))
                .isEqualTo("x is in the table 'steps'");
    }

    @Test
    void wordsAndTheLeastOfSeveralAreToldAsTheyAre() {
        Expr least = new Expr.LeastGiven(List.of(X, Y));
        assertThat(words(least)).isEqualTo("least given of (x; y)");
        assertThat(words(new Expr.LabelOfLeast(List.of(X, Y), List.of("one", "two"))))
                .isEqualTo("which is least given of (x; y)");
        assertThat(words(Expr.text("walls"))).isEqualTo("\"walls\"");
        assertThat(words(new Expr.Join(List.of(new Expr.Label(X, X.name()), Expr.text(" missing")))))
                .isEqualTo("x and \" missing\"");
        assertThat(numbers(least, new SmallGrid().column(X, 7).column(Y, 3))).isEqualTo("least given of (7; 3)");
    }

    @Test
    void whatIsReadFromAnotherTableIsCalledByItsName() {
        assertThat(words(new Expr.Total("there", X, Y, Y, true))).isEqualTo("total of x");
        assertThat(words(new Expr.Before("there", X, Y, Z))).isEqualTo("total of x of the rows before it");
        assertThat(words(new Expr.Count("there", X, Y, Y, false))).isEqualTo("rows with x");
        assertThat(words(new Expr.Count("there", X, Y, Y, true))).isEqualTo("rows without x");
        assertThat(words(new Expr.Position("there", Y, Z))).isEqualTo("the row with this z");
        assertThat(words(new Expr.From("there", X, Y))).isEqualTo("x of that row");
    }

    @Test
    void aReadingOfAnotherTableShowsWhatStandsThere() {
        Expr share = new Expr.From("there", SHARE, Y);
        SmallGrid grid = new SmallGrid()
                .column(Y, 2)
                .other("there", SHARE, 70, 80, Values.State.BLANK)
                .other("there", WORD, "heap", "walled", "heap");
        assertThat(numbers(share, grid)).isEqualTo("80 %");
        assertThat(numbers(new Expr.From("there", WORD, Y), grid)).isEqualTo("walled");
        assertThat(numbers(share, grid.column(Y, 3))).isEqualTo("share of that row");
        assertThat(numbers(share, grid.column(Y, Values.State.WITHHELD))).isEqualTo("share of that row");
    }

    @Test
    void aChoiceOrReadingThatCannotBeMadeIsToldInWords() {
        Condition more = Condition.compare(value(X), Relation.MORE, number(5));
        Expr choice = choice(more, value(Y), value(Z));
        SmallGrid blank =
                new SmallGrid().column(X, Values.State.BLANK).column(Y, 1).column(Z, 2);
        assertThat(numbers(choice, blank)).isEqualTo("if (x: none) is above 5: 1; otherwise: 2");
        assertThat(numbers(new Expr.Lookup(NodeCases.STEPS, value(X), Mode.STEP), blank))
                .isEqualTo("'steps' at (x: none)");
    }

    @Test
    void aVerdictShowsTheFiguresItWasFoundBy() {
        Expr verdict =
                choice(Condition.compare(value(X), Relation.MORE, value(Y)), Expr.text("too high"), Expr.text(""));
        assertThat(numbers(verdict, new SmallGrid().column(X, 6).column(Y, 5)))
                .isEqualTo("6 is above 5? yes: \"too high\"");
        assertThat(numbers(verdict, new SmallGrid().column(X, 4).column(Y, 5))).isEqualTo("4 is above 5? no: \"\"");
        Expr name = new Expr.Lookup(NodeCases.NAMES, value(X), Mode.STEP);
        assertThat(numbers(name, new SmallGrid().column(X, 6))).isEqualTo("'names' at 6");
    }

    @Test
    void daysAreToldByTheirDate() {
        Symbol first = Symbol.date("earliest day");
        Symbol last = Symbol.date("latest day");
        SmallGrid row = new SmallGrid().column(first, 46160).column(last, 46171.5);
        assertThat(numbers(value(last).minus(first).plus(number(1)), row)).isEqualTo("2026-05-29 − 2026-05-18 + 1");
    }

    @Test
    void aNumberThatStandsForAUnitSaysWhich() {
        Expr one = new Expr.AsUnit(number(1), Units.M);
        assertThat(words(value(LENGTH).over(one))).isEqualTo("length ÷ 1 m");
        assertThat(words(value(LENGTH).over(new Expr.AsUnit(number(2), Units.M))))
                .isEqualTo("length ÷ 2");
        assertThat(words(number(2.5).times(new Expr.NumberOf(value(LENGTH), Units.KM))))
                .isEqualTo("2.5 × (length ÷ 1000)");
        assertThat(words(value(X).onlyWhen(new Condition.Given(Y), "no y"))).isEqualTo("x");
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
    void aCircleIsToldByItsLetter() {
        assertThat(words(number(Math.PI).over(number(4)).times(value(X).power(2))))
                .isEqualTo("π ÷ 4 × x²");
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
