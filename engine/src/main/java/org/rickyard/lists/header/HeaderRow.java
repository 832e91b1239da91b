package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.HeaderText;

/** One row of a sheet, or a part of it, read as the header of a list. */
public final class HeaderRow {
    /**
     * How well a stretch of a row serves as the header of one list.
     *
     * @param headings per column of the sheet, null where the header means nothing to this list
     * @param missing what the list needs and has not got, in words
     * @param matched how many headers mean something
     * @param score the higher the better
     */
    public record Match(
            Vocabulary vocabulary,
            int firstColumn,
            Vocabulary.Heading[] headings,
            List<String> missing,
            int matched,
            int score) {
        public int lastColumn() {
            return firstColumn + headings.length - 1;
        }

        /** The same with headings read otherwise. */
        Match with(Vocabulary.Heading[] others) {
            return new Match(vocabulary, firstColumn, others, missing, matched, score);
        }

        /** The same with what means one column read as another. */
        public Match readAs(ColumnSpec column, ColumnSpec other) {
            Vocabulary.Heading[] read = headings.clone();
            for (int i = 0; i < read.length; i++) {
                if (read[i] != null && read[i].isCertain() && read[i].column() == column) {
                    read[i] = read[i].as(other, "");
                }
            }
            return with(read);
        }

        /** How many headers mean the column and no other. */
        public int places(ColumnSpec column) {
            int places = 0;
            for (Vocabulary.Heading heading : headings) {
                places += heading != null && heading.isCertain() && heading.column() == column ? 1 : 0;
            }
            return places;
        }

        /** The first header that means the column and no other, out of those of the row; null if none does. */
        public String headerOf(ColumnSpec column, String[] headers) {
            for (int i = 0; i < headings.length; i++) {
                if (headings[i] != null && headings[i].isCertain() && headings[i].column() == column) {
                    return headers[firstColumn + i];
                }
            }
            return null;
        }

        public boolean holds(ColumnSpec column) {
            for (Vocabulary.Heading heading : headings) {
                if (heading != null && heading.candidates().contains(column)) {
                    return true;
                }
            }
            return false;
        }
    }

    private static final List<ColumnSpec> OF_JOBS_ALONE =
            List.of(Jobs.WATER_VOLUME, Jobs.OPERATION, Jobs.MIX, Jobs.EARLIEST);

    /** Nitrogen among them: a plan of what is spread where tells it too, in kg/ha. */
    private static final List<ColumnSpec> OF_ANY_DOSE =
            List.of(Products.PRODUCT, Products.UNIT, Products.DOSE, Products.NITROGEN);

    /** One header row may serve these at once, so that another's headers say nothing against them. */
    private static final List<ListSpec> OF_FLAT_LISTS = List.of(Fields.LIST, Jobs.LIST, Cuts.LIST);

    /** A list that knows twice the headers that another knows is the one that is meant. */
    private static final int PLAINLY = 2;

    /** So many headers of another list may mean something to one by chance: a clamp is a column of fields too. */
    private static final int MOST_BY_CHANCE = 1;

    /** What a list lacks where but a few of its headers are there. */
    public static final String MORE = "more headers it knows";

    /** A row knowing so many headers of a list is hardly there by chance. */
    public static final int HARDLY_BY_CHANCE = 4;

    /** One header that a list knows, touching another list, is no list of its own: "Spray no" beside what is sprayed. */
    private static final int LEAST_BESIDE = 2;

    private final List<Vocabulary> vocabularies;

    private final KeptByText<HeaderText> texts = new KeptByText<>();

    public HeaderRow(List<Vocabulary> vocabularies) {
        this.vocabularies = vocabularies;
    }

