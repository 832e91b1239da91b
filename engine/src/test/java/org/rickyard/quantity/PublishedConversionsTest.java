package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions against published figures, each at the rounding at which it was published. */
class PublishedConversionsTest {
    /**
     * NIST Special Publication 811 (2008), Guide for the Use of the SI, appendix B.8/B.9: factors to seven digits, or
     * fewer where that is exact. Its acre rests on the US survey foot and is left out; its years are other years.
     */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "HA, M2, 1.0E+04",
        "FT, M, 3.048E-01",
        "IN, M, 2.54E-02",
        "MILE, M, 1.609344E+03",
        "YD, M, 9.144E-01",
        "CWT, KG, 5.080235E+01",
        "OZ, KG, 2.834952E-02",
        "LB, KG, 4.535924E-01",
        "LONG_TON, KG, 1.016047E+03",
        "T, KG, 1.0E+03",
        "SHORT_TON, KG, 9.071847E+02",
        "HP, KW, 7.456999E-01",
        "PS, KW, 7.354988E-01",
        "BAR, PA, 1.0E+05",
        "PSI, PA, 6.894757E+03",
        "D, S, 8.64E+04",
        "H, S, 3.6E+03",
        "MIN, S, 6.0E+01",
        "FL_OZ_US, M3, 2.957353E-05",
        "FL_OZ_UK, M3, 2.841306E-05",
        "GAL_UK, M3, 4.54609E-03",
        "GAL_US, M3, 3.785412E-03",
        "L, M3, 1.0E-03",
        "PT_US, M3, 4.731765E-04",
        "FT3, M3, 2.831685E-02",
        "YD3, M3, 7.645549E-01"
    })
    void nistGuideToTheSi(String from, String to, BigDecimal published) {
        Ratio ratio = unit(from).ratioTo(unit(to));
        BigDecimal ours = new BigDecimal(ratio.numerator())
                .divide(new BigDecimal(ratio.denominator()), new MathContext(7, RoundingMode.HALF_UP));
        assertThat(ours).isEqualByComparingTo(published);
    }

    /** Irish Independent, Farm Ireland, "Useful formulae for working out nozzle selection, forward speed, ...". */
    @Tag("published")
    @Test
    void farmIrelandGallonsAnAcre() {
        assertThat(rounded(Units.GAL_UK.over(Units.AC).convert(1, Units.L_PER_HA), 1))
                .isEqualTo("11.2");
    }

    /** FAO, document X5738E, appendix A, conversion tables; those of its figures that are rounded, not cut off. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "LB, KG, 0.454",
        "SHORT_TON, T, 0.907",
        "KG, LB, 2.205",
        "T, SHORT_TON, 1.102",
        "IN, MM, 25.4",
        "FT, CM, 30.48",
        "YD, M, 0.914",
        "MILE, KM, 1.609",
        "KM, MILE, 0.62",
        "HA, AC, 2.47"
    })
    void faoConversionTables(String from, String to, String published) {
        assertThat(rounded(unit(from).convert(1, unit(to)), new BigDecimal(published).scale()))
                .isEqualTo(published);
    }

    /** Rates that no source at hand prints: worked out by hand from the definitions, and as GNU units 2.22 gives them. */
    @Tag("derived")
    @Test
    void ratesPerAcreAndPerHectare() {
        assertThat(rounded(Units.GAL_UK.over(Units.AC).convert(1, Units.L_PER_HA), 6))
                .isEqualTo("11.233633");
        assertThat(rounded(Units.GAL_US.over(Units.AC).convert(1, Units.L_PER_HA), 6))
                .isEqualTo("9.353956");
        assertThat(rounded(Units.L_PER_HA.convert(200, Units.GAL_UK.over(Units.AC)), 4))
                .isEqualTo("17.8037");
        assertThat(rounded(Units.L_PER_HA.convert(200, Units.GAL_US.over(Units.AC)), 4))
                .isEqualTo("21.3813");
        assertThat(rounded(Units.GAL_UK.convert(1, Units.GAL_US), 7)).isEqualTo("1.2009499");
        assertThat(rounded(Units.HA.convert(1, Units.AC), 7)).isEqualTo("2.4710538");
        assertThat(rounded(Units.LB.over(Units.AC).convert(1, Units.KG.over(Units.HA)), 7))
                .isEqualTo("1.1208512");
        assertThat(rounded(Units.PT_UK.over(Units.AC).convert(1, Units.L_PER_HA), 7))
                .isEqualTo("1.4042041");
        assertThat(rounded(Units.FL_OZ_UK.over(Units.AC).convert(1, Units.ML.over(Units.HA)), 6))
                .isEqualTo("70.210206");
        assertThat(rounded(Units.FL_OZ_US.over(Units.AC).convert(1, Units.ML.over(Units.HA)), 6))
                .isEqualTo("73.077783");
        assertThat(rounded(Units.OZ.over(Units.AC).convert(1, Units.G.over(Units.HA)), 6))
                .isEqualTo("70.053197");
        assertThat(rounded(Units.LONG_TON.over(Units.AC).convert(1, Units.T_PER_HA), 9))
                .isEqualTo("2.510706590");
        assertThat(rounded(Units.SHORT_TON.over(Units.AC).convert(1, Units.T_PER_HA), 9))
                .isEqualTo("2.241702312");
        assertThat(rounded(Units.T_PER_HA.convert(1, Units.LONG_TON.over(Units.AC)), 9))
                .isEqualTo("0.398294251");
        assertThat(rounded(Units.PSI.convert(40, Units.BAR), 6)).isEqualTo("2.757903");
        assertThat(rounded(Units.BAR.convert(3, Units.PSI), 4)).isEqualTo("43.5113");
        assertThat(rounded(Units.MPH.convert(1, Units.KM_PER_H), 6)).isEqualTo("1.609344");
    }

    private static Unit unit(String constant) {
        return UnitConstants.all().get(constant);
    }

    private static String rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
