package org.rickyard.lists.read;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.SubstanceDose;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** What doses are in, by the header of their column and the unit of their row. */
final class DoseUnits {
    private static final Pattern LITRES_OR_KILOGRAMS = Pattern.compile(
            "(?i)(l|lit(re|er)s?|kgs?)( ?(/|per) ?(ha|hectare|ac|acre))? ?(or|/|,|&) ?(l|lit(re|er)s?|kgs?)"
                    + " ?(/|per) ?(?<area>ha|hectare|ac|acre)");

    private final ColumnSpec column;
    private final CustomaryUnits customary;

    DoseUnits(ColumnSpec column, CustomaryUnits customary) {
        this.column = column;
        this.customary = customary;
    }

    /** "L or kg/ha" says no more than per what: L or kg is what the product is counted in. */
    UnitInRow under(String header, String word) {
        Matcher either = LITRES_OR_KILOGRAMS.matcher(header.strip());
        return full(either.matches() ? "/" + either.group("area") : header, word);
    }

    private UnitInRow full(String rest, String word) {
        if (rest.isEmpty() && word.isEmpty()) {
            return new UnitInRow(Units.DOSE, null, null, "doses without a unit are in product unit per ha");
        }
        UnitInRow ofSubstance = bySubstance(rest, word);
        if (ofSubstance != null) {
            return ofSubstance;
        }
        DoseText header = rest.isEmpty() ? null : DoseText.read(rest, customary);
        DoseText row = word.isEmpty() ? null : DoseText.read(word, customary);
        if (header instanceof DoseText.Known known && known.isFull()) {
            return agrees(known, row)
                    ? new UnitInRow(known.unit(), known.productUnit(), null, null)
                    : disagree(rest, word);
        }
        if (header instanceof DoseText.Ambiguous ambiguous) {
            return UnitInRow.asked(ambiguous.question());
        }
        if (row instanceof DoseText.Ambiguous ambiguous) {
            return UnitInRow.asked(ambiguous.question());
        }
        if (header instanceof DoseText.Known && row instanceof DoseText.Known && !isSameAmount(rest, word)) {
            return disagree(rest, word);
        }
        if (row instanceof DoseText.Known known && known.isFull()) {
            return new UnitInRow(known.unit(), known.productUnit(), null, null);
        }
        String amount = row instanceof DoseText.Known ? word : header instanceof DoseText.Known ? rest : "";
        boolean basisSaid = header instanceof DoseText.Unknown;
        if (row instanceof DoseText.Unknown || amount.isEmpty() && !basisSaid) {
            return UnitInRow.asked(Words.quoted(word.isEmpty() ? rest : word)
                    + " is not a dose unit known here: write L/ha, g/ha, % or ml/100 L.");
        }
        String basis = !basisSaid ? "/ha" : SaidUnit.isBasis(rest) ? Basis.of(rest) : "/?";
        DoseText whole = DoseText.read((amount.isEmpty() ? "L" : amount) + basis, customary);
        if (whole instanceof DoseText.Known known && known.isFull()) {
            if (amount.isEmpty()) {
                return new UnitInRow(
                        Unit.of(
                                "product unit" + basis,
                                known.unit().dimension(),
                                known.unit().factor()),
                        null,
                        null,
                        null);
            }
            if (!basisSaid && isCustomary(known.unit(), Units.DOSE)) {
                return UnitInRow.asked(perWhat(known.unit().counted()));
            }
            String assumed = basisSaid ? null : "doses in " + amount + " are per ha";
            return new UnitInRow(known.unit(), known.productUnit(), null, assumed);
        }
        if (whole instanceof DoseText.Ambiguous ambiguous) {
            return UnitInRow.asked(ambiguous.question());
        }
        // What the row says alone was read; with it, it is what the header says that is no unit.
        return UnitInRow.asked(Words.quoted(rest.isEmpty() ? word : rest)
                + " is not a dose unit known here: write L/ha, g/ha, % or ml/100 L.");
    }

    /**
     * The unit of a dose that counts what is in the product, in a column that may hold one; null if it counts the product.
     * Beside a header that says so "kg" in the row is its amount; in the product list the row says what the product
     * itself is measured in.
     */
    private UnitInRow bySubstance(String rest, String word) {
        if (!column.measuredBy(Units.SUBSTANCE_DOSE)) {
            return null;
        }
        Optional<Unit> header = SubstanceDose.read(rest, customary);
        Optional<Unit> row = SubstanceDose.read(SaidUnit.isBasis(rest) ? word + Basis.of(rest) : word, customary)
                .or(() -> SubstanceDose.read(word, customary));
        if (header.isEmpty()) {
            if (row.isPresent() && DoseText.read(rest, customary) instanceof DoseText.Known known && known.isFull()) {
                return disagree(rest, word);
            }
            return row.filter(unit -> rest.isEmpty() || SaidUnit.isBasis(rest))
                    .map(UnitInRow::of)
                    .orElse(null);
        }
        Unit unit = header.get();
        boolean agrees = word.isEmpty()
                || row.isPresent() && row.get().symbol().equals(unit.symbol())
                || unit.symbol().startsWith(word.strip() + ' ')
                || column.equals(Products.DOSE)
                        && DoseText.read(word, customary) instanceof DoseText.Known known
                        && !known.isFull();
        return agrees ? UnitInRow.of(unit) : disagree(rest, word);
    }

    private static UnitInRow disagree(String header, String row) {
        return UnitInRow.asked("The header says " + header + " and the row says " + row + ": make them agree.");
    }

    /** Whether an amount is in ounces, pints, pounds or the like, which are hardly dosed by the hectare. */
    static boolean isCustomary(Unit unit, Unit ours) {
        double power = Math.log10(unit.ratioTo(ours).toDouble());
        return Math.abs(power - Math.rint(power)) > 1e-9;
    }

    /** An acre taken for a hectare would be two and a half times too little. */
    private String perWhat(String amount) {
        return column.name() + " is in " + amount + " and does not say on what: write it in the header, "
                + column.name() + " (" + amount + "/ac) or " + column.name() + " (" + amount
                + "/ha), or (per ac) where rows differ in unit.";
    }

    private static boolean agrees(DoseText.Known header, DoseText row) {
        if (!(row instanceof DoseText.Known known)) {
            return true;
        }
        return known.productUnit().equals(header.productUnit())
                && (!known.isFull() || known.unit().isSameScale(header.unit()));
    }

    /** Whether two dose units count the product alike, whatever it is spread on: "ml" and "ml/ha", but not "L". */
    private boolean isSameAmount(String one, String other) {
        return DoseText.read(Basis.before(one), customary) instanceof DoseText.Known first
                && DoseText.read(Basis.before(other), customary) instanceof DoseText.Known second
                && first.productUnit().equals(second.productUnit())
                && first.unit().isSameScale(second.unit());
    }
}
