package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.header.HeaderUnit;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;

/** Several headers of one table that could each be the same column of a list: which is read, and what is said of the others. */
final class RivalHeaders {
    private final FoundTable table;
    private final ListSpec spec;
    private final CustomaryUnits customary;
    private final List<Finding> findings;

    RivalHeaders(FoundTable table, ListSpec spec, CustomaryUnits customary, List<Finding> findings) {
        this.table = table;
        this.spec = spec;
        this.customary = customary;
        this.findings = findings;
    }

    /** "Crop" beside "Crop 2025" is the crop, the other one a record; a lone "Crop 2026" is the crop, and said to be. */
    void leaveOtherYears(ColumnSpec column, HeaderRow.Match match, List<Integer> places) {
        List<Integer> dated =
                places.stream().filter(place -> match.headings()[place].dated()).toList();
        if (dated.isEmpty()) {
            return;
        }
        if (dated.size() < places.size()) {
            for (int place : dated) {
                noteYear(
                        match,
                        place,
                        " is not read: the " + column.name() + " of " + spec.name()
                                + " is taken from the header without a year.");
            }
            places.removeAll(dated);
        } else if (places.size() == 1) {
            noteYear(
                    match,
                    dated.get(0),
                    " is read as " + column.name() + " of " + spec.name() + ", whatever its year.");
        }
    }

    private void noteYear(HeaderRow.Match match, int place, String what) {
        int sheetColumn = match.firstColumn() + place;
        findings.add(Finding.note(
                table.address(table.headerRow(), sheetColumn), Words.quoted(table.headers()[sheetColumn]) + what));
    }

    /**
     * "Fuel (L/ha)" beside "Fuel (L/h)" is no second fuel in an hour: of several headers those whose unit cannot be the
     * column's are left to themselves, and told, where there is one whose unit can.
     */
    List<Binding> withoutOtherMeasures(ColumnSpec column, List<Binding> found) {
        List<Binding> fit = new ArrayList<>();
        List<Binding> others = new ArrayList<>();
        for (Binding binding : found) {
            (binding.asked() && HeaderUnit.measuresOther(column, binding.rest()) ? others : fit).add(binding);
        }
        if (fit.isEmpty() || others.isEmpty() || fit.stream().anyMatch(Binding::asked)) {
            return found;
        }
        findings.add(Finding.note(
                table.address(table.headerRow(), others.get(0).sheetColumn()),
                headers(others) + (others.size() == 1 ? " is" : " are") + " not read: the " + column.name() + " of "
                        + spec.name() + " is taken from " + headers(fit)
                        + ", and this is measured otherwise."));
        return fit;
    }

    /**
     * Beside what a sheet Layout says is the column, others of its headers are passed over; not one that measures another
     * kind of it, nor without a word one that is filled where the column is blank.
     */
    List<Binding> withOtherKinds(ColumnSpec column, List<Binding> said, List<Binding> others) {
        List<Binding> read = new ArrayList<>(said);
        for (Binding other : others) {
            List<Binding> both = new ArrayList<>(said);
            both.add(other);
            if (differInKind(column, both)) {
                read.add(other);
            } else {
                cautionPassedOver(column, said, other);
            }
        }
        return read;
    }

    private void cautionPassedOver(ColumnSpec column, List<Binding> said, Binding other) {
        for (int i = 0; i < table.count(); i++) {
            int row = table.row(i);
            boolean filled = table.grid().kind(row, other.sheetColumn()) != Grid.Kind.BLANK;
            if (filled
                    && said.stream().allMatch(each -> table.grid().kind(row, each.sheetColumn()) == Grid.Kind.BLANK)) {
                findings.add(Finding.caution(
                        table.address(row, other.sheetColumn()),
                        "This cell is not read: the sheet Layout says that the " + column.name() + " of " + spec.name()
                                + " is " + headers(said) + ", which is blank here, and not "
                                + Words.quoted(other.header())
                                + ". Write it there, or name this header on Layout too."));
                return;
            }
        }
    }

    /** Of several headers those that are read: all where they measure different things or the same in several units, or one. */
    List<Binding> settled(ColumnSpec column, List<Binding> found) {
        if (differInKind(column, found)) {
            return found;
        }
        Binding name = theName(column, found);
        if (name != null) {
            noteOtherNames(column, name, found);
            return List.of(name);
        }
        if (OtherUnitBeside.areIn(found)) {
            noteUnitsBeside(column, found);
            return found;
        }
        return List.of(ask(column, found));
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

    private void noteOtherNames(ColumnSpec column, Binding name, List<Binding> found) {
        List<Binding> others = found.stream().filter(binding -> binding != name).toList();
        findings.add(Finding.note(
                table.address(table.headerRow(), others.get(0).sheetColumn()),
                headers(others) + (others.size() == 1 ? " is" : " are") + " not read: the " + column.name() + " of "
                        + spec.name() + " is taken from " + Words.quoted(name.header())
                        + ", and other lists must name it so."));
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
                table.address(table.headerRow(), found.get(0).sheetColumn()),
                "The headers " + headers(found) + " are read as one " + column.name() + " of " + spec.name()
                        + " in several units: in each row the one that is filled, and the first where several are and"
                        + " agree."));
    }

    private String headers(List<Binding> found) {
        List<String> headers = new ArrayList<>();
        for (Binding binding : found) {
            headers.add(Words.quoted(binding.header()) + " (" + table.address(table.headerRow(), binding.sheetColumn())
                    + ")");
        }
        return String.join(" and ", headers);
    }

    /** Asks which of them it is; until that is answered none is used. */
    Binding ask(ColumnSpec column, List<Binding> found) {
        Binding first = found.get(0);
        findings.add(Finding.stop(
                table.address(table.headerRow(), first.sheetColumn()),
                "The headers " + headers(found) + " could all be " + column.name() + " of "
                        + spec.name() + ". Rename all but one, or add a sheet Layout with the row " + spec.name()
                        + " | "
                        + column.name() + " | " + first.header() + ". Until then none of them is used."));
        return new Binding(first.sheetColumn(), first.header(), first.rest(), first.unit(), true);
    }
}
