package org.rickyard.lists;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Settles, for one table and one list, which column of the sheet is which column of the list and in which unit. */
final class Binder {
    /**
     * What is known of a list's columns in one table.
     *
     * @param words what counts in every row, said once: in a header ("Power (PTO kW)") or above the list ("Farm: ...")
     * @param wordsAt where it is said
     */
    record Bound(
            Map<ColumnSpec, List<Binding>> bindings,
            Map<ColumnSpec, String> words,
            Map<ColumnSpec, CellAddress> wordsAt) {}

    private static final String NO_UNIT = "No unit is written in the headers of ";

    /** Who writes one of these beside a bare "Width" or "Tank" may well mean feet or gallons there too. */
    private static final List<Unit> CUSTOMARY =
            List.of(Units.FT, Units.IN, Units.MPH, Units.GAL_UK, Units.GAL_US, Units.LB, Units.PSI);

    private final FoundTable table;
    private final HeaderRow.Match match;
    private final ListSpec spec;
    private final CustomaryUnits customary;
    private final List<Finding> findings;
    private final Map<ColumnSpec, List<Binding>> bindings = new IdentityHashMap<>();
    private final Map<ColumnSpec, String> words = new IdentityHashMap<>();
    private final Map<ColumnSpec, CellAddress> wordsAt = new IdentityHashMap<>();
    private final List<String> assumed = new ArrayList<>();

    /** Of these, what is measured in feet, gallons or pounds as well. */
    private final List<String> assumedMeasures = new ArrayList<>();

    Binder(FoundTable table, HeaderRow.Match match, CustomaryUnits customary, List<Finding> findings) {
        this.table = table;
        this.match = match;
        this.spec = match.vocabulary().spec;
        this.customary = customary;
        this.findings = findings;
    }

    Bound bind() {
        for (ColumnSpec column : spec.columns()) {
            bindCertain(column);
        }
        for (int i = 0; i < match.headings().length; i++) {
            Vocabulary.Heading heading = match.headings()[i];
            if (heading != null && !heading.isCertain()) {
                askWhichColumn(heading, match.firstColumn() + i);
            }
        }
        askAboutPower();
        new HerdIntake(table, bindings, findings).ask();
        tellAssumed();
        return new Bound(bindings, words, wordsAt);
    }

    /** What was taken for granted: a note, or a caution where the list measures otherwise beside it. */
    private void tellAssumed() {
        List<String> others = customaryHeaders();
        List<String> measures =
                others.isEmpty() && customary != CustomaryUnits.US ? List.of() : List.copyOf(assumedMeasures);
        assumed.removeAll(measures);
        if (!measures.isEmpty()) {
            findings.add(Finding.caution(
                    table.address(table.headerRow, table.firstColumn),
                    NO_UNIT + spec.name() + " for " + String.join(", ", measures)
                            + "; the units in brackets are taken, though "
                            + (others.isEmpty()
                                    ? "the customary units of this workbook are US"
                                    : Words.quoted(others.get(0)) + " beside it is in other units")
                            + ". If feet, inches, miles an hour, gallons or pounds are meant, these figures are wrong:"
                            + " write the units into the headers."));
        }
        if (!assumed.isEmpty()) {
            findings.add(Finding.note(
                    table.address(table.headerRow, table.firstColumn),
                    NO_UNIT + spec.name() + " for " + String.join(", ", assumed)
                            + "; the units in brackets are taken. Write the units to be sure."));
        }
    }

    /** The headers that say a customary unit of length, speed, volume, mass or pressure. */
    private List<String> customaryHeaders() {
        return spec.columns().stream()
                .flatMap(column -> bindings.getOrDefault(column, List.of()).stream())
                .filter(binding ->
                        binding.unit().unit() != null && !binding.unit().assumed())
                .filter(binding -> CUSTOMARY.stream()
                        .anyMatch(unit -> unit.isSameScale(binding.unit().unit())))
                .map(Binding::header)
                .toList();
    }

