package org.rickyard.plan.spraying;

import java.util.List;
import java.util.stream.Stream;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.Nitrogen;
import org.rickyard.trade.spraying.Spreading;
import org.rickyard.trade.spraying.TankPlan;

/** The table of what is spread or drilled. */
final class SpreadTables {
    private SpreadTables() {}

    private static final List<CautionRule> RULES = Stream.concat(
                    SprayRules.againstHighest(Quantities.SPREAD_DOSE).stream(),
                    Stream.of(
                            SprayRules.caution(
                                    Spreading.LOADS_UNTOLD,
                                    "no loads are counted: the product goes by weight and the machine's hopper by litres,"
                                            + " or the other way about. Type Density of the product (kg/L, as it lies in"
                                            + " the hopper), or what the machine holds in the product's own measure"
                                            + " (Payload, Tank)."),
                            SprayRules.caution(
                                    Condition.all(List.of(
                                            Condition.any(List.of(
                                                    Condition.is(Quantities.MACHINE_TYPE, "fertiliser spreader"),
                                                    Condition.is(Quantities.MACHINE_TYPE, "drill"))),
                                            SprayRules.more(Quantities.SPREAD_DOSE, Expr.constant(Spreading.HIGH)))),
                                    "the dose is high for fertiliser or seed: lime, or an amount or unit mistyped?"),
                            SprayRules.NITROGEN_UNTOLD))
            .toList();

    private static final List<TableColumn> COLUMNS = List.of(
            Names.FIELD_HOLDING,
            Names.JOB,
            Names.FIELD,
            SprayColumns.PRODUCT_OF_JOB,
            Names.MACHINE,
            Names.MACHINE_TYPE,
            SprayColumns.UNIT_OF_PRODUCT,
            new TableColumn.Key(Keys.PRODUCT_KEY),
            SprayColumns.AREA,
            SprayColumns.dose(Quantities.SPREAD_DOSE),
            Names.optional(Quantities.HIGHEST_DOSE, Candidate.typed(Role.PRODUCT, Products.HIGHEST_DOSE)),
            SprayColumns.result(Spreading.PRODUCT_SPREAD),
            SprayColumns.typedOrNot(Quantities.PAYLOAD, Machines.PAYLOAD),
            // What a tanker or hopper holds may be told as its body volume, in m3.
            Names.optional(
                    Quantities.TANK_VOLUME,
                    Candidate.typed(Role.MACHINE, Machines.TANK),
                    Candidate.typed(Role.MACHINE, Machines.BODY_VOLUME)),
            SprayColumns.USABLE_TANK,
            SprayColumns.step(TankPlan.TANK),
            Names.optional(Quantities.PRODUCT_DENSITY, Candidate.typed(Role.PRODUCT, Products.DENSITY)),
            TableColumn.Calculated.aside(Spreading.PRODUCT_IN_LOAD),
            TableColumn.Calculated.aside(Spreading.LOADS_SPREAD),
            SprayColumns.NITROGEN_SHARE,
            TableColumn.Calculated.aside(Nitrogen.NITROGEN_SPREAD));

    private static final List<TableColumn> ROUNDS = List.of(
            Names.dispensable(Quantities.ROUND_TIME, Candidate.typed(Role.MACHINE, Machines.ROUND_TIME)),
            TableColumn.Calculated.aside(Spreading.HOURS_OF_LOADS));

    private static final TableSpec PRODUCTS = products(COLUMNS);
    private static final TableSpec PRODUCTS_IN_ROUNDS =
            products(Stream.concat(COLUMNS.stream(), ROUNDS.stream()).toList());

    /**
     * One row per job, field and product.
     *
     * @param rounds whether the round of any of the machines is timed; buckrakes have theirs under the same header
     */
    static TableSpec products(boolean rounds) {
        return rounds ? PRODUCTS_IN_ROUNDS : PRODUCTS;
    }

    private static TableSpec products(List<TableColumn> columns) {
        return new TableSpec(
                Spreading.TABLE,
                "Spread products",
                "Spread products: what is spread or drilled on each field",
                "one row per job, field and product",
                Sentences.appended(columns, RULES),
                List.of(),
                Cautions.SPREADING,
                RULES);
    }
}
