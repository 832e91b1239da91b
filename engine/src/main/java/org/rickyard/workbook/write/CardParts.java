package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.fit.OwnUnit;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.workbook.graft.CellLook;

/** What cards for print are made of, whatever they are about: live figures, cautions, what a row lacks. */
final class CardParts {
    private static final String WITHHELD = "withheld";
    /** More of them might be more than a formula, or the text of a cell, may hold. */
    private static final int MOST_IN_A_CELL = 50;

    private final PlainSheet page;
    private final SheetPlaces places;
    private final List<String> cautions = new ArrayList<>();
    private final List<String> cautionsNow = new ArrayList<>();

    CardParts(PlainSheet page, SheetPlaces places) {
        this.page = page;
        this.places = places;
    }

    /** A quantity's name as the beginning of a line. */
    static String name(Symbol symbol) {
        return Character.toUpperCase(symbol.name().charAt(0)) + symbol.name().substring(1);
    }

    /** A quantity's unit, or a dash. */
    static String unit(Symbol symbol) {
        String unit = symbol.unit().symbol();
        return unit.isEmpty() ? "-" : unit;
    }

    /** How a figure with so many decimals looks. */
    static CellLook look(int decimals) {
        return Looks.decimals(Looks.RESULT, Math.min(Looks.MOST_DECIMALS, decimals));
    }

    /**
     * A number without which a figure means nothing: no tank is full, so nothing goes into a full tank.
     *
     * @param cell where it stands
     * @param isNone whether it is nought now
     * @param none what stands in the place of the figure while it is
     */
    record Provided(String cell, boolean isNone, String none) {}

    /** That a number of a table is not nought. */
    Provided provided(ResultTable table, Symbol symbol, int row, String none) {
        Values values = table.of(symbol);
        return new Provided(cell(table, symbol, row), values.has(row) && values.number(row) == 0, none);
    }

    /** Puts a figure of a table into a line, live; a word in its place while it is withheld. */
    PlainSheet.Line figure(PlainSheet.Line line, CellLook look, ResultTable table, Symbol symbol, int row) {
        return figure(line, look, table, symbol, row, Optional.empty());
    }

    /** The same, but not told while what it is told of is nought, so that nobody takes it for an answer. */
    PlainSheet.Line figure(
            PlainSheet.Line line,
            CellLook look,
            ResultTable table,
            Symbol symbol,
            int row,
            Optional<Provided> provided) {
        return live(line, look, cell(table, symbol, row), "", number(table.of(symbol), row), WITHHELD, provided);
    }

    /** Puts a figure of a table into a line in the client's own unit, live; nothing while it is withheld. */
    PlainSheet.Line own(
            PlainSheet.Line line, OwnUnit own, ResultTable table, Symbol symbol, int row, Optional<Provided> provided) {
        return own(line, own, cell(table, symbol, row), table.of(symbol), row, provided);
    }

    /**
     * The same of a number that stands elsewhere.
     *
     * @param cell where it stands in our unit
     */
    static PlainSheet.Line own(
            PlainSheet.Line line, OwnUnit own, String cell, Values values, int row, Optional<Provided> provided) {
        Optional<Double> number = number(values, row).map(own.scaling()::apply);
        return live(line, look(own.decimals()), cell, own.scaling().cell(), number, "", provided);
    }

    private String cell(ResultTable table, Symbol symbol, int row) {
        return places.cell(table.spec(), symbol, row).absolute();
    }

    private static Optional<Double> number(Values values, int row) {
        return values.has(row) ? Optional.of(values.number(row)) : Optional.empty();
    }

    private static PlainSheet.Line live(
            PlainSheet.Line line,
            CellLook look,
            String cell,
            String scaling,
            Optional<Double> number,
            String otherwise,
            Optional<Provided> provided) {
        String shown = "IF(ISNUMBER(" + cell + ")," + cell + scaling + ",\"" + otherwise + "\")";
        if (provided.isPresent()) {
            String none = provided.get().none();
            shown = "IF(" + provided.get().cell() + "=0,\"" + none + "\"," + shown + ")";
            if (provided.get().isNone()) {
                return line.formula(look, shown, none);
            }
        }
        return number.isPresent() ? line.formula(look, shown, number.get()) : line.formula(look, shown, otherwise);
    }

    /** Takes the cautions of a row up for {@link #tellCautions}; rows of tables without cautions are passed over. */
    void caution(ResultTable table, int row) {
        if (row >= 0 && table.spec().column(TableSpec.CAUTIONS).isPresent()) {
            cautions.add(places.cell(table.spec(), TableSpec.CAUTIONS, row).absolute() + "&\" \"");
            cautionsNow.add(table.of(TableSpec.CAUTIONS).word(row) + " ");
        }
    }

    /** The cautions taken up, live, in as few cells as hold them, so that what is quiet leaves no gap. */
    void tellCautions() {
        for (int from = 0; from < cautions.size(); from += MOST_IN_A_CELL) {
            int to = Math.min(from + MOST_IN_A_CELL, cautions.size());
            page.line()
                    .formula(
                            Looks.CAUTION_WRAPPED,
                            String.join("&", cautions.subList(from, to)),
                            String.join("", cautionsNow.subList(from, to)));
        }
        cautions.clear();
        cautionsNow.clear();
    }

    /** What a row lacks, live; nothing where it lacks nothing. */
    void status(ResultTable table, int row) {
        String cell = places.cell(table.spec(), TableSpec.STATUS, row).absolute();
        String status = table.of(TableSpec.STATUS).word(row);
        page.line()
                .formula(
                        Looks.TEXT_WRAPPED,
                        "IF(" + cell + "=\"ok\",\"\"," + cell + "&\"\")",
                        status.equals("ok") ? "" : status);
    }
}
