package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.CLAMP_LENGTH;
import static org.rickyard.trade.Quantities.COUNTRY;
import static org.rickyard.trade.Quantities.EFFLUENT_TANK_VOLUME;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.Quantities.NAMED_TANK_VOLUME;
import static org.rickyard.trade.Quantities.WALL_HEIGHT;
import static org.rickyard.trade.silage.ClampShape.VOLUME;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** The least tank the law of the country asks for behind a silo, by the texts that are held. */
public final class EffluentTank {
    private EffluentTank() {}

    /** England. */
    public static final String ENGLAND = "England";
    /** Wales. */
    public static final String WALES = "Wales";
    /** Scotland. */
    public static final String SCOTLAND = "Scotland";
    /** Northern Ireland. */
    public static final String NORTHERN_IRELAND = "Northern Ireland";
    /** Ireland. */
    public static final String IRELAND = "Ireland";

    /** What the rules count: the silo, not the silage settled in it. */
    public static final Symbol SILO_VOLUME =
            Symbol.number("silo volume", Units.M3).possible(Range.POSITIVE).decimals(0);
    /** The least tank for one silo alone. */
    public static final Symbol TANK_WANTED = tankSize("least effluent tank, this silo alone");
    /** The law. */
    public static final Symbol LAW = Symbol.text("law held");
    /** The silos that drain to one tank. */
    public static final Symbol SILOS_TOGETHER = Symbol.number("silo volume, all that drain to it", Units.M3)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** The least tank, silos as one. */
    public static final Symbol TANK_TOGETHER = tankSize("least tank, silos reckoned together");
    /** The least tank, silo by silo. */
    public static final Symbol TANK_SINGLY = tankSize("least tank, silos reckoned singly");
    /** The larger. */
    public static final Symbol TANK_LARGER = tankSize("least tank, the larger");

    /** What the tank holds. */
    public static final Symbol TANK_HOLDS = tankSize("tank holds");
    /** What it holds above the least. */
    public static final Symbol SPARE = Symbol.number("tank above the least (too small if below 0)", Units.M3)
            .decimals(2);

    private static final Source GB = Source.published("SI 2010/1493 (Wales) sch. 1 para. 3, read; the same at SEPA for"
            + " Scotland; England SI 2010/639 sch. 1 not read. Check the current law");
    private static final Source NI =
            Source.published("NISR 2019/81 (Northern Ireland) sch. 7 para. 3. Check the current law");
    private static final Source LAWS_READ =
            Source.published("SI 2010/1493 (Wales) sch. 1 para. 3, read; the same at SEPA"
                    + " for Scotland; England SI 2010/639 sch. 1 not read; NISR 2019/81 (Northern Ireland) sch. 7 para. 3. Check"
                    + " the current law");
    private static final Unit L_PER_M3 = Units.L.over(Units.M3).named("L per m3");

    private static final Constant STEP = new Constant("silo at which the tank rule changes", 1500, Units.M3, GB);
    private static final Constant GB_RATE = new Constant("tank for each m3 of silo, Great Britain", 20, L_PER_M3, GB);
    private static final Constant GB_BASE = new Constant("tank of a large silo, Great Britain", 30, Units.M3, GB);
    private static final Constant GB_ABOVE =
            new Constant("tank for each m3 of silo above the step, Great Britain", 6.7, L_PER_M3, GB);
    private static final Constant NI_PART =
            new Constant("part of a silo counted, Northern Ireland", 150, Units.M3, NI).aboveZero();
    private static final Constant NI_RATE = new Constant("tank for each part, Northern Ireland", 3, Units.M3, NI);
    private static final Constant NI_BASE = new Constant("tank of a large silo, Northern Ireland", 30, Units.M3, NI);
    private static final Constant NI_ABOVE =
            new Constant("tank for each part above the step, Northern Ireland", 1, Units.M3, NI);

