package org.rickyard.plan.table;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Days;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Expr;
import org.rickyard.formula.RowValues;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.quantity.Range;
import org.rickyard.trade.Quantities;

/**
 * A result table with its rows: what each cell is linked to, and once evaluated, what it holds. It is evaluated when it is
 * first asked, or before by a thread that has nothing else to do.
 */
public final class ResultTable implements RowValues {
    private final TableSpec declared;
    private TableSpec spec;
    private final RowSources sources;
    private final String emptyBecause;
    private final Map<Symbol, Values> values = new HashMap<>();
    private final Map<Symbol, LinkCells> links = new HashMap<>();
    private final Set<Symbol> leftOut = new HashSet<>();
    /** By the condition itself: to compare two of them would take longer than to make one ready. */
    private final Map<Condition, Evaluator.TruthAt> truths = new IdentityHashMap<>();

    /** The units that products are counted in, row by row; null where its columns tell none. */
    private Values ownUnits;

    private Map<String, ResultTable> others = Map.of();
    private ConstantsInForce constants;
    private LocalDate dayZero = Days.USUAL_ZERO;
    private SoFar soFar;
    private FutureTask<Void> evaluation;

    /**
     * A table.
     *
     * @param declared with all columns it could have
     * @param spec with those it has in this workbook
     */
    public ResultTable(TableSpec declared, TableSpec spec, RowSources sources, String emptyBecause) {
        this.declared = declared;
        this.spec = spec;
        for (TableColumn column : declared.columns()) {
            if (spec.column(column.symbol()).isEmpty()) {
                leftOut.add(column.symbol());
            }
        }
        this.sources = sources;
        this.emptyBecause = emptyBecause;
    }

    /** Its columns in this workbook, and what else is declared of it. */
    public TableSpec spec() {
        return spec;
    }

    /** Its declaration, with every column that any workbook could fill. */
    public TableSpec declared() {
        return declared;
    }

    /** Shows fewer columns; the values of the others can still be asked for. */
    public void narrow(TableSpec fewer) {
        awaitValues();
        spec = fewer;
        findOwnUnits();
    }

    private void findOwnUnits() {
        ownUnits = spec.column(Quantities.PRODUCT_UNIT)
                .map(column -> values.get(column.symbol()))
                .orElse(null);
    }

    /** How many rows. */
    public int rows() {
        return sources.rows();
    }

    /** Why there are no rows, when there are none. */
    public String emptyBecause() {
        return emptyBecause;
    }

    /** The client's cells behind a linked column. */
    public LinkCells links(Symbol symbol) {
        awaitValues();
        return links.get(symbol);
    }

    @Override
    public LocalDate dayZero() {
        return dayZero;
    }

    /** To be asked once all its columns have their values. */
    @Override
    public Evaluator.TruthAt truth(Condition condition) {
        awaitValues();
        return truths.computeIfAbsent(condition, asked -> Evaluator.condition(asked, this));
    }

    /** Another table of the same run. */
    public ResultTable other(String table) {
        return others.get(table);
    }

    /** Whether a column is declared of it but left out, since nothing in this workbook can fill it. */
    public boolean leavesOut(Symbol symbol) {
        return leftOut.contains(symbol);
    }

    /**
     * Makes it ready to be evaluated: what joins rows, then all other columns from left to right.
     *
     * @param tables those made before, which may be waiting to be evaluated themselves; it can read from no others, so
     *     that no two tables ever wait for each other
     * @return the evaluation, for any thread to run. Whoever asks for a value first runs it where nobody has, and waits
     *     where another does; it is run once, and what comes of it is the same whoever runs it.
     */
    public Runnable evaluation(Map<String, ResultTable> tables, ConstantsInForce inForce, LocalDate countedFrom) {
        others = tables;
        constants = inForce;
        dayZero = countedFrom;
        soFar = new SoFar(Map.copyOf(tables));
        evaluation = new FutureTask<>(this::evaluate, null);
        return evaluation;
    }

    /** Returns when it is evaluated; throws what the evaluation threw. */
    public void awaitValues() {
        if (evaluation == null) {
            return;
        }
        evaluateUnlessBegun();
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    evaluation.get();
                    return;
                } catch (InterruptedException later) {
                    // What is evaluated elsewhere does not wait for anything, so the end is near.
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) e.getCause();
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    void evaluateUnlessBegun() {
        evaluation.run();
    }

