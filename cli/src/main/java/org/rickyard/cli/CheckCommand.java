package org.rickyard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.rickyard.audit.Results;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks a workbook over and writes nothing to it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Looks a workbook over and writes nothing to it.",
            "",
            "Examples:",
            "  rickyard check farm.xlsx               what is missing, impossible or to be decided",
            "  rickyard check farm.xlsx --strict      for scripts: exit code 4 where results are withheld",
            "  rickyard check farm.xlsx --json -      results and findings as JSON",
            ""
        })
final class CheckCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "BOOK", description = "The workbook (.xlsx) with your lists.")
    private Path book;

    @Mixin
    private JsonOption json;

    @Option(names = "--strict", description = "End with exit code 4 where results are withheld.")
    private boolean strict;

    @Option(
            names = {"-q", "--quiet"},
            description = "Findings only: no messages unless something is in the way.")
    private boolean quiet;

    CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws RefusedException, IOException {
        if (quiet) {
            console.quieten();
        }
        Opening.refuseIfUnreadable(book);
        try (JsonOption.Output document = json.begin(console, book);
                BookPackage open = Opening.open(book)) {
            Recalculation run = Opening.reckon(book, open, RunOptions.usual(), console);
            if (Opening.nothingToDo(open, run, console)) {
                return Exit.REFUSED;
            }
            document.write(run);
            document.commit();
            findings(run.sheets().findings());
            long withheld = WithheldResults.of(run.plan()).count();
            long all = Results.count(run.plan());
            if (Opening.nothingYet(run, console)) {
                return Exit.DONE;
            }
            console.answers()
                    .println(all - withheld + " of " + all + (all == 1 ? " result" : " results") + " can be given, "
                            + withheld + " withheld.");
            console.flush();
            if (withheld > 0) {
                console.say("Filling in the cells named above brings the withheld results to life.");
            }
            return strict && withheld > 0 ? Exit.WITHHELD : Exit.DONE;
        }
    }

    private void findings(List<Finding> findings) {
        PrintWriter out = console.answers();
        for (Severity severity : Severity.values()) {
            List<Finding> those = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .toList();
            if (!those.isEmpty()) {
                out.println(heading(severity, those.size()));
                those.forEach(finding -> out.println("  " + Report.words(finding)));
            }
        }
    }

    private String heading(Severity severity, int count) {
        return switch (severity) {
            case STOP -> console.strong("STOP") + " (" + count + "): read these first";
            case CAUTION -> "Cautions (" + count + ")";
            case NOTE -> "Notes (" + count + ")";
        };
    }
}
