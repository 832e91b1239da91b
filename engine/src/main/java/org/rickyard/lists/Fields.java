package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/**
 * The field list.
 *
 * <p>A yield may be written fresh (t/ha) or as dry matter (t DM/ha); {@link ListRows#unit} of {@link #YIELD} is in
 * dry matter for a row whose basis is dry matter, whether the header or the basis says so.
 */
public final class Fields {
    private Fields() {}

    /** Whose field. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** Its name. */
    public static final ColumnSpec FIELD = text("Field", Quantities.FIELD)
            .needed()
            .also("field name, name, parcel, parcel name, paddock, paddock name, enclosure, field no, "
                    + "field number, field id, field ref, field reference, parcel id, parcel ref, "
                    + "field name number, "
                    + "field name no, field paddock, parcel field, sheet parcel no, sheet parcel, "
                    + "OS no, OS field no, "
                    + "pdk, pdk name, pdk no, plot, plot name, plot no, plot number, plot id, "
                    + "parcel no, field parcel, land parcel, paddock no, paddock id, paddock ref, "
                    + "camp, lot, pivot, orchard, orchard name, vineyard, vineyard name")
            .help("The name you know it by; each name once on a holding.");
    /** What grows there. */
    public static final ColumnSpec CROP = text("Crop", Quantities.CROP)
            .also("crop name, cropping, crop type, land use, crop grown, this year's crop, "
                    + "current crop, present crop, crop now, crop this yr")
            .help("Grass, maize, wheat, ...");
    /** Net area. */
    public static final ColumnSpec AREA = number("Area", Quantities.AREA)
            .needed()
            .also("field area, size, field size, ha, hectares, hectarage, ac, acres, acreage, "
                    + "statute acres, cropped area, net area, sprayable area, net cropped area, area net, "
                    + "worked area, effective area, area cropped, eff area, eff ha, effective ha, "
                    + "effective hectares, net ha, has, "
                    + "hecs, hects")
            .help("Net area worked, without headlands left and buffer strips.");
    /** A group of fields. */
    public static final ColumnSpec BLOCK = Shared.BLOCK;
    /** Length of a run. */
    public static final ColumnSpec RUN_LENGTH = number("Run length", Quantities.RUN_LENGTH)
            .also("mean run length, average run length, average length of run, "
                    + "bout length, row length, length of run, length of work, average run, run, bout")
            .help("Average length of one run between turns.");
    /** To the clamp. */
    public static final ColumnSpec DISTANCE_TO_CLAMP = number("Distance to clamp", Quantities.DISTANCE_TO_CLAMP)
            .also("one way haul distance, haul distance one way, hauling distance, "
                    + "distance field to clamp, distance field to silo, distance from field to clamp, "
                    + "distance from field to silo, distance from field to pit, "
                    + "haul distance, haulage distance, distance to pit, distance to yard, "
                    + "distance to silo, distance to bunker, distance to stack, haul, "
                    + "haul one way, one way haul, cartage distance, "
                    + "distance from clamp, "
                    + "distance from yard, carting distance, distance to farmstead, distance home, "
                    + "distance to steading, "
                    + "distance from farm, distance to farm")
            .help("One way, by the road the trailers take.");
    /** To the fill point. */
    public static final ColumnSpec DISTANCE_TO_FILL_POINT = number(
                    "Distance to fill point", Quantities.DISTANCE_TO_FILL_POINT)
            .also("distance to refill, distance to refilling point, "
                    + "distance to hydrant, distance to sprayer fill, "
                    + "fill point distance, distance to fill pt, fill pt distance, "
                    + "distance to water point, distance to water pt, distance to bowser, distance to tap, "
                    + "distance to water tap, distance to standpipe, "
                    + "distance to filling point, distance to fill, fill distance, "
                    + "distance to sprayer fill point")
            .help("One way, to where the sprayer is filled.");
    /** Nearest watercourse. */
    public static final ColumnSpec WATERCOURSE = choice("Watercourse", Quantities.WATERCOURSE, Choices.WATERCOURSE)
            .also("watercourse type, adjacent watercourse, nearest water, "
                    + "nearest watercourse, water course, surface water, ditch or stream, stream or ditch, "
                    + "ditch, stream, "
                    + "brook, beck, burn, drain, creek, drain or creek, drain creek, ditch or drain, creek or ditch")
            .help("none, dry ditch, stream, river or lake. Blank does not mean none.");
    /** To the watercourse. */
    public static final ColumnSpec DISTANCE_TO_WATERCOURSE = number(
                    "Distance to watercourse", Quantities.DISTANCE_TO_WATERCOURSE)
            .also("distance to nearest watercourse, "
                    + "watercourse distance, distance to ditch, distance to stream, distance to river, "
                    + "distance from watercourse, distance to surface water, distance to bank")
            .help("From the top of the bank to the nearest crop.");
    /** Power lines. */
    public static final ColumnSpec OVERHEAD_LINES = choice("Overhead lines", Quantities.OVERHEAD_LINES, Choices.YES_NO)
            .also("overhead cables, overhead electric lines, overhead wires, electricity lines, "
                    + "overhead line, power lines, overhead power lines, OHL, electric lines, pylons")
            .help("yes or no; blank does not mean no.");
    /** Slope. */
    public static final ColumnSpec SLOPE = number("Slope", Quantities.SLOPE)
            .also("max slope, field slope, steepest slope, gradient, steepness")
            .help("Steepest worked slope, rise over run.");
    /** Perimeter. */
    public static final ColumnSpec PERIMETER = number("Perimeter", Quantities.PERIMETER)
            .also("boundary length, circumference, boundary")
            .help("All round the field.");
    /** Yield, fresh or dry matter. */
    public static final ColumnSpec YIELD = number("Yield", Quantities.YIELD)
            .or(Quantities.YIELD_DRY_MATTER)
            .also("target yield, projected yield, planned yield, yield goal, yield target, "
                    + "forecast yield, likely yield, yield estimate, fresh weight yield, fresh crop yield, "
                    + "crop yield, expected yield, fresh yield, wet yield, green yield, "
                    + "dry matter yield, DM yield, yield DM, "
                    + "yield dry matter, standing yield, yield as carted, est yield, "
                    + "estimated yield, average yield, "
                    + "t/ha, t/ac, t/acre, tonnes/ha, tonnes/ac, tonnes/acre, tonnes per hectare, "
                    + "tonnes per acre, "
                    + "tons/ac, tons/acre, tons per acre, t per ha, t per acre, "
                    + "t/ha fresh, t/ac fresh, t/acre fresh, tonnes/ha fresh, tonnes/ac fresh, "
                    + "tonnes/acre fresh, tons/ac fresh, "
                    + "tons/acre fresh, fresh t/ha, fresh t/ac, fresh t/acre, fresh tonnes/ha, "
                    + "fresh tonnes/ac, fresh tonnes/acre, "
                    + "fresh tons/ac, fresh tons/acre")
            .help("One cut; say what it was weighed as in Yield basis.");
    /** What the yield was weighed as. */
    public static final ColumnSpec YIELD_BASIS = choice("Yield basis", Quantities.YIELD_BASIS, Choices.YIELD_BASIS)
            .also("basis of yield, yield type, yield as, basis, weighed as, yield weighed as")
            .help("standing fresh, as carted fresh or dry matter.");
    /** Dry matter at cutting. */
    public static final ColumnSpec DM_AT_CUTTING = number("DM at cutting", Quantities.DM_AT_CUTTING)
            .also(Shared.DM_AT_CUTTING)
            .help("Dry matter of the standing crop.");
    /** Dry matter at ensiling. */
    public static final ColumnSpec DM_AT_ENSILING = number("DM at ensiling", Quantities.DM_AT_ENSILING)
            .also(Shared.DM_AT_ENSILING)
            .help("Dry matter as it goes into the clamp.");
    /** Where the crop goes. */
    public static final ColumnSpec CLAMP = Shared.CLAMP.help("Clamp or pit the crop goes to.");
    /** Orchard rows. */
    public static final ColumnSpec ROW_SPACING = number("Row spacing", Quantities.ROW_SPACING)
            .also("between row spacing, spacing between rows, between row distance, "
                    + "row to row distance, row to row spacing, row to row, "
                    + "row width, rows apart, vine row width, vine row spacing, tree row spacing, "
                    + "spacing of rows, alley width, inter row, distance between rows, row distance")
            .help("Orchards and bushes only.");
    /** Tree height. */
    public static final ColumnSpec TREE_HEIGHT = number("Tree height", Quantities.TREE_HEIGHT)
            .also("maximum tree height, max tree height, average tree height, mean tree height, "
                    + "canopy height, height of trees, crop height, vine height, canopy ht, tree ht, vine ht")
            .help("Orchards and bushes only.");
    /** Tree width. */
    public static final ColumnSpec TREE_WIDTH = number("Tree width", Quantities.TREE_WIDTH)
            .also("cross row limb spread, limb spread, cross row spread, cross row tree spread, "
                    + "maximum tree width, max tree width, average tree width, mean tree width, "
                    + "canopy width, width of trees, tree spread, canopy depth, vine width")
            .help("Orchards and bushes only; not more than the row spacing.");
    /** Along the row. */
    public static final ColumnSpec TREE_SPACING = number("Tree spacing", Quantities.TREE_SPACING)
            .also("tree to tree, tree to tree distance, tree to tree spacing, spacing in row, in row spacing, "
                    + "within row spacing, intra row spacing, trees apart, vine spacing, bush spacing, "
                    + "distance between trees, distance between vines, spacing between trees, spacing of trees, "
                    + "distance in row, distance in the row, spacing in the row")
            .help("Orchards and bushes only: from tree to tree along the row.");
    /** How many. */
    public static final ColumnSpec TREES = number("Number of trees", Quantities.TREES)
            .also("trees, no of trees, tree count, tree numbers, trees counted, vines, number of vines, "
                    + "no of vines, vine count, number of bushes, no of bushes, bushes")
            .help("Orchards and bushes only: those that stand.");
    /** Whose law. */
    public static final ColumnSpec COUNTRY = choice("Country", Quantities.COUNTRY, Choices.COUNTRY)
            .also("country of the holding, nation")
            .help("Decides which items the spray records must hold.");
    /** Free words. */
    public static final ColumnSpec NOTES = text("Notes", Quantities.NOTES)
            .also("note, remarks, comments, comment")
            .help("Not read.");

