package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.graft.SafeReplacement;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/**
 * Recalculates a workbook each time it is saved. A file that a spreadsheet program has open is not written, for that
 * program would not see it and would in the end put its own copy over it: till it is closed there, the answers are only
 * told.
 */
final class Watching {
    private final Path book;
    private final Path goal;
    private final Console console;
    private final Failures failures;
    /** Whether the workbook has been saved and not been written since, because its goal is open or others work on it. */
    private boolean owed;
    /** What was last said to keep it from being written, so that it is not said again at each look. */
    private String told = "";
    /** Whether the workbook was written in place, so that its next change may be our own. */
    private boolean wrote;

    Watching(Path book, Path goal, Console console, Failures failures) {
        this.book = book;
        this.goal = goal;
        this.console = console;
        this.failures = failures;
    }

    /** Works it out at once, and then whenever it was saved. */
    void goOn(Pace pace) throws InterruptedException {
        Optional<Saved> before = Saved.of(book);
        Optional<Saved> done = Optional.empty();
        boolean missed = false;
        do {
            Optional<Saved> now = Saved.of(book);
            if (now.isEmpty() && before.isEmpty() && !missed) {
                console.insist(name(book) + " is not there any more. It is waited for.");
                missed = true;
            }
            // A program may still be writing: what has not changed from one look to the next is whole.
            if (now.isPresent() && now.equals(before)) {
                missed = false;
                boolean saved = !now.equals(done) && !isOurOwn();
                if (saved && done.isPresent()) {
                    console.say("\n" + name(book) + " was saved.");
                }
                if (saved || owed && mark().isEmpty()) {
                    failures.withstand(() -> round(saved), () -> {});
                }
                done = now;
            }
            before = now;
        } while (pace.next());
    }

    /** Whether the workbook has changed only because we have written it. */
    private boolean isOurOwn() {
        boolean own = wrote && Opening.isAsWritten(book);
        wrote = false;
        return own;
    }

    /** The mark beside a file that is open elsewhere; whatever else is the matter with it, a round says. */
    private Optional<String> mark() {
        try {
            return SafeReplacement.heldBy(goal);
        } catch (OutputException unusable) {
            return Optional.empty();
        }
    }

    private int round(boolean saved) throws RefusedException, IOException {
        told = saved ? "" : told;
        Optional<String> mark = mark();
        owed = mark.isPresent();
        Opening.refuseIfUnreadable(book);
        if (owed) {
            look(mark.get());
        } else {
            write();
        }
        return Exit.DONE;
    }

    private void look(String mark) throws RefusedException, IOException {
        try (BookPackage open = Opening.open(book)) {
            Recalculation run = Opening.reckon(book, open, RunOptions.usual(), console);
            if (!Opening.nothingToDo(open, run, console)) {
                new Report(console, run, goal)
                        .whole(name(goal) + " is open in a spreadsheet program and will be written when it is closed"
                                + " there (if none has it open any more, delete \"" + mark + "\" beside it).");
            }
        }
    }

    private void write() throws RefusedException, IOException {
        Rewrite rewrite;
        try {
            rewrite = Rewrite.of(book, goal, RunOptions.usual(), console, run -> {});
        } catch (OutputException failed) {
            notWritten(failed);
            return;
        }
        told = "";
        if (rewrite.done().isEmpty()) {
            Opening.sayNothingToDo(rewrite.run(), console);
            return;
        }
        Rewrite.Done done = rewrite.done().get();
        wrote = done.outcome().written() && goal.equals(book);
        if (done.outcome().written()) {
            new Report(console, rewrite.run(), goal).whole(done.words());
        } else {
            console.say(done.words());
        }
    }

    /** Whoever watches has it run again of itself: nobody need do so, but know when that is. */
    private void notWritten(OutputException failed) {
        switch (failed.reason()) {
            // It was opened while it was worked out.
            case HELD -> waitFor(failed, "It will be written when it is closed there");
            case ALREADY_RUNNING -> waitFor(failed, "It is tried again when that is done");
            case CHANGED_MEANWHILE, SOURCE_CHANGED -> waitFor(failed, "It is worked out again");
            default -> {
                failures.told(failed);
                console.insist("It is tried again when " + name(book) + " is saved next.");
            }
        }
    }

    private void waitFor(OutputException failed, String until) {
        owed = true;
        String now = failed.messageWith(until);
        if (!now.equals(told)) {
            console.insist(now);
        }
        told = now;
    }

    private static String name(Path file) {
        return "\"" + file.getFileName() + "\"";
    }
}
