package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.greatest;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.PACK_PRICE;
import static org.rickyard.trade.Quantities.PACK_SIZE;
import static org.rickyard.trade.Quantities.PRICE;
import static org.rickyard.trade.Quantities.STOCK;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/** What to buy of each product over all jobs and holdings; packs are rounded up once, on the whole. */
public final class ProductOrder {
    private ProductOrder() {}

    /** Id of the table of products in the tank. */
    public static final String TANK_MIX = "tank-mix";

    /** Needed over all jobs that spray it. */
    public static final Symbol SPRAYED = amount("need for spraying");
    /** Needed over all jobs that spread or drill it. */
    public static final Symbol SPREAD_NEED = amount("need for spreading and drilling");
    /** Needed over all jobs. */
    public static final Symbol NEED = amount("need");
    /** Rows of the tank mix whose product is withheld. */
    public static final Symbol LEFT_OUT =
            Symbol.number("rows left out", Units.ONE).decimals(0);
    /** Rows of the spread products whose amount is withheld. */
    public static final Symbol SPREAD_LEFT_OUT =
            Symbol.number("rows of spread products left out", Units.ONE).decimals(0);
    /** To be bought. */
    public static final Symbol TO_BUY = amount("to buy");
    /** The unit that the product list has a product in, where it is dosed in another: its stock and packs are not counted. */
    public static final Symbol LISTED_IN = Symbol.text("listed in");

    /** Whole packs to be bought. */
    public static final Symbol PACKS = Symbol.number("packs to buy", Units.ONE)
            .possible(Range.NOT_NEGATIVE)
            .decimals(0);
    /** Left in the store when all is sprayed. */
    public static final Symbol LEFT_OVER = amount("left over");
    /** Price of those packs. */
    public static final Symbol COST =
            Symbol.number("cost", Units.MONEY_UNIT).possible(Range.NOT_NEGATIVE).decimals(2);

    private static final Source ORDER =
            Source.derived("stock taken off the total of all jobs, then rounded up to packs, once");
    private static final Source SUM =
            Source.derived("21.625 L needed, none in stock, packs of 5 L: 5 packs, 3.375 over");

    /** All that is sprayed of a product; rows left out are counted beside it. */
    public static final Expr ALL_SPRAYED = total(TANK_MIX, TankPlan.PRODUCT_FOR_BLOCK);
    /** All that is spread or drilled of it; rows left out are counted beside it. */
    public static final Expr ALL_SPREAD = total(Spreading.TABLE, Spreading.SPREAD);

    /** {@code product-need}: over all jobs, whether they spray it or spread it. */
    public static final Formula PRODUCT_NEED = new Formula(
            "product-need",
            NEED,
            choice(
                    isNowhere(SPREAD_NEED, SPREAD_LEFT_OUT),
                    value(SPRAYED),
                    choice(
                            isNowhere(SPRAYED, LEFT_OUT),
                            value(SPREAD_NEED),
                            value(SPRAYED).plus(SPREAD_NEED))),
            Source.derived("sum of the jobs given; rows left out are counted beside it"),
            "priming comes on top",
            List.of(
                    WorkedExample.from(Source.derived("21.625 sprayed, and 4 on a field that is spread"))
                            .with(SPRAYED, 21.625)
                            .with(LEFT_OUT, 0)
                            .with(SPREAD_NEED, 4)
                            .with(SPREAD_LEFT_OUT, 0)
                            .gives(25.625, Units.PRODUCT_UNIT, 3),
                    WorkedExample.from(Source.derived("no job sprays it, and one of two that spread it has no amount"))
                            .with(LEFT_OUT, 0)
                            .with(SPREAD_NEED, 4)
                            .with(SPREAD_LEFT_OUT, 1)
                            .gives(4, Units.PRODUCT_UNIT, 3)));

    /** Rows left out of what is sprayed. */
    public static final Expr NEED_LEFT_OUT = missing(TANK_MIX, TankPlan.PRODUCT_FOR_BLOCK);
    /** Rows left out of what is spread or drilled. */
    public static final Expr SPREAD_NEED_LEFT_OUT = missing(Spreading.TABLE, Spreading.SPREAD);

    /** Whether no job has a product, as opposed to jobs that have it and whose amounts are all withheld. */
    private static Condition isNowhere(Symbol need, Symbol leftOut) {
        return Condition.all(List.of(
                new Condition.Blank(need), Condition.compare(value(leftOut), Condition.Relation.AT_MOST, number(0))));
    }

