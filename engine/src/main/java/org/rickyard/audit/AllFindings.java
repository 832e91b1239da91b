package org.rickyard.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rickyard.formula.Evaluator;
import org.rickyard.formula.Inputs;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableColumn.Calculated;

/**
 * Everything to be said about a run, stops first: what reading and joining noticed, what withholds results, which
 * cautions touch rows, and where a default stands in for an answer the client could give.
 */
public final class AllFindings {
    private static final int MOST_OF_A_KIND = 100;
    /** A caution that touches many rows is shown at the first few; the rest are counted, and each row says it. */
    private static final int MOST_CAUTIONED_ROWS = 3;

    /** Of so many rows it is asked whether they have one cause; of more they are only counted. */
    private static final int MOST_LOOKED_AT = 1000;

    private final SheetPlaces places;
    private final List<Finding> findings = new ArrayList<>();

    private AllFindings(SheetPlaces places) {
        this.places = places;
    }

    /** The findings of a plan, in order of severity and then of tables and rows. */
    public static List<Finding> of(WorkPlan plan, SheetPlaces places, List<Finding> further) {
        AllFindings all = new AllFindings(places);
        all.findings.addAll(plan.findings());
        all.findings.addAll(further);
        all.findings.addAll(UnknownHeaders.of(plan.lists().places()));
        all.findings.addAll(WithheldByCause.of(plan, places));
        List<Finding> ofRows = new ArrayList<>();
        for (ResultTable table : plan.tables()) {
            int before = all.findings.size();
            all.cautions(table);
            ofRows.addAll(all.findings.subList(before, all.findings.size()));
            all.defaults(table);
        }
        List<Finding> ordered = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            // What must not be done so stands before what only cannot be reckoned.
            List<Finding> first = severity == Severity.STOP ? ofRows : List.of();
            Stream.concat(first.stream(), all.findings.stream())
                    .filter(finding -> finding.severity() == severity)
                    .distinct()
                    .forEach(ordered::add);
        }
        return AlikeFindings.told(ordered);
    }

    private void cautions(ResultTable table) {
        for (CautionRule rule : table.spec().rules()) {
            Evaluator.TruthAt when = table.truth(rule.when());
            Symbol shown = shown(table, rule);
            int most = rule.severity() == Severity.STOP ? MOST_OF_A_KIND : MOST_CAUTIONED_ROWS;
            // Rows of one cause are told once: a trailer too heavy is so on every field, and would hide what else is.
            Map<RaisedBy, List<Integer>> byFigures = new LinkedHashMap<>();
            int more = 0;
            int count = 0;
            for (int row = 0; row < table.rows(); row++) {
                if (!Boolean.TRUE.equals(when.at(row))) {
                    continue;
                }
                String figures = count++ < MOST_LOOKED_AT ? RuleFigures.of(table, rule, row, places) : null;
                RaisedBy by = figures == null ? null : RaisedBy.of(figures, row);
                if (by == null || byFigures.size() == most && !byFigures.containsKey(by)) {
                    more++;
                } else {
                    byFigures.computeIfAbsent(by, any -> new ArrayList<>()).add(row);
                }
            }
            for (Map.Entry<RaisedBy, List<Integer>> told : byFigures.entrySet()) {
                List<Integer> rows = told.getValue();
                int first = rows.get(0);
                findings.add(new Finding(
                        rule.severity(),
                        Optional.of(places.cell(table.spec(), shown, first)),
                        about(table, first)
                                + rule.text()
                                + told.getKey().figures()
                                + theSame(rows, places.cell(table.spec(), shown, rows.get(rows.size() - 1)))));
            }
            if (more > 0) {
                findings.add(new Finding(
                        rule.severity(),
                        Optional.empty(),
                        Counted.more(more, "row") + " on '" + places.sheet(table.spec()) + "': " + rule.text()));
            }
        }
    }

    /**
     * What a caution was raised by: figures of a cell, or else this row alone. Two products of which two rows are left out
     * have the same figure and nothing else in common.
     */
    private record RaisedBy(String figures, int row) {
        static RaisedBy of(String figures, int row) {
            boolean namesCell = figures.indexOf('!') >= 0;
            return new RaisedBy(figures, namesCell ? -1 : row);
        }
    }

    private static String theSame(List<Integer> rows, CellAddress last) {
        return rows.size() == 1
                ? ""
                : " It is the same in " + Counted.more(rows.size() - 1, "row") + ", down to " + last + ".";
    }

    /** The result that a caution is about, so that its link leads to the figure it speaks of. */
    private static Symbol shown(ResultTable table, CautionRule rule) {
        List<Symbol> results =
                Results.resultColumns(table).stream().map(Calculated::symbol).toList();
        return Inputs.of(rule.when()).stream()
                .filter(results::contains)
                .findFirst()
                .orElse(results.get(0));
    }

    /** Whom or what a caution is about; nothing for the only row of a workbook without holdings. */
    private static String about(ResultTable table, int row) {
        String names = String.join(", ", Results.about(table, row).values());
        return names.isEmpty() ? "" : names + ": ";
    }

    /** A default is shown as one, and which answer would improve which result. */
    private void defaults(ResultTable table) {
        for (TableColumn column : table.spec().columns()) {
            int count = DefaultsUsed.count(table, column);
            if (count > 0) {
                Calculated calculated = (Calculated) column;
                findings.add(Finding.note(
                        places.cell(table.spec(), column.symbol(), 0),
                        "a default for " + column.symbol().name() + " is used in " + count
                                + (count == 1 ? " row" : " rows") + " of '" + places.sheet(table.spec())
                                + "'; typing your own would make it surer ("
                                + calculated.formula().source() + ")."));
            }
        }
    }
}
