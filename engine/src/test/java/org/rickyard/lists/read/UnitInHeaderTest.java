package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundIn;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Herds;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/** A unit that stands anywhere in a header is the unit of its column, or is asked; it is never passed over. */
class UnitInHeaderTest {
    private static final int TRIED = 1_000;

    private static final List<Unit> WRITTEN = List.of(
            Units.M,
            Units.CM,
            Units.KM,
            Units.FT,
            Units.IN,
            Units.YD,
            Units.MILE,
            Units.HA,
            Units.AC,
            Units.M3,
            Units.L,
            Units.GAL_UK,
            Units.GAL_US,
            Units.FT3,
            Units.KG,
            Units.T,
            Units.LB,
            Units.SHORT_TON,
            Units.H,
            Units.D,
            Units.WEEK,
            Units.KM_PER_H,
            Units.MPH,
            Units.M_PER_S,
            Units.HA_PER_H,
            Units.AC_PER_H,
            Units.T_PER_H,
            Units.L_PER_HA,
            Units.GAL_US.over(Units.AC),
            Units.L_PER_MIN,
            Units.GAL_US.over(Units.MIN),
            Units.L_PER_H,
            Units.T_PER_HA,
            Units.BAR,
            Units.KPA,
            Units.PSI,
            Units.KW,
            Units.HP,
            Units.PERCENT);

    private static final List<String> FORMS = List.of(
            "%s (%s)",
            "%s [%s]",
            "%s %s",
            "%s, %s",
            "%s - %s",
            "%s: %s",
            "%s/%s",
            "%s in %s",
            "%s (in %s)",
            "%s (%s, measured)",
            "%s (mean, %s)",
            "%s (%s) est.",
            "%s [%s] 2026",
            "Avg %s (%s)",
            "%2$s %1$s",
            "%2$s (%1$s)",
            "(%2$s) %1$s");

    private record Written(ListSpec list, ColumnSpec column, String name, Unit unit) {}

    @Test
    void itIsReadOrAskedWhereverItStands() {
        List<Written> all = all();
        assertThat(all).hasSizeGreaterThan(TRIED);
        Random random = new Random(20261126);
        Collections.shuffle(all, random);
        int read = 0;
        for (Written written : all.subList(0, TRIED)) {
            String form = FORMS.get(random.nextInt(FORMS.size()));
            String header = String.format(form, written.name(), written.unit().symbol());
            ListRows rows = find(sheet(written, header)).rows(written.list());
            if (rows.size() == 0) {
                continue;
            }
            ListRows.State state = rows.state(written.column(), 0);
            if (state == ListRows.State.NO_COLUMN || state == ListRows.State.ASKED) {
                continue;
            }
            Unit unit = rows.unit(written.column(), 0).orElseThrow();
            assertThat(unit.isSameScale(written.unit()) || unit.isSameScale(UnitText.ofDryMatter(written.unit())))
                    .as(
                            "%s of %s, %s: read as %s",
                            header, written.list(), written.column().name(), unit)
                    .isTrue();
            read++;
        }
        // Most are read: what is asked or told as unread stands in forms that few would write.
        assertThat(read).isGreaterThan(TRIED / 3);
    }

    /** Every name of every column with every unit that measures it; names that say a unit themselves are left out. */
    private static List<Written> all() {
        List<Written> all = new ArrayList<>();
        for (ListSpec list : Lists.ALL) {
            for (ColumnSpec column : list.columns()) {
                String own = column.symbol().unit().symbol();
                if (column.type() != ColumnSpec.Type.NUMBER || own.isEmpty() || RowUnits.isByRow(list, column)) {
                    continue;
                }
                List<String> names = new ArrayList<>(column.synonyms());
                names.add(column.name());
                names.removeIf(name ->
                        !ColumnUnit.of(column, name, "", CustomaryUnits.UNSET).assumed()
                                || name.startsWith("min")
                                || name.startsWith("in row")
                                || name.equals("interval")
                                || Words.holds(Words.normal(name), "day"));
                for (Unit unit : WRITTEN) {
                    if (column.measuredBy(unit) || column.measuredBy(UnitText.ofDryMatter(unit))) {
                        names.forEach(name -> all.add(new Written(list, column, name, unit)));
                    }
                }
            }
        }
        return all;
    }

    /** A list with what it needs and the column that is meant. */
    private static SheetOf sheet(Written written, String header) {
        List<Object> headers = new ArrayList<>();
        List<Object> cells = new ArrayList<>();
        for (ColumnSpec column : written.list().columns()) {
            if (column != written.column()
                    && (column.required() || written.list().identity().contains(column))) {
                headers.add(column.name());
                cells.add(
                        column.isNumeric()
                                ? (Object) 1
                                : column.choices().isEmpty()
                                        ? "A"
                                        : column.choices().keySet().iterator().next());
            }
        }
        headers.add(header);
        cells.add(1);
        return new SheetOf(written.list().name()).row(headers.toArray()).row(cells.toArray());
    }

