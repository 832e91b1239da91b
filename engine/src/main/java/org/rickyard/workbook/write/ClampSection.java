package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;

/**
 * A section across a clamp, drawn in cells as it was at the last run: walls or earth, silage settled, and silage on the
 * day of filling. Each has a mark of its own, so that it prints in black and white.
 */
final class ClampSection {
    /** Cells across. */
    static final int COLUMNS = 22;
    /** Wall, or earth. */
    static final char WALL = '█';
    /** Silage when settled. */
    static final char SETTLED = '▒';
    /** Silage on the day of filling. */
    static final char ON_DAY = '░';
    /** The height not to be exceeded. */
    static final char LIMIT = '━';

    private static final int ROWS = 11;
    /** A limit so far above the silage would squash the drawing. */
    private static final double FARTHEST_LIMIT = 1.6;

    private final double floor;
    private final double slope;
    private final double wall;
    private final double settled;
    private final double onDay;
    private final double crown;
    private final boolean earth;
    private final double limit;

    private ClampSection(ResultTable clamps, ResultTable heights, int row) {
        String kind = clamps.of(Quantities.CLAMP_KIND).word(row);
        boolean between = kind.equals(ClampShape.WALLED) || kind.equals(ClampShape.EARTH_PIT);
        double batter = kind.equals(ClampShape.MEASURED) ? 0 : number(clamps, ClampSides.BATTER_USED, row);
        this.floor = number(clamps, Quantities.FLOOR_WIDTH, row);
        this.slope = between ? batter : -batter;
        this.wall = between ? number(clamps, Quantities.WALL_HEIGHT, row) : 0;
        this.settled = number(clamps, between ? ClampSides.HEIGHT : height(kind), row);
        this.onDay = Math.max(settled, number(heights, ClampHeights.HEIGHT_ON_DAY, row));
        this.crown = between ? number(clamps, Quantities.CROWN, row) : 0;
        this.earth = kind.equals(ClampShape.EARTH_PIT);
        this.limit = number(heights, ClampHeights.HIGHEST, row);
    }

    private static Symbol height(String kind) {
        return kind.equals(ClampShape.MEASURED) ? ClampSides.HEIGHT : ClampShape.HEAP_HEIGHT;
    }

    /** The drawing, line by line, with what the marks mean; one line where the shape is withheld. */
    static List<String> of(ResultTable clamps, ResultTable heights, int row) {
        if (!clamps.of(ClampShape.VOLUME).has(row)) {
            return List.of("no section: the shape is withheld");
        }
        return new ClampSection(clamps, heights, row).lines();
    }

    private static double number(ResultTable table, Symbol symbol, int row) {
        // Of a very large workbook the sheet of heights is not worked out; the section is drawn without it.
        return row < table.rows() && table.of(symbol).has(row)
                ? table.of(symbol).number(row)
                : 0;
    }

    private List<String> lines() {
        double silage = Math.max(onDay + crown, wall);
        boolean limited = limit > 0 && limit < FARTHEST_LIMIT * silage;
        double highest = Math.max(silage, limited ? limit : 0) * 1.05;
        double widest = Math.max(half(0), half(Math.max(wall, onDay))) * 1.25;
        int line = limited ? (int) ((1 - limit / highest) * ROWS) : -1;
        List<String> lines = new ArrayList<>();
        for (int drawn = 0; drawn < ROWS; drawn++) {
            double up = highest * (1 - (drawn + 0.5) / ROWS);
            StringBuilder marks = new StringBuilder();
            for (int column = 0; column < COLUMNS; column++) {
                double across = Math.abs((column + 0.5) / COLUMNS * 2 - 1) * widest;
                char mark = mark(across, up, widest / COLUMNS * 4);
                marks.append(drawn == line && mark != WALL ? LIMIT : mark);
            }
            lines.add(marks.toString());
        }
        lines.add(String.valueOf(WALL).repeat(COLUMNS));
        lines.add("█ wall, floor or earth   ▒ settled");
        lines.add("░ on the day" + (limited ? "   ━ do not exceed" : ""));
        lines.add("Not to scale; drawn at the last run.");
        return lines;
    }

    private char mark(double across, double up, double thickness) {
        double half = half(up);
        if (across < half && up < top(settled, across)) {
            return SETTLED;
        } else if (across < half && up < top(onDay, across)) {
            return ON_DAY;
        } else if (across >= half && up < wall && (earth || across < half(wall) + thickness)) {
            return WALL;
        }
        return ' ';
    }

    private double half(double up) {
        return floor / 2 + slope * up;
    }

    private double top(double sides, double across) {
        double half = half(sides);
        double share = half > 0 ? Math.min(1, across / half) : 1;
        return sides + crown * (1 - share * share);
    }

    /** Whether a line is part of the drawing, and not of what is said under it. */
    static boolean isDrawn(String line) {
        return line.length() == COLUMNS && line.chars().allMatch(c -> c == ' ' || c >= LIMIT);
    }
}
