package org.rickyard.plan.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** Jobs that name a block, or nothing, in place of a field. Figures: derived arithmetic. */
@Tag("derived")
class JobsOfBlocksTest {
    private static SeasonBook.Worked farm(Object[]... jobs) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Block", "Crop", "Area (ha)"),
                        row("Elm", "A", "North", "wheat", 10),
                        row("Elm", "B", "North", "wheat", 5),
                        row("Oak", "C", "North", "wheat", 7),
                        row("Oak", "D", "South", "barley", 8))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Jobs", jobs)
                .run();
    }

    @Test
    void aBlockAloneMeansItsFields() {
        SeasonBook.Worked worked = farm(
                row("Holding", "Block", "Operation", "Machine", "Water volume (L/ha)"),
                row("Elm", "North", "spray", "Sprayer", 200),
                row("Oak", "North", "spray", "Sprayer", 200),
                row("Oak", "D", "spray", "Sprayer", 100));
        assertThat(worked.number("total-spray-mix", "Elm")).isEqualTo(3000);
        assertThat(worked.number("total-spray-mix", "Oak", "North")).isEqualTo(1400);
        assertThat(worked.number("total-spray-mix", "Oak", "D")).isEqualTo(800);
    }

    @Test
    void aBlockThatNobodyHasIsToldWhereItStands() {
        SeasonBook.Worked worked =
                farm(row("Block", "Operation", "Machine", "Water volume (L/ha)"), row("West", "spray", "Sprayer", 200));
        assertThat(worked.findings()).anySatisfy(finding -> {
            assertThat(finding.cell().map(Object::toString)).hasValue("Jobs!A2");
            assertThat(finding.message())
                    .isEqualTo("there is no field, crop or block 'West' in the field list; write a name from that"
                            + " list, or \"all\". The row is left out.");
        });
    }

    @Test
    void aSlipInANameIsToldWithTheNameThatIsLikeIt() {
        SeasonBook.Worked worked = farm(
                row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("Nroth", "spray", "Sprayer", 200),
                row("North", "spray", "Spreyer", 200));
        assertThat(worked.findings())
                .extracting(Finding::message)
                .contains(
                        "there is no field, crop or block 'Nroth' in the field list; write a name from that list, or"
                                + " \"all\". Did you mean 'North'? The row is left out.",
                        "there is no machine 'Spreyer' in the machine list; add it there or mend the name here. Did you"
                                + " mean 'Sprayer'? Its work on this job is left out.");
    }

    /** "Did you mean 'A'?" was asked of who had written A. */
    @Test
    void aFieldOfAnotherHoldingIsToldWithThatHolding() {
        SeasonBook.Worked worked = farm(
                row("Holding", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("Elms", "A", "spray", "Sprayer", 200));
        assertThat(worked.findings())
                .extracting(Finding::message)
                .contains(
                        "there is no field, crop or block 'A' on Elms in the field list; there is one on 'Elm': mend the"
                                + " holding or the name. The row is left out.");
    }

    @Test
    void severalFieldsInOneCellAreToldApart() {
        for (String both : List.of("A, B", "A and North", "A + barley", "a; B")) {
            SeasonBook.Worked worked = farm(
                    row("Holding", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                    row("Elm", both, "spray", "Sprayer", 200));
            assertThat(worked.findings())
                    .extracting(Finding::message)
                    .contains(
                            "'" + both + "' names 2 at once; write a row for each, or give the fields one Block in the"
                                    + " field list and name that. The row is left out.");
        }
        SeasonBook.Worked worked = farm(
                row("Holding", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("Elm", "A, Z", "spray", "Sprayer", 200));
        assertThat(worked.findings())
                .extracting(Finding::message)
                .contains("there is no field, crop or block 'A, Z' on Elm in the field list; write a name from that"
                        + " list, or \"all\". The row is left out.");
    }

    @Test
    void allOfACropIsTheCropAndAllOfABlockTheBlock() {
        SeasonBook.Worked worked = farm(
                row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("T1", "all wheat", "spray", "Sprayer", 100),
                row("T2", "All the South fields", "spray", "Sprayer", 100));
        assertThat(worked.number("total-spray-mix", "T1", "Elm")).isEqualTo(1500);
        assertThat(worked.number("total-spray-mix", "T1", "Oak")).isEqualTo(700);
        assertThat(worked.number("total-spray-mix", "T2")).isEqualTo(800);
    }

    @Test
    void aJobWithoutHoldingOnSeveralHoldingsIsSaidOnce() {
        SeasonBook.Worked worked = farm(
                row("Holding", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("Elm", "wheat", "spray", "Sprayer", 100),
                row(null, "barley", "spray", "Sprayer", 100),
                row(null, "wheat", "spray", "Sprayer", 100),
                row(null, "all", "spray", "Sprayer", 100));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("names none"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().map(Object::toString)).hasValue("Jobs!B4");
                    assertThat(finding.message())
                            .isEqualTo(
                                    "'wheat' is on 2 holdings (Elm, Oak) and the job names none, so it is done on all"
                                            + " of them, as is every other such job. If it is meant for one, name that in a"
                                            + " column Holding.");
                });
    }

    @Test
    void aListWithoutAColumnOfBlocksIsNotAskedForThem() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Block", "Crop", "Area (ha)"), row("A", "North", "wheat", 10))
                .sheet("Others", row("Field", "Crop", "Area (ha)"), row("B", "wheat", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("North", "spray", "Sprayer", 200))
                .run();
        assertThat(worked.number("total-spray-mix", "North")).isEqualTo(2000);
        assertThat(worked.findings()).extracting(Finding::message).noneMatch(message -> message.contains("no block"));
    }

    private static List<String> leftOut(Object[]... jobs) {
        return new SeasonBook()
                        .sheet(
                                "Fields",
                                row("Field", "Block", "Crop", "Area (ha)"),
                                row("A", "North", "wheat", 10),
                                row("B", null, null, 5),
                                row("C", "South", null, 7),
                                row("D", "South", "none", 8))
                        .sheet(
                                "Machines",
                                row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                                row("Sprayer", "sprayer", 24, 10, 3000))
                        .sheet("Jobs", jobs)
                        .run()
                        .findings()
                        .stream()
                        .filter(finding -> finding.message().contains("leave"))
                        .map(finding -> finding.cell().orElseThrow() + " " + finding.message())
                        .toList();
    }

    @Test
    void aCropOrBlockWrittenOnceForSeveralRowsLeavesTheOthersOutAndIsTold() {
        Object[] head = row("Field", "Operation", "Machine", "Water volume (L/ha)");
        assertThat(leftOut(head, row("wheat", "spray", "Sprayer", 200)))
                .containsExactly(
                        "Fields!C3 this field and 1 more have no crop, and no job names them, so jobs that name a"
                                + " crop leave them out. A name stands for its own row only: write"
                                + " it in every row, or \"none\" where there is none.");
        assertThat(leftOut(head, row("wheat", "spray", "Sprayer", 200), row("South", "spray", "Sprayer", 200)))
                .singleElement()
                .asString()
                .startsWith("Fields!C3 this field has no crop, and no job names it");
        assertThat(leftOut(head, row("South", "spray", "Sprayer", 200)))
                .singleElement()
                .asString()
                .startsWith("Fields!B3 this field has no block, and no job names it");
        assertThat(leftOut(head, row("A", "spray", "Sprayer", 200))).isEmpty();
        assertThat(leftOut(head, row("wheat", "spray", "Sprayer", 200), row("all", "spray", "Sprayer", 200)))
                .isEmpty();
    }

    @Test
    void jobsWithoutAListOfFieldsAreToldOnce() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Parcel of the farm", "Hectares", "Crop"), row("A", 4, "wheat"))
                .sheet("Machines", row("Machine", "Type", "Working width (m)"), row("Sprayer", "sprayer", 24))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("A", "spray", "Sprayer", 200),
                        row("B", "spray", "Sprayer", 200))
                .run();
        assertThat(worked.findings())
                .extracting(Finding::message)
                .filteredOn(message -> message.contains("no list of fields") || message.contains("there is no field"))
                .containsExactly("these jobs name fields, but no list of fields was found in this workbook, so none of"
                        + " them is worked out. It needs at least the headers Field and Area; a sheet whose headers"
                        + " come near to that is named among the findings.");
        assertThat(worked.findings()).extracting(Finding::message).anySatisfy(message -> assertThat(message)
                .contains("has no column Field")
                .contains("Not known of its headers: \"Parcel of the farm\"."));
    }

    @Test
    void jobsWithoutAListOfMachinesAreToldOnce() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"), row("B", 3, "grass"))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("A", "spray", "Sprayer", 200),
                        row("B", "foraging", "Forager; Trailer x 2", null))
                .run();
        assertThat(worked.findings())
                .extracting(Finding::message)
                .filteredOn(message -> message.contains("machine list") || message.contains("no list of machines"))
                .containsExactly("these jobs name machines, but no list of machines was found in this workbook, so none"
                        + " of their work is worked out. It needs at least the headers Machine and Type; a sheet whose"
                        + " headers come near to that is named among the findings.");
    }

    /** The blank workbook has its headers and nothing under them: there is a list, and that none was found is untrue. */
    @Test
    void jobsBesideAListOfMachinesWithoutRowsAreToldThatItHasNone() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"), row("B", 3, "grass"))
                .sheet("Machines", row("Machine", "Type", "Working width (m)", "Speed (km/h)"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("A", "mow", "Mower"), row("B", "mow", "Mower"))
                .run();
        assertThat(worked.findings())
                .extracting(Finding::message)
                .filteredOn(message -> message.contains("machines") && message.contains("none of their work"))
                .containsExactly(
                        "these jobs name machines, but the list of machines in this workbook has no rows, so none"
                                + " of their work is worked out. Type them under its headers.");
    }

    @Test
    void aJobWithoutAnyFieldIsTold() {
        SeasonBook.Worked worked = farm(
                row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                row("T1", null, "spray", "Sprayer", 200));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("names no field"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().map(Object::toString)).hasValue("Jobs!B2");
                    assertThat(finding.message())
                            .isEqualTo(
                                    "this job names no field, so nothing is worked out for it; write a field, a crop, a"
                                            + " block, or \"all\".");
                });
    }
}
