package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.fromBlock;
import static org.rickyard.plan.spraying.SprayColumns.fromMix;
import static org.rickyard.plan.spraying.SprayColumns.fromSprayed;
import static org.rickyard.plan.spraying.SprayColumns.result;
import static org.rickyard.plan.spraying.SprayColumns.step;
import static org.rickyard.plan.spraying.SprayColumns.typedOrNot;

import java.util.List;
import java.util.stream.Stream;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.Products;
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
import org.rickyard.trade.spraying.Nitrogen;
import org.rickyard.trade.spraying.SeasonDose;
import org.rickyard.trade.spraying.SprayWork;
import org.rickyard.trade.spraying.TankLoads;
import org.rickyard.trade.spraying.TankPlan;

/** The tables of spraying whose rows are fields: hours, tankfuls, records and the season's doses. */
final class SprayFieldTables {
    private SprayFieldTables() {}

    private static final TableColumn.Name PRODUCT = Names.name(
            Quantities.PRODUCT,
            Candidate.typed(Role.DOSED_JOB, Jobs.PRODUCT),
            Candidate.typed(Role.MIX, Mixes.PRODUCT));

    /** One row per job, field and sprayer. */
    static final TableSpec FIELDS = new TableSpec(
            SprayWork.FIELDS,
            "Spray fields",
            "Spray fields: what is treated, and the hours part by part",
            "one row per job, field and sprayer, in list order",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.FIELD,
                            Names.MACHINE,
                            new TableColumn.Key(Keys.SPRAY_KEY),
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            SprayColumns.AREA,
                            SprayColumns.BAND_WIDTH,
                            SprayColumns.BAND_ROW_SPACING,
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.SPEED,
                            SprayColumns.WORKING_WIDTH,
                            Names.optional(Quantities.RUN_LENGTH, Candidate.typed(Role.FIELD, Fields.RUN_LENGTH)),
                            typedOrNot(Quantities.TURN_TIME, Machines.TURN_TIME),
                            SprayColumns.USABLE_TANK,
                            SprayColumns.TANK,
                            typedOrNot(Quantities.FILL_TIME, Machines.FILL_TIME),
                            Names.optional(
                                    Quantities.DISTANCE_TO_FILL_POINT,
                                    Candidate.typed(Role.FIELD, Fields.DISTANCE_TO_FILL_POINT)),
                            typedOrNot(Quantities.ROAD_SPEED_LADEN, Machines.ROAD_SPEED_LADEN),
                            typedOrNot(Quantities.ROAD_SPEED_EMPTY, Machines.ROAD_SPEED_EMPTY),
                            typedOrNot(Quantities.MOVE_TIME, Machines.MOVE_TIME),
                            typedOrNot(Quantities.CLEANING_TIME, Machines.CLEANING_TIME),
                            result(SprayWork.TREATED),
                            new TableColumn.Joined(SprayWork.AREA_BEFORE, SprayWork.BEFORE),
                            new TableColumn.Joined(SprayWork.AREA_OF_BLOCK, SprayWork.BLOCK),
                            step(SprayWork.MIX),
                            step(TankPlan.TANK),
                            step(SprayWork.SPRAYING_TIME),
                            step(SprayWork.TURNING_TIME),
                            step(SprayWork.FILLING_TIME),
                            step(SprayWork.FETCHING_TIME),
                            step(SprayWork.MOVING_TIME),
                            step(SprayWork.CLEANING_SHARE),
                            step(SprayWork.FIXED_HOURS),
                            step(SprayWork.ROUND_WEIGHT),
                            result(SprayWork.SPRAYING_HOURS),
                            result(SprayWork.WORK_RATE),
                            result(SprayWork.SPRAYING_EFFICIENCY),
                            new TableColumn.Sentence(SprayWork.BASIS, SprayWork.LEFT_OUT)),
                    List.of()),
            List.of(new TableSpec.TotalName(SprayWork.HOURS, "Rickyard_spraying_hours")),
            Cautions.SPRAYING,
            List.of());

    /** One row per block, tankful and field. */
    static final TableSpec LOADS = new TableSpec(
            TankLoads.LOADS,
            "Tank loads",
            "Tank loads: which fields each tankful sprays",
            "one row per block, tankful and field",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.FIELD,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            new TableColumn.Key(Keys.SPRAY_KEY),
                            new TableColumn.Word(TankLoads.TANKFUL_NAME, List.of(), true),
                            new TableColumn.Key(Keys.LOAD_KEY),
                            new TableColumn.Key(TankLoads.TANKFUL),
                            SprayColumns.blockPosition(),
                            SprayColumns.sprayPosition(),
                            fromBlock(TankPlan.TANKFUL_AREA),
                            fromBlock(Quantities.WATER_VOLUME),
                            fromSprayed(SprayWork.TREATED_AREA),
                            fromSprayed(SprayWork.AREA_BEFORE),
                            result(TankLoads.FIELD_AREA),
                            result(TankLoads.FIELD_LITRES)),
                    List.of()),
            List.of(new TableSpec.TotalName(TankLoads.AREA_IN_TANKFUL, "Rickyard_area_in_tankfuls")),
            Cautions.SPRAYING,
            List.of());

    /** A label may be said in so many words to have none. */
    private static final Condition BUFFERED = Condition.all(List.of(
            new Condition.Given(Quantities.BUFFER_CATEGORY),
            new Condition.Not(Condition.any(Stream.of("none", "no", "nil", "n/a", "-")
                    .map(word -> Condition.is(Quantities.BUFFER_CATEGORY, word))
                    .toList()))));

    private static final List<CautionRule> RECORD_RULES = List.of(
            SprayRules.stop(
                    SprayRules.less(SeasonDose.INTERVAL, Quantities.LEAST_INTERVAL),
                    "too soon after the application before, by the days typed; the label's interval decides."),
            SprayRules.caution(
                    Condition.compare(
                            Expr.value(SeasonDose.INTERVAL), Relation.EQUAL, new Expr.AsUnit(Expr.number(0), Units.D)),
                    "the same product on the same field twice on one day: typed twice? Then take one away; "
                            + "otherwise mend the"
                            + " day, or mind the highest dose and the interval on the label."),
            SprayRules.stop(
                    SprayRules.less(SeasonDose.TO_HARVEST, Quantities.HARVEST_INTERVAL),
                    "too near to harvest, by the days typed; the label's harvest interval decides."),
            SprayRules.caution(
                    Condition.all(List.of(BUFFERED, new Condition.Not(new Condition.Given(Quantities.WATERCOURSE)))),
                    "the label has a buffer category and the watercourse is blank, which is not none: go and see, and"
                            + " record your own assessment."),
            SprayRules.caution(
                    Condition.all(List.of(
                            BUFFERED,
                            new Condition.Given(Quantities.WATERCOURSE),
                            new Condition.Not(Condition.is(Quantities.WATERCOURSE, "none")))),
                    "the label has a buffer category and there is a watercourse: the buffer and its assessment are yours,"
                            + " measured from the top of the bank, and are to be recorded."),
            SprayRules.caution(
                    Condition.is(Quantities.OVERHEAD_LINES, "yes"),
                    "overhead lines cross the field: look up before unfolding or raising the boom."),
            SprayRules.NITROGEN_UNTOLD);

    /** One row per job, field and product. */
    static final TableSpec APPLICATIONS = new TableSpec(
            SeasonDose.APPLICATION_TABLE,
            "Applications",
            "Applications: each product on each field, its amount, interval and days to harvest",
            "one row per job, field and product",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.FIELD,
                            PRODUCT,
                            Names.JOB,
                            Names.name(Quantities.CROP, Candidate.typed(Role.FIELD, Fields.CROP)),
                            Names.MACHINE,
                            Names.name(
                                    Quantities.BUFFER_CATEGORY,
                                    Candidate.typed(Role.PRODUCT, Products.BUFFER_CATEGORY)),
                            word(Quantities.WATERCOURSE, Candidate.typed(Role.FIELD, Fields.WATERCOURSE)),
                            word(Quantities.OVERHEAD_LINES, Candidate.typed(Role.FIELD, Fields.OVERHEAD_LINES)),
                            new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                            new TableColumn.Key(Keys.SPRAY_KEY),
                            new TableColumn.Key(Keys.TANK_MIX_KEY),
                            new TableColumn.Key(Keys.SEASON_KEY),
                            new TableColumn.Key(Keys.RECORD_KEY),
                            new TableColumn.Key(Keys.PREVIOUS_KEY),
                            new TableColumn.Key(SeasonDose.WHICH),
                            SprayColumns.sprayPosition(),
                            SprayColumns.mixPosition(),
                            new TableColumn.Joined(
                                    Keys.PREVIOUS_POSITION,
                                    new Expr.Position(
                                            SeasonDose.APPLICATION_TABLE, Keys.RECORD_KEY, Keys.PREVIOUS_KEY)),
                            day(Quantities.EARLIEST, Jobs.EARLIEST),
                            day(Quantities.LATEST, Jobs.LATEST),
                            Names.optional(
                                    Quantities.LAST_HARVEST_DATE,
                                    Candidate.typed(Role.APPLIED_JOB, Jobs.LAST_HARVEST_DATE),
                                    Candidate.typed(Role.HARVEST_JOB, Jobs.LAST_HARVEST_DATE)),
                            Names.optional(
                                    Quantities.DISTANCE_TO_WATERCOURSE,
                                    Candidate.typed(Role.FIELD, Fields.DISTANCE_TO_WATERCOURSE)),
                            Names.optional(
                                    Quantities.HIGHEST_DOSE, Candidate.typed(Role.PRODUCT, Products.HIGHEST_DOSE)),
                            Names.optional(
                                    Quantities.LEAST_INTERVAL, Candidate.typed(Role.PRODUCT, Products.LEAST_INTERVAL)),
                            Names.optional(
                                    Quantities.HARVEST_INTERVAL,
                                    Candidate.typed(Role.PRODUCT, Products.HARVEST_INTERVAL)),
                            fromSprayed(SprayWork.TREATED_AREA),
                            fromSprayed(Quantities.WATER_VOLUME),
                            fromMix(TankPlan.DOSE_USED),
                            result(SeasonDose.PRODUCT_ON_FIELD),
                            TableColumn.Calculated.aside(SeasonDose.DOSE_BAND),
                            new TableColumn.Joined(
                                    SeasonDose.DAY_BEFORE,
                                    new Expr.From(
                                            SeasonDose.APPLICATION_TABLE, Quantities.EARLIEST, Keys.PREVIOUS_POSITION)),
                            TableColumn.Calculated.aside(SeasonDose.DAYS_SINCE),
                            TableColumn.Calculated.aside(SeasonDose.DAYS_TO_HARVEST),
                            Names.dispensable(
                                    Quantities.PRODUCT_DENSITY, Candidate.typed(Role.PRODUCT, Products.DENSITY)),
                            SprayColumns.NITROGEN_SHARE,
                            TableColumn.Calculated.aside(Nitrogen.NITROGEN_SPRAYED)),
                    RECORD_RULES),
            List.of(),
            Cautions.APPLICATIONS,
            RECORD_RULES);

    /** The paper to keep: one line per job, field and product, with blanks for what only the operator knows. */
    static final TableSpec RECORDS = new TableSpec(
            "spray-records",
            "Spray records",
            "Spray records: as planned, with blanks for the operator. Copy this sheet before you write on it",
            "one line per job, field and product",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.FIELD,
                            PRODUCT,
                            Names.JOB,
                            Names.name(Quantities.CROP, Candidate.typed(Role.FIELD, Fields.CROP)),
                            Names.MACHINE,
                            Names.name(
                                    Quantities.AUTHORISATION_NUMBER,
                                    Candidate.typed(Role.PRODUCT, Products.AUTHORISATION_NUMBER)),
                            Names.name(Quantities.GROWTH_STAGE, Candidate.typed(Role.JOB, Jobs.GROWTH_STAGE)),
                            Names.name(Quantities.LATEST_STAGE, Candidate.typed(Role.PRODUCT, Products.LATEST_STAGE)),
                            Names.name(
                                    Quantities.BUFFER_CATEGORY,
                                    Candidate.typed(Role.PRODUCT, Products.BUFFER_CATEGORY)),
                            word(Quantities.WATERCOURSE, Candidate.typed(Role.FIELD, Fields.WATERCOURSE)),
                            word(Quantities.COUNTRY, Candidate.typed(Role.FIELD, Fields.COUNTRY)),
                            new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                            new TableColumn.Key(Keys.RECORD_KEY),
                            new TableColumn.Joined(
                                    Keys.RECORD_POSITION,
                                    new Expr.Position(SeasonDose.APPLICATION_TABLE, Keys.RECORD_KEY, Keys.RECORD_KEY)),
                            day(Quantities.EARLIEST, Jobs.EARLIEST),
                            fromApplication(SprayWork.TREATED_AREA),
                            fromApplication(Quantities.WATER_VOLUME),
                            fromApplication(TankPlan.DOSE_USED),
                            fromApplication(SeasonDose.ON_FIELD),
                            blank("date done"),
                            blank("start and finish time"),
                            blank("area and dose done"),
                            blank("wind at start and finish"),
                            blank("temperature, humidity"),
                            blank("nozzle and pressure"),
                            blank("operator"),
                            blank("reason or target"),
                            blank("batch number"),
                            blank("buffer assessment"),
                            blank("remarks"),
                            result(SeasonDose.RECORD_ITEMS)),
                    List.of()),
            List.of(),
            Cautions.SPRAYING,
            List.of());

    private static final List<CautionRule> SEASON_RULES = List.of(
            SprayRules.stop(
                    SprayRules.more(SeasonDose.TOTAL, Expr.value(Quantities.HIGHEST_TOTAL_DOSE)),
                    "the season's doses come to more than the highest total typed for this product; check the label."),
            SprayRules.stop(
                    SprayRules.more(SeasonDose.APPLICATIONS, Expr.value(Quantities.MOST_APPLICATIONS)),
                    "more applications than the most typed for this product; check the label."),
            SprayRules.caution(
                    Condition.all(List.of(
                            new Condition.Given(Quantities.LEAST_INTERVAL),
                            SprayRules.more(
                                    SeasonDose.APPLICATIONS,
                                    Expr.value(SeasonDose.INTERVALS).plus(Expr.number(1))))),
                    "an interval could not be checked: type the Earliest day of each of these jobs."));

    /** One row per product and field. */
    static final TableSpec SEASON = new TableSpec(
            "season-dose",
            "Season dose",
            "Season dose: all listed applications of a product to a field",
            "one row per product and field",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.FIELD,
                            PRODUCT,
                            Names.name(Quantities.CROP, Candidate.typed(Role.FIELD, Fields.CROP)),
                            new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                            new TableColumn.Key(Keys.SEASON_KEY),
                            Names.optional(
                                    Quantities.HIGHEST_TOTAL_DOSE,
                                    Candidate.typed(Role.PRODUCT, Products.HIGHEST_TOTAL_DOSE)),
                            Names.optional(
                                    Quantities.MOST_APPLICATIONS,
                                    Candidate.typed(Role.PRODUCT, Products.MOST_APPLICATIONS)),
                            Names.optional(
                                    Quantities.LEAST_INTERVAL, Candidate.typed(Role.PRODUCT, Products.LEAST_INTERVAL)),
                            new TableColumn.Joined(SeasonDose.INTERVALS, SeasonDose.INTERVALS_KNOWN),
                            result(SeasonDose.SEASON_TOTAL),
                            result(SeasonDose.APPLICATION_COUNT)),
                    SEASON_RULES),
            List.of(),
            Cautions.SPRAYING,
            SEASON_RULES);

    private static TableColumn.Word word(Symbol symbol, Candidate place) {
        return new TableColumn.Word(symbol, List.of(place));
    }

    private static TableColumn.Link day(Symbol symbol, org.rickyard.lists.ColumnSpec column) {
        return Names.optional(symbol, Candidate.typed(Role.APPLIED_JOB, column), Candidate.typed(Role.JOB, column));
    }

    private static TableColumn fromApplication(Symbol symbol) {
        return new TableColumn.Joined(
                symbol, new Expr.From(SeasonDose.APPLICATION_TABLE, symbol, Keys.RECORD_POSITION));
    }

    /** A column left empty for the operator. */
    private static TableColumn blank(String name) {
        return new TableColumn.Word(Symbol.text(name), List.of());
    }
}
