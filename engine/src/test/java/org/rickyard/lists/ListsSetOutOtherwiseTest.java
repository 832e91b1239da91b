package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.UnitText;

/**
 * A list that has every column it may have is read the same however it is set out: columns in any order, headers written
 * in other ways, units beside or below, titles and headings of groups above, rows left blank.
 */
@Tag("derived")
class ListsSetOutOtherwiseTest {
    private static final int SEEDS = 6;
    private static final int ROWS = 3;

    /** Ways to write a name, and a name with its unit; the first is the plain one. */
    private static final List<UnaryOperator<String>> NAMES = List.of(
            name -> name,
            name -> name.toUpperCase(Locale.ROOT),
            name -> name.toLowerCase(Locale.ROOT),
            name -> name.replace(' ', '_'),
            name -> name.replace(' ', '\u00a0'),
            name -> name.replaceFirst(" ", "\n"),
            name -> " " + name.replace(" ", "  "),
            name -> name.endsWith(".") ? name : name + "*");

    private static final List<String> WITH_UNIT = List.of(
            "%s (%s)", "%s [%s]", "%s, %s", "%s\n(%s)", "%s ( %s )", "%s (%s)*", "%s (%s, optional)", "%s (%s) †");

    /** Headings of groups of columns. */
    private static final List<String> NUMBERS = List.of("", "", "", "%d. ", "%d) ", "(%d) ", "%d ", "Q%d: ");

    private static final List<String> GROUPS = List.of("Names", "Figures", "Details", "Work", "Notes on these");

    static Stream<ListSpec> lists() {
        return Lists.ALL.stream().filter(list -> list != Layout.LIST && list != Assumptions.LIST);
    }

    @ParameterizedTest
    @MethodSource("lists")
    void isReadTheSame(ListSpec list) {
        List<ColumnSpec> columns = new ArrayList<>(list.columns());
        Map<String, String> plain = read(list, sheet(list, columns, null));
        assertThat(plain.values().stream().filter(said -> said.startsWith("GIVEN")))
                .hasSizeGreaterThan(columns.size() * ROWS / 2);
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            Collections.shuffle(columns, random);
            assertThat(read(list, sheet(list, columns, random)))
                    .as(list + ", seed " + seed)
                    .isEqualTo(plain);
        }
    }

    /** As a form: its headers below one another, units behind them or in a column of their own, things on the right. */
    @ParameterizedTest
    @MethodSource("lists")
    void isReadTheSameOnItsSide(ListSpec list) {
        List<ColumnSpec> columns = new ArrayList<>(list.columns());
        Map<String, String> plain = read(list, sheet(list, columns, null));
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            Collections.shuffle(columns, random);
            assertThat(read(list, form(list, columns, random)))
                    .as(list + ", seed " + seed)
                    .isEqualTo(plain);
        }
    }

    private static SheetOf form(ListSpec list, List<ColumnSpec> columns, Random random) {
        SheetOf sheet = new SheetOf(list.name());
        int left = random.nextInt(3);
        int units = random.nextInt(3);
        if (random.nextBoolean()) {
            sheet.row(list.name() + " of this year").row();
        }
        for (ColumnSpec column : columns) {
            String unit = unit(column);
            List<Object> cells = new ArrayList<>(Collections.nCopies(left, null));
            cells.add(units > 0 || unit == null ? column.name() : String.format(WITH_UNIT.get(0), column.name(), unit));
            if (units == 1) {
                cells.add(unit);
            }
            for (int row = 0; row < ROWS; row++) {
                cells.add(cell(column, row));
            }
            if (units == 2) {
                cells.add(unit);
            }
            sheet.row(cells.toArray());
            if (random.nextInt(9) == 0) {
                sheet.row();
            }
        }
        return sheet;
    }

    /** @param random draws how the list is set out; null for plainly */
    private static SheetOf sheet(ListSpec list, List<ColumnSpec> columns, Random random) {
        SheetOf sheet = new SheetOf(list.name());
        boolean unitsBelow = random != null && random.nextInt(4) == 0;
        int left = random == null ? 0 : random.nextInt(3);
        if (random != null && random.nextBoolean()) {
            sheet.row(list.name() + " of this year").row();
        }
        String number = random == null ? "" : pick(NUMBERS, random);
        Object[] groups = new Object[left + columns.size()];
        Object[] headers = new Object[left + columns.size()];
        Object[] units = new Object[left + columns.size()];
        for (int i = 0; i < columns.size(); i++) {
            ColumnSpec column = columns.get(i);
            String unit = unit(column);
            String name = random == null ? column.name() : pick(NAMES, random).apply(column.name());
            String form = random == null ? WITH_UNIT.get(0) : pick(WITH_UNIT, random);
            headers[left + i] = String.format(number, i + 1)
                    + (unit == null || unitsBelow ? name : String.format(form, name, unit));
            units[left + i] = unit;
            if (random != null && random.nextInt(5) == 0) {
                groups[left + i] = pick(GROUPS, random);
            }
        }
        if (random != null && !unitsBelow && random.nextBoolean()) {
            sheet.row(groups);
        }
        sheet.row(headers);
        if (unitsBelow) {
            sheet.row(units);
        }
        for (int row = 0; row < ROWS; row++) {
            Object[] cells = new Object[left + columns.size()];
            for (int i = 0; i < columns.size(); i++) {
                cells[left + i] = cell(columns.get(i), row);
            }
            sheet.row(cells);
            if (random != null && random.nextInt(4) == 0) {
                sheet.row();
            }
        }
        return sheet;
    }

    private static <T> T pick(List<T> ways, Random random) {
        return ways.get(random.nextInt(ways.size()));
    }

    private static String unit(ColumnSpec column) {
        String unit =
                column.type() == ColumnSpec.Type.NUMBER ? column.symbol().unit().toString() : "";
        return !unit.isEmpty() && UnitText.read(unit, CustomaryUnits.UNSET) instanceof UnitText.Known ? unit : null;
    }

    private static Object cell(ColumnSpec column, int row) {
        return switch (column.type()) {
            case TEXT -> column.name().endsWith("nit") ? "L/ha" : column.name() + " " + "abc".charAt(row);
            case CHOICE -> column.choices().keySet().iterator().next();
            case DATE -> "2031-05-0" + (row + 1);
            default -> row + 2;
        };
    }

    /** What each cell of the list says. */
    private static Map<String, String> read(ListSpec list, SheetOf sheet) {
        ListRows rows = find(sheet).rows(list);
        Map<String, String> said = new LinkedHashMap<>();
        for (int row = 0; row < rows.size(); row++) {
            for (ColumnSpec column : list.columns()) {
                ListRows.State state = rows.state(column, row);
                String value = state != ListRows.State.GIVEN
                        ? ""
                        : column.isOfWords() ? rows.text(column, row) : String.valueOf(rows.number(column, row));
                said.put(
                        column + " " + row,
                        state + " " + value + " "
                                + rows.unit(column, row).map(Object::toString).orElse(""));
            }
        }
        return said;
    }
}
