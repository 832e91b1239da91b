package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.formula.Symbol;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.trade.Quantities;

/**
 * What large and small equipment there is must not be called impossible. The classes by volume go down below 5 L/ha (IPARC,
 * dropdata.org); the other sizes are from memory.
 */
@Tag("memory")
class RealSizesTest {
    private static Symbol symbol(String name) {
        return switch (name) {
            case "width" -> Quantities.WORKING_WIDTH;
            case "payload" -> Quantities.PAYLOAD;
            case "road" -> Quantities.ROAD_SPEED_LADEN;
            case "roller" -> Quantities.ROLLER_MASS;
            case "length" -> Quantities.CLAMP_LENGTH;
            case "yield" -> Quantities.YIELD;
            case "mass" -> Quantities.MASS;
            default -> Quantities.WATER_VOLUME;
        };
    }

    @ParameterizedTest
    @CsvSource({
        "payload, 60, t",
        "road, 90, km/h",
        "roller, 240000, lb",
        "length, 800, ft",
        "yield, 140, t/ha",
        "mass, 100, t",
        "water, 3, L/ha",
        "water, 0.5, L/ha",
        "water, 6000, L/ha"
    })
    void isPossible(String what, double value, String text) {
        Unit unit = ((UnitText.Known) UnitText.read(text, CustomaryUnits.UNSET)).unit();
        Symbol symbol = symbol(what);
        assertThat(symbol.possible().contains(unit.convert(value, symbol.unit())))
                .isTrue();
    }

    /** Slips of the unit are still caught: kilograms as tonnes, inches and feet as metres. */
    @ParameterizedTest
    @CsvSource({"width, 240, m", "payload, 14000, t", "road, 250, km/h", "roller, 14000, t", "length, 4000, m"})
    void isNot(String what, double value, String text) {
        Unit unit = ((UnitText.Known) UnitText.read(text, CustomaryUnits.UNSET)).unit();
        Symbol symbol = symbol(what);
        assertThat(symbol.possible().contains(unit.convert(value, symbol.unit())))
                .isFalse();
    }

    /** A hopper or a bucket is no trailer; a trailer of its size is still asked about. */
    @ParameterizedTest
    @CsvSource({
        "drill, 0.85, false",
        "fertiliser spreader, 0.6, false",
        "loader, 0.9, false",
        "buckrake, 0.8, false",
        "trailer, 0.85, true",
        "muck spreader, 0.4, true",
        "drill, 20, true",
        "'', 0.85, true"
    })
    void aHopperIsHeldAgainstHoppers(String type, double tonnes, boolean unusual) {
        FoundLists found = FoundIn.find(new SheetOf("Kit")
                .row("Machine", "Type", "Working width (m)", "Payload (t)")
                .row("Old", type, 4, tonnes));
        assertThat(found.findings().stream()
                        .anyMatch(finding -> finding.message().startsWith("Payload")))
                .isEqualTo(unusual);
    }
}
