package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Counted;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.fit.OwnUnit;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzlePressure;
import org.rickyard.trade.spraying.SprayRates;
import org.rickyard.trade.spraying.TankLoads;
import org.rickyard.trade.spraying.TankPlan;

/**
 * Spray cards: for each block a page for the cab, with the setting, what goes into a full tank and into the last one in
 * mixing order, which fields each tankful sprays, washing out, the cautions, and lines for the operator. All figures are
 * live.
 */
final class SprayCards {
    private static final int MOST_CARDS = 200;
    private static final int MOST_TANKFULS = 16;
    private static final String BLOCKS = "spray-blocks";
    private static final String MIX = "tank-mix";
    private static final String LOADS = TankLoads.LOADS;
    private static final String WASHING = "spray-washing";
    private static final String NOZZLES = "nozzles";
    private static final String WINDOW = "spray-window";
    private static final List<Symbol> AMOUNTS =
            List.of(TankPlan.PRODUCT_FULL, TankPlan.PRODUCT_PART, TankPlan.PRODUCT_FOR_BLOCK);

    private static final String BLANK = "................................";

    private final PlainSheet page;
    private final WorkPlan plan;
    private final SheetPlaces places;
    private final CardParts parts;
    private final FieldAndNozzleCautions fieldsAndNozzles;
    private final ResultTable blocks;
    private final Set<Double> shown = new HashSet<>();
    /** Titles that more than one card would have. */
    private final Set<String> alike = new HashSet<>();

    private final RowsByKey byBlock = new RowsByKey(Keys.BLOCK_KEY, shown::contains);
    private final RowsByKey settings = new RowsByKey(Keys.MACHINE_KEY, key -> true);

    private SprayCards(PlainSheet page, WorkPlan plan, SheetPlaces places, RowMarks marks) {
        this.page = page;
        this.plan = plan;
        this.places = places;
        this.parts = new CardParts(page, places, marks);
        this.fieldsAndNozzles = new FieldAndNozzleCautions(page, plan, places, marks);
        this.blocks = plan.table(BLOCKS);
        Set<String> titles = new HashSet<>();
        for (int row = 0; row < blocks.rows() && row < MOST_CARDS; row++) {
            shown.add(blocks.of(Keys.BLOCK_KEY).number(row));
            if (!titles.add(names(row))) {
                alike.add(names(row));
            }
        }
    }

    static PlainSheet build(
            Looks.Numbers looks,
            WorkPlan plan,
            SheetPlaces places,
            RowMarks marks,
            String masterCheck,
            String masterCheckValue) {
        boolean acres = IntStream.range(0, plan.table(LOADS).rows()).anyMatch(row -> plan.ownUnits()
                .of(plan.table(LOADS), TankLoads.AREA_IN_TANKFUL, row)
                .isPresent());
        List<Integer> widths = acres ? List.of(48, 14, 13, 13, 11, 11) : List.of(48, 14, 13, 13, 11);
        PlainSheet page = new PlainSheet(looks, widths, 2).asCards();
        page.line().text(Looks.TITLE, "Spray cards").height(22);
        page.line().formula(Looks.CHECK, masterCheck, masterCheckValue);
        SprayCards cards = new SprayCards(page, plan, places, marks);
        for (int row = 0; row < cards.blocks.rows() && row < MOST_CARDS; row++) {
            if (row > 0) {
                page.newPage();
            }
            cards.card(row);
        }
        if (cards.blocks.rows() > MOST_CARDS) {
            page.line()
                    .text(
                            Looks.TEXT,
                            "and " + Counted.more(cards.blocks.rows() - MOST_CARDS, "block") + " on the result sheets");
        }
        return page;
    }

