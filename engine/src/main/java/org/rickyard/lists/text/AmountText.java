package org.rickyard.lists.text;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/**
 * An amount written with its unit in one cell: "2.5 L/ha", "120 hp".
 *
 * @param text as written
 * @param value the number it begins with; NaN if it begins with none
 * @param unit what follows the number
 */
public record AmountText(String text, double value, String unit) {
    private static final Pattern ACRES_ROODS_PERCHES =
            Pattern.compile("(\\d+) ?(?:a|ac|acres?)[ ,.-]*(\\d+) ?(?:r|rds?|roods?)[ ,.-]*(\\d+(?:\\.\\d+)?) "
                    + "?(?:p|perch|perches|poles?)\\.?");

    private static final String FIGURE = "\\d+(?:[.,]\\d+)?";

    /** "~12", "approx 12 ac", "c. 12": near enough, or not; only who typed it knows. */
    private static final Pattern ROUGHLY = Pattern.compile(
            "(?i)(?:~|≈|±|\\+/-|(?:approx(?:imately)?|about|around|roughly|circa|ca|c|est|estimated|say)\\b\\.?) ?("
                    + FIGURE + ".*)");

    /** "10-12", "10 to 12 t": two figures. */
    private static final Pattern RANGE = Pattern.compile(
            "(?i)" + FIGURE + " ?[^\\d\\s.,/x*×+()\\-–]{0,6} ?(?:-|–|to) ?" + FIGURE + "(?: ?[^\\d\\s].*)?");

    /** "8½", "8 1/2 ac", "¾". */
    private static final Pattern FRACTION =
            Pattern.compile("(?:(\\d+)(?: ?(?=[¼½¾⅓⅔⅛⅜⅝⅞])| ))?(?:([¼½¾⅓⅔⅛⅜⅝⅞])|([1-7])/([2-8]))((?: ?[^\\d\\s/].*)?)");

    /** "1 in 8", as slopes are told. */
    private static final Pattern ONE_IN = Pattern.compile("(?i)1 ?(?:in|:) ?(\\d+(?:\\.\\d+)?)");

    private static final String FRACTIONS = "¼½¾⅓⅔⅛⅜⅝⅞";

    private static final double[] FRACTION_VALUES = {
        1 / 4.0, 1 / 2.0, 3 / 4.0, 1 / 3.0, 2 / 3.0, 1 / 8.0, 3 / 8.0, 5 / 8.0, 7 / 8.0
    };

    public static AmountText of(String text) {
        int end = 0;
        while (end < text.length() && isOfNumber(text, end)) {
            end++;
        }
        return new AmountText(text, BatterText.number(text.substring(0, end).replace(',', '.')), text.substring(end));
    }

    /** A digit, a point, or a comma with one or two digits after it, which parts no thousands. */
    private static boolean isOfNumber(String text, int at) {
        char c = text.charAt(at);
        if (c != ',') {
            return Character.isDigit(c) || c == '.';
        }
        int digits = 0;
        while (at + 1 + digits < text.length() && Character.isDigit(text.charAt(at + 1 + digits))) {
            digits++;
        }
        return digits == 1 || digits == 2;
    }

    /** Whether it is a number and something after it. */
    public boolean isWithUnit() {
        return !unit.isEmpty() && !Double.isNaN(value);
    }

    /**
     * What to write in its place, as a sentence after a blank: of "120 hp" in a column of kW, 89.5. Empty if nothing
     * can be told.
     *
     * @param own the unit of the column; null if it differs from row to row
     */
    public String howToWrite(Unit own, CustomaryUnits customary) {
        OptionalDouble money = money(text);
        if (money.isPresent()) {
            return " Write the figure alone, " + Words.digits(money.getAsDouble()) + ", without the currency.";
        }
        if (RANGE.matcher(Words.trim(text)).matches()) {
            return " Write one figure, the one to reckon with.";
        }
        Matcher roughly = ROUGHLY.matcher(Words.trim(text));
        if (roughly.matches()) {
            String rest = roughly.group(1);
            String figure = of(rest).howToWrite(own, customary);
            boolean alone = !Double.isNaN(BatterText.number(rest.replace(",", "")));
            return figure.isEmpty() && alone
                    ? " Write the figure alone, " + rest + ", if that is near enough."
                    : figure;
        }
        AmountText fraction = fraction();
        if (fraction != null) {
            return fraction.unit().isEmpty()
                    ? " Write " + Words.digits(fraction.value()) + "."
                    : fraction.withUnit(own, customary);
        }
        Matcher slope = ONE_IN.matcher(Words.trim(text));
        if (slope.matches() && own != null && own.isPerCent() && Double.parseDouble(slope.group(1)) >= 1) {
            return is(100 / Double.parseDouble(slope.group(1)), own) + ".";
        }
        return isWithUnit() ? withUnit(own, customary) : "";
    }

