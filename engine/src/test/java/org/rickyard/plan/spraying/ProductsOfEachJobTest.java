package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding;
import org.rickyard.testing.SeasonBook;

/** A list of what goes into each job, with a column Job, beside jobs that name no product themselves. */
@Tag("derived")
class ProductsOfEachJobTest {
    private static SeasonBook book(Object[]... products) {
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10), row("Low", "wheat", 5))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Big spray", "sprayer", 24, 10, 2000),
                        row("Spinner", "fertiliser spreader", 24, 12, null),
                        row("Weed stick", "wiper", 2, 6, 50))
                .sheet("Products", products);
    }

    private static SeasonBook twoJobs(Object[]... products) {
        return book(products)
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("T1", "Top", "spraying", "Big spray", 200),
                        row("T1", "Low", "spraying", "Big spray", 200),
                        row("T2", "Top", "spraying", "Big spray", 150));
    }

    /** 15 ha at 1.5 and 10 ha at 1 L/ha are 32.5 L of the one, 15 ha at 0.5 are 7.5 L of the other. */
    @Test
    void goesIntoTheTanksOfTheJobsNamed() {
        SeasonBook.Worked worked = twoJobs(
                        row("Job", "Product", "Dose (L/ha)"),
                        row("T1", "Alpha", 1.5),
                        row("T1", "Beta", 0.5),
                        row("T2", "Alpha", 1))
                .run();
        assertThat(worked.number("product-need", "Alpha")).isCloseTo(32.5, within(1e-9));
        assertThat(worked.number("product-need", "Beta")).isCloseTo(7.5, within(1e-9));
        assertThat(worked.messages()).noneMatch(message -> message.contains("stands already in"));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("listed here beside its name"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.cell().orElseThrow()).hasToString("Products!A2"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void theUnitOfEachDoseMayStandInItsRow() {
        SeasonBook.Worked worked = twoJobs(
                        row("Product", "Job", "Dose", "Unit"),
                        row("Alpha", "T1", 1500, "ml/ha"),
                        row("Alpha", "T2", 1, "L/ha"))
                .run();
        assertThat(worked.number("product-need", "Alpha")).isCloseTo(32.5, within(1e-9));
    }

    @Test
    void isSpreadToo() {
        SeasonBook.Worked worked = book(row("Job", "Product", "Dose (kg/ha)"), row("N1", "Urea", 120))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("N1", "Top", "spreading", "Spinner"))
                .run();
        assertThat(worked.number("product-need", "Urea")).isCloseTo(1200, within(1e-9));
    }

    /** A name that no job bears would be lost without a word. */
    @Test
    void aNameOfNoJobIsTold() {
        SeasonBook.Worked worked = twoJobs(
                        row("Job", "Product", "Dose (L/ha)"), row("T1", "Alpha", 1.5), row("T3", "Beta", 0.5))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("no job is called 'T3'"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Finding.Severity.CAUTION);
                    assertThat(finding.cell().orElseThrow()).hasToString("Products!A3");
                });
    }

    /** What a job names itself stands; another row of it may be of the same tank. */
    @Test
    void aJobThatNamesAProductTakesNoOther() {
        SeasonBook.Worked worked = book(
                        row("Job", "Product", "Dose (L/ha)"), row("T1", "Alpha", 1.5), row("T2", "Alpha", 1))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)", "Product", "Dose (L/ha)"),
                        row("T1", "Top", "spraying", "Big spray", 200, "Gamma", 2),
                        row("T1", "Low", "spraying", "Big spray", 200, null, null),
                        row("T2", "Top", "spraying", "Big spray", 200, null, null))
                .run();
        assertThat(worked.number("product-need", "Alpha")).isCloseTo(10, within(1e-9));
        assertThat(worked.number("product-need", "Gamma")).isCloseTo(20, within(1e-9));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("are not ordered"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Products!A2");
                    assertThat(finding.message()).startsWith("the job 'T1' takes 'Gamma', as Jobs!F2 says, so");
                });
    }

    /** Nobody would miss what is listed for a job that takes something else, where no other job takes from there. */
    @Test
    void whatIsListedBesideAJobThatNamesItsProductIsToldThoughNoneIsTaken() {
        SeasonBook.Worked worked = book(row("Job", "Product", "Dose (L/ha)"), row("T1", "Alpha", 1.5))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)", "Product", "Dose (L/ha)"),
                        row("T1", "Top", "spraying", "Big spray", 200, "Gamma", 2))
                .run();
        assertThat(worked.messages()).anyMatch(message -> message.startsWith("the job 'T1' takes 'Gamma'"));
    }

    /** What a wiper takes is on a sheet of its own and on no order list; that was said of products only. */
    @Test
    void whatNoMachineOfTheJobPutsOutIsTold() {
        SeasonBook.Worked worked = book(
                        row("Job", "Product", "Dose (L/ha)"), row("N1", "Alpha", 1.5), row("N2", "Beta", 1))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)"),
                        row("N1", "Top", "wiping", "Weed stick", null),
                        row("N2", "Top", "spraying", "Big spray", 200))
                .run();
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("is not sprayed, spread or drilled"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.cell().orElseThrow()).hasToString("Jobs!A2");
                    assertThat(finding.message()).startsWith("the mix 'N1' is not sprayed");
                });
    }

    /** A store of products, with packs and prices, is one; its column Job says nothing of doses. */
    @Test
    void aStoreOfProductsStaysOne() {
        SeasonBook.Worked worked = twoJobs(
                        row("Job", "Product", "Dose (L/ha)", "Pack size (L)", "Stock (L)"),
                        row("T1", "Alpha", 1.5, 5, 10))
                .run();
        assertThat(worked.messages())
                .anyMatch(message -> message.contains("not read as columns of Products: Job"))
                .anyMatch(message -> message.contains("no job says that it takes one of the"));
    }
}
