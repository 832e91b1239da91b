package org.rickyard.lists.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** A header cut into words, so that its first words can be taken as a name and the rest as a unit: "Working width (m)". */
public final class HeaderText {
    private static final Pattern BRACKETS = Pattern.compile("[\\[\\](){}]");
    private static final Pattern MARKS = Pattern.compile("^[\\s,:;.*#_=?–—-]+|[\\s,:;.*#_=?–—-]+$");

    /** A year, or the two years of a season: 2026, 2026/27, 2026-2027, '26. */
    private static final Pattern YEAR = Pattern.compile(
            "(?<![\\p{L}\\d.,])(?:(?:19|20)\\d\\d(?:\\s?[/–-]\\s?(?:(?:19|20)\\d\\d|\\d\\d))?|['’]\\d\\d)(?![\\p{L}\\d])");

    private static final Pattern SHARE = Pattern.compile("(?i)%|per ?cent|percentage|pct");

    /** Words that advisers cut short in a header, and what they stand for. */
    private static final Map<String, String> CUT_SHORT = Map.ofEntries(
            Map.entry("dist", "distance"),
            Map.entry("eff", "efficiency"),
            Map.entry("effic", "efficiency"),
            Map.entry("fwd", "forward"),
            Map.entry("spd", "speed"),
            Map.entry("fld", "field"),
            Map.entry("mach", "machine"),
            Map.entry("wkg", "working"),
            Map.entry("wdth", "width"),
            Map.entry("lgth", "length"),
            Map.entry("ht", "height"),
            Map.entry("hgt", "height"),
            Map.entry("wt", "weight"),
            Map.entry("len", "length"),
            Map.entry("op", "operating"),
            Map.entry("appl", "application"),
            Map.entry("app", "application"),
            Map.entry("proj", "projected"),
            Map.entry("exp", "expected"),
            Map.entry("est", "estimated"),
            Map.entry("avg", "average"),
            Map.entry("ave", "average"),
            Map.entry("av", "average"),
            Map.entry("cap", "capacity"),
            Map.entry("vol", "volume"),
            Map.entry("qty", "quantity"),
            Map.entry("temp", "temperature"),
            Map.entry("max", "maximum"),
            Map.entry("min", "minimum"),
            Map.entry("no", "number"),
            Map.entry("nr", "number"),
            Map.entry("hr", "hour"),
            Map.entry("hrs", "hour"));

    /** Things of which a plural tells how many there are, where the word itself tells how long, deep or heavy one is. */
    private static final Set<String> COUNTED = Set.of(
            "layer", "cut", "load", "run", "bout", "turn", "fill", "haul", "tank", "boom", "pack", "can", "container");

    private final String raw;
    private final List<String> words;
    private final List<Integer> ends;

    // What has been asked of it so far, for every list asks the same; null until then.
    private String[] names;
    private String[] rests;
    private TurnedHeader turned;
    private Optional<HeaderText> withoutYear;
    private Optional<HeaderText> withoutHowKnown;
    private Boolean tells;
    private Boolean share;

    private HeaderText(String raw, List<String> words, List<Integer> ends) {
        this.raw = raw;
        this.words = words;
        this.ends = ends;
    }

    public static HeaderText of(String header) {
        // "# nozzles" is how many there are; a lone # numbers the rows.
        String plain = PlainHeader.of(header.replace('\u00a0', ' ').replace('\u202f', ' '));
        String raw = plain.startsWith("#") && plain.length() > 1
                ? "No. of " + plain.substring(1).strip()
                : plain;
        List<String> words = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        int start = -1;
        for (int i = 0; i <= raw.length(); i++) {
            char c = i < raw.length() ? Words.plain(raw.charAt(i)) : ' ';
            boolean inWord = Character.isLetterOrDigit(c) || start >= 0 && (c == '\'' || c == '’');
            if (inWord && start < 0) {
                start = i;
            } else if (!inWord && start >= 0) {
                String word = Words.normal(raw.substring(start, i));
                words.add(CUT_SHORT.getOrDefault(word, word));
                ends.add(i);
                start = -1;
            }
        }
        return new HeaderText(raw, words, ends);
    }

    /** A name in the form in which headers are compared: as a header's words are, whole words for those cut short. */
    public static String normal(String name) {
        return of(name).normal();
    }

    /** As it stands in the cell, spaces that do not break as plain ones. */
    public String raw() {
        return raw;
    }

