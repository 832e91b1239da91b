package org.rickyard.plan.silage;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Function;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampCrown;
import org.rickyard.trade.silage.ClampHeights;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.ClampSurface;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.Losses;
import org.rickyard.trade.silage.Packing;
import org.rickyard.trade.silage.SpoilHeap;

/** The tables of silage: one row per field and cut, one per clamp, one per pit and excavator. */
final class ClampTables {
    private ClampTables() {}

    /** The clamp proposed for a crop that names none. */
    static final Symbol PROPOSED = Symbol.text("clamp proposed (list order, to capacity)");
    /** Whether what goes into a clamp is grass. */
    static final Symbol CROPS = Symbol.text("crop in the clamp");

    private static final TableColumn.Word KIND =
            new TableColumn.Word(Quantities.CLAMP_KIND, List.of(Candidate.typed(Role.CLAMP, Clamps.KIND)));

    private static final List<CautionRule> CROP_RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.compare(
                            Expr.value(Quantities.DM_AT_ENSILING), Relation.LESS, Expr.value(Quantities.DM_AT_CUTTING)),
                    "wetter at ensiling than at cutting: crop dries as it lies; see whether the two were swapped."),
            new CautionRule(
                    Severity.CAUTION,
                    new Condition.Given(PROPOSED),
                    "no clamp is named, so one is proposed, in list order to capacity; type the clamp to settle it."));

    /** One row per field and cut; a crop that is split stands once for each clamp. */
    static final TableSpec CROP = new TableSpec(
            "crop",
            "Crop",
            "Crop for silage: each field and cut",
            "one row per field, cut and part of it",
            Sentences.appended(
                    List.of(
                            Names.name(
                                    Quantities.HOLDING,
                                    Candidate.typed(Role.FIELD, Fields.HOLDING),
                                    Candidate.typed(Role.CUT, Cuts.HOLDING)),
                            Names.FIELD,
                            Names.name(
                                    Quantities.CROP,
                                    Candidate.typed(Role.CUT, Cuts.CROP),
                                    Candidate.typed(Role.FIELD, Fields.CROP)),
                            Names.optional(Quantities.CUT_NUMBER, Candidate.typed(Role.CUT, Cuts.CUT)),
                            Names.name(
                                    Quantities.CLAMP,
                                    Candidate.typed(Role.CUT, Cuts.CLAMP),
                                    Candidate.typed(Role.FIELD, Fields.CLAMP)),
                            new TableColumn.Word(
                                    Quantities.YIELD_BASIS,
                                    List.of(
                                            Candidate.typed(Role.CUT, Cuts.YIELD_BASIS),
                                            Candidate.typed(Role.FIELD, Fields.YIELD_BASIS))),
                            new TableColumn.Word(PROPOSED, List.of()),
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            new TableColumn.Key(Crop.SHARE),
                            Names.link(Quantities.AREA, Candidate.typed(Role.FIELD, Fields.AREA)),
                            Names.link(
                                    Quantities.YIELD,
                                    Candidate.typed(Role.CUT, Cuts.YIELD),
                                    Candidate.typed(Role.FIELD, Fields.YIELD)),
                            Names.link(
                                    Quantities.YIELD_DRY_MATTER,
                                    Candidate.typed(Role.CUT, Cuts.YIELD),
                                    Candidate.typed(Role.FIELD, Fields.YIELD)),
                            Names.link(
                                    Quantities.DM_AT_CUTTING,
                                    Candidate.typed(Role.CUT, Cuts.DM_AT_CUTTING),
                                    Candidate.typed(Role.FIELD, Fields.DM_AT_CUTTING)),
                            Names.link(
                                    Quantities.DM_AT_ENSILING,
                                    Candidate.typed(Role.CUT, Cuts.DM_AT_ENSILING),
                                    Candidate.typed(Role.FIELD, Fields.DM_AT_ENSILING)),
                            new TableColumn.Calculated(Crop.STANDING_CROP, true),
                            new TableColumn.Calculated(Crop.CROP_ENSILED, true),
                            new TableColumn.Calculated(Crop.CROP_DRY_MATTER, true),
                            new TableColumn.Key(Keys.FEED_HOLDING_KEY),
                            new TableColumn.Calculated(Losses.FIELD_LOSS_LEFT, false),
                            new TableColumn.Calculated(Losses.SILAGE_FED, true)),
                    CROP_RULES),
            List.of(
                    new TableSpec.TotalName(Crop.ENSILED, "Rickyard_crop_ensiled"),
                    new TableSpec.TotalName(Crop.CROP_DM, "Rickyard_crop_dry_matter"),
                    new TableSpec.TotalName(Losses.FED, "Rickyard_silage_fed")),
            List.of(),
            CROP_RULES);

    private static final Expr WALL = Expr.value(Quantities.WALL_HEIGHT);
    private static final Expr TWICE_THE_WALL =
            Expr.constant(ClampHeights.TIMES_WALL).times(Quantities.WALL_HEIGHT);

    private static final String ABOVE_TWICE_THE_WALL = "silage above twice the wall height: do not fill so high.";
    private static final String ABOVE_THE_WALL = "silage above the wall: check the wall's loading notice.";

    private static Condition sideIsAbove(Expr wall) {
        return Condition.all(List.of(
                Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                Condition.above(Expr.value(ClampSides.HEIGHT), wall)));
    }

    /**
     * The crown is silage too. It has a rule of its own, for one that asks about the crown says nothing where that is
     * blank. Settled as it is here, the silage has stood higher on the day, which may not be known.
     */
    private static Condition crownIsAbove(Expr wall) {
        Expr side = Expr.value(ClampSides.HEIGHT);
        return Condition.all(List.of(
                Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                new Condition.Not(Condition.above(side, wall)),
                Condition.above(side.plus(Quantities.CROWN), wall)));
    }

    private static final List<CautionRule> CLAMP_RULES = List.of(
            new CautionRule(Severity.STOP, sideIsAbove(TWICE_THE_WALL), ABOVE_TWICE_THE_WALL),
            new CautionRule(Severity.STOP, crownIsAbove(TWICE_THE_WALL), ABOVE_TWICE_THE_WALL),
            new CautionRule(Severity.CAUTION, sideIsAbove(WALL), ABOVE_THE_WALL),
            new CautionRule(Severity.CAUTION, crownIsAbove(WALL), ABOVE_THE_WALL),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                            Condition.above(Expr.value(Quantities.BATTER), Expr.number(1)))),
                    "a wall that leans out by more than it rises. Here a batter is metres out for each metre up; of walls"
                            + " \"1 in 10\" is often said for 1 out in 10 up, which is a batter of 0.1."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(ClampContents.FILL), Expr.number(1)),
                    "more crop is allotted than the clamp holds."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.call(
                                    Function.ABS,
                                    Expr.value(ClampContents.DENSITY)
                                            .times(ClampContents.CLAMP_DM)
                                            .minus(Quantities.DRY_MATTER_DENSITY)),
                            Relation.MORE,
                            Expr.constant(Packing.DISAGREEMENT).times(Quantities.DRY_MATTER_DENSITY)),
                    "the fresh and the dry matter density typed do not belong together at this dry matter (more than"
                            + " 2 % apart); the fresh one is used. Check both."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(
                            Expr.call(
                                    Function.ABS,
                                    Expr.value(Quantities.DM_TARGET)
                                            .times(ClampContents.CROP_IN)
                                            .minus(ClampContents.CROP_IN_DM)),
                            Expr.constant(Packing.DRY_MATTER_OFF).times(ClampContents.CROP_IN)),
                    "the dry matter typed for the clamp is not that of the crop listed for it (its dry matter over its"
                            + " fresh mass): density, settling and effluent go by the one typed. Check both."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(CROPS, CropRows.OTHER_CROP),
                            new Condition.Blank(Quantities.FRESH_DENSITY),
                            new Condition.Blank(Quantities.SPACE_OF_A_TONNE),
                            new Condition.Blank(Quantities.DRY_MATTER_DENSITY))),
                    "the density table is for grass: type the density. For maize at 30 % DAERA printed 0.75 t/m3, for"
                            + " wholecrop at 40 % 0.67; later press 0.60 for both."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.compare(Expr.value(Quantities.RAMPS), Relation.MORE, Expr.number(0)),
                            Condition.any(List.of(
                                    Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT),
                                    Condition.is(Quantities.CLAMP_KIND, ClampShape.HEAP),
                                    Condition.is(Quantities.CLAMP_KIND, ClampShape.FIELD_HEAP))))),
                    "ramps are reckoned for walled clamps only: the ends of this one are taken as sloping like its"
                            + " sides, so ramps of another slope make it hold more or less."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.any(List.of(
                                    Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                                    Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT))),
                            Condition.above(
                                    Expr.call(
                                            Function.ABS,
                                            Expr.value(Quantities.FLOOR_WIDTH)
                                                    .plus(
                                                            Expr.number(2)
                                                                    .times(Quantities.BATTER)
                                                                    .times(Quantities.WALL_HEIGHT))
                                                    .minus(Quantities.WIDTH_AT_TOP)),
                                    Expr.constant(ClampSides.WIDTHS_APART).times(Quantities.WIDTH_AT_TOP)))),
                    "the batter and the width at the top that are typed do not belong together at this floor width and"
                            + " height; the batter is used. Check both."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            new Condition.Given(Quantities.WIDTH_AT_TOP),
                            new Condition.Not(Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED)),
                            new Condition.Not(Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT)))),
                    "the width at the top is used for walls and pits only. For a clamp measured as it lies type its mean"
                            + " width in Floor width; of a heap its Batter."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.is(Quantities.CLAMP_KIND, ClampShape.EARTH_PIT),
                    "earth pit: a new unlined pit may be barred; the local regulator decides."));

    /** One row per clamp. */
    static final TableSpec CLAMPS = new TableSpec(
            "clamps",
            "Clamp capacity",
            "Clamps: volume, density, capacity and fill",
            "one row per clamp",
            Sentences.appended(
                    List.of(
                            Names.CLAMP_HOLDING,
                            Names.CLAMP,
                            KIND,
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            Names.link(Quantities.CLAMP_LENGTH, Candidate.typed(Role.CLAMP, Clamps.LENGTH)),
                            Names.link(Quantities.FLOOR_WIDTH, Candidate.typed(Role.CLAMP, Clamps.FLOOR_WIDTH)),
                            Names.link(Quantities.WALL_HEIGHT, Candidate.typed(Role.CLAMP, Clamps.WALL_HEIGHT)),
                            Names.optional(
                                    Quantities.SETTLED_HEIGHT, Candidate.typed(Role.CLAMP, Clamps.SETTLED_HEIGHT)),
                            Names.optional(Quantities.BATTER, Candidate.typed(Role.CLAMP, Clamps.BATTER)),
                            Names.optional(Quantities.WIDTH_AT_TOP, Candidate.typed(Role.CLAMP, Clamps.TOP_WIDTH)),
                            Names.optional(Quantities.RAMPS, Candidate.typed(Role.CLAMP, Clamps.RAMPS)),
                            Names.optional(Quantities.RAMP_RUN, Candidate.typed(Role.CLAMP, Clamps.RAMP_RUN)),
                            Names.optional(Quantities.CROWN, Candidate.typed(Role.CLAMP, Clamps.CROWN)),
                            new TableColumn.Word(
                                    Quantities.CROWN_SHAPE, List.of(Candidate.typed(Role.CLAMP, Clamps.CROWN_SHAPE))),
                            new TableColumn.Word(CROPS, List.of()),
                            Names.optional(Quantities.DM_TARGET, Candidate.typed(Role.CLAMP, Clamps.DM_TARGET)),
                            Names.optional(Quantities.FRESH_DENSITY, Candidate.typed(Role.CLAMP, Clamps.FRESH_DENSITY)),
                            Names.optional(
                                    Quantities.SPACE_OF_A_TONNE, Candidate.typed(Role.CLAMP, Clamps.FRESH_DENSITY)),
                            Names.optional(
                                    Quantities.DRY_MATTER_DENSITY,
                                    Candidate.typed(Role.CLAMP, Clamps.DRY_MATTER_DENSITY)),
                            new TableColumn.Calculated(ClampSides.SILAGE_HEIGHT, false),
                            new TableColumn.Calculated(ClampSides.SIDE_SLOPE, false),
                            new TableColumn.Calculated(ClampSides.RAMPED_ENDS, false),
                            new TableColumn.Calculated(ClampShape.FULL_SECTION, false),
                            new TableColumn.Calculated(ClampShape.ONE_RAMP, false),
                            new TableColumn.Calculated(ClampShape.HEIGHT_OF_HEAP, false),
                            new TableColumn.Calculated(ClampShape.TOP_WIDTH, true),
                            new TableColumn.Calculated(ClampCrown.SECTION_OF_CROWN, true),
                            new TableColumn.Calculated(ClampShape.CLAMP_VOLUME, true),
                            new TableColumn.Calculated(ClampCrown.OVER_THE_TOP, true),
                            new TableColumn.Calculated(ClampSurface.CLAMP_SURFACE, true),
                            new TableColumn.Joined(ClampContents.CROP_ROWS, ClampContents.ROWS_WITH),
                            new TableColumn.Joined(ClampContents.CROP_ROWS_LACKING, ClampContents.ROWS_WITHOUT),
                            new TableColumn.Joined(ClampContents.CROP_TOTAL, ClampContents.TOTAL_OF_ROWS),
                            new TableColumn.Joined(ClampContents.CROP_TOTAL_DM, ClampContents.TOTAL_DM_OF_ROWS),
                            new TableColumn.Calculated(ClampContents.CROP_IN_CLAMP, true),
                            new TableColumn.Calculated(ClampContents.CROP_IN_CLAMP_DM, true),
                            new TableColumn.Calculated(ClampContents.DM_OF_CLAMP, false),
                            new TableColumn.Calculated(ClampContents.CLAMP_DENSITY, true),
                            new TableColumn.Calculated(ClampContents.DENSITY_TAKEN_FROM, false),
                            new TableColumn.Calculated(ClampContents.CLAMP_DENSITY_DM, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_CAPACITY, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_CAPACITY_DM, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_FILL, true),
                            new TableColumn.Calculated(ClampContents.ROOM_LEFT, true)),
                    CLAMP_RULES),
            List.of(
                    new TableSpec.TotalName(ClampContents.CAPACITY, "Rickyard_clamp_capacity"),
                    new TableSpec.TotalName(ClampContents.CROP_IN, "Rickyard_crop_in_clamps")),
            Cautions.CLAMPS,
            CLAMP_RULES);

    /** One row per earth pit and excavator. */
    static final TableSpec DIGGING = new TableSpec(
            "pit-digging",
            "Pit digging",
            "Pit digging: soil to move and hours to dig it",
            "one row per earth pit and excavator",
            Sentences.appended(
                    List.of(
                            Names.CLAMP_HOLDING,
                            Names.CLAMP,
                            Names.MACHINE,
                            KIND,
                            new TableColumn.Key(Keys.CLAMP_KEY),
                            ClampJoin.COUNTRY,
                            new TableColumn.Word(Quantities.SOIL, List.of(Candidate.typed(Role.CLAMP, Clamps.SOIL))),
                            Names.optional(Quantities.SWELL, Candidate.typed(Role.CLAMP, Clamps.SWELL)),
                            new TableColumn.Word(
                                    Quantities.OUTPUT_BASIS,
                                    List.of(Candidate.typed(Role.MACHINE, Machines.OUTPUT_BASIS))),
                            Names.link(Quantities.CLAMP_LENGTH, Candidate.typed(Role.CLAMP, Clamps.LENGTH)),
                            Names.link(Quantities.FLOOR_WIDTH, Candidate.typed(Role.CLAMP, Clamps.FLOOR_WIDTH)),
                            Names.link(Quantities.WALL_HEIGHT, Candidate.typed(Role.CLAMP, Clamps.WALL_HEIGHT)),
                            Names.optional(Quantities.BATTER, Candidate.typed(Role.CLAMP, Clamps.BATTER)),
                            Names.optional(Quantities.WIDTH_AT_TOP, Candidate.typed(Role.CLAMP, Clamps.TOP_WIDTH)),
                            Names.link(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                            Names.dispensable(Quantities.OUTPUT_VOLUME, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                            Names.optional(
                                    Quantities.HOURS_PER_DAY, Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY)),
                            new TableColumn.Calculated(ClampSides.SIDE_SLOPE, false),
                            new TableColumn.Calculated(Digging.SWELL_OF_SOIL, false),
                            new TableColumn.Calculated(Digging.VOLUME_IN_GROUND, true),
                            new TableColumn.Calculated(Digging.SPOIL_VOLUME, true),
                            new TableColumn.Calculated(Digging.SPOIL_MASS, true),
                            new TableColumn.Calculated(Digging.DIGGING_HOURS, true),
                            new TableColumn.Calculated(Digging.HOURS_A_DAY, false),
                            new TableColumn.Calculated(Digging.DIGGING_DAYS, true),
                            new TableColumn.Calculated(SpoilHeap.HEAP_SECTION, true),
                            new TableColumn.Calculated(SpoilHeap.HEAP_HEIGHT, true),
                            new TableColumn.Calculated(SpoilHeap.HEAP_WIDTH, true),
                            new TableColumn.Calculated(SpoilHeap.HEAP_FOOTPRINT, true),
                            new TableColumn.Calculated(SpoilHeap.DISTANCE_BACK, true)),
                    ClampEffluentTables.PIT_LAW),
            List.of(new TableSpec.TotalName(Digging.SPOIL, "Rickyard_spoil_volume")),
            Cautions.DIGGING,
            ClampEffluentTables.PIT_LAW);
}
