package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.HowKnown;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/**
 * The unit a header gives to its column.
 *
 * @param unit null if unknown or not fixed by the header
 * @param assumed whether the header is silent and the column's default was taken
 * @param question what must be asked before a number of this column can be used; null if nothing
 */
record ColumnUnit(Unit unit, boolean assumed, String question) {
    private static final Set<Symbol> NUTRIENTS =
            Set.of(Quantities.NITROGEN_SHARE, Quantities.PHOSPHATE_SHARE, Quantities.POTASH_SHARE);

    /** A day and what is made of days: how many hours of it are worked is another question. */
    private static final List<Unit> DAYS = List.of(Units.D, Units.WEEK, UnitText.MONTH, Units.YR);

    /** What insurance is a share of. */
    private static final Pattern OF_PURCHASE =
            Pattern.compile("(?i)\\(?(?:%|per ?cent) ?of (?:the )?(?:purchase )?(?:price|cost)(?: paid)?\\)?");

    /** Between the units of rows that differ. */
    private static final Pattern OR = Pattern.compile(" or ");

    private static final Pattern OUNCES = Pattern.compile("(?i)\\b(?<!fl )(oz|ozs|ounces?)\\b");

    private static final Pattern TONS = Pattern.compile("(?i)\\b(((long|short|us|uk|imperial) )?tons?|tonnes?)\\b");

    private static final Pattern LITRES = Pattern.compile(
            "(?i)\\b(litres?|liters?|gallons?|gals?|quarts?|pints?|(fl(uid)? )?ounces?|(fl )?oz|ml)\\b");

    private static final Pattern KILOGRAMS =
            Pattern.compile("(?i)\\b(pounds?|lbs?|grams?|kilograms?|kilos?|kg|ounces?|oz)\\b");

    private static final Pattern TIME = Pattern.compile("(?i)\\b(min(ute)?s?|s(ec(ond)?s?)?|h(ou)?rs?|h)\\b|/min|flow");

    /** What says that feed is weighed as it lies, and nothing of the unit. */
    private static final Pattern AS_IT_LIES = Pattern.compile("(?i)as[ -]?fed|as[ -]?is|(fresh|wet)( weight)?|fw");

    /** What runs from 0 to 1: 0.6 is no 0.6 %. */
    private static final Pattern PROBABILITY = Pattern.compile("(?i)\\b(fraction|probability|pwd)\\b");

    /** "Time lost (%)" is what the efficiency leaves of all time. */
    private static final Pattern LOST = Pattern.compile("(?i)\\b(lost|loss)\\b");

    private static final Pattern AT_EITHER_END = Pattern.compile("^[\\s,;:.()\\[\\]-]+|[\\s,;:.()\\[\\]-]+$");

    private static ColumnUnit known(Unit unit) {
        return new ColumnUnit(unit, false, null);
    }

    static ColumnUnit asked(String question) {
        return new ColumnUnit(null, false, question);
    }

