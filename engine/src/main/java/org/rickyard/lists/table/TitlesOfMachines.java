package org.rickyard.lists.table;

import java.util.Optional;
import java.util.stream.IntStream;
import org.rickyard.lists.Grid;
import org.rickyard.lists.header.TypeInTitle;

/** The lines of a sheet that stand alone near a row of headers and say what type the machines under it are. */
final class TitlesOfMachines {
    /** So many rows from its headers a title may stand. */
    private static final int NEAR = 3;

    private final Grid grid;
    private final int columns;

    /** @param columns in how many columns of the sheet something may stand beside a title */
    TitlesOfMachines(Grid grid, int columns) {
        this.grid = grid;
        this.columns = columns;
    }

    /** What a row holds beside blank cells. */
    private enum Held {
        NOTHING,
        ONE_TEXT,
        MORE
    }

    /** The nearest line above a row that stands alone and names a type. */
    Optional<TypeInTitle> above(int row) {
        for (int above = row - 1; above >= Math.max(0, row - NEAR); above--) {
            Held held = held(above);
            Optional<TypeInTitle> title = held == Held.ONE_TEXT ? at(above) : Optional.empty();
            if (held == Held.MORE || title.isPresent()) {
                return title;
            }
        }
        return Optional.empty();
    }

    /** A line below a row that stands alone and names a type of several, else the name of the sheet if that names one. */
    Optional<TypeInTitle> belowOrOfSheet(int row) {
        return below(row).or(() -> TypeInTitle.of(grid.sheet(), null));
    }

    /** It stands above the first figures. */
    private Optional<TypeInTitle> below(int row) {
        for (int below = row + 1; below <= Math.min(grid.rows() - 1, row + NEAR); below++) {
            Held held = held(below);
            if (held == Held.ONE_TEXT) {
                return at(below).filter(TypeInTitle::several);
            }
            if (held == Held.MORE && holdsNumber(below)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private Optional<TypeInTitle> at(int row) {
        int column = filled(row).findFirst().orElseThrow();
        return TypeInTitle.of(grid.text(row, column), grid.address(row, column));
    }

    private Held held(int row) {
        int[] first = filled(row).limit(2).toArray();
        return first.length == 0
                ? Held.NOTHING
                : first.length == 1 && grid.kind(row, first[0]) == Grid.Kind.TEXT ? Held.ONE_TEXT : Held.MORE;
    }

    private IntStream filled(int row) {
        return IntStream.range(0, columns).filter(column -> grid.kind(row, column) != Grid.Kind.BLANK);
    }

    private boolean holdsNumber(int row) {
        return filled(row).anyMatch(column -> grid.kind(row, column) == Grid.Kind.NUMBER);
    }
}
