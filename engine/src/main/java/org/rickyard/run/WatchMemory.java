package org.rickyard.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.notation.CellArea;

/** What former runs recorded of the client's references; a cell that refers may have been moved by the client since. */
final class WatchMemory {
    private final Map<String, WatchedReference> known = new HashMap<>();
    /** Those whose cell, name or chart refers to nothing of ours any more, or is gone. */
    private final List<WatchedReference> orphans = new ArrayList<>();

    WatchMemory(List<WatchedReference> recorded, List<ClientReferences.Reference> present) {
        Set<String> referring = new HashSet<>();
        present.forEach(reference -> referring.add(SheetFace.words(reference.by())));
        for (WatchedReference watched : recorded) {
            known.put(key(watched), watched);
            if (!referring.contains(watched.by())) {
                orphans.add(watched);
            }
        }
    }

    private static String key(WatchedReference watched) {
        return watched.by() + "\n" + watched.sheet() + "\n" + watched.firstRow() + " " + watched.firstColumn() + " "
                + watched.lastRow() + " " + watched.lastColumn();
    }

    /** What stood under a reference when it was first seen. */
    Optional<WatchedReference> recall(String id, ClientReferences.Reference reference) {
        WatchedReference blank = of(reference, id, null, null);
        WatchedReference same = known.get(key(blank));
        if (same != null) {
            return Optional.of(same);
        }
        for (int i = 0; i < orphans.size(); i++) {
            if (orphans.get(i).sameArea(blank)) {
                WatchedReference orphan = orphans.remove(i);
                return Optional.of(of(reference, id, orphan.rows(), orphan.columns()));
            }
        }
        return Optional.empty();
    }

    /** The record of a reference under which this stands. */
    static WatchedReference of(
            ClientReferences.Reference reference,
            String id,
            WatchedReference.Stood rows,
            WatchedReference.Stood columns) {
        CellArea area = reference.area();
        return new WatchedReference(
                SheetFace.words(reference.by()),
                id,
                area.firstRow(),
                area.firstColumn(),
                area.lastRow(),
                area.lastColumn(),
                rows,
                columns);
    }
}