    /** Beside the yield that is reckoned with they are what was carted, or of another use of the field. */
    static final String YIELDS = "harvested yield, silage yield, grass yield, herbage yield";

    /** As likely what is grazed, in kilograms. */
    static final String STANDING = "herbage mass";

    /** "Grass t/ac", "Maize (t/ha)": what is cut, with what only a yield is measured in. */
    static final String WHAT_IS_CUT = "grass, silage, maize, whole crop, wholecrop, hay, haylage, forage";

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Fields",
                    List.of(
                            "field list",
                            "field",
                            "parcels",
                            "paddocks",
                            "land",
                            "field schedule",
                            "cropping plan",
                            "fields and crops",
                            "field register",
                            "land schedule"),
                    List.of(
                            HOLDING,
                            FIELD,
                            CROP,
                            AREA,
                            BLOCK,
                            RUN_LENGTH,
                            DISTANCE_TO_CLAMP,
                            DISTANCE_TO_FILL_POINT,
                            WATERCOURSE,
                            DISTANCE_TO_WATERCOURSE,
                            OVERHEAD_LINES,
                            SLOPE,
                            PERIMETER,
                            YIELD,
                            YIELD_BASIS,
                            DM_AT_CUTTING,
                            DM_AT_ENSILING,
                            CLAMP,
                            ROW_SPACING,
                            TREE_HEIGHT,
                            TREE_WIDTH,
                            COUNTRY,
                            NOTES,
                            TREE_SPACING,
                            TREES))
            .identifiedBy(FIELD)
            .otherwise(HOLDING, Shared.WHOSE)
            .otherwise(FIELD, Shared.SURVEYED_LAND)
            .otherwise(FIELD, "land, land name")
            .otherwiseMeasured(YIELD, "harvest")
            .otherwise(YIELD, YIELDS)
            .otherwiseMeasured(YIELD, STANDING)
            .otherwiseMeasured(YIELD, WHAT_IS_CUT)
            .otherwise(DISTANCE_TO_CLAMP, "distance to storage, distance from field to storage")
            .otherwise(DISTANCE_TO_FILL_POINT, "distance to water supply, ferry distance")
            .otherwise(TREE_WIDTH, "canopy spread, crown spread, crown width, canopy diameter, crown diameter")
            .otherwise(TREES, "total trees, total number of trees")
            .qualifier(YIELD, YIELD_BASIS)
            .unclear(Shared.LONE_DM, DM_AT_CUTTING, DM_AT_ENSILING)
            .unclear(
                    List.of("distance to water", "distance from water", "water distance"),
                    DISTANCE_TO_FILL_POINT,
                    DISTANCE_TO_WATERCOURSE)
            .otherwiseMeasured(ROW_SPACING, "rows, row, between rows, inter row, interrow")
            .otherwise(RUN_LENGTH, "pass length, length of pass, furrow length")
            .otherwise(DISTANCE_TO_FILL_POINT, "distance to mains water")
            .otherwise(WATERCOURSE, "near watercourse, near water")
            .otherwise(AREA, "m2, sq m, square metres, square meters")
            .otherwise(AREA, "mapped area, mapped ha, ha mapped, mapped acres")
            .unclear(List.of("distance"), DISTANCE_TO_CLAMP, DISTANCE_TO_FILL_POINT, DISTANCE_TO_WATERCOURSE)
            .unclear(List.of("height"), TREE_HEIGHT)
            .unclear(List.of("gross area", "total area"), AREA)
            .otherwiseMeasured(
                    AREA,
                    "net, cropped, tillable, planted, sown, drilled, seeded, arable, farmed, farmable, "
                            + "productive, cultivated, harvested, workable, usable, useable, fsa, sprayed, treated, "
                            + "worked, surface, surface area")
            .otherwise(
                    AREA,
                    "planted area, sown area, drilled area, tillable area, seeded area, arable area, "
                            + "farmed area, productive area, crop area, area planted, area drilled, area seeded")
            .otherwise(
                    AREA,
                    "area sprayed, sprayed area, area treated, treated area, area to spray, area to be sprayed, "
                            + "area to treat, spray area, hectares treated, hectares sprayed, acres treated, acres sprayed")
            .standIn(FIELD, BLOCK, ROW_SPACING, TREE_HEIGHT, TREE_WIDTH)
            .otherwiseMeasured(
                    DISTANCE_TO_CLAMP,
                    "haul to pit, haul to clamp, haul to yard, haul to silo, haul to bunker, to pit, to clamp, "
                            + "to silo, to bunker, to yard, carting, cart, draw, draw to pit, farm field, farm to field, "
                            + "field farm, field to farm, distance farm field, distance field farm, "
                            + "distance farm to field, distance field to farm")
            .otherwise(AREA, "arp, acres roods perches, acres roods and perches")
            .otherwiseMeasured(
                    DISTANCE_TO_FILL_POINT,
                    "fill point, fill pt, water point, water pt, bowser, tap, to fill point, to fill pt, "
                            + "to water point, to hydrant, to bowser, to tap")
            .otherwiseMeasured(
                    DISTANCE_TO_WATERCOURSE,
                    "watercourse, river, stream, ditch, water course, to watercourse, to river, "
                            + "to stream, to ditch, to brook, to beck");
}
