package org.rickyard.workbook.read;

import java.io.IOException;

/** A part of the workbook that cannot be read; its message says what is wrong and what to do, in whole sentences. */
public final class UnreadablePartException extends IOException {
    private static final String REMEDY =
            " Open the workbook in your spreadsheet program, save it as a normal .xlsx file and try again.";

    private final String part;

    UnreadablePartException(String part, String whatIsWrong, Throwable cause) {
        super(whatIsWrong + REMEDY, cause);
        this.part = part;
    }

    static UnreadablePartException doctype(String part) {
        return new UnreadablePartException(
                part,
                "The part " + part + " of this workbook holds a document type declaration (DOCTYPE), which no"
                        + " spreadsheet program writes and which can hide harmful content, so it is not read.",
                null);
    }

    static UnreadablePartException notXml(String part, int line, int column, Throwable cause) {
        String where = line > 0 ? " (line " + line + ", column " + column + ")" : "";
        return new UnreadablePartException(
                part,
                "The part " + part + " of this workbook is damaged: it cannot be read as XML" + where + ".",
                cause);
    }

    /** The part's name without leading slash. */
    public String part() {
        return part;
    }
}
