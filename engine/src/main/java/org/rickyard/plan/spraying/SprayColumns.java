package org.rickyard.plan.spraying;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.spraying.SprayQuality;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.spraying.TestRun;

/** Columns that several tables of spraying have alike. */
final class SprayColumns {
    private SprayColumns() {}

    static final TableColumn.Name BLOCK = Names.name(
            Quantities.BLOCK, Candidate.typed(Role.JOB, Jobs.BLOCK), Candidate.typed(Role.FIELD, Fields.BLOCK));
    static final TableColumn.Link AREA = Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA));
    static final TableColumn.Link ROW_SPACING =
            Names.link(Quantities.ROW_SPACING, Candidate.typed(Role.FIELD, Fields.ROW_SPACING));
    /** Rows that are sprayed in bands are as far apart as those of the machine, where the field does not say. */
    static final TableColumn.Link BAND_ROW_SPACING = Names.link(
            Quantities.ROW_SPACING,
            Candidate.typed(Role.FIELD, Fields.ROW_SPACING),
            Candidate.typed(Role.MACHINE, Machines.ROW_WIDTH));

    static final TableColumn.Link BAND_WIDTH =
            Names.optional(Quantities.BAND_WIDTH, Candidate.typed(Role.JOB, Jobs.BAND_WIDTH));
    static final TableColumn.Link WATER_VOLUME =
            Names.link(Quantities.WATER_VOLUME, Candidate.typed(Role.JOB, Jobs.WATER_VOLUME));
    static final TableColumn.Link SPEED = Names.link(
            Quantities.SPEED, Candidate.typed(Role.JOB, Jobs.SPEED), Candidate.typed(Role.MACHINE, Machines.SPEED));
    static final TableColumn.Link WORKING_WIDTH = machine(Quantities.WORKING_WIDTH, Machines.WORKING_WIDTH);
    static final List<TableColumn> TEST_AREA = List.of(machine(Quantities.TEST_AREA, Machines.TEST_AREA));
    static final List<TableColumn> TEST_AREA_OF_RUN = List.of(
            typedOrNot(TestRun.TYPED_AREA, Machines.TEST_AREA),
            machine(Quantities.TIMED_DISTANCE, Machines.TIMED_DISTANCE),
            WORKING_WIDTH,
            step(TestRun.TESTED_AREA));
    static final List<TableColumn> TEST_AREA_OF_TURNS = List.of(
            typedOrNot(TestRun.TYPED_AREA, Machines.TEST_AREA),
            typedOrNot(TestRun.TYPED_DISTANCE, Machines.TIMED_DISTANCE),
            machine(Quantities.WHEEL_TURNS, Machines.WHEEL_TURNS),
            machine(Quantities.WHEEL_CIRCUMFERENCE, Machines.WHEEL_CIRCUMFERENCE),
            step(TestRun.TESTED_DISTANCE),
            WORKING_WIDTH,
            step(TestRun.TESTED_AREA));
    static final TableColumn.Link NOZZLES = machine(Quantities.NOZZLES, Machines.NOZZLES);
    static final TableColumn.Link NOZZLE_SPACING = typedOrNot(Quantities.NOZZLE_SPACING, Machines.NOZZLE_SPACING);
    static final TableColumn.Link NOZZLE_SIZE = machine(Quantities.NOZZLE_SIZE, Machines.NOZZLE_SIZE);
    static final TableColumn.Link USABLE_TANK = typedOrNot(Quantities.USABLE_TANK, Machines.USABLE_TANK);
    static final TableColumn.Link TANK = machine(Quantities.TANK_VOLUME, Machines.TANK);

    /** Where a test is told whether a tank is typed or not. */
    static final TableColumn.Link TANK_IF_ANY = Names.dispensable(TANK);

    static final TableColumn.Link LAST_TESTED = typedOrNot(Quantities.LAST_TESTED, Machines.LAST_TESTED);
    static final TableColumn.Link LOWEST_PRESSURE = typedOrNot(Quantities.LOWEST_PRESSURE, Machines.LOWEST_PRESSURE);
    static final TableColumn.Link HIGHEST_PRESSURE = typedOrNot(Quantities.HIGHEST_PRESSURE, Machines.HIGHEST_PRESSURE);
    static final TableColumn.Link SPRAY_DENSITY =
            Names.optional(Quantities.SPRAY_DENSITY, Candidate.typed(Role.JOB, Jobs.SPRAY_DENSITY));
    static final TableColumn.Link NITROGEN_SHARE =
            Names.dispensable(Quantities.NITROGEN_SHARE, Candidate.typed(Role.PRODUCT, Products.NITROGEN));
    static final TableColumn.Word LABEL_QUALITY =
            new TableColumn.Word(SprayQuality.ON_LABEL, List.of(Candidate.typed(Role.PRODUCT, Products.SPRAY_QUALITY)));
    static final TableColumn.Word NOZZLE_QUALITY = new TableColumn.Word(
            Quantities.SPRAY_QUALITY, List.of(Candidate.typed(Role.MACHINE, Machines.SPRAY_QUALITY)));

    static final TableColumn.Name PRODUCT_OF_JOB = Names.name(
            Quantities.PRODUCT,
            Candidate.typed(Role.DOSED_JOB, Jobs.PRODUCT),
            Candidate.typed(Role.MIX, Mixes.PRODUCT));
    static final TableColumn.Word UNIT_OF_PRODUCT = new TableColumn.Word(
            Quantities.PRODUCT_UNIT,
            List.of(
                    Candidate.typed(Role.DOSED_JOB, Jobs.DOSE),
                    Candidate.typed(Role.MIX, Mixes.DOSE),
                    Candidate.typed(Role.PRODUCT, Products.UNIT)));

    /** Jobs stand before mixes, and the product's own dose is only a fallback. */
    static TableColumn dose(Symbol symbol) {
        List<Candidate> places = List.of(
                Candidate.typed(Role.DOSED_JOB, Jobs.DOSE),
                Candidate.typed(Role.MIX, Mixes.DOSE),
                Candidate.fallback(Role.PRODUCT, Products.DOSE));
        return new TableColumn.Link(symbol, places, true);
    }

    static TableColumn.Link machine(Symbol symbol, org.rickyard.lists.ColumnSpec column) {
        return Names.link(symbol, Candidate.typed(Role.MACHINE, column));
    }

    static TableColumn.Link typedOrNot(Symbol symbol, org.rickyard.lists.ColumnSpec column) {
        return Names.optional(symbol, Candidate.typed(Role.MACHINE, column));
    }

    static TableColumn result(org.rickyard.formula.Formula formula) {
        return new TableColumn.Calculated(formula, true);
    }

    static TableColumn step(org.rickyard.formula.Formula formula) {
        return new TableColumn.Calculated(formula, false);
    }

    static TableColumn blockPosition() {
        return new TableColumn.Joined(
                Keys.BLOCK_POSITION, new Expr.Position(SprayTables.BLOCKS_ID, Keys.BLOCK_KEY, Keys.BLOCK_KEY));
    }

    static TableColumn fromBlock(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(SprayTables.BLOCKS_ID, symbol, Keys.BLOCK_POSITION));
    }

    static TableColumn sprayPosition() {
        return new TableColumn.Joined(
                Keys.SPRAY_POSITION, new Expr.Position(SprayWork.FIELDS, Keys.SPRAY_KEY, Keys.SPRAY_KEY));
    }

    static TableColumn fromSprayed(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(SprayWork.FIELDS, symbol, Keys.SPRAY_POSITION));
    }

    static TableColumn mixPosition() {
        return new TableColumn.Joined(
                Keys.TANK_MIX_POSITION,
                new Expr.Position(SprayTables.TANK_MIX_ID, Keys.TANK_MIX_KEY, Keys.TANK_MIX_KEY));
    }

    static TableColumn fromMix(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.From(SprayTables.TANK_MIX_ID, symbol, Keys.TANK_MIX_POSITION));
    }
}
