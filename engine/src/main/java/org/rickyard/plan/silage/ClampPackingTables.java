package org.rickyard.plan.silage;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.Filling;
import org.rickyard.trade.silage.Packing;
import org.rickyard.trade.silage.PackingModel;
import org.rickyard.trade.silage.Rolling;
import org.rickyard.trade.workrate.GangDays;
import org.rickyard.trade.workrate.GangRates;

/** How well each clamp is packed, and whether the rollers keep up with the delivery. */
public final class ClampPackingTables {
    private ClampPackingTables() {}

    private static final List<CautionRule> DENSITY_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.is(ClampTables.CROPS, CropRows.OTHER_CROP),
                    "chop length and the pH found on farms are printed for grass, and this clamp takes another crop: ask"
                            + " for its own. R. Muck as reported wants a pH below 4.25 of maize as of grass at 25 %"
                            + " dry matter, 4.60 at 35 %; of lucerne below 4.40 and 5.00."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(value(Packing.PORES), Relation.AT_LEAST, constant(Packing.MOST_PORES)),
                    "porosity 40 % or more: air gets in, heating and loss follow; pack denser or feed out faster."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.below(value(ClampContents.DENSITY_DM), constant(Packing.LEAST)),
                    "below 200 kg dry matter per m3, the least the Austrian chambers ask of a clamp."));

    /** One row per clamp. */
    static final TableSpec DENSITY = new TableSpec(
            "clamp-density",
            "Clamp density",
            "Clamp density: pores, targets, what others print, chop and pH",
            "one row per clamp",
            Sentences.appended(
                    ClampJoin.columns(
                            new TableColumn.Word(ClampTables.CROPS, List.of()),
                            ClampJoin.from(ClampContents.CLAMP_DM),
                            ClampJoin.from(ClampContents.DENSITY),
                            ClampJoin.from(ClampContents.DENSITY_DM),
                            new TableColumn.Calculated(Packing.SPACE_TAKEN_UP, false),
                            new TableColumn.Calculated(Packing.POROSITY, true),
                            new TableColumn.Calculated(Packing.DENSITY_RANGE, true),
                            new TableColumn.Calculated(Packing.DENSITY_ABOVE_TARGET, true),
                            new TableColumn.Calculated(Packing.DENSITY_ABOVE_LEAST, true),
                            TableColumn.Calculated.aside(Packing.STORAGE_LOSS_BY_DENSITY),
                            new TableColumn.Calculated(Filling.CHOP_LENGTH, true),
                            new TableColumn.Calculated(Filling.PH_EXPECTED, true),
                            TableColumn.Calculated.aside(Filling.PH_TO_STAY_BELOW)),
                    DENSITY_RULES),
            List.of(),
            Cautions.CLAMPS,
            DENSITY_RULES);

    private static final List<CautionRule> ROLLING_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(value(Filling.DELIVERY_USED), value(Rolling.CAPACITY)),
                    "more crop arrives than the rolling weight takes even by the lenient rule: slow down or add weight."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(
                            value(Quantities.DELIVERY), value(Filling.GANG_CROP).over(Filling.GANG_HOURS_UNHELD)),
                    "the delivery typed is more than the gangs of the job list bring (sheet Gangs)."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.above(value(Filling.DELIVERY_UNHELD), value(Rolling.CAPACITY)),
                            new Condition.Not(Condition.above(value(Filling.DELIVERY_USED), value(Rolling.CAPACITY))))),
                    "forager and trailers could bring more than the rolling weight takes even by the lenient rule, and"
                            + " are reckoned as waiting for it. If they do not wait, the clamp is rolled too little and"
                            + " heats: add weight, or agree a slower pace."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(value(Rolling.LAYER_USED), Relation.MORE, new Expr.AsUnit(number(30), Units.CM)),
                    "layer thicker than 30 cm, the most that is advised."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(value(Filling.DAYS_OPEN), constant(Filling.MOST_DAYS)),
                    "open for more than three days while it is filled: sheet it overnight, or split it."));

    /** Id of the table of rollers. */
    private static final String ROLLERS_ID = "clamp-rollers";

    /** One row per clamp for which it is known what rolls it. */
    static final TableSpec ROLLERS = new TableSpec(
            ROLLERS_ID,
            "Clamp rollers",
            "Clamp rollers: what the rolling weight of each clamp can take, by three rules",
            "one row per clamp for which a roller is known",
            Sentences.appended(
                    List.of(
                            Names.CLAMP_HOLDING,
                            Names.CLAMP,
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            Names.MACHINE,
                            ClampJoin.optional(Quantities.ROLLER_MASS, Clamps.ROLLER_MASS),
                            Names.dispensable(Quantities.MASS, Candidate.typed(Role.MACHINE, Machines.MASS)),
                            Names.optional(
                                    Quantities.NUMBER_OF_MACHINES, Candidate.typed(Role.MACHINE, Machines.NUMBER)),
                            new TableColumn.Calculated(Rolling.ROLLING_MASS, false),
                            new TableColumn.Calculated(Rolling.ROLLING_CAPACITY, true),
                            new TableColumn.Calculated(Rolling.ROLLING_CAPACITY_THIRD, true),
                            new TableColumn.Calculated(Rolling.ROLLING_CAPACITY_FORTY, true)),
                    List.of()),
            List.of(),
            Cautions.CLAMPS,
            List.of());

    /** One row per clamp for which a roller or a delivery is known: typed, or from the machine and job lists. */
    static final TableSpec ROLLING = new TableSpec(
            "clamp-rolling",
            "Clamp rolling",
            "Clamp rolling: what the rollers can take, what the delivery needs, hours to fill",
            "one row per clamp that is rolled or delivered to",
            Sentences.appended(
                    rolled(
                            ClampJoin.optional(Quantities.LAYER, Clamps.LAYER),
                            ClampJoin.from(ClampSides.HEIGHT),
                            ClampJoin.from(ClampContents.CROP_IN),
                            ofRollers(Rolling.CAPACITY),
                            ofRollers(Rolling.CAPACITY_THIRD),
                            ofRollers(Rolling.CAPACITY_FORTY),
                            new TableColumn.Calculated(Rolling.ROLLING_WEIGHT_NEEDED, true),
                            new TableColumn.Calculated(Rolling.ROLLING_WEIGHT_THIRD, true),
                            new TableColumn.Calculated(Rolling.ROLLING_WEIGHT_FORTY, true),
                            new TableColumn.Calculated(Rolling.LAYER_RECKONED, false),
                            new TableColumn.Calculated(Rolling.LAYER_COUNT, true),
                            new TableColumn.Calculated(Filling.FILLING_HOURS, true),
                            ofGangs(Filling.GANG_DAYS, GangDays.DAYS_OF_GANG),
                            Names.optional(
                                    Quantities.HOURS_PER_DAY, Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                            new TableColumn.Calculated(Filling.FILLING_HOURS_A_DAY, false),
                            new TableColumn.Calculated(Filling.DAYS_LIES_OPEN, true),
                            ofGangs(Filling.GANG_HOURS_UNHELD, GangRates.UNHELD_HOURS),
                            TableColumn.Calculated.aside(Filling.DELIVERY_IF_UNHELD)),
                    ROLLING_RULES),
            List.of(),
            Cautions.CLAMPS,
            ROLLING_RULES);

    /** One row per clamp with a roller mass and a delivery, if the workbook asks for the model. */
    static final TableSpec ESTIMATE = new TableSpec(
            "packing-estimate",
            "Packing estimate",
            "Packing estimate: unverified, from memory; the paper explains 18.2 % of the variance",
            "one row per clamp with a roller mass and a delivery",
            Sentences.appended(
                    rolled(
                            ClampJoin.optional(Quantities.LAYER, Clamps.LAYER),
                            ClampJoin.from(ClampSides.HEIGHT),
                            ClampJoin.from(ClampContents.CLAMP_DM),
                            new TableColumn.Calculated(Rolling.LAYER_RECKONED, false),
                            new TableColumn.Calculated(PackingModel.PACKING_FACTOR, true),
                            new TableColumn.Calculated(PackingModel.PACKED_DENSITY, true)),
                    List.of()),
            List.of(),
            List.of("Unverified coefficients from memory: an estimate, no measurement. Core the clamp to know its"
                    + " density."),
            List.of());

    /** What rolls and what arrives, typed for the clamp or found in the machine and job lists; then these. */
    private static List<TableColumn> rolled(TableColumn... further) {
        List<TableColumn> all = new ArrayList<>(ClampJoin.columns(
                ClampJoin.optional(Quantities.DELIVERY, Clamps.DELIVERY),
                new TableColumn.Joined(
                        Filling.GANG_FIELDS,
                        new Expr.Count(GangRates.GANGS, GangRates.GANG_CROP, Keys.CLAMP_KEY, Keys.CLAMP_KEY, false)),
                ofGangs(Filling.GANG_CROP, GangRates.GANG_CROP),
                ofGangs(Filling.GANG_HOURS, GangRates.GANG_HOURS),
                ofRollers(Rolling.MASS_USED),
                new TableColumn.Calculated(Filling.DELIVERY_RECKONED, true)));
        all.addAll(Arrays.asList(further));
        return all;
    }

    /** What the rollers of the row's clamp come to. */
    public static TableColumn ofRollers(Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.Total(ROLLERS_ID, symbol, Keys.CLAMP_KEY, Keys.CLAMP_KEY, true));
    }

    private static TableColumn ofGangs(Symbol symbol, Symbol there) {
        return new TableColumn.Joined(
                symbol, new Expr.Total(GangRates.GANGS, there, Keys.CLAMP_KEY, Keys.CLAMP_KEY, true));
    }
}