    /** Where each word ends in {@link #raw}. */
    public List<Integer> ends() {
        return ends;
    }

    /** Its words, each in the form of {@link Words#normal}. */
    public List<String> words() {
        return words;
    }

    /** The same in other words; every list asks. */
    public TurnedHeader turned() {
        if (turned == null) {
            turned = TurnedHeader.of(this);
        }
        return turned;
    }

    /** The header without its year, or null if it names none. */
    public HeaderText withoutYear() {
        if (withoutYear == null) {
            String without = withoutYear(raw);
            withoutYear = without.equals(raw) ? Optional.empty() : Optional.of(of(without));
        }
        return withoutYear.orElse(null);
    }

    /** The header without the words that tell {@link HowKnown how its figures are known}; null if it has none, or no more. */
    public HeaderText withoutHowKnown() {
        if (withoutHowKnown == null) {
            String without = HowKnown.isSaid(words) ? HowKnown.without(raw) : "";
            withoutHowKnown = without.isEmpty() ? Optional.empty() : Optional.of(of(without));
        }
        return withoutHowKnown.orElse(null);
    }

    /** Whether it is nothing but a unit that tells what is measured in it; every list asks. */
    public boolean tellsColumn() {
        if (tells == null) {
            tells = SaidUnit.tellsColumn(raw);
        }
        return tells;
    }

    /** Whether it is a share, of whatever; every list asks. */
    public boolean saysShare() {
        if (share == null) {
            share = saysShare(raw);
        }
        return share;
    }

    /** "% overlap" and "Percent overlap" are shares, of whatever. */
    public static boolean saysShare(String header) {
        if (header.indexOf('%') >= 0) {
            return true;
        }
        String normal = Words.normal(header);
        return Words.holds(normal, "percent") || Words.holds(normal, "percentage") || Words.holds(normal, "per cent");
    }

    /** Whether it is a share of what its first {@code count} words name: "% CV", "CV (%)". */
    public boolean isShareOf(int count) {
        return raw.startsWith("%") || SHARE.matcher(rest(count)).matches();
    }

    /** A text without the first year in it. */
    public static String withoutYear(String text) {
        return YEAR.matcher(text).replaceFirst(" ");
    }

    /** The first {@code count} words. */
    public String name(int count) {
        if (names == null) {
            names = new String[words.size() + 1];
        }
        if (names[count] == null) {
            names[count] = String.join(" ", words.subList(0, count));
        }
        return names[count];
    }

    /** Whether its first words are this name, given in normal form. */
    public boolean begins(String name) {
        if (!normal().startsWith(name)) {
            return false;
        }
        int count = 1;
        for (int i = 0; i < name.length(); i++) {
            count += name.charAt(i) == ' ' ? 1 : 0;
        }
        return words.size() >= count && name(count).equals(name);
    }

    /** The whole header in normal form. */
    public String normal() {
        return name(words.size());
    }

    /** What follows the first {@code count} words, brackets and leading marks taken off; a leading slash is kept. */
    public String rest(int count) {
        if (rests == null) {
            rests = new String[words.size() + 1];
        }
        if (rests[count] == null) {
            String tail = count == 0 ? raw : raw.substring(ends.get(count - 1));
            String open = BRACKETS.matcher(tail).replaceAll(" ").strip();
            String cut = MARKS.matcher(open).replaceAll("");
            rests[count] =
                    cut.regionMatches(true, 0, "in ", 0, 3) ? cut.substring(3).strip() : cut;
        }
        return rests[count];
    }

    /** Whether the first {@code count} words end in the plural of what is counted: "Layers", "No. of cuts". */
    public boolean counts(int count) {
        String last = words.get(count - 1);
        return COUNTED.contains(last)
                && !raw.substring(0, ends.get(count - 1))
                        .toLowerCase(java.util.Locale.ROOT)
                        .endsWith(last);
    }

    /** Whether what follows the first {@code count} words is set off by a bracket, comma, colon or new line. */
    public boolean isSetOff(int count) {
        String tail = raw.substring(ends.get(count - 1));
        int i = 0;
        while (i < tail.length() && (tail.charAt(i) == ' ' || tail.charAt(i) == '.' || tail.charAt(i) == '*')) {
            i++;
        }
        return i < tail.length() && "([{,:;\n\r".indexOf(tail.charAt(i)) >= 0;
    }
}
