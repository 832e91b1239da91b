package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
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
            Vocabulary vocabulary, int firstColumn, Heading[] headings, List<String> missing, int matched, int score) {
        public int lastColumn() {
            return firstColumn + headings.length - 1;
        }

        /** The same with headings read otherwise. */
        Match with(Heading[] others) {
            return new Match(vocabulary, firstColumn, others, missing, matched, score);
        }

        /** The same with what means one column read as another. */
        public Match readAs(ColumnSpec column, ColumnSpec other) {
            Heading[] read = headings.clone();
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
            for (Heading heading : headings) {
                places += heading != null && heading.isCertain() && heading.column() == column ? 1 : 0;
            }
            return places;
        }

        /** Whether the header of another column says what would stand in this one: "Tractor" over names of machines. */
        boolean says(ColumnSpec column) {
            Map<ColumnSpec, ColumnSpec> qualifiers = vocabulary.spec().qualifiers();
            for (Heading heading : headings) {
                if (heading != null
                        && heading.isCertain()
                        && heading.word() != null
                        && qualifiers.get(heading.column()) == column) {
                    return true;
                }
            }
            return false;
        }

        /** The first header that means the column and no other, out of those of the row; null if none does. */
        public String headerOf(ColumnSpec column, String[] headers) {
            int place = place(column);
            return place < 0 ? null : headers[firstColumn + place];
        }

        /** Where the first heading stands that means the column and no other; -1 if none does. */
        int place(ColumnSpec column) {
            for (int i = 0; i < headings.length; i++) {
                if (headings[i] != null && headings[i].isCertain() && headings[i].column() == column) {
                    return i;
                }
            }
            return -1;
        }

        public boolean holds(ColumnSpec column) {
            for (Heading heading : headings) {
                if (heading != null && heading.candidates().contains(column)) {
                    return true;
                }
            }
            return false;
        }
    }

    private static final List<ColumnSpec> OF_JOBS_ALONE =
            List.of(Jobs.WATER_VOLUME, Jobs.OPERATION, Jobs.MIX, Jobs.EARLIEST);

    /** Nutrients among them: a plan of what is spread where tells them too, in kg/ha. */
    private static final List<ColumnSpec> OF_ANY_DOSE = List.of(
            Products.PRODUCT,
            Products.UNIT,
            Products.DOSE,
            Products.ACTIVE_CONTENT,
            Products.NITROGEN,
            Products.PHOSPHATE,
            Products.POTASH);

    /** One header row may serve these at once, so that another's headers say nothing against them. */
    private static final List<ListSpec> OF_FLAT_LISTS = List.of(Fields.LIST, Jobs.LIST, Cuts.LIST);

    /** A list that knows twice the headers that another knows is the one that is meant. */
    private static final int PLAINLY = 2;

    /** What a list lacks where but a few of its headers are there. */
    public static final String MORE = "more headers it knows";

    /** A row knowing so many headers of a list is hardly there by chance. */
    public static final int HARDLY_BY_CHANCE = 4;

    /** The type of a machine with its name beside it, and what else is told of it. */
    private static final int OF_LABELS = 2;

    private final List<Vocabulary> vocabularies;

    private final KeptByText<HeaderText> texts = new KeptByText<>();

    /** The type of machine that the title above the row at hand is of, or the name of its sheet; null if of none. */
    private TypeInTitle title;

    /** Whether another table tells what types the machines under the row at hand are. */
    private boolean typesAreKnown;

    /** Whether the headers are labels of a form, with what each tells beside it. */
    private boolean labels;

    public HeaderRow(List<Vocabulary> vocabularies) {
        this.vocabularies = vocabularies;
    }

    /** Takes the headers for labels of a form: "Combine" beside a name says more there than over a column. */
    public HeaderRow ofLabels() {
        labels = true;
        return this;
    }

    /** The lists that are looked for. */
    List<Vocabulary> vocabularies() {
        return vocabularies;
    }

    /** Takes the title that the rows read from now on stand under; null if it names no type of machine. */
    public void under(TypeInTitle title) {
        this.title = title;
    }

    /** Takes whether another table tells the types of the machines under the rows read from now on. */
    public void typesAreKnown(boolean known) {
        this.typesAreKnown = known;
    }

    /** Reads the headers from one column to another for one list. */
    public Match match(Vocabulary vocabulary, String[] headers, int first, int last, boolean named) {
        Heading[] headings = new Heading[last - first + 1];
        int matched = 0;
        int score = named ? 5 : 0;
        for (int column = first; column <= last; column++) {
            if (headers[column] != null) {
                Heading heading = vocabulary.read(text(headers[column]));
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
        if (labels) {
            int more = new TypeLabels(vocabularies, headers, first).read(vocabulary, headings);
            matched += more;
            score += more * 2;
        }
        Match match = new Match(vocabulary, first, headings, List.of(), matched, score);
        if (title != null && vocabulary.spec() == Machines.LIST) {
            title.tell(match);
        }
        List<String> missing = missing(match, named);
        return new Match(vocabulary, first, headings, missing, matched, score);
    }

    /** Whether a title makes a list of machines of fewer headers than are hardly there by chance. */
    private static boolean isToldBy(TypeInTitle title, Match match) {
        return title != null && match.vocabulary().spec() == Machines.LIST && title.isOf(match);
    }

    /** Whether the title alone makes a list of machines of so few headers. */
    public boolean isByTitleAlone(Match match) {
        return isToldBy(title, match) && match.matched() < HARDLY_BY_CHANCE && !match.holds(Machines.TYPE);
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
    private HeaderText[] unread(Vocabulary vocabulary, Heading[] headings, String[] headers, int first) {
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

    private List<String> missing(Match match, boolean named) {
        ListSpec spec = match.vocabulary().spec();
        List<String> missing = new ArrayList<>();
        for (ColumnSpec column : spec.columns()) {
            if (column.required() && !match.holds(column)) {
                boolean replaced = spec.substitutes().getOrDefault(column, List.of()).stream()
                                .anyMatch(match::holds)
                        || column == Machines.TYPE && typesAreKnown
                        || match.says(column)
                                && (match.matched() >= (labels ? OF_LABELS : HARDLY_BY_CHANCE)
                                        || isToldBy(title, match));
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
                && !isOfFlatList(best.vocabulary())
                && lacking.matched() >= best.matched() * PLAINLY;
        return other ? null : best;
    }

    /** Whether one header row may serve the list and others at once. */
    static boolean isOfFlatList(Vocabulary vocabulary) {
        return OF_FLAT_LISTS.contains(vocabulary.spec());
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
}
