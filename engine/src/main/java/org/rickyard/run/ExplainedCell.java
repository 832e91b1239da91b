package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.audit.Explanation;
import org.rickyard.audit.ExplanationFinder;
import org.rickyard.audit.Results;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Place;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableColumn.Calculated;
import org.rickyard.workbook.follow.FormulaRefs;
import org.rickyard.workbook.write.CellFormula;
import org.rickyard.workbook.write.Meaning;
import org.rickyard.workbook.write.SheetSet;

/**
 * Answers the question how the value of one cell came about: of a result sheet, of a page such as Summary whose links
 * are followed, or of the client's own lists.
 */
public final class ExplainedCell {
    /** A cell that cannot be explained; the message says what can be asked for. */
    public static final class NotExplainedException extends Exception {
        private static final long serialVersionUID = 1L;

        NotExplainedException(String message) {
            super(message);
        }
    }

    private static final Pattern CELL = Pattern.compile("\\$?([A-Za-z]{1,3})\\$?([1-9][0-9]{0,6})");
    /** Sheets of the client's that a message names. */
    private static final int MOST_NAMED = 12;

    private static final Pattern LINK = Pattern.compile("HYPERLINK\\(\"#((?:[^\"]|\"\")+)\".*");

    /** How a card shows a value, or says that it is withheld. */
    private static final Pattern SHOWN = Pattern.compile("ISNUMBER\\(((?:'(?:[^']|'')+'|[^'(),!]+)![$A-Z0-9]+)\\)");

    private final Recalculation run;
    private final ExplanationFinder finder;

    private ExplainedCell(Recalculation run) {
        this.run = run;
        this.finder = new ExplanationFinder(run.sheets().results(), run.sheetNames());
    }

    /**
     * Explains a cell.
     *
     * @param asked the sheet and cell as one writes them, {@code Work rates!K12} or {@code 'Work rates'!$K$12}, or the
     *     workbook name of a total
     * @throws NotExplainedException if nothing there can be explained
     */
    public static Explanation of(Recalculation run, String asked) throws NotExplainedException, IOException {
        return new ExplainedCell(run).answer(asked);
    }

    private Explanation answer(String asked) throws NotExplainedException, IOException {
        CellAddress cell = parse(total(asked.strip()).orElse(asked.strip()));
        Optional<Explanation> found = finder.find(cell);
        if (found.isPresent()) {
            return found.get();
        }
        Optional<CellAddress> link = linkOf(cell);
        if (link.isPresent() && !link.get().equals(cell)) {
            return finder.find(link.get())
                    .orElseThrow(() -> new NotExplainedException(
                            cell + " leads to " + link.get() + ", which holds nothing that was worked out or read."))
                    .note(cell + " leads there");
        }
        throw new NotExplainedException(nothingAt(cell));
    }

    /** Where the total stands that goes by a workbook name; names do not mind capitals. */
    private Optional<String> total(String asked) throws NotExplainedException {
        for (Map.Entry<String, String> total : run.totals().entrySet()) {
            if (total.getKey().equalsIgnoreCase(asked)) {
                return Optional.of(total.getValue());
            }
        }
        if (asked.regionMatches(true, 0, FormulaRefs.OUR_NAMES, 0, FormulaRefs.OUR_NAMES.length())
                && asked.indexOf('!') < 0) {
            throw new NotExplainedException("No total goes by the name '" + asked + "'. There are: "
                    + String.join(", ", run.totals().keySet()) + ".");
        }
        return Optional.empty();
    }

    private CellAddress parse(String asked) throws NotExplainedException {
        int mark = asked.lastIndexOf('!');
        if (mark <= 0) {
            throw new NotExplainedException("Name the sheet as well as the cell, for example '" + example() + "'.");
        }
        String sheet = asked.substring(0, mark).strip();
        if (sheet.length() > 1 && sheet.startsWith("'") && sheet.endsWith("'")) {
            sheet = sheet.substring(1, sheet.length() - 1).replace("''", "'");
        }
        Matcher matcher = CELL.matcher(asked.substring(mark + 1).strip());
        if (!matcher.matches()) {
            throw new NotExplainedException("'" + asked.substring(mark + 1)
                    + "' is not one cell; write a single one as its column letters and row number, for example '"
                    + example() + "'.");
        }
        int column = 0;
        for (char letter : matcher.group(1).toUpperCase(Locale.ROOT).toCharArray()) {
            column = column * 26 + letter - 'A' + 1;
        }
        return new CellAddress(known(sheet), Integer.parseInt(matcher.group(2)) - 1, column - 1);
    }

