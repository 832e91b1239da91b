package org.rickyard.workbook.write;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.rickyard.audit.InputUsed;
import org.rickyard.audit.Result;
import org.rickyard.audit.Results;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/** Trail: one row per result with its whole derivation; beyond a limit, one row per column. */
final class TrailSheet extends OurSheet {
    private static final List<String> LABELS = List.of(
            "Result",
            "About",
            "Value",
            "Unit",
            "Formula in words",
            "With numbers",
            "Inputs",
            "Source",
            "Status",
            "Go to");
    /** As wide as a page takes in readable letters. */
    private static final List<Integer> WIDTHS = List.of(20, 28, 16, 9, 36, 34, 52, 36, 29, 20);

    static final String TITLE = "Trail: how each number came about";

    static final int HEAD_ROWS = 3;
    private static final int VALUE = 2;

    private final WorkPlan plan;
    private final Results results;
    private final SheetPlaces places;
    private final Looks.Numbers looks;
    private final String masterCheck;
    private final String masterCheckValue;
    private final boolean whole;
    private final Map<TableColumn, String> words = new IdentityHashMap<>();
    private final RowMarks marks;
    /** By the names of their sheets. */
    private final Map<String, ResultTable> tables = new HashMap<>();

    TrailSheet(
            WorkPlan plan,
            Results results,
            SheetPlaces places,
            RowMarks marks,
            Looks.Numbers looks,
            String masterCheck,
            String masterCheckValue,
            long mostRows) {
        this.plan = plan;
        this.results = results;
        this.places = places;
        this.looks = looks;
        this.masterCheck = masterCheck;
        this.masterCheckValue = masterCheckValue;
        this.marks = marks;
        plan.tables().forEach(table -> tables.put(places.sheet(table.spec()), table));
        this.whole = Results.count(plan) <= mostRows;
    }

    @Override
    void write(SheetXml sheet) throws IOException {
        sheet.begin(WIDTHS, HEAD_ROWS, 1);
        sheet.row(0, 22);
        sheet.text(0, looks.of(Looks.TITLE), TITLE);
        sheet.formula(4, looks.of(Looks.CHECK), CellFormula.of(masterCheck), masterCheckValue);
        sheet.row(1);
        sheet.text(
                0,
                looks.of(Looks.TEXT),
                whole
                        ? "One row per result. Values are live; numbers, inputs and status beside them are of the run. Inputs"
                                + " stand as: name = value unit @ cell (origin where it was not typed)."
                        : "This workbook has too many results for a row each: one row per column stands here. Ask the"
                                + " explain command for any cell.");
        sheet.row(2);
        for (int i = 0; i < LABELS.size(); i++) {
            sheet.text(i, looks.of(Looks.LABEL), LABELS.get(i));
        }
        if (whole) {
            rows(sheet);
        } else {
            columns(sheet);
        }
        sheet.end();
    }

    private void rows(SheetXml sheet) throws IOException {
        int[] next = {HEAD_ROWS};
        try {
            results.forEach(result -> {
                try {
                    row(sheet, next[0]++, result);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void row(SheetXml sheet, int row, Result result) throws IOException {
        List<String> texts = new ArrayList<>(List.of(
                result.symbol().name(),
                String.join(", ", result.about().values()),
                result.word().orElse(""),
                result.unit(),
                words(result),
                result.numbers(),
                String.join(
                        "; ", result.inputs().stream().map(InputUsed::toString).toList()),
                result.source(),
                result.given() ? "ok" : "withheld: " + result.reason()));
        for (int column = 0; column < texts.size(); column++) {
            if (column != VALUE && !SheetXml.holds(texts.get(column), WIDTHS.get(column))) {
                texts.set(column, cutOff(result) + texts.get(column));
            }
        }
        sheet.row(row, sheet.heightFor(texts));
        int text = looks.of(Looks.TEXT_WRAPPED);
        for (int column = 0; column < texts.size(); column++) {
            if (column == VALUE) {
                value(sheet, result);
            } else {
                sheet.text(column, text, texts.get(column));
            }
        }
        sheet.linkTo(texts.size(), looks.of(Looks.LINK), result.cell());
    }

    /** A row cannot be higher than some 27 lines; who reads it on paper must see that there is more. */
    private static String cutOff(Result result) {
        return "(longer than a row is high; whole in this cell, or by the explain command for " + result.cell() + ") ";
    }

    /** Said alike in all rows of a column. */
    private String words(Result result) {
        String known = words.get(result.column());
        if (known == null) {
            known = result.byMethod() ? "method: " + result.words() : result.words();
            words.put(result.column(), known);
        }
        return known;
    }

    private void value(SheetXml sheet, Result result) throws IOException {
        Symbol symbol = result.symbol();
        int style = looks.of(
                symbol.type() == Symbol.Type.DATE
                        ? Looks.day(Looks.RESULT)
                        : symbol.type() == Symbol.Type.TEXT
                                ? Looks.RESULT_WRAPPED
                                : Looks.decimals(Looks.RESULT, Math.min(4, symbol.decimals())));
        String cell = result.cell().absolute();
        if (result.byMethod() && result.number().isEmpty()) {
            // A method leaves its cell empty where it found nothing, and a link to an empty cell would be 0.
            cell = "IF(" + cell + "=\"\",\"\"," + cell + ")";
        }
        ResultTable table = tables.get(result.cell().sheet());
        List<String> inPlace = marks.of(table, result.cell().row() - SheetPlaces.FIRST_ROW);
        CellFormula formula = CellFormula.of(RowMarks.whileInPlace(inPlace, cell, "\"" + RowMarks.MOVED + "\""));
        if (result.number().isPresent()) {
            sheet.formula(VALUE, style, formula, result.number().get());
        } else {
            sheet.formula(VALUE, style, formula, result.word().orElse(""));
        }
    }

    private void columns(SheetXml sheet) throws IOException {
        int row = HEAD_ROWS;
        int text = looks.of(Looks.TEXT_WRAPPED);
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : Results.answers(table)) {
                if (table.rows() == 0) {
                    continue;
                }
                Symbol symbol = column.symbol();
                long withheld = IntStream.range(0, table.rows())
                        .filter(each -> Results.isWithheld(table, column, each))
                        .count();
                sheet.row(row++);
                sheet.text(0, text, symbol.name());
                sheet.text(1, text, table.rows() + " rows of '" + places.sheet(table.spec()) + "'");
                sheet.empty(2, text);
                sheet.text(3, text, symbol.unit().symbol());
                derivation(sheet, text, column);
                sheet.text(8, text, withheld == 0 ? "ok" : withheld + " withheld");
                var first = places.cell(table.spec(), symbol, 0);
                sheet.linkTo(9, looks.of(Looks.LINK), first);
            }
        }
    }

    /** How the answers of a column come about, by a formula or by a method. */
    private static void derivation(SheetXml sheet, int text, TableColumn column) throws IOException {
        String words;
        Source source;
        Stream<Symbol> inputs;
        if (column instanceof TableColumn.Method byMethod) {
            words = "method: " + byMethod.method().words();
            source = byMethod.method().source();
            inputs = byMethod.method().reads().stream().flatMap(read -> Inputs.of(read).stream());
        } else {
            Formula formula = ((TableColumn.Calculated) column).formula();
            words = formula.words();
            source = formula.source();
            inputs = formula.inputs().stream();
        }
        sheet.text(4, text, words);
        sheet.empty(5, text);
        sheet.text(6, text, inputs.map(Symbol::name).distinct().collect(Collectors.joining("; ")));
        sheet.text(7, text, source.toString());
    }
}
