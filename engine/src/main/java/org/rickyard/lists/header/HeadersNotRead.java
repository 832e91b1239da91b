package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.DoseText;

/** Headers that are not read and without which the plan is a wrong one: each is told, with what to write instead. */
public final class HeadersNotRead {
    /** What makes a row one of work. */
    static final List<ColumnSpec> WORK = List.of(Jobs.OPERATION, Jobs.MIX, Jobs.PRODUCT, Jobs.DOSE, Jobs.WATER_VOLUME);

    private static final Pattern PASSES = Pattern.compile(
            "((number|number of) )?(pass|passe|passes|repeat|application|run)( number)?|number of times?");

    private static final Pattern HOW_MANY =
            Pattern.compile("(?i)\\d|\\b(one|once|two|twice|double|three|thrice|triple|four|five|six"
                    + "|several|few|many|couple|both|cross|yes|y)\\b");

    /** "% of field", "Share of area", "% treated": how much of its field a job is on. */
    private static final Pattern PART =
            Pattern.compile("(?i)\\s*(%|per ?cent|percentage|share|part|proportion|fraction)"
                    + "\\s*((of )?(the )?(field|area)( (treated|sprayed|worked|done|covered))?|(treated|sprayed|worked|covered))"
                    + "\\s*(\\(%\\))?\\s*");

    private static final Pattern CUTS =
            Pattern.compile("(?i)((no\\.?|number|nr\\.?|#)( of)? )?cuts( per year| a year|/year)?");

    private static final Pattern BALES = Pattern.compile("(?i)(bales?|loads?) ?(/|per|an?) ?(ha|hectare|ac|acre)\\b.*");

    /** "Time for 100 m (s)", "100 m in (s)": how long is in the cell, how far in the header. */
    private static final Pattern TIMED_RUN = Pattern.compile(
            "(?i)(time( taken)?|seconds?|secs?\\.?) (for|per|over|in|to (travel|cover|do)) ([0-9]+) ?(m|metres?|meters?|yds?|yards?|ft|feet)\\b( .*|\\(.*)?"
                    + "|([0-9]+) ?(m|metres?|meters?|yds?|yards?|ft|feet) in ?\\(?(s|secs?|seconds?)\\)?");

    /** Seeds counted, not weighed: "Seeds/m2", "Plants per sq m", "Seed rate (seeds/ac)", "Population". */
    private static final Pattern SEEDS = Pattern.compile(
            "(?i).*\\b(seeds?|plants?|grains?|kernels?) ?(/|per) ?(m2|m²|sq\\.? ?m(et(re|er))?|square met(re|er)|ha|hectare|ac"
                    + "|acre)\\b?.*|((seed|seeding|plant|planting|target|final) )?populations?\\b.*");

    /** What they are counted on, where it is no square metre. */
    private static final Pattern HECTARE_OR_ACRE = Pattern.compile("(?i)\\b(ha|hectares?|ac|acres?)\\b");

    /** "N", "P (kg/ha)", "K lb/ac": what a field is to have of a nutrient, in no product. */
    private static final Pattern NUTRIENT = Pattern.compile(
            "(?i)(n|p|k|nitrogen|phosphorus|potassium) ?\\(?((kg|lbs?|units?) ?(/|per) ?(ha|hectare|ac|acre))?\\)?");

    private static final Pattern NUMBERED_PRODUCT =
            Pattern.compile("(product|chemical|pesticide|herbicide|fungicide|spray)( name)? ?[1-9]");

