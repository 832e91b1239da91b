package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** A width that everybody reads as 41 ft, since its cell is formatted so, is no width of 41 m. */
class ShownInCellsTest {
    private static SheetOf mowers(String header, String first, String second) {
        return new SheetOf("Machines")
                .row("Machine", "Type", header)
                .row("Old mower", "mower", 10)
                .row("New mower", "mower", 12)
                .shown(1, 2, first)
                .shown(2, 2, second);
    }

    private static FoundLists find(SheetOf sheet) {
        return ListFinder.find(List.of(sheet));
    }

    private static List<String> stops(FoundLists found) {
        return found.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .map(Finding::message)
                .toList();
    }

    @Test
    void theUnitThatTheFormatShowsIsTheUnit() {
        FoundLists found = find(mowers("Working width", "ft", "feet"));
        assertThat(found.rows(Machines.LIST).unit(Machines.WORKING_WIDTH, 1)).contains(Units.FT);
        assertThat(found.findings())
                .extracting(Finding::message)
                .containsExactly("The unit of \"Working width\" is taken from how its cells are shown: ft.");
    }

    @Test
    void aColumnOfWhichSomeCellsShowAUnitIsAsked() {
        FoundLists found = find(mowers("Working width", "ft", ""));
        assertThat(found.rows(Machines.LIST).state(Machines.WORKING_WIDTH, 1)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found).get(0)).contains("Some of its cells are shown in ft, others without a unit");
    }

    @Test
    void theHeaderAndItsCellsMayAgreeInOtherWords() {
        FoundLists found = find(mowers("Working width (ft)", "feet", "ft"));
        assertThat(found.rows(Machines.LIST).unit(Machines.WORKING_WIDTH, 0)).contains(Units.FT);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void cellsInTwoUnitsAreAsked() {
        FoundLists found = find(mowers("Working width", "ft", "m"));
        assertThat(found.rows(Machines.LIST).state(Machines.WORKING_WIDTH, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found))
                .containsExactly("The unit of \"Working width\" is not certain. Its cells are shown in ft and in m:"
                        + " which is right? Write it in the header, and change the number format of the cells. Until"
                        + " then its cells are not used.");
    }

    @Test
    void cellsThatContradictTheHeaderAreAsked() {
        FoundLists found = find(mowers("Working width (m)", "ft", "ft"));
        assertThat(found.rows(Machines.LIST).state(Machines.WORKING_WIDTH, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found).get(0)).contains("The header says m, and cells are shown in ft: which is right?");
    }

    @Test
    void dosesAreReadInWhatTheirCellsShow() {
        FoundLists found = find(new SheetOf("Products")
                .row("Product", "Dose", "Pack size (L)")
                .row("Alpha", 500, 5)
                .shown(1, 1, "ml/ha"));
        assertThat(found.rows(Products.LIST).unit(Products.DOSE, 0).orElseThrow())
                .hasToString("ml/ha");
        assertThat(found.findings())
                .extracting(Finding::message)
                .containsExactly("The unit of \"Dose\" is taken from how its cells are shown: ml/ha.");
    }

    private static SheetOf fields(String header, String first, String second) {
        return new SheetOf("Fields")
                .row("Field", "Crop", header)
                .row("Long Acre", "Grass", 10)
                .row("Home Field", "Grass", 12)
                .shown(1, 2, first)
                .shown(2, 2, second);
    }

    @Test
    void aHeaderThatIsAUnitNeedsNoneInEveryCell() {
        FoundLists found = find(fields("Acres", "ac", ""));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 1)).contains(Units.AC);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void cellsThatContradictAHeaderThatIsAUnitAreAsked() {
        FoundLists found = find(fields("Acres", "ha", "ha"));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(stops(found).get(0)).contains("The header says ac, and cells are shown in ha: which is right?");
    }

    @Test
    void whatIsNoUnitOfTheColumnSaysNothing() {
        FoundLists found = find(mowers("Working width (m)", "approx.", "tines"));
        assertThat(found.rows(Machines.LIST).unit(Machines.WORKING_WIDTH, 0)).contains(Units.M);
        assertThat(found.findings()).isEmpty();
    }
}
