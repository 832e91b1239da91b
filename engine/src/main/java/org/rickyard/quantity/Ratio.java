package org.rickyard.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * An exact ratio of two whole numbers, always in lowest terms with a positive denominator. Conversions between units
 * are ratios, so that a formula can print {@code /10} where a decimal approximation would hide what was done.
 */
public record Ratio(BigInteger numerator, BigInteger denominator) {
    /** The ratio one. */
    public static final Ratio ONE = of(1);

    /**
     * Reduces to lowest terms.
     *
     * @throws ArithmeticException if the denominator is zero
     */
    public Ratio {
        if (denominator.signum() == 0) {
            throw new ArithmeticException("a ratio cannot have the denominator 0");
        }
        BigInteger divisor = numerator.gcd(denominator);
        if (denominator.signum() < 0) {
            divisor = divisor.negate();
        }
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
    }

    /** The whole number as a ratio. */
    public static Ratio of(long whole) {
        return new Ratio(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    /** The ratio {@code numerator / denominator}. */
    public static Ratio of(long numerator, long denominator) {
        return new Ratio(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
    }

    /** The exact value of a decimal text such as {@code "0.40468564224"}. */
    public static Ratio of(String decimal) {
        BigDecimal value = new BigDecimal(decimal);
        return value.scale() <= 0
                ? new Ratio(value.toBigIntegerExact(), BigInteger.ONE)
                : new Ratio(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    /** The product of both. */
    public Ratio times(Ratio other) {
        return new Ratio(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    /** The quotient of both. */
    public Ratio over(Ratio other) {
        return new Ratio(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }

    /** The whole power; negative exponents invert. */
    public Ratio pow(int exponent) {
        return exponent >= 0
                ? new Ratio(numerator.pow(exponent), denominator.pow(exponent))
                : new Ratio(denominator.pow(-exponent), numerator.pow(-exponent));
    }

    /** Whether this is exactly one. */
    public boolean isOne() {
        return equals(ONE);
    }

    /** The nearest double. */
    public double toDouble() {
        return denominator.equals(BigInteger.ONE)
                ? numerator.doubleValue()
                : new BigDecimal(numerator)
                        .divide(new BigDecimal(denominator), java.math.MathContext.DECIMAL128)
                        .doubleValue();
    }

    // Written out: a record's own equality is linked at its first use, which costs a short command some 30 ms.
    @Override
    public boolean equals(Object other) {
        return other instanceof Ratio that && numerator.equals(that.numerator) && denominator.equals(that.denominator);
    }

    @Override
    public int hashCode() {
        return 31 * numerator.hashCode() + denominator.hashCode();
    }

    @Override
    public String toString() {
        return denominator.equals(BigInteger.ONE) ? numerator.toString() : numerator + "/" + denominator;
    }
}
