package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Substance;

/**
 * Several products in one row, each with its dose: "Product 1", "Dose 1", "Product 2", "Dose 2", or the same headers
 * again and again. Each product is read as if it stood in a row of its own, which shares the rest of its row with the
 * others: as rows of one job they are one tank mix.
 */
public final class ProductsInARow {
    /** A single digit that counts products and is no part of a unit, of P2O5 or of a longer number. */
    private static final Pattern NUMBER =
            Pattern.compile("(?i)^[^(\\[{,:]*?(?<=[\\p{L}\\s.#])(?<!\\b(?:m|cm|mm|ft|in|yd|dm|p2o))"
                    + "(\\s*(?:\\bno\\.?\\s*|#\\s*)?(?<![\\d.,])([1-9]))(?![\\p{L}\\d.,/%²³])");

    private static final String UNIT = "unit";

    /** One header that is of a product: which column, by which number (0 for none), and where. */
    private record Part(int place, int number, String name, Heading heading) {
        boolean is(ColumnSpec column) {
            return heading.column() == column;
        }
    }

    private final HeaderRow.Match match;
    private final String[] headers;
    private final List<ColumnSpec> columns;
    private final List<Part> products = new ArrayList<>();
    private final List<Part> others = new ArrayList<>();
    /** What the products hold, as far as headers tell it. */
    private final List<Part> contents = new ArrayList<>();

    private ProductsInARow(HeaderRow.Match match, String[] headers) {
        this.match = match;
        this.headers = headers;
        this.columns = columns(match.vocabulary().spec());
    }

    /** The product of a list, its dose and its dose's unit; none for lists that are not of products used. */
    private static List<ColumnSpec> columns(ListSpec spec) {
        return spec == Jobs.LIST
                ? List.of(Jobs.PRODUCT, Jobs.DOSE, Jobs.DOSE_UNIT)
                : spec == Mixes.LIST ? List.of(Mixes.PRODUCT, Mixes.DOSE, Mixes.DOSE_UNIT) : List.of();
    }

    /** What is told beside the dose of a product in it. */
    private static List<ColumnSpec> contents(ListSpec spec) {
        return spec == Jobs.LIST
                ? Stream.of(Substance.values()).map(Jobs::contentOf).toList()
                : List.of();
    }

    /** What a header means without the number of the product it is of: "Dose 2 (L/ha)"; null if it is not one. */
    static Heading read(Vocabulary vocabulary, HeaderText header) {
        List<ColumnSpec> columns = columns(vocabulary.spec());
        Matcher number = NUMBER.matcher(header.raw());
        if (columns.isEmpty() || !number.find()) {
            return null;
        }
        HeaderText bare = HeaderText.of(without(header.raw(), number));
        if (bare.normal().equals(UNIT)) {
            return new Heading(List.of(columns.get(2)), "", 2, false, null);
        }
        Heading heading = vocabulary.read(bare);
        List<ColumnSpec> contents = contents(vocabulary.spec());
        return heading != null
                        && heading.candidates().stream()
                                .anyMatch(column -> columns.contains(column) || contents.contains(column))
                ? heading
                : null;
    }

    private static String without(String header, Matcher number) {
        return header.substring(0, number.start(1)) + header.substring(number.end(1));
    }

    /**
     * The header read once for each product; only the first time for a row that has no more than one.
     *
     * @param headers per column of the sheet
     */
    public static List<HeaderRow.Match> parted(HeaderRow.Match match, String[] headers) {
        ProductsInARow row = new ProductsInARow(match, headers);
        row.look();
        return row.products.isEmpty()
                ? List.of(row.withoutNumbered())
                : row.areOneAfterAnother() ? row.part() : List.of(match);
    }

