package org.rickyard.workbook.meaning;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.notation.FormulaText;
import org.rickyard.workbook.read.CellSink;

/**
 * A fingerprint of what a sheet means: the formula or the constant at each address. It stays the same when an office
 * program opens and saves the sheet, and changes when somebody edits a cell. Stored values of formulas, styles, blank
 * cells and empty texts do not count; numbers count to 15 significant digits, as many as programs keep.
 *
 * <p>A second fingerprint leaves out where references to other sheets lead, since programs write those anew when rows are
 * inserted or a sheet is renamed. Of them it keeps only whether the single cells that one row leads to stand in one row
 * themselves, which no such change alters.
 *
 * <p>A third leaves out even that, for sheets with references that lead nowhere any more: where a row of a list was
 * deleted, nobody can tell in which row they stood.
 *
 * <p>From a certain row on, rows may have been sorted: they count by what is in them, not by where they stand, and
 * a reference to the row that it is in counts as such, for office programs write it anew when they sort.
 *
 * <p>Each cell is hashed by itself to 128 bits and the hashes are added up, within rows that may be sorted first. Rows are
 * given one after another. The sums guard against accidents, not against somebody who forges a sheet on purpose.
 */
public final class MeaningFingerprint implements CellSink {
    private static final long TEXT = 1;
    private static final long NUMBER = 2;
    private static final long LOGICAL = 3;
    private static final long ERROR = 4;
    private static final long FORMULA = 5;
    private static final int LONGEST_CONSTANT = 14;
    private static final String[] LOGICALS = {"TRUE", "FALSE"};

    private final MeaningHash hash = new MeaningHash();
    private final MeaningHash unplaced = new MeaningHash();
    private final NormalText normal = new NormalText();
    /** The digits of a row number, kept from cell to cell of a row. */
    private final MeaningHash.Run digits = new MeaningHash.Run();

    private int digitsOf = -1;
    /** The sheets that any row led to, few for most; of each, which row of ours led there last, and where to first. */
    private String[] sheets = new String[4];

    private int[] ledFrom = new int[4];
    private int[] ledTo = new int[4];
    private int sheetCount;
    /** By column, the formula met last, and the one that it was known by. */
    private String[] lastFormulas = new String[16];

    private ColumnFormula[] columnFormulas = new ColumnFormula[16];
    private final int firstSortable;
    private final Sum whole = new Sum();
    private final Sum unplacedWhole = new Sum();
    private final Sum rowlessWhole = new Sum();
    /** The row that may be sorted whose cells are being added up. */
    private int openRow = -1;

    private boolean lost;
    private long cells;

    /** The fingerprint of a sheet whose rows stay where they are. */
    public MeaningFingerprint() {
        this(Integer.MAX_VALUE);
    }

    /**
     * The fingerprint of a sheet with rows that may be sorted.
     *
     * @param firstSortable the first of them, counted from 0
     */
    public MeaningFingerprint(int firstSortable) {
        this.firstSortable = firstSortable;
    }

    /** The hashes of cells, added up; those of a row that may be sorted by themselves first. */
    private static final class Sum {
        private long first;
        private long second;
        private long rowFirst;
        private long rowSecond;

        void add(MeaningHash cell, boolean sortable) {
            if (sortable) {
                rowFirst += cell.first();
                rowSecond += cell.second();
            } else {
                first += cell.first();
                second += cell.second();
            }
        }

        void endRow() {
            first += MeaningHash.scramble(rowFirst);
            second += MeaningHash.scramble(rowSecond);
            rowFirst = 0;
            rowSecond = 0;
        }
    }

    /** Begins the hash of a cell with its place, or where rows may be sorted with its column. */
    private void start(MeaningHash cell, int row, int column) {
        cell.start(isSortable(row) ? column : (long) row * CellAddress.COLUMNS + column);
    }

    private boolean isSortable(int row) {
        return row >= firstSortable;
    }

    private void enter(int row) {
        if (row != openRow && isSortable(row)) {
            endRow();
            openRow = row;
        }
    }

