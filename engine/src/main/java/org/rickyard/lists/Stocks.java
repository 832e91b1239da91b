package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.date;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** The feed in store: an amount, or a count of bales and the weight of each. */
public final class Stocks {
    private Stocks() {}

    /** Whose store. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** Its name. */
    public static final ColumnSpec STORE = text("Store", Quantities.STORE)
            .needed()
            .also("store name, name, feed store, forage, feed, stack, forage type, feed type, lot, batch, fodder, "
                    + "type of feed, type of forage, type of fodder, feed name")
            .help("The clamp's name, or the stack's.");
    /** Clamp or bales. */
    public static final ColumnSpec KIND = choice("Kind", Quantities.STORE_KIND, Choices.STORE_KIND)
            .also("type, store kind, store type")
            .help("clamp or bales.");
    /** Amount. */
    public static final ColumnSpec AMOUNT = number("Amount", Quantities.AMOUNT)
            .or(Quantities.AMOUNT_DRY)
            .also("quantity in store, tonnage in store, present stock, current stock, stock in hand, weight in store, "
                    + "tonnes, quantity, amount in store, stock, in store, tonnage, fresh weight, tons, "
                    + "tonnes in store, tonnes left, tonnes fresh, fresh tonnes, tonnes on hand, on hand, "
                    + "amount on hand, tons as fed, tonnes as fed, as fed tons, as fed tonnes, t as fed, "
                    + "tons left as fed, tonnes left as fed, tons on hand as fed, tons fresh, fresh tons, "
                    + "wet tons, tons wet, t fresh, fresh t, amount fresh, "
                    + "stock on hand, quantity on hand, amount left, t left, tons left, t in store")
            .help("Fresh, or dry matter in t DM; or give Count and Weight each.");
    /** How many bales. */
    public static final ColumnSpec COUNT = number("Count", Quantities.COUNT)
            .also("number of bales, bales, no of bales, number, no, bale count, how many, no bales, "
                    + "bale numbers, number in store, bales on hand, bales left, bales in store, number on hand")
            .help("How many bales.");
    /** Weight of one. */
    public static final ColumnSpec WEIGHT_EACH = number("Weight each", Quantities.WEIGHT_EACH)
            .or(Quantities.WEIGHT_EACH_DRY)
            .also("bale weight, weight per bale, weight of each, weight, mass each, kg each, kg/bale, "
                    + "kg per bale, weight/bale, average bale weight, lb/bale, lb per bale, lbs/bale, "
                    + "lbs per bale, tonnes per bale, tons per bale, t per bale, t/bale, tonnes/bale, "
                    + "t fresh per bale, fresh t per bale, kg fresh per bale, fresh kg per bale, "
                    + "fresh weight per bale, fresh weight of bale, fresh weight of a bale, "
                    + "fresh bale weight, bale weight fresh")
            .help("Of one bale: fresh, or dry matter in kg DM.");
    /** Dry matter. */
    public static final ColumnSpec DM = number("DM", Quantities.STORE_DM)
            .also("silage DM, feed DM, DM of silage, analysed DM, average DM, "
                    + "dry matter, DM content, dry matter content, moisture, DM analysis")
            .help("Of the feed as it lies in store.");
    /** Day measured. */
    public static final ColumnSpec DATE = date("Date", Quantities.STOCK_DATE)
            .also("date measured, measured on, date of stock, stocktake date, as at")
            .help("Day it was measured.");
    /** Taken out. */
    public static final ColumnSpec ALREADY_FED = number("Already fed", Quantities.ALREADY_FED)
            .also("tonnes fed, amount fed, fed already, fed to date, used to date, tonnes used, "
                    + "fed, used, fed so far, used so far, fed out, already used")
            .help("Taken out since it was measured.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Stocks",
                    List.of(
                            "stock list",
                            "feed stocks",
                            "forage stocks",
                            "stores",
                            "silage stocks",
                            "feed in store",
                            "forage in store",
                            "silage in store",
                            "fodder in store",
                            "stock on hand",
                            "feed on hand",
                            "silage on hand",
                            "forage on hand",
                            "fodder on hand",
                            "silage stock",
                            "forage stock",
                            "feed stock",
                            "fodder stocks",
                            "winter fodder",
                            "supplement on hand",
                            "feed inventory",
                            "silage inventory",
                            "forage inventory",
                            "hay store",
                            "straw store",
                            "hay stock",
                            "straw stock",
                            "hay and straw stock",
                            "hay and straw store",
                            "hay in store",
                            "straw in store",
                            "bale store",
                            "bale stock",
                            "bales in store"),
                    List.of(HOLDING, STORE, KIND, AMOUNT, COUNT, WEIGHT_EACH, DM, DATE, ALREADY_FED))
            .identifiedBy(STORE)
            .otherwise(HOLDING, Shared.WHOSE)
            .otherwise(STORE, "storage, stored in")
            .otherwise(
                    AMOUNT,
                    "tonnes of silage, tons of silage, silage in stock, silage stock, fodder stock, "
                            + "tonnes in pit, tonnes in clamp, tonnes in silo, tons in silo, tons in bunker, total tonnes, "
                            + "total tons")
            .otherwise(COUNT, "total bales, total number of bales")
            .otherwiseMeasured(WEIGHT_EACH, "unit weight, average weight, mean weight, each")
            .otherwiseWithout(AMOUNT, WEIGHT_EACH, "kg wet, wet kg, kg fresh, fresh kg")
            .ifNamed(
                    STORE,
                    "hay, straw, haylage, hay straw, hay or straw, straw or hay, hay and straw, straw and hay, "
                            + "type of hay, hay type, type of straw, straw type, bale type, type of bale")
            .ifNamed(STORE, "clamp, clamp name, pit, pit name, silo, bunker, bay, clamp no, pit no, clamp or stack")
            // Elsewhere it may be where bales were made, where a clamp lies, or where sprays or seed are kept.
            .ifNamed(STORE, "location, place", KIND, COUNT, WEIGHT_EACH, DM, ALREADY_FED)
            .needsOneOf(List.of(AMOUNT), List.of(COUNT, WEIGHT_EACH))
            .needsHeaders(3);
}
