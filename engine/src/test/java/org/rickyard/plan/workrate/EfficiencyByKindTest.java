package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.SeasonBook;
import org.rickyard.trade.workrate.WorkTotals;

/** Field efficiency and usual speeds where no efficiency is typed: of the kind of machine, not of its type alone. */
class EfficiencyByKindTest {
    private static SeasonBook.Worked work(String type, double speed) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Far", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("It", type, 6, speed))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Far", "work", "It"))
                .run();
    }

    /** ASAE D497, Table 3, from memory: typical field efficiency, per cent; all speeds are within the table's. */
    @Tag("memory")
    @ParameterizedTest
    @CsvSource({
        "baler, 8, 65",
        "Round baler, 8, 65",
        "Large square baler, 8, 80",
        "Big square baler, 8, 80",
        "Small square baler, 6, 75",
        "Disc harrow, 8, 80",
        "cultivator, 9, 85",
        "Row-crop cultivator, 7, 80",
        "Rotary hoe, 18, 80",
        "drill, 8, 70",
        "Corn planter, 8, 65",
        "No-till planter, 8, 65",
        "Finger bar mower, 6, 80",
        "Self-propelled windrower, 10, 80",
        "Power harrow, 6, 85",
        "Rotavator, 4, 85",
        "Subsoiler, 5, 85",
        "'Forage harvester, SP', 9, 70"
    })
    void anEfficiencyThatIsNotTypedIsThatOfTheKind(String type, double speed, double efficiency) {
        SeasonBook.Worked worked = work(type, speed);
        assertThat(worked.number("work-rate", "It")).isCloseTo(0.6 * speed * efficiency / 100, within(1e-9));
        assertThat(worked.messages()).noneMatch(m -> m.contains("outside what is usual"));
        assertThat(worked.differences()).isEmpty();
    }

    /** From memory of the same table: round balers 5-13 km/h, small square ones 4-10, cutterbar mowers 5-10, trailed foragers to 8. */
    @Tag("memory")
    @ParameterizedTest
    @CsvSource({
        "Small square baler, 12",
        "Finger bar mower, 12",
        "Forage harvester, 9",
        "Rotary hoe, 9",
        "Round baler, 14"
    })
    void aSpeedIsHeldAgainstThatOfTheKind(String type, double speed) {
        assertThat(work(type, speed).messages()).anyMatch(m -> m.contains("outside what is usual"));
    }

    /** None is held for a slurry tanker; the reader is told what to type, and where. */
    @Tag("derived")
    @Test
    void whereNoneIsHeldItIsAskedForInItsOwnCell() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Far", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Tanker", "slurry tanker", 7.5, 7, null),
                        row("Plough", "plough", 2, 7, 80))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Far", "slurry", "Tanker"))
                .run();
        assertThat(worked.result("work-rate", "Tanker").reason())
                .isEqualTo("no field efficiency is held for this kind of machine: type its Field efficiency"
                        + " (Machines!E2)");
        assertThat(worked.messages())
                .filteredOn(m -> m.contains("field efficiency"))
                .singleElement();
        assertThat(worked.differences()).isEmpty();
    }

    @Tag("derived")
    @Test
    void theSheetHasNoMoreColumnsForKindsThanForTypes() {
        assertThat(columns("Large square baler"))
                .hasSameSizeAs(columns("baler"))
                .contains("Kind of machine")
                .doesNotContain("Machine type");
    }

    private static List<String> columns(String type) {
        return work(type, 8).plan().tables().stream()
                .filter(table -> table.spec().id().equals(WorkTotals.WORK_RATES))
                .flatMap(table -> table.spec().columns().stream())
                .map(TableColumn::label)
                .toList();
    }
}
