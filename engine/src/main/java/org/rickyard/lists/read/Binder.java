package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.HeaderUnit;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.ThereAndBack;
import org.rickyard.lists.header.TypeInTitle;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;

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

    private final FoundTable table;
    private final HeaderRow.Match match;
    private final ListSpec spec;
    private final CustomaryUnits customary;
    private final List<Finding> findings;
    private final Map<ColumnSpec, List<Binding>> bindings = new IdentityHashMap<>();
    private final Map<ColumnSpec, String> words = new IdentityHashMap<>();
    private final Map<ColumnSpec, CellAddress> wordsAt = new IdentityHashMap<>();
    private final HeaderMeasure measure;
    private final UnitsAssumed assumed;
    private final RivalHeaders rivals;
    private final PowerBasis power;

    Binder(FoundTable table, HeaderRow.Match match, CustomaryUnits customary, List<Finding> findings) {
        this.table = table;
        this.match = match;
        this.spec = match.vocabulary().spec();
        this.customary = customary;
        this.findings = findings;
        this.measure = new HeaderMeasure(table, spec, customary);
        this.assumed = new UnitsAssumed(spec, customary);
        this.rivals = new RivalHeaders(table, spec, customary, findings);
        this.power = new PowerBasis(table, bindings, words, findings);
    }

    Bound bind() {
        for (ColumnSpec column : spec.columns()) {
            bindCertain(column);
        }
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && !heading.isCertain()) {
                askWhichColumn(heading, match.firstColumn() + i);
            }
        }
        power.ask();
        new HerdIntake(table, bindings, findings).ask();
        new CountedBales(table, bindings, findings).ask();
        assumed.tell(table, bindings, findings);
        return new Bound(bindings, words, wordsAt);
    }

    private void bindCertain(ColumnSpec column) {
        List<Integer> places = new ArrayList<>();
        List<Integer> passedOver = new ArrayList<>();
        boolean settled = false;
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading == null || !heading.isCertain() || heading.column() != column) {
                continue;
            }
            if (heading.settled() && !settled) {
                passedOver.addAll(places);
                places.clear();
                settled = true;
            }
            (heading.settled() || !settled ? places : passedOver).add(i);
        }
        rivals.leaveOtherYears(column, match, places);
        if (column == Machines.POWER && !settled && places.size() > 1) {
            power.leaveOther(match, places);
        }
        List<Binding> found = new ArrayList<>();
        for (int place : places) {
            found.add(binding(column, match.headings()[place], match.firstColumn() + place));
        }
        if (found.size() > 1 && !settled) {
            found = rivals.withoutOtherMeasures(column, found);
        }
        if (!passedOver.isEmpty()) {
            List<Binding> others = new ArrayList<>();
            for (int place : passedOver) {
                others.add(binding(column, match.headings()[place], match.firstColumn() + place));
            }
            found = rivals.withOtherKinds(column, found, others);
        }
        found.forEach(binding -> tellUnit(column, binding));
        if (found.size() > 1) {
            found = rivals.settled(column, found);
        }
        if (!found.isEmpty()) {
            bindings.put(column, found);
        }
    }

    private Binding binding(ColumnSpec column, Heading heading, int sheetColumn) {
        String header = table.headers()[sheetColumn];
        String inRow = measure.inUnitsRow(sheetColumn);
        String rest = heading.rest().isEmpty() ? inRow : heading.rest();
        ColumnSpec qualifier = spec.qualifiers().get(column);
        if (qualifier != null && heading.word() != null && !(qualifier.required() && match.holds(qualifier))) {
            TypeInTitle title = qualifier == Machines.TYPE ? table.title() : null;
            boolean byTitle = title != null
                    && title.type().equals(heading.word())
                    && match.vocabulary().wholeWord(column, header) == null;
            words.put(qualifier, heading.word());
            CellAddress at =
                    byTitle && title.cell() != null ? title.cell() : table.address(table.headerRow(), sheetColumn);
            wordsAt.put(qualifier, at);
            if (qualifier.required()) {
                findings.add(Finding.note(
                        at,
                        "What stands " + (table.grid().isTurned() ? "beside " : "under ") + Words.quoted(header)
                                + (byTitle ? title.said() : "")
                                + " is taken to be of the " + qualifier.name() + " " + heading.word()
                                + ", since " + spec.name() + " has no "
                                + table.grid().header() + " "
                                + qualifier.name() + " here. Where one is of another, add the "
                                + table.grid().header() + "."));
            }
        }
        ShownInCells shown = ShownInCells.of(table, sheetColumn, column);
        HeaderText bare = heading.dated() ? HeaderText.of(header).withoutYear() : null;
        String name = bare == null ? header : Words.trim(bare.raw());
        if (rest.isEmpty() && shown.unit() != null && !saysUnit(measure.unit(column, name, ""))) {
            rest = shown.unit();
            findings.add(Finding.note(
                    table.address(table.headerRow(), sheetColumn),
                    "The unit of " + Words.quoted(header) + " is taken from how its cells are shown: " + rest + "."));
        }
        rest = column.isNumeric() ? HeaderUnit.whole(column, rest) : rest;
        ColumnUnit unit = measure.unit(column, name, rest);
        String doubt = shown.doubt(unit.unit(), rest, customary);
        if (doubt == null && !heading.settled()) {
            doubt = measure.contradiction(column, header, heading.rest(), inRow);
        }
        if (doubt == null && column.equals(Fields.AREA) && !heading.settled()) {
            doubt = RoodsBeside.doubt(table, sheetColumn);
        }
        if (doubt == null && unit.assumed() && column.type() == ColumnSpec.Type.NUMBER && !heading.settled()) {
            doubt = new UnitsAbove(table, customary).doubt(column, header, unit.unit());
            doubt = doubt == null ? AcresBeside.doubt(table, column, unit.unit()) : doubt;
        }
        if (unit.question() != null && ThereAndBack.isSaid(column, header)) {
            unit = ColumnUnit.asked(
                    new ThereAndBack(table.grid(), table.headerRow()).question(column, sheetColumn, header));
        } else if (unit.question() != null) {
            unit = ColumnUnit.asked(
                    unit.question() + new RatePerDay(table, match, customary).figures(column, sheetColumn, rest));
        } else if (doubt != null) {
            unit = ColumnUnit.asked(doubt);
        }
        return new Binding(sheetColumn, header, rest, unit, unit.question() != null);
    }

    /** "Acres" says its unit by its name: cells that show another one contradict it, and those that show none do not. */
    private static boolean saysUnit(ColumnUnit ofName) {
        return ofName.unit() != null && !ofName.assumed();
    }

    /** What must be asked, or was taken for granted, about the unit of a header that is read. */
    private void tellUnit(ColumnSpec column, Binding binding) {
        ColumnUnit unit = binding.unit();
        if (unit.question() != null) {
            findings.add(Finding.stop(
                    table.address(table.headerRow(), binding.sheetColumn()),
                    "The unit of " + Words.quoted(binding.header()) + " is not certain. " + unit.question()
                            + " Until then its cells are not used."));
        } else if (unit.assumed() && !UnitsInCells.areAll(table, binding, column, customary)) {
            assumed.add(column, unit.unit());
        }
    }

    /** One figure for all of the columns that a header could mean, where none of them has its own. */
    private boolean bindAlike(Heading heading, int sheetColumn) {
        String header = table.headers()[sheetColumn];
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
                    table.address(table.headerRow(), sheetColumn),
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

    private void askWhichColumn(Heading heading, int sheetColumn) {
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
                    table.address(table.headerRow(), sheetColumn),
                    Words.quoted(table.headers()[sheetColumn]) + " is not read: "
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
                    sheetColumn,
                    table.headers()[sheetColumn],
                    heading.rest(),
                    new ColumnUnit(null, false, null),
                    true));
            bindings.put(column, List.of(rivals.ask(column, all)));
            return;
        }
        String header = table.headers()[sheetColumn];
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
        CellAddress cell = table.address(table.headerRow(), sheetColumn);
        findings.add(needed ? Finding.stop(cell, message) : Finding.caution(cell, message));
        for (ColumnSpec candidate : open) {
            bindings.put(
                    candidate,
                    List.of(new Binding(sheetColumn, header, heading.rest(), ColumnUnit.asked(message), true)));
        }
    }

    private boolean isSettled(ColumnSpec column) {
        for (Heading heading : match.headings()) {
            if (heading != null && heading.settled() && heading.candidates().contains(column)) {
                return true;
            }
        }
        return false;
    }
}