    private void evaluate() {
        for (TableColumn column : spec.columns()) {
            if (column.joinsRows()) {
                values.put(column.symbol(), evaluate(column));
            }
        }
        for (TableColumn column : spec.columns()) {
            if (!column.joinsRows()) {
                values.put(column.symbol(), evaluate(column));
            }
        }
        if (!leftOut.isEmpty()) {
            Values numbers = Values.ofNumbers(rows());
            Values words = Values.ofWords(rows());
            for (int row = 0; row < rows(); row++) {
                numbers.mark(row, Values.State.BLANK);
                words.mark(row, Values.State.BLANK);
            }
            leftOut.forEach(symbol -> values.put(symbol, symbol.type() == Symbol.Type.TEXT ? words : numbers));
        }
        findOwnUnits();
    }

    /** The table as its own formulas see it while they are worked out. */
    private final class SoFar implements RowValues {
        private final Map<String, ResultTable> before;

        SoFar(Map<String, ResultTable> before) {
            this.before = before;
        }

        @Override
        public Values of(Symbol symbol) {
            return known(symbol);
        }

        @Override
        public Values of(String table, Symbol symbol) {
            return spec.id().equals(table) ? known(symbol) : in(before, table).of(symbol);
        }

        @Override
        public double constant(Constant constant) {
            return ResultTable.this.constant(constant);
        }

        @Override
        public LocalDate dayZero() {
            return dayZero;
        }
    }

    private Values evaluate(TableColumn column) {
        if (column instanceof TableColumn.Name name) {
            return names(name);
        } else if (column instanceof TableColumn.Word word) {
            return words(word);
        } else if (column instanceof TableColumn.Key key) {
            Values result = Values.ofNumbers(rows());
            int[] keys = sources.key(key.symbol());
            for (int row = 0; row < rows(); row++) {
                result.set(row, keys[row]);
            }
            return result;
        } else if (column instanceof TableColumn.Method method) {
            return found(method.symbol());
        } else if (column instanceof TableColumn.Link link) {
            return numbers(link);
        } else if (column instanceof TableColumn.Calculated calculated) {
            return calculated(calculated.formula().expr(), calculated.symbol());
        } else if (column instanceof TableColumn.Joined joined) {
            return calculated(joined.expr(), joined.symbol());
        }
        return calculated(((TableColumn.Sentence) column).expr(), column.symbol());
    }

    private Values found(Symbol symbol) {
        if (symbol.type() == Symbol.Type.TEXT) {
            Values words = Values.ofWords(rows());
            String[] found = sources.words(symbol);
            for (int row = 0; row < rows(); row++) {
                words.set(row, found[row] == null ? "" : found[row]);
            }
            return words;
        }
        Values result = Values.ofNumbers(rows());
        double[] found = sources.numbers(symbol);
        for (int row = 0; row < rows(); row++) {
            if (Double.isNaN(found[row])) {
                result.mark(row, Values.State.WITHHELD);
            } else {
                result.set(row, found[row]);
            }
        }
        return result;
    }

    private Values names(TableColumn.Name name) {
        LinkCells cells = new LinkCells(name.symbol(), name.places(), sources, rows());
        links.put(name.symbol(), cells);
        Values result = Values.ofWords(rows());
        for (int row = 0; row < rows(); row++) {
            // The sheet has an empty cell there, for an error would spread from it.
            result.set(row, cells.state(row) == ListRows.State.ERROR ? "" : cells.typed(row));
        }
        return result;
    }

    /** Where in the client's lists a row comes from, for rows that their names do not tell apart: "Jobs!7". */
    public String written(int row) {
        return sources.written(row);
    }

    /** A name as people say it: without outer spaces, and an operation by its usual word. */
    public String name(Symbol symbol, int row) {
        return links(symbol).text(row);
    }

    private Values words(TableColumn.Word word) {
        Values result = Values.ofWords(rows());
        LinkCells cells = new LinkCells(word.symbol(), word.places(), sources, rows());
        links.put(word.symbol(), cells);
        String[] found = sources.words(word.symbol());
        for (int row = 0; row < rows(); row++) {
            result.set(row, word(word, found, cells, row));
        }
        return result;
    }

