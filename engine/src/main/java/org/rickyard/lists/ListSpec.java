package org.rickyard.lists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.text.HeaderText;

/**
 * An input list, declared once.
 *
 * @param name its canonical name ("Fields"), also the usual sheet name
 * @param synonyms further names a sheet or table of this kind goes by
 * @param columns in canonical order
 * @param identity the columns that name a row; a row in which all of them are blank is not a row of this list
 * @param oneOf for each entry, at least one of its ways must be there in full (Days, or Start and End)
 * @param least how many recognised headers a table needs to be taken for this list when neither its sheet nor its table
 *     is called by the list's name
 * @param unclear header to the columns it could mean
 * @param qualifiers column to the column of words that may stand in its header ("Power (PTO kW)")
 * @param unitColumns column to the column that names the unit of each row
 * @param substitutes required column to the columns any of which makes up for it ("Block" for "Field" of a job)
 * @param hints what headers mean beside others
 */
public record ListSpec(
        String name,
        List<String> synonyms,
        List<ColumnSpec> columns,
        List<ColumnSpec> identity,
        List<OneOf> oneOf,
        int least,
        Map<String, List<ColumnSpec>> unclear,
        Map<ColumnSpec, ColumnSpec> qualifiers,
        Map<ColumnSpec, ColumnSpec> unitColumns,
        Map<ColumnSpec, List<ColumnSpec>> substitutes,
        Hints hints) {

    /**
     * What headers mean beside others.
     *
     * @param told headers that could mean several columns and are told by their neighbours
     * @param otherwise headers that mean a column if no other header of the table does, the likelier ones first
     * @param forBoth headers of one figure that holds for several columns, in normal form
     * @param ifNamed like {@code otherwise}, but only where the sheet, table or title calls the list by its name: tonnes
     *     beside a "Clamp" are in store on a sheet of stocks; on another they may be what it holds
     * @param standIns columns that name the rows where the proper one is missing
     */
    public record Hints(
            List<Told> told,
            List<Otherwise> otherwise,
            List<String> forBoth,
            List<Otherwise> ifNamed,
            List<StandIn> standIns) {}

    /**
     * A column whose header names the rows where the proper one is missing: a "Block" of an orchard is its field.
     *
     * @param column the proper one
     * @param instead the one that stands in
     * @param besideAny columns of which one at least must be there
     */
    public record StandIn(ColumnSpec column, ColumnSpec instead, List<ColumnSpec> besideAny) {}

    /**
     * A header that means a column if no other one does.
     *
     * @param header in normal form
     * @param column what it means
     * @param measured whether it must say a unit: "Fill point (km)", since a "Fill point" may be a name
     * @param without a column beside which it does not mean that; null if it may stand beside any
     * @param besideAny columns of which one must stand beside it; empty if it needs none
     */
    public record Otherwise(
            String header, ColumnSpec column, boolean measured, ColumnSpec without, List<ColumnSpec> besideAny) {
        Otherwise(String header, ColumnSpec column, boolean measured, ColumnSpec without) {
            this(header, column, measured, without, List.of());
        }

        /** How many words the header has. */
        public int words() {
            int words = 1;
            for (int i = 0; i < header.length(); i++) {
                words += header.charAt(i) == ' ' ? 1 : 0;
            }
            return words;
        }
    }

    /**
     * A header that means one column where others stand in the same table: "Rate" the dose where the water volume has a
     * column of its own.
     *
     * @param header in normal form
     * @param column what it means there
     * @param beside the columns that must all be there
     * @param measured whether it must say a unit
     * @param without a column that must not be there; null if any may be
     */
    public record Told(
            String header, ColumnSpec column, List<ColumnSpec> beside, boolean measured, ColumnSpec without) {}

    /**
     * Sets of columns of which one must be there.
     *
     * @param ways each a set of columns that together will do
     */
    public record OneOf(List<List<ColumnSpec>> ways) {
        /** In words: "Days, or Start with End". */
        public String words() {
            List<String> texts = new ArrayList<>();
            for (List<ColumnSpec> way : ways) {
                texts.add(
                        String.join(" with ", way.stream().map(ColumnSpec::name).toList()));
            }
            return String.join(", or ", texts);
        }
    }

    /** A list known by its required columns alone. */
    public ListSpec(String name, List<String> synonyms, List<ColumnSpec> columns) {
        this(
                name,
                synonyms,
                columns,
                columns.stream().filter(ColumnSpec::required).limit(1).toList(),
                List.of(),
                2,
                Map.of(),
                Map.of(),
                Map.of(),
                Map.of(),
                new Hints(List.of(), List.of(), List.of(), List.of(), List.of()));
    }

    /** The column of this name, in any case. */
    public java.util.Optional<ColumnSpec> column(String header) {
        return columns.stream()
                .filter(column -> column.name().equalsIgnoreCase(header))
                .findFirst();
    }

    /** The same, its rows named by these columns. */
    ListSpec identifiedBy(ColumnSpec... names) {
        return new ListSpec(
                name,
                synonyms,
                columns,
                List.of(names),
                oneOf,
                least,
                unclear,
                qualifiers,
                unitColumns,
                substitutes,
                hints);
    }

    /** The same, needing the one or the other of these sets of columns. */
    ListSpec needsOneOf(List<ColumnSpec> one, List<ColumnSpec> other) {
        List<OneOf> all = new ArrayList<>(oneOf);
        all.add(new OneOf(List.of(one, other)));
        return new ListSpec(
                name,
                synonyms,
                columns,
                identity,
                List.copyOf(all),
                least,
                unclear,
                qualifiers,
                unitColumns,
                substitutes,
                hints);
    }

    /** The same, taken for this list only with at least so many known headers. */
    ListSpec needsHeaders(int count) {
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, count, unclear, qualifiers, unitColumns, substitutes, hints);
    }

    /** The same, with a header that could mean any of these columns. */
    ListSpec unclear(List<String> headers, ColumnSpec... candidates) {
        Map<String, List<ColumnSpec>> all = new LinkedHashMap<>(unclear);
        headers.forEach(header -> all.put(header, List.of(candidates)));
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, least, all, qualifiers, unitColumns, substitutes, hints);
    }

    /** The same, words of the one column being understood in the header of the other. */
    ListSpec qualifier(ColumnSpec column, ColumnSpec words) {
        Map<ColumnSpec, ColumnSpec> all = new LinkedHashMap<>(qualifiers);
        all.put(column, words);
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, least, unclear, all, unitColumns, substitutes, hints);
    }

    /** The same, one column naming the unit of others row by row. */
    ListSpec unitColumn(ColumnSpec unit, ColumnSpec... of) {
        Map<ColumnSpec, ColumnSpec> all = new LinkedHashMap<>(unitColumns);
        List.of(of).forEach(column -> all.put(column, unit));
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, least, unclear, qualifiers, all, substitutes, hints);
    }

    /** The same, a required column being made up for by any of the others. */
    ListSpec substitute(ColumnSpec needed, ColumnSpec... others) {
        Map<ColumnSpec, List<ColumnSpec>> all = new LinkedHashMap<>(substitutes);
        all.put(needed, List.of(others));
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, least, unclear, qualifiers, unitColumns, all, hints);
    }

    /** The same, each of these headers (parted by commas) being one column where all of the others are in the table. */
    ListSpec told(String headers, ColumnSpec column, ColumnSpec... beside) {
        ListSpec spec = this;
        for (String header : headers.split(", ")) {
            spec = spec.told(new Told(HeaderText.normal(header), column, List.of(beside), false, null));
        }
        return spec;
    }

    /** The same, if it says a unit. */
    ListSpec toldMeasured(String header, ColumnSpec column, ColumnSpec... beside) {
        return told(new Told(HeaderText.normal(header), column, List.of(beside), true, null));
    }

    /** The same, where another column is not in the table. */
    ListSpec toldWithout(ColumnSpec without, String header, ColumnSpec column, ColumnSpec... beside) {
        return told(new Told(HeaderText.normal(header), column, List.of(beside), false, without));
    }

    private ListSpec told(Told told) {
        List<Told> all = new ArrayList<>(hints.told());
        all.add(told);
        return with(new Hints(List.copyOf(all), hints.otherwise(), hints.forBoth(), hints.ifNamed(), hints.standIns()));
    }

    /** The same, these headers (parted by commas, the likelier first) being one column where no other header is. */
    ListSpec otherwise(ColumnSpec column, String headers) {
        return otherwise(column, headers, false, null);
    }

    /** The same, where another column is not in the table either. */
    ListSpec otherwiseWithout(ColumnSpec without, ColumnSpec column, String headers) {
        return otherwise(column, headers, false, without);
    }

    /** The same, if they say a unit. */
    ListSpec otherwiseMeasured(ColumnSpec column, String headers) {
        return otherwise(column, headers, true, null);
    }

    /** The same, where one of these columns is beside them. */
    ListSpec otherwiseBeside(ColumnSpec column, String headers, ColumnSpec... besideAny) {
        return otherwiseBeside(column, headers, false, besideAny);
    }

    /** The same, if they say a unit. */
    ListSpec otherwiseMeasuredBeside(ColumnSpec column, String headers, ColumnSpec... besideAny) {
        return otherwiseBeside(column, headers, true, besideAny);
    }

    private ListSpec otherwiseBeside(ColumnSpec column, String headers, boolean measured, ColumnSpec... besideAny) {
        List<Otherwise> all = new ArrayList<>(hints.otherwise());
        for (String header : headers.split(", ")) {
            all.add(new Otherwise(HeaderText.normal(header), column, measured, null, List.of(besideAny)));
        }
        return with(new Hints(hints.told(), List.copyOf(all), hints.forBoth(), hints.ifNamed(), hints.standIns()));
    }

    private ListSpec otherwise(ColumnSpec column, String headers, boolean measured, ColumnSpec without) {
        List<Otherwise> all = new ArrayList<>(hints.otherwise());
        List.of(headers.split(", "))
                .forEach(header -> all.add(new Otherwise(HeaderText.normal(header), column, measured, without)));
        return with(new Hints(hints.told(), List.copyOf(all), hints.forBoth(), hints.ifNamed(), hints.standIns()));
    }

    /** The same, an unclear header holding for all its columns alike where it stands alone. */
    ListSpec forBoth(String header) {
        List<String> all = new ArrayList<>(hints.forBoth());
        all.add(HeaderText.normal(header));
        return with(new Hints(hints.told(), hints.otherwise(), List.copyOf(all), hints.ifNamed(), hints.standIns()));
    }

    /** The same, one column standing in for another where one of these is beside it. */
    ListSpec standIn(ColumnSpec column, ColumnSpec instead, ColumnSpec... besideAny) {
        List<StandIn> all = new ArrayList<>(hints.standIns());
        all.add(new StandIn(column, instead, List.of(besideAny)));
        return with(new Hints(hints.told(), hints.otherwise(), hints.forBoth(), hints.ifNamed(), List.copyOf(all)));
    }

    /**
     * The same, these headers meaning a column that no other header does, where the list is called by its name.
     *
     * @param besideAny columns of which one must stand beside it; none if it needs none
     */
    ListSpec ifNamed(ColumnSpec column, String headers, ColumnSpec... besideAny) {
        List<Otherwise> all = new ArrayList<>(hints.ifNamed());
        for (String header : headers.split(", ")) {
            all.add(new Otherwise(HeaderText.normal(header), column, false, null, List.of(besideAny)));
        }
        return with(new Hints(hints.told(), hints.otherwise(), hints.forBoth(), List.copyOf(all), hints.standIns()));
    }

    private ListSpec with(Hints other) {
        return new ListSpec(
                name, synonyms, columns, identity, oneOf, least, unclear, qualifiers, unitColumns, substitutes, other);
    }

    /** A declared list is itself only. */
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}
