package org.rickyard.run;

/**
 * How a run is made.
 *
 * @param mostTrailRows beyond so many results the trail holds one row per column; at most 1,000,000
 * @param allSheets whether all sheets are worked out even of a very large workbook; see {@link
 *     org.rickyard.plan.ChiefTables}
 * @param threads threads that pack the file; the bytes do not depend on them
 */
public record RunOptions(long mostTrailRows, boolean allSheets, int threads) {
    /** The usual limit of the trail. */
    public static final long USUAL_TRAIL_ROWS = 20_000;
    /** The highest limit of the trail. */
    public static final long MOST_TRAIL_ROWS = 1_000_000;

    /** Checks the bounds. */
    public RunOptions {
        if (mostTrailRows < 0 || mostTrailRows > MOST_TRAIL_ROWS) {
            throw new IllegalArgumentException("the trail takes 0 to 1,000,000 rows, not " + mostTrailRows);
        }
        if (threads < 1) {
            throw new IllegalArgumentException("a run needs at least one thread");
        }
    }

    /** The usual way. */
    public static RunOptions usual() {
        return new RunOptions(USUAL_TRAIL_ROWS, false, 2);
    }
}