    /** Reads the headers from one column to another for one list. */
    public Match match(Vocabulary vocabulary, String[] headers, int first, int last, boolean named) {
        Vocabulary.Heading[] headings = new Vocabulary.Heading[last - first + 1];
        int matched = 0;
        int score = named ? 5 : 0;
        for (int column = first; column <= last; column++) {
            if (headers[column] != null) {
                Vocabulary.Heading heading = vocabulary.read(text(headers[column]));
                headings[column - first] = heading;
                if (heading != null) {
                    matched++;
                    score += heading.weight();
                }
            }
        }
        int otherwise = vocabulary.otherwise().read(headings, unread(vocabulary, headings, headers, first), named);
        matched += otherwise;
        score += otherwise;
        Match match = new Match(vocabulary, first, headings, List.of(), matched, score);
        List<String> missing = missing(match, named);
        return new Match(vocabulary, first, headings, missing, matched, score);
    }

    /** The same for a list by its declaration; null if it is not looked for. */
    public Match match(ListSpec list, String[] headers, int first, int last, boolean named) {
        for (Vocabulary vocabulary : vocabularies) {
            if (vocabulary.spec() == list) {
                return match(vocabulary, headers, first, last, named);
            }
        }
        return null;
    }

    private HeaderText text(String header) {
        HeaderText known = texts.get(header);
        return known == null ? texts.keep(header, HeaderText.of(header)) : known;
    }

    /**
     * The headers that mean nothing to a list so far and may mean something otherwise, each in its place; null elsewhere,
     * and if there are none.
     */
    private HeaderText[] unread(Vocabulary vocabulary, Vocabulary.Heading[] headings, String[] headers, int first) {
        HeaderText[] unread = null;
        for (int i = 0; i < headings.length; i++) {
            if (headings[i] == null && headers[first + i] != null) {
                HeaderText text = text(headers[first + i]);
                if (vocabulary.mayMeanOtherwise(text)) {
                    unread = unread == null ? new HeaderText[headings.length] : unread;
                    unread[i] = text;
                }
            }
        }
        return unread;
    }

    private static List<String> missing(Match match, boolean named) {
        ListSpec spec = match.vocabulary().spec();
        List<String> missing = new ArrayList<>();
        for (ColumnSpec column : spec.columns()) {
            if (column.required() && !match.holds(column)) {
                boolean replaced = spec.substitutes().getOrDefault(column, List.of()).stream()
                        .anyMatch(match::holds);
                if (!replaced) {
                    List<String> ways = new ArrayList<>(List.of(column.name()));
                    spec.substitutes().getOrDefault(column, List.of()).forEach(other -> ways.add(other.name()));
                    missing.add(String.join(" or ", ways));
                }
            }
        }
        for (ListSpec.OneOf group : spec.oneOf()) {
            if (group.ways().stream().noneMatch(way -> way.stream().allMatch(match::holds))) {
                missing.add(group.words());
            }
        }
        if (!named && missing.isEmpty() && match.matched() < spec.least()) {
            missing.add(MORE);
        }
        return missing;
    }

    /** The best of all lists whose needs are met, or null; also where it is plainly another that lacks something. */
    public Match best(String[] headers, int first, int last, List<Vocabulary> named) {
        Match best = null;
        Match lacking = null;
        for (Vocabulary vocabulary : vocabularies) {
            Match match = match(vocabulary, headers, first, last, named.contains(vocabulary));
            if (match.missing().isEmpty()
                    && (best == null || isBetter(match, best))
                    && !isWorkOnFields(match, headers, last, named.contains(vocabulary))
                    && !isOfJobs(match, headers)) {
                best = match;
            }
            if (match.missing().size() == 1 && (lacking == null || match.matched() > lacking.matched())) {
                lacking = match;
            }
        }
        boolean other = best != null
                && lacking != null
                && !named.contains(best.vocabulary())
                && !OF_FLAT_LISTS.contains(best.vocabulary().spec())
                && lacking.matched() >= best.matched() * PLAINLY;
        return other ? null : best;
    }

    private static boolean isBetter(Match match, Match best) {
        return match.score() > best.score() || match.score() == best.score() && match.matched() > best.matched();
    }

