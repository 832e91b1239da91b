package org.rickyard.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A dose unit as labels and advisers write it: "L/ha", "g/ac", "tablets/ha", "%", "ml/100 L". The amount is reckoned in
 * the product's own unit (litre, kilogram or tablet), the basis is an area or a volume of spray.
 */
public sealed interface DoseText {
    /** Areas of which a dose names many. */
    Pattern SQUARE = Pattern.compile(".*(ft|yd|m)2");

    Pattern COUNTED = Pattern.compile("[\\d.]");

    /** What is behind the litres that a dose is in. */
    Pattern OF_SPRAY = Pattern.compile("( of)? (spray|water|mix)$");

    /**
     * One certain dose unit.
     *
     * @param productUnit "L", "kg" or "tablet"
     * @param unit the product unit per area ({@link Units#DOSE}), per volume of spray ({@link Units#CONCENTRATION}), or
     *     alone ({@link Units#PRODUCT_UNIT}) where the text names no basis
     */
    record Known(String productUnit, Unit unit) implements DoseText {
        /** Whether it is an amount per area. */
        public boolean isPerArea() {
            return unit.isCompatible(Units.DOSE);
        }

        /** Whether it is an amount in a volume of spray. */
        public boolean isPerSpray() {
            return unit.isCompatible(Units.CONCENTRATION);
        }

        /** Whether it says on or in what, and not an amount alone. */
        public boolean isFull() {
            return isPerArea() || isPerSpray();
        }
    }

    /**
     * A text that two countries understand differently.
     *
     * @param candidates what it could mean
     * @param question what to ask, as a sentence
     */
    record Ambiguous(List<Known> candidates, String question) implements DoseText {}

    /** Not a dose unit known here. */
    record Unknown(String text) implements DoseText {}

    /** Amounts of what a fertiliser feeds with, an old unit of it among them. */
    Pattern OF_NUTRIENT = Pattern.compile("units?( of)?( n| p| k)?/.*|(kgs?|g|lbs?|units?)( of)?"
            + " (n|p|k|p2o5|k2o|so3|mgo|nitrogen|phosphate|potash|nutrient)/.*");

    /** A share of what is in the tank, whatever it is called. */
    Pattern SHARE_OF_SPRAY = Pattern.compile("% (of )?(the )?(spray|mix|solution|tank)( volume| mix)?");

    /** Seeds that are counted, and on what area. */
    Pattern OF_SEEDS = Pattern.compile(
            "(?:seeds?|plants?|grains?|kernels?)/(?<area>m2|sq ?m|square met(?:re|er)|ha|hectare|ac|acre)");

    /** Amounts of what in a product works. */
    Pattern OF_ACTIVE = Pattern.compile(
            "(kgs?|g|lbs?|oz|ml|l)( of)? (a\\.?i\\.?|a\\.?s\\.?|active|active ingredient|active substance)/.*");

    /** Reads a dose unit; an amount without basis ("L") is known too. */
    static DoseText read(String text, CustomaryUnits customary) {
        String plain = UnitText.plain(text);
        if (plain.equals("%")
                || plain.equals("% v/v")
                || plain.equals("%v/v")
                || plain.equals("% vol")
                || plain.equals("v/v %")
                || SHARE_OF_SPRAY.matcher(plain).matches()) {
            return new Known("L", Unit.of("%", Units.CONCENTRATION.dimension(), perLitre(Ratio.of(1, 100))));
        }
        if (plain.equals("% w/v") || plain.equals("%w/v") || plain.equals("w/v %")) {
            // A kilogram in a hundred litres is one per cent by weight in volume.
            return new Known("kg", Unit.of("% w/v", Units.CONCENTRATION.dimension(), perLitre(Ratio.of(1, 100))));
        }
        if (OF_NUTRIENT.matcher(plain).matches()) {
            return new Ambiguous(
                    List.of(),
                    "\"" + text.strip() + "\""
                            + " is an amount of nutrient (a unit per acre is 1.2554 kg/ha of it), not of product: divide it"
                            + " by the product's share of the nutrient by weight for kilograms of product (and those of a"
                            + " liquid by its density in kg/L for litres), and write the dose of product.");
        }
        if (OF_ACTIVE.matcher(plain).matches()) {
            return new Ambiguous(
                    List.of(),
                    "\"" + text.strip() + "\""
                            + " is an amount of active ingredient, not of product: divide it by what the label says is in a"
                            + " litre or kilogram of product, and write the dose of product.");
        }
        Matcher seeds = OF_SEEDS.matcher(plain);
        if (seeds.matches()) {
            return new Ambiguous(
                    List.of(), "\"" + text.strip() + "\" counts seeds. " + drilledByWeight(seeds.group("area")));
        }
        int slash = plain.indexOf('/');
        String amountText = slash < 0 ? plain : plain.substring(0, slash);
        List<Known> amounts = amounts(amountText.strip(), customary);
        List<Known> results = new ArrayList<>();
        if (slash < 0) {
            results = amounts;
        } else {
            for (Unit basis : bases(plain.substring(slash + 1).strip(), customary)) {
                for (Known amount : amounts) {
                    results.add(new Known(amount.productUnit(), amount.unit().over(basis)));
                }
            }
        }
        return switch (results.size()) {
            case 0 -> text.indexOf('_') > 0 ? read(text.replace('_', '/'), customary) : ofCountry(text);
            case 1 -> results.get(0);
            default -> new Ambiguous(List.copyOf(results), question(text, results));
        };
    }

