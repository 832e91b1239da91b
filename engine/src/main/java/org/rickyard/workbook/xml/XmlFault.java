package org.rickyard.workbook.xml;

/** Something that XML does not allow, and where. */
public final class XmlFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    XmlFault(int line, int column) {
        super("line " + line + ", column " + column);
        this.line = line;
        this.column = column;
    }

    /** The line, from 1. */
    public int line() {
        return line;
    }

    /** The column, from 1. */
    public int column() {
        return column;
    }
}
