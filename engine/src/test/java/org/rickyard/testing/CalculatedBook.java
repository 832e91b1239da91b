package org.rickyard.testing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook under POI's evaluator, which is asked directly and given what it needs in a form that is quick to read: POI's
 * own wrapping looks a cell's kind and content up in XML at every question, and takes a formula's text apart at every
 * calculation. What is worked out, and how, is POI's alone.
 */
public final class CalculatedBook {
    private final Book book;
    private final WorkbookEvaluator evaluator;

    /** Puts a workbook under an evaluator that has worked out nothing yet. */
    public CalculatedBook(XSSFWorkbook workbook) {
        book = new Book(XSSFEvaluationWorkbook.create(workbook));
        evaluator = new WorkbookEvaluator(book, null, null);
    }

    /** A cell; null where there is none. */
    public EvaluationCell cell(int sheet, int row, int column) {
        return book.getSheet(sheet).getCell(row, column);
    }

    /** The value of a formula cell, worked out if need be. */
    public ValueEval value(EvaluationCell formula) {
        return evaluator.evaluate(formula);
    }

    /** Tells that something else stands in a cell now: what depends on it is worked out again when it is asked for. */
    public void changed(int sheet, int row, int column) {
        book.sheet(sheet).forget(row, column);
        evaluator.notifyUpdateCell(cell(sheet, row, column));
    }

    /** A cell as it was read. */
    private record Content(
            EvaluationCell poi,
            Sheet getSheet,
            int getRowIndex,
            int getColumnIndex,
            CellType getCellType,
            double number,
            String text,
            Ptg[] formula)
            implements EvaluationCell {
        static Content of(EvaluationCell poi, Sheet sheet, EvaluationWorkbook workbook) {
            CellType type = poi.getCellType();
            return new Content(
                    poi,
                    sheet,
                    poi.getRowIndex(),
                    poi.getColumnIndex(),
                    type,
                    type == CellType.NUMERIC ? poi.getNumericCellValue() : Double.NaN,
                    type == CellType.STRING ? poi.getStringCellValue() : null,
                    type == CellType.FORMULA ? workbook.getFormulaTokens(poi) : null);
        }

        @Override
        public Object getIdentityKey() {
            return poi.getIdentityKey();
        }

        @Override
        public double getNumericCellValue() {
            return getCellType == CellType.NUMERIC ? number : poi.getNumericCellValue();
        }

        @Override
        public String getStringCellValue() {
            return getCellType == CellType.STRING ? text : poi.getStringCellValue();
        }

        @Override
        public boolean getBooleanCellValue() {
            return poi.getBooleanCellValue();
        }

        @Override
        public int getErrorCellValue() {
            return poi.getErrorCellValue();
        }

        @Override
        public CellRangeAddress getArrayFormulaRange() {
            return poi.getArrayFormulaRange();
        }

        @Override
        public boolean isPartOfArrayFormulaGroup() {
            return poi.isPartOfArrayFormulaGroup();
        }

        @Override
        public CellType getCachedFormulaResultType() {
            return poi.getCachedFormulaResultType();
        }
    }

    /** A sheet whose cells are read once. */
    private static final class Sheet implements EvaluationSheet {
        private final EvaluationSheet poi;
        private final EvaluationWorkbook workbook;
        private final Map<Long, Content> cells = new HashMap<>();
        private final int lastRow;

        Sheet(EvaluationSheet poi, EvaluationWorkbook workbook) {
            this.poi = poi;
            this.workbook = workbook;
            lastRow = poi.getLastRowNum();
        }

        private static long key(int row, int column) {
            return (long) row << 20 | column;
        }

        void forget(int row, int column) {
            cells.remove(key(row, column));
            poi.clearAllCachedResultValues();
        }

