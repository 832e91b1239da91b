package org.rickyard.lists.text;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads a nozzle's size code: 4 for "04", "ISO 04", "11004", "110-04", "red 04" and "F110/1.6/3.0". The code counts
 * tenths of a US gallon per minute at about 3 bar, which is 0.4 L/min each.
 */
public final class NozzleText {
    private static final List<String> COLOURS = List.of(
            "orange",
            "green",
            "yellow",
            "lilac",
            "violet",
            "purple",
            "blue",
            "red",
            "brown",
            "grey",
            "gray",
            "white",
            "black",
            "light blue",
            "light green",
            "pink",
            "dark red");

    /** The kind of fan and its angle: "F110 03". */
    private static final Pattern FAN = Pattern.compile("f(65|80|90|95|110|120|130|140)");

    private NozzleText() {}

    /** Whether a text names a colour and no size: makers differ, so it is asked. */
    public static boolean isColourOnly(String text) {
        return COLOURS.contains(Words.normal(text));
    }

    /** Whether a bare number may have lost its leading zero: 25 may be size 025 or 25. */
    public static boolean hasLostZero(double number) {
        return number == 15 || number == 25 || number == 67 || number > 0 && number < 0.5;
    }

    /** The size code of a text. */
    public static OptionalDouble read(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        if (plain.startsWith("f") && plain.indexOf('/') > 0) {
            return ofFlow(plain.substring(1).split("/"));
        }
        String found = "";
        for (String word : plain.split("\\s+")) {
            boolean isDigits = !word.isEmpty() && word.chars().allMatch(c -> c >= '0' && c <= '9');
            if (isDigits) {
                found = word;
            } else if (!word.equals("iso")
                    && !word.equals("size")
                    && !COLOURS.contains(word)
                    && !FAN.matcher(word).matches()) {
                return OptionalDouble.empty();
            }
        }
        return found.isEmpty() ? OptionalDouble.empty() : ofDigits(found);
    }

    /** BCPC code: angle, flow in L/min and pressure in bar. */
    private static OptionalDouble ofFlow(String[] parts) {
        if (parts.length != 3) {
            return OptionalDouble.empty();
        }
        double flow = BatterText.number(parts[1]);
        double bar = BatterText.number(parts[2]);
        // Cut to six decimals: 1.2 / 0.4 is a whisker below 3, and size 03 is looked up as 3.
        return flow > 0 && bar > 0
                ? OptionalDouble.of(Math.rint(flow / 0.4 * StrictMath.sqrt(3 / bar) * 1e6) / 1e6)
                : OptionalDouble.empty();
    }

    private static OptionalDouble ofDigits(String digits) {
        String code = digits;
        for (String angle : new String[] {"110", "120", "130", "140", "65", "80", "90", "95"}) {
            if (digits.length() > 3 && digits.startsWith(angle) && digits.length() - angle.length() >= 2) {
                code = digits.substring(angle.length());
                break;
            }
        }
        if (code.length() > 4 || code.length() > 2 && code.charAt(0) != '0') {
            return OptionalDouble.empty();
        }
        if (code.charAt(0) == '0' && code.length() > 1) {
            double size = Double.parseDouble(code) / Math.pow(10, code.length() - 2);
            return size > 0 ? OptionalDouble.of(size) : OptionalDouble.empty();
        }
        double size = Double.parseDouble(code);
        return size > 0 && (code.length() == 2 || digits.length() == 1)
                ? OptionalDouble.of(size)
                : OptionalDouble.empty();
    }
}
