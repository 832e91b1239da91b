package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.least;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.quantity.UnitMismatchException;
import org.rickyard.quantity.Units;

/** Expressions whose units do not fit cannot be made. */
class UnitRefusalsTest {
    private static final Symbol LENGTH = Symbol.number("length", Units.M);
    private static final Symbol FEET = Symbol.number("feet", Units.FT);
    private static final Symbol AREA = Symbol.number("area", Units.HA);
    private static final Symbol VOLUME = Symbol.number("volume", Units.M3);
    private static final Symbol FRESH = Symbol.number("fresh density", Units.KG_PER_M3);
    private static final Symbol DRY = Symbol.number("dry matter density", Units.KG_DM_PER_M3);
    private static final Symbol DRY_MATTER = Symbol.number("dry matter", Units.PERCENT_DM);
    private static final Symbol TONNES = Symbol.number("capacity", Units.T);
    private static final Symbol TONNES_DM = Symbol.number("capacity, dry matter", Units.T_DM);
    private static final Symbol DOSE = Symbol.number("dose", Units.DOSE);
    private static final Symbol WATER = Symbol.number("water volume", Units.L_PER_HA);
    private static final Symbol SHARE = Symbol.number("share", Units.PERCENT);
    private static final Symbol PLAIN = Symbol.number("plain", Units.ONE);
    private static final Source SOURCE = Source.derived("test");
    private static final ReferenceTable DENSITIES = new ReferenceTable(
            "densities",
            "dry matter",
            Units.PERCENT_DM,
            "density",
            Units.T_PER_M3,
            List.of(ReferenceTable.Row.of(20, 0.77), ReferenceTable.Row.of(25, 0.68)),
            SOURCE);

    private static void refused(ThrowingCallable declaration) {
        assertThatThrownBy(declaration).isInstanceOf(UnitMismatchException.class);
    }

    private static Formula formula(Symbol result, Expr expr) {
        return new Formula("a-formula", result, expr, SOURCE, "", List.of());
    }

    @Test
    void metresAreNotAddedToHectares() {
        refused(() -> value(LENGTH).plus(AREA));
        refused(() -> value(AREA).minus(LENGTH));
        refused(() -> least(value(AREA), value(LENGTH)));
        assertThat(value(LENGTH).plus(FEET).unit()).isEqualTo(Units.M);
    }

    @Test
    void freshAndDryDensityAreNotTakenForOneAnother() {
        assertThat(formula(TONNES, value(VOLUME).times(FRESH))).isNotNull();
        assertThat(formula(TONNES_DM, value(VOLUME).times(DRY))).isNotNull();
        assertThat(formula(FRESH, value(DRY).over(DRY_MATTER))).isNotNull();
        refused(() -> formula(TONNES, value(VOLUME).times(DRY)));
        refused(() -> formula(TONNES_DM, value(VOLUME).times(FRESH)));
        refused(() -> formula(FRESH, value(DRY).times(DRY_MATTER)));
        refused(() -> formula(TONNES, value(TONNES_DM).times(DRY_MATTER)));
        refused(() -> value(FRESH).plus(DRY));
    }

    @Test
    void dryMatterIsNoPlainPerCent() {
        refused(() -> formula(TONNES_DM, value(TONNES).times(SHARE)));
        refused(() -> value(DRY_MATTER).plus(SHARE));
    }

    @Test
    void aDoseIsNoWaterVolume() {
        refused(() -> value(DOSE).plus(WATER));
        refused(() -> Condition.compare(value(DOSE), Relation.MORE, value(WATER)));
    }

    @Test
    void aResultHasTheDimensionItsExpressionGives() {
        refused(() -> formula(LENGTH, value(LENGTH).times(LENGTH)));
        refused(() -> formula(AREA, value(LENGTH).over(LENGTH)));
        refused(() -> formula(TONNES, value(TONNES).power(2)));
        assertThat(formula(AREA, value(LENGTH).times(FEET))).isNotNull();
    }

