package org.rickyard.lists.header;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.Choices;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Shared;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.NozzleText;
import org.rickyard.lists.text.Words;

/**
 * What headers mean that do not say it by themselves, but by what stands beside and under them: a "Rate" beside the water
 * volume, a "Task" over names of jobs, "Units" over counts of machines.
 */
public final class HeaderHints {
    private static final String TASK = "task";
    private static final String REF = "ref";
    private static final String RATE = "rate";

    private static final Set<String> SPREADING = Set.of("spreading", "muck spreading", "slurry spreading");

    private static final Set<String> SPREADERS = Set.of("fertiliser spreader", "muck spreader", "slurry tanker");

    /** The largest size that sprayers have as a rule (common practice); round numbers beyond it may be sizes or angles. */
    private static final int MOST_SIZE = 20;

    /** No boom has so many nozzles; 11004 is fan angle and size. */
    private static final int LEAST_CODE = 1000;

    /** Digits that could count nozzles as well: 48, but not 04. */
    private static final Pattern COUNT = Pattern.compile("[1-9]\\d{0,2}");

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    private final UnitsBeside units;

    public HeaderHints(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
        this.units = new UnitsBeside(grid, headerRow, headers, findings);
    }

    /** The same header row, read with what stands beside and under its headers. */
    public HeaderRow.Match applied(HeaderRow.Match match) {
        Heading[] headings = match.headings().clone();
        for (int i = 0; i < headings.length; i++) {
            if (!units.take(match, headings, i) && countsMachines(match, i)) {
                headings[i] = match.places(Machines.NUMBER) == 0 ? headings[i].as(Machines.NUMBER, "") : null;
                note(
                        match.firstColumn() + i,
                        (headings[i] == null ? " is not read" : " is read as the Number of Machines")
                                + ": its cells are numbers, not names of farms.");
            }
        }
        for (int i = 0; i < headings.length; i++) {
            if (isSizes(headings[i], match.firstColumn() + i)) {
                ColumnSpec size = Machines.NOZZLE_SIZE;
                headings[i] = headings[i].as(size, "");
                note(
                        match.firstColumn() + i,
                        " is read as the " + size.name() + " of "
                                + match.vocabulary().spec().name() + ": its cells are written as sizes are.");
            }
        }
        new CellsAgainstHeader(grid, headerRow, headers, findings).apply(match, headings);
        fieldsOrBlocks(match, headings);
        tasksThatAreNames(match, headings);
        tanksOfOneType(match, headings);
        refsThatNothingFollows(match, headings);
        ratesOfSpreading(match, headings);
        rateBesideWater(match, headings);
        rateOfSprayOrProduct(match, headings);
        new DoseUnitAlone(headers)
                .apply(match, headings, () -> isAllSpreading(match), column -> noteCounted(column, match));
        KindsOfProduct kinds = new KindsOfProduct(grid, headerRow, headers, findings);
        kinds.apply(match, headings);
        kinds.partDoses(match, headings);
        HeaderRow.Match hinted = match.with(headings);
        for (ListSpec.StandIn standIn : match.vocabulary().spec().hints().standIns()) {
            noteStandIn(standIn, match);
        }
        RatesOfProduct rates = new RatesOfProduct(grid, headerRow, headers, findings);
        rates.apply(hinted);
        rates.applyPerSoMuch(hinted);
        rates.partWaterAndDose(hinted);
        for (ListSpec.Told told : match.vocabulary().spec().hints().told()) {
            tell(told, hinted);
        }
        for (int i = 0; i < headings.length; i++) {
            if (hinted.places(Machines.NOZZLES) == 0 && isCounts(hinted.headings()[i], match.firstColumn() + i)) {
                hinted.headings()[i] = hinted.headings()[i].as(Machines.NOZZLES, "");
                note(
                        match.firstColumn() + i,
                        " is read as the " + Machines.NOZZLES.name() + " of "
                                + match.vocabulary().spec().name() + ": its cells are numbers that no size has.");
            }
        }
        new HeadersNotRead(grid, headerRow, headers, findings).tell(hinted);
        return hinted;
    }

    /** The columns of the sheet that were found to say the unit of another. */
    public Set<Integer> unitColumns() {
        return units.columns();
    }

