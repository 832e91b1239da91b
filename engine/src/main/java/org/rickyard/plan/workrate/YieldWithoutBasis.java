package org.rickyard.plan.workrate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.plan.fit.PlanContext;
import org.rickyard.plan.join.CutsMet;
import org.rickyard.plan.join.FieldYields;
import org.rickyard.plan.join.JobLines;

/**
 * Says of fields that are combined or baled that their yield is used for nothing, where it does not say what it was
 * weighed as: the tonnes an hour of such a machine are told where they can be and asked for by nobody else.
 */
final class YieldWithoutBasis {
    private static final Set<String> BRING_IN_DRY = Set.of("combine", "baler");

    private YieldWithoutBasis() {}

    /**
     * Tells it once of all of them.
     *
     * @param met which cut of the list Cuts each line is
     */
    static void tell(PlanContext plan, List<JobLines.Line> lines, CutsMet met) {
        int[] cut = met.rows();
        ListRows fields = plan.rows(Fields.LIST);
        ListRows cuts = plan.rows(Cuts.LIST);
        ListRows machines = plan.rows(Machines.LIST);
        Set<Integer> unsaid = new LinkedHashSet<>();
        for (int i = 0; i < cut.length; i++) {
            JobLines.Line line = lines.get(i);
            boolean asked = machines.isFilled(Machines.OUTPUT, line.machine())
                    || fields.isFilled(Fields.CLAMP, line.field())
                    || fields.isFilled(Fields.YIELD_BASIS, line.field());
            if (!asked
                    && cut[i] < 0
                    && met.perhaps()[i] == null
                    && BRING_IN_DRY.contains(machines.text(Machines.TYPE, line.machine()))
                    && fields.gives(Fields.YIELD, line.field())
                    && FieldYields.basis(fields, line.field(), cuts, cut[i]).isEmpty()) {
                unsaid.add(line.field());
            }
        }
        if (!unsaid.isEmpty()) {
            int first = unsaid.iterator().next();
            plan.findings()
                    .add(Finding.note(
                            fields.address(Fields.YIELD, first).orElse(null),
                            "the yield of '" + fields.text(Fields.FIELD, first) + "'"
                                    + Counted.othersThan(unsaid.size(), "field")
                                    + " is used for nothing, since it does not say what it was weighed as. Write it in"
                                    + " Yield basis (of grain, hay and straw as carted fresh), and the tonnes an hour"
                                    + " stand on Work rates."));
        }
    }
}
