package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.date;
import static org.rickyard.lists.ColumnSpec.dose;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;
import static org.rickyard.lists.ColumnSpec.words;

import java.util.List;
import org.rickyard.lists.text.MachineMention;
import org.rickyard.quantity.Substance;
import org.rickyard.trade.Quantities;

/**
 * The jobs. {@link #MACHINE} may name a gang, parted by ";" ({@link MachineMention}). A flat list with field, area and
 * machine in one row is a field list and a job list at once; such a job may lack its {@link #OPERATION}, which then
 * follows from the type of its machine. A block may stand in place of the field.
 */
public final class Jobs {
    private Jobs() {}

    /** Whose fields. */
    public static final ColumnSpec HOLDING = Shared.HOLDING;
    /** Its name. */
    public static final ColumnSpec JOB = text("Job", Quantities.JOB)
            .also("job name, job no, job number, job id, job ref, job reference, job title")
            .help("A name of your own, if other jobs come after it.");
    /** Where. */
    public static final ColumnSpec FIELD = text("Field", Quantities.FIELD)
            .needed()
            .also("field name, parcel, paddock, enclosure, fields, field ref, "
                    + "field reference, where, field no, field or crop, "
                    + "pdk, pdk name, pdk no, plot, plot name, plot no, plot number, plot id, "
                    + "field number, field id, paddock name, parcel name, field or block, "
                    + "field block crop, "
                    + "field block or crop, field crop block, field or crop or block, crop or field, field crop, "
                    + "field crop or block, sheet parcel no, sheet parcel, OS no, OS field no, parcel no, "
                    + "parcel id, parcel ref, "
                    + "field parcel, parcel field, land parcel, paddock no, paddock id, paddock ref, "
                    + "field paddock, field name no, "
                    + "field name number, name of field, camp, pivot, orchard, orchard name, vineyard, vineyard name")
            .help("A field, a crop, a block, or all.");
    /** What is done. */
    public static final ColumnSpec OPERATION = words("Operation", Quantities.OPERATION, Choices.OPERATION)
            .needed()
            .also("operation type, type of work, work to do, operation name, work, activity, what, op")
            .help("mowing, raking, chopping, spraying, ...");
    /** By which machines. */
    public static final ColumnSpec MACHINE = text("Machine", Quantities.GANG)
            .needed()
            .also("machine implement, sprayer used, equipment used, machinery used, "
                    + "machines, implement, equipment, gang, machine name, sprayer, machinery, kit, "
                    + "gear, machine used, implement used")
            .help("Several parted by \";\", several alike as \"Trailer 14 t x 3\".");
    /** The tractor. */
    public static final ColumnSpec TRACTOR = text("Tractor", Quantities.TRACTOR)
            .also("tractor name, tractor used, prime mover, power unit")
            .help("From the machine list.");
    /** The tank mix. */
    public static final ColumnSpec MIX = text("Mix", Quantities.MIX)
            .also("tank mix name, spray mix, tank mix, mix name, tankmix, mixture")
            .help("From the mixes.");
    /** Or one product. */
    public static final ColumnSpec PRODUCT = Shared.PRODUCT.help("In place of a mix; several rows make a mix.");
    /** Its dose. */
    public static final ColumnSpec DOSE = dose(
                    "Dose", Quantities.SPREAD_DOSE, Quantities.CONCENTRATION, Quantities.SUBSTANCE_DOSE)
            .also("dosage, dosage rate, dose rate, product rate, rate of product, product dose, "
                    + "chem rate, chemical rate, herbicide rate, "
                    + "fungicide rate, insecticide rate, chem dose, chemical dose, "
                    + "fertiliser rate, fertilizer rate, "
                    + "spread rate, spreading rate, seed rate, seeding rate, sowing rate, "
                    + "slurry rate, manure rate, muck rate, lime rate")
            .help("With its unit: L/ha, g/ac, %, ml/100 L.");
    /** The dose's unit, row by row. */
    public static final ColumnSpec DOSE_UNIT =
            text("Dose unit", Quantities.UNIT).also("rate unit").help("Where doses differ in unit.");
    /** Spray liquid per hectare. */
    public static final ColumnSpec WATER_VOLUME = Shared.WATER_VOLUME;
    /** Speed of this job. */
    public static final ColumnSpec SPEED = Shared.SPEED;
    /** Which cut. */
    public static final ColumnSpec CUT =
            number("Cut", Quantities.CUT_NUMBER).also("cut no, cut number").help("1 for the first cut.");
    /** A group of fields. */
    public static final ColumnSpec BLOCK = Shared.BLOCK;
    /** The job before. */
    public static final ColumnSpec AFTER = text("After", Quantities.AFTER)
            .also("previous job, comes after, done after, preceding job, "
                    + "after job, follows, depends on, predecessor, after op")
            .help("The job or operation that comes first.");
    /** Hours to wait. */
    public static final ColumnSpec LAG = number("Lag", Quantities.LAG)
            .also("wilt time, wait time, wilting period, wait, delay, wilt, wilting time, waiting time, lag time")
            .help("Hours between the job before and this one.");
    /** First day. */
    public static final ColumnSpec EARLIEST = date("Earliest", Quantities.EARLIEST)
            .also("first day, date from, from date, begin, "
                    + "earliest date, earliest start, start, start date, not before, from, date, planned date, "
                    + "date planned, spray date, application date, date of application, date applied")
            .help("First day it may be done.");
    /** Last day. */
    public static final ColumnSpec LATEST = date("Latest", Quantities.LATEST)
            .also("last day, to date, date to, to be done by, done by date, "
                    + "latest date, latest finish, finish by, end, end date, deadline, by, not after")
            .help("Last day it may be done.");
    /** Growth stage. */
    public static final ColumnSpec GROWTH_STAGE = text("Growth stage", Quantities.GROWTH_STAGE)
            .also("GS, BBCH, crop stage, stage")
            .help("At the job.");
    /** Harvest day. */
    public static final ColumnSpec LAST_HARVEST_DATE = date("Last harvest date", Quantities.LAST_HARVEST_DATE)
            .also("expected harvest date, harvest due, "
                    + "harvest date, expected harvest, date of harvest, planned harvest")
            .help("Day the crop is to be cut, grazed or picked.");
    /** Fit days. */
    public static final ColumnSpec WORKABLE_DAYS = number("Workable days", Quantities.WORKABLE_DAYS)
            .also("probability of a working day, probability of working day, "
                    + "probability of a good working day, probability of a workable day, "
                    + "probability of workable day, probability of good working days, "
                    + "working day probability, workable day probability, pwd, fraction of days workable, "
                    + "fraction of workable days, "
                    + "workable, workable day share, suitable, suitable days share, "
                    + "chance of a fit day, chance of fit day")
            .help("Share of calendar days fit for the work.");
    /** Hours per day. */
    public static final ColumnSpec HOURS_PER_DAY = Shared.HOURS_PER_DAY;

