package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.rickyard.audit.Results;
import org.rickyard.lists.Finding;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.graft.Verification;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.RefusedException.Reason;
import org.rickyard.workbook.read.UnreadablePartException;

/** Opens workbooks; whatever keeps one from being read becomes a refusal. */
final class Opening {
    /** From this size on one may have to wait, and is told for what. */
    private static final long LARGE = 4L << 20;

    private static final String NOT_ALLOWED = "you are not allowed to read it";

    private Opening() {}

    static BookPackage open(Path book) throws RefusedException, IOException {
        try {
            return BookPackage.open(book);
        } catch (IOException failed) {
            throw refusal(book, failed);
        }
    }

    /** Reads and reckons an open workbook. */
    static Recalculation reckon(Path book, BookPackage open, RunOptions options, Console console)
            throws RefusedException, UnreadablePartException {
        try {
            if (large(book)) {
                console.say("Reading " + book.getFileName() + " and working it out ...");
            }
            return Recalculation.of(open, options);
        } catch (UnreadablePartException clear) {
            throw clear;
        } catch (IOException failed) {
            throw refusal(book, failed);
        }
    }

    /** A workbook that is not there or cannot be read is refused before anything is prepared beside it. */
    static void refuseIfUnreadable(Path book) throws RefusedException {
        String name = String.valueOf(book.getFileName());
        if (Files.isDirectory(book)) {
            throw new RefusedException(Reason.FOLDER, name);
        }
        if (!Files.isRegularFile(book)) {
            throw new RefusedException(Reason.NOT_A_FILE, name);
        }
        if (!Files.isReadable(book)) {
            throw new RefusedException(Reason.NOT_A_FILE, name, NOT_ALLOWED);
        }
    }

    /** Whether no list was found in a workbook that never held results; sheets without any answer would be litter. */
    static boolean holdsNothing(BookPackage open, Recalculation run) {
        return run.plan().lists().places().isEmpty() && !Recalculation.holdsOurSheets(open);
    }

    /** Whether it {@link #holdsNothing}, which is said. */
    static boolean nothingToDo(BookPackage open, Recalculation run, Console console) {
        boolean nothing = holdsNothing(open, run);
        if (nothing) {
            sayNothingToDo(run, console);
        }
        return nothing;
    }

    /** Says that a workbook {@link #holdsNothing}. */
    static void sayNothingToDo(Recalculation run, Console console) {
        console.insist(
                "\"" + run.workbook() + "\" holds no list that can be read: no sheet has headers such as Field and"
                        + " Area, or Machine and Type. Nothing was written.");
        run.sheets().findings().stream()
                .filter(finding -> finding.severity() != Finding.Severity.NOTE)
                .limit(5)
                .forEach(finding -> console.insist("  " + Report.words(finding)));
        console.insist("'rickyard new lists.xlsx' makes a workbook with every list and its headers.");
    }

    /** Says so where lists were found and nothing in them can be worked out, as in a workbook that was just made. */
    static boolean nothingYet(Recalculation run, Console console) {
        if (Results.count(run.plan()) > 0) {
            return false;
        }
        console.insist("There are no results yet: the lists that were found hold no rows that can be worked out. Fields"
                + " and machines alone are enough for first answers.");
        return true;
    }

    static boolean large(Path book) throws IOException {
        return Files.size(book) > LARGE;
    }

    /** Whether a file is a workbook that already holds sheets of ours, so that it is nobody's only original. */
    static boolean holdsOurSheets(Path file) {
        return holdsOurSheets(file, false);
    }

    /** Whether a file {@link #holdsOurSheets} and nothing that was typed into it since: a run would bring it all again. */
    static boolean isAsWritten(Path file) {
        return holdsOurSheets(file, true);
    }

    private static boolean holdsOurSheets(Path file, boolean asWritten) {
        try (BookPackage book = BookPackage.open(file)) {
            return Recalculation.holdsOurSheets(book) && (!asWritten || Verification.isAsWritten(book));
        } catch (RefusedException | IOException unreadable) {
            return false;
        }
    }

    private static RefusedException refusal(Path book, IOException failed) {
        String name = String.valueOf(book.getFileName());
        RefusedException refused = failed instanceof AccessDeniedException
                ? new RefusedException(Reason.NOT_A_FILE, name, NOT_ALLOWED)
                : new RefusedException(Reason.DAMAGED, name, String.valueOf(failed.getMessage()));
        refused.initCause(failed);
        return refused;
    }
}
