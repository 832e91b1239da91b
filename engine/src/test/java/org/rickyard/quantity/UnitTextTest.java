package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTextTest {
    private static UnitText read(String text) {
        return UnitText.read(text, CustomaryUnits.UNSET);
    }

    static Stream<Arguments> certainTexts() {
        return Stream.of(
                Arguments.of("ha, Hectares, hectare, HA", Units.HA),
                Arguments.of("ac, acres, Acre, statute acres", Units.AC),
                Arguments.of("m, metres, meters", Units.M),
                Arguments.of("ft & in, ft and in, feet & inches", Units.FT),
                Arguments.of("cm", Units.CM),
                Arguments.of("mm", Units.MM),
                Arguments.of("km, kilometres", Units.KM),
                Arguments.of("ft, feet, ft-in", Units.FT),
                Arguments.of("in, inches, \"", Units.IN),
                Arguments.of("miles, mile", Units.MILE),
                Arguments.of("km/h, kph, km/hr, KM/H, km per hour, kmh", Units.KM_PER_H),
                Arguments.of("mph, miles per hour", Units.MPH),
                Arguments.of("L/ha, l/ha, litres per hectare, litres/ha, ltr/ha, liters per ha", Units.L_PER_HA),
                Arguments.of("L/ac, litres per acre", Units.L.over(Units.AC)),
                Arguments.of(
                        "US gal/1000 sq ft, gal (US) per 1,000 ft2",
                        Units.GAL_US.over(Unit.of("1000 ft2", Units.M2.dimension(), Ratio.of("92.90304")))),
                Arguments.of("gal (US)/ac, gal (US) per acre, gal(US)/ac, US gal/ac", Units.GAL_US.over(Units.AC)),
                Arguments.of("ton (US)/ac, ton (us) per acre", Units.SHORT_TON.over(Units.AC)),
                Arguments.of("bar", Units.BAR),
                Arguments.of("psi, PSI, lb/in2", Units.PSI),
                Arguments.of("kPa", Units.KPA),
                Arguments.of("MPa", Units.MPA),
                Arguments.of("m3, m³, cubic metres, cu m", Units.M3),
                Arguments.of("t, tonnes, tonne, metric tons", Units.T),
                Arguments.of("kg, kgs, kilos", Units.KG),
                Arguments.of("lb, lbs, pounds", Units.LB),
                Arguments.of("kg/m3, kg/m³, kg per cubic metre, kg FW/m3", Units.KG_PER_M3),
                Arguments.of("t/m3", Units.T_PER_M3),
                Arguments.of("lb/ft3, lbs/cu ft", Units.LB.over(Units.FT3)),
                Arguments.of("kg DM/m3, kg dry matter/m³, kg dm/m3", Units.KG_DM_PER_M3),
                Arguments.of("t/ha, tonnes per hectare, t fresh/ha", Units.T_PER_HA),
                Arguments.of("t DM/ha, tonnes DM per hectare, t dry matter/ha", Units.T_DM_PER_HA),
                Arguments.of("kg DM/ha", Units.KG_DM.over(Units.HA)),
                Arguments.of("%, per cent, percent, pct, % w/w, %w/w, % by weight", Units.PERCENT),
                Arguments.of("% DM", Units.PERCENT_DM),
                Arguments.of("g/kg", Units.PER_MILLE),
                Arguments.of("s, sec, seconds", Units.S),
                Arguments.of("min, mins, minutes", Units.MIN),
                Arguments.of("h, hr, hours", Units.H),
                Arguments.of("h/ha", Units.H.over(Units.HA)),
                Arguments.of("t/h, t/hr, tonnes per hour, tph", Units.T_PER_H),
                Arguments.of("m3/h, m³/hr", Units.M3_PER_H),
                Arguments.of("ha/h, ha/hr", Units.HA_PER_H),
                Arguments.of("ac/hr, acres per hour", Units.AC_PER_H),
                Arguments.of("kW", Units.KW),
                Arguments.of("hp, bhp, PTO hp", Units.HP),
                Arguments.of("PS, cv", Units.PS),
                Arguments.of("L/h, litres/hour", Units.L_PER_H),
                Arguments.of("L/min, l/min", Units.L_PER_MIN),
                Arguments.of("kg DM/day, kg DM/head/day, kg DM/hd/d", Units.KG_DM.over(Units.D)),
                Arguments.of("m/week, metres per week", Units.M.over(Units.WEEK)),
                Arguments.of("(m), [m], m.", Units.M),
                Arguments.of("£/ha, € / ha, $/ha", Units.MONEY_UNIT.over(Units.HA)));
    }

    @ParameterizedTest
    @MethodSource("certainTexts")
    void unitsAreReadAsAdvisersWriteThem(String texts, Unit expected) {
        for (String text : texts.split(", ")) {
            assertThat(read(text)).as(text).isInstanceOfSatisfying(UnitText.Known.class, known -> assertThat(
                            known.unit().isSameScale(expected))
                    .as("%s as %s", text, known.unit())
                    .isTrue());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"gal/ac", "gpa", "gallons per acre", "ton", "tons/ac", "pt/ac", "fl oz/ac", "cwt/ac", "gal"})
    void wordsThatTwoCountriesUnderstandDifferentlyAreAskedAbout(String text) {
        assertThat(read(text)).isInstanceOfSatisfying(UnitText.Ambiguous.class, ambiguous -> {
            assertThat(ambiguous.candidates()).hasSizeGreaterThan(1);
            assertThat(ambiguous.question()).contains("Customary units");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"gal/ac", "gpa", "gpm", "ton", "tons/ac", "pt/ac", "qt/ac", "fl oz/ac", "cwt/ac", "cwt"})
    void whoWritesWhatTheQuestionNamesIsNotAskedAgain(String text) {
        assertThat(read(text)).isInstanceOfSatisfying(UnitText.Ambiguous.class, ambiguous -> assertThat(
                        ambiguous.candidates())
                .allSatisfy(meant -> {
                    assertThat(ambiguous.question()).contains(meant.symbol());
                    assertThat(read(meant.symbol())).isInstanceOfSatisfying(UnitText.Known.class, known -> assertThat(
                                    known.unit().isSameScale(meant))
                            .isTrue());
                }));
    }

    /** A unit of fertiliser is a hundredth of a hundredweight of 112 lb. */
    @Test
    void aUnitPerAcreIsToldInKilogramsPerHectare() {
        double kilograms = Units.CWT.over(Units.AC).convert(0.01, Units.KG.over(Units.HA));
        assertThat(read("units/ac"))
                .isInstanceOfSatisfying(UnitText.Ambiguous.class, asked -> assertThat(asked.question())
                        .contains(" " + Math.rint(kilograms * 1e4) / 1e4 + " kg/ha"));
    }

    @ParameterizedTest
    @CsvSource({
        "gal, UK, 4.54609",
        "gal, US, 3.785411784",
        "pt, UK, 0.56826125",
        "pt, US, 0.473176473",
        "fl oz, UK, 0.0284130625",
        "fl oz, US, 0.0295735295625"
    })
    void customaryUnitsSettleVolumes(String text, CustomaryUnits customary, double litres) {
        assertThat(UnitText.read(text, customary)).isInstanceOfSatisfying(UnitText.Known.class, known -> assertThat(
                        known.unit().convert(1, Units.L))
                .isCloseTo(litres, within(1e-12)));
    }

    @ParameterizedTest
    @CsvSource({
        "ton, UK, 1016.0469088",
        "ton, US, 907.18474",
        "ton, METRIC, 1000",
        "cwt, UK, 50.80234544",
        "cwt, US, 45.359237"
    })
    void customaryUnitsSettleMasses(String text, CustomaryUnits customary, double kilograms) {
        assertThat(UnitText.read(text, customary)).isInstanceOfSatisfying(UnitText.Known.class, known -> assertThat(
                        known.unit().convert(1, Units.KG))
                .isCloseTo(kilograms, within(1e-9)));
    }

    @Test
    void metricCustomDoesNotSettleTheGallon() {
        assertThat(UnitText.read("gal/ac", CustomaryUnits.METRIC)).isInstanceOf(UnitText.Ambiguous.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"units/ac", "bales/ac", "loads/ac", "a-r-p", "% of liveweight"})
    void textsThatNoFactorCanConvertAreAskedAbout(String text) {
        assertThat(read(text)).isInstanceOfSatisfying(UnitText.Ambiguous.class, ambiguous -> {
            assertThat(ambiguous.candidates()).isEmpty();
            assertThat(ambiguous.question()).contains(": write ").endsWith(".");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "field", "Twelve Acre", "kg/", "/", "DM", "net", "furlongs", "ha/"})
    void otherWordsAreNoUnits(String text) {
        assertThat(read(text)).isInstanceOf(UnitText.Unknown.class);
    }

    @Test
    void moistureIsHundredLessDryMatter() {
        assertThat(UnitText.PERCENT_MOISTURE.convert(65, Units.PERCENT_DM)).isCloseTo(35, within(1e-12));
    }

    @Test
    void aColumnOfDryMatterNeedNotSaySoInItsUnit() {
        assertThat(UnitText.ofDryMatter(Units.KG_PER_M3)).isEqualTo(Units.KG_DM_PER_M3);
        assertThat(UnitText.ofDryMatter(Units.T_PER_HA)).isEqualTo(Units.T_DM_PER_HA);
        assertThat(UnitText.ofDryMatter(Units.PERCENT)).isEqualTo(Units.PERCENT_DM);
        assertThat(UnitText.ofDryMatter(Units.T_DM_PER_HA)).isEqualTo(Units.T_DM_PER_HA);
        assertThat(UnitText.ofDryMatter(Units.G.over(Units.KG)).convert(280, Units.PERCENT_DM))
                .isCloseTo(28, within(1e-12));
    }

    @Test
    void readingDoesNotDependOnTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(read("MIN")).isEqualTo(new UnitText.Known(Units.MIN));
            assertThat(read("LITRES")).isEqualTo(new UnitText.Known(Units.L));
        } finally {
            Locale.setDefault(before);
        }
    }
}
