package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.OwnUnit;
import org.rickyard.plan.ResultTable;
import org.rickyard.plan.SheetPlaces;
import org.rickyard.plan.TableSpec;
import org.rickyard.workbook.graft.CellLook;

/** What cards for print are made of, whatever they are about: live figures, cautions, what a row lacks. */
final class CardParts {
    private final PlainSheet page;
    private final SheetPlaces places;
    private final List<String> cautions = new ArrayList<>();
    private final StringBuilder cautionsNow = new StringBuilder();

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
        return Looks.decimals(Looks.RESULT, Math.min(4, decimals));
    }

    /** Puts a figure of a table into a line, live; a word in its place while it is withheld. */
    PlainSheet.Line figure(PlainSheet.Line line, CellLook look, ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        String shown = shown(table, symbol, row);
        return values.has(row) ? line.formula(look, shown, values.number(row)) : line.formula(look, shown, "withheld");
    }

    private String shown(ResultTable table, Symbol symbol, int row) {
        String cell = places.cell(table.spec(), symbol, row).absolute();
        return "IF(ISNUMBER(" + cell + ")," + cell + ",\"withheld\")";
    }

    /**
     * A number of a table without which a figure means nothing: no tank is full, so nothing goes into a full tank.
     *
     * @param none what stands in the place of the figure while that number is nought
     */
    record Provided(ResultTable table, Symbol symbol, int row, String none) {
        boolean isNone() {
            return table.of(symbol).has(row) && table.of(symbol).number(row) == 0;
        }
    }

    /** The same, but not told while what it is told of is nought, so that nobody takes it for an answer. */
    PlainSheet.Line figure(
            PlainSheet.Line line, CellLook look, ResultTable table, Symbol symbol, int row, Provided provided) {
        String shown = provided(provided, shown(table, symbol, row));
        Values values = table.of(symbol);
        if (provided.isNone()) {
            return line.formula(look, shown, provided.none());
        }
        return values.has(row) ? line.formula(look, shown, values.number(row)) : line.formula(look, shown, "withheld");
    }

    private String provided(Provided provided, String shown) {
        String cell = places.cell(provided.table().spec(), provided.symbol(), provided.row())
                .absolute();
        return "IF(" + cell + "=0,\"" + provided.none() + "\"," + shown + ")";
    }

    /**
     * Puts a number that stands elsewhere into a line in the client's own unit, live; nothing while that is no number.
     *
     * @param cell where it stands in our unit
     */
    static PlainSheet.Line own(PlainSheet.Line line, String cell, OwnUnit own, Values values, int row) {
        String shown = shown(cell, own);
        return values.has(row)
                ? line.formula(look(own), shown, own.scaling().apply(values.number(row)))
                : line.formula(look(own), shown, "");
    }

    private static CellLook look(OwnUnit own) {
        return Looks.decimals(Looks.RESULT, Math.min(Looks.MOST_DECIMALS, own.decimals()));
    }

    private static String shown(String cell, OwnUnit own) {
        return "IF(ISNUMBER(" + cell + ")," + cell + own.scaling().cell() + ",\"\")";
    }

    /** The same of a figure of a table. */
    PlainSheet.Line own(PlainSheet.Line line, OwnUnit own, ResultTable table, Symbol symbol, int row) {
        return own(line, places.cell(table.spec(), symbol, row).absolute(), own, table.of(symbol), row);
    }

    /** The same, but not told while what it is told of is nought. */
    PlainSheet.Line own(
            PlainSheet.Line line, OwnUnit own, ResultTable table, Symbol symbol, int row, Provided provided) {
        String cell = places.cell(table.spec(), symbol, row).absolute();
        String shown = provided(provided, shown(cell, own));
        if (provided.isNone()) {
            return line.formula(look(own), shown, provided.none());
        }
        Values values = table.of(symbol);
        return values.has(row)
                ? line.formula(look(own), shown, own.scaling().apply(values.number(row)))
                : line.formula(look(own), shown, "");
    }

    /** Takes the cautions of a row up for {@link #tellCautions}; rows of tables without cautions are passed over. */
    void caution(ResultTable table, int row) {
        if (row >= 0 && table.spec().column(TableSpec.CAUTIONS).isPresent()) {
            cautions.add(places.cell(table.spec(), TableSpec.CAUTIONS, row).absolute() + "&\" \"");
            cautionsNow.append(table.of(TableSpec.CAUTIONS).word(row)).append(' ');
        }
    }

    /** The cautions taken up, live, in one cell, so that what is quiet leaves no gap. */
    void tellCautions() {
        if (!cautions.isEmpty()) {
            page.line().formula(Looks.CAUTION_WRAPPED, String.join("&", cautions), cautionsNow.toString());
        }
        cautions.clear();
        cautionsNow.setLength(0);
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
