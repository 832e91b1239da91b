package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {
    @Test
    void metresAndHectaresDoNotMeet() {
        assertThatThrownBy(() -> Units.M.ratioTo(Units.HA))
                .isInstanceOf(UnitMismatchException.class)
                .hasMessage("'m' (length) and 'ha' (length^2) do not measure the same kind of thing");
        assertThatThrownBy(() -> Units.M.convert(1, Units.HA)).isInstanceOf(UnitMismatchException.class);
        assertThat(Units.M.isCompatible(Units.HA)).isFalse();
    }

    @Test
    void freshAndDryMatterDoNotMeet() {
        assertThatThrownBy(() -> Units.T_PER_HA.ratioTo(Units.T_DM_PER_HA))
                .isInstanceOf(UnitMismatchException.class)
                .hasMessage("'t/ha' (length^-2·mass) and 't DM/ha' (length^-2·dry matter)"
                        + " do not measure the same kind of thing");
        assertThatThrownBy(() -> Units.KG_DM_PER_M3.convert(240, Units.KG_PER_M3))
                .isInstanceOf(UnitMismatchException.class);
    }

    @Test
    void aTemperatureAndALengthDoNotMeetThoughTheOffsetsDiffer() {
        assertThatThrownBy(() -> Units.CELSIUS.convert(20, Units.M))
                .isInstanceOf(UnitMismatchException.class)
                .hasMessage("'°C' (temperature) and 'm' (length) do not measure the same kind of thing");
    }

    @Test
    void freshTimesDryMatterContentIsDryMatter() {
        assertThat(Units.T.times(Units.PERCENT_DM).ratioTo(Units.T_DM)).isEqualTo(Ratio.of(1, 100));
    }

    @Test
    void theFactorsOfTheTradesRulesComeOutOfTheUnits() {
        Unit outputByWidth = Units.KM_PER_H.times(Units.M);
        assertThat(outputByWidth.ratioTo(Units.HA_PER_H)).hasToString("1/10");
        Unit flow = Units.L_PER_HA.times(Units.KM_PER_H).times(Units.M);
        assertThat(flow.ratioTo(Units.L_PER_MIN)).hasToString("1/600");
    }

    @Test
    void theSymbolSaysByEachOfWhat() {
        assertThat(Units.T.over(Units.D).isPer(Units.D)).isTrue();
        assertThat(Units.T.over(Units.H).isPer(Units.D)).isFalse();
        assertThat(Units.D.isPer(Units.D)).isFalse();
        assertThat(Units.T.over(Units.D).counted()).isEqualTo("t");
        assertThat(Units.G.over(Units.KG).over(Units.D).counted()).isEqualTo("g/kg");
        assertThat(Units.L.counted()).isEqualTo("L");
    }

    @Test
    void symbolsAreWrittenAsTheTradeDoes() {
        assertThat(Units.L_PER_HA).hasToString("L/ha");
        assertThat(Units.KM_PER_H.times(Units.M)).hasToString("km/h·m");
        assertThat(Units.ONE.over(Units.H)).hasToString("1/h");
        assertThat(Units.ONE.times(Units.H)).hasToString("h");
        assertThat(Units.H.times(Units.ONE)).hasToString("h");
        assertThat(Units.H.over(Units.ONE)).hasToString("h");
        assertThat(Units.ONE).hasToString("-");
        assertThat(Units.S.pow(2)).hasToString("s^2");
    }

    @ParameterizedTest
    @CsvSource({"0, 32", "100, 212", "-40, -40", "37, 98.6", "20, 68"})
    void celsiusAndFahrenheitAreAffine(double celsius, double fahrenheit) {
        assertThat(Units.CELSIUS.convert(celsius, Units.FAHRENHEIT)).isCloseTo(fahrenheit, within(1e-10));
        assertThat(Units.FAHRENHEIT.convert(fahrenheit, Units.CELSIUS)).isCloseTo(celsius, within(1e-10));
        assertThat(Units.CELSIUS.convert(celsius, Units.KELVIN)).isCloseTo(celsius + 273.15, within(1e-10));
    }

    @Test
    void aTemperatureWithAnOffsetCannotBePartOfACompound() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Units.CELSIUS.times(Units.H))
                .withMessage("°C has an offset and cannot be multiplied or divided");
        assertThatIllegalArgumentException().isThrownBy(() -> Units.H.over(Units.FAHRENHEIT));
        assertThatIllegalArgumentException().isThrownBy(() -> Units.CELSIUS.pow(2));
        assertThatIllegalArgumentException().isThrownBy(() -> Units.CELSIUS.ratioTo(Units.KELVIN));
    }

    @Test
    void theSameScaleUnderAnotherNameChangesNoBitOfAValue() {
        double value = 0.1 + 0.2;
        assertThat(Units.KG.named("kilos").convert(value, Units.KG)).isEqualTo(value);
        assertThat(Units.CELSIUS.convert(value, Units.CELSIUS)).isEqualTo(value);
        assertThat(Units.KG_PER_M3.isSameScale(Units.T_PER_M3)).isFalse();
    }

    @Test
    void conversionThereAndBackStaysWithinRounding() {
        UnitConstants.all().forEach((name, unit) -> {
            Unit base = Unit.of("base", unit.dimension(), Ratio.ONE);
            assertThat(base.convert(unit.convert(17.3, base), unit)).as(name).isCloseTo(17.3, within(1e-12));
        });
    }
}
