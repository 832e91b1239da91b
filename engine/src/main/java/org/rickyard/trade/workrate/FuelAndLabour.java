package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.CREW;
import static org.rickyard.trade.Quantities.FUEL_FOR_AREA;
import static org.rickyard.trade.Quantities.FUEL_RATE;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/**
 * Fuel and labour of a machine at work on one field. Fuel by order of trust: typed; by the load on the tractor; or the
 * yearly average of the tractor, which is too low for heavy work and says so.
 */
public final class FuelAndLabour {
    private FuelAndLabour() {}

    private static final Unit PER_POWER = Units.L_PER_H.over(Units.KW);

    /** The table. */
    public static final String WORK_INPUTS = "work-inputs";

    /** Hours of a line of the work rates. */
    public static final Symbol LINE_HOURS = hours("field hours of one machine");
    /** Hours of the gang. */
    public static final Symbol GANG_HOURS = hours("hours of the gang");
    /** Machine hours on the field. */
    public static final Symbol WORK_HOURS = hours("machine hours on the field");
    /** Fuel in an hour. */
    public static final Symbol FUEL = Symbol.number("fuel per hour", Units.L_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** How fuel was found. */
    public static final Symbol FUEL_BY = Symbol.text("fuel by");
    /** Fuel on the field. */
    public static final Symbol FIELD_FUEL =
            Symbol.number("fuel on the field", Units.L).possible(Range.POSITIVE).decimals(0);
    /** Fuel on a hectare. */
    public static final Symbol FUEL_PER_HECTARE = Symbol.number("fuel per hectare", Units.L_PER_HA)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Fuel for a tonne. */
    public static final Symbol FUEL_PER_TONNE = Symbol.number("fuel per tonne", Units.L.over(Units.T))
            .possible(Range.POSITIVE)
            .decimals(2);
    /** People. */
    public static final Symbol CREW_USED = Symbol.number("people at each machine", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Hours of people on the field. */
    public static final Symbol LABOUR = Symbol.number("labour on the field", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    /** Hours of one person on the field. */
    public static final Symbol DRIVER_HOURS = Symbol.number("hours of each driver", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Hours of people in a day. */
    public static final Symbol LABOUR_DAY = Symbol.number("labour per day", Units.H)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Length of a driver's day. */
    public static final Symbol DRIVER_DAY =
            Symbol.number("driver's day", Units.H).possible(Range.NOT_NEGATIVE).decimals(1);

    private static Symbol hours(String name) {
        return Symbol.number(name, Units.H).possible(Range.POSITIVE).decimals(1);
    }

    private static final String LIGHTLY = "load on the tractor (lighter than the published form is meant for)";
    private static final Source GRISSO =
            Source.published("Grisso, Virginia Tech, after ASAE EP496.3, 6.3.2: 0.223 L/h for"
                    + " each kW of rated PTO power; budget managers find it too low for real use");
    private static final Source LOAD =
            Source.secondHand("ASAE D497.7, full throttle: (0.22 × load + 0.096) L/kWh, as in"
                    + " a published analysis of tractor records");
    private static final Source IOWA = Source.published(
            "Iowa State University AgDM A3-29: actual hours of labour exceed" + " field time by 10 to 20 %");

    /** Yearly average. */
    public static final Constant AVERAGE = new Constant("Fuel, yearly average", 0.223, PER_POWER, GRISSO);
    /** Fuel that grows with load. */
    public static final Constant WITH_LOAD = new Constant("Fuel at work, by load", 0.22, PER_POWER, LOAD);
    /** Fuel that does not. */
    public static final Constant WITHOUT_LOAD = new Constant("Fuel at work, at no load", 0.096, PER_POWER, LOAD);
    /** A driver. */
    public static final Constant ONE_DRIVER = new Constant(
                    "People at a machine if none are typed", 1, Units.ONE, Source.commonPractice("one driver"))
            .possible(CREW.possible());
    /** Labour beyond field time. */
    public static final Constant ALLOWANCE = new Constant("Labour over machine hours", 110, Units.PERCENT, IOWA);
    /** Loads below which the fuel form is not meant. */
    public static final Constant LIGHT_LOAD =
            new Constant("Lightest load of the fuel form", 20, Units.PERCENT, Source.memory("ASAE D497.7"));

    private static final Condition IN_GANG =
            Condition.compare(value(Keys.GANG_KEY), Condition.Relation.MORE, number(0));

    /** The yearly average may stand for a load that is not known, not for one that was typed wrongly. */
    private static final Condition LOAD_NOT_TYPED_WRONG = Condition.usableOrBlank(
            Quantities.MASS,
            Quantities.DRAUGHT,
            Quantities.DRAUGHT_FOR_WIDTH,
            Quantities.OUTPUT,
            Quantities.SPEED,
            Quantities.WORKING_WIDTH,
            Quantities.YIELD,
            Quantities.YIELD_DRY_MATTER,
            Quantities.DM_AT_CUTTING,
            Quantities.DM_AT_ENSILING);

    /** Machine hours: the gang's for each machine of it, or the machine's own. */
    public static final Formula HOURS_AT_WORK = new Formula(
            "machine-hours-on-field",
            WORK_HOURS,
            choice(IN_GANG, value(GANG_HOURS).times(StageRates.ALIKE), value(LINE_HOURS)),
            Source.derived("machines of a gang work as long as the gang; others their own hours"),
            "road, service and repairs come on top",
            List.of(WorkedExample.from(Source.derived("three trailers for 4 h"))
                    .with(Keys.GANG_KEY, 1)
                    .with(GANG_HOURS, 4)
                    .with(StageRates.ALIKE, 3)
                    .gives(12, Units.H, 6)));

    /** {@code fuel}: litres an hour. */
    public static final Formula FUEL_OF_HOUR = new Formula(
            "fuel",
            FUEL,
            choice(
                    Condition.typed(FUEL_FOR_AREA),
                    value(FUEL_FOR_AREA).times(AREA).over(WORK_HOURS),
                    choice(
                            new Condition.Blank(FUEL_RATE),
                            choice(
                                    new Condition.Given(PowerNeeded.SHARE),
                                    constant(WITH_LOAD)
                                            .times(PowerNeeded.SHARE)
                                            .plus(constant(WITHOUT_LOAD))
                                            .times(PowerNeeded.AVAILABLE)
                                            .onlyWhen(
                                                    Condition.compare(
                                                            value(PowerNeeded.SHARE),
                                                            Condition.Relation.AT_MOST,
                                                            number(1)),
                                                    "the work needs more power than the tractor has"),
                                    constant(AVERAGE)
                                            .times(PowerNeeded.AVAILABLE)
                                            .onlyWhen(
                                                    LOAD_NOT_TYPED_WRONG,
                                                    "something typed for the power needed is unusable")),
                            value(FUEL_RATE))),
            LOAD,
            "loads of 20 to 100 %; actual use may be a third either way",
            fuelExamples());

    private static List<WorkedExample> fuelExamples() {
        List<WorkedExample> all = new ArrayList<>();
        double[][] loads = {{25, 11.325}, {50, 15.45}, {75, 19.575}, {100, 23.7}};
        for (double[] load : loads) {
            all.add(WorkedExample.from(Source.derived("ASAE D497.7 for 75 kW at " + (int) load[0] + " %"))
                    .with(PowerNeeded.AVAILABLE, 75)
                    .with(PowerNeeded.SHARE, load[0])
                    .with(AREA, 12)
                    .gives(load[1], Units.L_PER_H, 3));
        }
        all.add(WorkedExample.from(Source.derived("16.725 L/h at 2.4 ha/h is 6.97 L/ha, the other way"))
                .with(FUEL_FOR_AREA, 16.725 / 2.4)
                .with(AREA, 2.4)
                .with(WORK_HOURS, 1)
                .gives(16.725, Units.L_PER_H, 6));
        all.add(WorkedExample.from(Source.derived("0.223 × 75 kW"))
                .with(PowerNeeded.AVAILABLE, 75)
                .gives(16.725, Units.L_PER_H, 6));
        // The print uses the rounded customary figure 0.044 US gal for each hp.
        all.add(WorkedExample.from(Source.published("Iowa State University: 105 hp × 0.044 is 4.62 US gal/h"))
                .with(PowerNeeded.AVAILABLE, 105, Units.HP)
                .givesWithin(4.62, Units.GAL_US.over(Units.H), 0.01));
        all.add(WorkedExample.from(Source.secondHand("Iowa State University: 180 hp × 0.044 is 7.92 US gal/h"))
                .with(PowerNeeded.AVAILABLE, 180, Units.HP)
                .givesWithin(7.92, Units.GAL_US.over(Units.H), 0.015));
        return all;
    }

    /** How fuel was found. */
    public static final Formula FUEL_FOUND = new Formula(
            "fuel-by",
            FUEL_BY,
            choice(
                    Condition.typed(FUEL_FOR_AREA),
                    choice(new Condition.Given(FUEL_FOR_AREA), Expr.text("typed, by area"), Expr.text("")),
                    choice(
                            Condition.typed(FUEL_RATE),
                            choice(new Condition.Given(FUEL_RATE), Expr.text("typed"), Expr.text("")),
                            choice(
                                    new Condition.Given(PowerNeeded.SHARE),
                                    choice(
                                            Condition.compare(
                                                    value(PowerNeeded.SHARE),
                                                    Condition.Relation.LESS,
                                                    constant(LIGHT_LOAD)),
                                            Expr.text(LIGHTLY),
                                            Expr.text("load on the tractor")),
                                    choice(
                                            Condition.all(
                                                    List.of(
                                                            new Condition.Given(PowerNeeded.AVAILABLE),
                                                            LOAD_NOT_TYPED_WRONG)),
                                            Expr.text(
                                                    "yearly average (light use: too low for mowing, chopping, ploughing)"),
                                            Expr.text(""))))),
            Source.commonPractice("the surest there is"),
            "typed, by load, yearly average",
            List.of(
                    WorkedExample.from(Source.commonPractice("what is typed comes first"))
                            .with(FUEL_FOR_AREA, 6)
                            .gives("typed, by area"),
                    WorkedExample.from(Source.commonPractice("what is typed comes first"))
                            .with(FUEL_RATE, 12)
                            .with(PowerNeeded.SHARE, 50)
                            .gives("typed"),
                    found().with(PowerNeeded.SHARE, 50).gives("load on the tractor"),
                    found().with(PowerNeeded.SHARE, 10).gives(LIGHTLY),
                    found().with(PowerNeeded.AVAILABLE, 75)
                            .gives("yearly average (light use: too low for mowing, chopping, ploughing)")));

    private static WorkedExample.Draft found() {
        return WorkedExample.from(Source.commonPractice("the surest there is"));
    }

    /** {@code fuel-on-field}. */
    public static final Formula FUEL_OF_FIELD = new Formula(
            "fuel-on-field",
            FIELD_FUEL,
            choice(
                    Condition.typed(FUEL_FOR_AREA),
                    value(FUEL_FOR_AREA).times(AREA),
                    value(FUEL).times(WORK_HOURS)),
            Source.derived("litres an hour × hours, or litres a hectare × area"),
            "field work only",
            List.of(
                    WorkedExample.from(Source.published("University of Missouri G1208, Frisby 1993: mouldboard plough"
                                    + " 1.68 US gal an acre, 15.7 L/ha"))
                            .with(FUEL_FOR_AREA, 1.68, Units.GAL_US.over(Units.AC))
                            .with(AREA, 1)
                            .gives(15.7, Units.L, 1),
                    WorkedExample.from(Source.derived("12 L/h for 5 h"))
                            .with(FUEL, 12)
                            .with(AREA, 12)
                            .with(WORK_HOURS, 5)
                            .gives(60, Units.L, 6)));

    /** {@code fuel-per-hectare}. */
    public static final Formula FUEL_OF_HECTARE = new Formula(
            "fuel-per-hectare",
            FUEL_PER_HECTARE,
            value(FIELD_FUEL).over(AREA),
            Source.derived("litres over area"),
            "field work only",
            List.of(WorkedExample.from(Source.derived("16.725 L/h at 2.4 ha/h is 6.97 L/ha"))
                    .with(FIELD_FUEL, 16.725)
                    .with(AREA, 2.4)
                    .gives(6.97, Units.L_PER_HA, 2)));

    /** {@code fuel-per-tonne}. */
    public static final Formula FUEL_OF_TONNE = new Formula(
            "fuel-per-tonne",
            FUEL_PER_TONNE,
            value(FUEL_PER_HECTARE).over(Throughput.YIELD_CARTED),
            Source.derived("litres per area over tonnes per area"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(Source.derived("30 L/ha in 20 t/ha"))
                    .with(FUEL_PER_HECTARE, 30)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(1.5, Units.L.over(Units.T), 6)));

    /** People reckoned with. */
    public static final Formula CREW_RECKONED = new Formula(
            "crew",
            CREW_USED,
            given(CREW, constant(ONE_DRIVER)),
            Source.commonPractice("typed, otherwise one driver"),
            "the driver included",
            List.of(WorkedExample.from(Source.commonPractice("what is typed stands"))
                    .with(CREW, 3)
                    .gives(3, Units.ONE, 6)));

    /** {@code labour}: machine hours × people × allowance. */
    public static final Formula LABOUR_OF_FIELD = new Formula(
            "labour",
            LABOUR,
            value(WORK_HOURS).times(CREW_USED).times(constant(ALLOWANCE)),
            IOWA,
            "the allowance is for fuelling, service and moving",
            List.of(WorkedExample.from(Source.derived("two people for 5 h, a tenth on top"))
                    .with(WORK_HOURS, 5)
                    .with(CREW_USED, 2)
                    .gives(11, Units.H, 6)));

    /** {@code labour-per-driver}: labour shared among the people. */
    public static final Formula LABOUR_OF_DRIVER = new Formula(
            "labour-per-driver",
            DRIVER_HOURS,
            value(WORK_HOURS).over(StageRates.ALIKE).times(constant(ALLOWANCE)),
            IOWA,
            "each person at a machine; machines alike side by side",
            List.of(WorkedExample.from(Source.derived("three trailers for 12 h together, a tenth on top"))
                    .with(WORK_HOURS, 12)
                    .with(StageRates.ALIKE, 3)
                    .gives(4.4, Units.H, 6)));

    /** {@code driver-day}: hours per day with the allowance. */
    public static final Formula DAY_OF_DRIVER = new Formula(
            "driver-day",
            DRIVER_DAY,
            value(HOURS_PER_DAY).times(constant(ALLOWANCE)),
            IOWA,
            "fuelling, service and moving are in it; the way home is not",
            List.of(WorkedExample.from(Source.derived("10 h in the field, a tenth on top"))
                    .with(HOURS_PER_DAY, 10)
                    .gives(11, Units.H, 6)));

    /** {@code labour-per-day}: driver's day × people × machines alike. */
    public static final Formula LABOUR_OF_DAY = new Formula(
            "labour-per-day",
            LABOUR_DAY,
            value(DRIVER_DAY).times(CREW_USED).times(StageRates.ALIKE),
            Source.derived("a driver's day × people × machines"),
            "a full day of this work",
            List.of(WorkedExample.from(Source.derived("11 h, two people at each of three machines"))
                    .with(DRIVER_DAY, 11)
                    .with(CREW_USED, 2)
                    .with(StageRates.ALIKE, 3)
                    .gives(66, Units.H, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(
                HOURS_AT_WORK,
                FUEL_OF_HOUR,
                FUEL_FOUND,
                FUEL_OF_FIELD,
                FUEL_OF_HECTARE,
                FUEL_OF_TONNE,
                CREW_RECKONED,
                LABOUR_OF_FIELD,
                LABOUR_OF_DRIVER,
                DAY_OF_DRIVER,
                LABOUR_OF_DAY);
    }
}