    private void endRow() {
        if (openRow >= 0) {
            whole.endRow();
            unplacedWhole.endRow();
            rowlessWhole.endRow();
            openRow = -1;
        }
    }

    @Override
    public void cell(int row, int column, Kind kind, double number, String text, Format format, String formula) {
        if (formula != null && formula.length() > LONGEST_CONSTANT && columnFormula(row, column, formula)) {
            return;
        }
        start(hash, row, column);
        int own = isSortable(row) ? row + 1 : NormalFormula.NO_ROW;
        if (formula != null) {
            if (!constantFormula(formula)) {
                hash.mix(FORMULA);
                NormalFormula.write(formula, own, normal.clear());
                hash.mix(normal);
            }
        } else {
            switch (kind) {
                case TEXT -> {
                    if (text.isEmpty()) {
                        return;
                    }
                    hash.mix(TEXT);
                    text(text);
                }
                case NUMBER -> {
                    hash.mix(NUMBER);
                    hash.mix(NormalNumber.bits(number));
                }
                case LOGICAL -> constant(LOGICAL, text);
                case ERROR -> constant(ERROR, text);
                default -> {
                    return;
                }
            }
        }
        UnplacedFormula without = formula == null ? null : UnplacedFormula.of(formula);
        enter(row);
        if (without == null) {
            add(row, hash);
        } else {
            start(unplaced, row, column);
            unplaced.mix(FORMULA);
            NormalFormula.write(without.formula(), own, normal.clear());
            unplaced.mix(normal);
            addLeading(row, without.leads(), 0);
        }
    }

    /** Takes a formula that is the same in the row before but for a row number; false if it is to be taken apart. */
    private boolean columnFormula(int row, int column, String formula) {
        if (column >= lastFormulas.length) {
            int room = Math.max(column + 1, 2 * lastFormulas.length);
            lastFormulas = Arrays.copyOf(lastFormulas, room);
            columnFormulas = Arrays.copyOf(columnFormulas, room);
        }
        ColumnFormula known = columnFormulas[column];
        int number = known == null ? ColumnFormula.OTHER : known.numberIn(formula);
        if (number < 0 && lastFormulas[column] != null) {
            ColumnFormula learnt = ColumnFormula.of(lastFormulas[column], formula);
            if (learnt != null) {
                known = learnt;
                number = learnt.numberIn(formula);
                columnFormulas[column] = learnt;
            }
        }
        lastFormulas[column] = formula;
        if (number < 0 || !takes(known.shape(isSortable(row)), row, number)) {
            return false;
        }
        cell(row, column, known.shape(isSortable(row)), number);
        return true;
    }

    /** Adds a cell that leads nowhere but to its own sheet. */
    private void add(int row, MeaningHash cell) {
        boolean sortable = isSortable(row);
        whole.add(cell, sortable);
        unplacedWhole.add(cell, sortable);
        rowlessWhole.add(cell, sortable);
        cells++;
    }

    /** Adds a cell that leads to other sheets, with and without the places there. */
    private void addLeading(int row, List<UnplacedFormula.Lead> leads, int later) {
        boolean sortable = isSortable(row);
        whole.add(hash, sortable);
        rowlessWhole.add(unplaced, sortable);
        leads(row, leads, later);
        unplacedWhole.add(unplaced, sortable);
        cells++;
    }

    /** Says of each single cell whether it stands in the row of its sheet to which this row of ours led first. */
    private void leads(int row, List<UnplacedFormula.Lead> leads, int later) {
        for (int i = 0; i < leads.size(); i++) {
            UnplacedFormula.Lead lead = leads.get(i);
            int leadRow = lead.row() == UnplacedFormula.Lead.LATER ? later : lead.row();
            lost |= leadRow == UnplacedFormula.Lead.NO_ROW;
            int sheet = sheet(lead.sheet());
            if (ledFrom[sheet] != row) {
                ledFrom[sheet] = row;
                ledTo[sheet] = leadRow;
            }
            unplaced.mix(ledTo[sheet] == leadRow ? 1 : 2);
        }
    }

