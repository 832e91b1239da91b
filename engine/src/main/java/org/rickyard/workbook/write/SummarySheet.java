package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.audit.DefaultsUsed;
import org.rickyard.audit.Results;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.plan.Headlines;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.fit.OwnUnit;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;

/** Summary: the master check, what stops the reader, what was left out, and the few answers that matter. */
final class SummarySheet {
    private static final int MOST_STOPS = 12;
    /** Characters that the columns right of the first take together. */
    private static final int STOP_WIDTH = 140;

    private static final String AS_ABOVE = "ok, with the cautions above";

    private SummarySheet() {}

    static PlainSheet build(
            Looks.Numbers looks,
            WorkPlan plan,
            Map<String, String> names,
            SheetPlaces places,
            RowMarks marks,
            List<Finding> findings,
            String masterCheck,
            String masterCheckValue) {
        Map<String, List<Headlines.Headline>> headings = Headlines.byHeading(plan);
        boolean own = headings.values().stream().flatMap(List::stream).anyMatch(line -> plan.ownUnits()
                .of(line.table(), line.formula().result(), line.row())
                .isPresent());
        PlainSheet page = new PlainSheet(
                looks, own ? List.of(50, 40, 16, 12, 16, 12, 26, 60) : List.of(44, 40, 16, 12, 26, 60), 2);
        page.line().text(Looks.TITLE, "Summary").height(22);
        page.line().formula(Looks.CHECK, masterCheck, masterCheckValue);
        page.line();
        stops(page, findings);
        page.line().text(Looks.HEADING, "How complete it was when run");
        counts(page, plan, findings);
        page.line();
        page.line().text(Looks.HEADING, "The answers");
        PlainSheet.Line head = page.line();
        for (String label : own
                ? List.of("About", "Result", "Value", "Unit", "In your units", "Your unit", "Go to", "Status")
                : List.of("About", "Result", "Value", "Unit", "Go to", "Status")) {
            head.text(Looks.LABEL, label);
        }
        if (headings.isEmpty()) {
            page.line()
                    .text(
                            Looks.TEXT,
                            "None of the chief answers comes of these lists; the sheets below hold what does.");
        }
        for (Map.Entry<String, List<Headlines.Headline>> holding : headings.entrySet()) {
            page.line().text(Looks.HEADING, holding.getKey());
            RowAbove above = new RowAbove();
            for (Headlines.Headline headline : holding.getValue()) {
                answer(page, plan, places, marks, headline, own, above.of(headline));
            }
        }
        String more = Headlines.leftOut(plan, places::sheet);
        if (!more.isEmpty()) {
            page.line().text(Looks.TEXT, more);
        }
        page.line();
        contents(page, plan, names);
        return page;
    }

    /** The answers that stand above one and are of the same row, so that its cautions were said with them. */
    private static final class RowAbove {
        private Headlines.Headline last;
        /** The cells that hold their values. */
        private final List<String> cells = new ArrayList<>();

        private boolean given;

        RowAbove of(Headlines.Headline next) {
            if (last == null || last.table() != next.table() || last.row() != next.row()) {
                cells.clear();
                given = false;
            }
            last = next;
            return this;
        }

        void said(String cell, boolean isGiven) {
            cells.add(cell);
            given |= isGiven;
        }
    }

    /** Every sheet of ours but this one, in the order of their tabs. */
    private static void contents(PlainSheet page, WorkPlan plan, Map<String, String> names) {
        page.line().text(Looks.HEADING, "What stands where");
        names.forEach((id, name) -> {
            if (!id.equals(SheetSet.SUMMARY)) {
                page.line().linkTo(new CellAddress(name, 0, 0)).text(Looks.TEXT, what(plan, id));
            }
        });
    }

    private static String what(WorkPlan plan, String id) {
        return switch (id) {
            case SheetSet.SPRAY_CARDS -> "Spray cards: one for each block, to print and take along";
            case SheetSet.CLAMP_CARDS -> "Clamp cards: one for each clamp, with its section and its dangers";
            case SheetSet.BASIS -> BasisSheet.TITLE;
            case SheetSet.TRAIL -> TrailSheet.TITLE;
            case SheetSet.AS_READ -> AsReadSheet.TITLE;
            case SheetSet.CHECKS -> "Checks: totals by two routes, all that was found, and the cautions";
            case SheetSet.ABOUT -> "About: how to read these sheets, and what was read from where";
            default -> {
                ResultTable table = plan.table(id);
                yield table.spec().title() + (table.rows() > 0 ? "" : " (no rows)");
            }
        };
    }

    private static void stops(PlainSheet page, List<Finding> findings) {
        List<Finding> stops = findings.stream()
                .filter(finding -> finding.severity() == Finding.Severity.STOP)
                .toList();
        if (stops.isEmpty()) {
            return;
        }
        page.line()
                .text(Looks.HEADING, "Stops when the workbook was run: read these first; after mending them run again");
        for (int i = 0; i < stops.size() && i < MOST_STOPS; i++) {
            PlainSheet.Line line = page.line();
            Finding stop = stops.get(i);
            if (stop.cell().isPresent()) {
                line.linkTo(stop.cell().get());
            } else {
                line.text(Looks.TEXT, "the workbook");
            }
            page.paragraph(line, Looks.CAUTION, "STOP: " + stop.message(), STOP_WIDTH);
        }
        if (stops.size() > MOST_STOPS) {
            page.line().text(Looks.CAUTION, "and " + Counted.more(stops.size() - MOST_STOPS, "stop") + " on Checks");
        }
        page.line();
    }