    /** A liquid other than water. */
    public static final ColumnSpec SPRAY_DENSITY = number("Spray density", Quantities.SPRAY_DENSITY)
            .also("specific gravity of solution, solution specific gravity, "
                    + "specific gravity of liquid, specific gravity of spray, solution density, "
                    + "density of solution, density of liquid, spray solution density, "
                    + "liquid density, density of the spray, spray SG, SG of spray, relative density of spray")
            .help("Kilograms in a litre of what is sprayed; blank means water.");
    /** Bands over the rows. */
    public static final ColumnSpec BAND_WIDTH = number("Band width", Quantities.BAND_WIDTH)
            .also("sprayed band, width of band")
            .help("Where only a band over each row is sprayed.");
    /** Wind. */
    public static final ColumnSpec WIND_SPEED =
            number("Wind speed", Quantities.WIND_SPEED).also("wind").help("Measured or forecast; say at which height.");
    /** At which height. */
    public static final ColumnSpec WIND_HEIGHT = number("Wind height", Quantities.WIND_HEIGHT)
            .also("wind measured at, height of wind, wind measuring height")
            .help("Forecasts are for 10 m; boom height is about 0.5 to 1 m.");
    /** Temperature. */
    public static final ColumnSpec AIR_TEMPERATURE = number("Air temperature", Quantities.AIR_TEMPERATURE)
            .also("dry bulb, dry bulb temperature, dry bulb temp, temperature, temp, air temp")
            .help("When spraying.");
    /** Humidity. */
    public static final ColumnSpec HUMIDITY = number("Humidity", Quantities.HUMIDITY)
            .also("rel humidity, relative humidity, RH")
            .help("When spraying.");