    /** Products with a field beside each are work done there, and no list of what products there are. */
    private boolean isWorkOnFields(Match match, String[] headers, int last, boolean named) {
        ListSpec spec = match.vocabulary().spec();
        if (spec != Products.LIST && spec != Mixes.LIST || spec == Mixes.LIST && named) {
            return false;
        }
        int first = match.firstColumn();
        while (first > 0 && headers[first - 1] != null) {
            first--;
        }
        Match jobs = match(Jobs.LIST, headers, first, last, false);
        // A list of products may touch one of fields: what only jobs have, or only products, tells.
        return jobs != null
                && jobs.places(Jobs.FIELD) > 0
                && (OF_JOBS_ALONE.stream().anyMatch(column -> jobs.places(column) > 0) || !isStore(match));
    }

    /** Whether a row has what only a list of products has. */
    private static boolean isStore(Match match) {
        return Products.LIST.columns().stream()
                .anyMatch(column -> !OF_ANY_DOSE.contains(column) && match.places(column) > 0);
    }

    /**
     * Products with a job beside each are what goes into those jobs, a list of mixes; with anything else of a job they are
     * work, and with anything else of a product a store of which the job's name says little.
     */
    private boolean isOfJobs(Match match, String[] headers) {
        ListSpec spec = match.vocabulary().spec();
        if (spec != Products.LIST && spec != Mixes.LIST) {
            return false;
        }
        Match jobs = match(Jobs.LIST, headers, match.firstColumn(), match.lastColumn(), false);
        if (jobs == null || jobs.places(Jobs.JOB) == 0) {
            return false;
        }
        if (spec == Mixes.LIST) {
            String named = match.headerOf(Mixes.MIX, headers);
            return named != null
                    && named.equals(jobs.headerOf(Jobs.JOB, headers))
                    && IntStream.range(0, match.headings().length)
                            .anyMatch(i -> match.headings()[i] == null && jobs.headings()[i] != null);
        }
        Match mixes = match(Mixes.LIST, headers, match.firstColumn(), match.lastColumn(), false);
        return mixes != null && mixes.missing().isEmpty() && !isStore(match);
    }

    /**
     * The lists that stand side by side in a row.
     *
     * @param headers per column of the sheet, null where there is none
     */
    public List<Match> split(String[] headers, List<Vocabulary> named) {
        List<int[]> runs = runs(headers);
        List<Match> found = new ArrayList<>();
        int start = 0;
        while (start < runs.size()) {
            int end = start;
            Match match = null;
            while (end < runs.size() && match == null) {
                match = best(headers, runs.get(start)[0], runs.get(end)[1], named);
                end++;
            }
            if (match == null) {
                start++;
                continue;
            }
            start = withoutStrangers(match, headers, runs, start, end, named);
            int last = end;
            while (last < runs.size()
                    && !startsAnother(match, headers, runs, last, named)
                    && !isOfAnother(match, headers, runs.get(last))) {
                last++;
            }
            while (last > end && isTitle(match, headers, runs.get(last - 1))) {
                last--;
            }
            if (last > end || match.firstColumn() < runs.get(start)[0]) {
                match = best(headers, runs.get(start)[0], runs.get(last - 1)[1], named);
            }
            found.add(match);
            addBeside(match, headers, named, found);
            start = last;
        }
        return found;
    }

