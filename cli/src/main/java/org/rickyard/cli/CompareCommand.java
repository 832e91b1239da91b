package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rickyard.audit.Comparison;
import org.rickyard.lists.ListChanges;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what is not the same in two workbooks. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Shows what is not the same in two workbooks: what was typed otherwise, and which answers differ.",
            "",
            "Examples:",
            "  rickyard compare farm.before.xlsx farm.xlsx   what changed since the last run",
            "  rickyard compare farm-2026.xlsx farm.xlsx     last year's workbook and this one's",
            "  rickyard compare farm.xlsx plan.xlsx --all    every result that differs, not the main ones alone",
            ""
        },
        description = {
            "",
            "Both workbooks are read and worked out anew, so what differs is what was typed and not the version that"
                    + " wrote them; nothing is written. Rows belong together that bear the same names. The cells named are those"
                    + " of AFTER, or of BEFORE for what AFTER lacks."
        })
final class CompareCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "BEFORE", description = "The workbook (.xlsx) to compare with.")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "The workbook (.xlsx) that is compared.")
    private Path after;

    @Option(names = "--all", description = "Every row and result that differs, not the main ones and first rows alone.")
    private boolean all;

    CompareCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws RefusedException, IOException {
        Opening.refuseIfUnreadable(before);
        Opening.refuseIfUnreadable(after);
        try (BookPackage openBefore = Opening.open(before);
                BookPackage openAfter = Opening.open(after)) {
            Recalculation runBefore = Opening.reckon(before, openBefore, RunOptions.usual(), console);
            Recalculation runAfter = Opening.reckon(after, openAfter, RunOptions.usual(), console);
            if (Opening.nothingToDo(openBefore, runBefore, console)
                    || Opening.nothingToDo(openAfter, runAfter, console)) {
                return Exit.REFUSED;
            }
            ComparisonLines.of(
                            ListChanges.of(
                                    runBefore.plan().lists(), runAfter.plan().lists()),
                            Comparison.of(
                                    runBefore.sheets().results(),
                                    runAfter.sheets().results()),
                            runBefore.sheets().findings(),
                            runAfter.sheets().findings(),
                            all)
                    .forEach(console.answers()::println);
            console.flush();
            console.say(Report.NO_CLEARANCE);
            return Exit.DONE;
        }
    }
}
