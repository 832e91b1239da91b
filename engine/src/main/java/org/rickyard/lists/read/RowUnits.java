package org.rickyard.lists.read;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Dimension;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** The units of columns whose unit differs from row to row: doses, amounts of product, charges, yields, values. */
final class RowUnits {
    /** 480 is hardly a percentage, but 41 may be one, and grams in a litre too. */
    private static final String CONTENT = "What a product holds of its active ingredient is told in g/L, g/kg, % or"
            + " lb/gal: write which in the header, Active content (g/L), or in the cell.";

    private final ListSpec spec;
    private final ColumnSpec column;
    private final Binding binding;
    private final CustomaryUnits customary;
    private final Map<String, UnitInRow> cache = new HashMap<>();

    RowUnits(ListSpec spec, ColumnSpec column, Binding binding, CustomaryUnits customary) {
        this.spec = spec;
        this.column = column;
        this.binding = binding;
        this.customary = customary;
    }

    /** Whether the header alone cannot give the unit of this column. */
    static boolean isByRow(ListSpec spec, ColumnSpec column) {
        return column.type() == ColumnSpec.Type.DOSE
                || spec.unitColumns().containsKey(column)
                || column.equals(Products.ACTIVE_CONTENT);
    }

    /** The column whose words decide the unit of a row of this one; null if none does. */
    static ColumnSpec decidedBy(ListSpec spec, ColumnSpec column) {
        ColumnSpec unit = spec.unitColumns().get(column);
        if (unit != null) {
            return unit;
        }
        ColumnSpec qualifier = spec.qualifiers().get(column);
        return qualifier != null && qualifier.equals(Fields.YIELD_BASIS) ? qualifier : null;
    }

    /**
     * The unit of a cell.
     *
     * @param word the text of the row's unit or qualifying column; "" if blank or there is none
     */
    UnitInRow at(String word) {
        UnitInRow known = cache.get(word);
        if (known == null) {
            known = work(word);
            cache.put(word, known);
        }
        return known;
    }

    private UnitInRow work(String word) {
        if (column.type() == ColumnSpec.Type.DOSE) {
            return new DoseUnits(column, customary).under(binding.rest(), word);
        }
        if (column.equals(Products.PACK_SIZE) || column.equals(Products.STOCK)) {
            return new ProductUnits(column, binding, customary).ofAmount(word);
        }
        if (column.equals(Products.PRICE)) {
            return new ProductUnits(column, binding, customary).ofPrice(word);
        }
        if (column.equals(Products.ACTIVE_CONTENT)) {
            return content();
        }
        if (column.equals(Machines.CHARGE)) {
            return charge(binding.rest(), word);
        }
        if (column.equals(Assumptions.VALUE)) {
            return value(word.isEmpty() ? binding.rest() : word);
        }
        Unit unit = binding.unit().unit();
        return decidedBy(spec, column) == null || unit == null ? UnitInRow.of(unit) : ofYield(unit, word);
    }

    private static UnitInRow ofYield(Unit unit, String basis) {
        boolean dryUnit = unit.dimension().exponent(Dimension.Base.DRY_MATTER) != 0;
        boolean dryBasis = basis.equals("dry matter");
        if (dryUnit && !dryBasis && !basis.isEmpty()) {
            return UnitInRow.asked(
                    "The header says dry matter (" + unit + ") and the basis says " + basis + ": make them agree.");
        }
        return UnitInRow.of(dryBasis ? UnitText.ofDryMatter(unit) : unit);
    }

    private UnitInRow content() {
        ColumnUnit unit = ColumnUnit.of(column, binding.header(), binding.rest(), customary);
        return unit.assumed() ? UnitInRow.asked(CONTENT) : new UnitInRow(unit.unit(), null, unit.question(), null);
    }

    private UnitInRow charge(String rest, String word) {
        Unit per =
                switch (word) {
                    case "h" -> Units.H;
                    case "ha" -> Units.HA;
                    case "ac" -> Units.AC;
                    case "t" -> Units.T;
                    case "bale" -> Units.ONE;
                    default -> null;
                };
        if (per != null) {
            return UnitInRow.of(per == Units.ONE ? Units.MONEY_UNIT.named("money/bale") : Units.MONEY_UNIT.over(per));
        }
        if (UnitText.read(rest, customary) instanceof UnitText.Known known
                && known.unit().dimension().exponent(Dimension.Base.MONEY) == 1
                && Machines.CHARGE.measuredBy(known.unit())
                && !known.unit().isCompatible(Units.MONEY_UNIT)) {
            return UnitInRow.of(known.unit());
        }
        return UnitInRow.asked("A charge needs its unit: write h, ha, t or bale in the column Charge unit.");
    }

    private UnitInRow value(String word) {
        if (word.isEmpty()) {
            return UnitInRow.of(null);
        }
        // A price may be written without its currency: "per h", "/L".
        boolean price = word.strip().toLowerCase(Locale.ROOT).startsWith("per ")
                || word.strip().startsWith("/");
        UnitText text = UnitText.read(price ? "money " + word : word, customary);
        if (text instanceof UnitText.Known known) {
            return UnitInRow.of(known.unit());
        }
        if (text instanceof UnitText.Ambiguous ambiguous) {
            return UnitInRow.asked(ambiguous.question());
        }
        if (DoseText.read(word, customary) instanceof DoseText.Known known) {
            return new UnitInRow(known.unit(), known.productUnit(), null, null);
        }
        return UnitInRow.asked(Words.quoted(word) + " is not a unit known here.");
    }
}
