package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.UnitDimension;

/**
 * The engine's units against Indriya, the reference implementation of JSR 385. The definitions are put together here
 * from those of the SI brochure, the 1959 yard and pound agreement and the two gallons, down the chain by which people
 * know them (an acre is 4,840 square yards), not from the factors that {@link Units} states.
 */
class UnitsAgainstIndriyaTest {
    private static final javax.measure.Unit<?> NUMBER = AbstractUnit.ONE;
    private static final javax.measure.Unit<?> M = tech.units.indriya.unit.Units.METRE;
    private static final javax.measure.Unit<?> KG = tech.units.indriya.unit.Units.KILOGRAM;
    private static final javax.measure.Unit<?> S = tech.units.indriya.unit.Units.SECOND;
    private static final javax.measure.Unit<?> K = tech.units.indriya.unit.Units.KELVIN;
    private static final javax.measure.Unit<?> KG_DM = base("kg DM", 'D');
    private static final javax.measure.Unit<?> MONEY = base("money", 'C');
    private static final javax.measure.Unit<?> PRODUCT = base("product unit", 'P');
    private static final javax.measure.Unit<?> SUBSTANCE = base("kg of substance", 'U');

    private static final Map<String, javax.measure.Unit<?>> ORACLE = oracle();

    private static Map<String, javax.measure.Unit<?>> oracle() {
        Map<String, javax.measure.Unit<?>> units = new TreeMap<>();
        javax.measure.Unit<?> yard = times(M, 9144, 10000);
        javax.measure.Unit<?> foot = times(yard, 1, 3);
        javax.measure.Unit<?> inch = times(foot, 1, 12);
        javax.measure.Unit<?> mile = times(yard, 1760, 1);
        javax.measure.Unit<?> hectare = times(M.pow(2), 100 * 100, 1);
        javax.measure.Unit<?> acre = times(yard.pow(2), 4840, 1);
        javax.measure.Unit<?> litre = times(M, 1, 10).pow(3);
        javax.measure.Unit<?> gallonUk = times(litre, 454609, 100000);
        javax.measure.Unit<?> gallonUs = times(inch.pow(3), 231, 1);
        javax.measure.Unit<?> tonne = times(KG, 1000, 1);
        javax.measure.Unit<?> pound = times(KG, 45359237, 100000000);
        javax.measure.Unit<?> minute = times(S, 60, 1);
        javax.measure.Unit<?> hour = times(minute, 60, 1);
        javax.measure.Unit<?> day = times(hour, 24, 1);
        javax.measure.Unit<?> standardGravity = times(M.divide(S.pow(2)), 980665, 100000);
        javax.measure.Unit<?> newton = KG.multiply(M).divide(S.pow(2));
        javax.measure.Unit<?> pascal = KG.multiply(M).divide(S.pow(2)).divide(M.pow(2));
        javax.measure.Unit<?> watt = KG.multiply(M).divide(S.pow(2)).multiply(M).divide(S);
        javax.measure.Unit<?> poundForce = pound.multiply(standardGravity);
        units.put("ONE", NUMBER);
        units.put("PERCENT", times(NUMBER, 1, 100));
        units.put("PER_MILLE", times(NUMBER, 1, 1000));
        units.put("M", M);
        units.put("CM", times(M, 1, 100));
        units.put("MM", times(M, 1, 1000));
        units.put("KM", times(M, 1000, 1));
        units.put("FT", foot);
        units.put("IN", inch);
        units.put("YD", yard);
        units.put("MILE", mile);
        units.put("M2", M.pow(2));
        units.put("HA", hectare);
        units.put("AC", acre);
        units.put("M3", M.pow(3));
        units.put("L", litre);
        units.put("ML", times(litre, 1, 1000));
        units.put("GAL_UK", gallonUk);
        units.put("GAL_US", gallonUs);
        units.put("QT_UK", times(gallonUk, 1, 4));
        units.put("QT_US", times(gallonUs, 1, 4));
        units.put("PT_UK", times(gallonUk, 1, 8));
        units.put("PT_US", times(gallonUs, 1, 8));
        units.put("FL_OZ_UK", times(gallonUk, 1, 160));
        units.put("FL_OZ_US", times(gallonUs, 1, 128));
        units.put("FT3", foot.pow(3));
        units.put("YD3", yard.pow(3));
        units.put("KG", KG);
        units.put("G", times(KG, 1, 1000));
        units.put("T", tonne);
        units.put("LB", pound);
        units.put("OZ", times(pound, 1, 16));
        units.put("CWT", times(pound, 112, 1));
        units.put("CWT_US", times(pound, 100, 1));
        units.put("LONG_TON", times(pound, 2240, 1));
        units.put("SHORT_TON", times(pound, 2000, 1));
        units.put("KG_DM", KG_DM);
        units.put("T_DM", times(KG_DM, 1000, 1));
        units.put("PERCENT_DM", times(KG_DM.divide(KG), 1, 100));
        units.put("S", S);
        units.put("MIN", minute);
        units.put("H", hour);
        units.put("D", day);
        units.put("WEEK", times(day, 7, 1));
        units.put("YR", times(day, 1461, 4));
        units.put("KM_PER_H", times(M, 1000, 1).divide(hour));
        units.put("M_PER_S", M.divide(S));
        units.put("MPH", mile.divide(hour));
        units.put("HA_PER_H", hectare.divide(hour));
        units.put("AC_PER_H", acre.divide(hour));
        units.put("T_PER_H", tonne.divide(hour));
        units.put("M3_PER_H", M.pow(3).divide(hour));
        units.put("L_PER_HA", litre.divide(hectare));
        units.put("L_PER_MIN", litre.divide(minute));
        units.put("L_PER_H", litre.divide(hour));
        units.put("T_PER_HA", tonne.divide(hectare));
        units.put("T_DM_PER_HA", times(KG_DM, 1000, 1).divide(hectare));
        units.put("KG_PER_M3", KG.divide(M.pow(3)));
        units.put("KG_DM_PER_M3", KG_DM.divide(M.pow(3)));
        units.put("T_PER_M3", tonne.divide(M.pow(3)));
        units.put("PA", pascal);
        units.put("BAR", times(pascal, 100000, 1));
        units.put("KPA", times(pascal, 1000, 1));
        units.put("MPA", times(pascal, 1000000, 1));
        units.put("PSI", poundForce.divide(inch.pow(2)));
        units.put("NEWTON", newton);
        units.put("KN", times(newton, 1000, 1));
        units.put("LBF", poundForce);
        units.put("KW", times(watt, 1000, 1));
        units.put("HP", times(poundForce.multiply(foot).divide(S), 550, 1));
        units.put("PS", times(KG.multiply(standardGravity).multiply(M).divide(S), 75, 1));
        units.put("KELVIN", K);
        units.put("CELSIUS", tech.units.indriya.unit.Units.CELSIUS);
        units.put("FAHRENHEIT", times(K, 5, 9).transform(new AddConverter(RationalNumber.of(45967, 100))));
        units.put("MONEY_UNIT", MONEY);
        units.put("PRODUCT_UNIT", PRODUCT);
        units.put("KG_SUBSTANCE", SUBSTANCE);
        units.put("SUBSTANCE_DOSE", SUBSTANCE.divide(hectare));
        units.put("DOSE", PRODUCT.divide(hectare));
        units.put("CONCENTRATION", PRODUCT.divide(litre));
        return units;
    }

