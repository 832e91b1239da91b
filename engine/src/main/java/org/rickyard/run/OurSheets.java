package org.rickyard.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.write.SheetSet;

/**
 * The sheets of ours that a workbook holds already, known by a defined name that each carries. A sheet that the client
 * edited or copied is the client's: it is left as it is, and never read as a list.
 */
final class OurSheets {
    /**
     * The name each of our sheets carries. It stands for the sheet's id, the two fingerprints of what was written and what
     * the sheet was called, parted by blanks: programs that drop the state part, as libraries for scripts do, keep names.
     */
    static final String MARKER = "Rickyard_sheet";
    /** The name carried by a sheet that was ours until the client edited it. It stands for why, and what it was called. */
    static final String KEPT_MARKER = "Rickyard_kept";

    private static final String BLANK = " ";

    /** So many markers that stand on sheets of other names are no sheets that a client has renamed. */
    private static final int MISPLACED = 2;

    /** Why a sheet of ours is the client's now, with the word for it. */
    enum Kept {
        /** It was edited by hand, or it is a copy. */
        CHANGED("changed"),
        /** Whether it was edited cannot be told: the record of how it was written is gone from the workbook. */
        UNRECORDED("unrecorded");

        private final String word;

        Kept(String word) {
            this.word = word;
        }

        /** What {@link #KEPT_MARKER} stands for on a sheet. */
        String marker(SheetRef sheet) {
            return quoted(word + BLANK + sheet.name());
        }

        private static Kept of(String word) {
            return word.equals(UNRECORDED.word) ? UNRECORDED : CHANGED;
        }
    }

    private final Map<String, SheetRef> byId = new LinkedHashMap<>();
    private final Map<String, List<String>> fingerprints = new HashMap<>();
    private final Map<SheetRef, Kept> kept = new LinkedHashMap<>();
    /** Whether neither a marker nor the record says of any sheet that it is or was ours. */
    private boolean untold;
    /** Sheets that are called as pages of ours of which no marker and no record tells. */
    private final Set<String> doubtful = new HashSet<>();

    private OurSheets() {}

    /**
     * A marker that was found.
     *
     * @param sheet the sheet of its number; null if there is none
     * @param id of the sheet, and of a kept one what it was called, in the place of an id
     * @param called what its sheet was called when it was written; "" if it does not say
     * @param kept why the sheet is the client's now; null if it is ours
     */
    private record Marked(SheetRef sheet, String id, List<String> fingerprints, String called, Kept kept) {
        static Marked of(String marker, SheetRef sheet) {
            String[] parts = marker.split(BLANK, 4);
            List<String> fingerprints = List.of(parts).subList(1, Math.min(3, parts.length));
            return new Marked(sheet, parts[0], fingerprints, parts.length > 3 ? parts[3] : "", null);
        }

        static Marked ofKept(String marker, SheetRef sheet) {
            String[] parts = marker.split(BLANK, 2);
            String called = parts.length > 1 ? parts[1] : "";
            return new Marked(sheet, KEPT_MARKER + BLANK + called, List.of(), called, Kept.of(parts[0]));
        }

        boolean isCalled(SheetRef other) {
            return other != null && called.equalsIgnoreCase(other.name());
        }

        Marked on(SheetRef other) {
            return new Marked(other, id, fingerprints, called, kept);
        }
    }

    /**
     * Finds them; of two that carry the same id the one of the recorded name is ours, or else the one at the recorded
     * place, and the other a copy. Some programs number all places anew on saving, so that the name comes first.
     */
    static OurSheets find(BookPackage book, RunState state) {
        OurSheets ours = new OurSheets();
        NameScopes scopes = NameScopes.of(book);
        List<Marked> marked = new ArrayList<>();
        for (DefinedName name : book.definedNames()) {
            SheetRef sheet = scopes.sheet(name).orElse(null);
            if (name.name().equals(KEPT_MARKER) && name.localSheetId() != null) {
                marked.add(Marked.ofKept(unquoted(name.formula()), sheet));
            } else if (name.name().equals(MARKER) && name.localSheetId() != null) {
                marked.add(Marked.of(unquoted(name.formula()), sheet));
            }
        }
        Map<String, SheetRef> byName = calledElsewhere(marked, book.sheets());
        boolean leftBehind = areLeftBehind(marked, byName);
        for (Marked each : leftBehind ? byName(marked, byName) : marked) {
            if (each.sheet() == null) {
                continue;
            }
            if (each.kept() == null) {
                ours.take(each, state);
            } else {
                ours.kept.put(each.sheet(), each.kept());
            }
        }
        ours.doubt(marked, book.sheets(), state);
        ours.untold = marked.isEmpty() && state.name(SheetSet.SUMMARY).isEmpty();
        return ours;
    }

