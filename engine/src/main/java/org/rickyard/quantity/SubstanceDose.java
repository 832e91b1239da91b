package org.rickyard.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the unit of a dose that counts what acts or feeds in a product and not the product: "kg N/ha", "lb ai/ac",
 * "kg/ha P2O5". Plain P and K are left alone: whether they are elements or oxides cannot be told.
 */
public final class SubstanceDose {
    private SubstanceDose() {}

    /** A "unit" of a fertiliser is a hundredth of a British hundredweight of nutrient. */
    private static final Unit UNIT =
            Unit.of("unit", Units.KG.dimension(), Units.CWT.factor().times(Ratio.of(1, 100)));

    private static final String OF = "(?:of )?(?:"
            + Arrays.stream(Substance.values())
                    .map(substance -> "(?<" + substance.name() + ">" + substance.written() + ")")
                    .collect(Collectors.joining("|"))
            + ")";

    private static final Pattern BEFORE_SLASH = Pattern.compile("(?<amount>[a-z]+) ?" + OF + " ?/ ?(?<per>.+)");
    private static final Pattern AT_END = Pattern.compile("(?<amount>[a-z]+) ?/ ?(?<per>.+?) " + OF);

    /** What a header says beside the substance and its unit; "required" and "needed" are said of what crops need. */
    private static final Pattern BESIDE = Pattern.compile("(?i)[()\\[\\],;:]|\\b(?:rate|dose|applied|to apply)\\b");

    private static final Pattern NAMED = Pattern.compile("(?i)(?<name>n|nitrogen|p2o5|phosphate|k2o|potash|a\\.?i\\.?"
            + "|active(?: ingredient| substance)?)\\s+(?<unit>[a-z]+ ?(?:/| per ) ?[a-z]+)");

    /**
     * The unit: kilograms of the substance per hectare or the like.
     *
     * @return none where the text is no such unit, or does not say for certain on what area
     */
    public static Optional<Unit> read(String text, CustomaryUnits customary) {
        if (text.length() < 5) {
            return Optional.empty();
        }
        String plain = UnitText.plain(text).strip();
        Matcher matcher = BEFORE_SLASH.matcher(plain);
        if (!matcher.matches()) {
            matcher = AT_END.matcher(plain);
            if (!matcher.matches()) {
                return Optional.empty();
            }
        }
        Unit amount = amount(matcher.group("amount"), customary);
        List<Unit> areas = UnitWords.several(matcher.group("per").strip(), customary).stream()
                .filter(unit -> unit.isCompatible(Units.HA))
                .toList();
        if (amount == null || areas.size() != 1) {
            return Optional.empty();
        }
        Unit area = areas.get(0);
        String symbol = amount.symbol() + ' ' + substance(matcher).symbol() + '/' + area.symbol();
        return Optional.of(Unit.of(
                symbol,
                Units.SUBSTANCE_DOSE.dimension(),
                amount.ratioTo(Units.KG).over(area.factor())));
    }

    /**
     * What a header says as such a unit where it names the substance before it: "kg/ha n" of "N (kg/ha)" and "N rate,
     * kg/ha"; the header itself where it is one as it stands, and "" if it is none.
     */
    public static String inHeader(String header) {
        String bare = BESIDE.matcher(header).replaceAll(" ").strip();
        if (read(bare, CustomaryUnits.UNSET).isPresent()) {
            return bare;
        }
        Matcher named = NAMED.matcher(bare);
        String turned = named.matches() ? named.group("unit").strip() + ' ' + named.group("name") : "";
        return read(turned, CustomaryUnits.UNSET).isPresent() ? turned : "";
    }

    private static Substance substance(Matcher matcher) {
        for (Substance substance : Substance.values()) {
            if (matcher.group(substance.name()) != null) {
                return substance;
            }
        }
        throw new IllegalStateException("no substance in " + matcher.group());
    }

    /** A weight; of liquid active ingredients, in litres, there are few, and they are asked as before. */
    private static Unit amount(String word, CustomaryUnits customary) {
        if (word.equals("unit") || word.equals("units")) {
            return UNIT;
        }
        List<Unit> weights = UnitWords.meanings(word, customary).stream()
                .filter(unit -> unit.isCompatible(Units.KG))
                .toList();
        return weights.size() == 1 ? weights.get(0) : null;
    }
}
