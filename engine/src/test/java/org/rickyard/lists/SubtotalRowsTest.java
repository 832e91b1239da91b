package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;

/** Rows between those of a list that sum up a part of it, and rows that only hold a word for a total. */
class SubtotalRowsTest {
    private static List<String> fields(FoundLists found) {
        ListRows rows = found.rows(Fields.LIST);
        List<String> names = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            names.add(rows.text(Fields.FIELD, row));
        }
        return names;
    }

    private static SheetOf twoFarms(String first, String second, Double perimeters) {
        return new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)", "Perimeter (m)")
                .row("Mill Close", "grass", 4, 900)
                .row("Long Acre", "grass", 5.5, 1100)
                .row(first, null, 9.5, perimeters)
                .row("Top", "grass", 3, 700)
                .row("Low", "grass", 2, 600)
                .row(second, null, 5, perimeters == null ? null : 1300);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Home total", "Home Farm Totals", "Home subtotal", "Home sub-total"})
    void aTotalOfAFarmIsNoFieldWhereverItStands(String name) {
        FoundLists found = find(twoFarms(name, "Hill total", null));
        assertThat(fields(found)).containsExactly("Mill Close", "Long Acre", "Top", "Low");
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    @Test
    void aTotalWhereFarmsStandIsToldAsOneAndAsksForNoName() {
        FoundLists found = find(new SheetOf("Land")
                .row("Farm", "Field", "Area (ha)")
                .row("Hill", "A", 10)
                .row("Hill", "B", 5)
                .row("Hill total", null, 15)
                .row()
                .row("Dale", "C", 7)
                .row("Dale", null, 3)
                .row("Dale total", null, 10));
        assertThat(fields(found)).containsExactly("A", "B", "C");
        assertThat(found.findings())
                .extracting(Finding::severity)
                .containsExactlyInAnyOrder(Severity.NOTE, Severity.NOTE, Severity.CAUTION);
    }

    @Test
    void whatEndsAsATotalElsewhereDoesNotMakeARowWithoutANameOne() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Notes")
                .row("A", 10, null)
                .row(null, 12, "by the map in total")
                .row("B", 5, null));
        assertThat(fields(found)).containsExactly("A", "B");
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() == Severity.CAUTION)
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("no Field");
    }

    @Test
    void aFarmsNameBesideTheSumsOfItsFieldsIsNoField() {
        FoundLists found = find(twoFarms("Home Farm", "Hill Farm", 2000.0));
        assertThat(fields(found)).containsExactly("Mill Close", "Long Acre", "Top", "Low");
        assertThat(found.findings()).hasSize(2).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    @Test
    void aFormulaBesideNoCropIsNoFieldAndOneFigureThatIsTypedIsTold() {
        FoundLists summed =
                find(twoFarms("Home Farm", "Hill Farm", null).formula(3, 2).formula(6, 2));
        assertThat(fields(summed)).containsExactly("Mill Close", "Long Acre", "Top", "Low");
        FoundLists typed = find(twoFarms("Home Farm", "Hill Farm", null));
        assertThat(fields(typed)).hasSize(6);
        assertThat(typed.findings())
                .extracting(finding -> finding.severity() + " "
                        + finding.cell().map(CellAddress::toString).orElse(""))
                .containsExactly("CAUTION Fields!A4", "CAUTION Fields!A7");
    }

    @Test
    void aFieldWithACropThatIsAsLargeAsThoseAboveIsAField() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("A", "grass", 2)
                .row("B", "grass", 3)
                .row("C", "grass", 5)
                .row("D", "grass", 4));
        assertThat(fields(found)).containsExactly("A", "B", "C", "D");
        assertThat(found.findings()).isEmpty();
    }

    /** The soil is average, and the field is there all the same. */
    @ParameterizedTest
    @ValueSource(strings = {"Average", "average", "Mean", "Overall"})
    void aWordThatDescribesAFieldIsNoTotal(String soil) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Soil", "Field", "Area (ha)", "Drainage")
                .row(soil, "A", 2, "good")
                .row("clay", "B", 3, soil)
                .row("clay", "C", 7, "good"));
        assertThat(fields(found)).containsExactly("A", "B", "C");
    }

    @Test
    void aWordForAMeanStandsForOneAsANameAndWhereThereIsNoName() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Farm", "Field", "Area (ha)")
                .row("Home", "A", 2)
                .row("Home", "B", 3)
                .row("Average", null, 2.5)
                .row(null, "Average", 2.5));
        assertThat(fields(found)).containsExactly("A", "B");
        assertThat(found.findings())
                .extracting(Finding::message)
                .contains("This row of totals is not read as a row of Fields.");
    }

    @Test
    void aJobOnAllFieldsIsAJob() {
        FoundLists found =
                find(new SheetOf("Jobs").row("Field", "Operation", "Machine").row("All fields", "mowing", "Mower 3 m"));
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(1);
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Sub total", "Subtotal", "SUB-TOTAL"})
    void belowASubtotalTheListGoesOnPastABlankRow(String word) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("NORTH BLOCK")
                .row("Mill Close", "grass", 4)
                .row("Long Acre", "grass", 5.5)
                .row(word, null, 9.5)
                .row()
                .row("SOUTH BLOCK")
                .row("Top", "grass", 3)
                .row("Low", "grass", 2)
                .row(word, null, 5)
                .row()
                .row("Grand total", null, 14.5)
                .row()
                .row("Prices", "seed", 99));
        assertThat(fields(found)).containsExactly("Mill Close", "Long Acre", "Top", "Low");
    }
}
