package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.MACHINE_TYPE;
import static org.rickyard.trade.Quantities.SPEED;
import static org.rickyard.trade.Quantities.WATER_VOLUME;
import static org.rickyard.trade.spraying.NozzlePressure.SPACING_USED;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
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

/** What each nozzle must give, and what class a water volume falls in. */
public final class SprayRates {
    private SprayRates() {}

    /** Flow of one nozzle. */
    public static final Symbol OUTPUT_PER_NOZZLE = Symbol.number("nozzle output", Units.L_PER_MIN)
            .possible(Range.POSITIVE)
            .decimals(2);
    /** Class of a water volume. */
    public static final Symbol CLASS = Symbol.text("volume class");

    private static final Unit GALLONS_PER_ACRE = Units.GAL_US.over(Units.AC);
    private static final Source TERMINOLOGY =
            Source.published("IPARC/dropdata Terminology, table of volume rate classes (Matthews school)");

    /** {@code nozzle-output}: water volume × speed × nozzle spacing ÷ 600. */
    public static final Formula NOZZLE_OUTPUT = new Formula(
            "nozzle-output",
            OUTPUT_PER_NOZZLE,
            value(WATER_VOLUME).times(SPEED).times(SPACING_USED),
            SpraySources.FARM_PRESS,
            "broadcast spraying, water-like liquid; pressure at the gauge is not pressure at the nozzle",
            outputExamples());

    /** Worked examples of others, and the Alberta table cell by cell. */
    private static List<WorkedExample> outputExamples() {
        List<WorkedExample> examples = new ArrayList<>(List.of(
                output(SpraySources.FARM_PRESS, 200, Units.L_PER_HA, 7.8, Units.KM_PER_H, 0.5, Units.M)
                        .gives(1.3, Units.L_PER_MIN, 3),
                output(SpraySources.courseNotes("Q5"), 300, Units.L_PER_HA, 8, Units.KM_PER_H, 8, Units.M)
                        .gives(32, Units.L_PER_MIN, 0),
                output(SpraySources.TRADE, 190, Units.L_PER_HA, 10, Units.KM_PER_H, 50, Units.CM)
                        .gives(1.58, Units.L_PER_MIN, 2),
                output(SpraySources.EXERCISE_3B, 30, GALLONS_PER_ACRE, 7, Units.MPH, 30, Units.IN)
                        .gives(1, Units.GAL_US.over(Units.MIN), 0),
                output(SpraySources.EXERCISE_3B, 30, GALLONS_PER_ACRE, 9.9, Units.MPH, 30, Units.IN)
                        .gives(1.5, Units.GAL_US.over(Units.MIN), 1)));
        for (SpraySources.AlbertaCell cell : SpraySources.ALBERTA_TABLE) {
            examples.add(output(
                            SpraySources.ALBERTA,
                            cell.rate(),
                            Units.L.over(Units.AC),
                            cell.speed(),
                            Units.KM_PER_H,
                            50,
                            Units.CM)
                    .givesWithin(cell.flow(), Units.L_PER_MIN, cell.tolerance() * cell.flow() / cell.rate()));
        }
        return List.copyOf(examples);
    }

    private static WorkedExample.Draft output(
            Source source, double volume, Unit perArea, double speed, Unit pace, double spacing, Unit length) {
        return WorkedExample.from(source)
                .with(WATER_VOLUME, volume, perArea)
                .with(SPEED, speed, pace)
                .with(SPACING_USED, spacing, length);
    }

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
                    field(49, "very low volume"),
                    tree(49, "ultra low volume"),
                    tree(50, "very low volume"),
                    tree(199, "very low volume"),
                    tree(200, "low volume"),
                    tree(499, "low volume"),
                    tree(500, "medium volume"),
                    tree(999, "medium volume"),
                    tree(1000, "medium volume"),
                    tree(1001, "high volume")));

    private static Expr classOf(Constant high, ReferenceTable classes) {
        return choice(
                Condition.compare(cut(), Relation.MORE, constant(high)),
                text("high volume"),
                new Expr.Lookup(classes, cut(), Expr.Lookup.Mode.STEP));
    }

    /** Cut to nine decimals, so that a volume typed in gallons lies on the edge that it lies on in litres. */
    private static Expr cut() {
        return call(Function.ROUND, value(WATER_VOLUME), number(9));
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
