package org.rickyard.lists.read;

import java.util.OptionalDouble;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.text.NozzleText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** Reads cells that hold a nozzle's size code. */
final class NozzleCells implements CellReader {
    @Override
    public State read(CellRead cell) {
        String text = cell.text();
        if (cell.kind() == Grid.Kind.NUMBER) {
            double value = cell.number();
            if (NozzleText.hasLostZero(value)) {
                cell.bad("Is " + text + " the nozzle size " + text + " or 0" + text + "? Write it as text, '0" + text
                        + " or '" + text + ".");
                return State.ASKED;
            }
            if (value < 100) {
                return cell.isPossible(value, Units.ONE) ? State.GIVEN : State.IMPOSSIBLE;
            }
        }
        if (NozzleText.isColourOnly(text)) {
            cell.bad("A colour alone does not settle the nozzle size, since makers differ:"
                    + " write the size on the nozzle, such as 04.");
            return State.ASKED;
        }
        OptionalDouble value = NozzleText.read(text);
        if (value.isEmpty()) {
            // A number is a number to the grid, too, and no size: it is told from a text that nobody can read.
            cell.bad(Words.quoted(text) + " is not a nozzle size known here: write 04, 11004 or F110/1.6/3.0.");
            return cell.kind() == Grid.Kind.NUMBER ? State.IMPOSSIBLE : State.NOT_READABLE;
        }
        return cell.readFromText(value.getAsDouble(), Units.ONE);
    }
}
