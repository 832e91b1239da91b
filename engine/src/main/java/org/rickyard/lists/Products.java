package org.rickyard.lists;

import static org.rickyard.lists.ColumnSpec.dose;
import static org.rickyard.lists.ColumnSpec.number;
import static org.rickyard.lists.ColumnSpec.text;
import static org.rickyard.lists.ColumnSpec.words;

import java.util.List;
import org.rickyard.quantity.Substance;
import org.rickyard.trade.Quantities;

/**
 * The product list.
 *
 * <p>Doses are read in the unit of their header ("Dose (L/ha)") or of {@link #UNIT} ("L", "L/ha", "ml/100 L"), row by
 * row; {@link ListRows#unit} is then in product unit per area or per spray, and {@link ListRows#productUnit} says
 * whether the product unit is L, kg or tablet. Pack size, stock and price are in the same product unit; a price per
 * pack has the unit money alone.
 */
public final class Products {
    private Products() {}

    /** How what a volume holds is told as the share by weight that the contents of a product are; written under the headers said. */
    public static String shareOfVolume(String written) {
        return "divide kg/m3 (or g/L) by 10 × the density in kg/L and write it under " + written
                + ", with the Density beside it: 2.5 kg/m3 at 1 kg/L are 0.25 %.";
    }

    /** Its name. */
    public static final ColumnSpec PRODUCT = Shared.PRODUCT.needed();
    /** What it is measured in. */
    public static final ColumnSpec UNIT = words("Unit", Quantities.PRODUCT_UNIT, Choices.PRODUCT_UNIT)
            .also("product unit, units, measured in, dose unit, formulation unit, UOM")
            .help("L, kg or tablet; or a dose unit such as g/ha or ml/100 L.");
    /** Dose where no job or mix gives one. */
    public static final ColumnSpec DOSE = dose(
                    "Dose", Quantities.SPREAD_DOSE, Quantities.CONCENTRATION, Quantities.SUBSTANCE_DOSE)
            .also("usual rate, standard dose, standard rate, typical dose, recommended rate, normal rate, "
                    + "dosage, dosage rate, dose rate, product rate, usual dose, label rate, label dose, normal dose, "
                    + "recommended dose, rate of product")
            .help("Used where neither job nor mix says a dose, and shown as a default.");
    /** Highest dose at one application. */
    public static final ColumnSpec HIGHEST_DOSE = dose(
                    "Highest dose", Quantities.HIGHEST_DOSE, Quantities.HIGHEST_CONCENTRATION)
            .also("highest permitted dose, maximum permitted dose, max permitted dose, max label dose, "
                    + "max label rate, label max, highest rate, max dose rate, max dose per application, "
                    + "max application rate, maximum dose, max dose, max rate, maximum individual dose, "
                    + "max individual dose, max single dose, maximum rate")
            .help("At one application, from the label.");
    /** Highest dose in all. */
    public static final ColumnSpec HIGHEST_TOTAL_DOSE = dose(
                    "Highest total dose", Quantities.HIGHEST_TOTAL_DOSE, Quantities.HIGHEST_CONCENTRATION)
            .also("maximum total dose, max total dose, season maximum, max total, max season dose, "
                    + "max dose per season, maximum dose per season, max dose per crop, maximum dose per crop, "
                    + "max dose per year, "
                    + "maximum dose per year, max annual dose, maximum annual dose, season max, "
                    + "max total dose per season, maximum total dose per season, "
                    + "max per season, maximum per season, max per crop")
            .help("In a season or crop, from the label.");
    /** Most applications. */
    public static final ColumnSpec MOST_APPLICATIONS = number("Most applications", Quantities.MOST_APPLICATIONS)
            .also("max sprays, max apps, max no of apps, max number of treatments, "
                    + "maximum applications, max applications, max number of applications, max treatments, "
                    + "maximum number of applications, number of applications")
            .help("To one crop, from the label.");
    /** Days between. */
    public static final ColumnSpec LEAST_INTERVAL = number("Least interval", Quantities.LEAST_INTERVAL)
            .also("min days between sprays, "
                    + "minimum interval, min interval, interval, interval between applications, "
                    + "retreatment interval")
            .help("Days between two applications, from the label.");
    /** Days before harvest. */
    public static final ColumnSpec HARVEST_INTERVAL = number("Harvest interval", Quantities.HARVEST_INTERVAL)
            .also("withdrawal period, days before harvest, preharvest interval, "
                    + "PHI, pre harvest interval, WHP, withholding period, days to harvest, harvest withholding")
            .help("Days from the last application to harvest, from the label.");
    /** Latest stage. */
    public static final ColumnSpec LATEST_STAGE = text("Latest stage", Quantities.LATEST_STAGE)
            .also("latest growth stage, latest timing, latest time of application, latest GS")
            .help("From the label.");
    /** Least water. */
    public static final ColumnSpec LOWEST_WATER_VOLUME = number("Lowest water volume", Quantities.LOWEST_WATER_VOLUME)
            .also("minimum water volume, min water volume, min water, water min, minimum water, lowest water")
            .help("From the label.");
    /** Most water. */
    public static final ColumnSpec HIGHEST_WATER_VOLUME = number(
                    "Highest water volume", Quantities.HIGHEST_WATER_VOLUME)
            .also("maximum water volume, max water volume, max water, water max, maximum water, highest water")
            .help("From the label.");
    /** Droplet class. */
    public static final ColumnSpec SPRAY_QUALITY = Shared.SPRAY_QUALITY.help("Asked for by the label.");
    /** Buffer category. */
    public static final ColumnSpec BUFFER_CATEGORY = text("Buffer category", Quantities.BUFFER_CATEGORY)
            .also("buffer, buffer zone, buffer zone category, LERAP, LERAP category")
            .help("From the label.");
    /** Authorisation number. */
    public static final ColumnSpec AUTHORISATION_NUMBER = text("Authorisation no.", Quantities.AUTHORISATION_NUMBER)
            .also("authorisation number, authorization no, authorization number, MAPP, MAPP no, "
                    + "PCS no, PCS, registration no, reg no, EPA reg no, EPA reg, registration number, MAPP number")
            .help("From the label.");
    /** Density. */
    public static final ColumnSpec DENSITY = number("Density", Quantities.PRODUCT_DENSITY)
            .also("specific gravity, SG, relative density, density of product, bulk density")
            .help("Kilograms in a litre; of what is spread or drilled, as it lies in the hopper.");
    /** Pack size. */
    public static final ColumnSpec PACK_SIZE = number("Pack size", Quantities.PACK_SIZE)
            .also("pack volume, bottle size, drum size, pack contents, "
                    + "pack, container size, container, can size, bag size, package size, "
                    + "pkg size, pkg, jug size, drum, jug")
            .help("In the product's unit.");
    /** Stock. */
    public static final ColumnSpec STOCK = number("Stock", Quantities.STOCK)
            .also("current stock, present stock, stock level, stock held, quantity in stock, amount in stock, "
                    + "stock on hand, "
                    + "in stock, on hand, stock in store, quantity in store, in store")
            .help("In the product's unit.");
    /** Price. */
    public static final ColumnSpec PRICE = number("Price", Quantities.PRICE)
            .or(Quantities.PACK_PRICE)
            .also("unit price, cost, price per unit, price per litre, price per kg, price per pack, pack price")
            .help("For one product unit; write Price per pack if it is that.");
    /** Nitrogen in it. */
    public static final ColumnSpec NITROGEN = number("Nitrogen", Quantities.NITROGEN_SHARE)
            .also("percent nitrogen, percent N, "
                    + "nitrogen content, N content, nitrogen in product, share of nitrogen, total nitrogen")
            .help("Of a fertiliser, % by weight; one in litres needs its Density too.");