    /** Headers left of a list, set off by a gap, that mean nothing to it are another table's: where the list begins. */
    private int withoutStrangers(
            Match match, String[] headers, List<int[]> runs, int start, int end, List<Vocabulary> named) {
        int from = start;
        while (from + 1 < end) {
            Match fewer = best(headers, runs.get(from + 1)[0], runs.get(end - 1)[1], named);
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
    private boolean startsAnother(Match match, String[] headers, List<int[]> runs, int from, List<Vocabulary> named) {
        for (int to = from; to < runs.size(); to++) {
            Match other = best(headers, runs.get(from)[0], runs.get(to)[1], named);
            if (other != null) {
                if (from == to && saysAsMuch(match, other, headers, runs.get(from))) {
                    return false;
                }
                Match later = from == to ? null : best(headers, runs.get(from + 1)[0], runs.get(to)[1], named);
                boolean without = later != null && later.vocabulary() == other.vocabulary();
                int[] run = runs.get(from);
                return !without
                        || other.matched() - later.matched()
                                >= match(match.vocabulary(), headers, run[0], run[1], false)
                                        .matched();
            }
        }
        return false;
    }

    /**
     * Whether a stretch goes on with a list: it knows as much of it as another would, and has none of it so far. Fields may
     * go on with what is done on them.
     */
    private boolean saysAsMuch(Match match, Match other, String[] headers, int[] run) {
        boolean flat = OF_FLAT_LISTS.contains(match.vocabulary().spec());
        return vocabularies.stream()
                .filter(vocabulary ->
                        vocabulary == match.vocabulary() || flat && OF_FLAT_LISTS.contains(vocabulary.spec()))
                .filter(vocabulary -> vocabulary != other.vocabulary())
                .anyMatch(vocabulary -> {
                    Match own = match(vocabulary, headers, run[0], run[1], false);
                    Match before = match(vocabulary, headers, match.firstColumn(), match.lastColumn(), false);
                    return own.matched() >= other.matched() && vocabulary.isKnownIn(before) && !hasAny(before, own);
                });
    }

    /** A lone word beyond a gap that means nothing to a list, or names another, is a title. */
    private boolean isTitle(Match match, String[] headers, int[] run) {
        if (run[0] != run[1]) {
            return false;
        }
        Match own = match(match.vocabulary(), headers, run[0], run[1], false);
        return own.matched() == 0
                || hasAny(match, own) && vocabularies.stream().anyMatch(list -> list.isCalled(headers[run[0]]));
    }

    /** Whether a list has a column already that a further stretch of the row means too. */
    private static boolean hasAny(Match match, Match further) {
        return match.vocabulary().spec().columns().stream()
                .anyMatch(column -> further.places(column) > 0 && match.places(column) > 0);
    }

    /** Whether headers set off by a gap are those of another list that lacks one it needs, and mean nothing to this one. */
    private boolean isOfAnother(Match match, String[] headers, int[] run) {
        int known = match(match.vocabulary(), headers, run[0], run[1], false).matched();
        if (known > MOST_BY_CHANCE) {
            return false;
        }
        for (Vocabulary vocabulary : vocabularies) {
            boolean flat = OF_FLAT_LISTS.contains(vocabulary.spec())
                    && OF_FLAT_LISTS.contains(match.vocabulary().spec());
            Match other = match(vocabulary, headers, run[0], run[1], false);
            if (!flat && other.missing().size() == 1 && other.matched() >= HARDLY_BY_CHANCE) {
                return true;
            }
        }
        return false;
    }

    /** The stretches of a row, parted by gaps, that belong to none of the lists found in it. */
    public List<int[]> left(String[] headers, List<Match> found) {
        return runs(headers).stream()
                .filter(run -> found.stream()
                        .noneMatch(match -> match.firstColumn() <= run[1] && run[0] <= match.lastColumn()))
                .toList();
    }

    /** A second list may touch the first without a gap: look right and left of the headers the first one knows. */
    private void addBeside(Match match, String[] headers, List<Vocabulary> named, List<Match> found) {
        int low = match.lastColumn();
        int high = match.firstColumn();
        for (int i = 0; i < match.headings().length; i++) {
            if (match.headings()[i] != null) {
                low = Math.min(low, match.firstColumn() + i);
                high = Math.max(high, match.firstColumn() + i);
            }
        }
        if (high < match.lastColumn()) {
            Match right = best(headers, high + 1, match.lastColumn(), named);
            if (right != null && right.matched() >= LEAST_BESIDE) {
                found.set(found.size() - 1, best(headers, match.firstColumn(), high, named));
                found.add(right);
                return;
            }
        }
        if (low > match.firstColumn()) {
            Match left = best(headers, match.firstColumn(), low - 1, named);
            if (left != null && left.matched() >= LEAST_BESIDE) {
                found.set(found.size() - 1, best(headers, low, match.lastColumn(), named));
                found.add(left);
            }
        }
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
