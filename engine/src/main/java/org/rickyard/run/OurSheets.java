package org.rickyard.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.SheetRef;

/**
 * The sheets of ours that a workbook holds already, known by a defined name that each carries. A sheet that the client
 * edited or copied is the client's: it is left as it is, and never read as a list.
 */
final class OurSheets {
    /** The name each of our sheets carries; it stands for the sheet's id. */
    static final String MARKER = "Rickyard_sheet";
    /** The name carried by a sheet that was ours until the client edited it. */
    static final String KEPT_MARKER = "Rickyard_kept";

    private final Map<String, SheetRef> byId = new LinkedHashMap<>();
    private final List<SheetRef> kept = new ArrayList<>();

    private OurSheets() {}

    /** Finds them; of two that carry the same id the one at the recorded place is ours, the other a copy. */
    static OurSheets find(BookPackage book, RunState state) {
        OurSheets ours = new OurSheets();
        Map<Integer, SheetRef> positions = new HashMap<>();
        book.sheets().forEach(sheet -> positions.put(sheet.position(), sheet));
        for (DefinedName name : book.definedNames()) {
            SheetRef sheet = name.localSheetId() == null ? null : positions.get(name.localSheetId());
            if (sheet == null) {
                continue;
            }
            if (name.name().equals(KEPT_MARKER)) {
                ours.kept.add(sheet);
            } else if (name.name().equals(MARKER)) {
                ours.take(unquoted(name.formula()), sheet, state);
            }
        }
        return ours;
    }

    private void take(String id, SheetRef sheet, RunState state) {
        SheetRef before = byId.get(id);
        boolean recorded =
                state.sheetId(id).filter(known -> known == sheet.sheetId()).isPresent();
        if (before == null) {
            byId.put(id, sheet);
        } else if (recorded) {
            kept.add(before);
            byId.put(id, sheet);
        } else {
            kept.add(sheet);
        }
    }

    private static String unquoted(String formula) {
        return formula.length() > 1 && formula.startsWith("\"") ? formula.substring(1, formula.length() - 1) : formula;
    }

    /** Gives a sheet up to the client. */
    void release(String id) {
        kept.add(byId.remove(id));
    }

    /** The sheet of an id. */
    Optional<SheetRef> sheet(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Ours by id. */
    Map<String, SheetRef> byId() {
        return byId;
    }

    /** Sheets that were ours and are the client's now. */
    List<SheetRef> kept() {
        return kept;
    }

    /** Whether a sheet is one of the client's lists or pages. */
    boolean isClients(SheetRef sheet) {
        return !byId.containsValue(sheet) && !kept.contains(sheet);
    }
}
