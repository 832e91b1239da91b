package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** A form for one clamp has its headers below one another: it is not read, but it is not passed over in silence. */
class ListOnItsSideTest {
    private static SheetOf form() {
        return new SheetOf("Form")
                .row("Silage clamp")
                .row("Clamp", "Main")
                .row("Kind", "walled")
                .row("Length (m)", 40)
                .row("Floor width (m)", 12)
                .row("Wall height (m)", 3);
    }

    @Test
    void itIsSaidHowToTurnIt() {
        FoundLists found = ListFinder.find(List.of(form()));
        assertThat(found.rows(Clamps.LIST).size()).isZero();
        assertThat(found.findings())
                .singleElement()
                .isEqualTo(Finding.caution(
                        new CellAddress("Form", 1, 0),
                        "The headers of Clamps stand below one another here (\"Clamp\", \"Kind\", \"Length (m)\" and"
                                + " more), so they are not read. Write them beside one another in one row, with a row"
                                + " for each clamp below: copy the cells and paste them transposed."));
    }

    /** A field has but one figure, and one field of a list has nobody to stand beside. */
    @Test
    void aFieldWithNothingButItsAreaIsOne() {
        for (SheetOf fields : List.of(
                new SheetOf("Fields")
                        .row("Field", "Long Acre")
                        .row("Crop", "grass")
                        .row("Area (ha)", 4.2),
                new SheetOf("Fields")
                        .row("Field", "Long Acre", "Top")
                        .row("Crop", "grass", "wheat")
                        .row("Area (ha)", 4.2, 3))) {
            assertThat(ListFinder.find(List.of(fields)).findings())
                    .singleElement()
                    .satisfies(told -> assertThat(told.message())
                            .startsWith("The headers of Fields stand below one another here (\"Field\", \"Crop\","
                                    + " \"Area (ha)\"), so they are not read."));
        }
        // What stands above a list proper and sums it up is no form.
        FoundLists found = ListFinder.find(List.of(new SheetOf("Fields")
                .row("Fields", 2)
                .row("Crop", "all")
                .row("Area (ha)", 7.2)
                .row()
                .row("Field", "Crop", "Area (ha)")
                .row("Long Acre", "grass", 4.2)
                .row("Top", "wheat", 3)));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void itsRowsAreNotTakenForHeaders() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Machines")
                .row("Machine", "Sprayer", "Mower")
                .row("Type", "sprayer", "mower")
                .row("Working width (m)", 24, 3)
                .row("Speed (km/h)", 10, 12)));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(found.findings()).singleElement().satisfies(told -> {
            assertThat(told.cell()).hasValue(new CellAddress("Machines", 0, 0));
            assertThat(told.message()).startsWith("The headers of Machines stand below one another here");
        });
    }

    @Test
    void aListProperOnTheSameSheetIsReadAllTheSame() {
        FoundLists found =
                ListFinder.find(List.of(form().row().row("Field", "Area (ha)").row("Home Field", 4)));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.CAUTION);
    }

    @Test
    void wordsThatExplainHeadersAreNoList() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Notes")
                .row("Length (m)", "measured at the floor")
                .row("Floor width (m)", "between the walls")
                .row("Wall height (m)", "of the lower wall")));
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void totalsAboveAListLeaveTheListAlone() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Land")
                .row("Area (ha)", 10)
                .row("Yield (t/ha)", 40)
                .row("Slope (%)", 3)
                .row()
                .row("Field", "Crop", "Area (ha)")
                .row("Long Ground", "Grass", 4)
                .row("Top Piece", "Grass", 6)));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 1)).isEqualTo(6);
        assertThat(found.findings()).singleElement().satisfies(told -> assertThat(told.severity())
                .isEqualTo(Severity.NOTE));
    }

    @Test
    void theHeadersOfAListBelowFiguresAreStillHeaders() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Clamps")
                .row("Length (m)", 30)
                .row("Floor width (m)", 10)
                .row("Wall height (m)", 2)
                .row()
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                .row("Main", "walled", 40, 12, 3)));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(40);
    }

    @Test
    void itemsOfAssumptionsAreNoHeaders() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Assumptions")
                .row("Item", "Value", "Unit")
                .row("Field efficiency", 75, "%")
                .row("Turn time", 15, "s")
                .row("Speed", 9, "km/h")));
        assertThat(found.rows(Assumptions.LIST).size()).isEqualTo(3);
        assertThat(found.findings()).isEmpty();
    }

    /** Forms have the unit behind the figure, and one with nothing else in it was passed over in silence. */
    @Test
    void figuresWithTheirUnitsAreFigures() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Sprayer")
                .row("Sprayer", "Lane 24")
                .row("Boom", "24 m")
                .row("Tank", "3000 l")
                .row("Speed", "12 kph")));
        assertThat(found.findings()).singleElement().satisfies(told -> assertThat(told.message())
                .startsWith("The headers of Machines stand below one another here (\"Sprayer\", \"Boom\","
                        + " \"Tank\" and more), so they are not read."));
        // Words behind a figure are none.
        assertThat(ListFinder.find(List.of(new SheetOf("Farm")
                                .row("Sprayer", "see 2")
                                .row("Boom", "2 ends")
                                .row("Tank", "2 of them")))
                        .findings())
                .isEmpty();
    }

    /** Their names are those of columns of machines too. */
    @Test
    void itemsOfAssumptionsUnderAnotherNameAreNoMachineOnItsSide() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Assumptions")
                .row("name", "assumed", "Unit")
                .row("wage", 16, "money/h")
                .row("interest rate", 5.76, "%")
                .row("insurance and housing", 1.45, "%")));
        assertThat(found.rows(Assumptions.LIST).size()).isEqualTo(3);
        assertThat(said(found)).noneMatch(line -> line.contains("below one another"));
    }

    /** A field, a tank and a rate below one another were passed over without a word. */
    @Test
    void aCardOfOneJobIsTold() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Job card")
                .row("Job card")
                .row("Field", "River bottom")
                .row("Acres", 137)
                .row("Sprayer", "Self-propelled 90")
                .row("Tank (L)", 750)
                .row("Spray volume (L/ha)", 150)
                .row()
                .row("Product", "Rate")
                .row("Grass herbicide", "1.5 L/ha")));
        assertThat(said(found))
                .anyMatch(
                        line -> line.contains("The headers of Jobs stand below one another here (\"Field\", \"Acres\","
                                + " \"Sprayer\" and more), so they are not read."))
                .anyMatch(line -> line.contains("The header \"Rate\" could mean Dose"));
    }

    /** "Distance travelled" is known where nothing else is the run; in a form nothing else stands beside it. */
    @Test
    void aCalibrationOfOneMachineIsTold() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Refill test")
                .row("Refill method")
                .row("Sprayer", "Trailer 45")
                .row("Type", "sprayer")
                .row("Boom width", "45 ft")
                .row("Distance travelled", "1000 ft")
                .row("Water to refill", "13 l")));
        assertThat(said(found)).anyMatch(line -> line.contains("The headers of Machines stand below one another here"));
    }

    /** "Drill width (m)" and the lines below it were each a stop, "not a word known here for Type". */
    @Test
    void aFormIsNoListOfMachinesNamedByFigures() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Card")
                .row("Machine", "Combination")
                .row("Type", "drill")
                .row("Drill width (m)", 4)
                .row("Wheel circumference (m)", 2.1)
                .row("Turns of the wheel", 12)));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(found.findings()).singleElement().satisfies(told -> {
            assertThat(told.severity()).isEqualTo(Severity.NOTE);
            assertThat(told.message()).contains("figures stand where the names of machines would");
        });
    }
}