    private void bindCertain(ColumnSpec column) {
        List<Integer> places = new ArrayList<>();
        boolean settled = false;
        for (int i = 0; i < match.headings().length; i++) {
            Vocabulary.Heading heading = match.headings()[i];
            if (heading == null || !heading.isCertain() || heading.column() != column) {
                continue;
            }
            if (heading.settled() && !settled) {
                places.clear();
                settled = true;
            }
            if (heading.settled() || !settled) {
                places.add(i);
            }
        }
        leaveOtherYears(column, places);
        List<Binding> found = new ArrayList<>();
        for (int place : places) {
            found.add(binding(column, match.headings()[place], match.firstColumn() + place));
        }
        if (found.size() > 1 && !settled) {
            found = withoutOtherMeasures(column, found);
        }
        found.forEach(binding -> tellUnit(column, binding));
        if (found.size() > 1 && !differInKind(column, found)) {
            Binding name = theName(column, found);
            if (name != null) {
                noteOtherNames(column, name, found);
                found = List.of(name);
            } else if (OtherUnitBeside.areIn(found)) {
                noteUnitsBeside(column, found);
            } else {
                found = List.of(askWhichHeader(column, found));
            }
        }
        if (!found.isEmpty()) {
            bindings.put(column, found);
        }
    }

    /**
     * Of "Field name" beside "Parcel no.", or "Machine" beside "Model", the one that says that it is the name; null if
     * none or several say so. A machine of a job may well be two, a tractor and what it pulls.
     */
    private Binding theName(ColumnSpec column, List<Binding> found) {
        if (spec == Jobs.LIST || spec.identity().isEmpty() || spec.identity().get(0) != column) {
            return null;
        }
        String name = HeaderText.normal(column.name());
        List<Binding> saying = found.stream()
                .filter(binding -> {
                    String header = HeaderText.normal(binding.header());
                    return header.equals(name) || header.equals(name + " name");
                })
                .toList();
        return saying.size() == 1 ? saying.get(0) : null;
    }

    /**
     * "Fuel (L/ha)" beside "Fuel (L/h)" is no second fuel in an hour: of several headers those whose unit cannot be the
     * column's are left to themselves, and told, where there is one whose unit can.
     */
    private List<Binding> withoutOtherMeasures(ColumnSpec column, List<Binding> found) {
        List<Binding> fit = new ArrayList<>();
        List<Binding> others = new ArrayList<>();
        for (Binding binding : found) {
            (binding.asked() && HeaderUnit.measuresOther(column, binding.rest()) ? others : fit).add(binding);
        }
        if (fit.isEmpty() || others.isEmpty() || fit.stream().anyMatch(Binding::asked)) {
            return found;
        }
        findings.add(Finding.note(
                table.address(table.headerRow, others.get(0).sheetColumn()),
                headers(others) + (others.size() == 1 ? " is" : " are") + " not read: the " + column.name() + " of "
                        + spec.name() + " is taken from " + headers(fit)
                        + ", and this is measured otherwise."));
        return fit;
    }

    private void noteOtherNames(ColumnSpec column, Binding name, List<Binding> found) {
        List<Binding> others = found.stream().filter(binding -> binding != name).toList();
        findings.add(Finding.note(
                table.address(table.headerRow, others.get(0).sheetColumn()),
                headers(others) + (others.size() == 1 ? " is" : " are") + " not read: the " + column.name() + " of "
                        + spec.name() + " is taken from " + Words.quoted(name.header())
                        + ", and other lists must name it so."));
    }

    /** "Crop" beside "Crop 2025" is the crop, the other one a record; a lone "Crop 2026" is the crop, and said to be. */
    private void leaveOtherYears(ColumnSpec column, List<Integer> places) {
        List<Integer> dated =
                places.stream().filter(place -> match.headings()[place].dated()).toList();
        if (dated.isEmpty()) {
            return;
        }
        if (dated.size() < places.size()) {
            for (int place : dated) {
                noteYear(
                        place,
                        " is not read: the " + column.name() + " of " + spec.name()
                                + " is taken from the header without a year.");
            }
            places.removeAll(dated);
        } else if (places.size() == 1) {
            noteYear(dated.get(0), " is read as " + column.name() + " of " + spec.name() + ", whatever its year.");
        }
    }

