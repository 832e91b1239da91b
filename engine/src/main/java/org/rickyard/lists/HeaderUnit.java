package org.rickyard.lists;

import java.util.List;
import java.util.regex.Pattern;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** What stands beside the name in a header, taken as a unit. */
final class HeaderUnit {
    private static final Pattern PER_SPRAY =
            Pattern.compile("/ ?(\\d+ ?(l|lt|ltr|litres?|liters?|gals?|gallons?)|hl)([ ,(].*)?");

    private HeaderUnit() {}

    /** Tells units from other words, whatever country they are from. */
    static boolean isUnit(String text) {
        return !text.isEmpty()
                && (!(UnitText.read(text, CustomaryUnits.UNSET) instanceof UnitText.Unknown)
                        || !(DoseText.read(text, CustomaryUnits.UNSET) instanceof DoseText.Unknown));
    }

    /** Whether a text is a unit of something that is measured, and not one that counts ("no.", "head") or a share. */
    static boolean measures(String text) {
        List<Unit> units = units(UnitText.read(text, CustomaryUnits.UNSET));
        return !units.isEmpty()
                && units.stream().noneMatch(unit -> unit.dimension().equals(Dimension.NONE));
    }

    /**
     * Whether a unit alone tells what is measured in it: one of dry matter, of a mass in a time, or of what is caught in one,
     * as "kg DM/m3", "kg/hd/day" and "ml in 30 s" are.
     */
    static boolean tellsColumn(String text) {
        return UnitText.isCaughtInATime(text)
                || units(UnitText.read(text, CustomaryUnits.UNSET)).stream().anyMatch(HeaderUnit::isTelling);
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

    /** Whether a unit text can be read as a unit of this column; gallons per acre are water, never a dose. */
    static boolean fits(ColumnSpec column, String rest) {
        if (column.type() == ColumnSpec.Type.DOSE) {
            return !(DoseText.read(rest, CustomaryUnits.UNSET) instanceof DoseText.Unknown)
                    && !Words.normal(rest).startsWith("gal")
                    && !Words.normal(rest).equals("gpa");
        }
        UnitText text = UnitText.read(rest, CustomaryUnits.UNSET);
        if (text instanceof UnitText.Known known) {
            return column.measuredBy(known.unit()) || column.measuredBy(UnitText.ofDryMatter(known.unit()));
        }
        return text instanceof UnitText.Ambiguous ambiguous
                && (ambiguous.candidates().isEmpty()
                        || ambiguous.candidates().stream().anyMatch(column::measuredBy));
    }

    /** Whether a text is a unit, or begins with what it is counted per, and is none that measures the column. */
    static boolean measuresOther(ColumnSpec column, String rest) {
        if (column.type() != ColumnSpec.Type.NUMBER || rest.isEmpty() || fits(column, rest)) {
            return false;
        }
        return isBasis(rest) || UnitText.read(rest, CustomaryUnits.UNSET) instanceof UnitText.Known;
    }

    /** "Labour £/h" is what it costs, and no number of people. */
    static boolean isMoney(String unit) {
        return UnitText.read(unit, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().dimension().exponent(Dimension.Base.MONEY) != 0;
    }

    /** Whether a column may be in money; a dose is none, though its unit is in each row and not in its symbol. */
    static boolean isMoney(ColumnSpec column) {
        return column.type() != ColumnSpec.Type.NUMBER && column.type() != ColumnSpec.Type.DOSE
                || column.symbol().unit().dimension().exponent(Dimension.Base.MONEY) != 0;
    }

    /** "/ac" or "per ha": for each of an area, and nothing of what. */
    static boolean isAreaAlone(String rest) {
        if (!isBasis(rest)) {
            return false;
        }
        // "/A" is for an acre here, where a lone a would be a year.
        String area = UnitText.plain(rest).substring(1).strip();
        return UnitText.read(area, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.HA);
    }

    /**
     * What a header says beside the name as one unit, where it says in two parts of what and per what: "Dose per ha (ml)"
     * and "Dose per ha (ml/ha)" are ml/ha, and so is "Dose / ml/ha". Returned as it is where that gives no unit of the
     * column, or the two parts contradict each other.
     */
    static String whole(ColumnSpec column, String rest) {
        if (!isBasis(rest) || fits(column, rest)) {
            return rest;
        }
        String behind =
                rest.substring(rest.startsWith("/") ? 1 : "per ".length()).strip();
        if (rest.startsWith("/") && fits(column, behind)) {
            return behind;
        }
        String parted = behind.replaceAll("[,;:]", " ").strip();
        for (int end = parted.indexOf(' '); end > 0; end = parted.indexOf(' ', end + 1)) {
            String per = parted.substring(0, end).strip();
            String amount = parted.substring(end).strip();
            String slashed = UnitText.plain(amount);
            int slash = slashed.lastIndexOf('/');
            if (slash < 0 && fits(column, amount + "/" + per)) {
                return amount + "/" + per;
            }
            if (slash >= 0 && fits(column, amount) && isSameBasis(slashed.substring(slash + 1), per)) {
                return amount;
            }
        }
        return rest;
    }

    private static boolean isSameBasis(String one, String other) {
        return UnitText.read(one, CustomaryUnits.UNSET) instanceof UnitText.Known first
                && UnitText.read(other, CustomaryUnits.UNSET) instanceof UnitText.Known second
                && first.unit().isSameScale(second.unit());
    }

    /** "/ha", "per acre (£)" and "£/ha": for each of an area, whatever it is. */
    static boolean isPerArea(String rest) {
        String plain = UnitText.plain(rest);
        int slash = plain.lastIndexOf('/');
        String per = slash < 0 ? "" : plain.substring(slash + 1).strip().split("[ (]")[0];
        return UnitText.read(per, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.HA);
    }

    /** "per 100 L" or "/100 litres": for so much spray, and nothing of what. */
    static boolean isPerSpray(String rest) {
        return isBasis(rest) && PER_SPRAY.matcher(UnitText.plain(rest)).matches();
    }

    static boolean isBasis(String rest) {
        return rest.startsWith("/") || rest.regionMatches(true, 0, "per ", 0, 4);
    }

    /** The unit at the end of a header whose name is settled elsewhere. */
    static String ofEnd(HeaderText header) {
        for (int count = 0; count <= header.words().size(); count++) {
            String rest = header.rest(count);
            if (isUnit(rest)) {
                return rest;
            }
        }
        return "";
    }
}
