package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.read.ListFinder;

/** A farm group keeps a sheet for each farm, headed with its name; two farms may each have a Home Field. */
class HoldingAboveTest {
    private static final SheetOf VALE = new SheetOf("Vale")
            .row("Farm", "Vale Farm")
            .row("Adviser", "nobody")
            .row()
            .row("Field", "Area (ha)")
            .row("Home Field", 6);

    private static SheetOf hill(Object... heading) {
        return new SheetOf("Hill").row(heading).row().row("Field", "Area (ha)").row("Home Field", 4);
    }

    private static ListRows fields(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets)).rows(Fields.LIST);
    }

    @Test
    void eachListIsOfTheHoldingAboveIt() {
        FoundLists found = ListFinder.find(List.of(hill("Farm: Hill Farm"), VALE));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(fields.state(Fields.HOLDING, 0)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(fields.address(Fields.HOLDING, 0)).hasValue(new CellAddress("Hill", 0, 0));
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Vale Farm");
        assertThat(fields.state(Fields.HOLDING, 1)).isEqualTo(State.GIVEN);
        assertThat(fields.address(Fields.HOLDING, 1)).hasValue(new CellAddress("Vale", 0, 1));
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
        assertThat(found.findings())
                .extracting(Finding::message)
                .contains(
                        "The rows of Fields below are taken to be of the holding \"Hill Farm\", which stands above them."
                                + " Where they are not, add a column Holding.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Farm:|Hill Farm",
                "Client|Hill Farm",
                "Holding: Hill Farm",
                "Farm – Hill Farm",
                "|Farm name :|Hill Farm||2026"
            })
    void advisersHeadTheirSheetsInTheseWays(String heading) {
        List<Object> cells = new ArrayList<>();
        for (String cell : heading.split("\\|")) {
            cells.add(cell.isEmpty() ? null : cell);
        }
        assertThat(fields(hill(cells.toArray()), VALE).text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Hill Farm", "Cropping: Hill Farm", "Farm|Contact|Telephone", "Farm:", "Farm", "Farm:|Date:"})
    void otherHeadingsNameNone(String heading) {
        assertThat(fields(hill((Object[]) heading.split("\\|")), VALE).state(Fields.HOLDING, 0))
                .isEqualTo(State.NO_COLUMN);
    }

    @Test
    void aWorkbookOfOneFarmNeedsNoHoldings() {
        SheetOf jobs = new SheetOf("Work")
                .row("Farm: Vale Farm")
                .row("Field", "Operation", "Machine")
                .row("Home Field", "mowing", "Mower");
        FoundLists found = ListFinder.find(List.of(VALE, jobs));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 0)).isEmpty();
        assertThat(found.rows(Jobs.LIST).text(Jobs.HOLDING, 0)).isEmpty();
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void otherListsBelongToAHoldingThatHasFields() {
        FoundLists found = ListFinder.find(List.of(
                hill("Farm: Hill Farm"),
                VALE,
                new SheetOf("Work Vale")
                        .row("Farm: VALE FARM")
                        .row("Field", "Operation", "Machine")
                        .row("Home Field", "mowing", "Mower"),
                new SheetOf("Kit")
                        .row("Client: A Contractor")
                        .row("Machine", "Type")
                        .row("Mower", "mower")));
        assertThat(found.rows(Jobs.LIST).text(Jobs.HOLDING, 0)).isEqualTo("VALE FARM");
        assertThat(found.rows(Machines.LIST).state(Machines.HOLDING, 0)).isEqualTo(State.NO_COLUMN);
    }

    /** The machines of one farm were worked on the fields of the other. */
    @Test
    void aFormIsOfTheHoldingAboveItToo() {
        ListRows machines = ListFinder.find(List.of(
                        hill("Farm: Hill Farm"),
                        VALE,
                        new SheetOf("Kit")
                                .row("Farm: Hill Farm")
                                .row()
                                .row("Machine", "Mower", "Rake")
                                .row("Type", "mower", "rake")
                                .row("Working width (m)", 3, 7)
                                .row("Speed (km/h)", 10, 9)
                                .row()
                                .row("Farm: Vale Farm")
                                .row("Machine", "Tedder", "Roller")
                                .row("Type", "tedder", "field rolls")
                                .row("Working width (m)", 8, 6)
                                .row("Speed (km/h)", 11, 8)))
                .rows(Machines.LIST);
        assertThat(IntStream.range(0, machines.size())
                        .mapToObj(row ->
                                machines.text(Machines.MACHINE, row) + " " + machines.text(Machines.HOLDING, row)))
                .containsExactlyInAnyOrder("Mower Hill Farm", "Rake Hill Farm", "Tedder Vale Farm", "Roller Vale Farm");
        assertThat(machines.address(Machines.HOLDING, 0)).hasValue(new CellAddress("Kit", 0, 0));
    }

    @Test
    void aColumnOfHoldingsGoesBeforeWhatStandsAbove() {
        SheetOf own = new SheetOf("Both")
                .row("Farm: Hill Farm")
                .row("Holding", "Field", "Area (ha)")
                .row("Vale Farm", "Home Field", 6);
        ListRows fields = fields(own, hill("Farm: Hill Farm"));
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Vale Farm");
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Hill Farm");
    }

    @Test
    void ofListsBelowEachOtherEachHasTheNearestHeading() {
        ListRows fields = fields(new SheetOf("All")
                .row("Farm: Hill Farm")
                .row("Field", "Area (ha)")
                .row("Home Field", 4)
                .row()
                .row("Farm: Vale Farm")
                .row("Field", "Area (ha)")
                .row("Home Field", 6));
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Vale Farm");
    }

    @Test
    void theFarmCountsAndNotWhoseItIs() {
        SheetOf beside = hill("Farm: Hill Farm", null, "Client: A Grower");
        SheetOf below = new SheetOf("Vale")
                .row("Farm: Vale Farm")
                .row("Client: A Grower")
                .row("Field", "Area (ha)")
                .row("Home Field", 6);
        ListRows fields = fields(beside, below);
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Vale Farm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Farm: Dale Farm", "Farm|Dale Farm", "Holding - Dale Farm"})
    void aHoldingNamedBetweenRowsIsThatOfTheRowsBelow(String heading) {
        SheetOf mixed = new SheetOf("Hill")
                .row("Farm: Hill Farm")
                .row("Field", "Crop", "Area (ha)")
                .row("Home Field", "Grass", 4)
                .row("Total", null, 4)
                .row()
                .row((Object[]) heading.split("\\|"))
                .row("Far Field", "Grass", 5);
        FoundLists found = ListFinder.find(List.of(mixed, VALE));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.size()).isEqualTo(3);
        assertThat(fields.text(Fields.FIELD, 1)).isEqualTo("Far Field");
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Dale Farm");
        assertThat(fields.text(Fields.HOLDING, 2)).isEqualTo("Vale Farm");
        assertThat(found.findings())
                .contains(Finding.note(
                        new CellAddress("Hill", 5, heading.contains("|") ? 1 : 0),
                        "The rows of Fields below are taken to be of the holding \"Dale Farm\", which stands above them."
                                + " Where they are not, add a column Holding."));
    }

    @Test
    void aHoldingNamedBesideTheRowsIsAsked() {
        SheetOf mixed = new SheetOf("Hill")
                .row("Farm: Hill Farm")
                .row(null, null, "Field", "Crop", "Area (ha)")
                .row(null, null, "Home Field", "Grass", 4)
                .row("Farm: Dale Farm")
                .row(null, null, "Far Field", "Grass", 5);
        FoundLists found = ListFinder.find(List.of(mixed, VALE, hill("Farm: Hill Farm")));
        assertThat(found.rows(Fields.LIST).state(Fields.HOLDING, 1)).isEqualTo(State.NO_COLUMN);
        assertThat(found.findings())
                .contains(Finding.caution(
                        new CellAddress("Hill", 3, 0),
                        "The holding \"Dale Farm\" is named between the rows of Fields, so no holding is taken for them"
                                + " from what stands above or between them. Add a column Holding, or repeat the headers"
                                + " below the name."));
    }

    /** Without it, each farm's job was done on the fields of both. */
    @Test
    void jobsBelongToTheHoldingAboveThemWhereTheFieldsHaveAColumnOfHoldings() {
        SheetOf both = new SheetOf("Land")
                .row("Holding", "Field", "Crop", "Area (ha)")
                .row("Vale Farm", "Home Field", "Grass", 6)
                .row("Hill Farm", "Home Field", "Grass", 4);
        SheetOf above = new SheetOf("Work Vale")
                .row("Farm: VALE FARM")
                .row("Field", "Operation", "Machine")
                .row("Grass", "mowing", "Mower");
        SheetOf between = new SheetOf("Work")
                .row("Operation", "Field", "Machine")
                .row("Holding: Hill Farm")
                .row("mowing", "Grass", "Mower")
                .row()
                .row("Holding: Vale Farm")
                .row("raking", "Grass", "Rake");
        FoundLists found = ListFinder.find(List.of(both, above, between));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.size()).isEqualTo(3);
        assertThat(jobs.text(Jobs.HOLDING, 0)).isEqualTo("VALE FARM");
        assertThat(jobs.text(Jobs.HOLDING, 1)).isEqualTo("Hill Farm");
        assertThat(jobs.text(Jobs.HOLDING, 2)).isEqualTo("Vale Farm");
        assertThat(found.findings()).extracting(Finding::severity).containsOnly(Severity.NOTE);
    }

    @Test
    void ofListsBesideEachOtherEachHasItsOwnHeading() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("All")
                .row("Holding", "Field", "Crop", "Area (ha)", null, "Farm: Vale Farm")
                .row("Vale Farm", "Home Field", "Grass", 6, null, "Field", "Operation", "Machine")
                .row("Hill Farm", "Home Field", "Grass", 4, null, "Grass", "mowing", "Mower")
                .row("Hill Farm", "Far Field", "Grass", 4, null, "Farm: Hill Farm")
                .row("Hill Farm", "Top", "Grass", 4, null, "Field", "Operation", "Machine")
                .row("Hill Farm", "Low", "Grass", 4, null, "Grass", "mowing", "Mower")));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(5);
        assertThat(jobs.text(Jobs.HOLDING, 0)).isEqualTo("Vale Farm");
        assertThat(jobs.text(Jobs.HOLDING, 1)).isEqualTo("Hill Farm");
    }

    @Test
    void theHoldingAboveAListIsNoColumnOfTheOneBesideIt() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("All")
                .row("Farm: Vale Farm", null, null, null, "Machine", "Type", "Width (m)")
                .row("Store", "Kind", "Amount (t)", null, "Mower", "mower", 3)
                .row("Old silage", "clamp", 60, null, "Rake", "rake", 6)));
        assertThat(found.rows(Machines.LIST).has(Machines.HOLDING)).isFalse();
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(2);
        assertThat(found.rows(Stocks.LIST).size()).isEqualTo(1);
    }

    @Test
    void jobsUnderAHoldingWithoutFieldsAreSaid() {
        FoundLists found = ListFinder.find(List.of(
                hill("Farm: Hill Farm"),
                VALE,
                new SheetOf("Work")
                        .row("Farm: Vail Farm")
                        .row("Field", "Operation", "Machine")
                        .row("Home Field", "mowing", "Mower")));
        assertThat(found.rows(Jobs.LIST).state(Jobs.HOLDING, 0)).isEqualTo(State.NO_COLUMN);
        assertThat(found.findings())
                .contains(Finding.caution(
                        new CellAddress("Work", 0, 0),
                        "No field is of a holding \"Vail Farm\", so no holding is taken for the rows of Jobs below."
                                + " Write it as the list of fields has it, or add a column Holding."));
    }

    @Test
    void aHoldingInTwoCellsAboveARepeatedHeaderBeginsAListOfItsOwn() {
        ListRows fields = fields(new SheetOf("All")
                .row("Farm", "Hill Farm")
                .row("Field", "Crop", "Area (ha)")
                .row("Home Field", "Grass", 4)
                .row("Farm", "Vale Farm")
                .row("Field", "Crop", "Area (ha)")
                .row("Home Field", "Grass", 6));
        assertThat(fields.size()).isEqualTo(2);
        assertThat(fields.text(Fields.HOLDING, 0)).isEqualTo("Hill Farm");
        assertThat(fields.text(Fields.HOLDING, 1)).isEqualTo("Vale Farm");
    }

    @Test
    void aFieldThatIsCalledFarmIsAField() {
        ListRows fields = fields(new SheetOf("Fields")
                .row("Field", "Crop", "Area (ha)")
                .row("Farm", "Grass", 4)
                .row("Top Piece", "Grass", 6));
        assertThat(fields.size()).isEqualTo(2);
        assertThat(fields.text(Fields.FIELD, 0)).isEqualTo("Farm");
    }
}
