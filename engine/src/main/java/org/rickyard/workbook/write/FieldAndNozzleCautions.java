package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Counted;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.NozzleWear;
import org.rickyard.trade.spraying.ProductOrder;
import org.rickyard.trade.spraying.SeasonDose;

/** What is said of single fields and nozzles of a block, on its card, each with its name and live. */
final class FieldAndNozzleCautions {
    private static final String SEASON = "season-dose";
    private static final String WEAR = NozzleWear.TEST;
    /** So many on a card. */
    private static final int MOST_TOLD = 12;

    /** Of a test whose sprayer is no machine of the list, or could be several. */
    private static final double NO_SINGLE_MACHINE = 0;

    private final PlainSheet page;
    private final WorkPlan plan;
    private final SheetPlaces places;
    private final RowMarks marks;
    private final RowsByKey byMix = new RowsByKey(Keys.TANK_MIX_KEY, key -> true);
    private final RowsByKey byMachine = new RowsByKey(Keys.MACHINE_KEY, key -> true);
    private final RowsByKey bySeason = new RowsByKey(Keys.SEASON_KEY, key -> true);

    FieldAndNozzleCautions(PlainSheet page, WorkPlan plan, SheetPlaces places, RowMarks marks) {
        this.page = page;
        this.plan = plan;
        this.places = places;
        this.marks = marks;
    }

    /**
     * Tells them, stops first; what is said twice of one is told once.
     *
     * @param machine the number of the sprayer whose nozzles, in list order
     * @param sprayer what it is called
     * @param products the rows of the tank mix
     */
    void tell(double machine, String sprayer, List<Integer> products) {
        ResultTable applications = plan.table(SeasonDose.APPLICATION_TABLE);
        ResultTable season = plan.table(SEASON);
        ResultTable wear = plan.table(WEAR);
        List<Told> told = new ArrayList<>();
        for (int product : products) {
            double mix = plan.table(ProductOrder.TANK_MIX).of(Keys.TANK_MIX_KEY).number(product);
            for (int at : byMix.of(applications, mix)) {
                told.add(new Told(applications, at, "", List.of(Quantities.FIELD, Quantities.PRODUCT)));
                double doses = applications.of(Keys.SEASON_KEY).number(at);
                bySeason.of(season, doses)
                        .forEach(dose ->
                                told.add(new Told(season, dose, "", List.of(Quantities.FIELD, Quantities.PRODUCT))));
            }
        }
        for (int nozzle : byMachine.of(wear, machine)) {
            told.add(new Told(wear, nozzle, "Nozzle ", List.of(Quantities.NOZZLE)));
        }
        Set<String> said = new HashSet<>();
        told.removeIf(t -> t.caution().isEmpty() || !said.add(t.name(t.names().get(0)) + t.caution()));
        told.sort(Comparator.comparing(t -> !t.caution().contains("STOP")));
        for (Told one : told.subList(0, Math.min(told.size(), MOST_TOLD))) {
            page.line().formula(Looks.CAUTION_WRAPPED, live(one), one.sentence());
        }
        if (told.size() > MOST_TOLD) {
            page.line()
                    .text(
                            Looks.CAUTION_WRAPPED,
                            "and " + Counted.more(told.size() - MOST_TOLD, "caution") + " on "
                                    + places.sheet(told.get(MOST_TOLD).table().spec()));
        }
        for (int nozzle : byMachine.of(wear, NO_SINGLE_MACHINE)) {
            if (NameKey.key(wear.name(Quantities.SPRAYER, nozzle)).equals(NameKey.key(sprayer))) {
                page.line()
                        .text(
                                Looks.CAUTION_WRAPPED,
                                "CAUTION: nozzles of a '" + sprayer
                                        + "' were tested, but more than one machine is called"
                                        + " so, and whose they are is not known: look at "
                                        + places.sheet(wear.spec())
                                        + ", and write the Holding in the nozzle test, or give each a name of its"
                                        + " own.");
                break;
            }
        }
    }

    /** A caution of a row, and the columns that name whom it is about. */
    private record Told(ResultTable table, int row, String before, List<Symbol> names) {
        String caution() {
            return table.spec().column(TableSpec.CAUTIONS).isEmpty()
                    ? ""
                    : table.of(TableSpec.CAUTIONS).word(row).strip();
        }

        String name(Symbol symbol) {
            return table.of(symbol).word(row);
        }

        String sentence() {
            return before + String.join(", ", names.stream().map(this::name).toList()) + ": "
                    + table.of(TableSpec.CAUTIONS).word(row);
        }
    }

    private String live(Told one) {
        String caution = cell(one, TableSpec.CAUTIONS);
        String told = "IF(" + caution + "=\"\",\"\",\"" + one.before() + "\"&"
                + String.join(
                        "&\", \"&",
                        one.names().stream().map(name -> cell(one, name)).toList())
                + "&\": \"&" + caution + ")";
        return RowMarks.whileInPlace(
                marks.of(one.table(), one.row()), told, "\"A caution is " + RowMarks.MOVED_SENTENCE + "\"");
    }

    private String cell(Told told, Symbol symbol) {
        return places.cell(told.table().spec(), symbol, told.row()).absolute();
    }
}
