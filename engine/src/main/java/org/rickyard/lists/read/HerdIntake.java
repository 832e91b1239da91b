package org.rickyard.lists.read;

import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Herds;
import org.rickyard.lists.table.FoundTable;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Unit;

/** What an intake of stock is measured as, fresh or as dry matter, where the headers of its list leave it open. */
final class HerdIntake {
    private final FoundTable table;
    private final Map<ColumnSpec, List<Binding>> bindings;
    private final List<Finding> findings;

    HerdIntake(FoundTable table, Map<ColumnSpec, List<Binding>> bindings, List<Finding> findings) {
        this.table = table;
        this.bindings = bindings;
        this.findings = findings;
    }

    /** What is eaten fresh is no dry matter without the share of it: that, and not the intake, is what lacks. */
    void ask() {
        if (!bindings.containsKey(Herds.INTAKE)) {
            return;
        }
        if (bindings.containsKey(Herds.DM)) {
            bindings.get(Herds.INTAKE).forEach(this::tellIntakeOfNoUnit);
            return;
        }
        for (Binding intake : bindings.get(Herds.INTAKE)) {
            Unit unit = intake.unit().unit();
            if (unit != null
                    && unit.isCompatible(Herds.INTAKE.alternatives().get(0).unit())) {
                findings.add(Finding.caution(
                        table.address(table.headerRow(), intake.sheetColumn()),
                        Words.quoted(intake.header()) + " is read as feed as it lies, in " + unit
                                + ", and no " + table.grid().header()
                                + " DM says how much of it is dry matter, so the demand "
                                + "is given fresh"
                                + " alone, and nothing of dry matter. Add a "
                                + table.grid().header()
                                + " DM (%), or, if it is "
                                + "dry matter, write so: Intake (kg DM/day)."));
            }
        }
    }

    /** A column DM is needed for feed as it lies alone, so beside it an intake without a unit may well be that. */
    private void tellIntakeOfNoUnit(Binding intake) {
        if (intake.unit().assumed() && !ColumnUnit.saysDryMatter(intake.header())) {
            findings.add(Finding.caution(
                    table.address(table.headerRow(), intake.sheetColumn()),
                    Words.quoted(intake.header())
                            + " says no unit and is read as kg DM a day, though a "
                            + table.grid().header() + " DM stands"
                            + " beside it, which only feed as it lies has need of. If it is that, write kg fresh/day in"
                            + " the header; if it is dry matter, kg DM/day."));
        }
    }
}