    private static Set<String> placed(List<Marked> marked) {
        return marked.stream()
                .filter(each -> each.isCalled(each.sheet()))
                .map(Marked::id)
                .collect(Collectors.toSet());
    }

    /** By the id of each marker that is on no sheet of the name it says: the sheet of that name, if there is one. */
    private static Map<String, SheetRef> calledElsewhere(List<Marked> marked, List<SheetRef> sheets) {
        Set<String> placed = placed(marked);
        Map<String, SheetRef> byName = new HashMap<>();
        for (Marked each : marked) {
            if (!placed.contains(each.id())) {
                sheets.stream().filter(each::isCalled).findFirst().ifPresent(sheet -> byName.put(each.id(), sheet));
            }
        }
        return byName;
    }

    /**
     * Whether names count and not numbers. Old libraries for scripts leave the numbers of names as they are when sheets are
     * deleted or moved, so that each is then that of another sheet, or of none. One alone that is on a sheet of another
     * name may be on one that was renamed, and a copy has the marker of its original, which has its own.
     */
    private static boolean areLeftBehind(List<Marked> marked, Map<String, SheetRef> byName) {
        return byName.size() >= MISPLACED
                || marked.stream().anyMatch(each -> each.sheet() == null && byName.containsKey(each.id()));
    }

    /** The markers, each on the sheet that it was written for. */
    private static List<Marked> byName(List<Marked> marked, Map<String, SheetRef> byName) {
        Set<String> placed = placed(marked);
        return marked.stream()
                .map(each -> placed.contains(each.id()) ? each : each.on(byName.get(each.id())))
                .toList();
    }

    /**
     * With a sheet that is deleted the same libraries, which drop the state part, drop the names of its number, and that may
     * be the one that another's marker was left with. A sheet called as a page of ours may be that page then, or one of the
     * client's own: what it says tells.
     */
    private void doubt(List<Marked> marked, List<SheetRef> sheets, RunState state) {
        // Every run records its Summary. Where the record is there, a page that it does not name was never ours.
        if (marked.isEmpty() || state.name(SheetSet.SUMMARY).isPresent()) {
            return;
        }
        Set<String> ids = new HashSet<>();
        marked.forEach(each -> ids.add(each.id()));
        SheetSet.NAMES.forEach((id, name) -> {
            if (!ids.contains(id)) {
                sheets.stream()
                        .map(SheetRef::name)
                        .filter(name::equalsIgnoreCase)
                        .forEach(doubtful::add);
            }
        });
    }

    /**
     * Some programs drop names and state part together. Then sheets of ours are told by what they say, and kept.
     *
     * @param pages sheets of a look that only ours have
     * @return whether any is kept that was not; where some are known by their marks, others are copies of their cells
     */
    boolean keep(List<Grid> pages, List<SheetRef> sheets) {
        boolean any = false;
        for (Grid page : pages) {
            if (untold || doubtful.contains(page.sheet())) {
                sheets.stream()
                        .filter(sheet -> sheet.name().equals(page.sheet()))
                        .forEach(sheet -> kept.put(sheet, Kept.UNRECORDED));
                any = true;
            }
        }
        return any;
    }

    private void take(Marked marked, RunState state) {
        String id = marked.id();
        SheetRef sheet = marked.sheet();
        SheetRef before = byId.get(id);
        if (before == null || likeness(marked, sheet, state) > likeness(marked, before, state)) {
            byId.put(id, sheet);
            fingerprints.put(id, marked.fingerprints());
            if (before != null) {
                kept.put(before, Kept.CHANGED);
            }
        } else {
            kept.put(sheet, Kept.CHANGED);
        }
    }

    /** How much speaks for a sheet being the one that was written and not its copy. */
    private static int likeness(Marked marked, SheetRef sheet, RunState state) {
        boolean name = marked.isCalled(sheet)
                || state.name(marked.id())
                        .filter(sheet.name()::equalsIgnoreCase)
                        .isPresent();
        boolean place = state.sheetId(marked.id())
                .filter(known -> known == sheet.sheetId())
                .isPresent();
        return (name ? 2 : 0) + (place ? 1 : 0);
    }

    private static String unquoted(String formula) {
        return formula.length() > 1 && formula.startsWith("\"")
                ? formula.substring(1, formula.length() - 1).replace("\"\"", "\"")
                : formula;
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    /** What the marker of a sheet stands for, without what the sheet is called and the quotation marks around it. */
    static String marker(String id, String fingerprint, String unplaced) {
        return String.join(BLANK, id, fingerprint, unplaced);
    }

    /** The same with what the sheet is called, as a formula. */
    static String marker(String id, String fingerprint, String unplaced, String called) {
        return quoted(marker(id, fingerprint, unplaced) + BLANK + called);
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
