package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;

class SheetCellsTest {
    private record Stored(Kind kind, double number, String text, Format format, boolean formula) {}

    private static Stored random(Random random) {
        Kind kind = Kind.values()[1 + random.nextInt(5)];
        boolean text = kind == Kind.TEXT || kind == Kind.ERROR || kind == Kind.LOGICAL;
        return new Stored(
                kind,
                kind == Kind.NUMBER ? random.nextInt(3) * 1.25 : 0,
                text ? "t" + random.nextInt(5) : "",
                Format.values()[random.nextInt(3)],
                random.nextBoolean());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 40, 3_000, 1_048_576})
    void cellsPutInAnyOrderAreFoundAgain(int height) {
        Random random = new Random(height);
        int width = height == 1 ? 16_384 : 7;
        Map<List<Integer>, Stored> expected = new HashMap<>();
        SheetCells cells = new SheetCells("Fields", false, List.of(), Epoch.Y1900);
        int rows = 0;
        int columns = 0;
        for (int i = 0; i < 8_000; i++) {
            int row = random.nextInt(height);
            int column = random.nextInt(width);
            Stored stored = random(random);
            cells.cell(row, column, stored.kind, stored.number, stored.text, stored.format, stored.formula ? "" : null);
            expected.put(List.of(row, column), stored);
            rows = Math.max(rows, row + 1);
            columns = Math.max(columns, column + 1);
        }
        assertThat(cells.rows()).isEqualTo(rows);
        assertThat(cells.columns()).isEqualTo(columns);
        expected.forEach((place, stored) ->
                assertThat(read(cells, place.get(0), place.get(1))).isEqualTo(stored));
        Stored blank = new Stored(Kind.BLANK, 0, "", Format.GENERAL, false);
        for (int i = 0; i < 20_000; i++) {
            int row = random.nextInt(height + 1_000);
            int column = random.nextInt(width + 10);
            assertThat(read(cells, row, column)).isEqualTo(expected.getOrDefault(List.of(row, column), blank));
        }
        assertThat(read(cells, -1, 0)).isEqualTo(blank);
        assertThat(read(cells, 0, -1)).isEqualTo(blank);
    }

    private static Stored read(SheetCells cells, int row, int column) {
        return new Stored(
                cells.kind(row, column),
                cells.number(row, column),
                cells.text(row, column),
                cells.format(row, column),
                cells.isFormula(row, column));
    }
}
