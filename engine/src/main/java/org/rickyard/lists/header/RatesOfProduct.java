package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.text.AmountText;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Units;

/** A "Rate" over "1.8 L/ha", "75 ml/ha" and "0.2 %" is what is dosed: no water volume is written so. */
final class RatesOfProduct {
    private static final String RATE = "rate";

    private static final String AMOUNTS = "amounts of product";

    /** Litres on a hectare; knapsacks and aircraft put out more spray than that, and nobody doses so much. */
    private static final double MOST_DOSED = 10;

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    RatesOfProduct(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** The dose of a list that has one and no header for it; null if it has none, or a header. */
    static ColumnSpec doseWanting(HeaderRow.Match match) {
        ListSpec spec = match.vocabulary().spec();
        ColumnSpec dose = spec == Mixes.LIST ? Mixes.DOSE : spec == Jobs.LIST ? Jobs.DOSE : null;
        return dose == null || match.places(dose) > 0 ? null : dose;
    }

    /** Reads a lone rate as the dose if each of its texts is a dose and one at least can be nothing else. */
    void apply(HeaderRow.Match match) {
        ColumnSpec dose = doseWanting(match);
        if (dose == null) {
            return;
        }
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            int sheetColumn = match.firstColumn() + i;
            if (heading != null
                    && !heading.isCertain()
                    && !heading.settled()
                    && heading.rest().isEmpty()
                    && heading.candidates().contains(dose)
                    && HeaderText.of(headers[sheetColumn]).normal().equals(RATE)
                    && holdsAmounts(sheetColumn, "")) {
                match.headings()[i] = heading.as(dose, "");
                tellBy(match, i, dose, AMOUNTS);
                return;
            }
        }
    }

    /**
     * Reads "Rate/ac", "Per acre" or "Per 100 L" as the dose if under it stand amounts of product alone, "0.5 l" and "20 g":
     * a price has no litres, and of water nobody puts out so little.
     */
    void applyPerSoMuch(HeaderRow.Match match) {
        ColumnSpec dose = doseWanting(match);
        if (dose == null) {
            return;
        }
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            int sheetColumn = match.firstColumn() + i;
            // "Per acre" by itself would be the unit of a dose.
            boolean open = heading == null
                    || !heading.settled()
                            && (heading.candidates().contains(dose)
                                    || heading.candidates()
                                            .contains(match.vocabulary()
                                                    .spec()
                                                    .unitColumns()
                                                    .get(dose)));
            String basis = open && headers[sheetColumn] != null ? basis(headers[sheetColumn]) : "";
            if (!basis.isEmpty() && holdsAmounts(sheetColumn, basis)) {
                match.headings()[i] = new Heading(List.of(dose), basis, 2, false, null);
                tellBy(match, i, dose, AMOUNTS);
                return;
            }
        }
    }

    /**
     * Reads two headers each of which may be the water or the dose, "L/acre" and "Rate (l/ac)" beside a product, by what
     * stands under them: more litres on a hectare than anybody doses are water, and fewer are no spray.
     */
    void partWaterAndDose(HeaderRow.Match match) {
        if (match.vocabulary().spec() != Jobs.LIST
                || match.places(Jobs.PRODUCT) == 0
                || match.places(Jobs.DOSE) > 0
                || match.places(Jobs.WATER_VOLUME) > 0) {
            return;
        }
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null
                    && !heading.isCertain()
                    && heading.candidates().containsAll(List.of(Jobs.DOSE, Jobs.WATER_VOLUME))) {
                open.add(i);
            }
        }
        if (open.size() != 2) {
            return;
        }
        for (int water : open) {
            int dose = open.get(0) == water ? open.get(1) : open.get(0);
            String litres = unitOf(match, water);
            String dosed = unitOf(match, dose);
            if (holdsLitres(match.firstColumn() + water, litres, true)
                    && holdsLitres(match.firstColumn() + dose, dosed, false)) {
                match.headings()[water] = match.headings()[water].as(Jobs.WATER_VOLUME, litres);
                match.headings()[dose] = match.headings()[dose].as(Jobs.DOSE, dosed);
                tellBy(match, water, Jobs.WATER_VOLUME, "more than is dosed of a product");
                tellBy(match, dose, Jobs.DOSE, AMOUNTS);
                return;
            }
        }
    }

    private String unitOf(HeaderRow.Match match, int place) {
        return match.headings()[place].unitIn(headers[match.firstColumn() + place]);
    }

    private void tellBy(HeaderRow.Match match, int place, ColumnSpec column, String what) {
        int sheetColumn = match.firstColumn() + place;
        findings.add(Finding.note(
                grid.address(headerRow, sheetColumn),
                Words.quoted(headers[sheetColumn]) + " is read as the " + column.name() + " of "
                        + match.vocabulary().spec().name() + ": its cells are " + what
                        + ". If it is something else, rename it."));
    }

    /** Whether all numbers under a header are litres on an area, and all of them more, or all fewer, than is dosed. */
    private boolean holdsLitres(int sheetColumn, String unit, boolean more) {
        if (!(DoseText.read(unit, CustomaryUnits.UNSET) instanceof DoseText.Known known)
                || !known.isPerArea()
                || !known.productUnit().equals("L")) {
            return false;
        }
        int numbers = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            if (grid.kind(row, sheetColumn) == Grid.Kind.NUMBER) {
                numbers++;
                if (known.unit().convert(grid.number(row, sheetColumn), Units.DOSE) < MOST_DOSED == more) {
                    return false;
                }
            }
        }
        return numbers > 0;
    }

    /** "/ac" of "Rate/ac", and "per 100 l" where that is all; "" if the header says no more or something else. */
    private static String basis(String header) {
        HeaderText text = HeaderText.of(header);
        String rest = text.begins(RATE) ? text.rest(1) : header.strip();
        return SaidUnit.isAreaAlone(rest) || SaidUnit.isPerSpray(rest) ? rest : "";
    }

    /** Whether all texts under a header are doses, on what the header counts them on, and one can be nothing else. */
    private boolean holdsAmounts(int sheetColumn, String basis) {
        boolean sure = false;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            if (kind == Grid.Kind.NUMBER) {
                return false;
            }
            AmountText amount = kind == Grid.Kind.TEXT ? AmountText.of(Words.trim(grid.text(row, sheetColumn))) : null;
            if (amount == null || amount.text().isEmpty() || Words.marksBlank(amount.text())) {
                continue;
            }
            DoseText unit = amount.isWithUnit()
                    ? DoseText.read((Words.trim(amount.unit()) + ' ' + basis).strip(), CustomaryUnits.UNSET)
                    : null;
            if (unit == null || unit instanceof DoseText.Unknown) {
                return false;
            }
            sure |= candidates(unit).stream().allMatch(known -> isNoWater(known, amount.value()));
        }
        return sure;
    }

    /** What it may be: "10 gal" are British gallons or American ones; none where it counts seeds or nutrient. */
    private static List<DoseText.Known> candidates(DoseText unit) {
        return unit instanceof DoseText.Known known
                ? List.of(known)
                : unit instanceof DoseText.Ambiguous ambiguous ? ambiguous.candidates() : List.of();
    }

    private static boolean isNoWater(DoseText.Known known, double value) {
        return known.isPerSpray()
                || known.isPerArea()
                        && (!known.productUnit().equals("L") || known.unit().convert(value, Units.DOSE) < MOST_DOSED);
    }
}
