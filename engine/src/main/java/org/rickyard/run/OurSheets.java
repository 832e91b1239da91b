package org.rickyard.run;

import java.util.Comparator;
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

    /** Why a sheet of ours is the client's now, and what {@link #KEPT_MARKER} stands for on it. */
    enum Kept {
        /** It was edited by hand, or it is a copy. */
        CHANGED("TRUE"),
        /** Whether it was edited cannot be told: the record of how it was written is gone from the workbook. */
        UNRECORDED("\"unrecorded\"");

        private final String value;

        Kept(String value) {
            this.value = value;
        }

        String value() {
            return value;
        }

        private static Kept of(String formula) {
            return formula.equals(UNRECORDED.value) ? UNRECORDED : CHANGED;
        }
    }

    private final Map<String, SheetRef> byId = new LinkedHashMap<>();
    private final Map<SheetRef, Kept> kept = new LinkedHashMap<>();

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
                ours.kept.put(sheet, Kept.of(name.formula()));
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
            kept.put(before, Kept.CHANGED);
            byId.put(id, sheet);
        } else {
            kept.put(sheet, Kept.CHANGED);
        }
    }

    private static String unquoted(String formula) {
        return formula.length() > 1 && formula.startsWith("\"") ? formula.substring(1, formula.length() - 1) : formula;
    }

    /** Gives a sheet up to the client. */
    void release(String id, Kept why) {
        kept.put(byId.remove(id), why);
    }

    /** The sheet of an id. */
    Optional<SheetRef> sheet(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Ours by id. */
    Map<String, SheetRef> byId() {
        return byId;
    }

    /** Sheets that were ours and are the client's now, each with the reason. */
    Map<SheetRef, Kept> kept() {
        return kept;
    }

    /** Those of them that are kept for one reason, in the order of their tabs. */
    List<SheetRef> kept(Kept why) {
        return kept.entrySet().stream()
                .filter(entry -> entry.getValue() == why)
                .map(Map.Entry::getKey)
                .sorted(Comparator.comparingInt(SheetRef::position))
                .toList();
    }

    /** Whether a sheet is one of the client's lists or pages. */
    boolean isClients(SheetRef sheet) {
        return !byId.containsValue(sheet) && !kept.containsKey(sheet);
    }
}
