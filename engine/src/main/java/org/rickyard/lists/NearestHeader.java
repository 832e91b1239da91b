package org.rickyard.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rickyard.lists.text.Words;

/** The header row of a sheet that came nearest to a list, told where no such list is found there. */
final class NearestHeader {
    /** A row knowing so many headers of a list is hardly there by chance. */
    static final int LEAST = 4;

    private static final int MOST_NAMED = 6;

    private final Grid grid;
    private final HeaderRow headerRow;
    private final List<Vocabulary> vocabularies;
    private final List<Vocabulary> namedBySheet;
    private HeaderRow.Match nearest;
    private int row;
    private String[] headers;

    NearestHeader(Grid grid, HeaderRow headerRow, List<Vocabulary> vocabularies, List<Vocabulary> namedBySheet) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.vocabularies = vocabularies;
        this.namedBySheet = namedBySheet;
    }

    /** Keeps a stretch of a row that begins no list, if it is nearer to one than those before it. */
    void consider(String[] texts, int at, int first, int last, List<Vocabulary> named) {
        for (Vocabulary vocabulary : vocabularies) {
            boolean isNamed = named.contains(vocabulary);
            HeaderRow.Match match = headerRow.match(vocabulary, texts, first, last, isNamed);
            int worth = match.matched() + (isNamed ? 2 : 0);
            // On a sheet of the list's own name, what it is known by is enough to miss the rest of it.
            boolean own = vocabulary.isCalled(grid.sheet()) && vocabulary.isKnownIn(match);
            boolean near = (worth >= LEAST || own)
                    && match.score() > match.matched()
                    && !match.missing().isEmpty();
            if (near && (nearest == null || match.score() > nearest.score())) {
                nearest = match;
                row = at;
                headers = texts;
            }
        }
    }

    /** Whether it is a row of a form, which is told of as a whole. */
    boolean isIn(ListOnItsSide form) {
        return nearest != null && nearest.vocabulary().spec == form.spec() && form.spans(row);
    }

    /**
     * What to say of it; nothing where its list was found after all.
     *
     * @param otherSheet whether the sheet says that it holds something else, so that only its own list is missed
     */
    Optional<Finding> told(List<FoundTable> tables, boolean otherSheet) {
        boolean named = nearest != null && namedBySheet.contains(nearest.vocabulary());
        if (nearest == null
                || otherSheet && !named
                || tables.stream().anyMatch(table -> table.role(nearest.vocabulary().spec) != null)) {
            return Optional.empty();
        }
        String message = "This row looks like the header of the list "
                + nearest.vocabulary().spec.name()
                + ", but it has no column " + String.join(" and no column ", nearest.missing())
                + ", so nothing of it is read." + notKnown()
                + " Add the column, or name it in a sheet Layout (List, Column, Header in this workbook, Unit).";
        CellAddress cell = new CellAddress(grid.sheet(), row, firstKnown());
        return Optional.of(named ? Finding.stop(cell, message) : Finding.caution(cell, message));
    }

    private int firstKnown() {
        for (int i = 0; i < nearest.headings().length; i++) {
            if (nearest.headings()[i] != null) {
                return nearest.firstColumn() + i;
            }
        }
        return nearest.firstColumn();
    }

    /** Which of its headers mean nothing: as a rule what is missed is one of them, in words that are not known. */
    private String notKnown() {
        List<String> others = new ArrayList<>();
        for (int i = 0; i < nearest.headings().length && others.size() < MOST_NAMED; i++) {
            String header = headers[nearest.firstColumn() + i];
            if (nearest.headings()[i] == null && header != null) {
                others.add(Words.quoted(header));
            }
        }
        return others.isEmpty() ? "" : " Not known of its headers: " + String.join(", ", others) + ".";
    }
}