    /** "T1", "T2 product": what is sprayed at each timing of a programme. */
    private static final Pattern TIMING =
            Pattern.compile("t ?[0-9]( (product|chemical|fungicide|herbicide|mix|spray|programme)( name)?)?");

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    public HeadersNotRead(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** Tells of a list's headers, all else of which is read. */
    void tell(HeaderRow.Match match) {
        ListSpec spec = match.vocabulary().spec();
        if (spec == Jobs.LIST && match.places(Jobs.PRODUCT) == 0) {
            cautionProductsInColumns(match, NUMBERED_PRODUCT);
            cautionProductsInColumns(match, KindsOfProduct.KIND);
            cautionTimings(match);
        }
        if (spec == Jobs.LIST) {
            cautionPasses(match);
            cautionPart(match);
            cautionSeeds(match);
            cautionNutrients(match);
        } else if (spec == Fields.LIST) {
            cautionCuts(match);
            new ThereAndBack(grid, headerRow).caution(match, headers, findings);
        }
        if (spec == Machines.LIST && match.places(Machines.TIMED_SECONDS) == 0 && match.places(Machines.SPEED) == 0) {
            cautionTimedRun(match);
        }
        if (spec == Fields.LIST && match.places(Fields.YIELD) == 0
                || spec == Cuts.LIST && match.places(Cuts.YIELD) == 0) {
            cautionBales(match);
        }
    }

    /** A list of fields with products, doses and water beside them is half a list of jobs: told, not passed over. */
    public void cautionWorkWithoutMachine(HeaderRow.Match jobs) {
        if (jobs == null || jobs.holds(Jobs.MACHINE)) {
            return;
        }
        List<String> work = new ArrayList<>();
        for (int i = 0; i < jobs.headings().length; i++) {
            Heading heading = jobs.headings()[i];
            if (heading != null && heading.candidates().stream().anyMatch(WORK::contains)) {
                work.add(Words.quoted(headers[jobs.firstColumn() + i]));
            }
        }
        if (work.size() > 1) {
            findings.add(Finding.caution(
                    grid.address(headerRow, jobs.firstColumn()),
                    "These fields have work beside them (" + String.join(", ", work)
                            + ") but no column Machine, so they are read as fields alone and nothing of the "
                            + "work is worked"
                            + " out. Add a column Machine with names from the machine list."));
        }
    }

    /**
     * "Product 1" and "Product 2", or "Herbicide" and "Fungicide", in one row: told where they stand, since nothing of the
     * products is worked out.
     */
    private void cautionProductsInColumns(HeaderRow.Match match, Pattern kind) {
        cautionSeveral(
                match,
                kind,
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
            findings.add(Finding.caution(grid.address(headerRow, first), String.join(" and ", found) + what));
        }
    }

    /** Half the hours and product of two passes are a wrong plan, so a number of passes that is not read is told. */
    private void cautionPasses(HeaderRow.Match match) {
        String what = " is not read: each row of " + match.vocabulary().spec().name()
                + " is reckoned as one pass. Write a row for each pass.";
        cautionWhere(
                match,
                column -> PASSES.matcher(HeaderText.normal(headers[column])).matches() && !holdsNames(column),
                header -> what);
    }

    /** Product and hours for a whole field where a half is sprayed are a wrong plan; a column of hundreds is the whole. */
    private void cautionPart(HeaderRow.Match match) {
        String what = " is not read: each row of " + match.vocabulary().spec().name()
                + " is reckoned on the whole of its field. Where a part is worked, give that part a name and an area of"
                + " its own in the field list, and name it here.";
        cautionWhere(
                match,
                column -> match.headings()[column - match.firstColumn()] == null
                        && PART.matcher(headers[column]).matches()
                        && IntStream.range(headerRow + 1, TextsBelow.end(grid, headerRow))
                                .anyMatch(row -> grid.kind(row, column) == Grid.Kind.NUMBER
                                        && grid.number(row, column) != 1
                                        && grid.number(row, column) != 100),
                header -> what);
    }

    /** "Post-emergence" under a "Pass" tells which it is, and not how many. */
    private boolean holdsNames(int column) {
        List<String> texts = TextsBelow.of(grid, headerRow, column);
        return !texts.isEmpty()
                && texts.stream().noneMatch(text -> HOW_MANY.matcher(text).find())
                && IntStream.range(headerRow + 1, TextsBelow.end(grid, headerRow))
                        .noneMatch(row -> grid.kind(row, column) == Grid.Kind.NUMBER);
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
                " is not read as the Yield of " + match.vocabulary().spec().name()
                        + ", which is in t/ha, t/ac or t DM/ha:"
                        + " multiply it by the weight of one, and say in Yield basis and DM at ensiling what it was"
                        + " weighed as.");
    }

