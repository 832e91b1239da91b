package org.rickyard.workbook.open;

/**
 * How large a package may be before it is refused. Checked against the zip's directory before anything is inflated,
 * and again while inflating, because a directory can lie.
 *
 * @param fileBytes of the file itself
 * @param entries number of zip entries
 * @param entryBytes inflated size of one entry
 * @param totalBytes inflated size of all entries
 * @param ratio inflated size over packed size; only applied to entries above {@code ratioFrom}
 * @param ratioFrom bytes from which the ratio counts: long columns of like cells pack well above 100
 * @param markupBytes inflated size of a part that is held in memory whole (workbook, styles, links)
 */
public record PackageCaps(
        long fileBytes, int entries, long entryBytes, long totalBytes, long ratio, long ratioFrom, long markupBytes) {
    private static final long MIB = 1L << 20;
    private static final long GIB = 1L << 30;

    /** Lets through any workbook that a spreadsheet program could open; all sizes stay within plain zip, not zip64. */
    public static final PackageCaps DEFAULT =
            new PackageCaps(4 * GIB - 1, 20_000, 4 * GIB - 1, 16 * GIB, 400, 512 * MIB, 64 * MIB);
}
