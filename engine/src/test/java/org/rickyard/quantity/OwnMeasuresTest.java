package org.rickyard.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.quantity.OwnMeasures.Kind;

/** What a farm that measures in customary units is answered in, held against GNU units. */
class OwnMeasuresTest {
    @TempDir
    private Path folder;

    private static final OwnMeasures UK = measures(Units.GAL_UK, Units.LONG_TON, Units.FT);
    private static final OwnMeasures US = measures(Units.GAL_US, Units.SHORT_TON, Units.YD);

    private static OwnMeasures measures(Unit liquid, Unit mass, Unit length) {
        Map<Kind, Unit> units = new EnumMap<>(Kind.class);
        units.put(Kind.AREA, Units.AC);
        units.put(Kind.LIQUID, liquid);
        units.put(Kind.MASS, mass);
        units.put(Kind.LENGTH, length);
        units.put(Kind.SPEED, Units.MPH);
        units.put(Kind.PRESSURE, Units.PSI);
        return new OwnMeasures(units);
    }

    /** Ours, what a British and what an American farm wants, as GNU units writes them. */
    private record Wanted(Unit ours, String had, String uk, String us) {}

    private static final List<Wanted> ALL = List.of(
            new Wanted(Units.HA, "hectare", "intacre", "intacre"),
            new Wanted(Units.L, "liter", "brgallon", "usgallon"),
            new Wanted(Units.T, "tonne", "longton", "shortton"),
            new Wanted(Units.M, "meter", "foot", "yard"),
            new Wanted(Units.KM_PER_H, "kilometer/hour", "mile/hour", "mile/hour"),
            new Wanted(Units.BAR, "bar", "psi", "psi"),
            new Wanted(Units.HA_PER_H, "hectare/hour", "intacre/hour", "intacre/hour"),
            new Wanted(Units.H.over(Units.HA), "hour/hectare", "hour/intacre", "hour/intacre"),
            new Wanted(Units.MONEY_UNIT.over(Units.HA), "farmmoney/hectare", "farmmoney/intacre", "farmmoney/intacre"),
            new Wanted(Units.L_PER_HA, "liter/hectare", "brgallon/intacre", "usgallon/intacre"),
            new Wanted(Units.L_PER_MIN, "liter/minute", "brgallon/minute", "usgallon/minute"),
            new Wanted(Units.L_PER_H, "liter/hour", "brgallon/hour", "usgallon/hour"),
            new Wanted(Units.T_PER_HA, "tonne/hectare", "longton/intacre", "shortton/intacre"),
            new Wanted(Units.T_PER_H, "tonne/hour", "longton/hour", "shortton/hour"),
            new Wanted(Units.T_DM, "1000 kgdrymatter", "longton kgdrymatter/kilogram", "shortton kgdrymatter/kilogram"),
            new Wanted(
                    Units.T_DM_PER_HA,
                    "1000 kgdrymatter/hectare",
                    "longton kgdrymatter/kilogram/intacre",
                    "shortton kgdrymatter/kilogram/intacre"),
            new Wanted(Units.M3, "meter^3", "foot^3", "yard^3"));

    /** Who has gallons and hectares, or no fields at all, was answered in gallons a hectare. */
    @Test
    void nobodyCountsGallonsOnAHectare() {
        OwnMeasures gallonsAlone = new OwnMeasures(Map.of(Kind.LIQUID, Units.GAL_US, Kind.LENGTH, Units.FT));
        assertThat(gallonsAlone.of(Units.L_PER_HA)).isEmpty();
        assertThat(gallonsAlone.of(Units.L)).contains(Units.GAL_US);
        assertThat(US.of(Units.L_PER_HA).orElseThrow().symbol()).isEqualTo("gal(US)/ac");
    }

