package org.rickyard.trade.cost;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.CHARGE_PER_BALE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HECTARE;
import static org.rickyard.trade.Quantities.CHARGE_PER_HOUR;
import static org.rickyard.trade.Quantities.CHARGE_PER_TONNE;
import static org.rickyard.trade.Quantities.CHARGE_UNIT;
import static org.rickyard.trade.Quantities.DM_AT_ENSILING;
import static org.rickyard.trade.Quantities.KIND_OF_MACHINE;
import static org.rickyard.trade.Quantities.OWN_OR_HIRED;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.Bales;
import org.rickyard.trade.workrate.FuelAndLabour;
import org.rickyard.trade.workrate.Throughput;

/** The bill for a hired machine: its charge by the hour, hectare, tonne or bale. */
public final class HireBill {
    private HireBill() {}

    /** What is in a contractor's charge. */
    public static final Symbol INCLUDES = Quantities.CHARGE_INCLUDES;

    static Symbol money(String name) {
        return Symbol.number(name, Units.MONEY_UNIT)
                .possible(Range.NOT_NEGATIVE)
                .decimals(2);
    }

    /** Bales a baler makes of the crop. */
    public static final Symbol BALES =
            Symbol.number("bales made", Units.ONE).possible(Range.POSITIVE).decimals(0);
    /** The bill for a hired machine. */
    public static final Symbol HIRE = money("hire bill");

    static final Condition HIRED = Condition.is(OWN_OR_HIRED, "hired");
    static final Condition ALL_IN = Condition.all(List.of(HIRED, Condition.is(INCLUDES, "everything")));
    static final Condition TRACTOR_IN = Condition.all(List.of(
            HIRED,
            Condition.any(List.of(Condition.is(INCLUDES, "everything"), Condition.is(INCLUDES, "all but fuel")))));
    private static final Condition HIRE_UNREADABLE = Condition.is(OWN_OR_HIRED, Quantities.UNREADABLE);
    private static final Condition INCLUDES_UNREADABLE = Condition.is(INCLUDES, Quantities.UNREADABLE);
    /** Whether it can be told if the machine is hired. */
    static final Condition HIRE_TOLD = new Condition.Not(HIRE_UNREADABLE);
    /** Whether it can be told what is in the charge. */
    static final Condition INCLUDES_TOLD = new Condition.Not(INCLUDES_UNREADABLE);
    /** Whether it can be told if a charge includes tractor and driver, where none is known to. */
    static final Condition TRACTOR_TOLD =
            notPerhaps(Condition.is(INCLUDES, "everything"), Condition.is(INCLUDES, "all but fuel"));
    /** Whether it can be told if a charge includes the fuel, where none is known to. */
    static final Condition FUEL_TOLD = notPerhaps(Condition.is(INCLUDES, "everything"));

    static final String OWN_OR_HIRED_WANTED = "Own or hired is neither own nor hired: write one of them";
    static final String INCLUDES_WANTED =
            "Charge includes is none of everything, all but fuel, machine only: write one of them";
    static final String WORDS_WANTED = "Own or hired, or Charge includes, cannot be read: write own or hired, and"
            + " everything, all but fuel, or machine only";

    /** Both words were read, or else the charge is known to be without these or the machine to be one's own. */
    private static Condition notPerhaps(Condition... included) {
        List<Condition> perhaps = new ArrayList<>(List.of(included));
        perhaps.add(INCLUDES_UNREADABLE);
        return Condition.any(List.of(
                new Condition.Not(Condition.any(List.of(HIRE_UNREADABLE, INCLUDES_UNREADABLE))),
                new Condition.Not(Condition.all(
                        List.of(Condition.any(List.of(HIRED, HIRE_UNREADABLE)), Condition.any(perhaps))))));
    }

    private static final String SAY =
            "nothing says what the charge includes: write everything, all but fuel or machine only in"
                    + " Charge includes";

    private static Condition said() {
        return Condition.any(List.of(
                Condition.is(INCLUDES, "everything"),
                Condition.is(INCLUDES, "all but fuel"),
                Condition.is(INCLUDES, "machine only")));
    }

    static final Expr NOTHING = new Expr.AsUnit(number(0), Units.MONEY_UNIT);

    private static final Condition MAKES_BALES =
            Condition.any(List.of(Condition.is(KIND_OF_MACHINE, "baler"), Condition.is(KIND_OF_MACHINE, "wrapper")));

    /** Dry matter in a bale that one person lifts. */
    public static final Constant SMALL_BALE_DM = new Constant(
                    "dry matter in a small square bale",
                    22,
                    Units.KG_DM,
                    Source.memory("56 lb bales (NIAE trial, reported in Press, 10 Dec 1960) of about 85 % dry matter;"
                            + " weigh your own"))
            .aboveZero();
    /** Dry matter in a bale that a loader lifts. */
    public static final Constant LARGE_BALE_DM = new Constant(
                    "dry matter in a large square bale",
                    400,
                    Units.KG_DM,
                    Source.memory("hay or straw, about 120 × 90 × 240 cm, 300 to 500 kg; weigh your own"))
            .aboveZero();