    /** The sheet in its own spelling. */
    private String known(String sheet) throws NotExplainedException {
        List<String> lists = run.plan().lists().places().stream()
                .map(Place::sheet)
                .distinct()
                .toList();
        List<String> names = new ArrayList<>(run.sheetNames());
        names.addAll(lists);
        for (String name : names) {
            if (name.equalsIgnoreCase(sheet)) {
                return name;
            }
        }
        String read = lists.isEmpty()
                ? ""
                : " Lists were read from: " + String.join(", ", lists.subList(0, Math.min(MOST_NAMED, lists.size())))
                        + Counted.andMore(lists.size() - MOST_NAMED) + ".";
        String results = " Summary names all result sheets; ask for example '" + example() + "'.";
        Optional<String> clients =
                run.allSheetNames().stream().filter(sheet::equalsIgnoreCase).findFirst();
        throw new NotExplainedException(clients.map(name -> run.keptSheets().contains(name)
                                ? "The sheet '" + name + "' was written by an earlier run and is yours now, so it"
                                        + " is not read."
                                : "No list was read from the sheet '" + name
                                        + "', so nothing is worked out from its cells.")
                        .orElseGet(() -> "There is no sheet '" + sheet + "'.")
                + read
                + results);
    }

    private String example() {
        for (ResultTable table : run.plan().tables()) {
            if (table.rows() > 0) {
                List<Calculated> columns = Results.resultColumns(table);
                if (!columns.isEmpty()) {
                    CellAddress cell = run.sheets()
                            .places()
                            .cell(table.spec(), columns.get(0).symbol(), 0);
                    return cell.sheet() + "!" + CellAddress.letters(cell.column()) + (cell.row() + 1);
                }
            }
        }
        return "Fields!C2";
    }

    /** Where a cell of a page leads, or else the row it stands in. */
    private Optional<CellAddress> linkOf(CellAddress cell) throws IOException {
        if (!run.sheetNames().contains(cell.sheet())
                || finder.table(cell.sheet()).isPresent()) {
            return Optional.empty();
        }
        Map<Integer, String> row = new HashMap<>();
        for (SheetSet.Sheet sheet : run.sheetsUnstyled()) {
            if (sheet.name().equals(cell.sheet())) {
                sheet.content().describe(new FormulasOfRow(cell.row(), row));
            }
        }
        Optional<CellAddress> own = target(row.get(cell.column()));
        return own.isPresent()
                ? own
                : row.keySet().stream()
                        .sorted()
                        .map(column -> target(row.get(column)))
                        .flatMap(Optional::stream)
                        .findFirst();
    }

    private Optional<CellAddress> target(String formula) {
        if (formula == null) {
            return Optional.empty();
        }
        Matcher link = LINK.matcher(formula);
        Matcher shown = SHOWN.matcher(formula);
        try {
            return Optional.of(parse(
                    link.matches() ? link.group(1).replace("\"\"", "\"") : shown.find() ? shown.group(1) : formula));
        } catch (NotExplainedException noCell) {
            return Optional.empty();
        }
    }

    private String nothingAt(CellAddress cell) {
        Optional<ResultTable> table = finder.table(cell.sheet());
        if (table.isPresent()) {
            ResultTable found = table.get();
            if (found.rows() == 0) {
                return cell + " holds nothing: the sheet has no rows, because " + found.emptyBecause() + ".";
            }
            String last = CellAddress.letters(found.spec().columns().size() - 1);
            return cell + " holds nothing that was worked out. On '" + cell.sheet() + "' values stand in rows "
                    + (SheetPlaces.FIRST_ROW + 1) + " to " + (SheetPlaces.FIRST_ROW + found.rows()) + ", columns A to "
                    + last + ", and totals in row " + (SheetPlaces.TOTAL_ROW + 1) + ".";
        }
        if (run.sheetNames().contains(cell.sheet())) {
            return cell + " is neither worked out nor a link to something that is. Ask for a row with a link, or for a"
                    + " result, for example '" + example() + "'.";
        }
        return cell + " belongs to no list that was read. The sheet About says which lists were read from where;"
                + " results can be asked for, too, for example '" + example() + "'.";
    }

    /** Keeps the formulas of one row. */
    private record FormulasOfRow(int wanted, Map<Integer, String> formulas) implements Meaning {
        @Override
        public void formula(int row, int column, CellFormula formula, int number) {
            if (row == wanted) {
                formulas.put(column, String.join(Integer.toString(number), formula.pieces()));
            }
        }

        @Override
        public void number(int row, int column, double number) {
            // A typed number leads nowhere.
        }

        @Override
        public void text(int row, int column, String text) {
            // A typed text leads nowhere.
        }
    }
}
