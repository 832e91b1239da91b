package org.rickyard.formula;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.rickyard.quantity.Ratio;

/**
 * How an exact ratio is applied to a number: the same steps here, in a cell formula and in words, so that all three
 * give the same double.
 */
public final class Scaling {
    private static final int MOST_DECIMAL_DIGITS = 12;
    private static final BigInteger EXACT_DOUBLE = BigInteger.ONE.shiftLeft(53);

    private final double multiplier;
    private final double divisor;
    private final String multiplierText;
    private final String divisorText;

    private Scaling(String multiplierText, String divisorText) {
        this.multiplierText = multiplierText;
        this.divisorText = divisorText;
        this.multiplier = Double.parseDouble(multiplierText);
        this.divisor = Double.parseDouble(divisorText);
    }

    /** The steps for a ratio: ÷10 for 1/10, ×0.40468564224 for acres to hectares, ×num÷den where no decimal ends. */
    public static Scaling of(Ratio ratio) {
        BigInteger numerator = ratio.numerator();
        BigInteger denominator = ratio.denominator();
        if (numerator.equals(BigInteger.ONE) && denominator.compareTo(EXACT_DOUBLE) < 0) {
            return new Scaling("1", denominator.toString());
        }
        BigDecimal decimal = finiteDecimal(ratio);
        if (decimal != null) {
            return new Scaling(decimal.toPlainString(), "1");
        }
        if (numerator.compareTo(EXACT_DOUBLE) < 0 && denominator.compareTo(EXACT_DOUBLE) < 0) {
            return new Scaling(numerator.toString(), denominator.toString());
        }
        return new Scaling(BigDecimal.valueOf(ratio.toDouble()).toPlainString(), "1");
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
        return multiplierText.equals("1") && divisorText.equals("1");
    }

    /** The number after the steps. */
    public double apply(double x) {
        double product = multiplierText.equals("1") ? x : x * multiplier;
        return divisorText.equals("1") ? product : product / divisor;
    }

    /** The steps as a cell formula writes them behind the number: {@code /10}, {@code *0.40468564224}. */
    public String cell() {
        return steps("*", "/");
    }

    /** The steps in words: {@code  ÷ 10}. */
    public String words() {
        return steps(" × ", " ÷ ");
    }

    private String steps(String times, String over) {
        return (multiplierText.equals("1") ? "" : times + multiplierText)
                + (divisorText.equals("1") ? "" : over + divisorText);
    }
}
