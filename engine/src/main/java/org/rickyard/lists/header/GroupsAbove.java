package org.rickyard.lists.header;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /**
     * Whether a row that begins no list has nothing but words over the lists of the row below, fewer than those have
     * headers: "Job", "Spray" and "Tank mix".
     *
     * @param headers of the row, per column of the sheet, null where there is none
     * @param below the lists of the row below alone
     */
    public static boolean areOver(String[] headers, List<Match> below) {
        long over = Stream.of(headers).filter(Objects::nonNull).count();
        long known = below.stream().mapToLong(Match::matched).sum();
        return over < known
                && IntStream.range(0, headers.length)
                        .filter(column -> headers[column] != null)
                        .allMatch(column -> below.stream()
                                .anyMatch(match -> match.firstColumn() <= column && column <= match.lastColumn()));
    }
}