    static Stream<String> constants() {
        return UnitConstants.all().keySet().stream();
    }

    static Stream<String> proportionalConstants() {
        return UnitConstants.all().entrySet().stream()
                .filter(entry -> UnitConstants.isProportional(entry.getValue()))
                .map(Map.Entry::getKey);
    }

    @Test
    void everyConstantHasADefinitionHere() {
        assertThat(ORACLE.keySet()).isEqualTo(UnitConstants.all().keySet());
    }

    @ParameterizedTest
    @MethodSource("constants")
    void theDimensionIsIndriyas(String constant) {
        assertThat(exponents(UnitConstants.all().get(constant))).isEqualTo(exponents(ORACLE.get(constant)));
    }

    @ParameterizedTest
    @MethodSource("proportionalConstants")
    void theFactorIsIndriyasToTheLastDigit(String constant) {
        assertThat(UnitConstants.all().get(constant).factor()).isEqualTo(factor(ORACLE.get(constant)));
    }

    @ParameterizedTest
    @MethodSource("temperatures")
    void temperaturesConvertAsIndriyaDoes(String from, String to, double value) {
        double expected = converter(ORACLE.get(from), ORACLE.get(to)).convert(value);
        Unit one = UnitConstants.all().get(from);
        assertThat(one.convert(value, UnitConstants.all().get(to))).isCloseTo(expected, within(1e-11));
    }

