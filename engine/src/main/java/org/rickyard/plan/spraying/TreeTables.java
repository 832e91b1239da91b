package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.result;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Fields;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.TreeCounts;

/** The table of trees counted. It stands only in workbooks whose field list tells their number or spacing. */
final class TreeTables {
    private TreeTables() {}

    private static final List<CautionRule> RULES = List.of(
            SprayRules.caution(
                    SprayRules.more(TreeCounts.SHARE, Expr.constant(TreeCounts.MOST_SHARE)),
                    "the trees need more ground than the field's area: number, spacing or area is wrong, and with it what is"
                            + " sprayed or spread there."),
            SprayRules.caution(
                    SprayRules.less(TreeCounts.SHARE, Expr.constant(TreeCounts.LEAST_SHARE)),
                    "the trees fill much less than the field's area, by which spray and product are reckoned: are all"
                            + " counted, and is Area the net area of the rows?"),
            SprayRules.caution(
                    Condition.all(
                            List.of(new Condition.Blank(Quantities.AREA), new Condition.Given(TreeCounts.TREE_AREA))),
                    "no area is typed, so nothing else is reckoned for this field: if it is the area by its trees, type that"
                            + " in Area of Fields."));

    /** One row per field whose trees or their spacing are typed. */
    static final TableSpec COUNTS = new TableSpec(
            "tree-areas",
            "Tree areas",
            "Tree areas: ground by the number and spacing of trees, and trees on a hectare",
            "one row per field with a number of trees or a tree spacing",
            Sentences.appended(
                    List.of(
                            Names.name(Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING)),
                            Names.FIELD,
                            SprayColumns.ROW_SPACING,
                            Names.link(Quantities.TREE_SPACING, Candidate.typed(Role.FIELD, Fields.TREE_SPACING)),
                            Names.dispensable(Quantities.TREES, Candidate.typed(Role.FIELD, Fields.TREES)),
                            Names.dispensable(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                            result(TreeCounts.TREES_PER_HECTARE),
                            TableColumn.Calculated.aside(TreeCounts.AREA_BY_TREES),
                            TableColumn.Calculated.aside(TreeCounts.SHARE_OF_FIELD),
                            TableColumn.Calculated.aside(TreeCounts.TREES_FOR_AREA)),
                    RULES),
            List.of(),
            List.of(
                    "Which hectares a label or permit means, of the field, of the planted rows or of the leaf wall, its own"
                            + " text and the law of the place say. Spray and product are reckoned by the Area of Fields."),
            RULES);
}
