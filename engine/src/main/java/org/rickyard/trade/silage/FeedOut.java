package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.CLAMP_KIND;
import static org.rickyard.trade.Quantities.FEEDING_SEASON;
import static org.rickyard.trade.Quantities.FEED_OUT_RATE;
import static org.rickyard.trade.Quantities.FLOOR_WIDTH;
import static org.rickyard.trade.silage.ClampContents.DENSITY_DM;
import static org.rickyard.trade.silage.ClampShape.HEAP_HEIGHT;
import static org.rickyard.trade.silage.ClampSides.BATTER_USED;
import static org.rickyard.trade.silage.ClampSides.HEIGHT;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Expr.Lookup.Mode;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** How fast the face moves back, how fast it ought to, and what clamp would make it so. */
public final class FeedOut {
    private FeedOut() {}

    private static final Unit M_PER_WEEK = Units.M.over(Units.WEEK);
    private static final Unit M3_PER_D = Units.M3.over(Units.D);
    private static final Unit M3_PER_WEEK = Units.M3.over(Units.WEEK);

    /** Silage taken out in a day. */
    public static final Symbol PER_DAY = Symbol.number("silage taken in a day", M3_PER_D)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The face at full height. */
    public static final Symbol FACE =
            Symbol.number("face area", Units.M2).possible(Range.POSITIVE).decimals(1);
    /** How far the face moves back. */
    public static final Symbol ADVANCE = Symbol.number("feed-out rate reached", M_PER_WEEK)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** How far it ought to. */
    public static final Symbol TARGET = Symbol.number("feed-out rate wanted", M_PER_WEEK)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The face that would do. */
    public static final Symbol FACE_WANTED =
            Symbol.number("face area wanted", Units.M2).possible(Range.POSITIVE).decimals(1);
    /** The width that would do. */
    public static final Symbol WIDTH_WANTED = Symbol.number("clamp width wanted", Units.M)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The width to build. */
    public static final Symbol WIDTH_TO_BUILD = Symbol.number("clamp width, not under the least", Units.M)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** The length that would do. */
    public static final Symbol LENGTH_WANTED = Symbol.number("clamp length wanted", Units.M)
            .possible(Range.POSITIVE)
            .decimals(0);

    private static final Source LWK = Source.published("LWK Niedersachsen: 1.5 m a week in winter, 2.5 in summer");
    private static final Source LWK_TABLE = Source.published("LWK Niedersachsen: cows and young stock 120 each,"
            + " 3,600 m3 a year, half of each feed, 2.0 m a week, 2.50 m high: 35 m3 a week, 17 m2, 7 m");
    private static final Source LWK_TABLE_100 = Source.published("LWK Niedersachsen: 100 each, 3,000 m3 a year, half of"
            + " each feed, 2.0 m a week, 2.50 m high: 29 m3 a week, 14 m2, 6 m");
    private static final Source LWK_TABLE_200 = Source.published("LWK Niedersachsen: 200 each, 6,000 m3 a year, half of"
            + " each feed, 2.0 m a week, 2.50 m high: 58 m3 a week, 29 m2, 12 m");
    private static final Source HOLMES =
            Source.published("B. Holmes, Hay & Forage: 3,000 lb DM a day at 14 lb per ft3 are 214.3 ft3 a day");
    private static final Source FUKO =
            Source.published("AG FuKo: 2.0-2.5 m a week all year are 104-130 m of clamp for 52 weeks");

    /** How far the face ought to move back, by season. */
    public static final ReferenceTable SEASONS = new ReferenceTable(
            "Feed-out rate by season",
            "season",
            Units.ONE,
            "metres a week at least",
            M_PER_WEEK,
            List.of(Row.of("winter", 1.5), Row.of("summer", 2.5), Row.of("all year", 2.0)),
            Source.published("LWK Niedersachsen (winter, summer); AG FuKo (all year, 2.0-2.5)"));

    /** Two machines side by side. */
    public static final Constant LEAST_WIDTH = new Constant(
            "least clamp width for two machines",
            8,
            Units.M,
            Source.published("LWK Niedersachsen: 8 m to unload and roll side by side, more without walls"));
    /** The slowest face printed for all seasons. */
    public static final Constant SLOWEST = new Constant(
            "slowest feed-out of any season",
            4,
            Units.IN.over(Units.D),
            Source.published(
                    "Saskatchewan: 4 in (10 cm) a day; BC Ministry of Agriculture 372.302-3, 2015: 4 in where it"
                            + " is warm, 3 in where it is cool"));

