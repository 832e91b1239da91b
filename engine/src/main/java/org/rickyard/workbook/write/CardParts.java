package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.fit.OwnUnit;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.workbook.graft.CellLook;

/** What cards for print are made of, whatever they are about: live figures, cautions, what a row lacks. */
final class CardParts {
    private static final String WITHHELD = "withheld";
    private static final String NONE_GIVEN = "none given";
    private static final String MOVED_CAUTIONS =
            "The cautions of this card are withheld, and some of its figures: since the run rows of a result sheet"
                    + " were sorted, or names changed. Run again before it is used.";
    private static final List<Severity> BROKEN_BEFORE = List.of(Severity.CAUTION, Severity.STOP);
    /** More of them might be more than a formula, or the text of a cell, may hold. */
    private static final int MOST_IN_A_CELL = 50;

    /** Characters of all that must hold for the cautions of a cell to be told. */
    private static final int LONGEST_MARKS = 4000;

    /** Of lines that run over all columns of a card, in characters. */
    private static final int WIDTH = 100;

    /** The same of a card's title, whose letters are larger and bold. */
    private static final int TITLE_WIDTH = 68;

    private static final int TITLE_HEIGHT = 24;

    private final PlainSheet page;
    private final SheetPlaces places;
    private final RowMarks marks;
    private final List<Caution> cautions = new ArrayList<>();

    /** The cautions of one row. */
    private record Caution(String cell, String now, List<String> marks) {}