    /** "Capacity (L)" of machines of one type, as their title says: of sprayers it is the tank, of others the body. */
    private void tanksOfOneType(HeaderRow.Match match, Heading[] headings) {
        int named = match.place(Machines.MACHINE);
        String type = match.vocabulary().spec() != Machines.LIST || named < 0 || match.holds(Machines.TYPE)
                ? null
                : headings[named].word();
        for (int i = 0; type != null && i < headings.length; i++) {
            Heading heading = headings[i];
            if (heading != null
                    && !heading.isCertain()
                    && Set.copyOf(heading.candidates()).equals(Set.of(Machines.BODY_VOLUME, Machines.TANK))) {
                ColumnSpec column = Choices.sprays(type) ? Machines.TANK : Machines.BODY_VOLUME;
                headings[i] = heading.as(column, heading.rest());
                note(match.firstColumn() + i, " is read as the " + column.name() + " of each " + type + ".");
            }
        }
    }

    /** "Field / block" over the jobs is where they are done, and no group of fields beside it. */
    private void fieldsOrBlocks(HeaderRow.Match match, Heading[] headings) {
        for (int i = 0; i < headings.length && match.vocabulary().spec() == Jobs.LIST; i++) {
            if (headings[i] != null
                    && headings[i].isCertain()
                    && headings[i].column() == Jobs.BLOCK
                    && headers[match.firstColumn() + i].contains("/")
                    && match.places(Jobs.FIELD) == 0) {
                headings[i] = headings[i].as(Jobs.FIELD, "");
            }
        }
    }

    /** A "Task" is an operation if its cells are, "mow", "spray"; "T1 wheat" beside what is sprayed is the name of a job. */
    private void tasksThatAreNames(HeaderRow.Match match, Heading[] headings) {
        boolean told =
                HeadersNotRead.WORK.stream().anyMatch(column -> column != Jobs.OPERATION && match.places(column) > 0);
        for (int i = 0; told && i < headings.length; i++) {
            if (headings[i] != null
                    && headings[i].isCertain()
                    && headings[i].column() == Jobs.OPERATION
                    && !headings[i].settled()
                    && HeaderText.of(headers[match.firstColumn() + i]).normal().equals(TASK)
                    && !holdsOperations(match.firstColumn() + i)) {
                headings[i] = headings[i].as(Jobs.JOB, "");
            }
        }
    }

    /** A "Ref" is the name of a job where others come after it; else it may number every row, and part a tank mix. */
    private void refsThatNothingFollows(HeaderRow.Match match, Heading[] headings) {
        for (int i = 0; i < headings.length && match.places(Jobs.AFTER) == 0; i++) {
            if (headings[i] != null
                    && headings[i].isCertain()
                    && headings[i].column() == Jobs.JOB
                    && !headings[i].settled()
                    && HeaderText.of(headers[match.firstColumn() + i]).normal().startsWith(REF)) {
                headings[i] = null;
            }
        }
    }

    /** "Rate (gal/ac)" or "m3/ha" where all work is spreading is what is spread, and no water of a sprayer. */
    private void ratesOfSpreading(HeaderRow.Match match, Heading[] headings) {
        if (match.vocabulary().spec() != Jobs.LIST || match.places(Jobs.DOSE) > 0 || !isAllSpreading(match)) {
            return;
        }
        for (int i = 0; i < headings.length; i++) {
            Heading heading = headings[i];
            String header = headers[match.firstColumn() + i];
            if (heading != null
                    && !heading.settled()
                    && heading.candidates().contains(Jobs.WATER_VOLUME)
                    && !HeaderText.normal(header).contains("water")) {
                headings[i] = heading.as(Jobs.DOSE, heading.unitIn(header));
                note(
                        match.firstColumn() + i,
                        " is read as the " + Jobs.DOSE.name() + " of " + Jobs.LIST.name()
                                + ", since all work here is spreading. If it is something else, rename it.");
                return;
            }
        }
    }

