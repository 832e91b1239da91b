package org.rickyard.trade.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.trade.cost.CostCatalogue;
import org.rickyard.trade.season.SeasonCatalogue;
import org.rickyard.trade.silage.SilageCatalogue;
import org.rickyard.trade.spraying.SprayCatalogue;
import org.rickyard.trade.workrate.WorkRateCatalogue;

/** Every formula of the engine, in reading order, with the constants and tables they rest on. */
public final class Catalogue {
    private Catalogue() {}

    private static final List<Formula> ALL = joined(List.of(
            WorkRateCatalogue.FORMULAS,
            CostCatalogue.FORMULAS,
            SeasonCatalogue.FORMULAS,
            SprayCatalogue.FORMULAS,
            SilageCatalogue.FORMULAS));

    private static final List<Constant> CONSTANTS = List.copyOf(gatherConstants());

    private static final List<ReferenceTable> TABLES = List.copyOf(gatherTables());

    /** All formulas. */
    public static List<Formula> all() {
        return ALL;
    }

    /** All constants that formulas and cautions read, in the order of Basis. */
    public static List<Constant> constants() {
        return CONSTANTS;
    }

    /** All reference tables, in the order of Basis. */
    public static List<ReferenceTable> tables() {
        return TABLES;
    }

    /** The formula of an id. */
    public static Optional<Formula> find(String id) {
        return ALL.stream().filter(formula -> formula.id().equals(id)).findFirst();
    }

    private static Set<Constant> gatherConstants() {
        Set<Constant> constants = new LinkedHashSet<>();
        ALL.forEach(formula -> constants.addAll(formula.constants()));
        joined(List.of(
                        WorkRateCatalogue.CONSTANTS,
                        CostCatalogue.CONSTANTS,
                        SeasonCatalogue.CONSTANTS,
                        SprayCatalogue.CONSTANTS,
                        SilageCatalogue.CONSTANTS))
                .forEach(constants::add);
        return constants;
    }

    private static Set<ReferenceTable> gatherTables() {
        Set<ReferenceTable> tables = new LinkedHashSet<>();
        ALL.forEach(formula -> tables.addAll(formula.tables()));
        joined(List.of(
                        WorkRateCatalogue.TABLES,
                        CostCatalogue.TABLES,
                        SeasonCatalogue.TABLES,
                        SprayCatalogue.TABLES,
                        SilageCatalogue.TABLES))
                .forEach(tables::add);
        return tables;
    }

    private static <T> List<T> joined(List<List<T>> lists) {
        List<T> all = new ArrayList<>();
        lists.forEach(all::addAll);
        return List.copyOf(all);
    }
}
