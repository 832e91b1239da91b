package org.rickyard.quantity;

/**
 * A unit: its symbol as the trade writes it, its dimension, and the exact ratio to the coherent base unit (metre,
 * kilogram, second, kelvin). {@code offset} is added, in base units, after scaling; only temperatures have one.
 */
public record Unit(String symbol, Dimension dimension, Ratio factor, Ratio offset) {

    /** A unit without offset. */
    public static Unit of(String symbol, Dimension dimension, Ratio factor) {
        return new Unit(symbol, dimension, factor, Ratio.of(0));
    }

    /** This unit times another, with a generated symbol. */
    public Unit times(Unit other) {
        requireProportional();
        other.requireProportional();
        String text = symbol.isEmpty() ? other.symbol : other.symbol.isEmpty() ? symbol : symbol + "·" + other.symbol;
        return of(text, dimension.times(other.dimension), factor.times(other.factor));
    }

    /** This unit over another, with a generated symbol. */
    public Unit over(Unit other) {
        requireProportional();
        other.requireProportional();
        String text =
                other.symbol.isEmpty() ? symbol : symbol.isEmpty() ? "1/" + other.symbol : symbol + "/" + other.symbol;
        return of(text, dimension.over(other.dimension), factor.over(other.factor));
    }

    /** The whole power of this unit, with a generated symbol. */
    public Unit pow(int exponent) {
        requireProportional();
        return of(symbol.isEmpty() ? "" : symbol + "^" + exponent, dimension.pow(exponent), factor.pow(exponent));
    }

    /** The same unit under another symbol. */
    public Unit named(String newSymbol) {
        return new Unit(newSymbol, dimension, factor, offset);
    }

    /** Whether both measure the same kind of thing. */
    public boolean isCompatible(Unit other) {
        return dimension.equals(other.dimension);
    }

    /** Whether a value in this unit is the same number in the other: equal dimension, factor and offset. */
    public boolean isSameScale(Unit other) {
        return isCompatible(other) && factor.equals(other.factor) && offset.equals(other.offset);
    }

    /** Whether it counts in hundredths of what it is a share of: %, % DM and the like. */
    public boolean isPerCent() {
        return symbol.startsWith("%") || isSameScale(Units.PERCENT) || isSameScale(Units.PERCENT_DM);
    }

    /**
     * Whether its symbol says that it is so much by each of another: "t/d" is by the day, and "L/min" is not, though both
     * are by a time and the scale alone would not tell them apart.
     */
    public boolean isPer(Unit other) {
        return symbol.endsWith("/" + other.symbol);
    }

    /** What its symbol counts, without that by each of which it is counted: "t" of "t/d", "L" of "L". */
    public String counted() {
        int per = symbol.lastIndexOf('/');
        return per < 0 ? symbol : symbol.substring(0, per);
    }

    /**
     * The exact number by which a value in this unit is multiplied to give the value in the other.
     *
     * @throws UnitMismatchException if the dimensions differ or either unit has an offset
     */
    public Ratio ratioTo(Unit other) {
        if (!isCompatible(other)) {
            throw new UnitMismatchException(this, other);
        }
        if (!isSameScale(other)) {
            requireProportional();
            other.requireProportional();
        }
        return factor.over(other.factor);
    }

    /**
     * The value in the other unit, offsets included.
     *
     * @throws UnitMismatchException if the dimensions differ
     */
    public double convert(double value, Unit other) {
        if (isSameScale(other)) {
            return value;
        }
        if (offset.equals(other.offset)) {
            Ratio ratio = ratioTo(other);
            return value * ratio.numerator().doubleValue() / ratio.denominator().doubleValue();
        }
        if (!isCompatible(other)) {
            throw new UnitMismatchException(this, other);
        }
        return (value * factor.toDouble() + offset.toDouble() - other.offset.toDouble()) / other.factor.toDouble();
    }

    /** Whether its zero is the zero of what it measures, as that of temperatures is not; others are not multiplied. */
    public boolean isProportional() {
        return offset.numerator().signum() == 0;
    }

    private void requireProportional() {
        if (!isProportional()) {
            throw new IllegalArgumentException(symbol + " has an offset and cannot be multiplied or divided");
        }
    }

    @Override
    public String toString() {
        return symbol.isEmpty() ? "-" : symbol;
    }
}
