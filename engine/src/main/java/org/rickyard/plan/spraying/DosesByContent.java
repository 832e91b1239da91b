package org.rickyard.plan.spraying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.rickyard.formula.BlankMeaning;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Jobs;
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
    /** The job that names the product, where its dose counts the kilograms of this in it. */
    private static final Map<Substance, Role> JOBS = Map.of(
            Substance.ACTIVE, Role.JOB_OF_ACTIVE,
            Substance.NITROGEN, Role.JOB_OF_NITROGEN,
            Substance.PHOSPHATE, Role.JOB_OF_PHOSPHATE,
            Substance.POTASH, Role.JOB_OF_POTASH);

    private static final List<TableColumn> CONTENT = List.of(
            new TableColumn.Word(ContentDose.OF, List.of()),
            Names.dispensable(
                    ContentDose.PER_LITRE, contents(Stream.of(Substance.ACTIVE)).toArray(Candidate[]::new)),
            Names.dispensable(
                    ContentDose.SHARE,
                    contents(Arrays.stream(Substance.values())).toArray(Candidate[]::new)),
            Names.optional(Quantities.PRODUCT_DENSITY, Candidate.typed(Role.PRODUCT, Products.DENSITY)),
            SprayColumns.step(ContentDose.DOSE_FROM_CONTENT));

    private DosesByContent() {}

    /** Beside the dose, and else in the product list. */
    private static Stream<Candidate> contents(Stream<Substance> substances) {
        return substances.flatMap(substance -> Stream.of(
                Candidate.typed(JOBS.get(substance), Jobs.contentOf(substance)),
                Candidate.typed(ROLES.get(substance), Products.contentOf(substance))));
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
        int[] jobs = sources.rows(Role.DOSED_JOB);
        Substance[] counted = new Substance[sources.rows()];
        boolean any = false;
        for (int row = 0; row < counted.length; row++) {
            Optional<Substance> substance = doses.unit(row).flatMap(Substance::of);
            counted[row] = substance.orElse(null);
            any |= substance.isPresent();
        }
        if (any) {
            ListRows list = sources.list(Role.PRODUCT);
            ListRows jobList = sources.list(Role.DOSED_JOB);
            JOBS.forEach((substance, role) -> sources.with(role, jobList, only(jobs, counted, substance)));
            int[] asked = withoutToldByTheLitre(products, sources);
            ROLES.forEach((substance, role) -> sources.with(role, list, only(asked, counted, substance)));
            String[] words = new String[counted.length];
            for (int row = 0; row < counted.length; row++) {
                words[row] = counted[row] == null ? null : counted[row].words();
            }
            sources.with(ContentDose.OF, words);
        }
        return any;
    }

    /**
     * The products of which the list is asked what they hold: none where a job tells what a litre holds, for a share by
     * weight from the list would go before that. Kilograms cannot go by the litre.
     */
    private static int[] withoutToldByTheLitre(int[] products, RowSources sources) {
        ListRows jobs = sources.list(Role.DOSED_JOB);
        int[] rows = sources.rows(Role.DOSED_JOB);
        int[] asked = products.clone();
        for (int row = 0; row < asked.length; row++) {
            if (rows[row] >= 0
                    && ContentsOfProducts.isOfALitre(jobs, rows[row])
                    && !sources.word(Quantities.PRODUCT_UNIT, row).equals(Optional.of(ListedProducts.KILOGRAMS))) {
                asked[row] = -1;
            }
        }
        return asked;
    }

    private static int[] only(int[] rows, Substance[] counted, Substance substance) {
        int[] some = rows.clone();
        for (int row = 0; row < some.length; row++) {
            some[row] = counted[row] == substance ? some[row] : -1;
        }
        return some;
    }
}
