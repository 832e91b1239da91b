package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Counted;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.fit.OwnUnit;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.Covering;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.FilledByCrop;
import org.rickyard.trade.silage.Filling;
import org.rickyard.trade.silage.Rolling;
import org.rickyard.trade.silage.SilageCautions;
import org.rickyard.workbook.graft.CellLook;

/**
 * Clamp cards: for each clamp a page to print and hang up, with the height not to be exceeded, live figures, a drawn
 * section, the dangers, and the clamp's own cautions.
 */
final class ClampCards {
    private static final int MOST_CARDS = 200;
    /** Characters that stand in the cells right of the figures. */
    private static final int RIGHT = 48;

    private static final String INDENT = "   ";

    /** What a card says, in this order, and where it stands. */
    private record Entry(String table, Symbol symbol) {}

    private static final Entry LIMIT = new Entry("clamp-heights", ClampHeights.HIGHEST);

    /** First what is watched on the day, then what the clamp is and holds. */
    private static final List<Entry> ENTRIES = List.of(
            new Entry("clamp-heights", ClampHeights.HEIGHT_ON_DAY),
            new Entry("clamp-heights", ClampHeights.TOP_ON_DAY),
            new Entry("clamp-rolling", Rolling.LAYER_USED),
            new Entry("clamp-rolling", Rolling.LAYERS),
            new Entry("clamp-rolling", Rolling.MASS_USED),
            new Entry("clamp-rolling", Rolling.CAPACITY),
            new Entry("clamp-rolling", Filling.DELIVERY_USED),
            new Entry("clamp-rolling", Rolling.WEIGHT),
            new Entry("clamp-rolling", Filling.HOURS),
            new Entry("clamp-rolling", Filling.DAYS_OPEN),
            new Entry("clamps", Quantities.CLAMP_LENGTH),
            new Entry("clamps", Quantities.FLOOR_WIDTH),
            new Entry("clamps", Quantities.WALL_HEIGHT),
            new Entry("clamps", ClampSides.HEIGHT),
            new Entry("clamps", ClampShape.TOP_WIDTH_USED),
            new Entry("clamps", ClampShape.VOLUME),
            new Entry("clamps", ClampContents.CLAMP_DM),
            new Entry("clamps", ClampContents.DENSITY),
            new Entry("clamps", ClampContents.CAPACITY),
            new Entry("clamps", ClampContents.CROP_IN),
            new Entry("clamps", ClampContents.ROOM),
            new Entry("clamp-heights", FilledByCrop.FILLED_TO),
            new Entry("clamp-covering", Covering.ROLLS),
            new Entry("clamp-effluent", EffluentTank.TANK_WANTED));

    private static final String TANKS = "effluent-tanks";

    /** Whose cautions stand on a card: first what concerns the day, then what concerns water and feed. */
    private static final List<String> CAUTIONED = List.of(
            "pit-digging", "clamp-heights", "clamps", "clamp-rolling", "clamp-effluent", TANKS, "clamp-density");

    private final PlainSheet page;
    private final WorkPlan plan;
    private final CardParts parts;

    private ClampCards(PlainSheet page, WorkPlan plan, SheetPlaces places, RowMarks marks) {
        this.page = page;
        this.plan = plan;
        this.parts = new CardParts(page, places, marks);
    }

    static PlainSheet build(
            Looks.Numbers looks,
            WorkPlan plan,
            SheetPlaces places,
            RowMarks marks,
            String masterCheck,
            String masterCheckValue) {
        List<Integer> widths = new ArrayList<>(List.of(40, 9, 11, 1));
        widths.addAll(Collections.nCopies(ClampSection.COLUMNS, 2));
        PlainSheet page = new PlainSheet(looks, widths, 2).asCards();
        page.line().text(Looks.TITLE, "Clamp cards").height(22);
        page.line().formula(Looks.CHECK, masterCheck, masterCheckValue);
        ClampCards cards = new ClampCards(page, plan, places, marks);
        int clamps = plan.table("clamps").rows();
        for (int row = 0; row < clamps && row < MOST_CARDS; row++) {
            if (row > 0) {
                page.newPage();
            }
            cards.card(row);
        }
        if (clamps > MOST_CARDS) {
            page.line().text(Looks.TEXT, "and " + Counted.more(clamps - MOST_CARDS, "clamp") + " on the result sheets");
        }
        return page;
    }