    private void card(int row) {
        parts.title(title(row));
        double key = blocks.of(Keys.BLOCK_KEY).number(row);
        int nozzle = nozzle(row);
        cautions(row, key, nozzle);
        figure(blocks, Quantities.WATER_VOLUME, row);
        figure(blocks, Quantities.SPEED, row);
        ResultTable nozzles = plan.table(NOZZLES);
        if (nozzle >= 0) {
            value(page.line().text(Looks.NAME, "Nozzle size (4 for 04)"), nozzles, Quantities.NOZZLE_SIZE, nozzle)
                    .text(Looks.UNIT, "-");
            figure(nozzles, NozzlePressure.WANTED_PRESSURE, nozzle);
        }
        figure(blocks, SprayRates.OUTPUT_PER_NOZZLE, row);
        figure(blocks, TankPlan.TREATED_AREA, row);
        figure(blocks, TankPlan.SPRAY_TOTAL, row);
        figure(blocks, TankPlan.TANK_FILLED, row);
        figure(blocks, TankPlan.FULL, row);
        figure(blocks, TankPlan.PART, row);
        mix(row, key);
        loads(key);
        washing(key);
        alwaysCautions();
        operator();
    }

    /** The names of a block, and where it is listed if another goes by them too: a field may be sprayed twice. */
    private String title(int row) {
        String names = names(row);
        return alike.contains(names) ? names + ", " + blocks.written(row) : names;
    }

    private String names(int row) {
        StringBuilder title = new StringBuilder();
        for (Symbol symbol : List.of(
                Quantities.JOB, Quantities.FIELDS_OF_JOB, Quantities.OPERATION, Quantities.BLOCK, Quantities.MACHINE)) {
            String word = blocks.spec().column(symbol).isEmpty()
                    ? ""
                    : blocks.of(symbol).word(row);
            title.append(title.isEmpty() || word.isEmpty() ? "" : ", ").append(word);
        }
        String holding = blocks.of(Quantities.HOLDING).word(row);
        return title + (holding.isEmpty() ? "" : " (" + holding + ")");
    }

    private void figure(ResultTable table, Symbol symbol, int row) {
        if (table.spec().column(symbol).isEmpty()) {
            return;
        }
        PlainSheet.Line line = value(page.line().text(Looks.NAME, symbol.heading()), table, symbol, row)
                .text(Looks.UNIT, CardParts.unit(symbol));
        plan.ownUnits().of(table, symbol, row).ifPresent(own -> parts.own(
                        line, own, table, symbol, row, Optional.empty())
                .text(Looks.UNIT, own.unit().symbol()));
    }

    private PlainSheet.Line value(PlainSheet.Line line, ResultTable table, Symbol symbol, int row) {
        if (table.spec().column(symbol).isEmpty()) {
            return line.skip();
        }
        return parts.figure(line, CardParts.look(symbol.decimals()), table, symbol, row);
    }

    /** What goes into a full tank and into the last one, in the order of Tank fills. */
    private void mix(int block, double key) {
        ResultTable mix = plan.table(MIX);
        List<Integer> rows = inMixingOrder(key);
        if (rows.isEmpty()) {
            return;
        }
        page.line();
        page.line()
                .text(Looks.LABEL, "In mixing order (the labels decide the order)")
                .text(Looks.LABEL, "Unit")
                .text(Looks.LABEL, "Full tank")
                .text(Looks.LABEL, "Last tank")
                .text(Looks.LABEL, "In all");
        for (int row : rows) {
            PlainSheet.Line line = page.line()
                    .text(Looks.NAME_WRAPPED, mix.of(Quantities.PRODUCT).word(row))
                    .text(Looks.UNIT, mix.of(Quantities.PRODUCT_UNIT).word(row));
            for (Symbol amount : AMOUNTS) {
                if (mix.spec().column(amount).isEmpty()) {
                    line.skip();
                } else {
                    parts.figure(line, CardParts.look(amount.decimals()), mix, amount, row, tank(amount, block));
                }
            }
            ownUnit(mix, row, block);
        }
    }

