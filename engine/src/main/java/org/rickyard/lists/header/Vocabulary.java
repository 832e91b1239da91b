package org.rickyard.lists.header;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** The headers one list understands. */
public final class Vocabulary {
    /**
     * Columns that a year beside the name leaves what they are. Of others it makes a record of that year: "Yield 2025"
     * is what was carted then, not what is expected.
     */
    private static final Set<ColumnSpec> OF_A_YEAR = Set.of(Fields.CROP, Fields.AREA);

    /** How many words as "the" and "of" a header may have more than a name. */
    private static final int SMALL_WORDS = 3;

    /** "Other" beside a label's words is no machine's name. */
    private static final String ANY_OTHER = "other";

    private static final Pattern NAME_OF = Pattern.compile(" name$");

    private static final Pattern PRODUCT_IN_UNIT = Pattern.compile("(?i) ?\\bproduct\\b");

    private static final Map<ColumnSpec, Unit> OF_A_SEASON = Map.of(
            Machines.TEST_AREA, Units.AC,
            Machines.TIMED_DISTANCE, Units.KM,
            Machines.TEST_VOLUME, Units.M3,
            Machines.TEST_WEIGHT, Units.T);

    private static final Set<String> END_OF_RANGE =
            Set.of("min", "minimum", "lowest", "low", "max", "maximum", "highest", "high");

    private final ListSpec spec;
    private final KnownHeaders known;
    private final BesideName beside;
    private final UnclearName unclear;
    private final OtherwiseHeaders otherwise;
    private final LayoutHeaders settled = new LayoutHeaders();

    /** What headers were read as, by their text: rows that could be headers, as those of a diary, are asked about often. */
    private final KeptByText<Optional<Heading>> kept = new KeptByText<>();

    public Vocabulary(ListSpec spec) {
        this.spec = spec;
        known = KnownHeaders.of(spec);
        beside = new BesideName(spec, known);
        unclear = new UnclearName(spec, beside, this);
        otherwise = new OtherwiseHeaders(this);
    }

    /** The list whose headers these are. */
    public ListSpec spec() {
        return spec;
    }

    /**
     * Takes what a row of the Layout sheet says of a header. Where another row says otherwise, neither is believed: the
     * header is asked about.
     *
     * @param unit its unit; "" if the row says none
     * @return whether no row before says otherwise
     */
    public boolean settle(String header, ColumnSpec column, String unit) {
        kept.forget();
        otherwise.forget();
        return settled.add(header, column, unit);
    }

    /** The headers that the Layout sheet names for the list, in normal form. */
    public Set<String> settled() {
        return settled.headers();
    }

    /** The first word of every header that means something here. */
    public Set<String> firstWords() {
        Set<String> first = new HashSet<>(known.firstWords());
        first.addAll(settled.firstWords());
        return first;
    }

