package org.rickyard.lists;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.rickyard.lists.ListRows.State;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Reads one column of a list: the state of each of its cells, and a finding for each that cannot be used. */
final class ColumnReader {
    /** Days of the spreadsheet calendar from 1982 to 2119; other whole numbers are hardly days. */
    private static final int FIRST_DAY = 30_000;

    private static final int LAST_DAY = 80_000;

    /** Texts of a column of words whose meaning is kept in mind. */
    private static final int MOST_WORDS = 10_000;

    private final FoundRows rows;
    private final ListSpec list;
    private final ColumnSpec spec;
    private final FoundRows.Column column;
    private final ColumnSpec decider;
    private final CustomaryUnits customary;
    private final CellFindings findings;
    private final RangeCheck ranges;
    private final boolean dashesAreNames;
    private final Map<String, String> words;
    private final Map<String, String> wordOf = new HashMap<>();
    private final Map<String, RowUnits.At> written = new HashMap<>();
    private final TreeSet<String> assumed = new TreeSet<>();

    private FoundTable table;
    private Grid grid;
    private List<Binding> bindings;
    private RowUnits[] rowUnits;
    private final RowUnits[][] unitsByTable;
    private int tableIndex = -1;

    /**
     * For one column.
     *
     * @param dashesAreNames whether a dash in a column of names is a name, since something is called so
     */
    ColumnReader(
            FoundRows rows, ColumnSpec spec, CustomaryUnits customary, boolean dashesAreNames, List<Finding> findings) {
        this.dashesAreNames = dashesAreNames;
        this.rows = rows;
        this.list = rows.spec();
        this.spec = spec;
        this.column = new FoundRows.Column(spec, rows);
        this.decider = RowUnits.decidedBy(list, spec);
        this.customary = customary;
        this.findings = new CellFindings(list, spec, findings);
        this.ranges = new RangeCheck(spec, this.findings);
        this.unitsByTable = new RowUnits[rows.bound.length][];
        this.words = spec.choices().isEmpty() ? Map.of() : Vocabulary.wordsOf(spec);
        for (Binder.Bound bound : rows.bound) {
            List<Binding> found = bound.bindings().get(spec);
            if (found != null && found.size() > 1) {
                column.pick = new byte[rows.size()];
            }
        }
        if (decider != null || spec.type() == ColumnSpec.Type.DOSE) {
            column.unit = new short[rows.size()];
        }
        if (!words.isEmpty()) {
            column.word = new byte[rows.size()];
        }
    }

    /** Reads all rows and puts the column into them; does nothing if no place of the list has it. */
    void read() {
        boolean anywhere = false;
        for (Binder.Bound bound : rows.bound) {
            anywhere |= bound.bindings().containsKey(spec) || bound.words().containsKey(spec);
        }
        if (!anywhere) {
            return;
        }
        rows.put(column);
        for (int row = 0; row < rows.size(); row++) {
            if (rows.tableOf[row] != tableIndex) {
                enter(rows.tableOf[row]);
            }
            column.state[row] = (byte) state(row).ordinal();
        }
        findings.finish();
        for (String what : assumed) {
            findings.note(what);
        }
    }

    private void enter(int index) {
        tableIndex = index;
        table = rows.tables[index];
        grid = table.grid;
        bindings = rows.bound[index].bindings().get(spec);
        if (bindings != null && column.unit != null) {
            // Products beside each other take turns, each with a header and units of its own.
            if (unitsByTable[index] == null) {
                unitsByTable[index] = bindings.stream()
                        .map(binding -> new RowUnits(list, spec, binding, customary))
                        .toArray(RowUnits[]::new);
            }
            rowUnits = unitsByTable[index];
        }
    }

