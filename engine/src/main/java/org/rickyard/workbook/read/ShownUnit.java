package org.rickyard.workbook.read;

/** What a number format shows behind the number: {@code 0.0" m"} shows m. People read it as the unit of the cell. */
final class ShownUnit {
    private ShownUnit() {}

    /** The text behind the last digit of the first section, without outer spaces; "" if there is none. */
    static String ofCode(String code) {
        StringBuilder text = new StringBuilder();
        boolean number = false;
        boolean scaled = false;
        int i = 0;
        if (code.regionMatches(true, 0, "general", 0, "general".length())) {
            number = true;
            i = "general".length();
        }
        for (; i < code.length(); i++) {
            char c = code.charAt(i);
            switch (c) {
                case ';' -> {
                    return scaled ? "" : unit(number, text);
                }
                case '"' -> {
                    int close = code.indexOf('"', i + 1);
                    int end = close < 0 ? code.length() : close;
                    text.append(code, i + 1, end);
                    i = end;
                }
                case '\\' -> {
                    i++;
                    text.append(i < code.length() ? String.valueOf(code.charAt(i)) : "");
                }
                // A space as wide as a character, or one to fill the cell with.
                case '_', '*' -> i++;
                // Colours, conditions, currencies.
                case '[' -> {
                    int close = code.indexOf(']', i);
                    i = close < 0 ? code.length() : close;
                }
                case '0', '#', '?' -> {
                    number = true;
                    scaled = false;
                    text.setLength(0);
                }
                case '.' -> {}
                // A comma behind the last digit shows thousands: the unit is then not that of the number held.
                case ',' -> scaled = number;
                default -> text.append(c);
            }
        }
        return scaled ? "" : unit(number, text);
    }

    private static String unit(boolean number, StringBuilder text) {
        String unit = text.toString().strip();
        return number && !unit.equals("%") && !unit.equals(")") ? unit : "";
    }
}
