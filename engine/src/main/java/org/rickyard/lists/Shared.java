package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.choice;
import static org.rickyard.lists.ColumnSpec.date;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;

import java.util.List;
import org.rickyard.trade.Quantities;

/** Columns and header words that several lists have alike. */
public final class Shared {
    private Shared() {}

    public static final ColumnSpec HOLDING = text("Holding", Quantities.HOLDING)
            .also("farm, farm name, holding name, farmstead, business, unit, site, herd no, "
                    + "herd number, steading, holding no, holding number, client, customer")
            .help("Needed only where two holdings use the same name.");

    /** Headers that are the holding's where no other is: beside "Farm", "Grower" is who owns several. */
    static final String WHOSE =
            "client name, customer name, grower, grower name, farmer, farmer name, member, member name, "
                    + "property, ranch, estate";

    /** Land as it was surveyed in squares: a field where no other header names one. */
    static final String SURVEYED_LAND = "quarter, quarter section, land location, land loc, legal land location, "
            + "legal land description, legal location, legal description, legal";

    public static final ColumnSpec BLOCK =
            text("Block", Quantities.BLOCK).also("block name, field block").help("Fields worked together.");
    static final ColumnSpec CLAMP = text("Clamp", Quantities.CLAMP)
            .also("clamp name, pit, pit name, silage pit, silage clamp, silage bay, silage bunker, "
                    + "bunker silo, trench silo, horizontal silo, pit silo, silo, silo name, bunker, bunker name, "
                    + "bay, slab, heap, pile, clamp no, pit no, clamp number, clamp pit, pit clamp, clamp or pit, "
                    + "pit or clamp, goes to, carted to, ensiled in, goes to pit, goes to clamp, to clamp, to pit, "
                    + "into clamp, into pit, storage, stored in, stack, stack name, stack no");
    static final ColumnSpec PRODUCT = text("Product", Quantities.PRODUCT)
            .also("product name, chemical, chem, pesticide, material, spray product, trade name, "
                    + "plant protection product, fertiliser product, agrochemical")
            .help("The name on its label.");
    static final ColumnSpec ACTIVE_CONTENT = number("Active content", Quantities.ACTIVE_CONTENT)
            .or(Quantities.ACTIVE_SHARE)
            .also("active ingredient content, content of active ingredient, ai content, active substance content, "
                    + "active concentration, ai concentration, active ingredient concentration, "
                    + "concentration of active ingredient, active ingredient per litre, active per litre, "
                    + "active ingredient per gallon, ai per gallon")
            .help("Of active ingredient: g/L or g/kg (or %, lb/gal); asked where doses count it.");
    static final ColumnSpec WATER_VOLUME = number("Water volume", Quantities.WATER_VOLUME)
            .also("litres per hectare of spray, volume application rate, "
                    + "water rate, application rate, spray rate, carrier, carrier volume, carrier rate, "
                    + "gpa, gal/ac, gallons/acre, gallons per acre, gals/acre, spray volume, "
                    + "application volume, water, volume rate, spray application rate")
            .help("Spray liquid on a hectare.");
    static final ColumnSpec SPEED = number("Speed", Quantities.SPEED)
            .also("forward speed, working speed, field speed, ground speed, km/h, kph, mph, km/hr, "
                    + "travel speed, spraying speed, operating speed, walking speed, walking pace, pace")
            .help("At work in the field.");
    public static final ColumnSpec HOURS_PER_DAY = number("Hours per day", Quantities.HOURS_PER_DAY)
            .also(
                    "field hours per day, field hours a day, field hours/day, hours available per day, "
                            + "working hours per day, hours worked per day, field time per day, "
                            + "operating hours per day, daily field hours, hours of field work per day, "
                            + "hours of fieldwork per day, "
                            + "hours/day, h/day, working day, hours a day, hours in a day, hours in the day, hrs per day, hrs/day, daily hours")
            .help("Hours worked in a day.");
    static final ColumnSpec START =
            date("Start", Quantities.CUT_START).also("start date, from, date from, from date, first day, begin");
    static final ColumnSpec END = date("End", Quantities.CUT_END)
            .also("end date, to, date to, to date, last day, finish, finish date, until");
    static final ColumnSpec SPRAY_QUALITY = choice("Spray quality", Quantities.SPRAY_QUALITY, Choices.SPRAY_QUALITY)
            .also("droplet class, droplet size, spray class, droplet category");
    static final ColumnSpec DISTANCE_TO_WATERCOURSE = number(
                    "Distance to watercourse", Quantities.DISTANCE_TO_WATERCOURSE)
            .also("watercourse distance, distance to ditch, distance to stream, distance to river, "
                    + "distance from watercourse, distance to surface water")
            .help("From the nearest edge to the nearest ditch, stream or drain.");

    static final String DM_AT_CUTTING =
            "DM mown, mown DM, DM as mown, DM when mown, DM as cut, DM when cut, DM at cut, "
                    + "dry matter at cutting, DM cut, DM cutting, DM standing, standing DM, "
                    + "DM at mowing, dry matter at mowing, dry matter at cut, cutting DM, "
                    + "moisture at cutting, moisture at mowing, standing dry matter";
    static final String DM_AT_ENSILING =
            "DM clamped, clamped DM, DM when clamped, DM baled, DM as baled, DM ensiling, DM ensiled, "
                    + "dry matter at ensiling, DM at clamping, ensiling DM, "
                    + "DM carted, DM as carted, DM wilted, wilted DM, dry matter ensiled, DM at lifting, "
                    + "DM in clamp, clamp DM, DM pit, pit DM, moisture at ensiling, harvest DM, moisture at harvest, "
                    + "DM at harvest, dry matter at harvest, harvest dry matter, harvest moisture, DM in pit, "
                    + "DM at chopping, "
                    + "DM at baling, dry matter at baling, moisture at baling, DM when baled, "
                    + "DM as ensiled, dry matter as ensiled, DM when ensiled, DM as clamped, "
                    + "DM after wilting";
    static final List<String> LONE_DM =
            List.of("DM", "dry matter", "DM content", "dry matter content", "moisture", "DM analysis");
}
