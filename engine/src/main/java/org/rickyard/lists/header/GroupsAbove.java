package org.rickyard.lists.header;

import java.util.List;
import org.rickyard.lists.header.HeaderRow.Match;

/**
 * Headings of groups above a header: "Machine", "Work" and "Costs" over names that are whole by themselves. Some of them
 * may be names of columns too, so that their row alone, or with the one below, passes for a header.
 */
public final class GroupsAbove {
    private GroupsAbove() {}

    /**
     * Whether the row below says more of each list by itself.
     *
     * @param here the lists of a row, read alone or together with the one below
     * @param below the lists of the row below alone
     */
    public static boolean are(List<Match> here, List<Match> below) {
        return !here.isEmpty()
                && here.stream().allMatch(match -> below.stream()
                        .anyMatch(lower -> lower.vocabulary() == match.vocabulary()
                                && lower.firstColumn() <= match.lastColumn()
                                && match.firstColumn() <= lower.lastColumn()
                                && lower.score() > match.score()));
    }
}
