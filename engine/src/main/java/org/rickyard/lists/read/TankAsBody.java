package org.rickyard.lists.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Choices;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.Words;

/** Sprayers that have a body volume and no tank: a hopper is a spreader's, and what a sprayer holds is its tank. */
final class TankAsBody {
    private TankAsBody() {}

    /** A caution for each. */
    static List<Finding> in(ListRows machines) {
        List<Finding> findings = new ArrayList<>();
        if (!machines.has(Machines.BODY_VOLUME)) {
            return findings;
        }
        for (int row = 0; row < machines.size(); row++) {
            Optional<CellAddress> cell = machines.address(Machines.BODY_VOLUME, row);
            if (cell.isPresent()
                    && machines.state(Machines.BODY_VOLUME, row) == ListRows.State.GIVEN
                    && Choices.sprays(machines.text(Machines.TYPE, row))
                    && !isTyped(machines.state(Machines.TANK, row))
                    && !isTyped(machines.state(Machines.USABLE_TANK, row))) {
                findings.add(Finding.caution(
                        cell.get(),
                        "this is read as Body volume, which a sprayer has not, and "
                                + Words.quoted(machines.text(Machines.MACHINE, row))
                                + " has no Tank. If it is what the sprayer holds, type it in a column Tank (L)."));
            }
        }
        return findings;
    }

    private static boolean isTyped(ListRows.State state) {
        return state != ListRows.State.NO_COLUMN && state != ListRows.State.BLANK;
    }
}