    private void look() {
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            ColumnSpec column = heading == null || heading.settled() ? null : ofProduct(heading);
            if (column != null) {
                String header = headers[match.firstColumn() + i];
                Matcher number = NUMBER.matcher(header);
                boolean numbered = number.find();
                Part part = new Part(
                        i,
                        numbered ? Integer.parseInt(number.group(2)) : 0,
                        HeaderText.normal(numbered ? without(header, number) : header),
                        heading.as(column, heading.rest()));
                (part.is(columns.get(0)) ? products : columns.contains(column) ? others : contents).add(part);
            }
        }
    }

    /** Without a product to go by, "Rate 2" is a rate of anything. */
    private HeaderRow.Match withoutNumbered() {
        Heading[] headings = match.headings().clone();
        Stream.concat(others.stream(), contents.stream())
                .filter(part -> part.number() > 0)
                .forEach(part -> headings[part.place()] = null);
        return match.with(headings);
    }

    private ColumnSpec ofProduct(Heading heading) {
        return heading.isCertain()
                ? columns.contains(heading.column())
                                || contents(match.vocabulary().spec()).contains(heading.column())
                        ? heading.column()
                        : null
                : columns.stream()
                        .filter(heading.candidates()::contains)
                        .findFirst()
                        .orElse(null);
    }

    /** Whether the products are told apart by their numbers, or are the same header again, and each has its own dose. */
    private boolean areOneAfterAnother() {
        boolean sameName = products.stream().map(Part::name).distinct().count() == 1;
        long numbers = products.stream()
                .map(Part::number)
                .filter(number -> number > 0)
                .distinct()
                .count();
        long bare = products.stream().filter(part -> part.number() == 0).count();
        boolean orphans = others.stream().anyMatch(part -> part.number() > 0 && productOf(part) == null);
        return products.size() > 1
                && sameName
                && !orphans
                && (bare == products.size() || numbers + Math.min(bare, 1) == products.size())
                && columns.stream().skip(1).allMatch(this::isSpreadEvenly);
    }

    /** One dose for several products, or one on the left of its product, could be of any of them. */
    private boolean isSpreadEvenly(ColumnSpec column) {
        List<Part> ofColumn = Stream.concat(others.stream(), contents.stream())
                .filter(part -> part.is(column))
                .toList();
        return ofColumn.stream().allMatch(part -> part.number() > 0)
                || products.stream()
                        .allMatch(product -> ofColumn.stream().anyMatch(part -> productOf(part) == product));
    }

    private List<HeaderRow.Match> part() {
        List<HeaderRow.Match> parted = new ArrayList<>();
        for (Part product : products) {
            Heading[] headings = match.headings().clone();
            products.forEach(part -> headings[part.place()] = null);
            others.forEach(part -> headings[part.place()] = null);
            contents.forEach(part -> headings[part.place()] = null);
            headings[product.place()] = product.heading();
            for (Part other : others) {
                if (productOf(other) == product) {
                    headings[other.place()] = other.heading();
                }
            }
            // One content beside several products is of nobody knows which.
            for (Part content : contents) {
                if (productOf(content) == product
                        && isSpreadEvenly(content.heading().column())) {
                    headings[content.place()] = content.heading();
                }
            }
            parted.add(match.with(headings));
        }
        return parted;
    }

    /** The product of the same number; for a header without one, the product on its left. */
    private Part productOf(Part other) {
        Part left = null;
        for (Part product : products) {
            boolean unnumbered = product.number() == 0 && other.number() == 1;
            if (other.number() > 0 && (product.number() == other.number() || unnumbered)) {
                return product;
            }
            left = product.place() < other.place() ? product : left;
        }
        return other.number() == 0 ? left : null;
    }

    /** The column of the sheet that names the product. */
    private static int productAt(HeaderRow.Match match) {
        ColumnSpec product = columns(match.vocabulary().spec()).get(0);
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && heading.column() == product) {
                return match.firstColumn() + i;
            }
        }
        throw new IllegalStateException("a row of products without one");
    }

    /** Which of the products a row names, of the headers parted: {@code takes[which]}; the first where it names none. */
    public static boolean takes(List<HeaderRow.Match> parted, int which, Grid grid, int row) {
        if (parted.size() == 1 || names(parted.get(which), grid, row)) {
            return true;
        }
        return which == 0 && parted.stream().noneMatch(match -> names(match, grid, row));
    }

    private static boolean names(HeaderRow.Match match, Grid grid, int row) {
        String name = grid.words(row, productAt(match));
        return !name.isBlank() && !Words.marksBlank(Words.trim(name));
    }

    /** Said once of a header that was parted. */
    public static Finding told(List<HeaderRow.Match> parted, Grid grid, int headerRow, String[] headers) {
        List<String> names = parted.stream()
                .map(match -> Words.quoted(headers[productAt(match)]))
                .distinct()
                .toList();
        String which =
                names.size() == 1 ? "The " + parted.size() + " columns " + names.get(0) : String.join(" and ", names);
        ListSpec spec = parted.get(0).vocabulary().spec();
        return Finding.note(
                grid.address(headerRow, productAt(parted.get(0))),
                which + " are read as the products of one tank mix, each with the dose that belongs to it, as if each"
                        + " stood in a row of " + spec.name() + " of its own.");
    }
}
