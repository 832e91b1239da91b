package org.rickyard.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit as an adviser writes it: "ac", "km/hr", "litres per hectare", "kg DM/m³", "gpa". Case, brackets and spaces do
 * not matter. A word that two countries understand differently is never guessed.
 */
public sealed interface UnitText {
    /** One certain unit. */
    record Known(Unit unit) implements UnitText {}

    /**
     * A text that could mean several units, or one that cannot be reckoned with as it stands.
     *
     * @param candidates the units it could mean; empty if something else must be asked
     * @param question what to ask, as a sentence
     */
    record Ambiguous(List<Unit> candidates, String question) implements UnitText {}

    /** Not a unit known here. */
    record Unknown(String text) implements UnitText {}

    /** A twelfth of a year. */
    Unit MONTH = Unit.of("month", Units.S.dimension(), Units.YR.factor().times(Ratio.of(1, 12)));

    /** American moisture content, per cent of the fresh mass: 100 less the dry matter. */
    Unit PERCENT_MOISTURE = new Unit("% moisture", Units.PERCENT_DM.dimension(), Ratio.of(-1, 100), Ratio.ONE);

    /** Time lost, per cent of all: 100 less the efficiency. */
    Unit PERCENT_LOST = new Unit("% lost", Dimension.NONE, Ratio.of(-1, 100), Ratio.ONE);

    /** A share written as a fraction of one: 0.8 and not 80 %. */
    Unit DECIMAL = Unit.of("decimal", Dimension.NONE, Ratio.ONE);

    /** An acre by its capital letter, at the end. */
    Pattern PER_ACRE = Pattern.compile("/\\s*A\\s*$");

    /** "L ha-1", as scientists write litres per hectare. */
    Pattern INVERSE = Pattern.compile("[ .\u00b7]+(ha|h|hr|min|d|ac)-1$");

    /** "ml in 30 s" and "30 s, ml": what is caught in a time that is no unit of its own. */
    Pattern IN_A_TIME = Pattern.compile("(?:(?<amount>[^/0-9]+?) ?(?:/| in | for | over |, ?| )"
            + "(?<time>[1-9][0-9]{0,2}) ?(?<unit>s|secs?|seconds?|mins?|minutes?)"
            + "|(?<first>[1-9][0-9]{0,2}) ?(?<of>s|secs?|seconds?|mins?|minutes?),? (?<then>[^/0-9]+))");

    /** Weighed or caught: what they are in a time is told by the time. */
    Set<String> OUNCES = Set.of("oz", "ozs", "ounce", "ounces");

    /** How labels write a share by weight, set apart from "% w/v". */
    Set<String> BY_WEIGHT = Set.of("% w/w", "%w/w", "w/w %", "% by weight", "% m/m");

    /** How labels write grams in 100 mL of a liquid. */
    Set<String> BY_VOLUME = Set.of("% w/v", "%w/v", "w/v %", "% m/v");

    /** A gram in 100 mL, by its definition 10 g/L. */
    Unit PERCENT_BY_VOLUME = Unit.of(
            "% w/v",
            Units.G.over(Units.L).dimension(), Units.G.over(Units.L).factor().times(Ratio.of(10)));

    /** "g ai/L": what is counted in a litre or a kilogram is the active ingredient. */
    Pattern OF_ACTIVE = Pattern.compile(
            "(?<amount>[a-z]+) ?(?:a\\.?i\\.?|a\\.?s\\.?|active|active (?:ingredient|substance)) ?/ ?(?<of>[a-z0-9 ().]+)");

    /** What is asked where a feed is a share of what eats it. */
    String LIVEWEIGHT = "A share of liveweight needs the liveweight: write kg DM/day.";

    /** What is asked where an area is in three units at once. */
    String PERCHES = "Acres, roods and perches: write decimal acres (a rood is 0.25 ac, a perch 1/160 ac).";