    private void card(int row) {
        ResultTable clamps = plan.table("clamps");
        String holding = clamps.of(Quantities.HOLDING).word(row);
        parts.title(clamps.of(Quantities.CLAMP).word(row) + (holding.isEmpty() ? "" : ", " + holding) + " ("
                + clamps.of(Quantities.CLAMP_KIND).word(row) + ")");
        List<String> right = new ArrayList<>(ClampSection.of(clamps, plan.table("clamp-heights"), row));
        right.add("");
        right.add(DANGERS);
        SilageCautions.CARD.forEach(
                danger -> right.addAll(BrokenLines.of(plan.ownUnits().said(danger, holding), RIGHT, INDENT)));
        int drawn = 0;
        PlainSheet.Line limit = entry(LIMIT, row, true);
        if (limit != null) {
            limit.height(24);
            ownUnit(LIMIT, row);
        }
        parts.always(
                "No height here is a permission: the wall's loading notice, its installer, the regulator and local code"
                        + " decide, and often allow less.");
        cautions(row);
        for (Entry entry : ENTRIES) {
            PlainSheet.Line line = entry(entry, row, false);
            if (line != null && drawn < right.size()) {
                draw(line, right.get(drawn++));
            }
            PlainSheet.Line own = line == null ? null : ownUnit(entry, row);
            if (own != null && drawn < right.size()) {
                draw(own, right.get(drawn++));
            }
        }
        while (drawn < right.size()) {
            draw(page.line().skip().skip().skip(), right.get(drawn++));
        }
        parts.status(clamps, row);
    }

    private static final String DANGERS = "Dangers";

    /** One figure of a card, live; none where its sheet has no row for the clamp, or no column in this workbook. */
    private PlainSheet.Line entry(Entry entry, int clamp, boolean large) {
        ResultTable table = plan.table(entry.table());
        int row = row(table, clamp);
        if (row < 0 || table.spec().column(entry.symbol()).isEmpty() || isNoWall(entry, clamp)) {
            return null;
        }
        Symbol symbol = entry.symbol();
        PlainSheet.Line line = page.line().text(large ? Looks.TITLE : Looks.NAME, symbol.heading());
        CellLook look = large ? Looks.LIMIT : CardParts.look(symbol.decimals());
        return parts.figure(line, look, table, symbol, row, listed(entry, table, row))
                .text(Looks.UNIT, CardParts.unit(symbol));
    }

    /** No crop listed is not a crop of nought. */
    private Optional<CardParts.Provided> listed(Entry entry, ResultTable table, int row) {
        return entry.symbol().equals(ClampContents.CROP_IN)
                ? Optional.of(parts.provided(table, ClampContents.CROP_IN, row, "none listed"))
                : Optional.empty();
    }

    /** The figure in the client's own unit, on a line of its own; none where he measures as we do. */
    private PlainSheet.Line ownUnit(Entry entry, int clamp) {
        ResultTable table = plan.table(entry.table());
        int row = row(table, clamp);
        Optional<OwnUnit> own = plan.ownUnits().of(table, entry.symbol(), row);
        if (own.isEmpty()) {
            return null;
        }
        PlainSheet.Line line = page.line()
                .text(
                        Looks.NAME_WRAPPED,
                        entry.symbol().heading() + " in " + own.get().unit());
        return parts.own(line, own.get(), table, entry.symbol(), row, listed(entry, table, row))
                .text(Looks.UNIT, own.get().unit().symbol());
    }

    /** A heap has no wall to tell the height of. */
    private boolean isNoWall(Entry entry, int clamp) {
        Values wall = plan.table("clamps").of(Quantities.WALL_HEIGHT);
        return entry.symbol().equals(Quantities.WALL_HEIGHT) && wall.has(clamp) && wall.number(clamp) == 0;
    }

    private void cautions(int clamp) {
        for (String id : CAUTIONED) {
            ResultTable table = plan.table(id);
            parts.caution(table, id.equals(TANKS) ? tank(clamp) : row(table, clamp));
        }
        parts.tellCautions();
    }

    private static int row(ResultTable table, int clamp) {
        return rowOf(table, Keys.CLAMP_KEY, clamp + 1);
    }

    /** The row of the tank that the clamp drains to; -1 where none is named. */
    private int tank(int clamp) {
        ResultTable effluent = plan.table("clamp-effluent");
        int row = row(effluent, clamp);
        double tank = row < 0 ? 0 : effluent.of(Keys.TANK_KEY).number(row);
        return tank > 0 ? rowOf(plan.table("effluent-tanks"), Keys.TANK_KEY, tank) : -1;
    }

    private static int rowOf(ResultTable table, Symbol key, double number) {
        Values keys = table.of(key);
        for (int row = 0; row < table.rows(); row++) {
            if (keys.number(row) == number) {
                return row;
            }
        }
        return -1;
    }

    private static void draw(PlainSheet.Line line, String drawing) {
        line.skip();
        if (drawing.equals(DANGERS)) {
            line.text(Looks.HEADING, drawing);
            return;
        }
        if (!ClampSection.isDrawn(drawing)) {
            line.text(Looks.TEXT, drawing);
            return;
        }
        for (int column = 0; column < drawing.length(); column++) {
            char mark = drawing.charAt(column);
            switch (mark) {
                case ClampSection.WALL -> line.text(Looks.DRAWN_WALL, "");
                case ClampSection.SETTLED -> line.text(Looks.DRAWN_SETTLED, String.valueOf(mark));
                case ClampSection.ON_DAY -> line.text(Looks.DRAWN_ON_DAY, String.valueOf(mark));
                case ClampSection.LIMIT -> line.text(Looks.DRAWN_LIMIT, String.valueOf(mark));
                default -> line.skip();
            }
        }
    }
}
