package org.rickyard.lists.read;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;

/** Whether the power of machines is the engine's or the PTO's, where the headers of their list leave it open or say both. */
final class PowerBasis {
    private static final String AT_PTO = "PTO";

    private final FoundTable table;
    private final Map<ColumnSpec, List<Binding>> bindings;
    private final Map<ColumnSpec, String> words;
    private final List<Finding> findings;

    PowerBasis(
            FoundTable table,
            Map<ColumnSpec, List<Binding>> bindings,
            Map<ColumnSpec, String> words,
            List<Finding> findings) {
        this.table = table;
        this.bindings = bindings;
        this.words = words;
        this.findings = findings;
    }

    /**
     * Of "Engine hp" beside "PTO hp", which measure two things of one tractor, the one that is filled for more machines
     * is read, and of two alike the PTO's, of which less has to be reckoned; the other is told. Where a column says of each
     * machine which of the two it has, it stays a question.
     */
    void leaveOther(HeaderRow.Match match, List<Integer> places) {
        if (match.places(Machines.POWER_BASIS) > 0) {
            return;
        }
        Map<String, Integer> byBasis = new LinkedHashMap<>();
        for (int place : places) {
            String basis = match.headings()[place].word();
            if (basis == null || byBasis.put(basis, place) != null) {
                return;
            }
        }
        int read = places.stream()
                .max(Comparator.comparingInt((Integer place) -> filled(match.firstColumn() + place))
                        .thenComparing(place -> AT_PTO.equals(match.headings()[place].word())))
                .orElseThrow();
        for (int place : places) {
            if (place != read) {
                int sheetColumn = match.firstColumn() + place;
                findings.add(Finding.note(
                        table.address(table.headerRow(), sheetColumn),
                        Words.quoted(table.headers()[sheetColumn])
                                + " is not read: the Power of Machines is taken from "
                                + Words.quoted(table.headers()[match.firstColumn() + read])
                                + ", and what is wanted of the other is reckoned from it."));
                tellPassedOver(sheetColumn, match.firstColumn() + read);
            }
        }
        places.retainAll(List.of(read));
    }

    /** A machine whose power stands under the other header alone has none that is read. */
    private void tellPassedOver(int other, int read) {
        for (int i = 0; i < table.count(); i++) {
            int row = table.row(i);
            if (table.grid().kind(row, read) == Grid.Kind.BLANK && table.grid().kind(row, other) != Grid.Kind.BLANK) {
                findings.add(Finding.caution(
                        table.address(row, other),
                        "This cell is not read, since for most machines the Power is under "
                                + Words.quoted(table.headers()[read])
                                + ", which is blank here. Write it there, or all powers under one header with a column"
                                + " Power basis (engine, PTO) beside it."));
                return;
            }
        }
    }

    private int filled(int sheetColumn) {
        int filled = 0;
        for (int row = 0; row < table.count(); row++) {
            filled += table.grid().kind(table.row(row), sheetColumn) == Grid.Kind.BLANK ? 0 : 1;
        }
        return filled;
    }

    /** Asks where neither the header, nor a column, nor a word above says it. */
    void ask() {
        if (bindings.containsKey(Machines.POWER)
                && !bindings.containsKey(Machines.POWER_BASIS)
                && !words.containsKey(Machines.POWER_BASIS)) {
            Binding power = bindings.get(Machines.POWER).get(0);
            findings.add(Finding.caution(
                    table.address(table.headerRow(), power.sheetColumn()),
                    "Is " + Words.quoted(power.header())
                            + " the power of the engine or at the PTO? Write it in the header"
                            + " (Power (PTO kW)) or "
                            + (table.grid().isTurned() ? "beside a label" : "in a column")
                            + " Power basis. Until then results that need to know are left out."));
            bindings.put(
                    Machines.POWER_BASIS,
                    List.of(new Binding(power.sheetColumn(), power.header(), "", ColumnUnit.asked("basis"), true)));
        }
    }
}
