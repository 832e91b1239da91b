package org.rickyard.lists.header;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * A "Herbicide" beside the work, which is the product of its row where no other header names one; and a "Seed rate" beside
 * it, which is no dose of it.
 */
final class KindsOfProduct {
    /** What is sprayed, by what it is for: one of them is the product of its row, several are several products. */
    static final Pattern KIND = Pattern.compile(
            "(herbicide|fungicide|insecticide|desiccant|molluscicide|growth regulator|pgr|foliar feed)( name| used| applied)?");

    /** What is sown: the product of its row where nothing sprayed stands beside it. */
    private static final Pattern SOWN = Pattern.compile("seed( name| used| mix| mixture)?");

    private static final String SEED = "seed";
    private static final String MANURE = "manure";
    private static final String FERTILISER = "fertiliser";
    private static final String ANY_SPRAY = "spray";

    /** Words of headers that say of what kind a product or a dose is; of sprays, whether of one kind or of any. */
    private static final Map<String, String> KINDS = Map.ofEntries(
            Map.entry(SEED, SEED),
            Map.entry("seeding", SEED),
            Map.entry("sowing", SEED),
            Map.entry(FERTILISER, FERTILISER),
            Map.entry("fertilizer", FERTILISER),
            Map.entry("fert", FERTILISER),
            Map.entry("slurry", MANURE),
            Map.entry(MANURE, MANURE),
            Map.entry("muck", MANURE),
            Map.entry("lime", "lime"),
            Map.entry("herbicide", "herbicide"),
            Map.entry("fungicide", "fungicide"),
            Map.entry("insecticide", "insecticide"),
            Map.entry("desiccant", "desiccant"),
            Map.entry("molluscicide", "molluscicide"),
            Map.entry("growth regulator", "growth regulator"),
            Map.entry("pgr", "growth regulator"),
            Map.entry("chemical", ANY_SPRAY),
            Map.entry("chem", ANY_SPRAY),
            Map.entry("pesticide", ANY_SPRAY),
            Map.entry("agrochemical", ANY_SPRAY));

    private static final Set<String> NO_SPRAYS = Set.of(SEED, MANURE, FERTILISER, "lime");

    private static final Set<String> TICKS = Set.of("yes", "no", "y", "n", "x", "true", "false", "✓", "✔", "done");

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    KindsOfProduct(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** Reads the one there is as the product, and tells of it; none where there are several. */
    void apply(HeaderRow.Match match, Heading[] headings) {
        if (match.vocabulary().spec() != Jobs.LIST || match.places(Jobs.PRODUCT) > 0 || match.places(Jobs.MIX) > 0) {
            return;
        }
        List<Integer> places = places(match, headings, KIND);
        if (places.isEmpty()) {
            places = places(match, headings, SOWN);
        }
        if (places.size() != 1) {
            return;
        }
        int place = places.get(0);
        int column = match.firstColumn() + place;
        headings[place] = new Heading(List.of(Jobs.PRODUCT), "", 2, false, null);
        findings.add(Finding.note(
                grid.address(headerRow, column),
                Words.quoted(headers[column]) + " is read as the " + Jobs.PRODUCT.name() + " of " + Jobs.LIST.name()
                        + ", since no other header names one. If it is something else, rename it."));
    }

    private List<Integer> places(HeaderRow.Match match, Heading[] headings, Pattern kind) {
        return IntStream.range(0, headings.length)
                .filter(i -> headings[i] == null)
                .filter(i -> headers[match.firstColumn() + i] != null)
                .filter(i -> kind.matcher(HeaderText.normal(headers[match.firstColumn() + i]))
                        .matches())
                .filter(i -> mayHoldNames(match.firstColumn() + i))
                .boxed()
                .toList();
    }

    /** "Seed rate" beside a "Herbicide" is of the seed, which has no column: read as the dose, it drowned a field in it. */
    void partDoses(HeaderRow.Match match, Heading[] headings) {
        int product = place(headings, Jobs.PRODUCT);
        int dose = place(headings, Jobs.DOSE);
        if (match.vocabulary().spec() != Jobs.LIST
                || product < 0
                || dose < 0
                || headings[product].settled()
                || headings[dose].settled()) {
            return;
        }
        int column = match.firstColumn() + dose;
        String named = headers[match.firstColumn() + product];
        if (areOfOthers(kind(named), kind(headers[column]))) {
            headings[dose] = null;
            findings.add(Finding.caution(
                    grid.address(headerRow, column),
                    Words.quoted(headers[column]) + " is not read as the " + Jobs.DOSE.name() + " of "
                            + Words.quoted(named)
                            + ", for it is of something else. Write one row for each product, with"
                            + " columns Product, Dose and Dose unit."));
        }
    }

    private static int place(Heading[] headings, ColumnSpec column) {
        for (int i = 0; i < headings.length; i++) {
            if (headings[i] != null && headings[i].isCertain() && headings[i].column() == column) {
                return i;
            }
        }
        return -1;
    }

    /** What kind of product a header names; null if it names none or several. */
    private static String kind(String header) {
        String normal = HeaderText.normal(header);
        List<String> kinds = KINDS.keySet().stream()
                .filter(word -> Words.holds(normal, word))
                .map(KINDS::get)
                .distinct()
                .toList();
        return kinds.size() == 1 ? kinds.get(0) : null;
    }

    private static boolean areOfOthers(String product, String dose) {
        if (product == null || dose == null || product.equals(dose)) {
            return false;
        }
        boolean any = product.equals(ANY_SPRAY) || dose.equals(ANY_SPRAY);
        return !any || NO_SPRAYS.contains(product) || NO_SPRAYS.contains(dose);
    }

    /** Whether what stands under a header may be names, or nothing yet: figures and ticks are none. */
    private boolean mayHoldNames(int column) {
        boolean others = false;
        for (int row = headerRow + 1; row < TextsBelow.end(grid, headerRow); row++) {
            Grid.Kind kind = grid.kind(row, column);
            String text = kind == Grid.Kind.TEXT ? Words.normal(grid.text(row, column)) : "";
            if (!text.isEmpty() && !TICKS.contains(text)) {
                return true;
            }
            others |= kind == Grid.Kind.NUMBER || !text.isEmpty();
        }
        return !others;
    }
}
