package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.given;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.ALREADY_FED;
import static org.rickyard.trade.Quantities.AMOUNT;
import static org.rickyard.trade.Quantities.AMOUNT_DRY;
import static org.rickyard.trade.Quantities.COUNT;
import static org.rickyard.trade.Quantities.STORE_DM;
import static org.rickyard.trade.Quantities.WEIGHT_EACH;
import static org.rickyard.trade.Quantities.WEIGHT_EACH_DRY;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What is in store: measured, fed since, and as dry matter. */
public final class FeedStock {
    private FeedStock() {}

    /** Fresh feed when it was measured. */
    public static final Symbol STORED = Symbol.number("in store (fresh)", Units.T)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Fresh feed now. */
    public static final Symbol IN_HAND = Symbol.number("stock in hand (fresh)", Units.T)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Dry matter now. */
    public static final Symbol IN_HAND_DM = Symbol.number("stock in hand (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    /** How far a typed amount may lie from count × weight of each before one of them is asked about. */
    public static final Constant COUNT_TOLERANCE = new Constant(
            "amount in store may differ from count × weight each by",
            10,
            Units.PERCENT,
            Source.commonPractice("judgement: bales are weighed by sample, and amounts are rounded"));

    private static final Expr DRY_OF_BALES = value(COUNT).times(WEIGHT_EACH_DRY);

    /** Fresh feed in store: typed, otherwise from the dry matter typed, otherwise count × weight of each. */
    public static final Formula STORE = new Formula(
            "store-amount",
            STORED,
            given(
                    AMOUNT,
                    // Blank, not given: an amount that cannot be read is not passed over for a count of bales.
                    choice(
                            new Condition.Blank(AMOUNT_DRY),
                            choice(
                                    new Condition.Blank(WEIGHT_EACH_DRY),
                                    value(COUNT).times(WEIGHT_EACH),
                                    DRY_OF_BALES.over(STORE_DM)),
                            value(AMOUNT_DRY).over(STORE_DM))),
            Source.derived("typed; otherwise dry matter ÷ its share, or count × weight of each"),
            "fresh, on the day it was measured",
            List.of(
                    WorkedExample.from(Source.secondHand("Teagasc 2021: 550 bales counted at 0.9 t each are 495 t"))
                            .with(COUNT, 550)
                            .with(WEIGHT_EACH, 900)
                            .gives(495, Units.T, 0),
                    WorkedExample.from(Source.secondHand("Farmers Journal 554800: 145 bales are 110 t, 0.759 t each"))
                            .with(COUNT, 145)
                            .with(WEIGHT_EACH, 759)
                            .gives(110, Units.T, 0),
                    WorkedExample.from(Source.secondHand(
                                    "agproud.com: 300 t at 33-34 % is 100 t of dry matter, read backwards"))
                            .with(AMOUNT_DRY, 100)
                            .with(STORE_DM, 33.5)
                            .givesWithin(300, Units.T, 2),
                    WorkedExample.from(Source.derived(
                                    "198 t of dry matter in 900 bales of 220 kg (Greenfield farm, Farmers"
                                            + " Journal 216282) are 618.75 t at 32 %"))
                            .with(COUNT, 900)
                            .with(WEIGHT_EACH_DRY, 220)
                            .with(STORE_DM, 32)
                            .gives(618.75, Units.T, 2)));

    /** {@code stock-in-hand}: in store less what was fed since. */
    public static final Formula STOCK_IN_HAND = new Formula(
            "stock-in-hand",
            IN_HAND,
            choice(
                    new Condition.Blank(ALREADY_FED),
                    value(STORED),
                    value(STORED)
                            .minus(ALREADY_FED)
                            .onlyWhen(
                                    Condition.compare(value(STORED), Relation.AT_LEAST, value(ALREADY_FED)),
                                    "more has been fed than was in store")),
            Source.derived("in store less already fed"),
            "fresh",
            List.of(WorkedExample.from(Source.derived("495 t less 95 t fed"))
                    .with(STORED, 495)
                    .with(ALREADY_FED, 95)
                    .gives(400, Units.T, 0)));

    private static final Expr FROM_FRESH = value(IN_HAND).times(STORE_DM);

    /** {@code stock-dry-matter}: as typed dry where nothing was fed since, otherwise in hand × dry matter. */
    public static final Formula STOCK_DM = new Formula(
            "stock-dry-matter",
            IN_HAND_DM,
            choice(
                    Condition.all(List.of(new Condition.Blank(ALREADY_FED), new Condition.Blank(AMOUNT))),
                    choice(
                            new Condition.Blank(AMOUNT_DRY),
                            choice(new Condition.Blank(WEIGHT_EACH_DRY), FROM_FRESH, DRY_OF_BALES),
                            value(AMOUNT_DRY)),
                    FROM_FRESH),
            Source.derived("dry matter as typed; otherwise, and of what was fed of since, fresh × dry matter"),
            "as it lies; losses at the face are not taken off stock that was measured",
            List.of(
                    WorkedExample.from(Source.secondHand("agproud.com: 300 t at 33-34 % is 100 t of dry matter"))
                            .with(IN_HAND, 300)
                            .with(STORE_DM, 33.5)
                            .with(COUNT, 400)
                            .givesWithin(100, Units.T_DM, 2),
                    WorkedExample.from(
                                    Source.secondHand(
                                            "Greenfield farm, Farmers Journal 216282: 900 bales of 220 kg of dry matter are 198 t"))
                            .with(COUNT, 900)
                            .with(WEIGHT_EACH_DRY, 220)
                            .gives(198, Units.T_DM, 1)));
}
