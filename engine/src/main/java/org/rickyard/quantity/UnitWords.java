package org.rickyard.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words for single units: what stands between the slashes of "kg DM/m3". All in lower case. */
final class UnitWords {
    static final Pattern BRACKETS = Pattern.compile("[\\[\\]{}]");
    static final Pattern SLASHES = Pattern.compile("\\s*/\\s*");
    static final Pattern SPACES = Pattern.compile("\\s+");

    private UnitWords() {}

    /** What tanks and wine are measured in on the continent. */
    private static final Unit HECTOLITRE =
            Unit.of("hl", Units.L.dimension(), Units.L.factor().times(Ratio.of(100)));
    /** What continental yields are told in: 100 kg. */
    private static final Unit DECITONNE =
            Unit.of("dt", Units.KG.dimension(), Units.KG.factor().times(Ratio.of(100)));

    private static final Unit PENNY = Unit.of("p", Units.MONEY_UNIT.dimension(), Ratio.of(1, 100));

    private static final Pattern COUNTED =
            Pattern.compile("(?<count>\\d{1,3}(?:,\\d{3})+|\\d+\\.?\\d*|\\.\\d+) ?(?<unit>\\D.*)");

    private static final Map<String, List<Unit>> WORDS = new HashMap<>();

    static {
        add(Units.M, "m, metre, metres, meter, meters, mtr, mtrs");
        add(Units.CM, "cm, centimetre, centimetres, centimeter, centimeters");
        add(Units.MM, "mm, millimetre, millimetres, millimeter, millimeters");
        add(Units.KM, "km, kms, kilometre, kilometres, kilometer, kilometers");
        add(Units.FT, "ft, foot, feet, ', ft-in, ft in, ft & in, ft and in, feet & inches, feet and inches");
        add(Units.IN, "in, ins, inch, inches, \"");
        add(Units.YD, "yd, yds, yard, yards");
        add(Units.MILE, "mile, miles, mi");
        add(Units.M2, "m2, m^2, sq m, sqm, square metre, square metres, square meter, square meters");
        add(square(Units.FT), "ft2, ft^2, sq ft, sqft, sq feet, square foot, square feet");
        add(square(Units.YD), "yd2, yd^2, sq yd, sqyd, sq yds, square yard, square yards");
        add(Units.HA, "ha, has, hectare, hectares, hect");
        add(Units.AC, "ac, acs, acre, acres, statute acre, statute acres");
        add(Units.M3, "m3, m^3, cu m, cum, cbm, cubic metre, cubic metres, cubic meter, cubic meters, bcm, lcm");
        add(Units.L, "l, litre, litres, liter, liters, lt, ltr, ltrs, lts, lit");
        add(Units.ML, "ml, mls, millilitre, millilitres, milliliter, milliliters, cc");
        add(Units.FT3, "ft3, ft^3, cu ft, cubic foot, cubic feet, cuft");
        add(Units.YD3, "yd3, yd^3, cu yd, cubic yard, cubic yards, cuyd");
        add(Units.KG, "kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes");
        add(Units.G, "g, gm, gms, gram, grams, gramme, grammes");
        add(Units.T, "t, te, tonne, tonnes, metric ton, metric tons, metric tonne, metric tonnes, mt");
        add(Units.LB, "lb, lbs, pound, pounds");
        add(Units.OZ, "oz, ozs, ounce, ounces");
        add(Units.LONG_TON, "long ton, long tons, imperial ton, imperial tons, uk ton, uk tons");
        add(Units.M3, "kl, kilolitre, kilolitres, kiloliter, kiloliters");
        add(HECTOLITRE, "hl, hectolitre, hectolitres, hectoliter, hectoliters");
        add(DECITONNE, "dt, decitonne, decitonnes");
        add(Units.SHORT_TON, "short ton, short tons, us ton, us tons");
        add(Units.S, "s, sec, secs, second, seconds");
        add(Units.MIN, "min, mins, minute, minutes");
        add(Units.H, "h, hr, hrs, hour, hours");
        add(Units.D, "d, day, days");
        add(Units.WEEK, "week, weeks, wk, wks");
        add(UnitText.MONTH, "month, months, mth, mths");
        add(Units.YR, "yr, yrs, year, years, annum");
        add(Units.BAR, "bar, bars");
        add(Units.KPA, "kpa");
        add(Units.MPA, "mpa");
        add(Units.PSI, "psi, lb in2");
        // N alone is nitrogen as often.
        add(Units.NEWTON, "newton, newtons");
        add(Units.KN, "kn, kilonewton, kilonewtons");
        add(Units.LBF, "lbf, pound force, pounds force");
        add(Units.KW, "kw, kilowatt, kilowatts, pto kw, kw pto, engine kw, kw engine");
        add(Units.HP, "hp, bhp, horsepower, horse power, pto hp, hp pto, engine hp, hp engine, mechanical hp");
        add(Units.PS, "ps, cv, pk, metric hp");
        add(Units.PERCENT, "%, percent, pct, percentage");
        add(Units.PER_MILLE, "‰");
        add(UnitText.DECIMAL, "decimal, dec, decimal fraction, fraction, proportion, 0-1, 0 - 1, 0 to 1");
        add(Units.CELSIUS, "°c, deg c, celsius, c");
        add(Units.FAHRENHEIT, "°f, deg f, fahrenheit, f");
        add(Units.MONEY_UNIT, "£, €, $, gbp, eur, usd, euro, euros, dollar, dollars, pound sterling, money");
        add(PENNY, "p, pence, penny, cent, cents");
        add(PENNY.over(Units.L), "ppl");
        add(
                Units.ONE,
                "head, hd, cow, cows, animal, beast, ewe, sheep, heifer, calf, weanling, bullock, steer, no, "
                        + "number, count, bale, each, nozzle");
        add(Units.MPH, "mph");
        add(Units.KM_PER_H, "kph, kmh, kmph");
        add(Units.L_PER_MIN, "lpm");
        add(Units.T_PER_H, "tph");
        add(Units.GAL_UK, "gal(uk), uk gal, uk gallon, uk gallons, imperial gallon, imperial gallons, imp gal, gal uk");
        add(Units.GAL_US, "gal(us), us gal, us gallon, us gallons, gal us");
        add(Units.PT_UK, "pt(uk), uk pt, uk pint, uk pints, imperial pint, imperial pints, pt uk");
        add(Units.PT_US, "pt(us), us pt, us pint, us pints, pt us");
        add(Units.QT_UK, "qt(uk), uk qt, uk quart, uk quarts, imperial quart, imperial quarts, qt uk");
        add(Units.QT_US, "qt(us), us qt, us quart, us quarts, qt us");
        add(Units.FL_OZ_UK, "fl oz(uk), uk fl oz, imperial fl oz, fl oz uk");
        add(Units.FL_OZ_US, "fl oz(us), us fl oz, fl oz us");
        add(Units.CWT, "cwt(uk), uk cwt, long cwt, cwt uk");
        add(Units.CWT_US, "cwt(us), us cwt, short cwt, cwt us");
        add(List.of(Units.GAL_UK, Units.GAL_US), "gal, gals, gallon, gallons, gall, galls");
        add(List.of(Units.PT_UK, Units.PT_US), "pt, pts, pint, pints");
        add(List.of(Units.QT_UK, Units.QT_US), "qt, qts, quart, quarts");
        add(List.of(Units.FL_OZ_UK, Units.FL_OZ_US), "fl oz, floz, fluid oz, fluid ounce, fluid ounces, fl ozs");
        add(List.of(Units.CWT, Units.CWT_US), "cwt, cwts, hundredweight, hundredweights");
        add(List.of(Units.LONG_TON, Units.SHORT_TON, Units.T), "ton, tons");
        add(List.of(Units.GAL_UK.over(Units.AC), Units.GAL_US.over(Units.AC)), "gpa");
        add(Units.GAL_UK.over(Units.AC), "uk gpa, imp gpa, imperial gpa, gpa uk, gpa(uk)");
        add(Units.GAL_US.over(Units.AC), "us gpa, gpa us, gpa(us)");
        add(List.of(Units.GAL_UK.over(Units.MIN), Units.GAL_US.over(Units.MIN)), "gpm");
        add(Units.GAL_UK.over(Units.MIN), "uk gpm, imp gpm, imperial gpm, gpm uk, gpm(uk)");
        add(Units.GAL_US.over(Units.MIN), "us gpm, usgpm, gpm us, gpm(us)");
        add(List.of(Units.GAL_UK.over(Units.H), Units.GAL_US.over(Units.H)), "gph");
        add(Units.L_PER_H, "lph");
    }

