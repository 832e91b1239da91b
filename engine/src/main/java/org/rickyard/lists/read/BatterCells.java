package org.rickyard.lists.read;

import java.util.Locale;
import java.util.OptionalDouble;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.text.BatterText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** Reads cells that hold a slope: metres out for each metre up, or words for it such as "1 in 3" and "45°". */
final class BatterCells implements CellReader {
    private final ColumnSpec spec;
    private final NumberCells numbers;

    BatterCells(ColumnSpec spec, NumberCells numbers) {
        this.spec = spec;
        this.numbers = numbers;
    }

    @Override
    public State read(CellRead cell) {
        String rest = Words.normal(cell.binding().rest());
        boolean degrees =
                rest.startsWith("deg") || cell.binding().rest().strip().equals("°");
        OptionalDouble value;
        if (cell.kind() == Grid.Kind.NUMBER) {
            if (!degrees) {
                return numbers.number(cell);
            }
            value = BatterText.ofDegrees(cell.number());
        } else {
            value = BatterText.read(cell.trimmed());
        }
        String text = cell.text();
        if (value.isEmpty()) {
            boolean ratio = BatterText.isBareRatio(text);
            String out = spec == Clamps.RAMP_RUN ? "metres along" : "metres out";
            cell.bad(
                    ratio
                            ? "Which way does " + Words.quoted(text)
                                    + " run? Write " + out + " for each metre up, or 1 in 3 for 3 m"
                                    + out.substring("metres".length()) + " and 1 m up."
                            : text.strip().matches("[0-9]*[.,]?[0-9]+")
                                    ? Words.quoted(text) + " is stored as text: type it again as a number."
                                    : Words.quoted(text) + " is not a "
                                            + spec.name().toLowerCase(Locale.ROOT) + ": write " + out
                                            + " for each metre up, 1 in 3, or 45°.");
            return ratio ? State.ASKED : State.NOT_READABLE;
        }
        return cell.readFromText(value.getAsDouble(), Units.ONE);
    }
}
