package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Recalculates every workbook of a folder, one after another; what keeps one back does not keep the others. */
@Command(
        name = "group",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Recalculates every workbook of a folder.",
            "",
            "Examples:",
            "  rickyard group clients                       each in place; its former file stays beside it",
            "  rickyard group clients --to answers          leave them as they are",
            "  rickyard group clients --dry-run             say what would be done",
            ""
        },
        description = {
            "",
            "Each workbook is treated as by 'rickyard run'. One that cannot be used is told and passed over,",
            "and so is one that holds no list. The exit code is the first of 1, 5, 3 and 4 that fits any of",
            "them, otherwise 0."
        })
final class GroupCommand implements Callable<Integer> {
    private static final String UP_TO_DATE = "up to date";

    private final Console console;
    private final Failures failures;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "DIR", description = "The folder with the workbooks (.xlsx, .xlsm).")
    private Path folder;

    @Option(
            names = "--to",
            paramLabel = "DIR",
            description = "Write the workbooks with their results into this folder instead.")
    private Path to;

    @Option(names = "--subfolders", description = "Take in the workbooks of its subfolders too.")
    private boolean subfolders;

    @Option(
            names = {"-n", "--dry-run"},
            description = "Write nothing; say what would be done.")
    private boolean dryRun;

    @Option(names = "--strict", description = "End with exit code 4 where results are withheld.")
    private boolean strict;

    @Option(
            names = {"-q", "--quiet"},
            description = "A line for each workbook: no messages unless something is in the way.")
    private boolean quiet;

    GroupCommand(Console console, Failures failures) {
        this.console = console;
        this.failures = failures;
    }

    @Override
    public Integer call() throws IOException {
        if (quiet) {
            console.quieten();
        }
        checkFolders();
        GroupFolder group = GroupFolder.of(folder, subfolders, to);
        GroupReport report = new GroupReport(console, group);
        for (Path book : group.workbooks()) {
            report.took(book, reckoned(group, book, report));
        }
        report.end();
        return report.exitCode(strict);
    }

    private void checkFolders() {
        if (!Files.isDirectory(folder)) {
            throw new ParameterException(
                    spec.commandLine(),
                    Files.exists(folder)
                            ? "'" + folder + "' is a file; 'rickyard run' recalculates a single workbook"
                            : "There is no folder '" + folder + "'");
        }
        if (to != null && OutputFile.same(folder, to)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--to names the folder itself; leave --to out to write in place, or name another folder");
        }
        if (to != null && !Files.isDirectory(to)) {
            throw new ParameterException(
                    spec.commandLine(),
                    Files.exists(to)
                            ? "'" + to + "' is a file; --to names the folder to write to"
                            : "There is no folder '" + to + "' to write to; make it, or name another");
        }
    }

    /** Recalculates one workbook; the exit code that it would have by itself. */
    private int reckoned(GroupFolder group, Path book, GroupReport report) {
        return failures.withstand(
                () -> {
                    Opening.refuseIfUnreadable(book);
                    return dryRun ? looked(group, book, report) : written(group, book, report);
                },
                // What keeps a workbook back may name its file alone, and many folders may hold one of that name.
                () -> console.insist(group.name(book) + ":"));
    }

    private int looked(GroupFolder group, Path book, GroupReport report) throws RefusedException, IOException {
        try (BookPackage open = Opening.open(book)) {
            Recalculation run = Opening.reckon(book, open, RunOptions.usual(), console);
            if (Opening.holdsNothing(open, run)) {
                report.noList();
            } else {
                boolean done = HeldAgainst.upToDate(run, goal(group, book));
                report.results(done ? UP_TO_DATE : "would be worked out", run);
            }
            return Exit.DONE;
        }
    }

    private int written(GroupFolder group, Path book, GroupReport report) throws RefusedException, IOException {
        Path goal = goal(group, book);
        Rewrite rewrite = Rewrite.of(book, to == null ? goal : folderOf(goal), RunOptions.usual(), console, run -> {});
        if (rewrite.done().isEmpty()) {
            report.noList();
        } else {
            report.results(rewrite.done().get().outcome().written() ? "written" : UP_TO_DATE, rewrite.run());
        }
        return Exit.DONE;
    }

    private Path goal(GroupFolder group, Path book) {
        return to == null ? book : to.resolve(group.within(book));
    }

    /** A file's folder is made where subfolders are taken in. */
    private static Path folderOf(Path file) throws OutputException {
        try {
            Files.createDirectories(file.getParent());
        } catch (IOException failed) {
            throw OutputException.of(file.getParent(), failed);
        }
        return file;
    }
}
