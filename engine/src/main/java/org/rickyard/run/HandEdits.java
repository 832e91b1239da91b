package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.plan.WorkPlan;
import org.rickyard.workbook.follow.BookScope;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.meaning.MeaningFingerprint;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.write.SheetSet;

/** The sheets of ours that were edited by hand since they were written. They are the client's from then on. */
final class HandEdits {
    private final BookPackage book;
    private final BookReader reader;
    private final RunState state;
    private final OurSheets ours;

    /** Sheets whose formulas lead to other places than when they were written. */
    private final List<String> moved = new ArrayList<>();

    HandEdits(BookPackage book, BookReader reader, RunState state, OurSheets ours) {
        this.book = book;
        this.reader = reader;
        this.state = state;
        this.ours = ours;
    }

    /**
     * A sheet of ours that was edited by hand, or bears a chart or a note of the client's, is the client's from now
     * on. Where no more has changed than the places that
     * its formulas lead to, rows may have been inserted in a list or a sheet renamed; that is looked into once the lists
     * are read.
     */
    void release() throws IOException, RefusedException {
        Map<SheetRef, MeaningFingerprint> present = new LinkedHashMap<>();
        for (Map.Entry<String, SheetRef> entry : List.copyOf(ours.byId().entrySet())) {
            String id = entry.getKey();
            if (state.fingerprint(id).isEmpty() && ours.fingerprint(id).isEmpty()) {
                ours.release(id, OurSheets.Kept.UNRECORDED);
                continue;
            }
            if (HandMarks.on(book, entry.getValue(), state.notes(id))) {
                ours.release(id, OurSheets.Kept.CHANGED);
                continue;
            }
            present.put(entry.getValue(), new MeaningFingerprint(SheetSet.firstSortableRow(id)));
        }
        reader.stream(present);
        for (Map.Entry<String, SheetRef> entry : List.copyOf(ours.byId().entrySet())) {
            String id = entry.getKey();
            SheetRef sheet = entry.getValue();
            if (!isKnown(id, present.get(sheet)) && !isKnownUnsorted(id, sheet)) {
                ours.release(id, OurSheets.Kept.CHANGED);
            }
        }
    }

    /** Sheets written before rows could be sorted are recorded with every row in its place. */
    private boolean isKnownUnsorted(String id, SheetRef sheet) throws IOException {
        if (SheetSet.firstSortableRow(id) == Integer.MAX_VALUE) {
            return false;
        }
        MeaningFingerprint inPlace = new MeaningFingerprint();
        reader.stream(sheet, inPlace);
        return isKnown(id, inPlace);
    }

    /** Whether a sheet is as it was recorded, or leads elsewhere and is to be looked into. */
    private boolean isKnown(String id, MeaningFingerprint present) {
        boolean same = state.fingerprint(id)
                .or(() -> ours.fingerprint(id))
                .filter(present.hex()::equals)
                .isPresent();
        if (!same && isOnlyLedElsewhere(id, present)) {
            moved.add(id);
            return true;
        }
        return same;
    }

    /**
     * Whether no more has changed than where formulas lead, as where rows of a list were inserted or deleted. A line of As
     * read leads to the cell behind the headers too, which stays in its row when the list is dragged to another.
     */
    private boolean isOnlyLedElsewhere(String id, MeaningFingerprint present) {
        return state.unplaced(id)
                        .or(() -> ours.unplaced(id))
                        .filter(present.unplacedHex()::equals)
                        .isPresent()
                || (present.lostReferences() || id.equals(SheetSet.AS_READ))
                        && state.rowless(id)
                                .filter(present.rowlessHex()::equals)
                                .isPresent();
    }

    /** A link that was led by hand to another column of the client's is an edit too. */
    void releaseLedElsewhere(WorkPlan made, BookScope scope) throws IOException {
        for (String id : moved) {
            SheetRef sheet = ours.byId().get(id);
            if (made.table(id) != null && LedElsewhere.look(reader, scope, sheet, made.table(id), made.lists())) {
                ours.release(id, OurSheets.Kept.CHANGED);
            }
        }
    }
}
