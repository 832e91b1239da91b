package org.rickyard.workbook.write;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.rickyard.formula.CellPrinter;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Scaling;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.trade.Quantities;
import org.rickyard.workbook.graft.CellLook;

/** How the cells of each column of a result table are written: its formula, links, values and looks. */
final class ColumnWriters {
    /** Writes the cell of one column in a row that is begun. */
    @FunctionalInterface
    interface ColumnWriter {
        void put(SheetXml sheet, int row) throws IOException;
    }

    /** No cell shows more decimals. */
    private static final int MOST_DECIMALS = 4;

    private static final String ASKED = "see Checks";

    private final ResultTable table;
    private final Looks.Numbers looks;
    private final CellPrinter printer;
    private final boolean wraps;
    private final Predicate<TableColumn> broken;

    /**
     * @param wraps whether words are broken into lines
     * @param broken of which columns names are, too
     */
    ColumnWriters(
            ResultTable table, Looks.Numbers looks, CellPrinter printer, boolean wraps, Predicate<TableColumn> broken) {
        this.table = table;
        this.looks = looks;
        this.printer = printer;
        this.wraps = wraps;
        this.broken = broken;
    }

    /** The decimals shown. */
    static int decimals(Symbol symbol) {
        return Math.min(symbol.decimals(), MOST_DECIMALS);
    }

    /** One for each column of the table, from left to right. */
    ColumnWriter[] all() {
        List<TableColumn> columns = table.spec().columns();
        ColumnWriter[] writers = new ColumnWriter[columns.size()];
        for (int i = 0; i < writers.length; i++) {
            writers[i] = writer(columns.get(i), i);
        }
        return writers;
    }

    private ColumnWriter writer(TableColumn column, int at) {
        Values values = table.of(column.symbol());
        if (column instanceof TableColumn.Name) {
            return nameWriter(column.symbol(), values, broken.test(column) ? Looks.NAME_WRAPPED : Looks.NAME, at);
        } else if (column instanceof TableColumn.Word) {
            int style = looks.of(broken.test(column) ? Looks.INPUT_WRAPPED : Looks.INPUT);
            return (sheet, row) -> sheet.text(at, style, values.word(row));
        } else if (column instanceof TableColumn.Key) {
            int style = looks.of(Looks.KEY);
            return (sheet, row) -> sheet.number(at, style, values.number(row));
        } else if (column instanceof TableColumn.Method method) {
            CellLook bar = broken.test(column) ? Looks.BAR_WRAPPED : Looks.BAR;
            CellLook look = method.bar() ? bar : method.result() ? Looks.RESULT : Looks.STEP;
            return methodWriter(column.symbol(), values, look, at);
        } else if (column instanceof TableColumn.Link link) {
            return linkWriter(link, values, at);
        } else if (column instanceof TableColumn.Calculated calculated) {
            CellLook look = calculated.result() ? Looks.RESULT : Looks.STEP;
            return formulaWriter(calculated.formula().expr(), column.symbol(), values, look, at);
        } else if (column instanceof TableColumn.Joined joined) {
            return formulaWriter(joined.expr(), column.symbol(), values, Looks.STEP, at);
        }
        int style = looks.of(wraps ? Looks.SENTENCE_WRAPPED : Looks.SENTENCE);
        CellFormula formula = CellFormula.of(printer.guarded(((TableColumn.Sentence) column).expr()));
        return (sheet, row) -> sheet.formula(at, style, formula, values.word(row));
    }

    private ColumnWriter formulaWriter(Expr expr, Symbol symbol, Values values, CellLook look, int at) {
        CellFormula formula = CellFormula.of(printer.guarded(expr));
        if (values.words()) {
            int style = looks.of(wraps ? wrapped(look) : look);
            return (sheet, row) -> sheet.formula(at, style, formula, values.word(row));
        }
        int style =
                looks.of(symbol.type() == Symbol.Type.DATE ? Looks.day(look) : Looks.decimals(look, decimals(symbol)));
        return (sheet, row) -> {
            if (values.has(row)) {
                sheet.formula(at, style, formula, values.number(row));
            } else {
                sheet.formula(at, style, formula, "");
            }
        };
    }

    private static CellLook wrapped(CellLook look) {
        return look.equals(Looks.RESULT) ? Looks.RESULT_WRAPPED : Looks.STEP_WRAPPED;
    }