    @Test
    void everyFactorIsThatOfGnuUnits() throws Exception {
        GnuUnits.required();
        List<String> questions = new ArrayList<>();
        for (Wanted wanted : ALL) {
            questions.addAll(List.of(wanted.had(), wanted.uk(), wanted.had(), wanted.us()));
        }
        List<String> answers = GnuUnits.ask(folder, questions);
        assertThat(answers).hasSize(2 * ALL.size());
        for (int i = 0; i < ALL.size(); i++) {
            Unit ours = ALL.get(i).ours();
            double uk = Double.parseDouble(answers.get(2 * i));
            double us = Double.parseDouble(answers.get(2 * i + 1));
            assertThat(ours.convert(1, UK.of(ours).orElseThrow()))
                    .as(ours.symbol())
                    .isCloseTo(uk, within(1e-13 * uk));
            assertThat(ours.convert(1, US.of(ours).orElseThrow()))
                    .as(ours.symbol())
                    .isCloseTo(us, within(1e-13 * us));
        }
    }

    @Test
    void whoMeasuresInPartOnlyIsAnsweredInPartOnly() {
        OwnMeasures acres = new OwnMeasures(Map.of(Kind.AREA, Units.AC, Kind.LIQUID, Units.L));
        assertThat(acres.of(Units.HA_PER_H)).map(Unit::symbol).contains("ac/h");
        assertThat(acres.of(Units.L_PER_HA)).map(Unit::symbol).contains("L/ac");
        assertThat(acres.of(Units.T_PER_HA)).map(Unit::symbol).contains("t/ac");
        for (Unit ours : List.of(Units.L, Units.T, Units.M, Units.M3, Units.T_DM, Units.L_PER_MIN, Units.BAR)) {
            assertThat(acres.of(ours)).as(ours.symbol()).isEmpty();
        }
        assertThat(acres.words()).isEqualTo("ac");
    }

    @Test
    void whoMeasuresAsWeDoIsAnsweredSo() {
        OwnMeasures ours = new OwnMeasures(Map.of(Kind.AREA, Units.HA, Kind.LENGTH, Units.M));
        assertThat(ours.isOurs()).isTrue();
        assertThat(ALL).isNotEmpty().allSatisfy(wanted -> assertThat(ours.of(wanted.ours()))
                .isEmpty());
    }

    @Test
    void whatIsNeitherLandNorLiquidNorMassStaysAsItIs() {
        for (Unit unit : List.of(Units.H, Units.PERCENT, Units.ONE, Units.MONEY_UNIT, Units.D, Units.KG_PER_M3)) {
            assertThat(UK.of(unit)).as(unit.symbol()).isEmpty();
        }
    }

    @Test
    void aUnitIsFoundInWhatItIsPartOf() {
        assertThat(Kind.LIQUID.in(Units.GAL_UK.over(Units.AC))).contains(Units.GAL_UK);
        assertThat(Kind.LIQUID.in(Units.GAL_US.over(Units.HA))).contains(Units.GAL_US);
        assertThat(Kind.MASS.in(UnitText.ofDryMatter(Units.SHORT_TON).over(Units.AC)))
                .contains(Units.SHORT_TON);
        assertThat(Kind.AREA.in(Units.AC)).contains(Units.AC);
        for (Unit metric : List.of(Units.L.over(Units.AC), Units.L_PER_HA, Units.M3)) {
            assertThat(Kind.LIQUID.in(metric)).as(metric.symbol()).isEqualTo(Optional.empty());
        }
        assertThat(Kind.LENGTH.in(Units.CM)).isEmpty();
        assertThat(Kind.MASS.in(Units.T.over(Units.AC))).isEmpty();
    }

    /** A lawn is sprayed by the gallon on a thousand square feet; it was answered in litres. */
    @Test
    void gallonsOnAThousandSquareFeetAreGallons() {
        Unit lawn = UnitText.read("gal/1000 sq ft", CustomaryUnits.US) instanceof UnitText.Known known
                ? known.unit()
                : null;
        assertThat(Kind.LIQUID.in(lawn)).hasValue(Units.GAL_US);
    }
}
