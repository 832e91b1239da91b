package org.rickyard.silage;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.audit.BalanceCheck;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.testing.Linted;
import org.rickyard.testing.Parity;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** A workbook of an invented farm, typed by a test, run through the engine, and asked for its answers. */
final class SilageBook implements AutoCloseable {
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Path folder;
    private Recalculation run;
    private BookPackage book;

    SilageBook(Path folder) {
        this.folder = folder;
    }

    /** A list: headers, then rows; null leaves a cell blank. */
    SilageBook list(String name, Object[]... rows) {
        Sheet sheet = workbook.createSheet(name);
        for (int i = 0; i < rows.length; i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < rows[i].length; j++) {
                if (rows[i][j] instanceof Number number) {
                    row.createCell(j).setCellValue(number.doubleValue());
                } else if (rows[i][j] instanceof NotCalculated formula) {
                    row.createCell(j).setCellFormula(formula.text());
                } else if (rows[i][j] != null) {
                    row.createCell(j).setCellValue(rows[i][j].toString());
                }
            }
        }
        return this;
    }

    /** A formula for which the file stores no value, as libraries for scripts write it. */
    record NotCalculated(String text) {}

    static Object[] row(Object... cells) {
        return cells;
    }

    SilageBook run() {
        Path in = folder.resolve("in.xlsx");
        try (OutputStream out = Files.newOutputStream(in)) {
            workbook.write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try {
            book = BookPackage.open(in);
            run = Recalculation.of(book, RunOptions.usual());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RefusedException e) {
            throw new AssertionError(e);
        }
        return this;
    }

    ResultTable table(String id) {
        return run.plan().table(id);
    }

    double number(String table, Symbol symbol, int row) {
        if (!table(table).of(symbol).has(row)) {
            throw new AssertionError(symbol + " is withheld: " + status(table, row) + findings());
        }
        return table(table).of(symbol).number(row);
    }

    boolean has(String table, Symbol symbol, int row) {
        return table(table).of(symbol).has(row);
    }

    String word(String table, Symbol symbol, int row) {
        return table(table).of(symbol).word(row);
    }

    String cautions(String table, int row) {
        return word(table, TableSpec.CAUTIONS, row);
    }

    String status(String table, int row) {
        return word(table, TableSpec.STATUS, row);
    }

    List<String> findings() {
        return run.sheets().findings().stream()
                .map(finding -> finding.severity() + " "
                        + finding.cell().map(CellAddress::toString).orElse("") + " " + finding.message())
                .toList();
    }

    List<Finding> stops() {
        return run.sheets().findings().stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .toList();
    }

    /** The balance checks of the run. */
    List<BalanceCheck> checks() {
        return BalanceCheck.of(run.plan());
    }

    /** All texts of a sheet of the file written, formulas by what is stored. */
    List<String> texts(String sheet) {
        List<String> texts = new ArrayList<>();
        try (XSSFWorkbook written = new XSSFWorkbook(Files.newInputStream(write()))) {
            for (Row row : written.getSheet(sheet)) {
                for (Cell cell : row) {
                    boolean stored = cell.getCellType() == CellType.FORMULA
                            && cell.getCachedFormulaResultType() == CellType.STRING;
                    if (stored || cell.getCellType() == CellType.STRING) {
                        texts.add(cell.getStringCellValue());
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    String masterCheck() {
        return run.sheets().masterCheck();
    }

    Path write() {
        Path out = folder.resolve("out.xlsx");
        try {
            run.write(out);
            return Linted.after(folder.resolve("in.xlsx"), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (RefusedException e) {
            throw new AssertionError(e);
        }
    }

    /** Cells of the file written that POI works out otherwise than the engine; none is what is hoped for. */
    List<String> disagreements() {
        Path out = write();
        Map<CellAddress, Object> stored = StoredValues.of(out);
        // Where large numbers cancel, in a ridge or a residual, they were tens of metres or hundreds of cubic metres.
        return Parity.differences(stored, PoiRecalculation.of(out), cell -> 10);
    }

    /** The longest formula of the file written; a spreadsheet takes 8,192 characters. */
    String longestFormula() {
        String longest = "";
        try (XSSFWorkbook written = new XSSFWorkbook(Files.newInputStream(write()))) {
            for (Sheet sheet : written) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA
                                && cell.getCellFormula().length() > longest.length()) {
                            longest = cell.getCellFormula();
                        }
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return longest;
    }

    @Override
    public void close() throws IOException {
        workbook.close();
        if (book != null) {
            book.close();
        }
    }
}
