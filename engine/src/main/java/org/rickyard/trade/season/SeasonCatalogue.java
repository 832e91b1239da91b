package org.rickyard.trade.season;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;

/** The formulas of the season, in reading order. */
public final class SeasonCatalogue {
    private SeasonCatalogue() {}

    /** All formulas. */
    public static final List<Formula> FORMULAS = all();
    /** Constants that only cautions read. */
    public static final List<Constant> CONSTANTS = List.of();
    /** Tables that are read outside formulas. */
    public static final List<ReferenceTable> TABLES = List.of();

    private static List<Formula> all() {
        List<Formula> all = new ArrayList<>(SeasonFit.formulas());
        all.addAll(MachineSeason.formulas());
        return List.copyOf(all);
    }
}
