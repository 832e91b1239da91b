package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.ResultTable;
import org.rickyard.plan.SheetPlaces;
import org.rickyard.plan.TableSpec;
import org.rickyard.plan.WorkPlan;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Covering;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.FilledByCrop;
import org.rickyard.trade.silage.Rolling;

/**
 * Clamp cards: for each clamp a block to print and hang up, with live figures, a drawn section, the height not to be
 * exceeded, and its cautions.
 */
final class ClampCards {
    private static final int MOST_CARDS = 200;
    private static final int DRAWING_GAP = 1;

    /** What a card says, in this order, and where it stands. */
    private record Entry(String table, Symbol symbol) {}

    private static final List<Entry> ENTRIES = List.of(
            new Entry("clamp-heights", ClampHeights.HIGHEST),
            new Entry("clamp-heights", ClampHeights.HEIGHT_ON_DAY),
            new Entry("clamp-heights", ClampHeights.TOP_ON_DAY),
            new Entry("clamps", Quantities.CLAMP_LENGTH),
            new Entry("clamps", Quantities.FLOOR_WIDTH),
            new Entry("clamps", Quantities.WALL_HEIGHT),
            new Entry("clamps", ClampShape.HEIGHT),
            new Entry("clamps", ClampShape.TOP_WIDTH_USED),
            new Entry("clamps", ClampShape.VOLUME),
            new Entry("clamps", ClampContents.CLAMP_DM),
            new Entry("clamps", ClampContents.DENSITY),
            new Entry("clamps", ClampContents.CAPACITY),
            new Entry("clamps", ClampContents.CROP_IN),
            new Entry("clamps", ClampContents.ROOM),
            new Entry("clamp-heights", FilledByCrop.FILLED_TO),
            new Entry("clamp-rolling", Rolling.WEIGHT),
            new Entry("clamp-rolling", Rolling.CAPACITY),
            new Entry("clamp-rolling", Rolling.LAYER_USED),
            new Entry("clamp-covering", Covering.ROLLS),
            new Entry("clamp-effluent", EffluentTank.TANK_WANTED));

    private static final List<String> CAUTIONED =
            List.of("clamp-heights", "clamps", "clamp-density", "clamp-rolling", "clamp-effluent");

    private final PlainSheet page;
    private final WorkPlan plan;
    private final SheetPlaces places;

    private ClampCards(PlainSheet page, WorkPlan plan, SheetPlaces places) {
        this.page = page;
        this.plan = plan;
        this.places = places;
    }

    static PlainSheet build(
            Looks.Numbers looks, WorkPlan plan, SheetPlaces places, String masterCheck, String masterCheckValue) {
        List<Integer> widths = new ArrayList<>(List.of(34, 12, 10, 3));
        widths.addAll(Collections.nCopies(ClampSection.COLUMNS, 2));
        PlainSheet page = new PlainSheet(looks, widths, 2);
        page.line().text(Looks.TITLE, "Clamp cards").height(22);
        page.line().formula(Looks.CHECK, masterCheck, masterCheckValue);
        ClampCards cards = new ClampCards(page, plan, places);
        int clamps = plan.table("clamps").rows();
        for (int row = 0; row < clamps && row < MOST_CARDS; row++) {
            cards.card(row);
        }
        if (clamps > MOST_CARDS) {
            page.line().text(Looks.TEXT, "and " + (clamps - MOST_CARDS) + " more clamps on the result sheets");
        }
        return page;
    }

    private void card(int row) {
        ResultTable clamps = plan.table("clamps");
        String holding = clamps.of(Quantities.HOLDING).word(row);
        page.line();
        page.line()
                .text(
                        Looks.HEADING,
                        clamps.of(Quantities.CLAMP).word(row)
                                + (holding.isEmpty() ? "" : ", " + holding) + " ("
                                + clamps.of(Quantities.CLAMP_KIND).word(row) + ")");
        List<String> drawing = ClampSection.of(clamps, plan.table("clamp-heights"), row);
        int drawn = 0;
        for (Entry entry : ENTRIES) {
            PlainSheet.Line line = entry(entry, row);
            if (line != null && drawn < drawing.size()) {
                draw(line, drawing.get(drawn++));
            }
        }
        for (String table : CAUTIONED) {
            caution(plan.table(table), row);
        }
        page.line()
                .text(
                        Looks.CAUTION,
                        "No permission: the wall's loading notice, its installer, the regulator and local code decide.");
    }

    /** One figure of a card, live; none where its sheet has no row for the clamp, or no column in this workbook. */
    private PlainSheet.Line entry(Entry entry, int clamp) {
        ResultTable table = plan.table(entry.table());
        int row = row(table, clamp);
        if (row < 0 || table.spec().column(entry.symbol()).isEmpty()) {
            return null;
        }
        Symbol symbol = entry.symbol();
        Values values = table.of(symbol);
        String cell = places.cell(table.spec(), symbol, row).absolute();
        String name = symbol.name();
        PlainSheet.Line line = page.line().text(Looks.NAME, Character.toUpperCase(name.charAt(0)) + name.substring(1));
        var look = Looks.decimals(Looks.RESULT, Math.min(4, symbol.decimals()));
        String shown = "IF(ISNUMBER(" + cell + ")," + cell + ",\"\")";
        if (values.has(row)) {
            line.formula(look, shown, values.number(row));
        } else {
            line.formula(look, shown, "");
        }
        String unit = symbol.unit().symbol();
        return line.text(Looks.UNIT, unit.isEmpty() ? "-" : unit);
    }

    private void caution(ResultTable table, int clamp) {
        int row = row(table, clamp);
        if (row < 0 || table.spec().column(TableSpec.CAUTIONS).isEmpty()) {
            return;
        }
        page.line()
                .formula(
                        Looks.CAUTION,
                        places.cell(table.spec(), TableSpec.CAUTIONS, row).absolute() + "&\"\"",
                        table.of(TableSpec.CAUTIONS).word(row));
    }

    private static int row(ResultTable table, int clamp) {
        Values keys = table.of(Keys.CLAMP_KEY);
        for (int row = 0; row < table.rows(); row++) {
            if (keys.number(row) == clamp + 1) {
                return row;
            }
        }
        return -1;
    }

    private static void draw(PlainSheet.Line line, String drawing) {
        for (int i = 0; i < DRAWING_GAP; i++) {
            line.skip();
        }
        if (drawing.length() != ClampSection.COLUMNS) {
            line.text(Looks.TEXT, drawing);
            return;
        }
        for (int column = 0; column < drawing.length(); column++) {
            char mark = drawing.charAt(column);
            switch (mark) {
                case ClampSection.WALL -> line.text(Looks.LABEL, String.valueOf(mark));
                case ClampSection.SETTLED -> line.text(Looks.RESULT, String.valueOf(mark));
                case ClampSection.ON_DAY -> line.text(Looks.INPUT, String.valueOf(mark));
                default -> line.skip();
            }
        }
    }
}
