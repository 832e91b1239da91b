package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.fromBlock;
import static org.rickyard.plan.spraying.SprayColumns.fromMix;
import static org.rickyard.plan.spraying.SprayColumns.result;
import static org.rickyard.plan.spraying.SprayColumns.step;
import static org.rickyard.plan.spraying.SprayColumns.typedOrNot;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.ProductOrder;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.spraying.TankLoads;
import org.rickyard.trade.spraying.TankPlan;

/** The tables of spraying that go with the tank: what goes in, how it is emptied, what to buy. */
final class SprayTankTables {
    private SprayTankTables() {}

    /** One row per tankful and product, in mixing order. */
    static final TableSpec FILLS = new TableSpec(
            "tank-fills",
            "Tank fills",
            "Tank fills: what goes into each tankful, in mixing order (the labels decide the order)",
            "one row per block, tankful and product",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            SprayColumns.PRODUCT_OF_JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            new TableColumn.Word(TankLoads.TANKFUL_NAME, List.of(), true),
                            new TableColumn.Key(Keys.LOAD_KEY),
                            new TableColumn.Key(Keys.TANK_MIX_KEY),
                            new TableColumn.Key(TankLoads.TANKFUL),
                            Names.optional(Quantities.ORDER_IN_TANK, Candidate.typed(Role.MIX, Mixes.ORDER_IN_TANK)),
                            SprayColumns.blockPosition(),
                            SprayColumns.mixPosition(),
                            fromBlock(Quantities.WATER_VOLUME),
                            new TableColumn.Joined(TankLoads.LOAD, TankLoads.TANKFUL_LITRES),
                            fromMix(TankPlan.DOSE_USED),
                            result(TankLoads.PRODUCT_IN_TANKFUL),
                            step(TankLoads.WHOLE_UNITS),
                            step(TankLoads.REST_UNITS)),
                    List.of()),
            List.of(),
            Cautions.TANK,
            List.of());

    private static final List<CautionRule> WASHING_RULES = List.of(
            SprayRules.caution(
                    SprayRules.less(Quantities.RINSE_TANK, TankLoads.RINSE_WATER),
                    "the rinse tank holds less than the rule asks for (ISO 16119-3; of a mounted tank up to 400 L it asks none)."),
            SprayRules.caution(
                    SprayRules.more(TankLoads.LEFT_AFTER_RINSING, Expr.constant(TankLoads.CLEAN_ENOUGH)),
                    "three rinses leave more of the mix than the standard's share: rinse again, as the label says."));

    /** One row per block whose sprayer has a residual volume, a rinse tank or priming. */
    static final TableSpec WASHING = new TableSpec(
            "spray-washing",
            "Spray washing",
            "Spray washing: priming, running out and rinsing, each on its own",
            "one row per block",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            SprayColumns.blockPosition(),
                            fromBlock(TankPlan.SPRAY_TOTAL),
                            fromBlock(Quantities.WATER_VOLUME),
                            new TableColumn.Joined(TankPlan.BLOCK_AREA, SprayWork.BLOCK),
                            fromBlock(TankPlan.TREATED_AREA),
                            SprayColumns.WORKING_WIDTH,
                            SprayColumns.TANK,
                            typedOrNot(Quantities.PRIMING, Machines.PRIMING),
                            Names.link(Quantities.RESIDUAL, Candidate.typed(Role.MACHINE, Machines.RESIDUAL)),
                            typedOrNot(Quantities.RINSE_TANK, Machines.RINSE_TANK),
                            TableColumn.Calculated.aside(TankLoads.MIX_WITH_PRIMING),
                            result(TankLoads.RESIDUE_RUN_OUT),
                            result(TankLoads.RINSE),
                            TableColumn.Calculated.aside(TankLoads.AFTER_RINSING)),
                    WASHING_RULES),
            List.of(),
            Cautions.SPRAYING,
            WASHING_RULES);

    private static final CautionRule SPRAYED_LEFT_OUT = leftOut(ProductOrder.LEFT_OUT, "Tank mix");
    private static final CautionRule SPREAD_LEFT_OUT = leftOut(ProductOrder.SPREAD_LEFT_OUT, "Spread products");

    private static final CautionRule LISTED_OTHERWISE = SprayRules.caution(
            new Condition.Given(ProductOrder.LISTED_IN),
            "the product list has this product in another unit (see listed in), so its stock, packs and price there are"
                    + " not counted: what is to buy is all of the need. Make the dose and the list agree.");

    private static final CautionRule LOOSE = SprayRules.caution(
            Condition.all(List.of(
                    new Condition.Blank(Quantities.PACK_SIZE),
                    new Condition.Given(Quantities.PRICE),
                    new Condition.Blank(Quantities.PACK_PRICE),
                    SprayRules.more(ProductOrder.TO_BUY, new Expr.AsUnit(Expr.number(0), Units.PRODUCT_UNIT)))),
            "no pack size is typed, so the cost is that of the amount to buy, as where a product comes loose: in whole"
                    + " packs it may be more.");

    private static CautionRule leftOut(Symbol rows, String sheet) {
        return SprayRules.caution(
                SprayRules.more(rows, Expr.number(0)),
                "some jobs of this product have no amount and are not in the need; see " + sheet + ".");
    }

    /**
     * One row per product over all jobs and holdings.
     *
     * @param sprayed whether anything is sprayed
     * @param spread whether anything is spread or drilled
     * @param listedOtherwise whether any product is dosed in another unit than it is listed in
     */
    static TableSpec order(boolean sprayed, boolean spread, boolean listedOtherwise) {
        TableColumn.Calculated need = new TableColumn.Calculated(ProductOrder.PRODUCT_NEED, true);
        TableColumn sprayedLeftOut = new TableColumn.Joined(ProductOrder.LEFT_OUT, ProductOrder.NEED_LEFT_OUT);
        TableColumn spreadLeftOut =
                new TableColumn.Joined(ProductOrder.SPREAD_LEFT_OUT, ProductOrder.SPREAD_NEED_LEFT_OUT);
        List<TableColumn> needs;
        List<CautionRule> rules = new ArrayList<>();
        if (sprayed && spread) {
            needs = List.of(
                    new TableColumn.Joined(ProductOrder.SPRAYED, ProductOrder.ALL_SPRAYED),
                    sprayedLeftOut,
                    new TableColumn.Joined(ProductOrder.SPREAD_NEED, ProductOrder.ALL_SPREAD),
                    spreadLeftOut,
                    need);
            rules.addAll(List.of(SPRAYED_LEFT_OUT, SPREAD_LEFT_OUT));
        } else if (spread) {
            needs = List.of(need.by(ProductOrder.ALL_SPREAD), spreadLeftOut);
            rules.add(SPREAD_LEFT_OUT);
        } else {
            needs = List.of(need.by(ProductOrder.ALL_SPRAYED), sprayedLeftOut);
            rules.add(SPRAYED_LEFT_OUT);
        }
        List<TableColumn> columns = new ArrayList<>(List.of(
                Names.name(
                        Quantities.PRODUCT,
                        Candidate.typed(Role.PRODUCT, Products.PRODUCT),
                        Candidate.typed(Role.DOSED_JOB, Jobs.PRODUCT),
                        Candidate.typed(Role.MIX, Mixes.PRODUCT)),
                new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                new TableColumn.Key(Keys.PRODUCT_KEY),
                Names.optional(Quantities.STOCK, Candidate.typed(Role.PRODUCT, Products.STOCK)),
                Names.dispensable(Quantities.PACK_SIZE, Candidate.typed(Role.PRODUCT, Products.PACK_SIZE)),
                Names.optional(Quantities.PACK_PRICE, Candidate.typed(Role.PRODUCT, Products.PRICE)),
                Names.optional(Quantities.PRICE, Candidate.typed(Role.PRODUCT, Products.PRICE))));
        columns.addAll(needs);
        columns.addAll(List.of(
                result(ProductOrder.PRODUCT_TO_BUY),
                result(ProductOrder.PACKS_TO_BUY),
                result(ProductOrder.PRODUCT_LEFT_OVER),
                TableColumn.Calculated.aside(ProductOrder.PRODUCT_COST)));
        rules.add(LOOSE);
        if (listedOtherwise) {
            columns.add(new TableColumn.Word(ProductOrder.LISTED_IN, List.of()));
            rules.add(LISTED_OTHERWISE);
        }
        return new TableSpec(
                "product-order",
                "Order list",
                "Order list: what to buy of each product over all jobs and holdings",
                "one row per product",
                Sentences.appended(columns, rules),
                List.of(new TableSpec.TotalName(ProductOrder.COST, "Rickyard_product_cost")),
                List.of(
                        "Buy only what the season needs and the store may hold. Whether a product is still permitted, and"
                                + " in date, is not known here: check the label and the regulator's register."),
                rules);
    }
}
