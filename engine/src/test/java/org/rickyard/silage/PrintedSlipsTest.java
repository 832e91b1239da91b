package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Source;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.ClampShape;
import org.rickyard.trade.silage.ClampSides;
import org.rickyard.trade.silage.Digging;
import org.rickyard.trade.silage.EffluentTank;
import org.rickyard.trade.silage.FeedDemand;
import org.rickyard.trade.silage.FeedOut;
import org.rickyard.trade.silage.Rolling;

/** Slips that were printed, and shortcuts that are taught: the formulas must not fall in with them. */
@Tag("published")
class PrintedSlipsTest {
    private static final Source SLIP = Source.secondHand("a slip in print; see the test");

    private static double value(Formula formula, WorkedExample.Draft inputs, Unit unit) {
        return inputs.gives(0, unit, 0).compute(formula).orElseThrow();
    }

    /** A trade page prints 150 short tons an hour for 40,000 lb by the rule of 800; it is 50. */
    @Test
    void fortyThousandPoundsPackFiftyTonsAnHourAndNot150() {
        double tons = value(
                Rolling.ROLLING_CAPACITY_FORTY,
                WorkedExample.from(SLIP).with(Rolling.MASS_USED, 40_000, Units.LB),
                Units.SHORT_TON.over(Units.H));
        assertThat(tons).isCloseTo(50, within(1e-9)).isNotCloseTo(150, within(1.0));
    }

    /** LWK Niedersachsen prints 35 m3 a week and a face of 17 m2: reckoned on from the rounded 35 it would be 18. */
    @Test
    void nothingIsRoundedOnTheWayToTheFace() {
        Unit cubicMetresAWeek = Units.M3.over(Units.WEEK);
        double face = value(
                FeedOut.FACE_AREA_WANTED,
                WorkedExample.from(SLIP)
                        .with(FeedOut.PER_DAY, 3600.0 / 2 / 52, cubicMetresAWeek)
                        .with(FeedOut.TARGET, 2),
                Units.M2);
        assertThat(Math.round(face)).isEqualTo(17);
        double fromRounded = value(
                FeedOut.FACE_AREA_WANTED,
                WorkedExample.from(SLIP)
                        .with(FeedOut.PER_DAY, 35, cubicMetresAWeek)
                        .with(FeedOut.TARGET, 2),
                Units.M2);
        assertThat(Math.round(fromRounded)).isEqualTo(18);
    }

    /** Saskatchewan prints its least width of 9 m as 24 ft; 24 ft are 7.3 m. */
    @Test
    void nineMetresAreNot24Feet() {
        assertThat(Units.M.convert(9, Units.FT)).isCloseTo(29.5, within(0.05));
        assertThat(Units.FT.convert(24, Units.M)).isCloseTo(7.3, within(0.05));
    }

    /** Progressive Forage prints 1.8 tons a day where 3,250 lb of dry matter are 1.625: it is fresh at 10 % moisture. */
    @Test
    void dryMatterIsNotTheHayItIsIn() {
        double tons = value(
                FeedDemand.DAILY_DEMAND,
                WorkedExample.from(SLIP).with(Quantities.HEAD, 100).with(FeedDemand.HEAD_DAILY, 32.5 * 0.45359237),
                Unit.of("short ton DM", Units.KG_DM.dimension(), Units.SHORT_TON.factor())
                        .over(Units.D));
        assertThat(tons).isCloseTo(1.625, within(1e-9)).isNotCloseTo(1.8, within(0.1));
        assertThat(tons / 0.9).isCloseTo(1.8, within(0.05));
    }

    /** The mean of the end areas makes the pit of 738 m3 756; half of each ramp makes the clamp of 1,308.6 m3 1,309.95. */
    @Test
    void shortcutsOfGeometryAreNotTaken() {
        double pit = value(
                Digging.VOLUME_IN_GROUND,
                WorkedExample.from(SLIP)
                        .with(Quantities.CLAMP_LENGTH, 24)
                        .with(Quantities.FLOOR_WIDTH, 6)
                        .with(Quantities.WALL_HEIGHT, 3)
                        .with(ClampSides.BATTER_USED, 1),
                Units.M3);
        assertThat(pit).isCloseTo(738, within(1e-9)).isNotCloseTo(756, within(10.0));
        double clamp = value(
                ClampShape.CLAMP_VOLUME,
                WorkedExample.from(SLIP)
                        .with(Quantities.CLAMP_KIND, ClampShape.WALLED)
                        .with(Quantities.CLAMP_LENGTH, 40)
                        .with(ClampSides.RAMPS_USED, 1)
                        .with(ClampShape.RAMP_LENGTH, 9)
                        .with(ClampShape.SECTION, 36.9)
                        .with(ClampShape.CROWN_SECTION, 0)
                        .with(Quantities.FLOOR_WIDTH, 12)
                        .with(ClampSides.HEIGHT, 3)
                        .with(ClampSides.BATTER_USED, 0.1),
                Units.M3);
        assertThat(clamp).isCloseTo(1308.6, within(1e-9)).isNotCloseTo(1309.95, within(1.0));
    }

    /** Bulked volume times in-ground density is the commonest slip of earthworks: mass does not swell. */
    @Test
    void soilSwellsInVolumeAndNotInMass() {
        WorkedExample.Draft soil = WorkedExample.from(SLIP).with(Digging.IN_GROUND_VOLUME, 738);
        assertThat(value(Digging.SPOIL_MASS, soil, Units.T)).isCloseTo(1328.4, within(1e-9));
        assertThat(Digging.SPOIL_MASS.inputs()).doesNotContain(Digging.SPOIL, Digging.SWELL_USED);
    }

    /** NISR 2019/81: 3 m3 for each 150 m3 or part under 1,500, then 30 m3 and 1 m3 for each 150 m3 or part above. */
    @Test
    void theTankOfNorthernIrelandStepsAtEveryEdgeAndThatOfGreatBritainAtNone() {
        for (int parts = 1; parts <= 30; parts++) {
            double edge = 150.0 * parts;
            double at = parts <= 10 ? 3 * parts : 30 + parts - 10;
            double above = parts < 10 ? 3 * (parts + 1) : 30 + parts + 1 - 10;
            assertThat(tank(EffluentTank.NORTHERN_IRELAND, edge))
                    .as("%s m3", edge)
                    .isEqualTo(at);
            assertThat(tank(EffluentTank.NORTHERN_IRELAND, edge + 0.001))
                    .as("just above %s m3", edge)
                    .isEqualTo(above);
            for (String country : new String[] {EffluentTank.ENGLAND, EffluentTank.WALES, EffluentTank.SCOTLAND}) {
                assertThat(tank(country, edge + 0.001))
                        .as("%s, just above %s m3", country, edge)
                        .isCloseTo(tank(country, edge), within(1e-4))
                        .isGreaterThan(tank(country, edge));
            }
        }
        assertThat(tank(EffluentTank.WALES, 1499.999)).isCloseTo(30, within(1e-4));
        assertThat(tank(EffluentTank.WALES, 1500)).isEqualTo(30);
    }

    private static double tank(String country, double silo) {
        return value(
                EffluentTank.TANK,
                WorkedExample.from(SLIP).with(Quantities.COUNTRY, country).with(EffluentTank.SILO_VOLUME, silo),
                Units.M3);
    }
}
