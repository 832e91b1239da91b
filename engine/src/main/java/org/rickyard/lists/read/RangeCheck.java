package org.rickyard.lists.read;

import java.util.List;
import java.util.Set;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.Choices;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Machines;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Unit;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.workrate.Suitability;

/** Holds the numbers of one column against the possible and usual range of their quantity, in the quantity's unit. */
final class RangeCheck {
    private static final String AIR_BLAST = "air-blast sprayer";
    /** It sprays nothing, and is filled as a sprayer is. */
    private static final String WIPER = "wiper";

    private static final Set<String> WITH_A_HOPPER = Set.of("drill", "fertiliser spreader", "loader", "buckrake");

    private final ColumnSpec column;
    private final CellFindings findings;
    private Unit unit;
    private Symbol symbol;
    private double factor;
    private double shift;

    RangeCheck(ColumnSpec column, CellFindings findings) {
        this.column = column;
        this.findings = findings;
    }

    /** Whether a number can be. One that cannot is a finding at its cell; so is one that is only unusual. */
    boolean isPossible(double value, Unit in, FoundTable table, int sheetRow, int sheetColumn) {
        if (in != unit) {
            enter(in);
        }
        double own = value * factor + shift;
        if (!symbol.possible().contains(own)) {
            findings.bad(
                    table.address(sheetRow, sheetColumn), CellFindings.impossible(column, symbol, value, unit, own));
            return false;
        }
        if (!symbol.usual().contains(own)) {
            Range usual = usual(table, sheetRow);
            if (!usual.contains(own)) {
                findings.unusual(table.address(sheetRow, sheetColumn), symbol, usual, value, unit);
            }
        }
        return true;
    }

    /**
     * What is usual for the crop or the machine of the row: ranges are those of silage, where nothing says that it is
     * brought in dry, and of sprayers, where nothing says what else it is.
     */
    private Range usual(FoundTable table, int sheetRow) {
        boolean pressure = symbol.equals(Quantities.PRESSURE)
                || symbol.equals(Quantities.LOWEST_PRESSURE)
                || symbol.equals(Quantities.HIGHEST_PRESSURE);
        if (pressure && isAirBlast(table.word(sheetRow, List.of(Machines.TYPE)))) {
            return Quantities.PRESSURE_OF_AIR_BLAST;
        }
        boolean tank = symbol.equals(Quantities.TANK_VOLUME) || symbol.equals(Quantities.USABLE_TANK);
        if (tank && carts(table.word(sheetRow, List.of(Machines.TYPE)))) {
            return Quantities.TANK_OF_CARTING;
        }
        if (symbol.equals(Quantities.PUMP_FLOW) && carts(table.word(sheetRow, List.of(Machines.TYPE)))) {
            return Quantities.PUMP_OF_CARTING;
        }
        if (symbol.equals(Quantities.PAYLOAD) && isNoTrailer(table.word(sheetRow, List.of(Machines.TYPE)))) {
            return Quantities.PAYLOAD_OF_HOPPERS;
        }
        Range dry = symbol.equals(Quantities.YIELD)
                ? Quantities.YIELD_OF_DRY_CROPS
                : symbol.equals(Quantities.DM_AT_ENSILING) ? Quantities.DM_OF_DRY_CROPS : null;
        return dry != null && isBroughtInDry(table, sheetRow) ? dry : symbol.usual();
    }

    private static boolean isBroughtInDry(FoundTable table, int sheetRow) {
        String crop = table.word(sheetRow, List.of(Fields.CROP, Cuts.CROP));
        return crop.isEmpty()
                ? table.dryFields().contains(Words.key(table.word(sheetRow, List.of(Cuts.FIELD))))
                : Suitability.isBroughtInDry(crop);
    }

    private static boolean isAirBlast(String typed) {
        return AIR_BLAST.equals(ChoiceWords.MACHINE_TYPES.get(Words.normal(typed)));
    }

    /** Whether its payload is a hopper's or a bucket's, and no trailer's. */
    private static boolean isNoTrailer(String typed) {
        String type = ChoiceWords.MACHINE_TYPES.get(Words.normal(typed));
        return type != null && WITH_A_HOPPER.contains(type);
    }

    /** Whether it is known for a machine that sprays nothing. */
    private static boolean carts(String typed) {
        String type = ChoiceWords.MACHINE_TYPES.get(Words.normal(typed));
        return type != null && !Choices.sprays(type) && !type.equals(WIPER);
    }

    private void enter(Unit in) {
        unit = in;
        symbol = column.symbolFor(in);
        boolean comparable = symbol.unit().isCompatible(in);
        shift = comparable ? in.convert(0, symbol.unit()) : 0;
        factor = comparable ? in.factor().over(symbol.unit().factor()).toDouble() : 1;
    }
}