    /**
     * Texts that need more than a choice of unit, with what to ask. Keys are in lower case. A unit of fertiliser is a
     * hundredth of a UK hundredweight, 1.12 lb.
     */
    Map<String, String> QUESTIONS = Map.ofEntries(
            Map.entry(
                    "units/ac", "A unit per acre is 1.2554 kg/ha of nutrient, not of product: write kg/ha of product."),
            Map.entry(
                    "units/acre",
                    "A unit per acre is 1.2554 kg/ha of nutrient, not of product: write kg/ha of product."),
            Map.entry("bales/ac", "Bales need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("bales/ha", "Bales need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("bales/acre", "Bales need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("loads/ac", "Loads need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("loads/ha", "Loads need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("loads/acre", "Loads need a weight and a dry matter: write the yield in t/ha."),
            Map.entry("a-r-p", PERCHES),
            Map.entry("a r p", PERCHES),
            Map.entry("arp", PERCHES),
            Map.entry("acres roods perches", PERCHES),
            Map.entry("acres roods and perches", PERCHES),
            Map.entry("% of liveweight", LIVEWEIGHT),
            Map.entry("% liveweight", LIVEWEIGHT),
            Map.entry("% of live weight", LIVEWEIGHT),
            Map.entry("% lw", LIVEWEIGHT),
            Map.entry("deg", "Degrees are not proportional to a slope in per cent: write %, or 1 in 3."),
            Map.entry("degrees", "Degrees are not proportional to a slope in per cent: write %, or 1 in 3."),
            Map.entry("°", "Degrees are not proportional to a slope in per cent: write %, or 1 in 3."));

    /** No unit is longer in words; sentences are asked about too, and are long. */
    int LONGEST = 100;

    /** Reads a unit text. */
    static UnitText read(String text, CustomaryUnits customary) {
        if (text.length() > LONGEST) {
            return new Unknown(text);
        }
        String plain = plain(text);
        if (plain.isEmpty()) {
            return new Unknown(text);
        }
        String question = QUESTIONS.get(plain);
        if (question != null) {
            return new Ambiguous(List.of(), question);
        }
        if (plain.equals("lb/in2") || plain.equals("lb/sq in") || plain.equals("lbs/sq in")) {
            return new Known(Units.PSI);
        }
        if (BY_WEIGHT.contains(plain)) {
            return new Known(Units.PERCENT);
        }
        if (BY_VOLUME.contains(plain)) {
            return new Known(PERCENT_BY_VOLUME);
        }
        List<Unit> meanings = inATime(plain, customary);
        if (meanings.isEmpty()) {
            meanings = compound(plain, customary);
        }
        if (meanings.isEmpty()) {
            meanings = ofActive(plain, customary);
        }
        return switch (meanings.size()) {
            case 0 -> text.indexOf('_') > 0 ? read(text.replace('_', '/'), customary) : ofCountry(text);
            case 1 -> new Known(meanings.get(0));
            default -> new Ambiguous(meanings, question(text, meanings));
        };
    }

    /** Whether a text is an amount caught in a time, as "ml in 30 s" is, and no amount in a unit of time. */
    static boolean isCaughtInATime(String text) {
        return !inATime(plain(text), CustomaryUnits.UNSET).isEmpty();
    }

    /** What "ml in 30 s" could be: the amount over the time as it is written; empty if it is no volume in a time. */
    private static List<Unit> inATime(String plain, CustomaryUnits customary) {
        Matcher matcher = IN_A_TIME.matcher(plain);
        if (!matcher.matches()) {
            return List.of();
        }
        boolean behind = matcher.group("amount") != null;
        String number = matcher.group(behind ? "time" : "first");
        String unit = matcher.group(behind ? "unit" : "of");
        Unit time = UnitWords.several(number.equals("1") ? unit : number + " " + unit, customary)
                .get(0);
        String amounts = matcher.group(behind ? "amount" : "then").strip();
        // What is caught in a jug is in fluid ounces, though people leave the word out.
        return compound(OUNCES.contains(amounts) ? "fl oz" : amounts, customary).stream()
                .filter(amount -> amount.dimension().equals(Units.L.dimension()))
                .map(amount -> amount.over(time))
                .toList();
    }

    /** What is in a litre or a kilogram, the active ingredient being named; on an area it is a dose, and none of these. */
    private static List<Unit> ofActive(String plain, CustomaryUnits customary) {
        Matcher matcher = OF_ACTIVE.matcher(plain);
        return matcher.matches()
                ? compound(matcher.group("amount") + "/" + matcher.group("of").strip(), customary).stream()
                        .filter(unit -> unit.isCompatible(PERCENT_BY_VOLUME) || unit.isCompatible(Units.PERCENT))
                        .toList()
                : List.of();
    }

    /** "gal/ac (US)": a unit with the country whose it is behind it. */
    private static UnitText ofCountry(String text) {
        String open = text.replaceAll("[()\\[\\]{},]", " ").strip();
        int last = Math.max(open.lastIndexOf(' '), open.lastIndexOf('\u00a0'));
        CustomaryUnits country = last < 0 ? CustomaryUnits.UNSET : CustomaryUnits.of(open.substring(last + 1));
        boolean told = country == CustomaryUnits.UK || country == CustomaryUnits.US;
        return told && read(open.substring(0, last), country) instanceof Known known ? known : new Unknown(text);
    }

    /**
     * The same unit counted as dry matter: kg/m3 as kg DM/m3, % as % DM. For a column that can only hold dry matter, so
     * that its header need not say so twice. Returned as it is if it is dry matter already or has no such reading.
     */
    static Unit ofDryMatter(Unit unit) {
        Dimension dimension = unit.dimension();
        if (dimension.exponent(Dimension.Base.DRY_MATTER) != 0) {
            return unit;
        }
        if (dimension.equals(Dimension.NONE)) {
            return unit.isSameScale(Units.PERCENT)
                    ? Units.PERCENT_DM
                    : Unit.of(unit.symbol(), Units.PERCENT_DM.dimension(), unit.factor());
        }
        if (dimension.exponent(Dimension.Base.MASS) != 1) {
            return unit;
        }
        int slash = unit.symbol().indexOf('/');
        String symbol = slash < 0
                ? unit.symbol() + " DM"
                : unit.symbol().substring(0, slash) + " DM" + unit.symbol().substring(slash);
        return Unit.of(symbol, dimension.over(Units.KG.dimension()).times(Units.KG_DM.dimension()), unit.factor());
    }

    /** A text in lower case with single spaces, no brackets, and a slash for "per". */
    static String plain(String text) {
        if (isPlain(text)) {
            return text;
        }
        // American labels write "32 fl oz/A"; a small a would be a year.
        String lower = PER_ACRE.matcher(text)
                .replaceFirst("/ac")
                .toLowerCase(Locale.ROOT)
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace("²", "2")
                .replace("³", "3")
                .replace('’', '\'')
                .replace('“', '"')
                .replace('”', '"')
                .replace('″', '"')
                .replace('′', '\'')
                .replace('_', ' ')
                .replace("per cent", "%")
                .replace("fl.", "fl ")
                .replace("cu. ", "cu ")
                .replace("sq. ", "sq ")
                .replace(" per ", "/");
        lower = lower.endsWith("-1") ? INVERSE.matcher(lower).replaceFirst("/$1") : lower;
        lower = lower.startsWith("per ") ? "/" + lower.substring(4) : lower;
        lower = UnitWords.BRACKETS.matcher(lower).replaceAll(" ");
        lower = UnitWords.SLASHES.matcher(lower).replaceAll("/");
        lower = UnitWords.SPACES.matcher(lower).replaceAll(" ").strip();
        while (lower.length() > 1 && lower.startsWith("(") && lower.endsWith(")")) {
            lower = lower.substring(1, lower.length() - 1).strip();
        }
        return lower.endsWith(".") ? lower.substring(0, lower.length() - 1) : lower;
    }

    /** "l/ha" and "kg" are as they should be; most units are, and every header and many a cell is asked for its own. */
    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < 'a' || c > 'z') && c != '/' && c != '%' && (c < '0' || c > '9')) {
                return false;
            }
        }
        return true;
    }

    private static List<Unit> compound(String plain, CustomaryUnits customary) {
        String[] parts = plain.split("/", -1);
        int last = parts.length - 1;
        if (last > 0 && parts[last].endsWith(" dm")) {
            // "kg/m3 DM" is kg DM/m3.
            parts[last] = parts[last].substring(0, parts[last].length() - " dm".length());
            parts[0] = parts[0] + " dm";
        }
        List<Unit> results = part(parts[0], customary);
        for (int i = 1; i < parts.length && !results.isEmpty(); i++) {
            List<Unit> next = new ArrayList<>();
            for (Unit denominator : under(parts[i], customary)) {
                for (Unit numerator : results) {
                    if (numerator.isProportional() && denominator.isProportional()) {
                        next.add(numerator.over(denominator));
                    }
                }
            }
            results = next;
        }
        return results;
    }

    /** What stands below a slash: "gal/1000 sq ft" is by so many of them at a time. */
    private static List<Unit> under(String part, CustomaryUnits customary) {
        List<Unit> several = UnitWords.several(part.strip(), customary);
        return several.isEmpty() ? part(part, customary) : several;
    }

    private static List<Unit> part(String part, CustomaryUnits customary) {
        String word =
                part.replace("dry matter", "dm").replace("as fed", "fresh").strip();
        boolean dry = false;
        StringBuilder kept = new StringBuilder();
        for (String written : word.split(" ")) {
            String token = written;
            String mass = token.length() > 2 && token.endsWith("dm") ? token.substring(0, token.length() - 2) : "";
            if (!UnitWords.meanings(mass, customary).isEmpty()) {
                // "kgDM/ha" as New Zealand writes it.
                dry = true;
                token = mass;
            }
            switch (token) {
                case "dm", "(dm)" -> dry = true;
                case "fresh", "fw", "fm", "(fw)", "(fresh)" -> {
                    // Fresh mass is what a mass is unless dry matter is said.
                }
                default -> kept.append(kept.isEmpty() ? "" : " ").append(token);
            }
        }
        String rest = kept.toString();
        if (rest.equals("% moisture") || rest.equals("moisture %")) {
            return List.of(PERCENT_MOISTURE);
        }
        List<Unit> meanings = UnitWords.meanings(rest, customary);
        if (!dry) {
            return meanings;
        }
        List<Unit> ofDry = new ArrayList<>();
        for (Unit unit : meanings) {
            Unit converted = ofDryMatter(unit);
            if (converted.dimension().exponent(Dimension.Base.DRY_MATTER) != 0) {
                ofDry.add(converted);
            }
        }
        return ofDry;
    }

    private static String question(String text, List<Unit> meanings) {
        List<String> names = meanings.stream().map(Unit::symbol).toList();
        return "\"" + text.strip() + "\" could be " + String.join(" or ", names) + ": write which, or add the item "
                + "\"Customary units\" with the value UK or US to a sheet Assumptions.";
    }
}
