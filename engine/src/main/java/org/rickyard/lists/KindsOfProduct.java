package org.rickyard.lists;

import java.util.List;
import java.util.regex.Pattern;
import org.rickyard.lists.text.Words;

/** A "Herbicide" beside the work, which is the product of its row where no other header names one. */
final class KindsOfProduct {
    /** What is sprayed, by what it is for: one of them is the product of its row, several are several products. */
    static final Pattern KIND = Pattern.compile(
            "(herbicide|fungicide|insecticide|desiccant|molluscicide|growth regulator|pgr|foliar feed)( name| used| applied)?");

    private final Grid grid;
    private final int headerRow;
    private final String[] headers;
    private final List<Finding> findings;

    KindsOfProduct(Grid grid, int headerRow, String[] headers, List<Finding> findings) {
        this.grid = grid;
        this.headerRow = headerRow;
        this.headers = headers;
        this.findings = findings;
    }

    /** Reads the one there is as the product, and tells of it; none where there are several. */
    void apply(HeaderRow.Match match, Vocabulary.Heading[] headings) {
        if (match.vocabulary().spec != Jobs.LIST || match.places(Jobs.PRODUCT) > 0 || match.places(Jobs.MIX) > 0) {
            return;
        }
        int place = -1;
        for (int i = 0; i < headings.length; i++) {
            String header = headers[match.firstColumn() + i];
            if (headings[i] == null
                    && header != null
                    && KIND.matcher(HeaderText.normal(header)).matches()) {
                if (place >= 0) {
                    return;
                }
                place = i;
            }
        }
        if (place < 0) {
            return;
        }
        int column = match.firstColumn() + place;
        headings[place] = new Vocabulary.Heading(List.of(Jobs.PRODUCT), "", 2, false, null);
        findings.add(Finding.note(
                new CellAddress(grid.sheet(), headerRow, column),
                Words.quoted(headers[column]) + " is read as the " + Jobs.PRODUCT.name() + " of " + Jobs.LIST.name()
                        + ", since no other header names one. If it is something else, rename it."));
    }
}
