package org.rickyard.quantity;

/** Two units that do not measure the same kind of thing were added, compared or converted. */
public final class UnitMismatchException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** States both units and their dimensions. */
    public UnitMismatchException(Unit one, Unit other) {
        super("'" + one + "' (" + one.dimension() + ") and '" + other + "' (" + other.dimension()
                + ") do not measure the same kind of thing");
    }
}
