package org.rickyard.lists.text;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a slope written in words as metres out for each metre up. */
public final class BatterText {
    private static final String NUMBER = "([0-9.]+) ?";
    private static final String BETWEEN = " ?(?::|to|in|,|and)? ?";
    private static final String OUT = "(?:h|hor|horiz|horizontal|out)";
    private static final String UP = "(?:v|vert|vertical|up)";

    /** "2H:1V", "2 horizontal to 1 vertical": which way it runs is said. */
    private static final Pattern OUT_TO_UP = Pattern.compile(NUMBER + OUT + BETWEEN + NUMBER + UP);

    /** "1V:2H", "1 up, 2 out". */
    private static final Pattern UP_TO_OUT = Pattern.compile(NUMBER + UP + BETWEEN + NUMBER + OUT);

    private static final Pattern RATIO = Pattern.compile("([^:]*)(?::| to )([^:]*)");

    private BatterText() {}

    /** Whether a text is a bare ratio that could run either way: "1:3" (3 out for 1 up, or 3 up for 1 out). */
    public static boolean isBareRatio(String text) {
        double[] parts = ratio(text);
        return parts != null && parts[0] == 1 && parts[1] != 1;
    }

    /**
     * "1 in 3" is 3, "45°" is 1, "2:1" and "2 to 1" are 2 (horizontal to vertical, as slopes are written with
     * the 1 last), "1V:3H" is 3 and "vertical" is 0. Empty if it cannot be read or would have to be asked.
     */
    public static OptionalDouble read(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        if (plain.equals("vertical") || plain.equals("upright")) {
            return OptionalDouble.of(0);
        }
        Matcher outToUp = OUT_TO_UP.matcher(plain);
        if (outToUp.matches()) {
            return quotient(number(outToUp.group(1)), number(outToUp.group(2)));
        }
        Matcher upToOut = UP_TO_OUT.matcher(plain);
        if (upToOut.matches()) {
            return quotient(number(upToOut.group(2)), number(upToOut.group(1)));
        }
        int in = plain.indexOf(" in ");
        if (in > 0) {
            return quotient(number(plain.substring(in + 4)), number(plain.substring(0, in)));
        }
        for (String mark : new String[] {"°", "degrees", "deg"}) {
            if (plain.endsWith(mark)) {
                return ofDegrees(number(plain.substring(0, plain.length() - mark.length())));
            }
        }
        double[] parts = ratio(plain);
        if (parts != null && parts[1] == 1 && parts[0] >= 0) {
            return OptionalDouble.of(parts[0]);
        }
        return OptionalDouble.empty();
    }

    private static OptionalDouble quotient(double out, double up) {
        return up > 0 && out >= 0 ? OptionalDouble.of(out / up) : OptionalDouble.empty();
    }

    /** The slope of a side that rises at this angle from the level. */
    public static OptionalDouble ofDegrees(double degrees) {
        if (!(degrees > 0 && degrees <= 90)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                degrees == 90 ? 0 : degrees == 45 ? 1 : 1 / StrictMath.tan(StrictMath.toRadians(degrees)));
    }

    private static double[] ratio(String text) {
        Matcher parts = RATIO.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            return null;
        }
        double first = number(parts.group(1));
        double second = number(parts.group(2));
        return first >= 0 && second >= 0 ? new double[] {first, second} : null;
    }

    /** A plain decimal, or NaN. */
    public static double number(String text) {
        String digits = text.strip();
        boolean point = false;
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            if (c == '.' && !point) {
                point = true;
            } else if (c < '0' || c > '9') {
                return Double.NaN;
            }
        }
        return digits.isEmpty() || digits.equals(".") ? Double.NaN : Double.parseDouble(digits);
    }
}
