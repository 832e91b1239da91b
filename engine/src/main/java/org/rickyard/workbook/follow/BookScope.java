package org.rickyard.workbook.follow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.notation.FormulaTokens;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.TableParts;

/**
 * What the words of formulas mean in one workbook: its sheets in order, its defined names and its tables. References
 * that are worked out only when the sheet is calculated ({@code INDIRECT}, the reach of {@code OFFSET}) and other
 * workbooks stay unknown.
 */
public final class BookScope {
    /** Nobody writes names that lead so deep; what is nested deeper takes more room than a thread has. */
    static final int DEEPEST = 500;

    private final List<String> sheets = new ArrayList<>();
    private final Map<String, Integer> positions = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<String, TableParts.Table> tables = new HashMap<>();

    /** Takes the areas that a formula refers to. */
    interface AreaSink {
        void area(CellArea area);
    }

    /**
     * The scope of a workbook.
     *
     * @param sheets all its sheets, in order
     * @param definedNames formulas by name; a name that belongs to one sheet as {@code Sheet!Name}, sheet unquoted
     * @param tables its tables
     */
    public BookScope(List<SheetRef> sheets, Map<String, String> definedNames, Collection<TableParts.Table> tables) {
        for (SheetRef sheet : sheets) {
            positions.putIfAbsent(folded(sheet.name()), this.sheets.size());
            this.sheets.add(sheet.name());
        }
        definedNames.forEach((name, formula) -> names.put(folded(name), formula));
        tables.forEach(table -> this.tables.put(folded(table.range().name()), table));
    }

    /** Names and sheets are compared without regard to case. */
    static String folded(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The position of a sheet among all; -1 if there is none of that name. */
    int position(String sheet) {
        return positions.getOrDefault(folded(sheet), -1);
    }

    String sheet(int position) {
        return sheets.get(position);
    }

    /** The folded names that are defined, those of one sheet with it. */
    Map<String, String> definedNames() {
        return names;
    }

    Map<String, TableParts.Table> tables() {
        return tables;
    }

    /** The areas that the formula of a cell refers to directly, names and tables resolved, in order. */
    public List<CellArea> areas(String formula, CellAddress at) {
        List<CellArea> areas = new ArrayList<>();
        visit(formula, at, areas::add);
        return areas;
    }

    void visit(String formula, CellAddress at, AreaSink sink) {
        visit(formula, at, sink, new NamesMet(), 0);
    }

    private void visit(String formula, CellAddress at, AreaSink sink, NamesMet met, int depth) {
        FormulaTokens tokens = new FormulaTokens(formula);
        while (tokens.next()) {
            switch (tokens.kind()) {
                case REFERENCE -> {
                    // The relative references of a name are told as seen from A1.
                    int rows = depth > 0 ? at.row() : 0;
                    int columns = depth > 0 ? at.column() : 0;
                    int[] span = span(tokens.sheet(), at.sheet());
                    for (int position = span[0]; position <= span[1]; position++) {
                        sink.area(tokens.area(sheets.get(position), rows, columns));
                    }
                }
                case NAME -> {
                    if (isOtherWorkbook(tokens.sheet())) {
                        break;
                    }
                    String meaning = nameFormula(tokens.sheet(), tokens.name(), at.sheet());
                    if (meaning != null && depth < DEEPEST && met.add(meaning)) {
                        visit(meaning, at, sink, met, depth + 1);
                    } else if (meaning == null) {
                        visitTable(tokens.name(), "[]", at, sink);
                    }
                }
                case STRUCTURED -> {
                    if (isOtherWorkbook(tokens.sheet())) {
                        break;
                    }
                    String whole = formula.substring(tokens.start(), tokens.end());
                    visitTable(tokens.name(), whole.substring(whole.indexOf('[')), at, sink);
                }
                default -> {}
            }
        }
    }

    private void visitTable(String name, String brackets, CellAddress at, AreaSink sink) {
        TableParts.Table table = name.isEmpty() ? tableAround(at) : tables.get(folded(name));
        if (table != null) {
            StructuredReference.area(table, brackets, at).ifPresent(sink::area);
        }
    }

    private TableParts.Table tableAround(CellAddress at) {
        for (TableParts.Table table : tables.values()) {
            boolean inside = table.sheet().equalsIgnoreCase(at.sheet())
                    && at.row() >= table.range().firstRow()
                    && at.row() <= table.range().lastRow()
                    && at.column() >= table.range().firstColumn()
                    && at.column() <= table.range().lastColumn();
            if (inside) {
                return table;
            }
        }
        return null;
    }

    /** Whether a sheet prefix leads out of this workbook; {@code [0]} is the workbook itself. */
    static boolean isOtherWorkbook(String prefix) {
        return prefix != null && prefix.startsWith("[") && !prefix.startsWith("[0]");
    }

    /** What a name stands for as seen from a sheet; null if it is not defined. */
    String nameFormula(String prefix, String name, String fromSheet) {
        String local = names.get(ofOneSheet(prefix, name, fromSheet));
        return local != null ? local : names.get(folded(name));
    }

    /** Whether a name as seen from a sheet is one of that sheet alone, which goes before one of the workbook. */
    boolean isOfOneSheet(String prefix, String name, String fromSheet) {
        return names.containsKey(ofOneSheet(prefix, name, fromSheet));
    }

    private static String ofOneSheet(String prefix, String name, String fromSheet) {
        String sheet = prefix == null || prefix.startsWith("[") ? fromSheet : prefix;
        return folded(sheet) + "!" + folded(name);
    }

    /**
     * The first and last position that a sheet prefix means; an empty span for another workbook or an unknown sheet.
     *
     * @param prefix as {@link FormulaTokens#sheet}, null for the formula's own sheet
     */
    int[] span(String prefix, String ownSheet) {
        String plain = prefix == null ? ownSheet : prefix.startsWith("[0]") ? prefix.substring(3) : prefix;
        int colon = plain.indexOf(':');
        int first = position(colon < 0 ? plain : plain.substring(0, colon));
        int last = colon < 0 ? first : position(plain.substring(colon + 1));
        return first < 0 || last < 0 ? new int[] {0, -1} : new int[] {Math.min(first, last), Math.max(first, last)};
    }
}
