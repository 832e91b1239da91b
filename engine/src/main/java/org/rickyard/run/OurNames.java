package org.rickyard.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.workbook.graft.LocalName;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookScope;
import org.rickyard.workbook.read.CellArea;
import org.rickyard.workbook.read.FormulaRefs;
import org.rickyard.workbook.write.SheetSet;

/** The defined names of ours: those that a run brings with its sheets, and which of those it meets are its own. */
final class OurNames {
    private static final String PRINT_AREA = "_xlnm.Print_Area";
    private static final String PRINT_TITLES = "_xlnm.Print_Titles";

    private final OurSheets ours;
    private final BookScope scope;
    /** The usual name of the sheet of each total. */
    private final Map<String, String> totals = new HashMap<>();

    OurNames(OurSheets ours, WorkPlan plan, BookScope scope) {
        this.ours = ours;
        this.scope = scope;
        plan.tables().forEach(table -> table.spec()
                .totals()
                .forEach(total -> totals.put(total.name(), table.spec().sheet())));
    }

    /**
     * Looks for a name of the client's that is to the letter that of a total which the run brings: it would be led
     * elsewhere, and his formulas with it.
     *
     * @param brought the names of the totals of the run
     * @throws RefusedException if there is one
     */
    void refuseTaken(BookPackage book, Set<String> brought) throws RefusedException {
        for (DefinedName name : book.definedNames()) {
            if (name.localSheetId() == null
                    && brought.stream().anyMatch(name.name()::equalsIgnoreCase)
                    && !isOurs(name)) {
                throw new RefusedException(
                        RefusedException.Reason.NAME_TAKEN,
                        book.displayName(),
                        "'" + name.name() + "', which stands for " + name.formula());
            }
        }
    }

    /** The names that belong to a sheet of ours. */
    static List<LocalName> on(SheetSet.Sheet sheet) {
        List<LocalName> names = new ArrayList<>();
        String awaited = Fingerprints.awaited(sheet.id());
        names.add(new LocalName(OurSheets.MARKER, "\"" + OurSheets.marker(sheet.id(), awaited, awaited) + "\""));
        String quoted = CellAddress.quoted(sheet.name());
        names.add(new LocalName(PRINT_AREA, quoted + "!$A$1:" + PrintAreas.awaited(sheet.id())));
        if (sheet.headRows() > 0) {
            names.add(new LocalName(
                    PRINT_TITLES,
                    (sheet.headColumns() == 0
                                    ? ""
                                    : quoted + "!$A:$" + CellAddress.letters(sheet.headColumns() - 1) + ",")
                            + quoted + "!$1:$" + sheet.headRows()));
        }
        return names;
    }

    /** Whether a name that the workbook holds was brought by a run, and is brought again or goes. */
    boolean isOurs(DefinedName name) {
        if (name.localSheetId() == null) {
            return name.name().startsWith(FormulaRefs.OUR_NAMES)
                    && !isClients(name.formula(), totals.getOrDefault(name.name(), ""));
        }
        boolean onOurs = ours.byId().values().stream().anyMatch(sheet -> sheet.position() == name.localSheetId());
        return onOurs && Stream.of(PRINT_AREA, PRINT_TITLES).anyMatch(name.name()::startsWith)
                || name.name().equals(OurSheets.MARKER)
                || name.name().equals(OurSheets.KEPT_MARKER);
    }

    /**
     * A name of the client's may begin as ours do. A total of ours whose sheet is gone leads nowhere; one whose sheet has
     * lost the mark that it was ours leads to a sheet that is called as the total's.
     */
    private boolean isClients(String formula, String usualSheet) {
        if (formula.indexOf('!') < 0 && !formula.startsWith("#")) {
            return true;
        }
        List<CellArea> areas = scope.areas(formula, new CellAddress("", 0, 0));
        Set<String> written = new HashSet<>();
        Stream.concat(ours.byId().values().stream(), ours.kept().keySet().stream())
                .map(SheetRef::name)
                .forEach(written::add);
        return !areas.isEmpty()
                && areas.stream()
                        .map(CellArea::sheet)
                        .noneMatch(sheet ->
                                written.contains(sheet) || !usualSheet.isEmpty() && sheet.startsWith(usualSheet));
    }
}