    /** Distance to water under which nothing of the store may lie. */
    public static final Constant LEAST_DISTANCE = new Constant(
            "least distance of a silo or tank from water",
            10,
            Units.M,
            Source.published("gov.uk (England); SI 2010/1493 (Wales) sch. 1 para. 6; SSI 2003/531 (Scotland) sch. 1"
                    + " para. 6. Ireland asks more of new yards. Check the current law"));

    /** The same of a new yard in Ireland. */
    public static final Constant NEW_YARD_IRELAND = new Constant(
            "least distance of a new silo from water, Ireland",
            50,
            Units.M,
            Source.secondHand("DAFM S128 as reported by farmersjournal.ie 380704: 50 m on new yards, 10 m for"
                    + " extensions, 60 m from a supply source. Check the current law"));

    /** What law is held for each country. */
    public static final ReferenceTable LAWS = new ReferenceTable(
            "Law on silage effluent, as held here",
            "country",
            Units.ONE,
            "law and year; check the current law",
            Units.ONE,
            List.of(
                    law(
                            ENGLAND,
                            "SI 2010/639 (2010; the schedule itself not read): tell the Environment Agency before"
                                    + " first use (14 days, from memory), 10 m from water, new stores to last 20 years with"
                                    + " maintenance (gov.uk); check the current law"),
                    law(
                            WALES,
                            "WSI 2021/77 (2021, in force; silo schedule not read) replaced SI 2010/1493 (2010, read):"
                                    + " 10 m from water, field silage 14 days' notice; check the current law"),
                    law(
                            SCOTLAND,
                            "SEPA general binding rules (SSI 2021/412): 30 days' notice, 10 m from water; the exemption"
                                    + " for old silos ended on 1.1.2022, silos new since then are to last 20 years; check"
                                    + " the current law"),
                    law(
                            NORTHERN_IRELAND,
                            "NISR 2019/81 (2019): at least 28 days' notice, 10 m from water, earth walls lined; check"
                                    + " the current law"),
                    law(
                            IRELAND,
                            "a rule per tonne exists (GAP regulations) and is not held here: ask the Department; new"
                                    + " yards 50 m from water, extensions 10 m, 60 m from a supply source (S128, press)"),
                    law("other", "no rule is held: ask the regulator")),
            Source.published("the instruments named in each row"));

