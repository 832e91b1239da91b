package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.audit.BalanceCheck;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;

/** Checks: totals by two routes, live; then findings, stops first; then the cautions that hold for whole sheets. */
final class ChecksSheet {
    private static final int MASTER_ROW = 1;
    private static final int FIRST_CHECK = 5;
    private static final String HEADING = "Totals by two routes (live; where it says \"" + BalanceCheck.NOT_COMPARED
            + "\", so many rows are withheld that nothing is left to add up)";
    private static final String PASS = "Checks: all totals agree";
    private static final String PART = "Checks: no total is wrong, but some are incomplete, see Checks";
    private static final String AGAIN =
            "Checks: RUN AGAIN - what only a run reads of your lists has changed since, see As read";
    private static final String SORTED =
            "Checks: SORTED - rows of a result sheet stand elsewhere than when it was written:"
                    + " Summary, cards and Trail withhold the figures of those. Run again";
    private static final String FAIL = "Checks: LOOK - totals do not agree, see Checks";

    /** All that the master check may say. */
    static final Set<String> MASTERS = Set.of(PASS, PART, AGAIN, SORTED, FAIL);

    private final String sheet;
    private final String asRead;
    private final List<BalanceCheck> checks;

    ChecksSheet(String sheet, String asRead, WorkPlan plan) {
        this.sheet = sheet;
        this.asRead = asRead;
        this.checks = BalanceCheck.of(plan);
    }

    /** The formula by which another sheet shows the master check. */
    String masterReference() {
        return new CellAddress(sheet, MASTER_ROW, 0).absolute();
    }

    /** The master check's present words. */
    String master() {
        List<String> verdicts = checks.stream().map(BalanceCheck::verdict).toList();
        boolean part = verdicts.contains(BalanceCheck.INCOMPLETE) || verdicts.contains(BalanceCheck.NOT_COMPARED);
        return verdicts.contains("CHECK") ? FAIL : part ? PART : PASS;
    }

    /**
     * The master check.
     *
     * @param rows the verdicts on rows in their places, as a formula names them
     */
    private String masterFormula(String rows) {
        return "IF(" + AsReadSheet.count(asRead) + ">0,\"" + AGAIN + "\",IF(COUNTIFS(" + rows + ",\""
                + RowsInPlace.SORTED + "\")>0,\"" + SORTED + "\"," + totalsFormula() + "))";
    }

    private String totalsFormula() {
        if (checks.isEmpty()) {
            return "\"" + PASS + "\"";
        }
        String verdicts = "COUNTIFS(B" + (FIRST_CHECK + 1) + ":B" + (FIRST_CHECK + checks.size()) + ",\"";
        return "IF(" + verdicts + "CHECK\")>0,\"" + FAIL + "\",IF(" + verdicts + BalanceCheck.INCOMPLETE + "\")+"
                + verdicts + BalanceCheck.NOT_COMPARED + "\")>0,\"" + PART + "\",\"" + PASS + "\"))";
    }

    PlainSheet build(Looks.Numbers looks, WorkPlan plan, SheetPlaces places, RowMarks marks, List<Finding> findings) {
        PlainSheet page = new PlainSheet(looks, List.of(28, 13, 100, 15, 15, 12), 2);
        page.line().text(Looks.TITLE, "Checks").height(22);
        PlainSheet.Line master = page.line();
        page.line();
        page.line().text(Looks.HEADING, HEADING);
        head(page, "Total", "Verdict", "What must agree", "One way", "Other way", "Rows withheld");
        if (checks.isEmpty()) {
            page.line().text(Looks.TEXT, "No total here is reached by two routes.");
        }
        for (BalanceCheck check : checks) {
            int row = page.next();
            page.line()
                    .text(Looks.NAME, "Total " + (row - FIRST_CHECK + 1))
                    .formula(
                            Looks.CHECK,
                            BalanceCheck.verdictFormula(
                                    new CellAddress(sheet, row, 3),
                                    new CellAddress(sheet, row, 4),
                                    new CellAddress(sheet, row, 5)),
                            check.verdict())
                    .text(Looks.NAME, check.what())
                    .formula(Looks.decimals(Looks.STEP, 2), check.leftFormula(places), check.left())
                    .formula(Looks.decimals(Looks.STEP, 2), check.rightFormula(places), check.right())
                    .formula(Looks.decimals(Looks.STEP, 0), check.withheldFormula(places), check.withheld());
        }
        page.line();
        page.line()
                .text(
                        Looks.HEADING,
                        "Findings of the run, stops first; after mending them run again (cautions on the sheets are live)");
        head(page, "Where", "How grave", "What was found and what to do");
        if (findings.isEmpty()) {
            page.line().text(Looks.TEXT, "Nothing to report.");
        }
        for (Finding finding : findings) {
            PlainSheet.Line line = page.line();
            if (finding.cell().isPresent()) {
                line.linkTo(finding.cell().get());
            } else {
                line.text(Looks.TEXT, "the workbook");
            }
            line.text(
                            finding.severity() == Finding.Severity.NOTE ? Looks.TEXT : Looks.CAUTION,
                            finding.severity().toString())
                    .text(Looks.TEXT_WRAPPED, finding.message());
        }
        page.line();
        page.line().text(Looks.HEADING, "Cautions that hold for whole sheets");
        ofWholeSheets(plan, places).forEach((caution, sheets) -> page.line()
                .text(Looks.TEXT_WRAPPED, String.join(", ", sheets))
                .text(Looks.CAUTION, "CAUTION")
                .text(Looks.CAUTION_WRAPPED, caution));
        page.line();
        page.line().text(Looks.HEADING, "Rows of the result sheets in their places (live)");
        int first = page.next();
        page.line().text(Looks.LABEL, "Rows").text(Looks.LABEL, "Verdict").text(Looks.LABEL, "What must hold");
        for (ResultTable table : plan.tables()) {
            for (RowsInPlace rows : RowsInPlace.of(table, places, marks)) {
                page.line()
                        .text(Looks.NAME, places.sheet(table.spec()))
                        .formula(Looks.CHECK, rows.formula(), "ok")
                        .text(Looks.NAME, rows.what());
            }
        }
        master.formula(Looks.CHECK, masterFormula("B" + (first + 1) + ":B" + page.next()), master());
        return page;
    }

    /** Each caution once, with the sheets it stands on: what is said twelve times is not read. */
    private static Map<String, List<String>> ofWholeSheets(WorkPlan plan, SheetPlaces places) {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        for (ResultTable table : plan.tables()) {
            if (table.rows() > 0) {
                for (String caution : table.spec().cautions()) {
                    sheets.computeIfAbsent(caution, c -> new ArrayList<>()).add(places.sheet(table.spec()));
                }
            }
        }
        return sheets;
    }

    private static void head(PlainSheet page, String... labels) {
        PlainSheet.Line line = page.line();
        for (String label : labels) {
            line.text(Looks.LABEL, label);
        }
    }
}
