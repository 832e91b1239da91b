package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;

/** One farm typed twice, in metres and tonnes and in feet, acres, pounds and moisture: every silage sheet agrees. */
class SilageUnitsTest {
    /** The sheets of silage. */
    static final List<String> SHEETS = List.of(
            "crop",
            "clamps",
            "clamp-heights",
            "clamp-density",
            "clamp-rolling",
            "packing-estimate",
            "clamp-covering",
            "clamp-additive",
            "clamp-effluent",
            "effluent-tanks",
            "pit-digging",
            "feed-stocks",
            "feed-demand",
            "feed-balance",
            "clamp-feeding",
            "bales");

    private static final double FT = 0.3048;
    private static final double LB = 0.45359237;
    private static final double AC = 0.40468564224;

    @TempDir
    Path folder;

    /** A column as one farm heads it and as the other does, and how a figure of the one becomes one of the other. */
    private record Column(String metric, String other, DoubleUnaryOperator change) {
        static Column same(String header) {
            return new Column(header, header, x -> x);
        }

        static Column feet(String header) {
            return new Column(header + " (m)", header + " (ft)", x -> x / FT);
        }

        static Column moisture(String header, String other) {
            return new Column(header + " (%)", other + " (%)", x -> 100 - x);
        }
    }

    private record List2(String name, List<Column> columns, Object[]... rows) {
        Object[][] typed(boolean metric) {
            List<Object[]> all = new ArrayList<>();
            all.add(columns.stream()
                    .map(column -> metric ? column.metric() : column.other())
                    .toArray());
            for (Object[] row : rows) {
                Object[] changed = row.clone();
                for (int i = 0; i < changed.length; i++) {
                    if (!metric && changed[i] instanceof Number number) {
                        changed[i] = columns.get(i).change().applyAsDouble(number.doubleValue());
                    }
                }
                all.add(changed);
            }
            return all.toArray(Object[][]::new);
        }
    }

