package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** A row that sums up those above it is no field of its own, or the farm would be twice as large as it is. */
class SumOfRowsTest {
    private static FoundLists find(Object... last) {
        return ListFinder.find(List.of(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)", "Perimeter (m)")
                .row("Mill Close", "wheat", 4.25, 900)
                .row("Long Acre", "grass", 6.5, 1100)
                .row(last)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"All", "Whole farm", "Total Hill Farm", "Σ", "Hill Farm"})
    void aRowOfSumsIsLeftOutWhateverItIsCalled(String name) {
        FoundLists found = find(name, null, 10.75, 2000);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.findings())
                .containsExactly(Finding.note(
                        new CellAddress("Fields", 3, 0),
                        "This row of totals is not read as a row of Fields: its figures sum up those above it."));
    }

    @Test
    void aRoundedSumIsASum() {
        assertThat(find("Hill Farm", null, 10.8, 2000).rows(Fields.LIST).size()).isEqualTo(2);
    }

    @Test
    void aMeanIsToldByItsName() {
        assertThat(find("Avg", null, 5.375, 1000).rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(find("Hill", null, 5.375, 1000).rows(Fields.LIST).size()).isEqualTo(3);
    }

    @Test
    void aFieldThatIsByChanceAsLargeAsTheOthersTogetherIsReadAndTold() {
        FoundLists found = find("Moor", null, 10.75, null);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    }

    @Test
    void aFieldWithACropOfItsOwnIsAField() {
        FoundLists found = find("Moor", "wheat", 10.75, 2000);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    }

    @Test
    void otherFiguresAreNoSum() {
        FoundLists found = find("All", null, 3.5, 700);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).isEmpty();
    }

    /** "all" is where a job is done, and doses that are alike are each other's mean. */
    @Test
    void jobsOnAllFieldsAndMixesAreNoSums() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Jobs")
                        .row("Field", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)")
                        .row("A", "Sprayer", "Alpha", 1, 200)
                        .row("B", "Sprayer", "Alpha", 1, 200)
                        .row("all", "Sprayer", "Beta", 1, 200),
                new SheetOf("Mixes")
                        .row("Mix", "Product", "Dose (L/ha)")
                        .row("T1", "Alpha", 1)
                        .row("T2", "Beta", 1)
                        .row("Total kill", "Cor", 1)));
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(3);
        assertThat(found.rows(Mixes.LIST).size()).isEqualTo(3);
    }
}
