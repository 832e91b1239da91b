package org.rickyard.workbook.meaning;

import java.util.ArrayList;
import java.util.List;

/**
 * The normal form of formulas that are the same in every row but for one row number, taken once and then completed row
 * by row, so that a column of a million formulas is not normalised a million times.
 */
public final class FormulaShape {
    private static final char ROW = UnplacedFormula.ROW;

    private final MeaningHash.Runs runs;
    /** The runs without the places on other sheets; null if there are none. */
    private final MeaningHash.Runs unplaced;

    private final List<UnplacedFormula.Lead> leads;
    private final boolean sortable;
    /** Whether the number is that of the row it is in wherever it stands behind letters alone. */
    private boolean ownRow;
    /** Whether a row of its own sheet is told by itself, so that it may or may not be its own. */
    private boolean otherRows;

    private FormulaShape(String formula, boolean sortable) {
        this.sortable = sortable;
        this.runs = runs(formula);
        UnplacedFormula without = UnplacedFormula.of(formula);
        this.unplaced = without == null ? null : runs(without.formula());
        this.leads = without == null ? List.of() : known(without.leads());
    }

    /**
     * The shape of a formula cut into pieces between which the row number stands, each time behind a column's letters
     * or a dollar sign.
     *
     * @param sortable whether it is for rows that may be sorted
     */
    public static FormulaShape of(List<String> pieces, boolean sortable) {
        return new FormulaShape(String.join(String.valueOf(ROW), pieces), sortable);
    }

    /**
     * Whether it is the shape of the formula there.
     *
     * @param number the row number that goes into the shape
     * @param inSortable whether the row is one that may be sorted
     */
    boolean fits(int row, int number, boolean inSortable) {
        return sortable == inSortable && !otherRows && (!ownRow || number == row + 1);
    }

    /** The same name of a sheet is the same object in all shapes: it is looked up for every cell. */
    private static List<UnplacedFormula.Lead> known(List<UnplacedFormula.Lead> leads) {
        return leads.stream()
                .map(lead -> new UnplacedFormula.Lead(lead.sheet().intern(), lead.row()))
                .toList();
    }

    private MeaningHash.Runs runs(String formula) {
        NormalText text = new NormalText();
        otherRows |= NormalFormula.write(formula, sortable ? NormalFormula.LATER : NormalFormula.NO_ROW, text);
        List<MeaningHash.Run> runs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < text.size(); i++) {
            ownRow |= text.value(i) == NormalFormula.OWN_ROW;
            if (text.value(i) == ROW) {
                runs.add(MeaningHash.Run.of(text, from, i));
                from = i + 1;
            }
        }
        runs.add(MeaningHash.Run.of(text, from, text.size()));
        return new MeaningHash.Runs(runs);
    }

    void mix(MeaningHash.Run number, MeaningHash hash) {
        hash.mix(runs, number);
    }

    boolean leadsElsewhere() {
        return unplaced != null;
    }

    /** The same without the places on other sheets. */
    void mixUnplaced(MeaningHash.Run number, MeaningHash hash) {
        hash.mix(unplaced, number);
    }

    /** The single cells on other sheets that it leads to. */
    List<UnplacedFormula.Lead> leads() {
        return leads;
    }
}
