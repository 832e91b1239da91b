package org.rickyard.workbook.read;

import java.io.IOException;

/** A part of the workbook that cannot be read; its message says what is wrong and what to do, in whole sentences. */
public final class UnreadablePartException extends IOException {
    private static final String REMEDY =
            " Open the workbook in your spreadsheet program, save it as a normal .xlsx file and try again.";

    UnreadablePartException(String whatIsWrong, Throwable cause) {
        super(whatIsWrong + REMEDY, cause);
    }
}