    /** Without which tank an amount of product means nothing. */
    private Optional<CardParts.Provided> tank(Symbol amount, int block) {
        Symbol tank = amount.equals(TankPlan.PRODUCT_FULL)
                ? TankPlan.FULL
                : amount.equals(TankPlan.PRODUCT_PART) ? TankPlan.PART : null;
        return tank == null || blocks.spec().column(tank).isEmpty()
                ? Optional.empty()
                : Optional.of(parts.provided(blocks, tank, block, ""));
    }

    /** The same product in the unit that its dose was asked in, on a line of its own. */
    private void ownUnit(ResultTable mix, int row, int block) {
        Optional<OwnUnit> unit = plan.ownUnits().of(mix, TankPlan.PRODUCT_FOR_BLOCK, row);
        if (unit.isEmpty()) {
            return;
        }
        PlainSheet.Line line = page.line()
                .text(Looks.NAME_WRAPPED, mix.of(Quantities.PRODUCT).word(row) + ", in your unit")
                .text(Looks.UNIT, unit.get().unit().symbol());
        for (Symbol amount : AMOUNTS) {
            if (mix.spec().column(amount).isEmpty()) {
                line.skip();
            } else {
                parts.own(line, unit.get(), mix, amount, row, tank(amount, block));
            }
        }
    }

    private List<Integer> inMixingOrder(double block) {
        ResultTable mix = plan.table(MIX);
        ResultTable fills = plan.table("tank-fills");
        List<Integer> rows = new ArrayList<>();
        for (int fill : rowsOf(fills, block)) {
            if (fills.of(TankLoads.TANKFUL).number(fill) == 1) {
                double key = fills.of(Keys.TANK_MIX_KEY).number(fill);
                rowsOf(mix, block).stream()
                        .filter(row -> mix.of(Keys.TANK_MIX_KEY).number(row) == key)
                        .forEach(rows::add);
            }
        }
        // Where the tankfuls are withheld the products are still named, and what they lack is said.
        return rows.isEmpty() ? rowsOf(mix, block) : rows;
    }

    private void loads(double block) {
        ResultTable loads = plan.table(LOADS);
        List<Integer> rows = rowsOf(loads, block);
        if (rows.isEmpty()) {
            return;
        }
        page.line();
        Optional<OwnUnit> own = plan.ownUnits().of(loads, TankLoads.LITRES, rows.get(0));
        PlainSheet.Line head = page.line()
                .text(Looks.LABEL, "Tankful by tankful")
                .text(Looks.LABEL, "Load")
                .text(Looks.LABEL, "Area, ha")
                .text(Looks.LABEL, "Spray, L");
        own.ifPresent(unit -> head.text(Looks.LABEL, "Spray, " + unit.unit()));
        // Who counts in acres drives by them: without them he would reckon back from what is sprayed.
        Optional<OwnUnit> land = plan.ownUnits().of(loads, TankLoads.AREA_IN_TANKFUL, rows.get(0));
        land.ifPresent(unit -> head.text(Looks.LABEL, "Area, " + unit.unit()));
        for (int row : rows.subList(0, Math.min(rows.size(), MOST_TANKFULS))) {
            PlainSheet.Line line = page.line()
                    .text(Looks.NAME_WRAPPED, loads.of(Quantities.FIELD).word(row))
                    .text(Looks.TEXT, loads.of(TankLoads.TANKFUL_NAME).word(row));
            value(line, loads, TankLoads.AREA_IN_TANKFUL, row);
            value(line, loads, TankLoads.LITRES, row);
            own.ifPresent(unit -> parts.own(line, unit, loads, TankLoads.LITRES, row, Optional.empty()));
            land.ifPresent(unit -> parts.own(line, unit, loads, TankLoads.AREA_IN_TANKFUL, row, Optional.empty()));
        }
        if (rows.size() > MOST_TANKFULS) {
            page.line()
                    .text(
                            Looks.TEXT,
                            "and " + Counted.more(rows.size() - MOST_TANKFULS, "line") + " on "
                                    + places.sheet(loads.spec()));
        }
    }

