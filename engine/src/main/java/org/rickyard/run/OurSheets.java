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
    /**
     * The name each of our sheets carries. It stands for the sheet's id and the two fingerprints of what was written,
     * parted by blanks: programs that drop the state part, as libraries for scripts do, keep names.
     */
    static final String MARKER = "Rickyard_sheet";
    /** The name carried by a sheet that was ours until the client edited it. */
    static final String KEPT_MARKER = "Rickyard_kept";

    private static final String BLANK = " ";

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
    private final Map<String, List<String>> fingerprints = new HashMap<>();
    private final Map<SheetRef, Kept> kept = new LinkedHashMap<>();

    private OurSheets() {}

    /**
     * Finds them; of two that carry the same id the one of the recorded name is ours, or else the one at the recorded
     * place, and the other a copy. Some programs number all places anew on saving, so that the name comes first.
     */
    static OurSheets find(BookPackage book, RunState state) {
        OurSheets ours = new OurSheets();
        NameScopes scopes = NameScopes.of(book);
        for (DefinedName name : book.definedNames()) {
            SheetRef sheet = scopes.sheet(name).orElse(null);
            if (sheet == null) {
                continue;
            }
            if (name.name().equals(KEPT_MARKER)) {
                ours.kept.put(sheet, Kept.of(name.formula()));
            } else if (name.name().equals(MARKER)) {
                ours.take(List.of(unquoted(name.formula()).split(BLANK)), sheet, state);
            }
        }
        return ours;
    }

    private void take(List<String> marker, SheetRef sheet, RunState state) {
        String id = marker.get(0);
        SheetRef before = byId.get(id);
        if (before == null || likeness(id, sheet, state) > likeness(id, before, state)) {
            byId.put(id, sheet);
            fingerprints.put(id, marker.subList(1, marker.size()));
            if (before != null) {
                kept.put(before, Kept.CHANGED);
            }
        } else {
            kept.put(sheet, Kept.CHANGED);
        }
    }

    /** How much speaks for a sheet being the one that was written and not its copy. */
    private static int likeness(String id, SheetRef sheet, RunState state) {
        boolean name = state.name(id).filter(sheet.name()::equalsIgnoreCase).isPresent();
        boolean place =
                state.sheetId(id).filter(known -> known == sheet.sheetId()).isPresent();
        return (name ? 2 : 0) + (place ? 1 : 0);
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