    @Test
    void branchesAndDefaultsMeasureTheSameThing() {
        Condition any = new Condition.Given(PLAIN);
        refused(() -> choice(any, value(LENGTH), value(AREA)));
        refused(() -> given(LENGTH, value(AREA)));
        refused(() -> given(SHARE, value(LENGTH)));
    }

    @Test
    void comparisonsAreOfLikeWithLike() {
        refused(() -> Condition.compare(value(LENGTH), Relation.LESS, value(AREA)));
        refused(() -> Condition.compare(value(LENGTH), Relation.LESS, number(3)));
    }

    @Test
    void transcendentalFunctionsTakePlainNumbers() {
        refused(() -> call(Function.EXP, value(LENGTH)));
        refused(() -> call(Function.LN, value(LENGTH)));
        refused(() -> call(Function.ATAN, value(LENGTH)));
        refused(() -> call(Function.LN, value(LENGTH).over(FEET)));
        assertThat(call(Function.LN, value(LENGTH).over(FEET).in(Units.ONE)).unit())
                .isEqualTo(Units.ONE);
        assertThatThrownBy(() -> call(Function.SQRT, value(LENGTH)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("square root");
    }

    @Test
    void whatIsReadFromAnotherTableHasTheUnitItHasThere() {
        assertThat(formula(LENGTH, new Expr.From("there", LENGTH, PLAIN))).isNotNull();
        refused(() -> formula(AREA, new Expr.From("there", LENGTH, PLAIN)));
        assertThat(formula(AREA, new Expr.Total("there", AREA, PLAIN, PLAIN, true)))
                .isNotNull();
        refused(() -> formula(LENGTH, new Expr.Total("there", AREA, PLAIN, PLAIN, true)));
        assertThat(formula(AREA, new Expr.Before("there", AREA, PLAIN, PLAIN))).isNotNull();
        refused(() -> formula(LENGTH, new Expr.Before("there", AREA, PLAIN, PLAIN)));
        assertThat(formula(PLAIN, new Expr.Count("there", AREA, PLAIN, PLAIN, false)))
                .isNotNull();
        refused(() -> formula(AREA, new Expr.Count("there", AREA, PLAIN, PLAIN, false)));
    }

    @Test
    void whatIsWithheldElsewhereIsBroughtToTheUnitWhereItIsNot() {
        Condition any = new Condition.Given(PLAIN);
        assertThat(formula(LENGTH, value(FEET).onlyWhen(any, "no")).words()).isEqualTo("feet × 0.3048");
        refused(() -> formula(AREA, value(FEET).onlyWhen(any, "no")));
    }

    @Test
    void unitsAreStrippedAndGivenOnlyWhereTheyFit() {
        refused(() -> new Expr.NumberOf(value(LENGTH), Units.KW));
        refused(() -> new Expr.AsUnit(value(LENGTH), Units.M));
        refused(() -> value(LENGTH).in(Units.HA));
        refused(() -> new Expr.Lookup(DENSITIES, value(SHARE), Expr.Lookup.Mode.LINEAR));
    }

    @Test
    void functionsTakeTheNumberOfArgumentsTheyAreFor() {
        assertThatThrownBy(() -> call(Function.ABS, value(PLAIN), value(PLAIN)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> call(Function.ROUND, value(PLAIN), value(PLAIN)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("decimals");
    }

    @Test
    void whatJoinsTablesStandsOnlyAtTheTop() {
        Expr total = new Expr.Total("there", PLAIN, PLAIN, PLAIN, true);
        Expr position = new Expr.Position("there", PLAIN, PLAIN);
        Expr choice = choice(new Condition.Given(PLAIN), value(PLAIN), number(1));
        for (Expr top : List.of(total, position, choice, given(PLAIN, number(1)))) {
            assertThatThrownBy(() -> Needs.of(top.plus(number(1))))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("column of its own");
        }
        assertThat(Needs.of(text("words")).quantities()).isEmpty();
    }

    @Test
    void idsAreKebabCase() {
        assertThatThrownBy(() -> new Formula("Work Rate", PLAIN, number(1), SOURCE, "", List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("kebab-case");
    }
}
