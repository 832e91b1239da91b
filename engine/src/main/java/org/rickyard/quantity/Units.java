package org.rickyard.quantity;

import static org.rickyard.quantity.Dimension.Base.DRY_MATTER;
import static org.rickyard.quantity.Dimension.Base.LENGTH;
import static org.rickyard.quantity.Dimension.Base.MASS;
import static org.rickyard.quantity.Dimension.Base.MONEY;
import static org.rickyard.quantity.Dimension.Base.PRODUCT;
import static org.rickyard.quantity.Dimension.Base.SUBSTANCE;
import static org.rickyard.quantity.Dimension.Base.TEMPERATURE;
import static org.rickyard.quantity.Dimension.Base.TIME;

/** The units of the trade. All factors are exact by definition (SI, the 1959 yard and pound, the UK and US gallons). */
public final class Units {
    private Units() {}

    /** A plain number. */
    public static final Unit ONE = Unit.of("", Dimension.NONE, Ratio.ONE);
    /** Per cent. */
    public static final Unit PERCENT = Unit.of("%", Dimension.NONE, Ratio.of(1, 100));
    /** Grams per kilogram, as laboratories give dry matter. */
    public static final Unit PER_MILLE = Unit.of("‰", Dimension.NONE, Ratio.of(1, 1000));

    /** Metre. */
    public static final Unit M = Unit.of("m", Dimension.of(LENGTH), Ratio.ONE);
    /** Centimetre. */
    public static final Unit CM = scaled("cm", M, "0.01");
    /** Millimetre. */
    public static final Unit MM = scaled("mm", M, "0.001");
    /** Kilometre. */
    public static final Unit KM = scaled("km", M, "1000");
    /** Foot. */
    public static final Unit FT = scaled("ft", M, "0.3048");
    /** Inch. */
    public static final Unit IN = scaled("in", M, "0.0254");
    /** Yard. */
    public static final Unit YD = scaled("yd", M, "0.9144");
    /** Mile. */
    public static final Unit MILE = scaled("mile", M, "1609.344");

    /** Square metre. */
    public static final Unit M2 = M.pow(2).named("m2");
    /** Hectare. */
    public static final Unit HA = scaled("ha", M2, "10000");
    /** International acre. */
    public static final Unit AC = scaled("ac", M2, "4046.8564224");

    /** Cubic metre. */
    public static final Unit M3 = M.pow(3).named("m3");
    /** Litre. */
    public static final Unit L = scaled("L", M3, "0.001");
    /** Millilitre. */
    public static final Unit ML = scaled("ml", L, "0.001");
    /** UK gallon. */
    public static final Unit GAL_UK = scaled("gal(UK)", L, "4.54609");
    /** US gallon. */
    public static final Unit GAL_US = scaled("gal(US)", L, "3.785411784");
    /** UK pint. */
    public static final Unit PT_UK = scaled("pt(UK)", L, "0.56826125");
    /** US pint. */
    public static final Unit PT_US = scaled("pt(US)", L, "0.473176473");
    /** UK quart. */
    public static final Unit QT_UK = scaled("qt(UK)", PT_UK, "2");
    /** US quart. */
    public static final Unit QT_US = scaled("qt(US)", PT_US, "2");
    /** UK fluid ounce. */
    public static final Unit FL_OZ_UK = scaled("fl oz(UK)", L, "0.0284130625");
    /** US fluid ounce. */
    public static final Unit FL_OZ_US = scaled("fl oz(US)", L, "0.0295735295625");
    /** Cubic foot. */
    public static final Unit FT3 = FT.pow(3).named("ft3");
    /** Cubic yard. */
    public static final Unit YD3 = YD.pow(3).named("yd3");

    /** Kilogram. */
    public static final Unit KG = Unit.of("kg", Dimension.of(MASS), Ratio.ONE);
    /** Gram. */
    public static final Unit G = scaled("g", KG, "0.001");
    /** Tonne. */
    public static final Unit T = scaled("t", KG, "1000");
    /** Pound. */
    public static final Unit LB = scaled("lb", KG, "0.45359237");
    /** Ounce (avoirdupois). */
    public static final Unit OZ = scaled("oz", KG, "0.028349523125");
    /** UK hundredweight. */
    public static final Unit CWT = scaled("cwt(UK)", KG, "50.80234544");
    /** US hundredweight of 100 lb. */
    public static final Unit CWT_US = scaled("cwt(US)", LB, "100");
    /** Long ton. */
    public static final Unit LONG_TON = scaled("long ton", KG, "1016.0469088");
    /** Short ton. */
    public static final Unit SHORT_TON = scaled("short ton", KG, "907.18474");

    /** Kilogram of dry matter. */
    public static final Unit KG_DM = Unit.of("kg DM", Dimension.of(DRY_MATTER), Ratio.ONE);
    /** Tonne of dry matter. */
    public static final Unit T_DM = scaled("t DM", KG_DM, "1000");
    /** Dry matter content, per cent of the fresh mass. */
    public static final Unit PERCENT_DM = Unit.of("% DM", KG_DM.over(KG).dimension(), Ratio.of(1, 100));

