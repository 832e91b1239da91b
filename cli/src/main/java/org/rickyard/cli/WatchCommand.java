package org.rickyard.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Recalculates a workbook each time it is saved. */
@Command(
        name = "watch",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Recalculates a workbook each time it is saved.",
            "",
            "Examples:",
            "  rickyard watch farm.xlsx                       in place, when it is closed",
            "  rickyard watch farm.xlsx --to answers.xlsx     while farm.xlsx is open and being typed into",
            ""
        },
        description = {
            "",
            "Each time it is treated as by 'rickyard run'. While a spreadsheet program has the file open that is",
            "to be written, answers are only told; it is written when it is closed there. Ctrl+C ends it."
        })
final class WatchCommand implements Callable<Integer> {
    private final Console console;
    private final Failures failures;
    private final Pace pace;

    @Parameters(index = "0", paramLabel = "BOOK", description = "The workbook (.xlsx) with your lists.")
    private Path book;

    @Mixin
    private GoalOption goal;

    @Option(
            names = {"-q", "--quiet"},
            description = "Answers only: no messages unless something is in the way.")
    private boolean quiet;

    WatchCommand(Console console, Failures failures, Pace pace) {
        this.console = console;
        this.failures = failures;
        this.pace = pace;
    }

    @Override
    public Integer call() throws RefusedException, InterruptedException {
        if (quiet) {
            console.quieten();
        }
        Path file = goal.of(book);
        Opening.refuseIfUnreadable(book);
        console.say(
                "Watching \"" + book.getFileName() + "\": it is recalculated each time it is saved. Ctrl+C ends it.");
        new Watching(book, file, console, failures).goOn(pace);
        return Exit.DONE;
    }
}
