package org.rickyard.plan.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** Hay, straw and grain: common yields and dry matters of theirs, which would be unusual in silage. */
@Tag("common-practice")
class DryCropsTest {
    private static SeasonBook.Worked fields(Object[]... rows) {
        Object[][] all = new Object[rows.length + 1][];
        all[0] = row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)");
        System.arraycopy(rows, 0, all, 1, rows.length);
        return new SeasonBook()
                .sheet("Fields", all)
                .sheet("Machines", row("Machine", "Type", "Width (m)", "Speed (km/h)"), row("Rolls", "rolls", 6, 8))
                .run();
    }

    @Test
    void whatIsBroughtInDryIsNotHeldAgainstSilage() {
        assertThat(fields(
                                row("A", 8, "oilseed rape", 3.4, "as carted fresh", null),
                                row("B", 8, "grass hay", 3.1, "as carted fresh", 84),
                                row("C", 8, "wheat straw", 2.9, "as carted fresh", 86))
                        .messages())
                .noneMatch(message -> message.contains("is unusual"));
    }

    /** A list of cuts names the field; what grows there stands in the list of fields. */
    @Test
    void aCutOfHayIsNotHeldAgainstSilage() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop"),
                        row("A", 4, "hay"),
                        row("B", 4, "grass"),
                        row("C", 4, "hay"),
                        row("C", 4, "grass"))
                .sheet(
                        "Cuts",
                        row("Field", "Cut", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("a", 1, 4, "as carted fresh", 85),
                        row("A", 2, 0.4, "as carted fresh", 85),
                        row("B", 1, 4, "as carted fresh", 30),
                        row("C", 1, 4, "as carted fresh", 30))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("is unusual"))
                .extracting(finding -> finding.cell().orElseThrow().toString())
                .containsExactlyInAnyOrder("Cuts!C3", "Cuts!C4", "Cuts!C5");
    }

    @Test
    void silageIsHeldAgainstItStill() {
        assertThat(fields(
                                row("A", 8, "grass silage", 3.4, "as carted fresh", 30),
                                row("B", 8, "wholecrop wheat", 30, "as carted fresh", 84),
                                row("C", 8, "hay", 0.4, "as carted fresh", 60))
                        .messages())
                .anyMatch(message -> message.startsWith("Yield 3.4 t/ha is unusual (usually from 5 up to 65 t/ha)"))
                .anyMatch(message -> message.startsWith("DM at ensiling 84 % DM is unusual"))
                .anyMatch(message -> message.startsWith("Yield 0.4 t/ha is unusual (usually from 1 up to 20 t/ha)"))
                .anyMatch(message ->
                        message.startsWith("DM at ensiling 60 % DM is unusual (usually from 75 up to 92 % DM)"));
    }

    @Test
    void hayIsNoSilageAndOneNoteSpeaksOfAllFieldsOfACrop() {
        SeasonBook.Worked worked = fields(
                row("A", 8, "alfalfa hay", 4, "as carted fresh", 85),
                row("B", 8, "winter wheat", 9, "as carted fresh", null),
                row("C", 8, "winter wheat", 8, "as carted fresh", null),
                row("D", 8, "winter wheat", 7, "as carted fresh", null));
        assertThat(worked.messages())
                .filteredOn(message -> message.contains("not taken for silage"))
                .satisfiesExactly(
                        hay -> assertThat(hay).startsWith("the alfalfa hay of 'A' is not taken"),
                        wheat -> assertThat(wheat)
                                .startsWith("the winter wheat of 'B' (and 2 more fields) is not taken"));
        assertThat(worked.results()).noneMatch(result -> result.id().equals("crop-ensiled"));
    }

    /** A field has one yield; where a combine and a baler both go over it, only one of them can be meant. */
    @Test
    void strawBaledBehindACombineIsToldToBeReckonedAsGrain() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                        row("A", 8, "wheat", 9, "as carted fresh"),
                        row("B", 7, "wheat", 8, "as carted fresh"),
                        row("B straw", 7, "wheat straw", 3.5, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Width (m)", "Speed (km/h)"),
                        row("Combine", "combine", 9, 5),
                        row("Baler", "round baler", 9, 8))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("wheat", "combining", "Combine"),
                        row("A", "baling", "Baler"),
                        row("B straw", "baling", "Baler"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("as if it were straw"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!C3");
                    assertThat(finding.message()).startsWith("a combine works 'A' too, so its yield is grain");
                });
    }

    /** 1.6 short tons an acre are 3.587 t/ha: a range in tonnes is no help to who counts in tons without it. */
    @Test
    void whatIsUnusualIsToldInTheUnitOfTheRangeToo() {
        assertThat(new SeasonBook()
                        .sheet(
                                "Fields",
                                row("Field", "Crop", "Acres", "Yield (short ton/ac)", "Yield basis"),
                                row("A", "grass silage", 8, 1.6, "as carted fresh"))
                        .run()
                        .messages())
                .anyMatch(message -> message.startsWith(
                        "Yield 1.6 short ton/ac = 3.587 t/ha is unusual (usually from 5 up to 65 t/ha)"));
    }
}
