package org.rickyard.workbook.open;

/**
 * A workbook that cannot be used as it is. The message is a whole sentence for the adviser: which file, what is in the
 * way, and what to do instead. Nothing has been written when this is thrown.
 */
public final class RefusedException extends Exception {
    private static final long serialVersionUID = 1L;

    /** Why a workbook is refused; each carries its wording. */
    public enum Reason {
        /** Nothing there, or a folder. */
        NOT_A_FILE("is not a file that can be opened", "Check the path and the name"),
        /** A folder. */
        FOLDER("is a folder", "Name one workbook in it"),
        /** Not a single byte. */
        EMPTY("is an empty file", "It was not saved or not copied whole: look for another copy of it"),
        /** Some other kind of file. */
        NOT_A_WORKBOOK("is not an .xlsx workbook", "Open it in your spreadsheet program and save it as .xlsx"),
        /** Needs a password to open. */
        ENCRYPTED(
                "is protected by a password, so it cannot be read",
                "Remove the password in your spreadsheet program, save the file and try again"),
        /** The binary format of 1997 to 2003. */
        OLD_FORMAT(
                "is an old .xls workbook, whatever its ending says",
                "Open it in your spreadsheet program and save it as .xlsx"),
        /** .xlsb. */
        BINARY("is a binary workbook (.xlsb)", "Open it in your spreadsheet program and save it as .xlsx"),
        /** .ods and its kin. */
        OPEN_DOCUMENT("is an OpenDocument file (.ods)", "Open it in your spreadsheet program and save it as .xlsx"),
        /** The ISO Strict variant. */
        STRICT(
                "is saved as \"Strict Open XML\", which few programs can extend safely",
                "Save it as an ordinary \"Excel workbook (.xlsx)\" and try again"),
        /** Digitally signed. */
        SIGNED(
                "carries a digital signature, which any added sheet would break",
                "Work on a copy from which the signature has been removed"),
        /** Sheets may not be added. */
        LOCKED_STRUCTURE(
                "has its structure protected, so no sheets may be added",
                "Ask its owner to lift \"Protect workbook\", or work on a copy without it"),
        /** Legacy shared workbook with a change log. */
        SHARED(
                "is a shared workbook of the old kind, which keeps a log of changes",
                "Stop sharing it in your spreadsheet program, save it and try again"),
        /** Two entries with one name. */
        DUPLICATE_ENTRIES(
                "holds two parts with the same name, so it is not clear which one counts",
                "Open it in your spreadsheet program, check it and save it anew"),
        /** A document type declaration, which no spreadsheet program writes. */
        DOCTYPE(
                "holds a document type declaration, which no spreadsheet program writes"
                        + " and which can be used to attack",
                "Do not trust this file until you know who made it; save a trusted copy anew"),
        /** Over a cap. */
        TOO_LARGE("is larger than can be read safely", "Split it into smaller workbooks"),
        /** Broken zip or XML. */
        DAMAGED(
                "is damaged or incomplete",
                "Open it in your spreadsheet program, let it repair the file, check it and save it anew"),
        /** No sheet in it. */
        NO_SHEETS("holds no sheets", "Add a sheet with your lists and try again"),
        /** A limit of the file format is reached. */
        FORMAT_LIMIT(
                "has reached a limit of the .xlsx format, so nothing can be added to it",
                "Copy the lists into a new workbook and try again"),
        /** More rows of results than a sheet has. */
        TOO_MANY_ROWS(
                "leads to more rows of results than a sheet can hold",
                "Split it into smaller workbooks, one for each holding for instance"),
        /** A workbook name that we need belongs to the client. */
        NAME_TAKEN(
                "already uses a defined name that the result sheets need",
                "Rename it in the name manager of your spreadsheet program and try again");

        private final String what;
        private final String remedy;

        Reason(String what, String remedy) {
            this.what = what;
            this.remedy = remedy;
        }
    }

    private final Reason reason;

    /**
     * @param reason why
     * @param workbook the name to show for the file
     */
    public RefusedException(Reason reason, String workbook) {
        super("\"" + workbook + "\" " + reason.what + ". " + reason.remedy + ".");
        this.reason = reason;
    }

    /**
     * @param reason why
     * @param workbook the name to show for the file
     * @param detail what exactly was found, a clause without full stop
     */
    public RefusedException(Reason reason, String workbook, String detail) {
        super("\"" + workbook + "\" " + reason.what + " (" + detail + "). " + reason.remedy + ".");
        this.reason = reason;
    }

    /** The refusal of a part with a document type declaration; readers of sheets use it too. */
    public static RefusedException doctype(String workbook, String part) {
        return new RefusedException(Reason.DOCTYPE, workbook, "in its part " + part);
    }

    /** The refusal of a part that is not well-formed. */
    public static RefusedException damaged(String workbook, String part, String what) {
        return new RefusedException(Reason.DAMAGED, workbook, part + ": " + what);
    }

    /** Why. */
    public Reason reason() {
        return reason;
    }
}
