package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;

/** The headers of a list that mean a column only where no other header does: rare names, and names turned round. */
final class OtherwiseHeaders {
    /** What is fed out of a clamp; hay and straw are not. */
    private static final Pattern FEED = Pattern.compile(
            "(?i)[( ]*\\b((of|from|as) )?(grass|maize|corn|wholecrop|silage|forage|haylage)\\b( silage\\b)?[) ]*");

    /**
     * What one header may mean here, each way by itself.
     *
     * @param rare what it means by each of the names that count where no other header does; null for none
     * @param ifNamed the same by those that count where the list is named besides
     * @param feed the unit that it says of an intake, beside what is eaten; "" if it is no intake
     * @param turned what it means with its unit at the end or by one of two names; null if nothing
     * @param asKnown what it means without the words that tell how its figures are known; null if nothing
     */
    private record Meanings(Heading[] rare, Heading[] ifNamed, String feed, Heading turned, Heading asKnown) {
        private static final Meanings NONE = new Meanings(null, null, "", null, null);
    }

    private final Vocabulary vocabulary;
    private final ListSpec.Hints hints;

    /** By the header's text: a row that could be one of headers is asked about in many stretches. */
    private final KeptByText<Meanings> kept = new KeptByText<>();

    OtherwiseHeaders(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.hints = vocabulary.spec().hints();
    }

    /** Whether a header begins with a name that counts only where no other header means the column, or may be turned. */
    boolean mayMean(HeaderText header) {
        return of(header) != Meanings.NONE;
    }

    /** Whether a header means what the list's rows are known by, where no other header does. */
    boolean mayNameRows(HeaderText header) {
        Meanings meanings = of(header);
        return header.turned().mayBeTurned() && isIdentity(meanings.turned())
                || Stream.of(meanings.rare(), meanings.ifNamed())
                        .filter(Objects::nonNull)
                        .flatMap(Stream::of)
                        .anyMatch(this::isIdentity);
    }

    private boolean isIdentity(Heading heading) {
        return heading != null && vocabulary.spec().identity().contains(heading.column());
    }

    /** Whether a header means a column where no other does, and by its unit. */
    boolean isMeasured(HeaderText header) {
        Heading[] rare = of(header).rare();
        for (int i = 0; rare != null && i < rare.length; i++) {
            if (rare[i] != null && hints.otherwise().get(i).measured()) {
                return true;
            }
        }
        return false;
    }

    private Meanings of(HeaderText header) {
        Meanings known = kept.get(header.raw());
        return known == null ? kept.keep(header.raw(), lookedFor(header)) : known;
    }

    private Meanings lookedFor(HeaderText header) {
        String feed = vocabulary.spec() == Herds.LIST ? withoutFeed(header.raw()) : "";
        boolean may = vocabulary.beginsRareName(header)
                || header.turned().mayBeTurned()
                || !feed.isEmpty()
                || header.withoutHowKnown() != null;
        return may
                ? new Meanings(
                        named(hints.otherwise(), header),
                        named(hints.ifNamed(), header),
                        feed,
                        turned(header),
                        asKnown(header))
                : Meanings.NONE;
    }

    /** What a header means by each of these names, in their order; null if by none. */
    private Heading[] named(List<ListSpec.Otherwise> all, HeaderText header) {
        Heading[] named = null;
        for (int i = 0; i < all.size(); i++) {
            Heading heading = vocabulary.heading(all.get(i), header);
            if (heading != null) {
                named = named == null ? new Heading[all.size()] : named;
                named[i] = heading;
            }
        }
        return named;
    }

    /** Forgets what it has read, since the Layout sheet says more. */
    void forget() {
        kept.forget();
    }

    /**
     * Reads headers that mean a column only where no other header does.
     *
     * @param unread the headers not read so far that {@link Vocabulary#mayMeanOtherwise may mean} one, each in its
     *     place; null if there are none
     * @param named whether the sheet, table or title calls the list by its name
     * @return how many were read
     */
    int read(Heading[] headings, HeaderText[] unread, boolean named) {
        int read = unread == null ? 0 : read(headings, meanings(unread), named);
        for (ListSpec.StandIn standIn : hints.standIns()) {
            if (!means(headings, standIn.column())
                    && standIn.besideAny().stream().anyMatch(column -> means(headings, column))) {
                for (int i = 0; i < headings.length; i++) {
                    if (headings[i] != null && headings[i].isCertain() && headings[i].column() == standIn.instead()) {
                        headings[i] = headings[i].as(standIn.column(), "");
                    }
                }
            }
        }
        return read;
    }

    private Meanings[] meanings(HeaderText[] unread) {
        Meanings[] meanings = new Meanings[unread.length];
        for (int i = 0; i < unread.length; i++) {
            meanings[i] = unread[i] == null ? Meanings.NONE : of(unread[i]);
        }
        return meanings;
    }

    private int read(Heading[] headings, Meanings[] meanings, boolean named) {
        int read = readAll(hints.otherwise(), headings, meanings, Meanings::rare);
        read += named ? readAll(hints.ifNamed(), headings, meanings, Meanings::ifNamed) : 0;
        read += readFeeds(headings, meanings);
        read += readTurned(headings, meanings);
        read += readAsKnown(headings, meanings);
        return read;
    }

