package org.rickyard.workbook.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.SheetRangeIdentifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.eval.BoolEval;
import org.apache.poi.ss.formula.eval.NumberEval;
import org.apache.poi.ss.formula.eval.StringEval;
import org.apache.poi.ss.formula.eval.ValueEval;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.udf.AggregatingUDFFinder;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.notation.FormulaTokens;
import org.rickyard.workbook.read.SheetCells;
import org.rickyard.workbook.read.TableParts;

/**
 * The client's sheets as POI's evaluator wants to see them, without loading the workbook a second time. Only formulas
 * without stored value are formulas here; every other cell is what the file says it came to.
 */
final class EvaluatedBook implements EvaluationWorkbook, FormulaParsingWorkbook {
    private final BookScope scope;
    private final List<Sheet> sheets = new ArrayList<>();
    private final Map<Long, String> formulas;
    private final Map<Long, Ptg[]> parsed = new HashMap<>();
    private final Map<String, Named> names = new HashMap<>();
    private final List<Named> namesByIndex = new ArrayList<>();
    private final WorkbookEvaluator evaluator;

    /** What a formula comes to. */
    record Outcome(Kind kind, double number, String text) {}

    /** Says that what is asked for is not known, or not certain; the formula stays without value. */
    private static final class UncertainException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        UncertainException(String what) {
            super(what, null, false, false);
        }
    }

    /**
     * A view of the sheets.
     *
     * @param formulas those without stored value, by {@link UnstoredFormulas#place}
     */
    EvaluatedBook(BookScope scope, List<SheetCells> cells, Map<Long, String> formulas) {
        this.scope = scope;
        this.formulas = formulas;
        for (SheetCells sheet : cells) {
            sheets.add(new Sheet(sheet, sheets.size()));
        }
        this.evaluator = new WorkbookEvaluator(this, null, null);
    }

    /** What the formula at a place comes to; null where that is not certain. */
    Outcome outcome(long place) {
        Sheet sheet = sheets.get(UnstoredFormulas.sheet(place));
        try {
            ValueEval value =
                    evaluator.evaluate(sheet.getCell(UnstoredFormulas.row(place), UnstoredFormulas.column(place)));
            if (value instanceof NumberEval number) {
                double n = number.getNumberValue();
                return Double.isFinite(n) ? new Outcome(Kind.NUMBER, n, "") : null;
            }
            if (value instanceof BoolEval bool) {
                boolean yes = bool.getBooleanValue();
                return new Outcome(Kind.LOGICAL, yes ? 1 : 0, yes ? "TRUE" : "FALSE");
            }
            return value instanceof StringEval text ? new Outcome(Kind.TEXT, 0, text.getStringValue()) : null;
        } catch (RuntimeException | StackOverflowError e) {
            // The evaluator says by many kinds of exception that it cannot take a formula.
            return null;
        }
    }

    /** A sheet; its cells are made as they are asked for. */
    private record Sheet(SheetCells cells, int index) implements EvaluationSheet {
        @Override
        public EvaluationCell getCell(int row, int column) {
            Kind kind = cells.kind(row, column);
            return kind == Kind.BLANK ? null : new Cell(this, row, column, kind);
        }

        @Override
        public void clearAllCachedResultValues() {}

        @Override
        public int getLastRowNum() {
            return cells.rows() - 1;
        }

        @Override
        public boolean isRowHidden(int row) {
            // Asked by SUBTOTAL alone, which leaves out hidden rows: they are not known.
            throw new UncertainException("hidden rows");
        }
    }

    private record Cell(Sheet getSheet, int getRowIndex, int getColumnIndex, Kind kind) implements EvaluationCell {
        private long place() {
            return UnstoredFormulas.place(getSheet.index, getRowIndex, getColumnIndex);
        }

        @Override
        public Object getIdentityKey() {
            return place();
        }

        @Override
        public CellType getCellType() {
            return switch (kind) {
                case BLANK -> CellType.BLANK;
                case NUMBER -> CellType.NUMERIC;
                case TEXT -> CellType.STRING;
                case LOGICAL -> CellType.BOOLEAN;
                case ERROR -> CellType.ERROR;
                case UNCOMPUTED -> CellType.FORMULA;
            };
        }

        @Override
        public double getNumericCellValue() {
            return getSheet.cells.number(getRowIndex, getColumnIndex);
        }

        @Override
        public String getStringCellValue() {
            return getSheet.cells.text(getRowIndex, getColumnIndex);
        }

        @Override
        public boolean getBooleanCellValue() {
            // A sum counts TRUE among the cells of an area as 1 here, and passes it over in spreadsheets.
            throw new UncertainException("TRUE or FALSE in a cell");
        }

        @Override
        public int getErrorCellValue() {
            return FormulaError.forString(getStringCellValue()).getCode();
        }

        @Override
        public CellRangeAddress getArrayFormulaRange() {
            return null;
        }

        @Override
        public boolean isPartOfArrayFormulaGroup() {
            return false;
        }

        @Override
        public CellType getCachedFormulaResultType() {
            return CellType.ERROR;
        }
    }

    /** A defined name. */
    private record Named(String getNameText, int index, Ptg[] getNameDefinition) implements EvaluationName {
        @Override
        public boolean isFunctionName() {
            return false;
        }

        @Override
        public boolean hasFormula() {
            return true;
        }

        @Override
        public boolean isRange() {
            return true;
        }

        @Override
        public NamePtg createPtg() {
            return new NamePtg(index);
        }
    }

    @Override
    public Ptg[] getFormulaTokens(EvaluationCell cell) {
        long place = ((Cell) cell).place();
        Ptg[] known = parsed.get(place);
        if (known == null) {
            String formula = formulas.get(place);
            if (formula == null) {
                throw new UncertainException("a formula over an area");
            }
            known = parse(formula, ((Cell) cell).getSheet().index(), cell.getRowIndex());
            parsed.put(place, known);
        }
        return known;
    }

    private Ptg[] parse(String formula, int sheet, int row) {
        Ptg[] tokens = FormulaParser.parse(formula, this, FormulaType.CELL, sheet, row);
        if (!CertainFunctions.only(tokens)) {
            throw new UncertainException(formula);
        }
        return tokens;
    }

    @Override
    public EvaluationName getName(String name, int sheet) {
        String from = sheet < 0 ? "" : getSheetName(sheet);
        String formula = scope.nameFormula(null, name, from);
        if (formula == null) {
            return null;
        }
        String key = formula.toLowerCase(Locale.ROOT);
        Named known = names.get(key);
        if (known == null) {
            FormulaTokens tokens = new FormulaTokens(formula);
            while (tokens.next()) {
                if (tokens.kind() == FormulaTokens.Kind.REFERENCE && !tokens.isAbsolute()) {
                    throw new UncertainException("a name that means another cell from every cell");
                }
            }
            known = new Named(name, namesByIndex.size(), parse(formula, sheet, 0));
            names.put(key, known);
            namesByIndex.add(known);
        }
        return known;
    }

    @Override
    public EvaluationName getName(NamePtg name) {
        return namesByIndex.get(name.getIndex());
    }

    @Override
    public Table getTable(String name) {
        TableParts.Table table = scope.tables().get(BookScope.folded(name));
        return table == null ? null : new EvaluatedTable(table);
    }

    @Override
    public Ptg get3DReferencePtg(CellReference cell, SheetIdentifier sheet) {
        return new Ref3DPxg(-1, known(sheet), cell);
    }

    @Override
    public Ptg get3DReferencePtg(AreaReference area, SheetIdentifier sheet) {
        return new Area3DPxg(-1, known(sheet), area);
    }

    private SheetIdentifier known(SheetIdentifier sheet) {
        if (sheet.getBookName() != null
                || sheet instanceof SheetRangeIdentifier
                || getSheetIndex(sheet.getSheetIdentifier().getName()) < 0) {
            throw new UncertainException(sheet.asFormulaString());
        }
        return sheet;
    }

    @Override
    public int getSheetIndex(String name) {
        for (int i = 0; i < sheets.size(); i++) {
            if (sheets.get(i).cells().sheet().equalsIgnoreCase(name)) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public int getSheetIndex(EvaluationSheet sheet) {
        return ((Sheet) sheet).index();
    }

    @Override
    public String getSheetName(int index) {
        return sheets.get(index).cells().sheet();
    }

    @Override
    public EvaluationSheet getSheet(int index) {
        return sheets.get(index);
    }

    @Override
    public SpreadsheetVersion getSpreadsheetVersion() {
        return SpreadsheetVersion.EXCEL2007;
    }

    @Override
    public UDFFinder getUDFFinder() {
        return AggregatingUDFFinder.DEFAULT;
    }

    @Override
    public ExternalSheet getExternalSheet(String first, String last, int workbook) {
        if (workbook > 0) {
            throw new UncertainException("another workbook");
        }
        return new ExternalSheet(null, first);
    }

    @Override
    public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
        if (sheet == null && CertainFunctions.isCertain(name)) {
            return new NameXPxg(null, name);
        }
        throw new UncertainException(name);
    }

    @Override
    public String resolveNameXText(NameXPtg name) {
        throw new UncertainException("a name of another workbook");
    }

    @Override
    public ExternalSheet getExternalSheet(int index) {
        throw new UncertainException("another workbook");
    }

    @Override
    public int convertFromExternSheetIndex(int index) {
        throw new UncertainException("another workbook");
    }

    @Override
    public ExternalName getExternalName(int sheet, int name) {
        throw new UncertainException("another workbook");
    }

    @Override
    public ExternalName getExternalName(String name, String sheet, int workbook) {
        throw new UncertainException("another workbook");
    }

    @Override
    public int getExternalSheetIndex(String sheet) {
        throw new UncertainException("another workbook");
    }

    @Override
    public int getExternalSheetIndex(String workbook, String sheet) {
        throw new UncertainException("another workbook");
    }

    @Override
    public Name createName() {
        throw new UncertainException("a name yet to be defined");
    }

    @Override
    public void clearAllCachedResultValues() {}
}
