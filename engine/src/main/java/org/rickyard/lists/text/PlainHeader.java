package org.rickyard.lists.text;

import java.util.regex.Pattern;

/**
 * A header without what is no part of its name or unit: marks that lead to footnotes ("Area² (ha)", "Speed † (km/h)"),
 * and that it may stay empty ("Crew (optional)"). Words run together, as databases export them, are set apart:
 * "FloorWidth_m", "DMAtCutting"; and "a.i.", which would be two words, is "ai".
 */
final class PlainHeader {
    /** Beside a unit of length a small 2 or 3 makes it an area or a volume; a small 1 makes it nothing but "ha⁻¹". */
    private static final Pattern FOOTNOTE = Pattern.compile("[†‡§]"
            + "|(?<=\\p{L}{3})(?<!\\b(?i:metre|metres|meter|meters|mtr|mtrs|foot|feet|inch|inches|yard|yards|ins|yds))[¹²³⁴-⁹]+(?![¹²³⁴-⁹])"
            + "|(?<=\\p{L}{2})¹(?![¹²³⁴-⁹])"
            + "|(?<=[)\\].\\s])[¹²³⁴-⁹]+$");

    /** "Required" is not among them: a rate of work (required) is another figure than the one there is. */
    private static final Pattern MAY_BE_EMPTY = Pattern.compile(
            "(?i)\\s*[(\\[{,;]\\s*(optional|mandatory|(if|where) (known|applicable|any))\\s*([)\\]}]|$)");

    /** Not within kPa, kWh or MPa, where but one small letter stands before the capital. */
    private static final Pattern RUN_TOGETHER =
            Pattern.compile("(?<=\\p{Ll}\\p{Ll}|\\p{Lu}\\p{Ll}|\\p{Lu}\\p{Lu})(?=\\p{Lu}\\p{Ll})");

    /** Active ingredient, cut short. */
    private static final Pattern ACTIVE = Pattern.compile("(?i)\\ba\\. ?i(?:\\.|\\b)(?!\\p{L})");

    private PlainHeader() {}

    /** Texts that are none of this come back as they are; rows of words are asked about often. */
    static String of(String header) {
        String plain = header;
        if (hasMark(plain)) {
            plain = FOOTNOTE.matcher(plain).replaceAll("");
        }
        if (plain.indexOf('(') >= 0 || plain.indexOf('[') >= 0 || plain.indexOf(',') >= 0 || plain.indexOf(';') >= 0) {
            plain = MAY_BE_EMPTY.matcher(plain).replaceAll("");
        }
        if (plain.indexOf('.') > 0) {
            plain = ACTIVE.matcher(plain).replaceAll("ai");
        }
        return hasCapitalWithin(plain) ? RUN_TOGETHER.matcher(plain).replaceAll(" ") : plain;
    }

    private static boolean hasMark(String text) {
        return text.chars()
                .anyMatch(c ->
                        c == '¹' || c == '²' || c == '³' || c >= '⁴' && c <= '⁹' || c == '†' || c == '‡' || c == '§');
    }

    private static boolean hasCapitalWithin(String text) {
        for (int i = 1; i + 1 < text.length(); i++) {
            if (Character.isUpperCase(text.charAt(i))
                    && Character.isLowerCase(text.charAt(i + 1))
                    && Character.isLetter(text.charAt(i - 1))) {
                return true;
            }
        }
        return false;
    }
}