    private int sheet(String name) {
        for (int i = 0; i < sheetCount; i++) {
            if (sheets[i] == name) {
                return i;
            }
        }
        for (int i = 0; i < sheetCount; i++) {
            if (sheets[i].equals(name)) {
                return i;
            }
        }
        if (sheetCount == sheets.length) {
            sheets = Arrays.copyOf(sheets, 2 * sheetCount);
            ledFrom = Arrays.copyOf(ledFrom, 2 * sheetCount);
            ledTo = Arrays.copyOf(ledTo, 2 * sheetCount);
        }
        sheets[sheetCount] = name;
        ledFrom[sheetCount] = -1;
        return sheetCount++;
    }

    /**
     * A cell whose formula is known by its shape.
     *
     * @param number the row number that goes into the shape
     */
    public void cell(int row, int column, FormulaShape shape, int number) {
        start(hash, row, column);
        hash.mix(FORMULA);
        if (number != digitsOf) {
            digits.set(number);
            digitsOf = number;
        }
        shape.mix(digits, hash);
        enter(row);
        if (shape.leadsElsewhere()) {
            start(unplaced, row, column);
            unplaced.mix(FORMULA);
            shape.mixUnplaced(digits, unplaced);
            addLeading(row, shape.leads(), number);
        } else {
            add(row, hash);
        }
    }

    /** Whether a cell's formula may be told by a shape: if not, by its text. */
    public boolean takes(FormulaShape shape, int row, int number) {
        return shape.fits(row, number, isSortable(row));
    }

    /** The shape of a formula in a row, and in all others that may be sorted as it may. */
    public FormulaShape shape(List<String> pieces, int row) {
        return FormulaShape.of(pieces, isSortable(row));
    }

    /** LibreOffice stores a typed TRUE as the formula TRUE() and a typed error as a formula of that error. */
    private boolean constantFormula(String formula) {
        if (formula.length() > LONGEST_CONSTANT) {
            return false;
        }
        String plain = formula.strip();
        String logical = logical(plain);
        if (logical != null) {
            constant(LOGICAL, logical);
            return true;
        }
        if (isError(plain)) {
            constant(ERROR, plain);
            return true;
        }
        return false;
    }

    /** Whether a formula is no more than a logical value or an error, which counts as if it were typed. */
    public static boolean isConstant(String formula) {
        String plain = formula.strip();
        return formula.length() <= LONGEST_CONSTANT && (logical(plain) != null || isError(plain));
    }

    private static String logical(String plain) {
        for (String logical : LOGICALS) {
            if (plain.equalsIgnoreCase(logical) || plain.equalsIgnoreCase(logical + "()")) {
                return logical;
            }
        }
        return null;
    }

    private static boolean isError(String plain) {
        return plain.startsWith("#") && FormulaText.endOfError(plain, 0) == plain.length();
    }

    private void constant(long tag, String text) {
        hash.mix(tag);
        for (int i = 0; i < text.length(); i++) {
            hash.mix(Character.toUpperCase(text.charAt(i)));
        }
    }

    /** Line ends differ from program to program. */
    private void text(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n') {
                continue;
            }
            hash.mix(c);
        }
    }

    /** The fingerprint of the cells given so far: 64 hexadecimal digits. */
    public String hex() {
        return hex(whole);
    }

    /** The same without where references to other sheets lead. */
    public String unplacedHex() {
        return hex(unplacedWhole);
    }

    /** The same without whether the cells that a row leads to stand in one row. */
    public String rowlessHex() {
        return hex(rowlessWhole);
    }

    /** Whether a reference leads nowhere any more. */
    public boolean lostReferences() {
        return lost;
    }

    private String hex(Sum sum) {
        endRow();
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(ByteBuffer.allocate(3 * Long.BYTES)
                    .putLong(sum.first)
                    .putLong(sum.second)
                    .putLong(cells)
                    .array());
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
