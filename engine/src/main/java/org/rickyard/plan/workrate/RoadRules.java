package org.rickyard.plan.workrate;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.Carting;
import org.rickyard.trade.workrate.RoadLaw;

/** Cautions of carting on the road; the country of the holding decides whose law is quoted. */
final class RoadRules {
    private RoadRules() {}

    private static final Condition GREAT_BRITAIN = Condition.any(List.of(
            Condition.is(Quantities.COUNTRY, "England"),
            Condition.is(Quantities.COUNTRY, "Wales"),
            Condition.is(Quantities.COUNTRY, "Scotland")));
    private static final Condition LOAD_TOO_HEAVY = Condition.all(List.of(
            new Condition.Blank(Quantities.UNLADEN_MASS),
            Condition.compare(Expr.value(Carting.LOAD), Relation.MORE, Expr.constant(RoadLaw.TRAILER_MASS))));
    private static final Condition TOO_HEAVY = Condition.compare(
            Expr.value(Carting.LOAD).plus(Quantities.UNLADEN_MASS), Relation.MORE, Expr.constant(RoadLaw.TRAILER_MASS));
    private static final Condition TRAIN_TOO_HEAVY = Condition.compare(
            Expr.value(Carting.LOAD).plus(Quantities.UNLADEN_MASS).plus(Carting.TRACTOR_MASS),
            Relation.MORE,
            Expr.constant(RoadLaw.TRAIN_MASS));
    /** Each speed has a rule of its own: where one is blank, a rule that asks about both would say nothing. */
    private static CautionRule tooFast(String which, Symbol speed) {
        return new CautionRule(
                Severity.CAUTION,
                Condition.all(List.of(
                        GREAT_BRITAIN,
                        // To the whole km/h, for the rules call 40 km/h 25 mph, which is 40.2.
                        Condition.compare(
                                Expr.call(Function.ROUND, Expr.value(speed), Expr.number(0)),
                                Relation.MORE,
                                Expr.constant(RoadLaw.TRAILER_SPEED)))),
                "the road speed " + which
                        + " is above the 40 km/h of Great Britain's 2015 rules for tractor and trailer;"
                        + " trailed appliances and wide machines have lower limits. Check the rules of today.");
    }

    static final List<CautionRule> CARTING = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(GREAT_BRITAIN, TOO_HEAVY)),
                    "load and unladen trailer together are above the 18.29 t that Great Britain's 2015 rules allow a"
                            + " trailer on the road; later rules may differ, and the plate and axles may allow less."
                            + " Carry less or keep off the road."),
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(GREAT_BRITAIN, LOAD_TOO_HEAVY)),
                    "the load alone is above the 18.29 t that Great Britain's 2015 rules allow a trailer and its load on"
                            + " the road; later rules may differ. Mend the payload, carry less or keep off the road."),
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(GREAT_BRITAIN, TRAIN_TOO_HEAVY)),
                    "tractor, trailer and load together are above the 31 t that Great Britain's 2015 rules allow on the"
                            + " road; later rules may differ. Carry less, take a lighter tractor or keep off the road."),
            tooFast("laden", Quantities.ROAD_SPEED_LADEN),
            tooFast("empty", Quantities.ROAD_SPEED_EMPTY),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.value(Quantities.ROAD_SPEED_EMPTY),
                            Relation.LESS,
                            Expr.value(Quantities.ROAD_SPEED_LADEN)),
                    "the empty trailer is slower than the laden one: were the two speeds mixed up?"),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.is(Quantities.OVERHEAD_LINES, "yes"),
                    "overhead lines: a tipping body or loader can reach or come near them, and current jumps without"
                            + " contact. Lines up to 33 kV may hang at 5.2 m and equipment on poles lower (HSE AIS8)."
                            + " Agree with the network operator before tipping here."));
}
