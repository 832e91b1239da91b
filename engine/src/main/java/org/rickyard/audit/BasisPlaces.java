package org.rickyard.audit;

import org.rickyard.formula.Constant;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.lists.CellAddress;

/** Where constants and reference tables stand on Basis. */
public interface BasisPlaces {
    /** The cell of a constant's value. */
    CellAddress constant(Constant constant);

    /** The key cells of a table, as a formula names them. */
    String keys(ReferenceTable table);

    /** The value cells of a table, as a formula names them. */
    String values(ReferenceTable table);
}