    private static int readAll(
            List<ListSpec.Otherwise> all,
            Heading[] headings,
            Meanings[] meanings,
            Function<Meanings, Heading[]> names) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < meanings.length; i++) {
            if (headings[i] == null && names.apply(meanings[i]) != null) {
                places.add(i);
            }
        }
        int read = 0;
        for (int name = 0; name < all.size() && !places.isEmpty(); name++) {
            for (int i : places) {
                Heading heading = headings[i] == null ? names.apply(meanings[i])[name] : null;
                if (heading != null) {
                    if (!isBarred(headings, all.get(name)) && isFree(headings, heading.column())) {
                        askWithout(heading.column(), headings);
                        headings[i] = heading;
                        read++;
                    }
                    break;
                }
            }
        }
        return read;
    }

    /**
     * Whether a column may be taken: no other header is sure to be it, and what asks about it asks about so many that more
     * than one is left without it. Where but one would be left, that is not taken by this alone, and the column stays
     * asked about.
     */
    private static boolean isFree(Heading[] headings, ColumnSpec column) {
        for (Heading heading : headings) {
            if (heading != null
                    && heading.candidates().contains(column)
                    && heading.candidates().size() < 3) {
                return false;
            }
        }
        return true;
    }

    /** "Price" beside "Resale": what the one may be is what the other is, so the one is asked about without it. */
    private static void askWithout(ColumnSpec column, Heading[] headings) {
        for (int i = 0; i < headings.length; i++) {
            if (headings[i] != null && headings[i].candidates().contains(column)) {
                headings[i] = headings[i].without(column);
            }
        }
    }

    private static boolean isBarred(Heading[] headings, ListSpec.Otherwise otherwise) {
        return otherwise.without() != null && means(headings, otherwise.without())
                || !otherwise.besideAny().isEmpty()
                        && otherwise.besideAny().stream().noneMatch(column -> means(headings, column));
    }

    /** "kg DM silage/hd/day" and "kg DM/day grass" without what is eaten; "" where that leaves no unit that tells. */
    private static String withoutFeed(String header) {
        String without = FEED.matcher(header).replaceAll(" ").strip();
        return without.length() < header.strip().length() && SaidUnit.tellsColumn(without) ? without : "";
    }

    /** All of them, where no other header is the intake: of two feeds beside each other it is asked which. */
    private int readFeeds(Heading[] headings, Meanings[] meanings) {
        if (vocabulary.spec() != Herds.LIST || means(headings, Herds.INTAKE)) {
            return 0;
        }
        int read = 0;
        for (int i = 0; i < meanings.length; i++) {
            if (headings[i] == null && !meanings[i].feed().isEmpty()) {
                headings[i] = new Heading(List.of(Herds.INTAKE), meanings[i].feed(), 2, false, null);
                read++;
            }
        }
        return read;
    }

    private static int readTurned(Heading[] headings, Meanings[] meanings) {
        int read = 0;
        for (int i = 0; i < meanings.length; i++) {
            Heading heading = headings[i] == null ? meanings[i].turned() : null;
            if (heading != null && !means(headings, heading.column())) {
                headings[i] = heading;
                read++;
            }
        }
        return read;
    }

    /**
     * "Average speed km/h" and "Yield t/ha (est)" where no other header is the speed or the yield. Of two beside each other,
     * one planned and one achieved, nobody can tell which is to be reckoned with: neither is read.
     */
    private static int readAsKnown(Heading[] headings, Meanings[] meanings) {
        Heading[] asKnown = new Heading[meanings.length];
        for (int i = 0; i < meanings.length; i++) {
            asKnown[i] = headings[i] == null ? meanings[i].asKnown() : null;
        }
        int read = 0;
        for (int i = 0; i < meanings.length; i++) {
            ColumnSpec column = asKnown[i] == null ? null : asKnown[i].column();
            boolean alone = column != null
                    && !means(headings, column)
                    && Stream.of(asKnown)
                                    .filter(Objects::nonNull)
                                    .filter(other -> other.column() == column)
                                    .count()
                            == 1;
            if (alone) {
                headings[i] = asKnown[i];
                read++;
            }
        }
        return read;
    }

    /** What a header means without the words that tell how its figures are known; null if nothing certain. */
    private Heading asKnown(HeaderText header) {
        HeaderText plain = header.withoutHowKnown();
        Heading heading = plain == null ? null : vocabulary.read(plain);
        return heading != null
                        && heading.isCertain()
                        && heading.column().isNumeric()
                        && (heading.rest().isEmpty() || HeaderUnit.fits(heading.column(), heading.rest()))
                ? heading
                : null;
    }

    /** What a header means with its unit at the end, or by one of two names that it gives; null if nothing certain. */
    private Heading turned(HeaderText header) {
        HeaderText unitLast = header.turned().unitLast();
        if (unitLast != null) {
            Heading heading = vocabulary.byName(unitLast);
            for (ListSpec.Otherwise otherwise : hints.otherwise()) {
                heading = heading == null ? vocabulary.heading(otherwise, unitLast) : heading;
            }
            return heading != null
                            && heading.isCertain()
                            && heading.column().isNumeric()
                            && HeaderUnit.fits(heading.column(), heading.rest())
                    ? heading
                    : null;
        }
        List<Heading> names = header.turned().alternatives().stream()
                .map(vocabulary::byName)
                .filter(Objects::nonNull)
                .toList();
        boolean one = !names.isEmpty()
                && names.stream()
                        .allMatch(name -> name.isCertain()
                                && name.column() == names.get(0).column()
                                && name.rest().isEmpty())
                && names.get(0).column().type() == ColumnSpec.Type.TEXT;
        return one ? names.get(0) : null;
    }

    private static boolean means(Heading[] headings, ColumnSpec column) {
        for (Heading heading : headings) {
            if (heading != null && heading.candidates().contains(column)) {
                return true;
            }
        }
        return false;
    }
}