    /** {@code silage-per-day}: daily demand ÷ dry matter density. */
    public static final Formula SILAGE_PER_DAY = new Formula(
            "silage-per-day",
            PER_DAY,
            value(FeedBalance.DAILY_TOTAL).over(DENSITY_DM),
            HOLMES,
            "what is eaten; what is thrown out comes on top",
            List.of(WorkedExample.from(HOLMES)
                    .with(FeedBalance.DAILY_TOTAL, 3000 * 0.45359237)
                    .with(DENSITY_DM, 14, Packing.TARGET.unit())
                    .gives(214.3, Units.FT3.over(Units.D), 1)));

    /** The face: section at full height. */
    public static final Formula FACE_AREA = new Formula(
            "face-area",
            FACE,
            choice(
                    ClampSides.BETWEEN_SIDES,
                    value(FLOOR_WIDTH)
                            .times(HEIGHT)
                            .plus(value(BATTER_USED).times(value(HEIGHT).power(2)))
                            .plus(ClampShape.CROWN_SECTION),
                    choice(
                            Condition.is(CLAMP_KIND, ClampShape.MEASURED),
                            value(FLOOR_WIDTH).times(HEIGHT),
                            ClampShape.heapOnly(value(FLOOR_WIDTH)
                                    .times(HEAP_HEIGHT)
                                    .minus(value(BATTER_USED)
                                            .times(value(HEAP_HEIGHT).power(2)))))),
            Source.derived("section at full height"),
            "ramps and ends are lower, so the face moves faster there",
            List.of(
                    WorkedExample.from(Source.derived("the same with a crown of 4.8 m2"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0.1)
                            .with(ClampShape.CROWN_SECTION, 4.8)
                            .gives(41.7, Units.M2, 6),
                    WorkedExample.from(Source.derived("a heap 14 m wide, 2 m high, sides 3 for 1: 28 - 12"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(FLOOR_WIDTH, 14)
                            .with(HEAP_HEIGHT, 2)
                            .with(BATTER_USED, 3)
                            .gives(16, Units.M2, 6),
                    WorkedExample.from(Source.derived("measured 8 × 1.9 m"))
                            .with(CLAMP_KIND, ClampShape.MEASURED)
                            .with(FLOOR_WIDTH, 8)
                            .with(HEIGHT, 1.9)
                            .gives(15.2, Units.M2, 6),
                    WorkedExample.from(Source.derived("12 m floor, 3 m high, batter 0.1: 36.9 m2"))
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(FLOOR_WIDTH, 12)
                            .with(HEIGHT, 3)
                            .with(BATTER_USED, 0.1)
                            .with(ClampShape.CROWN_SECTION, 0)
                            .gives(36.9, Units.M2, 3)));

    /** {@code feed-out-rate}: silage taken ÷ face. */
    public static final Formula FEED_OUT_REACHED = new Formula(
            "feed-out-rate",
            ADVANCE,
            value(PER_DAY).over(FACE),
            HOLMES,
            "straight back at full height",
            List.of(overfill(8, 6, "an 8 ft face at 6 in a day"), overfill(16, 3, "8 ft more on top: 3 in a day")));

    /** The rate wanted: typed, otherwise by season. */
    public static final Formula FEED_OUT_TARGET = new Formula(
            "feed-out-target",
            TARGET,
            given(
                    FEED_OUT_RATE,
                    choice(
                            new Condition.InTable(SEASONS, value(FEEDING_SEASON), Mode.EXACT),
                            new Expr.Lookup(SEASONS, value(FEEDING_SEASON), Mode.EXACT),
                            value(FEED_OUT_RATE))),
            SEASONS.source(),
            "typed, or by season; others print 1.5-2.0 in winter and 2.5-3.0 in summer",
            List.of(
                    WorkedExample.from(LWK).with(FEEDING_SEASON, "winter").gives(1.5, M_PER_WEEK, 1),
                    WorkedExample.from(LWK).with(FEEDING_SEASON, "summer").gives(2.5, M_PER_WEEK, 1),
                    WorkedExample.from(FUKO).with(FEEDING_SEASON, "all year").gives(2.0, M_PER_WEEK, 1),
                    WorkedExample.from(Source.derived("a rate typed stands before the season's"))
                            .with(FEED_OUT_RATE, 1.8)
                            .with(FEEDING_SEASON, "summer")
                            .gives(1.8, M_PER_WEEK, 1)));

    /** {@code face-area-wanted}: silage taken ÷ rate wanted. */
    public static final Formula FACE_AREA_WANTED = new Formula(
            "face-area-wanted",
            FACE_WANTED,
            value(PER_DAY).over(TARGET),
            LWK_TABLE,
            "not rounded on the way",
            List.of(
                    WorkedExample.from(LWK_TABLE)
                            .with(PER_DAY, 3600.0 / 2 / 52, M3_PER_WEEK)
                            .with(TARGET, 2.0)
                            .gives(17, Units.M2, 0),
                    WorkedExample.from(LWK_TABLE_200)
                            .with(PER_DAY, 6000.0 / 2 / 52, M3_PER_WEEK)
                            .with(TARGET, 2.0)
                            .gives(29, Units.M2, 0),
                    WorkedExample.from(LWK_TABLE_100)
                            .with(PER_DAY, 3000.0 / 2 / 52, M3_PER_WEEK)
                            .with(TARGET, 2.0)
                            .gives(14, Units.M2, 0)));

    /** {@code clamp-width-wanted}: face wanted ÷ height. */
    public static final Formula CLAMP_WIDTH_WANTED = new Formula(
            "clamp-width-wanted",
            WIDTH_WANTED,
            choice(
                    ClampShape.HEAPED,
                    value(FACE_WANTED).over(HEAP_HEIGHT),
                    value(FACE_WANTED).over(HEIGHT)),
            LWK_TABLE,
            "mean width at this clamp's settled height; of a heap at the height its sides reach",
            List.of(
                    WorkedExample.from(Source.derived("16 m2 of a heap whose sides meet at 2 m: 8 m"))
                            .with(CLAMP_KIND, ClampShape.HEAP)
                            .with(FACE_WANTED, 16)
                            .with(HEAP_HEIGHT, 2)
                            .gives(8, Units.M, 6),
                    WorkedExample.from(LWK_TABLE)
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(FACE_WANTED, 3600.0 / 2 / 52 / 2)
                            .with(HEIGHT, 2.5)
                            .gives(7, Units.M, 0),
                    WorkedExample.from(LWK_TABLE_200)
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(FACE_WANTED, 6000.0 / 2 / 52 / 2)
                            .with(HEIGHT, 2.5)
                            .gives(12, Units.M, 0),
                    WorkedExample.from(LWK_TABLE_100)
                            .with(CLAMP_KIND, ClampShape.WALLED)
                            .with(FACE_WANTED, 3000.0 / 2 / 52 / 2)
                            .with(HEIGHT, 2.5)
                            .gives(6, Units.M, 0)));

    /** {@code clamp-width-to-build}: wanted, not under the least for two machines. */
    public static final Formula CLAMP_WIDTH_TO_BUILD = new Formula(
            "clamp-width-to-build",
            WIDTH_TO_BUILD,
            greatest(value(WIDTH_WANTED), constant(LEAST_WIDTH)),
            LEAST_WIDTH.source(),
            "at least three times the full tyre width of the machine on top, too (HSA and FCI, Ireland)",
            List.of(WorkedExample.from(LEAST_WIDTH.source())
                    .with(WIDTH_WANTED, 6.9)
                    .gives(8, Units.M, 0)));

    /** {@code clamp-length-wanted}: rate wanted × time fed. */
    public static final Formula CLAMP_LENGTH_WANTED = new Formula(
            "clamp-length-wanted",
            LENGTH_WANTED,
            value(TARGET).times(value(FeedBalance.DEMAND_TOTAL).over(FeedBalance.DAILY_TOTAL)),
            FUKO,
            "at full height, ramps come on top; time fed is demand over daily demand",
            List.of(fuko(2.0, 104), fuko(2.5, 130)));

    private static WorkedExample overfill(double feet, double inches, String what) {
        return WorkedExample.from(Source.secondHand("B. Holmes: " + what))
                .with(PER_DAY, 8 * 0.3048 * 10 * 6 * 0.0254)
                .with(FACE, feet * 0.3048 * 10)
                .gives(inches, Units.IN.over(Units.D), 3);
    }

    private static WorkedExample fuko(double rate, double length) {
        return WorkedExample.from(FUKO)
                .with(TARGET, rate)
                .with(FeedBalance.DEMAND_TOTAL, 364)
                .with(FeedBalance.DAILY_TOTAL, 1000)
                .gives(length, Units.M, 0);
    }
}