    private static Unit square(Unit length) {
        return Unit.of(
                length.symbol() + "2", Units.M2.dimension(), length.factor().times(length.factor()));
    }

    private static void add(Unit unit, String words) {
        add(List.of(unit), words);
    }

    private static void add(List<Unit> candidates, String words) {
        for (String word : words.split(", ")) {
            WORDS.put(word, candidates);
        }
    }

    /** "gal (us)" and "ton (uk)": a unit that countries differ in, with whose it is in brackets. */
    private static List<Unit> ofCountry(String word) {
        int open = word.lastIndexOf('(');
        String unit = open < 0 ? "" : word.substring(0, open).strip();
        if (WORDS.getOrDefault(unit, List.of()).size() < 2) {
            return List.of();
        }
        CustomaryUnits country = CustomaryUnits.of(word.substring(open + 1, word.length() - 1));
        return country == CustomaryUnits.UK || country == CustomaryUnits.US ? meanings(unit, country) : List.of();
    }

    /**
     * The units a text may mean that may begin with how many of them it is: "100 l", "1,000 sq ft", "ha". A hundred litres
     * are then one unit, of that name.
     *
     * @param text in lower case, single spaces
     */
    static List<Unit> several(String text, CustomaryUnits customary) {
        Matcher counted = COUNTED.matcher(text);
        if (!counted.matches()) {
            return meanings(text, customary);
        }
        Ratio count = Ratio.of(counted.group("count").replace(",", ""));
        return count.numerator().signum() == 0
                ? List.of()
                : meanings(counted.group("unit"), customary).stream()
                        .filter(Unit::isProportional)
                        .map(unit -> Unit.of(
                                counted.group("count") + " " + unit.symbol(),
                                unit.dimension(),
                                unit.factor().times(count)))
                        .toList();
    }

    /**
     * The units a word may mean; one if it is certain, none if the word is not known.
     *
     * @param word in lower case, single spaces
     */
    static List<Unit> meanings(String word, CustomaryUnits customary) {
        List<Unit> all = WORDS.getOrDefault(word, List.of());
        if (all.isEmpty() && word.endsWith(")")) {
            return ofCountry(word);
        }
        if (all.size() < 2) {
            return all;
        }
        return switch (customary) {
            case UNSET -> all;
            case UK -> all.subList(0, 1);
            case US -> all.subList(1, 2);
            case METRIC -> all.size() > 2 ? all.subList(2, 3) : all;
        };
    }
}
