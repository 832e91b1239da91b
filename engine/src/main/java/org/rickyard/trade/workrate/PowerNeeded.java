package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.DRAUGHT;
import static org.rickyard.trade.Quantities.DRAUGHT_FOR_WIDTH;
import static org.rickyard.trade.Quantities.KIND_OF_MACHINE;
import static org.rickyard.trade.Quantities.MASS;
import static org.rickyard.trade.Quantities.OUTPUT;
import static org.rickyard.trade.Quantities.POWER;
import static org.rickyard.trade.Quantities.POWER_BASIS;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.WORKING_WIDTH;

import java.util.List;
import java.util.stream.Stream;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Power a machine takes through its shaft and by being pulled, and what the tractor has. */
public final class PowerNeeded {
    private PowerNeeded() {}

    private static final Unit PER_METRE = Units.KW.over(Units.M);
    private static final Unit PER_TONNE = Units.KW.over(Units.T_PER_H);

    /** Crop fed to the machine while it works. */
    public static final Symbol FEED = Symbol.number("feed rate at work", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Power through the shaft. */
    public static final Symbol PTO = Symbol.number("PTO power needed", Units.KW)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Power to pull the machine over the field. */
    public static final Symbol DRAWBAR = power("drawbar power needed");
    /** Both, at the PTO. */
    public static final Symbol NEEDED = power("power needed at the PTO");
    /** What the tractor has at the PTO. */
    public static final Symbol AVAILABLE = power("power of the tractor at the PTO");
    /** The one over the other. */
    public static final Symbol SHARE = Symbol.number("share of the tractor's power", Units.PERCENT)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static Symbol power(String name) {
        return Symbol.number(name, Units.KW).possible(Range.POSITIVE).decimals(0);
    }

    private static final Source D497 =
            Source.memory("ASAE D497, rotary power: a + b × width + c × feed; 20 to 50 %" + " either way");
    private static final Source ARIZONA = Source.published(
            "University of Arizona Cooperative Extension, Agricultural Machinery Management: PTO is 0.9 of the flywheel;"
                    + " others print 0.86");
    private static final Source MFWD = Source.published(
            "University of Arizona Cooperative Extension: drawbar over PTO, front-wheel assist on tilled soil 0.73");

    /** Soil tools that are drawn and take nothing of the shaft. */
    private static final List<String> DRAWN = List.of(
            "plough",
            "cultivator",
            "chisel plough",
            "disc harrow",
            "heavy disc",
            "spring-tine harrow",
            "spike-tooth harrow",
            "row-crop cultivator",
            "rolling cultivator",
            "rotary hoe",
            "anhydrous applicator",
            "no-till drill",
            "row-crop planter",
            "no-till planter",
            "drill");

    /** What a kind of forager is called where it chops maize, which takes less power than wilted grass. */
    public static String inMaize(String kind) {
        return kind.endsWith("forager") && !kind.startsWith("flail") ? kind + " in maize" : kind;
    }

    private static List<Row> withDrawn(List<Row> rows) {
        return Stream.concat(rows.stream(), DRAWN.stream().map(tool -> Row.of(tool, 0)))
                .toList();
    }

    /** Power at no load. */
    public static final ReferenceTable AT_REST = table(
            "PTO power at no load (a)",
            Units.KW,
            withDrawn(List.of(
                    Row.of("mower", 0),
                    Row.of("cutterbar mower", 0),
                    Row.of("flail mower", 0),
                    Row.of("mower-conditioner", 0),
                    Row.of("cutterbar mower-conditioner", 0),
                    Row.of("self-propelled windrower", 0),
                    Row.of("rake", 0),
                    Row.of("tedder", 0),
                    Row.of("baler", 2.5),
                    Row.of("small square baler", 2),
                    Row.of("large square baler", 4),
                    Row.of("forager", 6),
                    Row.of("self-propelled forager", 6),
                    Row.of(inMaize("forager"), 6),
                    Row.of(inMaize("self-propelled forager"), 6),
                    Row.of("flail forager", 10),
                    Row.of("forage wagon", 0),
                    Row.of("muck spreader", 0))));
    /** Power for a metre of width. */
    public static final ReferenceTable BY_WIDTH = table(
            "PTO power for each metre of width (b)",
            PER_METRE,
            withDrawn(List.of(
                    Row.of("mower", 5),
                    Row.of("cutterbar mower", 1.2),
                    Row.of("flail mower", 10),
                    Row.of("mower-conditioner", 8),
                    Row.of("cutterbar mower-conditioner", 4.5),
                    Row.of("self-propelled windrower", 1.3),
                    Row.of("rake", 2),
                    Row.of("tedder", 1.5))));
    /** Power for a tonne an hour. */
    public static final ReferenceTable BY_FEED = table(
            "PTO power for each tonne an hour (c)",
            PER_TONNE,
            List.of(
                    Row.of("baler", 1.8),
                    Row.of("small square baler", 1),
                    Row.of("large square baler", 1.3),
                    Row.of("forager", 4),
                    Row.of("self-propelled forager", 4),
                    Row.of(inMaize("forager"), 3.3),
                    Row.of(inMaize("self-propelled forager"), 3.3),
                    Row.of("flail forager", 1.1),
                    Row.of("forage wagon", 0.3),
                    Row.of("muck spreader", 0.2)));

    private static final Source G1208 =
            Source.published("University of Missouri G1208 (Frisby, 1993): mouldboard plough"
                    + " 8 in deep 13.5 hp at the PTO for each foot at 4.5 mph, field cultivator 5.2 at 5.5, "
                    + "conventional planter 3.5 at 4.5; plough, cultivator and drill of ours in this order. Others by"
                    + " their names; disc harrow a tandem disc on chiselled land (3.5 in stalks, 5.6 on ploughed"
                    + " land), heavy disc an offset one, no-till drill a no-till planter");

    /** Power at the tractor's PTO that pulls a soil tool, for each width, at the speed of the guide. */
    public static final ReferenceTable IN_SOIL = new ReferenceTable(
            "Power to work the soil, at the tractor's PTO",
            "kind of machine",
            Units.ONE,
            "power for each width",
            Units.HP.over(Units.FT),
            List.of(
                    Row.of("plough", 13.5),
                    Row.of("chisel plough", 9.3),
                    Row.of("disc harrow", 4.3),
                    Row.of("heavy disc", 8.0),
                    Row.of("cultivator", 5.2),
                    Row.of("spring-tine harrow", 3.5),
                    Row.of("spike-tooth harrow", 2.5),
                    Row.of("row-crop cultivator", 3.2),
                    Row.of("rolling cultivator", 2.5),
                    Row.of("rotary hoe", 2.3),
                    Row.of("anhydrous applicator", 5.5),
                    Row.of("drill", 3.5),
                    Row.of("no-till drill", 2.0),
                    Row.of("row-crop planter", 3.5),
                    Row.of("no-till planter", 2.0)),
            G1208);
    /** The speed that power is for. */
    public static final ReferenceTable IN_SOIL_AT = new ReferenceTable(
            "Speed of the power to work the soil",
            "kind of machine",
            Units.ONE,
            "speed",
            Units.MPH,
            List.of(
                    Row.of("plough", 4.5),
                    Row.of("chisel plough", 5.0),
                    Row.of("disc harrow", 5.0),
                    Row.of("heavy disc", 5.0),
                    Row.of("cultivator", 5.5),
                    Row.of("spring-tine harrow", 5.5),
                    Row.of("spike-tooth harrow", 6.5),
                    Row.of("row-crop cultivator", 4.5),
                    Row.of("rolling cultivator", 5.5),
                    Row.of("rotary hoe", 7.0),
                    Row.of("anhydrous applicator", 5.0),
                    Row.of("drill", 4.5),
                    Row.of("no-till drill", 4.5),
                    Row.of("row-crop planter", 4.5),
                    Row.of("no-till planter", 4.5)),
            G1208);

    private static ReferenceTable table(String name, Unit unit, List<Row> rows) {
        return new ReferenceTable(
                name,
                "kind of machine",
                Units.ONE,
                "power",
                unit,
                rows,
                Source.memory(
                        "ASAE D497, rotary power: disc mower, without conditioner unless it is called one, rotary rake, tedder, round baler"
                                + " with fixed chamber, forager in wilted grass or maize, forage wagon, muck spreader; "
                                + "soil tools are"
                                + " drawn and take none. Of power harrow, rotary tiller and subsoiler nothing is held: type their fuel, or a subsoiler's draught"));
    }

    /** Engine to shaft. */
    public static final Constant PTO_OF_ENGINE =
            new Constant("PTO power over engine power", 90, Units.PERCENT, ARIZONA);
    /** Shaft to drawbar. */
    public static final Constant DRAWBAR_OF_PTO =
            new Constant("Drawbar power over PTO power", 73, Units.PERCENT, MFWD).aboveZero();
    /** Pull for the weight of a machine. */
    public static final Constant MOTION_RESISTANCE = new Constant(
            "Motion resistance over weight", 8, Units.PERCENT, Source.memory("firm to tilled grassland, 6 to 10 %"));
    /** Standard gravity. */
    public static final Constant GRAVITY = new Constant(
            "Standard gravity", 9.80665, Units.M.over(Units.S.pow(2)), Source.derived("by definition of the standard"));

    private static Expr at(ReferenceTable table) {
        return new Expr.Lookup(table, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT);
    }

    /** Those that power goes by tonnes for are fed with the crop, but for a spreader: it brings what it spreads. */
    private static final Condition TAKES_CROP = Condition.all(List.of(
            new Condition.InTable(BY_FEED, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT),
            new Condition.Not(Condition.is(KIND_OF_MACHINE, "muck spreader"))));

    /** Feed rate: typed output, or what speed, width and yield bring. */
    public static final Formula FEED_RATE = new Formula(
            "feed-rate",
            FEED,
            choice(
                    new Condition.Blank(OUTPUT),
                    value(SPEED)
                            .times(WORKING_WIDTH)
                            .times(Throughput.YIELD_CARTED)
                            .onlyWhen(
                                    TAKES_CROP, "the crop does not go through it; of a muck spreader type its Output"),
                    value(OUTPUT)),
            Source.derived("spot rate × yield"),
            "while the machine works, turns left aside",
            List.of(WorkedExample.from(Source.derived("10 km/h × 3 m × 20 t/ha"))
                    .with(KIND_OF_MACHINE, "forager")
                    .with(SPEED, 10)
                    .with(WORKING_WIDTH, 3)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(60, Units.T_PER_H, 6)));

    private static final Condition FED = new Condition.InTable(BY_FEED, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT);

    /** {@code pto-power}: a + b × width, or a + c × feed. */
    public static final Formula PTO_POWER = new Formula(
            "pto-power",
            PTO,
            choice(
                    FED,
                    at(AT_REST).plus(at(BY_FEED).times(FEED)),
                    at(AT_REST).plus(at(BY_WIDTH).times(WORKING_WIDTH))),
            D497,
            "shaft power alone; self-propelled foragers of today take more through wider heads",
            List.of(
                    WorkedExample.from(Source.derived("disc mower 3 m: 3 × 5"))
                            .with(KIND_OF_MACHINE, "mower")
                            .with(WORKING_WIDTH, 3)
                            .gives(15, Units.KW, 6),
                    WorkedExample.from(Source.derived("disc mower-conditioner 3 m: 3 × 8"))
                            .with(KIND_OF_MACHINE, "mower-conditioner")
                            .with(WORKING_WIDTH, 3)
                            .gives(24, Units.KW, 6),
                    WorkedExample.from(Source.derived("maize 40 t/h: 6 + 3.3 × 40"))
                            .with(KIND_OF_MACHINE, "forager in maize")
                            .with(FEED, 40)
                            .gives(138, Units.KW, 6),
                    WorkedExample.from(Source.derived("wilted grass 40 t/h: 6 + 4 × 40"))
                            .with(KIND_OF_MACHINE, "forager")
                            .with(FEED, 40)
                            .gives(166, Units.KW, 6)));

    private static final Condition SOIL_TOOL =
            new Condition.InTable(IN_SOIL, value(KIND_OF_MACHINE), Expr.Lookup.Mode.EXACT);

    /** Nothing is said of how hard it is to pull. */
    private static final Condition NO_DRAUGHT =
            Condition.all(List.of(new Condition.Blank(DRAUGHT), new Condition.Blank(DRAUGHT_FOR_WIDTH)));

    /** Drawn by themselves too, but nothing is held of their draught: what is typed of it is all the power they take. */
    private static final Condition DRAWN_BY_DRAUGHT = Condition.all(List.of(
            new Condition.Not(NO_DRAUGHT),
            Condition.any(List.of(
                    Condition.is(KIND_OF_MACHINE, "subsoiler"), Condition.is(KIND_OF_MACHINE, "field rolls")))));

    /** {@code drawbar-power}: draught of soil and machine × speed, or weight × motion resistance × speed. */
    public static final Formula DRAWBAR_POWER = new Formula(
            "drawbar-power",
            DRAWBAR,
            choice(
                    NO_DRAUGHT,
                    choice(
                            SOIL_TOOL,
                            at(IN_SOIL)
                                    .times(WORKING_WIDTH)
                                    .times(value(SPEED).over(at(IN_SOIL_AT)))
                                    .times(constant(DRAWBAR_OF_PTO))
                                    .in(Units.KW),
                            value(MASS)
                                    .times(constant(GRAVITY))
                                    .times(constant(MOTION_RESISTANCE))
                                    .times(SPEED)),
                    choice(
                            new Condition.Blank(DRAUGHT),
                            value(DRAUGHT_FOR_WIDTH).times(WORKING_WIDTH).times(SPEED),
                            value(DRAUGHT).times(SPEED))),
            G1208,
            "by the draught where it is typed, at this speed; soil tools by the guide, their draught taken as the same at every speed, though it grows with speed, depth"
                    + " and heavy land; others as they roll on level ground. Slopes and the tractor itself come on top",
            List.of(
                    WorkedExample.from(Source.derived("10 kN at 7.2 km/h is 20 kW"))
                            .with(KIND_OF_MACHINE, "mower")
                            .with(MASS, 10 / 9.80665 / 0.08)
                            .with(SPEED, 7.2)
                            .gives(20, Units.KW, 6),
                    WorkedExample.from(Source.derived("10 kN typed, at 7.2 km/h, is 20 kW, whatever its kind or mass"))
                            .with(KIND_OF_MACHINE, "plough")
                            .with(DRAUGHT, 10)
                            .with(SPEED, 7.2)
                            .gives(20, Units.KW, 6),
                    // Draught by the published form, of memory's coefficients: (652 + 5.1 × 36) N/cm·m × 20 cm × 1.524
                    // m.
                    WorkedExample.from(Source.derived("25,469 N over 1.524 m at 6 km/h are 42.45 kW"))
                            .with(KIND_OF_MACHINE, "plough")
                            .with(DRAUGHT_FOR_WIDTH, 25.469 / 1.524)
                            .with(WORKING_WIDTH, 1.524)
                            .with(SPEED, 6)
                            .gives(42.45, Units.KW, 2),
                    WorkedExample.from(Source.derived("hp = lbf × mph ÷ 375: 3,750 lbf at 5 mph are 50 hp"))
                            .with(KIND_OF_MACHINE, "subsoiler")
                            .with(DRAUGHT, 3750, Units.LBF)
                            .with(SPEED, 5, Units.MPH)
                            .gives(50, Units.HP, 6),
                    guide("plough", 8, 4.5, 13.5),
                    guide("cultivator", 20, 5.5, 5.2),
                    guide("drill", 10, 4.5, 3.5),
                    guide("chisel plough", 10, 5, 9.3)));

    /** The guide prints power at the PTO; at the drawbar it is 0.73 of that. */
    private static WorkedExample guide(String type, double feet, double mph, double horsePowerPerFoot) {
        return WorkedExample.from(Source.derived(G1208.reference() + "; at the drawbar 0.73 of it"))
                .with(KIND_OF_MACHINE, type)
                .with(WORKING_WIDTH, feet, Units.FT)
                .with(SPEED, mph, Units.MPH)
                .gives(feet * horsePowerPerFoot * 0.73, Units.HP, 6);
    }

    /** {@code power-needed}: PTO power + drawbar power brought to the PTO. */
    public static final Formula POWER_NEEDED = new Formula(
            "power-needed",
            NEEDED,
            choice(
                    Condition.all(List.of(new Condition.Blank(MASS), NO_DRAUGHT, new Condition.Not(SOIL_TOOL))),
                    value(PTO),
                    choice(
                            DRAWN_BY_DRAUGHT,
                            value(DRAWBAR).over(constant(DRAWBAR_OF_PTO)),
                            value(PTO).plus(value(DRAWBAR).over(constant(DRAWBAR_OF_PTO))))),
            MFWD,
            "without the draught or the mass of the machine, the power to roll it is left out",
            List.of(
                    WorkedExample.from(Source.derived("24 kW at the shaft and 7.3 kW at the drawbar"))
                            .with(KIND_OF_MACHINE, "mower")
                            .with(PTO, 24)
                            .with(MASS, 4)
                            .with(DRAWBAR, 7.3)
                            .gives(34, Units.KW, 6),
                    WorkedExample.from(Source.derived("a subsoiler of 20 kN at 6.57 km/h: 36.5 kW at the drawbar"))
                            .with(KIND_OF_MACHINE, "subsoiler")
                            .with(DRAUGHT, 20)
                            .with(DRAWBAR, 36.5)
                            .gives(50, Units.KW, 6),
                    WorkedExample.from(
                                    Source.derived("a plough that takes 73 kW at the drawbar and nothing of the shaft"))
                            .with(KIND_OF_MACHINE, "plough")
                            .with(PTO, 0)
                            .with(DRAWBAR, 73)
                            .gives(100, Units.KW, 6)));

    /** Power of the tractor at its PTO. */
    public static final Formula PTO_OF_TRACTOR = new Formula(
            "tractor-pto-power",
            AVAILABLE,
            choice(
                    Condition.is(POWER_BASIS, "PTO"),
                    value(POWER),
                    value(POWER)
                            .times(constant(PTO_OF_ENGINE))
                            .onlyWhen(
                                    Condition.is(POWER_BASIS, "engine"),
                                    "no power with its basis: type Power (kW), and engine or PTO in Power basis, for the"
                                            + " tractor named on the job or for a machine that drives itself")),
            ARIZONA,
            "rated power",
            List.of(WorkedExample.from(ARIZONA)
                    .with(POWER_BASIS, "engine")
                    .with(POWER, 28.86)
                    .gives(25.97, Units.KW, 2)));

    /** {@code power-share}: needed ÷ available. */
    public static final Formula POWER_SHARE = new Formula(
            "power-share",
            SHARE,
            value(NEEDED).over(AVAILABLE),
            Source.derived("one over the other"),
            "over 100 % the tractor is too small at this speed and width",
            List.of(WorkedExample.from(Source.derived("24 of 75 kW"))
                    .with(NEEDED, 24)
                    .with(AVAILABLE, 75)
                    .gives(32, Units.PERCENT, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        return List.of(FEED_RATE, PTO_POWER, DRAWBAR_POWER, POWER_NEEDED, PTO_OF_TRACTOR, POWER_SHARE);
    }
}