    private State state(int row) {
        if (bindings == null) {
            String word = rows.bound[tableIndex].words().get(spec);
            if (word == null) {
                return State.NO_COLUMN;
            }
            if (spec.type() == ColumnSpec.Type.TEXT && words.isEmpty()) {
                CellAddress cell = rows.bound[tableIndex].wordsAt().get(spec);
                boolean whole = word.equals(FoundRows.cellText(grid, cell.row(), cell.column()));
                return whole ? State.GIVEN : State.READ_FROM_TEXT;
            }
            column.word[row] = column.wordIndex(word);
            return State.READ_FROM_TEXT;
        }
        int sheetRow = rows.sheetRow[row];
        Binding binding = bindings.get(0);
        if (bindings.size() > 1) {
            binding = filled(row, sheetRow);
            Binding contradicting = contradicting(sheetRow, binding);
            if (contradicting != null) {
                findings.bad(
                        address(sheetRow, binding),
                        "Two columns of this row say its " + spec.name() + ", and not the same: "
                                + OtherUnitBeside.said(grid, sheetRow, binding) + " here, "
                                + OtherUnitBeside.said(grid, sheetRow, contradicting) + " in "
                                + address(sheetRow, contradicting) + ". Mend one of them or leave it blank.");
                return State.ASKED;
            }
        }
        RowUnits.At at = column.unit == null ? null : unitOf(row, binding);
        int sheetColumn = binding.sheetColumn();
        Grid.Kind kind = grid.kind(sheetRow, sheetColumn);
        if (kind == Grid.Kind.BLANK || kind == Grid.Kind.TEXT && isBlankText(grid.text(sheetRow, sheetColumn))) {
            return State.BLANK;
        }
        if (binding.asked()) {
            return State.ASKED;
        }
        if (kind == Grid.Kind.ERROR) {
            findings.bad(
                    address(sheetRow, binding),
                    "The cell shows the error " + grid.text(sheetRow, sheetColumn) + " in place of " + expected()
                            + ".");
            return State.ERROR;
        }
        if (kind == Grid.Kind.UNCOMPUTED) {
            findings.bad(
                    address(sheetRow, binding),
                    "The formula of this cell has no stored value. Open the workbook in"
                            + " a spreadsheet program, let it recalculate, and save it.");
            return State.UNCOMPUTED;
        }
        return switch (spec.type()) {
            case TEXT, CHOICE -> word(row, sheetRow, binding);
            case DATE -> day(row, sheetRow, binding, kind);
            case BATTER -> batter(row, sheetRow, binding, kind);
            case NOZZLE -> nozzle(row, sheetRow, binding, kind);
            case TEXT_OR_NUMBER ->
                kind == Grid.Kind.NUMBER ? number(sheetRow, binding, at) : nameOrAmount(sheetRow, binding);
            case NUMBER ->
                kind == Grid.Kind.NUMBER ? number(sheetRow, binding, at) : numberFromText(row, sheetRow, binding);
            case DOSE ->
                kind == Grid.Kind.NUMBER ? number(sheetRow, binding, at) : doseFromText(row, sheetRow, binding);
        };
    }

    /** Of several columns the first that says something in a row. */
    private Binding filled(int row, int sheetRow) {
        for (int i = bindings.size() - 1; i >= 0; i--) {
            if (!isBlank(sheetRow, bindings.get(i).sheetColumn())) {
                column.pick[row] = (byte) i;
            }
        }
        return bindings.get(column.pick[row]);
    }

    /** Another column that says something else in a row, or null. */
    private Binding contradicting(int sheetRow, Binding binding) {
        for (Binding other : bindings) {
            if (other != binding
                    && !isBlank(sheetRow, other.sheetColumn())
                    && !OtherUnitBeside.agree(grid, sheetRow, binding, other)) {
                return other;
            }
        }
        return null;
    }

    private boolean isBlank(int sheetRow, int sheetColumn) {
        Grid.Kind kind = grid.kind(sheetRow, sheetColumn);
        return kind == Grid.Kind.BLANK || kind == Grid.Kind.TEXT && isBlankText(grid.text(sheetRow, sheetColumn));
    }

    /**
     * Nothing but spaces; a dash or "n/a" too, as people mark what they do not know or what there is none of. The names of
     * a list's rows stay as they are.
     */
    private boolean isBlankText(String text) {
        String trimmed = Words.trim(text);
        boolean name = spec.type() == ColumnSpec.Type.TEXT
                && (dashesAreNames || spec.required() || list.identity().contains(spec));
        return trimmed.isEmpty() || !name && Words.marksBlank(trimmed);
    }

