package org.rickyard.plan;

import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.TableColumn.Name;
import org.rickyard.trade.Quantities;

/** The identity columns that several tables share. */
final class Names {
    private Names() {}

    static final Name FIELD_HOLDING = name(
            Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING), Candidate.typed(Role.JOB, Jobs.HOLDING));
    static final Name MACHINE_HOLDING = name(Quantities.HOLDING, Candidate.typed(Role.MACHINE, Machines.HOLDING));
    static final Name CLAMP_HOLDING = name(Quantities.HOLDING, Candidate.typed(Role.CLAMP, Clamps.HOLDING));
    static final Name FIELD = name(Quantities.FIELD, Candidate.typed(Role.FIELD, Fields.FIELD));
    static final Name MACHINE = name(Quantities.MACHINE, Candidate.typed(Role.MACHINE, Machines.MACHINE));
    static final Name JOB = name(Quantities.JOB, Candidate.typed(Role.JOB, Jobs.JOB));
    static final Name OPERATION = name(Quantities.OPERATION, Candidate.typed(Role.JOB, Jobs.OPERATION));
    static final Name CLAMP = name(Quantities.CLAMP, Candidate.typed(Role.CLAMP, Clamps.CLAMP));

    static final TableColumn.Word MACHINE_TYPE =
            new TableColumn.Word(Quantities.MACHINE_TYPE, List.of(Candidate.typed(Role.MACHINE, Machines.TYPE)));

    static final TableColumn.Word KIND_OF_MACHINE =
            new TableColumn.Word(Quantities.KIND_OF_MACHINE, List.of(Candidate.typed(Role.MACHINE, Machines.TYPE)));

    static Name name(Symbol symbol, Candidate... places) {
        return new Name(symbol, List.of(places));
    }

    static TableColumn.Link link(Symbol symbol, Candidate... places) {
        return new TableColumn.Link(symbol, List.of(places), false);
    }

    /** One that may be left blank where a row is reckoned another way; nothing stands in for it. */
    static TableColumn.Link dispensable(Symbol symbol, Candidate... places) {
        return new TableColumn.Link(symbol, List.of(places), true, false);
    }

    static TableColumn.Link optional(Symbol symbol, Candidate... places) {
        return new TableColumn.Link(symbol, List.of(places), true);
    }
}
