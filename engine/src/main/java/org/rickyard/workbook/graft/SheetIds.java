package org.rickyard.workbook.graft;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.workbook.open.SheetRef;

/**
 * The numbers that sheets added to a workbook are given, one after another: what is written into the workbook part and
 * what is recorded of it must be the same.
 */
public final class SheetIds {
    /** The highest that every office program reads. */
    private static final int HIGHEST = 65_534;

    private final Set<Integer> taken = new HashSet<>();

    /** Numbers that none of a workbook's sheets has. */
    public SheetIds(List<SheetRef> present) {
        present.forEach(sheet -> taken.add(sheet.sheetId()));
    }

    /**
     * The number of the next sheet: above all others, or where the highest is taken the lowest free one. Above 65,534, which
     * the format allows, if none is free.
     */
    public int next() {
        int highest = taken.stream().mapToInt(Integer::intValue).max().orElse(0);
        int id = highest < HIGHEST ? highest + 1 : 1;
        while (taken.contains(id)) {
            id++;
        }
        taken.add(id);
        return id;
    }

    /** Whether the format has a number for a sheet. */
    static boolean allows(int id) {
        return id <= HIGHEST;
    }
}
