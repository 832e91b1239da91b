package org.rickyard.lists.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.header.Heading;
import org.rickyard.lists.text.AmountText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

/**
 * One thing that a form tells twice, under "Metric" and under "Imperial": its customary figures are no second thing, and
 * would be taken for metres where its labels say no unit.
 */
final class FormSystems {
    private static final Set<String> METRIC = Set.of("metric", "si");
    private static final Set<String> CUSTOMARY = Set.of("imperial", "customary", "english", "us");
    /** A head says little else: "Metric units", "US customary". */
    private static final int WORDS = 2;

    /** Figures are rounded as they are turned into other units by hand: 2.4 m are called 8 ft, 1.6 % more. */
    private static final double ROUGHLY = 0.03;

    private static final List<Unit> UNITS = List.of(
            Units.IN,
            Units.FT,
            Units.YD,
            Units.MILE,
            Units.MPH,
            Units.AC,
            Units.AC_PER_H,
            Units.FT3,
            Units.YD3,
            Units.GAL_UK,
            Units.GAL_US,
            Units.GAL_UK.over(Units.AC),
            Units.GAL_US.over(Units.AC),
            Units.GAL_UK.over(Units.MIN),
            Units.GAL_US.over(Units.MIN),
            Units.GAL_UK.over(Units.H),
            Units.GAL_US.over(Units.H),
            Units.LB,
            Units.CWT,
            Units.LONG_TON,
            Units.SHORT_TON,
            Units.LONG_TON.over(Units.AC),
            Units.SHORT_TON.over(Units.AC),
            Units.LONG_TON.over(Units.H),
            Units.SHORT_TON.over(Units.H),
            Units.LB.over(Units.FT3),
            Units.PSI,
            Units.HP,
            Units.FAHRENHEIT);

    private final FormCells cells;
    private final int[] rows;
    private final int labels;
    private final int metric;
    private final int customary;
    private final int units;

    private FormSystems(FormCells cells, int[] rows, int labels, int metric, int customary, int units) {
        this.cells = cells;
        this.rows = rows;
        this.labels = labels;
        this.metric = metric;
        this.customary = customary;
        this.units = units;
    }

    /**
     * The two columns of one thing; empty if there are others, or if their heads do not say so.
     *
     * @param unitColumns columns of units
     */
    static Optional<FormSystems> of(
            FormCells cells, int[] rows, int labels, List<Integer> things, List<Integer> unitColumns) {
        if (things.size() != 2) {
            return Optional.empty();
        }
        FormColumns columns = new FormColumns(cells);
        int metric = -1;
        int customary = -1;
        // Beside "Sprayer" they stand in the first row itself.
        boolean inFirst = rows.length > 1
                && things.stream().allMatch(thing -> isOfTwo(cells.grid().words(rows[0], thing)));
        for (int thing : things) {
            String head = inFirst ? cells.grid().words(rows[0], thing) : columns.head(rows, thing);
            metric = says(head, METRIC) ? thing : metric;
            customary = says(head, CUSTOMARY) ? thing : customary;
        }
        if (metric < 0 || customary < 0) {
            return Optional.empty();
        }
        int of = metric;
        int end = customary > metric ? customary : Integer.MAX_VALUE;
        int units = unitColumns.stream()
                .filter(column -> column > of && column < end)
                .findFirst()
                .or(() -> unitColumns.stream()
                        .filter(column -> column < things.get(0))
                        .findFirst())
                .orElse(-1);
        int[] told = inFirst ? Arrays.copyOfRange(rows, 1, rows.length) : rows;
        return Optional.of(new FormSystems(cells, told, labels, metric, customary, units));
    }

    /** Whether a row has the heads of both beside a text, which is then a title: "Sprayer | Metric | Imperial". */
    static boolean areHeads(FormCells cells, int row, int labels) {
        List<String> beside = IntStream.range(labels + 1, cells.grid().columns())
                .filter(column -> !cells.isBlank(row, column))
                .mapToObj(column -> cells.grid().words(row, column))
                .toList();
        return beside.stream().anyMatch(text -> says(text, METRIC))
                && beside.stream().anyMatch(text -> says(text, CUSTOMARY));
    }

    private static boolean isOfTwo(String head) {
        return says(head, METRIC) || says(head, CUSTOMARY);
    }

    private static boolean says(String head, Set<String> words) {
        String[] said = Words.normal(head).split(" ");
        return said.length <= WORDS && Arrays.stream(said).anyMatch(words::contains);
    }

    /** The rows of its labels, without that of the heads. */
    int[] rows() {
        return rows;
    }

    /** The column that is read. */
    int metric() {
        return metric;
    }

    /** The column of its units; -1 if it has none. */
    int units() {
        return units;
    }

    /** The first row in which the two do not say the same; empty if there is none. */
    OptionalInt otherwise() {
        return Arrays.stream(rows).filter(row -> !agree(row)).findFirst();
    }

    private boolean agree(int row) {
        Heading heading = cells.heading(row, labels);
        if (heading == null || heading.column() == Fields.NOTES || cells.isBlank(row, customary)) {
            return true;
        }
        String here = cells.grid().words(row, metric);
        String there = cells.grid().words(row, customary);
        if (here.isEmpty() || Words.key(here).equals(Words.key(there))) {
            return !here.isEmpty();
        }
        AmountText one = AmountText.of(here);
        AmountText other = AmountText.of(there);
        if (Double.isNaN(one.value()) || Double.isNaN(other.value())) {
            return false;
        }
        Unit unit = unit(one.unit())
                .or(() -> unit(units < 0 ? "" : cells.grid().words(row, units)))
                .or(() -> unit(heading.rest()))
                .orElse(heading.column().symbol().unit());
        List<Unit> meant = unit(other.unit()).map(List::of).orElse(UNITS);
        return meant.stream()
                .filter(unit::isCompatible)
                .anyMatch(each ->
                        Math.abs(each.convert(other.value(), unit) - one.value()) <= ROUGHLY * Math.abs(one.value()));
    }

    private static Optional<Unit> unit(String text) {
        return UnitText.read(Words.trim(text), CustomaryUnits.UNSET) instanceof UnitText.Known known
                ? Optional.of(known.unit())
                : Optional.empty();
    }

    /** How it is said that the one column is read for both. */
    Finding told() {
        return Finding.note(
                cells.grid().address(rows[0], customary),
                "The figures here say in other units what " + cells.grid().address(rows[0], metric)
                        + " and those below it say, so they are not read as another thing.");
    }

    /** How it is asked which of two figures is right. */
    Finding asked(int row) {
        String metricSays = cells.grid().words(row, metric);
        return Finding.stop(
                cells.grid().address(row, customary),
                Words.quoted(Words.trim(cells.grid().text(row, labels))) + " is told here as "
                        + Words.quoted(cells.grid().words(row, customary)) + ", and in metric units in "
                        + cells.grid().address(row, metric)
                        + (metricSays.isEmpty()
                                ? " not at all. Write it there, too"
                                : " as " + Words.quoted(metricSays)
                                        + ", which is not the same. Mend one of them, or clear this one")
                        + ": till then nothing of this form is read.");
    }
}
