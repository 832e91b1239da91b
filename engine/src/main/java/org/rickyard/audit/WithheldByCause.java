package org.rickyard.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.ChiefTables;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn;

/**
 * One finding per cause that withholds results, over all sheets: a cell to be mended is named once, with all that hangs
 * on it, and not again for every sheet that reads it.
 */
final class WithheldByCause {
    private static final int MOST_CAUSES_OF_A_TABLE = 100;
    private static final int MOST_SHEETS_NAMED = 4;

    /** What a cause withholds. */
    private static final class Harm {
        private final Map<String, Integer> bySheet = new LinkedHashMap<>();
        /** What it is about, where no cell tells. */
        private final Set<String> things = new LinkedHashSet<>();

        private boolean grave;

        int results() {
            return bySheet.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    private final SheetPlaces places;
    private final Map<Cause, Harm> harms = new LinkedHashMap<>();
    private final List<Finding> tooMany = new ArrayList<>();
    private final Causes reasons = new Causes();

    private WithheldByCause(SheetPlaces places) {
        this.places = places;
    }

    /** The findings, in the order in which the causes are met. */
    static List<Finding> of(WorkPlan plan, SheetPlaces places) {
        WithheldByCause all = new WithheldByCause(places);
        plan.tables().forEach(all::read);
        List<Finding> findings = new ArrayList<>();
        all.harms.forEach((cause, harm) -> findings.add(
                new Finding(harm.grave ? Severity.CAUTION : Severity.NOTE, cause.cell(), sentence(cause, harm))));
        findings.addAll(all.tooMany);
        return findings;
    }

    private void read(ResultTable table) {
        String sheet = places.sheet(table.spec());
        // A gap in a sheet that goes further is no alarm: the client may never have meant to fill it.
        boolean chief = ChiefTables.contains(table.spec().id());
        int causes = 0;
        int more = 0;
        for (TableColumn column : Results.answers(table)) {
            Symbol symbol = column.symbol();
            for (int row = 0; row < table.rows(); row++) {
                if (!Results.isWithheld(table, column, row)) {
                    continue;
                }
                if (causes >= MOST_CAUSES_OF_A_TABLE) {
                    more++;
                    continue;
                }
                for (Cause cause : reasons.of(table, symbol, row)) {
                    Harm harm = harms.computeIfAbsent(cause.ofAll(), any -> new Harm());
                    cause.thing().ifPresent(harm.things::add);
                    causes += harm.bySheet.containsKey(sheet) ? 0 : 1;
                    harm.bySheet.merge(sheet, 1, Integer::sum);
                    harm.grave |= chief || !cause.isMissing();
                }
            }
        }
        if (more > 0) {
            tooMany.add(Finding.caution(
                    null,
                    Counted.more(more, "result") + " on '" + sheet + (more == 1 ? "' is" : "' are")
                            + " withheld for like reasons;" + " the Status column of each row says why."));
        }
    }

    private static String sentence(Cause cause, Harm harm) {
        String sheets = harm.bySheet.entrySet().stream()
                .limit(MOST_SHEETS_NAMED)
                .map(entry -> entry.getValue() + " on '" + entry.getKey() + "'")
                .collect(Collectors.joining(", "));
        int further = harm.bySheet.size() - MOST_SHEETS_NAMED;
        int results = harm.results();
        // "Type its field efficiency, so 61 results cannot be given" would say the opposite.
        String withheld = ThingNamed.with(cause.what(), harm.things) + (cause.asks() ? ". As it is, " : ", so ");
        if (harm.bySheet.size() == 1) {
            return withheld + (results == 1 ? "1 result" : results + " results") + " on '"
                    + harm.bySheet.keySet().iterator().next() + "' cannot be given.";
        }
        return withheld + (results == 1 ? "1 result" : results + " results") + " cannot be given: "
                + sheets
                + (further > 0 ? " and more on " + further + (further == 1 ? " other sheet" : " other sheets") : "")
                + ".";
    }
}