    private static Expr total(String table, Symbol product) {
        return new Expr.Total(table, product, Keys.PRODUCT_KEY, Keys.PRODUCT_KEY, false);
    }

    private static Expr missing(String table, Symbol product) {
        return new Expr.Count(table, product, Keys.PRODUCT_KEY, Keys.PRODUCT_KEY, true);
    }

    /** {@code product-to-buy}: need − stock, never below nothing. */
    public static final Formula PRODUCT_TO_BUY = new Formula(
            "product-to-buy",
            TO_BUY,
            choice(
                    new Condition.Blank(STOCK),
                    value(NEED),
                    greatest(value(NEED).minus(STOCK), new Expr.AsUnit(number(0), Units.PRODUCT_UNIT))),
            ORDER,
            "all of the need where no stock is typed; stock must be in date and still permitted",
            List.of(WorkedExample.from(Source.derived("21.625 needed, 4 in stock"))
                    .with(NEED, 21.625)
                    .with(STOCK, 4)
                    .gives(17.625, Units.PRODUCT_UNIT, 3)));

    /** {@code packs-to-buy}: to buy ÷ pack size, rounded up. */
    public static final Formula PACKS_TO_BUY = new Formula(
            "packs-to-buy",
            PACKS,
            call(Function.ROUND_UP, value(TO_BUY).over(PACK_SIZE)),
            ORDER,
            "rounded up on the total, never per field, job or holding",
            List.of(WorkedExample.from(SUM)
                    .with(TO_BUY, 21.625)
                    .with(PACK_SIZE, 5)
                    .gives(5, Units.ONE, 0)));

    /** {@code product-left-over}. */
    public static final Formula PRODUCT_LEFT_OVER = new Formula(
            "product-left-over",
            LEFT_OVER,
            choice(
                    new Condition.Blank(STOCK),
                    cut(value(PACKS).times(PACK_SIZE).minus(NEED)),
                    cut(value(STOCK).plus(value(PACKS).times(PACK_SIZE)).minus(NEED))),
            ORDER,
            "what stands in the store afterwards if all goes as planned",
            List.of(
                    WorkedExample.from(SUM)
                            .with(PACKS, 5)
                            .with(PACK_SIZE, 5)
                            .with(NEED, 21.625)
                            .gives(3.375, Units.PRODUCT_UNIT, 3),
                    // 1.1 and 2.2 are a hair more than a pack of 3.3, which is noise: nothing is left, and not less.
                    WorkedExample.from(Source.derived("1.1 and 2.2 L out of one pack of 3.3 L"))
                            .with(PACKS, 1)
                            .with(PACK_SIZE, 3.3)
                            .with(NEED, 1.1 + 2.2)
                            .gives(0, Units.PRODUCT_UNIT, 12),
                    WorkedExample.from(Source.derived("3 in store and 4 packs of 5, less 21.625, leave 1.375"))
                            .with(STOCK, 3)
                            .with(PACKS, 4)
                            .with(PACK_SIZE, 5)
                            .with(NEED, 21.625)
                            .gives(1.375, Units.PRODUCT_UNIT, 3)));

    /** {@code product-cost}: packs × price of a pack, or × pack size × price of a unit; of what comes loose its amount. */
    public static final Formula PRODUCT_COST = new Formula(
            "product-cost",
            COST,
            choice(
                    new Condition.Given(PACK_PRICE),
                    value(PACKS).times(PACK_PRICE),
                    choice(
                            new Condition.Blank(PACK_SIZE),
                            value(TO_BUY).times(PRICE),
                            value(PACKS).times(PACK_SIZE).times(PRICE))),
            Source.derived(
                    "packs bought at the price typed, tax as typed; without a pack size the amount to buy at it"),
            "of what is bought, not of what is used; loose fertiliser, seed and lime have no packs",
            List.of(
                    WorkedExample.from(Source.derived("5 packs of 5 L at 8 a litre"))
                            .with(PACKS, 5)
                            .with(PACK_SIZE, 5)
                            .with(PRICE, 8)
                            .gives(200, Units.MONEY_UNIT, 0),
                    WorkedExample.from(Source.derived("10,570 kg loose at 0.4 a kilogram"))
                            .with(TO_BUY, 10570)
                            .with(PRICE, 0.4)
                            .gives(4228, Units.MONEY_UNIT, 0)));

    private static Expr cut(Expr expr) {
        return call(Function.ROUND, expr, number(9));
    }

    private static Symbol amount(String name) {
        return Symbol.number(name, Units.PRODUCT_UNIT)
                .possible(Range.NOT_NEGATIVE)
                .decimals(3);
    }
}
