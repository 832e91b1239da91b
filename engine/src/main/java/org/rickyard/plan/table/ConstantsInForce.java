package org.rickyard.plan.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.Scaling;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.text.ItemText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** The constants of a run: as declared, or as the workbook's Assumptions overrule them. */
public final class ConstantsInForce {
    /**
     * A constant overruled in the workbook.
     *
     * @param cell the cell it was typed in
     * @param scaling from the number that the cell holds to the constant's own unit; a cell shown as per cent holds a
     *     hundredth of what it shows
     * @param value its value in the constant's own unit
     */
    public record Overruled(CellAddress cell, Scaling scaling, double value) {}

    private static final double LEAST_PER_CENT = 1;

    /** What is so many per cent or more is told as a factor too: labour of 110 % as 1.1. */
    private static final double LEAST_FACTOR = 100;

    private static final double MOST_FACTOR = 10;

    private final Map<Constant, Overruled> overruled = new LinkedHashMap<>();

    private ConstantsInForce() {}

    /** Reads Assumptions against the constants there are. */
    public static ConstantsInForce read(
            List<Constant> constants, ListRows assumptions, CustomaryUnits customary, List<Finding> findings) {
        ConstantsInForce inForce = new ConstantsInForce();
        Map<String, Constant> byName = new LinkedHashMap<>();
        constants.forEach(constant -> byName.put(plain(constant.name()), constant));
        for (int row = 0; row < assumptions.size(); row++) {
            String item = assumptions.text(Assumptions.ITEM, row);
            Constant constant = byName.getOrDefault(plain(item), byName.get(plain(ItemText.name(item))));
            if (constant != null) {
                inForce.take(constant, assumptions, row, customary, findings);
            }
        }
        return inForce;
    }

    private void take(
            Constant constant, ListRows assumptions, int row, CustomaryUnits customary, List<Finding> findings) {
        CellAddress cell = assumptions.address(Assumptions.VALUE, row).orElse(null);
        String beside = assumptions.text(Assumptions.UNIT, row);
        String written = beside.isEmpty() ? ItemText.unit(assumptions.text(Assumptions.ITEM, row)) : beside;
        // As it stands on Basis, from where it may have been copied: "t per t/h" is no unit that anybody else writes.
        boolean asOnBasis = plain(written).equals(plain(constant.unit().toString()));
        boolean number = asOnBasis ? isPlainNumber(assumptions, row) : isNumber(assumptions, row);
        if (!number) {
            findings.add(Finding.stop(
                    cell,
                    "'" + constant.name() + "' wants a number on Assumptions; the value held," + " " + constant.value()
                            + " " + constant.unit() + ", is used until there is one."));
            return;
        }
        Unit unit = constant.unit();
        if (!written.isEmpty() && !asOnBasis) {
            UnitText read = ofDryMatter(UnitText.read(written, customary), constant);
            if (!(read instanceof UnitText.Known known) || !known.unit().isCompatible(constant.unit())) {
                findings.add(Finding.stop(
                        assumptions
                                .address(beside.isEmpty() ? Assumptions.ITEM : Assumptions.UNIT, row)
                                .orElse(cell),
                        "the unit '" + written + "' does not fit '" + constant.name() + "', which is in "
                                + constant.unit() + "; the value held is used until the unit is mended."));
                return;
            }
            unit = known.unit();
        }
        double typed = assumptions.number(Assumptions.VALUE, row);
        if (written.isEmpty() && mayBeFraction(constant, typed)) {
            findings.add(Finding.stop(
                    cell,
                    "is '" + constant.name()
                            + "' in per cent or a fraction? Write % beside it in the column Unit; if it is"
                            + " a fraction, type " + Words.digits(Math.rint(typed * 100_000) / 1000)
                            + " with %. The value held, " + constant.value() + " " + unit
                            + ", is used until it is told."));
            return;
        }
        int cellScale = assumptions.cellScale(Assumptions.VALUE, row);
        Scaling scaling = Scaling.between(unit, constant.unit(), Ratio.of(cellScale));
        double value = scaling.apply(typed / cellScale);
        if (!constant.possible().contains(value)) {
            findings.add(Finding.stop(
                    cell,
                    "'" + constant.name() + "' is " + Numbers.readable(value) + " " + constant.unit()
                            + " on Assumptions; possible is "
                            + constant.possible().words() + ". The value held, "
                            + Numbers.readable(constant.value()) + " " + constant.unit()
                            + ", is used until it is mended and the workbook run again."));
            return;
        }
        overruled.put(constant, new Overruled(cell, scaling, value));
    }

    /** 0.3 for 20 % may be 30 %, as a cell that is shown as per cent holds it. */
    private static boolean mayBeFraction(Constant constant, double typed) {
        return constant.unit().isSameScale(Units.PERCENT)
                && constant.value() >= LEAST_PER_CENT
                && typed > 0
                && typed < (constant.value() >= LEAST_FACTOR ? MOST_FACTOR : LEAST_PER_CENT);
    }

    /** Whether the value of a row is a number; one without a unit is in the unit on Basis. */
    public static boolean isNumber(ListRows assumptions, int row) {
        if (assumptions.state(Assumptions.VALUE, row) != ListRows.State.GIVEN) {
            return false;
        }
        return assumptions.unit(Assumptions.VALUE, row).isPresent() || isPlainNumber(assumptions, row);
    }

    /** What a name calls dry matter may be weighed in kilograms as they are: "Dry matter in a round bale, kg". */
    private static UnitText ofDryMatter(UnitText read, Constant constant) {
        if (constant.name().toLowerCase(Locale.ROOT).contains("dry matter")
                && read instanceof UnitText.Known known
                && !known.unit().isCompatible(constant.unit())) {
            Unit dry = UnitText.ofDryMatter(known.unit());
            return dry.isCompatible(constant.unit()) ? new UnitText.Known(dry) : read;
        }
        return read;
    }

    /** A number in a unit that nobody else writes is asked about where the list is read; one stored as text is none. */
    private static boolean isPlainNumber(ListRows assumptions, int row) {
        ListRows.State state = assumptions.state(Assumptions.VALUE, row);
        return (state == ListRows.State.GIVEN || state == ListRows.State.ASKED)
                && assumptions.text(Assumptions.VALUE, row).matches("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    /** The value in force. */
    public double value(Constant constant) {
        Overruled found = overruled.get(constant);
        return found == null ? constant.value() : found.value();
    }

    /** Where a constant was overruled, if it was. */
    public Optional<Overruled> overruled(Constant constant) {
        return Optional.ofNullable(overruled.get(constant));
    }

    /** All that was overruled. */
    public List<Constant> all() {
        return new ArrayList<>(overruled.keySet());
    }
}