    /**
     * How a count of seeds is made the weight that a drill is filled with.
     *
     * @param area what they are counted on, as it is written
     */
    static String drilledByWeight(String area) {
        String on = area.startsWith("h") ? "ha" : area.startsWith("a") ? "ac" : "m2";
        String weight = on.equals("ac") ? "kg/ac" : "kg/ha";
        return "Seed is drilled by weight here. Write " + weight + " in a column Seed rate (" + weight + "): seeds/"
                + on
                + " × weight of a thousand in g ÷ " + (on.equals("m2") ? "100" : "1,000,000") + ", or plants/" + on
                + " wanted × that weight ÷ " + (on.equals("m2") ? "" : "10,000 ÷ ") + "the percentage that come up.";
    }

    /** "fl oz/ac (US)": a dose unit with the country whose it is behind it. */
    private static DoseText ofCountry(String text) {
        String open = text.replaceAll("[()\\[\\]{},]", " ").strip();
        int last = Math.max(open.lastIndexOf(' '), open.lastIndexOf('\u00a0'));
        CustomaryUnits country = last < 0 ? CustomaryUnits.UNSET : CustomaryUnits.of(open.substring(last + 1));
        boolean told = country == CustomaryUnits.UK || country == CustomaryUnits.US;
        return told && read(open.substring(0, last), country) instanceof Known known ? known : new Unknown(text);
    }

    private static List<Known> amounts(String word, CustomaryUnits customary) {
        if (word.equals("tablet")
                || word.equals("tablets")
                || word.equals("tab")
                || word.equals("tabs")
                || word.equals("piece")
                || word.equals("pieces")
                || word.equals("bag")
                || word.equals("bags")
                || word.equals("wsb")
                || word.equals("wsbs")
                || word.equals("sachet")
                || word.equals("sachets")) {
            return List.of(new Known("tablet", Unit.of("tablet", Units.PRODUCT_UNIT.dimension(), Ratio.ONE)));
        }
        List<Known> results = new ArrayList<>();
        for (Unit unit : UnitWords.meanings(word, customary)) {
            if (unit.isCompatible(Units.L)) {
                results.add(amount("L", unit, Units.L));
            } else if (unit.isCompatible(Units.KG)) {
                results.add(amount("kg", unit, Units.KG));
            }
        }
        return results;
    }

    private static Known amount(String productUnit, Unit unit, Unit own) {
        return new Known(productUnit, Unit.of(unit.symbol(), Units.PRODUCT_UNIT.dimension(), unit.ratioTo(own)));
    }

    /** What a dose is on or in: "ha", "1000 sq ft", "100 l of water". "2 ha" is as likely a slip, and is none. */
    private static List<Unit> bases(String text, CustomaryUnits customary) {
        return UnitWords.several(OF_SPRAY.matcher(text).replaceFirst(""), customary).stream()
                .filter(unit -> unit.isCompatible(Units.L)
                        || unit.isCompatible(Units.HA)
                                && (SQUARE.matcher(unit.symbol()).matches()
                                        || !COUNTED.matcher(unit.symbol()).lookingAt()))
                .toList();
    }

    private static Ratio perLitre(Ratio share) {
        return share.over(Units.L.factor());
    }

    private static String question(String text, List<Known> meanings) {
        List<String> names =
                meanings.stream().map(Known::unit).map(Unit::symbol).distinct().toList();
        return "\"" + text.strip() + "\" could be " + String.join(" or ", names) + ": write which, or add the item "
                + "\"Customary units\" with the value UK or US to a sheet Assumptions.";
    }
}
