package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** A name that several columns of a list go by: its unit and what stands beside it tell which, or it is asked. */
final class UnclearName {
    private static final Pattern FRESH =
            Pattern.compile("(?i)[(\\[,]* ?\\b(wet|fresh|as fed|as is)( weight| matter)?\\b ?[)\\]]*");

    private final ListSpec spec;
    private final BesideName beside;
    private final Vocabulary vocabulary;

    UnclearName(ListSpec spec, BesideName beside, Vocabulary vocabulary) {
        this.spec = spec;
        this.beside = beside;
        this.vocabulary = vocabulary;
    }

    /** What a header means that begins with such a name of {@code count} words; null if none of the columns. */
    Heading read(List<ColumnSpec> candidates, HeaderText header, int count) {
        List<ColumnSpec> doses = candidates.stream()
                .filter(candidate -> candidate.type() == ColumnSpec.Type.DOSE)
                .toList();
        if (doses.size() == 1 && SaidUnit.isPerSpray(header.rest(count))) {
            return new Heading(doses, header.rest(count), 2, false, null);
        }
        List<ColumnSpec> fitting = new ArrayList<>();
        String rest = "";
        for (ColumnSpec candidate : candidates) {
            String read = beside.read(candidate, header, count);
            boolean noShare = header.isShareOf(count) && !HeaderUnit.fits(candidate, "%");
            if (read != null && !noShare && (read.isEmpty() || HeaderUnit.fits(candidate, read))) {
                fitting.add(candidate);
                rest = read;
            }
        }
        if (fitting.contains(Clamps.FRESH_DENSITY) && saysFresh(header)) {
            return new Heading(List.of(Clamps.FRESH_DENSITY), rest, 2, false, null);
        }
        if (fitting.isEmpty() && candidates.contains(Clamps.FRESH_DENSITY) && saysFresh(header)) {
            String unit = FRESH.matcher(header.rest(count)).replaceAll("").strip();
            if (HeaderUnit.fits(Clamps.FRESH_DENSITY, unit)) {
                return new Heading(List.of(Clamps.FRESH_DENSITY), unit, 2, false, null);
            }
        }
        if (fitting.isEmpty()
                && (SaidUnit.isMoney(header.rest(count))
                        || header.isShareOf(count)
                        || isOtherwise(header, count)
                        || isGivenPerArea(header.rest(count)))) {
            return null;
        }
        if (fitting.isEmpty()) {
            // "Rate/ac" tells of what it is a rate no more than "Rate" does.
            boolean empty =
                    header.rest(count).isEmpty() || header.isSetOff(count) || SaidUnit.isAreaAlone(header.rest(count));
            return empty ? new Heading(candidates, header.rest(count), 1, false, null) : null;
        }
        boolean told = fitting.size() == 1 && candidates.size() > 1 && !rest.isEmpty();
        return new Heading(fitting, rest, told ? 2 : 1, false, null);
    }

    /** "Rate (L/ha)" is no speed, output or charge of a sprayer; "Rate/ha" does not tell what it is a rate of. */
    private static boolean isGivenPerArea(String rest) {
        return SaidUnit.isUnit(rest) && SaidUnit.isPerArea(rest) && !SaidUnit.isAreaAlone(rest);
    }

    /** "Density (lb/ft3 as fed)" is no density of dry matter. */
    private static boolean saysFresh(HeaderText header) {
        String normal = header.normal();
        return Words.holds(normal, "as fed")
                || Words.holds(normal, "fresh")
                || Words.holds(normal, "as is")
                || Words.holds(normal, "wet");
    }

    /** Whether a name that is unclear by itself means yet another column by its unit: "Work rate (ac/h)". */
    private boolean isOtherwise(HeaderText header, int count) {
        String name = header.name(count);
        return spec.hints().otherwise().stream()
                .anyMatch(otherwise -> otherwise.measured()
                        && otherwise.header().equals(name)
                        && vocabulary.heading(otherwise, header) != null);
    }
}