    private static String word(TableColumn.Word word, String[] found, LinkCells cells, int row) {
        if (found != null && found[row] != null) {
            return found[row];
        }
        return switch (cells.state(row)) {
            // A word may stand in the header for the whole column: "Power (PTO kW)".
            case GIVEN, READ_FROM_TEXT -> cells.text(row);
            case NO_COLUMN, BLANK -> "";
            default -> word.unreadTold() ? Quantities.UNREADABLE : "";
        };
    }

    /** The words that a column of words read by the run holds in any of its rows. */
    public static Set<String> wordsOf(TableColumn.Word word, RowSources sources) {
        LinkCells cells = new LinkCells(word.symbol(), word.places(), sources, sources.rows());
        String[] found = sources.words(word.symbol());
        Set<String> words = new LinkedHashSet<>();
        for (int row = 0; row < sources.rows(); row++) {
            words.add(word(word, found, cells, row));
        }
        words.remove("");
        return words;
    }

    private Values numbers(TableColumn.Link link) {
        LinkCells cells = new LinkCells(link.symbol(), link.places(), sources, rows());
        links.put(link.symbol(), cells);
        Values result = Values.ofNumbers(rows());
        Range possible = link.symbol().possible();
        for (int row = 0; row < rows(); row++) {
            switch (cells.state(row)) {
                case GIVEN, READ_FROM_TEXT -> {
                    double number = cells.number(row);
                    if (possible.contains(number)) {
                        result.set(row, number);
                    } else {
                        result.mark(row, Values.State.UNUSABLE);
                    }
                }
                case IMPOSSIBLE, ASKED -> result.mark(row, Values.State.UNUSABLE);
                // A required link shows nothing for text or an error, as it does for a blank; an optional one says so.
                case NOT_READABLE, ERROR -> {
                    boolean told = link.optional() || cells.text(row).equals(Grid.LOOP);
                    result.mark(row, told ? Values.State.UNUSABLE : Values.State.BLANK);
                }
                // Something is typed there, so that no default may stand in for it.
                case UNCOMPUTED -> result.mark(row, link.optional() ? Values.State.UNUSABLE : Values.State.BLANK);
                default -> result.mark(row, Values.State.BLANK);
            }
        }
        return result;
    }

    private Values calculated(Expr expr, Symbol symbol) {
        if (rows() == 0) {
            // Nobody asks an empty table, and making a formula ready costs more than a row of it.
            return symbol.type() == Symbol.Type.TEXT ? Values.ofWords(0) : Values.ofNumbers(0);
        }
        return symbol.type() == Symbol.Type.TEXT
                ? words(Evaluator.words(expr, soFar))
                : numbers(Evaluator.number(expr, soFar));
    }

    private Values words(Evaluator.WordAt word) {
        Values result = Values.ofWords(rows());
        for (int row = 0; row < rows(); row++) {
            result.set(row, word.at(row));
        }
        return result;
    }

    private Values numbers(Evaluator.NumberAt number) {
        Values result = Values.ofNumbers(rows());
        double[] out = new double[1];
        for (int row = 0; row < rows(); row++) {
            if (number.at(row, out)) {
                result.set(row, out[0]);
            } else {
                result.mark(row, Values.State.WITHHELD);
            }
        }
        return result;
    }

    @Override
    public Values of(Symbol symbol) {
        awaitValues();
        return known(symbol);
    }

    private Values known(Symbol symbol) {
        Values found = values.get(symbol);
        if (found == null) {
            throw new IllegalArgumentException(
                    "'" + symbol + "' stands in no column before it in '" + spec.sheet() + "'");
        }
        return found;
    }

    @Override
    public Values of(String table, Symbol symbol) {
        return in(others, table).of(symbol);
    }

    private ResultTable in(Map<String, ResultTable> tables, String id) {
        ResultTable other = tables.get(id);
        if (other == null) {
            throw new IllegalArgumentException("there is no table '" + id + "' before '" + spec.id() + "'");
        }
        return other;
    }

    @Override
    public double constant(Constant constant) {
        return constants.value(constant);
    }

    /** The unit a row's number of a symbol is in: a product's own unit where that differs from row to row. */
    public String unit(Symbol symbol, int row) {
        awaitValues();
        String unit = symbol.unit().symbol();
        String own = ownUnits == null ? "" : ownUnits.word(row);
        return own.isEmpty() ? unit : unit.replace("product unit", own);
    }
}
