package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Unit;

/** Whatever a workbook holds, the finder answers, and what it gives can be relied on. */
class ListFinderRobustnessTest {
    private static final Object[] ODD_CELLS = {
        null,
        null,
        "",
        " ",
        "ha",
        "(ac)",
        "m",
        "gal/ac",
        "%",
        "Total",
        "Sum",
        0,
        -1,
        0.5,
        1e9,
        45000,
        "x",
        "1:3",
        "1 in 3",
        "8'6\"",
        "/",
        "per",
        "(",
        ")",
        "()",
        "5 L/ha",
        "L",
        "#",
        true,
        new SheetOf.Fault("#DIV/0!"),
        SheetOf.NOT_CALCULATED,
        "\u00a0",
        "Field (",
        "Area ((ha))",
        "Dose /",
        "Dose per",
        "Charge (per",
        "'",
        "°",
        "²",
        "\uD83D\uDE9C",
        "İ",
        "ß"
    };

    private static SheetOf randomSheet(Random random, String name) {
        ListSpec list = Lists.ALL.get(random.nextInt(Lists.ALL.size()));
        SheetOf sheet = new SheetOf(name);
        int rows = random.nextInt(12);
        int width = 1 + random.nextInt(10);
        for (int row = 0; row < rows; row++) {
            boolean header = random.nextInt(4) == 0;
            Object[] cells = new Object[width];
            for (int column = 0; column < width; column++) {
                if (header && random.nextInt(5) > 0) {
                    ColumnSpec spec =
                            list.columns().get(random.nextInt(list.columns().size()));
                    String unit =
                            random.nextBoolean() ? "" : " (" + spec.symbol().unit() + ")";
                    cells[column] = spec.name() + unit;
                } else {
                    cells[column] = random.nextInt(3) == 0
                            ? (Object) random.nextInt(60)
                            : ODD_CELLS[random.nextInt(ODD_CELLS.length)];
                }
                if (random.nextInt(10) == 0) {
                    Grid.Format[] formats = Grid.Format.values();
                    sheet.format(row, column, formats[random.nextInt(formats.length)]);
                }
            }
            sheet.row(cells);
        }
        if (random.nextInt(5) == 0) {
            int first = random.nextInt(rows + 1);
            sheet.table(new Grid.TableRange("T", first, first + random.nextInt(5), 0, width - 1, 1, random.nextInt(2)));
        }
        return sheet;
    }

    @Test
    void anyWorkbookIsAnsweredAndAnswersHoldTogether() {
        Random random = new Random(7);
        int given = 0;
        for (int round = 0; round < 1_000; round++) {
            List<SheetOf> sheets = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(2); i++) {
                sheets.add(randomSheet(random, random.nextInt(3) == 0 ? "Fields" : "Sheet" + i));
            }
            FoundLists found = ListFinder.find(sheets);
            for (ListSpec list : Lists.ALL) {
                ListRows rows = found.rows(list);
                Set<String> places = new HashSet<>();
                for (int row = 0; row < rows.size(); row++) {
                    int at = row;
                    for (ColumnSpec column : list.columns()) {
                        given += check(rows, column, row) ? 1 : 0;
                    }
                    // No row is read twice, but for each of the products that it names beside each other.
                    String product = list.column("Product")
                            .flatMap(column -> rows.address(column, at))
                            .map(CellAddress::toString)
                            .orElse("");
                    rows.address(list.identity().get(0), row)
                            .ifPresent(address -> assertThat(places.add(address + " " + product))
                                    .isTrue());
                }
            }
            assertThat(ListFinder.find(sheets).findings()).isEqualTo(found.findings());
        }
        assertThat(given).isGreaterThan(300);
    }

    /** Whether the cell is given. */
    private static boolean check(ListRows rows, ColumnSpec column, int row) {
        State state = rows.state(column, row);
        assertThat(rows.text(column, row)).isNotNull();
        assertThat(rows.address(column, row).isPresent()).isEqualTo(state != State.NO_COLUMN);
        boolean usable = state == State.GIVEN || state == State.READ_FROM_TEXT;
        if (usable && column.isNumeric() && column.type() != ColumnSpec.Type.DATE) {
            Unit unit = rows.unit(column, row).orElseThrow();
            assertThat(column.measuredBy(unit)).as("%s in %s", column, unit).isTrue();
            double own = unit.convert(
                    rows.number(column, row), column.symbolFor(unit).unit());
            assertThat(column.symbolFor(unit).possible().contains(own))
                    .as("%s %s %s", column, own, unit)
                    .isTrue();
        }
        if (usable && column.type() == ColumnSpec.Type.CHOICE) {
            assertThat(column.choices()).containsKey(rows.text(column, row));
        }
        return usable;
    }
}
