package org.rickyard.audit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Days;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.NumbersPrinter;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;
import org.rickyard.trade.Quantities;

/** Reads the results of a plan one after another, each with its derivation; none is kept. */
public final class Results {
    private static final int MOST_ADDENDS = 30;

    private final WorkPlan plan;
    private final SheetPlaces places;
    private final BasisPlaces basis;
    private final Causes causes = new Causes();

    /** Results of a plan whose sheets stand in these places. */
    public Results(WorkPlan plan, SheetPlaces places, BasisPlaces basis) {
        this.plan = plan;
        this.places = places;
        this.basis = basis;
    }

    /** Why results are withheld. */
    Causes causes() {
        return causes;
    }

    /** How many results there are, withheld ones included; what is told only where it can be counts where it is told. */
    public static long count(WorkPlan plan) {
        long count = 0;
        for (ResultTable table : plan.tables()) {
            for (TableColumn column : answers(table)) {
                if (isAside(column)) {
                    count += IntStream.range(0, table.rows())
                            .filter(row -> isTold(table, column, row))
                            .count();
                } else {
                    count += table.rows();
                }
            }
        }
        return count;
    }

    /** The columns of a table that are results of formulas, which every row owes. */
    public static List<Calculated> resultColumns(ResultTable table) {
        List<Calculated> columns = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            if (column instanceof Calculated calculated && calculated.result()) {
                columns.add(calculated);
            }
        }
        return columns;
    }

    /** The columns of a table that are answers: results, what is told where it can be, and what a method found. */
    public static List<TableColumn> answers(ResultTable table) {
        List<TableColumn> columns = new ArrayList<>();
        for (TableColumn column : table.spec().columns()) {
            if (column instanceof Calculated calculated && (calculated.result() || calculated.aside())
                    || column instanceof TableColumn.Method method && method.result()) {
                columns.add(column);
            }
        }
        return columns;
    }

    /** What rows of the same names are told apart by. */
    private static final String ROW = "Row";

    private static boolean isAside(TableColumn column) {
        return column instanceof Calculated calculated && calculated.aside();
    }

    /** Whether a row tells an answer; only what is told aside may be left out without a word. */
    static boolean isTold(ResultTable table, TableColumn column, int row) {
        Values values = table.of(column.symbol());
        return !isAside(column)
                || values.has(row) && !(values.words() && values.word(row).isEmpty());
    }

    /** Whether a row owes an answer and has none, be it of a formula or of a method; what is told aside is never owed. */
    public static boolean isWithheld(ResultTable table, TableColumn column, int row) {
        return !isAside(column) && !table.of(column.symbol()).has(row);
    }

    /** Hands every result to a reader, table by table, row by row. */
    public void forEach(Consumer<Result> reader) {
        for (ResultTable table : plan.tables()) {
            List<TableColumn> columns = answers(table);
            BitSet alike = columns.isEmpty() ? new BitSet() : alike(table.rows(), each -> about(table, each));
            for (int row = 0; row < table.rows(); row++) {
                Map<String, String> about = null;
                for (TableColumn column : columns) {
                    if (isTold(table, column, row)) {
                        about = about == null ? about(table, row, alike) : about;
                        reader.accept(of(table, column, row, about));
                    }
                }
            }
        }
    }

    /** The result, or step, of one row. */
    public Result of(ResultTable table, Formula formula, int row) {
        return of(table, table.spec().column(formula.result()).orElseThrow(), row, about(table, row));
    }

    private Result of(ResultTable table, TableColumn column, int row, Map<String, String> about) {
        Symbol symbol = column.symbol();
        Values values = table.of(symbol);
        boolean given = values.has(row);
        Optional<Double> number = given && !values.words() ? Optional.of(values.number(row)) : Optional.empty();
        Optional<String> word = given && values.words() ? Optional.of(values.word(row)) : Optional.empty();
        List<Expr> reads = column instanceof TableColumn.Method method
                ? reads(table, method)
                : List.of(((Calculated) column).formula().expr());
        return new Result(
                column,
                places.cell(table.spec(), symbol, row),
                about,
                number,
                word,
                table.unit(symbol, row),
                number.flatMap(value -> own(table, symbol, row, value)),
                given ? List.of() : causes.of(table, symbol, row),
                column instanceof Calculated ? NumbersPrinter.numbers(reads.get(0), table, row) : "",
                inputs(table, reads, row));
    }

    /** A number of a table in the client's own unit, where he measures in another than ours. */
    Optional<Result.Own> own(ResultTable table, Symbol symbol, int row, double number) {
        return plan.ownUnits()
                .of(table, symbol, row)
                .map(own ->
                        new Result.Own(own.scaling().apply(number), own.unit().symbol()));
    }

    /** What a method reads here: a column that this workbook has nothing for is left out of the table. */
    static List<Expr> reads(ResultTable table, TableColumn.Method column) {
        return column.method().reads().stream()
                .filter(read -> Inputs.of(read).stream()
                        .allMatch(symbol -> table.spec().column(symbol).isPresent()))
                .toList();
    }

    /** The rows of a table that bear the same names as others, as two jobs of one sprayer without a name of their own. */
    private static BitSet alike(int rows, IntFunction<Map<String, String>> names) {
        Map<Map<String, String>, Integer> firsts = new HashMap<>();
        BitSet alike = new BitSet();
        for (int row = 0; row < rows; row++) {
            Integer first = firsts.putIfAbsent(names.apply(row), row);
            if (first != null) {
                alike.set(first);
                alike.set(row);
            }
        }
        return alike;
    }

    /** What each row of a table is about. */
    static List<Map<String, String>> abouts(ResultTable table) {
        List<Map<String, String>> abouts = new ArrayList<>(table.rows());
        for (int row = 0; row < table.rows(); row++) {
            abouts.add(about(table, row));
        }
        alike(table.rows(), abouts::get).stream().forEach(row -> place(abouts.get(row), table, row));
        return abouts;
    }

    /** What a row is about by its names alone, wherever it stands. */
    static Map<String, String> names(Map<String, String> about) {
        if (!about.containsKey(ROW)) {
            return about;
        }
        Map<String, String> names = new LinkedHashMap<>(about);
        names.remove(ROW);
        return names;
    }

    /** What a row is about, with its place in the client's lists where its names are those of other rows too. */
    private static Map<String, String> about(ResultTable table, int row, BitSet alike) {
        Map<String, String> about = about(table, row);
        if (alike.get(row)) {
            place(about, table, row);
        }
        return about;
    }

    private static void place(Map<String, String> about, ResultTable table, int row) {
        String place = table.written(row);
        if (!place.isEmpty()) {
            about.put(ROW, place);
        }
    }

    /** What a row is about: its names, blank ones left out. */
    public static Map<String, String> about(ResultTable table, int row) {
        Map<String, String> about = new LinkedHashMap<>();
        for (TableColumn column : table.spec().columns()) {
            boolean identity = column instanceof TableColumn.Word word && word.identity();
            if (column instanceof TableColumn.Name || identity) {
                String name = identity ? table.of(column.symbol()).word(row) : table.name(column.symbol(), row);
                if (!name.isEmpty()) {
                    about.put(column.label(), name);
                }
            }
        }
        return about;
    }

    private List<InputUsed> inputs(ResultTable table, List<Expr> reads, int row) {
        List<InputUsed> inputs = new ArrayList<>();
        for (Expr read : reads) {
            inputs(table, new RowInputs(table, row, read), row, inputs);
        }
        return inputs;
    }

    private void inputs(ResultTable table, RowInputs used, int row, List<InputUsed> inputs) {
        for (Expr.Total total : used.totals()) {
            addends(table, total, row, inputs);
        }
        for (Expr.Count count : used.counts()) {
            counted(table, count, row, inputs);
        }
        for (Symbol symbol : used.symbols()) {
            input(table, symbol, row).ifPresent(inputs::add);
        }
        for (Constant constant : used.constants()) {
            inputs.add(new InputUsed(
                    constant.name(),
                    Optional.of(table.constant(constant)),
                    "",
                    constant.unit().symbol(),
                    Optional.of(basis.constant(constant)),
                    From.CONSTANT));
        }
    }

    /** The rows a total added up; of very many only the first are named, the others as one sum. */
    private void addends(ResultTable table, Expr.Total total, int row, List<InputUsed> inputs) {
        ResultTable other = table.other(total.table());
        Values values = other.of(total.summed());
        int named = 0;
        int more = 0;
        double rest = 0;
        boolean given = false;
        String unit = "";
        for (int there : rowsOf(other, total.keyThere(), table, total.keyHere(), row)) {
            if (named < MOST_ADDENDS) {
                named++;
                inputs.add(addend(other, total.summed(), there));
                continue;
            }
            more++;
            unit = other.unit(total.summed(), there);
            if (values.has(there)) {
                given = true;
                rest += values.number(there);
            }
        }
        if (more > 0) {
            inputs.add(new InputUsed(
                    "and " + Counted.more(more, "row"),
                    given ? Optional.of(rest) : Optional.empty(),
                    "",
                    unit,
                    Optional.empty(),
                    given ? From.CALCULATED : From.MISSING));
        }
    }

    /** The rows a count found; of very many only the first are named. */
    private void counted(ResultTable table, Expr.Count count, int row, List<InputUsed> inputs) {
        ResultTable other = table.other(count.table());
        Values values = other.of(count.counted());
        int found = 0;
        for (int there : rowsOf(other, count.keyThere(), table, count.keyHere(), row)) {
            if (values.has(there) != count.missing() && found++ < MOST_ADDENDS) {
                inputs.add(addend(other, count.counted(), there));
            }
        }
        if (found > MOST_ADDENDS) {
            inputs.add(new InputUsed(
                    "and " + Counted.more(found - MOST_ADDENDS, "row"),
                    Optional.empty(),
                    "counted",
                    "",
                    Optional.empty(),
                    From.CALCULATED));
        }
    }

    private static List<Integer> rowsOf(
            ResultTable other, Symbol keyThere, ResultTable table, Symbol keyHere, int row) {
        Values keys = other.of(keyThere);
        double key = table.of(keyHere).number(row);
        List<Integer> rows = new ArrayList<>();
        for (int there = 0; there < other.rows(); there++) {
            if (keys.number(there) == key) {
                rows.add(there);
            }
        }
        return rows;
    }

    private InputUsed addend(ResultTable other, Symbol symbol, int there) {
        Values values = other.of(symbol);
        LinkCells links = other.links(symbol);
        boolean given = values.has(there);
        return new InputUsed(
                symbol.name() + ofField(other, there),
                given && !values.words() ? Optional.of(values.number(there)) : Optional.empty(),
                given ? word(other, symbol, there) : "",
                other.unit(symbol, there),
                links == null ? Optional.of(places.cell(other.spec(), symbol, there)) : links.address(there),
                !given ? From.MISSING : links == null ? From.CALCULATED : typedFrom(links, there, true));
    }

    /** What is no number to a reader: a word, or the date of a day. */
    static String word(ResultTable table, Symbol symbol, int row) {
        Values values = table.of(symbol);
        boolean day = symbol.type() == Symbol.Type.DATE && values.has(row);
        return values.words() ? values.word(row) : day ? Days.text(values.number(row), table.dayZero()) : "";
    }

    private static String ofField(ResultTable table, int row) {
        String field = table.spec().column(Quantities.FIELD).isPresent() ? table.name(Quantities.FIELD, row) : "";
        return field.isEmpty() ? "" : " of " + field;
    }

    /** Whether an input that may be left out is nowhere in the lists, so that nothing is said of it. */
    static boolean isAbsent(ResultTable table, Symbol symbol, int row) {
        TableColumn column = table.spec().column(symbol).orElseThrow();
        return column instanceof TableColumn.Link link
                && link.optional()
                && table.links(symbol).state(row) == ListRows.State.NO_COLUMN;
    }

    private Optional<InputUsed> input(ResultTable table, Symbol symbol, int row) {
        TableColumn column = table.spec().column(symbol).orElseThrow();
        Values values = table.of(symbol);
        boolean given = values.has(row);
        Optional<Double> number = given && !values.words() ? Optional.of(values.number(row)) : Optional.empty();
        String word = word(table, symbol, row);
        LinkCells links = table.links(symbol);
        // A blank cell of theirs for which the plan has a word from elsewhere said nothing: the word stands in ours.
        boolean typed = !given || links != null && links.answers(row);
        if (links != null && typed) {
            if (!given && isAbsent(table, symbol, row)) {
                return Optional.empty();
            }
            return Optional.of(new InputUsed(
                    symbol.name(),
                    number,
                    word,
                    table.unit(symbol, row),
                    links.address(row),
                    typedFrom(links, row, given)));
        }
        From from = !given ? From.MISSING : DefaultsUsed.in(table, column).test(row) ? From.DEFAULT : From.CALCULATED;
        CellAddress cell = places.cell(table.spec(), symbol, row);
        return Optional.of(
                new InputUsed(symbol.name(), number, word, table.unit(symbol, row), Optional.of(cell), from));
    }

    /** The plan they are read from. */
    WorkPlan plan() {
        return plan;
    }

    /** Where its tables stand. */
    SheetPlaces places() {
        return places;
    }

    /** Where its constants stand. */
    BasisPlaces basis() {
        return basis;
    }

    /** How a linked value came there. */
    static From typedFrom(LinkCells links, int row, boolean given) {
        if (!given) {
            return From.MISSING;
        }
        if (links.state(row) == ListRows.State.READ_FROM_TEXT) {
            return From.READ_FROM_TEXT;
        }
        return links.isDefault(row) ? From.DEFAULT : From.TYPED;
    }
}
