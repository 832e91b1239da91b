package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.YIELD_BASIS;
import static org.rickyard.trade.silage.Crop.CROP_DM;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What is lost on the way from the standing crop to the mouth. Losses are chained, never added. */
public final class Losses {
    private Losses() {}

    /** Loss still to come between field and clamp. */
    public static final Symbol FIELD_LOSS = Symbol.number("field loss", Units.PERCENT)
            .possible(Range.of(0, 100))
            .decimals(1);
    /** Dry matter left to feed. */
    public static final Symbol FED = Symbol.number("silage fed (dry matter)", Units.T_DM)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);

    private static final Source RANDBY = Source.secondHand("Randby et al. 2020, Feedstuffs: of 1,000 g dry matter in,"
            + " 75 vanish in store, 55 are thrown out, 870 are fed");

    /** Loss from standing crop to clamp. */
    public static final Constant FIELD = new Constant(
            "field and harvest loss of dry matter",
            15,
            Units.PERCENT,
            Source.published("MWPS, dairy handbook NPS-7, 6th ed. 1997: 15 % from harvest to storage"));
    /** Loss in the store. */
    public static final Constant STORAGE = new Constant("storage loss of dry matter", 7.5, Units.PERCENT, RANDBY);
    /** Loss at the face and trough: 55 of the 925 left. */
    public static final Constant FEED_OUT =
            new Constant("feed-out loss of dry matter", 100 * 55.0 / 925, Units.PERCENT, RANDBY);

    private static final Source EXAMINER = Source.secondHand(
            "Irish Examiner 40880858: 6,000 kg standing, 16, 23 or 30 % lost: 5,040, 4,620, 4,200 kg eaten");

    private static final Source AGPROUD =
            Source.secondHand("agproud.com: 15-25 % lost from cut to cow, of 100 t of dry matter 75-85 t are fed");

    /** Field loss: none any more on a yield weighed as carted. */
    public static final Formula FIELD_LOSS_LEFT = new Formula(
            "field-loss",
            FIELD_LOSS,
            choice(
                    Condition.is(YIELD_BASIS, Crop.CARTED),
                    new org.rickyard.formula.Expr.AsUnit(number(0), Units.PERCENT),
                    constant(FIELD)),
            FIELD.source(),
            "a yield as carted has lost it already; a yield of dry matter is taken as standing",
            List.of(
                    WorkedExample.from(FIELD.source())
                            .with(YIELD_BASIS, Crop.STANDING)
                            .gives(15, Units.PERCENT, 1),
                    WorkedExample.from(Source.derived("what is weighed at the clamp has lost it already"))
                            .with(YIELD_BASIS, Crop.CARTED)
                            .gives(0, Units.PERCENT, 1)));

    /** {@code silage-fed}: dry matter × (1 − field loss) × (1 − storage loss) × (1 − feed-out loss). */
    public static final Formula SILAGE_FED = new Formula(
            "silage-fed",
            FED,
            value(CROP_DM)
                    .times(number(1).minus(FIELD_LOSS))
                    .times(number(1).minus(constant(STORAGE)))
                    .times(number(1).minus(constant(FEED_OUT))),
            RANDBY,
            "published totals run from 13 to over 40 %; overrule each loss on Assumptions",
            List.of(
                    WorkedExample.from(RANDBY)
                            .with(CROP_DM, 1)
                            .with(FIELD_LOSS, 0)
                            .gives(0.870, Units.T_DM, 3),
                    examiner(16, 5040),
                    examiner(23, 4620),
                    examiner(30, 4200),
                    whole(AGPROUD, 100, 15, 85, Units.T_DM),
                    whole(AGPROUD, 100, 25, 75, Units.T_DM)));

    private static WorkedExample examiner(double percent, double eaten) {
        return whole(EXAMINER, 6, percent, eaten, Units.KG_DM);
    }

    /** The print names the whole loss, so the field loss is set to what the other two leave of it. */
    private static WorkedExample whole(Source source, double dryMatter, double percent, double fed, Unit unit) {
        return WorkedExample.from(source)
                .with(CROP_DM, dryMatter)
                .with(FIELD_LOSS, 100 * (1 - (1 - percent / 100) / 0.87))
                .gives(fed, unit, 0);
    }
}
