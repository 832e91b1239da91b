package org.rickyard.trade.workrate;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.rickyard.formula.Constant;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Source;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Efficiency, speed, life and repairs of machines, as remembered from ASAE D497, Table 3: American fields, machines and
 * prices. Nothing here was read in print; that a row's repair factors give back its repairs over the whole life is the
 * only check there is. Foragers of today are quicker and take more crop than the table says.
 */
public final class RememberedMachines {
    private RememberedMachines() {}

    /**
     * One row.
     *
     * @param name as in the table
     * @param types the types of ours it stands for; none where no type of ours is like it
     * @param leastEfficiency lowest usual field efficiency, per cent; NaN where the machine has none
     * @param greatestEfficiency highest usual
     * @param efficiency typical
     * @param slowest lowest usual speed, km/h; NaN where the machine has none
     * @param fastest highest usual
     * @param speed typical
     * @param life hours
     * @param repairs of the whole life, per cent of list price
     * @param rf1 repair factor
     * @param rf2 repair exponent
     */
    public record Row(
            String name,
            List<String> types,
            double leastEfficiency,
            double greatestEfficiency,
            double efficiency,
            double slowest,
            double fastest,
            double speed,
            double life,
            double repairs,
            double rf1,
            double rf2) {}

    /** The table. */
    public static final List<Row> ROWS = List.of(
            new Row(
                    "Tractor 2WD & stationary engine",
                    List.of("tractor"),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    12000,
                    100,
                    0.007,
                    2.0),
            new Row(
                    "Tractor 4WD & crawler",
                    List.of(),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    16000,
                    80,
                    0.003,
                    2.0),
            new Row("Mouldboard plough", List.of("plough"), 70, 90, 85, 5, 10, 7, 2000, 100, 0.29, 1.8),
            new Row("Heavy-duty disc", List.of(), 70, 90, 85, 5.5, 10, 7, 2000, 60, 0.18, 1.7),
            new Row("Tandem disc harrow", List.of(), 70, 90, 80, 6.5, 11, 10, 2000, 60, 0.18, 1.7),
            new Row("Chisel plough", List.of(), 70, 90, 85, 6.5, 10.5, 8, 2000, 75, 0.28, 1.4),
            new Row("Field cultivator", List.of("cultivator"), 70, 90, 85, 8, 13, 11, 2000, 70, 0.27, 1.4),
            new Row("Roller-packer", List.of("field rolls"), 70, 90, 85, 7, 12, 10, 2000, 40, 0.16, 1.3),
            new Row("Mulcher-packer", List.of(), 70, 90, 80, 6.5, 11, 8, 2000, 40, 0.16, 1.3),
            new Row("Rotary hoe", List.of(), 70, 85, 80, 13, 22.5, 19, 2000, 60, 0.23, 1.4),
            new Row("Row-crop cultivator", List.of(), 70, 90, 80, 5, 11, 8, 2000, 80, 0.17, 2.2),
            new Row("Rotary tiller", List.of(), 70, 90, 85, 2, 7, 5, 1500, 80, 0.36, 2.0),
            new Row("Row-crop planter", List.of(), 50, 75, 65, 6.5, 11, 9, 1500, 75, 0.32, 2.1),
            new Row("Grain drill", List.of("drill"), 55, 80, 70, 6.5, 11, 8, 1500, 75, 0.32, 2.1),
            new Row("Corn picker-sheller", List.of(), 60, 75, 65, 3, 6.5, 4, 2000, 70, 0.14, 2.3),
            new Row("Combine, trailed", List.of(), 60, 75, 65, 3, 6.5, 5, 2000, 60, 0.12, 2.3),
            new Row("Combine, self-propelled", List.of("combine"), 65, 80, 70, 3, 6.5, 5, 3000, 40, 0.04, 2.1),
            new Row("Mower (cutterbar)", List.of(), 75, 85, 80, 5, 10, 8, 2000, 150, 0.46, 1.7),
            new Row("Mower (rotary)", List.of("mower"), 75, 90, 80, 8, 19, 11, 2000, 175, 0.44, 2.0),
            new Row("Mower-conditioner (cutterbar)", List.of(), 75, 85, 80, 5, 10, 8, 2500, 80, 0.18, 1.6),
            new Row("Mower-conditioner (rotary)", List.of(), 75, 90, 80, 8, 19, 11, 2500, 100, 0.16, 2.0),
            new Row("Windrower, self-propelled", List.of(), 70, 85, 80, 5, 13, 8, 3000, 55, 0.06, 2.0),
            new Row("Side-delivery rake", List.of("rake", "tedder"), 70, 90, 80, 6.5, 13, 10, 2500, 60, 0.17, 1.4),
            new Row("Small rectangular baler", List.of(), 60, 85, 75, 4, 10, 6.5, 2000, 80, 0.23, 1.8),
            new Row("Large rectangular baler", List.of(), 70, 90, 80, 6.5, 13, 8, 3000, 75, 0.10, 1.8),
            new Row("Large round baler", List.of("baler"), 55, 75, 65, 5, 13, 8, 1500, 90, 0.43, 1.8),
            new Row("Forage harvester, trailed", List.of("forager"), 60, 85, 70, 2.5, 8, 5, 2500, 65, 0.15, 1.6),
            new Row("Forage harvester, self-propelled", List.of(), 60, 85, 70, 2.5, 10, 5.5, 4000, 50, 0.03, 2.0),
            new Row("Sugar-beet harvester", List.of(), 50, 70, 60, 6.5, 10, 8, 1500, 100, 0.59, 1.3),
            new Row("Potato harvester", List.of(), 55, 70, 60, 2.5, 6.5, 4, 2500, 70, 0.19, 1.4),
            new Row("Cotton picker, self-propelled", List.of(), 60, 75, 70, 3, 6, 4.5, 3000, 80, 0.11, 1.8),
            new Row("Fertiliser spreader", List.of("fertiliser spreader"), 60, 80, 70, 8, 16, 11, 1200, 80, 0.63, 1.3),
            new Row("Boom sprayer", List.of("sprayer"), 50, 80, 65, 5, 11.5, 10.5, 1500, 70, 0.41, 1.3),
            new Row("Air-carrier sprayer", List.of("air-blast sprayer"), 55, 70, 60, 3, 8, 5, 2000, 60, 0.20, 1.6),
            new Row("Bean puller-windrower", List.of(), 70, 90, 80, 6.5, 11.5, 8, 2000, 60, 0.20, 1.6),
            new Row("Stalk chopper", List.of(), 70, 90, 80, 6.5, 11.5, 8, 1200, 35, 0.28, 1.4),
            new Row(
                    "Forage blower",
                    List.of(),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    1500,
                    45,
                    0.22,
                    1.8),
            new Row(
                    "Forage wagon",
                    List.of("forage wagon"),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    2000,
                    50,
                    0.16,
                    1.6),
            new Row(
                    "Wagon",
                    List.of("trailer"),
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    3000,
                    80,
                    0.19,
                    1.3));