    private static void counts(PlainSheet page, WorkPlan plan, List<Finding> findings) {
        long withheld = 0;
        long defaults = 0;
        for (ResultTable table : plan.tables()) {
            for (var column : table.spec().columns()) {
                defaults += DefaultsUsed.count(table, column);
            }
            for (TableColumn column : Results.answers(table)) {
                for (int row = 0; row < table.rows(); row++) {
                    withheld += Results.isWithheld(table, column, row) ? 1 : 0;
                }
            }
        }
        count(page, "Results given", Results.count(plan) - withheld);
        count(page, "Results withheld (Checks and each Status say why)", withheld);
        count(page, "Defaults used where nothing was typed", defaults);
        count(
                page,
                "Stops and cautions on Checks",
                findings.stream()
                        .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                        .count());
    }

    private static void count(PlainSheet page, String what, long count) {
        page.line().text(Looks.TEXT, what).skip().number(Looks.decimals(Looks.STEP, 0), count);
    }

    private static void answer(
            PlainSheet page,
            WorkPlan plan,
            SheetPlaces places,
            RowMarks marks,
            Headlines.Headline headline,
            boolean own,
            RowAbove above) {
        ResultTable table = headline.table();
        Formula formula = headline.formula();
        int row = headline.row();
        CellAddress cell = places.cell(table.spec(), formula.result(), row);
        Values values = table.of(formula.result());
        Symbol symbol = formula.result();
        List<String> inPlace = marks.of(table, row);
        String value = RowMarks.whileInPlace(inPlace, cell.absolute(), "\"" + RowMarks.MOVED + "\"");
        PlainSheet.Line line =
                page.line().text(Looks.NAME_WRAPPED, headline.about()).text(Looks.NAME, symbol.name());
        var look = Looks.decimals(Looks.RESULT, Math.min(4, symbol.decimals()));
        if (values.has(row) && !values.words()) {
            line.formula(look, value, values.number(row));
        } else if (values.words()) {
            // A verdict is a sentence, which its unit would cut off.
            line.formula(Looks.RESULT_WRAPPED, value, values.word(row));
        } else {
            line.formula(look, value, "");
        }
        line.text(Looks.UNIT, table.unit(symbol, row).isEmpty() ? "-" : table.unit(symbol, row));
        if (own) {
            ownUnit(line, page.next(), headline, plan.ownUnits().of(table, symbol, row));
        }
        line.linkTo(cell);
        // Last, where nothing to its right cuts a long sentence off.
        sentence(line, page, places, headline, inPlace, above);
        above.said("C" + page.next(), values.has(row));
    }

    /** The value beside it in the client's own unit, as live as that; empty cells where he measures as we do. */
    private static void ownUnit(
            PlainSheet.Line line, int number, Headlines.Headline headline, Optional<OwnUnit> wanted) {
        if (wanted.isEmpty()) {
            line.skip().skip();
            return;
        }
        Values values = headline.table().of(headline.formula().result());
        CardParts.own(line, wanted.get(), "C" + number, values, headline.row())
                .text(Looks.UNIT, wanted.get().unit().symbol());
    }

    /**
     * "ok", or the cautions that touch the row, or what it lacks; live like the value. Cautions are of the row and not of
     * one answer, so that they are said with the first that is given.
     */
    private static void sentence(
            PlainSheet.Line line,
            PlainSheet page,
            SheetPlaces places,
            Headlines.Headline headline,
            List<String> inPlace,
            RowAbove above) {
        ResultTable table = headline.table();
        int row = headline.row();
        String status = places.cell(table.spec(), TableSpec.STATUS, row).absolute();
        String given = "\"ok\"";
        String givenNow = "ok";
        if (table.spec().column(TableSpec.CAUTIONS).isPresent()) {
            String cautions = places.cell(table.spec(), TableSpec.CAUTIONS, row).absolute();
            String first = cautions;
            for (String cell : above.cells) {
                first = "IF(" + cell + "=\"\"," + first + ",\"" + AS_ABOVE + "\")";
            }
            given = "IF(" + cautions + "=\"\",\"ok\"," + first + ")";
            String now = table.of(TableSpec.CAUTIONS).word(row);
            givenNow = now.isEmpty() ? "ok" : above.given ? AS_ABOVE : now;
        }
        boolean has = table.of(headline.formula().result()).has(row);
        line.formula(
                Looks.SENTENCE_WRAPPED,
                RowMarks.whileInPlace(
                        inPlace,
                        "IF(C" + page.next() + "=\"\"," + status + "," + given + ")",
                        "\"" + RowMarks.MOVED_SENTENCE + "\""),
                has ? givenNow : table.of(TableSpec.STATUS).word(row));
    }
}