    private State word(int row, int sheetRow, Binding binding) {
        if (words.isEmpty()) {
            return State.GIVEN;
        }
        String text = FoundRows.cellText(grid, sheetRow, binding.sheetColumn());
        String canonical = wordOf.get(text);
        if (canonical == null) {
            canonical = canonical(text, address(sheetRow, binding));
            if (wordOf.size() < MOST_WORDS) {
                wordOf.put(text, canonical);
            }
        }
        if (!canonical.isEmpty()) {
            String header = rows.bound[tableIndex].words().get(spec);
            if (header != null && !header.equals(canonical)) {
                findings.bad(
                        address(sheetRow, binding),
                        Words.quoted(text) + " is typed here, where the header says " + header + ": which of the two is"
                                + " meant? Take the word out of the header, or mend this cell.");
                return State.ASKED;
            }
            column.word[row] = column.wordIndex(canonical);
            return State.GIVEN;
        }
        if (spec.type() == ColumnSpec.Type.TEXT) {
            return State.GIVEN;
        }
        String question = spec.unclear().get(Words.normal(text));
        if (question != null) {
            findings.bad(address(sheetRow, binding), Words.quoted(text) + " can mean two things: " + question + ".");
            return State.ASKED;
        }
        findings.bad(
                address(sheetRow, binding),
                Words.quoted(text) + " is not a word known here for " + spec.name() + ": write "
                        + String.join(", ", spec.choices().keySet()) + ".");
        return State.NOT_READABLE;
    }

    /** The word that a text stands for, or the empty one; what is read by its last words is told. */
    private String canonical(String text, CellAddress cell) {
        String normal = Words.normal(text);
        String known = words.getOrDefault(normal, "");
        if (!known.isEmpty() || !spec.byLastWords()) {
            return known;
        }
        String last = LastWords.of(normal, words);
        if (!last.isEmpty()) {
            findings.readAs(
                    cell,
                    Words.quoted(text) + " is read as " + last
                            + ", by its last words. If it is something else, write what it is: "
                            + String.join(", ", spec.choices().keySet()) + ".");
        }
        return last;
    }

