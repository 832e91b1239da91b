package org.rickyard.plan;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Machines;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.silage.Digging;

/** The tables of silage: one row per field and cut, one per clamp, one per pit and excavator. */
final class ClampTables {
    private ClampTables() {}

    private static final TableColumn.Word KIND =
            new TableColumn.Word(Quantities.CLAMP_KIND, List.of(Candidate.typed(Role.CLAMP, Clamps.KIND)));

    /** One row per field and cut. */
    static final TableSpec CROP = new TableSpec(
            "crop",
            "Crop",
            "Crop for silage: each field and cut",
            "one row per field and cut",
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
                            new TableColumn.Key(Keys.CLAMP_KEY),
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
                            new TableColumn.Calculated(Crop.CROP_DRY_MATTER, true)),
                    List.of()),
            List.of(
                    new TableSpec.TotalName(Crop.ENSILED, "Rickyard_crop_ensiled"),
                    new TableSpec.TotalName(Crop.CROP_DM, "Rickyard_crop_dry_matter")),
            List.of(),
            List.of());

    private static final List<CautionRule> CLAMP_RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.all(List.of(
                            Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                            Condition.compare(
                                    Expr.value(ClampShape.HEIGHT),
                                    Relation.MORE,
                                    Expr.number(2).times(Quantities.WALL_HEIGHT)))),
                    "silage above twice the wall height: do not fill so high."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.is(Quantities.CLAMP_KIND, ClampShape.WALLED),
                            Condition.compare(
                                    Expr.value(ClampShape.HEIGHT),
                                    Relation.MORE,
                                    Expr.value(Quantities.WALL_HEIGHT)))),
                    "silage above the wall: check the wall's loading notice."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(Expr.value(ClampContents.FILL), Relation.MORE, Expr.number(1)),
                    "more crop is allotted than the clamp holds."),
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
                            Names.optional(Quantities.RAMPS, Candidate.typed(Role.CLAMP, Clamps.RAMPS)),
                            Names.link(Quantities.RAMP_RUN, Candidate.typed(Role.CLAMP, Clamps.RAMP_RUN)),
                            Names.optional(Quantities.DM_TARGET, Candidate.typed(Role.CLAMP, Clamps.DM_TARGET)),
                            Names.optional(
                                    Quantities.FRESH_DENSITY, Candidate.typed(Role.CLAMP, Clamps.FRESH_DENSITY)),
                            Names.optional(
                                    Quantities.DRY_MATTER_DENSITY,
                                    Candidate.typed(Role.CLAMP, Clamps.DRY_MATTER_DENSITY)),
                            new TableColumn.Calculated(ClampShape.SILAGE_HEIGHT, false),
                            new TableColumn.Calculated(ClampShape.SIDE_SLOPE, false),
                            new TableColumn.Calculated(ClampShape.RAMPED_ENDS, false),
                            new TableColumn.Calculated(ClampShape.FULL_SECTION, false),
                            new TableColumn.Calculated(ClampShape.ONE_RAMP, false),
                            new TableColumn.Calculated(ClampShape.HEIGHT_OF_HEAP, false),
                            new TableColumn.Calculated(ClampShape.CLAMP_VOLUME, true),
                            new TableColumn.Calculated(ClampContents.CROP_IN_CLAMP, true),
                            new TableColumn.Calculated(ClampContents.CROP_IN_CLAMP_DM, true),
                            new TableColumn.Calculated(ClampContents.DM_OF_CLAMP, false),
                            new TableColumn.Calculated(ClampContents.CLAMP_DENSITY, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_DENSITY_DM, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_CAPACITY, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_CAPACITY_DM, true),
                            new TableColumn.Calculated(ClampContents.CLAMP_FILL, true)),
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
                            new TableColumn.Word(
                                    Quantities.OUTPUT_BASIS,
                                    List.of(Candidate.typed(Role.MACHINE, Machines.OUTPUT_BASIS))),
                            Names.link(Quantities.CLAMP_LENGTH, Candidate.typed(Role.CLAMP, Clamps.LENGTH)),
                            Names.link(Quantities.FLOOR_WIDTH, Candidate.typed(Role.CLAMP, Clamps.FLOOR_WIDTH)),
                            Names.link(Quantities.WALL_HEIGHT, Candidate.typed(Role.CLAMP, Clamps.WALL_HEIGHT)),
                            Names.optional(Quantities.BATTER, Candidate.typed(Role.CLAMP, Clamps.BATTER)),
                            Names.link(Quantities.OUTPUT, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                            Names.link(Quantities.OUTPUT_VOLUME, Candidate.typed(Role.MACHINE, Machines.OUTPUT)),
                            new TableColumn.Calculated(ClampShape.SIDE_SLOPE, false),
                            new TableColumn.Calculated(Digging.VOLUME_IN_GROUND, true),
                            new TableColumn.Calculated(Digging.SPOIL_VOLUME, true),
                            new TableColumn.Calculated(Digging.SPOIL_MASS, true),
                            new TableColumn.Calculated(Digging.DIGGING_HOURS, true)),
                    List.of()),
            List.of(new TableSpec.TotalName(Digging.SPOIL, "Rickyard_spoil_volume")),
            Cautions.DIGGING,
            List.of());
}
