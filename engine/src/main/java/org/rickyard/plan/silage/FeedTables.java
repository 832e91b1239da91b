package org.rickyard.plan.silage;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Herds;
import org.rickyard.lists.Stocks;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.Bales;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.FeedBalance;
import org.rickyard.trade.silage.FeedDemand;
import org.rickyard.trade.silage.FeedOut;
import org.rickyard.trade.silage.FeedStock;
import org.rickyard.trade.silage.Losses;
import org.rickyard.trade.silage.SilageCautions;

/** The tables of feeding: stores, groups of stock, the farm's balance, and each clamp's face. */
final class FeedTables {
    private FeedTables() {}

    private static final String STOCKS_ID = "feed-stocks";
    private static final String DEMAND_ID = "feed-demand";

    private static final List<CautionRule> STOCK_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.compare(value(Keys.CLAMP_KEY), Relation.MORE, number(0)),
                            Condition.compare(value(FeedBalance.FEED_CROPS), Relation.MORE, number(0)))),
                    "crop is allotted to this clamp too: see that the same silage is not counted twice."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(value(FeedStock.STORED), value(ClampContents.CAPACITY)),
                    "more is in store than this clamp holds: check the amount, the clamp's measures and its density."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.call(
                                    Function.ABS,
                                    value(Quantities.COUNT)
                                            .times(Quantities.WEIGHT_EACH)
                                            .minus(Quantities.AMOUNT)),
                            Relation.MORE,
                            Expr.constant(FeedStock.COUNT_TOLERANCE).times(Quantities.AMOUNT)),
                    "count × weight each is not the amount typed (more than the tolerance on Basis), and the amount is"
                            + " reckoned: one of the three is wrong, or is of another day."));

    /** One row per store. */
    static final TableSpec STOCKS = new TableSpec(
            STOCKS_ID,
            "Feed stocks",
            "Feed stocks: in hand, fresh and dry",
            "one row per store",
            Sentences.appended(
                    List.of(
                            Names.name(Quantities.HOLDING, Candidate.typed(Role.STOCK, Stocks.HOLDING)),
                            Names.name(Quantities.STORE, Candidate.typed(Role.STOCK, Stocks.STORE)),
                            new TableColumn.Word(
                                    Quantities.STORE_KIND, List.of(Candidate.typed(Role.STOCK, Stocks.KIND))),
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            new TableColumn.Key(Keys.FEED_HOLDING_KEY),
                            Names.optional(Quantities.AMOUNT, Candidate.typed(Role.STOCK, Stocks.AMOUNT)),
                            Names.dispensable(Quantities.AMOUNT_DRY, Candidate.typed(Role.STOCK, Stocks.AMOUNT)),
                            Names.link(Quantities.COUNT, Candidate.typed(Role.STOCK, Stocks.COUNT)),
                            Names.link(Quantities.WEIGHT_EACH, Candidate.typed(Role.STOCK, Stocks.WEIGHT_EACH)),
                            Names.dispensable(
                                    Quantities.WEIGHT_EACH_DRY, Candidate.typed(Role.STOCK, Stocks.WEIGHT_EACH)),
                            Names.link(Quantities.STORE_DM, Candidate.typed(Role.STOCK, Stocks.DM)),
                            Names.optional(Quantities.ALREADY_FED, Candidate.typed(Role.STOCK, Stocks.ALREADY_FED)),
                            new TableColumn.Joined(
                                    FeedBalance.FEED_CROPS,
                                    new Expr.Count("crop", Losses.FED, Keys.CLAMP_KEY, Keys.CLAMP_KEY, false)),
                            new TableColumn.Calculated(FeedStock.STORE, false),
                            new TableColumn.Calculated(FeedStock.STOCK_IN_HAND, true),
                            new TableColumn.Calculated(FeedStock.STOCK_DM, true),
                            // Only a store that is a clamp of the list has a row there.
                            new TableColumn.Joined(
                                    Keys.CLAMP_POSITION, new Expr.Position("clamps", Keys.CLAMP_KEY, Keys.CLAMP_KEY)),
                            ClampJoin.from(ClampContents.CAPACITY)),
                    STOCK_RULES),
            List.of(
                    new TableSpec.TotalName(FeedStock.IN_HAND, "Rickyard_stock_in_hand"),
                    new TableSpec.TotalName(FeedStock.IN_HAND_DM, "Rickyard_stock_dry_matter")),
            SilageCautions.FEEDING,
            STOCK_RULES);

    /** One row per group of stock. */
    static final TableSpec DEMAND = new TableSpec(
            DEMAND_ID,
            "Feed demand",
            "Feed demand: what each group eats in its period",
            "one row per group and period",
            Sentences.appended(
                    List.of(
                            Names.name(Quantities.HOLDING, Candidate.typed(Role.HERD, Herds.HOLDING)),
                            Names.name(Quantities.GROUP, Candidate.typed(Role.HERD, Herds.GROUP)),
                            Names.name(Quantities.CLAMP, Candidate.typed(Role.HERD, Herds.CLAMP)),
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            new TableColumn.Key(Keys.FEED_HOLDING_KEY),
                            Names.link(Quantities.HEAD, Candidate.typed(Role.HERD, Herds.HEAD)),
                            Names.optional(Quantities.INTAKE, Candidate.typed(Role.HERD, Herds.INTAKE)),
                            Names.link(Quantities.INTAKE_FRESH, Candidate.typed(Role.HERD, Herds.INTAKE)),
                            Names.link(Quantities.INTAKE_DM, Candidate.typed(Role.HERD, Herds.DM)),
                            Names.optional(Quantities.DAYS, Candidate.typed(Role.HERD, Herds.DAYS)),
                            Names.link(Quantities.FEED_START, Candidate.typed(Role.HERD, Herds.START)),
                            Names.link(Quantities.FEED_END, Candidate.typed(Role.HERD, Herds.END)),
                            new TableColumn.Calculated(FeedDemand.DAYS_OF_GROUP, false),
                            new TableColumn.Calculated(FeedDemand.HEAD_INTAKE, false),
                            new TableColumn.Calculated(FeedDemand.DAILY_DEMAND, true),
                            new TableColumn.Calculated(FeedDemand.FEED_DEMAND, true),
                            TableColumn.Calculated.aside(FeedDemand.FEED_DEMAND_FRESH)),
                    List.of()),
            List.of(new TableSpec.TotalName(FeedDemand.GROUP_DEMAND, "Rickyard_feed_demand")),
            SilageCautions.FEEDING,
            List.of());

    private static final List<CautionRule> BALANCE_RULES = List.of(new CautionRule(
            Severity.CAUTION,
            Condition.below(value(FeedBalance.SURPLUS), new Expr.AsUnit(number(0), Units.T_DM)),
            "feed is short: buy early, feed fewer, or feed less of it with advice."));

    /** One row per holding that feeds stock. */
    static final TableSpec BALANCE = new TableSpec(
            "feed-balance",
            "Feed balance",
            "Feed balance: what is there, how long it lasts, what is over or short",
            "one row per holding with stock",
            Sentences.appended(
                    with(
                            List.of(
                                    Names.name(Quantities.HOLDING, Candidate.typed(Role.HERD, Herds.HOLDING)),
                                    new TableColumn.Key(Keys.FEED_HOLDING_KEY)),
                            supply(Keys.FEED_HOLDING_KEY),
                            List.of(
                                    new TableColumn.Calculated(FeedBalance.FEED_AVAILABLE, true),
                                    new TableColumn.Calculated(FeedBalance.DAYS_FEED_LASTS, true),
                                    new TableColumn.Calculated(FeedBalance.SURPLUS_OR_SHORTFALL, true),
                                    new TableColumn.Calculated(FeedBalance.ANIMALS_FED, true),
                                    new TableColumn.Calculated(Bales.BALES_OF_SURPLUS, true),
                                    new TableColumn.Calculated(Bales.SURPLUS_SPACE, true))),
                    BALANCE_RULES),
            List.of(new TableSpec.TotalName(FeedBalance.SURPLUS, "Rickyard_feed_surplus")),
            SilageCautions.FEEDING,
            BALANCE_RULES);

    private static final List<CautionRule> FACE_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.below(value(FeedOut.ADVANCE), value(FeedOut.TARGET)),
                    "the face moves slower than wanted for the season: it will heat. A narrower or lower face helps."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.below(value(FeedOut.ADVANCE), constant(FeedOut.SLOWEST)),
                    "the face moves less than 10 cm (4 in) a day, the least printed where it is warm; 3 in (7.6 cm) where it is"
                            + " cool."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(value(Quantities.FLOOR_WIDTH), Relation.LESS, constant(FeedOut.LEAST_WIDTH)),
                    "narrower than 8 m: no room to unload and roll side by side."),
            BALANCE_RULES.get(0));

    /** One row per clamp that a group is fed from. */
    static final TableSpec FACE = new TableSpec(
            "clamp-feeding",
            "Clamp feeding",
            "Clamp feeding: days each lasts, how fast its face moves, what would suit",
            "one row per clamp that a group is fed from",
            Sentences.appended(
                    with(
                            ClampJoin.columns(
                                    new TableColumn.Word(
                                            Quantities.FEEDING_SEASON,
                                            List.of(Candidate.typed(Role.CLAMP, Clamps.FEEDING_SEASON))),
                                    ClampJoin.optional(Quantities.FEED_OUT_RATE, Clamps.FEED_OUT_RATE),
                                    ClampJoin.link(Quantities.FLOOR_WIDTH, Clamps.FLOOR_WIDTH)),
                            supply(Keys.CLAMP_KEY),
                            List.of(
                                    ClampJoin.from(ClampSides.HEIGHT),
                                    ClampJoin.from(ClampShape.HEAP_HEIGHT),
                                    ClampJoin.from(ClampSides.BATTER_USED),
                                    ClampJoin.from(ClampShape.CROWN_SECTION),
                                    ClampJoin.from(ClampContents.DENSITY_DM),
                                    new TableColumn.Calculated(FeedBalance.FEED_AVAILABLE, true),
                                    new TableColumn.Calculated(FeedBalance.DAYS_FEED_LASTS, true),
                                    new TableColumn.Calculated(FeedBalance.SURPLUS_OR_SHORTFALL, true),
                                    new TableColumn.Calculated(FeedBalance.ANIMALS_FED, true),
                                    new TableColumn.Calculated(FeedOut.SILAGE_PER_DAY, true),
                                    new TableColumn.Calculated(FeedOut.FACE_AREA, true),
                                    new TableColumn.Calculated(FeedOut.FEED_OUT_REACHED, true),
                                    new TableColumn.Calculated(FeedOut.FEED_OUT_TARGET, true),
                                    new TableColumn.Calculated(FeedOut.FACE_AREA_WANTED, true),
                                    new TableColumn.Calculated(FeedOut.CLAMP_WIDTH_WANTED, true),
                                    new TableColumn.Calculated(FeedOut.CLAMP_WIDTH_TO_BUILD, true),
                                    new TableColumn.Calculated(FeedOut.CLAMP_LENGTH_WANTED, true))),
                    FACE_RULES),
            List.of(),
            SilageCautions.FEEDING,
            FACE_RULES);

    /** One row per clamp that crop is allotted to. */
    static final TableSpec BALES = new TableSpec(
            "bales",
            "Bales",
            "Bales: if the crop of each clamp were baled",
            "one row per clamp that crop is allotted to",
            Sentences.appended(
                    ClampJoin.columns(
                            ClampJoin.from(ClampContents.CROP_IN_DM),
                            ClampJoin.from(ClampContents.CLAMP_DM),
                            new TableColumn.Calculated(Bales.BALE_COUNT, true),
                            new TableColumn.Calculated(Bales.BALE_SPACE, true),
                            new TableColumn.Calculated(Bales.BALE_WEIGHT, true)),
                    List.of()),
            List.of(new TableSpec.TotalName(Bales.BALES, "Rickyard_bales")),
            SilageCautions.BALES,
            List.of());

    /** Demand, crop and stock of a holding or clamp, by its key. */
    private static List<TableColumn> supply(Symbol key) {
        return List.of(
                total(FeedBalance.HEAD_TOTAL, DEMAND_ID, Quantities.HEAD, key),
                total(FeedBalance.DAILY_TOTAL, DEMAND_ID, FeedDemand.GROUP_DAILY, key),
                total(FeedBalance.DEMAND_TOTAL, DEMAND_ID, FeedDemand.GROUP_DEMAND, key),
                count(FeedBalance.FEED_CROPS, "crop", Losses.FED, key, false),
                count(FeedBalance.FEED_CROPS_LACKING, "crop", Losses.FED, key, true),
                total(FeedBalance.FEED_CROP_TOTAL, "crop", Losses.FED, key),
                count(FeedBalance.FEED_STORES, STOCKS_ID, FeedStock.IN_HAND_DM, key, false),
                count(FeedBalance.FEED_STORES_LACKING, STOCKS_ID, FeedStock.IN_HAND_DM, key, true),
                total(FeedBalance.FEED_STORE_TOTAL, STOCKS_ID, FeedStock.IN_HAND_DM, key),
                TableColumn.Calculated.aside(FeedBalance.CROP_TO_FEED),
                TableColumn.Calculated.aside(FeedBalance.STOCK_TO_FEED));
    }

    private static TableColumn total(Symbol symbol, String table, Symbol summed, Symbol key) {
        return new TableColumn.Joined(symbol, new Expr.Total(table, summed, key, key, true));
    }

    private static TableColumn count(Symbol symbol, String table, Symbol counted, Symbol key, boolean missing) {
        return new TableColumn.Joined(symbol, new Expr.Count(table, counted, key, key, missing));
    }

    private static List<TableColumn> with(List<TableColumn> first, List<TableColumn> second, List<TableColumn> third) {
        List<TableColumn> all = new ArrayList<>(first);
        all.addAll(second);
        all.addAll(third);
        return all;
    }
}