    private State day(int row, int sheetRow, Binding binding, Grid.Kind kind) {
        int sheetColumn = binding.sheetColumn();
        if (kind == Grid.Kind.NUMBER) {
            double value = grid.number(sheetRow, sheetColumn);
            boolean isDay = grid.format(sheetRow, sheetColumn) == Grid.Format.DATE
                    ? value >= 1 && value < 2_958_466
                    : value >= FIRST_DAY && value <= LAST_DAY;
            if (isDay) {
                return State.GIVEN;
            }
            findings.bad(address(sheetRow, binding), Words.digits(value) + " is not a day; write a date.");
            return State.NOT_READABLE;
        }
        String text = Words.trim(grid.text(sheetRow, sheetColumn));
        if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
            try {
                column.read.put(row, (double)
                        (LocalDate.parse(text).toEpochDay() - grid.dayZero().toEpochDay()));
                return State.READ_FROM_TEXT;
            } catch (DateTimeException notADay) {
                // Said below with all other texts that are no days.
            }
        }
        findings.bad(
                address(sheetRow, binding),
                Words.quoted(text) + " is text, not a day. Write it as a date of the"
                        + " spreadsheet program, or as text in the form 2026-05-14.");
        return State.NOT_READABLE;
    }

    private State batter(int row, int sheetRow, Binding binding, Grid.Kind kind) {
        String rest = Words.normal(binding.rest());
        boolean degrees = rest.startsWith("deg") || binding.rest().strip().equals("°");
        int sheetColumn = binding.sheetColumn();
        OptionalDouble value;
        if (kind == Grid.Kind.NUMBER) {
            if (!degrees) {
                return number(sheetRow, binding, null);
            }
            value = BatterText.ofDegrees(grid.number(sheetRow, sheetColumn));
        } else {
            value = BatterText.read(Words.trim(grid.text(sheetRow, sheetColumn)));
        }
        String text = FoundRows.cellText(grid, sheetRow, sheetColumn);
        if (value.isEmpty()) {
            boolean ratio = BatterText.isBareRatio(text);
            String out = spec == Clamps.RAMP_RUN ? "metres along" : "metres out";
            findings.bad(
                    address(sheetRow, binding),
                    ratio
                            ? "Which way does " + Words.quoted(text)
                                    + " run? Write " + out + " for each metre up, or 1 in 3 for 3 m"
                                    + out.substring("metres".length()) + " and 1 m up."
                            : Words.quoted(text) + " is not a " + spec.name().toLowerCase(Locale.ROOT) + ": write "
                                    + out + " for each metre up, 1 in 3, or 45°.");
            return ratio ? State.ASKED : State.NOT_READABLE;
        }
        return readFromText(row, sheetRow, binding, value.getAsDouble(), Units.ONE);
    }

    private State nozzle(int row, int sheetRow, Binding binding, Grid.Kind kind) {
        int sheetColumn = binding.sheetColumn();
        String text = FoundRows.cellText(grid, sheetRow, sheetColumn);
        if (kind == Grid.Kind.NUMBER) {
            double value = grid.number(sheetRow, sheetColumn);
            if (NozzleText.hasLostZero(value)) {
                findings.bad(
                        address(sheetRow, binding),
                        "Is " + text + " the nozzle size " + text + " or 0" + text + "? Write it as text, '0" + text
                                + " or '" + text + ".");
                return State.ASKED;
            }
            if (value < 100) {
                return inRange(sheetRow, binding, value, Units.ONE) ? State.GIVEN : State.IMPOSSIBLE;
            }
        }
        if (NozzleText.isColourOnly(text)) {
            findings.bad(
                    address(sheetRow, binding),
                    "A colour alone does not settle the nozzle size, since makers differ:"
                            + " write the size on the nozzle, such as 04.");
            return State.ASKED;
        }
        OptionalDouble value = NozzleText.read(text);
        if (value.isEmpty()) {
            // A number is a number to the grid, too, and no size: it is told from a text that nobody can read.
            findings.bad(
                    address(sheetRow, binding),
                    Words.quoted(text) + " is not a nozzle size known here: write 04," + " 11004 or F110/1.6/3.0.");
            return kind == Grid.Kind.NUMBER ? State.IMPOSSIBLE : State.NOT_READABLE;
        }
        return readFromText(row, sheetRow, binding, value.getAsDouble(), Units.ONE);
    }

    private State number(int sheetRow, Binding binding, RowUnits.At at) {
        Unit unit = at == null ? binding.unit().unit() : at.unit();
        if (at != null && at.question() != null) {
            findings.bad(address(sheetRow, binding), at.question());
            return State.ASKED;
        }
        if (at != null && at.assumed() != null) {
            assumed.add(at.assumed());
        } else if (spec.type() == ColumnSpec.Type.TEXT_OR_NUMBER
                && binding.unit().assumed()) {
            assumed.add("numbers without a unit are in " + unit);
        }
        double value = grid.number(sheetRow, binding.sheetColumn());
        Grid.Format format = grid.format(sheetRow, binding.sheetColumn());
        if (format == Grid.Format.PERCENT) {
            if (FoundRows.isPercent(unit)) {
                value *= 100;
            } else if (unit != null && spec.type() != ColumnSpec.Type.TEXT_OR_NUMBER) {
                findings.bad(
                        address(sheetRow, binding),
                        "The cell is shown as per cent, but " + spec.name() + " is in " + unit + "; expected "
                                + expected() + ".");
                return State.NOT_READABLE;
            }
        } else if (format == Grid.Format.DATE && unit != Units.ONE) {
            findings.bad(
                    address(sheetRow, binding),
                    "The cell is shown as a day, where " + expected()
                            + " is expected. Set its number format, and check the value.");
            return State.NOT_READABLE;
        }
        return unit == null || inRange(sheetRow, binding, value, unit) ? State.GIVEN : State.IMPOSSIBLE;
    }

    private RowUnits.At unitOf(int row, Binding binding) {
        String beside = decider == null ? "" : rows.text(decider, row);
        boolean itself = beside.isEmpty() && spec == Assumptions.VALUE;
        String word = itself ? ItemText.unit(rows.text(Assumptions.ITEM, row)) : beside;
        RowUnits.At at = rowUnits[column.pick == null ? 0 : column.pick[row]].at(word);
        column.unit[row] = column.unitIndex(at);
        return at;
    }

    private State numberFromText(int row, int sheetRow, Binding binding) {
        String text = Words.trim(grid.text(sheetRow, binding.sheetColumn()));
        Unit unit = binding.unit().unit();
        if (unit != null && unit.isSameScale(Units.FT)) {
            OptionalDouble feet = FeetText.read(text);
            if (feet.isPresent()) {
                return readFromText(row, sheetRow, binding, feet.getAsDouble(), unit);
            }
        }
        OptionalDouble cut = spec.symbol() == Quantities.CUT_NUMBER ? CutText.read(text) : OptionalDouble.empty();
        if (cut.isPresent()) {
            return readFromText(row, sheetRow, binding, cut.getAsDouble(), Units.ONE);
        }
        return notANumber(sheetRow, binding, text);
    }

    /** A name such as "Yard tank"; a volume written as text is no name, or the tank would be called "10 m3". */
    private State nameOrAmount(int sheetRow, Binding binding) {
        String text = Words.trim(grid.text(sheetRow, binding.sheetColumn()));
        boolean amount =
                !AmountText.of(text).howToWrite(spec.symbol().unit(), customary).isEmpty()
                        || !Double.isNaN(BatterText.number(text.replace(",", "")));
        return amount ? notANumber(sheetRow, binding, text) : State.GIVEN;
    }

    private State notANumber(int sheetRow, Binding binding, String text) {
        boolean digits = !Double.isNaN(BatterText.number(text.replace(",", "")));
        findings.bad(
                address(sheetRow, binding),
                Words.quoted(text)
                        + (digits ? " is stored as text, not as a number" : " is not a number") + "; expected "
                        + expected() + "."
                        + (digits
                                ? " Type it again as a number."
                                : AmountText.of(text).howToWrite(binding.unit().unit(), customary)));
        return State.NOT_READABLE;
    }

    /** "2.5 L/ha" in one cell: the amount and its unit. */
    private State doseFromText(int row, int sheetRow, Binding binding) {
        String text = Words.trim(grid.text(sheetRow, binding.sheetColumn()));
        AmountText amount = AmountText.of(text);
        if (!amount.isWithUnit()) {
            return notANumber(sheetRow, binding, text);
        }
        DoseText unit = DoseText.read(amount.unit(), customary);
        if (unit instanceof DoseText.Known known && (known.isPerArea() || known.isPerSpray())) {
            RowUnits.At at = written.computeIfAbsent(
                    amount.unit(), key -> new RowUnits.At(known.unit(), known.productUnit(), null, null));
            column.unit[row] = column.unitIndex(at);
            return readFromText(row, sheetRow, binding, amount.value(), known.unit());
        }
        String question = unit instanceof DoseText.Ambiguous ambiguous
                ? ambiguous.question()
                : Words.quoted(text) + " is not a dose; write a number, with its unit in the header or in Dose unit.";
        findings.bad(address(sheetRow, binding), question);
        return unit instanceof DoseText.Ambiguous ? State.ASKED : State.NOT_READABLE;
    }

    private State readFromText(int row, int sheetRow, Binding binding, double value, Unit unit) {
        column.read.put(row, value);
        return inRange(sheetRow, binding, value, unit) ? State.READ_FROM_TEXT : State.IMPOSSIBLE;
    }

    private boolean inRange(int sheetRow, Binding binding, double value, Unit unit) {
        return ranges.isPossible(value, unit, table, sheetRow, binding.sheetColumn());
    }

    private CellAddress address(int sheetRow, Binding binding) {
        return table.address(sheetRow, binding.sheetColumn());
    }

    private String expected() {
        return CellFindings.expected(spec);
    }
}
