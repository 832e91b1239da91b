package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.AREA;
import static org.rickyard.trade.Quantities.SPREAD_DOSE;

import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;

/** What is spread or drilled: fertiliser, muck, slurry, seed. */
public final class Spreading {
    private Spreading() {}

    /** Id of the table of products that are spread or drilled. */
    public static final String TABLE = "spread-products";

    /** Product for one field. */
    public static final Symbol SPREAD = Symbol.number("product spread", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(2);

    /** More than this is unusual of what spreaders and drills are filled with from bags. */
    public static final Constant HIGH = new Constant(
            "spreading dose unusually high, above",
            600,
            Units.DOSE,
            Source.memory("judgement: a dressing of fertiliser or a seed rate is seldom more; lime is"));

    /** {@code product-spread}: area × dose. */
    public static final Formula PRODUCT_SPREAD = new Formula(
            "product-spread",
            SPREAD,
            value(AREA).times(SPREAD_DOSE),
            Source.published("IRRI Rice Knowledge Bank, Product required: rate × area"),
            "the whole net area gets the dose; what the machine leaves in the hopper comes on top",
            List.of(WorkedExample.from(Source.derived("200 lb an acre on 20 acres are 4,000 lb"))
                    .with(AREA, 20, Units.AC)
                    .with(SPREAD_DOSE, 200, Units.PRODUCT_UNIT.over(Units.AC))
                    .gives(4000, Units.PRODUCT_UNIT, 6)));
}
