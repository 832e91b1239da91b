package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;

/**
 * How an exact ratio is applied to a number: the same steps here, in a cell formula and in words, so that all three
 * give the same double.
 */
public final class Scaling {
    private static final int MOST_DECIMAL_DIGITS = 12;
    private static final int MOST_DIGITS_TOLD = 6;
    /** 0.3048 and 25.4 are known as units are; 5/9 and 5/18 say more than 1.8 and 3.6. */
    private static final int LEAST_DIGITS_OF_A_UNIT = 3;

    private static final BigInteger EXACT_DOUBLE = BigInteger.ONE.shiftLeft(53);

    private final double multiplier;
    private final double divisor;
    private final String multiplierText;
    private final String divisorText;
    private final String addedText;
    private final double added;

    private Scaling(String multiplierText, String divisorText) {
        this(multiplierText, divisorText, "0");
    }

    private Scaling(String multiplierText, String divisorText, String addedText) {
        this.multiplierText = multiplierText;
        this.divisorText = divisorText;
        this.addedText = addedText;
        this.added = Double.parseDouble(addedText);
        this.multiplier = Double.parseDouble(multiplierText);
        this.divisor = Double.parseDouble(divisorText);
    }

    /**
     * The steps for a ratio: ÷10 for 1/10, ×0.3048 for feet to metres and ÷0.3048 the other way, ×num÷den where neither
     * is a number that people know.
     */
    public static Scaling of(Ratio ratio) {
        BigInteger numerator = ratio.numerator();
        BigInteger denominator = ratio.denominator();
        if (ratio.isOne()) {
            return new Scaling("1", "1");
        }
        if (numerator.equals(BigInteger.ONE) && denominator.compareTo(EXACT_DOUBLE) < 0) {
            return new Scaling("1", denominator.toString());
        }
        BigDecimal decimal = finiteDecimal(ratio);
        if (decimal != null) {
            return new Scaling(decimal.toPlainString(), "1");
        }
        BigDecimal inverse = finiteDecimal(Ratio.ONE.over(ratio));
        if (inverse != null && (isLong(ratio) || inverse.precision() >= LEAST_DIGITS_OF_A_UNIT)) {
            return new Scaling("1", inverse.toPlainString());
        }
        if (numerator.compareTo(EXACT_DOUBLE) < 0 && denominator.compareTo(EXACT_DOUBLE) < 0) {
            return new Scaling(numerator.toString(), denominator.toString());
        }
        return new Scaling(BigDecimal.valueOf(ratio.toDouble()).toPlainString(), "1");
    }

    /**
     * The steps from one unit to another where zero is not zero in both: moisture to dry matter, °F to °C.
     *
     * @param cellScale what the stored number is multiplied by before it is in {@code from}
     */
    public static Scaling between(Unit from, Unit to, Ratio cellScale) {
        if (from.offset().equals(to.offset())) {
            return of(from.ratioTo(to).times(cellScale));
        }
        Scaling steps = of(from.factor().over(to.factor()).times(cellScale));
        double difference = (from.offset().toDouble() - to.offset().toDouble())
                / to.factor().toDouble();
        return new Scaling(
                steps.multiplierText,
                steps.divisorText,
                BigDecimal.valueOf(Function.round(difference, Function.NOISE_DECIMALS))
                        .stripTrailingZeros()
                        .toPlainString());
    }

    /** Two long numbers say less than the one by which people know the unit: 4.54609 L to the gallon. */
    private static boolean isLong(Ratio ratio) {
        return ratio.numerator().toString().length()
                        + ratio.denominator().toString().length()
                >= 2 * MOST_DIGITS_TOLD;
    }

    private static BigDecimal finiteDecimal(Ratio ratio) {
        try {
            BigDecimal exact = new BigDecimal(ratio.numerator())
                    .divide(new BigDecimal(ratio.denominator()))
                    .stripTrailingZeros();
            return exact.precision() <= MOST_DECIMAL_DIGITS ? exact : null;
        } catch (ArithmeticException endless) {
            return null;
        }
    }

    /** Whether nothing is to be done. */
    public boolean isNothing() {
        return multiplierText.equals("1") && divisorText.equals("1") && addedText.equals("0");
    }

    /** The number after the steps. */
    public double apply(double x) {
        double product = multiplierText.equals("1") ? x : x * multiplier;
        double quotient = divisorText.equals("1") ? product : product / divisor;
        return addedText.equals("0") ? quotient : quotient + added;
    }

    /** The steps as a cell formula writes them behind the number: {@code /10}, {@code *0.40468564224}. */
    public String cell() {
        return steps("*", "/", "+");
    }

    /** The steps in words: {@code  ÷ 10}; a ratio of two long numbers, as of lb/ft3, is told to six figures. */
    public String words() {
        if (multiplierText.length() > MOST_DIGITS_TOLD && divisorText.length() > MOST_DIGITS_TOLD) {
            return " × " + Numbers.readable(multiplier / divisor) + (addedText.equals("0") ? "" : " + " + addedText);
        }
        return steps(" × ", " ÷ ", " + ");
    }

    private String steps(String times, String over, String plus) {
        return (multiplierText.equals("1") ? "" : times + multiplierText)
                + (divisorText.equals("1") ? "" : over + divisorText)
                + (addedText.equals("0") ? "" : plus + addedText);
    }
}
