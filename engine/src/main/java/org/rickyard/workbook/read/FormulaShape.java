package org.rickyard.workbook.read;

import java.util.ArrayList;
import java.util.List;

/**
 * The normal form of formulas that are the same in every row but for one row number, taken once and then completed row
 * by row, so that a column of a million formulas is not normalised a million times.
 */
public final class FormulaShape {
    private static final char ROW = UnplacedFormula.ROW;

    private final MeaningHash.Run[] runs;
    /** The runs without the places on other sheets; null if there are none. */
    private final MeaningHash.Run[] unplaced;

    private final List<UnplacedFormula.Lead> leads;

    private FormulaShape(String formula) {
        this.runs = runs(formula);
        UnplacedFormula without = UnplacedFormula.of(formula);
        this.unplaced = without == null ? null : runs(without.formula());
        this.leads = without == null ? List.of() : without.leads();
    }

    /**
     * The shape of a formula cut into pieces between which the row number stands, each time behind a column's letters
     * or a dollar sign.
     */
    public static FormulaShape of(List<String> pieces) {
        return new FormulaShape(String.join(String.valueOf(ROW), pieces));
    }

    private static MeaningHash.Run[] runs(String formula) {
        List<MeaningHash.Run> runs = new ArrayList<>();
        runs.add(new MeaningHash.Run());
        NormalFormula.mix(formula, value -> {
            if (value == ROW) {
                runs.add(new MeaningHash.Run());
            } else {
                runs.get(runs.size() - 1).mix(value);
            }
        });
        return runs.toArray(MeaningHash.Run[]::new);
    }

    void mix(long row, MeaningHash hash) {
        mix(runs, row, hash);
    }

    boolean leadsElsewhere() {
        return unplaced != null;
    }

    /** The same without the places on other sheets. */
    void mixUnplaced(long row, MeaningHash hash) {
        mix(unplaced, row, hash);
    }

    /** The single cells on other sheets that it leads to. */
    List<UnplacedFormula.Lead> leads() {
        return leads;
    }

    private static void mix(MeaningHash.Run[] runs, long row, MeaningHash hash) {
        hash.mix(runs[0]);
        MeaningHash.Run number = new MeaningHash.Run();
        digits(row, number);
        for (int i = 1; i < runs.length; i++) {
            hash.mix(number);
            hash.mix(runs[i]);
        }
    }

    private static void digits(long number, Mixer hash) {
        long power = 1;
        while (power <= number / 10) {
            power *= 10;
        }
        for (; power > 0; power /= 10) {
            hash.mix('0' + number / power % 10);
        }
    }
}
