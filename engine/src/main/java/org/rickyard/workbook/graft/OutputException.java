package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The result cannot be written. The message is a whole sentence for the adviser; the former file is whole, and nothing
 * half-written is left beside it.
 */
public final class OutputException extends IOException {
    private static final long serialVersionUID = 1L;

    /** Why it cannot be written; each carries its wording. */
    public enum Reason {
        /** No room. */
        DISK_FULL("there is no room left on the disk. Free some space and run again"),
        /** The file or its file system may only be read. */
        READ_ONLY("it may only be read. Clear its read-only mark or write to another file"),
        /** The folder may not be written to. */
        NO_PERMISSION("you are not allowed to write there. Choose another folder or ask its owner"),
        /** A symbolic link to nothing that could be made. */
        LOST_LINK("it is a link that leads nowhere. Remove the link or write to another file"),
        /** A pipe or a device. */
        NO_FILE("it is a pipe or a device and no file, so no file may take its place. Write to another file"),
        /** An office program has it open. */
        HELD("a spreadsheet program has it open. Close it there and run again"),
        /** Another run works on it. */
        ALREADY_RUNNING("another run is working on it. Wait until it is done and run again"),
        /** The file is no longer the one that was read. */
        CHANGED_MEANWHILE("it was changed while it was being read. Run again to work from its new content"),
        /** The file it is made from is no longer the one that was read. */
        SOURCE_CHANGED("the workbook was changed while it was being read. Run again to work from its new content"),
        /** Over the limits of the format. */
        TOO_LARGE("it would be larger than 4 GB, which office programs cannot open. Split the lists"),
        /** A check of the written file failed. */
        NOT_AS_WRITTEN("the written file did not pass its check. Nothing was replaced; please report this"),
        /** Anything else. */
        FAILED("the file could not be written");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }

        /** What is the matter, without what to do about it. */
        private String fact() {
            int end = sentence.indexOf(". ");
            return end < 0 ? sentence : sentence.substring(0, end);
        }
    }

    private final String what;
    private final Reason reason;
    private final String detail;

    /** @param what the file or part that cannot be written */
    public OutputException(Reason reason, String what) {
        this(reason, what, null, null);
    }

    private OutputException(Reason reason, String what, String detail, IOException cause) {
        super(notWritten(what) + reason.sentence + inBrackets(detail) + ".", cause);
        this.what = what;
        this.reason = reason;
        this.detail = detail;
    }

    private static String notWritten(String what) {
        return "\"" + what + "\" was not written: ";
    }

    private static String inBrackets(String detail) {
        return detail == null ? "" : " (" + detail + ")";
    }

    /** With what was found, a clause without full stop. */
    static OutputException withDetail(Reason reason, String what, String detail) {
        return new OutputException(reason, what, detail, null);
    }

    /** Puts a failure of the file system into words. */
    public static OutputException of(Path file, IOException cause) {
        if (cause instanceof OutputException already) {
            return already;
        }
        String name = String.valueOf(file.getFileName());
        String text = cause instanceof FileSystemException failure && failure.getReason() != null
                ? failure.getReason()
                : String.valueOf(cause.getMessage());
        Reason reason = reason(cause, text.toLowerCase(Locale.ROOT));
        if (reason == Reason.FAILED) {
            return new OutputException(reason, name, text, cause);
        }
        return new OutputException(reason, name, null, cause);
    }

    private static Reason reason(IOException cause, String text) {
        if (text.contains("read-only file system")) {
            return Reason.READ_ONLY;
        }
        if (text.contains("no space left") || text.contains("not enough space") || text.contains("quota exceeded")) {
            return Reason.DISK_FULL;
        }
        boolean denied = cause instanceof AccessDeniedException
                || text.contains("permission denied")
                || text.contains("operation not permitted");
        return denied ? Reason.NO_PERMISSION : Reason.FAILED;
    }

    /** The same of the file that was to be written in the end, where this names one half-way there. */
    public OutputException of(Path file) {
        return new OutputException(reason, String.valueOf(file.getFileName()), detail, this);
    }

    /** The message for whoever need not do what it says, because something else is done of itself. */
    public String messageWith(String instead) {
        return notWritten(what) + reason.fact() + ". " + instead + inBrackets(detail) + ".";
    }

    /** Why. */
    public Reason reason() {
        return reason;
    }
}
