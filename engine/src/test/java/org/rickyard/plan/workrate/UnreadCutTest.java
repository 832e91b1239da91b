package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Which cut a job meets, where a Cut cannot be read: what differs from cut to cut is withheld, and nothing else. */
@Tag("derived")
class UnreadCutTest {
    private static SeasonBook.Worked chopping(Object cutOfJob, Object firstCut, Object secondCut, Object secondYield) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("Top", "grass", 10, 40, "as carted fresh", 30, "Main"))
                .sheet(
                        "Cuts",
                        row("Field", "Cut", "Yield (t/ha)", "Yield basis"),
                        row("Top", firstCut, 20, "as carted fresh"),
                        row("Top", secondCut, secondYield, "as carted fresh"))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)"),
                        row("Main", "walled", 30, 10, 3))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Output (t/h)"),
                        row("Big one", "forager", 3, 10, 70, 60))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Cut"),
                        row("Chop", "Top", "chopping", "Big one", cutOfJob))
                .run();
    }

    /** 60 t an hour of 20 t a hectare are 3 ha an hour, of 15 t more than width and speed allow (2.1 ha/h). */
    @ParameterizedTest
    @CsvSource({
        "the later, 1, 2, Jobs!E2",
        "2 or 3, 1, 2, Jobs!E2",
        "-4, 1, 2, Jobs!E2",
        "2, 1, late, Cuts!B3",
    })
    void aCutThatCannotBeReadIsNotTheFieldsOwnYield(String cutOfJob, Object firstCut, String secondCut, String cell) {
        SeasonBook.Worked worked = chopping(number(cutOfJob), 1, number(secondCut), 15);
        assertThat(worked.result("work-rate", "Top").given()).isFalse();
        assertThat(worked.result("work-rate", "Top").reason())
                .isEqualTo("yield of which cut cannot be read (" + cell + ")");
        assertThat(worked.result("spot-work-rate", "Top").given()).isTrue();
        assertThat(worked.messages()).noneMatch(message -> message.contains("the yield of the field list is used"));
        assertThat(worked.differences()).noneMatch(difference -> difference.contains("Work rates"));
    }

    /** Told by its number, or the same whichever it is, it hangs on no cell that cannot be read. */
    @Test
    void whatHangsOnNoUnreadCutIsReckoned() {
        assertThat(chopping(1, 1, "late", 15).number("work-rate", "Top")).isCloseTo(2.1, within(1e-9));
        SeasonBook.Worked noCuts = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis"),
                        row("Top", "grass", 10, 40, "as carted fresh"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Output (t/h)"),
                        row("Big one", "forager", 3, 10, 70, 60))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Cut"),
                        row("Chop", "Top", "chopping", "Big one", "the later"))
                .run();
        assertThat(noCuts.number("work-rate", "Top")).isCloseTo(1.5, within(1e-9));
    }

    /** A gang is told that its crop reaches no clamp, at the cell that keeps it from one. */
    @Test
    void aGangsCropCountsForNoClampTillItsCutIsRead() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("Top", "grass", 10, 40, "as carted fresh", 30))
                .sheet("Cuts", row("Field", "Cut", "Yield (t/ha)", "Yield basis"), row("Top", 1, 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Payload (t)"),
                        row("Big one", "forager", 3, 10, 70, null),
                        row("Cart", "trailer", null, null, null, 12))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Cut"),
                        row("Chop", "Top", "chopping", "Big one; Cart x 2", "the later"))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("the crop counts for no clamp"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.cell().orElseThrow()).hasToString("Jobs!E2"));
        assertThat(worked.results())
                .filteredOn(result -> result.id().equals("gang-rate"))
                .isNotEmpty()
                .noneMatch(org.rickyard.audit.Result::given);
        assertThat(worked.differences()).isEmpty();
    }

    private static Object number(String typed) {
        return typed.matches("-?\\d+") ? (Object) Double.valueOf(typed) : typed;
    }
}
