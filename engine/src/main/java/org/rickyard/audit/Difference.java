package org.rickyard.audit;

import java.util.Optional;
import org.rickyard.lists.CellAddress;

/**
 * A result that is not the same in two workbooks. One side is empty where the other workbook alone has it.
 *
 * @param holding whose it is; empty where nobody's holding is named
 * @param about what it is about: field, job, machine …; empty for what holds for the whole workbook
 * @param what the result
 * @param before how it is in the one workbook
 * @param after how it is in the other
 * @param headline whether it is among the answers that Summary shows, of either workbook
 */
public record Difference(
        String holding, String about, String what, Optional<Figure> before, Optional<Figure> after, boolean headline) {

    /**
     * One side of it.
     *
     * @param cell where it stands in that workbook
     * @param number its number, if it is one
     * @param words a word in place of a number, or why there is no value
     * @param given whether there is a value
     * @param unit the unit of the number; empty if it has none
     * @param decimals how many decimals it is told with
     * @param own the same number in the client's own unit, where he measures in another than ours
     */
    public record Figure(
            CellAddress cell,
            Optional<Double> number,
            String words,
            boolean given,
            String unit,
            int decimals,
            Optional<Result.Own> own) {

        /** Two programs agree on what they have reckoned to about this share of it. */
        private static final double ALIKE = 1e-9;

        /** Whether both say the same, wherever they stand and whatever unit is shown beside them. */
        boolean saysTheSameAs(Figure other) {
            if (number.isPresent() && other.number.isPresent()) {
                double one = number.get();
                double two = other.number.get();
                return Math.abs(one - two) <= ALIKE * Math.max(Math.abs(one), Math.abs(two));
            }
            return given == other.given && number.equals(other.number) && words.equals(other.words);
        }
    }

    /** Where it stands: in the later workbook, or in the earlier one if it is gone. */
    public CellAddress cell() {
        return after.or(() -> before).orElseThrow().cell();
    }
}
