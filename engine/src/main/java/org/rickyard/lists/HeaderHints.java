package org.rickyard.lists;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.rickyard.lists.text.NozzleText;
import org.rickyard.lists.text.Words;

/**
 * What headers mean that do not say it by themselves: a "Rate" beside the water volume, and a "Unit" over cells that
 * are units and so is no farm.
 */
final class HeaderHints {
    private static final String UNIT = "unit";

    private static final String TASK = "task";
    private static final String REF = "ref";

    /** Operations by all their words. */
    private static final Map<String, String> OPERATIONS = Vocabulary.wordsOf(Jobs.OPERATION);

    private static final Pattern PASSES =
            Pattern.compile("((number|number of) )?(pass|passe|passes|repeat|application|run)( number)?");

    private static final Pattern CUTS =
            Pattern.compile("(?i)((no\\.?|number|nr\\.?|#)( of)? )?cuts( per year| a year|/year)?");

    private static final Pattern BALES = Pattern.compile("(?i)(bales?|loads?) ?(/|per|an?) ?(ha|hectare|ac|acre)\\b.*");

    private static final List<ColumnSpec> WORK =
            List.of(Jobs.OPERATION, Jobs.MIX, Jobs.PRODUCT, Jobs.DOSE, Jobs.WATER_VOLUME);

    private static final Pattern NUMBERED_PRODUCT =
            Pattern.compile("(product|chemical|pesticide|herbicide|fungicide|spray)( name)? ?[1-9]");

    /** "T1", "T2 product": what is sprayed at each timing of a programme. */
    private static final Pattern TIMING =
            Pattern.compile("t ?[0-9]( (product|chemical|fungicide|herbicide|mix|spray|programme)( name)?)?");

    /** What is sprayed, by what it is for: one of them is the product of its row, several are several products. */
    private static final Pattern KIND_OF_PRODUCT = Pattern.compile(
            "(herbicide|fungicide|insecticide|desiccant|molluscicide|growth regulator|pgr|foliar feed)( name| used| applied)?");

    /** No boom has so many nozzles; 11004 is fan angle and size. */
    private static final int LEAST_CODE = 1000;

    /** Digits that could count nozzles as well: 48, but not 04. */
    private static final Pattern COUNT = Pattern.compile("[1-9]\\d{0,2}");

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    /** Columns of the sheet that say the unit of the column on their left. */
    private final Set<Integer> unitColumns = new HashSet<>();

    HeaderHints(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** The same header row, read with what stands beside and under its headers. */
    HeaderRow.Match applied(HeaderRow.Match match) {
        Vocabulary.Heading[] headings = match.headings().clone();
        for (int i = 0; i < headings.length; i++) {
            if (isUnits(match, i)) {
                unitsOf(match, headings, i);
            } else if (headings[i] == null) {
                unitsOfAName(match, headings, i);
            } else if (countsMachines(match, i)) {
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
                                + match.vocabulary().spec.name() + ": its cells are written as sizes are.");
            }
        }
        new CellsAgainstHeader(grid, headerRow, headers, findings).apply(match, headings);
        fieldsOrBlocks(match, headings);
        tasksThatAreNames(match, headings);
        refsThatNothingFollows(match, headings);
        kindOfProduct(match, headings);
        HeaderRow.Match units = match.with(headings);
        for (ListSpec.StandIn standIn : match.vocabulary().spec.hints().standIns()) {
            noteStandIn(standIn, match);
        }
        for (ListSpec.Told told : match.vocabulary().spec.hints().told()) {
            tell(told, units);
        }
        new RatesOfProduct(grid, headerRow, headers, findings).apply(units);
        if (match.vocabulary().spec == Jobs.LIST && units.places(Jobs.PRODUCT) == 0) {
            cautionProductsInColumns(units);
            cautionKindsOfProduct(units);
            cautionTimings(units);
        }
        if (match.vocabulary().spec == Jobs.LIST) {
            cautionPasses(units);
        } else if (match.vocabulary().spec == Fields.LIST) {
            cautionCuts(units);
        }
        if (match.vocabulary().spec == Fields.LIST && units.places(Fields.YIELD) == 0
                || match.vocabulary().spec == Cuts.LIST && units.places(Cuts.YIELD) == 0) {
            cautionBales(units);
        }
        return units;
    }

    /** The columns of the sheet that were found to say the unit of the column on their left. */
    Set<Integer> unitColumns() {
        return unitColumns;
    }

