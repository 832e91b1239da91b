package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Recalculates a workbook and writes the result sheets. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Recalculates a workbook and writes the result sheets.",
            "",
            "Examples:",
            "  rickyard run farm.xlsx                       in place; the former file stays as farm.before.xlsx",
            "  rickyard run farm.xlsx --to answers.xlsx     leave farm.xlsx as it is",
            "  rickyard run farm.xlsx --dry-run             say what would be done",
            "  rickyard run farm.xlsx --json results.json   for other programs, too",
            ""
        },
        description = {
            "",
            "Your own sheets are not touched. Where nothing would change, nothing is written.",
            "The answers that matter go to standard output, everything else to standard error."
        })
final class RunCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "BOOK", description = "The workbook (.xlsx) with your lists.")
    private Path book;

    @Mixin
    private GoalOption goalOption;

    @Option(
            names = {"-n", "--dry-run"},
            description = "Write nothing; say what would be done.")
    private boolean dryRun;

    @Mixin
    private JsonOption json;

    @Option(names = "--strict", description = "End with exit code 4 where results are withheld.")
    private boolean strict;

    @Option(
            names = "--trail-rows",
            paramLabel = "N",
            defaultValue = "" + RunOptions.USUAL_TRAIL_ROWS,
            description = {
                "Most results that get a line each on the sheet Trail; of more, each column gets one line.",
                "0 to 1000000; usually ${DEFAULT-VALUE}."
            })
    private long trailRows;

    @Option(
            names = "--all-sheets",
            description = {
                "Work out every sheet of a very large workbook too;",
                "usually beyond 20000 lines of work only the chief ones are."
            })
    private boolean allSheets;

    @Option(
            names = {"-q", "--quiet"},
            description = "Answers only: no messages unless something is in the way.")
    private boolean quiet;

    RunCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws RefusedException, IOException {
        if (quiet) {
            console.quieten();
        }
        checkUsage();
        RunOptions options =
                new RunOptions(trailRows, allSheets, RunOptions.usual().threads());
        Path goal = goalOption.of(book);
        return dryRun ? sayOnly(goal, options) : write(goal, options);
    }

    private void checkUsage() {
        if (trailRows < 0 || trailRows > RunOptions.MOST_TRAIL_ROWS) {
            throw new ParameterException(
                    spec.commandLine(), "--trail-rows takes a number from 0 to 1000000, not " + trailRows);
        }
        if (dryRun && json.toFile()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--dry-run writes no file; take --json - for standard output, or 'rickyard check' with --json");
        }
    }

    private int write(Path goal, RunOptions options) throws RefusedException, IOException {
        Opening.refuseIfUnreadable(book);
        try (JsonOption.Output document = json.begin(console, book, goal)) {
            Rewrite rewrite = Rewrite.of(book, goal, options, console, document::write);
            Recalculation run = rewrite.run();
            if (rewrite.done().isEmpty()) {
                Opening.sayNothingToDo(run, console);
                return Exit.REFUSED;
            }
            document.commit();
            Report report = new Report(console, run, goal);
            report.whole(rewrite.done().get().words());
            report.whereToLook();
            return strict && report.withheld() > 0 ? Exit.WITHHELD : Exit.DONE;
        }
    }

    private int sayOnly(Path goal, RunOptions options) throws RefusedException, IOException {
        try (BookPackage open = Opening.open(book);
                JsonOption.Output document = json.begin(console, book, goal)) {
            Recalculation run = Opening.reckon(book, open, options, console);
            if (Opening.nothingToDo(open, run, console)) {
                return Exit.REFUSED;
            }
            document.write(run);
            Report report = new Report(console, run, goal);
            report.whole(Written.planned(open, run, goal, report));
            return strict && report.withheld() > 0 ? Exit.WITHHELD : Exit.DONE;
        }
    }
}
