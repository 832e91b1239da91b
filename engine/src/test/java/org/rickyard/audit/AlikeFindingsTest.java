package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** A hundred like stops stood above the answers, and the one that can hurt somebody below them. */
class AlikeFindingsTest {
    private static Finding stop(int row, String message) {
        return Finding.stop(new CellAddress("Fields", row - 1, 4), message);
    }

    @Test
    void manyAreToldOnceAndTheOthersNamed() {
        List<Finding> findings = new ArrayList<>();
        for (int row : List.of(5, 6, 7, 8, 20, 30, 31, 40, 50, 60, 70, 71)) {
            findings.add(stop(row, "No basis."));
        }
        findings.add(3, stop(9, "Too high."));
        assertThat(AlikeFindings.told(findings))
                .containsExactly(
                        stop(
                                5,
                                "No basis. It is the same in E6 to E8, E20, E30 to E31, E40, E50 and 3 more cells, down to"
                                        + " E71."),
                        stop(9, "Too high."));
    }

    @Test
    void whereAllCanBeNamedNoneIsOnlyCounted() {
        assertThat(AlikeFindings.told(List.of(stop(5, "A."), stop(6, "A."), stop(8, "A."), stop(9, "A."))))
                .containsExactly(stop(5, "A. It is the same in E6, E8 to E9."));
    }

    @Test
    void theyAreNamedDownwardsInWhateverOrderTheyAreFound() {
        assertThat(AlikeFindings.told(List.of(stop(9, "A."), stop(30, "A."), stop(6, "A."), stop(5, "A."))))
                .containsExactly(stop(9, "A. It is the same in E5 to E6, E30."));
    }

    @Test
    void fewOrOfOtherColumnsAndGravityStandByThemselves() {
        List<Finding> findings = List.of(
                stop(5, "A."),
                stop(6, "A."),
                Finding.stop(null, "A."),
                stop(7, "A."),
                Finding.stop(new CellAddress("Fields", 7, 5), "A."),
                Finding.stop(new CellAddress("Other", 8, 4), "A."),
                Finding.caution(new CellAddress("Fields", 9, 4), "A."));
        assertThat(AlikeFindings.told(findings)).isEqualTo(findings);
    }

    /** Wheat for whole crop, whose yields lack a basis, beside a clamp that is heaped too high. */
    @Test
    void aStopOfTheirOwnIsNotHiddenBehindAHundredOthers() {
        Object[][] fields = new Object[42][];
        fields[0] = row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp");
        fields[1] = row("Grass", "grass", 80, 30, "as carted fresh", 30, "Main");
        for (int i = 2; i < fields.length; i++) {
            fields[i] = row("Wheat " + i, "wheat", 4, 8.5, null, 30, "Other");
        }
        List<Finding> stops = new SeasonBook()
                        .sheet("Fields", fields)
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                                row("M", "mower", 3, 10))
                        .sheet(
                                "Clamps",
                                row(
                                        "Clamp",
                                        "Kind",
                                        "Length (m)",
                                        "Floor width (m)",
                                        "Wall height (m)",
                                        "Settled height (m)"),
                                row("Main", "walled", 20, 8, 2, 2),
                                row("Other", "walled", 40, 10, 2, 2))
                        .run()
                        .findings()
                        .stream()
                        .filter(finding -> finding.severity() == Finding.Severity.STOP)
                        .toList();
        assertThat(stops).hasSize(2);
        assertThat(stops.get(0).message()).startsWith("Main: the crop listed is more than it holds at any height");
        assertThat(stops.get(1).message())
                .startsWith("a yield of 8.5 t/ha stands without its basis.")
                .endsWith(" It is the same in D4 to D42.");
    }
}
