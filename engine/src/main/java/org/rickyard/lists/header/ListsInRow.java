package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow.Match;

/** The lists that stand side by side in one row of headers: where each begins and ends. */
public final class ListsInRow {
    /** So many headers of another list may mean something to one by chance: a clamp is a column of fields too. */
    private static final int MOST_BY_CHANCE = 1;

    /** One header that a list knows, touching another list, is no list of its own: "Spray no" beside what is sprayed. */
    private static final int LEAST_BESIDE = 2;

    private final HeaderRow row;
    private final String[] headers;
    private final List<Vocabulary> named;
    /** The first and last column of each stretch of the row, parted by gaps. */
    private final List<int[]> runs;

    /**
     * Takes a row.
     *
     * @param headers per column of the sheet, null where there is none
     * @param named the lists that the sheet or a title above the row is named after
     */
    public ListsInRow(HeaderRow row, String[] headers, List<Vocabulary> named) {
        this.row = row;
        this.headers = headers;
        this.named = named;
        this.runs = runs(headers);
    }

    /** The lists, from left to right but for those that touch another. */
    public List<Match> split() {
        List<Match> found = new ArrayList<>();
        int start = 0;
        while (start < runs.size()) {
            int end = start;
            Match match = null;
            while (end < runs.size() && match == null) {
                match = best(runs.get(start)[0], runs.get(end)[1]);
                end++;
            }
            if (match == null) {
                start++;
                continue;
            }
            int own = withoutOtherKinds(match, start, end);
            if (own > start) {
                start = own;
                match = best(runs.get(start)[0], runs.get(end - 1)[1]);
            }
            start = withoutStrangers(match, start, end);
            int last = end;
            while (last < runs.size()
                    && !isOfAnotherKind(match, runs.get(last))
                    && !startsAnother(match, last)
                    && !isOfAnother(match, runs.get(last))) {
                last++;
            }
            while (last > end && isTitle(match, runs.get(last - 1))) {
                last--;
            }
            if (last > end || match.firstColumn() < runs.get(start)[0]) {
                match = best(runs.get(start)[0], runs.get(last - 1)[1]);
            }
            found.add(match);
            addBeside(match, found);
            start = last;
        }
        return found;
    }

    /** "Tractor, Power" left of "Sprayer, Tank", set off by a gap, is a list of tractors: where that of sprayers begins. */
    private int withoutOtherKinds(Match match, int start, int end) {
        int from = start;
        for (int i = start; i + 1 < end; i++) {
            if (isOfAnotherKind(match, runs.get(i)) && best(runs.get(i + 1)[0], runs.get(end - 1)[1]) != null) {
                from = i + 1;
            }
        }
        return from;
    }

    /** Whether a stretch that none of the lists has is one of another kind of machine, which lacks a column of its own. */
    public boolean isKindLeft(List<Match> found, int[] run) {
        return found.stream().anyMatch(match -> isOfAnotherKind(match, run));
    }

    /** Whether a stretch names a kind of machine, and a list of machines is one of a kind by the name of another. */
    private boolean isOfAnotherKind(Match match, int[] run) {
        if (match.vocabulary().spec() != Machines.LIST || match.holds(Machines.TYPE) || !match.says(Machines.TYPE)) {
            return false;
        }
        for (int i = run[0]; i <= run[1]; i++) {
            boolean own = i >= match.firstColumn()
                    && i <= match.lastColumn()
                    && match.headings()[i - match.firstColumn()] != null;
            if (!own && match.vocabulary().wholeWord(Machines.MACHINE, headers[i]) != null) {
                return true;
            }
        }
        return false;
    }

    /** Headers left of a list, set off by a gap, that mean nothing to it are another table's: where the list begins. */
    private int withoutStrangers(Match match, int start, int end) {
        int from = start;
        while (from + 1 < end) {
            Match fewer = best(runs.get(from + 1)[0], runs.get(end - 1)[1]);
            boolean same =
                    fewer != null && fewer.vocabulary() == match.vocabulary() && fewer.matched() == match.matched();
            if (!same) {
                return from;
            }
            from++;
        }
        return from;
    }

