package org.rickyard.lists.table;

import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.Grid;
import org.rickyard.lists.Layout;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.header.Vocabulary;
import org.rickyard.lists.text.HeaderText;

/** What the cells of a sheet are to one who looks for a form in it: blank, a text, a header of any list. */
final class FormCells {
    private final Grid grid;
    private final List<Vocabulary> vocabularies;

    FormCells(Grid grid, List<Vocabulary> vocabularies) {
        this.grid = grid;
        this.vocabularies = vocabularies.stream()
                .filter(vocabulary -> vocabulary.spec() != Layout.LIST && vocabulary.spec() != Assumptions.LIST)
                .toList();
    }

    Grid grid() {
        return grid;
    }

    /** The lists that a form may be. */
    List<Vocabulary> vocabularies() {
        return vocabularies;
    }

    boolean isBlankBeside(int row, int column) {
        return IntStream.rangeClosed(column + 1, column + ListOnItsSide.NEAR).allMatch(beside -> isBlank(row, beside));
    }

    boolean isBlank(int row, int column) {
        return grid.words(row, column).isEmpty() && grid.kind(row, column) != Grid.Kind.UNCOMPUTED;
    }

    boolean isText(int row, int column) {
        return grid.kind(row, column) == Grid.Kind.TEXT && !isBlank(row, column);
    }

    /** Whether a header stands there; the kind of a machine is what is told of it, too. */
    boolean isHeader(int row, int column) {
        Heading heading = isText(row, column) ? heading(row, column) : null;
        return heading != null && heading.isCertain() && heading.isPlain();
    }

    /** Whether a label is the type of the machine that is named beside it: "Combine" beside "Old 5". */
    boolean isTypeOfNamed(int row, int column) {
        return isText(row, column)
                && vocabularies.stream()
                        .anyMatch(vocabulary -> ListOnItsSide.isTypeOfNamed(grid, row, column, vocabulary));
    }

    Heading heading(int row, int column) {
        HeaderText text = HeaderText.of(grid.text(row, column));
        Heading found = null;
        for (Vocabulary vocabulary : vocabularies) {
            Heading heading = vocabulary.read(text);
            if (heading != null && (found == null || heading.isCertain() && !found.isCertain())) {
                found = heading;
            }
        }
        return found;
    }
}