    private static Expr bales(Constant dryMatterOfOne) {
        return Expr.call(
                Function.ROUND_UP,
                value(AREA)
                        .times(Throughput.YIELD_CARTED)
                        .times(DM_AT_ENSILING)
                        .over(constant(dryMatterOfOne))
                        .in(Units.ONE));
    }

    /** {@code bales-made}: dry matter of the crop ÷ dry matter of a bale of the baler's kind, rounded up. */
    public static final Formula BALES_MADE = new Formula(
            "bales-made",
            BALES,
            choice(
                    Condition.is(KIND_OF_MACHINE, "small square baler"),
                    bales(SMALL_BALE_DM),
                    choice(
                            Condition.is(KIND_OF_MACHINE, "large square baler"),
                            bales(LARGE_BALE_DM),
                            bales(Bales.BALE_DM).onlyWhen(MAKES_BALES, "it neither makes nor wraps bales"))),
            Bales.BALE_DM.source(),
            "bales of the baler's kind, round where it is not called a square one; count your own and set their dry"
                    + " matter on Assumptions",
            List.of(
                    // A hectare of 40 t/ha at 30 % holds 12 t of dry matter: 54.5 bales of 220 kg.
                    WorkedExample.from(Source.derived("12 t of dry matter in bales of 220 kg"))
                            .with(KIND_OF_MACHINE, "baler")
                            .with(AREA, 1)
                            .with(Throughput.YIELD_CARTED, 40)
                            .with(DM_AT_ENSILING, 30)
                            .gives(55, Units.ONE, 0),
                    // 4 t/ha of hay at 85 % are 3.4 t of dry matter: 154.5 small bales, 8.5 large ones.
                    hay("small square baler", 155),
                    hay("large square baler", 9),
                    WorkedExample.from(Source.secondHand(
                                    "Farmers Journal 216282: 900 bales at 220 kg are 198 t of dry matter"))
                            .with(KIND_OF_MACHINE, "baler")
                            .with(AREA, 16.5)
                            .with(Throughput.YIELD_CARTED, 40)
                            .with(DM_AT_ENSILING, 30)
                            .gives(900, Units.ONE, 0)));

    private static WorkedExample hay(String kind, int bales) {
        return WorkedExample.from(Source.derived("3.4 t of dry matter in bales of 22 and of 400 kg"))
                .with(KIND_OF_MACHINE, kind)
                .with(AREA, 1)
                .with(Throughput.YIELD_CARTED, 4)
                .with(DM_AT_ENSILING, 85)
                .gives(bales, Units.ONE, 0);
    }

    /** {@code hire-bill}: the charge by its unit. */
    public static final Formula HIRE_BILL = new Formula(
            "hire-bill",
            HIRE,
            choice(
                    new Condition.Not(HIRED),
                    NOTHING.onlyWhen(HIRE_TOLD, OWN_OR_HIRED_WANTED),
                    choice(
                            Condition.is(CHARGE_UNIT, "h"),
                            value(CHARGE_PER_HOUR)
                                    .times(FuelAndLabour.WORK_HOURS)
                                    .onlyWhen(said(), SAY),
                            choice(
                                    Condition.is(CHARGE_UNIT, "t"),
                                    value(CHARGE_PER_TONNE)
                                            .times(AREA)
                                            .times(Throughput.YIELD_CARTED)
                                            .onlyWhen(said(), SAY),
                                    choice(
                                            Condition.is(CHARGE_UNIT, "bale"),
                                            value(CHARGE_PER_BALE).times(BALES).onlyWhen(said(), SAY),
                                            value(CHARGE_PER_HECTARE)
                                                    .times(AREA)
                                                    .onlyWhen(said(), SAY))))),
            Source.derived("charge × what it is counted by"),
            "the charge as typed, with or without tax as typed",
            List.of(
                    WorkedExample.from(Source.derived("National Association of Agricultural Contractors, reported:"
                                    + " mowing 30.30 a hectare, so 10 ha cost 303"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "everything")
                            .with(CHARGE_UNIT, "ha")
                            .with(CHARGE_PER_HECTARE, 30.30)
                            .with(AREA, 10)
                            .gives(303, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("2 a tonne of 20 t/ha on 10 ha"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "all but fuel")
                            .with(CHARGE_UNIT, "t")
                            .with(CHARGE_PER_TONNE, 2)
                            .with(AREA, 10)
                            .with(Throughput.YIELD_CARTED, 20)
                            .gives(400, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("8 a bale for 55 bales"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "everything")
                            .with(CHARGE_UNIT, "bale")
                            .with(CHARGE_PER_BALE, 8)
                            .with(BALES, 55)
                            .gives(440, Units.MONEY_UNIT, 6),
                    WorkedExample.from(Source.derived("45 an hour for 5 h"))
                            .with(OWN_OR_HIRED, "hired")
                            .with(INCLUDES, "machine only")
                            .with(CHARGE_UNIT, "h")
                            .with(CHARGE_PER_HOUR, 45)
                            .with(FuelAndLabour.WORK_HOURS, 5)
                            .gives(225, Units.MONEY_UNIT, 6)));
}