    static Stream<org.junit.jupiter.params.provider.Arguments> temperatures() {
        List<String> units = List.of("KELVIN", "CELSIUS", "FAHRENHEIT");
        return units.stream()
                .flatMap(from -> units.stream().flatMap(to -> Stream.of(-40.0, 0.0, 12.5, 20.0, 32.0, 451.0)
                        .map(value -> org.junit.jupiter.params.provider.Arguments.of(from, to, value))));
    }

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void compoundsOfAnyUnitsConvertAsInIndriya(int seed) {
        Random random = new Random(seed);
        List<String> names = proportionalConstants().toList();
        Unit ours = Units.ONE;
        Unit oursInBase = Units.ONE;
        javax.measure.Unit<?> theirs = NUMBER;
        for (int i = 0; i < 2 + random.nextInt(4); i++) {
            String name = names.get(random.nextInt(names.size()));
            int power = 1 + random.nextInt(2);
            Unit unit = UnitConstants.all().get(name);
            Unit inBase = Unit.of("base", unit.dimension(), Ratio.ONE).pow(power);
            if (random.nextBoolean()) {
                ours = ours.times(unit.pow(power));
                oursInBase = oursInBase.times(inBase);
                theirs = theirs.multiply(ORACLE.get(name).pow(power));
            } else {
                ours = ours.over(unit.pow(power));
                oursInBase = oursInBase.over(inBase);
                theirs = theirs.divide(ORACLE.get(name).pow(power));
            }
        }
        assertThat(ours.ratioTo(oursInBase)).as(ours.symbol()).isEqualTo(factor(theirs));
        assertThat(exponents(ours)).as(ours.symbol()).isEqualTo(exponents(theirs));
        double expected = factor(theirs).toDouble();
        assertThat(ours.convert(1, oursInBase)).isCloseTo(expected, within(4 * Math.ulp(expected)));
    }

    private static javax.measure.Unit<?> base(String symbol, char dimension) {
        return new BaseUnit<>(symbol, UnitDimension.parse(dimension));
    }

    private static javax.measure.Unit<?> times(javax.measure.Unit<?> unit, long numerator, long denominator) {
        return unit.transform(MultiplyConverter.of(RationalNumber.of(numerator, denominator)));
    }

    private static UnitConverter converter(javax.measure.Unit<?> from, javax.measure.Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (javax.measure.IncommensurableException e) {
            throw new AssertionError(e);
        }
    }

    private static Ratio factor(javax.measure.Unit<?> unit) {
        Number one = converter(unit, unit.getSystemUnit()).convert(RationalNumber.ONE);
        if (one instanceof RationalNumber rational) {
            return new Ratio(rational.getDividend(), rational.getDivisor());
        }
        if (one instanceof BigInteger || one instanceof Long || one instanceof Integer) {
            return Ratio.of(one.toString());
        }
        throw new AssertionError("Indriya gave " + one + ", a " + one.getClass() + ", which is not exact");
    }

    private static Map<String, Integer> exponents(Unit unit) {
        Map<String, Integer> exponents = new TreeMap<>();
        for (Dimension.Base base : Dimension.Base.values()) {
            if (unit.dimension().exponent(base) != 0) {
                exponents.put(base.name(), unit.dimension().exponent(base));
            }
        }
        return exponents;
    }

    private static Map<String, Integer> exponents(javax.measure.Unit<?> unit) {
        Map<String, Dimension.Base> bases = Map.of(
                "[L]", Dimension.Base.LENGTH,
                "[M]", Dimension.Base.MASS,
                "[T]", Dimension.Base.TIME,
                "[\u0398]", Dimension.Base.TEMPERATURE,
                "[C]", Dimension.Base.MONEY,
                "[D]", Dimension.Base.DRY_MATTER,
                "[P]", Dimension.Base.PRODUCT,
                "[U]", Dimension.Base.SUBSTANCE);
        javax.measure.Dimension dimension = unit.getDimension();
        Map<String, Integer> exponents = new TreeMap<>();
        if (dimension.equals(UnitDimension.NONE)) {
            return exponents;
        }
        Map<? extends javax.measure.Dimension, Integer> parts = dimension.getBaseDimensions();
        List<Map.Entry<? extends javax.measure.Dimension, Integer>> entries =
                new ArrayList<>((parts == null ? Map.of(dimension, 1) : parts).entrySet());
        for (Map.Entry<? extends javax.measure.Dimension, Integer> entry : entries) {
            exponents.put(bases.get(entry.getKey().toString()).name(), entry.getValue());
        }
        return exponents;
    }
}
