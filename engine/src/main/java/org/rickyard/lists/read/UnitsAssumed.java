package org.rickyard.lists.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** The units that were taken for granted in one list, since its headers say none; told together. */
final class UnitsAssumed {
    private static final String NO_UNIT = "No unit is written in the headers of ";

    /** Who writes one of these beside a bare "Width" or "Tank" may well mean feet or gallons there too. */
    private static final List<Unit> CUSTOMARY =
            List.of(Units.FT, Units.IN, Units.MPH, Units.GAL_UK, Units.GAL_US, Units.LB, Units.PSI);

    private final ListSpec spec;
    private final CustomaryUnits customary;
    private final Map<ColumnSpec, Unit> assumed = new LinkedHashMap<>();

    UnitsAssumed(ListSpec spec, CustomaryUnits customary) {
        this.spec = spec;
        this.customary = customary;
    }

    /** Takes a unit for granted, where there is anything to be wrong about. */
    void add(ColumnSpec column, Unit unit) {
        boolean words = column.type() == ColumnSpec.Type.TEXT_OR_NUMBER;
        if (!words && !unit.symbol().isEmpty() && !unit.isSameScale(Units.MONEY_UNIT)) {
            assumed.put(column, unit);
        }
    }

    /** Columns that were asked about after all are told by the question. */
    private void leaveAsked(Map<ColumnSpec, List<Binding>> bindings) {
        assumed.keySet().removeIf(column -> bindings.getOrDefault(column, List.of()).stream()
                .allMatch(Binding::asked));
    }

    private String words(Map<ColumnSpec, Unit> units) {
        return units.entrySet().stream()
                .map(entry -> entry.getKey().name() + " (" + entry.getValue() + ")")
                .collect(Collectors.joining(", "));
    }

    /** What is measured in feet, gallons or pounds as well. */
    private Map<ColumnSpec, Unit> measured() {
        Map<ColumnSpec, Unit> measured = new LinkedHashMap<>(assumed);
        measured.values().removeIf(unit -> CUSTOMARY.stream().noneMatch(unit::isCompatible));
        return measured;
    }

    /** What was taken for granted: a note, or a caution where the list measures otherwise beside it. */
    void tell(FoundTable table, Map<ColumnSpec, List<Binding>> bindings, List<Finding> findings) {
        leaveAsked(bindings);
        List<String> others = customaryHeaders(bindings);
        Map<ColumnSpec, Unit> measures = others.isEmpty() && customary != CustomaryUnits.US ? Map.of() : measured();
        assumed.keySet().removeAll(measures.keySet());
        if (!measures.isEmpty()) {
            findings.add(Finding.caution(
                    table.address(table.headerRow(), table.firstColumn()),
                    NO_UNIT + spec.name() + " for " + words(measures)
                            + "; the units in brackets are taken, though "
                            + (others.isEmpty()
                                    ? "the customary units of this workbook are US"
                                    : Words.quoted(others.get(0)) + " beside it is in other units")
                            + ". If feet, inches, miles an hour, gallons or pounds are meant, these figures are wrong:"
                            + " write the units into the headers."));
        }
        if (!assumed.isEmpty()) {
            findings.add(Finding.note(
                    table.address(table.headerRow(), table.firstColumn()),
                    NO_UNIT + spec.name() + " for " + words(assumed)
                            + "; the units in brackets are taken. Write the units to be sure."));
        }
    }

    /** The headers that say a customary unit of length, speed, volume, mass or pressure. */
    private List<String> customaryHeaders(Map<ColumnSpec, List<Binding>> bindings) {
        return spec.columns().stream()
                .flatMap(column -> bindings.getOrDefault(column, List.of()).stream())
                .filter(binding ->
                        binding.unit().unit() != null && !binding.unit().assumed())
                .filter(binding -> CUSTOMARY.stream()
                        .anyMatch(unit -> unit.isSameScale(binding.unit().unit())))
                .map(Binding::header)
                .toList();
    }
}
