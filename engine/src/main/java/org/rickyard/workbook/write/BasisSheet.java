package org.rickyard.workbook.write;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.audit.BasisPlaces;
import org.rickyard.formula.Checked;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Numbers;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Scaling;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ConstantsInForce;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.catalogue.Catalogue;
import org.rickyard.workbook.graft.CellLook;

/** Basis: the constants, conversions, reference tables and formulas all results rest on, with their sources. */
final class BasisSheet implements BasisPlaces {
    static final String TITLE = "Basis: what every result rests on";

    private static final int FIRST_CONSTANT = 4;
    /** Of a constant told as it is. */
    private static final int MOST_DECIMALS = 8;

    private static final List<List<Unit>> CONVERSIONS = List.of(
            List.of(Units.AC, Units.HA),
            List.of(Units.FT, Units.M),
            List.of(Units.IN, Units.M),
            List.of(Units.MPH, Units.KM_PER_H),
            List.of(Units.GAL_UK, Units.L),
            List.of(Units.GAL_US, Units.L),
            List.of(Units.PT_UK, Units.L),
            List.of(Units.FL_OZ_UK, Units.L),
            List.of(Units.LB, Units.KG),
            List.of(Units.OZ, Units.KG),
            List.of(Units.CWT, Units.KG),
            List.of(Units.LONG_TON, Units.T),
            List.of(Units.SHORT_TON, Units.T),
            List.of(Units.YD3, Units.M3),
            List.of(Units.FT3, Units.M3),
            List.of(Units.HP, Units.KW));

    private final String sheet;
    private final List<Constant> constants = WorkPlan.constants();
    private final Map<Constant, Integer> constantRows = new HashMap<>();
    private final Map<ReferenceTable, Integer> tableRows = new HashMap<>();
    private final List<ReferenceTable> tables = Catalogue.tables();

    /** Lays the sheet out; the places do not depend on the data. */
    BasisSheet(String sheet) {
        this.sheet = sheet;
        for (int i = 0; i < constants.size(); i++) {
            constantRows.put(constants.get(i), FIRST_CONSTANT + i);
        }
        int row = FIRST_CONSTANT + constants.size() + 1 + 2 + CONVERSIONS.size() + 1 + 1;
        for (ReferenceTable table : tables) {
            tableRows.put(table, row + 2);
            row += 2 + table.rows().size() + 1;
        }
    }

    @Override
    public CellAddress constant(Constant constant) {
        return new CellAddress(sheet, constantRows.get(constant), 1);
    }

    @Override
    public String keys(ReferenceTable table) {
        return range(table, "$A$");
    }

    @Override
    public String values(ReferenceTable table) {
        return range(table, "$B$");
    }

    private String range(ReferenceTable table, String column) {
        int first = tableRows.get(table) + 1;
        int last = first + table.rows().size() - 1;
        return CellAddress.quoted(sheet) + "!" + column + first + ":" + column + last;
    }

    /** The sheet itself. */
    PlainSheet build(Looks.Numbers looks, ConstantsInForce inForce) {
        PlainSheet basis = new PlainSheet(looks, List.of(44, 16, 14, 70, 60, 34), 1);
        basis.line().text(Looks.TITLE, TITLE).height(22);
        basis.line()
                .text(
                        Looks.TEXT,
                        "Constants may be overruled by their name on a sheet called Assumptions (Item, Value, Unit).");
        basis.line().text(Looks.HEADING, "Constants");
        head(basis, "Name", "Value", "Unit", "Source", "Overruled by", "");
        for (Constant constant : constants) {
            constant(basis, constant, inForce);
        }
        basis.line();
        basis.line().text(Looks.HEADING, "Conversions (exact by definition)");
        head(basis, "One", "is", "", "", "", "");
        for (List<Unit> pair : CONVERSIONS) {
            Ratio ratio = pair.get(0).ratioTo(pair.get(1));
            basis.line()
                    .text(Looks.NAME, "1 " + pair.get(0))
                    .number(Looks.CONSTANT, Scaling.of(ratio).apply(1))
                    .text(Looks.NAME, pair.get(1).toString());
        }
        basis.line();
        basis.line().text(Looks.HEADING, "Reference tables");
        for (ReferenceTable table : tables) {
            table(basis, table);
        }
        formulas(basis);
        return basis;
    }

