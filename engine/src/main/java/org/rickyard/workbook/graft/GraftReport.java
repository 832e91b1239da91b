package org.rickyard.workbook.graft;

import java.util.List;
import java.util.Set;

/**
 * What a graft has done.
 *
 * @param sheets our sheets, replaced ones first, then new ones in the order of the plan
 * @param edited parts of the client's that were changed by insertion
 * @param written parts that are ours altogether
 * @param removed parts that were left out: those only our former sheets needed, and a chain of calculation naming them
 * @param bytes size of the file written
 */
public record GraftReport(
        List<PlacedSheet> sheets, Set<String> edited, Set<String> written, Set<String> removed, long bytes) {
    /**
     * Where a sheet of ours stands.
     *
     * @param name its name
     * @param position zero-based position among all sheets
     * @param sheetId its sheetId
     * @param part its part
     */
    public record PlacedSheet(String name, int position, int sheetId, String part) {}

    public GraftReport {
        sheets = List.copyOf(sheets);
        edited = Set.copyOf(edited);
        written = Set.copyOf(written);
        removed = Set.copyOf(removed);
    }
}
