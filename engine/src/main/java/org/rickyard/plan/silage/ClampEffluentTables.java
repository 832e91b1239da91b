package org.rickyard.plan.silage;

import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.Effluent;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.SilageCautions;

/** What runs out of each clamp, the tank the law asks behind it, and the tanks that several share. */
final class ClampEffluentTables {
    private ClampEffluentTables() {}

    private static final String EFFLUENT_ID = "clamp-effluent";

    /** The law on pits: a stop or a caution on the plan, never on the arithmetic. */
    static final List<CautionRule> PIT_LAW = List.of(
            new CautionRule(
                    Severity.STOP,
                    pitIn(EffluentTank.ENGLAND, EffluentTank.WALES),
                    "new earth-banked pits have been barred in England and Wales since 1991 (press), and an unlined pit"
                            + " cannot comply: do not dig before the regulator agrees in writing."),
            new CautionRule(
                    Severity.STOP,
                    pitIn(EffluentTank.NORTHERN_IRELAND, EffluentTank.SCOTLAND),
                    "an unlined pit cannot comply here; lined earth walls with base, channels and tank may: do not dig"
                            + " before the regulator agrees."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT),
                            new Condition.Not(Condition.any(List.of(
                                    Condition.is(Quantities.COUNTRY, EffluentTank.ENGLAND),
                                    Condition.is(Quantities.COUNTRY, EffluentTank.WALES),
                                    Condition.is(Quantities.COUNTRY, EffluentTank.SCOTLAND),
                                    Condition.is(Quantities.COUNTRY, EffluentTank.NORTHERN_IRELAND)))))),
                    "earth pit: no rule is held for this country, or none is typed; ask the regulator before digging."));

    private static final List<CautionRule> EFFLUENT_RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.compare(
                            value(Quantities.DISTANCE_TO_WATERCOURSE),
                            Relation.LESS,
                            constant(EffluentTank.LEAST_DISTANCE)),
                    "less than 10 m from water: silo, tank, channels and pipes may not lie so near."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.COUNTRY, EffluentTank.IRELAND),
                            Condition.compare(
                                    value(Quantities.DISTANCE_TO_WATERCOURSE),
                                    Relation.LESS,
                                    constant(EffluentTank.NEW_YARD_IRELAND)))),
                    "Ireland asks 50 m from water of new yards, 10 m of extensions, and 60 m from a supply source (S128, press):"
                            + " ask the Department."),
            new CautionRule(
                    Severity.CAUTION,
                    new Condition.Blank(Quantities.DISTANCE_TO_WATERCOURSE),
                    "the distance to water is not typed; a blank does not mean that there is none."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            value(ClampContents.CLAMP_DM),
                            Relation.LESS,
                            new Expr.AsUnit(number(25), Units.PERCENT_DM)),
                    "wetter than 25 % dry matter: effluent will run; wilt to at least 25 % (Defra code)."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.is(Quantities.CLAMP_KIND, ClampShape.FIELD_HEAP),
                    "field silage: 14 days' notice before first use, 10 m from water, 50 m from a protected supply"
                            + " (Wales, law; England, guidance and press). Ask the regulator."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(value(Quantities.YEAR_BUILT), Relation.AT_MOST, number(1991)),
                    "built in 1991 or before: if before March 1991 (or under a contract of before March and finished"
                            + " before September), an exemption may hold in England and Wales until it is enlarged; in"
                            + " Scotland it ended on 1.1.2022. Ask the regulator."));

    /** One row per clamp. */
    static final TableSpec EFFLUENT = new TableSpec(
            EFFLUENT_ID,
            "Clamp effluent",
            "Clamp effluent: what runs out, and the least tank by law",
            "one row per clamp",
            Sentences.appended(
                    ClampJoin.columns(
                            ClampJoin.COUNTRY,
                            new TableColumn.Key(Keys.TANK_KEY),
                            ClampJoin.link(Quantities.CLAMP_LENGTH, Clamps.LENGTH),
                            ClampJoin.link(Quantities.FLOOR_WIDTH, Clamps.FLOOR_WIDTH),
                            ClampJoin.link(Quantities.WALL_HEIGHT, Clamps.WALL_HEIGHT),
                            ClampJoin.optional(Quantities.DISTANCE_TO_WATERCOURSE, Clamps.DISTANCE_TO_WATERCOURSE),
                            ClampJoin.optional(Quantities.YEAR_BUILT, Clamps.YEAR_BUILT),
                            ClampJoin.from(ClampSides.BATTER_USED),
                            ClampJoin.from(ClampShape.VOLUME),
                            ClampJoin.from(ClampContents.CLAMP_DM),
                            ClampJoin.from(ClampContents.CROP_IN),
                            ClampJoin.from(ClampContents.CAPACITY),
                            new TableColumn.Calculated(Effluent.DRAINING, false),
                            new TableColumn.Calculated(Effluent.EFFLUENT_VOLUME, true),
                            TableColumn.Calculated.aside(Effluent.EFFLUENT_BASTIMAN),
                            TableColumn.Calculated.aside(EffluentTank.SILO),
                            new TableColumn.Calculated(EffluentTank.TANK, true),
                            new TableColumn.Calculated(EffluentTank.EFFLUENT_LAW, true)),
                    EFFLUENT_RULES),
            List.of(new TableSpec.TotalName(Effluent.VOLUME, "Rickyard_effluent")),
            SilageCautions.EFFLUENT,
            EFFLUENT_RULES);

    private static final List<CautionRule> TANK_RULES = List.of(new CautionRule(
            Severity.STOP,
            Condition.below(value(EffluentTank.TANK_HOLDS), value(EffluentTank.TANK_LARGER)),
            "the tank is smaller than the least this text asks: do not fill the silos that drain to it before the"
                    + " regulator has seen it."));

    /** One row per tank. */
    static final TableSpec TANKS = new TableSpec(
            "effluent-tanks",
            "Effluent tanks",
            "Effluent tanks: each against the silos that drain to it, singly and together",
            "one row per effluent tank",
            Sentences.appended(
                    List.of(
                            Names.CLAMP_HOLDING,
                            Names.CLAMP,
                            Names.name(Quantities.EFFLUENT_TANK, Candidate.typed(Role.CLAMP, Clamps.EFFLUENT_TANK)),
                            ClampJoin.COUNTRY,
                            new TableColumn.Key(Keys.TANK_KEY),
                            ClampJoin.optional(Quantities.EFFLUENT_TANK_VOLUME, Clamps.EFFLUENT_TANK),
                            ClampJoin.link(Quantities.NAMED_TANK_VOLUME, Clamps.NAMED_TANK_VOLUME),
                            total(EffluentTank.SILOS_TOGETHER, EffluentTank.SILO_VOLUME),
                            total(EffluentTank.TANK_SINGLY, EffluentTank.TANK_WANTED),
                            new TableColumn.Calculated(EffluentTank.TOGETHER, true),
                            new TableColumn.Calculated(EffluentTank.LARGER, true),
                            new TableColumn.Calculated(EffluentTank.HOLDS, false),
                            new TableColumn.Calculated(EffluentTank.TANK_SPARE, true)),
                    TANK_RULES),
            List.of(),
            SilageCautions.EFFLUENT,
            TANK_RULES);

    private static TableColumn total(Symbol symbol, Symbol summed) {
        return new TableColumn.Joined(symbol, new Expr.Total(EFFLUENT_ID, summed, Keys.TANK_KEY, Keys.TANK_KEY, true));
    }

    private static Condition pitIn(String country, String other) {
        return Condition.all(List.of(
                Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT),
                Condition.any(
                        List.of(Condition.is(Quantities.COUNTRY, country), Condition.is(Quantities.COUNTRY, other)))));
    }
}
