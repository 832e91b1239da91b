package org.rickyard.lists.header;

import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.SubstanceDose;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** What stands beside the name in a header, taken as a unit. */
public final class HeaderUnit {
    private HeaderUnit() {}

    /** Whether a unit text can be read as a unit of this column; gallons per acre are water, never a dose. */
    public static boolean fits(ColumnSpec column, String rest) {
        if (column.type() == ColumnSpec.Type.DOSE) {
            return column.measuredBy(Units.SUBSTANCE_DOSE)
                            && SubstanceDose.read(rest, CustomaryUnits.UNSET).isPresent()
                    || !(DoseText.read(rest, CustomaryUnits.UNSET) instanceof DoseText.Unknown)
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
    public static boolean measuresOther(ColumnSpec column, String rest) {
        if (column.type() != ColumnSpec.Type.NUMBER || rest.isEmpty() || fits(column, rest)) {
            return false;
        }
        return SaidUnit.isBasis(rest) || UnitText.read(rest, CustomaryUnits.UNSET) instanceof UnitText.Known;
    }

    /** Whether a column may be in money; a dose is none, though its unit is in each row and not in its symbol. */
    static boolean isMoney(ColumnSpec column) {
        return column.type() != ColumnSpec.Type.NUMBER && column.type() != ColumnSpec.Type.DOSE
                || column.symbol().unit().dimension().exponent(Dimension.Base.MONEY) != 0;
    }

    /**
     * What a header says beside the name as one unit, where it says in two parts of what and per what: "Dose per ha (ml)"
     * and "Dose per ha (ml/ha)" are ml/ha, and so is "Dose / ml/ha". Returned as it is where that gives no unit of the
     * column, or the two parts contradict each other.
     */
    public static String whole(ColumnSpec column, String rest) {
        if (!SaidUnit.isBasis(rest) || fits(column, rest)) {
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

    /** The unit at the end of a header whose name is settled elsewhere. */
    static String ofEnd(HeaderText header) {
        for (int count = 0; count <= header.words().size(); count++) {
            String rest = header.rest(count);
            if (SaidUnit.isUnit(rest)) {
                return rest;
            }
        }
        return "";
    }
}