    /** Whether a sheet, table or title calls the list by its name. */
    public boolean isNamed(String title) {
        String normal = Words.normal(title);
        for (String name : known.names()) {
            if (normal.equals(name) || normal.startsWith(name + " ") || normal.endsWith(" " + name)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a sheet is called just so. */
    public boolean isCalled(String title) {
        return known.names().contains(Words.normal(title));
    }

    /** Whether a row of headers has the one that the list's rows are known by. */
    public boolean isKnownIn(HeaderRow.Match match) {
        return !spec.identity().isEmpty() && match.places(spec.identity().get(0)) > 0;
    }

    /** Whether a header may mean something where no other header does. */
    public boolean mayMeanOtherwise(HeaderText header) {
        return otherwise.mayMean(header);
    }

    /** Whether a header means what the list's rows are known by, where no other does or the list is called by its name. */
    public boolean mayNameRows(String header) {
        return otherwise.mayNameRows(HeaderText.of(header));
    }

    /** Whether a header begins with one of the names that count only where no other header means the column. */
    boolean beginsRareName(HeaderText header) {
        return known.mayMeanOtherwise(header);
    }

    /** The headers that mean a column only where no other header does. */
    OtherwiseHeaders otherwise() {
        return otherwise;
    }

    /** What a header means by another name; null if it is not that name. */
    Heading heading(ListSpec.Otherwise otherwise, HeaderText header) {
        if (!header.begins(otherwise.header())) {
            return null;
        }
        ColumnSpec column = otherwise.column();
        String rest = beside.read(column, header, otherwise.words());
        if (rest != null && column == Machines.WORKING_PRESSURE && END_OF_RANGE.contains(Words.normal(rest))) {
            // "PSI min" is an end of the nozzle's range, and no pressure in minutes.
            return null;
        }
        if (rest != null && !spec.unitColumns().containsKey(column) && HeaderUnit.measuresOther(column, rest)) {
            // "Turning (m)" is no time.
            return null;
        }
        if (rest != null && column == Machines.FIELD_EFFICIENCY && !isShare(rest)) {
            // "Time lost (min/h)" is no efficiency of so many minutes, and how long the day is it does not say.
            return null;
        }
        if (rest != null && isOfASeason(column, rest)) {
            // "Area treated (ha)" and "Distance driven (km)" are no tests.
            return null;
        }
        if (column == Products.PACK_SIZE && "".equals(rest) && header.raw().matches("(?i).*s\\s*")) {
            // "Bags" are so many.
            return null;
        }
        if (rest != null && rest.isEmpty() && column.type() == ColumnSpec.Type.DOSE) {
            // "kg/ha" and "ml/l product" are the dose and its unit in one.
            rest = PRODUCT_IN_UNIT.matcher(header.raw()).replaceAll("").strip();
        } else if (rest != null && rest.isEmpty() && column.isNumeric() && SaidUnit.measures(header.raw())) {
            // "oz/min" is the flow and its unit in one, and no flow in litres.
            rest = header.raw().strip();
        }
        return rest != null && (!otherwise.measured() || HeaderUnit.fits(column, rest))
                ? new Heading(List.of(column), rest, 2, false, word(column, header))
                : null;
    }

    private static boolean isShare(String rest) {
        return UnitText.read(rest, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isSameScale(Units.PERCENT);
    }

    /** Whether what is measured in a test, by a looser name, is in a unit as large as only a season's figures are. */
    private static boolean isOfASeason(ColumnSpec column, String rest) {
        Unit least = OF_A_SEASON.get(column);
        return least != null
                && UnitText.read(rest, CustomaryUnits.UNSET) instanceof UnitText.Known known
                && known.unit().isCompatible(least)
                && known.unit().convert(1, least) >= 1;
    }

    /** Reads a header; null if it means none of this list's columns. */
    public Heading read(HeaderText header) {
        Optional<Heading> known = kept.get(header.raw());
        if (known == null) {
            known = kept.keep(header.raw(), Optional.ofNullable(readAnew(header)));
        }
        return known.orElse(null);
    }

    private Heading readAnew(HeaderText header) {
        if (header.words().isEmpty()) {
            return null;
        }
        LayoutHeaders.Said said = settled.of(header);
        if (said != null) {
            String rest = said.unit().isEmpty() ? HeaderUnit.ofEnd(header) : said.unit();
            return said.columns().size() > 1
                    ? new Heading(said.columns(), rest, 1, false, null)
                    : new Heading(
                            said.columns(), rest, 3, true, word(said.columns().get(0), header));
        }
        Heading measured = settled.withUnit(header);
        if (measured != null) {
            return measured;
        }
        HeaderText bare = header.withoutYear();
        if (bare != null && !bare.words().isEmpty()) {
            Heading heading = unsettled(bare);
            if (heading != null && heading.isCertain() && OF_A_YEAR.contains(heading.column())) {
                return new Heading(heading.candidates(), heading.rest(), 2, false, heading.word(), true);
            }
        }
        Heading heading = unsettled(header);
        return heading == null ? ProductsInARow.read(this, header) : heading;
    }

    private Heading unsettled(HeaderText header) {
        HeaderText price = header.turned().price();
        if (price != null) {
            return spec.columns().contains(Products.PRICE) ? byName(price) : null;
        }
        HeaderText share = header.turned().dryMatterOfYield();
        if (share != null) {
            return byName(share);
        }
        Heading measured = measured(header);
        Heading heading = measured == null ? byName(header) : measured;
        if (heading != null
                && !saysAll(heading)
                && (isMeasuredOtherwise(heading, header) || isUnitOfRarerName(heading, header))) {
            return null;
        }
        HeaderText distance = heading == null ? header.turned().distance() : null;
        if (distance != null) {
            return byName(distance);
        }
        if (heading != null && saysAll(heading)) {
            return heading;
        }
        // "Distance (clamp)" says more than a distance, and "Tank (usable)" more than a tank.
        Heading turned = byTurnedName(header);
        return turned == null ? heading : turned;
    }

    /**
     * "kg DM/m3" or "kg/hd/day": a header that is nothing but a unit that tells means the one column of the list that is
     * measured so, or the one that the list is useless without; null if it is no such unit, or several would do.
     */
    private Heading measured(HeaderText header) {
        if (!header.tellsColumn()) {
            return null;
        }
        List<ColumnSpec> measured = spec.columns().stream()
                .filter(column -> HeaderUnit.fits(column, header.raw()))
                .toList();
        if (measured.size() > 1) {
            measured = measured.stream().filter(ColumnSpec::required).toList();
        }
        return measured.size() == 1
                ? new Heading(measured, header.raw(), 2, false, word(measured.get(0), header))
                : null;
    }

    /** What a header means by the words it begins with; null if nothing. */
    Heading byName(HeaderText header) {
        if (header.words().isEmpty()
                || !known.firstWords().contains(header.words().get(0))) {
            return null;
        }
        int most = Math.min(known.longest(), header.words().size());
        boolean share = header.saysShare();
        for (int count = most; count > 0; count--) {
            String name = header.name(count);
            KnownHeaders.Known sure = share ? known.ofShare(name) : null;
            sure = sure == null ? known.certain(name) : sure;
            if (sure == null && count == 1 && header.words().size() == 1 && name.length() > 5) {
                sure = known.joined(name);
            }
            if (sure != null) {
                ColumnSpec column = sure.column();
                String rest = beside.read(column, header, count);
                boolean counted = rest != null && rest.isEmpty() && column.isNumeric() && header.counts(count);
                if (rest != null && !(counted && !isCount(column))) {
                    rest = rest.isEmpty() ? unitInName(column, header, count) : rest;
                    return new Heading(List.of(column), rest, sure.weight(), false, word(column, header));
                }
            }
            List<ColumnSpec> candidates = known.unclear(name);
            if (sure == null && candidates != null) {
                Heading heading = unclear.read(candidates, header, count);
                if (heading != null) {
                    return heading;
                }
            }
        }
        return null;
    }

    /** Whether the column itself is called by so many: turns of a wheel are. */
    private static boolean isCount(ColumnSpec column) {
        HeaderText name = HeaderText.of(column.name());
        return name.counts(name.words().size());
    }

    /**
     * "Life (years)" and "Life years" are in years: the unit that is the end of a name. "t/ac as carted" is a name that is
     * a unit, and behind it stands no other. "" if there is none.
     */
    private String unitInName(ColumnSpec column, HeaderText header, int count) {
        String whole = header.raw().substring(0, header.ends().get(count - 1)).strip();
        if (column.isNumeric() && header.words().size() > count && HeaderUnit.fits(column, whole)) {
            return whole;
        }
        KnownHeaders.Known shorter = count < 2 ? null : known.certain(header.name(count - 1));
        String end = header.rest(count - 1);
        return shorter != null && shorter.column() == column && column.isNumeric() && HeaderUnit.fits(column, end)
                ? end
                : "";
    }

    /** Whether nothing in a header is left over beside the name and a unit of the column. */
    private static boolean saysAll(Heading heading) {
        return heading.isCertain()
                && (heading.rest().isEmpty()
                        || !heading.column().isNumeric()
                        || HeaderUnit.fits(heading.column(), heading.rest()));
    }

    /** "Output (ha/h)" is a rate of work, and no output: its unit measures another column that goes by the same name. */
    private boolean isMeasuredOtherwise(Heading heading, HeaderText header) {
        return heading.isCertain()
                && heading.column().isNumeric()
                && spec.hints().otherwise().stream()
                        .anyMatch(otherwise -> otherwise.measured()
                                && otherwise.column() != heading.column()
                                && heading(otherwise, header) != null);
    }

    /** "Ha (arable)" is "Arable (ha)", which is the area only where no other header is, and no area in arables. */
    private boolean isUnitOfRarerName(Heading heading, HeaderText header) {
        return heading.isCertain()
                && header.turned().unitLast() != null
                && spec.hints().otherwise().stream()
                        .anyMatch(otherwise -> otherwise.measured()
                                && otherwise.column() == heading.column()
                                && heading(otherwise, header.turned().unitLast()) != null);
    }

    /** A name whose words stand in another order; null if there is none, or if the header is a name of its own. */
    private Heading byTurnedName(HeaderText header) {
        int most = known.inTurnedNames(header.words());
        for (int count = Math.min(known.longest() + SMALL_WORDS, most); count > 1; count--) {
            ColumnSpec column = known.turned(header.words().subList(0, count));
            String rest = column == null || isNameOfItsOwn(header, count) ? null : beside.read(column, header, count);
            if (rest != null && !(rest.isEmpty() && column.isNumeric() && header.counts(count))) {
                return new Heading(List.of(column), rest, 2, false, word(column, header));
            }
        }
        return null;
    }

    /** "Load time" has its own meaning where no other header has it, and is no time per load. */
    private boolean isNameOfItsOwn(HeaderText header, int count) {
        String name = header.name(count);
        return spec.hints().otherwise().stream()
                .anyMatch(otherwise -> otherwise.header().equals(name));
    }

    /**
     * The canonical word of a column's qualifying column that a header is, and nothing else: "Sprayer" or "Drill" over names
     * of machines; null if it is none.
     */
    public String wholeWord(ColumnSpec column, String header) {
        return known.qualifying(column).get(HeaderText.of(header).normal());
    }

    /** Whether a label of a form is a type of machine: its own name, or another that names machines in a list, too. */
    public boolean isTypeLabel(String label) {
        String type = spec == Machines.LIST ? wholeWord(Machines.MACHINE, label) : null;
        return type != null
                && !type.equals(ANY_OTHER)
                && (type.equals(HeaderText.of(label).normal()) || mayNameRows(label) || isName(label));
    }

    /** Whether a label names machines whatever stands beside it. */
    boolean isName(String label) {
        Heading heading = read(HeaderText.of(label));
        return heading != null && heading.isCertain() && heading.column() == Machines.MACHINE;
    }

    private String word(ColumnSpec column, HeaderText header) {
        Map<String, String> qualifying = known.qualifying(column);
        if (qualifying == null) {
            return null;
        }
        String normal = header.normal();
        if (!column.isNumeric()) {
            // "Sprayer" or "Sprayer name" says what stands under it; a line of help that speaks of sprayers does not.
            return qualifying.get(NAME_OF.matcher(normal).replaceFirst(""));
        }
        Set<String> found = new HashSet<>();
        int length = 0;
        for (Map.Entry<String, String> entry : qualifying.entrySet()) {
            String phrase = entry.getKey();
            if (phrase.length() >= length && Words.holds(normal, phrase)) {
                if (phrase.length() > length) {
                    found.clear();
                    length = phrase.length();
                }
                found.add(entry.getValue());
            }
        }
        return found.size() == 1 ? found.iterator().next() : null;
    }

    /**
     * The columns that a header could mean by its own words, or those that it would mean where no other header does; empty if
     * it means none.
     */
    public List<ColumnSpec> columnsOf(String header) {
        HeaderText text = HeaderText.of(header);
        Heading heading = read(text);
        return heading != null
                ? heading.candidates()
                : spec.hints().otherwise().stream()
                        .filter(otherwise -> heading(otherwise, text) != null)
                        .map(ListSpec.Otherwise::column)
                        .distinct()
                        .toList();
    }
}