    private void washing(double block) {
        ResultTable washing = plan.table(WASHING);
        for (int row : rowsOf(washing, block)) {
            page.line();
            priming(washing, row);
            figure(washing, TankLoads.RUN_OUT, row);
            figure(washing, TankLoads.RINSE_WATER, row);
            parts.status(washing, row);
        }
    }

    /** The mix with what primes the lines, where their volume is typed; that it is not is no fault. */
    private void priming(ResultTable washing, int row) {
        if (washing.spec().column(TankLoads.WITH_PRIMING).isEmpty()) {
            return;
        }
        if (washing.of(Quantities.PRIMING).has(row)) {
            figure(washing, TankLoads.WITH_PRIMING, row);
        } else {
            parts.figureOfTyped(
                            page.line().text(Looks.NAME, TankLoads.WITH_PRIMING.heading()),
                            washing,
                            TankLoads.WITH_PRIMING,
                            Quantities.PRIMING,
                            row)
                    .text(Looks.UNIT, CardParts.unit(TankLoads.WITH_PRIMING));
        }
    }

    /** The block's own cautions, live, above its figures. */
    private void cautions(int row, double block, int nozzle) {
        parts.caution(blocks, row);
        parts.caution(plan.table(NOZZLES), nozzle);
        for (int product : rowsOf(plan.table(MIX), block)) {
            parts.caution(plan.table(MIX), product);
        }
        rowsOf(plan.table(WINDOW), block).forEach(window -> parts.caution(plan.table(WINDOW), window));
        parts.tellCautions();
        parts.status(blocks, row);
        fieldsAndNozzles.tell(
                blocks.of(Keys.MACHINE_KEY).number(row),
                blocks.name(Quantities.MACHINE, row),
                rowsOf(plan.table(MIX), block));
    }

    /** Those that hold of all spraying. */
    private void alwaysCautions() {
        page.line();
        for (String caution : Cautions.TANK) {
            parts.always("- " + caution);
        }
        parts.always(
                "- Look up before unfolding the boom: overhead lines kill without being touched. This card is no leave"
                        + " to spray: the label, the law of the place and the day decide.");
    }

    private void operator() {
        page.line();
        for (String asked : List.of(
                "Operator, date, start and finish",
                "Wind (speed, from where) at start and finish",
                "Temperature, humidity; growth stage",
                "Pressure set; area and product really used")) {
            page.line().text(Looks.NAME, asked).text(Looks.TEXT, BLANK);
        }
    }

    /**
     * The row of Nozzles that has this block's setting; -1 where there is none. Settings that differ only by the density of
     * the liquid are told apart by the job.
     */
    private int nozzle(int block) {
        ResultTable nozzles = plan.table(NOZZLES);
        int found = -1;
        for (int row : settings.of(nozzles, blocks.of(Keys.MACHINE_KEY).number(block))) {
            if (same(nozzles, row, Quantities.WATER_VOLUME, block)
                    && same(nozzles, row, Quantities.SPEED, block)
                    && same(nozzles, row, NozzlePressure.SPACING_USED, block)) {
                if (alike(nozzles, row, Quantities.JOB, block)) {
                    return row;
                }
                found = found == -1 ? row : -2;
            }
        }
        return Math.max(found, -1);
    }

    private boolean alike(ResultTable table, int row, Symbol symbol, int block) {
        return table.of(symbol).word(row).equals(blocks.of(symbol).word(block));
    }

    private boolean same(ResultTable table, int row, Symbol symbol, int block) {
        Values there = table.of(symbol);
        Values here = blocks.of(symbol);
        return there.has(row) == here.has(block) && (!here.has(block) || there.number(row) == here.number(block));
    }

    /** The rows of a table that belong to a block. */
    private List<Integer> rowsOf(ResultTable table, double block) {
        return byBlock.of(table, block);
    }
}