    /** The silo: between the walls or in the pit, or the silage where that is more. */
    public static final Formula SILO = new Formula(
            "silo-volume",
            SILO_VOLUME,
            choice(
                    Condition.is(CLAMP_KIND, ClampShape.WALLED),
                    greatest(
                            value(VOLUME),
                            value(CLAMP_LENGTH)
                                    .times(value(FLOOR_WIDTH)
                                            .times(WALL_HEIGHT)
                                            .plus(value(BATTER_USED)
                                                    .times(value(WALL_HEIGHT).power(2))))),
                    choice(
                            Condition.is(CLAMP_KIND, ClampShape.EARTH_PIT),
                            greatest(value(VOLUME), ClampShape.prismoid(WALL_HEIGHT, 1)),
                            value(VOLUME))),
            Source.derived("the space between the walls, or the silage where it stands above them"),
            "ramps are not taken off: the rules count the silo, and the larger figure is the safer",
            List.of(
                    WorkedExample.from(Source.derived("battered walls: 30 × (10 × 2.5 + 0.2 × 6.25)"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(VOLUME, 600)
                            .with(CLAMP_LENGTH, 30)
                            .with(FLOOR_WIDTH, 10)
                            .with(WALL_HEIGHT, 2.5)
                            .with(BATTER_USED, 0.2)
                            .gives(787.5, Units.M3, 6),
                    WorkedExample.from(Source.derived("silage above the walls counts as it stands"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(VOLUME, 900)
                            .with(CLAMP_LENGTH, 30)
                            .with(FLOOR_WIDTH, 10)
                            .with(WALL_HEIGHT, 2.5)
                            .with(BATTER_USED, 0.2)
                            .gives(900, Units.M3, 6),
                    WorkedExample.from(
                                    Source.derived("a pit 24 × 6 m, 3 m deep at 45 degrees, filled part way: 738 m3"))
                            .with(CLAMP_KIND, ClampShape.EARTH_PIT)
                            .with(VOLUME, 500)
                            .with(CLAMP_LENGTH, 24)
                            .with(FLOOR_WIDTH, 6)
                            .with(WALL_HEIGHT, 3)
                            .with(BATTER_USED, 1)
                            .gives(738, Units.M3, 6),
                    WorkedExample.from(Source.derived("the pit of the ponds handbook, in feet: 97,536 ft3"))
                            .with(CLAMP_KIND, ClampShape.EARTH_PIT)
                            .with(VOLUME, 500)
                            .with(CLAMP_LENGTH, 100, Units.FT)
                            .with(FLOOR_WIDTH, 40, Units.FT)
                            .with(WALL_HEIGHT, 12, Units.FT)
                            .with(BATTER_USED, 2)
                            .gives(97536, Units.FT3, 0),
                    WorkedExample.from(Source.derived("a heap is what it is"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(VOLUME, 300)
                            .gives(300, Units.M3, 6),
                    WorkedExample.from(Source.derived("walls 2.5 m, settled lower: 30 × 10 × 2.5 = 750 m3"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(VOLUME, 600)
                            .with(CLAMP_LENGTH, 30)
                            .with(FLOOR_WIDTH, 10)
                            .with(WALL_HEIGHT, 2.5)
                            .with(BATTER_USED, 0)
                            .gives(750, Units.M3, 6)));

    /** {@code effluent-tank}: for one silo alone. */
    public static final Formula TANK = new Formula(
            "effluent-tank",
            TANK_WANTED,
            least(SILO_VOLUME),
            LAWS_READ,
            "cubic metres of silo, neither tonnes nor settled silage; no rule is held for Ireland and other countries",
            examples(SILO_VOLUME));

    /** {@code effluent-tank-together}: all silos that drain to the tank as one. */
    public static final Formula TOGETHER = new Formula(
            "effluent-tank-together",
            TANK_TOGETHER,
            least(SILOS_TOGETHER),
            LAWS_READ,
            "all silos that drain to it as one; the country of the first",
            examples(SILOS_TOGETHER));

    /** {@code effluent-tank-larger}: the safer reading until the text is read for this very case. */
    public static final Formula LARGER = new Formula(
            "effluent-tank-larger",
            TANK_LARGER,
            greatest(value(TANK_TOGETHER), value(TANK_SINGLY)),
            Source.commonPractice("the larger of the two readings"),
            "the text does not say in so many words how shared tanks are counted; ask the regulator",
            List.of(WorkedExample.from(Source.derived("two silos of 1,000 m3: singly 40, together 33.35 m3"))
                    .with(TANK_TOGETHER, 33.35)
                    .with(TANK_SINGLY, 40)
                    .gives(40, Units.M3, 2)));

    /** What the tank holds, by the number in Effluent tank or by its name. */
    public static final Formula HOLDS = new Formula(
            "effluent-tank-holds",
            TANK_HOLDS,
            given(EFFLUENT_TANK_VOLUME, value(NAMED_TANK_VOLUME)),
            Source.derived("typed in Effluent tank, or beside the tank's name"),
            "usable volume; rain and yard water take part of it",
            List.of(
                    WorkedExample.from(Source.derived("the number stands before the name"))
                            .with(EFFLUENT_TANK_VOLUME, 25)
                            .with(NAMED_TANK_VOLUME, 30)
                            .gives(25, Units.M3, 0),
                    WorkedExample.from(Source.derived("a tank typed as 25 m3"))
                            .with(EFFLUENT_TANK_VOLUME, 25)
                            .gives(25, Units.M3, 0)));

    /** {@code effluent-tank-spare}: what the tank holds less the least. */
    public static final Formula TANK_SPARE = new Formula(
            "effluent-tank-spare",
            SPARE,
            value(TANK_HOLDS).minus(TANK_LARGER),
            Source.derived("tank less the least tank"),
            "below nought the tank is too small",
            List.of(WorkedExample.from(Source.derived("a tank of 25 m3 where 30 are asked"))
                    .with(TANK_HOLDS, 25)
                    .with(TANK_LARGER, 30)
                    .gives(-5, Units.M3, 0)));

    /** {@code effluent-law}: which law is held. */
    public static final Formula EFFLUENT_LAW = new Formula(
            "effluent-law",
            LAW,
            choice(
                    new Condition.InTable(LAWS, value(COUNTRY), Mode.EXACT),
                    new Expr.Lookup(LAWS, value(COUNTRY), Mode.EXACT),
                    Expr.text("country missing: whose law holds is not known")),
            LAWS.source(),
            "a pointer, not legal advice; check the current law",
            List.of(WorkedExample.from(LAWS.source())
                    .with(COUNTRY, "other")
                    .gives("no rule is held: ask the regulator")));

    private static Expr least(Symbol silo) {
        Condition small = Condition.compare(value(silo), Relation.LESS, constant(STEP));
        Expr above = value(silo).minus(constant(STEP));
        return choice(
                Condition.is(COUNTRY, NORTHERN_IRELAND),
                choice(
                        small,
                        constant(NI_RATE)
                                .times(call(Function.ROUND_UP, value(silo).over(constant(NI_PART)))),
                        constant(NI_BASE)
                                .plus(constant(NI_ABOVE)
                                        .times(call(Function.ROUND_UP, above.over(constant(NI_PART)))))),
                choice(
                        small,
                        greatBritain(value(silo).times(constant(GB_RATE))),
                        greatBritain(constant(GB_BASE)
                                .plus(above.times(constant(GB_ABOVE)).in(Units.M3)))));
    }

    private static Expr greatBritain(Expr expr) {
        return expr.onlyWhen(
                Condition.any(List.of(
                        Condition.is(COUNTRY, ENGLAND), Condition.is(COUNTRY, WALES), Condition.is(COUNTRY, SCOTLAND))),
                "no country is typed, or none that a tank rule is held for: type it in Country; if it is typed, ask the"
                        + " Department (Ireland) or the regulator");
    }

    private static List<WorkedExample> examples(Symbol silo) {
        return List.of(
                example(silo, WALES, 400, 8.0, 1),
                example(silo, WALES, 1000, 20.0, 1),
                example(silo, SCOTLAND, 1050, 21.0, 1),
                example(silo, ENGLAND, 1499, 29.98, 2),
                example(silo, WALES, 1500, 30.0, 1),
                example(silo, SCOTLAND, 2000, 33.35, 2),
                example(silo, WALES, 3600, 44.07, 2),
                example(silo, NORTHERN_IRELAND, 400, 9, 0),
                example(silo, NORTHERN_IRELAND, 450, 9, 0),
                example(silo, NORTHERN_IRELAND, 451, 12, 0),
                example(silo, NORTHERN_IRELAND, 1050, 21, 0),
                example(silo, NORTHERN_IRELAND, 1499, 30, 0),
                example(silo, NORTHERN_IRELAND, 1500, 30, 0),
                example(silo, NORTHERN_IRELAND, 2000, 34, 0),
                example(silo, NORTHERN_IRELAND, 3600, 44, 0));
    }

    private static WorkedExample example(Symbol silo, String country, double volume, double tank, int decimals) {
        return WorkedExample.from(Source.derived("from the text of the schedule"))
                .with(COUNTRY, country)
                .with(silo, volume)
                .gives(tank, Units.M3, decimals);
    }

    private static Row law(String country, String text) {
        return new Row(Double.NaN, country, Double.NaN, text);
    }

    private static Symbol tankSize(String name) {
        return Symbol.number(name, Units.M3).possible(Range.NOT_NEGATIVE).decimals(2);
    }
}
