package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** How far crop and store reach for what the stock eats, all in dry matter. */
public final class FeedBalance {
    private FeedBalance() {}

    /** Dry matter of the coming crop. */
    public static final Symbol FROM_CROP = Symbol.number("from the crop (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Dry matter in store. */
    public static final Symbol FROM_STOCK = Symbol.number("from stock in hand (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** All dry matter to feed. */
    public static final Symbol AVAILABLE = Symbol.number("feed available (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Animals of all groups. */
    public static final Symbol HEAD_TOTAL = Symbol.number("head, all groups", Units.ONE)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Dry matter all groups eat in a day. */
    public static final Symbol DAILY_TOTAL = Symbol.number(
                    "daily demand, all groups (dry matter)", FeedDemand.KG_DM_PER_D)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Dry matter all groups eat. */
    public static final Symbol DEMAND_TOTAL = Symbol.number("demand, all groups (dry matter)", Units.T_DM)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** How long it lasts. */
    public static final Symbol DAYS_OF_FEED =
            Symbol.number("days of feed", Units.D).possible(Range.NOT_NEGATIVE).decimals(0);
    /** What is over, or short if negative. */
    public static final Symbol SURPLUS = Symbol.number("surplus (shortfall if below 0), dry matter", Units.T_DM)
            .decimals(1);
    /** Animals the feed keeps. */
    public static final Symbol ANIMALS =
            Symbol.number("animals fed", Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);

    private static final Source SRUC =
            Source.secondHand("SRUC in farm press: a 750 kg bale at 10 kg DM feeds 18 cows at 25 %, 33 at 45 %");

    /** Rows of crop, with and without a tonnage, and their dry matter after losses. */
    public static final Symbol FEED_CROPS = rowCount("crop rows for this feed");

    /** Rows that lack one. */
    public static final Symbol FEED_CROPS_LACKING = rowCount("crop rows for this feed withheld");
    /** Their total. */
    public static final Symbol FEED_CROP_TOTAL =
            Symbol.number("silage fed of those rows (dry matter)", Units.T_DM).decimals(1);

    /** Stores, with and without an amount, and their dry matter. */
    public static final Symbol FEED_STORES = rowCount("stores for this feed");

    /** Stores that lack one. */
    public static final Symbol FEED_STORES_LACKING = rowCount("stores for this feed withheld");
    /** Their total. */
    public static final Symbol FEED_STORE_TOTAL =
            Symbol.number("stock of those stores (dry matter)", Units.T_DM).decimals(1);

    /** Dry matter from the crop, after losses; nought without crop. */
    public static final Formula CROP_TO_FEED = new Formula(
            "crop-to-feed",
            FROM_CROP,
            orNone(FEED_CROPS, FEED_CROPS_LACKING, FEED_CROP_TOTAL),
            Source.derived("silage fed, field by field; nought if there is no crop"),
            "field, storage and feed-out losses taken off",
            List.of(
                    WorkedExample.from(Source.derived("two rows"))
                            .with(FEED_CROPS, 2)
                            .with(FEED_CROPS_LACKING, 0)
                            .with(FEED_CROP_TOTAL, 80)
                            .gives(80, Units.T_DM, 0),
                    WorkedExample.from(Source.derived("none"))
                            .with(FEED_CROPS, 0)
                            .with(FEED_CROPS_LACKING, 0)
                            .gives(0, Units.T_DM, 0)));

    /** Dry matter in store; nought without stores. */
    public static final Formula STOCK_TO_FEED = new Formula(
            "stock-to-feed",
            FROM_STOCK,
            orNone(FEED_STORES, FEED_STORES_LACKING, FEED_STORE_TOTAL),
            Source.derived("stock in hand, store by store; nought if there is none"),
            "already fed is taken off",
            List.of(
                    WorkedExample.from(Source.derived("two rows"))
                            .with(FEED_STORES, 2)
                            .with(FEED_STORES_LACKING, 0)
                            .with(FEED_STORE_TOTAL, 80)
                            .gives(80, Units.T_DM, 0),
                    WorkedExample.from(Source.derived("none"))
                            .with(FEED_STORES, 0)
                            .with(FEED_STORES_LACKING, 0)
                            .gives(0, Units.T_DM, 0)));

    /** {@code feed-available}: crop after losses and stock in hand. */
    public static final Formula FEED_AVAILABLE = new Formula(
            "feed-available",
            AVAILABLE,
            value(FROM_CROP)
                    .plus(FROM_STOCK)
                    .onlyWhen(
                            Condition.any(List.of(
                                    some(FEED_CROPS),
                                    some(FEED_CROPS_LACKING),
                                    some(FEED_STORES),
                                    some(FEED_STORES_LACKING))),
                            "no crop and no stock is listed for this feed (lists Fields, Cuts and Stocks)"),
            Source.derived("crop after losses, and stock in hand"),
            "a stock that is the crop counted again must be struck out of one of the lists; where neither is listed,"
                    + " nothing is told",
            List.of(
                    WorkedExample.from(Source.derived("100 t and 80 t"))
                            .with(FROM_CROP, 100)
                            .with(FROM_STOCK, 80)
                            .with(FEED_CROPS, 2)
                            .with(FEED_CROPS_LACKING, 0)
                            .with(FEED_STORES, 1)
                            .with(FEED_STORES_LACKING, 0)
                            .gives(180, Units.T_DM, 0),
                    WorkedExample.from(Source.derived("a store alone"))
                            .with(FROM_CROP, 0)
                            .with(FROM_STOCK, 80)
                            .with(FEED_CROPS, 0)
                            .with(FEED_CROPS_LACKING, 0)
                            .with(FEED_STORES, 1)
                            .with(FEED_STORES_LACKING, 0)
                            .gives(80, Units.T_DM, 0)));

    /** {@code days-of-feed}: available ÷ daily demand. */
    public static final Formula DAYS_FEED_LASTS = new Formula(
            "days-of-feed",
            DAYS_OF_FEED,
            value(AVAILABLE).over(DAILY_TOTAL),
            FeedDemand.TEAGASC,
            "all groups eating at once from the first day; longer where a group goes before the feed does",
            List.of(WorkedExample.from(FeedDemand.TEAGASC)
                    .with(AVAILABLE, 168)
                    .with(DAILY_TOTAL, 1200)
                    .gives(140, Units.D, 0)));

    /** {@code surplus-or-shortfall}: available less demand. */
    public static final Formula SURPLUS_OR_SHORTFALL = new Formula(
            "surplus-or-shortfall",
            SURPLUS,
            value(AVAILABLE).minus(DEMAND_TOTAL),
            FeedDemand.TEAGASC,
            "dry matter; below nought is short. It holds no reserve for a late spring",
            List.of(WorkedExample.from(Source.derived("Teagasc's two groups need 183 t; of 168 t 15 t are short"))
                    .with(AVAILABLE, 168)
                    .with(DEMAND_TOTAL, 183)
                    .gives(-15, Units.T_DM, 0)));

    /** {@code animals-fed}: in the proportion of feed to demand, rounded down. */
    public static final Formula ANIMALS_FED = new Formula(
            "animals-fed",
            ANIMALS,
            call(Function.ROUND_DOWN, value(HEAD_TOTAL).times(value(AVAILABLE).over(DEMAND_TOTAL))),
            SRUC,
            "all groups in their present proportion, for their own days; rounded down",
            List.of(
                    WorkedExample.from(SRUC)
                            .with(HEAD_TOTAL, 1)
                            .with(AVAILABLE, 0.750 * 0.25)
                            .with(DEMAND_TOTAL, 0.010)
                            .gives(18, Units.ONE, 0),
                    WorkedExample.from(SRUC)
                            .with(HEAD_TOTAL, 1)
                            .with(AVAILABLE, 0.750 * 0.45)
                            .with(DEMAND_TOTAL, 0.010)
                            .gives(33, Units.ONE, 0)));

    private static Symbol rowCount(String name) {
        return Symbol.number(name, Units.ONE).possible(Range.NOT_NEGATIVE).decimals(0);
    }

    private static Condition some(Symbol rows) {
        return Condition.compare(value(rows), Relation.MORE, number(0));
    }

    /** A total of rows that may be none: none is nought, a withheld row withholds. */
    static Expr orNone(Symbol rowsWith, Symbol rowsWithout, Symbol total) {
        return choice(
                Condition.compare(value(rowsWith).plus(rowsWithout), Relation.EQUAL, number(0)),
                new Expr.AsUnit(number(0), total.unit()),
                value(total));
    }
}
