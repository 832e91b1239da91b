package org.rickyard.workbook.graft;

/**
 * How a cell looks.
 *
 * @param role the named style it belongs to, as "Rickyard input"; the plain words are names of built-in styles
 * @param numberFormat a number format code, "General" for none
 * @param bold in bold
 * @param italic in italics
 * @param fontRgb colour of the letters as RRGGBB, or null for the workbook's own
 * @param fillRgb colour of the ground as RRGGBB, or null for none
 * @param border its lines
 * @param align where the text stands from left to right
 * @param wrap whether long text is broken into lines
 * @param vertical where the text stands from top to bottom
 * @param size of the letters in points, 0 for the workbook's own
 */
public record CellLook(
        String role,
        String numberFormat,
        boolean bold,
        boolean italic,
        String fontRgb,
        String fillRgb,
        Border border,
        Align align,
        boolean wrap,
        Vertical vertical,
        int size) {
    /** The lines round a cell. */
    public enum Border {
        NONE,
        /** A thin line on all sides. */
        THIN,
        /** A thin line below. */
        BOTTOM
    }

    /** Left to right. */
    public enum Align {
        /** Numbers right, text left. */
        GENERAL,
        LEFT,
        CENTER,
        RIGHT
    }

    /** Top to bottom. */
    public enum Vertical {
        TOP,
        CENTER,
        BOTTOM
    }

    /** @throws IllegalArgumentException if a colour is not written as RRGGBB or the role has no name */
    public CellLook {
        if (role.isBlank()) {
            throw new IllegalArgumentException("a look needs a role");
        }
        checkColour(fontRgb);
        checkColour(fillRgb);
    }

    private static void checkColour(String rgb) {
        boolean fits = rgb == null || rgb.length() == 6;
        for (int i = 0; rgb != null && fits && i < 6; i++) {
            fits = "0123456789ABCDEF".indexOf(rgb.charAt(i)) >= 0;
        }
        if (!fits) {
            throw new IllegalArgumentException("a colour is written as RRGGBB in capitals, not " + rgb);
        }
    }

    /** Asked for every cell with a look; role and format tell most apart, and texts keep their hashes. */
    @Override
    public int hashCode() {
        int lines = border.ordinal() * 31 + align.ordinal() * 7 + vertical.ordinal();
        return (role.hashCode() * 31 + numberFormat.hashCode()) * 31 + lines * 31 + (bold ? 2 : 0) + (wrap ? 1 : 0);
    }

    /** A plain look with this role. */
    public static CellLook of(String role) {
        return new CellLook(
                role, "General", false, false, null, null, Border.NONE, Align.GENERAL, false, Vertical.BOTTOM, 0);
    }

    /** The same with a number format, as the grid writes its code: {@code 0.00}. */
    public CellLook withNumberFormat(String code) {
        return new CellLook(role, code, bold, italic, fontRgb, fillRgb, border, align, wrap, vertical, size);
    }

    /** The same in bold. */
    public CellLook withBold() {
        return new CellLook(role, numberFormat, true, italic, fontRgb, fillRgb, border, align, wrap, vertical, size);
    }

    /** The same in italics. */
    public CellLook withItalic() {
        return new CellLook(role, numberFormat, bold, true, fontRgb, fillRgb, border, align, wrap, vertical, size);
    }

    /** The same with letters of this colour, RRGGBB in capitals; null for that of the workbook. */
    public CellLook withFont(String rgb) {
        return new CellLook(role, numberFormat, bold, italic, rgb, fillRgb, border, align, wrap, vertical, size);
    }

    /** The same on this colour, RRGGBB in capitals; null for none. */
    public CellLook withFill(String rgb) {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, rgb, border, align, wrap, vertical, size);
    }

    /** The same with these lines around it. */
    public CellLook withBorder(Border lines) {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, fillRgb, lines, align, wrap, vertical, size);
    }

    /** The same, so aligned from left to right. */
    public CellLook withAlign(Align where) {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, fillRgb, border, where, wrap, vertical, size);
    }

    /** The same with its text broken into lines at the width of the column. */
    public CellLook withWrap() {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, fillRgb, border, align, true, vertical, size);
    }

    /** The same, so aligned from top to bottom. */
    public CellLook withVertical(Vertical where) {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, fillRgb, border, align, wrap, where, size);
    }

    /** The same with letters of this size in points; 0 for that of the workbook. */
    public CellLook withSize(int points) {
        return new CellLook(role, numberFormat, bold, italic, fontRgb, fillRgb, border, align, wrap, vertical, points);
    }

    /** The look of the role itself: without what a single column adds. */
    CellLook ofRole() {
        return new CellLook(
                role, "General", bold, italic, fontRgb, fillRgb, border, Align.GENERAL, false, Vertical.BOTTOM, size);
    }
}
