package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.spraying.NozzlePressure.SPACING_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What each nozzle must give, and what class a water volume falls in. */
public final class SprayRates {
    private SprayRates() {}

    /** Flow of one nozzle. */
    public static final Symbol OUTPUT_PER_NOZZLE = Symbol.number("nozzle output", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Class of a water volume. */
    public static final Symbol CLASS = Symbol.text("volume class");

    private static final Source FARM_PRESS = Source.published("Irish Independent / Farm Ireland, Useful formulae for"
            + " working out nozzle selection, forward speed, application rate (farm press)");
    private static final Source ALBERTA = Source.published("Government of Alberta, Agdex 606-1, p. 10-11");
    private static final Source TERMINOLOGY =
            Source.published("IPARC/dropdata Terminology, table of volume rate classes (Matthews school)");

    /** {@code nozzle-output}: water volume × speed × nozzle spacing ÷ 600. */
    public static final Formula NOZZLE_OUTPUT = new Formula(
            "nozzle-output",
            OUTPUT_PER_NOZZLE,
            value(WATER_VOLUME).times(SPEED).times(SPACING_USED),
            FARM_PRESS,
            "broadcast spraying, water-like liquid; pressure at the gauge is not pressure at the nozzle",
            List.of(
                    WorkedExample.from(FARM_PRESS)
                            .with(WATER_VOLUME, 200)
                            .with(SPEED, 7.8)
                            .with(SPACING_USED, 0.5)
                            .gives(1.3, Units.L_PER_MIN, 3),
                    // The table prints L/ac without fractions (40 stands for 40.47), so the flow is met to 2 %.
                    WorkedExample.from(ALBERTA)
                            .with(WATER_VOLUME, 40, Units.L.over(Units.AC))
                            .with(SPEED, 9)
                            .with(SPACING_USED, 50, Units.CM)
                            .givesWithin(0.75, Units.L_PER_MIN, 0.01),
                    alberta(30, 6, 0.38),
                    alberta(45, 6, 0.57),
                    alberta(34, 8, 0.57),
                    alberta(30, 9, 0.57),
                    alberta(27, 10, 0.57),
                    alberta(60, 6, 0.75),
                    alberta(45, 8, 0.75),
                    alberta(36, 10, 0.75),
                    WorkedExample.from(Source.published("GATE agricultural engineering notes, plant protection Q5"))
                            .with(WATER_VOLUME, 300)
                            .with(SPEED, 8)
                            .with(SPACING_USED, 8)
                            .gives(32, Units.L_PER_MIN, 0),
                    WorkedExample.from(Source.secondHand("placedupro.com (French trade), worked example"))
                            .with(WATER_VOLUME, 190)
                            .with(SPEED, 10)
                            .with(SPACING_USED, 50, Units.CM)
                            .gives(1.58, Units.L_PER_MIN, 2),
                    WorkedExample.from(Source.published("Extension calibration exercise 3b: 30 GPA, 7 mph, 30 in"))
                            .with(WATER_VOLUME, 30, Units.GAL_US.over(Units.AC))
                            .with(SPEED, 7, Units.MPH)
                            .with(SPACING_USED, 30, Units.IN)
                            .gives(1, Units.GAL_US.over(Units.MIN), 0)));

    /** Above this a field crop volume is high. */
    public static final Constant HIGH_IN_FIELD_CROPS =
            new Constant("high volume in field crops, above", 600, Units.L_PER_HA, TERMINOLOGY);
    /** Above this a volume on trees and bushes is high. */
    public static final Constant HIGH_ON_TREES =
            new Constant("high volume on trees and bushes, above", 1000, Units.L_PER_HA, TERMINOLOGY);

    /** Classes in field crops; a shared edge belongs to the class above it. */
    public static final ReferenceTable FIELD_CLASSES = classes("Volume classes in field crops", 5, 50, 200);
    /** Classes on trees and bushes; a shared edge belongs to the class above it. */
    public static final ReferenceTable TREE_CLASSES = classes("Volume classes on trees and bushes", 50, 200, 500);

    /** {@code volume-class}: the published class of the water volume. */
    public static final Formula VOLUME_CLASS = new Formula(
            "volume-class",
            CLASS,
            choice(
                    Condition.is(MACHINE_TYPE, "air-blast sprayer"),
                    classOf(HIGH_ON_TREES, TREE_CLASSES),
                    classOf(HIGH_IN_FIELD_CROPS, FIELD_CLASSES)),
            TERMINOLOGY,
            "published bands share their edges; here an edge belongs to the band above it (200 is medium), except that"
                    + " high volume begins above 600 (trees: above 1000) as printed",
            List.of(
                    field(4.9, "ultra low volume"),
                    field(5, "very low volume"),
                    field(50, "low volume"),
                    field(199, "low volume"),
                    field(200, "medium volume"),
                    field(600, "medium volume"),
                    field(601, "high volume"),
                    tree(49, "ultra low volume"),
                    tree(199, "very low volume"),
                    tree(499, "low volume"),
                    tree(999, "medium volume"),
                    tree(1001, "high volume")));

    /**
     * A cell of the Alberta table (50 cm, 275 kPa). It prints L/ac without fractions and the flow to two places, so a
     * printed rate may be up to 1.2 L/ac under what the printed flow gives (45 stands for 46.1).
     */
    private static WorkedExample alberta(double litresPerAcre, double speed, double printed) {
        double oneLitrePerAcre = speed * 0.5 * 2.47105 / 600;
        return WorkedExample.from(ALBERTA)
                .with(WATER_VOLUME, litresPerAcre, Units.L.over(Units.AC))
                .with(SPEED, speed)
                .with(SPACING_USED, 50, Units.CM)
                .givesWithin(printed, Units.L_PER_MIN, 1.2 * oneLitrePerAcre);
    }

    private static Expr classOf(Constant high, ReferenceTable classes) {
        return choice(
                Condition.compare(value(WATER_VOLUME), Relation.MORE, constant(high)),
                text("high volume"),
                new Expr.Lookup(classes, value(WATER_VOLUME), Expr.Lookup.Mode.STEP));
    }

    private static ReferenceTable classes(String name, double veryLow, double low, double medium) {
        return new ReferenceTable(
                name,
                "water volume, from",
                Units.L_PER_HA,
                "class",
                Units.ONE,
                List.of(
                        Row.of(0, "ultra low volume"),
                        Row.of(veryLow, "very low volume"),
                        Row.of(low, "low volume"),
                        Row.of(medium, "medium volume")),
                TERMINOLOGY);
    }

    private static WorkedExample field(double volume, String answer) {
        return WorkedExample.from(TERMINOLOGY)
                .with(WATER_VOLUME, volume)
                .with(MACHINE_TYPE, "sprayer")
                .gives(answer);
    }

    private static WorkedExample tree(double volume, String answer) {
        return WorkedExample.from(TERMINOLOGY)
                .with(WATER_VOLUME, volume)
                .with(MACHINE_TYPE, "air-blast sprayer")
                .gives(answer);
    }
}
