package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DM_AT_CUTTING;
import static org.rickyard.trade.Quantities.DM_AT_ENSILING;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.YIELD;
import static org.rickyard.trade.Quantities.YIELD_BASIS;
import static org.rickyard.trade.Quantities.YIELD_DRY_MATTER;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What crop a machine meets and how many tonnes it can take, on one basis: fresh, as carted. */
public final class Throughput {
    private Throughput() {}

    private static final String STANDING = "standing fresh";
    private static final String CARTED = "as carted fresh";
    private static final String DRY_MATTER = "dry matter";

    /** Fresh crop off a hectare as it is carted. */
    public static final Symbol YIELD_CARTED = Symbol.number("yield as carted", Units.T_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Area a machine's throughput allows. */
    public static final Symbol THROUGHPUT_RATE = Symbol.number("rate by throughput", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Tonnes handled in an hour. */
    public static final Symbol MATERIAL_RATE = Symbol.number("material rate", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);

    private static final Source BASIS = Source.derived(
            "dry matter stays the same through wilting, so yield × dry" + " matter is the same before and after");

    /** {@code yield-as-carted}. */
    public static final Formula AS_CARTED = new Formula(
            "yield-as-carted",
            YIELD_CARTED,
            choice(
                    Condition.is(YIELD_BASIS, CARTED),
                    value(YIELD),
                    choice(
                            Condition.is(YIELD_BASIS, STANDING),
                            value(YIELD).times(DM_AT_CUTTING).over(DM_AT_ENSILING),
                            value(YIELD_DRY_MATTER)
                                    .over(DM_AT_ENSILING)
                                    .onlyWhen(
                                            Condition.is(YIELD_BASIS, DRY_MATTER),
                                            "no yield with its basis: type Yield, and standing fresh, as carted fresh or dry matter in Yield basis"))),
            BASIS,
            "field losses are not taken off",
            List.of(
                    WorkedExample.from(Source.secondHand(
                                    "Irish Independent 2019: 1.0 t at 30 % dry matter is 1.2 t at 25 %"))
                            .with(YIELD_BASIS, STANDING)
                            .with(YIELD, 1.2)
                            .with(DM_AT_CUTTING, 25)
                            .with(DM_AT_ENSILING, 30)
                            .gives(1.0, Units.T_PER_HA, 1),
                    richards(25, 48),
                    richards(40, 30)));

    private static WorkedExample richards(double dryMatter, double fresh) {
        return WorkedExample.from(Source.secondHand(
                        "H. Richards, Western Telegraph: 12 kg dry matter is 48 kg at 25 %, 30 at 40 %"))
                .with(YIELD_BASIS, DRY_MATTER)
                .with(YIELD_DRY_MATTER, 12)
                .with(DM_AT_ENSILING, dryMatter)
                .gives(fresh, Units.T_PER_HA, 0);
    }

    /** {@code throughput-rate}: output ÷ yield. */
    public static final Formula BY_THROUGHPUT = new Formula(
            "throughput-rate",
            THROUGHPUT_RATE,
            value(OUTPUT).over(YIELD_CARTED),
            Source.published("Buckmaster, Sizing Forage Machinery, Purdue: power, throughput, speed and traction each"
                    + " set a limit; the lowest holds"),
            "output in fresh tonnes as carted, kept up over the field, not the spot rate",
            List.of(WorkedExample.from(Source.derived("40 t/h in a crop of 20 t/ha"))
                    .with(OUTPUT, 40)
                    .with(YIELD_CARTED, 20)
                    .gives(2, Units.HA_PER_H, 6)));

    /** {@code material-rate}: work rate × yield. */
    public static final Formula MATERIAL = new Formula(
            "material-rate",
            MATERIAL_RATE,
            value(FieldRates.RATE).times(YIELD_CARTED),
            Source.published(
                    "Srivastava et al. 2006, Engineering Principles of Agricultural Machines, 2nd ed., ASABE, eq. 15.2"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(Source.derived("Serbian field study of a small flail forager: 0.176 ha/h in"
                            + " 25.5 t/ha is 4.5 t/h over all, against 7 t/h while cutting"))
                    .with(FieldRates.RATE, 0.176)
                    .with(YIELD_CARTED, 25.5)
                    .gives(4.5, Units.T_PER_H, 1)));
}
