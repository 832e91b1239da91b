package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * One farm told in many ways, drawn from a seed: by other names and units of its headers, in other places, and among
 * columns of the adviser's own. What is true is known here, from the description below, and not from what was read. Each
 * figure is read as it is, or not at all and then told; another figure is never read.
 */
class SaidOtherwiseTest {
    private static final int BOOKS = 30;

    /** A figure of the first row of the list and of the second, in the unit of the column. */
    private record Told(ColumnSpec column, Unit unit, double first, double second, String names, String units) {}

    /** How the header of a name and a unit may be put together. */
    private static final List<String> WAYS = List.of(
            "%s (%s)", "%s [%s]", "%s, %s", "%s - %s", "%s\n(%s)", "%s\n%s", "%s: %s", "%s(%s)", " %s  ( %s ) ");

    private static final String LENGTHS = "m=1, metres=1, ft=0.3048, feet=0.3048, yd=0.9144, cm=0.01";
    private static final String SPEEDS = "km/h=1, kph=1, km/hr=1, mph=1.609344";
    private static final String SHARES = "%=1, per cent=1";
    private static final String VOLUMES = "L=1, litres=1, US gal=3.785411784, imp gal=4.54609";
    private static final String PRESSURES = "bar=1, psi=0.06894757293168361, kPa=0.01";

    private static final List<Told> FIELDS = List.of(
            new Told(
                    Fields.AREA,
                    Units.HA,
                    4.2,
                    6.15,
                    "Area|Net area|Cropped area|Field size",
                    "ha=1, hectares=1, ac=0.40468564224"),
            new Told(Fields.RUN_LENGTH, Units.M, 210, 265, "Run length|Bout length|Length of run", LENGTHS),
            new Told(
                    Fields.DISTANCE_TO_CLAMP,
                    Units.KM,
                    1.4,
                    2.3,
                    "Distance to clamp|Clamp distance|Haul distance|Dist. to pit",
                    "km=1, miles=1.609344, m=0.001"),
            new Told(Fields.PERIMETER, Units.M, 880, 1040, "Perimeter|Length of boundary|Circumference", LENGTHS),
            new Told(Fields.SLOPE, Units.PERCENT, 6, 3, "Slope|Gradient|Steepness", SHARES));

    private static final List<Told> MACHINES = List.of(
            new Told(
                    Machines.WORKING_WIDTH,
                    Units.M,
                    3,
                    24,
                    "Working width|Bout width|Width of work|Cutting width",
                    "m=1, ft=0.3048, in=0.0254"),
            new Told(Machines.SPEED, Units.KM_PER_H, 11, 12, "Speed|Forward speed|Fwd speed|Working speed", SPEEDS),
            new Told(
                    Machines.FIELD_EFFICIENCY, Units.PERCENT, 78, 62, "Field efficiency|Field eff.|Efficiency", SHARES),
            new Told(Machines.TANK, Units.L, 1000, 3000, "Tank|Tank size|Tank capacity|Nominal tank", VOLUMES),
            new Told(Machines.USABLE_TANK, Units.L, 950, 2850, "Usable tank|Tank (usable)|Usable volume", VOLUMES),
            new Told(
                    Machines.HIGHEST_PRESSURE,
                    Units.BAR,
                    4,
                    4.5,
                    "Highest pressure|Max pressure|Pressure max",
                    PRESSURES),
            new Told(
                    Machines.LOWEST_PRESSURE,
                    Units.BAR,
                    1,
                    1.2,
                    "Lowest pressure|Min pressure|Min. pressure",
                    PRESSURES));

    /** Columns of advisers that are no inputs of these lists, with a cell. */
    private static final List<Object[]> OTHERS = List.of(
            new Object[] {"Postcode", "ZZ9 9ZZ"},
            new Object[] {"Map sheet", "NZ 12"},
            new Object[] {"Soil pH", 6.4},
            new Object[] {"N applied (kg/ha)", 180},
            new Object[] {"Yield 2030 (t/ha)", 9.1},
            new Object[] {"Rent (£/ha)", 180},
            new Object[] {"Headland (ha)", 0.4},
            new Object[] {"VAT (%)", 20},
            new Object[] {"Checked by", "R B"},
            new Object[] {"Tyre pressure (bar)", 1.6},
            new Object[] {"Transport width (m)", 2.9},
            new Object[] {"Fuel tank (L)", 300},
            new Object[] {"Serial no.", 12345},
            new Object[] {"Hours last year", 140},
            new Object[] {"Gate width (m)", 4});

    /** What was drawn for a column: its place is that in the list above. */
    private record Drawn(String header, double factor) {}

    private final List<Drawn> drawn = new ArrayList<>();

    private SheetOf book(Random random, String title, Object[] names, String rows, String kind, List<Told> all) {
        List<List<Object>> columns = new ArrayList<>();
        columns.add(List.of(rows, names[0], names[1]));
        columns.add(List.of(kind, names[2], names[3]));
        for (Told told : all) {
            Drawn way = draw(random, told);
            drawn.add(way);
            columns.add(List.of(way.header(), told.first() / way.factor(), told.second() / way.factor()));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            Object[] other = OTHERS.get(random.nextInt(OTHERS.size()));
            columns.add(List.of(other[0], other[1], other[1]));
        }
        Collections.shuffle(columns, random);
        SheetOf sheet = new SheetOf(title);
        for (int i = random.nextInt(3); i > 0; i--) {
            sheet.row("Plan of the year", null, "draft");
        }
        boolean total = random.nextBoolean();
        for (int row = 0; row < 3; row++) {
            int at = row;
            sheet.row(columns.stream().map(column -> column.get(at)).toArray());
            if (row == 1 && random.nextBoolean()) {
                sheet.row();
            }
        }
        if (total) {
            sheet.row(columns.stream()
                    .map(column -> column.get(0).equals(rows)
                            ? "Total"
                            : column.get(1) instanceof Double one ? (Object) (one + (Double) column.get(2)) : null)
                    .toArray());
        }
        return sheet;
    }

