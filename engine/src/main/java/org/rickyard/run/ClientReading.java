package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.CopiedResults;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.follow.BookScope;
import org.rickyard.workbook.follow.Dependents;
import org.rickyard.workbook.follow.FormulaRefs;
import org.rickyard.workbook.follow.UnstoredFormulas;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.SheetCells;
import org.rickyard.workbook.read.TableParts;
import org.rickyard.workbook.write.WrittenPage;

/**
 * The client's sheets as they were read, with an eye to which of their cells depend on results of ours.
 *
 * @param grids the sheets, in workbook order, without the pages
 * @param pages sheets that say what only a sheet of ours does, and carry no mark that they are or were
 * @param scope what names in formulas stand for
 * @param refs which formulas refer to our sheets
 * @param findings what was noticed while reading
 */
record ClientReading(List<Grid> grids, List<Grid> pages, BookScope scope, FormulaRefs refs, List<Finding> findings) {
    /**
     * Reads them.
     *
     * @param brought names of sheets that the run will bring
     * @param clientsNames workbook names that begin as ours do and are the client's
     */
    static ClientReading of(
            BookPackage book, BookReader reader, OurSheets ours, List<String> brought, Set<String> clientsNames)
            throws IOException, RefusedException {
        List<TableParts.Table> tables = new ArrayList<>();
        for (SheetRef sheet : book.sheets()) {
            if (sheet.worksheet()) {
                tables.addAll(reader.tables(sheet));
            }
        }
        BookScope scope = new BookScope(book.sheets(), definedNames(book), tables);
        List<String> ourSheets = new ArrayList<>(brought);
        ours.byId().values().forEach(sheet -> ourSheets.add(sheet.name()));
        FormulaRefs refs = new FormulaRefs(scope, ourSheets, clientsNames);
        List<Finding> findings = new ArrayList<>();
        List<SheetCells> cells = reader.cells(book.sheets(), ours::isClients, sheet -> refs.reading(sheet.name()));
        List<SheetRef> clients = book.sheets().stream().filter(ours::isClients).toList();
        UnstoredFormulas.Done done = UnstoredFormulas.workOut(scope, reader, clients, cells);
        if (done.count() > 0) {
            findings.add(Finding.note(done.first(), unstored(done)));
        }
        Dependents dependents = Dependents.trace(scope, reader, clients, refs);
        if (dependents.size() > 0) {
            findings.add(Finding.note(
                    refs.mentions().get(0).cell(),
                    dependents.size()
                            + (dependents.size() == 1
                                    ? " cell of yours depends on these results; it is"
                                    : " cells of yours depend on these results; they are")
                            + " recalculated when the workbook is opened."));
        }
        List<Grid> grids = new ArrayList<>();
        List<Grid> pages = new ArrayList<>();
        for (SheetCells sheet : cells) {
            if (WrittenPage.isOn(sheet)) {
                pages.add(sheet);
                findings.add(CopiedResults.told(sheet.address(0, 0)));
                continue;
            }
            grids.add(dependents.size() == 0 ? sheet : new LoopGuard(sheet, dependents));
        }
        return new ClientReading(grids, pages, scope, refs, findings);
    }

    private static String unstored(UnstoredFormulas.Done done) {
        boolean one = done.count() == 1;
        return done.count()
                + (one ? " formula of yours" : " formulas of yours")
                + (done.storedAsNought()
                        ? " came from a program that writes formulas and does not work them out: the file says 0 for every"
                                + " one; "
                        : one ? " has no stored value in the file; " : " have no stored value in the file; ")
                + (one ? "it was worked out here, and is" : "they were worked out here, and are")
                + " again by the spreadsheet program that opens the workbook.";
    }

    private static Map<String, String> definedNames(BookPackage book) {
        Map<Integer, String> sheetNames = new HashMap<>();
        book.sheets().forEach(sheet -> sheetNames.put(sheet.position(), sheet.name()));
        Map<String, String> formulas = new HashMap<>();
        for (DefinedName name : book.definedNames()) {
            String prefix = name.localSheetId() == null ? "" : sheetNames.get(name.localSheetId()) + "!";
            formulas.put(prefix + name.name(), name.formula());
        }
        return formulas;
    }
}