    /** "Field / block" over the jobs is where they are done, and no group of fields beside it. */
    private void fieldsOrBlocks(HeaderRow.Match match, Vocabulary.Heading[] headings) {
        for (int i = 0; i < headings.length && match.vocabulary().spec == Jobs.LIST; i++) {
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
    private void tasksThatAreNames(HeaderRow.Match match, Vocabulary.Heading[] headings) {
        boolean told = WORK.stream().anyMatch(column -> column != Jobs.OPERATION && match.places(column) > 0);
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
    private void refsThatNothingFollows(HeaderRow.Match match, Vocabulary.Heading[] headings) {
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

    private boolean holdsOperations(int sheetColumn) {
        int known = 0;
        int others = 0;
        for (String cell : TextsBelow.of(grid, headerRow, sheetColumn)) {
            String text = Words.normal(cell);
            boolean operation = OPERATIONS.containsKey(text);
            known += operation ? 1 : 0;
            others += operation || text.isEmpty() ? 0 : 1;
        }
        return known > others;
    }

    /** A list of fields with products, doses and water beside them is half a list of jobs: told, not passed over. */
    void cautionWorkWithoutMachine(HeaderRow.Match jobs) {
        if (jobs == null || jobs.holds(Jobs.MACHINE)) {
            return;
        }
        List<String> work = new ArrayList<>();
        for (int i = 0; i < jobs.headings().length; i++) {
            Vocabulary.Heading heading = jobs.headings()[i];
            if (heading != null && heading.candidates().stream().anyMatch(WORK::contains)) {
                work.add(Words.quoted(headers[jobs.firstColumn() + i]));
            }
        }
        if (work.size() > 1) {
            findings.add(Finding.caution(
                    new CellAddress(grid.sheet(), headerRow, jobs.firstColumn()),
                    "These fields have work beside them (" + String.join(", ", work)
                            + ") but no column Machine, so they are read as fields alone and nothing of the "
                            + "work is worked"
                            + " out. Add a column Machine with names from the machine list."));
        }
    }

    /** "Product 1" and "Product 2" in one row: told where they stand, since nothing of the products is worked out. */
    private void cautionProductsInColumns(HeaderRow.Match match) {
        cautionSeveral(
                match,
                NUMBERED_PRODUCT,
                " stand beside each other in one row and are not read. Write one row for each product, with columns"
                        + " Product, Dose and Dose unit: rows of one job, field and machine are one tank mix.");
    }

    /** A "Herbicide" beside the work is its product, where no other header names one. */
    private void kindOfProduct(HeaderRow.Match match, Vocabulary.Heading[] headings) {
        int place = -1;
        for (int i = 0; i < headings.length; i++) {
            String header = headers[match.firstColumn() + i];
            if (headings[i] == null && header != null && isKindOfProduct(header)) {
                if (place >= 0) {
                    return;
                }
                place = i;
            }
        }
        if (place >= 0
                && match.vocabulary().spec == Jobs.LIST
                && match.places(Jobs.PRODUCT) == 0
                && match.places(Jobs.MIX) == 0) {
            headings[place] = new Vocabulary.Heading(List.of(Jobs.PRODUCT), "", 2, false, null);
            note(
                    match.firstColumn() + place,
                    " is read as the " + Jobs.PRODUCT.name() + " of " + Jobs.LIST.name()
                            + ", since no other header names one. If it is something else, rename it.");
        }
    }

    private static boolean isKindOfProduct(String header) {
        return KIND_OF_PRODUCT.matcher(HeaderText.normal(header)).matches();
    }

    /** "Herbicide" and "Fungicide" beside each other are two products in one row. */
    private void cautionKindsOfProduct(HeaderRow.Match match) {
        cautionSeveral(
                match,
                KIND_OF_PRODUCT,
                " stand beside each other in one row and are not read. Write one row for each product, with columns"
                        + " Product, Dose and Dose unit: rows of one job, field and machine are one tank mix.");
    }

    /** A column for each timing is a pass for each: as one job they were one pass without a product. */
    private void cautionTimings(HeaderRow.Match match) {
        cautionSeveral(
                match,
                TIMING,
                " stand beside each other in one row and are not read: the row is reckoned as one pass without a product."
                        + " Write one row for each timing and product, with columns Product, Dose and Earliest (the day):"
                        + " rows of one field, machine and day are one tank mix.");
    }

    /** Tells of headers of a kind where there are several, at the first of them. */
    private void cautionSeveral(HeaderRow.Match match, Pattern kind, String what) {
        List<String> found = new ArrayList<>();
        int first = -1;
        for (int column = match.firstColumn(); column <= match.lastColumn(); column++) {
            if (headers[column] != null
                    && kind.matcher(Words.normal(headers[column])).matches()) {
                found.add(Words.quoted(headers[column]));
                first = first < 0 ? column : first;
            }
        }
        if (found.size() > 1) {
            findings.add(Finding.caution(
                    new CellAddress(grid.sheet(), headerRow, first), String.join(" and ", found) + what));
        }
    }

    /** Half the hours and product of two passes are a wrong plan, so a number of passes that is not read is told. */
    private void cautionPasses(HeaderRow.Match match) {
        caution(
                match,
                header -> PASSES.matcher(HeaderText.normal(header)).matches(),
                " is not read: each row of " + match.vocabulary().spec.name()
                        + " is reckoned as one pass. Write a row for each pass.");
    }

    /** A field that is cut three times gives more than one that is cut once. */
    private void cautionCuts(HeaderRow.Match match) {
        caution(
                match,
                header -> CUTS.matcher(header.strip()).matches(),
                " is not read: without a list Cuts (Field, Cut, Yield), with a row for each cut, a field is reckoned as"
                        + " cut once.");
    }

    /** Bales and loads are a yield only to who knows their weight and dry matter. */
    private void cautionBales(HeaderRow.Match match) {
        caution(
                match,
                header -> BALES.matcher(header.strip()).matches(),
                " is not read as the Yield of " + match.vocabulary().spec.name()
                        + ", which is in t/ha, t/ac or t DM/ha:"
                        + " multiply it by the weight of one, and say in Yield basis and DM at ensiling what it was"
                        + " weighed as.");
    }

    private void caution(HeaderRow.Match match, Predicate<String> isMeant, String what) {
        for (int column = match.firstColumn(); column <= match.lastColumn(); column++) {
            if (headers[column] != null && isMeant.test(headers[column])) {
                findings.add(Finding.caution(
                        new CellAddress(grid.sheet(), headerRow, column), Words.quoted(headers[column]) + what));
            }
        }
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
                                + match.vocabulary().spec.name() + ", since nothing else names its rows.");
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
            Vocabulary.Heading heading = match.headings()[i];
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
        String rest = match.headings()[place].rest();
        match.headings()[place] =
                match.headings()[place].as(told.column(), rest.isEmpty() && HeaderUnit.isUnit(header) ? header : rest);
        List<String> beside = told.beside().stream()
                .map(column -> Words.quoted(match.headerOf(column, headers)))
                .toList();
        note(
                match.firstColumn() + place,
                " is read as the " + told.column().name() + " of "
                        + match.vocabulary().spec.name() + ", since "
                        + String.join(" and ", beside) + (beside.size() == 1 ? " stands" : " stand")
                        + " beside it. If it is something else, rename it.");
    }

    /** Whether a header says no more than "Unit" and what stands under it is units, as a farm's name is not. */
    private boolean isUnits(HeaderRow.Match match, int place) {
        Vocabulary.Heading heading = match.headings()[place];
        if (heading == null || !heading.isCertain() || heading.settled()) {
            return false;
        }
        ListSpec spec = match.vocabulary().spec;
        boolean holding = heading.column() == Shared.HOLDING;
        boolean again = spec.unitColumns().containsValue(heading.column()) && match.places(heading.column()) > 1;
        int sheetColumn = match.firstColumn() + place;
        return (holding || again)
                && HeaderText.of(headers[sheetColumn]).normal().equals(UNIT)
                && holdsUnits(sheetColumn);
    }

    /** "Nozzle" over 04, 11004 and "ISO 03 blue" is no count of nozzles. */
    private boolean isSizes(Vocabulary.Heading heading, int sheetColumn) {
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
                String text = FoundRows.cellText(grid, row, sheetColumn);
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
        Vocabulary.Heading heading = match.headings()[place];
        if (match.vocabulary().spec != Machines.LIST
                || heading == null
                || !heading.isCertain()
                || heading.settled()
                || heading.column() != Shared.HOLDING
                || !HeaderText.of(headers[match.firstColumn() + place]).normal().equals(UNIT)) {
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

    private boolean holdsUnits(int sheetColumn) {
        int units = 0;
        int others = 0;
        for (String cell : TextsBelow.of(grid, headerRow, sheetColumn)) {
            String text = Words.trim(cell);
            boolean unit = HeaderUnit.isUnit(text);
            units += unit ? 1 : 0;
            others += unit || text.isEmpty() || Words.marksBlank(text) ? 0 : 1;
        }
        return units > others;
    }

    /** Units that stand beside a column are those of the column on their left. */
    private void unitsOf(HeaderRow.Match match, Vocabulary.Heading[] headings, int place) {
        ListSpec spec = match.vocabulary().spec;
        Vocabulary.Heading heading = headings[place];
        Vocabulary.Heading left = place == 0 ? null : headings[place - 1];
        headings[place] = null;
        int sheetColumn = match.firstColumn() + place;
        if (left == null) {
            return;
        }
        ColumnSpec own = left.candidates().stream()
                .map(spec.unitColumns()::get)
                .filter(column -> column != null)
                .findFirst()
                .orElse(null);
        boolean taken = own != null && match.with(headings).places(own) > 0;
        if (own != null && !taken) {
            headings[place] = heading.as(own, "");
            if (heading.column() == Shared.HOLDING) {
                note(
                        sheetColumn,
                        " is read as " + own.name() + " of " + spec.name() + ": its cells are units, not names of"
                                + " farms.");
            }
            return;
        }
        if (left.isCertain() && left.column().isNumeric() && left.rest().isEmpty()) {
            headings[place - 1] = left.as(left.column(), theUnit(sheetColumn, sheetColumn - 1));
            unitColumns.add(sheetColumn);
            note(sheetColumn, " is read as the unit of " + Words.quoted(headers[sheetColumn - 1]) + ".");
        }
    }

    /** "Yield unit" over units is the unit of "Yield": passed over, nine tons an acre were nine tonnes a hectare. */
    private void unitsOfAName(HeaderRow.Match match, Vocabulary.Heading[] headings, int place) {
        int sheetColumn = match.firstColumn() + place;
        String header = headers[sheetColumn] == null
                ? ""
                : HeaderText.of(headers[sheetColumn]).normal();
        if (!header.endsWith(" " + UNIT)) {
            return;
        }
        String name = header.substring(0, header.length() - UNIT.length() - 1);
        for (int i = 0; i < headings.length; i++) {
            int of = match.firstColumn() + i;
            Vocabulary.Heading heading = headings[i];
            boolean meant = heading != null
                    && heading.isCertain()
                    && heading.rest().isEmpty()
                    && heading.column().type() == ColumnSpec.Type.NUMBER
                    && !match.vocabulary().spec.unitColumns().containsKey(heading.column())
                    && names(match.vocabulary(), name, heading.column());
            String unit = meant ? theUnit(sheetColumn, of) : "";
            if (!unit.isEmpty()) {
                headings[i] = heading.as(heading.column(), unit);
                unitColumns.add(sheetColumn);
                note(sheetColumn, " is read as the unit of " + Words.quoted(headers[of]) + ".");
                return;
            }
        }
    }

    /** Whether a name without a unit means a column: "Width unit" is the unit of "Working width". */
    private static boolean names(Vocabulary vocabulary, String name, ColumnSpec column) {
        Vocabulary.Heading named = vocabulary.read(HeaderText.of(name));
        return named != null
                && named.isCertain()
                && named.column() == column
                && named.rest().isEmpty();
    }

    /**
     * The one unit in a column, or all of them, which is none that a column of figures can have.
     *
     * @param of the figures: further down, where none of them are, other lists may stand
     */
    private String theUnit(int sheetColumn, int of) {
        Set<String> units = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>();
        int last = TextsBelow.end(grid, headerRow);
        for (int row = headerRow + 1; row < last; row++) {
            String text = grid.kind(row, sheetColumn) == Grid.Kind.TEXT ? Words.trim(grid.text(row, sheetColumn)) : "";
            if (HeaderUnit.isUnit(text)) {
                all.add(text);
                if (grid.kind(row, of) == Grid.Kind.NUMBER) {
                    units.add(text);
                }
            }
        }
        // Figures that are yet to be typed, or typed as texts, are in that unit when they come.
        units = units.isEmpty() ? all : units;
        return String.join(" or ", units);
    }

    private void note(int sheetColumn, String what) {
        findings.add(Finding.note(
                new CellAddress(grid.sheet(), headerRow, sheetColumn), Words.quoted(headers[sheetColumn]) + what));
    }
}
