package org.rickyard.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.CellAddress;

/** Works out every formula of a workbook with POI's evaluator, which takes no notice of the values stored. */
public final class PoiRecalculation {
    static {
        // Formula sheets of one pattern pack far better than the ratio that POI takes for an attack.
        ZipSecureFile.setMinInflateRatio(0);
    }

    private PoiRecalculation() {}

    /**
     * The value of every formula cell: {@link Double}, {@link String}, {@link Boolean} or {@link CellError}.
     *
     * @param sheets the sheets wanted; all of them if none is named. Formulas may refer to the others.
     * @throws NoSuchElementException if there is no such sheet
     * @throws AssertionError if a formula uses what POI cannot work out
     */
    public static Map<CellAddress, Object> of(Path xlsx, String... sheets) {
        Set<String> wanted = Set.of(sheets);
        Map<CellAddress, Object> values = new LinkedHashMap<>();
        try (OPCPackage file = OPCPackage.open(xlsx.toFile(), PackageAccess.READ);
                XSSFWorkbook workbook = new XSSFWorkbook(file)) {
            for (String sheet : sheets) {
                if (workbook.getSheet(sheet) == null) {
                    throw new NoSuchElementException("no worksheet '" + sheet + "' in " + xlsx);
                }
            }
            CalculatedBook calculated = new CalculatedBook(workbook);
            for (Sheet sheet : workbook) {
                if (wanted.isEmpty() || wanted.contains(sheet.getSheetName())) {
                    evaluate(sheet, calculated, values);
                }
            }
            return values;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InvalidFormatException e) {
            throw new AssertionError("POI cannot open " + xlsx, e);
        }
    }

    private static void evaluate(Sheet sheet, CalculatedBook calculated, Map<CellAddress, Object> values) {
        int index = sheet.getWorkbook().getSheetIndex(sheet);
        for (Row row : sheet) {
            for (Cell each : row) {
                EvaluationCell cell = calculated.cell(index, each.getRowIndex(), each.getColumnIndex());
                if (cell.getCellType() == CellType.FORMULA) {
                    CellAddress address =
                            new CellAddress(sheet.getSheetName(), each.getRowIndex(), each.getColumnIndex());
                    values.put(address, evaluate(each, cell, address, calculated));
                }
            }
        }
    }

    private static Object evaluate(Cell poi, EvaluationCell cell, CellAddress address, CalculatedBook calculated) {
        ValueEval value;
        try {
            value = calculated.value(cell);
        } catch (RuntimeException e) {
            throw new AssertionError("POI cannot work out " + address + " =" + poi.getCellFormula(), e);
        }
        if (value instanceof NumberEval number) {
            return number.getNumberValue();
        } else if (value instanceof StringEval text) {
            return text.getStringValue();
        } else if (value instanceof BoolEval logical) {
            return logical.getBooleanValue();
        } else if (value instanceof ErrorEval error) {
            return new CellError(error.getErrorString());
        }
        throw new AssertionError(address + " evaluates to " + value);
    }
}
