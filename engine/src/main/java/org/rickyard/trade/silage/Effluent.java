package org.rickyard.trade.silage;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.silage.ClampContents.CAPACITY;
import static org.rickyard.trade.silage.ClampContents.CLAMP_DM;
import static org.rickyard.trade.silage.ClampContents.CROP_IN;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
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

/** How much effluent silage lets go, by two named methods that are shown side by side and never averaged. */
public final class Effluent {
    private Effluent() {}

    private static final Unit L_PER_T = Units.L.over(Units.T);

    /** Fresh silage that drains. */
    public static final Symbol TONNES = Symbol.number("silage that drains (fresh)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Effluent by the published points. */
    public static final Symbol VOLUME = Symbol.number("effluent volume, at most", Units.M3)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);
    /** Effluent by the remembered curve. */
    public static final Symbol BY_CURVE = Symbol.number("effluent volume by the equation of Bastiman", Units.M3)
            .possible(Range.NOT_NEGATIVE)
            .decimals(1);

    /** The two points that were published. */
    public static final ReferenceTable POINTS = new ReferenceTable(
            "Effluent of grass silage",
            "dry matter at least",
            Units.PERCENT_DM,
            "effluent at most",
            L_PER_T,
            List.of(Row.of(18, 150), Row.of(25, 25)),
            Source.secondHand("CAFRE (H. Gregg) in agriland.co.uk: about 150 L/t at 18 %, about 25 L/t at 25 %;"
                    + " Teagasc: 0 to 350 L/t, little or none above 25 %"));

    private static final Source BASTIMAN = Source.memory(
            "Bastiman 1976: L/t = 767 − 5.34 D + 0.00936 D², D in g/kg, not confirmed; 109 L/t at 18 % where CAFRE"
                    + " says 150");
    private static final Constant FLAT = new Constant("equation of Bastiman, fixed term", 767, L_PER_T, BASTIMAN);
    private static final Constant LINEAR =
            new Constant("equation of Bastiman, for each g/kg dry matter", -5.34, L_PER_T, BASTIMAN);
    private static final Constant SQUARE =
            new Constant("equation of Bastiman, for each (g/kg)²", 0.00936, L_PER_T, BASTIMAN);
    private static final Constant WETTEST = new Constant("equation of Bastiman, from", 15, Units.PERCENT_DM, BASTIMAN);
    private static final Constant DRIEST = new Constant("equation of Bastiman, to", 28.5, Units.PERCENT_DM, BASTIMAN);

    /** Fresh silage that drains: the crop allotted, otherwise what the clamp holds. */
    public static final Formula DRAINING = new Formula(
            "draining-silage",
            TONNES,
            choice(
                    Condition.compare(value(CROP_IN), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.T)),
                    value(CROP_IN),
                    value(CAPACITY)),
            Source.derived("crop in the clamp; if none is allotted, what it holds when full"),
            "fresh, as ensiled",
            List.of(
                    WorkedExample.from(Source.derived("500 t allotted to a clamp for 612 t"))
                            .with(CROP_IN, 500)
                            .with(CAPACITY, 612)
                            .gives(500, Units.T, 0),
                    WorkedExample.from(Source.derived("nothing allotted: the clamp full"))
                            .with(CROP_IN, 0)
                            .with(CAPACITY, 612)
                            .gives(612, Units.T, 0),
                    WorkedExample.from(Source.derived("612 t allotted"))
                            .with(CROP_IN, 612)
                            .gives(612, Units.T, 0)));

    /** {@code effluent-volume}: by the last published point not above the dry matter. */
    public static final Formula EFFLUENT_VOLUME = new Formula(
            "effluent-volume",
            VOLUME,
            value(TONNES).times(new Expr.Lookup(POINTS, value(CLAMP_DM), Mode.STEP)),
            POINTS.source(),
            "from 18 % dry matter up; between the points the wetter one stands, so it is a most; no line is drawn"
                    + " through them. Rain and yard water come on top",
            List.of(
                    WorkedExample.from(POINTS.source())
                            .with(TONNES, 1)
                            .with(CLAMP_DM, 18)
                            .gives(150, Units.L, 0),
                    WorkedExample.from(POINTS.source())
                            .with(TONNES, 1)
                            .with(CLAMP_DM, 25)
                            .gives(25, Units.L, 0),
                    WorkedExample.from(Source.derived("612 t at 18 %, CAFRE's 150 L/t: 91.8 m3"))
                            .with(TONNES, 612)
                            .with(CLAMP_DM, 18)
                            .gives(91.8, Units.M3, 1),
                    WorkedExample.from(Source.derived("612 t at 25 %, CAFRE's 25 L/t: 15.3 m3"))
                            .with(TONNES, 612)
                            .with(CLAMP_DM, 25)
                            .gives(15.3, Units.M3, 1)));

    /** {@code effluent-volume-bastiman}: from memory, inside its range only. */
    public static final Formula EFFLUENT_BASTIMAN = new Formula(
            "effluent-volume-bastiman",
            BY_CURVE,
            value(TONNES)
                    .times(constant(FLAT)
                            .plus(constant(LINEAR).times(gramsPerKilogram()))
                            .plus(constant(SQUARE).times(gramsPerKilogram().power(2))))
                    .onlyWhen(
                            Condition.all(List.of(
                                    Condition.compare(value(CLAMP_DM), Relation.AT_LEAST, constant(WETTEST)),
                                    Condition.compare(value(CLAMP_DM), Relation.AT_MOST, constant(DRIEST)))),
                            "the dry matter lies outside the range of the equation of Bastiman (15-28.5 %)"),
            BASTIMAN,
            "15 to 28.5 % dry matter; it would rise again beyond, so it gives nothing there",
            List.of(
                    bastiman(15, 176.6),
                    bastiman(18, 109.1),
                    bastiman(20, 73.4),
                    bastiman(22, 45.2),
                    bastiman(25, 17.0)));

    private static Expr gramsPerKilogram() {
        return new Expr.NumberOf(value(CLAMP_DM), Units.KG_DM.over(Units.T).named("g/kg"));
    }

    private static WorkedExample bastiman(double dryMatter, double litres) {
        return WorkedExample.from(Source.derived("from the remembered coefficients"))
                .with(TONNES, 1)
                .with(CLAMP_DM, dryMatter)
                .gives(litres, Units.L, 1);
    }
}
