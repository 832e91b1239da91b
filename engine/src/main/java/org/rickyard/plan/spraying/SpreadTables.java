package org.rickyard.plan.spraying;

import java.util.List;
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
import org.rickyard.trade.spraying.Spreading;

/** The table of what is spread or drilled. */
final class SpreadTables {
    private SpreadTables() {}

    private static final List<CautionRule> RULES = SprayRules.againstHighest(Quantities.SPREAD_DOSE);

    /** One row per job, field and product. */
    static final TableSpec PRODUCTS = new TableSpec(
            Spreading.TABLE,
            "Spread products",
            "Spread products: what is spread or drilled on each field",
            "one row per job, field and product",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.FIELD,
                            SprayColumns.PRODUCT_OF_JOB,
                            Names.MACHINE,
                            SprayColumns.UNIT_OF_PRODUCT,
                            new TableColumn.Key(Keys.PRODUCT_KEY),
                            SprayColumns.AREA,
                            SprayColumns.dose(Quantities.SPREAD_DOSE),
                            Names.optional(
                                    Quantities.HIGHEST_DOSE, Candidate.typed(Role.PRODUCT, Products.HIGHEST_DOSE)),
                            SprayColumns.result(Spreading.PRODUCT_SPREAD)),
                    RULES),
            List.of(),
            Cautions.SPREADING,
            RULES);
}