    /** Who says so. */
    public static final Source SOURCE = Source.memory("ASAE D497, Table 3; tedder as rake, baler as large round baler,"
            + " forager trailed, mower rotary, power harrow as rotary tiller, subsoiler as mouldboard plough; American"
            + " fields");

    /** Kinds of a type that have a row of their own. */
    private static final Map<String, List<String>> KINDS = Map.ofEntries(
            Map.entry("Mouldboard plough", List.of("subsoiler")),
            Map.entry("Heavy-duty disc", List.of("heavy disc")),
            Map.entry("Tandem disc harrow", List.of("disc harrow")),
            Map.entry("Chisel plough", List.of("chisel plough")),
            Map.entry("Field cultivator", List.of("spring-tine harrow", "spike-tooth harrow")),
            Map.entry("Rotary hoe", List.of("rotary hoe")),
            Map.entry("Row-crop cultivator", List.of("row-crop cultivator", "rolling cultivator")),
            Map.entry("Rotary tiller", List.of("rotary tiller", "power harrow")),
            Map.entry("Row-crop planter", List.of("row-crop planter", "no-till planter")),
            Map.entry("Grain drill", List.of("no-till drill")),
            Map.entry("Mower (cutterbar)", List.of("cutterbar mower")),
            Map.entry("Mower (rotary)", List.of("flail mower")),
            Map.entry("Mower-conditioner (cutterbar)", List.of("cutterbar mower-conditioner")),
            Map.entry("Mower-conditioner (rotary)", List.of("mower-conditioner")),
            Map.entry("Windrower, self-propelled", List.of("self-propelled windrower")),
            Map.entry("Small rectangular baler", List.of("small square baler")),
            Map.entry("Large rectangular baler", List.of("large square baler")),
            Map.entry("Forage harvester, trailed", List.of("flail forager")),
            Map.entry("Forage harvester, self-propelled", List.of("self-propelled forager")),
            Map.entry("Fertiliser spreader", List.of("anhydrous applicator")));

    /** A column of the table by kind of machine, which is the type where the type has one row. */
    public static ReferenceTable byKind(
            String name, String valueName, Unit unit, ToDoubleFunction<Row> value, Source source) {
        return new ReferenceTable(name, "kind of machine", Units.ONE, valueName, unit, byKind(value), source);
    }

    /** The rows of a column by kind of machine; those without a value are left out. */
    static List<ReferenceTable.Row> byKind(ToDoubleFunction<Row> value) {
        return ROWS.stream()
                .filter(row -> !Double.isNaN(value.applyAsDouble(row)))
                .flatMap(row -> Stream.concat(row.types().stream(), KINDS.getOrDefault(row.name(), List.of()).stream())
                        .map(kind -> ReferenceTable.Row.of(kind, value.applyAsDouble(row))))
                .toList();
    }

    /** How far a speed may lie beyond the table, which has whole miles an hour rounded to half km/h. */
    public static final Constant SPEED_ROUNDING = new Constant(
            "Usual speeds of the table hold within",
            5,
            Units.PERCENT,
            Source.derived("whole mph to half km/h: 3 mph is 4.8, in the table 5; 7 mph is 11.3, in the table 11.5"));

    /** Lowest usual field speed. */
    public static final ReferenceTable SLOWEST =
            byKind("Lowest usual field speed", "speed", Units.KM_PER_H, Row::slowest, SOURCE);
    /** Hours a machine lasts. */
    public static final ReferenceTable LIFE = byKind("Hours a machine lasts", "hours", Units.H, Row::life, SOURCE);
    /** Highest usual field speed. */
    public static final ReferenceTable FASTEST =
            byKind("Highest usual field speed", "speed", Units.KM_PER_H, Row::fastest, SOURCE);
}