        @Override
        public EvaluationCell getCell(int row, int column) {
            long key = key(row, column);
            Content known = cells.get(key);
            if (known == null && !cells.containsKey(key)) {
                EvaluationCell cell = poi.getCell(row, column);
                known = cell == null ? null : Content.of(cell, this, workbook);
                cells.put(key, known);
            }
            return known;
        }

        @Override
        public void clearAllCachedResultValues() {
            poi.clearAllCachedResultValues();
        }

        @Override
        public int getLastRowNum() {
            return lastRow;
        }

        @Override
        public boolean isRowHidden(int row) {
            return poi.isRowHidden(row);
        }
    }

    /** A defined name as it was read. */
    private record Name(EvaluationName poi, boolean isRange, boolean hasFormula, Ptg[] getNameDefinition)
            implements EvaluationName {
        static Name of(EvaluationName poi) {
            return new Name(poi, poi.isRange(), poi.hasFormula(), poi.hasFormula() ? poi.getNameDefinition() : null);
        }

        @Override
        public String getNameText() {
            return poi.getNameText();
        }

        @Override
        public boolean isFunctionName() {
            return poi.isFunctionName();
        }

        @Override
        public NamePtg createPtg() {
            return poi.createPtg();
        }
    }

    /** The workbook, with sheets and names of the kinds above. */
    private record Book(XSSFEvaluationWorkbook poi, List<Sheet> sheets, Map<String, Optional<Name>> names)
            implements EvaluationWorkbook {
        Book(XSSFEvaluationWorkbook poi) {
            this(poi, new ArrayList<>(), new HashMap<>());
        }

        Sheet sheet(int index) {
            while (sheets.size() <= index) {
                sheets.add(new Sheet(poi.getSheet(sheets.size()), poi));
            }
            return sheets.get(index);
        }

        @Override
        public EvaluationSheet getSheet(int index) {
            return sheet(index);
        }

        @Override
        public int getSheetIndex(EvaluationSheet sheet) {
            return sheets.indexOf(sheet);
        }

        @Override
        public Ptg[] getFormulaTokens(EvaluationCell cell) {
            return ((Content) cell).formula();
        }

        @Override
        public String getSheetName(int index) {
            return poi.getSheetName(index);
        }

        @Override
        public int getSheetIndex(String name) {
            return poi.getSheetIndex(name);
        }

        @Override
        public ExternalSheet getExternalSheet(int index) {
            return poi.getExternalSheet(index);
        }

        @Override
        public ExternalSheet getExternalSheet(String first, String last, int workbook) {
            return poi.getExternalSheet(first, last, workbook);
        }

        @Override
        public int convertFromExternSheetIndex(int index) {
            return poi.convertFromExternSheetIndex(index);
        }

        @Override
        public ExternalName getExternalName(int sheet, int name) {
            return poi.getExternalName(sheet, name);
        }

        @Override
        public ExternalName getExternalName(String name, String sheet, int workbook) {
            return poi.getExternalName(name, sheet, workbook);
        }

        @Override
        public EvaluationName getName(NamePtg name) {
            return named("#" + name.getIndex(), () -> poi.getName(name));
        }

        @Override
        public EvaluationName getName(String name, int sheet) {
            return named(sheet + "!" + name, () -> poi.getName(name, sheet));
        }

        /** A name that is asked for and does not exist, as that of a function, is remembered, too. */
        private EvaluationName named(String key, Supplier<EvaluationName> poi) {
            return names.computeIfAbsent(
                            key, k -> Optional.ofNullable(poi.get()).map(Name::of))
                    .orElse(null);
        }

        @Override
        public String resolveNameXText(NameXPtg name) {
            return poi.resolveNameXText(name);
        }

        @Override
        public UDFFinder getUDFFinder() {
            return poi.getUDFFinder();
        }

        @Override
        public SpreadsheetVersion getSpreadsheetVersion() {
            return poi.getSpreadsheetVersion();
        }

        @Override
        public void clearAllCachedResultValues() {
            poi.clearAllCachedResultValues();
        }
    }
}
