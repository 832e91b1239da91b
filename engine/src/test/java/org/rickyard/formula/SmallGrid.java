package org.rickyard.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * A few rows of a table, seen both as the evaluator sees them and as they stand in a sheet, so that one expression can
 * be worked out by both. What has no value stands in the sheet as the engine writes it: an empty cell or {@code ""} for
 * a blank, the word "impossible" for what cannot be used, a formula giving {@code ""} for what is withheld.
 */
final class SmallGrid implements RowValues {
    private static final String BASIS_SUFFIX = " basis";

    private final Map<Symbol, Object[]> own = new LinkedHashMap<>();
    private final Map<String, Map<Symbol, Object[]>> others = new LinkedHashMap<>();
    private final List<Constant> constants = new ArrayList<>();
    private final List<ReferenceTable> tables = new ArrayList<>();
    private String sheet = "Own";

    /** A column of the table itself: numbers, words, or a {@link Values.State} where there is no value. */
    SmallGrid column(Symbol symbol, Object... cells) {
        own.put(symbol, cells);
        return this;
    }

    /** A column of another table. */
    SmallGrid other(String table, Symbol symbol, Object... cells) {
        others.computeIfAbsent(table, t -> new LinkedHashMap<>()).put(symbol, cells);
        return this;
    }

    int rows() {
        return own.values().iterator().next().length;
    }

    @Override
    public Values of(Symbol symbol) {
        return values(symbol, own.get(symbol));
    }

    @Override
    public Values of(String table, Symbol symbol) {
        return values(symbol, others.get(table).get(symbol));
    }

    @Override
    public double constant(Constant constant) {
        return constant.value();
    }

    private static Values values(Symbol symbol, Object[] cells) {
        boolean words = symbol.type() == Symbol.Type.TEXT;
        Values values = words ? Values.ofWords(cells.length) : Values.ofNumbers(cells.length);
        for (int row = 0; row < cells.length; row++) {
            if (cells[row] instanceof Values.State state) {
                if (words) {
                    values.set(row, "");
                }
                values.mark(row, state);
            } else if (words) {
                values.set(row, (String) cells[row]);
            } else {
                values.set(row, ((Number) cells[row]).doubleValue());
            }
        }
        return values;
    }

    /** Writes the table, its like and an expression's formula into sheets whose names start alike. */
    void write(Workbook workbook, String name, Expr expr) {
        sheet = name;
        constants.clear();
        tables.clear();
        constants.addAll(Inputs.constantsOf(expr));
        tables.addAll(Inputs.tablesOf(expr));
        Sheet page = workbook.createSheet(name);
        int last = own.size();
        put(page, own);
        others.forEach((table, columns) -> put(workbook.createSheet(name + " " + table), columns));
        if (!constants.isEmpty() || !tables.isEmpty()) {
            basis(workbook.createSheet(name + BASIS_SUFFIX));
        }
        String formula = new CellPrinter(new Places()).guarded(expr);
        for (int row = 0; row < rows(); row++) {
            page.getRow(row)
                    .createCell(last)
                    .setCellFormula(formula.replace(String.valueOf(CellPrinter.ROW), Integer.toString(row + 1)));
        }
    }

    /** The column the formula stands in, counted from 0. */
    int resultColumn() {
        return own.size();
    }

    private static void put(Sheet page, Map<Symbol, Object[]> columns) {
        int at = 0;
        for (Map.Entry<Symbol, Object[]> column : columns.entrySet()) {
            for (int row = 0; row < column.getValue().length; row++) {
                Row line = page.getRow(row) == null ? page.createRow(row) : page.getRow(row);
                put(line, at, column.getValue()[row], row);
            }
            at++;
        }
    }

    private static void put(Row line, int at, Object cell, int row) {
        if (cell instanceof Number number) {
            line.createCell(at).setCellValue(number.doubleValue());
        } else if (cell instanceof String text) {
            line.createCell(at).setCellValue(text);
        } else {
            switch ((Values.State) cell) {
                case UNUSABLE -> line.createCell(at).setCellValue("impossible");
                case WITHHELD -> line.createCell(at).setCellFormula("\"\"");
                default -> {
                    // A blank is an empty cell in one row and a formula giving "" in the next: both must do.
                    Cell blank = line.createCell(at);
                    if (row % 2 == 1) {
                        blank.setCellFormula("\"\"");
                    }
                }
            }
        }
    }

    private void basis(Sheet page) {
        int next = 0;
        for (Constant constant : constants) {
            page.createRow(next++).createCell(1).setCellValue(constant.value());
        }
        for (ReferenceTable table : tables) {
            for (ReferenceTable.Row entry : table.rows()) {
                Row line = page.createRow(next++);
                if (entry.word() != null) {
                    line.createCell(0).setCellValue(entry.word());
                } else {
                    line.createCell(0).setCellValue(entry.key());
                }
                if (entry.text() != null) {
                    line.createCell(1).setCellValue(entry.text());
                } else {
                    line.createCell(1).setCellValue(entry.value());
                }
            }
        }
    }

    /** Where everything was written. */
    private final class Places implements CellNames {
        @Override
        public String cell(Symbol symbol) {
            return letter(own, symbol) + String.valueOf(CellPrinter.ROW);
        }

        /** No labels stand over these columns, so a label is a text of its own here. */
        @Override
        public String label(Symbol symbol) {
            return "\"" + symbol.name() + "\"";
        }

        @Override
        public String constant(Constant constant) {
            return quoted(BASIS_SUFFIX) + "$B$" + (constants.indexOf(constant) + 1);
        }

        @Override
        public String keys(ReferenceTable table) {
            return range(table, 'A');
        }

        @Override
        public String values(ReferenceTable table) {
            return range(table, 'B');
        }

        @Override
        public String column(String table, Symbol symbol) {
            char column = letter(others.get(table), symbol);
            int rows = others.get(table).get(symbol).length;
            return quoted(" " + table) + "$" + column + "$1:$" + column + "$" + rows;
        }

        private String range(ReferenceTable table, char column) {
            int first = 1 + constants.size();
            for (ReferenceTable before : tables.subList(0, tables.indexOf(table))) {
                first += before.rows().size();
            }
            return quoted(BASIS_SUFFIX) + "$" + column + "$" + first + ":$" + column + "$"
                    + (first + table.rows().size() - 1);
        }

        private String quoted(String suffix) {
            return "'" + sheet + suffix + "'!";
        }
    }

    private static char letter(Map<Symbol, Object[]> columns, Symbol symbol) {
        int at = new ArrayList<>(columns.keySet()).indexOf(symbol);
        if (at < 0) {
            throw new IllegalArgumentException("no column " + symbol);
        }
        return (char) ('A' + at);
    }
}
