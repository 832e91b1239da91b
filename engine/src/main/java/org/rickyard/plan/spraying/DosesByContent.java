package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.formula.BlankMeaning;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.LinkCells;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Substance;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.ContentDose;

/**
 * Puts the dose of product that a dose of active ingredient or nutrient comes to in the place of the typed one, in a table
 * some row of which is dosed so. Every other formula of the table reads it as if it had been typed.
 */
final class DosesByContent {
    /** The product of a row, where its dose counts the kilograms of this in it. */
    private static final Map<Substance, Role> ROLES = Map.of(
            Substance.ACTIVE, Role.OF_ACTIVE,
            Substance.NITROGEN, Role.OF_NITROGEN,
            Substance.PHOSPHATE, Role.OF_PHOSPHATE,
            Substance.POTASH, Role.OF_POTASH);

    private static final List<TableColumn> CONTENT = List.of(
            new TableColumn.Word(ContentDose.OF, List.of()),
            Names.dispensable(ContentDose.PER_LITRE, content(Substance.ACTIVE)),
            Names.dispensable(
                    ContentDose.SHARE,
                    Arrays.stream(Substance.values())
                            .map(DosesByContent::content)
                            .toArray(Candidate[]::new)),
            Names.optional(Quantities.PRODUCT_DENSITY, Candidate.typed(Role.PRODUCT, Products.DENSITY)),
            SprayColumns.step(ContentDose.DOSE_FROM_CONTENT));

    private DosesByContent() {}

    private static Candidate content(Substance substance) {
        return Candidate.typed(ROLES.get(substance), Products.contentOf(substance));
    }

    /** The table of what is sprayed, with doses by content in the place of {@link Quantities#DOSE}. */
    static TableSpec sprayed(TableSpec spec, RowSources sources) {
        return in(spec, sources, Quantities.DOSE, ContentDose.TYPED, ContentDose.DOSE_RECKONED);
    }

    /** The table of what is spread, with doses by content in the place of {@link Quantities#SPREAD_DOSE}. */
    static TableSpec spread(TableSpec spec, RowSources sources) {
        return in(spec, sources, Quantities.SPREAD_DOSE, ContentDose.TYPED_SPREAD, ContentDose.SPREADING_DOSE_RECKONED);
    }

    private static TableSpec in(TableSpec spec, RowSources sources, Symbol dose, Symbol typed, Formula reckoned) {
        List<Candidate> places = ((TableColumn.Link) spec.column(dose).orElseThrow()).places();
        if (!tellContents(sources, places)) {
            return spec;
        }
        // Blank is what is dosed neither way; a dose of a substance that lacks its content is not blank.
        BlankMeaning blank = new BlankMeaning(
                dose,
                Condition.all(List.of(new Condition.Blank(typed), new Condition.Blank(Quantities.SUBSTANCE_DOSE))));
        List<TableColumn> columns = new ArrayList<>();
        for (TableColumn column : spec.columns()) {
            if (column.symbol().equals(dose)) {
                columns.add(new TableColumn.Link(typed, places, true));
                columns.add(new TableColumn.Link(Quantities.SUBSTANCE_DOSE, places, true));
                columns.addAll(CONTENT);
                columns.add(SprayColumns.step(reckoned));
            } else if (!column.symbol().equals(Quantities.PRODUCT_DENSITY)) {
                columns.add(column);
            }
        }
        return spec.with(columns, blank);
    }

    /** Tells the sources, row by row, of what the dose counts the kilograms; whether of any row it does. */
    private static boolean tellContents(RowSources sources, List<Candidate> places) {
        LinkCells doses = new LinkCells(Quantities.SUBSTANCE_DOSE, places, sources, sources.rows());
        int[] products = sources.rows(Role.PRODUCT);
        Substance[] counted = new Substance[sources.rows()];
        boolean any = false;
        for (int row = 0; row < counted.length; row++) {
            Optional<Substance> substance = doses.unit(row).flatMap(Substance::of);
            counted[row] = substance.orElse(null);
            any |= substance.isPresent();
        }
        if (any) {
            ListRows list = sources.list(Role.PRODUCT);
            ROLES.forEach((substance, role) -> sources.with(role, list, only(products, counted, substance)));
            String[] words = new String[counted.length];
            for (int row = 0; row < counted.length; row++) {
                words[row] = counted[row] == null ? null : counted[row].words();
            }
            sources.with(ContentDose.OF, words);
        }
        return any;
    }

    private static int[] only(int[] products, Substance[] counted, Substance substance) {
        int[] some = products.clone();
        for (int row = 0; row < some.length; row++) {
            some[row] = counted[row] == substance ? some[row] : -1;
        }
        return some;
    }
}
