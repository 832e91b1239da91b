package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Constant;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.workrate.CartingSimulation;
import org.rickyard.trade.workrate.FuelAndLabour;

/** A line of Basis, copied to Assumptions as it stands, is read: its name, its value and its unit. */
class BasisUnitsOnAssumptionsTest {
    @Test
    @Tag("regression")
    void everyConstantIsReadInTheUnitItIsShownIn() {
        List<Object[]> rows = new ArrayList<>();
        rows.add(row("Item", "Value", "Unit"));
        for (Constant constant : WorkPlan.constants()) {
            rows.add(row(constant.name(), constant.value(), constant.unit().toString()));
        }
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet("Assumptions", rows.toArray(Object[][]::new))
                .run();
        assertThat(worked.plan().findings())
                .extracting(Finding::message)
                .filteredOn(message -> message.contains("does not fit") || message.contains("wants a number"))
                .isEmpty();
        assertThat(worked.plan().constantsInForce().all()).hasSameSizeAs(WorkPlan.constants());
        for (Constant constant : WorkPlan.constants()) {
            assertThat(worked.plan().constantsInForce().value(constant))
                    .as(constant.name())
                    .isCloseTo(constant.value(), within(1e-12 * Math.abs(constant.value())));
        }
    }

    /** 15 t by the third of Austria's chambers (LK Burgenland 2015) are 45 t/h, by the quarter 60. */
    @Test
    @Tag("published")
    void theRollingRuleMayBeOverruledInItsOwnUnit() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Roller mass (t)"),
                        row("Big", "walled", 40, 12, 3, 15))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Rolling weight for each tonne an hour", 1 / 3.0, "t per t/h"))
                .run();
        assertThat(worked.number("rolling-capacity")).isCloseTo(45, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    private static SeasonBook.Worked spread(Object value, String unit) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row(CartingSimulation.SPREAD.name(), value, unit),
                        row(CartingSimulation.SEED.name(), 1, null))
                .run();
    }

    /** Digits stored as text are no number to the grid, in whatever unit; they were nought to the engine. */
    @Test
    @Tag("regression")
    void aNumberStoredAsTextOverrulesNothing() {
        SeasonBook.Worked worked = spread("30", "%");
        assertThat(worked.plan().constantsInForce().value(CartingSimulation.SPREAD))
                .isEqualTo(CartingSimulation.SPREAD.value());
        assertThat(worked.messages()).anyMatch(message -> message.contains("wants a number on Assumptions"));
        assertThat(worked.differences()).isEmpty();
    }

    /** A cell that shows 30 % holds 0.3: the grid must scale it as the engine does. */
    @Test
    @Tag("regression")
    void aShareShownAsPerCentIsTheSameInTheGrid() {
        SeasonBook.Worked worked = spread(new SeasonBook.Shown(0.3, "0%"), "%");
        assertThat(worked.plan().constantsInForce().value(CartingSimulation.SPREAD))
                .isEqualTo(30);
        assertThat(worked.differences()).isEmpty();
    }

    /** Without a unit nobody can tell 0.3 % from a fraction of 30 %. */
    @Test
    @Tag("regression")
    void aFractionWithoutUnitIsAskedWhereTheConstantIsInPerCent() {
        SeasonBook.Worked worked = spread(new SeasonBook.Shown(0.3, "0%"), null);
        assertThat(worked.plan().constantsInForce().value(CartingSimulation.SPREAD))
                .isEqualTo(CartingSimulation.SPREAD.value());
        assertThat(worked.messages()).anyMatch(message -> message.contains("in per cent or a fraction?"));
        assertThat(spread(0.3, "%").plan().constantsInForce().value(CartingSimulation.SPREAD))
                .isEqualTo(0.3);
        assertThat(spread(35, null).plan().constantsInForce().value(CartingSimulation.SPREAD))
                .isEqualTo(35);
    }

    /**
     * Iowa State's example has the hours of labour 10 to 20 % above field time, "x 1.1 or 1.2". 1.2 without a unit was taken
     * for 1.2 %, and labour came to a hundredth of what it is.
     */
    @Test
    @Tag("regression")
    void aFactorWithoutUnitIsAskedWhereTheConstantIsAHundredPerCentOrMore() {
        SeasonBook.Worked worked = labour(1.2, null);
        assertThat(worked.plan().constantsInForce().value(FuelAndLabour.ALLOWANCE))
                .isEqualTo(FuelAndLabour.ALLOWANCE.value());
        assertThat(worked.messages()).anyMatch(message -> message.contains("if it is a fraction, type 120 with %"));
        assertThat(labour(120, null).plan().constantsInForce().value(FuelAndLabour.ALLOWANCE))
                .isEqualTo(120);
        assertThat(labour(1.2, "fraction").plan().constantsInForce().value(FuelAndLabour.ALLOWANCE))
                .isEqualTo(120);
    }

    private static SeasonBook.Worked labour(Object value, String unit) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Long Acre", "grass", 12))
                .sheet("Assumptions", row("Item", "Value", "Unit"), row(FuelAndLabour.ALLOWANCE.name(), value, unit))
                .run();
    }
}