    @ParameterizedTest
    @ValueSource(strings = {"% Overlap", "Overlap %", "Overlap (%)", "Overlap, percent"})
    void aShareIsOne(String header) {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Width (m)", header)
                .row("Sprayer", "sprayer", 24, 5));
        assertThat(found.rows(Machines.LIST).unit(Machines.OVERLAP, 0)).hasValue(Units.PERCENT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"% width", "Width %"})
    void aShareThatIsNoneOfTheColumnIsAsked(String header) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("Sprayer", "sprayer", 24));
        assertThat(found.rows(Machines.LIST).state(Machines.WORKING_WIDTH, 0)).isEqualTo(ListRows.State.ASKED);
    }

    /** Words that say how a figure is known are no unit. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Area (GPS) | ha",
                "Area (RPA) | ha",
                "Ha (mapped) | ha",
                "Area (ha, measured) | ha",
                "Area (approx.) | ha",
                "Acres (approx) | ac",
                "Ha mapped | ha"
            })
    void howAFigureIsKnownIsNoUnit(String header, String unit) {
        ListRows rows =
                find(new SheetOf("Fields").row("Field", header).row("Lea", 5)).rows(Fields.LIST);
        assertThat(rows.unit(Fields.AREA, 0).orElseThrow().symbol()).isEqualTo(unit);
    }

    @Test
    void inchesThatAreEstimatedAreAsked() {
        FoundLists found = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (in) est.", "Wall height (m)")
                .row("Main", "walled", 30, 400, 3));
        assertThat(found.rows(Clamps.LIST).state(Clamps.FLOOR_WIDTH, 0)).isEqualTo(ListRows.State.ASKED);
    }

    /** F for fresh reads like a temperature, of which there is none a day. */
    @ParameterizedTest
    @ValueSource(strings = {"Intake (F)", "Daily intake (°C)", "Daily intake (% moisture)"})
    void whatCannotBeCountedByTheDayIsAsked(String header) {
        FoundLists found =
                find(new SheetOf("Herds").row("Group", "Head", header, "Days").row("Cows", 60, 10, 180));
        assertThat(found.rows(Herds.LIST).state(Herds.INTAKE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    /** A figure that is turned round would be none of the column's under another header. */
    @Test
    void aUnitThatRunsTheOtherWayRoundIsToldAsThat() {
        FoundLists load = find(new SheetOf("Machines")
                .row("Machine", "Type", "Load density (m3/t)")
                .row("Trailer", "trailer", 2.5));
        FoundLists dry = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Density, dry matter (m3/t)")
                .row("Main", "walled", 30, 10, 3, 4.5));
        assertThat(FoundIn.said(load))
                .anyMatch(
                        words -> words.contains("\"m3/t\" runs the other way round than load density: turn the figures"
                                + " round too, and write for example Load density (kg/m3)."));
        assertThat(FoundIn.said(dry))
                .anyMatch(words -> words.contains("\"m3/t\" runs the other way round than dry matter density"));
    }

    /** 1 short ton = 907.18474 kg, 1 long ton = 1016.0469088 kg. */
    @ParameterizedTest
    @CsvSource({
        "Tons left, US, 907.18474",
        "Tons as fed, US, 907.18474",
        "Tons (as fed), US, 907.18474",
        "Wet tons, UK, 1016.0469088",
        "Tonnes left, US, 1000",
        "Amount (fresh), US, 1000"
    })
    void tonsInTheNameOfAStockAreNoTonnes(String header, String customary, double kilograms) {
        FoundLists found = find(
                new SheetOf("Feed inventory")
                        .row("Storage", "Kind", header, "DM %")
                        .row("Bunker 1", "bunker", 1, 35),
                new SheetOf("Assumptions").row("Item", "Value").row("Customary units", customary));
        ListRows stocks = found.rows(Stocks.LIST);
        assertThat(stocks.unit(Stocks.AMOUNT, 0).orElseThrow().convert(1, Units.KG))
                .as(header)
                .isCloseTo(kilograms, within(1e-6));
    }

    @Test
    void tonsOfWhichNothingSaysWhoseTheyAreAreAsked() {
        FoundLists found = find(new SheetOf("Feed inventory")
                .row("Storage", "Kind", "Tons left", "DM %")
                .row("Bunker 1", "bunker", 1, 35));
        assertThat(found.rows(Stocks.LIST).state(Stocks.AMOUNT, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @ParameterizedTest
    @CsvSource({"Yield (dt/ha), 8.5", "Yield dt/ha, 8.5"})
    void continentalUnitsAreKnown(String yield, double tonnes) {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Area (ha)", yield)
                        .row("A", 1, 85))
                .rows(Fields.LIST);
        assertThat(fields.unit(Fields.YIELD, 0).orElseThrow().convert(fields.number(Fields.YIELD, 0), Units.T_PER_HA))
                .isCloseTo(tonnes, within(1e-9));
        ListRows machines = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Tank (hl)")
                        .row("S", "sprayer", 30))
                .rows(Machines.LIST);
        assertThat(machines.unit(Machines.TANK, 0).orElseThrow().convert(machines.number(Machines.TANK, 0), Units.L))
                .isCloseTo(3000, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"kg DM silage/hd/d", "kg DM/day grass", "kg DM maize silage/head/day", "kg DM/hd/day (silage)"})
    void anIntakeMaySayOfWhatItIsAmongItsUnit(String header) {
        ListRows herds = find(new SheetOf("Animals")
                        .row("Animal group", "Number", header, "Days")
                        .row("Cows", 110, 8, 200))
                .rows(Herds.LIST);
        assertThat(herds.size()).isEqualTo(1);
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(8);
    }

    /** It is a share of the purchase price, as it always is; of another price it would be another sum. */
    @ParameterizedTest
    @CsvSource({
        "Insurance & housing (% of price), true",
        "TIH (% of purchase price), true",
        "Insurance and housing (% of list price), false"
    })
    void aShareOfThePurchasePriceIsPerCent(String header, boolean read) {
        FoundLists found = FoundIn.find(new SheetOf("Costs")
                .row("Machine", "Type", "Purchase price", header)
                .row("Round baler", "baler", 28000, 1.5));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.state(Machines.INSURANCE, 0)).isEqualTo(read ? State.GIVEN : State.ASKED);
        assertThat(FoundIn.messages(found, Severity.STOP)).hasSize(read ? 0 : 1);
    }
}