    private void noteYear(int place, String what) {
        int sheetColumn = match.firstColumn() + place;
        findings.add(Finding.note(
                table.address(table.headerRow, sheetColumn), Words.quoted(table.headers[sheetColumn]) + what));
    }

    private Binding binding(ColumnSpec column, Vocabulary.Heading heading, int sheetColumn) {
        String header = table.headers[sheetColumn];
        String inRow = inUnitsRow(sheetColumn);
        String rest = heading.rest().isEmpty() ? inRow : heading.rest();
        ColumnSpec qualifier = spec.qualifiers().get(column);
        if (qualifier != null && heading.word() != null) {
            words.put(qualifier, heading.word());
            wordsAt.put(qualifier, table.address(table.headerRow, sheetColumn));
        }
        ShownInCells shown = ShownInCells.of(table, sheetColumn, column);
        if (rest.isEmpty() && shown.unit() != null) {
            rest = shown.unit();
            findings.add(Finding.note(
                    table.address(table.headerRow, sheetColumn),
                    "The unit of " + Words.quoted(header) + " is taken from how its cells are shown: " + rest + "."));
        }
        rest = column.isNumeric() ? HeaderUnit.whole(column, rest) : rest;
        HeaderText bare = heading.dated() ? HeaderText.of(header).withoutYear() : null;
        ColumnUnit unit = unit(column, bare == null ? header : Words.trim(bare.raw()), rest);
        String doubt = shown.doubt(unit.unit(), rest, customary);
        if (doubt == null && !heading.settled()) {
            doubt = contradiction(column, header, heading.rest(), inRow);
        }
        if (doubt != null && unit.question() == null) {
            unit = new ColumnUnit(null, false, doubt);
        }
        return new Binding(sheetColumn, header, rest, unit, unit.question() != null);
    }

    /** What the row of units says of a column; "" if nothing. */
    private String inUnitsRow(int sheetColumn) {
        int row = table.unitsRow < 0 ? table.secondHeaderRow : table.unitsRow;
        String said = row < 0 ? "" : Words.trim(table.grid.text(row, sheetColumn));
        if (row == table.secondHeaderRow && (table.headers[sheetColumn].endsWith(said) || !HeaderUnit.isUnit(said))) {
            // It is in the header already, or no unit.
            return "";
        }
        return said.equals("-") || said.equals("–") ? "" : said;
    }

    /** What must be asked where the header says one unit and the row of units another; null if they agree. */
    private String contradiction(ColumnSpec column, String header, String rest, String inRow) {
        boolean both = !rest.isEmpty() && !inRow.isEmpty();
        if (!both || column.type() != ColumnSpec.Type.NUMBER || RowUnits.isByRow(spec, column)) {
            return null;
        }
        Unit said = ColumnUnit.of(column, header, rest, customary).unit();
        Unit below = ColumnUnit.of(column, header, inRow, customary).unit();
        return said == null || below == null || said.isSameScale(below)
                ? null
                : "The header says " + rest + ", and the row of units " + inRow + ": which is right? Make them agree.";
    }

    /** What must be asked, or was taken for granted, about the unit of a header that is read. */
    private void tellUnit(ColumnSpec column, Binding binding) {
        ColumnUnit unit = binding.unit();
        if (unit.question() != null) {
            findings.add(Finding.stop(
                    table.address(table.headerRow, binding.sheetColumn()),
                    "The unit of " + Words.quoted(binding.header()) + " is not certain. " + unit.question()
                            + " Until then its cells are not used."));
        } else if (unit.assumed()) {
            noteAssumed(column, unit.unit());
        }
    }