    /** Days fit for the work. */
    public static final ColumnSpec DAYS_AVAILABLE = number("Days available", Quantities.DAYS_THERE_ARE)
            .also("days suitable for fieldwork, days suitable for field work, "
                    + "fieldwork days available, field work days available, available working days, "
                    + "available fieldwork days, workdays available, work days available, "
                    + "number of field days, "
                    + "available days, days there are, field days available, "
                    + "working days available, fieldwork days, "
                    + "field work days, number of days available, days for the job, days to do it, "
                    + "days to finish, "
                    + "suitable field days, available field days, field days")
            .help("Days fit for the work, where you count them; else Earliest, Latest and Workable days.");

    /** Active ingredient in the product, beside its dose. */
    public static final ColumnSpec ACTIVE_CONTENT = Shared.ACTIVE_CONTENT;
    /** Nitrogen in the product, beside its dose. */
    public static final ColumnSpec NITROGEN_CONTENT = number("Nitrogen content", Quantities.NITROGEN_SHARE)
            .also("N content, percent nitrogen, percent N, % N, nitrogen in product, share of nitrogen")
            .help("Of the fertiliser, % by weight; where no product list tells it and the dose counts nitrogen.");
    /** Phosphate in the product, beside its dose. */
    public static final ColumnSpec PHOSPHATE_CONTENT = number("Phosphate content", Quantities.PHOSPHATE_SHARE)
            .also("P2O5 content, percent P2O5, % P2O5, phosphate in product")
            .help("P2O5 in the fertiliser, % by weight; where the dose counts it.");
    /** Potash in the product, beside its dose. */
    public static final ColumnSpec POTASH_CONTENT = number("Potash content", Quantities.POTASH_SHARE)
            .also("K2O content, percent K2O, % K2O, potash in product")
            .help("K2O in the fertiliser, % by weight; where the dose counts it.");

    /** Where it is told beside a dose what the product holds of what the dose may count. */
    public static ColumnSpec contentOf(Substance substance) {
        return switch (substance) {
            case ACTIVE -> ACTIVE_CONTENT;
            case NITROGEN -> NITROGEN_CONTENT;
            case PHOSPHATE -> PHOSPHATE_CONTENT;
            case POTASH -> POTASH_CONTENT;
        };
    }

    /** Litres on an area are of water or of product. */
    private static final String LITRES_ON_AREA =
            "l/ha, l/ac, l/acre, litres/ha, litres per ha, litres per hectare, litres/acre, litres per acre";

