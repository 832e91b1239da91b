package org.rickyard.trade.workrate;

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
import org.rickyard.trade.cost.JobCost;
import org.rickyard.trade.cost.OwnershipCost;
import org.rickyard.trade.cost.Prices;

/** Slips in print: each is the value that must not be met, beside the one that must. */
@Tag("published")
class ListedSlipsTest {
    private static WorkedExample.Draft inputs() {
        return WorkedExample.from(Source.secondHand("a slip in print; see the test"));
    }

    private static double in(Unit unit, Formula formula, WorkedExample.Draft inputs) {
        return inputs.gives(0, unit, 0).compute(formula).orElseThrow();
    }

    /** A textbook prints 7,105 a year for 50,000 with 5,000 left after 10 years at 8 %. */
    @Test
    void capitalRecoveryIs7106AndNot7105() {
        double factor = in(
                Units.ONE,
                OwnershipCost.FACTOR,
                inputs().with(Quantities.LIFE, 10).with(Prices.INTEREST, 8));
        double yearly = in(
                Units.MONEY_UNIT.over(Units.YR),
                OwnershipCost.CAPITAL_RECOVERY,
                inputs().with(Quantities.PURCHASE_PRICE, 50_000)
                        .with(Quantities.TRADE_IN_VALUE, 5_000)
                        .with(OwnershipCost.RECOVERY_FACTOR, factor)
                        .with(Prices.INTEREST, 8));
        assertThat(Math.round(yearly)).isEqualTo(7106).isNotEqualTo(7105);
    }

    /** A construction textbook divides unrelated numbers and prints 9 lorries; cycle over loading time is 4.63. */
    @Test
    void theHaulNeedsFiveLorriesAndNotNine() {
        double needed = in(
                Units.ONE,
                TrailerNumbers.TRAILERS_NEEDED,
                inputs().with(TrailerNumbers.OTHERS_SERVED, 0).with(Carting.EXACT, 0.584 / 0.126));
        assertThat(needed).isEqualTo(5).isNotEqualTo(9);
    }

    /** A trade page prints 150 short tons an hour for 40,000 lb by the rule of 800. */
    @Test
    void aGangsOwnRollerOfFortyThousandPoundsTakes50AndNot150() {
        double rolled = in(
                Units.SHORT_TON.over(Units.H),
                StageRates.ROLLING_CAPACITY,
                inputs().with(Quantities.MACHINE_TYPE, StageRates.ROLLER)
                        .with(org.rickyard.trade.Keys.MACHINE_KEY, 1)
                        .with(Quantities.MASS, 40_000, Units.LB)
                        .with(StageRates.ALIKE, 1));
        assertThat(rolled).isCloseTo(50, within(1e-9)).isNotCloseTo(150, within(1.0));
    }

    /** Farm press prints 7.07 for 2.4 US gal of maize at 3.00, which is soya at 3.50. */
    @Test
    void fuelForMaizeAtThreeIs720AndNot707() {
        double cost = in(
                Units.MONEY_UNIT,
                JobCost.FUEL_ON_FIELD,
                inputs().with(Quantities.OWN_OR_HIRED, "own")
                        .with(FuelAndLabour.FIELD_FUEL, 2.4, Units.GAL_US)
                        .with(Prices.FUEL_PRICE, 3, Units.MONEY_UNIT.over(Units.GAL_US)));
        assertThat(cost).isCloseTo(7.20, within(1e-9)).isNotCloseTo(7.07, within(0.005));
    }

    /** Hunt's solution sheet prints 79.17 %, the efficiency of its rounded 1.90 ha/h; in full it is 79.04. */
    @Test
    void efficiencyIsNotWorkedOutFromARoundedRate() {
        double rate = in(
                Units.HA_PER_H,
                FieldRates.BY_WIDTH_AND_SPEED,
                inputs().with(Quantities.SPEED, 4.8)
                        .with(TimeElements.WIDTH_COVERED, 4.75)
                        .with(Quantities.RUN_LENGTH, 400)
                        .with(Quantities.TURN_TIME, 15)
                        .with(TimeElements.LOST_TIME, 4.0 / 60));
        double efficiency = in(
                Units.PERCENT,
                FieldRates.ACHIEVED,
                inputs().with(FieldRates.RATE, rate).with(FieldRates.SPOT_RATE, 2.4));
        assertThat(efficiency).isCloseTo(79.035, within(0.0005)).isNotCloseTo(79.17, within(0.005));
    }

    /** A handbook prints 2.75 m3 for a bucket of 3 m3 filled to 0.90; a load of 0.90 t/m3 in 3 m3 is 2.70 t. */
    @Test
    void nineTenthsOfThreeAre270AndNot275() {
        double load = in(
                Units.T,
                Carting.PAYLOAD_OF_TRAILER,
                inputs().with(Quantities.PAYLOAD, 10)
                        .with(Quantities.BODY_VOLUME, 3)
                        .with(Carting.DENSITY, 900));
        assertThat(load).isCloseTo(2.70, within(1e-9)).isNotCloseTo(2.75, within(0.005));
    }
}
