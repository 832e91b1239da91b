package org.rickyard.workbook.open;

/** A part is not well-formed; the message is a clause that says how. */
class MalformedMarkupException extends Exception {
    private static final long serialVersionUID = 1L;

    MalformedMarkupException(String message) {
        super(message);
    }
}
