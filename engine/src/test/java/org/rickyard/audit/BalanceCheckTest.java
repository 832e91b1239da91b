package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.SeasonBook;
import org.rickyard.testing.StoredValues;

/** Totals by two routes, as Checks says them. */
class BalanceCheckTest {
    private static final String HOURS = "Hours: field by field = machine by machine (h)";
    private static final CellAddress VERDICT = new CellAddress("Checks", 5, 1);

    /** 0.00 = 0.00 is no agreement where there was nothing to add up, in the grid as in Java. */
    @Test
    void whereEveryRowIsWithheldNothingIsSaidToAgree() {
        SeasonBook.Worked worked = mower(null);
        BalanceCheck hours = hours(worked);
        assertThat(hours.left()).isZero();
        assertThat(hours.right()).isZero();
        assertThat(hours.withheld()).isEqualTo(2);
        assertThat(hours.verdict()).isEqualTo("not compared");
        assertThat(StoredValues.of(worked.file())).containsEntry(VERDICT, "not compared");
        Map<CellAddress, Object> recalculated = PoiRecalculation.of(worked.file(), "Checks");
        assertThat(recalculated).containsEntry(VERDICT, "not compared");
        assertThat(recalculated)
                .containsEntry(
                        new CellAddress("Checks", 1, 0),
                        "Checks: no total is wrong, but some are incomplete, see Checks");
    }

    @Test
    void whereNothingIsWithheldTheyAgree() {
        SeasonBook.Worked worked = mower(10);
        assertThat(hours(worked).verdict()).isEqualTo("ok");
        assertThat(PoiRecalculation.of(worked.file(), "Checks")).containsEntry(VERDICT, "ok");
    }

    private static BalanceCheck hours(SeasonBook.Worked worked) {
        return BalanceCheck.of(worked.plan()).stream()
                .filter(check -> check.what().equals(HOURS))
                .findFirst()
                .orElseThrow();
    }

    private static SeasonBook.Worked mower(Integer speed) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Top", 4, "grass"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Mower", "mower", 3, speed))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Top", "mow", "Mower"))
                .run();
    }
}
