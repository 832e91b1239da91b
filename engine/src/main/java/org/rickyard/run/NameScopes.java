package org.rickyard.run;

import java.util.List;
import java.util.Optional;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.SheetRef;

/**
 * Which sheet a defined name belongs to. Its number counts all sheets (ISO/IEC 29500-1, 18.2.5, localSheetId), but some
 * libraries count worksheets alone when they save, so that behind a chart sheet each name is one sheet early. Names for
 * printing and filters tell: they lead to the sheet that they belong to.
 */
final class NameScopes {
    private static final String BUILT_IN = "_xlnm.";

    private final List<SheetRef> counted;

    private NameScopes(List<SheetRef> counted) {
        this.counted = counted;
    }

    static NameScopes of(BookPackage book) {
        NameScopes all = new NameScopes(book.sheets());
        NameScopes worksheets = new NameScopes(
                book.sheets().stream().filter(SheetRef::worksheet).toList());
        boolean alike = all.counted.size() == worksheets.counted.size();
        return alike || all.fits(book) >= worksheets.fits(book) ? all : worksheets;
    }

    /** The sheet of a name; empty for a name of the whole workbook, and where there is no sheet of its number. */
    Optional<SheetRef> sheet(DefinedName name) {
        Integer number = name.localSheetId();
        return number == null || number < 0 || number >= counted.size()
                ? Optional.empty()
                : Optional.of(counted.get(number));
    }

    /** How many names of one sheet lead to that sheet. */
    private long fits(BookPackage book) {
        return book.definedNames().stream()
                .filter(name -> name.name().startsWith(BUILT_IN))
                .filter(name ->
                        sheet(name).filter(sheet -> leadsTo(name, sheet)).isPresent())
                .count();
    }

    /** Whether a name of one sheet leads to a certain sheet. */
    static boolean leadsTo(DefinedName name, SheetRef sheet) {
        return name.formula().startsWith(sheet.name() + "!")
                || name.formula().startsWith("'" + sheet.name().replace("'", "''") + "'!");
    }
}
