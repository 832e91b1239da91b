package org.rickyard.plan.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListColumn;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.NozzleTest;
import org.rickyard.lists.RepeatedKey;
import org.rickyard.lists.Stocks;
import org.rickyard.plan.join.JobLines;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.OwnMeasures;
import org.rickyard.quantity.OwnMeasures.Kind;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Substance;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.spraying.ContentDose;
import org.rickyard.trade.spraying.Spreading;

/**
 * In which units each holding has asked, so that it can be answered in them. A kind of unit is read off the first column
 * of {@link #TELLING} in which the holding has typed numbers: the unit most of them are in. A holding that tells nothing
 * of a kind has the unit of rows that belong to no holding. What is asked about (a gallon of unknown country) tells
 * nothing.
 */
public final class OwnUnits {
    private record Telling(Kind kind, ListSpec list, ColumnSpec column) {}

    private static final List<Telling> TELLING = List.of(
            new Telling(Kind.AREA, Fields.LIST, Fields.AREA),
            new Telling(Kind.LIQUID, Jobs.LIST, Jobs.WATER_VOLUME),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.TANK),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.TOTAL_FLOW),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.NOZZLE_FLOW),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.PUMP_FLOW),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.TEST_VOLUME),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.NOZZLE_CATCH),
            new Telling(Kind.LIQUID, NozzleTest.LIST, NozzleTest.FLOW),
            new Telling(Kind.LIQUID, Machines.LIST, Machines.FUEL),
            new Telling(Kind.MASS, Cuts.LIST, Cuts.YIELD),
            new Telling(Kind.MASS, Fields.LIST, Fields.YIELD),
            new Telling(Kind.MASS, Stocks.LIST, Stocks.AMOUNT),
            new Telling(Kind.MASS, Clamps.LIST, Clamps.DELIVERY),
            new Telling(Kind.MASS, Machines.LIST, Machines.OUTPUT),
            new Telling(Kind.MASS, Machines.LIST, Machines.PAYLOAD),
            new Telling(Kind.MASS, Clamps.LIST, Clamps.ROLLER_MASS),
            new Telling(Kind.MASS, Clamps.LIST, Clamps.FRESH_DENSITY),
            new Telling(Kind.MASS, Clamps.LIST, Clamps.DRY_MATTER_DENSITY),
            new Telling(Kind.MASS, Stocks.LIST, Stocks.WEIGHT_EACH),
            new Telling(Kind.MASS, Machines.LIST, Machines.TEST_WEIGHT),
            new Telling(Kind.LENGTH, Clamps.LIST, Clamps.LENGTH),
            new Telling(Kind.LENGTH, Clamps.LIST, Clamps.FLOOR_WIDTH),
            new Telling(Kind.LENGTH, Clamps.LIST, Clamps.WALL_HEIGHT),
            new Telling(Kind.LENGTH, Fields.LIST, Fields.RUN_LENGTH),
            new Telling(Kind.LENGTH, Machines.LIST, Machines.WORKING_WIDTH),
            new Telling(Kind.LENGTH, Machines.LIST, Machines.TIMED_DISTANCE),
            new Telling(Kind.LENGTH, Fields.LIST, Fields.TREE_HEIGHT),
            new Telling(Kind.SPEED, Machines.LIST, Machines.SPEED),
            new Telling(Kind.SPEED, Jobs.LIST, Jobs.SPEED),
            new Telling(Kind.PRESSURE, Machines.LIST, Machines.HIGHEST_PRESSURE));

    /**
     * A dose in a unit whose amounts are wanted in the same.
     *
     * @param dose as it is asked: pt/ac
     * @param amount what is then wanted: pt
     * @param own the product's own unit that it is an amount of: L
     */
    private record Asked(Unit dose, Unit amount, Unit own) {}

    private static final List<Asked> ON_AN_AREA = asked(List.of(Units.AC, Units.HA));

    private static final List<Asked> IN_SPRAY = asked(Stream.of(Units.GAL_UK, Units.GAL_US, Units.L)
            .flatMap(unit -> Stream.of(unit, hundred(unit)))
            .toList());

    private static final Map<Kind, Unit> US =
            Map.of(Kind.LENGTH, Units.FT, Kind.SPEED, Units.MPH, Kind.MASS, Units.SHORT_TON);

    private static final Map<Unit, Unit> SMALL_LIQUIDS = Map.of(
            Units.FL_OZ_US, Units.GAL_US,
            Units.PT_US, Units.GAL_US,
            Units.QT_US, Units.GAL_US,
            Units.FL_OZ_UK, Units.GAL_UK,
            Units.PT_UK, Units.GAL_UK,
            Units.QT_UK, Units.GAL_UK);

    private static final String NOBODY = "";

    private final FoundLists lists;
    private final List<JobLines.Line> lines;
    private final Map<String, Map<Kind, Unit>> told = new LinkedHashMap<>();
    private final Map<String, OwnMeasures> measures = new HashMap<>();
    private final OwnMeasures common;
    private final Map<Kind, Unit> usual = new EnumMap<>(Kind.class);
    /** Whose each field is. */
    private String[] holdings = {};

    /**
     * Reads them off the lists.
     *
     * @param lines which fields each job and machine works on, and so whose it is
     */
    public OwnUnits(FoundLists lists, List<JobLines.Line> lines) {
        this.lists = lists;
        this.lines = lines;
        if (TELLING.stream().anyMatch(this::isCustomary)) {
            told.put(NOBODY, new EnumMap<>(Kind.class));
            ListRows fields = lists.rows(Fields.LIST);
            RepeatedKey names = new RepeatedKey();
            holdings = new String[fields.size()];
            for (int field = 0; field < holdings.length; field++) {
                holdings[field] = names.of(fields.text(Fields.HOLDING, field));
            }
            TELLING.forEach(this::hear);
            if (told.values().stream().noneMatch(units -> units.containsKey(Kind.SPEED))) {
                told.values().forEach(OwnUnits::inferMiles);
            }
            if (told.values().stream().noneMatch(units -> units.containsKey(Kind.AREA))) {
                told.values().forEach(OwnUnits::inferAcres);
            }
        }
        if (!told.isEmpty() && lists.customary() == CustomaryUnits.US) {
            US.forEach((kind, unit) -> {
                if (told.values().stream().noneMatch(units -> units.containsKey(kind))) {
                    usual.put(kind, unit);
                }
            });
        }
        told.forEach((holding, units) -> {
            Map<Kind, Unit> all = new EnumMap<>(told.get(NOBODY));
            all.putAll(units);
            measures.put(holding, new OwnMeasures(all));
        });
        common = new OwnMeasures(agreed());
    }

    /** Whether any number of a column is in a customary unit; in most workbooks none is, and there is no more to do. */
    private boolean isCustomary(Telling telling) {
        ListRows list = lists.rows(telling.list());
        ListColumn column = list.column(telling.column());
        Unit last = null;
        for (int row = 0; column != null && row < list.size(); row++) {
            Unit unit = column.unit(row);
            if (unit != last && unit != null && customary(telling.kind(), unit).isPresent()) {
                return true;
            }
            last = unit;
        }
        return false;
    }

    /** Whose fields nobody tells, and who drives in miles or measures in feet, reckons land in acres. */
    private static void inferAcres(Map<Kind, Unit> units) {
        if (isInFeet(units) || Units.MPH.equals(units.get(Kind.SPEED))) {
            units.putIfAbsent(Kind.AREA, Units.AC);
        }
    }

    /** Whose speeds nobody tells, and who paces out feet by the watch, drives in miles. */
    private static void inferMiles(Map<Kind, Unit> units) {
        if (isInFeet(units)) {
            units.put(Kind.SPEED, Units.MPH);
        }
    }

    private static boolean isInFeet(Map<Kind, Unit> units) {
        return Units.FT.equals(units.get(Kind.LENGTH)) || Units.YD.equals(units.get(Kind.LENGTH));
    }

    private Optional<Unit> customary(Kind kind, Unit unit) {
        Optional<Unit> own = kind.in(unit);
        if (own.isEmpty() && kind == Kind.LIQUID) {
            return gallonOf(unit);
        }
        if (own.isPresent() || kind != Kind.MASS || !isOfPounds(unit)) {
            return own;
        }
        // Who weighs in pounds speaks of tons, if it is known of which.
        return lists.customary() == CustomaryUnits.US
                ? Optional.of(Units.SHORT_TON)
                : lists.customary() == CustomaryUnits.UK ? Optional.of(Units.LONG_TON) : Optional.empty();
    }

    /** Who catches in ounces, pints or quarts of one country fills by its gallon: "fl oz(US) in 30 s". */
    private static Optional<Unit> gallonOf(Unit unit) {
        return SMALL_LIQUIDS.entrySet().stream()
                .filter(small -> unit.symbol().startsWith(small.getKey().symbol()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static boolean isOfPounds(Unit unit) {
        return unit.isSameScale(Units.LB)
                || unit.isSameScale(Units.LB.over(Units.AC))
                || unit.isSameScale(Units.LB.over(Units.H))
                || unit.isSameScale(Units.LB.over(Units.FT3))
                || unit.isSameScale(UnitText.ofDryMatter(Units.LB).over(Units.FT3));
    }

    private void hear(Telling telling) {
        ListRows list = lists.rows(telling.list());
        ListColumn column = list.column(telling.column());
        if (column == null) {
            return;
        }
        Map<Unit, Unit> meant = new IdentityHashMap<>();
        Map<String, Map<Unit, Integer>> votes = new LinkedHashMap<>();
        eachRow(list, (holding, row) -> {
            ListRows.State state = column.state(row);
            Unit unit =
                    state == ListRows.State.GIVEN || state == ListRows.State.READ_FROM_TEXT ? column.unit(row) : null;
            if (unit != null) {
                Unit one = meant.computeIfAbsent(unit, any -> customary(telling.kind(), any)
                        .orElse(telling.kind().ours()));
                votes.computeIfAbsent(holding, h -> new LinkedHashMap<>()).merge(one, 1, Integer::sum);
            }
        });
        votes.forEach((holding, units) ->
                told.computeIfAbsent(holding, h -> new EnumMap<>(Kind.class)).putIfAbsent(telling.kind(), most(units)));
    }

    /** Of as many each, the one that came first. */
    private static Unit most(Map<Unit, Integer> units) {
        Unit most = null;
        for (Map.Entry<Unit, Integer> entry : units.entrySet()) {
            most = most == null || entry.getValue() > units.get(most) ? entry.getKey() : most;
        }
        return most;
    }

    private interface HoldingsRow {
        void take(String holding, int row);
    }

    /** Jobs and machines belong to the holdings of the fields they work on, other rows to the holding they name. */
    private void eachRow(ListRows list, HoldingsRow reader) {
        boolean jobs = list.spec().equals(Jobs.LIST);
        boolean machines = list.spec().equals(Machines.LIST);
        BitSet atWork = new BitSet();
        for (int i = 0; (jobs || machines) && i < lines.size(); i++) {
            int row = jobs ? lines.get(i).job() : lines.get(i).machine();
            if (row >= 0) {
                reader.take(holdings[lines.get(i).field()], row);
                atWork.set(row);
            }
        }
        ColumnSpec holding = list.spec().column("Holding").orElse(null);
        boolean fields = list.spec().equals(Fields.LIST);
        for (int row = atWork.nextClearBit(0); row < list.size(); row = atWork.nextClearBit(row + 1)) {
            String name = fields ? holdings[row] : holding == null ? NOBODY : NameKey.key(list.text(holding, row));
            reader.take(name, row);
        }
    }

    /** What all holdings have in common, for what belongs to none of them. */
    private Map<Kind, Unit> agreed() {
        Map<Kind, Unit> agreed = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            Unit one = null;
            boolean same = true;
            for (Map.Entry<String, Map<Kind, Unit>> holding : told.entrySet()) {
                Unit unit =
                        holding.getValue().getOrDefault(kind, told.get(NOBODY).get(kind));
                same &= one == null || unit == null || one.isSameScale(unit);
                one = one == null ? unit : one;
            }
            if (same && one != null) {
                agreed.put(kind, one);
            }
        }
        return agreed;
    }

    /** What a holding measures in, by its name; for no name, what all holdings have in common. */
    OwnMeasures of(String holding) {
        String key = NameKey.key(holding);
        return key.equals(NOBODY) ? common : measures.getOrDefault(key, common);
    }

    /**
     * A sentence of ours, such as a caution, with the lengths, speeds and masses it states in the units of a holding and
     * in ours behind; for no name, in those that all holdings have in common. Of what no list tells, a workbook whose
     * gallons and tons are those of the United States is read there by feet, miles and short tons.
     */
    public String said(String sentence, String holding) {
        if (none()) {
            return sentence;
        }
        Map<Kind, Unit> units = new EnumMap<>(usual);
        units.putAll(of(holding).units());
        return FiguresInOwnUnits.in(sentence, new OwnMeasures(units));
    }

    /** Whether nobody measures in other units than ours. */
    boolean none() {
        return measures.isEmpty();
    }

    /** The unit in which the client wants a number of a table; empty if he measures as we do. */
    public Optional<OwnUnit> of(ResultTable table, Symbol symbol, int row) {
        if (symbol.type() != Symbol.Type.NUMBER) {
            return Optional.empty();
        }
        if (symbol.unit().isSameScale(Units.PRODUCT_UNIT)) {
            return ofProduct(table, symbol, row);
        }
        // Other volumes are of water, effluent or earth, which nobody measures as he does a clamp.
        boolean otherVolume = symbol.unit().isSameScale(Units.M3) && !symbol.equals(ClampShape.VOLUME);
        if (none() || otherVolume) {
            return Optional.empty();
        }
        return of(table, row).of(symbol.unit()).map(unit -> OwnUnit.of(symbol, unit));
    }

    private OwnMeasures of(ResultTable table, int row) {
        boolean named = table.links(Quantities.HOLDING) != null;
        return of(named ? table.name(Quantities.HOLDING, row) : NOBODY);
    }

    /**
     * An amount of product is wanted in the unit that its dose was asked in: pints per acre give pints. Of one per cent
     * that is the unit of the spray: who fills by the gallon measures out gallons.
     */
    private Optional<OwnUnit> ofProduct(ResultTable table, Symbol symbol, int row) {
        Optional<Unit> content = typedIn(table, Quantities.SUBSTANCE_DOSE, row)
                .filter(unit -> Substance.of(unit).isPresent());
        if (content.isPresent()) {
            return ofContent(table, symbol, row, content.get());
        }
        Optional<Unit> dose = typedIn(table, Quantities.DOSE, row)
                .or(() -> typedIn(table, ContentDose.TYPED, row))
                .or(() -> typedIn(table, Quantities.SPREAD_DOSE, row))
                .or(() -> typedIn(table, ContentDose.TYPED_SPREAD, row))
                .or(() -> typedIn(table, Quantities.CONCENTRATION, row));
        if (dose.isEmpty()) {
            return ofPacks(table, symbol, row);
        }
        boolean onAnArea = dose.get().isCompatible(Units.DOSE);
        for (Asked asked : onAnArea ? ON_AN_AREA : IN_SPRAY) {
            // Of a share of the spray its words decide: 1 in 100 may be a per cent as well as a gallon in 100 gallons.
            boolean by = onAnArea
                    ? dose.get().isSameScale(asked.dose())
                    : dose.get().symbol().equals(asked.dose().symbol());
            if (by && table.unit(symbol, row).equals(asked.own().symbol())) {
                return Optional.of(OwnUnit.of(symbol, asked.amount()));
            }
        }
        boolean share = !onAnArea && dose.get().symbol().equals(Units.PERCENT.symbol());
        return none() || !share || !table.unit(symbol, row).equals(Units.L.symbol())
                ? Optional.empty()
                : of(table, row).of(Units.L).map(unit -> OwnUnit.of(symbol, amount(unit, Units.L)));
    }

    /**
     * Of what is asked by its content, 75 lb of nitrogen an acre, the product is wanted in pounds if it goes by weight; a
     * liquid has no dose of its own then, and is wanted as the holding measures liquids.
     */
    private Optional<OwnUnit> ofContent(ResultTable table, Symbol symbol, int row, Unit content) {
        if (table.unit(symbol, row).equals(Units.L.symbol())) {
            return none()
                    ? Optional.empty()
                    : of(table, row).of(Units.L).map(unit -> OwnUnit.of(symbol, amount(unit, Units.L)));
        }
        return content.symbol().startsWith(Units.LB.symbol())
                        && table.unit(symbol, row).equals(Units.KG.symbol())
                ? Optional.of(OwnUnit.of(symbol, amount(Units.LB, Units.KG)))
                : Optional.empty();
    }

    /** Where jobs of several doses are one order, it is wanted in the unit that its packs, or else its stock, are in. */
    private static Optional<OwnUnit> ofPacks(ResultTable table, Symbol symbol, int row) {
        Optional<Unit> pack = typedIn(table, Quantities.PACK_SIZE, row).or(() -> typedIn(table, Quantities.STOCK, row));
        return ON_AN_AREA.stream()
                .filter(asked ->
                        pack.filter(unit -> unit.isSameScale(asked.amount())).isPresent()
                                && table.unit(symbol, row).equals(asked.own().symbol()))
                .findFirst()
                .map(Asked::amount)
                .or(() -> ofSpreading(table, symbol, row))
                .map(amount -> OwnUnit.of(symbol, amount));
    }

    /** Slurry and muck have neither packs nor stock: the unit of the doses, if those of all jobs are in the same. */
    private static Optional<Unit> ofSpreading(ResultTable table, Symbol symbol, int row) {
        ResultTable spreads = table.other(Spreading.TABLE);
        if (spreads == null || table.spec().column(Keys.PRODUCT_KEY).isEmpty()) {
            return Optional.empty();
        }
        Set<Unit> amounts = new HashSet<>();
        double product = table.of(Keys.PRODUCT_KEY).number(row);
        for (int spread = 0; spread < spreads.rows(); spread++) {
            if (spreads.of(Keys.PRODUCT_KEY).number(spread) == product) {
                Optional<Unit> dose = typedIn(spreads, Quantities.SPREAD_DOSE, spread);
                amounts.add(ON_AN_AREA.stream()
                        .filter(asked -> dose.filter(unit -> unit.isSameScale(asked.dose()))
                                        .isPresent()
                                && table.unit(symbol, row).equals(asked.own().symbol()))
                        .findFirst()
                        .map(Asked::amount)
                        .orElse(null));
            }
        }
        return amounts.size() == 1 ? Optional.ofNullable(amounts.iterator().next()) : Optional.empty();
    }

    private static Unit amount(Unit unit, Unit own) {
        return Unit.of(unit.symbol(), Units.PRODUCT_UNIT.dimension(), unit.ratioTo(own));
    }

    private static Optional<Unit> typedIn(ResultTable table, Symbol symbol, int row) {
        return Optional.ofNullable(table.links(symbol)).flatMap(links -> links.unit(row));
    }

    private static List<Asked> asked(List<Unit> bases) {
        List<Asked> asked = new ArrayList<>();
        for (Unit unit : List.of(
                Units.GAL_UK,
                Units.GAL_US,
                Units.QT_UK,
                Units.QT_US,
                Units.PT_UK,
                Units.PT_US,
                Units.FL_OZ_UK,
                Units.FL_OZ_US,
                Units.LB,
                Units.OZ,
                Units.CWT,
                Units.CWT_US,
                Units.SHORT_TON,
                Units.LONG_TON,
                // Slurry and muck are ordered, carted and talked of by these, though products are reckoned in L and kg.
                Units.M3,
                Units.T)) {
            Unit own = unit.isCompatible(Units.L) ? Units.L : Units.KG;
            Unit amount = amount(unit, own);
            bases.forEach(basis -> asked.add(new Asked(amount.over(basis), amount, own)));
        }
        return List.copyOf(asked);
    }

    private static Unit hundred(Unit unit) {
        return Unit.of("100 " + unit.symbol(), unit.dimension(), unit.factor().times(Ratio.of(100)));
    }
}
