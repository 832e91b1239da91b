package org.rickyard.lists.text;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/**
 * A header in other words: the name first and then the unit, as is usual, or one name of several. Each is null, or the
 * names none, where the header is nothing like it.
 *
 * @param unitLast with its unit at the end
 * @param alternatives the names that it gives as one or the other
 * @param price the price it is in words
 * @param dryMatterOfYield the share of dry matter that it says of a yield
 * @param distance the distance whose unit it begins with
 */
public record TurnedHeader(
        HeaderText unitLast,
        List<HeaderText> alternatives,
        HeaderText price,
        HeaderText dryMatterOfYield,
        HeaderText distance) {
    /** Two names for one thing: "Townland / field", "Field or paddock". */
    private static final Pattern OR = Pattern.compile("\\s*(?:/|\\\\|\\bor\\b)\\s*", Pattern.CASE_INSENSITIVE);

    private static final Pattern DRY_MATTER_OF_YIELD =
            Pattern.compile("(yield )?(dm|dry matter|moisture) ?(%|\\(%\\)|per ?cent)?( (of|at|in) )?(the )?(yield)?"
                    + " ?(%|\\(%\\)|per ?cent)?");

    static TurnedHeader of(HeaderText header) {
        return new TurnedHeader(
                unitLast(header), alternatives(header), price(header), dryMatterOfYield(header), distance(header));
    }

    /** Whether it may mean something by one of two names, or with its unit at the end. */
    public boolean mayBeTurned() {
        return unitLast != null || alternatives.size() > 1;
    }

    /**
     * "Haul mi. one way" with its unit at the end, "Haul one way (mi)", and so "mph laden"; null if no unit stands between
     * its words or before them.
     */
    private static HeaderText unitLast(HeaderText header) {
        List<Integer> ends = header.ends();
        for (int word = 1; word + 1 < ends.size(); word++) {
            String said = header.raw().substring(ends.get(word - 1), ends.get(word));
            String unit = said.replaceFirst("^[\\s,;:.(\\[]+", "");
            // "Distance in km": what stands before a unit as a rule is none.
            if (unit.length() < said.length() && !unit.equalsIgnoreCase("in") && SaidUnit.measures(unit)) {
                String behind = header.raw().substring(ends.get(word)).replaceFirst("^[.)\\]]+", "");
                return HeaderText.of(
                        header.raw().substring(0, ends.get(word - 1)) + " " + behind.strip() + " (" + unit + ")");
            }
        }
        return unitFirst(header.raw().strip());
    }

    private static HeaderText unitFirst(String raw) {
        int end = raw.indexOf(' ');
        String unit = end < 1 ? "" : raw.substring(0, end).replaceFirst("[.,:]$", "");
        return !unit.isEmpty() && !unit.equalsIgnoreCase("in") && SaidUnit.measures(unit)
                ? HeaderText.of(raw.substring(end).strip() + " (" + unit + ")")
                : null;
    }

    /** The names that a header gives as one or the other; empty if it is one name. */
    private static List<HeaderText> alternatives(HeaderText header) {
        String[] names = OR.split(header.raw().strip());
        return names.length < 2
                ? List.of()
                : Stream.of(names)
                        .filter(name -> !name.isBlank())
                        .map(HeaderText::of)
                        .toList();
    }

    /**
     * "Yield DM %" is what share of the yield is dry matter, and no yield that was weighed as dry matter: the same without
     * the yield; null if it is nothing like it.
     */
    private static HeaderText dryMatterOfYield(HeaderText header) {
        String lower = header.raw().strip().toLowerCase(Locale.ROOT);
        boolean share = lower.contains("yield") && (lower.contains("%") || lower.contains("cent"));
        return share && DRY_MATTER_OF_YIELD.matcher(lower).matches()
                ? HeaderText.of(lower.contains("moisture") ? "Moisture (%)" : "DM (%)")
                : null;
    }

    /** "£/pack" in words, "Price per pack": it is money, and not the pack; null if it does not begin with money. */
    private static HeaderText price(HeaderText header) {
        String raw = header.raw().strip();
        String per = Words.beginsWithCurrency(raw) ? raw.substring(1).strip() : "";
        if (per.startsWith("/")) {
            return HeaderText.of("Price per " + per.substring(1).strip());
        }
        return per.regionMatches(true, 0, "per ", 0, 4) ? HeaderText.of("Price " + per) : null;
    }

    /** "Miles to bowser" with its words in the usual order, "Distance to bowser (Miles)"; null if it is nothing like it. */
    private static HeaderText distance(HeaderText header) {
        List<String> words = header.words();
        boolean goes =
                words.size() > 2 && (words.get(1).equals("to") || words.get(1).equals("from"));
        if (!goes) {
            return null;
        }
        String unit = header.raw().substring(0, header.ends().get(0)).strip();
        boolean length = UnitText.read(unit, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(Units.M);
        return length
                ? HeaderText.of(
                        "Distance" + header.raw().substring(header.ends().get(0)) + " (" + unit + ")")
                : null;
    }
}
