package org.rickyard.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.read.UnreadablePartException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Puts what went wrong into a sentence and an exit code. Nobody is shown where in the program it was unless asked. */
record Failures(Console console, BooleanSupplier debug) implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failed, CommandLine command, ParseResult parsed) {
        return told(failed);
    }

    /**
     * Does a piece of work after which others follow, whatever becomes of it. What keeps it from its end is told.
     *
     * @param first what is to be said before that
     * @return the exit code of the work, or the one that its failure would have by itself
     */
    int withstand(Callable<Integer> work, Runnable first) {
        try {
            return work.call();
        } catch (OutOfMemoryError full) {
            first.run();
            return tooLittleMemory();
        } catch (StackOverflowError fault) {
            first.run();
            return fault(fault);
        } catch (Exception failed) {
            first.run();
            return told(failed);
        }
    }

    /** Says what keeps a workbook from being used or written; the exit code it has. */
    int told(Exception failed) {
        if (failed instanceof RefusedException || failed instanceof UnreadablePartException) {
            return said(failed, Exit.REFUSED);
        } else if (failed instanceof OutputException) {
            return said(failed, Exit.NOT_WRITTEN);
        }
        return fault(failed);
    }

    private int said(Exception failed, int code) {
        console.insist(failed.getMessage());
        trace(failed);
        return code;
    }

    /** The exit code of a command that is over, unless its answers did not get through, which is said. */
    int unlessLost(int code) {
        console.flush();
        boolean told = code != Exit.DONE && code != Exit.WITHHELD;
        return told
                ? code
                : console.lost()
                        .map(lost -> told(OutputException.of(Path.of("standard output"), lost)))
                        .orElse(code);
    }

    /** What should not have happened. */
    int fault(Throwable failed) {
        console.insist("Sorry, something went wrong inside Rickyard; your workbook is as it was."
                + (debug.getAsBoolean() ? "" : " Run again with --debug and report what it shows."));
        trace(failed);
        return Exit.FAULT;
    }

    /** What asks for more than the virtual machine was given. */
    int tooLittleMemory() {
        console.insist("This workbook needs more memory than Java was given."
                + " Run again with more: java -Xmx2g -jar rickyard.jar ...");
        return Exit.FAULT;
    }

    private void trace(Throwable failed) {
        if (debug.getAsBoolean()) {
            failed.printStackTrace(console.err());
            console.err().flush();
        }
    }
}
