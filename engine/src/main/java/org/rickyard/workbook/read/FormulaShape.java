package org.rickyard.workbook.read;

import java.util.ArrayList;
import java.util.List;

/**
 * The normal form of formulas that are the same in every row but for one row number, taken once and then completed row
 * by row, so that a column of a million formulas is not normalised a million times.
 */
public final class FormulaShape {
    /** Stands for the row number; a private character that is part of a word, as the digits after a column are. */
    private static final char ROW = '\uE001';

    private final MeaningHash.Run[] runs;

    private FormulaShape(MeaningHash.Run[] runs) {
        this.runs = runs;
    }

    /**
     * The shape of a formula cut into pieces between which the row number stands, each time behind a column's letters
     * or a dollar sign.
     */
    public static FormulaShape of(List<String> pieces) {
        List<MeaningHash.Run> runs = new ArrayList<>();
        runs.add(new MeaningHash.Run());
        NormalFormula.mix(String.join(String.valueOf(ROW), pieces), value -> {
            if (value == ROW) {
                runs.add(new MeaningHash.Run());
            } else {
                runs.get(runs.size() - 1).mix(value);
            }
        });
        return new FormulaShape(runs.toArray(MeaningHash.Run[]::new));
    }

    void mix(long row, MeaningHash hash) {
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