    /**
     * Reads the unit of a column of numbers.
     *
     * @param header the header as it stands
     * @param rest what its header or the units row says beside the name; "" if nothing
     */
    static ColumnUnit of(ColumnSpec column, String header, String rest, CustomaryUnits customary) {
        if (column == Machines.TRADE_IN_VALUE && (HeaderText.saysShare(header) || HeaderText.saysShare(rest))) {
            return asked("A share is no money, and which price it is of no formula can tell: under " + column.name()
                    + " write that price times the share, in the workbook by a formula such as =E2*35%.");
        }
        boolean moisture = Words.holds(Words.normal(header), "moisture");
        if (rest.isEmpty()) {
            if (moisture && isDryMatterShare(column.symbol())) {
                return known(UnitText.PERCENT_MOISTURE);
            }
            if (UnitText.read(header, customary) instanceof UnitText.Ambiguous several
                    && several.candidates().isEmpty()) {
                // "Acres, roods, perches" names acres, and its figures are none.
                return asked(several.question());
            }
            Unit named = named(column, header);
            if (named != null) {
                return known(named);
            }
            Matcher tons = column.measuredBy(Units.T) ? TONS.matcher(header) : null;
            if (tons != null && tons.find()) {
                // "Tons left" are no tonnes, and "Tonnes left" say their unit.
                return of(column, "", tons.group(), customary);
            }
            String amount = amountIn(column, header);
            if (!amount.isEmpty()) {
                // "Gallons used" are no litres.
                return of(column, "", amount, customary);
            }
            if (HeaderText.saysShare(header)) {
                return share(column);
            }
            if (PROBABILITY.matcher(header).find() && column.measuredBy(Units.PERCENT)) {
                return known(Units.ONE);
            }
            return isNoUnitOf(column, UnitText.read(header, customary))
                    ? new ColumnUnit(column.symbol().unit(), true, null)
                    : of(column, "", header, customary);
        }
        if (column.measuredBy(Units.T) && AS_IT_LIES.matcher(rest).matches()) {
            // "Tons (as fed)".
            return of(column, header, "", customary);
        }
        if (column == Machines.INSURANCE && OF_PURCHASE.matcher(rest).matches()) {
            // It is of the purchase price: to say so is no other unit.
            return known(Units.PERCENT);
        }
        UnitText text = UnitText.read(rest, customary);
        if (column == Machines.FIELD_EFFICIENCY
                && LOST.matcher(header).find()
                && text instanceof UnitText.Known share
                && share.unit().isSameScale(Units.PERCENT)) {
            return known(UnitText.PERCENT_LOST);
        }
        if (text instanceof UnitText.Unknown
                && CustomaryUnits.of(rest) != CustomaryUnits.UNSET
                && UnitText.read(header, customary) instanceof UnitText.Known whole) {
            // "GPA (US)": the name is the unit, and behind it stands whose.
            return fitted(
                    column, whole.unit(), header, moisture, saysDryMatter(header), countedOver(header), customary);
        }
        if (text instanceof UnitText.Known known) {
            return fitted(column, known.unit(), rest, moisture, saysDryMatter(header), countedOver(header), customary);
        }
        if (text instanceof UnitText.Ambiguous ambiguous) {
            List<Unit> fitting = new ArrayList<>();
            for (Unit candidate : ambiguous.candidates()) {
                if (column.measuredBy(candidate)) {
                    fitting.add(candidate);
                }
            }
            return fitting.size() == 1 ? known(fitting.get(0)) : asked(ambiguous.question());
        }
        if (column.symbol().unit().isSameScale(Units.ONE)) {
            return known(column.symbol().unit());
        }
        String plain = withoutHowKnown(rest);
        // "Width (in) est.": as a rule "in" stands before a unit and is none, but here it may be one.
        boolean inches = plain.isEmpty() && Words.holds(Words.normal(header), "in");
        if (plain.length() < rest.length() && !inches) {
            // "mph (actual)": the unit is the name, and nothing else stands behind it.
            return of(column, plain.isEmpty() ? withoutHowKnown(header) : header, plain, customary);
        }
        String[] units = OR.split(rest);
        if (units.length > 1 && Stream.of(units).allMatch(SaidUnit::isUnit)) {
            return asked("Its rows are in " + rest + ": turn them into one of these, or give each a column of its own, "
                    + Stream.of(units)
                            .map(unit -> column.name() + " (" + unit + ")")
                            .collect(Collectors.joining(" and "))
                    + ".");
        }
        return asked(Words.quoted(rest) + " is not a unit known here: write for example " + example(column) + ".");
    }

    private static String withoutHowKnown(String text) {
        return AT_EITHER_END.matcher(HowKnown.without(text)).replaceAll("");
    }

    private static ColumnUnit share(ColumnSpec column) {
        if (isDryMatterShare(column.symbol())) {
            return known(column.symbol().unit());
        }
        return column.measuredBy(Units.PERCENT)
                ? known(Units.PERCENT)
                : asked("A share does not measure " + column.symbol().name() + ": write for example " + example(column)
                        + ".");
    }

    /** "Gallons used" and "Pounds collected": the unit of an amount, a word of the header's name; "" if it names none. */
    private static String amountIn(ColumnSpec column, String header) {
        // "Ounces caught per nozzle" is no flow; "litres per minute" is.
        boolean liquid = column.measuredBy(Units.L)
                || column.symbol().unit().isSameScale(Units.L_PER_MIN)
                        && !TIME.matcher(header).find();
        Pattern words = liquid ? LITRES : column.measuredBy(Units.KG) ? KILOGRAMS : null;
        Matcher word = words == null ? null : words.matcher(header);
        return word != null && word.find() ? word.group() : "";
    }

    /** A unit that is told by a word of the header's name itself; null if none is. */
    private static Unit named(ColumnSpec column, String header) {
        if (column.measuredBy(Units.HA)) {
            return areaIn(header);
        }
        if (column.measuredBy(Units.KW)) {
            return powerIn(header);
        }
        return column.symbol().unit().isSameScale(Units.D) ? periodIn(header) : null;
    }

    /** "Weeks fed" and "Winter months" are no days; null if it names neither unit, or more than one. */
    private static Unit periodIn(String header) {
        String normal = Words.normal(header);
        boolean weeks = Words.holds(normal, "week");
        boolean months = Words.holds(normal, "month");
        boolean one = weeks != months && !Words.holds(normal, "day");
        return one && UnitText.read(weeks ? "week" : "month", CustomaryUnits.UNSET) instanceof UnitText.Known known
                ? known.unit()
                : null;
    }

    /** "Acreage" and "Acres treated" are acres, wherever in the header the word stands; null if it names neither unit. */
    private static Unit areaIn(String header) {
        String normal = Words.normal(header);
        boolean acres = Words.holds(normal, "acre") || Words.holds(normal, "acreage") || Words.holds(normal, "ac");
        boolean hectares =
                Words.holds(normal, "hectare") || Words.holds(normal, "hectarage") || Words.holds(normal, "ha");
        return acres == hectares ? null : acres ? Units.AC : Units.HA;
    }

