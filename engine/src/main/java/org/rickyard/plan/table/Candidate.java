package org.rickyard.plan.table;

import org.rickyard.lists.ColumnSpec;

/** A place a value may be typed; of several, the first that is not blank stands. */
public record Candidate(Role role, ColumnSpec column, Standing standing) {
    /** Whether a value typed there is the thing itself or stands in for it. */
    public enum Standing {
        /** Typed for this row. */
        TYPED,
        /** Typed elsewhere as a fallback, and shown as a default. */
        DEFAULT
    }

    /** A place whose values are the thing itself. */
    public static Candidate typed(Role role, ColumnSpec column) {
        return new Candidate(role, column, Standing.TYPED);
    }

    /** A place whose values are a fallback. */
    public static Candidate fallback(Role role, ColumnSpec column) {
        return new Candidate(role, column, Standing.DEFAULT);
    }
}
