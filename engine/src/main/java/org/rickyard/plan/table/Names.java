package org.rickyard.plan.table;

import java.util.List;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.TableColumn.Name;
import org.rickyard.trade.Quantities;

/** The identity columns that several tables share. */
public final class Names {
    private Names() {}

    /** The holding of the row's field, or else of its job. */
    public static final Name FIELD_HOLDING = name(
            Quantities.HOLDING, Candidate.typed(Role.FIELD, Fields.HOLDING), Candidate.typed(Role.JOB, Jobs.HOLDING));
    /** The holding of the row's machine. */
    public static final Name MACHINE_HOLDING =
            name(Quantities.HOLDING, Candidate.typed(Role.MACHINE, Machines.HOLDING));
    /** The holding of the row's clamp. */
    public static final Name CLAMP_HOLDING = name(Quantities.HOLDING, Candidate.typed(Role.CLAMP, Clamps.HOLDING));
    /** The row's field. */
    public static final Name FIELD = name(Quantities.FIELD, Candidate.typed(Role.FIELD, Fields.FIELD));
    /** The row's machine. */
    public static final Name MACHINE = name(Quantities.MACHINE, Candidate.typed(Role.MACHINE, Machines.MACHINE));
    /** The name of the row's job. */
    public static final Name JOB = name(Quantities.JOB, Candidate.typed(Role.JOB, Jobs.JOB));
    /** What is done. */
    public static final Name OPERATION = name(Quantities.OPERATION, Candidate.typed(Role.JOB, Jobs.OPERATION));
    /** The row's clamp. */
    public static final Name CLAMP = name(Quantities.CLAMP, Candidate.typed(Role.CLAMP, Clamps.CLAMP));

    /** The type of the row's machine. */
    public static final TableColumn.Word MACHINE_TYPE =
            new TableColumn.Word(Quantities.MACHINE_TYPE, List.of(Candidate.typed(Role.MACHINE, Machines.TYPE)));

    /** What the row's machine is among those of its type. */
    public static final TableColumn.Word KIND_OF_MACHINE =
            new TableColumn.Word(Quantities.KIND_OF_MACHINE, List.of(Candidate.typed(Role.MACHINE, Machines.TYPE)));

    /** A name, from the first of these places that is filled in. */
    public static Name name(Symbol symbol, Candidate... places) {
        return new Name(symbol, List.of(places));
    }

    /** A number without which the results that read it are withheld, from the first of these places that is filled in. */
    public static TableColumn.Link link(Symbol symbol, Candidate... places) {
        return new TableColumn.Link(symbol, List.of(places), false);
    }

    /** One that may be left blank where a row is reckoned another way; nothing stands in for it. */
    public static TableColumn.Link dispensable(Symbol symbol, Candidate... places) {
        return dispensable(link(symbol, places));
    }

    /** The same link where something is reckoned another way if it is blank, but not if it cannot be read. */
    public static TableColumn.Link dispensable(TableColumn.Link link) {
        return new TableColumn.Link(link.symbol(), link.places(), true, false);
    }

    /** A number that may be left blank, for then something stands in for it. */
    public static TableColumn.Link optional(Symbol symbol, Candidate... places) {
        return new TableColumn.Link(symbol, List.of(places), true);
    }
}