    private ColumnWriter methodWriter(Symbol symbol, Values values, CellLook look, int at) {
        if (values.words()) {
            boolean bar = look.equals(Looks.BAR) || look.equals(Looks.BAR_WRAPPED);
            int style = looks.of(bar || !wraps ? look : wrapped(look));
            int empty = bar ? looks.of(Looks.STEP) : style;
            return (sheet, row) -> {
                if (values.has(row)) {
                    sheet.text(at, style, values.word(row));
                } else {
                    sheet.empty(at, empty);
                }
            };
        }
        int style =
                looks.of(symbol.type() == Symbol.Type.DATE ? Looks.day(look) : Looks.decimals(look, decimals(symbol)));
        return (sheet, row) -> {
            if (values.has(row)) {
                sheet.number(at, style, values.number(row));
            } else {
                sheet.empty(at, style);
            }
        };
    }

    private ColumnWriter nameWriter(Symbol symbol, Values values, CellLook look, int at) {
        LinkCells links = table.links(symbol);
        int style = looks.of(look);
        String formula = LinkFormula.SOURCE + "&\"\"";
        return (sheet, row) -> {
            Optional<CellAddress> cell = links.address(row);
            ListRows.State state = links.state(row);
            if (state == ListRows.State.READ_FROM_TEXT) {
                sheet.text(at, style, values.word(row));
            } else if (cell.isPresent()
                    && state != ListRows.State.ERROR
                    && mark(links, state, row).isEmpty()) {
                sheet.link(at, style, formula, cell.get(), values.word(row));
            } else {
                sheet.empty(at, style);
            }
        };
    }

    private ColumnWriter linkWriter(TableColumn.Link link, Values values, int at) {
        Symbol symbol = link.symbol();
        LinkCells links = table.links(symbol);
        int style = looks.of(
                symbol.type() == Symbol.Type.DATE
                        ? Looks.day(Looks.INPUT)
                        : symbol.equals(Quantities.YEAR_BUILT)
                                ? Looks.year(Looks.INPUT)
                                : Looks.decimals(Looks.INPUT, decimals(symbol)));
        int textStyle = looks.of(Looks.INPUT);
        LinkFormulas formulas = new LinkFormulas(link);
        return (sheet, row) -> {
            Optional<CellAddress> cell = links.address(row);
            ListRows.State state = links.state(row);
            if (cell.isEmpty() || state == ListRows.State.NO_COLUMN) {
                sheet.empty(at, style);
            } else if (state == ListRows.State.ERROR && links.text(row).equals(Grid.LOOP)) {
                sheet.text(at, textStyle, LinkFormula.LOOP);
            } else if (state == ListRows.State.ASKED) {
                sheet.text(at, textStyle, ASKED);
            } else if (state == ListRows.State.READ_FROM_TEXT) {
                if (values.has(row)) {
                    sheet.number(at, style, values.number(row));
                } else {
                    sheet.text(at, textStyle, LinkFormula.IMPOSSIBLE);
                }
            } else {
                String formula = formulas.of(links.scaling(row), link.optional() ? mark(links, state, row) : "");
                if (values.has(row)) {
                    sheet.link(at, style, formula, cell.get(), values.number(row));
                } else {
                    sheet.link(at, style, formula, cell.get(), unusable(state, values.state(row)));
                }
            }
        };
    }

    /**
     * What stands in a cell that was read as a blank: "-", "n/a". The grid has to take just that for one too, or a
     * default would stand only until the first recalculation.
     */
    private static String mark(LinkCells links, ListRows.State state, int row) {
        String typed = state == ListRows.State.BLANK ? links.typed(row) : "";
        // Most blanks are empty; a stream for each of them would be a twentieth of the writing.
        return typed.isEmpty() || typed.chars().anyMatch(Character::isISOControl) ? "" : typed;
    }

    /** The formulas of a column's links: one for each unit and mark met, and nearly all rows are in one. */
    private static final class LinkFormulas {
        private final TableColumn.Link link;
        private final Map<String, String> made = new HashMap<>();
        private Scaling last;
        private String lastMark = "";
        private String ofLast;

        LinkFormulas(TableColumn.Link link) {
            this.link = link;
        }

        String of(Scaling scaling, String mark) {
            if (scaling != last || !mark.equals(lastMark)) {
                ofLast = made.computeIfAbsent(
                        scaling.cell() + " " + mark,
                        steps -> LinkFormula.of(link.symbol(), scaling, link.optional(), mark));
                last = scaling;
                lastMark = mark;
            }
            return ofLast;
        }
    }

    private static String unusable(ListRows.State state, Values.State value) {
        if (value != Values.State.UNUSABLE) {
            return "";
        }
        return switch (state) {
            case NOT_READABLE -> LinkFormula.NOT_A_NUMBER;
            case ERROR -> LinkFormula.ERROR;
            default -> LinkFormula.IMPOSSIBLE;
        };
    }
}