    /** "Hp (engine)" and "PTO-hp" are no kilowatts; null if it names neither unit, or more than one. */
    private static Unit powerIn(String header) {
        Unit found = null;
        for (String word : Words.normal(header).split(" ")) {
            if (UnitText.read(word, CustomaryUnits.UNSET) instanceof UnitText.Known known
                    && known.unit().isCompatible(Units.KW)) {
                if (found != null && !found.isSameScale(known.unit())) {
                    return null;
                }
                found = known.unit();
            }
        }
        return found;
    }

    /** "DM intake (kg/day)" is kilograms of dry matter, though its unit alone would be feed as it lies. */
    static boolean saysDryMatter(String header) {
        String normal = Words.normal(header);
        return Words.holds(normal, "dm") || Words.holds(normal, "dmi") || Words.holds(normal, "dry matter");
    }

    /** The time that a header says it counts over: "Daily ration", "Silage per month"; null if none. */
    private static Unit countedOver(String header) {
        String normal = Words.normal(header);
        if (Words.holds(normal, "month") || Words.holds(normal, "monthly")) {
            return UnitText.MONTH;
        }
        return Words.holds(normal, "daily") || Words.holds(normal, "day") ? Units.D : null;
    }

    private static ColumnUnit fitted(
            ColumnSpec column,
            Unit unit,
            String rest,
            boolean moisture,
            boolean saysDryMatter,
            Unit over,
            CustomaryUnits customary) {
        Unit own = column.symbol().unit();
        if (moisture && unit.isSameScale(Units.PERCENT) && isDryMatterShare(column.symbol())) {
            return known(UnitText.PERCENT_MOISTURE);
        }
        if (isPerDays(unit) && own.isPer(Units.H)) {
            return asked("A rate per day needs the hours of that day: write it per hour.");
        }
        Unit dry = UnitText.ofDryMatter(unit);
        if (saysDryMatter && column.measuredBy(dry)) {
            return known(dry);
        }
        if (column.measuredBy(unit)) {
            return known(unit);
        }
        if (column.measuredBy(dry)) {
            return known(dry);
        }
        if (isPerDays(own) && !isPerDays(unit) && unit.isProportional()) {
            // "Intake (kg DM)" and "Daily ration (kg)": what a day's column counts is counted by the day.
            Unit daily = (saysDryMatter ? dry : unit).over(over == null ? Units.D : over);
            boolean dryMatter = daily.dimension().exponent(Dimension.Base.DRY_MATTER) != 0;
            if ((over != null || dryMatter) && column.measuredBy(daily)) {
                return new ColumnUnit(daily, over == null, null);
            }
        }
        UnitText fluid = UnitText.read(OUNCES.matcher(rest).replaceFirst("fl oz"), customary);
        if (fluid instanceof UnitText.Known known && column.measuredBy(known.unit())) {
            // What is caught in a jug is in fluid ounces, though people leave the word out.
            return known(known.unit());
        } else if (fluid instanceof UnitText.Ambiguous ambiguous
                && ambiguous.candidates().stream().allMatch(column::measuredBy)) {
            return asked(ambiguous.question());
        }
        boolean caught = unit.isCompatible(Units.L)
                || fluid instanceof UnitText.Known liquid && liquid.unit().isCompatible(Units.L)
                || fluid instanceof UnitText.Ambiguous;
        if (own.isSameScale(Units.L_PER_MIN) && caught) {
            return asked("What is caught takes a time: say in the header in how long it ran, as in " + column.name()
                    + " (ml in 30 s) or (fl oz in 25 s).");
        }
        if (unit.isCompatible(Units.KG_PER_M3) && NUTRIENTS.contains(column.symbol())) {
            return asked(Words.quoted(rest) + " counts what a volume holds, and " + column.name()
                    + " is a share by weight: " + Products.shareOfVolume(example(column)));
        }
        return asked(Words.quoted(rest)
                + (isTurnedRound(column, unit)
                        ? " runs the other way round than " + column.symbol().name()
                                + ": turn the figures round too, and write for example "
                        : " does not measure " + column.symbol().name() + ": write for example ")
                + example(column) + ".");
    }

    private static boolean isTurnedRound(ColumnSpec column, Unit unit) {
        if (!unit.isProportional()) {
            return false;
        }
        Unit turned = Units.ONE.over(unit);
        return column.measuredBy(turned) || column.measuredBy(UnitText.ofDryMatter(turned));
    }

    /** "Hours per day" is a name, though it could be read as a unit that measures no hours. */
    private static boolean isNoUnitOf(ColumnSpec column, UnitText header) {
        return header instanceof UnitText.Unknown
                || header instanceof UnitText.Known known
                        && !column.measuredBy(known.unit())
                        && !column.measuredBy(UnitText.ofDryMatter(known.unit()))
                        && !column.symbol().unit().isPer(Units.H);
    }

    private static boolean isPerDays(Unit unit) {
        return DAYS.stream().anyMatch(unit::isPer);
    }

    private static boolean isDryMatterShare(Symbol symbol) {
        return symbol.unit().isCompatible(Units.PERCENT_DM);
    }

    private static String example(ColumnSpec column) {
        return column.name() + " (" + column.symbol().unit() + ")";
    }
}
