package org.rickyard.lists.header;

import java.util.List;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** Names that mean a column only by their unit, where the unit stands in a row below and not beside them. */
final class UnitBelowHeader {
    private final Grid grid;
    private final List<Vocabulary> vocabularies;

    UnitBelowHeader(Grid grid, List<Vocabulary> vocabularies) {
        this.grid = grid;
        this.vocabularies = vocabularies;
    }

    /** "Hopper capacity" over "kg" means what "Hopper capacity (kg)" does, which without its unit means nothing. */
    boolean isMeasuredOtherwise(String joined) {
        HeaderText text = HeaderText.of(joined);
        return vocabularies.stream()
                .anyMatch(vocabulary -> vocabulary.otherwise().isMeasured(text));
    }

    /** "Road" over "Laden" over "km/h": names that mean nothing without their unit, which stands a row lower. */
    String[] withUnits(String[] above, String[] both, int row, int first) {
        if (row + 2 >= grid.rows() || !isUnitsRow(row + 2, first, both.length)) {
            return both;
        }
        for (int column = first; column < both.length; column++) {
            String unit = text(row + 2, column);
            String name = text(row + 1, column);
            if (!unit.isEmpty() && !name.isEmpty() && both[column] != null && !isKnown(both[column])) {
                String whole = above[column] == null ? name : above[column] + " " + name;
                for (String joined : List.of(whole + " " + unit, name + " " + unit)) {
                    if (isMeasuredOtherwise(joined)) {
                        both[column] = joined;
                        break;
                    }
                }
            }
        }
        return both;
    }

    /** "Road speed (km/h)" and "laden" as "Road speed laden (km/h)", "Speed km/h" and "laden" as "Speed laden (km/h)". */
    static String unitLast(String above, String below) {
        int open = above.lastIndexOf('(');
        if (open > 0 && above.endsWith(")")) {
            return above.substring(0, open).strip() + " " + below + " " + above.substring(open);
        }
        HeaderText text = HeaderText.of(above);
        for (int count = 1; count < text.words().size(); count++) {
            String rest = text.rest(count);
            if (SaidUnit.measures(rest)) {
                return text.raw().substring(0, text.ends().get(count - 1)) + " " + below + " (" + rest + ")";
            }
        }
        return above + " " + below;
    }

    /** Whether a header is the same column as a name without a unit, and has one. */
    boolean takesUnit(String name, String whole) {
        HeaderText bare = HeaderText.of(name);
        HeaderText measured = HeaderText.of(whole);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading own = vocabulary.read(bare);
            Heading both = vocabulary.read(measured);
            return own != null
                    && both != null
                    && own.isCertain()
                    && both.isCertain()
                    && own.column() == both.column()
                    && own.column().isNumeric()
                    && own.rest().isEmpty()
                    && !both.rest().isEmpty()
                    && HeaderUnit.fits(both.column(), both.rest());
        });
    }

    private boolean isUnitsRow(int row, int first, int end) {
        int units = 0;
        for (int column = first; column < end; column++) {
            Grid.Kind kind = grid.kind(row, column);
            String text = text(row, column);
            if (kind != Grid.Kind.BLANK && kind != Grid.Kind.TEXT
                    || !text.isEmpty() && !TwoDeepHeader.isUnitAlone(text) && !SaidUnit.isMoney(text)) {
                return false;
            }
            units += text.isEmpty() ? 0 : 1;
        }
        return units > 1;
    }

    private boolean isKnown(String header) {
        HeaderText text = HeaderText.of(header);
        return vocabularies.stream().anyMatch(vocabulary -> {
            Heading heading = vocabulary.read(text);
            return heading != null && heading.isCertain();
        });
    }

    private String text(int row, int column) {
        return grid.kind(row, column) == Grid.Kind.TEXT ? Words.trim(grid.text(row, column)) : "";
    }
}
