package org.rickyard.formula;

/**
 * Where a fact of the trade comes from.
 *
 * @param standing how far it can be trusted
 * @param reference document, year, clause, page or table
 */
public record Source(Standing standing, String reference) {
    /** How far a fact can be trusted. */
    public enum Standing {
        /** Read in the named publication. */
        PUBLISHED("published"),
        /** Read where somebody else reports the named body. */
        PUBLISHED_SECOND_HAND("published, read at second hand"),
        /** Follows from units, geometry or arithmetic. */
        DERIVED("derived"),
        /** What the trade does, without a publisher. */
        COMMON_PRACTICE("common practice"),
        /** Remembered, not verified; may be overruled on Assumptions. */
        MEMORY("from memory");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** As printed on Basis and in trails. */
        public String words() {
            return words;
        }
    }

    /** A fact read in a publication. */
    public static Source published(String reference) {
        return new Source(Standing.PUBLISHED, reference);
    }

    /** A fact read at second hand. */
    public static Source secondHand(String reference) {
        return new Source(Standing.PUBLISHED_SECOND_HAND, reference);
    }

    /** A fact that follows from units or geometry. */
    public static Source derived(String reference) {
        return new Source(Standing.DERIVED, reference);
    }

    /** Common practice. */
    public static Source commonPractice(String reference) {
        return new Source(Standing.COMMON_PRACTICE, reference);
    }

    /** From memory. */
    public static Source memory(String reference) {
        return new Source(Standing.MEMORY, reference);
    }

    @Override
    public String toString() {
        return standing == Standing.PUBLISHED ? reference : reference + " (" + standing.words() + ")";
    }
}
