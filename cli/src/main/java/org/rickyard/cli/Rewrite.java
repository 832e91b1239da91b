package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.graft.SafeReplacement;
import org.rickyard.workbook.graft.Verification;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/**
 * A workbook that was recalculated and, if it holds any list, put in its place.
 *
 * @param run what was worked out
 * @param done what became of the file; empty where the workbook holds no list, so that nothing was written
 */
record Rewrite(Recalculation run, Optional<Done> done) {
    /**
     * What became of the file.
     *
     * @param written the sheets that were written
     * @param target the file that holds them
     * @param outcome whether it was replaced, and where the former file is
     */
    record Done(Written written, Path target, SafeReplacement.Outcome outcome) {
        /** The same in words. */
        String words() {
            return written.words(target, outcome);
        }
    }

    /** What else is to be done with the results before anything is put in place. */
    @FunctionalInterface
    interface Alongside {
        void take(Recalculation run) throws OutputException;
    }

    /**
     * Recalculates a workbook.
     *
     * @param book one that {@link Opening#refuseIfUnreadable} has let pass, before anything was prepared beside it
     * @param goal the workbook itself, or the file that is to hold its results
     */
    static Rewrite of(Path book, Path goal, RunOptions options, Console console, Alongside alongside)
            throws RefusedException, IOException {
        try (SafeReplacement replacement = OutputFile.begin(goal)) {
            if (!goal.equals(book)) {
                replacement.madeFrom(book);
            }
            Recalculation run;
            Written written;
            try (BookPackage open = Opening.open(book)) {
                run = Opening.reckon(book, open, options, console);
                if (Opening.holdsNothing(open, run)) {
                    return new Rewrite(run, Optional.empty());
                }
                written = Written.of(open, graft(book, run, open, replacement, console));
                alongside.take(run);
            }
            // In place, what was typed is carried on; into another file, nothing of what that held is.
            SafeReplacement.Outcome outcome =
                    replacement.commit(goal.equals(book) ? Opening::holdsOurSheets : Opening::isAsWritten);
            return new Rewrite(run, Optional.of(new Done(written, replacement.target(), outcome)));
        }
    }

    private static GraftReport graft(
            Path book, Recalculation run, BookPackage open, SafeReplacement replacement, Console console)
            throws RefusedException, OutputException {
        try {
            if (Opening.large(book)) {
                console.say("Writing the result sheets ...");
            }
            GraftReport report = run.write(replacement.temporary());
            Verification.check(open, replacement.temporary(), report);
            return report;
        } catch (IOException failed) {
            throw OutputException.of(replacement.temporary(), failed).of(replacement.target());
        }
    }
}