    /** What to write in the place of a number and what stands after it. */
    private String withUnit(Unit own, CustomaryUnits customary) {
        if (own == null || own.symbol().startsWith("product unit")) {
            // Of "10 x 1 L" and "10-12 L" the figure at the beginning is not the amount.
            return !SaidUnit.isUnit(Words.trim(unit))
                    ? ""
                    : " Write the figure alone, " + Words.digits(value) + ", if " + Words.trim(unit)
                            + " is the unit in the header or in the column of units; if not, what it is in that unit.";
        }
        if (Words.trim(unit).equals("%") && own.isPerCent()) {
            return " Write " + Words.digits(value) + " without the sign, or give the cell a number format of per cent.";
        }
        OptionalDouble acres = own.isCompatible(Units.AC) ? acres(text) : OptionalDouble.empty();
        if (acres.isPresent()) {
            return is(Units.AC.convert(acres.getAsDouble(), own), own, 7) + ".";
        }
        OptionalDouble feet = own.isCompatible(Units.FT) ? FeetText.read(text) : OptionalDouble.empty();
        if (feet.isPresent()) {
            return is(Units.FT.convert(feet.getAsDouble(), own), own) + ".";
        }
        if (UnitText.read(unit, customary) instanceof UnitText.Known known
                && known.unit().isCompatible(own)) {
            return is(known.unit().convert(value, own), own)
                    + (known.unit().isSameScale(own)
                            ? "."
                            : ", or put " + known.unit() + " in the header if the whole column is in it.");
        }
        return "";
    }

    /** An amount with a fraction as one with decimals; null if it has no fraction, or one of feet or inches. */
    private AmountText fraction() {
        Matcher found = FRACTION.matcher(Words.trim(text));
        if (found.matches() && FeetText.read(text).isEmpty()) {
            double whole = found.group(1) == null ? 0 : Double.parseDouble(found.group(1));
            double part = found.group(2) != null
                    ? FRACTION_VALUES[FRACTIONS.indexOf(found.group(2))]
                    : Double.parseDouble(found.group(3)) / Double.parseDouble(found.group(4));
            double rounded = Math.rint((whole + part) * 1000) / 1000;
            return part < 1 ? new AmountText(text, rounded, found.group(5)) : null;
        }
        return null;
    }

    /** "$18.50", "€ 1,250": the figure behind a currency. */
    private static OptionalDouble money(String text) {
        String plain = Words.trim(text);
        double figure = Words.beginsWithCurrency(plain)
                ? BatterText.number(Words.trim(plain.substring(1)).replace(",", ""))
                : Double.NaN;
        return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /** Acres, roods of a quarter and perches of a hundred-and-sixtieth, with their letters: "12a 2r 20p". */
    private static OptionalDouble acres(String text) {
        Matcher found = ACRES_ROODS_PERCHES.matcher(Words.trim(text).toLowerCase(Locale.ROOT));
        return found.matches()
                ? OptionalDouble.of(Double.parseDouble(found.group(1))
                        + Double.parseDouble(found.group(2)) / 4
                        + Double.parseDouble(found.group(3)) / 160)
                : OptionalDouble.empty();
    }

    private String is(double number, Unit own) {
        return is(number, own, 4);
    }

    private String is(double number, Unit own, int places) {
        String digits = Words.digits(Double.parseDouble(String.format(Locale.ROOT, "%." + places + "g", number)));
        return " " + Words.quoted(text) + " is " + digits + " " + own + ": write the figure " + digits + " alone";
    }
}
