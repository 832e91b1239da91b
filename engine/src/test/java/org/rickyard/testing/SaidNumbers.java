package org.rickyard.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a formula with numbers as a person with a calculator would, {@code 10 × 3 × 80 % ÷ 10}, and works it out: by
 * the text alone, with nothing of the engine's.
 */
public final class SaidNumbers {
    private static final Pattern NUMBER =
            Pattern.compile("-?[0-9]+(\\.[0-9]+)?(E-?[0-9]+)?( %)?( yr)?( \\(from '.*?'\\))?");
    private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern NONE = Pattern.compile("\\([^():]+: none\\)");
    private static final Pattern ROUNDED = Pattern.compile(" rounded to ([0-9]+) decimals");

    private final String text;
    private int at;

    private SaidNumbers(String text) {
        this.text = text;
    }

    /** What the text comes to. */
    public static double of(String text) {
        SaidNumbers said = new SaidNumbers(text);
        double value = said.sum();
        if (said.at < text.length()) {
            throw new IllegalArgumentException("not understood from '" + text.substring(said.at) + "' in: " + text);
        }
        return value;
    }

    private boolean take(String word) {
        if (text.startsWith(word, at)) {
            at += word.length();
            return true;
        }
        return false;
    }

    private double sum() {
        double value = product();
        while (true) {
            if (take(" + ")) {
                value += product();
            } else if (take(" − ")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (take(" × ")) {
                value *= power();
            } else if (take(" ÷ ")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double value = atom();
        if (take("²")) {
            value = value * value;
        } else if (take("³")) {
            value = value * value * value;
        }
        Matcher rounded = ROUNDED.matcher(text).region(at, text.length());
        if (rounded.lookingAt()) {
            at = rounded.end();
            double ten = Math.pow(10, Integer.parseInt(rounded.group(1)));
            value = Math.rint(value * ten) / ten;
        }
        return value;
    }

    private double atom() {
        Matcher none = NONE.matcher(text).region(at, text.length());
        if (none.lookingAt()) {
            at = none.end();
            return Double.NaN;
        }
        if (take("least of (") || take("least given of (")) {
            return arguments().stream()
                    .mapToDouble(x -> x)
                    .filter(x -> !Double.isNaN(x))
                    .min()
                    .orElseThrow();
        } else if (take("greatest of (")) {
            return arguments().stream().mapToDouble(x -> x).max().orElseThrow();
        } else if (take("square root of (")) {
            return Math.sqrt(arguments().get(0));
        } else if (take("natural logarithm of (")) {
            return Math.log(arguments().get(0));
        } else if (take("e to the power (")) {
            return Math.exp(arguments().get(0));
        } else if (take("arc tangent of (")) {
            return Math.atan(arguments().get(0));
        } else if (take("size of (")) {
            return Math.abs(arguments().get(0));
        } else if (take("rounded up (")) {
            return Math.ceil(arguments().get(0) - 1e-9);
        } else if (take("rounded down (")) {
            return Math.floor(arguments().get(0) + 1e-9);
        } else if (take("(−")) {
            return -arguments().get(0);
        } else if (take("(")) {
            return arguments().get(0);
        }
        if (take("π")) {
            return Math.PI;
        }
        Matcher day = DAY.matcher(text).region(at, text.length());
        if (day.lookingAt()) {
            at = day.end();
            return LocalDate.parse(day.group()).toEpochDay();
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (!number.lookingAt()) {
            throw new IllegalArgumentException("no number at '" + text.substring(at) + "' in: " + text);
        }
        at = number.end();
        double value = Double.parseDouble(number.group().replaceAll(" .*", ""));
        return number.group(3) == null ? value : value / 100;
    }

    private List<Double> arguments() {
        List<Double> arguments = new ArrayList<>();
        do {
            arguments.add(sum());
        } while (take("; "));
        if (!take(")")) {
            throw new IllegalArgumentException("no ')' at '" + text.substring(at) + "' in: " + text);
        }
        return arguments;
    }
}
