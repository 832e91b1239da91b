package org.rickyard.plan.join;

import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.KindOfMachine;

/** What each machine of a list is among those of its type, looked up once for each. */
public final class KindsOfMachines {
    private KindsOfMachines() {}

    /**
     * The kinds of machines, row by row of a table.
     *
     * @param rows a row of the machine list for each; -1 for none
     * @return null where there is no machine, or none of a known type
     */
    public static String[] of(ListRows machines, int[] rows) {
        String[] known = new String[machines.size()];
        String[] kinds = new String[rows.length];
        for (int i = 0; i < rows.length; i++) {
            int machine = rows[i];
            if (machine >= 0 && machines.gives(Machines.TYPE, machine)) {
                if (known[machine] == null) {
                    known[machine] = kind(machines, machine);
                }
                kinds[i] = known[machine];
            }
        }
        return kinds;
    }

    private static String kind(ListRows machines, int machine) {
        return KindOfMachine.of(
                machines.text(Machines.TYPE, machine),
                machines.typed(Machines.TYPE, machine),
                machines.text(Machines.MACHINE, machine),
                machines.state(Machines.POWER, machine) == ListRows.State.GIVEN);
    }
}
