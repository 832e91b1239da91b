package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.audit.Results;
import org.rickyard.run.Recalculation;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.SafeReplacement;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;

/**
 * Which sheets were written.
 *
 * @param added sheets that the workbook did not have
 * @param replaced sheets of ours that it had
 */
record Written(List<String> added, List<String> replaced) {
    /** Sheets that a message names; a farm with every list has sixty. */
    private static final int MOST_NAMED = 12;

    private static final String DRY = "Dry run: nothing was written. ";

    static Written of(BookPackage source, GraftReport report) {
        int before = source.sheets().size();
        List<String> added = new ArrayList<>();
        List<String> replaced = new ArrayList<>();
        for (GraftReport.PlacedSheet sheet : report.sheets()) {
            (sheet.position() < before ? replaced : added).add(sheet.name());
        }
        return new Written(added, replaced);
    }

    /** What was done, and where the former file is. */
    String words(Path target, SafeReplacement.Outcome outcome) {
        String name = String.valueOf(target.getFileName());
        if (!outcome.written()) {
            return upToDate(target) + ", so nothing was written.";
        }
        String sheets = listed("added", added) + listed("replaced", replaced);
        String former = outcome.former()
                .map(kept -> " The former file is kept as " + kept.getFileName() + ".")
                .orElse("");
        return "Wrote " + name + "." + sheets + former;
    }

    private static String upToDate(Path target) {
        return target.getFileName() + " is up to date: nothing would change";
    }

    /** What would be done. */
    static String planned(BookPackage source, Recalculation run, Path goal, Report report)
            throws RefusedException, IOException {
        if (HeldAgainst.upToDate(run, goal)) {
            return DRY + upToDate(goal) + ".";
        }
        Set<String> there = new HashSet<>();
        source.sheets().stream().map(SheetRef::name).forEach(there::add);
        List<String> added = new ArrayList<>();
        List<String> replaced = new ArrayList<>();
        run.sheetNames().forEach(name -> (there.contains(name) ? replaced : added).add(name));
        long results = Results.count(run.plan());
        return DRY + goal.getFileName() + " would be written with " + results
                + (results == 1 ? " result" : " results") + ", " + report.withheld() + " of them withheld."
                + listed("to add", added) + listed("to replace where they differ", replaced);
    }

    private static String listed(String what, List<String> sheets) {
        String names = String.join(", ", sheets.subList(0, Math.min(MOST_NAMED, sheets.size())));
        int more = sheets.size() - MOST_NAMED;
        return sheets.isEmpty()
                ? ""
                : "\n  " + (sheets.size() == 1 ? "Sheet " : "Sheets ") + what + ": " + names
                        + (more > 0 ? " and " + more + " more; Summary names them all." : ".");
    }
}