    /** Seeds on a square metre weigh what a thousand of them do; a spreader and a drill are loaded by weight. */
    private void cautionSeeds(HeaderRow.Match match) {
        String dose = match.headerOf(Jobs.DOSE, headers);
        boolean weighed = dose != null && !isSeeds(dose);
        if (weighed || dose == null && match.headerOf(Jobs.WATER_VOLUME, headers) != null) {
            // The weight stands beside the count, or what is listed is sprayed.
            return;
        }
        caution(
                match,
                HeadersNotRead::isSeeds,
                header -> " is not read as the " + Jobs.DOSE.name() + ". " + drilledByWeight(header));
    }

    private static boolean isSeeds(String header) {
        return SEEDS.matcher(header.strip()).matches();
    }

    private static String drilledByWeight(String header) {
        Matcher area = HECTARE_OR_ACRE.matcher(header);
        return DoseText.drilledByWeight(area.find() ? area.group().toLowerCase(Locale.ROOT) : "m2");
    }

    /** Kilograms of a nutrient are so many of a product only with what that holds, and of P and K only with what they are. */
    private void cautionNutrients(HeaderRow.Match match) {
        int[] columns = IntStream.rangeClosed(match.firstColumn(), match.lastColumn())
                .filter(column -> headers[column] != null
                        && match.headings()[column - match.firstColumn()] == null
                        && NUTRIENT.matcher(headers[column].strip()).matches())
                .toArray();
        if (columns.length == 0) {
            return;
        }
        String names = Arrays.stream(columns)
                .mapToObj(column -> Words.quoted(headers[column]))
                .collect(Collectors.joining(", "));
        findings.add(Finding.caution(
                grid.address(headerRow, columns[0]),
                names + (columns.length == 1 ? " is" : " are")
                        + " not read, for a nutrient is no product. Write a row for"
                        + " each, with the fertiliser in Product, the figure in Dose, kg N/ha, kg P2O5/ha or kg K2O/ha in"
                        + " Dose unit (of P and K by themselves nobody can tell whether the oxides are meant), and what the"
                        + " fertiliser holds in Nitrogen, Phosphate or Potash of the product list or in Nitrogen content,"
                        + " Phosphate content or Potash content beside the dose."));
    }

    /** The speed of a run by the watch asks for its length, which no formula could follow into a header. */
    private void cautionTimedRun(HeaderRow.Match match) {
        caution(
                match,
                header -> TIMED_RUN.matcher(header.strip()).matches(),
                " is not read: a length in a header is no cell to reckon with. Name the column "
                        + Machines.TIMED_SECONDS.name() + " (s), and type the length of the run in a column "
                        + Machines.TIMED_DISTANCE.name() + " (m or ft): the speed is worked out from both.");
    }

    private void caution(HeaderRow.Match match, Predicate<String> isMeant, String what) {
        caution(match, isMeant, header -> what);
    }

    private void caution(HeaderRow.Match match, Predicate<String> isMeant, UnaryOperator<String> what) {
        cautionWhere(match, column -> isMeant.test(headers[column]), what);
    }

    /** @param isMeant asked of the columns of the sheet that have a header */
    private void cautionWhere(HeaderRow.Match match, IntPredicate isMeant, UnaryOperator<String> what) {
        for (int column = match.firstColumn(); column <= match.lastColumn(); column++) {
            if (headers[column] != null && isMeant.test(column)) {
                findings.add(Finding.caution(
                        grid.address(headerRow, column), Words.quoted(headers[column]) + what.apply(headers[column])));
            }
        }
    }
}