    /** Beside the water volume they are what is aimed at, or of something else. */
    private static final String TARGET_RATES =
            "desired application rate, target application rate, intended application rate, spray output, "
                    + "spray solution volume, spray solution";

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Jobs",
                    List.of(
                            "job list",
                            "operations",
                            "tasks",
                            "work plan",
                            "spray plan",
                            "work list",
                            "plan of work",
                            "job sheet",
                            "operation list",
                            "spray jobs"),
                    List.of(
                            HOLDING,
                            JOB,
                            FIELD,
                            OPERATION,
                            MACHINE,
                            TRACTOR,
                            MIX,
                            PRODUCT,
                            DOSE,
                            DOSE_UNIT,
                            WATER_VOLUME,
                            SPEED,
                            CUT,
                            BLOCK,
                            AFTER,
                            LAG,
                            EARLIEST,
                            LATEST,
                            GROWTH_STAGE,
                            LAST_HARVEST_DATE,
                            WORKABLE_DAYS,
                            HOURS_PER_DAY,
                            SPRAY_DENSITY,
                            BAND_WIDTH,
                            WIND_SPEED,
                            WIND_HEIGHT,
                            AIR_TEMPERATURE,
                            HUMIDITY,
                            DAYS_AVAILABLE,
                            ACTIVE_CONTENT,
                            NITROGEN_CONTENT,
                            PHOSPHATE_CONTENT,
                            POTASH_CONTENT))
            .identifiedBy(FIELD, BLOCK, JOB)
            .otherwise(HOLDING, Shared.WHOSE)
            .unitColumn(DOSE_UNIT, DOSE)
            .substitute(FIELD, BLOCK)
            .substitute(OPERATION, MIX, PRODUCT, DOSE, WATER_VOLUME)
            .unclear(List.of("rate", "broadcast rate"), WATER_VOLUME, DOSE)
            .unclear(List.of(LITRES_ON_AREA.split(", ")), WATER_VOLUME, DOSE)
            .unclear(
                    List.of("fit days", "days fit", "suitable days", "days suitable", "days ok"),
                    WORKABLE_DAYS,
                    DAYS_AVAILABLE)
            .told("rate, broadcast rate", DOSE, PRODUCT, WATER_VOLUME)
            .told("rate, broadcast rate", DOSE, PRODUCT, DOSE_UNIT)
            .toldMeasured("rate", WATER_VOLUME, DOSE)
            .otherwiseMeasured(WATER_VOLUME, "delivery rate, volume, vol, total rate, mix rate, appl rate, app rate")
            .otherwise(WATER_VOLUME, TARGET_RATES)
            .told(LITRES_ON_AREA, WATER_VOLUME, DOSE)
            .told(LITRES_ON_AREA, DOSE, PRODUCT, WATER_VOLUME)
            .toldWithout(PRODUCT, "l/ha", WATER_VOLUME, MIX)
            // Beside a product it may be that of the product out of its can.
            .unclear(List.of("specific gravity", "sg", "relative density"), SPRAY_DENSITY)
            .toldWithout(PRODUCT, "specific gravity", SPRAY_DENSITY)
            .toldWithout(PRODUCT, "sg", SPRAY_DENSITY)
            .toldWithout(PRODUCT, "relative density", SPRAY_DENSITY)
            .otherwiseMeasured(SPRAY_DENSITY, "weight of solution, solution weight, weight of spray")
            .otherwiseMeasured(WIND_SPEED, "windspeed, wind speed at boom, wind speed at nozzle")
            // Beside what is dosed; "N (kg/ha)" is the dose.
            .otherwiseMeasuredBeside(
                    ACTIVE_CONTENT, "active ingredient, active substance, active, ai, concentration, strength", DOSE)
            .otherwiseMeasuredBeside(NITROGEN_CONTENT, "n, nitrogen, total nitrogen", PRODUCT, DOSE)
            .otherwiseMeasuredBeside(PHOSPHATE_CONTENT, "p2o5, phosphate", PRODUCT, DOSE)
            .otherwiseMeasuredBeside(POTASH_CONTENT, "k2o, potash", PRODUCT, DOSE)
            .otherwise(DOSE_UNIT, "per, rate per, dose per")
            .otherwise(WORKABLE_DAYS, "chance of a dry day, chance of dry day, chance of a workable day")
            .otherwise(FIELD, "location")
            .otherwise(FIELD, Shared.SURVEYED_LAND)
            .otherwise(FIELD, "land, land name")
            .otherwise(PRODUCT, "fert, fertiliser, fertilizer, fertiliser name, fertilizer name")
            .otherwise(
                    DOSE,
                    "pint/ac, pint/acre, pint per ac, pint per acre, quart/ac, quart/acre, quart per ac, "
                            + "quart per acre, ounce/ac, ounce/acre, ounce per ac, ounce per acre, fluid ounce/ac, "
                            + "fluid ounce/acre, fluid ounce per ac, fluid ounce per acre, pound/ac, pound/acre, "
                            + "pound per ac, pound per acre, lbs/ac, lbs/acre, lbs per acre, kg/ha product, kg product/ha, "
                            + "l/ha product, l product/ha, kg/ha, kg per ha, kg/ac, kg/acre, kg per acre, lb/ac, lb/acre, "
                            + "lb per acre, g/ha, g/ac, g/acre, ml/ha, ml/ac, ml/acre, ml/l, oz/ac, oz/acre, fl oz/ac, "
                            + "fl oz/acre, pt/ac, pt/acre, pts/ac, qt/ac, qt/acre, oz/100 gal, fl oz/100 gal, lb/100 gal, "
                            + "pt/100 gal, qt/100 gal, g/100 l, ml/100 l, l/100 l, kg/100 l")
            .otherwiseWithout(BLOCK, FIELD, "crop, crop name")
            .otherwise(OPERATION, "task")
            .otherwise(
                    MACHINE,
                    "rig, rig used, spray rig, sprayer rig, boomspray, boom spray, boomsprayer, "
                            + "boom sprayer, applicator, with, using, spreader, slurry tanker, tanker, drill, "
                            + "planter, baler")
            .otherwise(JOB, "task, timing, spray timing, spray no, ref, reference, ref no")
            .otherwise(
                    EARLIEST,
                    "start by, window start, window opens, window from, earliest day, first date, planned start, "
                            + "planned, target date, when, treatment date, treated on, applied on, sprayed on")
            .otherwise(
                    LATEST,
                    "window end, window closes, window to, latest day, last date, finish date, must finish by, "
                            + "must be done by, complete by, due date, due, finish, to");
}
