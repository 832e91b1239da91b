package org.rickyard.lists.header;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.header.Vocabulary.Heading;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;

/** The headers of a list that mean a column only where no other header does: rare names, and names turned round. */
final class OtherwiseHeaders {
    /** What is fed out of a clamp; hay and straw are not. */
    private static final Pattern FEED = Pattern.compile(
            "(?i)[( ]*\\b((of|from|as) )?(grass|maize|corn|wholecrop|silage|forage|haylage)\\b( silage\\b)?[) ]*");

    private final Vocabulary vocabulary;
    private final ListSpec.Hints hints;

    OtherwiseHeaders(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.hints = vocabulary.spec().hints();
    }

    /** Whether a header means what the list's rows are known by, where no other header does. */
    boolean mayNameRows(HeaderText header) {
        Heading turned = header.mayBeTurned() ? turned(header) : null;
        return turned != null && vocabulary.spec().identity().contains(turned.column())
                || Stream.of(hints.otherwise(), hints.ifNamed())
                        .flatMap(List::stream)
                        .anyMatch(otherwise -> vocabulary.spec().identity().contains(otherwise.column())
                                && vocabulary.heading(otherwise, header) != null);
    }

    /** Whether a header means a column where no other does, and by its unit. */
    boolean isMeasured(HeaderText header) {
        return hints.otherwise().stream()
                .anyMatch(otherwise -> otherwise.measured() && vocabulary.heading(otherwise, header) != null);
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
        int read = unread == null ? 0 : readAll(hints.otherwise(), headings, unread);
        read += unread == null || !named ? 0 : readAll(hints.ifNamed(), headings, unread);
        read += unread == null ? 0 : readFeeds(headings, unread);
        read += unread == null ? 0 : readTurned(headings, unread);
        read += unread == null ? 0 : readAsKnown(headings, unread);
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

    private int readAll(List<ListSpec.Otherwise> all, Heading[] headings, HeaderText[] unread) {
        int read = 0;
        for (ListSpec.Otherwise otherwise : all) {
            Heading heading = null;
            for (int i = 0; i < unread.length && heading == null; i++) {
                heading = headings[i] == null && unread[i] != null ? vocabulary.heading(otherwise, unread[i]) : null;
                if (heading != null
                        && !isBarred(headings, otherwise)
                        && (!means(headings, otherwise.column()) || isSpared(headings, otherwise.column()))) {
                    headings[i] = heading;
                    read++;
                }
            }
        }
        return read;
    }

    /**
     * "Price" beside "Resale": what the one may be is what the other is, so the one is asked about without it. Where but
     * one meaning would be left it is not taken by that alone, and the column stays asked about.
     */
    private static boolean isSpared(Heading[] headings, ColumnSpec column) {
        for (Heading heading : headings) {
            if (heading != null
                    && heading.candidates().contains(column)
                    && heading.candidates().size() < 3) {
                return false;
            }
        }
        for (int i = 0; i < headings.length; i++) {
            if (headings[i] != null && headings[i].candidates().contains(column)) {
                headings[i] = headings[i].without(column);
            }
        }
        return true;
    }

    private static boolean isBarred(Heading[] headings, ListSpec.Otherwise otherwise) {
        return otherwise.without() != null && means(headings, otherwise.without());
    }

    /** Whether a header is what a herd eats in a time and of what, as "kg DM silage/hd/day" is. */
    boolean isFeed(HeaderText header) {
        return vocabulary.spec() == Herds.LIST && !withoutFeed(header.raw()).isEmpty();
    }

    /** "kg DM silage/hd/day" and "kg DM/day grass" without what is eaten; "" where that leaves no unit that tells. */
    private static String withoutFeed(String header) {
        String without = FEED.matcher(header).replaceAll(" ").strip();
        return without.length() < header.strip().length() && SaidUnit.tellsColumn(without) ? without : "";
    }

    /** All of them, where no other header is the intake: of two feeds beside each other it is asked which. */
    private int readFeeds(Heading[] headings, HeaderText[] unread) {
        if (vocabulary.spec() != Herds.LIST || means(headings, Herds.INTAKE)) {
            return 0;
        }
        int read = 0;
        for (int i = 0; i < unread.length; i++) {
            if (headings[i] == null && unread[i] != null && isFeed(unread[i])) {
                headings[i] = new Heading(List.of(Herds.INTAKE), withoutFeed(unread[i].raw()), 2, false, null);
                read++;
            }
        }
        return read;
    }

    private int readTurned(Heading[] headings, HeaderText[] unread) {
        int read = 0;
        for (int i = 0; i < unread.length; i++) {
            Heading heading = headings[i] == null && unread[i] != null ? turned(unread[i]) : null;
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
    private int readAsKnown(Heading[] headings, HeaderText[] unread) {
        Heading[] asKnown = new Heading[unread.length];
        for (int i = 0; i < unread.length; i++) {
            asKnown[i] = headings[i] == null && unread[i] != null ? asKnown(unread[i]) : null;
        }
        int read = 0;
        for (int i = 0; i < unread.length; i++) {
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
        HeaderText unitLast = header.unitLast();
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
        List<Heading> names = header.alternatives().stream()
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
