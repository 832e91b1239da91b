package org.rickyard.quantity;

import java.util.Arrays;

/**
 * A dimension: exponents over the base dimensions of the trade. Dry matter is a base dimension of its own, so that a
 * density of dry matter cannot stand where a fresh one is meant, and so has what acts or feeds in a product; product is the amount of a crop protection product in
 * that product's own unit (litre, kilogram, tablet), which differs from row to row.
 */
public final class Dimension {
    /** The base dimensions. */
    public enum Base {
        /** Metres. */
        LENGTH,
        /** Kilograms as they stand (fresh, laden, soil). */
        MASS,
        /** Seconds. */
        TIME,
        /** Kelvin. */
        TEMPERATURE,
        /** The workbook's currency. */
        MONEY,
        /** Kilograms of dry matter. */
        DRY_MATTER,
        /** A product's own unit. */
        PRODUCT,
        /** Kilograms of what acts or feeds in a product: active ingredient or nutrient. */
        SUBSTANCE
    }

    /** No dimension: a plain number. */
    public static final Dimension NONE = new Dimension(new int[Base.values().length]);

    private final int[] exponents;

    private Dimension(int[] exponents) {
        this.exponents = exponents;
    }

    /** The dimension with this one base to the first power. */
    public static Dimension of(Base base) {
        int[] exponents = new int[Base.values().length];
        exponents[base.ordinal()] = 1;
        return new Dimension(exponents);
    }

    /** The exponent of one base. */
    public int exponent(Base base) {
        return exponents[base.ordinal()];
    }

    /** The product of both dimensions. */
    public Dimension times(Dimension other) {
        return combine(other, 1);
    }

    /** The quotient of both dimensions. */
    public Dimension over(Dimension other) {
        return combine(other, -1);
    }

    /** The whole power. */
    public Dimension pow(int exponent) {
        int[] result = new int[exponents.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = exponents[i] * exponent;
        }
        return new Dimension(result);
    }

    private Dimension combine(Dimension other, int sign) {
        int[] result = exponents.clone();
        for (int i = 0; i < result.length; i++) {
            result[i] += sign * other.exponents[i];
        }
        return new Dimension(result);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Dimension that && Arrays.equals(exponents, that.exponents);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(exponents);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (Base base : Base.values()) {
            int exponent = exponent(base);
            if (exponent != 0) {
                text.append(text.isEmpty() ? "" : "·")
                        .append(base.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
                text.append(exponent == 1 ? "" : "^" + exponent);
            }
        }
        return text.isEmpty() ? "plain number" : text.toString();
    }
}