    /** "Rate (gal/ac)" beside a product, where "GPA" is the water already: both were asked for, and neither was used. */
    private void rateBesideWater(HeaderRow.Match match, Heading[] headings) {
        if (match.vocabulary().spec() != Jobs.LIST
                || match.places(Jobs.DOSE) > 0
                || match.places(Jobs.PRODUCT) == 0
                || match.places(Jobs.WATER_VOLUME) != 2) {
            return;
        }
        List<Integer> rates = IntStream.range(0, headings.length)
                .filter(i -> headings[i] != null
                        && headings[i].isCertain()
                        && !headings[i].settled()
                        && headings[i].column() == Jobs.WATER_VOLUME
                        && HeaderText.normal(headers[match.firstColumn() + i]).startsWith(RATE))
                .boxed()
                .toList();
        if (rates.size() == 1) {
            int i = rates.get(0);
            headings[i] = headings[i].as(Jobs.DOSE, headings[i].rest());
            note(
                    match.firstColumn() + i,
                    " is read as the " + Jobs.DOSE.name() + " of " + Jobs.LIST.name()
                            + ", since the water stands beside it under a header of its own. If it is something else,"
                            + " rename it.");
        }
    }

    /** "Rate (gal/ac)" beside a product, and neither water nor dose under a name of its own, may be the one or the other. */
    private void rateOfSprayOrProduct(HeaderRow.Match match, Heading[] headings) {
        if (match.vocabulary().spec() != Jobs.LIST
                || match.places(Jobs.DOSE) > 0
                || match.places(Jobs.PRODUCT) == 0
                || match.places(Jobs.WATER_VOLUME) != 1) {
            return;
        }
        for (int i = 0; i < headings.length; i++) {
            Heading heading = headings[i];
            if (heading != null
                    && heading.isCertain()
                    && !heading.settled()
                    && heading.column() == Jobs.WATER_VOLUME
                    && HeaderText.normal(headers[match.firstColumn() + i]).startsWith(RATE)) {
                headings[i] = new Heading(List.of(Jobs.WATER_VOLUME, Jobs.DOSE), heading.rest(), 1, false, null);
            }
        }
    }

