package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.SeasonBook;

/** Columns that are not read: where one can guess what they are, it is said what to write in their place. */
class UnknownHeadersTest {
    private static final Object[][] FIELDS = {row("Field", "Crop", "Area (ha)"), row("Ley", "grass", 10)};

    private static SeasonBook.Worked machines(Object[]... machines) {
        return new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet("Machines", machines)
                .run();
    }

    @Test
    void moneyOfAUnitMayBeTheCharge() {
        assertThat(machines(row("Machine", "Type", "Width (m)", "£/ha"), row("Mower", "mower", 3, 25))
                        .messages())
                .anyMatch(m -> m.startsWith("not read as columns of Machines: £/ha.")
                        && m.endsWith(
                                "if the machine is hired or charged out at that, write Charge (£/ha) in its place."));
        assertThat(machines(row("Machine", "Type", "Width (m)", "Charge (£/ha)"), row("Mower", "mower", 3, 25))
                        .messages())
                .noneMatch(m -> m.startsWith("not read as columns"));
    }

    /** It was said to be perhaps the water of a sprayer. */
    @Test
    void cubicMetresOfAFieldAreSpread() {
        assertThat(machines(row("Machine", "Type", "Width (m)", "Rate (m3/ha)"), row("Tanker", "slurry tanker", 12, 30))
                        .messages())
                .anyMatch(m -> m.contains("\"Rate (m3/ha)\" may be what is spread, which is the Dose of a job"))
                .noneMatch(m -> m.contains("Water volume"));
        assertThat(machines(row("Machine", "Type", "Width (m)", "Rate (L/ha)"), row("Boom", "sprayer", 24, 200))
                        .messages())
                .anyMatch(m -> m.contains("\"Rate (L/ha)\" may be the Water volume"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"N (kg/m3)", "P2O5 kg/m³"})
    void aNutrientOfAVolumeIsNoShareAndHowToMakeItOneIsSaid(String header) {
        assertThat(products(header).messages())
                .anyMatch(m -> m.contains("divide kg/m3 (or g/L) by 10 × the density in kg/L")
                        && m.endsWith("2.5 kg/m3 at 1 kg/L are 0.25 %."));
    }

    @Test
    void underTheColumnsOwnNameTheStopSaysTheSame() {
        assertThat(products("Nitrogen (kg/m3)").messages())
                .anyMatch(m ->
                        m.contains("\"kg/m3\" counts what a volume holds, and Nitrogen is a share by weight: divide")
                                && m.contains("under Nitrogen (%), with the Density beside it"));
    }

    private static SeasonBook.Worked products(String header) {
        return new SeasonBook()
                .sheet("Fields", FIELDS)
                .sheet("Products", row("Product", "Unit", header), row("Slurry", "L", 2.5))
                .run();
    }

    /** Of wheels headers speak in too many ways to know them all. */
    @Test
    void turnsOfAWheelAreToBeCalledSo() {
        assertThat(machines(
                                row("Machine", "Type", "Width (ft)", "Revs of the press wheel", "Test weight (lb)"),
                                row("Drill", "drill", 8, 43, 20))
                        .messages())
                .anyMatch(
                        m -> m.contains(
                                "If \"Revs of the press wheel\" is of a calibration, call it Wheel turns or Wheel circumference"));
    }

    /** Nobody who loads is asked what his loader's payload is for. */
    @Test
    void aLoadWithoutTheTimeOfARoundIsUsedForNothingAndAsksForIt() {
        Object[] header = row("Machine", "Type", "Payload (t)");
        assertThat(machines(header, row("Shovel", "loader", 2.5), row("Trailer", "trailer", 10))
                        .messages())
                .anyMatch(m ->
                        m.startsWith("the payload of 'Shovel' is used for nothing: with a column Round time (min)"));
        assertThat(machines(header, row("Trailer", "trailer", 10)).messages())
                .noneMatch(m -> m.contains("is used for nothing"));
        SeasonBook.Worked both =
                machines(row("Machine", "Type", "Payload (t)", "Round time (min)"), row("Shovel", "loader", 2.5, 2));
        assertThat(both.messages()).noneMatch(m -> m.contains("is used for nothing"));
        assertThat(both.results()).anyMatch(result -> result.number().equals(Optional.of(75.0)));
    }
}