    private static Drawn draw(Random random, Told told) {
        String[] names = told.names().split("\\|");
        String[] units = told.units().split(", ");
        String[] unit = units[random.nextInt(units.length)].split("=");
        String name = names[random.nextInt(names.length)];
        String header = String.format(WAYS.get(random.nextInt(WAYS.size())), name, unit[0]);
        return new Drawn(header, Double.parseDouble(unit[1]));
    }

    /** How many figures were read; each must be the one that is told above, and one that is not read must be named. */
    private int read(FoundLists found, ListSpec list, List<Told> all, String seen) {
        ListRows rows = found.rows(list);
        assertThat(rows.size()).as(seen).isEqualTo(2);
        int read = 0;
        for (int i = 0; i < all.size(); i++) {
            Told told = all.get(i);
            for (int row = 0; row < 2; row++) {
                String what = drawn.get(i).header() + " in " + seen;
                if (rows.gives(told.column(), row)) {
                    double value = rows.unit(told.column(), row)
                            .orElseThrow()
                            .convert(rows.number(told.column(), row), told.unit());
                    double truth = row == 0 ? told.first() : told.second();
                    assertThat(value).as(what).isCloseTo(truth, org.assertj.core.data.Offset.offset(1e-9 * truth));
                    read++;
                } else {
                    assertThat(isNamed(found, drawn.get(i).header())).as(what).isTrue();
                }
            }
        }
        for (ColumnSpec column : list.columns()) {
            boolean of = all.stream().anyMatch(told -> told.column() == column);
            if (!of && column.type() == ColumnSpec.Type.NUMBER) {
                assertThat(rows.has(column) && rows.gives(column, 0))
                        .as(column + " in " + seen)
                        .isFalse();
            }
        }
        return read;
    }

    private static boolean isNamed(FoundLists found, String header) {
        String line = header.replace('\n', ' ').strip();
        return found.findings().stream().anyMatch(finding -> finding.message().contains(line))
                || found.places().stream()
                        .flatMap(place -> place.unrecognised().stream())
                        .anyMatch(unread -> unread.strip().equals(header.strip()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void fieldsAreTheSameHoweverTheyAreTold(long seed) {
        Random random = new Random(seed);
        int read = 0;
        for (int i = 0; i < BOOKS; i++) {
            drawn.clear();
            Object[] names = {"Long Acre", "Kiln Close", "grass", "grass"};
            SheetOf sheet = book(random, "Fields", names, "Field", "Crop", FIELDS);
            read += read(
                    ListFinder.find(List.of(sheet)), Fields.LIST, FIELDS, "book " + i + " of seed " + seed + drawn);
        }
        assertThat(read).as("figures that were read").isEqualTo(BOOKS * 2 * FIELDS.size());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void machinesAreTheSameHoweverTheyAreTold(long seed) {
        Random random = new Random(seed);
        int read = 0;
        for (int i = 0; i < BOOKS; i++) {
            drawn.clear();
            Object[] names = {"Old sprayer", "Big sprayer", "sprayer", "sprayer"};
            SheetOf sheet = book(random, "Machines", names, "Machine", "Type", MACHINES);
            read += read(
                    ListFinder.find(List.of(sheet)), Machines.LIST, MACHINES, "book " + i + " of seed " + seed + drawn);
        }
        assertThat(read).as("figures that were read").isEqualTo(BOOKS * 2 * MACHINES.size());
    }

    @Test
    void aFigureInAnotherUnitWouldBeNoticed() {
        drawn.clear();
        drawn.add(new Drawn("Area (ha)", 0.40468564224));
        FoundLists found = ListFinder.find(List.of(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "grass", 10.4)
                .row("B", "grass", 15.2)));
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> read(found, Fields.LIST, FIELDS.subList(0, 1), "a book that is wrong"))
                .isInstanceOf(AssertionError.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Townland / field", "Field / Cae", "Cae/Field", "Field or paddock", "Field \\ parcel"})
    void oneOfTwoNamesIsEnough(String header) {
        ListRows fields = find(new SheetOf("Fields")
                        .row(header, "Area (ha)", "Crop", "Yield (t/ha)", "Holding")
                        .row("Lea", 5, "grass", 30, "Hill"))
                .rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(1);
        assertThat(fields.text(Fields.FIELD, 0)).isEqualTo("Lea");
    }

    @Test
    void twoNamesOfTwoColumnsAreNeither() {
        ListRows jobs = find(new SheetOf("Jobs")
                        .row("Job", "Field", "Operation", "Machine", "Tractor / Product")
                        .row("One", "A", "spraying", "X", "Y"))
                .rows(Jobs.LIST);
        assertThat(jobs.has(Jobs.TRACTOR)).isFalse();
        assertThat(jobs.has(Jobs.PRODUCT)).isFalse();
    }

    @Test
    void aUnitMayStandWithinTheName() {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Area (ha)", "Haul mi. one way")
                        .row("Lea", 5, 2))
                .rows(Fields.LIST);
        assertThat(fields.unit(Fields.DISTANCE_TO_CLAMP, 0).orElseThrow().symbol())
                .isEqualTo("mile");
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Road mph loaded", "Road mph empty")
                        .row("Truck", "trailer", 15, 20))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(15);
        assertThat(machines.unit(Machines.ROAD_SPEED_EMPTY, 0).orElseThrow().symbol())
                .isEqualTo("mph");
    }
}
