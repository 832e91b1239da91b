package org.rickyard.plan.spraying;

import static org.rickyard.plan.spraying.SprayColumns.result;
import static org.rickyard.plan.spraying.SprayColumns.step;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Mixes;
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
import org.rickyard.trade.spraying.FlowRates;
import org.rickyard.trade.spraying.SmallSprayers;
import org.rickyard.trade.spraying.SprayHours;
import org.rickyard.trade.spraying.SprayRates;
import org.rickyard.trade.spraying.SprayWeather;
import org.rickyard.trade.spraying.TankPlan;
import org.rickyard.trade.spraying.TreeSpraying;
import org.rickyard.trade.spraying.VolumeComparison;

/** The tables of volumes compared, spray hours, weather, trees and small sprayers. */
final class SprayHourTables {
    private SprayHourTables() {}

    /** Each sprayer at each water volume. */
    static final TableSpec VOLUMES = new TableSpec(
            "spray-volumes",
            "Water volumes",
            "Water volumes: low against high, all listed spraying of each sprayer",
            "one row per sprayer and water volume",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            new TableColumn.Word(VolumeComparison.VOLUME_NAME, List.of(), true),
                            Names.MACHINE_TYPE,
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            new TableColumn.Key(Quantities.WATER_VOLUME),
                            SprayColumns.USABLE_TANK,
                            SprayColumns.TANK,
                            step(TankPlan.TANK),
                            new TableColumn.Joined(VolumeComparison.AREA, VolumeComparison.ALL_AREA),
                            new TableColumn.Joined(VolumeComparison.FIXED, VolumeComparison.ALL_FIXED),
                            new TableColumn.Joined(VolumeComparison.ROUNDS, VolumeComparison.ALL_ROUNDS),
                            result(SprayRates.VOLUME_CLASS),
                            result(VolumeComparison.WATER_CARTED),
                            result(VolumeComparison.COMPARED_TANKFULS),
                            result(VolumeComparison.COMPARED_HOURS),
                            new TableColumn.Joined(VolumeComparison.AREA_OF_FIELDS, VolumeComparison.ALL_FIELDS),
                            result(VolumeComparison.COMPARED_RATE),
                            new TableColumn.Joined(VolumeComparison.PLANNED, VolumeComparison.ALL_HOURS),
                            result(VolumeComparison.HOURS_AGAINST_PLAN)),
                    List.of()),
            List.of(),
            List.of(
                    "A volume here is no choice where the label, the crop or the nozzle will not have it.",
                    "Low volumes save water, fills and hours; they want finer drops, which drift, or few coarse ones, which"
                            + " cover less, and a stronger mix, which is more dangerous to handle.",
                    "High volumes cover dense crops better, but drops run off, and fills and water carting cost hours: more"
                            + " of them may miss the days fit for spraying. Protective clothing as the label says."),
            List.of());

    private static final List<CautionRule> WINDOW_RULES = List.of(
            SprayRules.caution(
                    Condition.is(SprayHours.FIT, "does not fit"),
                    "the block takes more hours than its window has, by the figures typed."),
            SprayRules.caution(
                    SprayRules.more(SprayHours.SINCE_TEST, Expr.constant(SprayHours.TEST_HOLDS)),
                    "the sprayer's last test will be older than a test counts (see Basis: 3 years, as in the Netherlands,"
                            + " or yours of Assumptions; your country's law decides): have it tested before the job, or"
                            + " type the newer day in Last tested."),
            SprayRules.caution(
                    SprayRules.less(SprayHours.SINCE_TEST, new Expr.AsUnit(Expr.number(0), Units.D)),
                    "the day in Last tested is after the job: is the test still to come, or one of the two days wrong?"));

    /** One row per block with a first or last day. */
    static final TableSpec WINDOW = new TableSpec(
            "spray-window",
            "Spray hours",
            "Spray hours: hours wanted against the hours of the window",
            "one row per block that has a latest day, workable days, days available or hours per day",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            Names.link(Quantities.EARLIEST, Candidate.typed(Role.JOB, Jobs.EARLIEST)),
                            Names.link(Quantities.LATEST, Candidate.typed(Role.JOB, Jobs.LATEST)),
                            Names.link(Quantities.WORKABLE_DAYS, Candidate.typed(Role.JOB, Jobs.WORKABLE_DAYS)),
                            Names.optional(Quantities.DAYS_THERE_ARE, Candidate.typed(Role.JOB, Jobs.DAYS_AVAILABLE)),
                            Names.link(
                                    Quantities.HOURS_PER_DAY,
                                    Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                                    Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                            result(SprayHours.HOURS_NEEDED),
                            TableColumn.Calculated.aside(SprayHours.DAYS_IN_WINDOW),
                            result(SprayHours.HOURS_AVAILABLE),
                            result(SprayHours.SPRAY_DAYS),
                            result(SprayHours.WINDOW_FIT),
                            SprayColumns.LAST_TESTED,
                            step(SprayHours.DAYS_SINCE_TEST)),
                    WINDOW_RULES),
            List.of(),
            Cautions.SPRAYING,
            WINDOW_RULES);

    private static final List<CautionRule> WEATHER_RULES = List.of(
            SprayRules.stop(
                    Condition.is(SprayWeather.WIND_ADVICE, SprayWeather.UNSUITABLE),
                    "the wind at the boom is 20 km/h or more, which New Zealand's guide (GrowSafe) calls unsuitable: wait."
                            + " The label and the law of the place may stop you well below that."),
            SprayRules.caution(
                    Condition.any(List.of(
                            Condition.is(SprayWeather.WIND_ADVICE, SprayWeather.INCREASED),
                            Condition.is(SprayWeather.WIND_ADVICE, SprayWeather.EXTREME))),
                    "the wind at the boom is 10 km/h or more: drift grows, from 15 on extreme caution (GrowSafe); no fine"
                            + " drops, mind what lies downwind, and read the label for its own limit."),
            SprayRules.caution(
                    Condition.is(SprayWeather.WIND_ADVICE, SprayWeather.STILL),
                    "hardly any wind: in an inversion fine drops hang and drift far. Look for smoke or mist that hangs; medium"
                            + " or coarse drops only (GrowSafe)."),
            SprayRules.caution(
                    SprayRules.more(SprayWeather.DELTA_T, Expr.constant(SprayWeather.TOO_HIGH_DELTA_T)),
                    "Delta-T above 10: drops dry away; the Australian guide advises against spraying."),
            SprayRules.caution(
                    Condition.all(List.of(
                            SprayRules.more(SprayWeather.DELTA_T, Expr.constant(SprayWeather.HIGH_DELTA_T)),
                            new Condition.Not(SprayRules.more(
                                    SprayWeather.DELTA_T, Expr.constant(SprayWeather.TOO_HIGH_DELTA_T))))),
                    "Delta-T above 8: drops dry fast."),
            SprayRules.caution(
                    SprayRules.less(SprayWeather.DELTA_T, Expr.constant(SprayWeather.LOW_DELTA_T)),
                    "Delta-T below 2: very damp air; drops live long and drift far, and an inversion is likely."),
            SprayRules.caution(
                    Condition.all(List.of(
                            SprayRules.more(Quantities.AIR_TEMPERATURE, Expr.constant(SprayWeather.HOT_AIR)),
                            SprayRules.less(Quantities.HUMIDITY, Expr.constant(SprayWeather.DRY_AIR)))),
                    "hotter than 25 °C and drier than 40 %: Ontario's ministry advises against spraying."));

    /** One row per block whose job says something of the weather. */
    static final TableSpec WEATHER = new TableSpec(
            "spray-weather",
            "Spray weather",
            "Spray weather: cautions from the figures typed, never a permission",
            "one row per block whose job has wind, temperature or humidity",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            Names.link(Quantities.WIND_SPEED, Candidate.typed(Role.JOB, Jobs.WIND_SPEED)),
                            Names.link(Quantities.WIND_HEIGHT, Candidate.typed(Role.JOB, Jobs.WIND_HEIGHT)),
                            Names.link(Quantities.AIR_TEMPERATURE, Candidate.typed(Role.JOB, Jobs.AIR_TEMPERATURE)),
                            Names.link(Quantities.HUMIDITY, Candidate.typed(Role.JOB, Jobs.HUMIDITY)),
                            result(SprayWeather.BOOM_WIND),
                            result(SprayWeather.WIND_CAUTION),
                            result(SprayWeather.WET_BULB_TEMPERATURE),
                            result(SprayWeather.DELTA)),
                    WEATHER_RULES),
            List.of(),
            List.of(
                    "Measured at the place and on the day by the operator; a forecast is for 10 m, not for the boom.",
                    "Never in an inversion: most nights from an hour or two before sunset to an hour after sunrise (GRDC)."
                            + " Look for smoke or mist that hangs.",
                    "These cautions come from guides of several countries; the label and the law of the place decide. No"
                            + " line here is leave to spray."),
            WEATHER_RULES);

    private static final List<CautionRule> TREE_RULES = List.of(
            SprayRules.caution(
                    Condition.compare(
                            Expr.value(Quantities.TREE_WIDTH),
                            Condition.Relation.MORE,
                            Expr.value(Quantities.ROW_SPACING)),
                    "the trees are wider than the rows are apart: one of the two is wrong."),
            SprayRules.caution(
                    Condition.any(List.of(
                            SprayRules.less(Quantities.WORKING_WIDTH, Quantities.ROW_SPACING),
                            SprayRules.more(Quantities.WORKING_WIDTH, Expr.value(Quantities.ROW_SPACING)))),
                    "the sprayer's working width is not the row spacing: flow goes by the row spacing here, by the working"
                            + " width on Spray blocks, and so do the hours. Type the width really covered as both."));

    /** One row per job and field of trees. */
    static final TableSpec TREES = new TableSpec(
            "tree-spraying",
            "Trees",
            "Trees and bushes: volume and wall of leaf, dilute volume, flow per side and nozzle",
            "one row per job, field and air-blast sprayer",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.FIELD,
                            Names.MACHINE,
                            new TableColumn.Key(Keys.SPRAY_KEY),
                            Names.link(Quantities.TREE_HEIGHT, Candidate.typed(Role.FIELD, Fields.TREE_HEIGHT)),
                            Names.link(Quantities.TREE_WIDTH, Candidate.typed(Role.FIELD, Fields.TREE_WIDTH)),
                            SprayColumns.ROW_SPACING,
                            SprayColumns.typedOrNot(Quantities.WORKING_WIDTH, Machines.WORKING_WIDTH),
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.SPEED,
                            SprayColumns.NOZZLES,
                            result(TreeSpraying.ROW_VOLUME),
                            result(TreeSpraying.WALL_AREA),
                            result(TreeSpraying.DILUTE_VOLUME),
                            result(TreeSpraying.CONCENTRATION),
                            result(TreeSpraying.AIRBLAST_FLOW),
                            result(TreeSpraying.PER_SIDE),
                            result(TreeSpraying.PER_NOZZLE)),
                    TREE_RULES),
            List.of(),
            Cautions.TREES,
            TREE_RULES);

    /** One row per block of a knapsack. */
    static final TableSpec KNAPSACK = new TableSpec(
            "knapsack",
            "Knapsack",
            "Knapsack: ground covered by one fill (the product for it stands on Tank fills)",
            "one row per block sprayed by knapsack",
            Sentences.appended(
                    List.of(
                            Names.FIELD_HOLDING,
                            Names.JOB,
                            Names.MACHINE,
                            SprayColumns.BLOCK,
                            new TableColumn.Key(Keys.BLOCK_KEY),
                            SprayColumns.WATER_VOLUME,
                            SprayColumns.USABLE_TANK,
                            SprayColumns.TANK,
                            step(TankPlan.TANK),
                            result(SmallSprayers.KNAPSACK_AREA)),
                    List.of()),
            List.of(),
            Cautions.SPRAYING,
            List.of());

    /** One row per job row with a wiper. */
    static final TableSpec WIPER = new TableSpec(
            "wiper",
            "Weed wiper",
            "Weed wiper: product for one fill, by its share of the mix",
            "one row per job row and wiper",
            Sentences.appended(
                    List.of(
                            Names.JOB,
                            Names.MACHINE,
                            Names.name(Quantities.PRODUCT, Candidate.typed(Role.JOB, Jobs.PRODUCT)),
                            Names.name(Quantities.MIX, Candidate.typed(Role.MIX, Mixes.PRODUCT)),
                            new TableColumn.Word(Quantities.PRODUCT_UNIT, List.of()),
                            Names.link(
                                    Quantities.CONCENTRATION,
                                    Candidate.typed(Role.JOB, Jobs.DOSE),
                                    Candidate.typed(Role.MIX, Mixes.DOSE)),
                            SprayColumns.USABLE_TANK,
                            SprayColumns.TANK,
                            step(TankPlan.TANK),
                            result(SmallSprayers.PRODUCT_IN_WIPER)),
                    List.of()),
            List.of(),
            Cautions.SPRAYING,
            List.of());

    /** One row per machine with a timed run. */
    static final TableSpec TIMED = new TableSpec(
            "timed-runs",
            "Timed runs",
            "Timed runs: speed by the watch",
            "one row per machine with a timed run",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.link(
                                    Quantities.TIMED_DISTANCE, Candidate.typed(Role.MACHINE, Machines.TIMED_DISTANCE)),
                            Names.link(Quantities.TIMED_SECONDS, Candidate.typed(Role.MACHINE, Machines.TIMED_SECONDS)),
                            result(SmallSprayers.SPEED_OF_RUN)),
                    List.of()),
            List.of(),
            List.of(),
            List.of());

    /** One row per machine whose flow is known. */
    static final TableSpec FLOW_RATES = new TableSpec(
            "flow-rates",
            "Flow rates",
            "Flow rates: what the flow of each sprayer puts on a hectare",
            "one row per machine with a flow",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.MACHINE_TYPE,
                            Names.optional(Quantities.TOTAL_FLOW, Candidate.typed(Role.MACHINE, Machines.TOTAL_FLOW)),
                            Names.optional(Quantities.NOZZLE_FLOW, Candidate.typed(Role.MACHINE, Machines.NOZZLE_FLOW)),
                            Names.link(Quantities.NOZZLE_SIZE, Candidate.typed(Role.MACHINE, Machines.NOZZLE_SIZE)),
                            Names.link(Quantities.PRESSURE, Candidate.typed(Role.MACHINE, Machines.WORKING_PRESSURE)),
                            Names.link(Quantities.SPEED, Candidate.typed(Role.MACHINE, Machines.SPEED)),
                            SprayColumns.WORKING_WIDTH,
                            Names.link(Quantities.NOZZLES, Candidate.typed(Role.MACHINE, Machines.NOZZLES)),
                            SprayColumns.NOZZLE_SPACING,
                            TableColumn.Calculated.aside(FlowRates.FLOW_OF_NOZZLE),
                            result(FlowRates.RATE_FROM_FLOW),
                            SprayColumns.USABLE_TANK,
                            SprayColumns.TANK_IF_ANY,
                            step(TankPlan.TANK),
                            TableColumn.Calculated.aside(FlowRates.AREA_OF_FILL_AT_FLOW)),
                    List.of()),
            List.of(),
            Cautions.SPRAYING,
            List.of());
}