    /** Active ingredient in it. */
    public static final ColumnSpec ACTIVE_CONTENT = Shared.ACTIVE_CONTENT;
    /** Phosphate in it. */
    public static final ColumnSpec PHOSPHATE = number("Phosphate", Quantities.PHOSPHATE_SHARE)
            .also("P2O5, percent P2O5, P2O5 content, phosphate content, phosphate in product")
            .help("P2O5 in a fertiliser, % by weight; asked where doses count it.");
    /** Potash in it. */
    public static final ColumnSpec POTASH = number("Potash", Quantities.POTASH_SHARE)
            .also("K2O, percent K2O, K2O content, potash content, potash in product")
            .help("K2O in a fertiliser, % by weight; asked where doses count it.");

    /** Where it is told what a product holds of what a dose may count. */
    public static ColumnSpec contentOf(Substance substance) {
        return switch (substance) {
            case ACTIVE -> ACTIVE_CONTENT;
            case NITROGEN -> NITROGEN;
            case PHOSPHATE -> PHOSPHATE;
            case POTASH -> POTASH;
        };
    }

    /** The list. */
    public static final ListSpec LIST = new ListSpec(
                    "Products",
                    List.of(
                            "product list",
                            "chemicals",
                            "pesticides",
                            "spray store",
                            "chemical list",
                            "chemical store",
                            "plant protection products",
                            "agrochemicals",
                            "sprays"),
                    List.of(
                            PRODUCT,
                            UNIT,
                            DOSE,
                            HIGHEST_DOSE,
                            HIGHEST_TOTAL_DOSE,
                            MOST_APPLICATIONS,
                            LEAST_INTERVAL,
                            HARVEST_INTERVAL,
                            LATEST_STAGE,
                            LOWEST_WATER_VOLUME,
                            HIGHEST_WATER_VOLUME,
                            SPRAY_QUALITY,
                            BUFFER_CATEGORY,
                            AUTHORISATION_NUMBER,
                            DENSITY,
                            PACK_SIZE,
                            STOCK,
                            PRICE,
                            NITROGEN,
                            ACTIVE_CONTENT,
                            PHOSPHATE,
                            POTASH))
            .identifiedBy(PRODUCT)
            .needsHeaders(3)
            .unitColumn(UNIT, DOSE, HIGHEST_DOSE, HIGHEST_TOTAL_DOSE, PACK_SIZE, STOCK, PRICE)
            .unclear(List.of("rate"), DOSE, LOWEST_WATER_VOLUME)
            .otherwise(PRODUCT, "name")
            .otherwiseMeasured(NITROGEN, "n")
            .otherwiseBeside(NITROGEN, "n", PHOSPHATE, POTASH)
            .otherwiseMeasured(
                    ACTIVE_CONTENT, "active ingredient, active substance, active, ai, concentration, strength")
            .otherwiseMeasured(DENSITY, "weight of solution, solution weight, product weight, liquid weight, weight")
            .otherwise(DENSITY, "kg/l, kg per litre")
            // As likely what a gallon holds of the active ingredient.
            .unclear(List.of("lb/gal", "lbs/gal", "lb per gallon", "lbs per gallon", "pounds per gallon"), DENSITY)
            .otherwise(NITROGEN, "analysis N, N analysis")
            .otherwise(PACK_SIZE, "bag, sack, tub, keg, big bag, bag weight, sack weight")
            .ifNamed(PRODUCT, "chemical name, spray, item, description, herbicide, name of product")
            .told("rate", DOSE, UNIT)
            .told("rate", DOSE, HIGHEST_DOSE)
            .unclear(List.of("water volume", "water rate"), LOWEST_WATER_VOLUME, HIGHEST_WATER_VOLUME);
}
