package org.rickyard.trade.workrate;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.HOURS_PER_DAY;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/**
 * What a gang gets through on a field, and which stage holds the others up. Chopping, carting, pushing up and rolling
 * run together; mowing, tedding and raking run on a day of their own and are compared by the day.
 */
public final class GangRates {
    private GangRates() {}

    /** The table of gangs. */
    public static final String GANGS = "gangs";

    /** What the gang gets through. */
    public static final Symbol GANG_RATE =
            Symbol.number("gang rate", Units.HA_PER_H).possible(Range.POSITIVE).decimals(2);
    /** The same by mass. */
    public static final Symbol GANG_MATERIAL = Symbol.number("gang rate by mass", Units.T_PER_H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Which stage holds the gang up. */
    public static final Symbol BOTTLENECK = Symbol.text("bottleneck");
    /** Hours of the gang on the field. */
    public static final Symbol GANG_HOURS =
            Symbol.number("gang hours", Units.H).possible(Range.POSITIVE).decimals(1);
    /** What comes to the clamp if nobody waits for the rollers. */
    public static final Symbol UNHELD_RATE = Symbol.number("gang rate if rolling held nothing up", Units.HA_PER_H)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Hours of the gang if nobody waits for the rollers. */
    public static final Symbol UNHELD_HOURS = Symbol.number("gang hours if rolling held nothing up", Units.H)
            .possible(Range.POSITIVE)
            .decimals(1);
    /** Crop of the field, as carted. */
    public static final Symbol GANG_CROP = Symbol.number("crop of the field (fresh, as carted)", Units.T)
            .possible(Range.POSITIVE)
            .decimals(0);
    /** Area of the gang in a day. */
    public static final Symbol GANG_DAY = Symbol.number("gang area per day", Units.HA)
            .possible(Range.POSITIVE)
            .decimals(1);

    static final Source LOWEST =
            Source.memory("standard theory of machines that work in a chain: the slowest" + " sets the pace");

    static final Source ARITHMETIC =
            Source.derived("grass 20 t/ha: chopping 2.00, two trailers 1.584, rolling 1.75 ha/h");

    static final String NO_RATE = "a stage of this gang has no rate; its row on Gang stages says why";

    static Condition allThere(List<GangStage> stages) {
        List<Condition> conditions = new ArrayList<>();
        for (GangStage stage : stages) {
            conditions.add(Condition.any(List.of(
                    new Condition.Given(stage.rate()),
                    Condition.compare(value(stage.machines()), Condition.Relation.EQUAL, Expr.number(0)))));
        }
        return Condition.all(conditions);
    }

    private static List<Symbol> rates() {
        return GangStage.together().stream().map(GangStage::rate).toList();
    }

    /** {@code gang-rate}: the slowest of the stages that run together. */
    public static final Formula RATE_OF_GANG = new Formula(
            "gang-rate",
            GANG_RATE,
            new Expr.LeastGiven(rates()).onlyWhen(allThere(GangStage.together()), NO_RATE),
            LOWEST,
            "chopping, carting, pushing up and rolling of one field; a stage that the gang has no machine for is left"
                    + " aside",
            List.of(gang(1.584, 1.584), gang(2.376, 1.75), gang(40, 1.75)));

    private static WorkedExample gang(double carting, double gang) {
        return gangOf(carting).gives(gang, Units.HA_PER_H, 6);
    }

    private static WorkedExample.Draft gangOf(double carting) {
        return ratesOf(carting)
                .with(GangStage.CHOPPING.machines(), 1)
                .with(GangStage.CARTING.machines(), 2)
                .with(GangStage.PUSHING_UP.machines(), 0)
                .with(GangStage.ROLLING.machines(), 1);
    }

    private static WorkedExample.Draft ratesOf(double carting) {
        return WorkedExample.from(ARITHMETIC)
                .with(GangStage.CHOPPING.rate(), 2)
                .with(GangStage.CARTING.rate(), carting)
                .with(GangStage.ROLLING.rate(), 1.75);
    }

    /** {@code bottleneck}: which stage that is. */
    public static final Formula BOTTLENECK_OF_GANG = new Formula(
            "bottleneck",
            BOTTLENECK,
            choice(
                    new Condition.Given(GANG_RATE),
                    new Expr.LabelOfLeast(
                            rates(),
                            GangStage.together().stream().map(GangStage::words).toList()),
                    Expr.text("")),
            LOWEST,
            "of equal stages the first on the crop's way",
            List.of(
                    ratesOf(1.584).with(GANG_RATE, 1.584).gives("carting"),
                    ratesOf(2.376).with(GANG_RATE, 1.75).gives("rolling")));

    /** {@code stage-slack} of each stage that runs together: its rate over the gang's. */
    public static final List<Formula> SLACK =
            GangStage.together().stream().map(GangRates::slackOf).toList();

    /** The slack of one stage: by the hour where it keeps step, by the day where it has a day of its own. */
    public static Formula slackOf(GangStage stage) {
        Symbol own = stage.coupled() ? stage.rate() : stage.day();
        Symbol gang = stage.coupled() ? GANG_RATE : GANG_DAY;
        return new Formula(
                stage.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-slack",
                stage.slack(),
                value(own).over(gang),
                LOWEST,
                stage.coupled()
                        ? "1 is the bottleneck; 1.2 could do a fifth more"
                        : "by the day, each over its own hours; under 1 it must begin earlier",
                List.of(WorkedExample.from(ARITHMETIC)
                        .with(own, 2.1)
                        .with(gang, 1.75)
                        .gives(1.2, Units.ONE, 6)));
    }

    /** Gang rate by mass. */
    public static final Formula MATERIAL_OF_GANG = new Formula(
            "gang-rate-by-mass",
            GANG_MATERIAL,
            value(GANG_RATE).times(Throughput.YIELD_CARTED),
            Source.derived("area per hour × yield"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(GANG_RATE, 1.75)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(35, Units.T_PER_H, 6)));

    /** {@code gang-hours}: area ÷ gang rate. */
    public static final Formula HOURS_OF_GANG = new Formula(
            "gang-hours",
            GANG_HOURS,
            value(AREA).over(GANG_RATE),
            Source.derived("area over area per hour"),
            "moving between fields comes on top",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 7)
                    .with(GANG_RATE, 1.75)
                    .gives(4, Units.H, 6)));

    private static final List<GangStage> BRINGING = GangStage.together().stream()
            .filter(stage -> stage != GangStage.ROLLING)
            .toList();

    private static WorkedExample.Draft bringing(double carting) {
        return WorkedExample.from(ARITHMETIC)
                .with(GangStage.CHOPPING.rate(), 2)
                .with(GangStage.CARTING.rate(), carting)
                .with(GangStage.CHOPPING.machines(), 1)
                .with(GangStage.CARTING.machines(), 2)
                .with(GangStage.PUSHING_UP.machines(), 0);
    }

    /** {@code gang-rate-unheld}: the slowest of the stages before rolling. */
    public static final Formula RATE_UNHELD = new Formula(
            "gang-rate-unheld",
            UNHELD_RATE,
            new Expr.LeastGiven(BRINGING.stream().map(GangStage::rate).toList()).onlyWhen(allThere(BRINGING), NO_RATE),
            LOWEST,
            "what comes to the clamp where forager and trailers do not wait for the rollers, as they seldom do",
            List.of(
                    bringing(1.584).gives(1.584, Units.HA_PER_H, 6),
                    bringing(2.376).gives(2, Units.HA_PER_H, 6)));

    /** {@code gang-hours-unheld}: area ÷ that rate. */
    public static final Formula HOURS_UNHELD = new Formula(
            "gang-hours-unheld",
            UNHELD_HOURS,
            value(AREA).over(UNHELD_RATE),
            Source.derived("area over area per hour"),
            "moving between fields comes on top",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 7)
                    .with(UNHELD_RATE, 2)
                    .gives(3.5, Units.H, 6)));

    /** {@code gang-crop}: what the gang brings to the clamp from the field. */
    public static final Formula CROP_OF_GANG = new Formula(
            "gang-crop",
            GANG_CROP,
            value(AREA).times(Throughput.YIELD_CARTED),
            Source.derived("area × yield as carted"),
            "fresh tonnes as carted",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(AREA, 7)
                    .with(Throughput.YIELD_CARTED, 20)
                    .gives(140, Units.T, 6)));

    /** Gang area in a day. */
    public static final Formula DAY_OF_GANG = new Formula(
            "gang-area-per-day",
            GANG_DAY,
            value(GANG_RATE).times(HOURS_PER_DAY),
            Source.derived("area per hour × hours"),
            "mowing and raking must bring as much on their own day",
            List.of(WorkedExample.from(ARITHMETIC)
                    .with(GANG_RATE, 1.75)
                    .with(HOURS_PER_DAY, 8)
                    .gives(14, Units.HA, 6)));

    /** In reading order. */
    static List<Formula> formulas() {
        List<Formula> all = new ArrayList<>(List.of(RATE_OF_GANG, BOTTLENECK_OF_GANG));
        all.addAll(SLACK);
        all.addAll(List.of(MATERIAL_OF_GANG, HOURS_OF_GANG, DAY_OF_GANG, CROP_OF_GANG, RATE_UNHELD, HOURS_UNHELD));
        return List.copyOf(all);
    }
}