    private ColumnUnit unit(ColumnSpec column, String header, String rest) {
        return switch (column.type()) {
            case TEXT, CHOICE, DATE, NOZZLE, DOSE -> new ColumnUnit(null, false, null);
            case BATTER -> batterUnit(rest);
            case NUMBER, TEXT_OR_NUMBER ->
                RowUnits.isByRow(spec, column)
                        ? new ColumnUnit(null, false, null)
                        : ColumnUnit.of(column, header, rest, customary);
        };
    }

    private static ColumnUnit batterUnit(String rest) {
        return switch (Words.normal(rest)) {
            case "",
                    "h v",
                    "horizontal per vertical",
                    "m m",
                    "1 in",
                    "1 in x",
                    "1 in n",
                    "out per up",
                    "ratio",
                    "h per v",
                    "horizontal vertical",
                    "deg",
                    "degree",
                    "run per rise",
                    "m per m" -> new ColumnUnit(Units.ONE, false, null);
            default ->
                rest.strip().equals("°")
                        ? new ColumnUnit(Units.ONE, false, null)
                        : new ColumnUnit(
                                null,
                                false,
                                Words.quoted(rest)
                                        + " is not a way to write a batter known here: write metres out for each"
                                        + " metre up, 1 in 3, or degrees.");
        };
    }

    private void noteAssumed(ColumnSpec column, Unit unit) {
        boolean words = column.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
        if (!words && !unit.symbol().isEmpty() && !unit.isSameScale(Units.MONEY_UNIT)) {
            assumed.add(column.name() + " (" + unit + ")");
            if (CUSTOMARY.stream().anyMatch(unit::isCompatible)) {
                assumedMeasures.add(column.name() + " (" + unit + ")");
            }
        }
    }

    /** Two headers of one column are no contradiction if they measure different things: t/h and m3/h. */
    private boolean differInKind(ColumnSpec column, List<Binding> found) {
        for (Binding one : found) {
            for (Binding other : found) {
                Unit first = kind(column, one);
                Unit second = kind(column, other);
                if (one != other && (first == null || second == null || first.isCompatible(second))) {
                    return false;
                }
            }
        }
        return true;
    }

    private Unit kind(ColumnSpec column, Binding binding) {
        return RowUnits.isByRow(spec, column)
                ? new RowUnits(spec, column, binding, customary).at("").unit()
                : binding.unit().unit();
    }

    private void noteUnitsBeside(ColumnSpec column, List<Binding> found) {
        findings.add(Finding.note(
                table.address(table.headerRow, found.get(0).sheetColumn()),
                "The headers " + headers(found) + " are read as one " + column.name() + " of " + spec.name()
                        + " in several units: in each row the one that is filled, and the first where several are and"
                        + " agree."));
    }

    private String headers(List<Binding> found) {
        List<String> headers = new ArrayList<>();
        for (Binding binding : found) {
            headers.add(Words.quoted(binding.header()) + " (" + table.address(table.headerRow, binding.sheetColumn())
                    + ")");
        }
        return String.join(" and ", headers);
    }

    private Binding askWhichHeader(ColumnSpec column, List<Binding> found) {
        Binding first = found.get(0);
        findings.add(Finding.stop(
                table.address(table.headerRow, first.sheetColumn()),
                "The headers " + headers(found) + " could all be " + column.name() + " of "
                        + spec.name() + ". Rename all but one, or add a sheet Layout with the row " + spec.name()
                        + " | "
                        + column.name() + " | " + first.header() + ". Until then none of them is used."));
        return new Binding(first.sheetColumn(), first.header(), first.rest(), first.unit(), true);
    }

    /** One figure for all of the columns that a header could mean, where none of them has its own. */
    private boolean bindAlike(Vocabulary.Heading heading, int sheetColumn) {
        String header = table.headers[sheetColumn];
        HeaderText text = HeaderText.of(header);
        boolean alike = heading.candidates().stream().noneMatch(bindings::containsKey)
                && spec.hints().forBoth().stream().anyMatch(text::begins);
        if (alike) {
            for (ColumnSpec column : heading.candidates()) {
                Binding binding = binding(column, heading, sheetColumn);
                tellUnit(column, binding);
                bindings.put(column, List.of(binding));
            }
            findings.add(Finding.note(
                    table.address(table.headerRow, sheetColumn),
                    Words.quoted(header) + " is read as "
                            + String.join(
                                    " and as ",
                                    heading.candidates().stream()
                                            .map(ColumnSpec::name)
                                            .toList())
                            + " of " + spec.name() + " alike. Where they differ, write a column for each."));
        }
        return alike;
    }

