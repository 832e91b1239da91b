package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.join.RowNumbers;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;

/** Which clamps drain to which tank: a volume is a clamp's own tank, a name is one that several may share. */
final class ClampTanks {
    private final ListRows clamps;
    private final int[] keys;
    private final List<Integer> firsts = new ArrayList<>();

    ClampTanks(ListRows clamps, List<Finding> findings) {
        this.clamps = clamps;
        this.keys = new int[clamps.size()];
        Map<String, Integer> named = new HashMap<>();
        for (int clamp = 0; clamp < keys.length; clamp++) {
            ListRows.State state = clamps.state(Clamps.EFFLUENT_TANK, clamp);
            if (state == ListRows.State.NO_COLUMN || state == ListRows.State.BLANK) {
                continue;
            }
            if (isVolume(clamp)) {
                firsts.add(clamp);
                keys[clamp] = firsts.size();
                continue;
            }
            String name = NameKey.key(clamps.text(Clamps.HOLDING, clamp))
                    + '\n'
                    + NameKey.key(clamps.text(Clamps.EFFLUENT_TANK, clamp));
            Integer known = named.get(name);
            if (known == null) {
                firsts.add(clamp);
                known = firsts.size();
                named.put(name, known);
            } else {
                join(known - 1, clamp, findings);
            }
            keys[clamp] = known;
        }
    }

    /** The row that stands for a tank is the first that says how much it holds. */
    private void join(int tank, int clamp, List<Finding> findings) {
        int first = firsts.get(tank);
        String country = clamps.text(Clamps.COUNTRY, first);
        if (!country.equals(clamps.text(Clamps.COUNTRY, clamp))) {
            findings.add(Finding.caution(
                    clamps.address(Clamps.COUNTRY, clamp).orElse(null),
                    "two clamps share the tank '" + clamps.text(Clamps.EFFLUENT_TANK, clamp)
                            + "' but stand under different countries; the first one's law is reckoned for both."));
        }
        if (clamps.gives(Clamps.NAMED_TANK_VOLUME, first)
                && clamps.gives(Clamps.NAMED_TANK_VOLUME, clamp)
                && !clamps.text(Clamps.NAMED_TANK_VOLUME, first).equals(clamps.text(Clamps.NAMED_TANK_VOLUME, clamp))) {
            findings.add(Finding.caution(
                    clamps.address(Clamps.NAMED_TANK_VOLUME, clamp).orElse(null),
                    "the tank '" + clamps.text(Clamps.EFFLUENT_TANK, clamp) + "' holds "
                            + clamps.text(Clamps.NAMED_TANK_VOLUME, clamp) + " here and "
                            + clamps.text(Clamps.NAMED_TANK_VOLUME, first)
                            + clamps.address(Clamps.NAMED_TANK_VOLUME, first)
                                    .map(cell -> " in " + cell)
                                    .orElse("")
                            + ", and the latter is reckoned with. Mend one of them, or give each tank its own name."));
        }
        boolean firstSays = clamps.state(Clamps.NAMED_TANK_VOLUME, first) == ListRows.State.GIVEN;
        if (!firstSays && clamps.state(Clamps.NAMED_TANK_VOLUME, clamp) == ListRows.State.GIVEN) {
            firsts.set(tank, clamp);
        }
    }

    private boolean isVolume(int clamp) {
        return clamps.unit(Clamps.EFFLUENT_TANK, clamp).isPresent();
    }

    /** The tank of each clamp, counted from 1; 0 where none is named. */
    int[] keys() {
        return keys.clone();
    }

    /** One row for each tank. */
    RowSources sources() {
        int[] rows = firsts.stream().mapToInt(Integer::intValue).toArray();
        boolean[] volume = new boolean[rows.length];
        for (int i = 0; i < rows.length; i++) {
            volume[i] = isVolume(rows[i]);
        }
        return new RowSources(rows.length)
                .with(Role.CLAMP, clamps, rows)
                .with(Keys.TANK_KEY, RowNumbers.keys(rows.length))
                .only(Quantities.EFFLUENT_TANK_VOLUME, volume);
    }
}
