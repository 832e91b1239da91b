package org.rickyard.lists.header;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/**
 * What looks like a list and is none: the diary, the invoices and the contacts that a client keeps in the same workbook.
 * Taken for jobs, fields or machines they would be worked out once more, and their names asked about.
 */
public final class NoLists {
    /** Words of a sheet's name that say it keeps what was done, billed or whom to ring; normal form. */
    private static final List<String> OTHER_SHEETS = List.of(
            "diary",
            "diarie",
            "timesheet",
            "time sheet",
            "journal",
            "logbook",
            "log book",
            "hour log",
            "work log",
            "fuel log",
            "driver log",
            "invoice",
            "invoicing",
            "contact",
            "phone list",
            "phone number",
            "phone book",
            "address",
            "addresse");

    private final Grid grid;

    public NoLists(Grid grid) {
        this.grid = grid;
    }

    /** Whether the sheet's name says that it is kept for something else than lists. */
    public boolean isOtherSheet() {
        String normal = Words.normal(grid.sheet());
        return OTHER_SHEETS.stream().anyMatch(word -> Words.holds(normal, word));
    }

    /**
     * Why what stands under a header is not the list that the header looks like; empty if nothing speaks against it.
     *
     * @param named whether the sheet, the table or a title calls the list by its name
     */
    public Optional<String> why(HeaderRow.Match match, int headerRow, boolean named) {
        if (match.vocabulary().spec() == Machines.LIST
                && hasNoFigures(match)
                && hasFiguresForNames(match, headerRow)
                && namesNoType(match, headerRow)) {
            return Optional.of(
                    "This could be a list of Machines, but figures stand where the names of machines would and"
                            + " none of its types is a type of machine, so it is not read. If it is a form for one machine, write"
                            + " its headers beside one another in one row, with a row for each machine below: copy the cells and"
                            + " paste them transposed.");
        }
        if (named) {
            return Optional.empty();
        }
        String spec = match.vocabulary().spec().name();
        if (isOtherSheet()) {
            return Optional.of(
                    "This could be a list of " + spec + ", but by the name of its sheet it is something else,"
                            + " so it is not read. If it is one, write " + Words.quoted(spec) + " in the row above.");
        }
        if (match.vocabulary().spec() == Machines.LIST && hasNoFigures(match) && namesNoType(match, headerRow)) {
            return Optional.of("This could be a list of Machines, but none of its types is a type of machine and it has"
                    + " no figures, so it is not read. If it is one, write \"Machines\" in the row above.");
        }
        if (match.vocabulary().spec() == Machines.LIST && match.says(Machines.TYPE) && isDatedAgain(match, headerRow)) {
            return Optional.of(
                    "This could be a list of Machines, but it has dates and its names come again, so it is taken"
                            + " for a record of what they did and not read. If it is one, write \"Machines\" in the row above.");
        }
        return Optional.empty();
    }

    /** Whether a header is "Date", and what stands under the kind of the machines names one twice. */
    private boolean isDatedAgain(HeaderRow.Match match, int headerRow) {
        boolean dated = false;
        for (int i = 0; i < match.headings().length; i++) {
            int column = match.firstColumn() + i;
            dated |= grid.kind(headerRow, column) == Grid.Kind.TEXT
                    && Words.holds(Words.normal(grid.text(headerRow, column)), "date");
        }
        return dated && comesAgain(match, headerRow);
    }

    /** Whether what stands under the kind of the machines names one twice. */
    public boolean comesAgain(HeaderRow.Match match, int headerRow) {
        boolean again = false;
        for (int i = 0; i < match.headings().length; i++) {
            int column = match.firstColumn() + i;
            Heading heading = match.headings()[i];
            if (heading != null
                    && heading.isCertain()
                    && heading.word() != null
                    && heading.column() == Machines.MACHINE) {
                List<String> names = TextsBelow.of(grid, headerRow, column).stream()
                        .map(Words::key)
                        .toList();
                again |= new HashSet<>(names).size() < names.size();
            }
        }
        return again;
    }

    private static boolean hasNoFigures(HeaderRow.Match match) {
        for (Heading heading : match.headings()) {
            if (heading != null && heading.candidates().stream().anyMatch(ColumnSpec::isNumeric)) {
                return false;
            }
        }
        return true;
    }

    /** Whether figures alone stand under the header of the machines' names, where a form has them beside what they are. */
    private boolean hasFiguresForNames(HeaderRow.Match match, int headerRow) {
        int place = match.place(Machines.MACHINE);
        int column = match.firstColumn() + place;
        return place >= 0
                && TextsBelow.of(grid, headerRow, column).size() <= 1
                && IntStream.range(headerRow + 1, TextsBelow.end(grid, headerRow))
                        .anyMatch(row -> grid.kind(row, column) == Grid.Kind.NUMBER);
    }

    /** "Drill width (m)" names no drill: it is what is measured, in a form that has it below. */
    private static boolean isOfFigure(String cell) {
        int bracket = cell.lastIndexOf('(');
        return bracket > 0
                && cell.endsWith(")")
                && SaidUnit.isUnit(Words.trim(cell.substring(bracket + 1, cell.length() - 1)));
    }

    private boolean namesNoType(HeaderRow.Match match, int headerRow) {
        int texts = 0;
        for (int i = 0; i < match.headings().length; i++) {
            Heading heading = match.headings()[i];
            if (heading == null || !heading.isCertain() || heading.column() != Machines.TYPE) {
                continue;
            }
            for (String cell : TextsBelow.of(grid, headerRow, match.firstColumn() + i)) {
                String text = Words.normal(cell);
                texts += text.isEmpty() ? 0 : 1;
                if (isOfFigure(cell)) {
                    continue;
                }
                if (ChoiceWords.MACHINE_TYPES.keySet().stream().anyMatch(word -> Words.holds(text, word))
                        || Machines.TYPE.unclear().keySet().stream()
                                .anyMatch(word -> Words.holds(text, Words.normal(word)))) {
                    return false;
                }
            }
        }
        return texts > 0;
    }
}
