package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Assumptions;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Place;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Units;

/** A form for one clamp has its headers below one another, and is read so where the workbook has no list proper. */
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
    void itIsReadAndSaidSo() {
        FoundLists found = ListFinder.find(List.of(form()));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.size()).isEqualTo(1);
        assertThat(clamps.text(Clamps.CLAMP, 0)).isEqualTo("Main");
        assertThat(clamps.number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(clamps.address(Clamps.LENGTH, 0)).hasValue(new CellAddress("Form", 3, 1));
        assertThat(found.places()).singleElement().satisfies(place -> {
            assertThat(place.first()).isEqualTo(new CellAddress("Form", 1, 0));
            assertThat(place.span()).isEqualTo("columns B to B");
            assertThat(place.columns()).extracting(Place.Column::cell).contains(new CellAddress("Form", 5, 0));
        });
        assertThat(found.findings())
                .containsExactly(Finding.note(
                        new CellAddress("Form", 1, 0),
                        "The headers of Clamps stand below one another here (\"Clamp\", \"Kind\", \"Length (m)\" and"
                                + " more) and are read so, with what is told of each beside them."));
    }

    /** Beside a list proper it is a summary of what is listed, or a card of it. */
    @Test
    void beforeAListProperItIsSaidHowToTurnIt() {
        FoundLists found = ListFinder.find(List.of(
                form(),
                new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                        .row("Old", "walled", 20, 8, 2)));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("Old");
        assertThat(found.findings())
                .containsExactly(Finding.caution(
                        new CellAddress("Form", 1, 0),
                        "The headers of Clamps stand below one another here (\"Clamp\", \"Kind\", \"Length (m)\" and"
                                + " more), so they are not read. Write them beside one another in one row, with a row"
                                + " for each clamp below: copy the cells and paste them transposed."));
    }

    /** A card that looks up what is listed need not be turned. */
    @Test
    void aCardOfWhatIsListedIsOnlyNoted() {
        FoundLists found = ListFinder.find(List.of(
                form(),
                new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                        .row("main", "walled", 41, 12, 3)
                        .row("Old", "walled", 20, 8, 2)));
        assertThat(found.rows(Clamps.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(41);
        assertThat(said(found))
                .containsExactly("NOTE Form!A2 The headers of Clamps stand below one another here (\"Clamp\", \"Kind\","
                        + " \"Length (m)\" and more). What they tell of is listed elsewhere in the workbook, and is read"
                        + " there alone.");
    }

    /** Figures of a clamp that has no name cannot be told from those of another. */
    @Test
    void whatItLacksIsSaid() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Form")
                .row("Kind", "walled")
                .row("Length (m)", 40)
                .row("Floor width (m)", 12)
                .row("Wall height (m)", 3)));
        assertThat(found.rows(Clamps.LIST).size()).isZero();
        assertThat(said(found))
                .containsExactly(
                        "CAUTION Form!A1 The headers of Clamps stand below one another here (\"Kind\", \"Length"
                                + " (m)\", \"Floor width (m)\" and more), but none of them says Clamp, so they are not read. Add"
                                + " it below, each with what it is beside it.");
    }

    /** One form for each machine, below or beside one another or on sheets of their own. */
    @Test
    void severalFormsAreRead() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Tackle")
                        .row("Machine", "Mower", null, "Machine", "Tedder")
                        .row("Type", "mower", null, "Type", "tedder")
                        .row("Working width (m)", 3, null, "Working width (m)", 8)
                        .row("Speed (km/h)", 12, null, "Speed (km/h)", 9)
                        .row()
                        .row("Machine", "Rake")
                        .row("Type", "rake")
                        .row("Working width (m)", 7)
                        .row("Speed (km/h)", 10),
                new SheetOf("Sprayer")
                        .row("Machine", null, "Boom")
                        .row("Type", null, "sprayer")
                        .row("Boom width", "m", 24)
                        .row("Tank", "L", 3000)));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(IntStream.range(0, machines.size())
                        .mapToObj(row -> machines.text(Machines.MACHINE, row) + " "
                                + machines.number(Machines.WORKING_WIDTH, row)))
                .containsExactlyInAnyOrder("Mower 3.0", "Tedder 8.0", "Rake 7.0", "Boom 24.0");
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    /** Over many a form stand "Item" and "Value", which are headers of assumptions; a figure of these stays one. */
    @Test
    void aFormUnderItemAndValueIsRead() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Bunker")
                .row("Item", "Value", "Unit")
                .row("Clamp", "Main")
                .row("Kind", "walled")
                .row("Length", 40, "m")
                .row("Floor width", 12, "m")
                .row("Wall height", 3, "m")
                .row("Wage", 16, "money/h")));
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(found.rows(Clamps.LIST).unit(Clamps.LENGTH, 0)).hasValue(Units.M);
        ListRows assumptions = found.rows(Assumptions.LIST);
        assertThat(IntStream.range(0, assumptions.size()).mapToObj(row -> assumptions.text(Assumptions.ITEM, row)))
                .contains("Wage");
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
            FoundLists found = ListFinder.find(List.of(fields));
            assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(4.2);
            assertThat(found.findings()).singleElement().satisfies(told -> assertThat(told.message())
                    .startsWith("The headers of Fields stand below one another here (\"Field\", \"Crop\","
                            + " \"Area (ha)\") and are read so"));
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
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 1)).isEqualTo(3);
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
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(found.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
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
        assertThat(found.rows(Machines.LIST).state(Machines.WORKING_WIDTH, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(24);
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("NOTE Sprayer!A1 The headers of Machines stand below one another"))
                .noneMatch(line -> line.startsWith("STOP"));
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

    /** A field, a tank and a rate below one another were passed over without a word; the list below them has an end. */
    @Test
    void aCardOfOneJobIsRead() {
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
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(137);
        assertThat(found.rows(Jobs.LIST).number(Jobs.WATER_VOLUME, 0)).isEqualTo(150);
        assertThat(found.rows(Machines.LIST).number(Machines.TANK, 0)).isEqualTo(750);
        assertThat(found.rows(Jobs.LIST).isFilled(Jobs.PRODUCT, 0)).isFalse();
        assertThat(said(found)).anyMatch(line -> line.contains("The header \"Rate\" could mean Dose"));
    }

    /** The fields of a card may well be listed; its job is told nowhere else, unless jobs are listed. */
    @Test
    void aCardBesideAListOfFieldsIsReadAndBesideOneOfJobsIsNot() {
        SheetOf card = new SheetOf("Card")
                .row("Field", "Home")
                .row("Area (ha)", 10)
                .row("Operation", "mowing")
                .row("Machine", "Big")
                .row("Type", "mower")
                .row("Width (m)", 9)
                .row("Speed (km/h)", 12);
        SheetOf fields =
                new SheetOf("Fields").row("Field", "Area (ha)").row("Home", 10).row("Top", 5);
        FoundLists found = ListFinder.find(List.of(fields, card));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Jobs.LIST).text(Jobs.FIELD, 0)).isEqualTo("Home");
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(9);
        SheetOf jobs = new SheetOf("Jobs").row("Field", "Operation", "Machine").row("Top", "mowing", "Big");
        FoundLists listed = ListFinder.find(List.of(fields, card, jobs));
        assertThat(listed.rows(Jobs.LIST).size()).isEqualTo(1);
        assertThat(said(listed)).anyMatch(line -> line.contains("stand below one another here"));
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
        FoundLists named = ListFinder.find(List.of(new SheetOf("Card")
                .row("Machine", "Combination")
                .row("Type", "drill")
                .row("Drill width (m)", 4)
                .row("Coulter pressure", 2.1)
                .row("Agitator setting", 12)));
        assertThat(named.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(named.rows(Machines.LIST).text(Machines.MACHINE, 0)).isEqualTo("Combination");
        assertThat(said(named)).allMatch(line -> line.startsWith("NOTE"));
        FoundLists found = ListFinder.find(List.of(new SheetOf("Card")
                .row("Combination")
                .row("Type", "drill")
                .row("Drill width (m)", 4)
                .row("Coulter pressure", 2.1)
                .row("Agitator setting", 12)));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(found.findings()).singleElement().satisfies(told -> {
            assertThat(told.severity()).isEqualTo(Severity.NOTE);
            assertThat(told.message()).contains("figures stand where the names of machines would");
        });
    }
}
