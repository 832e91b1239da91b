package org.rickyard.testing;

import java.nio.file.Path;
import java.util.Map;
import org.rickyard.lists.CellAddress;

/** Works out every formula of a workbook with LibreOffice Calc, whatever values are stored. */
public final class LibreOfficeRecalculation {
    private LibreOfficeRecalculation() {}

    /**
     * The value of every formula cell: {@link Double}, {@link String}, {@link Boolean} or {@link CellError}.
     *
     * @param sheets the sheets wanted; all of them if none is named
     */
    public static Map<CellAddress, Object> of(Path xlsx, String... sheets) {
        return StoredValues.of(LibreOffice.recalculate(xlsx), sheets);
    }
}