    /** Whether another list begins at a stretch of a row; one that says more of this list than of the other does not. */
    private boolean startsAnother(Match match, int from) {
        for (int to = from; to < runs.size(); to++) {
            Match other = best(runs.get(from)[0], runs.get(to)[1]);
            if (other != null) {
                if (from == to && saysAsMuch(match, other, runs.get(from))) {
                    return false;
                }
                Match later = from == to ? null : best(runs.get(from + 1)[0], runs.get(to)[1]);
                boolean without = later != null && later.vocabulary() == other.vocabulary();
                int[] run = runs.get(from);
                return !without
                        || other.matched() - later.matched()
                                >= match(match.vocabulary(), run[0], run[1]).matched();
            }
        }
        return false;
    }

    /**
     * Whether a stretch goes on with a list: it knows as much of it as another would, and has none of it so far. Fields may
     * go on with what is done on them.
     */
    private boolean saysAsMuch(Match match, Match other, int[] run) {
        boolean flat = HeaderRow.isOfFlatList(match.vocabulary());
        return row.vocabularies().stream()
                .filter(vocabulary -> vocabulary == match.vocabulary() || flat && HeaderRow.isOfFlatList(vocabulary))
                .filter(vocabulary -> vocabulary != other.vocabulary())
                .anyMatch(vocabulary -> {
                    Match own = match(vocabulary, run[0], run[1]);
                    Match before = match(vocabulary, match.firstColumn(), match.lastColumn());
                    return own.matched() >= other.matched() && vocabulary.isKnownIn(before) && !hasAny(before, own);
                });
    }

    /** A lone word beyond a gap that means nothing to a list, or names another, is a title. */
    private boolean isTitle(Match match, int[] run) {
        if (run[0] != run[1]) {
            return false;
        }
        Match own = match(match.vocabulary(), run[0], run[1]);
        return own.matched() == 0
                || hasAny(match, own) && row.vocabularies().stream().anyMatch(list -> list.isCalled(headers[run[0]]));
    }

    /** Whether a list has a column already that a further stretch of the row means too. */
    private static boolean hasAny(Match match, Match further) {
        return match.vocabulary().spec().columns().stream()
                .anyMatch(column -> further.places(column) > 0 && match.places(column) > 0);
    }

    /** Whether headers set off by a gap are those of another list that lacks one it needs, and mean nothing to this one. */
    private boolean isOfAnother(Match match, int[] run) {
        int known = match(match.vocabulary(), run[0], run[1]).matched();
        if (known > MOST_BY_CHANCE) {
            return false;
        }
        for (Vocabulary vocabulary : row.vocabularies()) {
            boolean flat = HeaderRow.isOfFlatList(vocabulary) && HeaderRow.isOfFlatList(match.vocabulary());
            Match other = match(vocabulary, run[0], run[1]);
            if (!flat && other.missing().size() == 1 && other.matched() >= HeaderRow.HARDLY_BY_CHANCE) {
                return true;
            }
        }
        return false;
    }

    /** The stretches of the row, parted by gaps, that belong to none of the lists found in it. */
    public List<int[]> left(List<Match> found) {
        return runs.stream()
                .filter(run -> found.stream()
                        .noneMatch(match -> match.firstColumn() <= run[1] && run[0] <= match.lastColumn()))
                .toList();
    }

    /** A second list may touch the first without a gap: look right and left of the headers the first one knows. */
    private void addBeside(Match match, List<Match> found) {
        int low = match.lastColumn();
        int high = match.firstColumn();
        for (int i = 0; i < match.headings().length; i++) {
            if (match.headings()[i] != null) {
                low = Math.min(low, match.firstColumn() + i);
                high = Math.max(high, match.firstColumn() + i);
            }
        }
        if (high < match.lastColumn()) {
            Match right = best(high + 1, match.lastColumn());
            if (right != null && right.matched() >= LEAST_BESIDE) {
                found.set(found.size() - 1, best(match.firstColumn(), high));
                found.add(right);
                return;
            }
        }
        if (low > match.firstColumn()) {
            Match left = best(match.firstColumn(), low - 1);
            if (left != null && left.matched() >= LEAST_BESIDE) {
                found.set(found.size() - 1, best(low, match.lastColumn()));
                found.add(left);
            }
        }
    }

    private Match best(int first, int last) {
        return row.best(headers, first, last, named);
    }

    private Match match(Vocabulary vocabulary, int first, int last) {
        return row.match(vocabulary, headers, first, last, false);
    }

    private static List<int[]> runs(String[] headers) {
        List<int[]> runs = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= headers.length; i++) {
            boolean filled = i < headers.length && headers[i] != null;
            if (filled && start < 0) {
                start = i;
            } else if (!filled && start >= 0) {
                runs.add(new int[] {start, i - 1});
                start = -1;
            }
        }
        return runs;
    }
}