    /** By its operations, or where it has none by what its jobs are called, or by the type that its machines are under. */
    private boolean isAllSpreading(HeaderRow.Match match) {
        ColumnSpec work = match.places(Jobs.OPERATION) > 0 ? Jobs.OPERATION : Jobs.JOB;
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null && heading.isCertain() && heading.column() == work) {
                List<String> texts = TextsBelow.of(grid, headerRow, match.firstColumn() + i).stream()
                        .map(Words::normal)
                        .filter(text -> !text.isEmpty())
                        .toList();
                return !texts.isEmpty()
                        && texts.stream()
                                .allMatch(text -> SPREADING.contains(ChoiceWords.OPERATIONS.getOrDefault(text, "")));
            }
        }
        String machine = match.headerOf(Jobs.MACHINE, headers);
        return match.places(Jobs.OPERATION) == 0
                && machine != null
                && SPREADERS.contains(ChoiceWords.MACHINE_TYPES.getOrDefault(HeaderText.normal(machine), ""));
    }

    private boolean holdsOperations(int sheetColumn) {
        int known = 0;
        int others = 0;
        for (String cell : TextsBelow.of(grid, headerRow, sheetColumn)) {
            String text = Words.normal(cell);
            boolean operation = ChoiceWords.OPERATIONS.containsKey(text);
            known += operation ? 1 : 0;
            others += operation || text.isEmpty() ? 0 : 1;
        }
        return known > others;
    }

    private void noteStandIn(ListSpec.StandIn standIn, HeaderRow.Match match) {
        String header = match.headerOf(standIn.column(), headers);
        if (header == null
                || !HeaderText.of(header)
                        .normal()
                        .startsWith(HeaderText.normal(standIn.instead().name()))) {
            return;
        }
        for (int i = 0; i < match.headings().length; i++) {
            if (header.equals(headers[match.firstColumn() + i])) {
                note(
                        match.firstColumn() + i,
                        " is read as the " + standIn.column().name() + " of "
                                + match.vocabulary().spec().name() + ", since nothing else names its rows.");
                return;
            }
        }
    }

    private void tell(ListSpec.Told told, HeaderRow.Match match) {
        boolean open = match.places(told.column()) == 0
                && (told.without() == null || match.places(told.without()) == 0)
                && told.beside().stream().allMatch(column -> match.places(column) > 0);
        if (!open) {
            return;
        }
        int place = -1;
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading != null
                    && !heading.isCertain()
                    && !(told.measured() && heading.rest().isEmpty())
                    && HeaderText.of(headers[match.firstColumn() + i]).begins(told.header())) {
                if (place >= 0) {
                    return;
                }
                place = i;
            }
        }
        if (place < 0) {
            return;
        }
        // "L/ac" by itself is name and unit in one.
        String header = headers[match.firstColumn() + place];
        Heading heading = match.headings()[place];
        match.headings()[place] = heading.as(told.column(), heading.unitIn(header));
        List<String> beside = told.beside().stream()
                .map(column -> Words.quoted(match.headerOf(column, headers)))
                .toList();
        note(
                match.firstColumn() + place,
                " is read as the " + told.column().name() + " of "
                        + match.vocabulary().spec().name() + ", since "
                        + String.join(" and ", beside) + (beside.size() == 1 ? " stands" : " stand")
                        + " beside it. If it is something else, rename it.");
    }

    /** "Nozzles" over 24 and 72 is how many there are: beyond 20 only 25 and 67 are sizes, and round ones may be. */
    private boolean isCounts(Heading heading, int sheetColumn) {
        boolean plural =
                headers[sheetColumn] != null && headers[sheetColumn].strip().endsWith("s");
        if (!plural
                || heading == null
                || heading.isCertain()
                || !heading.candidates().contains(Machines.NOZZLES)) {
            return false;
        }
        int counts = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            if (kind == Grid.Kind.TEXT) {
                return false;
            }
            if (kind == Grid.Kind.NUMBER) {
                double number = grid.number(row, sheetColumn);
                boolean maySize = number <= MOST_SIZE
                        || number >= LEAST_CODE
                        || number % 5 == 0
                        || NozzleText.hasLostZero(number);
                if (maySize || number != Math.rint(number)) {
                    return false;
                }
                counts++;
            }
        }
        return counts > 0;
    }

    /** "Nozzle" over 04, 11004 and "ISO 03 blue" is no count of nozzles. */
    private boolean isSizes(Heading heading, int sheetColumn) {
        if (heading == null || heading.isCertain() || !heading.candidates().contains(Machines.NOZZLE_SIZE)) {
            return false;
        }
        int sizes = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, sheetColumn);
            if (kind == Grid.Kind.NUMBER && grid.number(row, sheetColumn) < LEAST_CODE) {
                return false;
            }
            if (kind == Grid.Kind.TEXT || kind == Grid.Kind.NUMBER) {
                String text = grid.words(row, sheetColumn);
                sizes += !COUNT.matcher(text.strip()).matches()
                                && NozzleText.read(text).isPresent()
                        ? 1
                        : 0;
            }
        }
        return sizes > 0;
    }

    /** "Units" over 1, 2 in a list of machines is how many there are. */
    private boolean countsMachines(HeaderRow.Match match, int place) {
        Heading heading = match.headings()[place];
        if (match.vocabulary().spec() != Machines.LIST
                || heading == null
                || !heading.isCertain()
                || heading.settled()
                || heading.column() != Shared.HOLDING
                || !UnitsBeside.isUnit(headers[match.firstColumn() + place])) {
            return false;
        }
        int numbers = 0;
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            Grid.Kind kind = grid.kind(row, match.firstColumn() + place);
            if (kind == Grid.Kind.TEXT) {
                return false;
            }
            numbers += kind == Grid.Kind.NUMBER ? 1 : 0;
        }
        return numbers > 0;
    }

    /** "N (kg/ha)" beside a product may be what the crop is to have, of which this product gives but a part. */
    private void noteCounted(int sheetColumn, HeaderRow.Match match) {
        note(
                sheetColumn,
                " is read as the Dose of " + match.vocabulary().spec().name()
                        + ": what of it the product of the row brings. If it is what the crop needs or has in all, rename"
                        + " it.");
    }

    private void note(int sheetColumn, String what) {
        findings.add(Finding.note(grid.address(headerRow, sheetColumn), Words.quoted(headers[sheetColumn]) + what));
    }
}
