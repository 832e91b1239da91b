package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/**
 * The stock to be fed. {@link #INTAKE} of one head is dry matter ("kg DM/day") or fresh ("t/month", with {@link #DM});
 * {@link ListRows#unit} tells which.
 */
public final class Herds {
    private Herds() {}

    /** Whose stock. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** The group. */
    public static final ColumnSpec GROUP = text("Group", Quantities.GROUP)
            .needed()
            .also("group name, name, bunch, mob, class, stock class, herd, herd name, livestock, "
                    + "class of stock, pen, animal type, type of animal, animal class, class of animal, "
                    + "animal group, type of stock, stock type, livestock class, livestock type, stock group, "
                    + "livestock group, category")
            .help("Stock fed alike.");
    /** How many. */
    public static final ColumnSpec HEAD = number("Head", Quantities.HEAD)
            .needed()
            .also("livestock numbers, stock to be wintered, no of stock to be wintered, "
                    + "no of stock to be kept, number of stock, head of cattle, number in group, group size, "
                    + "quantity, hd, number, no, count, number of head, no of head, head of stock, heads, "
                    + "number of animals, nos, no of head, no of animals, cows, numbers, head count, cow numbers, "
                    + "number of cows, no of cows, herd size, stock numbers")
            .help("How many animals.");
    /** What one eats in a day. */
    public static final ColumnSpec INTAKE = number("Intake", Quantities.INTAKE)
            .or(Quantities.INTAKE_FRESH)
            .needed()
            .also("daily intake, intake per head, DM intake, DMI, dry matter intake, ration, "
                    + "fresh intake, feed per head, intake per day, silage intake, forage intake, silage DM intake, "
                    + "forage DM intake, DM per head, DM per day, DM per head per day, silage per head, "
                    + "silage per day, silage per month, feed per month, forage per month, fodder per month, "
                    + "silage per head per month, "
                    + "feed per day, daily ration, daily feed, daily DM, kg/head/day, kg/hd/day, kg/day, kg/cow/day, "
                    + "kg DM a day each, kg DM each a day, kg DM a day, kg DM a head a day, kg DM each per day, "
                    + "kg fresh/day, kg fresh/head/day, lb/head/day, lb/hd/day, lb/day, t/month, t/head/month, "
                    + "tonnes/month, tonnes/head/month, % of liveweight, % liveweight, % of live weight, % LW")
            .help("Of this feed, one animal.");
    /** Dry matter of a fresh intake. */
    public static final ColumnSpec DM = number("DM", Quantities.INTAKE_DM)
            .also("dry matter, DM content, dry matter content, feed DM, moisture, DM of feed, dry matter of feed, "
                    + "silage DM, DM of silage")
            .help("Needed where the intake is given fresh.");
    /** Days fed. */
    public static final ColumnSpec DAYS = number("Days", Quantities.DAYS)
            .also("no of months, number of months, no of weeks, number of weeks, length of winter, "
                    + "winter length, housing period, winter period, "
                    + "number of days, feeding days, days fed, winter days, feeding period, no of days, period, "
                    + "days on feed, "
                    + "days on silage, days housed, housed days, days to feed, feed days, days in, months, weeks, "
                    + "winter months, feeding months, months fed, months housed, weeks fed")
            .help("Or give Start and End.");
    /** First day. */
    public static final ColumnSpec START = ColumnSpec.date("Start", Quantities.FEED_START)
            .also("start date, from, date from, from date, first day, housed, housing date")
            .help("First day fed.");
    /** Last day. */
    public static final ColumnSpec END = ColumnSpec.date("End", Quantities.FEED_END)
            .also("end date, to, date to, to date, last day, finish date, turnout, turnout date, until")
            .help("Last day fed.");
    /** Fed from. */
    public static final ColumnSpec CLAMP = Shared.CLAMP
            .also("feed source, source of feed, silage source, source of silage, silage from, "
                    + "fed from, feeds from, feed from, eats from, eating from, fed at")
            .help("The clamp it is fed from.");

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Herds",
                    List.of(
                            "herd list",
                            "herd",
                            "livestock",
                            "stock numbers",
                            "feeding groups",
                            "cattle",
                            "animals",
                            "stock to feed",
                            "feed demand"),
                    List.of(HOLDING, GROUP, HEAD, INTAKE, DM, DAYS, START, END, CLAMP))
            .identifiedBy(GROUP)
            .otherwise(HOLDING, Shared.WHOSE)
            .otherwise(GROUP, "stock")
            // Beside days, "Finish" is a weight.
            .otherwiseWithout(DAYS, END, "finish")
            .otherwise(GROUP, "animals, type")
            .otherwise(GROUP, "cattle, kind of animal, kind of stock")
            .otherwise(HEAD, "animals")
            .otherwiseMeasured(
                    INTAKE,
                    "silage, forage, grass silage, maize silage, feed, fresh feed, eats, demand, feed demand, "
                            + "need, silage needed, silage required, silage requirement, forage needed, forage required, "
                            + "feed needed, feed required, requirement")
            .otherwiseMeasured(
                    INTAKE,
                    "silage eaten, forage eaten, eaten, silage fed, forage fed, fresh silage, feed requirement, "
                            + "daily requirement, monthly requirement, pit silage, pit silage required, pit silage needed, "
                            + "pit silage requirement, fodder required, fodder needed, fodder requirement")
            .needsOneOf(List.of(DAYS), List.of(START, END))
            .needsHeaders(3);
}
