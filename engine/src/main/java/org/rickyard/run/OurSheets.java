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
    /**
     * The name each of our sheets carries. It stands for the sheet's id and the two fingerprints of what was written,
     * parted by blanks: programs that drop the state part, as libraries for scripts do, keep names.
     */
    static final String MARKER = "Rickyard_sheet";
    /** The name carried by a sheet that was ours until the client edited it. */
    static final String KEPT_MARKER = "Rickyard_kept";

    private static final String BLANK = " ";

    private final Map<String, SheetRef> byId = new LinkedHashMap<>();
    private final Map<String, List<String>> fingerprints = new HashMap<>();
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
                ours.take(List.of(unquoted(name.formula()).split(BLANK)), sheet, state);
            }
        }
        return ours;
    }

    private void take(List<String> marker, SheetRef sheet, RunState state) {
        String id = marker.get(0);
        SheetRef before = byId.get(id);
        boolean recorded =
                state.sheetId(id).filter(known -> known == sheet.sheetId()).isPresent();
        if (before == null || recorded) {
            byId.put(id, sheet);
            fingerprints.put(id, marker.subList(1, marker.size()));
            if (before != null) {
                kept.add(before);
            }
        } else {
            kept.add(sheet);
        }
    }

    private static String unquoted(String formula) {
        return formula.length() > 1 && formula.startsWith("\"") ? formula.substring(1, formula.length() - 1) : formula;
    }

    /** What the marker of a sheet stands for, without the quotation marks around it. */
    static String marker(String id, String fingerprint, String unplaced) {
        return String.join(BLANK, id, fingerprint, unplaced);
    }

    /** The fingerprint of what a sheet meant when it was written, as the sheet itself tells. */
    Optional<String> fingerprint(String id) {
        return told(id, 0);
    }

    /** The same without where references to other sheets led. */
    Optional<String> unplaced(String id) {
        return told(id, 1);
    }

    private Optional<String> told(String id, int which) {
        List<String> told = fingerprints.getOrDefault(id, List.of());
        return told.size() > which ? Optional.of(told.get(which)) : Optional.empty();
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