    private static List<List2> farm() {
        return List.of(
                new List2(
                        "Fields",
                        List.of(
                                Column.same("Field"),
                                Column.same("Crop"),
                                new Column("Area (ha)", "Area (ac)", x -> x / AC),
                                new Column("Yield (t/ha)", "Yield (lb/ac)", x -> x * 1000 / LB * AC),
                                Column.same("Yield basis"),
                                Column.moisture("DM at cutting", "Moisture at cutting"),
                                Column.moisture("DM at ensiling", "Moisture at ensiling"),
                                Column.same("Clamp")),
                        row("A", "grass", 14.2, 25, "as carted fresh", 18, 28, "Big"),
                        row("B", "grass", 16.1, 22, "standing fresh", 18, 27, "Big"),
                        row("C", "maize", 9, 12, "dry matter", 28, 31, "Bay"),
                        row("D", "grass", 6, 20, "standing fresh", 18, 29, null)),
                new List2(
                        "Machines",
                        List.of(
                                Column.same("Machine"),
                                Column.same("Type"),
                                new Column("Output (m3/h)", "Output (yd3/h)", x -> x / Math.pow(3 * FT, 3)),
                                Column.same("Output basis")),
                        row("Digger", "excavator", 12, "in ground")),
                new List2(
                        "Clamps",
                        List.of(
                                Column.same("Clamp"),
                                Column.same("Kind"),
                                Column.feet("Length"),
                                Column.feet("Floor width"),
                                Column.feet("Wall height"),
                                Column.feet("Settled height"),
                                Column.feet("Filled height"),
                                Column.same("Batter"),
                                Column.same("Ramps"),
                                Column.same("Ramp run"),
                                Column.feet("Crown"),
                                Column.moisture("DM target", "Target moisture"),
                                new Column(
                                        "Density, fresh (kg/m3)",
                                        "Density, fresh (lb/ft3)",
                                        x -> x / LB * Math.pow(FT, 3)),
                                new Column("Roller mass (t)", "Roller mass (lb)", x -> x * 1000 / LB),
                                new Column("Layer (cm)", "Layer (in)", x -> x / 2.54),
                                new Column("Delivery (t/h)", "Delivery (lb/h)", x -> x * 1000 / LB),
                                Column.same("Effluent tank"),
                                new Column("Tank holds (m3)", "Tank holds (L)", x -> x * 1000),
                                Column.feet("Distance to watercourse"),
                                Column.same("Country"),
                                new Column("Feed-out rate (m/week)", "Feed-out rate (ft/week)", x -> x / FT),
                                Column.same("Feeding season"),
                                Column.same("Soil"),
                                Column.same("Additive (L/t)")),
                        row(
                                "Big", "walled", 40, 12, 2.5, 2.4, null, 0.1, 1, 3, 0.6, null, null, 18, 14, 47, "Low",
                                30, 61, "Wales", null, "winter", null, 2.5),
                        row(
                                "Bay", "walled", 30, 8.2, 2.6, 2.8, 3.1, null, null, null, null, null, 760, 12, 16, 60,
                                "Low", null, 9, "Wales", 2, null, null, null),
                        row(
                                "Pit",
                                "earth pit",
                                24,
                                6,
                                3,
                                null,
                                null,
                                1.1,
                                null,
                                null,
                                null,
                                25,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                60,
                                "NI",
                                null,
                                "summer",
                                "clay",
                                null),
                        row(
                                "Slab", "heap", 30, 14, 0, 2.1, null, 3.1, null, null, null, 30, null, null, null, null,
                                null, null, 70, "Ireland", null, null, null, null),
                        row(
                                "Old",
                                "measured",
                                20,
                                8.1,
                                0,
                                1.9,
                                null,
                                null,
                                null,
                                null,
                                null,
                                22,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                30,
                                "Scotland",
                                null,
                                null,
                                null,
                                null)),
                new List2(
                        "Stocks",
                        List.of(
                                Column.same("Store"),
                                Column.same("Kind"),
                                new Column("Amount (t)", "Amount (lb)", x -> x * 1000 / LB),
                                Column.same("Count"),
                                new Column("Weight each (kg)", "Weight each (lb)", x -> x / LB),
                                Column.moisture("DM", "Moisture"),
                                new Column("Already fed (t)", "Already fed (lb)", x -> x * 1000 / LB)),
                        row("Big", "clamp", 60, null, null, 27, 20),
                        row("Bales", "bales", null, 120, 650, 38, null)),
                new List2(
                        "Herds",
                        List.of(
                                Column.same("Group"),
                                Column.same("Head"),
                                new Column("Intake (kg DM/d)", "Intake (lb DM/d)", x -> x / LB),
                                Column.same("Days"),
                                Column.same("Clamp")),
                        row("Cows", 90, 11, 170, "Big"),
                        row("Heifers", 40, 6, 160, "Bay")),
                new List2(
                        "Assumptions",
                        List.of(Column.same("Item"), Column.same("Value"), Column.same("Unit")),
                        row("use the packing model (1 yes, 0 no)", 1, null)));
    }

    private SilageBook typed(boolean metric) throws IOException {
        SilageBook book = new SilageBook(Files.createDirectory(folder.resolve(metric ? "metric" : "other")));
        farm().forEach(list -> book.list(list.name(), list.typed(metric)));
        return book.run();
    }

    /** A sentence without what it says first for who measures in feet: "32.8 ft = 10 m" is "10 m". */
    private static String inMetricAlone(String sentence) {
        return sentence.replaceAll("[0-9.,]+ [a-z/]+ = (?=[0-9])", "");
    }

    @Test
    void everySilageSheetGivesTheSameInFeetAcresPoundsAndMoisture() throws IOException {
        try (SilageBook metric = typed(true);
                SilageBook other = typed(false)) {
            int compared = 0;
            for (String sheet : SHEETS) {
                ResultTable one = metric.table(sheet);
                ResultTable two = other.table(sheet);
                assertThat(one.rows()).as(sheet).isPositive().isEqualTo(two.rows());
                for (TableColumn column : one.spec().columns()) {
                    Symbol symbol = column.symbol();
                    for (int row = 0; row < one.rows(); row++) {
                        Values a = one.of(symbol);
                        Values b = two.of(symbol);
                        String where = sheet + ", " + symbol + ", row " + row;
                        assertThat(a.state(row)).as(where).isEqualTo(b.state(row));
                        if (symbol.type() == Symbol.Type.TEXT) {
                            assertThat(inMetricAlone(b.word(row))).as(where).isEqualTo(a.word(row));
                        } else if (a.has(row)) {
                            // Residuals of the solve are nought but for noise, so they are held against 1.
                            double size = Math.max(1, Math.abs(a.number(row)));
                            assertThat(a.number(row)).as(where).isCloseTo(b.number(row), within(1e-9 * size));
                            compared++;
                        }
                    }
                }
            }
            assertThat(compared).isGreaterThan(700);
        }
    }
}