    private void askWhichColumn(Vocabulary.Heading heading, int sheetColumn) {
        if (bindAlike(heading, sheetColumn)) {
            return;
        }
        List<ColumnSpec> open = new ArrayList<>();
        for (ColumnSpec candidate : heading.candidates()) {
            if (!bindings.containsKey(candidate)) {
                open.add(candidate);
            }
        }
        // Without the one column that a list cannot do without, a second header for it is a question, not a remark.
        // What a sheet Layout says is the answer to that question.
        boolean rival = heading.candidates().size() == 1
                && open.isEmpty()
                && heading.candidates().get(0).required()
                && !isSettled(heading.candidates().get(0));
        if (open.isEmpty() && !rival) {
            findings.add(Finding.note(
                    table.address(table.headerRow, sheetColumn),
                    Words.quoted(table.headers[sheetColumn]) + " is not read: "
                            + String.join(
                                    " and ",
                                    heading.candidates().stream()
                                            .map(ColumnSpec::name)
                                            .toList())
                            + " of " + spec.name()
                            + (heading.candidates().size() == 1
                                    ? " is taken from another column."
                                    : " are taken from other columns.")));
            return;
        }
        if (rival) {
            ColumnSpec column = heading.candidates().get(0);
            List<Binding> all = new ArrayList<>(bindings.get(column));
            all.add(new Binding(
                    sheetColumn, table.headers[sheetColumn], heading.rest(), new ColumnUnit(null, false, null), true));
            bindings.put(column, List.of(askWhichHeader(column, all)));
            return;
        }
        String header = table.headers[sheetColumn];
        String names = String.join(
                " or ", heading.candidates().stream().map(ColumnSpec::name).toList());
        boolean needed = open.stream().anyMatch(ColumnSpec::required);
        String message = "The header " + Words.quoted(header)
                + (heading.candidates().size() == 1
                        ? " may or may not be the " + names + " of " + spec.name()
                        : " could mean " + names + " of " + spec.name())
                + ". Rename it to what it is, or add a sheet Layout (List | Column | Header in this workbook | Unit)"
                + " with the row " + spec.name() + " | " + open.get(0).name() + " | " + header
                + ". Until then it is not used.";
        CellAddress cell = table.address(table.headerRow, sheetColumn);
        findings.add(needed ? Finding.stop(cell, message) : Finding.caution(cell, message));
        for (ColumnSpec candidate : open) {
            bindings.put(
                    candidate,
                    List.of(new Binding(
                            sheetColumn, header, heading.rest(), new ColumnUnit(null, false, message), true)));
        }
    }

    private boolean isSettled(ColumnSpec column) {
        for (Vocabulary.Heading heading : match.headings()) {
            if (heading != null && heading.settled() && heading.candidates().contains(column)) {
                return true;
            }
        }
        return false;
    }

    private void askAboutPower() {
        if (bindings.containsKey(Machines.POWER)
                && !bindings.containsKey(Machines.POWER_BASIS)
                && !words.containsKey(Machines.POWER_BASIS)) {
            Binding power = bindings.get(Machines.POWER).get(0);
            findings.add(Finding.caution(
                    table.address(table.headerRow, power.sheetColumn()),
                    "Is " + Words.quoted(power.header())
                            + " the power of the engine or at the PTO? Write it in the header"
                            + " (Power (PTO kW)) or in a column Power basis. Until then results that need to know are"
                            + " left out."));
            bindings.put(
                    Machines.POWER_BASIS,
                    List.of(new Binding(
                            power.sheetColumn(), power.header(), "", new ColumnUnit(null, false, "basis"), true)));
        }
    }
}