    CardParts(PlainSheet page, SheetPlaces places, RowMarks marks) {
        this.page = page;
        this.places = places;
        this.marks = marks;
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
     * @param marks while its row stands where it was written
     */
    record Provided(String cell, boolean isNone, String none, List<String> marks) {}

    /** That a number of a table is not nought. */
    Provided provided(ResultTable table, Symbol symbol, int row, String none) {
        Values values = table.of(symbol);
        return new Provided(
                cell(table, symbol, row), values.has(row) && values.number(row) == 0, none, marks.of(table, row));
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
        Shown shown = new Shown(cell(table, symbol, row), "", WITHHELD, RowMarks.MOVED, marks.of(table, row));
        return live(line, look, shown, number(table.of(symbol), row), provided);
    }

    /** Puts a figure that has no value into a line, live, so that what nothing is given for is not told as withheld. */
    PlainSheet.Line figureOfTyped(PlainSheet.Line line, ResultTable table, Symbol symbol, Symbol typed, int row) {
        String figure = cell(table, symbol, row);
        String formula = "IF(ISNUMBER(" + figure + ")," + figure + ",IF(ISNUMBER(" + cell(table, typed, row) + "),\""
                + WITHHELD + "\",\"" + NONE_GIVEN + "\"))";
        return line.formula(
                look(symbol.decimals()),
                RowMarks.whileInPlace(marks.of(table, row), formula, "\"" + RowMarks.MOVED + "\""),
                NONE_GIVEN);
    }

    /** Puts a figure of a table into a line in the client's own unit, live; nothing while it is withheld. */
    PlainSheet.Line own(
            PlainSheet.Line line, OwnUnit own, ResultTable table, Symbol symbol, int row, Optional<Provided> provided) {
        return own(line, own, cell(table, symbol, row), table.of(symbol), row, provided, marks.of(table, row));
    }

    /**
     * The same of a number that stands on the page itself.
     *
     * @param cell where it stands in our unit
     */
    static PlainSheet.Line own(PlainSheet.Line line, OwnUnit own, String cell, Values values, int row) {
        return own(line, own, cell, values, row, Optional.empty(), List.of());
    }

    private static PlainSheet.Line own(
            PlainSheet.Line line,
            OwnUnit own,
            String cell,
            Values values,
            int row,
            Optional<Provided> provided,
            List<String> marks) {
        Optional<Double> number = number(values, row).map(own.scaling()::apply);
        Shown shown = new Shown(cell, own.scaling().cell(), "", "", marks);
        return live(line, look(own.decimals()), shown, number, provided);
    }

    /**
     * What a cell of a card shows.
     *
     * @param cell whose number
     * @param scaling steps to another unit, or ""
     * @param withheld in its place while there is none
     * @param moved in its place while its row stands elsewhere
     * @param marks while its row stands where it was written
     */
    private record Shown(String cell, String scaling, String withheld, String moved, List<String> marks) {}

    private String cell(ResultTable table, Symbol symbol, int row) {
        return places.cell(table.spec(), symbol, row).absolute();
    }

    private static Optional<Double> number(Values values, int row) {
        return values.has(row) ? Optional.of(values.number(row)) : Optional.empty();
    }

    private static PlainSheet.Line live(
            PlainSheet.Line line, CellLook look, Shown shown, Optional<Double> number, Optional<Provided> provided) {
        String formula = "IF(ISNUMBER(" + shown.cell() + ")," + shown.cell() + shown.scaling() + ",\""
                + shown.withheld() + "\")";
        List<String> inPlace = new ArrayList<>(shown.marks());
        if (provided.isPresent()) {
            inPlace.addAll(provided.get().marks());
            formula = "IF(" + provided.get().cell() + "=0,\"" + provided.get().none() + "\"," + formula + ")";
        }
        formula = RowMarks.whileInPlace(inPlace, formula, "\"" + shown.moved() + "\"");
        if (provided.isPresent() && provided.get().isNone()) {
            return line.formula(look, formula, provided.get().none());
        }
        return number.isPresent()
                ? line.formula(look, formula, number.get())
                : line.formula(look, formula, shown.withheld());
    }

    /** What the card is about, on as many lines as its names need. */
    void title(String title) {
        BrokenLines.of(title, TITLE_WIDTH, "")
                .forEach(line -> page.line().text(Looks.TITLE, line).height(TITLE_HEIGHT));
    }

    /** A caution that always holds, over the whole width of the card. */
    void always(String caution) {
        page.paragraph(page.line(), Looks.CAUTION, caution, WIDTH);
    }

    /** Takes the cautions of a row up for {@link #tellCautions}; rows of tables without cautions are passed over. */
    void caution(ResultTable table, int row) {
        if (row >= 0 && table.spec().column(TableSpec.CAUTIONS).isPresent()) {
            cautions.add(new Caution(
                    cell(table, TableSpec.CAUTIONS, row),
                    table.of(TableSpec.CAUTIONS).word(row),
                    marks.of(table, row)));
        }
    }

    /** The cautions taken up, live, each on a line in as few cells as show them whole, so that what is quiet leaves no gap. */
    void tellCautions() {
        List<Caution> some = new ArrayList<>();
        Set<String> inPlace = new LinkedHashSet<>();
        for (Caution caution : cautions) {
            int length = Stream.concat(inPlace.stream(), caution.marks().stream())
                    .mapToInt(String::length)
                    .sum();
            boolean full = some.size() == MOST_IN_A_CELL || length > LONGEST_MARKS;
            if (!some.isEmpty() && (full || !page.holds(told(some) + "\n" + caution.now()))) {
                tell(some, inPlace);
                some.clear();
                inPlace.clear();
            }
            some.add(caution);
            inPlace.addAll(caution.marks());
        }
        if (!some.isEmpty()) {
            tell(some, inPlace);
        }
        cautions.clear();
    }

    private void tell(List<Caution> some, Set<String> inPlace) {
        String all = "TRIM(" + some.stream().map(Caution::cell).collect(Collectors.joining("&\" \"&")) + ")";
        for (Severity severity : BROKEN_BEFORE) {
            all = "SUBSTITUTE(" + all + ",\" " + severity + ": \",CHAR(10)&\"" + severity + ": \")";
        }
        page.line()
                .formula(
                        Looks.CAUTION_WRAPPED,
                        RowMarks.whileInPlace(List.copyOf(inPlace), all, "\"" + MOVED_CAUTIONS + "\""),
                        told(some));
    }

    /** What a cell with these cautions says now. */
    private static String told(List<Caution> some) {
        String told = some.stream()
                .map(Caution::now)
                .collect(Collectors.joining(" "))
                .strip()
                .replaceAll(" +", " ");
        for (Severity severity : BROKEN_BEFORE) {
            told = told.replace(" " + severity + ": ", "\n" + severity + ": ");
        }
        return told;
    }

    /** What a row lacks, live; nothing where it lacks nothing. */
    void status(ResultTable table, int row) {
        String cell = cell(table, TableSpec.STATUS, row);
        String status = table.of(TableSpec.STATUS).word(row);
        page.line()
                .formula(
                        Looks.TEXT_WRAPPED,
                        RowMarks.whileInPlace(
                                marks.of(table, row),
                                "IF(" + cell + "=\"ok\",\"\"," + cell + "&\"\")",
                                "\"" + RowMarks.MOVED_SENTENCE + "\""),
                        status.equals("ok") ? "" : status);
    }
}
