package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.quantity.Units;

/** Headers that name their unit or their period in words: acres, hectares, weeks and working days. */
class AreaAndPeriodHeadersTest {
    @Test
    void theAreaSprayedIsTheAreaWhereNoOtherIs() {
        FoundLists found = find(new SheetOf("Spray records")
                .row("Date", "Field", "Area sprayed (ac)", "Sprayer", "Water (L/ha)")
                .row(46000, "Top", 14, "SP24", 200));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(14);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        FoundLists both = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Area sprayed (ha)")
                .row("Top", 6, 5));
        assertThat(both.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(6);
    }

    @Test
    void acresRoodsAndPerchesAreReckonedForTheReader() {
        FoundLists found = find(new SheetOf("Fields").row("Field", "Acres").row("A", "12a 2r 20p"));
        assertThat(found.findings()).singleElement().satisfies(finding -> assertThat(finding.message())
                .endsWith(" \"12a 2r 20p\" is 12.625 ac: write the figure 12.625 alone."));
    }

    @Test
    void workingDaysAreNoHours() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Working days")
                .row("A", "mow", "Mower", 10));
        assertThat(found.rows(Jobs.LIST).has(Jobs.HOURS_PER_DAY)).isFalse();
        FoundLists hours = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Working day (h)")
                .row("A", "mow", "Mower", 10));
        assertThat(hours.rows(Jobs.LIST).number(Jobs.HOURS_PER_DAY, 0)).isEqualTo(10);
    }

    @Test
    void numbersOfTimesAreToldAsUnread() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "No. of times")
                .row("A", "mow", "Mower", 2));
        assertThat(said(found))
                .anyMatch(line -> line.startsWith("CAUTION Jobs!D1 \"No. of times\" is not read: each row of Jobs is"
                        + " reckoned as one pass."));
    }

    @Test
    void passesAreToldAsUnread() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "No. of passes")
                .row("A", "mow", "Mower", 2));
        assertThat(said(found))
                .containsExactly(
                        "CAUTION Jobs!D1 \"No. of passes\" is not read: each row of Jobs is reckoned as one pass."
                                + " Write a row for each pass.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Acreage",
                "Statute acres",
                "Acres treated",
                "Acres sprayed",
                "Cropped acres",
                "Net acres",
                "Tillable acres",
                "Planted (ac)",
                "Net (acres)"
            })
    void acresAreAcresWhereverTheWordStands(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Crop", header).row("North 40", "Corn", 38.5));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(38.5);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Cropped ha", "Hectarage", "Hectares treated", "Net ha"})
    void hectaresAreHectares(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Crop", header).row("Top", "Corn", 38.5));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.HA);
    }

    @Test
    void aMappedAreaBesideTheAreaIsLeftAlone() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Mapped area (ha)")
                .row("Top", 38.5, 40));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(38.5);
        assertThat(found.findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Weeks, 26, 182",
        "Weeks fed, 26, 182",
        "Months, 6, 182.625",
        "Winter months, 6, 182.625",
        "Feeding months, 6, 182.625",
        "Months housed, 6, 182.625",
        "Winter days, 180, 180",
        "Feeding period, 180, 180",
        "Winter months (days), 180, 180"
    })
    void aPeriodIsInWhatItsNameSays(String header, double typed, double days) {
        ListRows herds = find(new SheetOf("Herds")
                        .row("Group", "Head", "Intake (kg DM/day)", header)
                        .row("Cows", 100, 10, typed))
                .rows(Herds.LIST);
        assertThat(herds.unit(Herds.DAYS, 0).orElse(Units.D).convert(herds.number(Herds.DAYS, 0), Units.D))
                .isEqualTo(days);
    }

    @Test
    void fitDaysAreAShareOrACountAndAskedWhereNothingSaysWhich() {
        FoundLists found = find(
                new SheetOf("Fields").row("Field", "Area (ha)").row("Top", 6),
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Fit days")
                        .row("Top", "mow", "M", 12),
                new SheetOf("More jobs")
                        .row("Field", "Operation", "Machine", "Suitable days (%)")
                        .row("Top", "ted", "T", 60));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.state(Jobs.WORKABLE_DAYS, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.state(Jobs.DAYS_AVAILABLE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(jobs.number(Jobs.WORKABLE_DAYS, 1)).isEqualTo(60);
        assertThat(said(found)).anySatisfy(text -> assertThat(text)
                .contains("\"Fit days\" could mean Workable days or Days available of Jobs"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "% of field",
                "% of the field treated",
                "Share of area",
                "% treated",
                "Percent of field",
                "Part sprayed (%)"
            })
    void theShareOfAFieldThatAJobIsOnIsToldAsNotRead(String header) {
        assertThat(partOf(header, 40))
                .containsExactly(
                        "CAUTION Jobs!D1 \"" + header + "\" is not read: each row of Jobs is reckoned on the whole"
                                + " of its field. Where a part is worked, give that part a name and an area of its own in the"
                                + " field list, and name it here.");
        assertThat(partOf(header, 100)).isEmpty();
    }

    private static List<String> partOf(String header, double share) {
        return said(find(
                        new SheetOf("Fields").row("Field", "Area (ha)").row("A", 5),
                        new SheetOf("Machines")
                                .row("Machine", "Type", "Width (m)")
                                .row("Roller", "roller", 3),
                        new SheetOf("Jobs")
                                .row("Field", "Operation", "Machine", header)
                                .row("A", "roll", "Roller", share)))
                .stream()
                .filter(finding -> finding.contains("not read"))
                .toList();
    }
}
