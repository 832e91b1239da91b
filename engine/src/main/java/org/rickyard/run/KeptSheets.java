package org.rickyard.run;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.rickyard.lists.Finding;
import org.rickyard.workbook.open.SheetRef;

/** How it is told that sheets of ours were edited, or may have been, and are the client's now. */
final class KeptSheets {
    /** Where more sheets than these were edited, one sentence tells of all: the file was saved so, not edited by hand. */
    private static final int MOST_TOLD_SINGLY = 5;

    private KeptSheets() {}

    /** Said on every run, so that a run over its own output changes nothing. */
    static List<Finding> told(OurSheets ours) {
        List<Finding> findings = new ArrayList<>();
        List<SheetRef> changed = ours.kept(OurSheets.Kept.CHANGED);
        if (changed.size() > MOST_TOLD_SINGLY) {
            findings.add(Finding.caution(
                    null,
                    "these sheets were written by a run and then edited by hand, copied, or saved without their formulas: "
                            + names(changed)
                            + ". They are kept as they are, as your own, and are not brought up to date;"
                            + " the results stand on new sheets beside them. If nobody has edited them, delete them."));
        } else {
            changed.forEach(sheet -> findings.add(Finding.caution(
                    null,
                    "the sheet '" + sheet.name() + "' was written by a run and then edited by hand or copied, so it is"
                            + " kept as it is, as your own, and is not brought up to date; the results stand on new"
                            + " sheets beside it.")));
        }
        List<SheetRef> unrecorded = ours.kept(OurSheets.Kept.UNRECORDED);
        if (!unrecorded.isEmpty()) {
            findings.add(Finding.caution(
                    null,
                    "these sheets were written by a run, but the workbook no longer holds the record of how (some"
                            + " programs drop it on saving), so it cannot be told whether they were edited since: "
                            + names(unrecorded)
                            + ". They are kept as they are, as your own, and are not brought up to date; the"
                            + " results stand on new sheets beside them. If nobody has edited them, delete them."));
        }
        return findings;
    }

    private static String names(List<SheetRef> sheets) {
        return sheets.stream().map(sheet -> "'" + sheet.name() + "'").collect(Collectors.joining(", "));
    }
}
