package org.rickyard.lists.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** What words say of a unit, whatever country they are from and whatever column they stand at. */
public final class SaidUnit {
    private static final Pattern PER_SPRAY =
            Pattern.compile("/ ?(\\d+ ?(l|lt|ltr|litres?|liters?|gals?|gallons?)|hl)([ ,(].*)?");

    private SaidUnit() {}

    /** Tells units from other words, whatever country they are from. */
    public static boolean isUnit(String text) {
        return !text.isEmpty()
                && (!(UnitText.read(text, CustomaryUnits.UNSET) instanceof UnitText.Unknown)
                        || !(DoseText.read(text, CustomaryUnits.UNSET) instanceof DoseText.Unknown));
    }

    /** Whether a text is a unit of something that is measured, and not one that counts ("no.", "head") or a share. */
    public static boolean measures(String text) {
        List<Unit> units = units(UnitText.read(text, CustomaryUnits.UNSET));
        return !units.isEmpty()
                && units.stream().noneMatch(unit -> unit.dimension().equals(Dimension.NONE));
    }

    /**
     * Whether a unit alone tells what is measured in it: one of dry matter, of a mass in a time, or of what is caught in one,
     * as "kg DM/m3", "kg/hd/day" and "ml in 30 s" are.
     */
    public static boolean tellsColumn(String text) {
        return UnitText.isCaughtInATime(text)
                || units(UnitText.read(text, CustomaryUnits.UNSET)).stream().anyMatch(SaidUnit::isTelling);
    }

    private static boolean isTelling(Unit unit) {
        Dimension dimension = unit.dimension();
        boolean dry = dimension.exponent(Dimension.Base.DRY_MATTER) == 1;
        boolean fresh = dimension.exponent(Dimension.Base.MASS) == 1;
        return dry && dimension.exponent(Dimension.Base.MASS) == 0
                || fresh && dimension.exponent(Dimension.Base.TIME) == -1;
    }

    private static List<Unit> units(UnitText text) {
        return text instanceof UnitText.Known known
                ? List.of(known.unit())
                : text instanceof UnitText.Ambiguous ambiguous ? ambiguous.candidates() : List.of();
    }

    /** "Labour £/h" is what it costs, and no number of people. */
    public static boolean isMoney(String unit) {
        return UnitText.read(unit, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().dimension().exponent(Dimension.Base.MONEY) != 0;
    }

    /** "/ac" or "per ha": for each of an area, and nothing of what. */
    public static boolean isAreaAlone(String rest) {
        if (!isBasis(rest)) {
            return false;
        }
        // "/A" is for an acre here, where a lone a would be a year.
        String area = UnitText.plain(rest).substring(1).strip();
        return UnitText.read(area, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.HA);
    }

    /** "/ha", "per acre (£)" and "£/ha": for each of an area, whatever it is. */
    public static boolean isPerArea(String rest) {
        String plain = UnitText.plain(rest);
        int slash = plain.lastIndexOf('/');
        String per = slash < 0 ? "" : plain.substring(slash + 1).strip().split("[ (]")[0];
        return UnitText.read(per, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.HA);
    }

    /** "per 100 L" or "/100 litres": for so much spray, and nothing of what. */
    public static boolean isPerSpray(String rest) {
        return isBasis(rest) && PER_SPRAY.matcher(UnitText.plain(rest)).matches();
    }

    public static boolean isBasis(String rest) {
        return rest.startsWith("/") || rest.regionMatches(true, 0, "per ", 0, 4);
    }

    /** The rest of a header without the words that belong to a qualifying column: "t/ha as carted" gives "t/ha". */
    public static String without(String rest, Map<String, List<String>> choices) {
        String best = rest;
        for (Map.Entry<String, List<String>> entry : choices.entrySet()) {
            List<String> phrases = new ArrayList<>(entry.getValue());
            phrases.add(entry.getKey());
            for (String phrase : phrases) {
                String without = without(rest, phrase);
                if (without.length() < best.length()
                        && !(UnitText.read(without, CustomaryUnits.UNSET) instanceof UnitText.Unknown)) {
                    best = without;
                }
            }
        }
        return best;
    }

    private static String without(String rest, String phrase) {
        String lower = rest.toLowerCase(Locale.ROOT);
        String wanted = phrase.toLowerCase(Locale.ROOT);
        int at = lower.indexOf(wanted);
        if (at < 0 || at > 0 && Character.isLetterOrDigit(lower.charAt(at - 1))) {
            return rest;
        }
        int end = at + wanted.length();
        if (end < rest.length() && Character.isLetterOrDigit(lower.charAt(end))) {
            return rest;
        }
        return (rest.substring(0, at) + " " + rest.substring(end)).replaceAll("^[\\s,;-]+|[\\s,;-]+$", "");
    }
}