    /** Second. */
    public static final Unit S = Unit.of("s", Dimension.of(TIME), Ratio.ONE);
    /** Minute. */
    public static final Unit MIN = scaled("min", S, "60");
    /** Hour. */
    public static final Unit H = scaled("h", S, "3600");
    /** Day of 24 hours. */
    public static final Unit D = scaled("d", S, "86400");
    /** Week. */
    public static final Unit WEEK = scaled("week", D, "7");
    /** Year of 365.25 days. */
    public static final Unit YR = scaled("yr", D, "365.25");

    /** Kilometres per hour. */
    public static final Unit KM_PER_H = KM.over(H);
    /** Metres per second. */
    public static final Unit M_PER_S = M.over(S);
    /** Miles per hour. */
    public static final Unit MPH = MILE.over(H).named("mph");

    /** Hectares per hour. */
    public static final Unit HA_PER_H = HA.over(H);
    /** Acres per hour. */
    public static final Unit AC_PER_H = AC.over(H);
    /** Tonnes per hour. */
    public static final Unit T_PER_H = T.over(H);
    /** Cubic metres per hour. */
    public static final Unit M3_PER_H = M3.over(H);

    /** Litres per hectare. */
    public static final Unit L_PER_HA = L.over(HA);
    /** Litres per minute. */
    public static final Unit L_PER_MIN = L.over(MIN);
    /** Litres per hour. */
    public static final Unit L_PER_H = L.over(H);

    /** Tonnes per hectare. */
    public static final Unit T_PER_HA = T.over(HA);
    /** Tonnes of dry matter per hectare. */
    public static final Unit T_DM_PER_HA = T_DM.over(HA);
    /** Kilograms per cubic metre. */
    public static final Unit KG_PER_M3 = KG.over(M3);
    /** Kilograms of dry matter per cubic metre. */
    public static final Unit KG_DM_PER_M3 = KG_DM.over(M3);
    /** Tonnes per cubic metre. */
    public static final Unit T_PER_M3 = T.over(M3);

    /** Pascal. */
    public static final Unit PA = KG.over(M).over(S.pow(2)).named("Pa");
    /** Bar. */
    public static final Unit BAR = scaled("bar", PA, "100000");
    /** Kilopascal. */
    public static final Unit KPA = scaled("kPa", PA, "1000");
    /** Megapascal. */
    public static final Unit MPA = scaled("MPa", PA, "1000000");
    /** Pound-force per square inch: lb × standard gravity 9.80665 m/s2 over in2. */
    public static final Unit PSI = Unit.of(
            "psi",
            PA.dimension(),
            LB.factor().times(Ratio.of("9.80665")).over(IN.factor().pow(2)));

    /** Newton. */
    public static final Unit NEWTON = KG.times(M).over(S.pow(2)).named("N");
    /** Kilonewton. */
    public static final Unit KN = scaled("kN", NEWTON, "1000");
    /** Pound-force: lb × standard gravity 9.80665 m/s2. */
    public static final Unit LBF =
            Unit.of("lbf", NEWTON.dimension(), LB.factor().times(Ratio.of("9.80665")));

    /** Kilowatt. */
    public static final Unit KW =
            Unit.of("kW", KG.times(M.pow(2)).over(S.pow(3)).dimension(), Ratio.of(1000));
    /** Mechanical horsepower: 550 ft·lbf/s. */
    public static final Unit HP = Unit.of(
            "hp",
            KW.dimension(),
            Ratio.of(550).times(FT.factor()).times(LB.factor()).times(Ratio.of("9.80665")));
    /** Metric horsepower: 75 kgf·m/s. */
    public static final Unit PS = Unit.of("PS", KW.dimension(), Ratio.of("735.49875"));

    /** Kelvin. */
    public static final Unit KELVIN = Unit.of("K", Dimension.of(TEMPERATURE), Ratio.ONE);
    /** Degree Celsius. */
    public static final Unit CELSIUS = new Unit("°C", KELVIN.dimension(), Ratio.ONE, Ratio.of("273.15"));
    /** Degree Fahrenheit. */
    public static final Unit FAHRENHEIT = new Unit(
            "°F", KELVIN.dimension(), Ratio.of(5, 9), Ratio.of("459.67").times(Ratio.of(5, 9)));

    /** The workbook's currency. */
    public static final Unit MONEY_UNIT = Unit.of("money", Dimension.of(MONEY), Ratio.ONE);

    /** A product's own unit (litre, kilogram, tablet), shown per row. */
    public static final Unit PRODUCT_UNIT = Unit.of("product unit", Dimension.of(PRODUCT), Ratio.ONE);
    /** Dose: product unit per hectare. */
    public static final Unit DOSE = PRODUCT_UNIT.over(HA);
    /** Concentration: product unit per litre of spray. */
    public static final Unit CONCENTRATION = PRODUCT_UNIT.over(L);

    /** Kilogram of what acts or feeds in a product, and not of the product. */
    public static final Unit KG_SUBSTANCE = Unit.of("kg", Dimension.of(SUBSTANCE), Ratio.ONE);
    /** Dose by what acts or feeds in a product: kilograms of active ingredient or nutrient per hectare. */
    public static final Unit SUBSTANCE_DOSE = KG_SUBSTANCE.over(HA);

    private static Unit scaled(String symbol, Unit base, String factor) {
        return Unit.of(symbol, base.dimension(), base.factor().times(Ratio.of(factor)));
    }
}
