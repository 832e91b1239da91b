package org.rickyard.plan.silage;

import java.util.List;
import org.rickyard.lists.Clamps;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampContents;
import org.rickyard.trade.silage.ClampCrown;
import org.rickyard.trade.silage.ClampSurface;
import org.rickyard.trade.silage.Covering;
import org.rickyard.trade.silage.SilageCautions;

/** What covers each clamp, and the additive that goes into it. */
final class ClampCoverTables {
    private ClampCoverTables() {}

    /** One row per clamp. */
    static final TableSpec COVER = new TableSpec(
            "clamp-covering",
            "Clamp covering",
            "Clamp covering: sheet, rolls and weights",
            "one row per clamp",
            Sentences.appended(
                    ClampJoin.columns(
                            ClampJoin.link(Quantities.CLAMP_LENGTH, Clamps.LENGTH),
                            ClampJoin.link(Quantities.WALL_HEIGHT, Clamps.WALL_HEIGHT),
                            ClampJoin.from(ClampCrown.WIDTH_OVER_TOP),
                            ClampJoin.from(ClampSurface.SURFACE),
                            TableColumn.Calculated.aside(Covering.SIDES),
                            TableColumn.Calculated.aside(Covering.TOP),
                            new TableColumn.Calculated(Covering.SHEET_AREA, true),
                            new TableColumn.Calculated(Covering.SHEET_ROLLS, true),
                            new TableColumn.Calculated(Covering.WEIGHTS, true)),
                    List.of()),
            List.of(new TableSpec.TotalName(Covering.ROLLS, "Rickyard_sheet_rolls")),
            SilageCautions.COVERING,
            List.of());

    /** One row per clamp with an additive. */
    static final TableSpec ADDITIVE = new TableSpec(
            "clamp-additive",
            "Clamp additive",
            "Clamp additive: litres for the crop",
            "one row per clamp with an additive",
            Sentences.appended(
                    ClampJoin.columns(
                            ClampJoin.link(Quantities.ADDITIVE, Clamps.ADDITIVE),
                            ClampJoin.from(ClampContents.CROP_IN),
                            new TableColumn.Calculated(Covering.ADDITIVE_LITRES, true)),
                    List.of()),
            List.of(new TableSpec.TotalName(Covering.LITRES, "Rickyard_additive")),
            SilageCautions.COVERING,
            List.of());
}
