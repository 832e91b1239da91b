package org.rickyard.cli;

import picocli.CommandLine.ExitCode;

/** What the exit codes mean. Scripts rely on them, so they never change. */
final class Exit {
    /** Done; withheld results are said on standard error. */
    static final int DONE = ExitCode.OK;
    /** A fault of the engine. */
    static final int FAULT = ExitCode.SOFTWARE;
    /** Wrong usage. */
    static final int USAGE = ExitCode.USAGE;
    /** The workbook cannot be used; nothing was written. */
    static final int REFUSED = 3;
    /** With --strict: done, but results were withheld. */
    static final int WITHHELD = 4;
    /** The output cannot be written. */
    static final int NOT_WRITTEN = 5;

    /** As the help of every command ends. */
    static final String[] WORDS = {
        "0:done; results that had to be withheld are said on standard error",
        "1:a fault of Rickyard itself",
        "2:wrong usage",
        "3:the workbook cannot be used; nothing was written",
        "4:with --strict: done, but results were withheld",
        "5:the output cannot be written"
    };

    private Exit() {}
}