    private static void head(PlainSheet basis, String... labels) {
        PlainSheet.Line line = basis.line();
        for (String label : labels) {
            if (!label.isEmpty()) {
                line.text(Looks.LABEL, label);
            }
        }
    }

    private void constant(PlainSheet basis, Constant constant, ConstantsInForce inForce) {
        if (basis.next() != constantRows.get(constant)) {
            throw new IllegalStateException("Basis is laid out otherwise than it is written: " + constant.name());
        }
        PlainSheet.Line line = basis.line().text(Looks.NAME_WRAPPED, constant.name());
        Optional<ConstantsInForce.Overruled> overruled = inForce.overruled(constant);
        String held = Numbers.exact(constant.value());
        CellLook look = held.length() - held.indexOf('.') > MOST_DECIMALS + 1 && held.contains(".")
                ? Looks.FRACTION
                : Looks.CONSTANT;
        if (overruled.isPresent()) {
            line.formula(look, byContents(constant, overruled.get(), null, held, held), inForce.value(constant));
        } else {
            line.number(look, constant.value());
        }
        String unit = constant.unit().symbol();
        line.text(Looks.UNIT, unit.isEmpty() ? "-" : unit)
                .text(Looks.TEXT_WRAPPED, constant.source().toString());
        String impossible = "\"not used: possible is " + constant.possible().words() + "\"";
        overruled.ifPresent(found -> line.linkTo(found.cell())
                .formula(
                        Looks.CAUTION, byContents(constant, found, "\"\"", impossible, "\"not used: no number\""), ""));
    }

    /** One of three, by what the client's cell holds at the time; the first is its number if none is given. */
    private static String byContents(
            Constant constant, ConstantsInForce.Overruled by, String usable, String impossible, String noNumber) {
        String cell = by.cell().absolute();
        String value = cell + by.scaling().cell();
        return LinkFormula.byContents(
                cell, value, constant.possible(), usable == null ? value : usable, impossible, noNumber);
    }

    private void table(PlainSheet basis, ReferenceTable table) {
        basis.line()
                .text(Looks.HEADING, table.name())
                .skip()
                .skip()
                .text(Looks.TEXT_WRAPPED, table.source().toString());
        head(basis, label(table.keyName(), table.keyUnit()), label(table.valueName(), table.valueUnit()));
        if (basis.next() != tableRows.get(table)) {
            throw new IllegalStateException("Basis is laid out otherwise than it is written: " + table.name());
        }
        for (ReferenceTable.Row row : table.rows()) {
            PlainSheet.Line line = basis.line();
            if (row.word() != null) {
                line.text(Looks.CONSTANT, row.word());
            } else {
                line.number(Looks.CONSTANT, row.key());
            }
            if (row.text() != null) {
                line.text(Looks.CONSTANT, row.text());
            } else {
                line.number(Looks.CONSTANT, row.value());
            }
        }
        basis.line();
    }

    private static String label(String name, Unit unit) {
        return unit.symbol().isEmpty() ? name : name + " (" + unit + ")";
    }

    private static void formulas(PlainSheet basis) {
        basis.line().text(Looks.HEADING, "Formulas");
        head(basis, "Result", "Unit", "Id", "In words", "Source", "Checked against");
        for (Formula formula : Catalogue.all()) {
            String unit = formula.result().unit().symbol();
            basis.line()
                    .text(Looks.NAME_WRAPPED, formula.result().name())
                    .text(Looks.UNIT, unit.isEmpty() ? "-" : unit)
                    .text(Looks.TEXT, formula.id())
                    .text(Looks.TEXT_WRAPPED, formula.words())
                    .text(Looks.TEXT_WRAPPED, formula.source() + ". Valid: " + formula.validity())
                    .text(Looks.TEXT, Checked.words(formula));
        }
    }
}
